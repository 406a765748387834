"""Boards are one part when one can be laid on the other, face to face and grain to grain, in one stock."""

from dataclasses import replace

import pytest

from shopdraw.shape.path import Path, polygon, rectangle
from shopdraw.wood.board import Board, Cut, Face, Shape
from shopdraw.wood.part import parts, same_shape, turned
from tests.wood.pieces import LYING, PINE, PLY, board, cupboard, plain


def pocket(outline: Path, face: Face = Face.FACE, depth: float = 6.0) -> Cut:
    return Cut("dado", face, 0.0, depth, outline)


FOOT_DADO = plain(400.0, 100.0, 20.0, pocket(rectangle(50, 0, 70, 100)))
HEAD_DADO = plain(400.0, 100.0, 20.0, pocket(rectangle(330, 0, 350, 100)))
STOPPED = plain(400.0, 100.0, 20.0, pocket(rectangle(50, 0, 70, 90)))
STOPPED_MIRRORED = plain(400.0, 100.0, 20.0, pocket(rectangle(50, 10, 70, 100)))
STOPPED_TURNED = plain(400.0, 100.0, 20.0, pocket(rectangle(330, 10, 350, 100)))


@pytest.mark.parametrize(
    ("one", "two", "same"),
    [
        (FOOT_DADO, HEAD_DADO, True),
        (STOPPED, STOPPED_TURNED, True),
        (STOPPED, STOPPED_MIRRORED, False),
        (FOOT_DADO, plain(400.0, 100.0, 20.0, pocket(rectangle(50, 0, 70, 100), Face.BACK)), False),
        (FOOT_DADO, plain(400.0, 100.0, 20.0, pocket(rectangle(50, 0, 70, 100), depth=6.01)), False),
        (FOOT_DADO, plain(400.0, 100.0, 20.0, pocket(rectangle(50 + 1e-9, 0, 70, 100))), True),
        (plain(400.0, 120.0, 12.0), plain(400.0, 121.0, 12.0), False),
        (plain(400.0, 100.0, 20.0), plain(100.0, 400.0, 20.0), False),
    ],
)
def test_one_is_laid_on_the_other_face_to_face_and_grain_to_grain(one: Shape, two: Shape, same: bool) -> None:
    assert same_shape(one, two) is same
    assert same_shape(two, one) is same


def test_cuts_in_edges_and_ends_turn_with_the_board() -> None:
    mitre = Cut("mitre", Face.NEAR, 0.0, 100.0, polygon([(0, -20), (20, -20), (0, 0)]))
    other = Cut("mitre", Face.FAR, 0.0, 100.0, polygon([(400, -20), (380, -20), (400, 0)]))
    assert same_shape(plain(400, 100, 20, mitre), plain(400, 100, 20, other))
    groove = Cut("groove", Face.FOOT, 0.0, 8.0, rectangle(10, -12, 30, -6))
    turned_groove = Cut("groove", Face.HEAD, 0.0, 8.0, rectangle(70, -12, 90, -6))
    assert same_shape(plain(400, 100, 20, groove), plain(400, 100, 20, turned_groove))
    not_turned = replace(turned_groove, outline=groove.outline)
    assert not same_shape(plain(400, 100, 20, groove), plain(400, 100, 20, not_turned))


def test_turning_twice_changes_nothing() -> None:
    for one in (FOOT_DADO, STOPPED):
        assert turned(turned(one)) == replace(one, cuts=tuple(replace(cut, open=()) for cut in one.cuts))


def test_case_04_a_left_and_a_right_side_are_two_parts() -> None:
    sides = cupboard()[:2]
    assert [part.quantity for part in parts(sides)] == [1, 1]


def test_one_shape_in_two_stocks_is_two_parts() -> None:
    def made(name: str, stock: object) -> Board:
        return replace(board(name, FOOT_DADO, LYING), stock=stock)

    found = parts([made("a", PINE), made("b", PLY), made("c", PINE)])
    assert [(part.id, part.quantity, part.labels) for part in found] == [("a", 2, "a, c"), ("b", 1, "b")]
