"""Sets of random pieces over kinds, styles and papers, from a number: held to the rules of paper, and measured."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from itertools import combinations, pairwise
from pathlib import Path

from shopdraw.build import CannotBuild, build
from shopdraw.drawing.explode import dimension_marks
from shopdraw.drawing.mark import Line, Meaning
from shopdraw.drawing.sheet import Placed
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.piece.design import Design
from shopdraw.sheet.box import crossing
from shopdraw.sheet.extent import whole
from shopdraw.sheet.fact import BALLOON
from shopdraw.sheet.part_sheet import NoRoomForPart
from shopdraw.sheet.set import Set, sheet_set
from shopdraw.sheet.set_pages import NoRoomForSet
from shopdraw.trade.paper import paper
from shopdraw.wood.assembly import Assembly
from shopdraw.write.pdf import write_pdf
from tests.build.designs import random_design
from tests.build.kinds import KINDS, random_kind
from tests.sheet.judge import judge
from tests.sheet.page_reader import Page, read_pages
from tests.sheet.set_judge import judge_set

STYLES = ("iso", "asme")
SIZES = {
    "iso": (("wall", "A1", ""), ("wall", "A2", ""), ("bench", "A3", ""), ("wall", "A0", ""), ("wall", "A1", "A3")),
    "asme": (
        ("wall", "ARCH D", ""), ("wall", "ANSI D", ""), ("bench", "ANSI B", ""), ("wall", "ANSI C", ""),
        ("wall", "ARCH D", "ANSI B"),
    ),
}  # fmt: skip
"""Set, paper and smallest print, by style."""
CELL = 10.0
"""White space is counted in squares of this side, mm."""
VANISHED = "fact vanished"


@dataclass
class Measured:
    """What became of a number.

    Attributes:
        outcome: "made", or why there is no set: "refused" (no such piece), "no paper".
        words: what it was, or why not.
        faults: counts by rule.
        figures: to improve, by name.
    """

    outcome: str
    words: str
    faults: dict[str, list[str]] = field(default_factory=dict)
    figures: dict[str, float] = field(default_factory=dict)


def random_set_design(number: int) -> tuple[Design, str]:
    """The piece that a number stands for, with style and paper, and what it is in words."""
    kind = ("slant-desk", "slant-desk", *KINDS)[number % (len(KINDS) + 2)]
    design = random_design(number) if kind == "slant-desk" else random_kind(kind, number)
    style = STYLES[number // (len(KINDS) + 2) % 2]
    paper_set, size, smallest = SIZES[style][number % len(SIZES[style])]
    choices: dict[str, object] = {"style": style, "set": paper_set, "paper": size, "smallest_print": smallest or None}
    design = design.model_copy(update={"drawing": design.drawing.model_copy(update=choices)})
    return design, f"{number}: {kind}, {style}, {paper_set} {size}{f' to be read on {smallest}' if smallest else ''}"


def measured(number: int, folder: Path) -> Measured:
    """Makes a number's set, judges its PDF and measures it."""
    design, words = random_set_design(number)
    try:
        assembly = build(design)
    except CannotBuild as error:
        return Measured("refused", f"{words}: {error}")
    try:
        made = sheet_set(design, assembly, (), cut_list(assembly, design), (materials(assembly, design),))
    except (NoRoomForSet, NoRoomForPart) as error:
        return Measured("no paper", f"{words}: {error}")
    path = folder / f"{number}.pdf"
    write_pdf(made.sheets, path)
    smallest = design.drawing.smallest_print
    size = made.drawn.manner.size
    reduction = min(1.0, paper(smallest).width_mm / size.width_mm) if smallest else 1.0
    faults = judge(path, made.sheets, reduction)
    overalls = _overalls(assembly) if design.drawing.set == "wall" else {}
    faults |= judge_set(made.sheets, {board.label for board in assembly.boards}, overalls)
    faults[VANISHED] = vanished(made)
    figures = figures_of(made, tuple(read_pages(path)))
    path.unlink()
    return Measured("made", words, faults, figures)


