"""The full-size templates that every package of a piece has, on one page each and in tiles."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.cnc.cutter import default_cutters, straight
from shopdraw.drawing.sheet import Sheet
from shopdraw.lists.machine_settings import tools_of
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.printer import Correction
from shopdraw.sheet.rod import rods
from shopdraw.sheet.template import NoRoomOnTemplate, TemplateTooLong, template_of, true_size_sheet
from shopdraw.sheet.template_choice import capped_boards, full_boards, profiled_boards
from shopdraw.sheet.template_edge import Making, NoCollar, jig_template, profile_template
from shopdraw.sheet.template_word import Template
from shopdraw.sheet.tile import tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

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
    design: Design, assembly: Assembly, correction: Correction | None = None, workshop: Shop | None = None
) -> Iterator[TemplateSheets]:
    """Every template of a piece: boards in its order, profiles of drawer fronts, jigs of breadboard ends, rods.

    Args:
        design: for units and paper.
        assembly: the piece.
        correction: for the printer that they go to.
        workshop: whose cutters and collars jigs are for; None for the stated defaults.
    """
    manner = manner_of(design)
    name = template_paper(design)
    making = Making(manner.writing, piece_words(design), manner.inch)
    yield from board_templates(design, assembly, full_boards(assembly), correction)
    for board in profiled_boards(assembly):
        yield _made(profile_template(board, making), name, correction)
    cutters = [cutter.diameter for cutter in straight(default_cutters(inch=manner.inch))]
    tools = tools_of(workshop or Shop(), cutters, inch=manner.inch)
    for board in capped_boards(assembly):
        try:
            yield _made(jig_template(board, tools, making), name, correction)
        except NoCollar as error:
            yield TemplateSheets(board, f"Jig for {board.label}", why_not=str(error))
    for rod in rods(assembly, manner.writing, piece_words(design), inch=manner.inch):
        yield _made(rod, name, correction)


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
