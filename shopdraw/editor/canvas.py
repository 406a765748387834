"""The canvas: the piece's views on one sheet, to look at and to take hold of.

A widget over values: it shows a `Scene` and reports what a hand wishes. What a drag does is `hand`'s affair.
"""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QCursor,
    QKeyEvent,
    QMouseEvent,
    QNativeGestureEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPixmap,
    QResizeEvent,
    QTransform,
    QWheelEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from shopdraw.drawing.explode import dimension_marks
from shopdraw.drawing.mark import Mark, Meaning, Text
from shopdraw.editor import canvas_paint as painted
from shopdraw.editor.arrangement import Standing, whole_box
from shopdraw.editor.figure import Figure, placed
from shopdraw.editor.handle import Handle
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import Batch, batch, paint, text_path
from shopdraw.editor.scene import Layers, Scene
from shopdraw.editor.sight import Sight, fitted
from shopdraw.shape.path import Point

PIXELS_PER_PAPER_MM = 3.2
"""How large a paper mm is shown: letters and line widths stay readable at any zoom."""
ROOM = (150.0, 66.0, 92.0, 84.0)
"""Kept free round the views when they are fitted: left, top, right, bottom, pixels."""
SHEET_ROOM = (132.0, 50.0, 74.0, 62.0)
"""From the views to the edge of the sheet that they lie on, pixels."""
PICK_PIXELS = 13.0
"""How near the pointer must be to take hold."""
_WHEEL_STEP = 1.0015


