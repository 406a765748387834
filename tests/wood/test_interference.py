"""Shared wood and joints that close, against sizes worked out by hand."""

from dataclasses import replace

import pytest

from shopdraw.shape.frame import Frame
from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Assembly, Body, Joint
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.interference import closing, joint_closes, overlaps
from tests.wood.pieces import LYING, board, cupboard, dado, plain, slanted_side


def test_a_cupboard_made_to_size_shares_no_wood():
    assert overlaps(cupboard()) == ()


def test_a_shelf_one_millimetre_too_long_is_caught():
    boards = list(cupboard())
    shelf = boards[3]
    boards[3] = replace(shelf, shape=plain(373.0, 294.0, 20.0, *shelf.shape.cuts))
    found = overlaps(boards)
    # 1 mm more in the right dado's floor, over 20 of thickness and the 284 behind the notch
    assert [(a, b) for a, b, _ in found] == [("side.right", "shelf")]
    assert found[0][2] > 1 * 20 * 284 - 1e-6


def test_a_forgotten_dado_is_caught():
    boards = list(cupboard())
    boards[0] = replace(boards[0], shape=slanted_side())
    assert ("side.left", "bottom") in [(a, b) for a, b, _ in overlaps(boards)]


def test_boards_that_only_touch_share_nothing():
    one = board("one", plain(100.0, 50.0, 20.0), LYING)
    assert overlaps((one, board("two", plain(100.0, 50.0, 20.0), LYING.moved((0.1 + 0.2, 0.0, 20.0))))) == ()


def _shelf_in_a_side(length: float, relief: float, through: bool = False):
    depth = 20.0 if through else 6.0
    side = board("side", slanted_side(dado(50.0, 20.0, depth, (0.0, 300.0))), cupboard()[0].frame)
    shelf = board("shelf", plain(length, 300.0, 20.0), LYING.moved((20.0 - depth + relief, 0.0, 70.0)))
    # the dado's plane: x = 20, out of the host is +x; outline in (y, z)
    plane = Frame((0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), (20.0, 0.0, 0.0))
    body = Body(plane, rectangle(0.0, 50.0, 300.0, 70.0), depth - relief)
    joint = Joint("dado:side:shelf", "dado", "side", "shelf", body=body, relief=0.5)
    return Assembly("", "free", 400, 300, 400, (side, shelf), (joint,)), joint


def test_a_joint_with_its_stated_relief_closes():
    assembly, joint = _shelf_in_a_side(300.0, 0.5)
    assert closing(assembly, joint).gap == pytest.approx(0.5)
    assert joint_closes(assembly, joint)


def test_a_shelf_short_in_its_dado_does_not_close():
    assembly, joint = _shelf_in_a_side(300.0, 1.5)
    assert closing(assembly, joint).gap == pytest.approx(1.5)
    assert not joint_closes(assembly, joint)


def test_a_through_joint_closes_flush_with_the_far_face():
    assembly, joint = _shelf_in_a_side(300.0, 0.0, through=True)
    found = closing(assembly, joint)
    assert found.through
    assert found.gap == pytest.approx(0.0)
    assert joint_closes(assembly, joint)


def test_a_guest_that_is_not_there_does_not_close():
    assembly, joint = _shelf_in_a_side(300.0, 0.5)
    away = replace(assembly.boards[1], frame=LYING.moved((500.0, 0.0, 0.0)))
    moved = Assembly("", "free", 400, 300, 400, (assembly.boards[0], away), (joint,))
    assert not joint_closes(moved, joint)


def test_a_pocket_never_cut_does_not_close():
    assembly, joint = _shelf_in_a_side(300.0, 0.5)
    scratched = slanted_side(Cut("notch", Face.BACK, 0.0, 1.0, rectangle(1, 1, 2, 2)))
    solid_side = replace(assembly.boards[0], shape=scratched)
    assert not joint_closes(Assembly("", "free", 400, 300, 400, (solid_side, assembly.boards[1]), (joint,)), joint)
