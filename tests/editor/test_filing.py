"""Files: nothing is lost, nothing is told that isn't so."""

from __future__ import annotations

import os
import subprocess
import sys
import textwrap
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QColor, QDropEvent, QImage

from shopdraw.editor import crash
from shopdraw.editor.ask import Kind
from shopdraw.editor.beside import moved_with
from shopdraw.editor.recovery import Recovery
from shopdraw.editor.state import Setting, state_of
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_path
from tests.editor.conftest import Answers
from tests.editor.gestures import click
from tests.editor.test_canvas import value


def widen(window: Window, to: str = "37") -> None:
    assert window.piece.set_values((Setting("case.width", to),), "Width")


def test_the_title_marks_what_is_not_saved(open_desk: Window, desk: Path) -> None:
    assert not open_desk.isWindowModified()
    widen(open_desk)
    assert open_desk.isWindowModified()
    assert open_desk.filing.save()
    assert not open_desk.isWindowModified()
    assert 'width = "37"' in desk.read_text(encoding="utf-8")


def test_a_piece_begun_here_is_saved_under_a_name(window: Window, answers: Answers, tmp_path: Path) -> None:
    window.start.buttons["pilot-station-desk"].click()
    assert window.piece.state.sound
    answers.ready = [str(tmp_path / "mine")]
    assert window.filing.save()
    assert (tmp_path / "mine.piece").is_file()
    assert window.filing.recent() == [str((tmp_path / "mine.piece").resolve())]


def test_leaving_asks_for_what_is_not_saved(open_desk: Window, answers: Answers) -> None:
    widen(open_desk)
    answers.ready = [""]
    open_desk.close()
    assert open_desk.isVisible()
    answers.ready = ["leave"]
    open_desk.close()
    assert not open_desk.isVisible()


