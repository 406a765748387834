"""From a piece and a shop to layouts: which parts of which stock lie on which board or sheet."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.lists.bank import banks_of, from_the_top
from shopdraw.lists.free_grain import free_to_turn
from shopdraw.lists.layout.answer import Layout, Misfit
from shopdraw.lists.layout.job import BoardJob, Piece, SheetJob, Wanted
from shopdraw.lists.layout.lay_out import NoLayout, bound_of, lay_out
from shopdraw.lists.layout.yard import Supply, boards_for, sheets_for
from shopdraw.lists.rough import rough_thickness, trade_name
from shopdraw.lists.rough_size import Kind, Yard, rough_of, yard_of
from shopdraw.lists.yard_boards import boards_of
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Stock
from shopdraw.wood.glue_up import GlueUp

_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Panel:
    """A board of the piece that is glued up.

    Attributes:
        label: of the board.
        name: of the board.
        glue_up: the boards before.
        width: finished, mm.
    """

    label: str
    name: str
    width: float
    glue_up: GlueUp


@dataclass(frozen=True, slots=True)
class StockPlan:
    """How one stock of a piece is cut.

    Attributes:
        stock: the stock.
        name: as a yard knows it.
        supply: what it may be cut from.
        layouts: one, or one for each width of board.
        panels: boards that are glued up.
        misfits: what fits nowhere, or can't be cut whole.
    """

    stock: Stock
    name: str
    supply: Supply
    layouts: tuple[Layout, ...]
    panels: tuple[Panel, ...] = ()
    misfits: tuple[Misfit, ...] = ()

    @property
    def cost(self) -> float:
        """Money, or square metres bought."""
        return sum(layout.cost for layout in self.layouts)

    @property
    def bound(self) -> float:
        """No layout with these cuts costs less."""
        return sum(layout.bound for layout in self.layouts)


def plans(assembly: Assembly, design: Design, shop: Shop) -> tuple[StockPlan, ...]:
    """Layouts for every stock of a piece, in the order of its boards."""
    by_stock: dict[Stock, list[Board]] = {}
    for board in assembly.boards:
        by_stock.setdefault(as_bought(board.stock, shop), []).append(board)
    return tuple(
        (_sheet_plan if stock.kind == "sheet" else _board_plan)(stock, boards, design, shop)
        for stock, boards in by_stock.items()
    )


def as_bought(stock: Stock, shop: Shop) -> Stock:
    """A stock as the yard knows it: stocks of a piece that are bought as one thing are laid out together.

    Rough boards are one thing at one rough thickness, whatever they are planed to later; dressed boards and sheets at
    one thickness as measured.
    """
    thickness = stock.thickness
    dressed = any(table.thickness is not None for table in boards_of(stock, shop.yard.items()).values())
    if stock.kind == "solid" and not dressed:
        thickness = rough_thickness(stock)
    return replace(
        stock, name=trade_name(stock), thickness=thickness, coefficient=0.0, density=0.0, measured=True,
    )  # fmt: skip


def _sheet_plan(stock: Stock, boards: Sequence[Board], design: Design, shop: Shop) -> StockPlan:
    supply = sheets_for(boards[0].stock, shop, design)
    banks = banks_of(boards)
    yard = yard_of(design, shop)
    wanted = tuple(
        Wanted(board.id, rough.length, rough.width, free=free_to_turn(board, design),
               strip=banks.get(board.id, ""), label=board.label)
        for board in from_the_top(boards)
        for rough in (rough_of(board, yard),)
    )
    job = SheetJob(wanted, supply.pieces, shop.saw.kerf, shop.saw.edge_trim)
    layouts, misfits = _laid_out([job])
    return StockPlan(stock, trade_name(stock), supply, layouts, misfits=misfits)


def _board_plan(stock: Stock, boards: Sequence[Board], design: Design, shop: Shop) -> StockPlan:
    """Solid wood: by width of board, and all widths at once with narrow parts ripped from wide boards; the cheaper."""
    supply = boards_for(max((board.stock for board in boards), key=lambda one: one.thickness), shop)
    yard = yard_of(design, shop)
    panels = tuple(_panels(boards, yard))
    wanted = tuple(_parts(boards, panels, yard))
    layouts, misfits = _laid_out(_class_jobs(wanted, supply, shop))
    cost, ripped = sum(layout.cost for layout in layouts), _ripped(wanted, supply, shop)
    if misfits or cost > bound_of(ripped) * (1 + _NEAR):
        at_once = _laid_out([ripped])
        if (len(at_once[1]), sum(layout.cost for layout in at_once[0])) < (len(misfits), cost):
            layouts, misfits = at_once
    return StockPlan(stock, trade_name(stock), supply, layouts, panels, misfits)


def _laid_out(jobs: Sequence[BoardJob | SheetJob]) -> tuple[tuple[Layout, ...], tuple[Misfit, ...]]:
    layouts: list[Layout] = []
    misfits: list[Misfit] = []
    for job in jobs:
        try:
            layout = lay_out(job)
        except NoLayout as error:
            misfits += [Misfit(part.id, str(error)) for part in job.parts]
            continue
        if layout.cut_up:
            layouts.append(layout)
        misfits += layout.misfits
    return tuple(layouts), tuple(misfits)


def _panels(boards: Sequence[Board], yard: Yard) -> Iterator[Panel]:
    """The boards that are wider than any the yard has, with the boards that they are glued up from."""
    for board in boards:
        rough = rough_of(board, yard)
        if rough.kind is Kind.PANEL and rough.glue_up is not None:
            yield Panel(board.label, board.name, board.width, rough.glue_up)


def _parts(boards: Sequence[Board], panels: Sequence[Panel], yard: Yard) -> Iterator[Wanted]:
    """Single boards at their rough size, staves at clear width, each layer of a laminated board by itself."""
    glued = {panel.label: panel.glue_up for panel in panels}
    single = [board for board in boards if board.label not in glued]
    banks, others = banks_of(single), iter(from_the_top(single))
    for board in (each if each.label in glued else next(others) for each in boards):
        layers = range(max(1, len(board.layers)))
        rough = rough_of(board, yard)
        for layer in layers:
            suffix = f" layer {layer + 1}" if len(layers) > 1 else ""
            if board.label in glued:
                for number, width in enumerate(glued[board.label].widths, 1):
                    yield Wanted(f"{board.id}{suffix} board {number}", glued[board.label].length, width.clear,
                                 label=f"{board.label} ({number})")
            else:
                yield Wanted(f"{board.id}{suffix}", rough.length, rough.width,
                             strip=banks.get(board.id, ""), label=board.label)


def _class_jobs(wanted: Sequence[Wanted], supply: Supply, shop: Shop) -> list[BoardJob]:
    """One job for each width of board: each part from the narrowest that holds it, a strip from one that holds all."""
    widths = sorted({width.clear for width in supply.widths})
    widest = {part.strip: max(one.width for one in wanted if one.strip == part.strip) for part in wanted if part.strip}
    by_width: dict[float, list[Wanted]] = {}
    for part in wanted:
        needed = widest.get(part.strip, part.width)
        by_width.setdefault(next((w for w in widths if w >= needed - _NEAR), widths[-1]), []).append(part)
    jobs = []
    hand = [piece for piece in supply.pieces if piece.on_hand]
    for clear in sorted(by_width):
        bought = [piece for piece in supply.pieces if not piece.on_hand and abs(piece.width - clear) <= _NEAR]
        needed = max(part.width for part in by_width[clear])
        mine = [piece for piece in hand if piece.width >= needed - _NEAR]
        hand = [piece for piece in hand if piece not in mine]
        jobs.append(BoardJob(tuple(by_width[clear]), (*mine, *bought), shop.saw.kerf, shop.saw.end_trim))
    return jobs


def _ripped(wanted: Sequence[Wanted], supply: Supply, shop: Shop) -> SheetJob:
    """All at once, boards taken as narrow sheets; only clear stretches of what is on hand."""
    pieces = tuple(stretch for piece in supply.pieces for stretch in _stretches(piece))
    return SheetJob(tuple(wanted), pieces, shop.saw.kerf, 0.0, shop.saw.end_trim)


def _stretches(piece: Piece) -> Iterator[Piece]:
    at = 0.0
    for number, (bad, good) in enumerate((*sorted(piece.defects), (piece.length, piece.length)), 1):
        if bad - at > 1.0:
            name = f"{piece.id}, stretch {number}" if piece.defects else piece.id
            yield replace(piece, id=name, length=bad - at, defects=())
        at = max(at, good)

