"""A newcomer's whole job through the window and its dialogs: each click, drag and keystroke is a real event, counted.

Nothing is answered behind the window's back: menus, the print dialog, the folder dialog and every question are clicked.
"""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from pathlib import Path

from pypdf import PdfReader
from PySide6.QtCore import QPoint, QPointF, Qt, QTimer
from PySide6.QtGui import QAction
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtWidgets import QApplication, QDialog, QFileDialog, QLineEdit, QPushButton, QToolButton, QWidget

from shopdraw.editor.ask import ask
from shopdraw.editor.window import Window
from tests.editor import gestures

MOST_STEPS = 40
EXPORT_MS = 240_000


class Hands:
    """Two hands and a count: a click, a drag, a key pressed are one each; a typed size is a keystroke a letter."""

    def __init__(self, window: Window, qtbot) -> None:
        self.window = window
        self.qtbot = qtbot
        self.steps = 0
        self.met: list[QDialog] = []
        self.left: list[Callable[[QDialog], None]] = []

    def click(self, widget: QWidget, at: QPointF | None = None) -> None:
        self.steps += 1
        if at is None:
            self.qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)
        else:
            gestures.click(widget, at)

    def drag(self, handle: str, by_mm: tuple[float, float]) -> None:
        self.steps += 1
        gestures.drag(self.window.canvas, handle, by_mm)

    def keys(self, widget: QWidget, words: str) -> None:
        self.steps += len(words)
        self.qtbot.keyClicks(widget, words)

    def key(self, widget: QWidget, key: Qt.Key) -> None:
        self.steps += 1
        self.qtbot.keyClick(widget, key)

    def menu(self, action: QAction) -> None:
        """A menu opened and a line of it clicked."""
        bar = self.window.menuBar()
        title = next(a for a in bar.actions() if a.menu() is not None and action in a.menu().actions())
        self.steps += 1
        self.qtbot.mouseClick(bar, Qt.MouseButton.LeftButton, pos=QPoint(bar.actionGeometry(title).center()))
        menu = title.menu()
        self.qtbot.waitUntil(menu.isVisible)
        self.steps += 1
        self.qtbot.mouseClick(menu, Qt.MouseButton.LeftButton, pos=menu.actionGeometry(action).center())

    def meanwhile(self, *answers: Callable[[QDialog], None]) -> None:
        """What is done in the dialogs that come next, one after the other, while each of them waits."""
        waiting = list(answers)
        self.left = waiting

        def look() -> None:
            dialog = QApplication.activeModalWidget()
            if isinstance(dialog, QDialog) and dialog.isVisible() and dialog not in self.met:
                self.met.append(dialog)
                waiting.pop(0)(dialog)
            if not waiting:
                timer.stop()

        timer = QTimer(self.window)
        timer.timeout.connect(look)
        timer.start(50)

    def press(self, words: str) -> Callable[[QDialog], None]:
        """A click on a dialog's button."""

        def does(dialog: QDialog) -> None:
            button = next(b for b in dialog.findChildren(QPushButton) if b.text().replace("&", "") == words)
            self.click(button)

        return does

    def bar(self, key: str) -> None:
        """A button on the bar."""
        button = self.window.bar.widgetForAction(self.window.actions_by_key[key])
        self.click(button)


def test_a_newcomer_gets_from_nothing_to_templates_and_lists_in_under_forty_steps(
    window: Window, tmp_path: Path, monkeypatch, qtbot
) -> None:
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.chdir(tmp_path)
    window.filing.ask = ask
    window.show()
    qtbot.waitExposed(window)
    hands = Hands(window, qtbot)
    canvas = window.canvas

    hands.click(window.start.buttons["pilot-station-desk"])  # a new desk
    window.grab()
    hands.drag("case.width@front", (80.0, 0.0))  # wider
    assert design(window)["case"]["width"] == 720

    slant = next(f for f in canvas.scene.figures if f.name == "Slant from level")
    hands.click(canvas, canvas.figure_place(slant.id).center())  # the slant
    hands.keys(window.work.entry.line, "48")
    hands.key(window.work.entry.line, Qt.Key.Key_Return)
    assert design(window)["slant"]["angle"] == 48

    hands.menu(window.actions_by_key["more_drawers"])  # a drawer more
    assert design(window)["opening"]["bank"]["divide"]["keys"] == ["1", "2", "3", "4"]

    panel = window.work.findings  # a finding that has a right value
    row = next((n for n in range(panel.model.rowCount()) if getattr(panel.model.finding(n), "right", None)), None)
    if row is None:
        hands.click(window.work.form.search)
        hands.keys(window.work.form.search, "dado depth")
        line = window.work.form.widget_for("case.dado_depth")
        hands.click(line)
        hands.keys(line, "10")
        hands.key(line, Qt.Key.Key_Return)
        row = next(n for n in range(panel.model.rowCount()) if getattr(panel.model.finding(n), "right", None))
    finding = panel.model.finding(row)
    assert finding is not None
    panel.list.scrollTo(panel.model.index(row))
    hands.click(panel.list.viewport(), QPointF(panel.list.visualRect(panel.model.index(row)).center()))
    hands.click(panel.set_it)
    assert finding not in [panel.model.finding(n) for n in range(panel.model.rowCount())]

    printed: list[str] = []  # the side's template

    def to_file(dialog: QDialog) -> None:
        assert isinstance(dialog, QPrintDialog)
        printed.extend(line.text() for line in dialog.findChildren(QLineEdit, "filename"))
        hands.press("Print")(dialog)

    hands.meanwhile(hands.press("Templates at true size"), to_file)
    hands.menu(window.actions_by_key["print"])
    qtbot.waitUntil(lambda: not hands.left and QApplication.activeModalWidget() is None, timeout=EXPORT_MS)
    qtbot.waitUntil(lambda: not window.doing.printing.busy, timeout=EXPORT_MS)
    pages = PdfReader(printed[0]).pages
    assert len(pages) >= 4
    assert {round(float(page.mediabox.height) / 72 * 25.4) for page in pages} == {297}

    def new_folder(dialog: QDialog) -> None:
        assert isinstance(dialog, QFileDialog)
        hands.click(dialog.findChild(QToolButton, "newFolderButton"))
        hands.key(dialog.focusWidget(), Qt.Key.Key_Return)  # its name is all right
        hands.press("Choose")(dialog)

    hands.meanwhile(new_folder, hands.press("Close"))  # DXF and lists
    hands.bar("export")
    qtbot.waitUntil(lambda: not hands.left and QApplication.activeModalWidget() is None, timeout=EXPORT_MS)
    package = next(folder for folder in tmp_path.iterdir() if (folder / "manifest.json").is_file())
    assert list((package / "drawing").glob("*.dxf"))
    assert list((package / "cnc").glob("*.dxf"))
    assert (package / "lists" / "materials.csv").is_file()

    print(f"steps: {hands.steps}")
    assert hands.steps < MOST_STEPS


def design(window: Window) -> dict:
    return tomllib.loads(window.piece.state.text)
