"""Part sheets of the samples: every board has its cell, every cut can be rebuilt from the strings of its cell."""

from __future__ import annotations

import math
import re
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from pathlib import Path as FilePath

import pytest

from shopdraw.build import build
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Sheet, SheetSet
from shopdraw.lists.rough_size import Yard
from shopdraw.piece.reading import read_piece
from shopdraw.shape.path import Path, bounds
from shopdraw.sheet.cell import Cell, cells
from shopdraw.sheet.cell_heading import heading_lines
from shopdraw.sheet.cut_note import home_of, standing_cuts
from shopdraw.sheet.manner import Manner, manner_of, title_fields
from shopdraw.sheet.part_page import MOST_CELLS
from shopdraw.sheet.part_sheet import count_part_sheets, part_pages, part_sheets
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Cut, Face
from shopdraw.wood.part import mirrored, parts, same_shape
from shopdraw.write.pdf import write_pdf
from tests.sheet.judge import judge

SAMPLES = FilePath(__file__).parents[2] / "sample_projects"
NAMES = ("chart-room-desk", "harbour-office-desk", "pilot-station-desk")


@lru_cache
def made(name: str) -> tuple[Assembly, Manner, tuple[Sheet, ...]]:
    piece = read_piece(SAMPLES / f"{name}.piece")
    assembly, manner = build(piece.design), manner_of(piece.design)
    fields = title_fields(piece.design, manner)
    sheets = part_sheets(piece.design, assembly, manner.look, manner.size, fields, 5, 20)
    assert len(sheets) == count_part_sheets(piece.design, assembly, manner.look, manner.size)
    return assembly, manner, tuple(sheets)


@lru_cache
def drawings(name: str) -> dict[str, Drawing]:
    return {placed.drawing.id: placed.drawing for sheet in made(name)[2] for placed in sheet.placed}


def told_cells(name: str) -> tuple[Cell, ...]:
    assembly, manner, _ = made(name)
    return cells(assembly, manner.writing)


@pytest.mark.parametrize("name", NAMES)
def test_the_sheets_have_no_fault_that_the_judge_counts(name: str, tmp_path: FilePath) -> None:
    _, manner, sheets = made(name)
    sheet_set = SheetSet("parts", "", "", manner.style, sheets)
    path = tmp_path / "parts.pdf"
    write_pdf(sheet_set, path)
    assert {rule: faults for rule, faults in judge(path, sheet_set, manner.reduction).items() if faults} == {}


@pytest.mark.parametrize("name", NAMES)
def test_every_board_stands_in_one_cell(name: str) -> None:
    assembly, _, _ = made(name)
    told = [board.id for cell in told_cells(name) for part in (*cell.parts, *cell.mirrored) for board in part.boards]
    assert sorted(told) == sorted(board.id for board in assembly.boards)


@pytest.mark.parametrize("name", NAMES)
def test_labels_and_sizes_stand_over_each_cell(name: str) -> None:
    assembly, _manner, sheets = made(name)
    words = " ".join(m.words for sheet in sheets for m in sheet.marks if isinstance(m, Text))
    for board in assembly.boards:
        assert re.search(rf"(?<![\w.]){re.escape(board.label)}(?![\w])", words), board.label


@pytest.mark.parametrize("name", NAMES)
def test_every_heading_is_printed_whole(name: str) -> None:
    assembly, _, sheets = made(name)
    words = " ".join(m.words for sheet in sheets for m in sheet.marks if isinstance(m, Text))
    for cell in told_cells(name):
        for line in heading_lines(cell, assembly, ()):
            assert " ".join(line.split()) in words


@pytest.mark.parametrize("name", NAMES)
def test_a_sheet_has_one_scale_and_twelve_cells_at_most(name: str) -> None:
    assembly, manner, sheets = made(name)
    pages = part_pages(assembly, manner.writing, manner.scales, manner.look, manner.size, manner.third_angle, Yard())
    for page, sheet in zip(pages, sheets, strict=True):
        assert len(page.cells) <= MOST_CELLS
        assert {placed.scale for placed in sheet.placed} == {page.scale.ratio}
        printed = [m.words for m in sheet.marks if isinstance(m, Text)]
        assert any(page.scale.name in words for words in printed)


