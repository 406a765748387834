"""Nested sheets: room for the cutter, margins, keep-out strips, labels, each part once; by true arcs and GDAL."""

from pathlib import Path

import pytest
import shapely

from shopdraw.cnc.cutter import Cutter, default_cutters
from shopdraw.cnc.nest import Nests, gap_for, nests
from shopdraw.cnc.nest_check import nest_faults
from shopdraw.cnc.nested_sheet import Nest, Nested, Nesting
from shopdraw.cnc.part import router_part
from shopdraw.piece.design import CaseTable, Design
from shopdraw.piece.shop import Shop
from shopdraw.shape.path import rectangle
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.part import Part
from tests.cnc.router_reader import SAMPLES, piece, read, router_parts, written
from tests.wood.pieces import LYING, PLY, board, plain
from tests.write.dxf_tags import entities_of

DESIGN = Design(case=CaseTable(width=900, height=1000, depth=480))
QUARTER = (Cutter("1/4 in", "straight", 6.35),)


def sheet_parts(*sizes: tuple[float, float], cut: Cut | None = None) -> list:
    cuts = () if cut is None else (cut,)
    boards = [
        board(f"{i}a", plain(length, width, 6.0, *cuts), LYING, PLY) for i, (length, width) in enumerate(sizes, 1)
    ]
    return [router_part(Part(one.id, (one,)), DESIGN, cutters=QUARTER) for one in boards]


def nested(*sizes: tuple[float, float], how: Nesting | None = None, cut: Cut | None = None) -> Nests:
    return nests(sheet_parts(*sizes, cut=cut), DESIGN, Shop(), QUARTER, how)


def test_case_27_gap_holds_the_cutter_and_its_allowance_twice() -> None:
    parts = sheet_parts((300, 400), (300, 400))
    assert gap_for(parts, QUARTER, Nesting(allowance=0.0))[1] == pytest.approx(6.35)
    assert gap_for(parts, QUARTER, Nesting(allowance=0.5))[1] == pytest.approx(7.35)
    (sheet,) = nests(parts, DESIGN, Shop(), QUARTER).sheets
    assert nest_faults(sheet) == ()


def test_case_27_parts_6_apart_with_a_cutter_of_6_35_are_a_fault() -> None:
    one, two = sheet_parts((300, 400), (300, 400))
    (sheet,) = nested((300, 400), (300, 400)).sheets
    near = Nest(
        1, "P1", PLY, (1000.0, 600.0),
        (Nested(one.part.first, (20.0, 20.0), one), Nested(two.part.first, (326.0, 20.0), two)),
        6.35, 6.35, Nesting(allowance=0.0), sheet.flat, sheet.layers,
    )  # fmt: skip
    (fault,) = nest_faults(near)
    assert "6.00 mm apart" in fault
    assert "6.35" in fault


def test_case_13_no_line_of_a_nest_lies_on_another(tmp_path: Path) -> None:
    (sheet,) = nested((300, 400), (300, 400), (300, 400)).sheets
    edges = [shape.exterior for layer, shape, _ in read(tmp_path, written(sheet.flat)) if layer == "THROUGH_ALL"]
    assert len(edges) == 3
    for i, edge in enumerate(edges):
        for other in edges[i + 1 :]:
            assert edge.intersection(other).length < 0.01
            assert edge.distance(other) >= 6.35 + 2 * 0.5 - 0.002


def test_run_outs_of_pockets_have_their_own_room() -> None:
    dado = Cut("dado", Face.FACE, 0.0, 2.0, rectangle(0.0, 50.0, 1000.0, 70.0))
    (sheet,) = nested((300, 400), (300, 400), cut=dado).sheets
    # r + 1 past the edge, and the cutter's radius beyond: 3.175 + 1 + 3.175
    assert sheet.gap > 7.35
    assert nest_faults(sheet) == ()


