"""A set of sheets as DXF: views at true size in model space, sheets as layouts with viewports.

Model space alone is usable: each sheet's drawings lie there at 1:1 in the piece's unit, placed to each other as on the
sheet, letters and dimensions at the size that they are printed at. R12, which has no layouts to speak of, gets the
sheets themselves side by side in model space, each enlarged so that its first drawing is at true size.
"""

from __future__ import annotations

import io
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path as FilePath
from typing import IO

import ezdxf
from ezdxf.document import Drawing as DxfFile
from ezdxf.layouts.base import BaseLayout

from shopdraw.drawing.bounds import NothingDrawn, drawing_box
from shopdraw.drawing.letters import printable
from shopdraw.drawing.sheet import Placed, Sheet, SheetSet
from shopdraw.shape.path import Point
from shopdraw.write.dxf_dimension import DimensionStyles, add_dimension
from shopdraw.write.dxf_page import INCH_MM, LETTERS, R12, STYLE_OF, Page, Pens, add_marks
from shopdraw.write.finite import finite_marks

VERSIONS = ("R12", "R2010", "R2013", "R2018")
UNIT_MM = {"mm": 1.0, "in": INCH_MM}
APART_PAPER_MM = 40.0
"""Space between groups of drawings, or sheets, side by side in model space, on the paper of the left one."""
ROUND_PAPER_MM = 4.0
"""Space round a viewport's drawings, on paper."""

Box = tuple[float, float, float, float]


class CannotWriteDxf(ValueError):
    """A unit or a version that there isn't, or nothing to write; the message says what would be right."""


def write_dxf(sheet_set: SheetSet, to: FilePath | str | IO[bytes], unit: str = "mm", version: str = "R2010") -> None:
    """Write the sheets as one DXF file. The same set gives the same bytes.

    Args:
        sheet_set: at least one sheet.
        to: a path or a binary stream.
        unit: "mm" or "in": the file's unit, said in the header both ways (R12 has no header variable for it).
        version: one of `VERSIONS`.
    Raises:
        CannotWriteDxf: a unit or version that there isn't, or no sheet.
        NotFinite: a mark holds a number that isn't finite.
    """
    if unit not in UNIT_MM:
        raise CannotWriteDxf(f"unit is {unit!r}; it must be one of {', '.join(UNIT_MM)}")
    if version not in VERSIONS:
        raise CannotWriteDxf(f"DXF version is {version!r}; it must be one of {', '.join(VERSIONS)}")
    if not sheet_set.sheets:
        raise CannotWriteDxf("a DXF needs at least one sheet, found none")
    with fixed_metadata():
        file = _new_file(sheet_set, unit, version)
        _Writer(file, sheet_set, UNIT_MM[unit]).write(version)
        save(file, to)


@contextmanager
def fixed_metadata() -> Iterator[None]:
    """While a file is made: dates and random ids are fixed, so that the same drawing gives the same bytes."""
    options = ezdxf.options  # type: ignore[attr-defined]
    before = options.write_fixed_meta_data_for_testing
    options.write_fixed_meta_data_for_testing = True
    try:
        yield
    finally:
        options.write_fixed_meta_data_for_testing = before


def save(file: DxfFile, to: FilePath | str | IO[bytes]) -> None:
    """Write a document's bytes, line ends the same on every system."""
    if file.dxfversion > "AC1009":
        # Left to the library, classes of the types in use come in the order of a set: another one in each process.
        file.commit_pending_changes()
        for name in sorted(file.entitydb.dxf_types_in_use()):
            file.classes.add_class(name)
    text = io.StringIO(newline="\n")
    file.write(text)
    data = file.encode(text.getvalue())
    if isinstance(to, (str, FilePath)):
        FilePath(to).write_bytes(data)
    else:
        to.write(data)


