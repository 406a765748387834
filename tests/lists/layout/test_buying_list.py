"""The buying list: from the materials' figures to the yard's boards, so that the two never disagree."""

from __future__ import annotations

from functools import cache

import pytest

from shopdraw.lists.buying import materials, materials_of
from shopdraw.lists.layout.buying_list import Bought, bought, buying_tables
from shopdraw.lists.layout.layout_table import glue_ups, numbered
from shopdraw.lists.layout.plan import plans
from shopdraw.lists.table import Table
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import parse_shop
from tests.cnc.router_reader import SAMPLES, piece

YARD = """\
[shop]
units = "inch"
currency = "crowns"
[yard.wide]
species = "cherry_black"
quarters = "4/4"
widths = [8, 10]
lengths = ["8'", "12'"]
price = 9
per = "board-foot"
[sheet.birch]
species = "plywood_birch"
width = 60
length = 60
price = 42
[offcut.rack]
species = "cherry_black"
thickness = "7/8"
width = 8
length = 60
"""
SHOPS = {"": Shop(), "yard": parse_shop(YARD).shop, "waste": parse_shop("[habit]\nwaste_solid = 80\n").shop}


@cache
def found(sample: str, shop: str) -> tuple[Bought, ...]:
    design, assembly = piece(sample)
    return bought(plans(assembly, design, SHOPS[shop]), assembly, design, SHOPS[shop])


def rows_of(table: Table) -> list[dict[str, object]]:
    return [dict(zip((column.head for column in table.columns), row, strict=True)) for row in table.rows]


@pytest.mark.parametrize("shop", SHOPS)
@pytest.mark.parametrize("sample", SAMPLES)
def test_what_is_bought_covers_what_the_materials_state(sample: str, shop: str) -> None:
    design, assembly = piece(sample)
    stated = [one for one in materials_of(assembly, design, SHOPS[shop]) if one.kind != "hardware"]
    covered = [need for one in found(sample, shop) for need in one.needs]
    assert sorted(one.stock for one in covered) == sorted(one.stock for one in stated)
    for one in found(sample, shop):
        assert one.net == pytest.approx(sum(need.net for need in one.needs))
        if one.plan.stock.kind == "sheet":
            assert one.amount >= one.net - 1e-9 or one.plan.misfits
        else:
            assert one.amount >= one.needed - 1e-9, one.plan.name


@pytest.mark.parametrize("sample", SAMPLES)
def test_tables_repeat_the_materials_own_figures(sample: str) -> None:
    """Net and needed of the yields add up to those of the materials table, unit by unit, printed from one value."""
    design, assembly = piece(sample)
    shop = SHOPS["yard"]
    _, yields, _ = buying_tables(plans(assembly, design, shop), assembly, design, shop)
    for head in ("net", "needed, waste included"):
        sums: list[dict[str, float]] = []
        for table in (materials(assembly, design, shop), yields):
            total: dict[str, float] = {}
            for row in rows_of(table):
                if row.get("kind") != "hardware":
                    total[str(row["unit"])] = total.get(str(row["unit"]), 0.0) + float(str(row[head]))
            sums.append(total)
        assert sums[0] == pytest.approx(sums[1])


def test_the_waste_that_no_layout_shows_is_bought_as_spare_boards() -> None:
    """At 80 % the layouts' own boards aren't enough; the spare ones fill up what is short and no board more."""
    spare = [(one, line) for one in found("harbour-office-desk", "waste") for line in one.purchases
             if line.why == "spare"]
    assert spare
    for one, line in spare:
        assert one.amount - line.amount < one.needed <= one.amount + 1e-9


def test_boards_are_counted_and_priced_by_the_yards_rule() -> None:
    """10 in × 12 ft at 4/4 is 10 board feet and 90 crowns; a sheet costs 42; what is in the rack costs nothing."""
    design, assembly = piece("harbour-office-desk")
    shop = SHOPS["yard"]
    table, _, _ = buying_tables(plans(assembly, design, shop), assembly, design, shop)
    total = 0.0
    for row in rows_of(table):
        if row["stock"] == "total":
            assert row["cost (crowns)" if "cost (crowns)" in row else "cost"] == pytest.approx(total)
            continue
        if row["board or sheet"] == "wide":
            wide, feet = round(float(str(row["width"]).split()[0])), round(float(str(row["length"]).split()[0]) / 12)
            assert row["amount"] == pytest.approx(int(str(row["count"])) * wide * feet / 12, abs=1e-6)
            assert row["cost"] == pytest.approx(9 * float(str(row["amount"])))
        if row["board or sheet"] == "birch":
            assert row["cost"] == pytest.approx(42 * int(str(row["count"])))
        if row["what to do"] == "use":
            assert row["cost"] is None
        total += float(str(row["cost"] or 0.0))
    assert total > 0


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_57_panels_are_bought_as_boards_before_they_are_glued_up(sample: str) -> None:
    design, assembly = piece(sample)
    made = [one.plan for one in found(sample, "")]
    listed = {str(row[0]): row for row in glue_ups(made, design).rows}
    laid = dict.fromkeys(listed, 0)
    for plan in made:
        labels = {part.id: part.label for layout in plan.layouts for part in layout.job.parts}
        for _, _, cut in numbered(plan):
            for one in cut.laid:
                label = labels[one.part].split(" (")[0]
                if label in laid:
                    laid[label] += 1
    for label, row in listed.items():
        layers = max(1, len(next(b for b in assembly.boards if b.label == label).layers))
        assert laid[label] == int(str(row[4])) * layers, label


@pytest.mark.parametrize("sample", SAMPLES)
def test_offcuts_that_are_kept_are_listed_with_their_sizes(sample: str) -> None:
    design, assembly = piece(sample)
    shop = parse_shop("[habit]\nleast_offcut_length = 200\nleast_offcut_width = 60\n").shop
    made = plans(assembly, design, shop)
    _, yields, kept = buying_tables(made, assembly, design, shop)
    expected = sum(
        offcut.length >= 200 and offcut.width >= 60
        for plan in made for _, _, cut in numbered(plan) for offcut in cut.offcuts
    )  # fmt: skip
    assert len(kept.rows) == expected == sum(int(str(row["offcuts kept"])) for row in rows_of(yields))
