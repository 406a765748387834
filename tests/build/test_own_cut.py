"""A person's own cuts: where they are measured from, on which face, and when one is told of."""

import pytest

from shopdraw.build import build
from shopdraw.check.own_cut import own_cut_findings
from shopdraw.check.subject import subject_of
from shopdraw.piece.design import Design
from shopdraw.shape.path import bounds
from shopdraw.wood.finding import Severity
from shopdraw.wood.volume import volume_mm3
from tests.build.judging import sound

CASE = {"width": 900.0, "height": 1000.0, "depth": 480.0}
CORD = {"board": "back", "along": 300.0, "across": 200.0, "diameter": 60.0, "reason": "cord of the lamp"}


def made(kind="chest", **cuts):
    return Design.model_validate({"piece": {"kind": kind}, "case": CASE, "cut": cuts})


def own(piece, board, key):
    named = zip(piece.board(board).cut_ids, piece.board(board).shape.cuts, strict=True)
    return next(cut for name, cut in named if name == f"own:{board}:{key}")


def found(design):
    return tuple(own_cut_findings(subject_of(design, build(design))))


def test_a_cord_hole_is_a_bore_through_the_back():
    piece = sound(made(cord=CORD))
    cut = own(piece, "back", "cord")
    assert bounds(cut.outline) == pytest.approx((270.0, 170.0, 330.0, 230.0))
    assert cut.depth == pytest.approx(piece.board("back").thickness)
    assert piece.board("back").cut_for[-1] == "cord of the lamp"
    # π × 30² × 6
    less = volume_mm3(build(made()).board("back").shape) - volume_mm3(piece.board("back").shape)
    assert less == pytest.approx(16964.6, abs=0.1)


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_cut_is_measured_from_the_reference_edge_of_either_hand(side):
    # a side's reference edge is its rear one: 100 from it, wherever v begins
    cut = {"board": f"side.{side}", "along": 500.0, "across": 100.0, "diameter": 30.0, "depth": 5.0, "reason": "dowel"}
    piece = build(made(x=cut))
    board = piece.board(f"side.{side}")
    x0, y0, x1, y1 = bounds(own(piece, board.id, "x").outline)
    at = board.frame.point(((x0 + x1) / 2, (y0 + y1) / 2, 0.0))
    assert at[1] == pytest.approx(480.0 - 100.0)
    assert own(piece, board.id, "x").depth == pytest.approx(5.0)


def test_a_notch_in_an_edge_is_measured_from_the_reference_face():
    cut = {
        "board": "top", "face": "far", "shape": "rectangle", "along": 400.0, "across": 10.0, "length": 80.0,
        "width": 20.0, "depth": 15.0, "reason": "wall lamp",
    }  # fmt: skip
    piece = build(made("bookcase", lamp=cut))
    notch = own(piece, "top", "lamp")
    assert bounds(notch.outline) == pytest.approx((360.0, -20.0, 440.0, 0.0))
    assert (notch.face.value, notch.depth) == ("far", pytest.approx(15.0))


def test_a_rectangle_keeps_the_radius_of_its_corners():
    cut = {**CORD, "shape": "rectangle", "length": 80.0, "width": 40.0, "radius": 10.0}
    notch = own(build(made(slot=cut)), "back", "slot")
    assert sum(1 for corner in notch.outline.corners if corner.bulge) == 4
    assert bounds(notch.outline) == pytest.approx((260.0, 180.0, 340.0, 220.0))


def test_a_cut_whose_board_is_gone_or_that_takes_nothing_is_told():
    (gone,) = found(made(cord={**CORD, "board": "lid"}))
    assert (gone.code, gone.severity, gone.where) == ("own-cut-lost", Severity.CAUTION, ("cut.cord",))
    (outside,) = found(made(cord={**CORD, "along": 3000.0}))
    assert outside.code == "own-cut-lost"
    assert found(made(cord=CORD)) == ()


@pytest.mark.parametrize(
    ("cut", "joint"),
    [
        # the bottom's dado is 15 over the side's foot, 20 wide
        ({"board": "side.left", "along": 40.0, "across": 200.0, "diameter": 20.0}, "dado:side.left:bottom"),
        # 2 of wood between the hole's edge and the dado, where 3 are wanted
        ({"board": "side.left", "along": 47.1, "across": 150.0, "diameter": 20.0}, "dado:side.left:bottom"),
        # the back lies against the bottom's rear edge
        ({"board": "back", "along": 10.0, "across": 400.0, "diameter": 30.0}, "butt:bottom:back"),
    ],
)
def test_a_cut_that_runs_into_a_joint_must_be_fixed(cut, joint):
    told = found(made(x={**cut, "reason": "cord"}))
    (one,) = told
    assert (one.code, one.severity) == ("own-cut-meets-joint", Severity.MUST_FIX)
    assert joint in one.where
