"""The sets of sheets of a piece as they print, with what a hand can take hold of: made in the worker process. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.on_sheet import OnSheets
from shopdraw.editor.sheet_grips import grips_of
from shopdraw.editor.shop_of import shop_of
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import allowances, cut_list
from shopdraw.lists.notes import notes_of
from shopdraw.piece.design import Design
from shopdraw.sheet.printer import correction_of
from shopdraw.sheet.set import sheet_set
from shopdraw.sheet.template_set import template_sheets
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding


@dataclass(frozen=True, slots=True)
class DrawnSheets:
    """What a piece prints.

    Attributes:
        sets: the sheets on paper, then the templates.
        held: what can be taken hold of on the sheets.
        findings: of their layout: what found no room, which of a person's own tables do nothing.
    """

    sets: tuple[SheetSet, ...]
    held: OnSheets
    findings: tuple[Finding, ...]


def sheet_sets(
    design: Design, assembly: Assembly, found: tuple[Finding, ...], path: Path | None = None
) -> DrawnSheets:  # fmt: skip
    """The sheets on paper, then the templates: in tiles of the paper in hand, or whole for a roll.

    Args:
        design, assembly, found: the piece.
        path: of the piece file, if it has one: the shop is found from there.
    """
    workshop = shop_of(design, path)
    lists = (
        cut_list(assembly, design, workshop),
        (materials(assembly, design, workshop), allowances(design, workshop), *notes_of(design, assembly)),
    )
    made = sheet_set(design, assembly, found, *lists, workshop)
    held = grips_of(made, assembly)
    templates = template_sheets(design, assembly, correction_of(workshop), workshop)
    pages = tuple(sheet for one in templates for sheet in (one.tiles or one.whole))
    if not pages:
        return DrawnSheets((made.sheets,), held, made.findings)
    title, style = f"{design.piece.title}: templates", made.sheets.style
    tiled = SheetSet(title, design.piece.drawn_by, "Full-size templates", style, pages, true_size=True)
    return DrawnSheets((made.sheets, tiled), held, made.findings)
