"""What a piece needs: wood by the yard's rule, sheets by area, hardware by count, with the waste allowed for.

How many boards and sheets are bought for it is told by the buying list, which starts from these figures.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from shopdraw.lists.rough import rough_thickness, trade_name
from shopdraw.lists.size import Sizes, sizes_of
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.design import Design, StockTable
from shopdraw.piece.shop import HabitTable, Shop
from shopdraw.trade.lumber import board_feet
from shopdraw.trade.sheet_goods import SheetGoodsSize, sheet_size
from shopdraw.trade.table import NotInTable
from shopdraw.wood.assembly import Assembly, Hardware
from shopdraw.wood.board import Board, Stock
from shopdraw.wood.volume import mass_kg, volume_mm3

TITLE = "Materials"
WASTE_SOLID = 15.0
WASTE_SHEET = 15.0
REASON_SOLID = "ends, kerf, knots in clear grade (common practice); more for sapwood, shaped parts, lower grades"
REASON_SHEET = "kerf and offcuts, then whole sheets (common practice); a layout tells it exactly"
REASON_SHOP = "the shop's own habit"
_INCH = float(MM_PER_INCH)
_M3 = 1e9


@dataclass(frozen=True, slots=True)
class Material:
    """One thing to buy.

    Attributes:
        stock: the stock's name in the piece, or "" for hardware.
        kind: "solid", "sheet" or "hardware".
        buy: what to ask for.
        rule: how it is counted.
        net: counted amount without waste, in `unit` (sheets: as a share of one).
        waste_percent: allowance.
        reason: why so much.
        quantity: what to buy, in `unit`.
        unit: "board feet", "m³", "sheets" or "pieces".
        boards: how many boards are made from it.
        finished_m3: volume of the finished boards.
        weight_kg: of the finished boards.
    """

    stock: str
    kind: str
    buy: str
    rule: str
    net: float
    waste_percent: float
    reason: str
    quantity: float
    unit: str
    boards: int = 0
    finished_m3: float = 0.0
    weight_kg: float = 0.0


def materials_of(assembly: Assembly, design: Design, shop: Shop | None = None) -> tuple[Material, ...]:
    """Everything that the piece needs, in the order of its boards: solid wood and sheets, then hardware.

    Args:
        assembly: the piece.
        design: its inputs: a stock's own waste comes first.
        shop: whose allowances for waste hold where the piece states none; None for the stated defaults.
    """
    return (*wood_of(assembly, design, shop).values(), *_hardware(assembly.hardware, sizes_of(design)))


def wood_of(assembly: Assembly, design: Design, shop: Shop | None = None) -> Mapping[Stock, Material]:
    """What the piece needs of each stock, in the order of its boards."""
    by_stock: dict[Stock, list[Board]] = {}
    for board in assembly.boards:
        by_stock.setdefault(board.stock, []).append(board)
    habit = (shop or Shop()).habit
    return {
        stock: (_sheets if stock.kind == "sheet" else _solid)(stock, tuple(boards), design, habit)
        for stock, boards in by_stock.items()
    }


def with_waste(net: float, percent: float) -> float:
    """An amount with its allowance for waste."""
    return net * (1.0 + percent / 100.0)


def counted_board_feet(boards: Iterable[Board]) -> float:
    """Board feet of boards as a yard counts them: finished width × length at the rough thickness, at least 1 in.

    Source: hardwood is counted at its nominal thickness, below 1 in as 1 in (NHLA rules as told by the hardwood yards
    named in the lumber table).
    """
    return sum(
        board_feet(max(_INCH, rough_thickness(board.stock)), board.width, board.length) * _layers(board)
        for board in boards
    )


def counted_m3(boards: Iterable[Board]) -> float:
    """Cubic metres of boards as a yard counts them: finished width × length at the rough thickness."""
    return sum(rough_thickness(board.stock) * board.width * board.length * _layers(board) for board in boards) / _M3


def _layers(board: Board) -> int:
    return max(1, len(board.layers))


def _solid(stock: Stock, boards: tuple[Board, ...], design: Design, habit: HabitTable) -> Material:
    sizes = sizes_of(design)
    rough = sizes.words(rough_thickness(stock), sizes.thickness)
    waste, reason = _waste(stock, design, habit.waste_solid, (WASTE_SOLID, REASON_SOLID))
    if design.piece.units == "inch":
        net, unit = counted_board_feet(boards), "board feet"
        rule = f"board feet, width × length at {rough} rough, at least 1 in"
    else:
        net, unit = counted_m3(boards), "m³"
        rule = f"cubic metres, width × length at {rough} rough"
    return Material(
        stock.name, "solid", trade_name(stock), rule, net, waste, reason, with_waste(net, waste), unit, *_made(boards)
    )


def _sheets(stock: Stock, boards: tuple[Board, ...], design: Design, habit: HabitTable) -> Material:
    sizes, size = sizes_of(design), sheet_of(stock, design)
    waste, reason = _waste(stock, design, habit.waste_sheet, (WASTE_SHEET, REASON_SHEET))
    net = sum(board.width * board.length for board in boards) / (size.width_mm * size.length_mm)
    large = [b.label for b in boards if b.length > size.length_mm or b.width > size.width_mm]
    if large:
        reason = f"too large for this sheet, grain kept: {', '.join(large)}; {reason}"
    return Material(
        stock.name,
        "sheet",
        f"{trade_name(stock)}, {sizes.words(stock.thickness, sizes.thickness)} as measured, {size.name}",
        "area, whole sheets",
        net,
        waste,
        reason,
        float(math.ceil(with_waste(net, waste) - 1e-9)),
        "sheets",
        *_made(boards),
    )


def sheet_of(stock: Stock, design: Design) -> SheetGoodsSize:
    """The sheet that a stock comes in: as the piece says, else 4 × 8 ft, in millimetre pieces 1220 × 2440."""
    usual = "4x8" if design.piece.units == "inch" else "1220x2440"
    table = design.stock.get(stock.name)
    try:
        return sheet_size((table.sheet if table is not None else "") or usual)
    except NotInTable:
        return sheet_size(usual)


def _waste(stock: Stock, design: Design, habit: float | None, usual: tuple[float, str]) -> tuple[float, str]:
    """Percent and why: the piece's own, else the shop's habit, else the usual one."""
    table: StockTable | None = design.stock.get(stock.name)
    if table is not None and table.waste is not None:
        return table.waste, table.waste_reason or "as the piece says"
    return usual if habit is None else (habit, REASON_SHOP)


def _made(boards: tuple[Board, ...]) -> tuple[int, float, float]:
    return len(boards), sum(volume_mm3(b.shape) for b in boards) / _M3, sum(mass_kg(b) for b in boards)


def _hardware(fittings: Iterable[Hardware], sizes: Sizes) -> list[Material]:
    counts: dict[tuple[str, tuple[tuple[str, float], ...]], int] = {}
    for fitting in fittings:
        key = (fitting.kind, fitting.sizes)
        counts[key] = counts.get(key, 0) + fitting.quantity
    return [
        Material("", "hardware", _asked_for(kind, given, sizes), "count", float(count), 0.0, "", float(count), "pieces")
        for (kind, given), count in sorted(counts.items())
    ]


def _asked_for(kind: str, given: tuple[tuple[str, float], ...], sizes: Sizes) -> str:
    return ", ".join([kind, *(f"{name} {sizes.words(size)}" for name, size in given)])


def materials(assembly: Assembly, design: Design, shop: Shop | None = None) -> Table:
    """The materials table: what the piece needs, how it is counted, and the waste allowed for."""
    digits = 1 if design.piece.units == "inch" else 4
    columns = (
        Column("material"),
        Column("kind"),
        Column("needed, waste included", "", digits),
        Column("unit"),
        Column("net", "", digits),
        Column("waste", "%", 0),
        Column("boards"),
        Column("weight", "kg", 2),
        Column("counted by"),
        Column("reason for the waste"),
    )
    return Table(TITLE, columns, tuple(_row(material) for material in materials_of(assembly, design, shop)))


def _row(material: Material) -> tuple[Cell, ...]:
    hardware = material.kind == "hardware"
    needed = with_waste(material.net, material.waste_percent)
    return (
        material.buy,
        material.kind,
        round(material.quantity) if hardware else needed,
        material.unit,
        None if hardware else material.net,
        None if hardware else material.waste_percent,
        None if hardware else material.boards,
        None if hardware else material.weight_kg,
        "area; whole sheets are told by the buying list" if material.kind == "sheet" else material.rule,
        material.reason,
    )
