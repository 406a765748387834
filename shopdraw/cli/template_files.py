"""The full-size templates of a package: each side panel on one page of true size, and tiled on the paper in hand."""

from __future__ import annotations

from pathlib import Path

from shopdraw.cli.work import Work
from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.sheet.manner import Manner, manner_of
from shopdraw.sheet.rod import rods
from shopdraw.sheet.template import (
    NoRoomOnTemplate,
    TemplateTooLong,
    template_of,
    true_size_sheet,
)
from shopdraw.sheet.template_word import Template
from shopdraw.sheet.tile import tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity
from shopdraw.write.pdf import write_pdf

MEMBERS = ("side",)
"""Members that every package has templates of; a template can be made of any board."""
ROLL = "roll"


def write_templates(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes `<stem>-template-<label>.pdf` at true size, and the same tiled, with the paper's name behind it.

    Returns:
        What found no room.
    """
    design = work.piece.design
    manner = manner_of(design)
    name = design.drawing.template_paper or ("Letter" if manner.inch else "A4")
    found: list[Finding] = []
    for board in work.assembly.boards:
        if board.member not in MEMBERS:
            continue
        template = template_of(board, work.assembly, manner.writing, _piece_words(work), inch=manner.inch)
        stem = f"{work.stem}-template-{board.label}"
        try:
            _write(work, template, (true_size_sheet(template),), manner, folder / f"{stem}.pdf")
            if name != ROLL:
                _write(work, template, tiled_sheets(template, paper(name)), manner, folder / f"{stem}-{name}.pdf")
        except (NoRoomOnTemplate, TemplateTooLong) as error:
            found.append(_no_room(board, str(error)))
    for rod in rods(work.assembly, manner.writing, _piece_words(work), inch=manner.inch):
        stem = f"{work.stem}-template-{rod.board.label}"
        try:
            _write(work, rod, (true_size_sheet(rod),), manner, folder / f"{stem}.pdf")
            if name != ROLL:
                _write(work, rod, tiled_sheets(rod, paper(name)), manner, folder / f"{stem}-{name}.pdf")
        except (NoRoomOnTemplate, TemplateTooLong) as error:
            found.append(_no_room(rod.board, str(error)))
    return tuple(found)


def _piece_words(work: Work) -> str:
    piece = work.piece.design.piece
    return f"{piece.title}, revision {piece.revision}" if piece.revision else piece.title


def _write(work: Work, template: Template, sheets: tuple[Sheet, ...], manner: Manner, path: Path) -> None:
    piece = work.piece.design.piece
    title = f"{piece.title}: template {template.title}"
    write_pdf(SheetSet(title, piece.drawn_by, "Full-size template", manner.style, sheets, true_size=True), path)


def _no_room(board: Board, message: str) -> Finding:
    return Finding("no-room-on-template", Severity.CAUTION, (board.id,), f"no room for a template: {message}", unit="")
