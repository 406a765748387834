"""A photo behind a view: its four points come to stand where they stand on the piece."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor, QImage

from shopdraw.editor.state import Setting
from shopdraw.editor.tracing import TraceWindow, laid_by
from shopdraw.editor.window import Window
from shopdraw.piece.design import PhotoTable
from tests.editor.conftest import Answers
from tests.editor.gestures import click
from tests.editor.test_canvas import value

# A photo taken askew: x, y in pixels, y down. Lower left, lower right, upper right, upper left.
ASKEW = (100.0, 900.0, 820.0, 860.0, 760.0, 140.0, 150.0, 90.0)


def test_four_points_come_to_stand_in_a_rectangle_of_the_known_size() -> None:
    table = PhotoTable(file="old.jpg", points=ASKEW, width=880.0, height=1035.0, left=10.0, up=20.0)
    laid = laid_by(table, QSize(1000, 1000))
    assert laid is not None
    wanted = [(10.0, 20.0), (890.0, 20.0), (890.0, 1055.0), (10.0, 1055.0)]
    for (x, y), place in zip(zip(ASKEW[0::2], ASKEW[1::2], strict=True), wanted, strict=True):
        there = laid.map(QPointF(x, y))
        assert (there.x(), there.y()) == pytest.approx(place, abs=1e-6)


def test_straight_lines_stay_straight() -> None:
    laid = laid_by(PhotoTable(file="old.jpg", points=ASKEW, width=880.0, height=1035.0), QSize(1000, 1000))
    assert laid is not None
    a, b, c = (laid.map(QPointF(200.0 + 100 * t, 300.0 + 150 * t)) for t in (0.0, 1.7, 3.0))
    assert abs((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x())) < 1e-3


def test_points_that_make_no_quadrilateral_lay_nothing() -> None:
    flat = PhotoTable(file="old.jpg", points=(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0), width=880.0, height=1035.0)
    assert laid_by(flat, QSize(10, 10)) is None


def test_a_photo_is_laid_by_four_clicks_and_kept_by_a_relative_path(
    open_desk: Window, answers: Answers, desk: Path, qtbot
) -> None:
    image = QImage(400, 400, QImage.Format.Format_RGB32)
    image.fill(QColor(200, 60, 40))
    photo = desk.parent / "photos" / "old.png"
    photo.parent.mkdir()
    assert image.save(str(photo))
    answers.ready = [str(photo)]
    open_desk.actions_by_key["trace"].trigger()
    window = open_desk.doing.open_windows[-1]
    assert isinstance(window, TraceWindow)
    qtbot.waitExposed(window)
    for x, y in ((40, 360), (360, 360), (360, 40), (40, 40)):
        click(window.picker, window.picker.on_screen(QPointF(x, y)))
    window.lines["width"].setText("36")
    window.lines["height"].setText("height")
    window.done.click()
    table = value(open_desk, "photo", "trace")
    assert isinstance(table, dict)
    assert table["file"] == "photos/old.png"
    assert table["points"] == pytest.approx([40, 360, 360, 360, 360, 40, 40, 40], abs=1.0)
    picture, _, opaque = open_desk.canvas.photos["front"]
    assert picture.width() == 400
    assert opaque == 0.5
    seen = open_desk.canvas.grab().toImage()
    middle = open_desk.canvas.sight.on_screen((450.0, 900.0))
    colour = seen.pixelColor(round(middle[0]), round(middle[1]))
    assert colour.red() > colour.blue() + 40
    open_desk.piece.undo.undo()
    assert open_desk.canvas.photos == {}


def test_a_photo_that_is_gone_is_left_out(open_desk: Window, desk: Path) -> None:
    text = open_desk.piece.state.text + '\n[photo.old]\nfile = "gone.jpg"\n'
    open_desk.piece.set_text(text, "Photo")
    assert open_desk.piece.state.sound
    assert open_desk.canvas.photos == {}
    told: list[str] = []
    open_desk.work.said.connect(told.append)
    open_desk.piece.set_values((Setting("photo.other.file", "away.jpg"),), "Photo")
    open_desk.piece.set_values((Setting("case.width", "40"),), "Wider")
    assert [words for words in told if "away.jpg" in words] == [told[0]], "said once, and not at every change"
    image = QImage(20, 20, QImage.Format.Format_RGB32)
    image.fill(QColor(200, 60, 40))
    assert image.save(str(desk.parent / "away.jpg"))
    open_desk.piece.set_values((Setting("case.width", "41"),), "Wider")
    assert "front" in open_desk.canvas.photos, "as soon as it is there"


def test_four_points_are_set_and_moved_by_keyboard_behind_another_view(
    open_desk: Window, answers: Answers, desk: Path, qtbot
) -> None:
    image = QImage(400, 400, QImage.Format.Format_RGB32)
    image.fill(QColor(200, 60, 40))
    assert image.save(str(desk.parent / "old.png"))
    for view in ("front", "side"):
        answers.ready = [str(desk.parent / "old.png")]
        open_desk.actions_by_key["trace"].trigger()
        window = open_desk.doing.open_windows[-1]
        assert isinstance(window, TraceWindow)
        qtbot.waitExposed(window)
        window.activateWindow()
        window.view.setCurrentIndex(window.view.findData(view))
        picker = window.picker
        picker.setFocus()
        ways = ((Qt.Key.Key_Left, Qt.Key.Key_Down), (Qt.Key.Key_Right,), (Qt.Key.Key_Up,), (Qt.Key.Key_Left,))
        for number, keys in enumerate(ways):
            for key in keys:
                for _ in range(10 if number == 0 else 20):
                    qtbot.keyClick(picker, key)
            qtbot.keyClick(picker, Qt.Key.Key_Return)
        assert len(picker.points) == 4
        before = picker.on_screen(picker.points[3])
        qtbot.keyClick(picker, Qt.Key.Key_Return)  # takes the last one up
        qtbot.keyClick(picker, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
        qtbot.keyClick(picker, Qt.Key.Key_Return)
        qtbot.keyClick(picker, Qt.Key.Key_Up)  # and puts it down
        assert picker.on_screen(picker.points[3]).x() == pytest.approx(before.x() + 1.0)
        assert picker.on_screen(picker.points[3]).y() == pytest.approx(before.y())
        assert [window.lines[name].text() for name in ("width", "height")] == [
            "width" if view == "front" else "depth", "height",
        ]  # fmt: skip
        assert window.done.isEnabled()
        window.done.click()
    assert set(open_desk.canvas.photos) == {"front", "side"}, "one behind each view"
    design = open_desk.piece.state.design
    assert design is not None
    sizes = {table.view: (table.width, table.height) for table in design.photo.values()}
    assert sizes["side"] == pytest.approx((19.5 * 25.4, 41.5 * 25.4))
