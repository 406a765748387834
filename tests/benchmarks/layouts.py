"""Layouts against published instances: our value, the best known one, our lower bound, the time.

    python tests/benchmarks/layouts.py [FOLDER [boards|sheets|turned|furniture|cost ...]]

Without a folder: jobs of furniture's size made up here, beside our own lower bound. FOLDER holds the instances (they
aren't part of this repository): bin_packing_1d.json (Falkenauer; Scholl, Klein and Juergens; Schwerin and Waescher;
Waescher and Gau; Schoenfield), bin_packing_2d.json (Berkey and Wang; Martello and Vigo), furniture_case_A.json and
multi_sheet_cost_2d.json (Cintra et al.). Every layout is judged by the checker.
"""

from __future__ import annotations

import json
import math
import platform
import random
import sys
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.job import BoardJob, Job, Piece, SheetJob, Wanted
from shopdraw.lists.layout.lay_out import lay_out
from shopdraw.lists.layout.outside import is_there

Case = tuple[str, Job, float, bool]
"""Name, job, best known value, whether that is known to be the least."""


def main(words: list[str]) -> int:
    if not words:
        run("made up", made_up())
        return 0
    if not Path(words[0]).is_dir():
        sys.stderr.write(f"layouts.py: {words[0]}: expected the folder of the instances\n")
        return 2
    folder = Path(words[0])
    chosen = words[1:] or list(SETS)
    print(f"Python {platform.python_version()}, packingsolver {'there' if is_there() else 'not there'}")
    for name in chosen:
        run(name, SETS[name](folder))
    return 0


def run(title: str, cases: Iterator[Case]) -> None:
    print(f"\n{title:22} {'value':>10} {'best':>10} {'bound':>10} {'time s':>7}  by")
    met = closed = worst = 0
    slowest = 0.0
    for name, job, best, sure in cases:
        begun = time.monotonic()
        layout = lay_out(job)
        took = time.monotonic() - begun
        faults = faults_of_layout(layout)
        above = layout.cost - best
        slowest = max(slowest, took)
        if sure:
            closed += 1
            met += above <= 1e-6
            worst = max(worst, round(above))
        mark = f"  {above:+g}" if above > 1e-6 else ""
        wrong = f"  WRONG: {faults[0]}" if faults else ""
        print(f"{name:22} {layout.cost:10g} {best:10g} {layout.bound:10g} {took:7.2f}  "
              f"{layout.contender}{' (clock)' if layout.hurried else ''}{mark}{wrong}", flush=True)
    told = f"{met} of {closed} at the best known value, at most {worst} above, " if closed else ""
    print(f"{title}: {told}slowest {slowest:.2f} s")


def instances(folder: Path, name: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = json.loads((folder / name).read_text(encoding="utf-8"))["instances"]
    return found


def boards(folder: Path) -> Iterator[Case]:
    for one in instances(folder, "bin_packing_1d.json"):
        job = BoardJob(
            tuple(Wanted(f"{length}-{i}", length, 1) for length, copies in one["items"] for i in range(copies)),
            (Piece("board", one["capacity"], 1, 1),), 0,
        )
        yield one["name"], job, one["best_known"], not one["status"].startswith("open")


def sheets(folder: Path, *, turned: bool = False) -> Iterator[Case]:
    for one in instances(folder, "bin_packing_2d.json"):
        best = one["best_known"]["guillotine_3stage_rotated" if turned else "guillotine_3stage_oriented"]
        yield one["name"], sheet_job(one["items"], [[*one["sheet"], 1]], turned), best, True


def cost(folder: Path) -> Iterator[Case]:
    for one in instances(folder, "multi_sheet_cost_2d.json"):
        for turned in (False, True):
            best = one["best_known"]["2stage_rotated" if turned else "2stage_oriented"]["cost"]
            name = one["name"] + (" turned" if turned else "")
            yield name, sheet_job(one["items"], one["sheets"], turned), best, False


def sheet_job(items: list[list[int]], sizes: list[list[int]], turned: bool) -> SheetJob:
    return SheetJob(
        tuple(Wanted(f"{i}-{k}", w, h, free=turned) for i, (w, h, copies) in enumerate(items) for k in range(copies)),
        tuple(Piece(f"{w}x{h}", w, h, price) for w, h, price in sizes), 0,
    )


def made_up() -> Iterator[Case]:
    """Boards and sheets for pieces of furniture by chance of a fixed seed; nobody else knows their least cost."""
    chance = random.Random(1)
    for number in range(4):
        wanted = tuple(Wanted(f"{i}", chance.randint(150, 1900), 90) for i in range(20 + 10 * number))
        job: Job = BoardJob(wanted, tuple(Piece(f"{feet} ft", feet * 304.8, 140, 2.5 * feet) for feet in (8, 10, 12)),
                            3.2, 25.0)
        yield f"boards {len(wanted)}", job, math.nan, False
        parts = tuple(Wanted(f"{i}", chance.randint(200, 1100), chance.randint(100, 700), free=i % 2 == 0)
                      for i in range(10 + 10 * number))
        job = SheetJob(parts, (Piece("4x8", 2438.4, 1219.2, 1),), 3.2, 5.0)
        yield f"sheets {len(parts)}", job, math.nan, False


def furniture(folder: Path) -> Iterator[Case]:
    case = json.loads((folder / "furniture_case_A.json").read_text(encoding="utf-8"))
    for name, parts in case["boards"].items():
        wanted = tuple(Wanted(f"{i}-{k}", length, 1) for i, (length, n) in enumerate(parts) for k in range(n))
        prices = case["board_prices_8_10_12ft"][name]
        stock = tuple(Piece(str(length), length, 1, price)
                      for length, price in zip((2438.4, 3048.0, 3657.6), prices, strict=True))
        yield name, BoardJob(wanted, stock, 3.2, 25.0), case["best_known"][f"{name} cost"], True
    for name, parts in case["sheets"].items():
        wanted = tuple(Wanted(f"{i}-{k}", length, width, free=not locked)
                       for i, (length, width, n, locked) in enumerate(parts) for k in range(n))
        job = SheetJob(wanted, (Piece("sheet", 2438.4, 1219.2, 1),), 3.2, 5.0)
        yield name, job, case["best_known"][f"{name} sheets"], True


SETS: dict[str, Callable[[Path], Iterator[Case]]] = {
    "furniture": furniture,
    "boards": boards,
    "sheets": sheets,
    "turned": lambda folder: sheets(folder, turned=True),
    "cost": cost,
}

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
