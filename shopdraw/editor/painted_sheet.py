"""A sheet of paper on the screen: the marks that print, gathered once, painted as large as there is room."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QPainter, QTransform

from shopdraw.drawing.explode import drawing_marks
from shopdraw.drawing.sheet import Sheet
from shopdraw.editor.look import Colours
from shopdraw.editor.painting import Batch, batch, paint
from shopdraw.editor.sight import Sight


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

    @property
    def box(self) -> tuple[float, float, float, float]:
        """The paper: paper mm."""
        return 0.0, 0.0, self._paper.width, self._paper.height

    def paint(self, painter: QPainter, room: QRectF, colours: Colours) -> None:
        """Paints the sheet at the top of a room, in its middle.

        Args:
            painter: at work.
            room: pixels.
            colours: the look; the paper is as bright as it allows.
        """
        paper = self._paper
        zoom = min(room.width() / paper.width, room.height() / paper.height)
        left = room.center().x() - paper.width / 2 * zoom
        self.paint_at(painter, Sight(zoom, left, room.top() + paper.height * zoom), colours)

    def paint_at(self, painter: QPainter, sight: Sight, colours: Colours) -> None:
        """Paints the sheet as it is looked at.

        Args:
            painter: at work.
            sight: pixels per paper mm, and where the paper's lower left corner lies.
            colours: the look.
        """
        paper, zoom = self._paper, sight.zoom
        corner = QPointF(*sight.on_screen((0.0, paper.height)))
        sheet = QRectF(corner, QSizeF(paper.width * zoom, paper.height * zoom))
        painter.fillRect(sheet.translated(2, 2), colours.colour("line"))
        painter.fillRect(sheet, colours.colour("paper"))
        painter.save()
        painter.setClipRect(sheet)
        for made, scale, at in self._parts:
            painter.save()
            size = zoom * scale
            painter.setTransform(QTransform(size, 0, 0, -size, *sight.on_screen(at)), True)
            paint(painter, made, colours, group=paper.group, pixels_per_paper_mm=zoom, hairline=0.35)
            painter.restore()
        painter.restore()
