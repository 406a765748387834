"""Boards whole behind others: named only where no line of theirs can be seen."""

import math
from dataclasses import replace

import numpy as np
import pytest

from shopdraw.drawing.mark import Meaning
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import circle, rectangle
from shopdraw.view.direction import FRONT, ISOMETRIC, PLAN, RIGHT_SIDE
from shopdraw.view.projection import lines_of, project
from shopdraw.view.standing import Shown, standing
from shopdraw.view.unseen import unseen
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.facet import facets
from tests.view.test_desk_views import SAMPLES, _desk
from tests.wood.pieces import LYING, board, plain, slanted_side

WAYS = {"front": FRONT, "side": RIGHT_SIDE, "plan": PLAN}


def _named(boards, direction=FRONT):
    found = unseen([(one.shape, one.frame) for one in boards], direction)
    return {one.id for one, hidden in zip(boards, found, strict=True) if hidden}


def _upright(name, length, height, at, *cuts):
    """A board 20 thick that stands upright, its reference face to the front."""
    frame = Frame((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0), at)
    return board(name, plain(length, height, 20.0, *cuts), frame)


COVER = _upright("cover", 200.0, 200.0, (0.0, 0.0, 0.0))
BEHIND = _upright("behind", 100.0, 100.0, (50.0, 30.0, 50.0))


def test_what_lies_whole_behind_a_board_is_named():
    assert _named((COVER, BEHIND)) == {"behind"}
    assert _named((BEHIND, COVER)) == {"behind"}


@pytest.mark.parametrize("at", [(101.0, 30.0, 50.0), (50.0, 30.0, 101.0), (-1.0, 30.0, 50.0), (50.0, 30.0, -1.0)])
def test_what_reaches_beyond_its_edge_is_not(at):
    assert not _named((COVER, replace(BEHIND, frame=replace(BEHIND.frame, at=at))))


def test_what_touches_its_edge_from_behind_is():
    assert _named((COVER, _upright("behind", 200.0, 200.0, (0.0, 20.0, 0.0)))) == {"behind"}


def test_what_stands_before_it_or_within_its_thickness_is_not():
    assert not _named((COVER, replace(BEHIND, frame=replace(BEHIND.frame, at=(50.0, -25.0, 50.0)))))


@pytest.mark.parametrize(
    ("cut", "hides"),
    [
        (Cut("bore", Face.FACE, 0.0, 20.0, circle((100.0, 100.0), 2.0)), False),
        (Cut("bore", Face.BACK, 0.0, 19.0, circle((100.0, 100.0), 2.0)), True),
        (Cut("bore", Face.FACE, 0.0, 20.0, circle((20.0, 20.0), 2.0)), True),
        (Cut("dado", Face.FACE, 0.0, 6.0, rectangle(0.0, 90.0, 200.0, 110.0)), False),
        (Cut("dado", Face.BACK, 0.0, 6.0, rectangle(0.0, 90.0, 200.0, 110.0)), True),
        (Cut("notch", Face.FAR, 0.0, 80.0, rectangle(60.0, -20.0, 80.0, 0.0)), False),
    ],
    ids=["a hole through", "one from behind, blind", "one beside", "a dado in its face", "one behind", "a notch"],
)
def test_where_a_cut_reaches_its_face_nothing_is_taken_for_hidden(cut, hides):
    assert _named((_upright("cover", 200.0, 200.0, (0.0, 0.0, 0.0), cut), BEHIND)) == ({"behind"} if hides else set())


def test_boards_that_meet_hide_together_and_a_gap_between_them_shows():
    left = _upright("left", 100.0, 200.0, (0.0, 0.0, 0.0))
    for gap, named in ((0.0, {"behind"}), (0.5, set())):
        right = _upright("right", 100.0, 200.0, (100.0 + gap, 0.0, 0.0))
        assert _named((left, right, BEHIND)) == named


def test_beside_a_slant_only_what_whole_sides_cover_is_hidden():
    side = board("side", slanted_side(), Frame((0, 0, 1), (0, -1, 0), (1, 0, 0), (20.0, 300.0, 0.0)))
    low = board("low", plain(200.0, 200.0, 20.0), Frame((0, 1, 0), (0, 0, 1), (1, 0, 0), (-30.0, 50.0, 20.0)))
    high = replace(low, id="high", frame=replace(low.frame, at=(-30.0, 50.0, 190.0)))
    assert _named((side, low, high), RIGHT_SIDE) == {"low"}


def test_a_leaning_board_hides_what_lies_below_its_lowest_point():
    c, s = math.cos(0.6), math.sin(0.6)
    leaning = Frame((1.0, 0.0, 0.0), (0.0, c, s), (0.0, -s, c), (0.0, 0.0, 300.0))
    lid = board("lid", plain(400.0, 400.0, 20.0), leaning)
    for z, named in ((290.0, {"under"}), (330.0, set())):
        under = board("under", plain(100.0, 100.0, 20.0), LYING.moved((100.0, 60.0, z)))
        assert _named((lid, under), PLAN) == named


def test_seen_askew_no_board_is_named():
    assert not _named((COVER, BEHIND), ISOMETRIC)


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("name", SAMPLES)
def test_no_board_of_a_sample_that_shows_a_line_is_named_and_what_is_left_shows_the_same(name, way):
    boards, direction = _desk(name).boards, WAYS[way]
    shown = {mark.board for mark in project(boards, direction) if mark.meaning is Meaning.VISIBLE}
    named = _named(boards, direction)
    assert not named & shown
    assert named or name == "tide-lectern"
    left = [one for one in boards if one.id not in named]
    views = [
        lines_of(
            standing([Shown(facets(one.shape), one.frame) for one in some]),
            [one.id for one in some],
            direction,
            Meaning.VISIBLE,
            None,
            np.zeros(len(some), dtype=np.bool_),
        )
        for some in (boards, left)
    ]
    assert set(views[0]) == set(views[1])
