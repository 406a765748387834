"""What is painted over a sheet while a hand is on it: what is pointed at, chosen or drawn along."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from shopdraw.editor.look import Colours
from shopdraw.editor.on_sheet import Box, DimensionGrip, PlaceOnSheet, PlaneGrip, Stand
from shopdraw.editor.sight import Sight
from shopdraw.shape.path import Point

_DOT = 4.5
_END = 5.0


def paint_focus(painter: QPainter, room: QRectF, colours: Colours) -> None:
    """The frame of a sheet that has the keyboard."""
    painter.setPen(QPen(colours.colour("accent"), 2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(room.adjusted(1, 1, -1, -1))


def paint_marked(
    painter: QPainter, grip: DimensionGrip | PlaneGrip | PlaceOnSheet, sight: Sight, colours: Colours, *, strong: bool
) -> None:
    """Marks what is pointed at, or chosen with the keyboard (strong)."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(colours.colour("accent"), 2.0 if strong else 1.5))
    if isinstance(grip, DimensionGrip):
        painter.drawRoundedRect(_rect(grip.box, sight).adjusted(-4, -3, 4, 3), 3, 3)
    elif isinstance(grip, PlaneGrip):
        _plane(painter, grip.ends, sight, colours)
    else:
        painter.drawEllipse(QPointF(*sight.on_screen(grip.at)), _DOT, _DOT)


def paint_dimension_at(
    painter: QPainter, grip: DimensionGrip, stand: Stand, sight: Sight, colours: Colours
) -> None:  # fmt: skip
    """A dimension on the row to which it is drawn, before the sheet is drawn again."""
    line = grip.line_at(stand)
    (ax, ay), (bx, by) = grip.ends
    ends = ((line, ay), (line, by)) if grip.upright else ((ax, line), (bx, line))
    a, b = (QPointF(*sight.on_screen(end)) for end in ends)
    painter.setPen(QPen(colours.colour("accent"), 2))
    painter.drawLine(a, b)
    painter.setPen(QPen(colours.colour("accent"), 1, Qt.PenStyle.DashLine))
    for end, foot in zip((a, b), grip.ends, strict=True):
        painter.drawLine(QPointF(*sight.on_screen(foot)), end)
    for end in (a, b):
        painter.setBrush(colours.colour("accent"))
        painter.drawEllipse(end, 2.5, 2.5)


def paint_plane_at(painter: QPainter, grip: PlaneGrip, value: float, sight: Sight, colours: Colours) -> None:
    """A cutting plane's line where it is drawn to."""
    _plane(painter, grip.line_at(value), sight, colours)


def paint_joining(painter: QPainter, start: QPointF, end: QPointF, colours: Colours) -> None:
    """A line from one place to another that a hand is drawing, pixels."""
    painter.setPen(QPen(colours.colour("accent"), 1.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawLine(start, end)
    for point in (start, end):
        painter.drawEllipse(point, _DOT, _DOT)


def _plane(painter: QPainter, ends: tuple[Point, Point], sight: Sight, colours: Colours) -> None:
    a, b = (QPointF(*sight.on_screen(end)) for end in ends)
    painter.setPen(QPen(colours.colour("accent"), 1.5, Qt.PenStyle.DashDotLine))
    painter.drawLine(a, b)
    painter.setPen(QPen(colours.colour("paper"), 1))
    painter.setBrush(colours.colour("accent"))
    for end in (a, b):
        painter.drawRoundedRect(QRectF(end.x() - _END, end.y() - _END, 2 * _END, 2 * _END), 3, 3)


def _rect(box: Box, sight: Sight) -> QRectF:
    return QRectF(QPointF(*sight.on_screen((box[0], box[3]))), QPointF(*sight.on_screen((box[2], box[1]))))
