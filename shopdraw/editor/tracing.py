"""Tracing photos: a photo of an old piece behind a view, corrected for perspective by four points of known size."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QImageReader,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QPolygonF,
    QTransform,
)
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import NotTyped, read_typed
from shopdraw.measure import Unit
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design, PhotoTable

CORNERS = ("lower left", "lower right", "upper right", "upper left")
PHOTO_KEYS = {"front": "trace", "side": "trace-side", "plan": "trace-plan"}
"""The photo behind each view in the piece file."""
KNOWN = {"front": (0, 1), "side": (2, 1), "plan": (0, 2)}
"""What lies across and up in a view, as the first ones of the sizes that can be named: width, height, depth."""
NEAR_PIXELS, STEP, FINE_STEP = 16.0, 10.0, 1.0
_MOST_MEGAPIXELS = 12.0

Photo = tuple[QPixmap, QTransform, float]
"""A picture, how its pixels lie in the view's plane (mm), and how opaque it is, 0 to 1."""


def photos_of(design: Design, folder: Path | None, load: Callable[[Path], QPixmap]) -> dict[str, Photo]:
    """The photos behind the views; those that can't be read or have no four points are left out.

    Args:
        design: its [photo.ID] tables.
        folder: of the piece file, from which their paths lead.
        load: reads a picture; a null one where it can't be read.
    """
    found: dict[str, Photo] = {}
    for table in design.photo.values():
        path = Path(table.file) if Path(table.file).is_absolute() or folder is None else folder / table.file
        picture = load(path)
        if picture.isNull():
            continue
        laid = laid_by(table, picture.size())
        if laid is not None:
            found[table.view] = (picture, laid, 1.0 - table.fade / 100.0)
    return found


def laid_by(table: PhotoTable, size: QSize) -> QTransform | None:
    """How a photo's pixels lie in the view's plane: its four points come to stand in a rectangle of the known size.

    Without points the whole photo is laid into that rectangle. None where the points don't make a quadrilateral.
    """
    points = table.points
    if points is None or len(points) != 8:
        w, h = float(size.width()), float(size.height())
        points = (0.0, h, w, h, w, 0.0, 0.0, 0.0)
    on_photo = QPolygonF([QPointF(x, y) for x, y in zip(points[0::2], points[1::2], strict=True)])
    x0, y0, x1, y1 = table.left, table.up, table.left + table.width, table.up + table.height
    in_view = QPolygonF([QPointF(x0, y0), QPointF(x1, y0), QPointF(x1, y1), QPointF(x0, y1)])
    made = QTransform()
    return made if QTransform.quadToQuad(on_photo, in_view, made) else None


def load_picture(path: Path) -> QPixmap:
    """A photo, turned as the camera was held, and no larger than is of use on a screen."""
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    size = reader.size()
    if size.isValid() and size.width() * size.height() > _MOST_MEGAPIXELS * 1e6:
        part = (_MOST_MEGAPIXELS * 1e6 / (size.width() * size.height())) ** 0.5
        reader.setScaledSize(QSize(round(size.width() * part), round(size.height() * part)))
    return QPixmap.fromImage(reader.read())


