"""A long job in a process of its own: its answer, its breakdown, giving it up."""

from __future__ import annotations

import math
import time

from shopdraw.editor.apart import Apart


def test_the_answer_comes_back(qtbot) -> None:
    job = Apart()
    with qtbot.waitSignal(job.done, timeout=30_000) as said:
        job.begin(math.hypot, 3.0, 4.0)
    assert said.args == [5.0]
    assert not job.busy
    job.close()


def test_a_breakdown_is_a_sentence(qtbot) -> None:
    job = Apart()
    with qtbot.waitSignal(job.failed, timeout=30_000) as said:
        job.begin(math.sqrt, -1.0)
    assert "ValueError" in said.args[0]
    job.close()


def test_giving_up_ends_the_process_at_once_and_another_job_can_begin(qtbot) -> None:
    job = Apart()
    job.begin(time.sleep, 60.0)
    began = time.monotonic()
    with qtbot.waitSignal(job.given_up):
        job.give_up()
    assert time.monotonic() - began < 20
    assert not job.busy
    with qtbot.waitSignal(job.done, timeout=30_000) as said:
        job.begin(math.sqrt, 9.0)
    assert said.args == [3.0]
    job.close()
