"""Handles inside the case: levels, columns, partitions, small shelves, drawn by real events; and what they say."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPointF

from shopdraw.editor.drag import Drag
from shopdraw.editor.handles import handles_of
from shopdraw.editor.state import Setting, state_of
from shopdraw.editor.window import Window
from shopdraw.piece import saving
from shopdraw.shipped import sample_path
from tests.editor.gestures import drag, move, press, release
from tests.editor.test_canvas import value
from tests.editor.test_figures import SAMPLES, opened


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


@pytest.mark.parametrize("sample", [*SAMPLES, "compartments"])
def test_every_handle_is_drawn_by_hand_and_undo_all_and_redo_all_give_both_files_byte_for_byte(
    lone: Window, tmp_path: Path, sample: str
) -> None:
    file = opened(lone, tmp_path, sample)
    canvas, undo = lone.canvas, lone.piece.undo
    before = file.read_bytes()
    names = [handle.id for handle in canvas.scene.handles]
    unmoved = []
    for name in names:
        count = undo.count()
        for by in (25.4, -25.4):
            handle = canvas.handle_named(name)
            if handle is None or undo.count() > count:
                break
            drag(canvas, name, (handle.along[0] * by, handle.along[1] * by))
            lone.grab()
        else:
            unmoved += [name] if undo.count() == count else []
        assert undo.count() <= count + 1, f"{name}: one drag is one step"
        assert lone.piece.state.sound
    assert len(unmoved) <= len(names) // 5, unmoved
    lone.piece.save()
    end = file.read_bytes()
    assert end != before
    while undo.canUndo():
        undo.undo()
    lone.piece.save()
    assert file.read_bytes() == before
    while undo.canRedo():
        undo.redo()
    lone.piece.save()
    assert file.read_bytes() == end


@pytest.mark.parametrize("sample", ["harbour-office-desk", "plan-chest", "mail-case", "compartments"])
def test_a_handle_holds_to_equal_parts_and_ratios_and_says_which(lone: Window, tmp_path: Path, sample: str) -> None:
    opened(lone, tmp_path, sample)
    canvas = lone.canvas
    told, tried = [], 0
    for handle in canvas.scene.handles:
        for magnet in handle.magnets:
            by = magnet.value - handle.value
            if handle.angle or not 8.0 < abs(by) < 120.0:
                continue
            tried += 1
            aside = 1.0 if by > 0 else -1.0
            drag(canvas, handle.id, (handle.along[0] * (by + aside), handle.along[1] * (by + aside)), let_go=False)
            words = [line for line, _ in canvas.label]
            if magnet.says in words:
                told.append(magnet.says)
                step = lone.work.hand._drag.step
                assert step.value == pytest.approx(magnet.value, abs=0.8), "kept as a length can be written"
            else:
                assert any("Stops here" in line for line in words) or len(words) > 1, (handle.id, words)
            canvas.give_up()
    assert tried > 0
    assert len(told) >= max(1, tried // 2)


def test_the_slant_is_drawn_by_its_angle_where_that_is_given(lone: Window, tmp_path: Path) -> None:
    opened(lone, tmp_path, "harbour-office-desk")
    lone.piece.set_values((Setting("slant.top_depth", None), Setting("slant.angle", 50)), "Angle")
    lone.grab()
    handle = next(one for one in lone.canvas.scene.handles if one.id.startswith("slant.angle"))
    assert handle.angle
    drag(lone.canvas, handle.id, (handle.along[0] * 40.0, handle.along[1] * 40.0))
    angle = value(lone, "slant", "angle")
    assert angle != 50
    assert 5 < float(str(angle)) < 85
    assert value(lone, "slant", "top_depth") is None


@pytest.mark.parametrize("layers", [(), ("swing", "travel", "section")])
@pytest.mark.parametrize("sample", [*SAMPLES, "compartments"])
def test_a_handle_goes_as_far_as_the_hand_however_often_the_hand_moves(
    lone: Window, tmp_path: Path, sample: str, layers: tuple[str, ...]
) -> None:
    """Where a view stands depends on the sizes that are drawn: it must not run away under the hand."""
    opened(lone, tmp_path, sample)
    for layer in layers:
        lone.actions_by_key[layer].trigger()
    canvas, tried = lone.canvas, 0
    for name in [handle.id for handle in canvas.scene.handles if not handle.angle]:
        lone.grab()
        handle = canvas.handle_named(name)
        assert handle is not None
        start, zoom = canvas.handle_place(handle), canvas.sight.zoom
        end = QPointF(handle.along[0], -handle.along[1]) * 36.0 * zoom
        press(canvas, start)
        for part in range(1, 31):
            move(canvas, start + end * (part / 30))
        drawn = lone.work.hand._drag
        assert drawn is not None
        if not drawn.step.limit:
            tried += 1
            gone = abs(drawn.step.value - handle.value)
            assert gone == pytest.approx(36.0, abs=canvas.scaled_reach() + 8.0), name
        canvas.give_up()
        release(canvas, start + end)
    assert tried > 3
