"""The main window."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QMainWindow

from shopdraw.editor.arrangement import arrange, third_angle
from shopdraw.editor.canvas import Canvas
from shopdraw.editor.state import State, state_of
from shopdraw.editor.views import full_views


class Window(QMainWindow):
    """The editor."""

    def __init__(self) -> None:
        super().__init__()
        self.canvas = Canvas(self)
        self.setCentralWidget(self.canvas)
        self.resize(1360, 860)

    def open_file(self, file: Path) -> None:
        """Shows a piece file."""
        self.show_state(state_of(file.read_text(encoding="utf-8"), str(file)))

    def show_state(self, state: State) -> None:
        """Shows a state."""
        if state.assembly is not None and state.design is not None:
            standings = arrange(state.assembly, third=third_angle(state.design), gap=0.3 * state.assembly.width)
            self.canvas.show_views(standings, full_views(state.assembly))
