"""Bounds: what no layout costs less than, where prices allow no sums in between."""

from __future__ import annotations

import itertools

import pytest

from shopdraw.lists.layout.job import Piece, SheetJob, Wanted
from shopdraw.lists.layout.lay_out import bound_of, lay_out
from shopdraw.lists.layout.rectangles import next_sum
from shopdraw.lists.layout.whole import cost_unit


@pytest.mark.parametrize("prices", [(4, 5, 6), (7,), (10, 14), (6, 9, 20)])
def test_the_next_sum_is_the_least_that_can_be_paid(prices: tuple[int, ...]) -> None:
    counts = [range(100 // price + 2) for price in prices]
    sums = {sum(n * price for n, price in zip(chosen, prices, strict=True)) for chosen in itertools.product(*counts)}
    for least in range(1, 60):
        assert next_sum(least, prices) == min(one for one in sums if one >= least)


def test_costs_in_a_small_proportion_have_a_common_unit() -> None:
    """Boards of 8, 10 and 12 ft at so much a foot stand as 4 : 5 : 6, whatever a foot costs."""
    foot = 0.0463291237
    unit = cost_unit([8 * foot, 10 * foot, 12 * foot])
    assert [round(feet * foot / unit, 9) for feet in (8, 10, 12)] == [4.0, 5.0, 6.0]


def test_a_bound_is_a_price_that_can_be_paid() -> None:
    """One part of a tenth of the smallest board: 8 ft is the least that the yard sells."""
    stock = tuple(Piece(f"{feet} ft", feet * 304.8, 150.0, feet * 0.0463291237) for feet in (8, 10, 12))
    job = SheetJob((Wanted("a", 200.0, 150.0),), stock, 3.2)
    assert bound_of(job) == pytest.approx(8 * 0.0463291237)
    assert lay_out(job).proven
