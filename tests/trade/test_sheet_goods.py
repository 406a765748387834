"""Sheets as sold and plywood thicknesses."""

from __future__ import annotations

import pytest

from shopdraw.trade import (
    NotInTable,
    metric_thicknesses_mm,
    panel,
    panels,
    plywood_thickness,
    plywood_thicknesses,
    sheet_size,
    sheet_sizes,
    thickness_tolerance_mm,
)

IN = 25.4

# US PS 1, Performance Categories: least, most, label, in inches.
PS1 = {
    "1/4": (0.219, 0.281, 0.225),
    "11/32": (0.313, 0.375, 0.322),
    "3/8": (0.344, 0.406, 0.354),
    "15/32": (0.438, 0.500, 0.451),
    "1/2": (0.469, 0.531, 0.483),
    "19/32": (0.563, 0.625, 0.578),
    "5/8": (0.594, 0.656, 0.609),
    "23/32": (0.688, 0.750, 0.703),
    "3/4": (0.719, 0.781, 0.734),
    "1": (0.950, 1.050, 0.970),
}


@pytest.mark.parametrize(("category", "inches"), PS1.items())
def test_plywood_categories(category: str, inches: tuple[float, float, float]) -> None:
    plywood = plywood_thickness(category)
    assert (plywood.least_mm, plywood.most_mm, plywood.label_mm) == pytest.approx(tuple(i * IN for i in inches))


@pytest.mark.parametrize("category", PS1)
def test_categories_agree_with_the_tolerance(category: str) -> None:
    # US PS 1: 1/32 in either way up to 13/16 in, 5 % above; the table is rounded to 0.001 in.
    top, _, under = category.partition("/")
    nominal = int(top) / int(under or 1) * IN
    plus, minus = thickness_tolerance_mm(nominal, "unsanded")
    plywood = plywood_thickness(category)
    assert plywood.most_mm == pytest.approx(nominal + plus, abs=0.001 * IN)
    assert plywood.least_mm == pytest.approx(nominal - minus, abs=0.001 * IN)


def test_sanded_and_hardwood_tolerances() -> None:
    # Building magazines: sanded 1/64 in up to 3/4 in, 3 % above. HP-1 as quoted there: + 0, - 3/64 in.
    assert thickness_tolerance_mm(18, "sanded") == pytest.approx((IN / 64, IN / 64))
    assert thickness_tolerance_mm(25.4, "sanded") == pytest.approx((0.762, 0.762))
    assert thickness_tolerance_mm(19.05, "hardwood") == pytest.approx((0, 3 * IN / 64))


# Building magazine's guide to plywood sizes, feet; mm = ft x 304.8.
SHEETS = [("4x8", 4, 8), ("5x5", 5, 5), ("4x12", 4, 12), ("2x4", 2, 4)]


@pytest.mark.parametrize(("key", "width_ft", "length_ft"), SHEETS)
def test_sheet_sizes(key: str, width_ft: float, length_ft: float) -> None:
    size = sheet_size(key)
    assert (size.width_mm, size.length_mm) == pytest.approx((width_ft * 304.8, length_ft * 304.8))


def test_sheets_sold_in_metric_are_rounded() -> None:
    # The same guide: 4 x 8 ft is sold as 1220 x 2440 mm, 5 x 5 ft as 1525 x 1525 mm.
    assert (sheet_size("1220x2440").width_mm, sheet_size("1220x2440").length_mm) == (1220, 2440)
    assert sheet_size("1525x1525").length_mm == 1525


def test_tables_are_in_order() -> None:
    labels = [plywood.label_mm for plywood in plywood_thicknesses()]
    assert labels == sorted(labels)
    assert list(metric_thicknesses_mm()) == sorted(metric_thicknesses_mm())
    assert all(size.width_mm <= size.length_mm for size in sheet_sizes())
    assert all(300 < one.density_kg_m3 < 1200 for one in panels())


def test_names_that_there_are_not() -> None:
    for look_up, name in ((sheet_size, "4x9"), (plywood_thickness, "7/8"), (panel, "plywood_birsh")):
        with pytest.raises(NotInTable, match="the nearest are"):
            look_up(name)
    with pytest.raises(NotInTable):
        thickness_tolerance_mm(18, "rough")  # type: ignore[arg-type]


def test_panels_are_found_by_key_or_name() -> None:
    assert panel("Birch plywood") is panel("plywood_birch")
