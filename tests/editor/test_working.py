"""Views are made in a process of their own; what was begun while a hand passed isn't made a second time."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from shopdraw.editor.state import state_of
from shopdraw.editor.views import full_views
from shopdraw.editor.working import VIEWS, Working

SLOW_MS = 60_000


@pytest.fixture
def working(qtbot) -> Iterator[Working]:
    made = Working()
    made._check = lambda *_of: None  # type: ignore[method-assign]  # findings are no part of this
    made.done.disconnect()
    made.warm()
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


def test_what_a_hand_has_passed_is_given_up_and_where_it_stays_is_there_at_once(
    working: Working, desk: Path, qtbot
) -> None:
    """Ten sizes passed one after the other: nobody waits for the nine that nobody sees."""
    text = desk.read_text(encoding="utf-8")
    sizes = [f'width = "{quarters}/4"' for quarters in range(156, 166)]
    passed = [state_of(text.replace('width = "36"', size), rough=True) for size in sizes]
    assert len({state.text for state in passed}) == len(passed)
    for state in passed:
        working.ask_ahead(state)
    ahead = working._ahead
    assert ahead is not None
    assert ahead[1].result(SLOW_MS / 1e3).views is not None
    stays = state_of(passed[-1].text)
    with qtbot.waitSignal(working.done, timeout=SLOW_MS) as told:
        working.ask(stays)
    assert told.args[0] is stays, "built in full, not for a draft"
    assert told.args[1] is ahead[1].result()


def test_views_made_ahead_are_given_up_between_two_boards(desk: Path) -> None:
    state = state_of(desk.read_text(encoding="utf-8"))
    assert state.assembly is not None
    looked: list[int] = []
    assert full_views(state.assembly, stale=lambda: bool(looked.append(1)) or len(looked) > 3) is None  # type: ignore[func-returns-value]
    assert len(looked) == 4
