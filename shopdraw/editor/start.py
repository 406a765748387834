"""Starting the editor: the application, the window, the file that it opens on."""

from __future__ import annotations

import signal
import sys
from pathlib import Path

from PySide6.QtCore import QSettings, QTimer
from PySide6.QtWidgets import QApplication

from shopdraw.editor.crash import catch
from shopdraw.editor.look import DARK, LIGHT, dress
from shopdraw.editor.tongue import speak, wished_languages
from shopdraw.editor.window import Window


def run(file: str | None) -> int:
    """Opens the window and returns when it is closed.

    Args:
        file: a piece file to open, or None for the starting pieces.
    Returns:
        The exit code: 0.
    """
    app = application()
    window = Window()
    restore = catch(window.filing.keep_copy, window.tell, window.folder)
    # The file first: the page of starting pieces, with its pictures, is then never made.
    if file is not None:
        window.open_file(Path(file))
    window.show()
    window.work.hand.tidying.hold()
    window.work.hand.tidying.let_go()
    window.working.warm()
    QTimer.singleShot(0, window.filing.offer_recovery)
    # Ctrl+C in the terminal closes the window: Python sees the signal only when it runs, so it is woken now and then.
    signal.signal(signal.SIGINT, lambda _number, _frame: window.close())
    waking = QTimer(window)
    waking.start(300)
    waking.timeout.connect(lambda: None)
    code = app.exec()
    restore()
    window.working.close()
    return code


def application() -> QApplication:
    """The one Qt application, in the person's language, dressed in the look that was chosen last."""
    found = QApplication.instance()
    app = found if isinstance(found, QApplication) else QApplication(sys.argv[:1])
    app.setApplicationName("shopdraw")
    settings = QSettings("shopdraw", "shopdraw")
    speak(app, wished_languages(str(settings.value("language", ""))))
    dress(app, DARK if settings.value("dark", False, type=bool) else LIGHT)
    return app
