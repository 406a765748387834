"""Two variants side by side, at one scale."""

from __future__ import annotations

import tomllib
from dataclasses import replace

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from shopdraw.editor.easel import Easel
from shopdraw.editor.entry import address_words
from shopdraw.editor.field import typed_at
from shopdraw.editor.look import Colours
from shopdraw.editor.said import in_readers_sign, said
from shopdraw.editor.scene import Layers
from shopdraw.editor.showing import scene_of
from shopdraw.editor.state import State, leaves_of, state_of
from shopdraw.piece.address import address_text
from shopdraw.piece.variant import VARIANT, NoSuchVariant, with_variant

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
        self._text, self._source, self._sign = text, source, decimal_sign
        self.left, self.right = Easel(self), Easel(self)
        self.boxes: list[QComboBox] = []
        self.notes: list[QLabel] = []
        self.differences = QLabel(self)
        self.differences.setWordWrap(True)
        self.differences.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.differences.setAccessibleName(self.tr("What differs"))
        whole = QVBoxLayout(self)
        row = QHBoxLayout()
        whole.addLayout(row, 1)
        whole.addWidget(self.differences)
        for number, canvas in enumerate((self.left, self.right)):
            canvas.colours = colours
            box = QComboBox(self)
            box.setAccessibleName(self.tr("Variant at the left") if number == 0 else self.tr("Variant at the right"))
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
        self.follow(text, source, variants)
        self.boxes[1].setCurrentIndex(min(1, self.boxes[1].count() - 1))

    def follow(self, text: str, source: str, variants: tuple[str, ...]) -> None:
        """Shows the file as it is now; a variant that is no more gives way to the file itself."""
        self._text, self._source = text, source
        self.setWindowTitle(self.tr("{name}: two variants").format(name=source))
        for box in self.boxes:
            chosen = box.currentData()
            box.blockSignals(True)
            box.clear()
            box.addItem(self.tr("as in the file"), None)
            for name in variants:
                box.addItem(name, name)
            box.setCurrentIndex(variants.index(chosen) + 1 if chosen in variants else 0)
            box.blockSignals(False)
        self._show()

    def states(self) -> list[State]:
        """The two states that are compared."""
        return [state_of(self._text, self._source, box.currentData()) for box in self.boxes]

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802  # Qt's name
        """Scales once the canvases have their sizes."""
        super().showEvent(event)
        self._same_scale()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Scales again once the canvases have their new sizes."""
        super().resizeEvent(event)
        QTimer.singleShot(0, self, self._same_scale)

    def _show(self) -> None:
        for state, canvas, note in zip(self.states(), (self.left, self.right), self.notes, strict=True):
            if state.sound:
                scene = scene_of(state, Layers(), self._sign)
                told = tuple(figure for figure in scene.figures if figure.handle in OVERALL)
                canvas.show_scene(replace(scene, handles=(), figures=told))
                note.setText("")
            else:
                note.setText(said(state.faults[0].right) if state.faults else "")
        left, right = (box.currentData() for box in self.boxes)
        changed = [self._difference(*one) for one in differences(self._text, left, right)]
        self.differences.setText(";   ".join(changed) or self.tr("Nothing differs."))
        self._same_scale()

    def _difference(self, address: str, left: str, right: str) -> str:
        signs = [in_readers_sign(value) if value else self.tr("not given") for value in (left, right)]
        return self.tr("{input}: {left} → {right}").format(input=address_words(address), left=signs[0], right=signs[1])

    def _same_scale(self) -> None:
        """Both at the smaller of their fitting scales and on one floor, so that larger looks larger."""
        canvases = [canvas for canvas in (self.left, self.right) if canvas.scene.standings]
        sights = [canvas.fitting() for canvas in canvases]
        if sights:
            zoom = min(sight.zoom for sight in sights)
            middles = [(canvas.width() / 2, canvas.height() / 2) for canvas in canvases]
            sights = [sight.zoomed(zoom / sight.zoom, at) for sight, at in zip(sights, middles, strict=True)]
            floor = max(sight.y for sight in sights)
            for canvas, sight in zip(canvases, sights, strict=True):
                canvas.sight = replace(sight, y=floor)
                canvas.update()


def differences(text: str, left: str | None, right: str | None) -> tuple[tuple[str, str, str], ...]:
    """What two variants of a file have different: address, what the one has, what the other; "" where nothing stands.

    Args:
        text: the file's.
        left, right: names of variants; None for the file as it is.
    """
    try:
        tables = tomllib.loads(text)
        sides = [with_variant(tables, name)[0] if name is not None else tables for name in (left, right)]
    except (ValueError, RecursionError, NoSuchVariant):
        return ()
    leaves = [{path: value for path, value in leaves_of(side) if path[0] != VARIANT} for side in sides]
    paths = dict.fromkeys((*leaves[0], *leaves[1]))
    changed = [path for path in paths if leaves[0].get(path) != leaves[1].get(path)]
    addresses = [address_text(path) for path in changed]
    return tuple((one, typed_at(sides[0], one), typed_at(sides[1], one)) for one in addresses)
