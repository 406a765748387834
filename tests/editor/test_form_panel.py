"""The form: every input of the typed Design can be reached, read about and set."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from typing import get_args

import pytest
from pydantic import BaseModel
from PySide6.QtCore import QLocale, QPoint, QRect, Qt, QTimer
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QComboBox, QLineEdit, QMenu

from shopdraw.editor.field import form_of
from shopdraw.editor.keyed import keyed_tables
from shopdraw.editor.shown_size import shown_for
from shopdraw.editor.state import Setting
from shopdraw.editor.window import Window
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from tests.editor.test_canvas import value


def plain_inputs(model: type[BaseModel], path: tuple[str, ...] = ()) -> Iterator[str]:
    """Addresses of all inputs outside keyed tables, walked here by the model's own schema."""
    for name, info in model.model_fields.items():
        kinds = [info.annotation, *get_args(info.annotation)]
        table = next((k for k in kinds if isinstance(k, type) and issubclass(k, BaseModel)), None)
        keyed = getattr(info.annotation, "__origin__", None) is dict
        if table is not None and not keyed:
            yield from plain_inputs(table, (*path, name))
        elif table is None and not keyed and (path or name != "format"):
            yield ".".join((*path, name))


def test_every_input_of_the_design_has_a_field(open_desk: Window) -> None:
    design = open_desk.piece.state.design
    assert design is not None
    offered = {f.address for group in form_of(open_desk.piece.state, shown_for(design)) for f in group.fields}
    assert set(plain_inputs(Design)) <= offered
    assert {"stock.primary.thickness", "opening.bank.divide.keys", "drawer.2.front", "use.lid"} <= offered


@pytest.mark.parametrize("model", [Design, Shop])
def test_every_input_has_an_explanation(model: type[BaseModel]) -> None:
    """Of the piece file and of the shop file, in plain tables and in keyed ones."""
    seen: list[str] = []
    silent = [address for address, words in explained(model, (), seen) if not words]
    assert [address for address in silent if address != "format"] == []
    assert len(seen) > (200 if model is Design else 40)


def explained(model: type[BaseModel], path: tuple[str, ...], seen: list[str]) -> Iterator[tuple[str, str]]:
    """Address and explanation of every input, keyed tables by a key of their own."""
    for name, info in model.model_fields.items():
        here = (*path, name)
        kinds = [info.annotation, *get_args(info.annotation)]
        table = next((kind for kind in kinds if isinstance(kind, type) and issubclass(kind, BaseModel)), None)
        if table is not None:
            yield from explained(table, here, seen)
        else:
            seen.append(".".join(here))
            yield ".".join(here), info.description or ""


def test_a_field_shows_what_was_typed_and_its_default(open_desk: Window) -> None:
    width, fit = (open_desk.work.form.widget_for(a) for a in ("case.width", "case.fit"))
    assert isinstance(width, QLineEdit)
    assert isinstance(fit, QLineEdit)
    assert width.text() == "36"
    assert fit.text() == ""
    assert fit.placeholderText() == "0.1 mm"


@pytest.mark.parametrize(
    ("address", "typed", "keys", "kept"),
    [
        ("case.width", "37 1/4", ("case", "width"), "37 1/4"),
        ("case.width", "1/2 of height + 10", ("case", "width"), "30 3/4"),
        ("slant.writing_height", "30", ("slant", "writing_height"), 30),
        ("climate.wet", "11.5", ("climate", "wet"), 11.5),
        ("lid.hinges", "2", ("lid", "hinges"), 2),
        ("piece.title", "Desk for the pilot", ("piece", "title"), "Desk for the pilot"),
        ("drawer.2.lip", "3/8", ("drawer", "2", "lip"), "3/8"),
    ],
)
def test_typing_into_a_field_sets_its_input(open_desk: Window, qtbot, address: str, typed: str, keys, kept) -> None:
    line = open_desk.work.form.widget_for(address)
    assert isinstance(line, QLineEdit)
    line.setText(typed)
    line.editingFinished.emit()
    assert value(open_desk, *keys) == kept
    open_desk.piece.undo.undo()
    assert not open_desk.piece.unsaved


