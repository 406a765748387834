"""Regions keep true arcs; judged by another library's polygons made of many chords."""

import math
import random

import pytest
import shapely
from shapely.geometry import Polygon

from shopdraw.shape.path import Corner, Path, area, circle, flattened, rectangle
from shopdraw.shape.region import Region, difference, inside, intersection, on_boundary, region, region_area, union

SLOT = Path((Corner(0, 0), Corner(100, 0, 1.0), Corner(100, 20), Corner(0, 20, 1.0)))


def polygon(paths: Region) -> shapely.Geometry:
    shape: shapely.Geometry = Polygon()
    for path in paths:
        shape = shape.symmetric_difference(Polygon(flattened(path, 1e-4)).buffer(0))
    return shape


def random_region(rng: random.Random) -> Region:
    kind = rng.randrange(4)
    x, y, w, h = (rng.randrange(0, 12) * 5.0 for _ in range(4))
    box = rectangle(x, y, x + w + 5, y + h + 5)
    if kind == 0:
        return region(box)
    if kind == 1:
        return region(circle((x, y), 5.0 + h / 2))
    if kind == 2:
        return region(SLOT.moved(x - 30, y))
    return region(rectangle(x - 10, y - 10, x + w + 15, y + h + 15), box)


def test_three_hundred_pairs_agree_with_another_library() -> None:
    rng = random.Random(7)
    for _ in range(300):
        one, two = random_region(rng), random_region(rng)
        a, b = polygon(one), polygon(two)
        for ours, theirs in (
            (union(one, two), a.union(b)),
            (intersection(one, two), a.intersection(b)),
            (difference(one, two), a.difference(b)),
        ):
            assert region_area(ours) == pytest.approx(theirs.area, abs=0.1), (one, two)
            assert polygon(ours).symmetric_difference(theirs).area < 0.5, (one, two)


def test_pocket_across_another_of_the_same_depth_becomes_one_outline() -> None:
    (joined,) = union(region(rectangle(-7, 0, 100, 6)), region(rectangle(20, -7, 38, 200)))
    assert area(joined) == pytest.approx(107 * 6 + 18 * 207 - 18 * 6)
    assert len(joined.corners) == 12


def test_rounded_end_keeps_its_arc() -> None:
    (cut,) = intersection(region(SLOT), region(rectangle(50, -10, 200, 30)))
    assert [corner.bulge for corner in cut.corners if corner.bulge] == [pytest.approx(1.0)]
    assert area(cut) == pytest.approx(50 * 20 + math.pi * 100 / 2)


def test_outlines_that_share_an_edge_join_without_a_seam() -> None:
    (joined,) = union(region(rectangle(0, 0, 10, 5)), region(rectangle(0, 5, 10, 9)))
    assert len(joined.corners) == 4
    assert area(joined) == 90.0


def test_nothing_is_left_of_a_region_taken_from_itself() -> None:
    assert difference(region(SLOT), region(SLOT)) == ()
    assert intersection(region(SLOT), region(SLOT))[0].corners == SLOT.corners


def test_inside_counts_the_bulge() -> None:
    assert inside((SLOT,), (109.9, 10.0))
    assert not inside((SLOT,), (110.1, 10.0))
    assert on_boundary((SLOT,), (110.0, 10.0))
