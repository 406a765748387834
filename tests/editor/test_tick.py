"""What is on and what is off differs in shape, not in colour alone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from shopdraw.editor.look import DARK, LIGHT, Colours
from shopdraw.editor.tick import tick_icon
from shopdraw.editor.window import Window


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_a_tick_has_more_ink_than_an_open_box(colours: Colours, qapp: QApplication) -> None:
    icon = tick_icon(colours)
    off, on = (ink(icon, state) for state in (QIcon.State.Off, QIcon.State.On))
    assert on > off > 0


def ink(icon: QIcon, state: QIcon.State) -> int:
    picture = icon.pixmap(QSize(48, 48), 1.0, QIcon.Mode.Normal, state).toImage()
    return sum(picture.pixelColor(x, y).alpha() > 128 for x in range(48) for y in range(48))


def test_all_that_can_be_turned_on_has_the_mark(window: Window) -> None:
    for key, action in window.actions_by_key.items():
        assert action.icon().isNull() != action.isCheckable(), key
