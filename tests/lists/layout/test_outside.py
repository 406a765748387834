"""The library in a process of its own: what it is asked, and what becomes of its answers."""

import json
import subprocess
import sys
import time
from pathlib import Path

import pytest

from shopdraw.lists.layout import outside
from shopdraw.lists.layout.boards import board_task
from shopdraw.lists.layout.bundle import prepared
from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.contender import Entry
from shopdraw.lists.layout.job import BoardJob, Job, Piece, SheetJob, Wanted
from shopdraw.lists.layout.lay_out import Layout
from shopdraw.lists.layout.panels import sheet_task

WANTED = (Wanted("a", 400, 300), Wanted("b", 500, 300, free=True))
SHEETS = SheetJob(WANTED, (Piece("sheet", 1000, 800, 1),), 3, 5)


def worker(tmp_path: Path, says: str) -> Path:
    """A worker that gives a prepared answer."""
    file = tmp_path / "worker.py"
    file.write_text(f"import sys, time\nsys.stdin.read()\n{says}\n", encoding="utf-8")
    return file


def entries(monkeypatch: pytest.MonkeyPatch, file: Path, job: Job, seconds: float = 5.0) -> list[Entry]:
    monkeypatch.setattr(outside, "_WORKER", file)
    monkeypatch.setattr(outside, "is_there", lambda: True)
    fit, bundles, _ = prepared(job)
    task = board_task(fit, bundles) if isinstance(fit, BoardJob) else sheet_task(fit, bundles)
    with outside.OutsideRun(task, time.monotonic() + seconds) as run:
        return run.entries()


def test_trees_of_cuts_become_layouts_that_pass_the_judge(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Kinds in order of size: b (0) lies turned beside a (1); sizes in thousandths of a mm, kerf included."""
    answer = [[0, ["crosscut", [[0, 303000, 503000], [1, 403000, 303000]]]]]
    found = entries(monkeypatch, worker(tmp_path, f"print({json.dumps(json.dumps(answer))})\n" * 2), SHEETS)
    assert len(found) == 2
    for entry in found:
        layout = Layout(SHEETS, entry.cut_up, 0.0, entry.contender)
        assert not faults_of_layout(layout)
        assert [laid.turned for laid in layout.cut_up[0].laid] == [True, False]


def test_filled_boards_become_layouts_that_pass_the_judge(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    job = BoardJob(WANTED, (Piece("board", 1000, 400, 1),), 3, 5)
    (entry,) = entries(monkeypatch, worker(tmp_path, 'print("[[0, [1, 1]]]")'), job)
    assert not faults_of_layout(Layout(job, entry.cut_up, 0.0, entry.contender))


@pytest.mark.parametrize("says", ["print('null')", "sys.exit(1)", "raise SystemError('broken')"])
def test_no_answer_is_an_empty_entry(monkeypatch: pytest.MonkeyPatch, tmp_path: Path, says: str) -> None:
    assert all(entry.cut_up is None for entry in entries(monkeypatch, worker(tmp_path, says), SHEETS))


def test_a_worker_that_runs_over_is_stopped(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    begun = time.monotonic()
    found = entries(monkeypatch, worker(tmp_path, "time.sleep(60)"), SHEETS, 1.0)
    assert time.monotonic() - begun < 10
    assert all(entry.cut_up is None and entry.hurried for entry in found)


def test_what_a_stopped_worker_has_said_by_then_counts(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    says = 'print("[[0, [1, 1]]]", flush=True)\nprint("[[0,", end="", flush=True)\ntime.sleep(60)'
    job = BoardJob(WANTED, (Piece("board", 1000, 400, 1),), 3, 5)
    (entry,) = entries(monkeypatch, worker(tmp_path, says), job, 2.0)
    assert entry.cut_up is not None
    assert entry.hurried


def test_where_the_library_is_there_it_answers_and_where_not_nothing_is_asked() -> None:
    fit, bundles, _ = prepared(SHEETS)
    with outside.OutsideRun(sheet_task(fit, bundles), time.monotonic() + 10) as run:
        found = run.entries()
    assert bool(found) is outside.is_there()
    for entry in found:
        assert entry.cut_up is not None
        assert not faults_of_layout(Layout(fit, entry.cut_up, 0.0, entry.contender))


def test_the_greeting_of_the_solver_never_reaches_our_output() -> None:
    code = "from shopdraw.lists.layout.master import quiet_solver; quiet_solver().run(); print('{}')"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout == "{}\n"
