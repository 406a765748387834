"""Crowded places: whatever is called so has a line inside, judged by GEOS."""

from __future__ import annotations

import random

import numpy as np
import shapely

from shopdraw.sheet.crowd import Crowd

HALF = 4.0


def test_a_crowded_box_has_a_line_inside_and_most_boxes_with_one_are_called_crowded() -> None:
    chance = random.Random(7)
    lines = []
    for _ in range(60):
        x, y = chance.uniform(-80.0, 80.0), chance.uniform(-50.0, 50.0)
        lines.append(((x, y), (x + chance.choice((0.3, 25.0, -40.0)), y + chance.choice((0.0, 12.0, -30.0)))))
    x = np.array([chance.uniform(-120.0, 120.0) for _ in range(2000)])
    y = np.array([chance.uniform(-90.0, 90.0) for _ in range(2000)])
    told = Crowd(lines).meets(x, y, HALF)
    drawn = shapely.union_all([shapely.LineString(line) for line in lines])
    inner = HALF - 1e-9
    met = shapely.intersects(shapely.box(x - inner, y - inner, x + inner, y + inner), drawn)
    assert not (told & ~met).any()
    assert told.sum() > 0.75 * met.sum() > 200


def test_paper_without_a_line_is_nowhere_crowded() -> None:
    assert not Crowd(()).meets(np.array([0.0, 0.5]), np.array([0.0, 0.5]), HALF).any()
