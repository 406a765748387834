"""For everybody: names for the screen reader, a way for the keyboard, room for longer words, other scales and looks."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, QTranslator
from PySide6.QtGui import QImage, QKeySequence
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSlider,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QMenuBar,
    QPlainTextEdit,
    QScrollBar,
    QTabBar,
    QToolButton,
    QWidget,
)

from shopdraw.editor.canvas import Canvas
from shopdraw.editor.doing import Doing
from shopdraw.editor.look import DARK, LIGHT, Colours, dress
from shopdraw.editor.window import Window

CONTROLS = (QAbstractButton, QLineEdit, QComboBox, QAbstractSlider, QAbstractItemView, QPlainTextEdit, Canvas)
WORDS_LONGER = 1.4
LEAST_CONTRAST = 4.5
"""Of words to their ground. Source: WCAG 2.2, success criterion 1.4.3."""


def own_controls(window: QWidget) -> list[QWidget]:
    """Every control that a person can use; Qt's own parts of a control belong to it."""
    return [
        widget
        for widget in window.findChildren(QWidget)
        if isinstance(widget, CONTROLS) and not isinstance(widget, QScrollBar) and not _part_of_another(widget)
    ]


def _part_of_another(widget: QWidget) -> bool:
    parent = widget.parent()
    while isinstance(parent, QObject):
        if isinstance(parent, QComboBox | QAbstractItemView | QLineEdit | QTabBar | QMenuBar):
            return True
        parent = parent.parent()
    return isinstance(widget, QToolButton) and widget.objectName() == "qt_toolbar_ext_button"


def test_every_control_has_a_name_for_the_screen_reader(open_desk: Window) -> None:
    doing: Doing = open_desk.doing
    doing.picture()
    doing.help()
    nameless = [
        f"{type(widget).__name__} {widget.objectName()}"
        for top in (open_desk, *doing.open_windows)
        for widget in own_controls(top)
        if not (widget.accessibleName() or (isinstance(widget, QAbstractButton) and widget.text()))
    ]
    assert nameless == []


def test_tab_comes_to_every_control_in_sight_and_back(open_desk: Window, qtbot) -> None:
    open_desk.activateWindow()
    open_desk.canvas.setFocus()
    wanted = {
        widget
        for widget in own_controls(open_desk)
        if widget.isVisible() and widget.isEnabled() and widget.focusPolicy().value & 1
    }
    seen: set[QWidget] = set()
    widget = open_desk.canvas
    for _ in range(20_000):
        widget = widget.nextInFocusChain()
        seen.add(widget)
        if widget is open_desk.canvas:
            break
    assert widget is open_desk.canvas
    assert wanted <= seen | {open_desk.canvas}


def test_shortcuts_are_there_and_none_is_given_twice(open_desk: Window) -> None:
    keys = [
        shortcut.toString()
        for action in open_desk.actions_by_key.values()
        for shortcut in action.shortcuts()
        if not shortcut.isEmpty()
    ]
    assert len(keys) == len(set(keys))
    for key, standard in (
        ("save", "Save"),
        ("undo", "Undo"),
        ("redo", "Redo"),
        ("open", "Open"),
        ("help", "HelpContents"),
    ):
        bindings = QKeySequence.keyBindings(getattr(QKeySequence.StandardKey, standard))
        assert open_desk.actions_by_key[key].shortcuts() == bindings


class Stretched(QTranslator):
    """A made-up language with words 40 % longer."""

    def translate(self, context: str, source: str, disambiguation: str | None = None, n: int = -1) -> str:
        extra = max(1, round(len(source) * (WORDS_LONGER - 1)))
        return source + ("åx" * extra)[:extra]

    def isEmpty(self) -> bool:  # noqa: N802
        return False


def cut_off(window: QWidget) -> list[str]:
    """Buttons and labels in sight whose words are wider or higher than they are."""
    found = []
    for widget in window.findChildren(QWidget):
        if not widget.isVisible() or widget.width() == 0:
            continue
        if isinstance(widget, QLabel) and widget.text() and not widget.pixmap().isNull():
            continue
        if isinstance(widget, QLabel) and widget.text():
            needs = widget.heightForWidth(widget.width()) if widget.wordWrap() else widget.sizeHint().height()
            if needs > widget.height() + 2 or (
                not widget.wordWrap() and widget.sizeHint().width() > widget.width() + 2
            ):
                found.append(f"label {widget.text()[:50]!r} {widget.size()} {widget.sizeHint()}")
        elif isinstance(widget, QAbstractButton) and widget.text() and not _part_of_another(widget):
            needs = widget.fontMetrics().boundingRect(0, 0, 2000, 2000, 0, widget.text())
            if needs.width() > widget.width() or needs.height() > widget.height():
                found.append(f"{type(widget).__name__} {widget.text()!r} {widget.width()} < {needs.width()}")
    return found


