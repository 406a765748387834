"""Free nesting: cheaper than strips where shapes allow it, grain kept, gaps by true arcs and by another reader."""

from __future__ import annotations

import random
from pathlib import Path as FilePath

import pytest
import shapely

from shopdraw.cnc.cutter import Cutter
from shopdraw.cnc.nest import Nests, nests
from shopdraw.cnc.nest_check import nest_faults
from shopdraw.cnc.nested_sheet import Nesting
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.piece.design import CaseTable, Design, StockTable
from shopdraw.piece.shop import SheetTable, Shop
from shopdraw.shape.path import Corner, Path, polygon, rectangle
from shopdraw.wood.board import Cut, Face, Shape
from shopdraw.wood.part import Part
from tests.cnc.router_reader import on, read, written
from tests.wood.pieces import LYING, PLY, board

QUARTER = (Cutter("1/4 in", "straight", 6.35),)
GAP = 6.35 + 2 * 0.5


def design(*, turn: bool) -> Design:
    stock = {PLY.name: StockTable(species=PLY.species, kind="sheet", thickness=PLY.thickness, turn=turn)}
    return Design(case=CaseTable(width=900, height=1000, depth=480), stock=stock)


def made(*outlines: Path, turn: bool = False, cuts: tuple[Cut, ...] = ()) -> list[RouterPart]:
    boards = [board(f"{i}a", Shape(outline, 6.0, cuts), LYING, PLY) for i, outline in enumerate(outlines, 1)]
    return [router_part(Part(one.id, (one,)), design(turn=turn), cutters=QUARTER) for one in boards]


def laid(parts: list[RouterPart], length: float, width: float, *, turn: bool = False, **how: object) -> Nests:
    """Nested on sheets that hold this much between the margins."""
    margin = Nesting(**how).margin  # type: ignore[arg-type]
    shop = Shop(sheet={"whole": SheetTable(width=width + 2 * margin, length=length + 2 * margin)})
    return nests(parts, design(turn=turn), shop, QUARTER, Nesting(**how))  # type: ignore[arg-type]


def test_case_59_the_router_cuts_the_pinwheel_that_no_saw_can() -> None:
    """Four of 720 × 480 round a middle: 720 + 480 and a gap of 7.35 each way; strips hold three a sheet."""
    side = 720 + 480 + GAP + 0.5
    found = laid(made(*[rectangle(0, 0, 720, 480)] * 4, turn=True), side, side, turn=True)
    assert [(sheet.way, len(sheet.parts)) for sheet in found.sheets] == [("freely", 4)]
    assert sorted(one.quarters % 2 for one in found.sheets[0].parts) == [0, 0, 1, 1]
    assert nest_faults(found.sheets[0]) == ()


def test_case_58_without_its_word_no_part_is_turned_to_save_a_sheet() -> None:
    side = 720 + 480 + GAP + 0.5
    found = laid(made(*[rectangle(0, 0, 720, 480)] * 4), side, side)
    assert len(found.sheets) == 2
    assert all(one.quarters % 2 == 0 for sheet in found.sheets for one in sheet.parts)


SLANTED = polygon(((0, 0), (900, 0), (200, 500), (0, 500)))


def test_slanted_sides_lie_head_to_foot() -> None:
    """Two of 900 below and 200 above, 500 high: 1100 and the gap along the slant, not 1800."""
    # the slant rises 500 over 700: a gap of 7.35 across it is 7.35 × hypot(500, 700) / 500 = 12.65 along the sheet
    found = laid(made(SLANTED, SLANTED), 1100 + 12.65 + 1.0, 500.1)
    assert [(sheet.way, len(sheet.parts)) for sheet in found.sheets] == [("freely", 2)]
    assert {one.quarters for one in found.sheets[0].parts} == {0, 2}
    assert nest_faults(found.sheets[0]) == ()
    assert len(laid(made(SLANTED, SLANTED), 1100 + 12.65 - 1.0, 500.1).sheets) == 2


