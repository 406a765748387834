"""Volumes and centres of mass against sums worked out by hand, and against the solids."""

import math
import random
from dataclasses import replace

import pytest

from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Corner, Path, circle, perimeter, polygon, rectangle
from shopdraw.wood.board import Cut, Face, Shape
from shopdraw.wood.solid import solid_volume
from shopdraw.wood.volume import bulk, centre_of_mass, mass_kg, volume_mm3
from tests.wood.pieces import LYING, bored, box_board, cupboard, dado, plain, slanted_side, tenoned_rail


def test_a_plain_board():
    found = bulk(plain(100.0, 60.0, 20.0))
    assert found.volume == pytest.approx(120000.0, rel=1e-14)
    assert found.centre == pytest.approx((50.0, 30.0, -10.0))


def test_overlapping_cuts_are_counted_once():
    shape = plain(100.0, 60.0, 20.0, dado(20.0, 10.0, 8.0, (0.0, 60.0)), dado(0.0, 100.0, 5.0, (0.0, 12.0)))
    assert volume_mm3(shape) == pytest.approx(120000 - 8 * 10 * 60 - 5 * 12 * 100 + 5 * 12 * 10, rel=1e-13)


def test_a_long_cut_that_joins_many_short_ones_is_counted_once():
    """By hand: each socket of 8 by 10, 6 deep, loses to a rabbet of 4 by 5 what both take, 8 by 4 by 5."""
    sockets = [dado(20.0 + 30.0 * n, 8.0, 6.0, (0.0, 10.0)) for n in range(12)]
    rabbet = dado(0.0, 400.0, 5.0, (0.0, 4.0))
    found = bulk(plain(400.0, 60.0, 20.0, *sockets[:5], rabbet, *sockets[5:]))
    assert found.volume == pytest.approx(400 * 60 * 20 - 400 * 4 * 5 - 12 * (8 * 10 * 6 - 8 * 4 * 5), rel=1e-13)
    first = 400 * 60 * 20 * 200 - 400 * 4 * 5 * 200 - sum((8 * 10 * 6 - 8 * 4 * 5) * (24 + 30 * n) for n in range(12))
    assert found.centre[0] == pytest.approx(first / found.volume, rel=1e-13)


def test_cuts_of_face_and_back_that_meet_are_counted_once():
    groove = Cut("groove", Face.BACK, 0, 12, rectangle(0, 10, 100, 20))
    shape = plain(100.0, 60.0, 20.0, dado(20.0, 10.0, 12.0, (0.0, 60.0)), groove)
    assert volume_mm3(shape) == pytest.approx(120000 - 12 * 10 * 60 - 12 * 10 * 100 + 4 * 10 * 10, rel=1e-13)


def test_a_bore_counts_as_a_true_circle():
    found = bulk(bored(5.0))
    assert found.volume == pytest.approx(120000 - math.pi * 25 * 20, rel=1e-12)
    # the hole's middle is (40, 30): what it takes pulls the board's middle away from it
    hole = math.pi * 25 * 20
    assert found.centre[0] == pytest.approx((120000 * 50 - hole * 40) / (120000 - hole), rel=1e-12)


def test_a_chamfer_and_its_middle():
    chamfer = Cut("chamfer", Face.HEAD, 0.0, 100.0, polygon(((60.0, 0.0), (50.0, 0.0), (60.0, -10.0))))
    found = bulk(plain(100.0, 60.0, 20.0, chamfer))
    assert found.volume == pytest.approx(120000 - 50 * 100, rel=1e-13)
    # the triangle taken away has its middle a third in from its square corner (60, 0)
    gone = 5000.0
    assert found.centre[1] == pytest.approx((120000 * 30 - gone * (60 - 10 / 3)) / (120000 - gone), rel=1e-12)
    assert found.centre[2] == pytest.approx((120000 * -10 - gone * (-10 / 3)) / (120000 - gone), rel=1e-12)


def test_two_chamfers_meet_in_a_mitre_at_a_corner():
    along = Cut("chamfer", Face.HEAD, 0.0, 100.0, polygon(((60.0, 0.0), (50.0, 0.0), (60.0, -10.0))))
    across = Cut("chamfer", Face.FAR, 0.0, 60.0, polygon(((100.0, 0.0), (90.0, 0.0), (100.0, -10.0))))
    # the two prisms share a pyramid over a square of 10 by 10, 10 high, standing on the top face's corner
    shared = 1000 / 3
    expected = 120000 - 50 * 100 - 50 * 60 + shared
    assert volume_mm3(plain(100.0, 60.0, 20.0, along, across)) == pytest.approx(expected, rel=1e-12)


