"""The canvas: the piece's views on one sheet, to look at and to take hold of.

A widget over values: it shows a `Scene` and reports what a hand wishes. What a drag does is `hand`'s affair.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRect, Qt, Signal
from PySide6.QtGui import QCursor, QFocusEvent, QKeyEvent, QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QPinchGesture, QWidget

from shopdraw.editor.easel import Easel
from shopdraw.editor.figure import Figure
from shopdraw.editor.handle import Handle
from shopdraw.editor.pinch import takes_pinch
from shopdraw.editor.scene import Scene

PICK_PIXELS = 13.0
"""How near the pointer must be to take hold."""
_WHEEL_STEP = 1.0015


class Canvas(Easel):
    """Shows a scene at one scale.

    Signals:
        grip_taken: a handle and the point of its view where a hand took it.
        grip_moved: the point of the view to which it was drawn, and whether Shift is down.
        grip_left: the hand let go.
        grip_given_up: Escape, or the button was lost.
        grip_nudged: a handle, whole steps, whether Shift is down (arrow keys).
        nudges_done: the arrow keys have left the handle.
        figure_picked: a dimension was clicked, and where its words stand.
        board_pointed: the board under the pointer, or "".
        board_chosen: a board was clicked, or "" for none.
    """

    grip_taken = Signal(object, object)
    grip_moved = Signal(object, bool)
    grip_left = Signal()
    grip_given_up = Signal()
    grip_nudged = Signal(object, int, bool)
    nudges_done = Signal()
    figure_picked = Signal(object, QRect)
    board_pointed = Signal(str)
    board_chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grip: QPointF | None = None
        self._panned = False
        self._nudged = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.grabGesture(Qt.GestureType.PinchGesture)
        self.setAccessibleName(self.tr("Drawing"))
        self.setAccessibleDescription(
            self.tr(
                "Front, side and plan of the piece. Tab goes from handle to handle, arrow keys move it, Enter types."
            )
        )

    def show_scene(self, scene: Scene) -> None:
        """Shows another picture; the chosen handle is told again with its new size."""
        super().show_scene(scene)
        self.choose_handle(self.chosen_handle)

    def give_up(self) -> None:
        """Lets alone what a hand holds, as Escape does."""
        if self._held is not None:
            self._held = None
            self.grip_given_up.emit()

    # Events

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
        """Zooms at the pointer."""
        self.zoom(_WHEEL_STEP ** event.angleDelta().y(), event.position())
        event.accept()

    def event(self, event: QEvent) -> bool:
        """Takes a pinch as zooming: on a trackpad, or with two fingers on the screen."""
        return takes_pinch(event, self.zoom, self._pinched) or super().event(event)

    def _pinched(self, pinch: QPinchGesture) -> None:
        """Two fingers on the screen: the sheet keeps under them; what the first one had taken hold of is let alone."""
        self.give_up()
        self._grip = None
        if pinch.state() is Qt.GestureState.GestureUpdated:
            step = pinch.centerPoint() - pinch.lastCenterPoint()
            self.pan(step.x(), step.y())
            self.zoom(pinch.scaleFactor(), self.mapFromGlobal(pinch.centerPoint()))

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Takes hold of a handle, or of the sheet."""
        at = event.position()
        handle = self._handle_at(at) if event.button() is Qt.MouseButton.LeftButton else None
        if handle is not None:
            self._leave_nudged()
            self._held = handle
            self.chosen_handle = handle.id
            self.grip_taken.emit(handle, self.in_view(handle.view, at - self.shift_of(handle)))
        else:
            self._grip = at
            self._panned = False
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Draws the handle or the sheet along, or points."""
        self._pointer = event.position()
        if self._held is not None:
            fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
            at = self._pointer - self.shift_of(self._held)
            self.grip_moved.emit(self.in_view(self._held.view, at), fine)
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

    def focusNextPrevChild(self, forward: bool) -> bool:  # noqa: N802
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
            # First what is under way is given up, then the handle is left.
            if self._held is None and not self._nudged:
                self.choose_handle("")
            self._held = None
            self._nudged = False
            self.grip_given_up.emit()
        elif key in arrows:
            dx, dy = arrows[Qt.Key(key)]
            if handle is None:
                self.pan(-40 * dx, 40 * dy)
                return
            count = round(dx * handle.along[0] + dy * handle.along[1])
            if count:
                self._nudged = True
                self._pointer = self.handle_place(handle)
                self.grip_nudged.emit(handle, count, bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and handle is not None:
            self._type_into(handle)
        else:
            super().keyPressEvent(event)

    def choose_handle(self, handle_id: str) -> None:
        """Chooses a handle for the keyboard; "" for none."""
        if handle_id != self.chosen_handle:
            self._leave_nudged()
        self.chosen_handle = handle_id
        handle = self.handle_named(handle_id)
        shown = self.scene.shown
        if handle is not None and shown is not None:
            size = shown.angle(handle.value) if handle.angle else shown.length_with_unit(handle.value)
            self.setAccessibleDescription(self.tr("{name}: {size}").format(name=handle.name, size=size))
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802  # Qt's name
        """The keyboard goes elsewhere."""
        super().focusOutEvent(event)
        self._leave_nudged()

    def _leave_nudged(self) -> None:
        if self._nudged:
            self._nudged = False
            self.nudges_done.emit()

    def scaled_reach(self) -> float:
        """How many mm the pointer's reach is."""
        return 5.0 / self.sight.zoom

    # Pointing and picking

    def _handle_at(self, at: QPointF) -> Handle | None:
        """The handle under a pixel; a figure's words belong to the figure."""
        if any(words.contains(at) for words in self._words.values()):
            return None
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