@pytest.mark.parametrize("turn", [False, True])
def test_a_turned_part_is_the_same_part(turn: bool, tmp_path: FilePath) -> None:
    """Outline and pocket as GDAL reads them, turned back, are those of the part's own file."""
    groove = Cut("groove", Face.FACE, 0.0, 2.0, rectangle(60, 80, 120, 300))
    parts = made(SLANTED, SLANTED, turn=turn, cuts=(groove,))
    room = (1114.0, 501.0) if not turn else (501.0, 1114.0)
    (sheet,) = laid(parts, *room, turn=turn).sheets
    alone = read(tmp_path, written(parts[0].settings[0].flat))
    own = {layer: on(alone, layer) for layer in ("THROUGH_ALL", "SINK_200H")}
    whole = [shape for layer, shape, _ in read(tmp_path, written(sheet.flat)) if layer in own]
    edges = [shape for shape in whole if shape.area > 1e5]
    assert {one.quarters for one in sheet.parts} == ({1, 3} if turn else {0, 2})
    for one in sheet.parts:
        (edge,) = [edge for edge in edges if abs(edge.bounds[0] - one.at[0]) + abs(edge.bounds[1] - one.at[1]) < 0.01]
        (pocket,) = [shape for shape in whole if shape.area < 1e5 and edge.contains(shape)]
        for shape, layer in ((edge, "THROUGH_ALL"), (pocket, "SINK_200H")):
            back = shapely.affinity.rotate(shape, -90 * one.quarters, origin=(0, 0))
            other = shapely.affinity.rotate(edge, -90 * one.quarters, origin=(0, 0)).bounds
            moved = shapely.affinity.translate(back, -other[0], -other[1])
            assert moved.symmetric_difference(own[layer]).area < 0.5


def test_a_quarter_turn_that_is_not_free_is_a_fault() -> None:
    side = 720 + 480 + GAP + 0.5
    (sheet,) = laid(made(*[rectangle(0, 0, 720, 480)] * 4, turn=True), side, side, turn=True).sheets
    for one in sheet.parts:
        object.__setattr__(one, "free", False)
    assert sum("grain" in fault for fault in nest_faults(sheet)) == 2


def random_outline(chance: random.Random) -> Path:
    """A rectangle, a slanted side, an angle, or a bracket with an arc."""
    w, h = chance.uniform(120, 520), chance.uniform(100, 420)
    a, b = chance.uniform(0.2, 0.7) * w, chance.uniform(0.2, 0.7) * h
    match chance.randrange(4):
        case 0:
            return rectangle(0, 0, w, h)
        case 1:
            return polygon(((0, 0), (w, 0), (a, h), (0, h)))
        case 2:
            return polygon(((0, 0), (w, 0), (w, b), (a, b), (a, h), (0, h)))
        case _:
            hollow = min(w, h) * 0.6
            return Path((Corner(0, 0), Corner(w, 0), Corner(w, h - hollow, -0.41421356), Corner(w - hollow, h),
                         Corner(0, h)))


@pytest.mark.parametrize("seed", range(12))
def test_random_nests_keep_every_rule_and_cost_no_more_than_strips(seed: int, tmp_path: FilePath) -> None:
    chance = random.Random(seed)
    outlines = [random_outline(chance) for _ in range(chance.randint(6, 16))]
    turn = seed % 2 == 0
    strips = ((400.0, 450.0),) if seed % 3 == 0 else ()
    parts = made(*outlines, turn=turn)
    found = laid(parts, 1000.0, 700.0, turn=turn, keep_out=strips)
    assert found.left_out == ()
    assert sorted(one.board.id for sheet in found.sheets for one in sheet.parts) == sorted(
        part.part.first.id for part in parts
    )
    for sheet in found.sheets:
        assert nest_faults(sheet) == ()
        assert turn or all(one.quarters % 2 == 0 for one in sheet.parts)
        edges = [shape for layer, shape, _ in read(tmp_path, written(sheet.flat)) if layer == "THROUGH_ALL"]
        length, width = sheet.size
        for i, edge in enumerate(edges):
            x0, y0, x1, y1 = edge.bounds
            assert min(x0, y0, length - x1, width - y1) >= 15.0 - 0.003
            assert all(x1 <= low + 0.003 or x0 >= high - 0.003 for low, high in strips)
            for other in edges[i + 1 :]:
                # chords of the reader are up to 1e-3 inside their arcs
                assert edge.distance(other) >= GAP - 0.005
    assert {sheet.way for sheet in found.sheets} <= {"in strips", "freely"}


def test_the_same_parts_give_the_same_nest() -> None:
    chance = random.Random(4)
    parts = made(*[random_outline(chance) for _ in range(14)])
    assert laid(parts, 1000.0, 700.0) == laid(parts, 1000.0, 700.0)
