"""What is spared when pairs of edge and triangle are looked for changes no stretch: every pair tried says the same."""

import itertools
import random

import numpy as np
import pytest

from shopdraw.shape.frame import Frame
from shopdraw.view import covering
from shopdraw.view.covering import stretches
from shopdraw.view.scene import scene
from shopdraw.view.standing import Shown, standing
from shopdraw.wood.facet import facets, facets_beyond
from tests.view.test_projection import CASES, DIRECTIONS
from tests.wood.pieces import board, bored, plain


def _by_every_pair(found):
    """Stretches when each edge that isn't turned away is clipped against each triangle."""
    edges = found.edges
    away = np.flatnonzero(edges.turned_away)
    pairs = itertools.product(np.flatnonzero(~edges.turned_away).tolist(), range(len(found.face)))
    rows, triangles = np.array(list(pairs), dtype=np.int64).reshape(-1, 2).T
    edge, low, high = covering._covered(found, rows, triangles)
    edge, low = np.concatenate((edge, away)), np.concatenate((low, np.zeros(len(away))))
    high = np.concatenate((high, np.ones(len(away))))
    size = np.linalg.norm(edges.end[:, :2] - edges.start[:, :2], axis=1)
    return covering._parted(edge, low, high, size, len(edges.owner))


def _check(shown, direction):
    found = scene(standing(shown), direction)
    for quick, slow in zip(stretches(found), _by_every_pair(found), strict=True):
        assert len(quick) == len(slow)
        assert np.abs(quick - slow).max(initial=0.0) < 1e-9


@pytest.mark.parametrize(("boards", "direction"), CASES)
def test_pieces_are_parted_as_by_every_pair(boards, direction):
    _check([Shown(facets(b.shape), b.frame) for b in boards], direction)


@pytest.mark.parametrize("direction", DIRECTIONS)
@pytest.mark.parametrize("seed", range(4))
def test_boards_at_random_are_parted_as_by_every_pair(seed, direction):
    chance = random.Random(seed)
    turned = Frame((0.6, 0.8, 0.0), (-0.8, 0.6, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
    straight = Frame((1.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, -1.0, 0.0), (0.0, 0.0, 0.0))
    boards = []
    for index in range(14):
        shape = bored(float(chance.randrange(2, 9))) if index % 7 == 0 else plain(
            chance.uniform(20, 300), chance.uniform(20, 200), chance.uniform(5, 30)
        )
        at = tuple(float(chance.randrange(0, 300, 10)) for _ in range(3))
        boards.append(board(f"b{index}", shape, chance.choice((turned, straight)).moved(at)))
    _check([Shown(facets(b.shape), b.frame) for b in boards], DIRECTIONS[direction])


def test_what_a_section_leaves_is_parted_as_by_every_pair():
    near, far = plain(200.0, 100.0, 20.0), plain(180.0, 90.0, 10.0)
    place = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
    for name in ("front", "side", "isometric"):
        way = tuple(-a + 0.0 for a in DIRECTIONS[name].toward)
        left = facets_beyond(near, way, 0.5 * sum(a * b for a, b in zip(way, (200.0, 100.0, -20.0), strict=True)))
        _check([Shown(left, place), Shown(facets(far), place.moved((0.0, 10.0, -30.0)))], DIRECTIONS[name])


def test_nothing_at_all_is_parted_into_nothing():
    assert [len(column) for column in stretches(scene(standing([]), DIRECTIONS["front"]))] == [0] * 6
