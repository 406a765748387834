"""Shows a sketch of a term, or nothing."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QPainter, QPaintEvent, QTransform
from PySide6.QtWidgets import QSizePolicy, QWidget

from shopdraw.drawing.mark import Mark
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import batch, paint
from shopdraw.editor.sketch import HEIGHT, WIDTH


class SketchView(QWidget):
    """A sketch in its square, on paper."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self._marks: tuple[Mark, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Sketch of the term"))

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """In letters, so that it grows with the font."""
        high = self.fontMetrics().height() * 6
        return QSize(round(high * WIDTH / HEIGHT), high)

    def show_marks(self, marks: tuple[Mark, ...]) -> None:
        """Shows a sketch; none hides the widget."""
        self._marks = marks
        self.setVisible(bool(marks))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002  # Qt's name and signature
        """Paints the sketch."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.colours.colour("paper"))
        zoom = min(self.width() / WIDTH, self.height() / HEIGHT)
        x, y = (self.width() - WIDTH * zoom) / 2, (self.height() + HEIGHT * zoom) / 2
        painter.setTransform(QTransform(zoom, 0, 0, -zoom, x, y), True)
        paint(painter, batch(self._marks, 1.0), self.colours, group="small", pixels_per_paper_mm=3.0)
        painter.end()
