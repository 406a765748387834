"""Rectangular faces hide what lies whole behind them, and nothing else."""

import numpy as np

from shopdraw.view.direction import FRONT, ISOMETRIC
from shopdraw.view.scene import scene
from shopdraw.view.standing import Shown, standing
from shopdraw.view.wide_face import WideFaces, behind_a_rectangle, wide_faces
from shopdraw.wood.facet import facets
from tests.wood.pieces import LYING, board, box_board, plain


def _wide(boards, direction):
    return wide_faces(scene(standing([Shown(facets(b.shape), b.frame) for b in boards]), direction))[0]


def _slope():
    """A square of 10 whose depth rises from 0 at its left side to 10 at its right side."""
    low, high = np.zeros((1, 2)), np.full((1, 2), 10.0)
    return WideFaces(np.zeros(1, dtype=np.int64), np.array([[1.0, 0.0]]), np.zeros(1), low, high, np.ones(1) > 0)


def test_an_edge_is_hidden_only_when_both_ends_are_behind_the_plane():
    start = np.array([[5.0, 1.0, 4.0], [5.0, 1.0, 4.0], [5.0, 1.0, 6.0]])
    end = np.array([[8.0, 9.0, 7.0], [8.0, 9.0, 9.0], [8.0, 9.0, 7.0]])
    assert behind_a_rectangle((start, end), _slope()).tolist() == [True, False, False]


def test_an_edge_that_stands_out_at_the_side_is_not_hidden_and_one_on_the_rim_is():
    start, end = np.array([[5.0, 0.0, 0.0], [5.0, 1.0, 0.0]]), np.array([[10.0, 0.0, 0.0], [10.1, 1.0, 0.0]])
    assert behind_a_rectangle((start, end), _slope()).tolist() == [True, False]


def test_a_face_does_not_hide_what_touches_it():
    touching = np.array([[5.0, 5.0, 5.0]])
    assert not behind_a_rectangle((touching, touching), _slope()).any()


def test_faces_behind_another_one_are_left_out():
    front = board("front", plain(200, 20, 100), LYING)
    rear = board("rear", plain(150, 20, 80), LYING.moved((9, 40, -9)))
    assert len(_wide((front, rear), FRONT).face) == 1


def test_a_box_seen_from_a_corner_has_three_wide_faces_none_of_them_upright_rectangles():
    found = _wide((box_board(),), ISOMETRIC)
    assert len(found.face) == 3
    assert not found.rectangular.any()