@pytest.mark.parametrize("name", NAMES)
def test_no_cell_touches_another(name: str) -> None:
    assembly, manner, _ = made(name)
    look, size = manner.look, manner.size
    for page in part_pages(assembly, manner.writing, manner.scales, look, size, manner.third_angle, Yard()):
        boxes = [(c.at[0], c.at[1] - c.cell.height, c.at[0] + c.cell.width, c.at[1]) for c in page.cells]
        for i, a in enumerate(boxes):
            for b in boxes[i + 1 :]:
                assert a[2] < b[0] or b[2] < a[0] or a[3] < b[1] or b[3] < a[1]


@pytest.mark.parametrize("name", NAMES)
def test_case_04_left_and_right_are_two_parts_and_a_reflection(name: str) -> None:
    assembly, _, _ = made(name)
    left, right = assembly.board("side.left"), assembly.board("side.right")
    every = {part.id: part.quantity for part in parts(assembly.boards)}
    assert every["side.left"] == 1
    assert every["side.right"] == 1
    assert same_shape(mirrored(left.shape), right.shape)
    assert not same_shape(left.shape, right.shape)
    (cell,) = [cell for cell in told_cells(name) if cell.board.id == "side.left"]
    assert [part.id for part in cell.mirrored] == ["side.right"]


@pytest.mark.parametrize("name", NAMES)
def test_the_pair_lies_on_the_bench_backs_together_feet_left(name: str) -> None:
    _assembly, _, _sheets = made(name)
    drawing = drawings(name)["part.1L.face"]
    words = {m.words: m.at for m in drawing.marks if isinstance(m, Text)}
    assert {"left", "right", "inside up", "front edge", "back edge"} <= set(words)
    backs = sorted(m.at[1] for m in drawing.marks if isinstance(m, Text) and m.words == "back edge")
    fronts = sorted(m.at[1] for m in drawing.marks if isinstance(m, Text) and m.words == "front edge")
    assert fronts[0] < backs[0] < backs[1] < fronts[1]
    # Edges of dados: the same distances from the foot on both boards, one set of figures for both.
    upright: dict[str, set[float]] = {"side.left": set(), "side.right": set()}
    for mark in drawing.marks:
        if isinstance(mark, Line) and mark.meaning is Meaning.VISIBLE and abs(mark.start[0] - mark.end[0]) < 1e-9:
            upright[mark.board].add(round(mark.start[0], 3))
    assert upright["side.left"] == upright["side.right"]
    running = [d for d in drawing.dimensions if d.kind == "running" and d.direction_deg == 0.0]
    assert running
    assert len({d.line[1] for d in running}) == 1
    low = max(
        y
        for m in drawing.marks
        if isinstance(m, Line) and m.board == "side.right" and m.meaning is Meaning.VISIBLE
        for y in (m.start[1], m.end[1])
    )
    assert low < running[0].line[1] < 0.0


@pytest.mark.parametrize("name", NAMES)
def test_every_cut_can_be_rebuilt_from_the_strings_of_its_cell(name: str) -> None:
    checked = 0
    for cell in told_cells(name):
        board = cell.board
        for index in standing_cuts(board):
            rebuild(name, cell, board.shape.cuts[index], index)
            checked += 1
    assert checked > 40


@pytest.mark.parametrize("name", NAMES)
def test_length_and_width_stand_once_on_each_cell(name: str) -> None:
    step = 0.05 if not made(name)[1].inch else 25.4 / 64
    for cell in told_cells(name):
        views = [d for i, d in drawings(name).items() if i.startswith(f"part.{cell.id}.")]
        for which, size in (("length", cell.board.length), ("width", cell.board.width)):
            found = [d.words for view in views for d in view.dimensions if f":{which}:start" in d.id]
            assert len(found) == 1, f"{cell.id}: {which} stands {len(found)} times"
            if cell.varies == which:
                assert found[0] == {"length": "L", "width": "W"}[which]
                table = [value_of(t, made(name)[1]) for t in table_sizes(name, cell, found[0])]
                wanted = [getattr(part.first, which) for part in cell.parts]
                assert table == pytest.approx(wanted, abs=step + 1e-6)
            else:
                assert value_of(found[0], made(name)[1]) == pytest.approx(size, abs=step + 1e-6)


