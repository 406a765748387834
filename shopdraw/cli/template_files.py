"""The full-size templates of a package: each on one page of true size, and tiled on the paper in hand."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path

from shopdraw.cli.built import Work
from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.printer import correction_of
from shopdraw.sheet.printer_test import printer_test_sheets
from shopdraw.sheet.template_set import ROLL, TemplateSheets, board_templates, template_paper, template_sheets
from shopdraw.trade.paper import paper
from shopdraw.wood.board import Board
from shopdraw.wood.finding import Finding, Severity
from shopdraw.write.pdf import write_pdf


def write_templates(work: Work, folder: Path) -> tuple[Finding, ...]:
    """Writes `<stem>-template-<label>.pdf` at true size, and the same tiled, with the paper's name behind it.

    A test page of the printer lies beside them: what it measures is what `[printer.ID]` of a shop file wants.

    Returns:
        What found no room.
    """
    design, correction = work.piece.design, correction_of(work.shop.shop)
    name = template_paper(design)
    test = printer_test_sheets(None if name == ROLL else paper(name), correction)
    _write(work, "printer test page", test, folder / f"{work.stem}-template-printer-test-{name}.pdf")
    return _written(work, template_sheets(design, work.assembly, correction, work.shop.shop), folder)


def write_board_templates(work: Work, folder: Path, boards: Sequence[Board]) -> tuple[Finding, ...]:
    """The same of chosen boards alone, whichever they are."""
    design, correction = work.piece.design, correction_of(work.shop.shop)
    return _written(work, board_templates(design, work.assembly, boards, correction, work.shop.shop), folder)


def _written(work: Work, every: Iterable[TemplateSheets], folder: Path) -> tuple[Finding, ...]:
    design = work.piece.design
    found: list[Finding] = []
    for made in every:
        stem = f"{work.stem}-template-{made.board.label}"
        if made.whole:
            _write(work, made.title, made.whole, folder / f"{stem}.pdf")
        if made.tiles:
            _write(work, made.title, made.tiles, folder / f"{stem}-{template_paper(design)}.pdf")
        if made.why_not:
            found.append(_no_room(made.board, made.why_not))
    return tuple(found)


def _write(work: Work, title: str, sheets: tuple[Sheet, ...], path: Path) -> None:
    design = work.piece.design
    piece, style = design.piece, manner_of(design).style
    title = f"{piece.title}: template {title}"
    write_pdf(SheetSet(title, piece.drawn_by, "Full-size template", style, sheets, true_size=True), path)


def _no_room(board: Board, message: str) -> Finding:
    return Finding("no-room-on-template", Severity.CAUTION, (board.id,), f"no room for a template: {message}", unit="")
