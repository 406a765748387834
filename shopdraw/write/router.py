"""Flat files for the router: closed polylines with true arcs, circles, notes; nothing that a controller can't read.

No blocks, no dimensions, no hatches, no paper space; layers by verb and depth, all in ACI 7.
"""

from __future__ import annotations

from pathlib import Path as FilePath
from typing import IO

from ezdxf.document import Drawing as DxfFile
from ezdxf.layouts.base import BaseLayout

from shopdraw.cnc.flat import INSIDE, NOTE, STOCK, THROUGH, Circle, FlatPart, NotFlat, OpenLine, Operation, Unit
from shopdraw.drawing.mark import Line, Text
from shopdraw.shape.path import Corner, Path, Point, arc_of
from shopdraw.write.dxf import fixed_metadata, new_document, save
from shopdraw.write.dxf_page import R12, clean, old_words
from shopdraw.write.finite import finite_marks

UNIT_MM = {Unit.MM: 1.0, Unit.INCH: 25.4}
GRID_DIGITS = {Unit.MM: 3, Unit.INCH: 5}
"""Coordinates are rounded to 0.001 mm or 0.00001 in: coarser grids kink tangent arcs and move areas."""
_BULGE_DIGITS = 9
NOTE_STYLE = "STANDARD"


def write_router_file(part: FlatPart, to: FilePath | str | IO[bytes], version: str = "R2010") -> None:
    """Write one flat part. The same part gives the same bytes.

    Args:
        part: outline, operations, notes and blank, mm.
        to: a path or a binary stream.
        version: "R2010", or "R12" for controllers that take nothing newer (its unit stands in a note only).
    Raises:
        NotFlat: two corners of an outline fall on one point of the grid.
        NotFinite: a note holds a number that isn't finite.
        ValueError: another version.
    """
    if version not in (R12, "R2010"):
        raise ValueError(f"DXF version is {version!r}; a router file is R12 or R2010")
    with fixed_metadata():
        file = new_document(part.unit.value, version)
        file.header["$LUNITS"] = 2
        _Writer(file, part).write()
        save(file, to)


class _Writer:
    """Adds a part's entities to an empty document."""

    def __init__(self, file: DxfFile, part: FlatPart) -> None:
        self._file = file
        self._part = part
        self._model: BaseLayout = file.modelspace()
        self._unit_mm = UNIT_MM[part.unit]
        self._digits = GRID_DIGITS[part.unit]

    def write(self) -> None:
        part = self._part
        if part.stock is not None:
            self._closed(part.stock.anticlockwise(), STOCK)
        if part.outline is not None:
            if part.cut_outline:
                self._closed(part.outline.anticlockwise(), THROUGH)
            else:
                self._on_notes(part.outline)
        for operation in part.operations:
            self._operation(operation)
        for mark in finite_marks(part.notes, f"notes of {part.name}"):
            if isinstance(mark, Text):
                self._words(mark)
            elif isinstance(mark, Line):
                self._line(mark.start, mark.end, NOTE)

    def _operation(self, operation: Operation) -> None:
        shape = operation.shape
        match shape:
            case Path():
                outer = shape.anticlockwise()
                # Inner edges run clockwise: an opening through the part, wood standing in a pocket.
                inner = operation.island or operation.layer == INSIDE
                self._closed(outer.reversed() if inner else outer, operation.layer)
            case Circle():
                self._circle(shape, operation.layer)
            case OpenLine():
                self._open(shape.start, shape.end, shape.bulge, operation.layer)

    def _closed(self, path: Path, layer: str) -> None:
        round_whole = _as_circle(path)
        if round_whole is not None:
            self._circle(round_whole, layer)
            return
        points = []
        for x, y, bulge in path.corners:
            points.append((*self._point((x, y)), round(bulge, _BULGE_DIGITS) + 0.0))
        for here, there in zip(points, points[1:] + points[:1], strict=True):
            if here[:2] == there[:2]:
                raise NotFlat(
                    f"{self._part.name}, layer {layer}: two corners fall on one point of the grid at "
                    f"({here[0]:g}, {here[1]:g}) {self._part.unit.value}; segments must be 0.05 mm or longer"
                )
        attributes = {"layer": self._layer(layer)}
        if self._file.dxfversion == "AC1009":
            self._model.add_polyline2d(points, format="xyb", close=True, dxfattribs=attributes)
        else:
            self._model.add_lwpolyline(points, format="xyb", close=True, dxfattribs=attributes)

    def _circle(self, circle: Circle, layer: str) -> None:
        self._model.add_circle(
            self._point(circle.centre),
            round(circle.radius / self._unit_mm, self._digits),
            dxfattribs={"layer": self._layer(layer)},
        )

    def _open(self, start: Point, end: Point, bulge: float, layer: str) -> None:
        if bulge == 0.0:
            self._line(start, end, layer)
            return
        arc = arc_of(start, end, bulge)
        self._model.add_arc(
            self._point(arc.centre),
            round(arc.radius / self._unit_mm, self._digits),
            round(arc.start_deg, 6),
            round(arc.end_deg % 360.0, 6),
            dxfattribs={"layer": self._layer(layer)},
        )

    def _line(self, start: Point, end: Point, layer: str) -> None:
        self._model.add_line(self._point(start), self._point(end), dxfattribs={"layer": self._layer(layer)})

    def _on_notes(self, path: Path) -> None:
        """An outline that isn't cut in this setting: loose lines and arcs, so that nothing closed could be cut."""
        for here, there in path.pairs():
            self._open((here.x, here.y), (there.x, there.y), here.bulge, NOTE)

    def _words(self, text: Text) -> None:
        attributes: dict[str, object] = {
            "layer": self._layer(NOTE),
            "style": NOTE_STYLE,
            "height": round(text.height / self._unit_mm, self._digits),
            "insert": self._point(text.at),
            "text": clean(old_words(text.words)),
        }
        if text.angle_deg % 360.0:
            attributes["rotation"] = round(text.angle_deg % 360.0, 6)
        if text.anchor != "left":
            attributes["halign"] = 1 if text.anchor == "middle" else 2
            attributes["align_point"] = attributes["insert"]
        self._model.new_entity("TEXT", attributes)

    def _layer(self, name: str) -> str:
        if name not in self._file.layers:
            self._file.layers.add(name, color=7)
        return name

    def _point(self, point: Point) -> Point:
        x, y = point
        # Adding zero turns -0.0 into 0.0.
        return round(x / self._unit_mm, self._digits) + 0.0, round(y / self._unit_mm, self._digits) + 0.0


def _as_circle(path: Path) -> Circle | None:
    """The full circle that a path of two half circles is, or None."""
    if len(path.corners) != 2:
        return None
    (x0, y0, b0), (x1, y1, b1) = (Corner(*c) for c in path.corners)
    if abs(abs(b0) - 1.0) > 1e-9 or abs(b1 - b0) > 1e-9:
        return None
    return Circle(((x0 + x1) / 2, (y0 + y1) / 2), ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5 / 2)
