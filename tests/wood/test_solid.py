"""Solids against sizes worked out by hand."""

import math

import numpy as np
import pytest

from shopdraw.shape.crossing import CrossesItself
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Corner, Path, circle, polygon, rectangle
from shopdraw.wood.board import Cut, Face, Shape
from shopdraw.wood.flank import open_segments
from shopdraw.wood.solid import is_sound, placed_solid, solid, solid_volume
from tests.wood.pieces import bored, box_board, cupboard, dado, plain, slanted_side, tenoned_rail


def test_equal_shapes_share_one_solid():
    assert solid(slanted_side()) is solid(slanted_side())


def test_a_through_dado_leaves_no_skin():
    shape = slanted_side(dado(50.0, 20.0, 6.0, (0.0, 300.0)))
    assert solid_volume(shape) == pytest.approx((400 * 300 - 150 * 150 / 2 - 0) * 20 - 20 * 6 * 300, abs=1e-6)
    assert solid(shape).genus() == 0
    assert len(solid(shape).decompose()) == 1


def test_a_dado_that_runs_out_of_the_slant_takes_just_the_wood_that_is_there():
    shape = slanted_side(dado(300.0, 20.0, 6.0, (0.0, 300.0)))
    # at u = 300 the slant stands at v = 250, at u = 320 at v = 230
    assert solid_volume(shape) == pytest.approx(20 * (120000 - 11250) - 6 * 20 * 240, abs=1e-6)


def test_a_dado_drawn_to_the_slant_leaves_no_skin_there():
    cut = Cut("dado", Face.FACE, 0.0, 6.0, polygon(((300.0, 0.0), (320.0, 0.0), (320.0, 230.0), (300.0, 250.0))))
    shape = slanted_side(cut)
    assert open_segments(shape.outline, 20.0, cut) == (0, 2)
    assert solid_volume(shape) == pytest.approx(20 * (120000 - 11250) - 6 * 20 * 240, abs=1e-6)
    assert len(solid(shape).decompose()) == 1
    assert is_sound(solid(shape))


def test_overlapping_cuts_are_taken_away_once():
    shape = plain(100.0, 60.0, 20.0, dado(20.0, 10.0, 8.0, (0.0, 60.0)), dado(0.0, 100.0, 5.0, (0.0, 12.0)))
    assert solid_volume(shape) == pytest.approx(120000 - 8 * 10 * 60 - 5 * 12 * 100 + 5 * 12 * 10, abs=1e-6)


def test_cuts_that_meet_at_nearly_the_same_number_leave_no_skin():
    shape = plain(100.0, 60.0, 20.0, dado(0.1 + 10.0, 10.0, 8.0, (0.0, 60.0)), dado(5.0, 5.1, 8.0, (0.0, 60.0)))
    mesh = solid(shape).to_mesh64()
    across = np.abs(mesh.vert_properties[:, 0] - 10.1) < 1e-3
    assert not across[mesh.tri_verts.astype(int)].all(axis=1).any()
    assert solid_volume(shape) == pytest.approx(120000 - 15.1 * 8 * 60, abs=1e-6)


@pytest.mark.parametrize(
    ("face", "outline", "expected"),
    [
        (Face.FACE, rectangle(10, 10, 20, 30), 10 * 20 * 4),
        (Face.BACK, rectangle(10, 10, 20, 30), 10 * 20 * 4),
        (Face.NEAR, rectangle(10, -15, 20, -5), 10 * 10 * 4),
        (Face.FAR, rectangle(10, -15, 20, -5), 10 * 10 * 4),
        (Face.FOOT, rectangle(10, -15, 20, -5), 10 * 10 * 4),
        (Face.HEAD, rectangle(10, -15, 20, -5), 10 * 10 * 4),
    ],
)
def test_a_pocket_from_each_face_opens_on_that_face(face, outline, expected):
    shape = plain(100.0, 60.0, 20.0, Cut("pocket", face, 0.0, 4.0, outline))
    body = solid(shape)
    assert body.volume() == pytest.approx(120000 - expected, abs=1e-6)
    # a pocket adds a ring of edges to one face only: the box's corners stay, the floor lies 4 below the face
    axis, level = {
        Face.FACE: (2, -4.0), Face.BACK: (2, -16.0), Face.NEAR: (1, 4.0),
        Face.FAR: (1, 56.0), Face.FOOT: (0, 4.0), Face.HEAD: (0, 96.0),
    }[face]
    points = body.to_mesh64().vert_properties
    assert sum(abs(p[axis] - level) < 1e-9 for p in points) == 4


def test_a_cut_that_starts_below_its_face_leaves_a_roof():
    shape = plain(100.0, 60.0, 20.0, Cut("slot", Face.FOOT, 10.0, 20.0, rectangle(10, -15, 20, -5)))
    assert solid(shape).decompose()[0].volume() > 0
    assert solid_volume(shape) == pytest.approx(120000 - 20 * 100, abs=1e-6)


