"""Every dimension on the canvas: clicked and typed into by real events, over pieces of every kind."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from shopdraw.editor.figure import Figure
from shopdraw.editor.figures import figures_of
from shopdraw.editor.state import Setting, state_of
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_names, sample_path
from tests.editor.gestures import click

SAMPLES = sample_names()
COMPARTMENTS = '\n[compartments]\nbays = 4\nshelves = ["90 mm"]\n'
STEPS_MM = (6.0, -6.0, *(float(by) for by in range(1, 33)))
"""Shelves on pins lie on holes 32 mm apart: one of 32 steps in a row comes to lie on one."""


def text_of(sample: str) -> str:
    if sample == "compartments":
        return sample_path("chart-room-desk").read_text(encoding="utf-8") + COMPARTMENTS
    return sample_path(sample).read_text(encoding="utf-8")


def opened(window: Window, tmp_path: Path, sample: str) -> Path:
    file = tmp_path / f"{sample}.piece"
    file.write_text(text_of(sample), encoding="utf-8")
    window.open_file(file)
    assert window.piece.state.sound, window.piece.state.faults
    window.grab()
    return file


def figure(window: Window, name: str) -> Figure:
    return next(one for one in window.canvas.scene.figures if one.id == name)


def type_into(window: Window, qtbot, name: str, typed: str) -> bool:
    """Clicks a dimension and types; whether it was taken."""
    canvas, entry = window.canvas, window.work.entry
    window.grab()
    place = canvas.figure_place(name)
    assert not place.isEmpty(), name
    click(canvas, place.center())
    if not entry.isVisible():  # a small space, a handle over its figure: nearer, they stand apart
        canvas.zoom(4.0, place.center())
        window.grab()
        click(canvas, canvas.figure_place(name).center())
        canvas.fit()
    assert entry.isVisible(), name
    entry.line.selectAll()
    qtbot.keyClicks(entry.line, typed)
    qtbot.keyClick(entry.line, Qt.Key.Key_Return)
    taken = not entry.isVisible()
    entry.close_slip()
    return taken


@pytest.mark.parametrize("sample", [*SAMPLES, "compartments"])
def test_every_dimension_takes_what_is_typed_and_undo_all_gives_the_file_back(
    lone: Window, qtbot, tmp_path: Path, sample: str
) -> None:
    file = opened(lone, tmp_path, sample)
    before = file.read_bytes()
    typed = 0
    for name in [one.id for one in lone.canvas.scene.figures]:
        here = figure(lone, name)
        if here.sets is None:
            continue
        typed += 1
        for by in STEPS_MM:
            wanted = here.value + (by / 3 if here.angle else by)
            if type_into(lone, qtbot, name, f"{wanted:.2f}" + ("" if here.angle else " mm")):
                assert figure(lone, name).value == pytest.approx(wanted, abs=0.21), name
                break
        else:
            pytest.fail(f"{name} takes nothing: {lone.work.entry.hint}")
    assert lone.piece.undo.count() == typed
    lone.piece.save()
    at_end = file.read_bytes()
    while lone.piece.undo.canUndo():
        lone.piece.undo.undo()
    lone.piece.save()
    assert file.read_bytes() == before
    while lone.piece.undo.canRedo():
        lone.piece.undo.redo()
    lone.piece.save()
    assert file.read_bytes() == at_end


@pytest.mark.parametrize("sample", [*SAMPLES, "compartments"])
def test_a_dimension_that_is_no_input_says_what_drives_it_and_leads_there(
    lone: Window, qtbot, tmp_path: Path, sample: str
) -> None:
    opened(lone, tmp_path, sample)
    for one in lone.canvas.scene.figures:
        if one.sets is None:
            assert one.says, one.id
            assert one.drives, one.id
        for address in one.drives:
            lone.work.go_to(address)
            widget = lone.work.form.widget_for(address)
            assert widget.isVisibleTo(lone), (one.id, address)


@pytest.mark.parametrize("sample", [*SAMPLES, "compartments"])
def test_every_drawer_opening_shelf_and_divider_has_a_dimension_at_each_of_its_edges(sample: str) -> None:
    state = state_of(text_of(sample))
    assembly = state.assembly
    assert assembly is not None
    figures = [one for one in figures_of(state) if one.view == "front" and one.side != "slant"]
    heights = {round(end[1], 1) for one in figures if one.side in ("left", "right") for end in (one.a, one.b)}
    widths = {round(end[0], 1) for one in figures if one.side in ("above", "below") for end in (one.a, one.b)}
    for opening in assembly.openings:
        if opening.use == "drawer":
            assert {round(opening.bottom, 1), round(opening.bottom + opening.height, 1)} <= heights, opening.id
    for level in assembly.levels:
        assert round(level.top, 1) in heights, level.id
    for board in assembly.boards:
        if board.member == "divider" and assembly.slant is None:
            at = board.frame.at[0]
            edges = {round(at, 1), round(at - board.thickness, 1), round(at + board.thickness, 1)}
            assert len(edges & widths) >= 2, board.id


def test_a_level_whose_height_followed_says_so_and_typing_gives_it(lone: Window, qtbot, tmp_path: Path) -> None:
    opened(lone, tmp_path, "logbook-shelves")
    assert "shares the space" in figure(lone, "floor/level.3@front").says
    assert type_into(lone, qtbot, "floor/level.3@front", "992")
    design = lone.piece.state.design
    assert design is not None
    assert design.level["3"].top == 992.0
    assert figure(lone, "floor/level.3@front").says == ""


def test_a_clear_height_moves_the_level_above_it(lone: Window, qtbot, tmp_path: Path) -> None:
    opened(lone, tmp_path, "mail-case")
    assert type_into(lone, qtbot, "opening.A@front", "200")
    design = lone.piece.state.design
    assert design is not None
    assert design.level["1"].top == 90 + 200 + 20, "bottom's upper face, the clear height, the frame"


def test_levels_are_measured_from_the_floor_the_higher_the_further_out() -> None:
    figures = figures_of(state_of(text_of("logbook-shelves")))
    rows = [(one.value, one.row) for one in figures if one.id.startswith("floor/") and one.view == "front"]
    assert [row for _, row in sorted(rows)] == list(range(2, 2 + len(rows)))


def test_a_desk_without_a_bank_in_its_file_still_offers_the_rule_of_its_drawers(lone: Window, tmp_path: Path) -> None:
    text = text_of("chart-room-desk")
    assert "[opening.bank]" in text or "opening.bank" in text
    lines = [line for line in text.splitlines() if "opening.bank" not in line and not line.startswith("divide")]
    file = tmp_path / "bare.piece"
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    lone.open_file(file)
    lone.work.go_to("opening.bank.divide.rule")
    assert lone.work.form.widget_for("opening.bank.divide.rule").isVisibleTo(lone)
    assert lone.piece.set_values((Setting("opening.bank.divide.rule", "equal"),), "Rule")
