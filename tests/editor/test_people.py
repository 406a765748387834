"""For everybody: names for the screen reader, a way for the keyboard, room for longer words, other scales and looks."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QKeySequence
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QCheckBox,
    QDialog,
    QPushButton,
    QRadioButton,
    QStyle,
    QStyleOptionButton,
    QToolBar,
    QToolButton,
    QWidget,
)

from shopdraw.editor.look import DARK, LIGHT, Colours, dress
from shopdraw.editor.state import state_of
from shopdraw.editor.tongue import LANGUAGES
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_names, sample_path
from tests.editor.long_words import LongWords, untranslated
from tests.editor.test_keyboard import contrast
from tests.editor.walking import cut_off, every_state, own_controls, words_of

LEAST_CONTRAST = 4.5
"""Of words to their ground. Source: WCAG 2.2, success criterion 1.4.3."""
SCREEN = (1440, 900)
"""A small laptop's, in its own pixels; at 125 % the window has four fifths of them each way."""


@pytest.fixture
def long_words(qapp: QApplication) -> Iterator[LongWords]:
    longer = LongWords()
    qapp.installTranslator(longer)
    yield longer
    qapp.removeTranslator(longer)


def test_every_control_in_every_state_has_a_name_for_the_screen_reader(
    window: Window, desk: Path, tmp_path: Path
) -> None:
    window.show()
    nameless = {
        f"{state}: {type(widget).__name__} {widget.objectName()}"
        for state, top in every_state(window, desk, tmp_path)
        for widget in own_controls(top)
        if not (widget.accessibleName() or (isinstance(widget, QAbstractButton) and widget.text()))
    }
    assert nameless == set()


def test_every_button_says_what_it_does_when_pointed_at(window: Window, desk: Path, tmp_path: Path) -> None:
    window.show()
    silent = {
        f"{state}: {widget.text()}"
        for state, top in every_state(window, desk, tmp_path)
        for widget in own_controls(top)
        if isinstance(widget, QPushButton | QToolButton) and not widget.toolTip() and not isinstance(top, QDialog)
    }
    assert silent == set()


def test_tab_comes_to_every_control_in_every_state(window: Window, desk: Path, tmp_path: Path, qtbot) -> None:
    window.show()
    for state, top in every_state(window, desk, tmp_path):
        top.show()
        top.activateWindow()
        qtbot.waitExposed(top)
        wanted = {
            widget
            for widget in own_controls(top)
            if widget.isVisible() and widget.isEnabled() and not isinstance(widget.parent(), QToolBar)
        }
        no_way = [w.accessibleName() for w in wanted if not w.focusPolicy().value & Qt.FocusPolicy.TabFocus.value]
        assert no_way == [], state
        missed = wanted - tabbed(top, qtbot)
        assert [f"{type(w).__name__} {w.accessibleName()}" for w in missed] == [], state


def tabbed(top: QWidget, qtbot) -> set[QWidget]:
    """Every widget that gets the focus when Tab is pressed again and again."""
    seen: set[QWidget] = set()
    first = None
    for _ in range(1500):
        widget = top.focusWidget() or top
        qtbot.keyClick(widget, Qt.Key.Key_Tab)
        widget = top.focusWidget()
        if widget is None:
            break
        if first is None and widget in seen:
            first = widget
            seen_at_turn = len(seen)
        elif widget is first and len(seen) == seen_at_turn:
            break
        seen.add(widget)
    return seen


def test_what_stands_on_the_bar_stands_in_a_menu_too(open_desk: Window) -> None:
    in_menus = {action for title in open_desk.menuBar().actions() for action in title.menu().actions()}
    bar = [
        a
        for a in open_desk.bar.actions()
        if not a.isSeparator() and open_desk.bar.widgetForAction(a) is not open_desk.variants
    ]
    assert [action.text() for action in bar if action not in in_menus] == []


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