def test_case_30_a_save_that_fails_leaves_the_file_and_says_where_else(
    open_desk: Window, answers: Answers, desk: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = desk.read_bytes()
    widen(open_desk)

    def full(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    answers.ready = [""]
    assert not open_desk.filing.save()
    assert "no space left" in answers.asked[-1].words.lower()
    assert "another place" in answers.asked[-1].words
    assert desk.read_bytes() == before
    assert open_desk.piece.unsaved
    monkeypatch.undo()
    answers.ready = []
    assert open_desk.filing.save()
    assert b'width = "37"' in desk.read_bytes()


def test_case_31_an_error_in_a_slot_keeps_a_copy_and_says_one_sentence(
    open_desk: Window, desk: Path, make_window: Callable[[], Window]
) -> None:
    before = desk.read_bytes()
    told: list[str] = []
    restore = crash.catch(open_desk.filing.keep_copy, told.append, open_desk.folder)
    for number in range(30):
        widen(open_desk, f"{37 + number}")
    try:
        raise ZeroDivisionError("in a slot")
    except ZeroDivisionError as error:
        sys.excepthook(type(error), error, error.__traceback__)
    restore()
    assert len(told) == 1
    assert "copy of the piece is kept" in told[0]
    assert "ZeroDivisionError" in (open_desk.folder / crash.LOG_NAME).read_text(encoding="utf-8")
    assert desk.read_bytes() == before
    kept = next((open_desk.folder / "recovery").glob("*.recovery"))
    assert "66" in kept.read_text(encoding="utf-8")


def test_work_of_a_program_that_was_killed_is_offered_at_the_next_start(
    window: Window, answers: Answers, desk: Path
) -> None:
    before = desk.read_bytes()
    child = subprocess.Popen(
        [
            sys.executable,
            "-c",
            textwrap.dedent(f"""
            import sys, time
            from pathlib import Path
            from shopdraw.editor.recovery import Recovery
            text = Path({str(desk)!r}).read_text(encoding="utf-8").replace('width = "36"', 'width = "39"')
            kept = Recovery(Path({str(window.folder / "recovery")!r}))
            kept.keep(text, Path({str(desk)!r}))
            print("kept", flush=True)
            time.sleep(60)
        """),
        ],
        stdout=subprocess.PIPE,
        cwd=Path(__file__).parents[2],
    )
    assert child.stdout is not None
    assert child.stdout.readline() == b"kept\n"
    window.filing.offer_recovery()
    assert not answers.asked, "a program that is alive keeps its own copy"
    child.kill()
    child.wait()
    child.stdout.close()
    answers.ready = ["open"]
    window.filing.offer_recovery()
    assert answers.asked[-1].title == "Work was kept"
    assert window.piece.state.design is not None
    assert window.piece.state.design.case.width == pytest.approx(39 * 25.4)
    assert window.piece.unsaved
    assert window.piece.path == desk
    assert desk.read_bytes() == before


def test_a_copy_is_kept_within_thirty_seconds_and_dropped_by_a_save(open_desk: Window) -> None:
    assert open_desk.filing._timer.interval() <= 30_000
    widen(open_desk)
    open_desk.filing._timer.timeout.emit()
    copies = open_desk.folder / "recovery"
    assert len(list(copies.glob("*.recovery"))) == 1
    assert open_desk.filing.save()
    assert not list(copies.glob("*.recovery"))


def test_a_copy_that_cannot_be_read_is_passed_over(tmp_path: Path) -> None:
    (tmp_path / "half.recovery").write_text("{", encoding="utf-8")
    assert Recovery(tmp_path).found() == ()


def test_a_file_that_another_program_changed_is_noticed_and_read_again(
    open_desk: Window, answers: Answers, desk: Path, qtbot
) -> None:
    answers.ready = ["read"]
    desk.write_text(desk.read_text(encoding="utf-8").replace('width = "36"', 'width = "40"'), encoding="utf-8")
    qtbot.waitUntil(lambda: bool(answers.asked), timeout=5000)
    assert "changed" in answers.asked[0].words
    assert open_desk.piece.state.design is not None
    assert open_desk.piece.state.design.case.width == pytest.approx(40 * 25.4)


def test_a_file_that_another_program_changed_is_not_written_over_unasked(
    open_desk: Window, answers: Answers, desk: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    open_desk.filing._watcher.removePaths(open_desk.filing._watcher.files())
    widen(open_desk)
    desk.write_text(desk.read_text(encoding="utf-8") + "# by another\n", encoding="utf-8")
    answers.ready = [""]
    assert not open_desk.filing.save()
    assert desk.read_text(encoding="utf-8").endswith("# by another\n")


def test_a_broken_file_opens_as_faults_with_lines_and_can_be_mended_here(window: Window, desk: Path, qtbot) -> None:
    text = desk.read_text(encoding="utf-8")
    desk.write_text(text.replace('width = "36"', 'width = "36 1/'), encoding="utf-8")
    window.show()
    window.open_file(desk)
    assert window.pages.currentWidget() is window.faults
    assert "Line 14" in window.faults.faults.item(0).text()
    window.faults.text.setPlainText(text.replace('width = "36"', 'width = "38"'))
    window.faults.again.click()
    assert window.pages.currentWidget() is window.work
    assert window.isWindowModified()


@pytest.mark.parametrize(
    "data", [b"", b"\xff\xfe\x00", b"[", b"format = 99\n", b"format = 1\n[case]\nwidth = -3\n", b"\x00" * 9]
)
def test_no_file_whatever_it_holds_is_more_than_a_list_of_faults(window: Window, tmp_path: Path, data: bytes) -> None:
    file = tmp_path / "odd.piece"
    file.write_bytes(data)
    window.open_file(file)
    assert window.pages.currentWidget() is window.faults
    assert window.faults.faults.count() >= 1


def test_a_file_that_is_not_there_is_told(window: Window, tmp_path: Path) -> None:
    window.open_file(tmp_path / "gone.piece")
    assert "can't be read" in window.faults.faults.item(0).text()


def test_a_file_dropped_on_the_window_opens(window: Window, desk: Path) -> None:
    window.show()
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(desk))])
    event = QDropEvent(
        QPointF(50, 50), Qt.DropAction.CopyAction, mime, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    )
    # Qt hands drops on only while a drag is under way, so the window's own answer is called.
    window.dropEvent(event)
    assert window.piece.path == desk


def test_case_71_no_dialog_opens_but_through_the_one_function(open_desk: Window, answers: Answers, desk: Path) -> None:
    # The fixture's function answers at once: a save that fails in a test ends by itself.
    started = time.monotonic()
    desk.chmod(0o400)
    widen(open_desk)
    answers.ready = [""]
    done = open_desk.filing.save()
    assert time.monotonic() - started < 30
    assert done == (os.geteuid() == 0)