# Reading strings.

_NUMBER = r"\d+ \d+/\d+|\d+/\d+|\d*[.,]?\d+"


def value_of(words: str, manner: Manner) -> float:
    """The first figure of a string in mm."""
    return numbers(words, manner)[0]


def numbers(words: str, manner: Manner) -> list[float]:
    """All figures of a string in mm."""
    found = []
    for text in re.findall(_NUMBER, words):
        if " " in text:
            whole, part = text.split()
            value = float(int(whole) + Fraction(part))
        elif "/" in text:
            value = float(Fraction(text))
        else:
            value = float(text.replace(",", "."))
        found.append(value * (25.4 if manner.inch else 1.0))
    return found


def table_sizes(name: str, cell: Cell, letter: str) -> list[str]:
    words = [m.words for sheet in made(name)[2] for m in sheet.marks if isinstance(m, Text)]
    found = []
    for part in cell.parts:
        (line,) = [w for w in words if w.startswith(part.labels) and re.search(rf": {letter} ", w)]
        found.append(line.split(f": {letter} ")[1])
    return found


def rebuild(name: str, cell: Cell, cut: Cut, index: int) -> None:
    """Works a cut out from the words on its view and holds it against the board."""
    board, manner = cell.board, made(name)[1]
    view = home_of(board, cut)
    drawing = drawings(name)[f"part.{cell.id}.{view.value}"]
    step = (25.4 / 64 if manner.inch else 0.05) + 1e-6
    told = [numbers(w, manner) for w in words_for(name, cell, drawing, cut, index)]
    where = f"{name} {cell.id} {board.cut_ids[index]}"
    assert told, f"{where}: no words on {view.value}"
    if cut.face in (Face.FACE, Face.BACK) and not cut.islands:
        sides = dict(zip(("u0", "v0", "u1", "v1"), bounds(cut.outline), strict=True))
        _pocket(where, board, cut, sides, told, located(drawing, board, view, manner), step)
    elif cut.face in (Face.NEAR, Face.FAR) and cut.depth < board.width - 1e-3:
        u0, w0, u1, w1 = bounds(cut.outline)
        assert any(_holds(t, (u1 - u0, w1 - w0, cut.depth, -w1), step) for t in told), f"{where}: {told}"
        assert _placed(u0, "along", located(drawing, board, view, manner), step), f"{where}: not located"
    elif cut.islands and cut.face in (Face.FOOT, Face.HEAD):
        for island in cut.islands:
            v0, w0, v1, w1 = bounds(island)
            assert any(_holds(t, (w1 - w0, v1 - v0, cut.depth, -w1), step) for t in told), f"{where}: {told}"
            low = min(_from_edge(board, v0), _from_edge(board, v1))
            assert low < 1e-3 or _placed(low, "across", located(drawing, board, view, manner), step)
    elif cut.islands:
        for island in cut.islands:
            places = located(drawing, board, view, manner)
            assert any(_placed(_from_edge(board, c.y), "across", places, step) for c in island.corners), where
            xs = sorted({round(c.x, 6) for c in island.corners})
            for x in xs:
                ys = [c.y for c in island.corners if abs(c.x - x) < 1e-3]
                assert any(_holds(t, (max(ys) - min(ys),), step) for t in told), f"{where}: {told}"
    else:
        _end_cut(where, name, cell, cut, told, drawing, step)


