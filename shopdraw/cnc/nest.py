"""Nested sheets: the parts of a sheet stock laid on whole sheets, with room between them for the cutter.

Two ways are tried: in strips, with cuts between parts that run edge to edge, which leaves whole offcuts; and, where
that could cost less, freely by true outlines. The cheaper one is taken, strips where both cost the same. A part that
is cut from both faces isn't nested, since the sheet can't be turned under it; every part has its own file in any case.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.cnc.corner import through_cutter
from shopdraw.cnc.cutter import Cutter
from shopdraw.cnc.free_nest import Filled, Loose, Spot, free_nest, least_cost
from shopdraw.cnc.nested_sheet import Nest, Nested, Nesting, Way, nested_sheet
from shopdraw.cnc.part import RouterPart
from shopdraw.lists.free_grain import free_to_turn
from shopdraw.lists.layout.answer import CutUp, Misfit
from shopdraw.lists.layout.job import Piece, SheetJob, Span, Wanted
from shopdraw.lists.layout.lay_out import NoLayout, lay_out
from shopdraw.lists.layout.yard import sheets_for
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.shape.no_fit import blank
from shopdraw.wood.board import Stock

_JUST_MORE_MM = 0.1


@dataclass(frozen=True, slots=True)
class Nests:
    """All nested sheets of a piece.

    Attributes:
        sheets: in order.
        left_out: labels of parts that aren't nested, with the reason.
    """

    sheets: tuple[Nest, ...]
    left_out: tuple[tuple[str, str], ...]


def nests(
    made: Sequence[RouterPart], design: Design, shop: Shop, job: Sequence[Cutter], nesting: Nesting | None = None
) -> Nests:
    """The sheets of a piece.

    Args:
        made: every part, in order; only those of sheet stock are nested.
        design: the piece's inputs.
        shop: whose sheets.
        job: the cutters.
        nesting: how; the defaults where not given.
    """
    how = nesting or Nesting()
    by_stock: dict[Stock, list[RouterPart]] = {}
    left_out: list[tuple[str, str]] = []
    for part in made:
        board = part.part.first
        if board.stock.kind != "sheet":
            continue
        if len(part.settings) > 1:
            left_out.append((part.part.labels, "cut from both faces: by its own files"))
        else:
            by_stock.setdefault(board.stock, []).append(part)
    sheets: list[Nest] = []
    for number, (stock, own) in enumerate(by_stock.items(), 1):
        cutter, gap = gap_for(own, job, how)
        filled, misfits, way = _laid_out(stock, own, design, shop, gap, how)
        left_out += [(_label(own, misfit.part), misfit.reason) for misfit in misfits]
        for one in filled:
            lying = _nested(own, one.spots, design)
            size = (one.piece.length, one.piece.width)
            sheets.append(nested_sheet(len(sheets) + 1, f"P{number}", stock, size, lying, cutter, gap, how, way))
    return Nests(tuple(sheets), tuple(left_out))


def gap_for(parts: Sequence[RouterPart], job: Sequence[Cutter], how: Nesting) -> tuple[float, float]:
    """The largest cutter that parts are cut out with, and the gap that they need between them, mm.

    The gap holds the cutter with its allowance on both sides, and a pocket's run-out with the cutter in it.
    """
    cutters = [through_cutter(part.outline, tuple(job)) for part in parts]
    cutter = max((each.diameter for each in cutters if each is not None), default=0.0)
    runs = [run + radius for part in parts for setting in part.settings for run, radius in setting.runs]
    over = max(runs, default=0.0)
    return cutter, max(cutter + 2 * how.allowance, over + _JUST_MORE_MM)


def _laid_out(
    stock: Stock, parts: Sequence[RouterPart], design: Design, shop: Shop, gap: float, how: Nesting
) -> tuple[Sequence[Filled], tuple[Misfit, ...], Way]:
    """Sheets with places, what fits none, and which way they were filled."""
    pieces = sheets_for(stock, shop, design).pieces
    loose = [
        Loose(board.id, blank(part.settings[0].flat.outline), free_to_turn(board, design))
        for part in parts
        for board in part.part.boards
        if part.settings[0].flat.outline is not None
    ]
    in_strips, misfits = _in_strips(parts, pieces, design, gap, how)
    left_out = {misfit.part for misfit in misfits}
    fitting = [part for part in loose if part.id not in left_out]
    cost = sum(one.piece.cost for one in in_strips)
    if fitting and cost > least_cost(fitting, pieces, how) + 1e-6:
        freely = free_nest(fitting, pieces, gap, how, cost)
        if freely is not None:
            return freely, misfits, "freely"
    return in_strips, misfits, "in strips"


def _in_strips(
    parts: Sequence[RouterPart], pieces: Sequence[Piece], design: Design, gap: float, how: Nesting
) -> tuple[list[Filled], tuple[Misfit, ...]]:
    wanted = tuple(
        Wanted(board.id, board.length, board.width, free=free_to_turn(board, design), label=board.label)
        for part in parts
        for board in part.part.boards
    )
    stretches = [
        (piece, start, _stretch(piece, start, end, how)) for piece in pieces for start, end in _stretches(piece, how)
    ]
    try:
        layout = lay_out(SheetJob(wanted, tuple(one for _, _, one in stretches), gap, 0.0))
    except (NoLayout, ValueError) as error:
        return [], tuple(Misfit(one.id, str(error)) for one in wanted)
    filled: dict[str, list[Filled]] = {}
    for piece, start, stretch in stretches:
        sheets = filled.setdefault(piece.id, [])
        for count, cut in enumerate(one for one in layout.cut_up if one.piece.id == stretch.id):
            if count == len(sheets):
                sheets.append(Filled(piece))
            sheets[count].spots += _spots(cut, start, how.margin)
    return [one for sheets in filled.values() for one in sheets], layout.misfits


def _stretch(piece: Piece, start: float, end: float, how: Nesting) -> Piece:
    name = f"{piece.id}, from {start:g}"
    share = (end - start) / piece.length
    width = piece.width - 2 * how.margin
    return replace(piece, id=name, length=end - start, width=width, cost=piece.cost * share, defects=())


def _stretches(piece: Piece, how: Nesting) -> Iterator[Span]:
    """What of a sheet's length is free: from margin to margin, keep-out strips left out."""
    at, end = how.margin, piece.length - how.margin
    for low, high in (*sorted(how.keep_out), (end, end)):
        if min(low, end) - at > 1.0 and piece.width > 2 * how.margin + 1.0:
            yield at, min(low, end)
        at = max(at, high)


def _spots(cut: CutUp, start: float, margin: float) -> list[Spot]:
    return [Spot(one.part, start + one.x, margin + one.y, int(one.turned)) for one in cut.laid]


def _nested(parts: Sequence[RouterPart], spots: Sequence[Spot], design: Design) -> tuple[Nested, ...]:
    boards = {board.id: (board, part) for part in parts for board in part.part.boards}
    return tuple(
        Nested(board, (spot.x, spot.y), part, spot.quarters, free_to_turn(board, design))
        for spot in spots
        for board, part in (boards[spot.part],)
    )


def _label(parts: Sequence[RouterPart], board_id: str) -> str:
    return next((b.label for part in parts for b in part.part.boards if b.id == board_id), board_id)
