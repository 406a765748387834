"""The window shows the piece."""

from __future__ import annotations

from pathlib import Path

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
