"""Bores are circles, openings run the other way round, and what goes through is cut once."""

from pathlib import Path

import pytest
import shapely

from shopdraw.cnc.flat import Circle, FlatPart, NotFlat, Unit
from shopdraw.cnc.part import RouterPart, flat_part, router_part
from shopdraw.piece.design import CaseTable, Design
from shopdraw.shape.path import circle, rectangle
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.part import Part
from tests.cnc.router_reader import on, read, written
from tests.wood.pieces import LYING, board, plain

DESIGN = Design(case=CaseTable(width=900, height=1000, depth=480))
BORES = (
    Cut("bore", Face.FACE, 0.0, 12.0, circle((50.0, 30.0), 2.5)),
    Cut("bore", Face.FACE, 0.0, 20.0, circle((350.0, 30.0), 4.0)),
    Cut("opening", Face.FACE, 0.0, 20.0, rectangle(100, 40, 140, 60)),
)


def made_of(*cuts: Cut, unit: Unit | None = None) -> RouterPart:
    one = board("b", plain(400.0, 100.0, 20.0, *cuts), LYING)
    return router_part(Part("b", (one,)), DESIGN, unit)


def test_case_26_bores_have_their_depth_in_the_layers_name() -> None:
    (setting,) = made_of(*BORES).settings
    told = {operation.layer: operation.shape for operation in setting.flat.operations}
    assert set(told) == {"HOLE_1200H", "HOLE_ALL", "INSIDE_ALL"}
    assert told["HOLE_1200H"] == Circle((50.0, 30.0), 2.5)
    assert {(layer.name, layer.count) for layer in setting.layers} == {
        ("HOLE_1200H", 1), ("HOLE_ALL", 1), ("INSIDE_ALL", 1), ("THROUGH_ALL", 1)
    }  # fmt: skip


def test_opening_and_bores_are_read_back_where_they_are(tmp_path: Path) -> None:
    found = read(tmp_path, written(made_of(*BORES).settings[0].flat))
    assert on(found, "INSIDE_ALL").equals(shapely.box(100, 40, 140, 60))
    (blind,) = [shape for layer, shape, _ in found if layer == "HOLE_1200H"]
    assert blind.bounds == pytest.approx((47.5, 27.5, 52.5, 32.5), abs=0.01)


def test_island_in_a_pocket_stays_standing(tmp_path: Path) -> None:
    pocket = Cut("groove", Face.FACE, 0.0, 6.0, rectangle(50, 20, 150, 80), (rectangle(80, 40, 120, 60),))
    (setting,) = made_of(pocket).settings
    assert [operation.island for operation in setting.flat.operations] == [False, True]
    assert on(read(tmp_path, written(setting.flat)), "SINK_600H").area == pytest.approx(100 * 60 - 40 * 20)


def test_pockets_of_one_depth_that_overlap_are_one_and_of_two_depths_are_two() -> None:
    across, along = rectangle(50, 0, 70, 100), rectangle(0, 40, 400, 50)
    alike = made_of(Cut("dado", Face.FACE, 0.0, 6.0, across), Cut("groove", Face.FACE, 0.0, 6.0, along))
    assert len(alike.settings[0].flat.operations) == 1
    assert alike.settings[0].cuts == (0, 1)
    apart = made_of(Cut("dado", Face.FACE, 0.0, 6.0, across), Cut("groove", Face.FACE, 0.0, 7.0, along))
    assert [o.layer for o in apart.settings[0].flat.operations] == ["SINK_600H", "SINK_700H"]


def test_larger_cut_area_is_face_1_and_ties_go_to_the_reference_face() -> None:
    on_face = Cut("dado", Face.FACE, 0.0, 6.0, rectangle(50, 0, 70, 100))
    on_back = Cut("dado", Face.BACK, 0.0, 6.0, rectangle(150, 0, 175, 100))
    assert [s.face for s in made_of(on_face, on_back).settings] == [Face.BACK, Face.FACE]
    same = Cut("dado", Face.BACK, 0.0, 6.0, rectangle(150, 0, 170, 100))
    assert [s.face for s in made_of(on_face, same).settings] == [Face.FACE, Face.BACK]


def test_board_that_falls_apart_is_refused() -> None:
    with pytest.raises(NotFlat, match="leave 2 pieces"):
        made_of(Cut("slot", Face.FACE, 0.0, 20.0, rectangle(100, 0, 110, 100)))


def test_flat_part_of_a_face_is_that_settings_and_a_face_without_cuts_has_none() -> None:
    one = board("b", plain(400.0, 100.0, 20.0, Cut("dado", Face.FACE, 0.0, 6.0, rectangle(50, 0, 70, 100))), LYING)
    piece = Assembly("t", "slant-desk", 400, 100, 20, (one,))
    flat = flat_part(one, piece, DESIGN, Face.FACE)
    assert isinstance(flat, FlatPart)
    assert flat.cut_outline
    with pytest.raises(NotFlat, match="nothing is cut from its back"):
        flat_part(one, piece, DESIGN, Face.BACK)
