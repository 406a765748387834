"""Two variants side by side, at one scale."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from shopdraw.editor.easel import Easel
from shopdraw.editor.look import Colours
from shopdraw.editor.said import said
from shopdraw.editor.scene import Layers
from shopdraw.editor.showing import scene_of
from shopdraw.editor.state import State, state_of

OVERALL = (
    "case.width", "case.height", "case.depth", "base.height",
    "slant.writing_height", "slant.top_depth", "slant.angle",
)  # fmt: skip
"""What is dimensioned where two stand side by side: at half the size the rows of what is inside would crowd."""


class CompareWindow(QWidget):
    """The file at the left, one of its variants at the right."""

    def __init__(self, text: str, source: str, variants: tuple[str, ...], decimal_sign: str, colours: Colours) -> None:
        super().__init__()
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("{name}: two variants").format(name=source))
        self._text, self._source, self._sign = text, source, decimal_sign
        self.left, self.right = Easel(self), Easel(self)
        self.boxes: list[QComboBox] = []
        self.notes: list[QLabel] = []
        row = QHBoxLayout(self)
        for number, canvas in enumerate((self.left, self.right)):
            canvas.colours = colours
            box = QComboBox(self)
            box.setAccessibleName(self.tr("Variant at the left") if number == 0 else self.tr("Variant at the right"))
            box.addItem(self.tr("as in the file"), None)
            for name in variants:
                box.addItem(name, name)
            box.setCurrentIndex(number if number < box.count() else 0)
            box.currentIndexChanged.connect(lambda _row: self._show())
            note = QLabel(self)
            column = QVBoxLayout()
            column.addWidget(box)
            column.addWidget(canvas, 1)
            column.addWidget(note)
            row.addLayout(column, 1)
            self.boxes.append(box)
            self.notes.append(note)
        self.resize(1360, 760)
        self._show()

    def states(self) -> list[State]:
        """The two states that are compared."""
        return [state_of(self._text, self._source, box.currentData()) for box in self.boxes]

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802  # Qt's name
        """Scales once the canvases have their sizes."""
        super().showEvent(event)
        self._same_scale()

    def _show(self) -> None:
        for state, canvas, note in zip(self.states(), (self.left, self.right), self.notes, strict=True):
            if state.sound:
                scene = scene_of(state, Layers(), self._sign)
                told = tuple(figure for figure in scene.figures if figure.handle in OVERALL)
                canvas.show_scene(replace(scene, handles=(), figures=told))
                note.setText("")
            else:
                note.setText(said(state.faults[0].right) if state.faults else "")
        self._same_scale()

    def _same_scale(self) -> None:
        """Both at the smaller of their fitting scales, so that larger looks larger."""
        canvases = [canvas for canvas in (self.left, self.right) if canvas.scene.standings]
        sights = [canvas.fitting() for canvas in canvases]
        if sights:
            zoom = min(sight.zoom for sight in sights)
            for canvas, sight in zip(canvases, sights, strict=True):
                middle = (canvas.width() / 2, canvas.height() / 2)
                canvas.sight = sight.zoomed(zoom / sight.zoom, middle)
                canvas.update()