def _end_cut(
    where: str, name: str, cell: Cell, cut: Cut, told: list[list[float]], drawing: Drawing, step: float
) -> None:
    """Bevels and mitres by tilt and one point, sockets by both widths, channels along the grain by their diameter."""
    board, manner = cell.board, made(name)[1]
    if any(c.bulge for c in cut.outline.corners):
        x0, _, x1, _ = bounds(cut.outline)
        assert any(_holds(t, (x1 - x0, cut.depth), step) for t in told), f"{where}: {told}"
        start = cut.start if cut.face is Face.FOOT else board.length - cut.start - cut.depth
        assert _placed(start, "along", located(drawing, board, Face.FACE, manner), step), where
        return
    levels = sorted({round(c.y, 6) for c in cut.outline.corners})
    if cut.depth < board.length / 2 and len(levels) == 2 and cut.face in (Face.FOOT, Face.HEAD):
        for level in levels:
            xs = [c.x for c in cut.outline.corners if abs(c.y - level) < 1e-3]
            assert any(_holds(t, (max(xs) - min(xs), cut.depth), step) for t in told), f"{where}: {told}"
        places = located(drawing, board, cut.face, manner)
        assert any(_placed(_from_edge(board, c.x), "across", places, step) for c in cut.outline.corners), where
        return
    # One flank stands in the wood: its slope from w, and where it crosses one of the two faces.
    (i,) = [i for i in range(len(cut.outline.corners)) if i not in cut.open]
    (ax, aw, _), (bx, bw, _) = list(cut.outline.pairs())[i]
    tilt = abs(math.degrees(math.atan2(bx - ax, bw - aw)))
    tilt = min(tilt, 180.0 - tilt)
    crossings = [ax + (level - aw) * (bx - ax) / (bw - aw) for level in (0.0, -board.thickness)]
    whole = board.width if cut.face in (Face.FOOT, Face.HEAD) else board.length
    distances = [d for x in crossings for d in (abs(x), abs(whole - x))]
    scale = 25.4 if manner.inch else 1.0
    ok = any(
        any(abs(n / scale - tilt) < 0.051 for n in t) and any(abs(n - d) <= step for n in t for d in distances)
        for t in told
    )
    assert ok, f"{where}: {told}, tilt {tilt:.2f}, crossings {crossings}"


def _pocket(
    where: str,
    board: Board,
    cut: Cut,
    sides: dict[str, float],
    told: list[list[float]],
    places: dict[str, list[tuple[float, float]]],
    step: float,
) -> None:
    """Both extents of a pocket must follow: from the board's edges, from figures, or from one of these and words."""
    u0, v0, u1, v1 = sides.values()
    across = sorted((_from_edge(board, v0), _from_edge(board, v1)))
    for way, (low, high), whole in (("along", (u0, u1), board.length), ("across", across, board.width)):
        at_low = low < 1e-3 or _placed(low, way, places, step)
        at_high = high > whole - 1e-3 or _placed(high, way, places, step)
        size = any(_holds(t, (high - low,), step) for t in told)
        follows = (at_low and at_high) or ((at_low or at_high) and size)
        assert follows, f"{where}: {way} {sides} from {told} and {places}"
    through = cut.start + cut.depth >= board.thickness - 1e-3
    assert through or any(_holds(t, (cut.depth,), step) for t in told), f"{where}: depth {cut.depth} not in {told}"


def _from_edge(board: Board, v: float) -> float:
    return board.width - v if board.reference_edge == "far" else v


def _holds(told: list[float], sizes: tuple[float, ...], step: float) -> bool:
    """Whether a string holds each of the sizes; one of 0 needs no figure."""
    return all(size < 1e-3 or any(abs(n - size) <= step for n in told) for size in sizes)


def _placed(distance: float, way: str, places: dict[str, list[tuple[float, float]]], step: float) -> bool:
    """Whether a figure stands at that distance and says it."""
    return any(abs(exact - distance) < 1e-3 and abs(said - distance) <= step for exact, said in places[way])


def located(drawing: Drawing, board: Board, view: Face, manner: Manner) -> dict[str, list[tuple[float, float]]]:
    """Running figures of a view: where each really stands from its origin, and what it says."""
    found: dict[str, list[tuple[float, float]]] = {"along": [], "across": []}
    for d in drawing.dimensions:
        if d.kind == "running":
            along = d.direction_deg == 0.0
            exact = abs(d.b[0] - d.a[0]) if along else abs(d.b[1] - d.a[1])
            found["along" if along else "across"].append((exact, value_of(d.words, manner)))
    return found


_OTHER_WORDS = {"dovetail": ("socket", "tail")}


