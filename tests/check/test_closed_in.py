"""Faces that a step closes in, on boxes small enough to see it by eye."""

from shopdraw.build import build
from shopdraw.check.assembly_order import PIECE
from shopdraw.check.closed_in import closed_in, steps_with_closed
from shopdraw.shape.frame import Frame
from shopdraw.wood.assembly import Assembly
from tests.check.desks import design
from tests.wood.pieces import LYING, board, plain


def facing_pair(apart):
    """Two upright boards, reference faces to each other."""
    left = board("left", plain(200.0, 100.0, 20.0), Frame((0, 0, 1), (0, -1, 0), (1, 0, 0), (0.0, 100.0, 0.0)))
    right = board("right", plain(200.0, 100.0, 20.0), Frame((0, 0, 1), (0, 1, 0), (-1, 0, 0), (apart, 0.0, 0.0)))
    return Assembly("", "free", 1.0, 1.0, 1.0, (left, right))


def test_two_faces_that_look_at_each_other_are_sanded_before_the_second_board():
    first, second = closed_in(facing_pair(300.0))
    assert first.sand == ()
    assert first.finish == ()
    assert set(second.sand) == {("left", "face"), ("right", "face")}
    assert second.finish == ()


def test_faces_that_touch_are_a_joint_and_not_told_of():
    assert all(not closed.sand for closed in closed_in(facing_pair(1.0)))


def test_what_no_brush_reaches_is_finished_before():
    # 10 mm apart and 100 deep: from the middle half of the face no way at 45° leads out
    assert set(closed_in(facing_pair(10.0))[1].finish) == {("left", "face"), ("right", "face")}


def test_a_desks_case_is_sanded_inside_before_the_second_side():
    steps = [(step, closed) for step, closed in steps_with_closed(build(design())) if step.group == PIECE]
    closing = next(closed for step, closed in steps if step.unit == "side.right")
    assert {("side.left", "face"), ("side.right", "face")} <= set(closing.sand)


def test_no_outside_face_of_a_desk_is_closed_in():
    assembly = build(design())
    shut = {key for _, closed in steps_with_closed(assembly) for key in (*closed.sand, *closed.finish)}
    outside = {("side.left", "back"), ("side.right", "back"), ("top", "face"), ("plinth.front", "face")}
    assert not shut & outside


def test_a_single_board_has_nothing_closed_in():
    alone = board("alone", plain(100.0, 50.0, 20.0), LYING)
    assert [c.sand for c in closed_in(Assembly("", "free", 1.0, 1.0, 1.0, (alone,)))] == [()]