def test_a_tenon_stands_where_its_island_is():
    # 240 × 60 × 20 less 30·(60·20 - 40·8) round the tenon less a quarter round of radius 8 along 210
    expected = 288000 - 30 * (1200 - 320) - 210 * math.pi * 16
    arc_limit = 1 + 2 / 3 * 0.002 * (math.pi * 4) * 240
    assert solid_volume(tenoned_rail()) == pytest.approx(expected, abs=arc_limit)


def test_a_tenon_flush_with_a_face_has_no_skin():
    cut = Cut("tenon", Face.FOOT, 0.0, 30.0, rectangle(0, -20, 60, 0), (rectangle(0, -8, 60, 0),))
    shape = plain(240.0, 60.0, 20.0, cut)
    assert solid_volume(shape) == pytest.approx(288000 - 30 * 60 * 12, abs=1e-6)
    assert solid(shape).num_tri() == 20  # eight corners and four more at the shoulder: an L-shaped prism


def test_a_bore_keeps_its_chords_within_the_limit():
    expected = 120000 - math.pi * 25 * 20
    assert solid_volume(bored()) == pytest.approx(expected, abs=1 + 2 / 3 * 0.002 * 10 * math.pi * 20)
    assert solid(bored()).genus() == 1


def test_a_tilted_bore_takes_the_wood_above_its_plane_too():
    s, c = math.sin(math.radians(30)), math.cos(math.radians(30))
    frame = Frame((c, 0.0, -s), (0.0, 1.0, 0.0), (s, 0.0, c), (50.0, 30.0, 0.0))
    shape = plain(100.0, 60.0, 20.0, Cut("bore", Face.TILTED, 0.0, 40.0, circle((0.0, 0.0), 4.0), frame=frame))
    # right through: the section across is an ellipse of area π·16 / cos 30°
    assert solid_volume(shape) == pytest.approx(120000 - 20 * math.pi * 16 / c, abs=2.0)


def test_an_edge_profile_leaves_no_skin_at_the_edge():
    chamfer = Cut("chamfer", Face.HEAD, 0.0, 100.0, polygon(((60.0, 0.0), (56.0, 0.0), (60.0, -4.0))))
    shape = plain(100.0, 60.0, 20.0, chamfer)
    assert solid_volume(shape) == pytest.approx(120000 - 8 * 100, abs=1e-6)
    assert solid(shape).num_tri() == 16  # a prism of five corners


def test_a_rounded_end_cut_along_its_own_arc_leaves_no_skin():
    end = Shape(Path((Corner(0, 0), Corner(100, 0, 1.0), Corner(100, 60), Corner(0, 60))), 20.0)
    half = Cut("rabbet", Face.FACE, 0.0, 5.0, Path((Corner(100, 0, 1.0), Corner(100, 60))))
    cut = Shape(end.outline, 20.0, (half,))
    assert open_segments(end.outline, 20.0, half) == (0,)
    assert solid_volume(cut) == pytest.approx(solid_volume(end) - math.pi * 900 / 2 * 5, abs=1.0)
    assert len(solid(cut).decompose()) == 1


def test_placed_boards_stand_where_their_frames_say():
    assert placed_solid(box_board()).bounding_box() == pytest.approx((0, 0, 0, 100, 60, 20))
    left, right = cupboard()[:2]
    assert placed_solid(left).bounding_box() == pytest.approx((0, 0, 0, 20, 300, 400))
    assert placed_solid(left).volume() == pytest.approx(placed_solid(right).volume())


def test_a_cut_that_just_misses_a_slant_takes_no_wood_beside_itself():
    # at v = 51 the slant stands at u = 189, the pocket starts at 189.5: it lies in the open, but wood stands beside it
    pocket = Cut("pocket", Face.HEAD, 0.0, 10.5, rectangle(51.0, -10.0, 61.0, -2.0))
    outline = polygon(((0, 0), (200, 0), (200, 40), (140, 100), (0, 100)))
    assert solid_volume(Shape(outline, 20.0, (pocket,))) == pytest.approx(20 * (20000 - 1800), abs=1e-6)


def test_case_68_an_outline_that_crosses_itself_is_an_error_not_a_lost_piece():
    bow_tie = Path((Corner(0, 0), Corner(100, 60), Corner(100, 0), Corner(0, 60)))
    with pytest.raises(CrossesItself, match="the outline"):
        solid(Shape(bow_tie, 20.0))
    with pytest.raises(CrossesItself, match="the notch's outline"):
        solid(plain(200.0, 100.0, 20.0, Cut("notch", Face.FACE, 0.0, 6.0, bow_tie)))
