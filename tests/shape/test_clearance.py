"""Distances between outlines of lines and arcs, by closed trigonometry and by GEOS on fine chords."""

import math
import random

import pytest
from shapely.geometry import Polygon

from shopdraw.shape.clearance import clearance
from shopdraw.shape.path import Corner, Path, circle, flattened, rectangle


def test_circles_are_apart_by_their_middles_less_their_radii() -> None:
    assert clearance(circle((0, 0), 10), circle((30, 40), 15)) == pytest.approx(50 - 25)


def test_circle_before_a_wall() -> None:
    assert clearance(rectangle(0, 0, 100, 10), circle((50, 20), 4)) == pytest.approx(6.0)
    # off the corner: 3-4-5
    assert clearance(rectangle(0, 0, 100, 10), circle((103, 14), 2)) == pytest.approx(3.0)


def test_circle_in_the_middle_of_a_half_round_hollow() -> None:
    hollow = Path(
        (Corner(0, 0), Corner(100, 0), Corner(100, 10), Corner(58, 10, -1.0), Corner(42, 10), Corner(0, 10))
    )
    assert clearance(hollow, circle((50, 10), 3.0)) == pytest.approx(8 - 3)
    assert clearance(hollow, circle((50, 8), 3.0)) == pytest.approx(8 - 3 - 2)


def test_paths_that_meet_or_lie_in_each_other_are_not_apart() -> None:
    assert clearance(rectangle(0, 0, 10, 10), rectangle(5, 5, 15, 15)) == 0.0
    assert clearance(rectangle(0, 0, 100, 100), circle((50, 50), 5)) == 0.0


def test_random_rounded_shapes_agree_with_geos() -> None:
    chance = random.Random(7)
    for _ in range(60):
        one = _blob(chance, (0.0, 0.0))
        two = _blob(chance, (chance.uniform(60, 90), chance.uniform(-40, 40)))
        exact = Polygon(flattened(one, 1e-5)).distance(Polygon(flattened(two, 1e-5)))
        assert clearance(one, two) == pytest.approx(exact, abs=1e-4)


def _blob(chance: random.Random, middle: tuple[float, float]) -> Path:
    points = [
        (middle[0] + r * math.cos(a), middle[1] + r * math.sin(a))
        for a, r in ((i * math.pi / 3, chance.uniform(15, 28)) for i in range(6))
    ]
    bulges = [chance.choice((0.0, 0.0, 0.3, -0.2)) for _ in points]
    return Path(tuple(Corner(x, y, b) for (x, y), b in zip(points, bulges, strict=True)))
