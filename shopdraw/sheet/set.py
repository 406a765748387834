"""The whole set of sheets of a piece, in order, with what found no room on them."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.lists.rough_size import Yard, yard_of
from shopdraw.lists.table import Table
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.sheet.compose_sheet import compose_sheet
from shopdraw.sheet.cover import cover_sheets
from shopdraw.sheet.cross_reference import with_references
from shopdraw.sheet.fact import BALLOON
from shopdraw.sheet.label_picture import labelled_in
from shopdraw.sheet.leaf import Leaf, leaf_sheets
from shopdraw.sheet.list_sheet import count_list_sheets, list_sheets
from shopdraw.sheet.manner import Manner, larger_papers, manner_of, title_fields
from shopdraw.sheet.part_sheet import NoRoomForPart, count_part_sheets, part_sheets
from shopdraw.sheet.revision_mark import Revised, marked_title, revised, revision_table, with_mark
from shopdraw.sheet.schedules import OrderPages, assembly_leaves, hardware, machine_leaves, order_pages
from shopdraw.sheet.set_pages import Drawn, drawn_pages
from shopdraw.sheet.title_block import TitleFields
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Severity

MOST_COVERS = 6
"""A cover whose words take more sheets than this can't settle how many there are."""


@dataclass(frozen=True, slots=True)
class Set:
    """A set of sheets.

    Attributes:
        sheets: in order.
        findings: of layout: what found no room, and where.
        drawn: views, facts and pages of its drawings.
    """

    sheets: SheetSet
    findings: tuple[Finding, ...]
    drawn: Drawn


@dataclass(frozen=True, slots=True)
class Contents:
    """A set of sheets without its cover and the order of assembly, its sheets not yet counted.

    Attributes:
        design: what a person decided.
        assembly: the piece.
        drawn: views, facts and pages of its drawings.
        parts_manner: style and paper of the part sheets.
        parts: how many part sheets there are.
        yard: what its boards are cut from.
        machines: leaves of machine settings.
        cut_list, materials: tables.
        lists: how many sheets the tables take.
        revision: what changed since the last one.
    """

    design: Design
    assembly: Assembly
    drawn: Drawn
    parts_manner: Manner
    parts: int
    yard: Yard
    machines: Sequence[Leaf]
    cut_list: Table
    materials: Sequence[Table]
    lists: int
    revision: Revised


def contents(
    design: Design, assembly: Assembly, cut_list: Table, materials: Sequence[Table], workshop: Shop | None = None
) -> Contents:
    """Arrangement, sections, details, parts, schedules and lists, ready to be numbered.

    Args:
        design: what a person decided: units, style, projection, paper.
        assembly: the piece.
        cut_list, materials: as the lists have them.
        workshop: whose cutters, router base and collars machine settings are for; None for the stated defaults.
    Raises:
        NoRoomForSet: no paper of the series holds the piece.
        NoRoomForPart: no scale holds a part on the paper.
        NotInTable: the piece names a paper that isn't known.
    """
    drawn = drawn_pages(assembly, manner_of(design), apart=design.drawing.set == "bench")
    manner = drawn.manner
    yard = yard_of(design, workshop)
    shop = _manner_of_parts(design, assembly, manner, yard)
    parts = count_part_sheets(design, assembly, shop.look, shop.size, yard)
    revision = revised(design, assembly)
    tables = (*materials, *hardware(assembly, manner), *revision_table(revision))
    sign = manner.writing.decimal_sign
    return Contents(
        design, assembly, drawn, shop, parts, yard,
        machine_leaves(assembly, manner, workshop or Shop()),
        cut_list, tables, count_list_sheets(cut_list, tables, manner.size, manner.look, sign), revision,
    )  # fmt: skip


def sheet_set(
    design: Design,
    assembly: Assembly,
    findings: Sequence[Finding],
    cut_list: Table,
    materials: Sequence[Table],
    workshop: Shop | None = None,
) -> Set:
    """Cover, arrangement, sections, details, parts, schedules, cut list, materials and the order of assembly.

    Args:
        findings: of its checks; what must be fixed stands on the cover.
        design, assembly, cut_list, materials, workshop: see `contents`.
    Raises:
        NoRoomForSet, NoRoomForPart, NotInTable: see `contents`.
    """
    return numbered(contents(design, assembly, cut_list, materials, workshop), findings)


