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
from shopdraw.sheet.template import NoRoomOnTemplate, Roll, TemplateTooLong, template_of, true_size_sheet
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
    design: Design,
    assembly: Assembly,
    boards: Sequence[Board],
    correction: Correction | None = None,
    workshop: Shop | None = None,
) -> Iterator[TemplateSheets]:
    """The templates of chosen boards alone, in their order.

    Args:
        design: for units and paper.
        assembly: the piece.
        boards: of it.
        correction: for the printer that they go to.
        workshop: whose roll they may be printed on; None for the stated default.
    """
    manner, roll = manner_of(design), roll_of(workshop)
    for board in boards:
        template = template_of(board, assembly, manner.writing, piece_words(design), inch=manner.inch)
        yield _made(template, template_paper(design), correction, roll)


def template_sheets(
    design: Design, assembly: Assembly, correction: Correction | None = None, workshop: Shop | None = None
) -> Iterator[TemplateSheets]:
    """Every template of a piece: boards in its order, profiles of drawer fronts, jigs of breadboard ends, rods.

    Args:
        design: for units and paper.
        assembly: the piece.
        correction: for the printer that they go to.
        workshop: whose cutters and collars jigs are for, whose roll they go on; None for the stated defaults.
    """
    manner, roll = manner_of(design), roll_of(workshop)
    name = template_paper(design)
    making = Making(manner.writing, piece_words(design), manner.inch)
    yield from board_templates(design, assembly, full_boards(assembly), correction, workshop)
    for board in profiled_boards(assembly):
        yield _made(profile_template(board, making), name, correction, roll)
    cutters = [cutter.diameter for cutter in straight(default_cutters(inch=manner.inch))]
    tools = tools_of(workshop or Shop(), cutters, inch=manner.inch)
    for board in capped_boards(assembly):
        try:
            yield _made(jig_template(board, tools, making), name, correction, roll)
        except NoCollar as error:
            yield TemplateSheets(board, f"Jig for {board.label}", why_not=str(error))
    for rod in rods(assembly, manner.writing, piece_words(design), inch=manner.inch):
        yield _made(rod, name, correction, roll)


def roll_of(workshop: Shop | None) -> Roll:
    """The roll that a shop prints templates on."""
    habit = (workshop or Shop()).habit
    return Roll(habit.roll, habit.roll_margin)


def _made(template: Template, name: str, correction: Correction | None, roll: Roll) -> TemplateSheets:
    """A template on its papers; the correction is for that which the piece names, be it a roll or sheets.

    One that is too wide for the roll is turned; one that is too wide both ways is made all the same, and told.
    """
    whole: tuple[Sheet, ...] = ()
    on_roll = name == ROLL
    try:
        whole = (true_size_sheet(template, correction=correction if on_roll else None, roll=roll, turn=on_roll),)
        tiles = () if on_roll else tiled_sheets(template, paper(name), correction)
    except (NoRoomOnTemplate, TemplateTooLong) as error:
        return TemplateSheets(template.board, template.title, whole, why_not=str(error))
    return TemplateSheets(template.board, template.title, whole, tiles, _too_wide(whole[0], roll) if on_roll else "")


def _too_wide(sheet: Sheet, roll: Roll) -> str:
    """Why a page doesn't go on the roll, whichever way it lies; "" where it does."""
    width, height = sheet.paper.width, sheet.paper.height
    if min(width, height) <= roll.prints + 1e-6:
        return ""
    return (
        f"{sheet.title} is a page of {width:.0f} × {height:.0f} mm; a roll of {roll.words} holds at most "
        f"{roll.prints:.0f} mm across: a wider roll (habit.roll of the shop file), or tiles on sheets "
        "(drawing.template_paper)"
    )


def piece_words(design: Design) -> str:
    """What a template says it belongs to."""
    piece = design.piece
    return f"{piece.title}, revision {piece.revision}" if piece.revision else piece.title
