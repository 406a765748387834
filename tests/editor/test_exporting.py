"""The package is written while the window stays alive, or not at all."""

from __future__ import annotations

import time
from pathlib import Path

import pytest

from shopdraw.editor.exporting import Exporting
from shopdraw.editor.state import Setting
from shopdraw.editor.window import Window
from tests.editor.conftest import Answers
from tests.editor.frames import LATE, Frames

SLOW_MS = 120_000


@pytest.fixture
def exporting(qtbot) -> Exporting:
    return Exporting()


def text_of(desk: Path) -> str:
    return desk.read_text(encoding="utf-8")


def test_case_69_an_export_tells_its_progress_and_no_frame_is_late(
    exporting: Exporting, desk: Path, tmp_path: Path, qtbot
) -> None:
    parts: list[str] = []
    exporting.progressed.connect(lambda _done, _steps, name: parts.append(name))
    with Frames() as frames, qtbot.waitSignal(exporting.finished, timeout=SLOW_MS) as done:
        exporting.begin(text_of(desk), "harbour", str(tmp_path / "out"))
    assert done.args[0], done.args[1]
    assert parts == ["sheets", "templates", "drawing", "cnc", "lists"]
    assert (tmp_path / "out" / "manifest.json").is_file()
    assert (tmp_path / "out" / "lists" / "cut-list.csv").is_file()
    # The window never holds a frame up itself; what a busy machine does to a process that only waits it may do to this.
    assert max(frames.own) < LATE
    assert max(frames.gaps) < LATE + 2 * frames.idle
    assert sorted(frames.gaps)[len(frames.gaps) // 2] < LATE


def test_a_frame_that_is_held_up_is_found(qtbot) -> None:
    with Frames() as frames:
        qtbot.wait(100)
        end = time.thread_time() + 2 * LATE
        while time.thread_time() < end:
            pass
        qtbot.wait(50)
    assert max(frames.own) > LATE


def test_giving_up_leaves_the_old_package(exporting: Exporting, desk: Path, tmp_path: Path, qtbot) -> None:
    folder = tmp_path / "out"
    (folder / "lists").mkdir(parents=True)
    (folder / "lists" / "mine.txt").write_text("mine", encoding="utf-8")
    exporting.progressed.connect(lambda _done, _steps, _name: exporting.give_up())
    with qtbot.waitSignal(exporting.finished, timeout=SLOW_MS) as done:
        exporting.begin(text_of(desk), "harbour", str(folder))
    assert not done.args[0]
    assert "Given up" in done.args[1]
    assert sorted(p.name for p in tmp_path.rglob("*")) == ["harbour.piece", "lists", "mine.txt", "out"]
    assert not exporting.busy


def test_case_32_a_target_that_cannot_be_written_is_told_with_the_reason(
    window: Window, answers: Answers, desk: Path, tmp_path: Path, qtbot
) -> None:
    target = tmp_path / "taken"
    target.write_text("a file, no folder", encoding="utf-8")
    window.open_file(desk)
    answers.ready = [""]
    window.doing.export(str(target))
    qtbot.waitUntil(lambda: bool(answers.asked), timeout=SLOW_MS)
    assert answers.asked[0].title == "The package is not written"
    assert str(target) in answers.asked[0].words
    assert [key for key, _ in answers.asked[0].choices] == ["again", "other", ""]
    assert target.read_text(encoding="utf-8") == "a file, no folder"


def test_what_is_on_the_screen_is_exported_saved_or_not(
    window: Window, answers: Answers, desk: Path, tmp_path: Path, qtbot, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.open_file(desk)
    window.piece.set_values((Setting("piece.title", "Another title"),), "Title")
    texts: list[str] = []
    monkeypatch.setattr(window.doing.exporting, "begin", lambda text, *_, **__: texts.append(text))
    window.doing.export(str(tmp_path / "out"))
    assert 'title = "Another title"' in texts[0]


def test_closing_the_window_ends_an_export_and_asks_nothing_more(
    window: Window, answers: Answers, desk: Path, tmp_path: Path, qtbot
) -> None:
    window.show()
    window.open_file(desk)
    (tmp_path / "out").mkdir()
    window.doing.export(str(tmp_path / "out"))
    qtbot.wait(50)
    assert window.doing.exporting.busy
    window.close()
    assert not window.isVisible()
    assert not window.doing.exporting.busy
    assert answers.asked == []
    assert list((tmp_path / "out").iterdir()) == []