class PointPicker(QWidget):
    """A photo on which four points are clicked, one after the other; a point already set can be dragged.

    Signals:
        picked: the points have changed.
    """

    picked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self.points: list[QPointF] = []
        self._picture = QPixmap()
        self._held: int | None = None
        self._cursor: QPointF | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        keys = self.tr(
            "Arrow keys move the mark, with Shift a little; Enter sets a point, or takes it up and puts it down."
        )
        self.setAccessibleDescription(keys)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Photo: click the four points"))

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """Room for a photo."""
        return QSize(640, 560)

    def show_picture(self, picture: QPixmap, points: list[QPointF]) -> None:
        """Shows a photo and the points that are set."""
        self._picture = picture
        self.points = points
        self.update()

    def on_photo(self, pixel: QPointF) -> QPointF:
        """The place in the photo under a pixel of the screen."""
        inverse, _ = self._placed().inverted()
        return inverse.map(pixel)

    def on_screen(self, point: QPointF) -> QPointF:
        """Where a place of the photo is shown."""
        return self._placed().map(point)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Sets the next point, or takes hold of one."""
        self._cursor = None
        self._take(event.position())

    def _take(self, at: QPointF) -> None:
        near = [n for n, p in enumerate(self.points) if (self.on_screen(p) - at).manhattanLength() < NEAR_PIXELS]
        if near:
            self._held = near[0]
        elif len(self.points) < len(CORNERS):
            self.points.append(self.on_photo(at))
            self._held = len(self.points) - 1
        self.picked.emit()
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Moves a mark and sets points with it."""
        ways = {Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Up: (0, -1), Qt.Key.Key_Down: (0, 1)}
        if self._cursor is None:
            self._cursor = QPointF(self.rect().center())
        if event.key() in ways:
            across, down = ways[Qt.Key(event.key())]
            step = FINE_STEP if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else STEP
            x = min(max(self._cursor.x() + across * step, 0.0), self.width() - 1.0)
            y = min(max(self._cursor.y() + down * step, 0.0), self.height() - 1.0)
            self._cursor = QPointF(x, y)
            if self._held is not None:
                self.points[self._held] = self.on_photo(self._cursor)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            held, before = self._held, len(self.points)
            self._held = None
            if held is None:
                self._take(self._cursor)
            if len(self.points) > before:
                self._held = None  # a new one is put down at once, one that stood there is taken up
            self.picked.emit()
        else:
            super().keyPressEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802
        """The keyboard goes elsewhere: what it held is put down."""
        super().focusOutEvent(event)
        self._held = None
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Draws a point along."""
        if self._held is not None:
            self.points[self._held] = self.on_photo(event.position())
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802, ARG002
        """Lets go of it."""
        self._held = None
        self.picked.emit()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002  # Qt's name and signature
        """Paints photo and points."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.fillRect(self.rect(), self.colours.colour("surround"))
        if not self._picture.isNull():
            painter.setTransform(self._placed())
            painter.drawPixmap(0, 0, self._picture)
            painter.resetTransform()
        places = [self.on_screen(point) for point in self.points]
        painter.setPen(QPen(self.colours.colour("accent"), 2))
        if len(places) > 1:
            painter.drawPolyline(QPolygonF([*places, *(places[:1] if len(places) == len(CORNERS) else [])]))
        for number, place in enumerate(places, start=1):
            painter.setBrush(QColor(self.colours.paper))
            painter.drawEllipse(place, 9, 9)
            painter.drawText(place + QPointF(-4, 5), str(number))
        if self.hasFocus():
            at = self._cursor or QPointF(self.rect().center())
            painter.drawLine(at - QPointF(14, 0), at + QPointF(14, 0))
            painter.drawLine(at - QPointF(0, 14), at + QPointF(0, 14))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
        painter.end()

    def _placed(self) -> QTransform:
        if self._picture.isNull():
            return QTransform()
        zoom = min(self.width() / self._picture.width(), self.height() / self._picture.height())
        x = (self.width() - self._picture.width() * zoom) / 2
        y = (self.height() - self._picture.height() * zoom) / 2
        return QTransform(zoom, 0, 0, zoom, x, y)


