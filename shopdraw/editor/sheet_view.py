"""A sheet as it prints, to look at closely and to take hold of: where things stand is changed on the paper itself."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QPinchGesture, QSizePolicy, QVBoxLayout, QWidget

from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.editor import sheet_grip_paint as painted
from shopdraw.editor.canvas_paint import paint_label
from shopdraw.editor.holding import on_step
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.on_sheet import (
    NOTHING,
    DimensionGrip,
    OnSheet,
    OnSheets,
    PlaceOnSheet,
    PlaneGrip,
    Stand,
    joined_side,
)
from shopdraw.editor.painted_sheet import PaintedSheet
from shopdraw.editor.pinch import takes_pinch
from shopdraw.editor.said import said
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.sight import Sight, fitted
from shopdraw.shape.path import Point

_ROOM = 10.0
_PICK_PIXELS = 7.0
_WHEEL_STEP = 1.0015
_MOVED_PIXELS = 4.0
_KEY_ZOOM = 1.25
_SAME_MM = 1e-6
_ARROWS = {Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, 1), Qt.Key.Key_Down: (0, -1)}

Grip = DimensionGrip | PlaneGrip | PlaceOnSheet


class SheetView(QWidget):
    """One sheet; as large as there is room until a person looks closer.

    Signals:
        dimension_moved: a dimension, and where it is to stand.
        plane_moved: a cutting plane, and where it is to cut, mm.
        joined: two places and the side for one more dimension between them.
        put_back: a dimension or a plane that is to stand where the sheet itself would put it.
    """

    dimension_moved = Signal(object, object)
    plane_moved = Signal(object, float)
    joined = Signal(object, object, str)
    put_back = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self.sight = Sight()
        self.held: Grip | None = None
        self.chosen: DimensionGrip | PlaneGrip | None = None
        self._sheet: Sheet | None = None
        self._painted: PaintedSheet | None = None
        self._on: OnSheet = NOTHING
        self._shown: Shown | None = None
        self._fitted = True
        self._picture: tuple[tuple[object, ...], QPixmap] | None = None
        self._over: Grip | None = None
        self._grip: QPointF | None = None
        self._pointer = QPointF()
        self._drawn = False
        self._fine = False
        self._waiting: Callable[[QPainter], None] | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(self.fontMetrics().height() * 8)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.grabGesture(Qt.GestureType.PinchGesture)
        self.setAccessibleName(self.tr("The sheet as it prints"))

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """In letters."""
        return QSize(self.fontMetrics().height() * 24, self.fontMetrics().height() * 18)

    def show_sheet(
        self, sheet: Sheet, style: str, held: OnSheet | None = None, shown: Shown | None = None
    ) -> None:  # fmt: skip
        """Shows a sheet; the same page drawn again is looked at from where one was.

        Args:
            sheet: as it prints.
            style: of its dimensions, "iso" or "asme".
            held: what can be taken hold of on it.
            shown: how sizes of the piece are shown.
        """
        same = self._sheet is not None and (self._sheet.key, self._sheet.paper) == (sheet.key, sheet.paper)
        self._sheet = sheet
        self._painted = PaintedSheet(sheet, style)
        self._on = (held or NOTHING) if shown is not None else NOTHING
        self._shown = shown
        self._picture = None
        self._waiting = None
        self.held = self._over = None
        self._choose(self._again(self.chosen) if same else None)
        if not same or self._fitted:
            self.fit()
        self.update()

    def fit(self) -> None:
        """Shows the whole sheet."""
        self._fitted = True
        if self._painted is not None:
            sight = fitted(self._painted.box, self.width(), self.height(), (_ROOM,) * 4)
            self.sight = replace(sight, y=_ROOM + self._painted.box[3] * sight.zoom)
        self.update()

    def zoom(self, factor: float, at: QPointF | None = None) -> None:
        """Makes the sheet larger or smaller, about a point of the screen (its middle where none is given)."""
        at = at or QPointF(self.width() / 2, self.height() / 2)
        self.sight = self.sight.zoomed(factor, (at.x(), at.y()))
        self._fitted = False
        self.update()

    def stop_waiting(self) -> None:
        """What was wished can't be: its shadow goes."""
        self._waiting = None
        self.update()

    def place_of(self, point: Point) -> QPointF:
        """Where a point of the page lies, pixels."""
        return QPointF(*self.sight.on_screen(point))

    @property
    def on_sheet(self) -> OnSheet:
        """What can be taken hold of."""
        return self._on

    # Qt's events

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002  # Qt's name and signature
        """Paints the sheet, and what is pointed at, chosen or held over it."""
        painter = QPainter(self)
        if self._painted is not None:
            painter.drawPixmap(0, 0, self._sheet_picture(self._painted))
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_grips(painter)
        if self.hasFocus():
            painted.paint_focus(painter, QRectF(self.rect()), self.colours)
        painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Keeps the whole sheet in sight as long as nobody looks closer."""
        super().resizeEvent(event)
        if self._fitted:
            self.fit()

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
        """Zooms at the pointer."""
        self.zoom(_WHEEL_STEP ** event.angleDelta().y(), event.position())
        event.accept()

    def event(self, event: QEvent) -> bool:
        """Takes a pinch as zooming."""
        return takes_pinch(event, self.zoom, self._pinched) or super().event(event)

    def _pinched(self, pinch: QPinchGesture) -> None:
        """Two fingers on the screen: what the first one had taken hold of is let alone."""
        self._give_up()
        self.zoom(pinch.scaleFactor(), QPointF(self.mapFromGlobal(pinch.centerPoint())))

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Takes hold of what is there, or of the sheet."""
        self._pointer = self._grip = event.position()
        self._drawn = False
        self._waiting = None
        if event.button() is Qt.MouseButton.LeftButton:
            self.held = self._at(self._pointer)
            self._choose(self.held if isinstance(self.held, DimensionGrip | PlaneGrip) else None)
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Draws along what is held, or points."""
        before, self._pointer = self._pointer, event.position()
        self._fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if self._grip is None or not event.buttons():
            self._point()
            return
        if not self._drawn and (self._pointer - self._grip).manhattanLength() <= _MOVED_PIXELS:
            return
        self._drawn = True
        if self.held is None:
            step = self._pointer - before
            self.sight = self.sight.moved(step.x(), step.y())
            self._fitted = False
        self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Lets go: what was drawn to another place is wished there."""
        held, drawn = self.held, self._drawn
        self._pointer = event.position()
        self.held = self._grip = None
        self._drawn = False
        if held is not None and drawn:
            self._drop(held)
        self._point()

    def leaveEvent(self, event: QEvent) -> None:  # noqa: N802
        """Nothing is pointed at any more."""
        super().leaveEvent(event)
        self._over = None
        self.update()

    def focusNextPrevChild(self, forward: bool) -> bool:  # noqa: N802
        """Tab goes from dimension to dimension and plane to plane, then on to the next widget."""
        grips: list[DimensionGrip | PlaneGrip] = [*self._on.dimensions, *self._on.planes]
        if not grips or not self.hasFocus():
            return bool(super().focusNextPrevChild(forward))
        outside = -1 if forward else len(grips)
        at = grips.index(self.chosen) if self.chosen is not None and self.chosen in grips else outside
        at += 1 if forward else -1
        if 0 <= at < len(grips):
            self._choose(grips[at])
            return True
        self._choose(None)
        return bool(super().focusNextPrevChild(forward))

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Arrow keys move what is chosen, else the sheet; Delete puts it back; Escape gives up."""
        key = Qt.Key(event.key()) if event.key() in {k.value for k in (*_ARROWS, *_KEYS)} else None
        if key in _ARROWS:
            self._nudge(*_ARROWS[key], fine=bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif key is Qt.Key.Key_Escape and (self.held is not None or self.chosen is not None):
            self._give_up()
        elif key in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) and self.chosen is not None:
            self.put_back.emit(self.chosen)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Minus):
            self.zoom(_KEY_ZOOM if key is Qt.Key.Key_Plus else 1 / _KEY_ZOOM)
        elif key is Qt.Key.Key_Home:
            self.fit()
        else:
            super().keyPressEvent(event)

    # Inside

    def _sheet_picture(self, sheet: PaintedSheet) -> QPixmap:
        """The sheet as it is looked at, painted once: a hand that draws something over it doesn't wait for it."""
        ratio = self.devicePixelRatioF()
        key = (self.sight, self.size().toTuple(), ratio, self.colours)
        if self._picture is None or self._picture[0] != key:
            picture = QPixmap(round(self.width() * ratio), round(self.height() * ratio))
            picture.setDevicePixelRatio(ratio)
            picture.fill(Qt.GlobalColor.transparent)
            painter = QPainter(picture)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            sheet.paint_at(painter, self.sight, self.colours)
            painter.end()
            self._picture = (key, picture)
        return self._picture[1]

    def _paint_grips(self, painter: QPainter) -> None:
        if self._waiting is not None:
            self._waiting(painter)
        for grip, strong in ((self.chosen, True), (self._over, False)):
            if grip is not None and self.held is None:
                painted.paint_marked(painter, grip, self.sight, self.colours, strong=strong)
        if self.held is None or not self._drawn:
            if self._over is not None and self.held is None:
                self._tell(painter, self._pointer_words(self._over))
            return
        held = self.held
        if isinstance(held, DimensionGrip):
            stand = held.dropped(self._paper_point())
            painted.paint_dimension_at(painter, held, stand, self.sight, self.colours)
            self._tell(painter, ((held.words, True), (self._stand_words(stand), False)))
        elif isinstance(held, PlaneGrip):
            value = self._plane_value(held)
            painted.paint_plane_at(painter, held, value, self.sight, self.colours)
            self._tell(painter, ((said(held.name), True), (self._length(value), False)))
        else:
            other = self._place_at(self._pointer)
            side = joined_side(held, other) if other is not None else ""
            end = self.place_of(other.at) if other is not None and side else self._pointer
            painted.paint_joining(painter, self.place_of(held.at), end, self.colours)
            self._tell(painter, self._joining_words(held, other if side else None))

    def _tell(self, painter: QPainter, lines: tuple[tuple[str, bool], ...]) -> None:
        place = self.place_of
        boxes = [QRectF(place(one.box[:2]), place(one.box[2:])).normalized() for one in self._on.dimensions]
        paint_label(painter, self._pointer, lines, self.font(), self.colours, QRectF(self.rect()), boxes)

    def _pointer_words(self, grip: Grip) -> tuple[tuple[str, bool], ...]:
        if isinstance(grip, DimensionGrip):
            return ((grip.words, True), (self.tr("Drag it to another side or row"), False))
        if isinstance(grip, PlaneGrip):
            return ((f"{said(grip.name)}  {self._length(grip.value)}", True), (self.tr("Drag the plane"), False))
        return self._joining_words(grip, None)

    def _joining_words(self, first: PlaceOnSheet, other: PlaceOnSheet | None) -> tuple[tuple[str, bool], ...]:
        if other is None:
            return ((said(first.says), True), (self.tr("Draw to another edge for one more dimension"), False))
        told = self.tr("One more dimension, from {one} to {other}")
        return ((told.format(one=said(first.says), other=said(other.says)), True),)

    def _stand_words(self, stand: Stand) -> str:
        told = {
            "above": self.tr("Above the view, row {row}"),
            "below": self.tr("Below the view, row {row}"),
            "left": self.tr("Left of the view, row {row}"),
            "right": self.tr("Right of the view, row {row}"),
        }
        words = told[stand.side].format(row=stand.row)
        if not stand.more:
            return words
        more = f"{stand.more:+.0f}".replace("-", "−")
        return self.tr("{words}, {more} mm on paper").format(words=words, more=more)

    def _length(self, mm: float) -> str:
        return self._shown.length_with_unit(mm) if self._shown is not None else ""

    def _paper_point(self) -> Point:
        return self.sight.on_canvas((self._pointer.x(), self._pointer.y()))

    def _plane_value(self, grip: PlaneGrip) -> float:
        """Where a held plane would cut, on the piece's step and within the piece, mm."""
        return self._on_step(grip, grip.value_at(self._paper_point()), fine=self._fine)

    def _on_step(self, grip: PlaneGrip, wanted: float, *, fine: bool) -> float:
        assert self._shown is not None
        step = self._shown.steps[1 if fine else 0]
        # A plane that lies in the piece's own outer face cuts nothing.
        low, high = on_step(grip.low, step) + step, on_step(grip.high, step) - step
        return min(max(on_step(wanted, step), low), max(low, high))

    def _drop(self, held: Grip) -> None:
        if isinstance(held, DimensionGrip):
            self._wish_stand(held, held.dropped(self._paper_point()))
        elif isinstance(held, PlaneGrip):
            self._wish_plane(held, self._plane_value(held))
        else:
            other = self._place_at(self._pointer)
            side = joined_side(held, other) if other is not None else ""
            if other is not None and side:
                start, end = held.at, other.at
                self._waiting = lambda painter: painted.paint_joining(
                    painter, self.place_of(start), self.place_of(end), self.colours
                )
                self.joined.emit(held, other, side)

    def _wish_stand(self, grip: DimensionGrip, stand: Stand) -> None:
        """The wish stays in sight until the sheet is drawn again."""
        if stand != grip.stand:
            self._waiting = lambda painter: painted.paint_dimension_at(painter, grip, stand, self.sight, self.colours)
            self.dimension_moved.emit(grip, stand)
            self.update()

    def _wish_plane(self, grip: PlaneGrip, value: float) -> None:
        if abs(value - grip.value) > _SAME_MM:
            self._waiting = lambda painter: painted.paint_plane_at(painter, grip, value, self.sight, self.colours)
            self.plane_moved.emit(grip, value)
            self.update()

    def _nudge(self, dx: int, dy: int, *, fine: bool) -> None:
        chosen = self.chosen
        if isinstance(chosen, DimensionGrip):
            self._wish_stand(chosen, chosen.nudged(dx, dy))
        elif isinstance(chosen, PlaneGrip):
            step = dx if chosen.upright else dy
            if step and self._shown is not None:
                by = step * self._shown.steps[1 if fine else 0]
                self._wish_plane(chosen, self._on_step(chosen, chosen.value + by, fine=fine))
        else:
            self.sight = self.sight.moved(-40 * dx, 40 * dy)
            self._fitted = False
            self.update()

    def _choose(self, grip: DimensionGrip | PlaneGrip | None) -> None:
        self.chosen = grip
        if isinstance(grip, DimensionGrip):
            told = f"{grip.words}: {self._stand_words(grip.stand)}"
        elif isinstance(grip, PlaneGrip):
            told = f"{said(grip.name)}: {self._length(grip.value)}"
        elif self._on.dimensions or self._on.planes:
            told = self.tr(
                "Tab goes from dimension to dimension, arrow keys move it to another side or row, Delete puts it back."
            )
        else:
            told = ""
        self.setAccessibleDescription(told)
        self.update()

    def _again(self, grip: DimensionGrip | PlaneGrip | None) -> DimensionGrip | PlaneGrip | None:
        """What was chosen, as it stands on the page drawn again."""
        if isinstance(grip, DimensionGrip):
            return next((one for one in self._on.dimensions if one.of == grip.of), None)
        return next((one for one in self._on.planes if grip is not None and one.letter == grip.letter), None)

    def _give_up(self) -> None:
        if self.held is None:
            self._choose(None)
        self.held = self._grip = None
        self._drawn = False
        self.update()

    def _point(self) -> None:
        over = self._at(self._pointer)
        if over is not self._over or over is not None:
            self._over = over
            self.update()
        upright = isinstance(over, PlaneGrip | DimensionGrip) and over.upright
        if over is None:
            self.unsetCursor()
        elif isinstance(over, PlaceOnSheet):
            self.setCursor(Qt.CursorShape.CrossCursor)
        else:
            self.setCursor(Qt.CursorShape.SizeHorCursor if upright else Qt.CursorShape.SizeVerCursor)

    def _at(self, pixel: QPointF) -> Grip | None:
        """What a pixel takes hold of: a figure first, then the end of a plane's line, then a place."""
        x, y = self.sight.on_canvas((pixel.x(), pixel.y()))
        reach = _PICK_PIXELS / self.sight.zoom
        for dimension in self._on.dimensions:
            x0, y0, x1, y1 = dimension.box
            air = reach / 3
            if x0 - air <= x <= x1 + air and y0 - air <= y <= y1 + air:
                return dimension
        for plane in self._on.planes:
            if any(abs(x - end[0]) <= reach and abs(y - end[1]) <= 2 * reach for end in plane.ends):
                return plane
        return self._place_at(pixel)

    def _place_at(self, pixel: QPointF) -> PlaceOnSheet | None:
        x, y = self.sight.on_canvas((pixel.x(), pixel.y()))
        best, nearest = None, _PICK_PIXELS / self.sight.zoom
        for place in self._on.places:
            distance = max(abs(place.at[0] - x), abs(place.at[1] - y))
            if distance < nearest:
                best, nearest = place, distance
        return best


