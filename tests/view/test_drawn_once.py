"""Lines drawn once and joined: hand-made pieces on one line."""

import random

import numpy as np

from shopdraw.view.drawn_once import Spans, drawn_once, groups_drawn_once


def test_touching_pieces_of_one_board_are_joined():
    assert drawn_once([(0.0, 1.0, 7, False), (1.0, 2.0, 7, False)], 1e-4) == [(0.0, 2.0, 7, False)]


def test_touching_pieces_of_two_boards_stay_two():
    assert len(drawn_once([(0.0, 1.0, 1, False), (1.0, 2.0, 2, False)], 1e-4)) == 2


def test_the_first_piece_wins_where_two_coincide():
    found = drawn_once([(0.0, 2.0, 1, False), (1.0, 3.0, 2, False)], 1e-4)
    assert found == [(0.0, 2.0, 1, False), (2.0, 3.0, 2, False)]


def test_a_hidden_piece_is_drawn_only_where_nothing_is_visible():
    found = drawn_once([(1.0, 2.0, 1, False), (4.0, 5.0, 1, False), (0.0, 6.0, 2, True)], 1e-4)
    assert [piece for piece in found if piece[3]] == [(0.0, 1.0, 2, True), (2.0, 4.0, 2, True), (5.0, 6.0, 2, True)]


def test_pieces_apart_stay_apart_and_slivers_vanish():
    found = drawn_once([(0.0, 1.0, 1, False), (1.5, 2.0, 1, False), (0.99999, 1.00005, 2, True)], 1e-4)
    assert found == [(0.0, 1.0, 1, False), (1.5, 2.0, 1, False)]


def test_many_lines_at_once_give_what_each_gives_alone():
    chance = random.Random(11)
    rows = [
        (line, low, low + chance.choice((0.5, 1.0, 3.0)), chance.randrange(3), kind)
        for line in range(60)
        for kind in (False, True)
        for low in (chance.randrange(20) / 2 for _ in range(chance.randrange(1, 5)))
    ]
    columns = list(zip(*rows, strict=True))
    spans = Spans(*(np.array(column) for column in columns))
    for first, found in groups_drawn_once(spans, np.full(len(rows), 1e-4)):
        alone = drawn_once([row[1:] for row in rows if row[0] == rows[first][0]], 1e-4)
        assert sorted(found) == sorted(alone)


def test_a_line_of_one_owner_is_joined_across_its_gaps_within_reach_only():
    zeros = np.zeros(3, dtype=np.int64)
    spans = Spans(zeros, np.array([4.0, 0.0, 1.0]), np.array([5.0, 1.0, 2.0]), zeros, zeros > 0)
    assert list(groups_drawn_once(spans, np.full(3, 1e-4))) == [(0, [(0.0, 2.0, 0, False), (4.0, 5.0, 0, False)])]
