"""The canvas: the piece's views on one sheet, to look at and to take hold of. A widget over values; it decides nothing.
"""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QMouseEvent, QNativeGestureEvent, QPainter, QPaintEvent, QPen, QResizeEvent, QTransform, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from shopdraw.drawing.mark import Mark
from shopdraw.editor.arrangement import Standing, whole_box
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import Batch, batch, paint
from shopdraw.editor.sight import Sight, fitted

PIXELS_PER_PAPER_MM = 3.2
"""How large a paper mm is shown: letters and line widths stay readable at any zoom."""
ROOM = (96.0, 64.0, 64.0, 72.0)
"""Kept free round the views when they are fitted: left, top, right, bottom, pixels."""
SHEET_MARGIN = 46.0
"""From the views to the edge of the sheet that they lie on, pixels when fitted."""
_WHEEL_STEP = 1.0015


class Canvas(QWidget):
    """Shows views at one scale."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self.sight = Sight()
        self.group = "medium"
        self._standings: dict[str, Standing] = {}
        self._marks: Mapping[str, tuple[Mark, ...]] = {}
        self._batches: dict[str, Batch] = {}
        self._fitted = True
        self._grip: QPointF | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """Room for a sheet."""
        return QSize(900, 680)

    def show_views(self, standings: Mapping[str, Standing], marks: Mapping[str, tuple[Mark, ...]]) -> None:
        """Shows other views."""
        self._standings = dict(standings)
        self._marks = marks
        self._batches = {}
        if self._fitted:
            self.fit()
        self.update()

    def fit(self) -> None:
        """Shows the whole sheet."""
        self._fitted = True
        if self._standings:
            self.sight = fitted(whole_box(self._standings), self.width(), self.height(), ROOM)
        self.update()

    def zoom(self, factor: float, at: QPointF | None = None) -> None:
        """Makes the sheet larger or smaller, about a point of the screen (its middle where none is given)."""
        at = at or QPointF(self.width() / 2, self.height() / 2)
        self.sight = self.sight.zoomed(factor, (at.x(), at.y()))
        self._fitted = False
        self.update()

    def pan(self, dx: float, dy: float) -> None:
        """Shifts the sheet by pixels."""
        self.sight = self.sight.moved(dx, dy)
        self._fitted = False
        self.update()

    # Events

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002  # Qt's name and signature
        """Paints sheet and views."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.colours.colour("surround"))
        if self._standings:
            self._paint_sheet(painter)
            for view in self._standings:
                self._paint_view(painter, view)
        painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Keeps the whole sheet in sight as long as nobody has zoomed."""
        super().resizeEvent(event)
        if self._fitted:
            self.fit()

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
        """Zooms at the pointer."""
        self.zoom(_WHEEL_STEP ** event.angleDelta().y(), event.position())
        event.accept()

    def event(self, event: QEvent) -> bool:
        """Takes a pinch on a trackpad as zooming."""
        if isinstance(event, QNativeGestureEvent) and event.gestureType() is Qt.NativeGestureType.ZoomNativeGesture:
            self.zoom(1.0 + event.value(), event.position())
            return True
        return super().event(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Takes hold of the sheet."""
        self._grip = event.position()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Moves the sheet with the hand."""
        if self._grip is not None and event.buttons():
            step = event.position() - self._grip
            self._grip = event.position()
            self.pan(step.x(), step.y())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802, ARG002
        """Lets go of the sheet."""
        self._grip = None

    # Painting

    def _paint_sheet(self, painter: QPainter) -> None:
        x0, y0, x1, y1 = whole_box(self._standings)
        left, top = self.sight.on_screen((x0, y1))
        right, bottom = self.sight.on_screen((x1, y0))
        sheet = QRectF(QPointF(left, top), QPointF(right, bottom)).adjusted(
            -SHEET_MARGIN * 1.6, -SHEET_MARGIN, SHEET_MARGIN, SHEET_MARGIN * 1.2
        )
        painter.setPen(QPen(self.colours.colour("line"), 1))
        painter.setBrush(self.colours.colour("paper"))
        painter.drawRect(sheet)

    def _paint_view(self, painter: QPainter, view: str) -> None:
        made = self._batches.get(view)
        if made is None:
            made = self._batches[view] = batch(self._marks.get(view, ()), self._scale)
        painter.save()
        painter.setTransform(self._transform(self._standings[view]), True)
        paint(painter, made, self.colours, group=self.group, pixels_per_paper_mm=PIXELS_PER_PAPER_MM)
        painter.restore()

    @property
    def _scale(self) -> float:
        return self.sight.zoom / PIXELS_PER_PAPER_MM

    def _transform(self, standing: Standing) -> QTransform:
        x, y = self.sight.on_screen(standing.at)
        return QTransform(self.sight.zoom, 0, 0, -self.sight.zoom, x, y)