def _overalls(assembly: Assembly) -> Mapping[str, float]:
    """What the arrangement's one sheet tells in a wall set; in a bench set its views may stand on several."""
    box = whole(assembly)
    return {"width": box.x1 - box.x0, "height": assembly.height, "depth": box.y1 - box.y0}


def vanished(made: Set) -> list[str]:
    """Facts that are neither placed nor told as left over."""
    done = made.drawn.views.done
    placed = {fact for view in done.views.values() for fact in view.placed}
    told = {entry.fact for entry in done.unplaced}
    return [fact.id for fact in made.drawn.views.facts if fact.id not in placed | told]


def figures_of(made: Set, pages: tuple[Page, ...]) -> dict[str, float]:
    """The figures to improve of one set."""
    done = made.drawn.views.done
    details = {name for name in done.views if name.startswith("detail.")}
    leaders: list[float] = []
    stepped = crossed = 0
    for sheet in made.sheets.sheets:
        for placed in sheet.placed:
            leaders += _leaders(placed)
            stepped += sum(bool(dimension.leader) for dimension in placed.drawing.dimensions)
            crossed += _crossings(placed, made.sheets.style)
    return {
        "sheets": len(pages),
        "facts": len(made.drawn.views.facts),
        "facts without room": sum(not left.fact.startswith(BALLOON) for left in done.unplaced),
        "labels sent to pictures": sum(left.fact.startswith(BALLOON) for left in done.unplaced),
        "facts sent to details": sum(view in details for _, view in done.moved),
        "facts sent to another view": len(done.moved),
        "leaders": len(leaders),
        "leaders' length in all, mm": sum(leaders),
        "figures stepped out": stepped,
        "crossings of extension lines": crossed,
        "white space, sum over sheets": sum(_white(page) for page in pages),
    }


def _leaders(placed: Placed) -> list[float]:
    """Lengths on paper of the leaders of dimensions, notes and balloons, shelves included."""
    marks = [m for m in placed.drawing.marks if isinstance(m, Line) and m.meaning is Meaning.SIZE]
    lengths = [math.dist(mark.start, mark.end) for mark in marks]
    lengths += [
        sum(math.dist(p, q) for p, q in pairwise(dimension.leader))
        for dimension in placed.drawing.dimensions
        if dimension.leader
    ]
    return [length * placed.scale for length in lengths]


def _crossings(placed: Placed, style: str) -> int:
    """Extension lines of two dimensions of a view that cross each other."""
    lines: list[tuple[str, tuple[tuple[float, float], tuple[float, float]]]] = []
    for dimension in placed.drawing.dimensions:
        if dimension.kind not in ("linear", "running"):
            continue
        along = math.radians(dimension.direction_deg)
        for mark in dimension_marks(dimension, placed.scale, style):
            if isinstance(mark, Line):
                dx, dy = mark.end[0] - mark.start[0], mark.end[1] - mark.start[1]
                if abs(dx * math.cos(along) + dy * math.sin(along)) < 1e-6 < math.hypot(dx, dy):
                    lines.append((dimension.id, (mark.start, mark.end)))
    return sum(crossing(p, q) is not None for (one, p), (two, q) in combinations(lines, 2) if one != two)


def _white(page: Page) -> float:
    """The share of a page's squares in which nothing stands."""
    columns, rows = max(1, int(page.width // CELL)), max(1, int(page.height // CELL))
    taken: set[tuple[int, int]] = set()
    for stroke in page.strokes:
        steps = max(1, math.ceil(math.dist(stroke.start, stroke.end) / (CELL / 2)))
        for n in range(steps + 1):
            x = stroke.start[0] + (stroke.end[0] - stroke.start[0]) * n / steps
            y = stroke.start[1] + (stroke.end[1] - stroke.start[1]) * n / steps
            taken.add((int(x // CELL), int(y // CELL)))
    taken |= {(int(x // CELL), int(y // CELL)) for word in page.words for x, y in (*word.corners, word.middle)}
    return 1.0 - len({(i, j) for i, j in taken if 0 <= i < columns and 0 <= j < rows}) / (columns * rows)
