"""How long the program takes from start to exit, beside Python itself, and how much memory it needs.

Run it by hand: `make bench`. It prints medians; nothing here passes or fails by the clock.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from pathlib import Path

from shopdraw.shipped import sample_names, sample_path

RUNS = 5
KB_PER_MB = 1024
SAMPLES = ((sample_names()[0], 1, 5), ("harbour-office-desk", 1, 5), ("harbour-master-desk", 2, 10))
"""The desk that `make demo` exports, one of 54 boards and one of 103; seconds that facts and export may take."""


def once(command: Sequence[str]) -> tuple[float, float]:
    """Seconds from start to exit, and the largest memory of that process, MB."""
    before = time.perf_counter()
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, usage = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        raise SystemExit(f"{' '.join(command)} ended with {process.returncode}")
    return time.perf_counter() - before, usage.ru_maxrss / KB_PER_MB


def median(command: Sequence[str]) -> tuple[float, float]:
    runs = [once(command) for _ in range(RUNS)]
    return statistics.median(seconds for seconds, _ in runs), max(memory for _, memory in runs)


def main() -> None:
    program = [sys.executable, "-m", "shopdraw"]
    bare, _ = median([sys.executable, "-c", "pass"])
    shown, _ = median([*program, "--help"])
    print(f"python -c pass       {1000 * bare:6.0f} ms")
    print(f"shopdraw --help      {1000 * shown:6.0f} ms   {shown / bare:.2f} x (aim: under 3)")
    with tempfile.TemporaryDirectory() as place:
        for name, facts_s, export_s in SAMPLES:
            for words, aim in (
                (["check"], ""),
                (["facts"], f"aim: under {facts_s} s"),
                (["export"], f"aim: under {export_s} s, 400 MB"),
            ):
                target = [str(Path(place) / name)] if words == ["export"] else []
                seconds, memory = median([*program, *words, str(sample_path(name)), *target])
                print(f"{name:<22}{words[0]:<8}{1000 * seconds:6.0f} ms   {memory:.0f} MB   {aim}")


if __name__ == "__main__":
    main()