class Canvas(QWidget):
    """Shows a scene at one scale.

    Signals:
        grip_taken: a handle and the point of its view where a hand took it.
        grip_moved: the point of the view to which it was drawn, and whether Shift is down.
        grip_left: the hand let go.
        grip_given_up: Escape, or the button was lost.
        grip_nudged: a handle, whole steps, whether Shift is down (arrow keys).
        figure_picked: a dimension was clicked, and where its words stand.
        board_pointed: the board under the pointer, or "".
        board_chosen: a board was clicked, or "" for none.
    """

    grip_taken = Signal(object, object)
    grip_moved = Signal(object, bool)
    grip_left = Signal()
    grip_given_up = Signal()
    grip_nudged = Signal(object, int, bool)
    figure_picked = Signal(object, QRect)
    board_pointed = Signal(str)
    board_chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self.sight = Sight()
        self.scene = Scene()
        self.layers = Layers()
        self.lit: frozenset[str] = frozenset()
        self.label: tuple[tuple[str, bool], ...] = ()
        self.chosen_handle = ""
        self.alone: frozenset[str] = frozenset()
        self.photos: dict[str, tuple[QPixmap, QTransform, float]] = {}
        self._held: Handle | None = None
        self._over_handle = ""
        self._over_figure = ""
        self._pointer = QPointF()
        self._grip: QPointF | None = None
        self._panned = False
        self._fitted = True
        self._batches: dict[tuple[str, str], Batch] = {}
        self._contours: dict[tuple[str, frozenset[str]], QPainterPath] = {}
        self._words: dict[str, QRectF] = {}
        self._at_scale = 0.0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Drawing"))
        self.setAccessibleDescription(
            self.tr("Front, side and plan of the piece. Tab goes from handle to handle, arrow keys move it, Enter types.")
        )

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """Room for a sheet."""
        return QSize(880, 680)

    # What is shown

    def show_scene(self, scene: Scene) -> None:
        """Shows another picture; a held handle stays where it is on the screen."""
        self.scene = scene
        self._batches.clear()
        self._contours.clear()
        if self._fitted and self._held is None:
            self.fit()
        self.choose_handle(self.chosen_handle)

    def show_layers(self, layers: Layers) -> None:
        """Shows or hides layers."""
        if layers.hidden != self.layers.hidden:
            self._batches.clear()
        self.layers = layers
        self.update()

    def show_over(self, over: dict[str, dict[str, tuple[Mark, ...]]]) -> None:
        """Shows other marks over the views."""
        self.scene = replace(self.scene, over=over)
        self._batches = {key: made for key, made in self._batches.items() if key[0] == "lines"}
        self.update()

    def light(self, boards: frozenset[str]) -> None:
        """Lights boards up in every view."""
        if boards != self.lit:
            self.lit = boards
            self.update()

    def show_label(self, lines: tuple[tuple[str, bool], ...]) -> None:
        """Shows words beside the pointer."""
        self.label = lines
        self.update()

    def fit(self) -> None:
        """Shows the whole sheet."""
        self._fitted = True
        if self.scene.standings:
            self.sight = fitted(whole_box(dict(self.scene.standings)), self.width(), self.height(), ROOM)
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

    def show_place(self, boards: frozenset[str]) -> None:
        """Lights boards up and brings them into sight."""
        self.light(boards)
        inside = QRectF(self.rect()).adjusted(20, 20, -20, -20)
        for view, standing in self.scene.standings.items():
            path = self._contour(view, boards)
            if not path.isEmpty() and inside.contains(self._transform(standing).mapRect(path.boundingRect())):
                return
        if boards and not self._fitted:
            self.fit()

    # Where things are on the screen

    def handle_place(self, handle: Handle) -> QPointF:
        """Where a handle stands, pixels."""
        return self._screen(handle.view, handle.at)

    def figure_place(self, figure_id: str) -> QRectF:
        """Where a dimension's words stand, pixels; empty where they aren't shown."""
        return self._words.get(figure_id, QRectF())

    def in_view(self, view: str, pixel: QPointF) -> Point:
        """The point of a view's plane under a pixel, mm."""
        return self.scene.standings[view].in_view(self.sight.on_canvas((pixel.x(), pixel.y())))

    def handle_named(self, handle_id: str) -> Handle | None:
        """The handle with this id."""
        return next((handle for handle in self.scene.handles if handle.id == handle_id), None)

    # Events

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002  # Qt's name and signature
        """Paints everything, from the sheet up."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self.colours.colour("surround"))
        if self.scene.standings:
            if self._at_scale != self._scale:
                self._batches.clear()
                self._at_scale = self._scale
            self._paint_sheet(painter)
            for view, standing in self.scene.standings.items():
                self._paint_view(painter, view, standing)
            self._paint_projection(painter)
            self._words = {}
            if self.layers.dimensions:
                self._paint_figures(painter)
            self._paint_handles(painter)
            if self.label:
                at = self._pointer + QPointF(20, 18)
                painted.paint_label(painter, at, self.label, self.font(), self.colours, QRectF(self.rect()))
        if self.hasFocus():
            painter.setPen(QPen(self.colours.colour("accent"), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
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
        """Takes hold of a handle, or of the sheet."""
        at = event.position()
        handle = self._handle_at(at) if event.button() is Qt.MouseButton.LeftButton else None
        if handle is not None:
            self._held = handle
            self.chosen_handle = handle.id
            self.grip_taken.emit(handle, self.in_view(handle.view, at))
        else:
            self._grip = at
            self._panned = False
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Draws the handle or the sheet along, or points."""
        self._pointer = event.position()
        if self._held is not None:
            fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
            self.grip_moved.emit(self.in_view(self._held.view, self._pointer), fine)
        elif self._grip is not None and event.buttons():
            step = self._pointer - self._grip
            if self._panned or step.manhattanLength() > 4:
                self._panned = True
                self._grip = self._pointer
                self.pan(step.x(), step.y())
        else:
            self._point()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Lets go; a click that didn't move picks a dimension or a board."""
        if self._held is not None:
            self._held = None
            self.grip_left.emit()
        elif self._grip is not None and not self._panned and event.button() is Qt.MouseButton.LeftButton:
            self._click(event.position())
        self._grip = None

    def leaveEvent(self, event: QEvent) -> None:  # noqa: N802
        """Nothing is pointed at any more."""
        super().leaveEvent(event)
        self._over_handle = self._over_figure = ""
        self.board_pointed.emit("")
        self.update()

    def focusNextPrevChild(self, forward: bool) -> bool:  # noqa: N802, FBT001
        """Tab goes from handle to handle, then on to the next widget."""
        ids = [handle.id for handle in self.scene.handles]
        if not ids or self._held is not None or not self.hasFocus():
            return bool(super().focusNextPrevChild(forward))
        at = ids.index(self.chosen_handle) if self.chosen_handle in ids else (-1 if forward else len(ids))
        at += 1 if forward else -1
        if 0 <= at < len(ids):
            self.choose_handle(ids[at])
            return True
        self.choose_handle("")
        return bool(super().focusNextPrevChild(forward))

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Arrow keys move the chosen handle, else the sheet; Enter types; Escape gives up."""
        key = event.key()
        arrows = {Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, 1), Qt.Key.Key_Down: (0, -1)}
        handle = self.handle_named(self.chosen_handle)
        if key == Qt.Key.Key_Escape:
            self._held = None
            self.choose_handle("")
            self.grip_given_up.emit()
        elif key in arrows:
            dx, dy = arrows[Qt.Key(key)]
            if handle is None:
                self.pan(-40 * dx, 40 * dy)
                return
            count = round(dx * handle.along[0] + dy * handle.along[1])
            if count:
                self.grip_nudged.emit(handle, count, bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and handle is not None:
            self._type_into(handle)
        else:
            super().keyPressEvent(event)

    def choose_handle(self, handle_id: str) -> None:
        """Chooses a handle for the keyboard; "" for none."""
        self.chosen_handle = handle_id
        handle = self.handle_named(handle_id)
        shown = self.scene.shown
        if handle is not None and shown is not None:
            size = shown.angle(handle.value) if handle.angle else shown.length_with_unit(handle.value)
            self.setAccessibleDescription(self.tr("{name}: {size}").format(name=handle.name, size=size))
        self.update()

    def scaled_reach(self) -> float:
        """How many mm the pointer's reach is."""
        return 7.0 / self.sight.zoom

    # Pointing and picking

    def _handle_at(self, at: QPointF) -> Handle | None:
        best, nearest = None, PICK_PIXELS
        for handle in self.scene.handles:
            off = self.handle_place(handle) - at
            distance = max(abs(off.x()), abs(off.y()))
            if distance <= nearest:
                best, nearest = handle, distance
        return best

    def _figure_at(self, at: QPointF) -> Figure | None:
        for figure in self.scene.figures:
            if self.figure_place(figure.id).adjusted(-5, -4, 5, 4).contains(at):
                return figure
        return None

    def _point(self) -> None:
        handle = self._handle_at(self._pointer)
        figure = self._figure_at(self._pointer) if handle is None else None
        board = "" if handle or figure else self._board_at(self._pointer)
        self._over_handle = handle.id if handle else ""
        self._over_figure = figure.id if figure else ""
        if handle is not None:
            self.setCursor(self._cursor(handle))
        else:
            self.setCursor(Qt.CursorShape.IBeamCursor if figure else Qt.CursorShape.ArrowCursor)
        self.board_pointed.emit(board)
        self.update()

    def _board_at(self, at: QPointF) -> str:
        for view in self.scene.standings:
            board = self.scene.board_at(view, self.in_view(view, at))
            if board:
                return board
        return ""

    def _click(self, at: QPointF) -> None:
        figure = self._figure_at(at)
        if figure is not None:
            self.figure_picked.emit(figure, self.figure_place(figure.id).toRect())
        else:
            self.board_chosen.emit(self._board_at(at))

    def _type_into(self, handle: Handle) -> None:
        address = handle.id.rpartition("@")[0]
        figure = next((f for f in self.scene.figures if f.handle == address), None)
        if figure is not None:
            self.figure_picked.emit(figure, self.figure_place(figure.id).toRect())

    @staticmethod
    def _cursor(handle: Handle) -> QCursor:
        return QCursor(Qt.CursorShape.SizeHorCursor if handle.along[0] else Qt.CursorShape.SizeVerCursor)

    # Painting

    @property
    def _scale(self) -> float:
        return self.sight.zoom / PIXELS_PER_PAPER_MM

    def _transform(self, standing: Standing) -> QTransform:
        x, y = self.sight.on_screen(standing.at)
        return QTransform(self.sight.zoom, 0, 0, -self.sight.zoom, x, y)

    def _screen(self, view: str, point: Point) -> QPointF:
        return QPointF(*self.sight.on_screen(self.scene.standings[view].on_canvas(point)))

    def _contour(self, view: str, boards: frozenset[str]) -> QPainterPath:
        key = (view, boards)
        if key not in self._contours:
            faces = [face for face in self.scene.faces.get(view, ()) if face.board in boards]
            self._contours[key] = painted.contour(faces)
        return self._contours[key]

    def _paint_sheet(self, painter: QPainter) -> None:
        x0, y0, x1, y1 = whole_box(dict(self.scene.standings))
        corner, other = self.sight.on_screen((x0, y1)), self.sight.on_screen((x1, y0))
        left, top, right, bottom = SHEET_ROOM
        sheet = QRectF(QPointF(*corner), QPointF(*other)).adjusted(-left, -top, right, bottom)
        painter.fillRect(sheet.translated(3, 3), self.colours.colour("line"))
        painter.setPen(QPen(self.colours.colour("line"), 1))
        painter.setBrush(self.colours.colour("paper"))
        painter.drawRect(sheet)

    def _paint_view(self, painter: QPainter, view: str, standing: Standing) -> None:
        painter.save()
        painter.setTransform(self._transform(standing), True)
        photo = self.photos.get(view)
        if photo is not None:
            painter.save()
            painter.setOpacity(photo[2])
            painter.setTransform(photo[1], True)
            painter.drawPixmap(0, 0, photo[0])
            painter.restore()
        lit = self.lit if self._held is None else frozenset()
        if self.scene.lines is None and photo is None:
            painted.paint_faces(painter, self.scene.faces.get(view, ()), self.colours)
        if lit:
            painted.paint_glow(painter, self._contour(view, lit), self.colours)
        if self.scene.lines is not None:
            lines = self.scene.lines.get(view, ())
            self._paint_marks(painter, ("lines", view), lines, without_hidden=not self.layers.hidden)
        for layer, wanted in (
            ("dados", self.layers.dados), ("swing", self.layers.swing), ("travel", self.layers.travel), ("overlay", bool(self.layers.overlay))
        ):  # fmt: skip
            if wanted:
                self._paint_marks(painter, (layer, view), self.scene.over.get(layer, {}).get(view, ()))
        painter.restore()

    def _paint_marks(
        self, painter: QPainter, key: tuple[str, str], marks: tuple[Mark, ...], *, without_hidden: bool = False
    ) -> None:
        made = self._batches.get(key)
        if made is None:
            if without_hidden:
                marks = tuple(mark for mark in marks if getattr(mark, "meaning", None) is not Meaning.HIDDEN)
            made = self._batches[key] = batch(marks, self._scale)
        paint(painter, made, self.colours, group="small", pixels_per_paper_mm=PIXELS_PER_PAPER_MM)

    def _paint_figures(self, painter: QPainter) -> None:
        shown = self.scene.shown
        if shown is None:
            return
        held = self._held.id.rpartition("@")[0] if self._held else ""
        for view, standing in self.scene.standings.items():
            box = (*standing.in_view(standing.box[:2]), *standing.in_view(standing.box[2:]))
            marks: list[Mark] = []
            strong: list[Text] = []
            for figure in self.scene.figures:
                if figure.view != view:
                    continue
                for mark in dimension_marks(placed(figure, box, shown, self._scale, self.scene.style), self._scale, self.scene.style, "small"):
                    if isinstance(mark, Text):
                        self._words[figure.id] = self._text_place(standing, mark)
                        if figure.id == self._over_figure or (held and figure.handle == held):
                            strong.append(mark)
                            continue
                        mark = replace(mark, meaning=Meaning.SIZE)  # noqa: PLW2901
                    marks.append(mark)
            painter.save()
            painter.setTransform(self._transform(standing), True)
            paint(painter, batch(marks, self._scale), self.colours, group="small", pixels_per_paper_mm=PIXELS_PER_PAPER_MM)
            for text in strong:
                painter.fillPath(text_path(text, self._scale), self.colours.colour("accent"))
            painter.restore()
            for figure in self.scene.figures:
                if figure.id == self._over_figure and figure.view == view:
                    painter.setPen(QPen(self.colours.colour("accent"), 1.5))
                    painter.setBrush(Qt.BrushStyle.NoBrush)
                    painter.drawRoundedRect(self._words[figure.id].adjusted(-4, -3, 4, 3), 3, 3)

    def _text_place(self, standing: Standing, text: Text) -> QRectF:
        return self._transform(standing).mapRect(text_path(text, self._scale).boundingRect())

    def _paint_handles(self, painter: QPainter) -> None:
        for handle in self.scene.handles:
            strong = handle.id == self._over_handle or (self._held is not None and handle.id == self._held.id)
            if self._held is not None and not strong:
                continue
            focus = self.hasFocus() and handle.id == self.chosen_handle
            painted.paint_grip(painter, self.handle_place(handle), handle.along, self.colours, strong=strong, focus=focus)

    def _paint_projection(self, painter: QPainter) -> None:
        """Lines from the lit boards in the front view to the same boards beside it and over or under it."""
        if len(self.lit) != 1 or self._held is not None:
            return
        boxes = {}
        for view, standing in self.scene.standings.items():
            path = self._contour(view, self.lit)
            if not path.isEmpty():
                boxes[view] = self._transform(standing).mapRect(path.boundingRect())
        front = boxes.get("front")
        if front is None:
            return
        lines = []
        if "side" in boxes:
            side = boxes["side"]
            a, b = (front.right(), side.left()) if side.left() > front.right() else (front.left(), side.right())
            lines += [(QPointF(a, y), QPointF(b, y)) for y in (front.top(), front.bottom())]
        if "plan" in boxes:
            plan = boxes["plan"]
            a, b = (front.top(), plan.bottom()) if plan.bottom() < front.top() else (front.bottom(), plan.top())
            lines += [(QPointF(x, a), QPointF(x, b)) for x in (front.left(), front.right())]
        painted.paint_projection(painter, lines, self.colours)
