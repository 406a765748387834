"""Larger commands of the menus: a revision is frozen, views are written as pictures."""

from __future__ import annotations

import tomllib
from pathlib import Path

from PIL import Image

from shopdraw.cli import main
from shopdraw.editor.window import Window
from tests.editor.conftest import Answers
from tests.editor.test_canvas import value


def test_a_revision_is_frozen_as_one_step_and_the_command_line_tells_what_changed_since(
    lone: Window, answers: Answers, metric_desk: Path, tmp_path: Path, capsys
) -> None:
    lone.open_file(metric_desk)
    before = lone.piece.state.text
    answers.ready = ["B", "1L, 2"]
    lone.actions_by_key["freeze"].trigger()
    table = value(lone, "revision", "B")
    assert isinstance(table, dict)
    assembly = lone.piece.state.assembly
    assert assembly is not None
    assert [line.split()[0] for line in table["boards"]] == [board.id for board in assembly.boards]
    assert table["cut"] == ["1L", "2"]
    lone.piece.save()
    file = tomllib.loads(metric_desk.read_text(encoding="utf-8"))
    later = tmp_path / "later.piece"
    text = metric_desk.read_text(encoding="utf-8")
    later.write_text(text.replace(f"height = {file['case']['height']}", "height = 1055"), encoding="utf-8")
    main(["check", str(later)])
    assert "cut-board-wrong" in capsys.readouterr().out
    lone.piece.undo.undo()
    assert lone.piece.state.text == before


def test_what_cannot_be_frozen_is_said_and_changes_nothing(
    lone: Window, answers: Answers, metric_desk: Path, qtbot
) -> None:
    lone.open_file(metric_desk)
    for ready, said in ((["a b", ""], "letters and figures"), (["B", "99"], "label or id")):
        answers.ready = ready
        with qtbot.waitSignal(lone.work.said) as told:
            lone.doing.freeze()
        assert said in told.args[0]
    assert not lone.piece.unsaved


def test_views_are_written_as_svg_and_png(open_desk: Window, answers: Answers, tmp_path: Path, qtbot) -> None:
    folder = tmp_path / "pictures"
    folder.mkdir()
    answers.ready = [str(folder)]
    with qtbot.waitSignal(open_desk.doing.drawing.done, timeout=30_000):
        open_desk.actions_by_key["pictures"].trigger()
    vector, raster = sorted(folder.glob("*.svg")), sorted(folder.glob("*.png"))
    assert [file.stem for file in vector] == [file.stem for file in raster]
    assert any("front" in file.stem for file in vector)
    with Image.open(raster[0]) as image:
        assert image.width > 300
    assert f"{len(vector) + len(raster)} pictures" in open_desk.statusBar().currentMessage()
