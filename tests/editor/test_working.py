"""Views are made in a process of their own; what was begun while the hand rested isn't made a second time."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from shopdraw.editor.state import state_of
from shopdraw.editor.working import VIEWS, Working

SLOW_MS = 60_000


@pytest.fixture
def working(qtbot) -> Iterator[Working]:
    made = Working()
    made._check = lambda *_of: None  # type: ignore[method-assign]  # findings are no part of this
    made.done.disconnect()
    yield made
    made.close()


def test_views_begun_ahead_are_the_ones_that_are_shown(working: Working, desk: Path, qtbot) -> None:
    state = state_of(desk.read_text(encoding="utf-8"))
    jobs: list[object] = []
    pool = working._executor(VIEWS)
    submit = pool.submit
    pool.submit = lambda *of: jobs.append(of) or submit(*of)  # type: ignore[method-assign, func-returns-value]
    working.ask_ahead(state)
    with qtbot.waitSignal(working.done, timeout=SLOW_MS) as told:
        working.ask(state)
    assert told.args[0] is state
    assert set(told.args[1].views) == {"front", "side", "plan"}
    assert len(jobs) == 1


def test_views_begun_ahead_of_another_state_are_not_shown(working: Working, desk: Path, qtbot) -> None:
    text = desk.read_text(encoding="utf-8")
    state, other = state_of(text), state_of(text.replace('width = "36"', 'width = "37"'))
    assert other.text != state.text
    told: list[object] = []
    working.done.connect(lambda of, _worked: told.append(of))
    working.ask_ahead(other)
    working.ask(state)
    qtbot.waitUntil(lambda: bool(told), timeout=SLOW_MS)
    qtbot.wait(200)
    assert told == [state]
