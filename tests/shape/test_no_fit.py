"""Places beside other shapes: judged by distances of another kind, and by trying a grid of places."""

from __future__ import annotations

import itertools
import random

import pytest
import shapely
from shapely.geometry import Polygon

from shopdraw.shape.no_fit import Blank, Lying, blank, first_place
from shopdraw.shape.path import Corner, Path, flattened, polygon, rectangle

ELL = polygon(((0, 0), (100, 0), (100, 30), (40, 30), (40, 90), (0, 90)))
TAPER = polygon(((0, 0), (120, 0), (30, 80), (0, 80)))
ARCH = Path((Corner(0, 0), Corner(90, 0, 1.0), Corner(0, 0.5)))


@pytest.mark.parametrize("path", [ELL, TAPER, ARCH, rectangle(5, 7, 60, 40)])
def test_a_blank_holds_its_shape_and_has_its_box(path: Path) -> None:
    true = Polygon(flattened(path, 0.001))
    x0, y0, x1, y1 = true.bounds
    held = shapely.affinity.translate(Polygon(blank(path).corners), x0, y0)
    assert held.buffer(0.03).contains(true)
    assert held.bounds == pytest.approx((x0, y0, x1, y1), abs=0.03)
    assert held.area <= true.convex_hull.area + 0.03 * true.length


def placed(shape: Blank, at: tuple[float, float]) -> Polygon:
    return shapely.affinity.translate(Polygon(shape.corners), *at)


@pytest.mark.parametrize("seed", range(20))
def test_no_place_of_a_grid_is_better(seed: int) -> None:
    chance = random.Random(seed)
    shapes = [blank(path).turned(chance.randrange(4)) for path in (ELL, TAPER, ARCH, rectangle(0, 0, 55, 70))]
    room = (10.0, 10.0, 310.0, 210.0)
    gap = chance.choice((0.0, 4.0, 9.0))
    closed = ((130.0, 150.0),) if seed % 2 else ()
    lying: list[Lying] = []
    for shape in (*shapes, *shapes):
        found = first_place(room, lying, shape, gap, closed)
        length, width = shape.size

        def good(at: tuple[float, float], shape: Blank = shape, length: float = length, width: float = width) -> bool:
            x, y = at
            inside = x >= 10 and y >= 10 and x + length <= 310 and y + width <= 210
            clear = all(x + length <= low or x >= high for low, high in closed)
            return inside and clear and all(
                placed(shape, at).distance(placed(one.blank, one.at)) >= gap + 0.1
                and not placed(shape, at).intersects(placed(one.blank, one.at)) for one in lying
            )  # fmt: skip

        for x, y in itertools.product(range(10, 311, 10), range(10, 211, 10)):
            if good((x, y)):
                assert found is not None
                assert found <= (x + 1e-6, y + 1e-6) or found[0] < x
                break
        if found is not None:
            for one in lying:
                assert placed(shape, found).distance(placed(one.blank, one.at)) >= gap - 1e-6
            assert found[0] >= 10
            assert found[0] + length <= 310 + 1e-6
            lying.append(Lying(shape, found))
    assert len(lying) >= 3


def test_a_shape_that_just_fits_is_placed() -> None:
    square = blank(rectangle(0, 0, 100, 100))
    assert first_place((0, 0, 100, 100), (), square, 5.0) == (0.0, 0.0)
    assert first_place((0, 0, 99.9, 100), (), square, 5.0) is None


def test_a_hole_of_an_angle_is_used() -> None:
    """The square of 60 in the angle's corner: 30 + 5 up, 40 + 5 along."""
    square = blank(rectangle(0, 0, 45, 45))
    x, y = first_place((0, 0, 101, 91), [Lying(blank(ELL), (0.0, 0.0))], square, 5.0) or (0.0, 0.0)
    assert (x, y) == pytest.approx((45.0, 35.0), abs=0.3)