class TraceWindow(QWidget):
    """Choosing the four points and their known size.

    Signals:
        laid: settings that lay the photo behind its view.
    """

    laid = Signal(object)

    def __init__(self, file: str, picture: QPixmap, unit: Unit, sizes: Mapping[str, float], colours: Colours) -> None:
        super().__init__()
        self.setWindowTitle(self.tr("Lay a photo behind a view"))
        self._file, self._unit, self._sizes = file, unit, sizes
        self.picker = PointPicker(self)
        self.picker.colours = colours
        self.picker.show_picture(picture, [])
        self.next = QLabel(self)
        self.next.setWordWrap(True)
        self.view = QComboBox(self)
        for key, words in (("front", self.tr("Front")), ("side", self.tr("Side")), ("plan", self.tr("Plan"))):
            self.view.addItem(words, key)
        self.lines = {name: QLineEdit(self) for name in ("width", "height", "left", "up")}
        captions = {
            "width": self.tr("From left to right"),
            "height": self.tr("From below to above"),
            "left": self.tr("Lower left, from the left"),
            "up": self.tr("Lower left, from the floor"),
        }
        self.fade = QSlider(Qt.Orientation.Horizontal, self)
        self.fade.setRange(0, 95)
        self.fade.setValue(50)
        self.done = QPushButton(self.tr("Lay it behind the view"), self)
        self.again = QPushButton(self.tr("Set the points again"), self)
        form = QFormLayout()
        form.addRow(self.tr("View"), self.view)
        for name, line in self.lines.items():
            form.addRow(f"{captions[name]}, {unit.short}", line)
            line.setAccessibleName(captions[name])
        form.addRow(self.tr("Fade"), self.fade)
        for widget, name in (
            (self.view, self.tr("View")),
            (self.fade, self.tr("Fade")),
            (self.done, self.done.text()),
            (self.again, self.again.text()),
        ):
            widget.setAccessibleName(name)
        self.done.setToolTip(self.tr("Keep the photo and its four points in the piece file"))
        self.again.setToolTip(self.tr("Take the points away and click them anew"))
        side = QVBoxLayout()
        side.addWidget(self.next)
        side.addWidget(self.again)
        side.addLayout(form)
        side.addWidget(self.done)
        side.addStretch(1)
        whole = QHBoxLayout(self)
        whole.addWidget(self.picker, 3)
        whole.addLayout(side, 1)
        self.picker.picked.connect(self._told)
        self.view.currentIndexChanged.connect(lambda _row: self._name_sizes())
        self.again.clicked.connect(self._begin_again)
        self.done.clicked.connect(self._lay)
        self.resize(1000, 640)
        self._name_sizes()
        self._told()

    def _name_sizes(self) -> None:
        """Over the whole piece, until a person says otherwise: its sizes can be named."""
        names = list(self._sizes)
        for line, at in zip((self.lines["width"], self.lines["height"]), KNOWN[self._key()], strict=True):
            if not line.isModified() and at < len(names):
                line.setText(names[at])

    def _key(self) -> str:
        return str(self.view.currentData())

    def _told(self) -> None:
        set_already = len(self.picker.points)
        if set_already < len(CORNERS):
            self.next.setText(
                self.tr("Click a point whose size you know, {corner}.").format(
                    corner=translate("Corner", CORNERS[set_already])
                )
            )
        else:
            self.next.setText(self.tr("Say how far these points lie apart on the piece."))
        self.done.setEnabled(set_already == len(CORNERS))

    def _begin_again(self) -> None:
        self.picker.points.clear()
        self.picker.update()
        self._told()

    def _lay(self) -> None:
        key = PHOTO_KEYS[self._key()]
        settings = [Setting(_at(key, "file"), self._file), Setting(_at(key, "view"), self._key())]
        points = [round(number, 1) for point in self.picker.points for number in (point.x(), point.y())]
        settings.append(Setting(_at(key, "points"), points))
        for name, line in self.lines.items():
            if not line.text().strip() and name in ("left", "up"):
                continue
            try:
                typed = read_typed(line.text(), self._unit, self._sizes, negative=name in ("left", "up"))
            except NotTyped as error:
                self.next.setText(str(error))
                line.setFocus()
                return
            settings.append(Setting(_at(key, name), typed.keeps))
        settings.append(Setting(_at(key, "fade"), self.fade.value()))
        self.laid.emit(tuple(settings))
        self.close()


def _at(key: str, name: str) -> str:
    return address_text(("photo", key, name))
