"""The easel: shows a scene, the piece's views on one sheet. Painting and looking; hands are the canvas's affair."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPaintEvent, QPen, QPixmap, QResizeEvent, QTransform
from PySide6.QtWidgets import QSizePolicy, QWidget

from shopdraw.drawing.bounds import marks_box
from shopdraw.drawing.explode import dimension_marks
from shopdraw.drawing.mark import Mark, Meaning, Text
from shopdraw.editor import canvas_paint as painted
from shopdraw.editor.arrangement import Standing, whole_box
from shopdraw.editor.figure import placed
from shopdraw.editor.handle import Handle
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.painting import Batch, batch, paint, text_path, text_rect
from shopdraw.editor.scene import Layers, Scene, Views
from shopdraw.editor.sight import Sight, fitted
from shopdraw.editor.yielding import Grip, shifts
from shopdraw.shape.path import Point

PIXELS_PER_PAPER_MM = 3.2
"""How large a paper mm is shown: letters and line widths stay readable at any zoom."""
ROOM = (150.0, 66.0, 92.0, 84.0)
"""Kept free round the views when they are fitted: left, top, right, bottom, pixels."""
SHEET_ROOM = (132.0, 50.0, 74.0, 62.0)
"""From the views to the edge of the sheet that they lie on, pixels."""
NEXT_ROW = 34.0
"""More of both for each further row of heights beside the side view, pixels."""
TOLD = ("dados", "overlay")
"""Layers that are laid over the drawing to be seen: they stand out from its own faint lines."""
ROWS_IN_ROOM = 3
"""So many rows of heights beside the front view are in the room that every sheet has."""


class Easel(QWidget):
    """Shows a scene at one scale."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self.sight = Sight()
        self.scene = Scene()
        self.layers = Layers()
        self.lit: frozenset[str] = frozenset()
        self.label: tuple[tuple[str, bool], ...] = ()
        self.chosen_handle = ""
        self.photos: dict[str, tuple[QPixmap, QTransform, float]] = {}
        self._held: Handle | None = None
        self._over_handle = ""
        self._shifts: dict[str, QPointF] = {}
        self._over_figure = ""
        self._pointer = QPointF()
        self._fitted = True
        self._batches: dict[tuple[str, str], Batch] = {}
        self._contours: dict[tuple[str, frozenset[str]], QPainterPath] = {}
        self._words: dict[str, QRectF] = {}
        self._at_scale = 0.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:  # noqa: N802  # Qt's name
        """Room for a sheet."""
        return QSize(880, 680)

    # What is shown

    def show_scene(self, scene: Scene) -> None:
        """Shows another picture; the view of a held handle stays where it is on the screen.

        Where views stand depends on the piece's sizes: a view that moved away under the hand that changes them would
        change them further and further.
        """
        held = self.scene.standings.get(self._held.view) if self._held is not None else None
        there = scene.standings.get(self._held.view) if self._held is not None else None
        if held is not None and there is not None and held.at != there.at:
            across, up = held.at[0] - there.at[0], held.at[1] - there.at[1]
            self.sight = self.sight.moved(across * self.sight.zoom, -up * self.sight.zoom)
        self.scene = scene
        self._batches.clear()
        self._contours.clear()
        if self._fitted and self._held is None:
            self.fit()
        self.update()

    def show_lines(self, lines: Views) -> None:
        """Shows the full views of the scene that is there as a draft."""
        self.scene = replace(self.scene, lines=lines)
        self._batches = {key: made for key, made in self._batches.items() if key[0] != "lines"}
        self.update()

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
        if self._fitted:
            self.fit()
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
            self.sight = self.fitting()
        self.update()

    def fitting(self) -> Sight:
        """How the whole sheet is seen."""
        return fitted(self.sheet_box(), self.width(), self.height(), self._outside(ROOM))

    def sheet_box(self) -> tuple[float, float, float, float]:
        """The box of all that is shown, canvas mm: the views, and what swings or slides out of them."""
        boxes = [whole_box(dict(self.scene.standings))]
        for layer, wanted in (("swing", self.layers.swing), ("travel", self.layers.travel)):
            for view, marks in self.scene.over.get(layer, {}).items() if wanted else ():
                if marks:
                    x0, y0, x1, y1 = marks_box(marks)
                    at = self.scene.standings[view].at
                    boxes.append((x0 + at[0], y0 + at[1], x1 + at[0], y1 + at[1]))
        lows, highs = [b[:2] for b in boxes], [b[2:] for b in boxes]
        return (min(x for x, _ in lows), min(y for _, y in lows), max(x for x, _ in highs), max(y for _, y in highs))

    def _outside(self, room: tuple[float, float, float, float]) -> tuple[float, float, float, float]:
        """Room round the views: rows of heights stand on the outer side of the front view."""
        left, top, right, bottom = room
        side = self.scene.standings.get("side")
        rows = max((f.row for f in self.scene.figures if f.view == "side" and f.side in ("left", "right")), default=1)
        right += NEXT_ROW * (rows - 1)
        tall = max((f.row for f in self.scene.figures if f.view == "front" and f.side in ("left", "right")), default=1)
        left += NEXT_ROW * max(0, tall - ROWS_IN_ROOM)
        return (right, top, left, bottom) if side is not None and side.at[0] < 0 else (left, top, right, bottom)

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
        """Where a handle stands, pixels: beside its own place where it would cover a figure."""
        return self._screen(handle.view, handle.at) + self.shift_of(handle)

    def shift_of(self, handle: Handle) -> QPointF:
        """How far a handle stands from its own place, pixels."""
        return self._shifts.get(handle.id, QPointF())

    def figure_place(self, figure_id: str) -> QRectF:
        """Where a dimension's words stand, pixels; empty where they aren't shown."""
        return self._words.get(figure_id, QRectF())

    def in_view(self, view: str, pixel: QPointF) -> Point:
        """The point of a view's plane under a pixel, mm."""
        return self.scene.standings[view].in_view(self.sight.on_canvas((pixel.x(), pixel.y())))

    def handle_named(self, handle_id: str) -> Handle | None:
        """The handle with this id."""
        return next((handle for handle in self.scene.handles if handle.id == handle_id), None)

    # Qt's events

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
            if self._held is None:  # what a hand holds stays where it is on the screen
                grips = [Grip(one.id, self._screen(one.view, one.at), one.along) for one in self.scene.handles]
                self._shifts = shifts(grips, self._words.values())
            self._paint_handles(painter)
            if self.label:
                painted.paint_label(
                    painter, self._pointer, self.label, self.font(), self.colours, QRectF(self.rect()), self._figures()
                )
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
        x0, y0, x1, y1 = self.sheet_box()
        corner, other = self.sight.on_screen((x0, y1)), self.sight.on_screen((x1, y0))
        left, top, right, bottom = self._outside(SHEET_ROOM)
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
            ("dados", self.layers.dados),
            ("swing", self.layers.swing),
            ("travel", self.layers.travel),
            ("overlay", bool(self.layers.overlay)),
        ):
            if wanted:
                self._paint_marks(
                    painter, (layer, view), self.scene.over.get(layer, {}).get(view, ()), told=layer in TOLD
                )
        painter.restore()

    def _paint_marks(
        self,
        painter: QPainter,
        key: tuple[str, str],
        marks: tuple[Mark, ...],
        *,
        without_hidden: bool = False,
        told: bool = False,
    ) -> None:
        made = self._batches.get(key)
        if made is None:
            if without_hidden:
                marks = tuple(mark for mark in marks if getattr(mark, "meaning", None) is not Meaning.HIDDEN)
            made = self._batches[key] = batch(marks, self._scale)
        colours = replace(self.colours, faint=self.colours.accent) if told else self.colours
        paint(painter, made, colours, group="small", pixels_per_paper_mm=PIXELS_PER_PAPER_MM)

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
                drawn = dimension_marks(
                    placed(figure, box, shown, self._scale, self.scene.style), self._scale, self.scene.style, "small"
                )
                words = next((self._text_place(standing, mark) for mark in drawn if isinstance(mark, Text)), QRectF())
                if any(words.intersects(other) for other in self._words.values()):
                    continue  # two figures on one spot can't be read: it is there as soon as one looks closer
                for mark in drawn:
                    if isinstance(mark, Text):
                        self._words[figure.id] = words
                        if figure.id == self._over_figure or (held and figure.handle == held):
                            strong.append(mark)
                            continue
                        mark = replace(mark, meaning=Meaning.SIZE)  # noqa: PLW2901
                    marks.append(mark)
            painter.save()
            painter.setTransform(self._transform(standing), True)
            paint(
                painter, batch(marks, self._scale), self.colours, group="small", pixels_per_paper_mm=PIXELS_PER_PAPER_MM
            )
            for text in strong:
                painter.fillPath(text_path(text, self._scale), self.colours.colour("accent"))
            painter.restore()
            for figure in self.scene.figures:
                if figure.id == self._over_figure and figure.view == view and figure.id in self._words:
                    painter.setPen(QPen(self.colours.colour("accent"), 1.5))
                    painter.setBrush(Qt.BrushStyle.NoBrush)
                    painter.drawRoundedRect(self._words[figure.id].adjusted(-4, -3, 4, 3), 3, 3)

    def _figures(self) -> tuple[QRectF, ...]:
        """Where figures stand that a slip of words should leave in sight."""
        return tuple(self._words.values())

    def _text_place(self, standing: Standing, text: Text) -> QRectF:
        return self._transform(standing).mapRect(text_rect(text, self._scale))

    def _paint_handles(self, painter: QPainter) -> None:
        for handle in self.scene.handles:
            strong = handle.id == self._over_handle or (self._held is not None and handle.id == self._held.id)
            if self._held is not None and not strong:
                continue
            focus = self.hasFocus() and handle.id == self.chosen_handle
            painted.paint_grip(
                painter, self.handle_place(handle), handle.along, self.colours, strong=strong, focus=focus
            )

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
