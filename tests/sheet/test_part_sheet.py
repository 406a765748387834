"""Part sheets of the samples: every board has its cell, every cut can be rebuilt from the strings of its cell."""

from __future__ import annotations

import math
import re
from functools import lru_cache
from itertools import combinations, pairwise
from pathlib import Path as FilePath

import pytest

from shopdraw.build import build
from shopdraw.drawing.mark import ArcMark, Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Sheet, SheetSet
from shopdraw.lists.rough_size import Yard, yard_of
from shopdraw.piece.reading import read_piece
from shopdraw.shape.path import Path
from shopdraw.sheet.cell import GROUPS, Cell, cells, group_of
from shopdraw.sheet.cell_fact import cell_facts
from shopdraw.sheet.cell_heading import heading_lines
from shopdraw.sheet.manner import Manner, manner_of, title_fields
from shopdraw.sheet.part_page import BETWEEN_CELLS, MOST_CELLS, _spot_for, is_sparse
from shopdraw.sheet.part_sheet import GROUP_NAMES, _area, count_part_sheets, part_pages, part_sheets
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face
from shopdraw.wood.part import mirrored, parts, same_shape
from shopdraw.write.pdf import write_pdf
from tests.sheet.judge import judge
from tests.sheet.rebuilt_cell import numbers

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


def value_of(words: str, manner: Manner) -> float:
    """The first figure of a string in mm."""
    return numbers(words, manner.inch)[0]


def table_sizes(name: str, cell: Cell, letter: str) -> list[str]:
    words = [m.words for sheet in made(name)[2] for m in sheet.marks if isinstance(m, Text)]
    found = []
    for part in cell.parts:
        (line,) = [w for w in words if w.startswith(part.labels) and re.search(rf": {letter} ", w)]
        found.append(line.split(f": {letter} ")[1])
    return found


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


@pytest.mark.parametrize("name", sorted(path.stem for path in SAMPLES.glob("*.piece")))
def test_a_sheet_is_called_after_what_is_on_it(name: str) -> None:
    """No sheet of a piece without a lid speaks of one; every member of every sample has its own group."""
    assembly = build(read_piece(SAMPLES / f"{name}.piece").design)
    known = {family for families in GROUPS for family in families}
    assert {board.member.split(".")[0] for board in assembly.boards} <= known
    lidded = any(board.member.split(".")[0] in ("lid", "ledge", "support") for board in assembly.boards)
    groups = {GROUP_NAMES[group_of(board.member)] for board in assembly.boards}
    assert ("lid and supports" in groups) == lidded


@pytest.mark.parametrize("name", sorted(path.stem for path in SAMPLES.glob("*.piece")))
def test_no_last_sheet_holds_parts_that_earlier_ones_have_room_for(name: str) -> None:
    design = read_piece(SAMPLES / f"{name}.piece").design
    assembly, manner = build(design), manner_of(design)
    yard = yard_of(design)
    pages = part_pages(assembly, manner.writing, manner.scales, manner.look, manner.size, manner.third_angle, yard)
    area = _area(manner.size, manner.look)
    for scale in {page.scale for page in pages}:
        alike = [page.cells for page in pages if page.scale == scale]
        for page in alike:
            boxes = [(c.at[0], c.at[1] - c.cell.height, c.at[0] + c.cell.width, c.at[1]) for c in page]
            assert len(page) <= MOST_CELLS
            assert all(area.holds(box) for box in boxes)
            for a, b in combinations(boxes, 2):
                assert max(b[0] - a[2], a[0] - b[2], b[1] - a[3], a[1] - b[3]) > BETWEEN_CELLS - 1e-6
        if len(alike) > 1:
            biggest = max(alike[-1], key=lambda c: c.cell.width * c.cell.height).cell
            spots = [_spot_for(biggest, page, area) for page in alike[:-1]]
            assert len(alike[-1]) > 1 or not any(spots), biggest.cell.board.label
    # a sheet that is mostly open takes what comes after it, so at most one of two such ones follow each other
    open_ones = [is_sparse(page.cells, area) and len(page.cells) < 4 for page in pages]
    assert not any(a and b for a, b in pairwise(open_ones))


@pytest.mark.parametrize("name", sorted(path.stem for path in SAMPLES.glob("*.piece")))
def test_a_face_mark_runs_to_an_edge_that_is_there_and_every_drawer_front_has_one(name: str) -> None:
    design = read_piece(SAMPLES / f"{name}.piece").design
    assembly, manner = build(design), manner_of(design)
    pages = part_pages(
        assembly, manner.writing, manner.scales, manner.look, manner.size, manner.third_angle, yard_of(design)
    )
    marked: set[str] = set()
    for view in (s.view for page in pages for c in page.cells for s in c.cell.views):
        lines = [m for m in view.drawing.marks if isinstance(m, Line)]
        loops = [m for m in view.drawing.marks if isinstance(m, ArcMark) and m.meaning is Meaning.WORD]
        for loop in loops:
            tails = [
                m for m in lines if m.meaning is Meaning.WORD and math.dist(m.start, loop.centre) < 1.01 * loop.radius
            ]
            assert len(tails) == 1
            x, y = tails[0].end
            wood = [m for m in lines if m.meaning in (Meaning.VISIBLE, Meaning.BEHIND)]
            level = [m for m in wood if abs(m.start[1] - y) < 1e-3 and abs(m.end[1] - y) < 1e-3]
            assert any(min(m.start[0], m.end[0]) <= x <= max(m.start[0], m.end[0]) for m in level), view.drawing.id
            marked.add(loop.board)
    fronts = [cell for cell in cells(assembly, manner.writing) if cell.board.member == "drawer.front"]
    assert all(marked & set(cell.boards) for cell in fronts)


@pytest.mark.parametrize("name", ["harbour-master-desk", "plan-chest"])
def test_no_running_size_of_a_part_is_measured_to_a_point_off_it(name: str) -> None:
    design = read_piece(SAMPLES / f"{name}.piece").design
    assembly, manner = build(design), manner_of(design)
    looked_at = 0
    for cell in cells(assembly, manner.writing):
        u0, v0, u1, v1 = cell.board.shape.box
        for fact in (f for facts in cell_facts(cell, assembly).values() for f in facts):
            if fact.kind != "running" or not fact.views[0].endswith(".face"):
                continue
            (x, y) = fact.b.sights[0].point
            assert u0 - 1e-3 <= x <= u1 + 1e-3, fact.id
            assert v0 - 1e-3 <= y <= v1 + 1e-3, fact.id
            looked_at += 1
    assert looked_at > 20
