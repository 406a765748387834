"""The picture: the piece turned with the mouse, its lid and drawers opened with sliders, in a window of its own."""

from __future__ import annotations

import math

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QImage,
    QKeyEvent,
    QMouseEvent,
    QNativeGestureEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import (
    QCheckBox,
    QGestureEvent,
    QHBoxLayout,
    QLabel,
    QPinchGesture,
    QPushButton,
    QSizePolicy,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from shopdraw.editor.depth import Frame, Placed, placed, seen, wood_of
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.motion import moved_boards
from shopdraw.editor.said import said
from shopdraw.editor.tongue import translate
from shopdraw.view.direction import Direction, looking
from shopdraw.wood.assembly import Assembly, Motion
from shopdraw.wood.board import Board

LIVE_POINTS, STILL_POINTS = 150_000, 1_000_000
"""How many points a picture has while it turns, and when it rests."""
REST_MS = 200
_STRIPE = 2.0
"""Width of the stripes on boards that run into each other, pixels."""
_OPAQUE = 0xFF000000
DEGREES_PER_PIXEL = 0.4
STEEPEST = 85.0
SLIDER_STEPS = 100
_MARGIN = 0.9


def direction_of(round_deg: float, over_deg: float) -> Direction:
    """The way of looking at a piece.

    Args:
        round_deg: how far one has walked round it, 0 in front of it, 90 at its right side.
        over_deg: how far one looks down on it.
    """
    turn, over = math.radians(round_deg), math.radians(over_deg)
    return looking((-math.sin(turn) * math.cos(over), math.cos(turn) * math.cos(over), -math.sin(over)))


def motion_words(motion_id: str) -> str:
    """What a person calls something that opens: "Lid", "Left support", "Drawer 2"."""
    kind, _, key = motion_id.partition(".")
    if kind == "drawer":
        return translate("Motion", "Drawer {key}").format(key=key)
    return translate("Motion", motion_id.replace(".", " ").replace("-", " ").capitalize())


class PictureView(QWidget):
    """The piece, shaded or in outline, from wherever one looks.

    Signals:
        turned: the way of looking has changed.
    """

    turned = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self.round_deg, self.over_deg, self.zoom = 32.0, 22.0, 1.0
        self.shaded = True
        self.colliding: frozenset[str] = frozenset()
        self._size = 1.0
        self._middle = (0.0, 0.0, 0.0)
        self._grip: QPointF | None = None
        self._placed: Placed | None = None
        self._image: QImage | None = None
        self._resting = False
        self._still = QTimer(self)
        self._still.setSingleShot(True)
        self._still.setInterval(REST_MS)
        self._still.timeout.connect(self._rest)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.grabGesture(Qt.GestureType.PinchGesture)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Picture of the piece"))
        self.setAccessibleDescription(self.tr("Arrow keys turn it, plus and minus make it larger and smaller."))

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """Room for a picture."""
        return QSize(720, 620)

    def show_boards(self, boards: tuple[Board, ...], size: tuple[float, float, float]) -> None:
        """Shows boards where they stand.

        Args:
            boards: the piece.
            size: of the case, mm: width, depth, height.
        """
        self._placed = placed(wood_of(boards), boards) if boards else None
        self._middle = (size[0] / 2, size[1] / 2, size[2] / 2)
        self._size = math.hypot(*size) * 1.15
        self._look_again()

    def turn(self, round_by: float, over_by: float) -> None:
        """Walks round the piece and rises over it, degrees."""
        self.round_deg = (self.round_deg + round_by) % 360.0
        self.over_deg = max(-STEEPEST, min(STEEPEST, self.over_deg + over_by))
        self._look_again()
        self.turned.emit()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002  # Qt's name and signature
        """Paints what is seen; fewer points while the hand turns it, more when it rests."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.colours.colour("paper"))
        if self._placed is not None and self.width() > 0 and self.height() > 0:
            if self._image is None:
                self._image = self._painted(self._placed)
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            painter.drawImage(QRectF(self.rect()), self._image)
        painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Paints another size."""
        super().resizeEvent(event)
        self._look_again()

    def frame(self) -> Frame:
        """Where the picture lies on the view's plane, and how fine it is now."""
        ratio = self.devicePixelRatioF()
        area = self.width() * self.height()
        fine = min(2.0 * ratio, math.sqrt(STILL_POINTS / area)) if self._resting else math.sqrt(LIVE_POINTS / area)
        fine = min(fine, 2.0 * ratio)
        middle = direction_of(self.round_deg, self.over_deg).on_paper(self._middle)
        zoom = min(self.width(), self.height()) / self._size * self.zoom * _MARGIN
        return Frame(middle, zoom * fine, max(1, round(self.width() * fine)), max(1, round(self.height() * fine)))

    def _painted(self, here: Placed) -> QImage:
        found = seen(here, direction_of(self.round_deg, self.over_deg), self.frame())
        colliding = np.array([name in self.colliding for name in here.wood.names])
        tones = self._tones(here) if self.shaded else np.full(len(here.normals), _number(self.colours.colour("paper")))
        points = np.where(found.triangle < 0, _number(self.colours.colour("paper")), tones[found.triangle])
        row, column = np.arange(found.face.shape[0])[:, None], np.arange(found.face.shape[1])
        wide = max(2, round(_STRIPE * found.face.shape[1] / max(self.width(), 1)))
        striped = (found.owner >= 0) & colliding[found.owner] & ((row + column) % (4 * wide) < wide)
        points[striped] = _number(self.colours.colour("wrong"))
        edge = np.zeros(found.face.shape, dtype=bool)
        edge[:, :-1] |= found.face[:, :-1] != found.face[:, 1:]
        edge[:-1] |= found.face[:-1] != found.face[1:]
        points[edge] = _number(self.colours.colour("ink"))
        data = np.ascontiguousarray(points, dtype=np.uint32)
        height, width = data.shape
        return QImage(data.data, width, height, width * 4, QImage.Format.Format_RGB32).copy()

    def _tones(self, here: Placed) -> npt.NDArray[np.int64]:
        """A colour for each triangle: light from above and from the viewer, a mixture of paper and faint."""
        toward = np.array(direction_of(self.round_deg, self.over_deg).toward)
        light = np.clip(0.35 + 0.4 * (here.normals @ toward) + 0.25 * here.normals[:, 2], 0.0, 1.0)[:, None]
        one, other = (
            np.array([colour.red(), colour.green(), colour.blue()])
            for colour in (self.colours.colour("paper"), self.colours.colour("faint"))
        )
        tones = np.round(one * light + other * (1.0 - light)).astype(np.int64)
        found: npt.NDArray[np.int64] = tones @ np.array([1 << 16, 1 << 8, 1]) + _OPAQUE
        return found

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Takes hold of the piece."""
        self._grip = event.position()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Turns it with the hand."""
        if self._grip is not None:
            step = event.position() - self._grip
            self._grip = event.position()
            self.turn(-step.x() * DEGREES_PER_PIXEL, step.y() * DEGREES_PER_PIXEL)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802, ARG002
        """Lets go."""
        self._grip = None

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
        """Comes nearer or goes back."""
        self.come_nearer(1.0015 ** event.angleDelta().y())

    def event(self, event: QEvent) -> bool:
        """Takes a pinch, on a trackpad or with two fingers on the screen, as coming nearer or going back."""
        if isinstance(event, QNativeGestureEvent) and event.gestureType() is Qt.NativeGestureType.ZoomNativeGesture:
            self.come_nearer(1.0 + event.value())
            return True
        if isinstance(event, QGestureEvent):
            pinch = event.gesture(Qt.GestureType.PinchGesture)
            if isinstance(pinch, QPinchGesture):
                self._grip = None
                self.come_nearer(pinch.scaleFactor())
                event.accept(pinch)
                return True
        return super().event(event)

    def come_nearer(self, factor: float) -> None:
        """Shows the piece larger by a factor, within bounds."""
        self.zoom = min(8.0, max(0.3, self.zoom * factor))
        self._look_again()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Turns with the arrow keys."""
        turns = {
            Qt.Key.Key_Left: (-10.0, 0.0),
            Qt.Key.Key_Right: (10.0, 0.0),
            Qt.Key.Key_Up: (0.0, 10.0),
            Qt.Key.Key_Down: (0.0, -10.0),
        }
        if event.key() in turns:
            self.turn(*turns[Qt.Key(event.key())])
        elif event.key() in (Qt.Key.Key_Plus, Qt.Key.Key_Minus):
            self.zoom = min(8.0, max(0.3, self.zoom * (1.2 if event.key() == Qt.Key.Key_Plus else 1 / 1.2)))
            self._look_again()
        else:
            super().keyPressEvent(event)

    def show_colliding(self, boards: frozenset[str]) -> None:
        """Marks boards that run into each other with stripes."""
        if boards != self.colliding:
            self.colliding = boards
            self.repaint_all()

    def repaint_all(self) -> None:
        """Paints again what hasn't moved: in another look."""
        self._image = None
        self.update()

    def _look_again(self) -> None:
        self._resting = False
        self._image = None
        self._still.start()
        self.update()

    def _rest(self) -> None:
        self._resting = True
        self._image = None
        self.update()


def _number(colour: QColor) -> int:
    """A colour as a point of a picture."""
    return colour.rgb() & 0xFFFFFF | _OPAQUE


class PictureWindow(QWidget):
    """Picture and sliders.

    Signals:
        resting: boards where they stand now that the hand is still, to be tried for collisions.
    """

    resting = Signal(object)

    def __init__(self, colours: Colours) -> None:
        super().__init__()
        self.setWindowTitle(self.tr("Picture"))
        self._assembly: Assembly | None = None
        self.view = PictureView(self)
        self.view.colours = colours
        self.sliders: dict[str, QSlider] = {}
        self._sliders = QVBoxLayout()
        self.shaded = QCheckBox(self.tr("Shaded"), self)
        self.shaded.setAccessibleName(self.tr("Shaded"))
        self.shaded.setChecked(True)
        self.shaded.toggled.connect(self._shade)
        self.shut = QPushButton(self.tr("Shut everything"), self)
        self.shut.setAccessibleName(self.tr("Shut everything"))
        self.shut.setToolTip(self.tr("Shut the lid, push in every drawer and support"))
        self.shut.clicked.connect(self._shut_all)
        self.note = QLabel(self)
        self.note.setWordWrap(True)
        side = QVBoxLayout()
        side.addWidget(self.shaded)
        side.addLayout(self._sliders)
        side.addWidget(self.shut)
        side.addWidget(self.note)
        side.addStretch(1)
        whole = QHBoxLayout(self)
        whole.addWidget(self.view, 1)
        whole.addLayout(side)
        self._still = QTimer(self)
        self._still.setSingleShot(True)
        self._still.setInterval(250)
        self._still.timeout.connect(lambda: self.resting.emit(self.boards()))

    def show_assembly(self, assembly: Assembly) -> None:
        """Shows a piece; what is open stays open."""
        before = {name: slider.value() for name, slider in self.sliders.items()}
        if self._assembly is None or [m.id for m in assembly.motions] != list(self.sliders):
            self._make_sliders(assembly.motions, before)
        self._assembly = assembly
        self._moved()

    def boards(self) -> tuple[Board, ...]:
        """All boards where they stand now."""
        if self._assembly is None:
            return ()
        return moved_boards(self._assembly, {name: s.value() / SLIDER_STEPS for name, s in self.sliders.items()})

    def show_colliding(self, boards: frozenset[str]) -> None:
        """Marks boards that run into each other."""
        self.view.show_colliding(boards)
        here = self._assembly
        named = [here.board(one) for one in sorted(boards) if here is not None and here.has(one)]
        told = "; ".join(f"{board.label} {said(board.name)}" for board in named)
        self.note.setText(self.tr("These run into each other: {boards}").format(boards=told) if told else "")

    def _moved(self) -> None:
        assembly = self._assembly
        if assembly is not None:
            self.view.colliding = frozenset()
            self.view.show_boards(self.boards(), (assembly.width, assembly.depth, assembly.height))
            self._still.start()

    def _make_sliders(self, motions: tuple[Motion, ...], before: dict[str, int]) -> None:
        while self._sliders.count():
            item = self._sliders.takeAt(0)
            widget = item.widget() if item else None
            if widget is not None:
                widget.deleteLater()
        self.sliders.clear()
        for motion in motions:
            words = motion_words(motion.id)
            label = QLabel(words, self)
            slider = QSlider(Qt.Orientation.Horizontal, self)
            slider.setRange(0, SLIDER_STEPS)
            slider.setValue(before.get(motion.id, 0))
            slider.setMinimumWidth(self.fontMetrics().averageCharWidth() * 24)
            slider.setAccessibleName(self.tr("Open {name}").format(name=words))
            slider.valueChanged.connect(lambda _value: self._moved())
            label.setBuddy(slider)
            self._sliders.addWidget(label)
            self._sliders.addWidget(slider)
            self.sliders[motion.id] = slider

    def _shade(self, on: bool) -> None:  # a signal's argument
        self.view.shaded = on
        self.view.repaint_all()

    def _shut_all(self) -> None:
        for slider in self.sliders.values():
            slider.setValue(0)