def test_an_empty_field_goes_back_to_its_default(open_desk: Window) -> None:
    line = open_desk.work.form.widget_for("drawer.lip")
    assert isinstance(line, QLineEdit)
    line.setText("")
    line.editingFinished.emit()
    assert value(open_desk, "drawer", "lip") is None


def test_a_choice_sets_its_input_and_its_first_line_takes_it_out(open_desk: Window) -> None:
    box = open_desk.work.form.widget_for("slant.hinge_edge")
    seat = open_desk.work.form.widget_for("slant.seat")
    assert isinstance(box, QComboBox)
    assert isinstance(seat, QComboBox)
    seat.setCurrentIndex(seat.findData("on"))
    seat.activated.emit(seat.currentIndex())
    assert value(open_desk, "slant", "seat") == "on"
    seat = open_desk.work.form.widget_for("slant.seat")
    assert isinstance(seat, QComboBox)
    seat.setCurrentIndex(0)
    seat.activated.emit(0)
    assert value(open_desk, "slant", "seat") is None


@pytest.mark.parametrize(
    ("address", "typed"), [("case.width", "31 -1/2"), ("lid.hinges", "2.5"), ("case.width", ""), ("case.width", "1")]
)
def test_what_cannot_be_is_told_and_put_back(open_desk: Window, address: str, typed: str) -> None:
    before = open_desk.piece.state.text
    line = open_desk.work.form.widget_for(address)
    assert isinstance(line, QLineEdit)
    was = line.text()
    line.setText(typed)
    line.editingFinished.emit()
    assert open_desk.piece.state.text == before
    assert line.text() == was
    assert len(open_desk.work.form._about.text()) > 20


def test_case_35_a_comma_typed_on_a_german_system_is_a_point_in_the_file(make_window, metric_desk) -> None:
    german = make_window(QLocale(QLocale.Language.German, QLocale.Country.Germany))
    german.open_file(metric_desk)
    line = german.work.form.widget_for("stock.primary.thickness")
    assert isinstance(line, QLineEdit)
    for typed, kept in (("20,5", "thickness = 20.5"), ("18,3 mm", 'thickness = "18,3 mm"')):
        line.setText(typed)
        line.editingFinished.emit()
        assert kept in german.piece.state.text
        assert line.text() == typed
    assert german.piece.state.design is not None
    assert german.piece.state.design.stock["primary"].thickness == 18.3
    figure = next(f for f in german.canvas.scene.figures if f.name == "Top depth")
    assert german.canvas.scene.shown is not None
    assert "," in german.canvas.scene.shown.length(figure.value)


def test_the_focus_tells_what_a_field_means_with_a_sketch(open_desk: Window, qtbot) -> None:
    open_desk.activateWindow()
    assert open_desk.work.form.go_to("slant.writing_height")
    line = open_desk.work.form.widget_for("slant.writing_height")
    qtbot.waitUntil(lambda: "Writing height" in open_desk.work.form._about.text(), timeout=2000)
    assert open_desk.work.form.sketch.isVisibleTo(open_desk)
    assert line.accessibleName() == "Writing height, in"


def test_searching_leaves_what_fits(open_desk: Window, qtbot) -> None:
    qtbot.keyClicks(open_desk.work.form.search, "joint gap")
    assert open_desk.work.form.widget_for("slant.joint_gap").isVisibleTo(open_desk)
    assert not open_desk.work.form.widget_for("case.width").isVisibleTo(open_desk)


def test_a_keyed_table_is_begun_with_what_it_needs(open_desk: Window, qtbot) -> None:
    answers = open_desk.filing.ask
    answers.ready = ["ash"]  # type: ignore[attr-defined]
    open_desk.work.form.add_wished.emit("stock")
    assert value(open_desk, "stock", "ash", "thickness") == "3/4"
    assert open_desk.piece.state.sound


