"""The shop's page: a form of the typed shop file, saved with its comments; faults by line; the piece laid out on it."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit

from shopdraw.editor.field import form_of_file
from shopdraw.editor.shop_window import ShopWindow
from shopdraw.editor.shown_size import shown_in
from shopdraw.editor.window import Window
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import read_shop
from tests.editor.conftest import Answers
from tests.editor.test_form_panel import plain_inputs

TEXT = """# the shop by the harbour
format = 1

[saw]
kerf = 2.8  # measured in a cut of oak

[cutter.straight-6]
diameter = 6

[sheet.birch]
width = 1500
length = 3600
price = 48
"""


@pytest.fixture
def shop_file(tmp_path: Path) -> Path:
    file = tmp_path / "harbour.toml"
    file.write_text(TEXT, encoding="utf-8")
    return file


@pytest.fixture
def shop(lone: Window, metric_desk: Path, shop_file: Path, qtbot) -> Iterator[ShopWindow]:
    """The shop that a piece names, opened from the menu."""
    text = metric_desk.read_text(encoding="utf-8").replace("[piece]\n", '[piece]\nshop = "harbour.toml"\n', 1)
    metric_desk.write_text(text, encoding="utf-8")
    lone.open_file(metric_desk)
    lone.actions_by_key["shop"].trigger()
    window = lone.doing.open_windows[-1]
    assert isinstance(window, ShopWindow)
    qtbot.waitExposed(window)
    yield window
    if shiboken6.isValid(window):
        window.shop.undo.setClean()


def given(window: ShopWindow, *keys: str) -> object:
    found: object = tomllib.loads(window.shop.state.text)
    for key in keys:
        assert isinstance(found, dict)
        found = found.get(key)
    return found


def type_in(window: ShopWindow, qtbot, address: str, typed: str) -> None:
    window.form.go_to(address)
    line = window.form.widget_for(address)
    assert isinstance(line, QLineEdit)
    line.selectAll()
    qtbot.keyClicks(line, typed) if typed else line.clear()
    line.editingFinished.emit()


def test_every_input_of_the_shop_has_a_field() -> None:
    shop = Shop.model_validate({
        name: {"one": needed} for name, needed in {
            "cutter": {"diameter": 6}, "collar": {"outside": 17}, "yard": {"widths": (150,), "lengths": (2400,),
            "quarters": "4/4"}, "sheet": {"width": 1250, "length": 2500}, "printer": {},
            "offcut": {"thickness": 20, "width": 100, "length": 500},
        }.items()
    })  # fmt: skip
    offered = {field.address for group in form_of_file(Shop, shop, shown_in("mm")) for field in group.fields}
    assert set(plain_inputs(Shop)) <= offered
    for table in ("cutter", "collar", "yard", "sheet", "offcut", "printer"):
        model = type(getattr(shop, table)["one"])
        assert {f"{table}.one.{name}" for name in model.model_fields} <= offered


def test_the_shop_that_the_piece_names_is_opened_and_saved_with_its_comments(
    shop: ShopWindow, qtbot, shop_file: Path
) -> None:
    assert shop.shop.path == shop_file
    type_in(shop, qtbot, "saw.kerf", "3.1")
    type_in(shop, qtbot, "router.keep_out", "0 to 40; 600 to 650")
    type_in(shop, qtbot, "sheet.birch.price", "52.50")
    box = shop.form.widget_for("habit.decimal")
    assert isinstance(box, QComboBox)
    box.setCurrentIndex(box.findData("comma"))
    box.activated.emit(box.currentIndex())
    assert shop.isWindowModified()
    qtbot.mouseClick(shop.save_it, Qt.MouseButton.LeftButton)
    assert not shop.isWindowModified()
    text = shop_file.read_text(encoding="utf-8")
    assert "# the shop by the harbour" in text
    assert "kerf = 3.1  # measured in a cut of oak" in text
    read = read_shop(shop_file).shop
    assert (read.saw.kerf, read.router.keep_out) == (3.1, ((0.0, 40.0), (600.0, 650.0)))
    assert (read.sheet["birch"].price, read.habit.decimal) == (52.5, "comma")


def test_undo_gives_the_file_back_byte_for_byte(shop: ShopWindow, qtbot, shop_file: Path) -> None:
    type_in(shop, qtbot, "saw.kerf", "3.1")
    type_in(shop, qtbot, "cutter.straight-6.diameter", "1/4 in")
    assert given(shop, "cutter", "straight-6", "diameter") == "1/4 in"
    for _ in range(2):
        qtbot.mouseClick(shop.undo, Qt.MouseButton.LeftButton)
    assert shop.save()
    assert shop_file.read_text(encoding="utf-8") == TEXT


@pytest.mark.parametrize(
    ("table", "needs"),
    [("cutter", "diameter"), ("collar", "outside"), ("yard", "widths"), ("sheet", "length"), ("offcut", "thickness")],
)
def test_one_more_of_each_table_is_begun_with_what_it_needs(
    shop: ShopWindow, answers: Answers, table: str, needs: str
) -> None:
    answers.ready = ["new one"]
    shop.form.add_wished.emit(table)
    assert given(shop, table, "new one", needs) is not None
    assert shop.shop.state.shop is not None


def test_a_printer_that_is_off_by_more_than_it_can_be_is_refused_with_a_reason(
    shop: ShopWindow, answers: Answers, qtbot
) -> None:
    answers.ready = ["laser"]
    shop.form.add_wished.emit("printer")
    type_in(shop, qtbot, "printer.laser.feed", "199.2")
    assert given(shop, "printer", "laser", "feed") == 199.2
    type_in(shop, qtbot, "printer.laser.across", "190")
    assert given(shop, "printer", "laser", "across") is None
    assert "fitting to the page" in shop.form._about.text()


def test_a_broken_shop_file_is_shown_with_its_lines_and_mended_here(
    lone: Window, metric_desk: Path, shop_file: Path, qtbot
) -> None:
    shop_file.write_text(TEXT.replace("kerf = 2.8", "kerf = thin"), encoding="utf-8")
    text = metric_desk.read_text(encoding="utf-8").replace("[piece]\n", '[piece]\nshop = "harbour.toml"\n', 1)
    metric_desk.write_text(text, encoding="utf-8")
    lone.open_file(metric_desk)
    lone.doing.shop()
    window = lone.doing.open_windows[-1]
    assert isinstance(window, ShopWindow)
    assert window.pages.currentWidget() is window.faults
    assert "5" in window.faults.faults.item(0).text()
    window.faults.text.setPlainText(TEXT)
    window.faults.again.click()
    assert window.pages.currentWidget() is window.form
    window.shop.undo.setClean()


def test_without_a_named_shop_the_users_own_is_begun_in_the_configuration_folder(
    lone: Window, metric_desk: Path, tmp_path: Path, monkeypatch, qtbot
) -> None:
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "config"))
    lone.open_file(metric_desk)
    lone.doing.shop()
    window = lone.doing.open_windows[-1]
    assert isinstance(window, ShopWindow)
    assert "not there yet" in window.place.text()
    type_in(window, qtbot, "saw.kerf", "2.2")
    assert window.save()
    assert read_shop(tmp_path / "config" / "shopdraw" / "shop.toml").shop.saw.kerf == 2.2


def test_leaving_asks_for_what_is_not_saved(shop: ShopWindow, answers: Answers, qtbot, shop_file: Path) -> None:
    type_in(shop, qtbot, "saw.kerf", "2.2")
    answers.ready = [""]
    assert not shop.close()
    answers.ready = ["save"]
    assert shop.close()
    assert read_shop(shop_file).shop.saw.kerf == 2.2


def test_laying_out_tells_what_to_buy_and_the_least_that_is_needed_and_draws_it(shop: ShopWindow, qtbot) -> None:
    qtbot.mouseClick(shop.layouts.lay_out, Qt.MouseButton.LeftButton)
    words = shop.layouts.headline.text()
    # The back and the three drawer bottoms of the desk laid end to end are shorter than a sheet and narrower.
    assembly = shop._piece().assembly
    assert assembly is not None
    thin = [board for board in assembly.boards if board.stock.kind == "sheet"]
    assert sum(board.length + 2 * 10 for board in thin) < 3600
    assert max(board.width for board in thin) + 2 * 10 < 1500
    assert "Birch plywood, 6 mm: sheets to buy: 1</b><br>least possible: 1," in words
    assert "boards to buy: " in words
    assert shop.layouts.view._sheet is not None
    assert shop.layouts.pages.count() >= 1


def test_a_layout_under_way_can_be_given_up(make_window, metric_desk: Path, tmp_path: Path, qtbot) -> None:
    window = make_window()
    window.open_file(metric_desk)
    shop = ShopWindow(
        tmp_path / "shop.toml", lambda: window.piece.state, lambda: window.filing.ask, window.canvas.colours, "."
    )
    shop.show()
    qtbot.mouseClick(shop.layouts.lay_out, Qt.MouseButton.LeftButton)
    assert shop.laying_out.busy
    assert shop.layouts.give_up.isVisible()
    QApplication.processEvents()
    qtbot.mouseClick(shop.layouts.give_up, Qt.MouseButton.LeftButton)
    assert not shop.laying_out.busy
    assert "Given up" in shop.layouts.headline.text()
    assert shop.layouts.lay_out.isEnabled()
    with qtbot.waitSignal(shop.laying_out.done, timeout=60_000):
        qtbot.mouseClick(shop.layouts.lay_out, Qt.MouseButton.LeftButton)
    assert "to buy" in shop.layouts.headline.text()
    shop.close()


def test_the_main_window_stays_while_the_shop_has_something_to_save(
    shop: ShopWindow, lone: Window, answers: Answers, qtbot
) -> None:
    type_in(shop, qtbot, "saw.kerf", "2.2")
    answers.ready = [""]
    assert not lone.close()
    assert lone.isVisible()
    assert shop.isVisible()
    answers.ready = ["leave"]
    assert lone.close()
