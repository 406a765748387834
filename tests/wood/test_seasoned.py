"""Solids stretched to another season against those made anew from the same shapes."""

from dataclasses import replace
from pathlib import Path

import pytest

from shopdraw.build import build
from shopdraw.piece.reading import read_piece
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import CHORD_TOLERANCE_MM, polygon, rectangle
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Cut, Face, Shape
from shopdraw.wood.season import in_season, stretched
from shopdraw.wood.seasoned import seasoned_wood, stretch_between
from shopdraw.wood.solid import placed_solid, solid
from tests.wood.pieces import LYING, arcs_mm2, board, bored, plain

SAMPLES = sorted((Path(__file__).parents[2] / "sample_projects").glob("*.piece"))
WIDER = 1.01


def _off(one, other):
    """Wood that two solids don't share, mm³."""
    return (one - other).volume() + (other - one).volume()


def _grooved(*more):
    groove = Cut("groove", Face.FACE, 0.0, 6.0, rectangle(0.0, 80.0, 400.0, 90.0))
    return plain(400.0, 100.0, 20.0, groove, *more)


def _in_place(shape, later):
    """The solid that the other season's board gets, at the world's origin."""
    return seasoned_wood(Assembly("", "free", 1, 1, 1, (board("a", shape, LYING),)))(board("a", later, LYING))


def test_a_board_without_kept_grooves_is_stretched_evenly():
    shape = _grooved()
    assert stretch_between(shape, stretched(shape, WIDER)).evenly
    assert _off(_in_place(shape, stretched(shape, WIDER)), solid(stretched(shape, WIDER))) < 1e-6


def test_a_kept_groove_moves_with_the_wood_and_keeps_its_width():
    shape = _grooved(Cut("groove", Face.BACK, 0.0, 5.0, rectangle(0.0, 20.0, 400.0, 24.0)))
    later = stretched(shape, WIDER, (True, False))
    stretch = stretch_between(shape, later)
    assert not stretch.evenly
    assert _off(_in_place(shape, later), solid(later)) < 1e-6
    assert _off(_in_place(shape, later), solid(stretched(shape, WIDER))) > 100.0


@pytest.mark.parametrize(
    "crossing",
    [
        Cut("bevel", Face.FOOT, 0.0, 400.0, polygon(((70.0, 1.0), (101.0, 1.0), (101.0, -19.0)))),
        Cut("bore", Face.TILTED, -1.0, 10.0, rectangle(0.0, 0.0, 5.0, 5.0),
            frame=Frame((1.0, 0.0, 0.0), (0.0, 0.8, -0.6), (0.0, 0.6, 0.8), (50.0, 50.0, 0.0))),
    ],
    ids=["a slant across the groove", "a tilted cut"],
)  # fmt: skip
def test_what_would_come_out_bent_is_made_anew(crossing):
    shape = _grooved(crossing)
    later = stretched(shape, WIDER, (True, False))
    assert stretch_between(shape, later) is None
    assert _off(_in_place(shape, later), solid(later)) == 0.0


def test_corners_at_one_place_that_part_are_made_anew():
    shape = _grooved(Cut("groove", Face.BACK, 0.0, 5.0, rectangle(0.0, 80.0, 400.0, 84.0)))
    later = stretched(shape, WIDER, (True, False))
    assert stretch_between(shape, later) is None
    assert _off(_in_place(shape, later), solid(later)) == 0.0


def test_a_round_hole_moves_to_its_new_place():
    shape = bored()
    later = stretched(shape, WIDER)
    middle = 10.0 * 20.0 * (2 * 5.0 * (WIDER - 1.0))  # at most a rim as wide as the stretch of the hole
    assert _off(_in_place(shape, later), solid(later)) < 2 * middle


def _without_holes(shape):
    """The shape without the round holes, which the stretching treats less strictly."""
    kept = tuple(cut for cut in shape.cuts if len(cut.outline.corners) > 2)
    return Shape(shape.outline, shape.thickness, kept)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_boards_of_the_samples_with_kept_grooves_come_out_as_if_made_anew(path):
    built = build(read_piece(path).design)
    plainer = replace(built, boards=tuple(replace(b, shape=_without_holes(b.shape)) for b in built.boards))
    wood = seasoned_wood(plainer)
    for moisture in (built.moisture.dry, built.moisture.wet):
        for now in in_season(built, moisture).boards:
            later = replace(now, shape=_without_holes(now.shape))
            stretch = stretch_between(plainer.board(now.id).shape, later.shape)
            if stretch is None or stretch.evenly:
                continue
            allowed = 1.0 + CHORD_TOLERANCE_MM * arcs_mm2(later.shape)
            assert _off(wood(later), placed_solid(later)) < allowed, (now.id, moisture)