def test_keys_alone_reach_a_field(open_desk: Window, qtbot) -> None:
    open_desk.activateWindow()
    open_desk.work.form.search.setFocus()
    qtbot.keyClicks(open_desk.work.form.search, "writing height")
    for _ in range(6):
        if open_desk.focusWidget() is open_desk.work.form.widget_for("slant.writing_height"):
            break
        qtbot.keyClick(open_desk.focusWidget(), Qt.Key.Key_Tab)
    assert open_desk.focusWidget() is open_desk.work.form.widget_for("slant.writing_height")


@pytest.mark.parametrize(
    ("address", "typed", "before", "of"),
    [("case.top_width", "37", "case", "width"), ("slant.angle", "50", "slant", "top_depth")],
)
def test_an_input_takes_the_place_of_another_that_says_the_same_in_one_step(
    open_desk: Window, address: str, typed: str, before: str, of: str
) -> None:
    line = open_desk.work.form.widget_for(address)
    assert isinstance(line, QLineEdit)
    was = value(open_desk, before, of)
    line.setText(typed)
    line.editingFinished.emit()
    assert str(value(open_desk, *address.split("."))) in (typed, f"{typed}.0")
    assert value(open_desk, before, of) is None
    open_desk.piece.undo.undo()
    assert value(open_desk, before, of) == was
    assert not open_desk.piece.unsaved


KEYED = {
    "stock": "ash", "use": "top", "level": "middle", "opening": "middle", "cut": "lamp", "photo": "old",
    "note": "first", "silence": "first", "move": "first", "dimension": "first", "plane": "Z", "revision": "A",
    "board": "side.left", "fitting": "screw:hinges",
}  # fmt: skip
"""Every keyed table of the piece file with a key that a person might give."""


def test_every_keyed_table_is_tried() -> None:
    assert set(KEYED) == set(keyed_tables())


@pytest.mark.parametrize("table", KEYED)
def test_a_keyed_table_is_added_changed_and_taken_out_by_keyboard(open_desk: Window, qtbot, table: str) -> None:
    """One of each kind: added from the menu, one of its inputs changed, taken out; undo goes back byte for byte."""
    form, piece, ask = open_desk.work.form, open_desk.piece, open_desk.filing.ask
    before, key = piece.state.text, KEYED[table]
    open_desk.activateWindow()
    form.add.setFocus()
    menu = form.add.menu()
    action = menu.actions()[keyed_tables().index(table)]
    ask.ready = [key]  # type: ignore[attr-defined]
    QTimer.singleShot(0, lambda: choose_by_keys(menu, action))
    qtbot.keyClick(form.add, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: given(open_desk, table, key) is not None)
    assert piece.state.sound
    added = piece.state.text
    if table in ("board", "fitting", "use"):
        assert key in ask.asked[-1].offers  # type: ignore[attr-defined]

    group = address_text((table,)) if table == "use" else address_text((table, key))
    fields = next(one.fields for one in form._groups if one.key == group)
    field = next(one for one in fields if one.kind not in ("choice", "yes-no"))
    line = form.widget_for(field.address)
    line.setFocus()
    line.selectAll()
    typed = {"length": "1", "offset": "1", "count": "3", "use": "drawer"}.get("use" if table == "use" else field.kind)
    qtbot.keyClicks(line, typed or "drawer")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    if piece.state.text != added:  # a fitting's or a board's own choices may be refused; then the field says why
        changed = piece.state.text
        assert piece.state.sound
        piece.undo.undo()
        assert piece.state.text == added
        piece.undo.redo()
        assert piece.state.text == changed

    if table != "use":  # a line of words: emptied, it is gone
        button = form.take_out[group]
        assert button.accessibleName()
        qtbot.waitUntil(button.isVisible)
        button.setFocus()
        assert open_desk.focusWidget() is button
        qtbot.keyClick(button, Qt.Key.Key_Space)
        assert open_desk.focusWidget() is not None
        assert form.isAncestorOf(open_desk.focusWidget())
    else:
        line = form.widget_for(address_text((table, key)))
        line.setFocus()
        line.selectAll()
        qtbot.keyClick(line, Qt.Key.Key_Delete)
        qtbot.keyClick(line, Qt.Key.Key_Return)
    assert given(open_desk, table, key) is None
    assert piece.state.sound
    while piece.undo.canUndo():
        piece.undo.undo()
    assert piece.state.text == before
    while piece.undo.canRedo():
        piece.undo.redo()
    assert given(open_desk, table, key) is None


