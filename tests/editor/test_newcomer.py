"""A newcomer's whole job through the window alone: each click, drag and keystroke is a real event, and is counted."""

from __future__ import annotations

import tomllib
from pathlib import Path

from pypdf import PdfReader
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QAction
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QWidget

from shopdraw.editor.window import Window
from tests.editor import gestures
from tests.editor.conftest import Answers

MOST_STEPS = 40
EXPORT_MS = 240_000


class Hands:
    """Two hands and a count: a click, a drag, a key pressed are one each; a typed size is a keystroke a letter."""

    def __init__(self, window: Window, qtbot) -> None:
        self.window = window
        self.qtbot = qtbot
        self.steps = 0

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
        """A menu opened and a line of it chosen: two clicks, the second one made here by the action's own signal."""
        self.steps += 2
        bar = self.window.menuBar()
        title = next(a for a in bar.actions() if a.menu() is not None and action in a.menu().actions())
        place = bar.actionGeometry(title).center()
        self.qtbot.mouseClick(bar, Qt.MouseButton.LeftButton, pos=QPoint(place))
        action.trigger()
        title.menu().close()

    def bar(self, key: str) -> None:
        """A button on the bar."""
        button = self.window.bar.widgetForAction(self.window.actions_by_key[key])
        self.click(button)


def test_a_newcomer_gets_from_nothing_to_templates_and_lists_in_under_forty_steps(
    window: Window, answers: Answers, tmp_path: Path, qtbot
) -> None:
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

    printed = tmp_path / "templates.pdf"  # the side's template

    def to_file(printer: QPrinter, _parent: QWidget | None) -> bool:
        printer.setOutputFileName(str(printed))
        return True

    window.doing.choose_printer = to_file
    answers.ready = ["1"]
    hands.menu(window.actions_by_key["print"])
    hands.steps += 2  # "Templates at true size", and the system's own print button
    assert len(PdfReader(printed).pages) >= 4

    answers.ready = [str(tmp_path / "package"), ""]  # DXF and lists
    hands.bar("export")
    hands.steps += 2  # the folder, and closing the note at the end
    qtbot.waitUntil(lambda: not answers.ready, timeout=EXPORT_MS)
    assert list((tmp_path / "package" / "drawing").glob("*.dxf"))
    assert list((tmp_path / "package" / "cnc").glob("*.dxf"))
    assert (tmp_path / "package" / "lists" / "materials.csv").is_file()

    print(f"steps: {hands.steps}")
    assert hands.steps < MOST_STEPS


def design(window: Window) -> dict:
    return tomllib.loads(window.piece.state.text)
