"""Which cuts are pockets from a face, and which need a second setting."""

import pytest

from shopdraw.cnc.pocket import pockets_of
from shopdraw.shape.path import circle, polygon, rectangle
from shopdraw.shape.region import region_area
from shopdraw.wood.board import Board, Cut, Face
from tests.wood.pieces import LYING, board, plain


def cut_board(*cuts: Cut) -> Board:
    return board("b", plain(400.0, 100.0, 20.0, *cuts), LYING)


def test_face_and_back_are_pockets_of_their_own_depth() -> None:
    pockets, others = pockets_of(
        cut_board(
            Cut("dado", Face.FACE, 0.0, 7.0, rectangle(50, 0, 70, 100)),
            Cut("rabbet", Face.BACK, 0.0, 9.0, rectangle(0, 90, 400, 100)),
            Cut("notch", Face.FACE, 0.0, 20.0, rectangle(0, 0, 30, 30)),
        )
    )
    assert [(p.face, p.depth, p.through) for p in pockets] == [
        (Face.FACE, 7.0, False), (Face.BACK, 9.0, False), (Face.FACE, 20.0, True)
    ]  # fmt: skip
    assert others == ()


@pytest.mark.parametrize(
    ("outline", "face", "depth", "area"),
    [
        (rectangle(100, -5, 200, 0), Face.FACE, 5.0, 100 * 8),
        (rectangle(100, -20, 200, -12), Face.BACK, 8.0, 100 * 8),
    ],
)
def test_edge_cut_that_reaches_a_face_is_a_pocket_of_that_face(
    outline: object, face: Face, depth: float, area: float
) -> None:
    for edge in (Face.NEAR, Face.FAR):
        (pocket,), others = pockets_of(cut_board(Cut("notch", edge, 0.0, 8.0, outline)))  # type: ignore[arg-type]
        assert (pocket.face, pocket.depth, region_area(pocket.region)) == (face, pytest.approx(depth), area)
        assert others == ()


def test_tenon_is_two_cheeks_and_its_width_in_the_outline() -> None:
    tenon = Cut("tenon", Face.FOOT, 0.0, 15.0, rectangle(0, -20, 100, 0), (rectangle(10, -13, 90, -6),))
    pockets, others = pockets_of(cut_board(tenon))
    told = [(p.face, p.depth, p.through, region_area(p.region)) for p in pockets]
    assert told == [
        (Face.FACE, 6.0, False, 1500.0), (Face.BACK, 7.0, False, 1500.0), (Face.FACE, 20.0, True, 300.0)
    ]  # fmt: skip
    assert others == ()


@pytest.mark.parametrize(
    "cut",
    [
        Cut("mortise", Face.FAR, 0.0, 17.0, rectangle(10, -13, 60, -6)),
        Cut("bevel", Face.FOOT, 0.0, 400.0, polygon([(0, -20), (15, -20), (0, 0)])),
        Cut("dovetail", Face.HEAD, 0.0, 20.0, polygon([(20, -20), (45, -20), (42, 0), (23, 0)])),
        Cut("bore", Face.NEAR, 0.0, 30.0, circle((50, -10), 4)),
        Cut("dado", Face.FACE, 3.0, 4.0, rectangle(50, 0, 70, 100)),
    ],
)
def test_what_is_not_flat_is_left_to_a_second_setting(cut: Cut) -> None:
    assert pockets_of(cut_board(cut)) == ((), (0,))


def test_island_on_the_edge_of_its_strip_is_no_hole() -> None:
    tails = (polygon([(0, 12), (20, 10), (20, 42), (0, 40)]), polygon([(0, 60), (20, 58), (20, 90), (0, 88)]))
    (pocket,), _ = pockets_of(cut_board(Cut("dovetail", Face.FACE, 0.0, 20.0, rectangle(0, 0, 20, 100), tails)))
    assert region_area(pocket.region) == pytest.approx(2000 - 600 - 600)