def given(window: Window, table: str, key: str) -> object:
    """What the file gives under a key of a table; None where it has no such table."""
    found = tomllib.loads(window.piece.state.text).get(table, {})
    assert isinstance(found, dict)
    return found.get(key)


def choose_by_keys(menu: QMenu, action: QAction) -> None:
    """Goes down an open menu to one of its lines and takes it."""
    for _ in range(len(menu.actions()) + 1):
        if menu.activeAction() is action:
            break
        QTest.keyClick(menu, Qt.Key.Key_Down)
    QTest.keyClick(menu, Qt.Key.Key_Return)


def test_a_table_that_is_needed_is_not_taken_out(open_desk: Window, qtbot) -> None:
    """A stock that members are made of: the form says why, and nothing has changed."""
    before = open_desk.piece.state.text
    said: list[str] = []
    open_desk.work.said.connect(said.append)
    form = open_desk.work.form
    own = next(group.key for group in form._groups if group.own and needed(open_desk, group.key))
    qtbot.mouseClick(form.take_out[own], Qt.MouseButton.LeftButton)
    assert open_desk.piece.state.text == before
    assert said
    assert own.removeprefix("stock.") in said[-1] or "stock" in said[-1]


def needed(window: Window, group: str) -> bool:
    design = window.piece.state.design
    return group.startswith("stock.") and design is not None and group.removeprefix("stock.") in design.use.values()


def test_an_own_cut_begins_on_the_board_that_was_chosen(open_desk: Window) -> None:
    open_desk.work.side.setCurrentWidget(open_desk.work.boards)
    open_desk.work.boards.choose("side.right")
    open_desk.filing.ask.ready = ["cable"]  # type: ignore[attr-defined]
    open_desk.work.form.add_wished.emit("cut")
    assert value(open_desk, "cut", "cable", "board") == "side.right"


def test_a_variant_is_taken_out_and_comes_back(open_desk: Window) -> None:
    piece = open_desk.piece
    before = piece.state.text
    piece.set_values((Setting("case.width", "44"),), "Wider")
    open_desk.filing.ask.ready = ["wide"]  # type: ignore[attr-defined]
    open_desk.actions_by_key["keep_variant"].trigger()
    assert piece.variant == "wide"
    kept = piece.state.text
    open_desk.actions_by_key["drop_variant"].trigger()
    assert piece.variants() == ()
    assert tomllib.loads(piece.state.text) == tomllib.loads(before)
    piece.undo.undo()
    assert (piece.variants(), piece.variant, piece.state.text) == (("wide",), None, kept)
    open_desk.actions_by_key["drop_variant"].trigger()  # none is shown: nothing goes, and the window says so
    assert piece.variants() == ("wide",)


def test_choices_are_as_wide_as_lines_from_the_first_picture_on(open_desk: Window, qtbot) -> None:
    """Also when the form is made again: no choice is first narrow and then wide."""
    form = open_desk.work.form
    open_desk.filing.ask.ready = ["ash"]  # type: ignore[attr-defined]
    form.add_wished.emit("stock")
    choice, line = form.widget_for("case.top_joint"), form.widget_for("case.width")
    assert isinstance(choice, QComboBox)
    open_desk.grab()
    for _ in range(12):
        assert choice.width() == line.width()
        qtbot.wait(10)


def test_the_field_that_is_gone_to_stays_in_sight_whatever_is_told_of_it(open_desk: Window, qtbot) -> None:
    """What a field means is told below the form and takes room from it."""
    form = open_desk.work.form
    open_desk.resize(1152, 720)
    open_desk.activateWindow()
    for address in ("slant.writing_height", "drawer.lip", "lid.hinges", "base.height", "compartments.clearance"):
        assert form.go_to(address)
        qtbot.wait(20)
        widget = form.widget_for(address)
        shown = form._scroll.viewport()
        place = QRect(widget.mapTo(shown, QPoint(0, 0)), widget.size())
        assert shown.rect().contains(place), address
