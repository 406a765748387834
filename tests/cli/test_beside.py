"""Work done by another process: its outcome, its errors, its end."""

from __future__ import annotations

import os
import time
from pathlib import Path

import pytest

from shopdraw.cli.beside import Beside, EndedEarly, Other, Turns, may_split
from shopdraw.cli.refused import Refused, refused

WAYS = [False, *([True] if may_split(wholly=False) else [])]
"""A process from nothing everywhere; one split off where the system can."""


def told_twice(other: Other, added: int) -> tuple[int, int]:
    return os.getpid(), other.hear() + other.hear() + added


def tells_first(other: Other) -> str:
    other.tell("half done")
    return f"done {other.hear()}"


def tells_much(other: Other, file: Path) -> str:
    other.tell(b"-" * 5_000_000)
    other.tell("then this")
    file.write_text("went on")
    return "at last"


def takes(_other: object, turns: Turns) -> list[int]:
    return [number for number, _ in zip(turns, range(200), strict=False)]


def refuses(_other: object) -> None:
    raise refused("desk.piece: no such board")


def dies(_other: object) -> None:
    os._exit(7)


def waits(_other: object, file: Path) -> None:
    file.write_text(str(os.getpid()))
    time.sleep(60.0)


@pytest.mark.parametrize("split", WAYS)
def test_another_process_hears_what_it_is_told_and_gives_its_outcome(split: bool) -> None:
    with Beside(told_twice, 5, split=split) as other:
        other.tell(30)
        other.tell(7)
        process, total = other.outcome()
    assert process != os.getpid()
    assert total == 42


@pytest.mark.parametrize("split", WAYS)
def test_what_another_process_tells_is_heard_before_its_outcome(split: bool) -> None:
    with Beside(tells_first, split=split) as other:
        assert other.hear() == "half done"
        other.tell("at last")
        assert other.outcome() == "done at last"


@pytest.mark.parametrize("split", WAYS)
def test_who_tells_more_than_a_pipe_holds_goes_on_before_it_is_heard(split: bool, tmp_path: Path) -> None:
    file, begun = tmp_path / "further", time.monotonic()
    with Beside(tells_much, file, split=split) as other:
        while not file.exists() and time.monotonic() < begun + 30.0:
            time.sleep(0.01)
        assert file.exists()
        assert len(other.hear()) == 5_000_000
        assert other.hear() == "then this"
        assert other.outcome() == "at last"


@pytest.mark.parametrize("split", WAYS)
def test_a_refusal_in_another_process_is_raised_here(split: bool) -> None:
    with Beside(refuses, split=split) as other, pytest.raises(Refused) as told:
        other.outcome()
    assert told.value.lines == ("desk.piece: no such board",)


@pytest.mark.parametrize("split", WAYS)
def test_a_process_that_ends_without_a_word_is_an_error_not_a_wait(split: bool) -> None:
    with Beside(dies, split=split) as other, pytest.raises(EndedEarly, match="ended with 7"):
        other.outcome()


@pytest.mark.parametrize("split", WAYS)
def test_left_early_the_other_process_is_ended(split: bool, tmp_path: Path) -> None:
    file = tmp_path / "process"
    begun = time.monotonic()

    def given_up() -> None:
        with Beside(waits, file, split=split):
            while not (file.exists() and file.read_text()) and time.monotonic() < begun + 30.0:
                time.sleep(0.01)
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        given_up()
    with pytest.raises(ProcessLookupError):
        os.kill(int(file.read_text()), 0)
    assert time.monotonic() < begun + 40.0


def test_numbers_that_processes_share_are_each_told_once() -> None:
    if True not in WAYS:
        return
    turns = Turns()
    with Beside(takes, turns, split=True) as other:
        mine = [number for number, _ in zip(turns, range(200), strict=False)]
        theirs = other.outcome()
    taken = sorted([*mine, *theirs])
    assert len(set(taken)) == len(taken)
    assert {0, 1, 2} <= set(taken)
