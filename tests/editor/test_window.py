"""The window shows the piece."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QPoint, Qt

from shopdraw.editor.window import Window


def test_front_side_and_plan_stand_on_one_sheet(window: Window, desk: Path, qtbot) -> None:
    window.open_file(desk)
    window.show()
    qtbot.waitExposed(window)
    picture = window.grab().toImage()
    paper, ink = window.canvas.colours.colour("paper"), window.canvas.colours.colour("ink")
    seen = {picture.pixelColor(x, y).rgb() for x in range(0, picture.width(), 2) for y in range(0, picture.height(), 2)}
    assert paper.rgb() in seen
    assert any(abs((c >> 16 & 255) - ink.red()) < 12 for c in seen)


def test_in_a_narrow_window_the_drawing_keeps_the_larger_part_until_a_hand_parts_it(
    open_desk: Window, qtbot
) -> None:
    work = open_desk.work
    for size in ((1024, 700), (1152, 720), (1440, 900), (2560, 1400)):
        open_desk.resize(*size)
        qtbot.wait(20)
        assert work.canvas.width() > 0.55 * size[0], size
        scene = work.canvas.sheet_box()
        low = work.canvas.sight.on_screen(scene[:2])
        assert low[0] > 0
        assert low[1] < work.canvas.height()
    handle = work._level.handle(1)
    at = QPoint(2, handle.height() // 2)
    qtbot.mousePress(handle, Qt.MouseButton.LeftButton, pos=at)
    qtbot.mouseMove(handle, QPoint(at.x() - 200, at.y()))
    qtbot.mouseRelease(handle, Qt.MouseButton.LeftButton, pos=QPoint(at.x() - 200, at.y()))
    parted = work.side.width()
    open_desk.resize(2400, 1300)
    qtbot.wait(20)
    assert work.side.width() == parted
