"""The layouts of a package: drawn as a PDF, and as tables."""

from __future__ import annotations

from pathlib import Path

from shopdraw.cli.built import Work
from shopdraw.cli.refused import refused
from shopdraw.lists.layout.buying_list import buying_tables
from shopdraw.lists.layout.layout_table import layout_tables
from shopdraw.lists.layout.plan import StockPlan, plans
from shopdraw.lists.table import Table
from shopdraw.sheet.layout_sheet import NoRoomForLayouts, layout_sheets
from shopdraw.trade.table import NotInTable
from shopdraw.wood.finding import Finding, Severity
from shopdraw.write.pdf import write_pdf


def write_layouts(work: Work, folder: Path) -> tuple[tuple[Table, ...], tuple[Finding, ...]]:
    """Writes `<stem>-layouts.pdf`.

    Returns:
        The tables that go with it, and what fits no board or sheet that the shop can get.
    Raises:
        Refused: no paper holds the longest board.
    """
    design, shop = work.piece.design, work.shop.shop
    made = plans(work.assembly, design, shop)
    try:
        write_pdf(layout_sheets(made, work.assembly, design, shop), folder / f"{work.stem}-layouts.pdf")
    except (NotInTable, NoRoomForLayouts) as error:
        raise refused(f"drawing.paper: {error}") from error
    tables = (*buying_tables(made, work.assembly, design, shop), *layout_tables(made, design, shop))
    return tuple(table for table in tables if table.rows), tuple(misfit for plan in made for misfit in misfits(plan))


def misfits(plan: StockPlan) -> tuple[Finding, ...]:
    """A finding for each part that fits nothing and each strip that can't be cut whole."""
    return tuple(
        Finding(
            code="no-room-on-stock",
            severity=Severity.CAUTION,
            where=(misfit.part,),
            message=f"{plan.name}: {misfit.part}: {misfit.reason}",
            unit="",
            basis=f"the layout; {plan.supply.source}",
        )
        for misfit in plan.misfits
    )
