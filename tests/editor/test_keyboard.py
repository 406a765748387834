"""The whole job without a mouse: every key is a real event, and the window always shows where the keyboard is."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QAbstractButton, QApplication, QWidget

from shopdraw.editor.state import Setting
from shopdraw.editor.window import Window
from tests.editor.conftest import Answers

EXPORT_MS = 240_000
MOST_TABS = 400
SEEN_PIXELS = 12
"""So many pixels must change for a person to see where the keyboard has gone."""


class Keyboard:
    """Keys, pressed wherever the focus is."""

    def __init__(self, window: Window, qtbot) -> None:
        self.window = window
        self.qtbot = qtbot

    @property
    def at(self) -> QWidget:
        return self.window.focusWidget() or self.window

    def press(self, *keys: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        for key in keys:
            self.qtbot.keyClick(self.at, key, held)

    def control(self, key: Qt.Key, *, shift: bool = False) -> None:
        more = Qt.KeyboardModifier.ShiftModifier if shift else Qt.KeyboardModifier.NoModifier
        self.press(key, held=Qt.KeyboardModifier.ControlModifier | more)

    def type(self, words: str) -> None:
        self.qtbot.keyClicks(self.at, words)

    def tab_to(self, wanted: QWidget) -> None:
        for _ in range(MOST_TABS):
            if self.at is wanted:
                return
            self.press(Qt.Key.Key_Tab)
        raise AssertionError(f"Tab never comes to {wanted.accessibleName()}")

    def tab_to_handle(self, name: str) -> None:
        canvas = self.window.canvas
        self.control(Qt.Key.Key_1)
        assert self.at is canvas
        canvas.choose_handle("")
        for _ in range(MOST_TABS):
            if canvas.chosen_handle == name:
                return
            self.press(Qt.Key.Key_Tab)
        raise AssertionError(f"Tab never comes to {name}")


@pytest.fixture
def keyboard(window: Window, qtbot) -> Keyboard:
    window.show()
    window.activateWindow()
    qtbot.waitExposed(window)
    return Keyboard(window, qtbot)


@pytest.fixture
def at_desk(keyboard: Keyboard, desk: Path) -> Keyboard:
    keyboard.window.open_file(desk)
    keyboard.window.grab()
    return keyboard


def width(window: Window) -> float:
    assert window.piece.state.assembly is not None
    return window.piece.state.assembly.width


def test_a_desk_from_nothing_to_a_package_without_a_mouse(
    keyboard: Keyboard, answers: Answers, tmp_path: Path, qtbot
) -> None:
    window, press = keyboard.window, keyboard.press
    work, piece = window.work, window.piece

    keyboard.tab_to(window.start.buttons["pilot-station-desk"])  # a new desk
    press(Qt.Key.Key_Space)
    assert window.pages.currentWidget() is work
    assert keyboard.at is window.canvas
    window.grab()
    begun = piece.state.text

    keyboard.tab_to_handle("case.width@front")  # moves a handle
    press(Qt.Key.Key_Right, Qt.Key.Key_Right)
    assert width(window) == 650  # two steps of 5 mm
    press(Qt.Key.Key_Right, held=Qt.KeyboardModifier.ShiftModifier)
    assert width(window) == 650.5  # and a fine one
    press(Qt.Key.Key_Escape)
    assert piece.state.text == begun

    press(Qt.Key.Key_Return)  # types into its dimension
    assert keyboard.at is work.entry.line
    keyboard.type("1/2 of height + 230 mm")
    press(Qt.Key.Key_Return)
    assert width(window) == 985 / 2 + 230
    assert keyboard.at is window.canvas

    keyboard.control(Qt.Key.Key_D, shift=True)  # a drawer more
    assert tomllib.loads(piece.state.text)["opening"]["bank"]["divide"]["keys"] == ["1", "2", "3", "4"]

    keyboard.control(Qt.Key.Key_3)  # an input in the form, by its name
    keyboard.tab_to(work.form.search)
    keyboard.type("dado depth")
    keyboard.tab_to(work.form.widget_for("case.dado_depth"))
    keyboard.type("10")
    press(Qt.Key.Key_Return)
    assert tomllib.loads(piece.state.text)["case"]["dado_depth"] == 10

    keyboard.control(Qt.Key.Key_2)  # a finding and its right value
    assert keyboard.at is work.findings.list
    for _ in range(work.findings.model.rowCount()):
        if work.findings.set_it.isVisible():
            break
        press(Qt.Key.Key_Down)
    assert window.canvas.lit
    keyboard.tab_to(work.findings.set_it)
    press(Qt.Key.Key_Space)
    assert tomllib.loads(piece.state.text)["case"]["dado_depth"] != 10

    keyboard.control(Qt.Key.Key_3)  # the boards, then the sheets
    press(Qt.Key.Key_Right)
    keyboard.tab_to(work.boards.table)
    press(Qt.Key.Key_Down)
    assert work.boards.board
    assert window.canvas.lit == {work.boards.board}
    keyboard.control(Qt.Key.Key_3)
    while work.side.currentWidget() is not work.sheets:
        press(Qt.Key.Key_Right)
    qtbot.waitUntil(lambda: work.sheets.pages.count() > 1, timeout=EXPORT_MS)
    keyboard.tab_to(work.sheets.pages)
    press(Qt.Key.Key_Down)
    assert work.sheets.pages.currentIndex() == 1

    answers.ready = [str(tmp_path / "package"), ""]  # the package
    keyboard.control(Qt.Key.Key_E)
    qtbot.waitUntil(lambda: not answers.ready, timeout=EXPORT_MS)
    assert (tmp_path / "package" / "manifest.json").is_file()

    answers.ready = [str(tmp_path / "mine.piece")]  # saves, takes all back, does all again
    keyboard.control(Qt.Key.Key_S)
    saved = (tmp_path / "mine.piece").read_bytes()
    while piece.undo.canUndo():
        keyboard.control(Qt.Key.Key_Z)
    assert piece.state.text == begun
    while piece.undo.canRedo():
        keyboard.control(Qt.Key.Key_Z, shift=True)
    assert piece.state.text.encode() == saved


def test_presses_of_an_arrow_key_are_one_undo_step(at_desk: Keyboard) -> None:
    piece = at_desk.window.piece
    at_desk.tab_to_handle("case.width@front")
    begun = piece.state.text
    at_desk.press(*[Qt.Key.Key_Right] * 4)
    assert width(at_desk.window) == pytest.approx((36 + 1) * 25.4)  # four steps of 1/4 in
    assert piece.undo.count() == 1
    assert ("moved by +1", False) in at_desk.window.canvas.label  # from where the keys began
    at_desk.press(Qt.Key.Key_Tab)
    at_desk.press(Qt.Key.Key_Up)
    assert piece.undo.count() == 2  # another handle, another step
    piece.undo.undo()
    piece.undo.undo()
    assert piece.state.text == begun


def test_there_and_back_again_is_no_step(at_desk: Keyboard) -> None:
    at_desk.tab_to_handle("case.width@front")
    at_desk.press(Qt.Key.Key_Right)
    at_desk.press(Qt.Key.Key_Left)
    assert at_desk.window.piece.undo.count() == 0


def test_escape_gives_up_what_the_keys_did_and_then_leaves_the_handle(at_desk: Keyboard) -> None:
    window = at_desk.window
    begun = window.piece.state.text
    at_desk.tab_to_handle("slant.writing_height@front")
    at_desk.press(Qt.Key.Key_Up, Qt.Key.Key_Up)
    assert window.piece.state.text != begun
    assert window.canvas.label  # the size runs along beside the handle
    at_desk.press(Qt.Key.Key_Escape)
    assert window.piece.state.text == begun
    assert window.canvas.label == ()
    assert window.canvas.chosen_handle == "slant.writing_height@front"
    at_desk.press(Qt.Key.Key_Escape)
    assert window.canvas.chosen_handle == ""


def test_escape_leaves_what_was_done_before_the_keys(at_desk: Keyboard) -> None:
    window = at_desk.window
    at_desk.control(Qt.Key.Key_D, shift=True)
    with_drawer = window.piece.state.text
    at_desk.tab_to_handle("case.width@front")
    at_desk.press(Qt.Key.Key_Right)
    at_desk.press(Qt.Key.Key_Escape)
    assert window.piece.state.text == with_drawer
    at_desk.press(Qt.Key.Key_Escape)
    assert window.piece.state.text == with_drawer


def test_a_limit_is_told_to_the_keyboard_too(at_desk: Keyboard) -> None:
    window = at_desk.window
    window.piece.set_values((Setting("slant.writing_height", "39 3/4"),), "Higher")
    at_desk.tab_to_handle("slant.writing_height@front")
    for _ in range(20):
        before = window.piece.state.text
        at_desk.press(Qt.Key.Key_Up)
        if window.piece.state.text == before:
            break
    assert any("Stops here" in words for words, _ in window.canvas.label)
    assert window.statusBar().currentMessage()


def test_every_handle_can_be_reached_and_moved(at_desk: Keyboard) -> None:
    window = at_desk.window
    for handle in window.canvas.scene.handles:
        at_desk.tab_to_handle(handle.id)
        before = window.piece.state.text
        ways = (Qt.Key.Key_Right, Qt.Key.Key_Left) if handle.along[0] else (Qt.Key.Key_Up, Qt.Key.Key_Down)
        for key in ways:
            at_desk.press(key, held=Qt.KeyboardModifier.ShiftModifier)
            if window.piece.state.text != before:
                break
        assert window.piece.state.text != before, handle.id
        at_desk.press(Qt.Key.Key_Escape)
        assert window.piece.state.text == before, handle.id


def test_one_sees_where_the_keyboard_is(at_desk: Keyboard) -> None:
    """Tab is pressed once round the window; what has the focus looks another way than without it."""
    window = at_desk.window
    hidden: list[str] = []
    for tab in range(window.work.side.count()):
        window.work.side.setCurrentIndex(tab)
        at_desk.control(Qt.Key.Key_1)
        window.canvas.choose_handle("")
        seen: set[tuple[int, str]] = set()
        before = window.grab().toImage()
        for _ in range(MOST_TABS):
            at_desk.press(Qt.Key.Key_Tab)
            QApplication.processEvents()
            after = window.grab().toImage()
            there, chosen = at_desk.at, window.canvas.chosen_handle
            if (id(there), chosen) in seen:
                break
            seen.add((id(there), chosen))
            if changed(before, after, place_of(there, window)) < SEEN_PIXELS:
                hidden.append(f"{type(there).__name__} {there.accessibleName() or chosen}")
            before = after
        assert len(seen) > 10
    assert hidden == []


def place_of(widget: QWidget, window: QWidget) -> QRect:
    # The ring may stand round the widget.
    return QRect(widget.mapTo(window, QPoint(0, 0)), widget.size()).adjusted(-4, -4, 4, 4) & window.rect()


def changed(before: QImage, after: QImage, place: QRect) -> int:
    """How many pixels of a place stand out from what they were."""
    one, other = (image.copy(place).convertToFormat(QImage.Format.Format_RGB32) for image in (before, after))
    if one == other:
        return 0
    count = 0
    for y in range(one.height()):
        for x in range(one.width()):
            if one.pixel(x, y) != other.pixel(x, y) and contrast(one.pixelColor(x, y), other.pixelColor(x, y)) > 1.5:
                count += 1
                if count >= SEEN_PIXELS:
                    return count
    return count


def contrast(one, other) -> float:
    """Source: WCAG 2.2, definitions of contrast ratio and relative luminance."""
    lights = sorted(luminance(colour) for colour in (one, other))
    return (lights[1] + 0.05) / (lights[0] + 0.05)


def luminance(colour) -> float:
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in colour.getRgbF()[:3]]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def test_buttons_answer_to_the_space_bar(at_desk: Keyboard) -> None:
    window = at_desk.window
    window.work.side.setCurrentWidget(window.work.proportions)
    golden = window.work.proportions.buttons["golden section"]
    nothing = window.work.proportions.buttons[""]
    at_desk.control(Qt.Key.Key_3)
    at_desk.tab_to(nothing)
    for _ in range(10):
        if golden.isChecked():
            break
        at_desk.press(Qt.Key.Key_Down)
    assert isinstance(golden, QAbstractButton)
    assert window.work.layers.overlay == "golden section"


def test_the_sheet_is_looked_at_with_keys(at_desk: Keyboard) -> None:
    canvas = at_desk.window.canvas
    at_desk.control(Qt.Key.Key_1)
    canvas.choose_handle("")
    zoom = canvas.sight.zoom
    at_desk.control(Qt.Key.Key_Plus)
    assert canvas.sight.zoom > zoom
    before = canvas.handle_place(canvas.scene.handles[0])
    at_desk.press(Qt.Key.Key_Right)
    assert canvas.handle_place(canvas.scene.handles[0]) != before
    at_desk.control(Qt.Key.Key_0)
    assert canvas.sight.zoom == zoom


def test_the_picture_is_turned_and_opened_with_keys(at_desk: Keyboard, qtbot) -> None:
    at_desk.control(Qt.Key.Key_I)
    picture = at_desk.window.doing.picture_window
    assert picture is not None
    turned = picture.view.round_deg
    qtbot.keyClick(picture.view, Qt.Key.Key_Right)
    assert picture.view.round_deg != turned
    qtbot.keyClick(picture.sliders["lid"], Qt.Key.Key_End)
    assert picture.sliders["lid"].value() == 100
