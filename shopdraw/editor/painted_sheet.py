"""A sheet of paper on the screen: the marks that print, gathered once, painted as large as there is room."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter, QTransform

from shopdraw.drawing.explode import drawing_marks
from shopdraw.drawing.sheet import Sheet
from shopdraw.editor.look import Colours
from shopdraw.editor.painting import Batch, batch, paint


class PaintedSheet:
    """A sheet ready to be painted."""

    def __init__(self, sheet: Sheet, style: str) -> None:
        """Gathers a sheet's marks.

        Args:
            sheet: as it prints.
            style: of its dimensions, "iso" or "asme".
        """
        self._paper = sheet.paper
        self._parts: list[tuple[Batch, float, tuple[float, float]]] = [(batch(sheet.marks, 1.0), 1.0, (0.0, 0.0))]
        for placed in sheet.placed:
            marks = drawing_marks(placed.drawing, placed.scale, style, sheet.paper.group)
            self._parts.append((batch(marks, placed.scale), placed.scale, placed.at))

    def paint(self, painter: QPainter, room: QRectF, colours: Colours) -> QRectF:
        """Paints the sheet at the top of a room, in its middle.

        Args:
            painter: at work.
            room: pixels.
            colours: the look; the paper is as bright as it allows.

        Returns:
            Where the paper lies, pixels.
        """
        paper = self._paper
        zoom = min(room.width() / paper.width, room.height() / paper.height)
        left = room.center().x() - paper.width / 2 * zoom
        foot = room.top() + paper.height * zoom
        sheet = QRectF(left, room.top(), paper.width * zoom, paper.height * zoom)
        painter.fillRect(sheet.translated(2, 2), colours.colour("line"))
        painter.fillRect(sheet, colours.colour("paper"))
        painter.save()
        painter.setClipRect(sheet)
        for made, scale, at in self._parts:
            painter.save()
            size = zoom * scale
            painter.setTransform(QTransform(size, 0, 0, -size, left + at[0] * zoom, foot - at[1] * zoom), True)
            paint(painter, made, colours, group=paper.group, pixels_per_paper_mm=zoom, hairline=0.35)
            painter.restore()
        painter.restore()
        return sheet
