"""Dressed sizes, quarters and board feet."""

from __future__ import annotations

import pytest

from shopdraw.trade import (
    NotInTable,
    board_feet,
    dressed_softwood,
    export_tally,
    hardwood_quarter,
    hardwood_quarters,
    rough_quarter_for,
    surface_measure,
    tally_board_feet,
)

IN, FT = 25.4, 304.8

# American Softwood Lumber Standard, PS 20: nominal inches, least dressed mm dry (inches x 25.4), inches green.
PS20_THICKNESS = {
    "1": (19.05, 25 / 32),
    "1-1/4": (25.40, 1 + 1 / 32),
    "1-1/2": (31.75, 1 + 9 / 32),
    "2": (38.10, 1.5625),
}
PS20_WIDTH = {
    "2": (38.10, 1.5625),
    "3": (63.50, 2.5625),
    "4": (88.90, 3.5625),
    "5": (114.30, 4.625),
    "6": (139.70, 5.625),
    "7": (165.10, 6.625),
    "8": (184.15, 7.5),
    "10": (234.95, 9.5),
    "12": (285.75, 11.5),
    "14": (336.55, 13.5),
    "16": (387.35, 15.5),
}


@pytest.mark.parametrize("width", PS20_WIDTH)
@pytest.mark.parametrize("thickness", PS20_THICKNESS)
def test_dressed_softwood_is_as_the_standard_says(thickness: str, width: str) -> None:
    dry = dressed_softwood(f"{thickness}x{width}")
    green = dressed_softwood(f"{thickness} × {width}", green=True)
    assert (dry.thickness_mm, dry.width_mm) == pytest.approx((PS20_THICKNESS[thickness][0], PS20_WIDTH[width][0]))
    assert green.thickness_mm == pytest.approx(PS20_THICKNESS[thickness][1] * IN)
    assert green.width_mm == pytest.approx(PS20_WIDTH[width][1] * IN)


@pytest.mark.parametrize("nominal", ["1x9", "3x4", "", "1", "x", "1x8x2", "axb"])
def test_sizes_that_are_not_sold_are_refused(nominal: str) -> None:
    with pytest.raises(NotInTable):
        dressed_softwood(nominal)


# Hardwood dealer's page on the quarter system: rough inches, surfaced inches (smaller and larger figure).
QUARTERS = {"4/4": (1, 3 / 4, 13 / 16), "5/4": (1.25, 1, 1.0625), "6/4": (1.5, 1.25, 1.3125), "8/4": (2, 1.75, 1.75)}


@pytest.mark.parametrize(("name", "inches"), QUARTERS.items())
def test_quarters(name: str, inches: tuple[float, float, float]) -> None:
    quarter = hardwood_quarter(name)
    in_mm = [inch * IN for inch in inches]
    assert [quarter.rough_mm, quarter.surfaced_least_mm, quarter.surfaced_mm] == pytest.approx(in_mm)


THINNEST = [(0.25, "4/4"), (3 / 4, "4/4"), (13 / 16, "4/4"), (7 / 8, "5/4"), (1.0625, "5/4"), (1.25, "6/4")]


@pytest.mark.parametrize(("finished_in", "name"), THINNEST)
def test_the_thinnest_quarter_that_surfaces_to_size(finished_in: float, name: str) -> None:
    # Surfaced sizes of the hardwood dealer's page, as above.
    quarter = rough_quarter_for(finished_in * IN)
    assert quarter is not None
    assert quarter.name == name


def test_thicker_than_any_board_needs_a_glue_up() -> None:
    assert rough_quarter_for(200) is None


def test_quarters_go_up_and_lose_wood_in_surfacing() -> None:
    rough = [quarter.rough_mm for quarter in hardwood_quarters()]
    assert rough == sorted(rough)
    assert all(q.surfaced_least_mm <= q.surfaced_mm < q.rough_mm for q in hardwood_quarters())


def test_an_unknown_quarter_is_refused() -> None:
    with pytest.raises(NotInTable, match="5/4"):
        hardwood_quarter("5/5")


def test_board_feet() -> None:
    # Hardwood dealer's page: 1 x 6 x 96 in is 4 board feet. By the same rule 5/4 x 7 1/2 in x 10 ft is 7.8125.
    assert board_feet(1 * IN, 6 * IN, 96 * IN) == pytest.approx(4)
    assert board_feet(1.25 * IN, 7.5 * IN, 10 * FT) == pytest.approx(7.8125)
    assert board_feet(2 * IN, 6.25 * IN, 8 * FT) == pytest.approx(8.333, abs=0.0005)


# American Hardwood Export Council and a hardwood importer's page on measurement: width in, length ft, surface measure.
SURFACES = [(6.25, 8, 4), (6.5, 8, 4), (8, 12, 8), (10, 13, 11), (8, 12.9, 8)]


@pytest.mark.parametrize(("width", "length", "surface"), SURFACES)
def test_surface_measure(width: float, length: float, surface: int) -> None:
    assert surface_measure(width * IN, length * FT) == surface


def test_yard_tally() -> None:
    # American Hardwood Export Council: 2 in x 6 1/4 in x 8 ft is tallied as 8 board feet.
    assert tally_board_feet(2 * IN, 6.25 * IN, 8 * FT) == pytest.approx(8)


def test_thin_lumber_is_tallied_as_one_inch() -> None:
    # Hardwood dealer's terminology page: under 1 in counts as 1 in.
    assert tally_board_feet(0.5 * IN, 8 * IN, 12 * FT) == pytest.approx(8)


def test_export_tally() -> None:
    # American Hardwood Export Council: 5 1/4 in by 8 1/2 ft is written 5 in and 8 ft.
    assert export_tally(5.25 * IN, 8.5 * FT) == (5, 8)
