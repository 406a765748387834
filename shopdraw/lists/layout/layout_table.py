"""Layouts as tables: how good the answer is, the order of cuts, glue-ups."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.lists.layout.answer import CutUp, Layout, Offcut
from shopdraw.lists.layout.plan import StockPlan
from shopdraw.lists.layout.shortfall import Shortfall, shortfalls
from shopdraw.lists.size import Sizes, sizes_of
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop

_SQUARE_FEET = 1e6 / float(12 * MM_PER_INCH) ** 2
"""In a square metre."""


def layout_tables(plans: Sequence[StockPlan], design: Design, shop: Shop) -> tuple[Table, ...]:
    """All tables of the layouts, those without rows left out."""
    tables = (quality(plans, design, shop), glue_ups(plans, design), cuts(plans, design))
    return tuple(table for table in tables if table.rows)


def numbered(plan: StockPlan) -> Iterator[tuple[int, Layout, CutUp]]:
    """The boards and sheets of a stock that are cut up, numbered through."""
    number = 0
    for layout in plan.layouts:
        for cut in layout.cut_up:
            number += 1
            yield number, layout, cut


def money(plan: StockPlan, design: Design, shop: Shop) -> tuple[float, str]:
    """What a plan's cost is to be multiplied with to be told, and its unit: money, or area where no price is known."""
    if plan.supply.priced:
        return 1.0, shop.shop.currency or "money"
    return (1.0, "m² of wood") if design.piece.units == "mm" else (_SQUARE_FEET, "sq ft of wood")


def quality(plans: Sequence[StockPlan], design: Design, shop: Shop) -> Table:
    """How good each layout is, beside the least that it could have cost; and what a person should know."""
    sizes = sizes_of(design)
    columns = (
        Column("stock"), Column("boards and sheets", "", 0), Column("cost", "", 2), Column("at least", "", 2),
        Column("in"), Column("wood used", "%", 0), Column("offcuts kept", "", 0), Column("note"),
    )  # fmt: skip
    return Table("Layouts", columns, tuple(_quality(plan, sizes, money(plan, design, shop), shop) for plan in plans))


def _quality(plan: StockPlan, sizes: Sizes, cost: tuple[float, str], shop: Shop) -> tuple[Cell, ...]:
    pieces = [cut for _, _, cut in numbered(plan)]
    whole = sum(cut.piece.length * cut.piece.width for cut in pieces)
    used = sum(laid.length * laid.width for cut in pieces for laid in cut.laid)
    kept = sum(len(kept_offcuts(cut, shop)) for cut in pieces)
    return (
        plan.name, len(pieces), plan.cost * cost[0], plan.bound * cost[0], cost[1],
        100.0 * used / whole if whole else None, kept, "; ".join(notes(plan, sizes)),
    )  # fmt: skip


def kept_offcuts(cut: CutUp, shop: Shop) -> tuple[Offcut, ...]:
    """The offcuts of a board or sheet that the shop keeps."""
    habit = shop.habit
    return tuple(
        offcut
        for offcut in cut.offcuts
        if offcut.length >= habit.least_offcut_length and offcut.width >= habit.least_offcut_width
    )


def notes(plan: StockPlan, sizes: Sizes) -> list[str]:
    """What a person should know about a plan: where sizes come from, what fits nowhere, what the kerf costs."""
    told = [plan.supply.source]
    told += [f"{misfit.part}: {misfit.reason}" for misfit in plan.misfits]
    short = [kerf_note(each, sizes) for layout in plan.layouts for each in shortfalls(layout.job)]
    told += dict.fromkeys(short)
    if any(layout.hurried for layout in plan.layouts):
        told.append("the clock ended the search: a quieter machine may find another layout")
    return told


def kerf_note(short: Shortfall, sizes: Sizes) -> str:
    """Why parts that add up on paper don't fit, by how much, and what would."""
    return (
        f"{short.count} × {sizes.words(short.size)} need {sizes.words(short.needed)} of the {short.way} of "
        f"{short.piece.called} with the kerf, {sizes.words(short.short_by)} more than there is; "
        f"{short.count} × {sizes.words(short.largest)} would fit"
    )


def glue_ups(plans: Sequence[StockPlan], design: Design) -> Table:
    """Panels and the boards that they are glued up from."""
    sizes = sizes_of(design)
    columns = (
        Column("label"), Column("name"), Column("stock"), sizes.column("finished width"), Column("boards", "", 0),
        Column("clear widths"), sizes.column("glued width"), sizes.column("board length"),
    )  # fmt: skip
    rows: list[tuple[Cell, ...]] = []
    for plan in plans:
        for panel in plan.panels:
            made = panel.glue_up
            widths = ", ".join(sizes.words(width.clear, sizes.rough) for width in made.widths)
            rows.append((
                panel.label, panel.name, plan.name, sizes.cell(panel.width, sizes.cut), len(made.widths), widths,
                sizes.cell(made.clear, sizes.rough), sizes.cell(made.length, sizes.rough),
            ))  # fmt: skip
    return Table("Glue-ups", columns, tuple(rows))


def cuts(plans: Sequence[StockPlan], design: Design) -> Table:
    """Every cut in the order in which it is made, measured to the kerf's near side from the reference corner."""
    sizes = sizes_of(design)
    columns = (
        Column("stock"), Column("number", "", 0), Column("board or sheet"), Column("cut", "", 0), Column("way"),
        sizes.column("at"), sizes.column("from"), sizes.column("to"),
    )  # fmt: skip
    rows: list[tuple[Cell, ...]] = []
    for plan in plans:
        for number, _, cut in numbered(plan):
            rows += [
                (
                    plan.name, number, cut.piece.called, step, saw.way,
                    *(sizes.cell(max(at, 0.0), sizes.cut) for at in (saw.at, saw.start, saw.end)),
                )
                for step, saw in enumerate(cut.cuts, 1)
            ]  # fmt: skip
    return Table("Order of cuts", columns, tuple(rows))