@pytest.mark.parametrize("held", ["Breite = 36 # Maß".encode("latin-1"), b"\x00\x01\xff" * 40])
def test_a_file_that_cannot_be_read_is_never_written_over_unasked(
    window: Window, answers: Answers, desk: Path, tmp_path: Path, held: bytes
) -> None:
    desk.write_bytes(held)
    window.show()
    window.open_file(desk)
    assert not window.actions_by_key["save"].isEnabled(), "there is nothing to save"
    assert not window.faults.text.isEnabled()
    window.piece.set_text("format = 1", "A text in its place")
    answers.ready = [str(desk), ""]
    window.actions_by_key["save"].trigger()
    assert [question.kind for question in answers.asked] == [Kind.SAVE, Kind.CHOOSE]
    assert desk.read_bytes() == held
    answers.ready = [str(tmp_path / "other.piece")]
    window.actions_by_key["save"].trigger()
    assert (tmp_path / "other.piece").read_text(encoding="utf-8") == "format = 1"
    assert desk.read_bytes() == held


def test_an_ending_that_is_added_to_a_name_writes_over_nothing_unasked(
    open_desk: Window, answers: Answers, tmp_path: Path
) -> None:
    there = tmp_path / "other.piece"
    there.write_text("of somebody else", encoding="utf-8")
    answers.ready = [str(tmp_path / "other"), ""]
    open_desk.actions_by_key["save_as"].trigger()
    assert there.read_text(encoding="utf-8") == "of somebody else"
    answers.ready = [str(tmp_path / "other"), "over"]
    open_desk.actions_by_key["save_as"].trigger()
    assert open_desk.piece.path == there
    assert "harbour" in there.read_text(encoding="utf-8").lower()


def test_photos_and_the_shop_are_found_from_the_folder_that_a_piece_is_saved_to(
    open_desk: Window, answers: Answers, desk: Path, tmp_path: Path
) -> None:
    (tmp_path / "photos").mkdir()
    photo = QImage(20, 20, QImage.Format.Format_RGB32)
    photo.fill(QColor(200, 60, 40))
    assert photo.save(str(tmp_path / "photos" / "old.png"))
    (tmp_path / "shop.toml").write_text("format = 1\n", encoding="utf-8")
    settings = (Setting("photo.old.file", "photos/old.png"), Setting("piece.shop", "shop.toml"))
    open_desk.piece.set_values(settings, "Photo")
    assert "front" in open_desk.canvas.photos
    (tmp_path / "next" / "door").mkdir(parents=True)
    answers.ready = [str(tmp_path / "next" / "door" / "desk.piece")]
    open_desk.actions_by_key["save_as"].trigger()
    design = open_desk.piece.state.design
    assert design is not None
    assert design.photo["old"].file == "../../photos/old.png"
    assert design.piece.shop == "../../shop.toml"
    assert "front" in open_desk.canvas.photos
    assert not open_desk.piece.unsaved
    assert design.photo["old"].file in (tmp_path / "next" / "door" / "desk.piece").read_text(encoding="utf-8")
    count = open_desk.piece.undo.count()
    open_desk.actions_by_key["save"].trigger()
    assert open_desk.piece.undo.count() == count, "where it lies already nothing is set"


def test_a_photo_of_a_piece_that_was_never_saved_goes_beside_it(tmp_path: Path) -> None:
    text = sample_path("harbour-office-desk").read_text(encoding="utf-8")
    photo = tmp_path / "photos" / "old.png"
    design = state_of(text + f'\n[photo.old]\nfile = "{photo.as_posix()}"\n').design
    assert design is not None
    assert moved_with(design, None, tmp_path) == (Setting("photo.old.file", "photos/old.png"),)
    assert moved_with(design, tmp_path, tmp_path / "x") == (), "a path from the root on was a person's own"


