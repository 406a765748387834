"""No search for rings of dead values while a hand is at work or waits for its views; it comes when all is quiet."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtWidgets import QApplication

from shopdraw.editor import run
from shopdraw.editor.tidying import MOST_NEW, Tidying
from shopdraw.editor.window import Window
from tests.editor.gestures import move, press, release


@pytest.fixture(autouse=True)
def _searched_again() -> Iterator[None]:
    yield
    gc.enable()
    gc.unfreeze()


def test_a_drag_puts_the_search_off_until_it_is_quiet(open_desk: Window, qtbot) -> None:
    lone = open_desk
    tidying = lone.work.hand.tidying
    tidying._quiet.setInterval(200)
    canvas = lone.canvas
    handle = canvas.handle_named("case.width@front")
    assert handle is not None
    at = canvas.handle_place(handle)
    assert gc.isenabled()
    press(canvas, at)
    move(canvas, at + QPointF(30.0, 0.0))
    assert not gc.isenabled()
    searched: list[int] = []
    gc.callbacks.append(lambda phase, told: searched.append(told["generation"]) if phase == "start" else None)
    try:
        release(canvas, at + QPointF(30.0, 0.0))
        assert lone.canvas.scene.lines is not None
        assert not searched, "the hand has let go, and its views are shown, without a search"
        qtbot.waitUntil(gc.isenabled, timeout=5_000)
    finally:
        gc.callbacks.pop()


def test_a_hand_that_comes_back_puts_the_search_off_again(qtbot) -> None:
    tidying = Tidying()
    tidying._quiet.setInterval(60)
    tidying.hold()
    tidying.let_go()
    tidying.hold()
    qtbot.wait(120)
    assert not gc.isenabled()
    tidying.let_go()
    qtbot.waitUntil(gc.isenabled, timeout=5_000)


def test_a_hand_that_is_never_quiet_leaves_no_long_search(qtbot) -> None:
    """What piles up over one drag is searched when the next one takes hold; a little isn't worth a search."""
    tidying = Tidying()
    tidying.hold()
    searched: list[int] = []
    gc.callbacks.append(lambda phase, told: searched.append(told["generation"]) if phase == "start" else None)
    try:
        piled = [[number] for number in range(MOST_NEW // 2)]
        tidying.let_go()
        tidying.hold()
        assert searched == []
        piled += [[number] for number in range(MOST_NEW)]
        tidying.let_go()
        tidying.hold()
        assert searched == [2]
        assert gc.get_count()[0] < MOST_NEW / 2
    finally:
        gc.callbacks.pop()
    assert piled


def test_an_export_isnt_held_up_by_a_search(lone: Window, qtbot, monkeypatch) -> None:
    tidying = lone.work.hand.tidying
    tidying._quiet.setInterval(60)
    monkeypatch.setattr(type(lone.doing.exporting), "busy", True)
    tidying.hold()
    tidying.let_go()
    qtbot.wait(200)
    assert not gc.isenabled()
    monkeypatch.setattr(type(lone.doing.exporting), "busy", False)
    qtbot.waitUntil(gc.isenabled, timeout=5_000)


def test_a_window_that_goes_leaves_the_search_on(qtbot) -> None:
    tidying = Tidying()
    tidying.hold()
    tidying.let_go()
    tidying.deleteLater()
    qtbot.waitUntil(gc.isenabled, timeout=5_000)


def test_views_that_come_after_the_draft_give_the_picture_that_is_made_anew(open_desk: Window, desk: Path) -> None:
    """The draft's figures and handles stay when the lines come: the canvas looks as one opened on the same text."""
    lone = open_desk
    canvas = lone.canvas
    handle = canvas.handle_named("case.width@front")
    assert handle is not None
    at = canvas.handle_place(handle)
    press(canvas, at)
    for step in (20.0, 45.0, 30.0):
        move(canvas, at + QPointF(step, 0.0))
    release(canvas, at + QPointF(30.0, 0.0))
    move(canvas, QPointF(3.0, 3.0), held=False)
    shown = canvas.grab().toImage()
    scene = canvas.scene
    text = lone.piece.state.text
    desk.write_text(text, encoding="utf-8")
    lone.open_file(desk)
    move(canvas, QPointF(3.0, 3.0), held=False)
    assert (canvas.scene.lines, canvas.scene.faces) == (scene.lines, scene.faces)
    assert canvas.grab().toImage() == shown


def test_a_program_that_starts_searches_when_its_window_is_up(make_window, qtbot, monkeypatch) -> None:
    """Loading isn't held up by searches; what was loaded is never searched, and later rings are found again."""
    window = make_window()
    window.work.hand.tidying._quiet.setInterval(60)
    seen: list[bool] = []
    monkeypatch.setattr("shopdraw.editor.start.Window", lambda: seen.append(gc.isenabled()) or window)

    def stay(_app: QApplication) -> int:
        window.working.close()
        seen.append(gc.isenabled())
        qtbot.waitUntil(gc.isenabled, timeout=5_000)
        return 0

    monkeypatch.setattr("shopdraw.editor.start.signal.signal", lambda _number, _does: None)
    monkeypatch.setattr(QApplication, "exec", stay)
    assert run(None) == 0
    assert seen == [False, False]
    assert gc.get_freeze_count() > 10_000
