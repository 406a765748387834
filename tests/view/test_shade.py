"""The shade of flat faces: whatever a cell promises to hide, rays find hidden."""

import random

import numpy as np
import pytest

from shopdraw.view.scene import scene
from shopdraw.view.shade import Shade, parted, shade, spread
from shopdraw.view.standing import Shown, standing
from shopdraw.view.wide_face import wide_faces
from shopdraw.wood.facet import facets
from tests.view.judge import Judge
from tests.view.test_projection import CASES, DIRECTIONS, PIECES


def _scene(boards, direction):
    return scene(standing([Shown(facets(b.shape), b.frame) for b in boards]), direction)


@pytest.mark.parametrize(("boards", "direction"), CASES)
def test_rays_through_shaded_cells_meet_wood_at_least_as_near(boards, direction):
    found = _scene(boards, direction)
    grid, judge, chance = shade(found, wide_faces(found)[0], found.edges), Judge(boards, direction), random.Random(3)
    cells = np.argwhere(np.isfinite(grid.depth))
    assert len(cells) > 0
    for row, column in chance.sample(cells.tolist(), min(150, len(cells))):
        part = chance.choice([(0.001, 0.001), (0.999, 0.001), (0.5, 0.5), (0.001, 0.999), (0.999, 0.999)])
        at = (grid.left + (column + part[0]) * grid.size, grid.foot + (row + part[1]) * grid.size)
        seen = judge.seen(at)
        assert seen is not None
        assert seen.depth >= grid.depth[row, column] - 1e-6


def test_a_cell_promised_too_near_is_caught():
    boards, direction = PIECES["cupboard"], DIRECTIONS["slantwise"]
    found = _scene(boards, direction)
    grid, judge = shade(found, wide_faces(found)[0], found.edges), Judge(boards, direction)
    row, column = np.argwhere(np.isfinite(grid.depth))[0].tolist()
    seen = judge.seen((grid.left + (column + 0.5) * grid.size, grid.foot + (row + 0.5) * grid.size))
    assert seen.depth < grid.depth[row, column] + 3 * grid.size


def test_a_board_shades_most_of_what_lies_behind_it():
    found = _scene(PIECES["box"], DIRECTIONS["slantwise"])
    grid = shade(found, wide_faces(found)[0], found.edges)
    area = sum(
        abs(a * d - b * c) / 2
        for (a, b), (c, d) in ((k[1, :2] - k[0, :2], k[2, :2] - k[0, :2]) for k in found.corners)
    )
    assert 0.7 * area < np.isfinite(grid.depth).sum() * grid.size**2 <= area


def test_a_box_is_hidden_only_behind_all_its_cells():
    grid = Shade(0.0, 0.0, 10.0, np.array([[5.0, 5.0], [-np.inf, 5.0]]))
    low = np.array([[1.0, 1.0, 0.0], [8.0, 1.0, 0.0], [1.0, 8.0, 0.0], [1.0, 1.0, 0.0]])
    high = np.array([[9.0, 9.0, 4.0], [12.0, 9.0, 4.0], [9.0, 12.0, 4.0], [9.0, 9.0, 5.0]])
    assert grid.hides(low, high).tolist() == [True, True, False, False]


def test_lines_are_parted_into_pieces_no_longer_than_a_cell():
    parts = parted(np.zeros((2, 3)), np.array([[10.0, -4.0, 5.0], [1.0, 1.0, 1.0]]), 4.0)
    assert parts.many.tolist() == [3, 1]
    assert parts.line.tolist() == [0, 0, 0, 1]
    assert (parts.high - parts.low)[:, :2].max() <= 4.0
    assert parts.high[2].tolist() == pytest.approx([10.0, -8 / 3, 5.0])


def test_runs_of_numbers_follow_one_another():
    which, number = spread(np.array([5, 0, 2]), np.array([2, 0, 3]))
    assert (which.tolist(), number.tolist()) == ([0, 0, 2, 2, 2], [5, 6, 2, 3, 4])