def new_document(unit: str, version: str) -> DxfFile:
    """An empty document that says its unit both ways, where its version can. Source: DXF reference, header section."""
    inches = unit == "in"
    # `ezdxf.new` sets a unit always, and logs a complaint where the version has no place for it.
    file = DxfFile.new(version)
    if version != R12:
        file.header["$INSUNITS"] = 1 if inches else 4
        file.header["$MEASUREMENT"] = 0 if inches else 1
    file.header["$LUNITS"] = 5 if inches else 2
    file.header["$LUPREC"] = 5 if inches else 2
    file.header["$LTSCALE"] = 1.0
    return file


def _new_file(sheet_set: SheetSet, unit: str, version: str) -> DxfFile:
    file = new_document(unit, version)
    if version != R12:
        # Line types are laid out for model space; viewports enlarge them like everything else.
        file.header["$PSLTSCALE"] = 0
        file.header.custom_vars.append("Title", printable(sheet_set.title))
    for name, font in STYLE_OF.values():
        file.styles.add(name, font=font)
    file.header["$TEXTSTYLE"] = LETTERS
    return file


class _Writer:
    """Lays drawings out in the file, from left to right."""

    def __init__(self, file: DxfFile, sheet_set: SheetSet, unit_mm: float) -> None:
        self._file = file
        self._set = sheet_set
        self._unit_mm = unit_mm
        first = sheet_set.sheets[0]
        self._pens = Pens(file, first.paper.group, _enlarged(first), unit_mm)
        self._styles = DimensionStyles(self._pens, sheet_set.style)
        self._right = 0.0
        self._top = 0.0

    def write(self, version: str) -> None:
        self._pens.set_up_layers()
        if version == R12:
            for sheet in self._set.sheets:
                self._whole_sheet(sheet)
        else:
            for sheet in self._set.sheets:
                self._layout(sheet)
            self._file.layouts.delete("Layout1")
        self._show_all()

    def _whole_sheet(self, sheet: Sheet) -> None:
        """R12: a sheet as it is on paper, enlarged to true size, all in model space."""
        model = self._file.modelspace()
        enlarged = _enlarged(sheet)
        origin = (self._right, 0.0)
        for placed in sheet.placed:
            self._drawing(model, placed, self._page(sheet, placed.scale, placed.at, enlarged, origin), sheet)
        page = self._page(sheet, 1.0, (0.0, 0.0), enlarged, origin)
        add_marks(model, tuple(finite_marks(sheet.marks, f"sheet {sheet.number}")), page, self._pens)
        self._take(sheet.paper.width, sheet.paper.height, enlarged)

    def _layout(self, sheet: Sheet) -> None:
        """R2010 and later: drawings at true size in model space, the rest on a layout with viewports."""
        paper = sheet.paper
        layout = self._file.layouts.new(_layout_name(sheet, self._file.layouts.names()))
        inches = self._unit_mm == INCH_MM
        layout.page_setup(
            (paper.width / self._unit_mm, paper.height / self._unit_mm), (0, 0, 0, 0), "inch" if inches else "mm"
        )
        page = self._page(sheet, 1.0, (0.0, 0.0), 1.0, (0.0, 0.0))
        add_marks(layout, tuple(finite_marks(sheet.marks, f"sheet {sheet.number}")), page, self._pens)
        for scale in dict.fromkeys(placed.scale for placed in sheet.placed):
            self._group(layout, sheet, [placed for placed in sheet.placed if placed.scale == scale])

    def _group(self, layout: BaseLayout, sheet: Sheet, group: list[Placed]) -> None:
        """Drawings of one scale: side by side in model space as on the sheet, seen through one viewport."""
        model = self._file.modelspace()
        box = _paper_box(group, self._set.style, sheet.paper.group)
        if box is None:
            return
        enlarged = 1.0 / group[0].scale
        low = (box[0] - ROUND_PAPER_MM, box[1] - ROUND_PAPER_MM)
        size = (box[2] - box[0] + 2 * ROUND_PAPER_MM, box[3] - box[1] + 2 * ROUND_PAPER_MM)
        factor = enlarged / self._unit_mm
        origin = (self._right - low[0] * factor, -low[1] * factor)
        for placed in group:
            self._drawing(model, placed, self._page(sheet, placed.scale, placed.at, enlarged, origin), sheet)
        middle = (low[0] + size[0] / 2, low[1] + size[1] / 2)
        self._viewport(layout, middle, size, (middle[0] * factor + origin[0], middle[1] * factor + origin[1]), factor)
        self._take(size[0], size[1], enlarged)

    def _viewport(self, layout: BaseLayout, middle: Point, size: Point, seen: Point, factor: float) -> None:
        viewport = layout.add_viewport(  # type: ignore[attr-defined]
            center=(round(middle[0] / self._unit_mm, 6), round(middle[1] / self._unit_mm, 6)),
            size=(round(size[0] / self._unit_mm, 6), round(size[1] / self._unit_mm, 6)),
            view_center_point=(round(seen[0], 6), round(seen[1], 6)),
            view_height=round(round(size[1] / self._unit_mm, 6) * factor * self._unit_mm, 6),
            dxfattribs={"layer": "Defpoints"},
        )
        viewport.dxf.flags |= _LOCKED

    def _drawing(self, model: BaseLayout, placed: Placed, page: Page, sheet: Sheet) -> None:
        where = f"sheet {sheet.number}, {placed.drawing.id}"
        add_marks(model, tuple(finite_marks(placed.drawing.marks, where)), page, self._pens)
        for dimension in placed.drawing.dimensions:
            add_dimension(model, dimension, page, self._pens, self._styles, where)

    def _page(self, sheet: Sheet, scale: float, at: Point, enlarged: float, origin: Point) -> Page:
        return Page(scale, at, enlarged, origin, self._unit_mm, sheet.paper.group)

    def _take(self, width_mm: float, height_mm: float, enlarged: float) -> None:
        factor = enlarged / self._unit_mm
        self._right += (width_mm + APART_PAPER_MM) * factor
        self._top = max(self._top, height_mm * factor)

    def _show_all(self) -> None:
        """The view that opens shows all of model space."""
        self._file.header["$EXTMIN"] = (0.0, 0.0, 0.0)
        self._file.header["$EXTMAX"] = (round(self._right, 6), round(self._top, 6), 0.0)
        height = max(self._top, self._right / 2, 1.0)
        self._file.set_modelspace_vport(round(height, 6), (round(self._right / 2, 6), round(self._top / 2, 6)))


