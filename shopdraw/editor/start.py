"""Starting the editor."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtWidgets import QApplication

from shopdraw.editor.look import LIGHT, dress
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_names, sample_path


def run(file: str | None) -> int:
    """Opens the window and returns when it is closed.

    Args:
        file: a piece file to open, or None to begin from a starting piece.
    Returns:
        The exit code: 0.
    """
    app = application()
    window = Window()
    window.open_file(Path(file) if file else sample_path(sample_names()[0]))
    window.show()
    return app.exec()


def application() -> QApplication:
    """The one Qt application, dressed in our look."""
    found = QApplication.instance()
    app = found if isinstance(found, QApplication) else QApplication(sys.argv[:1])
    app.setApplicationName("shopdraw")
    dress(app, LIGHT)
    return app