@pytest.mark.parametrize("percent", [100, 125, 150, 200])
def test_no_words_are_cut_off_in_the_longest_language(
    make_window, desk: Path, tmp_path: Path, long_words: LongWords, percent: int, qtbot
) -> None:
    window: Window = make_window()
    # A screen at 200 % is one of twice the pixels: nobody reads 720 x 450.
    screen = SCREEN if percent < 150 else (1920, 1080) if percent == 150 else (2560, 1600)
    room = tuple(side * 100 // percent for side in screen)
    window.resize(*room)
    window.show()
    qtbot.waitExposed(window)
    lacking: dict[str, list[str]] = {}
    for state, top in every_state(window, desk, tmp_path):
        top.show()
        QApplication.processEvents()
        top.grab()
        lacking[state] = cut_off(top)
    assert {state: found for state, found in lacking.items() if found} == {}
    assert (window.width(), window.height()) == room


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_every_text_goes_through_the_translators(
    make_window, desk: Path, tmp_path: Path, long_words: LongWords, colours: Colours, qapp
) -> None:
    window: Window = make_window()
    dress(qapp, colours)
    window.show()
    plain: dict[str, set[str]] = {}
    known = words_of_pieces(desk)
    for state, top in every_state(window, desk, tmp_path):
        known |= words_in(f"{window.piece.state.text} {window.doing._shop_path()}")
        for made in window.work.sheet_sets:
            known |= words_in(" ".join((made.title, *(sheet.title for sheet in made.sheets))))
        for words in words_of(top):
            left = set(untranslated(words)) - known
            if left:
                plain.setdefault(words[:80], set()).add(state)
    dress(qapp, LIGHT)
    assert plain == {}


def words_of_pieces(file: Path) -> set[str]:
    """What comes from piece files and their drawings, and names of keys: these have no translation."""
    names = "Ctrl Shift Alt Del Ins Home End Tab Esc Backspace Return shopdraw piece title words wide old png lid case"
    names += " left right it can be so Untitled"  # what the walk itself typed, and a piece that has no title yet
    known = words_in(" ".join((names, str(file), *(word for _, word in LANGUAGES))))
    for name in sample_names():
        state = state_of(sample_path(name).read_text(encoding="utf-8"), name)
        known |= words_in(state.text)
        for board in state.assembly.boards if state.assembly else ():
            known |= words_in(" ".join((board.id, board.name, *board.cut_for)))
    return known


def words_in(text: str) -> set[str]:
    return set(re.findall(r"[^\W\d_]{3,}", text))


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
from PySide6.QtCore import QPointF, QSettings
from shopdraw.editor.start import application
from shopdraw.editor.window import Window
from tests.editor import gestures
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
taken = []
window.canvas.grip_taken.connect(lambda handle, _point: taken.append(handle.id))
for beside in (11, 17):
    gestures.click(window.canvas, handle + QPointF(beside, 0))
print(picture.devicePixelRatio(), at.x(), at.y(), len(taken), flush=True)
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
    ratio, x, y, taken = (float(word) for word in done.stdout.split())
    assert ratio == float(scale)
    assert taken == 1  # 11 pixels beside it a hand takes hold, 17 beside it no more, whatever the scale
    picture = QImage(str(tmp_path / "shot.png"))
    assert picture.width() == round(1280 * ratio)
    accent = LIGHT.colour("accent")
    seen = picture.pixelColor(round(x * ratio), round(y * ratio))
    assert abs(seen.red() - accent.red()) + abs(seen.green() - accent.green()) + abs(seen.blue() - accent.blue()) < 30


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_boxes_and_rounds_stand_out_from_the_panel_and_their_marks_from_them(
    qapp: QApplication, colours: Colours, qtbot
) -> None:
    """Of signs that carry meaning, 3 to 1 to what is beside them. Source: WCAG 2.2, success criterion 1.4.11."""
    dress(qapp, colours)
    for kind in (QRadioButton, QCheckBox):
        button = kind("words")
        qtbot.addWidget(button)
        button.resize(button.sizeHint())
        seen = []
        for on in (False, True):
            button.setAutoExclusive(False) if kind is QRadioButton else None
            button.setChecked(on)
            picture = button.grab().toImage()
            option = QStyleOptionButton()
            button.initStyleOption(option)
            part = QStyle.SubElement.SE_RadioButtonIndicator if kind is QRadioButton else (
                QStyle.SubElement.SE_CheckBoxIndicator
            )  # fmt: skip
            place = button.style().subElementRect(part, option, button)
            seen.append([picture.pixelColor(x, y) for x in range(place.left(), place.right() + 1)
                         for y in range(place.top(), place.bottom() + 1)])  # fmt: skip
        panel = colours.colour("panel")
        edge = max(contrast(colour, panel) for colour in seen[0])
        assert edge > (3.0 if colours is DARK else 1.2), kind
        empty = seen[0][len(seen[0]) // 2]
        assert max(contrast(colour, empty) for colour in seen[1]) > 3.0, kind
    dress(qapp, LIGHT)
