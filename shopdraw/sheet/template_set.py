"""The full-size templates that every package of a piece has: its side panels, and its rods."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.sheet import Sheet
from shopdraw.piece.design import Design
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.printer import Correction
from shopdraw.sheet.rod import rods
from shopdraw.sheet.template import NoRoomOnTemplate, TemplateTooLong, template_of, true_size_sheet
from shopdraw.sheet.template_word import Template
from shopdraw.sheet.tile import tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

MEMBERS = ("side",)
"""Members that every package has templates of; a template can be made of any board."""
ROLL = "roll"


@dataclass(frozen=True, slots=True)
class TemplateSheets:
    """A template as it prints.

    Attributes:
        board: what it is a template of; a rod has a board of its own.
        title: of the template.
        whole: one page at true size.
        tiles: the same on the paper in hand; none for a roll.
        why_not: why one of these isn't there, or "".
    """

    board: Board
    title: str
    whole: tuple[Sheet, ...] = ()
    tiles: tuple[Sheet, ...] = ()
    why_not: str = ""


def template_paper(design: Design) -> str:
    """The name of the paper that templates are tiled on, or "roll"."""
    return design.drawing.template_paper or ("Letter" if manner_of(design).inch else "A4")


def board_templates(
    design: Design, assembly: Assembly, boards: Sequence[Board], correction: Correction | None = None
) -> Iterator[TemplateSheets]:
    """The templates of chosen boards alone, in their order.

    Args:
        design: for units and paper.
        assembly: the piece.
        boards: of it.
        correction: for the printer that they go to.
    """
    manner = manner_of(design)
    for board in boards:
        template = template_of(board, assembly, manner.writing, piece_words(design), inch=manner.inch)
        yield _made(template, template_paper(design), correction)


def template_sheets(
    design: Design, assembly: Assembly, correction: Correction | None = None
) -> Iterator[TemplateSheets]:
    """Every template of a piece, side panels first, then rods.

    Args:
        design: for units and paper.
        assembly: the piece.
        correction: for the printer that they go to.
    """
    manner = manner_of(design)
    boards = [board for board in assembly.boards if board.member in MEMBERS]
    yield from board_templates(design, assembly, boards, correction)
    for rod in rods(assembly, manner.writing, piece_words(design), inch=manner.inch):
        yield _made(rod, template_paper(design), correction)


def _made(template: Template, name: str, correction: Correction | None) -> TemplateSheets:
    """A template on its papers; the correction is for that which the piece names, be it a roll or sheets."""
    whole: tuple[Sheet, ...] = ()
    try:
        whole = (true_size_sheet(template, correction=correction if name == ROLL else None),)
        tiles = () if name == ROLL else tiled_sheets(template, paper(name), correction)
    except (NoRoomOnTemplate, TemplateTooLong) as error:
        return TemplateSheets(template.board, template.title, whole, why_not=str(error))
    return TemplateSheets(template.board, template.title, whole, tiles)


def piece_words(design: Design) -> str:
    """What a template says it belongs to."""
    piece = design.piece
    return f"{piece.title}, revision {piece.revision}" if piece.revision else piece.title