def test_a_quarter_round_counts_as_a_true_arc():
    expected = 288000 - 30 * (1200 - 320) - 210 * math.pi * 16
    assert volume_mm3(tenoned_rail()) == pytest.approx(expected, rel=1e-12)


def test_a_tilted_bore_right_through():
    c, s = math.cos(math.radians(30)), math.sin(math.radians(30))
    frame = Frame((c, 0.0, -s), (0.0, 1.0, 0.0), (s, 0.0, c), (50.0, 30.0, 0.0))
    shape = plain(100.0, 60.0, 20.0, Cut("bore", Face.TILTED, 0.0, 40.0, circle((0.0, 0.0), 4.0), frame=frame))
    assert volume_mm3(shape) == pytest.approx(120000 - 20 * math.pi * 16 / c, rel=1e-9)


def test_a_cut_that_leaves_the_board_at_a_slant():
    shape = slanted_side(dado(300.0, 20.0, 6.0, (0.0, 300.0)))
    assert volume_mm3(shape) == pytest.approx(20 * (120000 - 11250) - 6 * 20 * 240, rel=1e-13)


def _limit(shape):
    """1 mm³, and 2/3 of the chord tolerance along each arc for its depth."""
    limit = 1.0
    for path, depth in [(shape.outline, shape.thickness)] + [(c.outline, c.depth) for c in shape.cuts]:
        if any(corner.bulge for corner in path.corners):
            limit += 2 / 3 * 0.002 * perimeter(path) * depth
    return limit


def _random_shape(chance):
    """A slanted or rounded board with cuts of every kind on every face, many of them overlapping."""
    outline = chance.choice(
        [
            rectangle(0, 0, 200, 100),
            polygon(((0, 0), (200, 0), (200, 40), (140, 100), (0, 100))),
            Path((Corner(0, 0), Corner(200, 0, 0.4), Corner(200, 100), Corner(0, 100))),
        ]
    )
    faces = {Face.FACE: (200, 0, 100), Face.BACK: (200, 0, 100), Face.NEAR: (200, -20, 0), Face.FAR: (200, -20, 0)}
    faces |= {Face.FOOT: (100, -20, 0), Face.HEAD: (100, -20, 0)}
    cuts = []
    for _ in range(chance.randint(1, 6)):
        face = chance.choice(list(faces))
        wide, low, high = faces[face]
        a, b = chance.uniform(0, wide * 0.8), chance.uniform(low, low + (high - low) * 0.7)
        x, y = chance.uniform(5, wide * 0.4), chance.uniform(2, (high - low) * 0.5)
        drawn = chance.choice(
            [
                rectangle(a, b, a + x, b + y),
                polygon(((a, b), (a + x, b), (a + x / 3, b + y))),
                polygon(((a, b), (a + x, b + y / 4), (a + x / 2, b + y))),
                Path((Corner(a, b, 0.5), Corner(a + x, b), Corner(a + x, b + y))),
            ]
        )
        depth = chance.choice([chance.uniform(1, 15), 300.0])
        cuts.append(Cut("any", face, 0.0, depth, drawn))
    return Shape(outline, 20.0, tuple(cuts))


@pytest.mark.parametrize("seed", range(60))
def test_slabs_and_solids_agree(seed):
    shape = _random_shape(random.Random(seed))
    assert volume_mm3(shape) == pytest.approx(solid_volume(shape), abs=_limit(shape))


@pytest.mark.parametrize("made", [b.shape for b in cupboard()])
def test_slabs_and_solids_agree_on_straight_boards(made):
    assert volume_mm3(made) == pytest.approx(solid_volume(made), abs=1e-3)


def test_weight_is_volume_times_density():
    assert mass_kg(box_board()) == pytest.approx(120000e-9 * 500.0)


def test_the_middle_of_two_boards_lies_between_them_by_weight():
    one = box_board()
    other = replace(one, frame=LYING.moved((200.0, 0.0, 20.0)))
    total, centre = centre_of_mass((one, other))
    assert total == pytest.approx(2 * mass_kg(one))
    assert centre == pytest.approx((150.0, 30.0, 10.0))


