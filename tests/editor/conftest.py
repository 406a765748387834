"""The editor's tests: one window at a time, dressed as the program dresses it, its settings in a folder of the test."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from shopdraw.editor.look import LIGHT, dress
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_path


@pytest.fixture
def desk(tmp_path: Path) -> Path:
    """A copy of the inch sample, free to be written over."""
    file = tmp_path / "harbour.piece"
    file.write_bytes(sample_path("harbour-office-desk").read_bytes())
    return file


@pytest.fixture
def window(qtbot, qapp: QApplication) -> Iterator[Window]:
    dress(qapp, LIGHT)
    made = Window(apart=False)
    qtbot.addWidget(made)
    yield made


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    # The offscreen platform says this of every window that has a least size; it isn't ours.
    for item in items:
        if "tests/editor" in item.path.as_posix():
            item.add_marker(pytest.mark.qt_log_ignore("propagateSizeHints"))
