"""Handles inside the case: levels, columns, partitions, small shelves, drawn by real events; and what they say."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPointF

from shopdraw.editor.drag import Drag
from shopdraw.editor.handles import handles_of
from shopdraw.editor.state import state_of
from shopdraw.editor.window import Window
from shopdraw.piece import saving
from shopdraw.shipped import sample_path
from tests.editor.gestures import drag, move, press, release
from tests.editor.test_canvas import value
from tests.editor.test_figures import opened


@pytest.mark.parametrize(
    ("sample", "handle", "by_mm", "keys", "expected"),
    [
        ("mail-case", "level.2.top@front", (0.0, 60.0), ("level", "2", "top"), 620),
        ("mail-case", "level.1.top@front", (0.0, -80.0), ("level", "1", "top"), 250),
        ("mail-case", 'opening."C.2".divide/1@front', (20.0, 0.0), ("opening", "C.2", "divide", "sizes"), [235, 194.3]),
        ("plan-chest", 'opening."bank.1".divide/1@front', (-30.0, 0.0), ("opening", "bank.1", "divide", "sizes"),
         [330]),
        ("tide-lectern", "level.1.top@front", (0.0, 63.5), ("level", "1", "top"), "22 1/2"),
        ("compartments", "compartments.1.width@front", (40.0, 0.0), ("compartments", "1", "width"), 245),
        ("compartments", "compartments.2.shelves/1@front", (0.0, 10.0), ("compartments", "2", "shelves"), [100]),
        ("harbour-office-desk", "case.top_rail@front", (0.0, -12.7), ("case", "top_rail"), "2"),
        ("harbour-office-desk", "base.height@front", (0.0, 25.4), ("base", "height"), "4 1/2"),
    ],
)  # fmt: skip
def test_a_drag_inside_the_case_sets_its_input(
    lone: Window, tmp_path: Path, sample: str, handle: str, by_mm, keys, expected
) -> None:
    opened(lone, tmp_path, sample)
    drag(lone.canvas, handle, by_mm)
    assert value(lone, *keys) == expected
    assert lone.piece.undo.count() == 1


@pytest.mark.parametrize(
    ("sample", "handle", "by_mm"),
    [
        ("plan-chest", "opening.bank.divide/1@front", (0.0, -20.0)),
        ("plan-chest", 'opening."bank.1".divide/1@front', (30.0, 0.0)),
        ("mail-case", "opening.C.divide/1@front", (0.0, -20.0)),
        ("logbook-shelves", "level.3.top@front", (0.0, 32.0)),
        ("compartments", "compartments.1.width@front", (40.0, 0.0)),
    ],
)
def test_dragging_what_a_rule_made_gives_the_sizes_and_says_so(
    lone: Window, tmp_path: Path, qtbot, sample: str, handle: str, by_mm
) -> None:
    opened(lone, tmp_path, sample)
    with qtbot.waitSignal(lone.work.hand.said) as said:
        drag(lone.canvas, handle, by_mm)
    assert "given" in said.args[0]


def test_a_level_and_the_shelf_of_a_division_with_the_same_last_key_are_two() -> None:
    """The mail case has level 1 at 330 mm and a shelf under row C.1, far above it."""
    state = state_of(sample_path("mail-case").read_text(encoding="utf-8"))
    at = {handle.id: handle.value for handle in handles_of(state)}
    assert at["level.1.top@front"] == 330.0



@pytest.mark.parametrize("handle_id", ["case.width@front", "slant.writing_height@side", "opening.bank.divide/1@front"])
def test_a_step_of_a_drag_takes_no_file_apart(monkeypatch: pytest.MonkeyPatch, handle_id: str) -> None:
    """A file is taken apart when a hand takes hold; its moves put their values in."""
    state = state_of(sample_path("harbour-office-desk").read_text(encoding="utf-8"))
    handle = next(handle for handle in handles_of(state) if handle.id == handle_id)
    held = Drag(state, handle, handle.at)
    held.prepare()

    def taken_apart(_text: str) -> None:
        raise AssertionError("a step took the file apart")

    monkeypatch.setattr(saving.tomlkit, "parse", taken_apart)
    monkeypatch.setattr(saving, "_document", taken_apart)
    for by in (1.0, 2.0, 3.0):
        assert held.to_value(handle.value + by, fine=True).state.text != state.text


def test_moves_within_one_size_show_the_draft_that_is_there(lone: Window, tmp_path: Path) -> None:
    """A hand moves many times before the next step of a size is reached: nothing is worked out for that."""
    opened(lone, tmp_path, "harbour-office-desk")
    canvas = lone.canvas
    handle = canvas.handle_named("case.width@front")
    assert handle is not None
    start = canvas.handle_place(handle)
    press(canvas, start)
    move(canvas, start + QPointF(40.0, 0.0))
    passed = canvas.scene
    for _ in range(3):
        move(canvas, start + QPointF(40.0, 0.0))
    assert canvas.scene is passed
    move(canvas, start + QPointF(60.0, 0.0))
    assert canvas.scene is not passed
    release(canvas, start + QPointF(60.0, 0.0))
