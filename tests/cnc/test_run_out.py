"""Open sides run out by what is asked, closed ones stay; other wood is never touched."""

import pytest

from shopdraw.cnc.run_out import open_sides, run_out
from shopdraw.shape.path import Corner, Path, area, bounds, polygon, rectangle
from shopdraw.shape.region import difference, intersection, region

BOARD = region(rectangle(0, 0, 400, 100))


def carried(pocket: Path, by: float = 4.0, outline: tuple[Path, ...] = BOARD) -> tuple[Path, float]:
    (trimmed,) = intersection(region(pocket), outline)
    return run_out(trimmed, open_sides(trimmed, outline), by, outline)


def test_through_dado_runs_past_both_edges_and_keeps_its_width() -> None:
    path, by = carried(rectangle(50, 0, 70, 100))
    assert bounds(path) == pytest.approx((50, -4, 70, 104))
    assert by == 4.0


def test_corner_rabbet_runs_past_both_its_edges() -> None:
    path, _ = carried(rectangle(0, 0, 400, 10))
    assert bounds(path) == pytest.approx((-4, -4, 404, 10))
    assert area(path) == pytest.approx(408 * 14)


def test_stopped_end_stays_and_keeps_its_arcs() -> None:
    r = 3.0
    slot = Path(
        (Corner(50, 0), Corner(70, 0), Corner(70, 80 - r, 0.41421356), Corner(70 - r, 80),
         Corner(50 + r, 80, 0.41421356), Corner(50, 80 - r))
    )  # fmt: skip
    path, _ = carried(slot)
    assert bounds(path) == pytest.approx((50, -4, 70, 80))
    assert [c.bulge for c in path.corners if c.bulge] == pytest.approx([0.41421356] * 2)


def test_closed_pocket_stays_as_it_is() -> None:
    path, _ = carried(rectangle(50, 20, 70, 60))
    assert path.corners == rectangle(50, 20, 70, 60).corners


def test_slanted_edge_is_left_square_to_itself() -> None:
    slant = region(polygon([(0, 0), (400, 0), (300, 100), (0, 100)]))
    path, _ = carried(rectangle(0, 40, 400, 60), 5.0, slant)
    x0, y0, x1, y1 = bounds(path)
    # the edge falls 1 for 1: 5 mm square to it are 5·√2 along the walls
    assert (x0, y0, y1) == pytest.approx((-5, 40, 60))
    assert x1 == pytest.approx(360 + 5 * 2**0.5)


def test_run_out_gives_way_to_other_wood() -> None:
    slotted = difference(BOARD, region(rectangle(70, 0, 73, 100)))
    outer = max(slotted, key=area)
    fork = difference(region(outer), region(rectangle(300, 20, 303, 80)))
    (trimmed,) = intersection(region(rectangle(280, 40, 302, 60)), fork)
    path, by = run_out(trimmed, open_sides(trimmed, fork), 4.0, fork)
    assert 0.0 < by <= 3.0
    assert bounds(path)[2] <= 303.0 + 1e-9


def test_shoulder_of_a_tenon_is_not_drawn_twice() -> None:
    tenoned = difference(BOARD, region(rectangle(0, 0, 15, 10), rectangle(0, 90, 15, 100)))
    (trimmed,) = intersection(region(rectangle(0, 0, 15, 100)), tenoned)
    path, _ = run_out(trimmed, open_sides(trimmed, tenoned), 7.0, tenoned)
    at_shoulder = [c for c in path.corners if abs(c.x - 15) < 1e-9]
    assert sorted(c.y for c in at_shoulder) == [10, 90], "the line ends with the tenon"
    assert bounds(path) == pytest.approx((-7, 3, 15, 97))
