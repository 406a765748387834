"""The main window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QLocale, QRect
from PySide6.QtWidgets import QMainWindow

from shopdraw.editor.canvas import Canvas
from shopdraw.editor.entry import Entry
from shopdraw.editor.figure import Figure, named_sizes
from shopdraw.editor.hand import Hand
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.showing import scene_of
from shopdraw.editor.state import State
from shopdraw.editor.typed import Typed
from shopdraw.editor.working import Worked, Working


class Window(QMainWindow):
    """The editor."""

    def __init__(self, *, apart: bool = True) -> None:
        super().__init__()
        self.piece = OpenPiece(self)
        self.working = Working(self, apart=apart)
        self.canvas = Canvas(self)
        self.hand = Hand(self.piece, self.canvas)
        self.entry = Entry(self.canvas)
        self.decimal_sign = QLocale().decimalPoint()
        self.hand.decimal_sign = self.decimal_sign
        self._lines: tuple[State, Worked] | None = None
        self.setCentralWidget(self.canvas)
        self.resize(1360, 860)
        self.piece.changed.connect(self._show)
        self.piece.drafted.connect(self._draft)
        self.working.done.connect(self._worked)
        self.canvas.board_pointed.connect(lambda board: self.canvas.light(frozenset({board} if board else ())))
        self.canvas.figure_picked.connect(self._type_into)
        self.entry.typed.connect(self._typed)
        self.statusBar().setSizeGripEnabled(False)
        self.hand.said.connect(lambda words: self.statusBar().showMessage(words, 8000))
        self.piece.refused.connect(self._refused)

    def open_file(self, file: Path) -> None:
        """Opens a piece file."""
        self.piece.open_file(file)

    def _show(self, state: State) -> None:
        if state.sound:
            self.canvas.show_scene(scene_of(state, self.canvas.layers, self.decimal_sign))
            self.working.ask(state)

    def _draft(self, state: State) -> None:
        """A draft while dragging; with the state itself, the full views again."""
        if not state.sound:
            return
        lines = None
        if state is self.piece.state and self._lines is not None and self._lines[0] is state:
            lines = self._lines[1].views
        self.canvas.show_scene(scene_of(state, self.canvas.layers, self.decimal_sign, lines))

    def _worked(self, state: State, worked: Worked) -> None:
        if state is not self.piece.state or self.hand.busy:
            return
        if worked.views is not None:
            self._lines = (state, worked)
            self.canvas.show_scene(scene_of(state, self.canvas.layers, self.decimal_sign, worked.views))

    def _type_into(self, figure: Figure, place: QRect) -> None:
        shown, assembly = self.canvas.scene.shown, self.piece.state.assembly
        if shown is not None and assembly is not None:
            self.entry.open_on(figure, place, shown, named_sizes(assembly))

    def _typed(self, figure: Figure, typed: Typed) -> None:
        if figure.sets is not None and self.piece.set_values(figure.sets(typed), figure.name):
            self.entry.close_slip()

    def _refused(self, sentence: str) -> None:
        if self.entry.isVisible():
            self.entry.complain(sentence)
        else:
            self.statusBar().showMessage(sentence, 8000)