def test_case_42_each_part_lies_once_with_its_label_inside(tmp_path: Path) -> None:
    sizes = ((400, 120), (400, 121), (400, 140), (400, 141))
    (sheet,) = nested(*sizes).sheets
    found = read(tmp_path, written(sheet.flat))
    edges = [shape for layer, shape, _ in found if layer == "THROUGH_ALL"]
    words = [(shape, text) for _, shape, text in found if text]
    for number, (length, width) in enumerate(sizes, 1):
        label = f"{number}a"
        (spot,) = [shape for shape, text in words if text.split()[0] == label]
        (edge,) = [edge for edge in edges if edge.contains(spot)]
        assert edge.bounds[2] - edge.bounds[0] == pytest.approx(length), "grain along x"
        assert edge.bounds[3] - edge.bounds[1] == pytest.approx(width)


@pytest.mark.parametrize("strips", [((600.0, 700.0),), ((0.0, 100.0), (1200.0, 1240.0))])
def test_nothing_lies_in_keep_out_strips_or_margins(strips: tuple[tuple[float, float], ...], tmp_path: Path) -> None:
    how = Nesting(margin=20.0, keep_out=strips)
    found = nested(*[(500, 350)] * 9, how=how)
    laid = 0
    for sheet in found.sheets:
        assert nest_faults(sheet) == ()
        length, width = sheet.size
        for layer, shape, _ in read(tmp_path, written(sheet.flat)):
            if layer == "THROUGH_ALL":
                laid += 1
                x0, y0, x1, y1 = shape.bounds
                assert min(x0, y0, length - x1, width - y1) >= 20.0 - 0.001
                assert all(x1 <= low + 0.001 or x0 >= high - 0.001 for low, high in strips)
    assert laid == 9


def test_part_cut_from_both_faces_is_told_and_not_nested() -> None:
    on_face = Cut("dado", Face.FACE, 0.0, 2.0, rectangle(50, 0, 70, 100))
    on_back = Cut("dado", Face.BACK, 0.0, 2.0, rectangle(150, 0, 170, 100))
    one = board("1a", plain(300.0, 100.0, 6.0, on_face, on_back), LYING, PLY)
    found = nests([router_part(Part("1a", (one,)), DESIGN, cutters=QUARTER)], DESIGN, Shop(), QUARTER)
    assert found.sheets == ()
    assert found.left_out == (("1a", "cut from both faces: by its own files"),)


def test_part_larger_than_any_sheet_is_told() -> None:
    found = nested((3000, 100), (300, 100))
    assert len(found.sheets) == 1
    assert [label for label, _ in found.left_out] == ["1a"]


@pytest.mark.parametrize("sample", SAMPLES)
def test_sheets_of_a_sample_hold_every_sheet_part_once_and_stock_is_the_sheet(sample: str, tmp_path: Path) -> None:
    design, assembly = piece(sample)
    made = router_parts(sample)
    found = nests(made, design, Shop(), default_cutters(inch=design.piece.units == "inch"))
    labels = [one.board.label for sheet in found.sheets for one in sheet.parts]
    left_out = {label for labels, _ in found.left_out for label in labels.split(", ")}
    wanted = [b.label for b in assembly.boards if b.stock.kind == "sheet" and b.label not in left_out]
    assert sorted(labels) == sorted(wanted)
    for sheet in found.sheets:
        assert nest_faults(sheet) == ()
        data = written(sheet.flat)
        layers = {e.get(8) for e in entities_of(data, "ENTITIES")}
        assert layers == {layer.name for layer in sheet.layers} | {"NOTE", "STOCK"}
        (stock,) = [shape for layer, shape, _ in read(tmp_path, data) if layer == "STOCK"]
        unit = 25.4 if sheet.flat.unit.value == "in" else 1.0
        assert shapely.affinity.scale(stock, unit, unit, origin=(0, 0)).bounds == pytest.approx((0, 0, *sheet.size))
