"""Tracing photos: a photo of an old piece behind a view, corrected for perspective by four points of known size."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QImageReader, QMouseEvent, QPainter, QPaintEvent, QPen, QPixmap, QPolygonF, QTransform
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
PHOTO_KEY = "trace"
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
        at = event.position()
        near = [n for n, p in enumerate(self.points) if (self.on_screen(p) - at).manhattanLength() < 16]
        if near:
            self._held = near[0]
        elif len(self.points) < len(CORNERS):
            self.points.append(self.on_photo(at))
            self._held = len(self.points) - 1
        self.picked.emit()
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
        self.again.clicked.connect(self._begin_again)
        self.done.clicked.connect(self._lay)
        self.resize(1000, 640)
        self._told()

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
        settings = [Setting(_at("file"), self._file), Setting(_at("view"), str(self.view.currentData()))]
        points = [round(number, 1) for point in self.picker.points for number in (point.x(), point.y())]
        settings.append(Setting(_at("points"), points))
        for name, line in self.lines.items():
            if not line.text().strip() and name in ("left", "up"):
                continue
            try:
                typed = read_typed(line.text(), self._unit, self._sizes, negative=name in ("left", "up"))
            except NotTyped as error:
                self.next.setText(str(error))
                line.setFocus()
                return
            settings.append(Setting(_at(name), typed.keeps))
        settings.append(Setting(_at("fade"), self.fade.value()))
        self.laid.emit(tuple(settings))
        self.close()


def _at(name: str) -> str:
    return address_text(("photo", PHOTO_KEY, name))