def words_for(name: str, cell: Cell, drawing: Drawing, cut: Cut, index: int) -> list[str]:
    """The notes of a view that name a cut's kind, and whose leader ends at it or that speak for several."""
    kind = cut.kind.replace("-", " ")
    kinds = _OTHER_WORDS.get(kind, (kind,))
    found = []
    for text, tip in notes_of(drawing):
        if any(k in text for k in kinds) and (re.match(r"\d+ × ", text) or _belongs(tip, cut)):
            found.append(text)
            bare = re.sub(r"^\d+ × ", "", text)
            # A flank's angles and place stand in the heading, under the words that its leader carries.
            found += [line for line in heading_lines(cell, made(name)[0], ()) if line.startswith(f"{bare}: ")]
    return found


def notes_of(drawing: Drawing) -> list[tuple[str, tuple[float, float]]]:
    """Words at leaders with the point that the leader goes to: the line from it stands before its shelf and its end."""
    marks = drawing.marks
    return [
        (mark.words, marks[i - 3].start)
        for i, mark in enumerate(marks)
        if isinstance(mark, Text) and mark.meaning is Meaning.SIZE and isinstance(marks[i - 3], Line)
    ]


def _belongs(tip: tuple[float, float], cut: Cut) -> bool:
    """Whether a leader ends within a cut that its view shows square; in any other view the kind must do."""
    if cut.face not in (Face.FACE, Face.BACK):
        return True
    x0, y0, x1, y1 = bounds(cut.outline)
    y = -tip[1] if cut.face is Face.BACK and tip[1] < 0 else tip[1]
    return x0 - 1e-6 <= tip[0] <= x1 + 1e-6 and y0 - 1e-6 <= y <= y1 + 1e-6


def test_a_cell_of_a_varying_size_has_six_lines_at_most() -> None:
    for name in NAMES:
        assert all(len(cell.parts) <= 6 for cell in told_cells(name))


def test_outline_of_the_slant_is_told_by_its_two_ends_and_the_angle_in_brackets() -> None:
    for name in NAMES:
        assembly, manner, _ = made(name)
        board, drawing = assembly.board("side.left"), drawings(name)["part.1L.face"]
        step = (25.4 / 64 if manner.inch else 0.05) + 1e-6
        places = located(drawing, board, Face.FACE, manner)
        corners: Path = board.shape.outline
        ((a, b),) = [(p, q) for p, q in corners.pairs() if abs(p.x - q.x) > 1 and abs(p.y - q.y) > 1]
        for u, v in ((a.x, a.y), (b.x, b.y)):
            assert u > board.length - 1e-3 or _placed(u, "along", places, step)
            assert v > board.width - 1e-3 or _placed(v, "across", places, step)
        angle = math.degrees(math.atan2(abs(a.x - b.x), abs(a.y - b.y)))
        written = f"{angle:.1f}".replace(".", manner.writing.decimal_sign)
        words = [m.words for m in drawing.marks if isinstance(m, Text)]
        assert any(w.startswith(f"(slant {written}° from level") and w.endswith(")") for w in words), words


@pytest.mark.parametrize("spoil", ["no places", "wrong place", "wrong width", "no words"])
def test_the_rebuilding_itself_notices_what_is_missing(spoil: str, monkeypatch: pytest.MonkeyPatch) -> None:
    name = "chart-room-desk"
    (cell,) = [cell for cell in told_cells(name) if cell.board.id == "side.left"]
    drawing = drawings(name)["part.1L.face"]
    marks, dimensions = drawing.marks, drawing.dimensions
    if spoil == "no places":
        dimensions = tuple(d for d in dimensions if d.kind != "running")
    elif spoil == "wrong place":
        dimensions = tuple(replace(d, words=d.words.replace("15", "25")) for d in dimensions)
    elif spoil == "wrong width":
        marks = tuple(replace(m, words=m.words.replace("21.10", "22.10")) if isinstance(m, Text) else m for m in marks)
    else:
        marks = tuple(m for m in marks if not (isinstance(m, Text) and "dado" in m.words))
    spoilt = {**drawings(name), "part.1L.face": replace(drawing, marks=marks, dimensions=dimensions)}
    monkeypatch.setattr("tests.sheet.test_part_sheet.drawings", lambda _name: spoilt)
    index = next(i for i, cut_id in enumerate(cell.board.cut_ids) if cut_id == "dado:side.left:bottom")
    with pytest.raises(AssertionError):
        rebuild(name, cell, cell.board.shape.cuts[index], index)
