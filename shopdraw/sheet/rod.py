"""Rods: full-size strips for height, width and depth, with every level, dado and opening ticked and named.

A rod is laid against the work and the ticks carried over, so that nothing is measured twice. A tick is exact; its name
stands beside it, drawn apart where ticks crowd. Heights count from the floor, widths from the left outer face, depths
from the front plane.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from string import ascii_lowercase

from shopdraw.drawing.mark import Line, Mark, Meaning, Text
from shopdraw.measure import write_length
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import rectangle
from shopdraw.sheet.box import words_size
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.template_word import Template
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Shape, Stock
from shopdraw.wood.interference import Box, box_of

AXES = {"width": 0, "depth": 1, "height": 2}
FACES = {"width": ("left face", "right face"), "depth": ("front face", "rear face"), "height": ("under", "top")}
ENDS = {"width": ("left", "right"), "depth": ("front", "back"), "height": ("lower edge", "upper edge")}
ORIGIN = {"width": "from the left outer face", "depth": "from the front plane", "height": "from the floor"}
WORDS = 2.5
PITCH = 2.0 * WORDS
"""From one name to the next along the rod."""
TICK, LEAD, GAP = 20.0, 12.0, 1.5
"""Length of a tick; of the slanted line from it to its name; before the name."""
SAME_MM = 0.05
"""Ticks nearer than this are one line in a shop."""
TITLE = 5.0
_SQUARE = 0.999


@dataclass(frozen=True, slots=True)
class Tick:
    """A place on a rod: how far from its origin, mm, and what is there."""

    at: float
    names: tuple[str, ...]


def rods(assembly: Assembly, writing: Writing, piece: str, *, inch: bool) -> tuple[Template, ...]:
    """A rod each for height, width and depth.

    Args:
        assembly: the piece.
        writing: how sizes are written.
        piece: title and revision, printed on each page.
        inch: check lines of 4 in instead of 100 mm.
    """
    return tuple(
        _rod(way, ticks, writing, piece, inch=inch)
        for way in ("height", "width", "depth")
        if len(ticks := ticks_of(assembly, way)) > 1
    )


def ticks_of(assembly: Assembly, way: str) -> tuple[Tick, ...]:
    """Every place along one direction of the piece, in order, those on one line together.

    Args:
        assembly: the piece.
        way: "width", "depth" or "height".
    """
    told = (_overall, _levels, _boards, _openings)
    found = [place for tell in told for place in tell(assembly, way)]
    merged: list[Tick] = []
    for place, name in sorted(found, key=lambda item: round(item[0], 6)):
        if merged and place - merged[-1].at < SAME_MM:
            if name not in merged[-1].names:
                merged[-1] = Tick(merged[-1].at, (*merged[-1].names, name))
        else:
            merged.append(Tick(place, (name,)))
    return tuple(merged)


def _overall(assembly: Assembly, way: str) -> Iterator[tuple[float, str]]:
    size = {"width": assembly.width, "depth": assembly.depth, "height": assembly.height}[way]
    start = {"width": "left outer face", "depth": "front plane", "height": "floor"}[way]
    end = {"width": "right outer face", "depth": "sides' rear edges", "height": "top"}[way]
    yield 0.0, start
    yield size, end
    slant = assembly.slant
    if slant is not None and way == "height":
        yield slant.slant_start_mm, "slant starts"
        yield slant.hinge_pin_mm[1], "hinge pin"
    if slant is not None and way == "depth":
        yield slant.run_mm, "slant meets the top"


def _levels(assembly: Assembly, way: str) -> Iterator[tuple[float, str]]:
    """Both edges of each level's dado."""
    side = next((board for board in assembly.boards if board.member == "side"), None)
    if way != "height" or side is None:
        return
    foot = box_of(side)[2]
    for level in assembly.levels:
        if level.dado_bottom is not None and level.dado_width is not None:
            low = foot + level.dado_bottom
            yield low, f"dado {level.id}, lower edge"
            yield low + level.dado_width, f"dado {level.id}, upper edge"


def _boards(assembly: Assembly, way: str) -> Iterator[tuple[float, str]]:
    """Both faces of each board that lies square to the rod and stays where it is."""
    moving = {name for motion in assembly.motions for name in motion.boards}
    axis = AXES[way]
    for board in assembly.boards:
        if board.id not in moving and abs(board.frame.w[axis]) > _SQUARE:
            box: Box = box_of(board)
            for place, face in zip((box[axis], box[axis + 3]), FACES[way], strict=True):
                yield place, f"{_together(board.label)} {face}"


def _together(label: str) -> str:
    """What boards of one sub-assembly are called together: 6.1 for 6.1a and 6.1f."""
    return label.rstrip(ascii_lowercase) if "." in label else label


def _openings(assembly: Assembly, way: str) -> Iterator[tuple[float, str]]:
    for opening in assembly.openings:
        low, size = {
            "width": (opening.left, opening.width),
            "depth": (opening.front, opening.depth),
            "height": (opening.bottom, opening.height),
        }[way]
        for place, end in zip((low, low + size), ENDS[way], strict=True):
            yield place, f"opening {opening.id}, {end}"


def _rod(way: str, ticks: Sequence[Tick], writing: Writing, piece: str, *, inch: bool) -> Template:
    low, high = min(0.0, ticks[0].at), ticks[-1].at
    told = [f"{write_length(tick.at, writing.cut)}  {', '.join(tick.names)}" for tick in ticks]
    widest = max(words_size(words, WORDS)[0] for words in told)
    wide = TICK + LEAD + GAP + widest + GAP
    title = f"Rod: {way}, {ORIGIN[way]}"
    places = spread([tick.at for tick in ticks], PITCH)
    start, end = min(low, places[0] - PITCH), max(high, places[-1] + PITCH)
    frame = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
    outline = rectangle(start, 0.0, end, wide)
    stock = Stock("", "", "sheet", 1.0, "", 0.0, 0.0)
    strip = Board(f"rod.{way}", f"rod-{way}", f"rod, {way}", "rod", Shape(outline, 1.0), frame, stock)
    marks: list[Mark] = [Line((a.x, a.y), (b.x, b.y), Meaning.SIZE, strip.id) for a, b in outline.pairs()]
    for tick, place, words in zip(ticks, places, told, strict=True):
        marks += _tick_marks(tick, place, words, strip.id)
    return Template(strip, tuple(marks), (), (), title, piece, inch, writing.decimal_sign, rod=True)


def _tick_marks(tick: Tick, place: float, words: str, board: str) -> Iterator[Mark]:
    yield Line((tick.at, 0.0), (tick.at, TICK), Meaning.TEMPLATE, board)
    yield Line((tick.at, TICK), (place, TICK + LEAD), Meaning.SIZE, board)
    yield Text((place + WORDS / 2, TICK + LEAD + GAP), words, WORDS, "left", 90.0, Meaning.WORD, board)


def spread(places: Sequence[float], pitch: float) -> list[float]:
    """Places moved apart to a pitch at least, in their order, each as little as it can be.

    Groups that would overlap stand about the mean of what they name; groups that then meet become one.

    Args:
        places: rising.
        pitch: least distance between two.
    """
    groups: list[tuple[float, int]] = []
    for place in places:
        middle, count = place, 1
        while groups and middle - groups[-1][0] < pitch * (count + groups[-1][1]) / 2:
            other, many = groups.pop()
            middle, count = (middle * count + other * many) / (count + many), count + many
        groups.append((middle, count))
    return [middle + pitch * (n - (count - 1) / 2) for middle, count in groups for n in range(count)]
