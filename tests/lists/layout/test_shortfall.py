"""Parts that add up on paper and not at the saw."""

import pytest

from shopdraw.lists.layout.job import Piece, SheetJob, Wanted
from shopdraw.lists.layout.shortfall import shortfalls


@pytest.mark.parametrize(("sheet", "short_by", "largest"), [(1219.2, 3.2, 608.0), (1220.0, 2.4, 608.4)])
def test_case_11_two_halves_miss_by_the_kerf(sheet: float, short_by: float, largest: float) -> None:
    job = SheetJob(
        (Wanted("a", 609.6, 400), Wanted("b", 609.6, 400)), (Piece("sheet", sheet, 1000, 1),), 3.2
    )
    (found,) = shortfalls(job)
    assert found.needed == pytest.approx(1222.4)
    assert found.short_by == pytest.approx(short_by)
    assert found.largest == pytest.approx(largest)
    assert (found.way, found.count) == ("length", 2)


def test_nothing_is_told_of_what_fits_or_never_would() -> None:
    sheet = (Piece("sheet", 1219.2, 1000, 1),)
    assert not list(shortfalls(SheetJob((Wanted("a", 608, 400), Wanted("b", 608, 400)), sheet, 3.2)))
    assert not list(shortfalls(SheetJob((Wanted("a", 609.6, 400),), sheet, 3.2)))
