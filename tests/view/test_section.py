"""Sections judged by rays through solids cut off at the plane, and against areas worked out by hand."""

import math

import pytest

from shopdraw.drawing.mark import ArcMark, Area, Line, Meaning
from shopdraw.shape.frame import Frame, dot
from shopdraw.shape.path import area
from shopdraw.view.direction import FRONT, ISOMETRIC, PLAN, RIGHT_SIDE
from shopdraw.view.section import Plane, section
from tests.view.judge import Judge
from tests.view.test_projection import _scans
from tests.wood.pieces import LYING, PLY, board, bored, cupboard, plain, tenoned_rail

AA = Plane(RIGHT_SIDE, (200.0, 0.0, 0.0))
BB = Plane(FRONT, (0.0, 150.0, 0.0))
CC = Plane(PLAN, (0.0, 0.0, 210.0))
SLANTWISE = Plane(ISOMETRIC, (200.0, 150.0, 150.0))
PLANES = {"A-A": AA, "B-B": BB, "C-C": CC, "slantwise": SLANTWISE}
PIECES = {
    "cupboard": cupboard(),
    "with a rail": (*cupboard(), board("rail", tenoned_rail(), LYING.moved((50.0, 120.0, 190.0)))),
}
CASES = [pytest.param(PIECES[p], PLANES[n], id=f"{p} {n}") for p in PIECES for n in PLANES]


def _areas(marks):
    found: dict[str, float] = {}
    for mark in marks:
        if isinstance(mark, Area):
            found[mark.board] = found.get(mark.board, 0.0) + area(mark.outline) - sum(map(area, mark.islands))
    return found


def _drawn(marks):
    return [mark for mark in marks if not isinstance(mark, Area)]


def _judge(boards, plane):
    return Judge(boards, plane.direction, dot(plane.through, plane.direction.toward))


@pytest.mark.parametrize(("boards", "plane"), CASES)
def test_rays_beside_each_line_of_a_section_see_different_things(boards, plane):
    assert _judge(boards, plane).idle_lines(_drawn(section(boards, plane, 0.2))) == []


@pytest.mark.parametrize(("boards", "plane"), CASES)
def test_where_near_rays_differ_a_line_of_the_section_passes(boards, plane):
    marks = _drawn(section(boards, plane, 0.2))
    assert _judge(boards, plane).gaps(marks, _scans(boards, plane.direction, 12)) == []


def test_an_edge_behind_a_section_left_out_is_caught():
    marks = _drawn(section(cupboard(), AA, 0.2))
    left = [m for m in marks if m.meaning is not Meaning.BEHIND]
    assert _judge(cupboard(), AA).gaps(left, [((-20.0, 120.0), (30.0, 120.0))]) != []


def test_cut_areas_are_those_of_the_boards():
    assert _areas(section(cupboard(), AA, 0.2)) == pytest.approx({"bottom": 5880.0, "shelf": 5880.0, "back": 2400.0})


def test_the_cut_side_shows_its_two_dados():
    # 400 × 20 less two dados of 20 × 6, at 150 behind the front where the slant is at its full height
    assert _areas(section(cupboard(), BB, 0.2))["side.left"] == pytest.approx(400 * 20 - 2 * 120)


def test_the_corner_of_a_slant_is_cut_on_a_true_slant():
    marks = section(cupboard(), Plane(RIGHT_SIDE, (5.0, 0.0, 0.0)), 0.2)
    assert _areas(marks)["side.left"] == pytest.approx(400 * 300 - 150 * 150 / 2)


def test_a_section_square_to_a_bore_keeps_a_true_circle():
    marks = section((board("b", bored(), LYING),), Plane(PLAN, (0.0, 0.0, -10.0)), 1.0)
    circles = [m for m in marks if isinstance(m, ArcMark)]
    assert [(c.centre, c.radius, c.end_deg - c.start_deg, c.meaning) for c in circles] == [
        ((40.0, 30.0), 5.0, 360.0, Meaning.CUT)
    ]
    assert _areas(marks)["b"] == pytest.approx(6000 - math.pi * 25)


