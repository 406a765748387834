"""How long views and sections of a piece of over a hundred boards take once its solids exist.

Run it by hand: `make bench`. It prints medians of processor time, which other programs disturb
least; nothing here passes or fails by the clock.
"""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable

from shopdraw.build import build
from shopdraw.piece.reading import parse_piece
from shopdraw.view import projection, section
from shopdraw.view.direction import FRONT, ISOMETRIC, PLAN, RIGHT_SIDE
from shopdraw.wood.facet import facets

RUNS = 9
KEYS = [str(key) for key in range(1, 12)]
TALL_DESK = f"""
[piece]
kind = "slant-desk"
units = "mm"
[case]
width = 900
height = 1900
depth = 480
[slant]
writing_height = 1600
top_depth = 230
[opening.bank]
divide = {{ rule = "equal", keys = {KEYS} }}
"""


def median(what: Callable[[], object]) -> float:
    """Median seconds of processor time of several runs, views and sections forgotten before each."""
    times = []
    for _ in range(RUNS):
        projection.forget()
        section.forget()
        before = time.process_time()
        what()
        times.append(time.process_time() - before)
    return statistics.median(times)


def main() -> None:
    boards = build(parse_piece(TALL_DESK, "tall desk").design).boards
    before = time.process_time()
    for board in boards:
        facets(board.shape)
    made = time.process_time() - before
    print(f"{len(boards)} boards; their solids, made once          {1000 * made:6.1f} ms   aim: under 300 ms")
    three = median(lambda: [projection.project(boards, way) for way in (FRONT, RIGHT_SIDE, PLAN)])
    print(f"front, right side and plan, hidden lines   {1000 * three:6.1f} ms   aim: under 100 ms")
    picture = median(lambda: projection.project(boards, ISOMETRIC, hidden=False))
    print(f"isometric picture, visible lines           {1000 * picture:6.1f} ms   aim: under 500 ms")
    plane = section.Plane(RIGHT_SIDE, (450.5, 0.0, 0.0))
    cut = median(lambda: section.section(boards, plane, 0.2))
    print(f"section A–A, its boards cut anew           {1000 * cut:6.1f} ms")


if __name__ == "__main__":
    main()
