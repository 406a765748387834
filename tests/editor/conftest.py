"""The editor's tests: one window at a time, dressed as the program dresses it, its memory in a folder of the test."""

from __future__ import annotations

import faulthandler
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QSettings
from PySide6.QtWidgets import QApplication, QWidget

from shopdraw.editor.ask import Question
from shopdraw.editor.look import LIGHT, dress
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_path

MOST_SECONDS = 900
"""For one test: a box that nobody closes ends it with a trace of where it waits, and never hangs the run."""


@pytest.fixture(autouse=True)
def _never_hangs() -> Iterator[None]:
    faulthandler.dump_traceback_later(MOST_SECONDS, exit=True, file=sys.__stderr__)
    yield
    faulthandler.cancel_dump_traceback_later()


@pytest.fixture
def desk(tmp_path: Path) -> Path:
    """A copy of the inch sample, free to be written over."""
    file = tmp_path / "harbour.piece"
    file.write_bytes(sample_path("harbour-office-desk").read_bytes())
    return file


@pytest.fixture
def metric_desk(tmp_path: Path) -> Path:
    """A copy of a sample in millimetres."""
    file = tmp_path / "chart-room.piece"
    file.write_bytes(sample_path("chart-room-desk").read_bytes())
    return file


class Answers:
    """Answers questions in turn, and remembers them; a question that nobody foresaw fails the test."""

    def __init__(self) -> None:
        self.asked: list[Question] = []
        self.ready: list[str] = []

    def __call__(self, parent: QWidget | None, question: Question) -> str:
        self.asked.append(question)
        assert self.ready, f"nobody answers: {question.words or question.title}"
        return self.ready.pop(0)


@pytest.fixture
def make_window(qtbot, qapp: QApplication, tmp_path: Path) -> Iterator[Callable[..., Window]]:
    """Windows whose questions go to `window.filing.ask`, an `Answers`."""
    QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedKingdom))
    dress(qapp, LIGHT)
    made: list[Window] = []

    def make(locale: QLocale | None = None) -> Window:
        if locale is not None:
            QLocale.setDefault(locale)
        settings = QSettings(str(tmp_path / "memory.ini"), QSettings.Format.IniFormat)
        window = Window(apart=False, settings=settings, folder=tmp_path / "data")
        window.filing.ask = Answers()
        made.append(window)
        return window

    yield make
    for window in made:
        window.piece.undo.setClean()
        window.close()
        window.deleteLater()


@pytest.fixture
def window(make_window: Callable[..., Window]) -> Window:
    return make_window()


@pytest.fixture
def answers(window: Window) -> Answers:
    assert isinstance(window.filing.ask, Answers)
    return window.filing.ask


@pytest.fixture
def open_desk(window: Window, desk: Path, qtbot) -> Window:
    """The window, on screen, with the inch sample open."""
    window.show()
    window.open_file(desk)
    qtbot.waitExposed(window)
    window.grab()
    return window


@pytest.fixture
def lone(window: Window, qtbot) -> Window:
    """A window whose views and findings nobody works out: only what is typed counts."""
    window.working.ask = lambda *_given, **_named: None  # type: ignore[method-assign]
    window.show()
    qtbot.waitExposed(window)
    return window


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    # The offscreen platform says this of every window that has a least size or comes to the top; it isn't ours.
    for item in items:
        if "tests/editor" in item.path.as_posix():
            item.add_marker(pytest.mark.qt_log_ignore("propagateSizeHints", "does not support raise"))