_KEYS = (
    Qt.Key.Key_Escape,
    Qt.Key.Key_Delete,
    Qt.Key.Key_Backspace,
    Qt.Key.Key_Plus,
    Qt.Key.Key_Minus,
    Qt.Key.Key_Home,
)


class SheetWindow(QWidget):
    """A sheet in a window of its own; it follows the piece."""

    def __init__(
        self, sheets: SheetSet, page: int, colours: Colours, held: OnSheets | None = None, shown: Shown | None = None
    ) -> None:
        super().__init__()
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._key, self._true_size = sheets.sheets[page].key, sheets.true_size
        self.view = SheetView(self)
        self.view.colours = colours
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.view)
        self.resize(1100, 780)
        self.show_sets((sheets,), held or {}, shown)

    def show_sets(self, sets: tuple[SheetSet, ...], held: OnSheets, shown: Shown | None) -> None:
        """Shows its page as it is drawn now; one that is no more stays as it was."""
        for made in sets:
            for sheet in made.sheets:
                if made.true_size is self._true_size and sheet.key == self._key:
                    self.setWindowTitle(f"{made.title}: {sheet.number} {said(sheet.title)}")
                    grips = None if made.true_size else held.get(sheet.key)
                    self.view.show_sheet(sheet, made.style, grips, shown)
                    return
