"""What a stock is called at the yard, and at what thickness it is sold and counted."""

from __future__ import annotations

import re

from shopdraw.measure import MM_PER_INCH
from shopdraw.trade.lumber import hardwood_quarter, rough_quarter_for
from shopdraw.trade.sheet_goods import panel
from shopdraw.trade.species import species
from shopdraw.trade.table import NotInTable
from shopdraw.wood.board import Stock

_INCH = float(MM_PER_INCH)
YARD_WIDTH_MM = 152.0
"""A usual rough board, 6 in wide (common practice)."""
EDGE_LOSS_MM = 3.0
"""Lost on each edge of a board that is jointed for a glue-up (common practice)."""
PLANING_MM = 6.0
"""Rough over finished thickness where no thickness as sold is thick enough: glued up from layers (common practice)."""


def rough_thickness(stock: Stock) -> float:
    """The thickness that a solid stock is sold and counted at, mm.

    What the piece file calls it has the first word: "4/4", "1x8", "26 mm sawn". Where that names no rough size (a
    dressed "20 mm", or nothing), it is the thinnest hardwood thickness that can be surfaced to the finished one.
    """
    named = _named_thickness(stock.nominal)
    if named is not None and named > stock.thickness + 0.5:
        return named
    quarter = rough_quarter_for(stock.thickness)
    return quarter.rough_mm if quarter is not None else stock.thickness + PLANING_MM


def _named_thickness(nominal: str) -> float | None:
    quarters = re.match(r"\s*(\d+)\s*/\s*4\b", nominal)
    if quarters is not None:
        name = f"{quarters[1]}/4"
        try:
            return hardwood_quarter(name).rough_mm
        except NotInTable:
            return int(quarters[1]) / 4 * _INCH
    softwood = re.match(r"\s*(\d+)(?:[- ](\d)/(\d))?\s*[x×]\s*\d", nominal)
    if softwood is not None:
        more = int(softwood[2]) / int(softwood[3]) if softwood[2] and int(softwood[3]) else 0.0
        return (int(softwood[1]) + more) * _INCH
    metric = re.match(r"\s*(\d+(?:[.,]\d+)?)\s*mm\b", nominal)
    return float(metric[1].replace(",", ".")) if metric is not None else None


def wood_name(stock: Stock) -> str:
    """The species or sheet as people read it: "Cherry, black"."""
    try:
        return panel(stock.species).name if stock.kind == "sheet" else species(stock.species).name
    except NotInTable:
        return stock.species


def trade_name(stock: Stock) -> str:
    """The stock as a yard knows it: "Cherry, black, 4/4"."""
    return f"{wood_name(stock)}, {stock.nominal}" if stock.nominal else wood_name(stock)