_LOCKED = 0x4000
"""A viewport whose scale can't be changed by turning a wheel. Source: DXF reference, VIEWPORT, group code 90."""


def _enlarged(sheet: Sheet) -> float:
    return 1.0 / sheet.placed[0].scale if sheet.placed else 1.0


def _paper_box(group: list[Placed], style: str, paper_group: str) -> Box | None:
    """The box round a group's drawings on paper, mm; None when nothing is drawn."""
    boxes = []
    for placed in group:
        try:
            x0, y0, x1, y1 = drawing_box(placed.drawing, placed.scale, style, paper_group)
        except NothingDrawn:
            continue
        s, (x, y) = placed.scale, placed.at
        boxes.append((x0 * s + x, y0 * s + y, x1 * s + x, y1 * s + y))
    if not boxes:
        return None
    return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)


def _layout_name(sheet: Sheet, taken: list[str]) -> str:
    """A layout's name from the sheet's number and key: letters, digits, blank, point and hyphen; each is there once."""
    name = "".join(c if c.isalnum() or c in " .-" else "-" for c in f"{sheet.number} {sheet.key}")
    known = {other.casefold() for other in taken}
    return next(n for n in (name, *(f"{name} {i}" for i in range(2, len(taken) + 3))) if n.casefold() not in known)