def test_no_words_are_cut_off_in_a_language_with_longer_words_at_125_percent(
    make_window, desk: Path, qapp, qtbot
) -> None:
    longer = Stretched()
    font = qapp.font()
    size = font.pointSizeF()
    qapp.installTranslator(longer)
    font.setPointSizeF(size * 1.25)
    qapp.setFont(font)
    try:
        window: Window = make_window()
        window.resize(1440, 900)
        window.show()
        qtbot.waitExposed(window)
        assert cut_off(window) == []
        window.open_file(desk)
        for tab in range(window.work.side.count()):
            window.work.side.setCurrentIndex(tab)
            QApplication.processEvents()
            window.grab()
            assert cut_off(window) == [], window.work.side.tabText(tab)
    finally:
        qapp.removeTranslator(longer)
        font.setPointSizeF(size)
        qapp.setFont(font)


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize(
    ("words", "ground"),
    [
        ("words", "panel"),
        ("words", "field"),
        ("dim", "field"),
        ("dim", "panel"),
        ("figure", "paper"),
        ("ink", "paper"),
        ("field", "accent"),
        ("wrong", "panel"),
    ],
)  # fmt: skip
def test_words_stand_out_from_their_ground(colours: Colours, words: str, ground: str) -> None:
    one, other = (relative_luminance(colours, name) for name in (words, ground))
    assert (max(one, other) + 0.05) / (min(one, other) + 0.05) >= LEAST_CONTRAST


def relative_luminance(colours: Colours, name: str) -> float:
    """Source: WCAG 2.2, definition of relative luminance."""
    parts = colours.colour(name).getRgbF()[:3]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_nothing_is_magenta(colours: Colours) -> None:
    for name in Colours.__slots__:
        red, green, blue = colours.colour(name).getRgb()[:3]
        assert not (red > green + 60 and blue > green + 60), name


def test_dark_is_dark_all_over(open_desk: Window, qapp: QApplication) -> None:
    open_desk.actions_by_key["dark"].trigger()
    qapp.processEvents()
    picture = open_desk.grab().toImage()
    bright = sum(
        picture.pixelColor(x, y).lightness() > 140
        for x in range(0, picture.width(), 7)
        for y in range(0, picture.height(), 7)
    )
    dress(qapp, LIGHT)
    assert bright < picture.width() * picture.height() / 49 * 0.12


SHOT = """
import sys
from pathlib import Path
from PySide6.QtCore import QSettings
from shopdraw.editor.start import application
from shopdraw.editor.window import Window
app = application()
folder = Path(sys.argv[2])
window = Window(apart=False, settings=QSettings(str(folder / "memory.ini"), QSettings.Format.IniFormat), folder=folder)
window.resize(1280, 820)
window.show()
window.open_file(Path(sys.argv[1]))
app.processEvents()
picture = window.grab()
picture.save(str(folder / "shot.png"))
handle = window.canvas.handle_place(window.canvas.handle_named("case.width@front"))
at = window.canvas.mapTo(window, handle.toPoint())
print(picture.devicePixelRatio(), at.x(), at.y(), flush=True)
import os
os._exit(0)
"""


@pytest.mark.parametrize("scale", ["1", "1.25", "1.5", "2"])
def test_case_70_handles_stand_where_they_are_painted_at_any_scale(desk: Path, tmp_path: Path, scale: str) -> None:
    done = subprocess.run(
        [sys.executable, "-c", SHOT, str(desk), str(tmp_path)],
        env={**os.environ, "QT_SCALE_FACTOR": scale, "QT_QPA_PLATFORM": "offscreen"},
        cwd=Path(__file__).parents[2], capture_output=True, text=True, check=True, timeout=120,
    )  # fmt: skip
    ratio, x, y = (float(word) for word in done.stdout.split())
    assert ratio == float(scale)
    picture = QImage(str(tmp_path / "shot.png"))
    assert picture.width() == round(1280 * ratio)
    accent = LIGHT.colour("accent")
    seen = picture.pixelColor(round(x * ratio), round(y * ratio))
    assert abs(seen.red() - accent.red()) + abs(seen.green() - accent.green()) + abs(seen.blue() - accent.blue()) < 30
