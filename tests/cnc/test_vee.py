"""V-grooves: one run of the cutter's middle, depth and angle in the layer, width at the surface in the table."""

import math

import pytest

from shopdraw.cnc.cutter import Cutter
from shopdraw.cnc.flat import OpenLine
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.piece.design import CaseTable, Design
from shopdraw.shape.path import polygon
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.part import Part
from tests.cnc.router_reader import written
from tests.wood.pieces import LYING, board, plain
from tests.write.dxf_tags import entities_of

DESIGN = Design(case=CaseTable(width=900, height=1000, depth=480))


def groove(depth: float, half: float, *, start: float = 0.0, run: float = 400.0, at: float = 50.0) -> Cut:
    return Cut("v-groove", Face.FOOT, start, run, polygon([(at - half, 0.0), (at, -depth), (at + half, 0.0)]))


def made_of(*cuts: Cut, marks: bool = False, cutters: tuple[Cutter, ...] | None = None) -> RouterPart:
    one = board("b", plain(400.0, 100.0, 20.0, *cuts), LYING)
    return router_part(Part("b", (one,)), DESIGN, cutters=cutters, marks=marks)


def test_groove_of_90_degrees_is_a_line_with_its_depth_and_angle() -> None:
    made = made_of(groove(3.0, 3.0))
    (operation,) = made.settings[0].flat.operations
    assert operation.layer == "VEE_300H_90"
    # it runs out at both ends: half its width and 1 mm past the edges
    assert operation.shape == OpenLine((-4.0, 50.0), (404.0, 50.0))
    use = next(layer for layer in made.settings[0].layers if layer.name == "VEE_300H_90")
    assert "6.0 mm wide at the surface" in use.purpose
    assert (use.cutter, use.count) == ("90°", 1)
    assert made.second == ()


def test_stopped_groove_ends_half_its_width_before_its_end() -> None:
    (operation,) = made_of(groove(3.0, 3.0, start=50.0, run=200.0)).settings[0].flat.operations
    assert operation.shape == OpenLine((53.0, 50.0), (247.0, 50.0))


def test_groove_of_60_degrees_needs_its_own_cutter() -> None:
    half = 3.0 * math.tan(math.radians(30.0))
    found = made_of(groove(3.0, half))
    assert found.settings[0].flat.operations[0].layer == "VEE_300H_60"
    assert "vee-missing" in {finding.code for finding in found.findings}
    job = (Cutter("6 mm", "straight", 6.0), Cutter("60°", "vee", 10.0, angle=60.0))
    assert "vee-missing" not in {finding.code for finding in made_of(groove(3.0, half), cutters=job).findings}


def test_leaning_groove_is_left_to_a_second_setting() -> None:
    leaning = Cut("v-groove", Face.FOOT, 0.0, 400.0, polygon([(47.0, 0.0), (49.0, -3.0), (53.0, 0.0)]))
    made = made_of(leaning)
    assert made.settings[0].flat.operations == ()
    assert len(made.second) == 1


def test_groove_is_written_as_a_line_and_nothing_closed() -> None:
    entities = entities_of(written(made_of(groove(3.0, 3.0)).settings[0].flat), "ENTITIES")
    (line,) = [e for e in entities if e.get(8) == "VEE_300H_90"]
    assert line.kind == "LINE"
    assert [float(line.get(code) or 0) for code in (10, 20, 11, 21)] == pytest.approx([-4.0, 50.0, 404.0, 50.0])


def test_marks_are_scored_only_when_asked_for() -> None:
    mitre = Cut("mitre", Face.NEAR, 0.0, 100.0, polygon([(0, -20), (20, -20), (0, 0)]))
    plain_one, scored = made_of(mitre), made_of(mitre, marks=True)
    assert plain_one.settings[0].flat.operations == ()
    (operation,) = scored.settings[0].flat.operations
    assert operation.layer == "MARK_30H"
    assert operation.shape == OpenLine((20.0, 0.0), (20.0, 100.0))
    assert len(scored.second) == 1, "a mark makes no cut"