def test_a_section_along_a_bore_cuts_the_board_in_two():
    marks = section((board("b", bored(), LYING),), Plane(FRONT, (0.0, 30.0, 0.0)), 1.0)
    assert len([m for m in marks if isinstance(m, Area)]) == 2
    assert _areas(marks)["b"] == pytest.approx(90 * 20)
    behind = [m for m in marks if not isinstance(m, Area) and m.meaning is Meaning.BEHIND]
    assert all(isinstance(m, Line) and m.start[1] == m.end[1] for m in behind)  # the far rims of the bore, seen on edge


def test_a_quarter_round_is_cut_as_a_true_arc():
    marks = section((board("r", tenoned_rail(), LYING),), Plane(RIGHT_SIDE, (100.0, 0.0, 0.0)), 1.0)
    assert [m.radius for m in marks if isinstance(m, ArcMark)] == [pytest.approx(8.0)]
    assert _areas(marks)["r"] == pytest.approx(1200 - math.pi * 16, abs=1e-6)


def test_what_is_left_whole_is_not_hatched():
    boards = (board("b", bored(), LYING), board("peg", plain(100, 4, 4), LYING.moved((0, 28, 30))))
    marks = section(boards, Plane(FRONT, (0.0, 30.0, 0.0)), 1.0, whole=("peg",))
    assert "peg" not in _areas(marks)
    assert any(m.board == "peg" for m in _drawn(marks))


def _patterns(marks):
    return {m.board: m.hatching for m in marks if isinstance(m, Area)}


def test_end_grain_is_hatched_at_45_and_long_grain_along_itself():
    across = _patterns(section(cupboard(), AA, 0.2))
    assert (across["shelf"].kind, across["shelf"].angle_deg) == ("lines", 45.0)
    along = _patterns(section(cupboard(), BB, 0.2))
    assert (along["shelf"].kind, along["shelf"].angle_deg) == ("broken", 0.0)
    assert (along["side.left"].kind, along["side.left"].angle_deg) == ("broken", 90.0)


def test_sheets_are_hatched_square_to_their_face():
    ply = board("ply", plain(200, 100, 12), LYING, PLY)
    pattern = _patterns(section((ply,), Plane(FRONT, (0.0, 50.0, 0.0)), 0.5))["ply"]
    assert (pattern.kind, pattern.angle_deg, pattern.pitch) == ("lines", 90.0, 3.0)


def test_three_boards_that_touch_are_told_apart():
    stack = tuple(board(f"b{i}", plain(200, 100, 20), LYING.moved((0, 0, 20.0 * i))) for i in range(4))
    patterns = _patterns(section(stack, Plane(RIGHT_SIDE, (100.0, 0, 0)), 1.0))
    assert [patterns[f"b{i}"].angle_deg for i in range(4)] == [45.0, 135.0, 45.0, 135.0]
    corner = (*stack[:2], board("c", plain(200, 20, 40), LYING.moved((0, 100, 20.0))))
    three = _patterns(section(corner, Plane(RIGHT_SIDE, (100.0, 0, 0)), 1.0))
    kinds = {(p.angle_deg, p.pitch < 2.5) for p in three.values()}
    assert len(kinds) == 3


def test_what_is_drawn_thinner_than_a_millimetre_is_grey():
    assert _patterns(section(cupboard(), AA, 0.1))["back"].kind == "grey"
    assert _patterns(section(cupboard(), AA, 0.2))["back"].kind == "lines"


def test_no_hatch_runs_along_the_longest_edge():
    turned = Frame((0, 0, -1), (math.sqrt(0.5), math.sqrt(0.5), 0.0), (math.sqrt(0.5), -math.sqrt(0.5), 0.0), (0, 0, 0))
    slanted = board("s", plain(100, 200, 20), turned)
    pattern = _patterns(section((slanted,), Plane(PLAN, (0.0, 0.0, -50.0)), 1.0))["s"]
    assert pattern.angle_deg == 60.0