@pytest.mark.parametrize("how", ["save", "close", "another file"])
@pytest.mark.parametrize("where", ["form", "dimension", "faults"])
def test_what_is_typed_and_not_set_yet_is_saved_or_asked_for(
    open_desk: Window, answers: Answers, desk: Path, how: str, where: str, qtbot
) -> None:
    """The cursor still stands in the field when a person saves, closes, or opens another file."""
    work = open_desk.work
    open_desk.activateWindow()
    if where == "form":
        work.form.go_to("case.width")
        line = work.form.widget_for("case.width")
        qtbot.waitUntil(line.hasFocus)
    elif where == "dimension":
        figure = next(f for f in open_desk.canvas.scene.figures if f.name == "Width")
        click(open_desk.canvas, open_desk.canvas.figure_place(figure.id).center())
        line = work.entry.line
    else:
        open_desk.piece.set_text(open_desk.piece.state.text.replace('width = "36"', "width = 36 0"), "Break")
        open_desk.piece.save()
        qtbot.keyClick(open_desk.faults.text, Qt.Key.Key_Home, Qt.KeyboardModifier.ControlModifier)
        qtbot.keyClicks(open_desk.faults.text, "# mended by hand")
        qtbot.keyClick(open_desk.faults.text, Qt.Key.Key_Return)
    if where != "faults":
        line.selectAll()
        qtbot.keyClicks(line, "38 1/2")
    typed = b"mended by hand" if where == "faults" else b'width = "38 1/2"'
    assert typed not in desk.read_bytes()
    if how == "save":
        open_desk.actions_by_key["save"].trigger()
        assert typed in desk.read_bytes()
        assert not open_desk.piece.unsaved
        return
    answers.ready = ["save"]
    if how == "close":
        open_desk.close()
    else:
        open_desk.filing.open(str(sample_path("plan-chest")))
    assert [question.title for question in answers.asked] == ["Not saved yet"]
    assert typed in desk.read_bytes()


def test_reading_again_says_what_it_gives_up(open_desk: Window, answers: Answers, desk: Path, qtbot) -> None:
    open_desk.piece.set_values((Setting("case.width", "40"),), "Wider")
    answers.ready = [""]
    desk.write_bytes(desk.read_bytes() + b"\n# elsewhere\n")
    qtbot.waitUntil(lambda: bool(answers.asked), timeout=5000)
    assert "isn't saved" in answers.asked[0].words
    assert value(open_desk, "case", "width") == "40"


def test_where_no_piece_is_shown_nothing_of_a_piece_can_be_done(open_desk: Window, answers: Answers) -> None:
    open_desk.piece.set_values((Setting("case.width", "40"),), "Wider")
    answers.ready = ["leave"]
    open_desk.actions_by_key["new"].trigger()
    for key in ("save", "save_as", "undo", "redo", "export", "print"):
        assert not open_desk.actions_by_key[key].isEnabled(), key
    assert open_desk.windowTitle() == "shopdraw"


@pytest.fixture
def read_only(tmp_path: Path) -> Path:
    """A folder in which this user can't write."""
    folder = tmp_path / "read-only"
    folder.mkdir()
    folder.chmod(0o500)
    return Path("/proc") if os.access(folder, os.W_OK) else folder  # the superuser may write in any other


def test_nothing_is_lost_and_the_reason_is_told_in_a_read_only_folder(
    open_desk: Window, answers: Answers, read_only: Path, tmp_path: Path, qtbot
) -> None:
    widen(open_desk)
    target = read_only / "desk.piece"
    answers.ready = [str(target), "again", "as", str(tmp_path / "here.piece")]
    open_desk.actions_by_key["save_as"].trigger()
    told = [question for question in answers.asked if question.title == "Not saved"]
    assert len(told) == 2, "tried again, then saved elsewhere"
    assert str(target) in told[0].words
    assert not target.exists()
    assert open_desk.piece.path == tmp_path / "here.piece"
    assert b'width = "37"' in (tmp_path / "here.piece").read_bytes()
    answers.asked.clear()
    answers.ready = [""]
    open_desk.doing.export(str(read_only / "package"))
    qtbot.waitUntil(lambda: bool(answers.asked), timeout=120_000)
    assert answers.asked[0].title == "The package is not written"
    assert str(read_only) in answers.asked[0].words


def test_files_of_late_are_offered_in_the_menu_and_on_the_first_page(
    open_desk: Window, answers: Answers, tmp_path: Path
) -> None:
    for name in ("one", "two"):
        file = tmp_path / f"{name}.piece"
        file.write_bytes(sample_path("plan-chest").read_bytes())
        open_desk.open_file(file)
    names = [action.text() for action in open_desk.recent_menu.actions()]
    assert names == ["two.piece", "one.piece", "harbour.piece"]
    open_desk.recent_menu.actions()[2].trigger()
    assert open_desk.piece.source == "harbour.piece"
    (tmp_path / "one.piece").unlink()
    assert [Path(path).name for path in open_desk.filing.recent()] == ["harbour.piece", "two.piece"]