def numbered(made: Contents, findings: Sequence[Finding], pages: OrderPages | None = None) -> Set:
    """The set with its cover and the order of assembly, each sheet with its number and the count of all.

    Args:
        made: all but these.
        findings: of the checks; what must be fixed stands on the cover.
        pages: picture and steps of the order of assembly, where these have been made already; they serve if they
            were made for the paper that the views stand on.
    """
    drawn, manner, assembly = made.drawn, made.drawn.manner, made.assembly
    if pages is None or pages.manner != manner:
        pages = order_pages(assembly, manner, made.yard)
    order = assembly_leaves(
        assembly, pages, labelled_in(view.drawing for view in drawn.views.done.views.values())
    )
    fields = title_fields(made.design, manner)
    covers = 1
    for _ in range(MOST_COVERS):
        count = covers + len(drawn.pages) + made.parts + len(made.machines) + made.lists + len(order)
        drawings = _drawings(drawn, fields, covers, count)
        inner: list[Sheet] = [*drawings, *_inside(made, order, fields, covers + 1 + len(drawings), count)]
        titles = [("1", "Cover"), *((sheet.number, marked_title(sheet, made.revision)) for sheet in inner)]
        every = [placed.drawing for sheet in drawings for placed in sheet.placed]
        front = cover_sheets(assembly, findings, titles, every, manner, fields, count)
        if len(front) == covers:
            break
        covers = len(front)
    piece = made.design.piece
    marked = tuple(with_mark(sheet, made.revision, manner.look) for sheet in (*front, *inner))
    whole = SheetSet(piece.title, piece.drawn_by, f"Working drawings, {piece.kind}", manner.style, marked)
    elsewhere = labelled_in(standing.view.drawing for leaf in order for standing in leaf.standing)
    return Set(whole, tuple(layout_findings(drawn, {assembly.board(name).label for name in elsewhere})), drawn)


def _drawings(drawn: Drawn, fields: TitleFields, covers: int, count: int) -> list[Sheet]:
    """The sheets of views and details, numbered after so many covers."""
    return [
        compose_sheet(
            page.key,
            str(covers + 1 + i),
            count,
            page.title,
            drawn.manner.size,
            page.standing,
            replace(fields, scale=page.scale, projection=drawn.manner.projection),
            drawn.manner.look,
            page.marks,
        )
        for i, page in enumerate(with_references(drawn, covers + 1))
    ]


def _inside(
    made: Contents, order: Sequence[Leaf], fields: TitleFields, first: int, count: int
) -> Iterator[Sheet]:
    """Parts, machine settings, tables and order of assembly, numbered from `first`."""
    manner, shop = made.drawn.manner, made.parts_manner
    parts = part_sheets(made.design, made.assembly, shop.look, shop.size, fields, first, count, made.yard)
    yield from parts
    after = first + len(parts)
    yield from leaf_sheets(made.machines, manner, fields, after, count)
    after += len(made.machines)
    sign = manner.writing.decimal_sign
    tables = list_sheets(made.cut_list, made.materials, manner.size, fields, manner.look, after, count, sign)
    yield from tables
    yield from leaf_sheets(order, manner, fields, after + len(tables), count)


def _manner_of_parts(design: Design, assembly: Assembly, manner: Manner, yard: Yard) -> Manner:
    """The manner of the part sheets: the set's paper, or the next larger one on which every part has room.

    Raises:
        NoRoomForPart: a part has room on no paper of the series.
    """
    sizes = larger_papers(manner.size)
    for size in sizes[:-1]:
        held = manner.on(size)
        try:
            count_part_sheets(design, assembly, held.look, held.size, yard)
        except NoRoomForPart:
            continue
        return held
    return manner.on(sizes[-1])


def layout_findings(drawn: Drawn, labelled: Collection[str] = ()) -> Iterator[Finding]:
    """One for each fact or label that found no room, and for each table of a person's own that does nothing.

    Args:
        drawn: the set's views.
        labelled: labels that pictures carry: no loss where a view had no room for them.
    """
    for lost in drawn.views.nowhere:
        yield Finding(
            code="points-nowhere",
            severity=Severity.CAUTION,
            where=(lost.address,),
            message=f"{lost.address}: {lost.why}; the table does nothing",
            unit="",
            basis="the sheets' own dimensions and planes",
        )
    for left in drawn.views.done.unplaced:
        if left.fact.removeprefix(BALLOON) in labelled:
            continue
        yield Finding(
            code="no-room",
            severity=Severity.CAUTION,
            where=(left.fact, left.view),
            message=f"no room for {left.fact} on {left.view}: {left.reason}; a larger paper or scale would take it",
            basis="the sheet's own layout",
        )
