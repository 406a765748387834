"""Lines drawn once and joined: hand-made pieces on one line."""

from shopdraw.view.joining import drawn_once


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
