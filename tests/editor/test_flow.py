"""A row of buttons goes on in the next line where there is no room."""

from __future__ import annotations

from PySide6.QtWidgets import QPushButton, QWidget

from shopdraw.editor.flow import FlowRow


def row_of(qtbot, *words: str) -> tuple[QWidget, FlowRow, list[QPushButton]]:
    whole = QWidget()
    qtbot.addWidget(whole)
    row = FlowRow(whole)
    buttons = [QPushButton(each) for each in words]
    for button in buttons:
        row.addWidget(button)
    whole.show()
    return whole, row, buttons


def test_with_room_all_stand_in_one_line(qtbot) -> None:
    whole, row, buttons = row_of(qtbot, "one", "two", "three")
    whole.resize(1000, 200)
    row.activate()
    assert len({button.y() for button in buttons}) == 1
    assert row.sizeHint().width() <= 1000


def test_without_room_they_go_on_below_at_their_whole_width(qtbot) -> None:
    whole, row, buttons = row_of(qtbot, "a rather long button", "another long button", "a third one")
    wide = max(button.sizeHint().width() for button in buttons)
    whole.resize(wide + 4, 400)
    row.activate()
    assert len({button.y() for button in buttons}) == 3
    assert all(button.width() == button.sizeHint().width() for button in buttons)
    high = buttons[0].sizeHint().height()
    assert row.heightForWidth(wide + 4) >= 3 * high > row.heightForWidth(5000)


def test_hidden_ones_take_no_room(qtbot) -> None:
    _whole, row, buttons = row_of(qtbot, "one", "two")
    before = row.sizeHint().width()
    buttons[0].hide()
    assert row.sizeHint().width() < before
    assert row.takeAt(1) is not None
    assert row.itemAt(1) is None
    assert row.count() == 1
