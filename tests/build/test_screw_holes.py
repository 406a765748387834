"""Holes of the screws that hold blocks, kickers, guides and stops: as many as are listed, in the places that bear."""

import pytest

from shopdraw.build import build
from shopdraw.build.screw import KIND
from shopdraw.shape.path import bounds
from shopdraw.trade.hardware import clearance_hole_mm, wood_screw
from tests.build.designs import random_design
from tests.build.judging import sound
from tests.build.kinds import KINDS, random_kind
from tests.check.desks import design

CHERRY = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
STOCK = {"primary": CHERRY, "face": CHERRY, "ply": {"species": "plywood_birch", "kind": "sheet", "thickness": 12.0}}
FULL = {
    "stock": STOCK,
    "use": {"rail.face": "face"},
    "face": {"kind": "rails", "rail": 34.0, "strip": 34.0},
    "supports": {"divider": 200.0, "stop": True},
    "frame": {"stops": True},
}
BORED = ("block.", "kicker.", "guide.", "stop.", "support.")
"""What screws pass through whose holes are the board's own."""


def _holes(piece, fitting):
    """The cuts of a fitting's screws, by their board."""
    board = piece.board(fitting.on[0])
    start = f"screw:{board.id}:{fitting.on[-1]}."
    return [cut for cut, name in zip(board.shape.cuts, board.cut_ids, strict=True) if name.startswith(start)]


def _screws(piece):
    return [one for one in piece.hardware if one.kind == KIND and one.on[0].startswith(BORED)]


def _counts(piece):
    for fitting in _screws(piece):
        holes = _holes(piece, fitting)
        assert len(holes) == fitting.quantity, fitting.id
        shank = dict(fitting.sizes)["diameter"]
        for hole in holes:
            x0, y0, x1, y1 = bounds(hole.outline)
            assert min(x1 - x0, y1 - y0) > shank, fitting.id


def test_each_listed_screw_has_its_hole():
    piece = build(design(**FULL))
    assert {one.on[0].partition(".")[0] for one in _screws(piece)} == {one.rstrip(".") for one in BORED}
    _counts(piece)


@pytest.mark.parametrize("kind", ["slant-desk", *KINDS])
def test_each_listed_screw_of_random_pieces_has_its_hole(kind):
    for seed in range(3):
        _counts(build(random_design(seed + 3) if kind == "slant-desk" else random_kind(kind, seed + 1)))


def test_a_hole_is_wider_than_its_screws_shank():
    for gauge in (6, 8, 10):
        assert 0.1 < clearance_hole_mm(gauge) - wood_screw(gauge).shank_mm < 0.8


def test_a_kicker_across_the_shelfs_grain_is_fast_in_front_and_slides_behind():
    # the shelf is held in front: 2.0 % drier or 4 % wetter it moves past the rear screw
    piece = sound(design(stock=STOCK))
    kicker = piece.board("kicker.drawer")
    fitting = next(one for one in piece.hardware if one.id == "screw:kicker.drawer")
    fast, slides = _holes(piece, fitting)
    assert (fast.kind, slides.kind) == ("bore", "slot")
    x0, _, x1, _ = bounds(fast.outline)
    first = (x0 + x1) / 2
    assert first == pytest.approx(30.0)
    u0, _, u1, _ = bounds(slides.outline)
    # it begins before the rear screw by what the shelf loses there and half a millimetre, and ends behind by its gain
    last = kicker.length - 40.0
    assert u0 + 2.0 == pytest.approx(last - (last - first) * 0.00248 * 2 - 0.5)
    assert u1 - 2.0 == pytest.approx(last + (last - first) * 0.00248 * 4 + 0.5)


def test_on_a_runner_both_screws_are_fast():
    piece = build(design(**FULL))
    fitting = next(one for one in piece.hardware if one.id == "screw:kicker.2.left")
    assert [hole.kind for hole in _holes(piece, fitting)] == ["bore", "bore"]


def test_a_guide_too_narrow_for_holes_is_glued_only():
    face = {"kind": "rails", "rail": 34.0, "strip": 26.0}
    piece = build(design(stock=STOCK, use={"rail.face": "face"}, face=face))
    guides = [board for board in piece.boards if board.id.startswith("guide.")]
    assert guides
    assert not [one for one in piece.hardware if one.on[0].startswith("guide.")]


def test_foot_blocks_are_screwed_near_their_tops():
    piece = sound(design(stock=STOCK))
    for fitting in _screws(piece):
        if not fitting.id.startswith("screw:block."):
            continue
        block = piece.board(fitting.on[0])
        ups = [sum(bounds(hole.outline)[::2]) / 2 for hole in _holes(piece, fitting)]
        # 55 high: a third of it, 18, down from the top, and twice as far
        assert sorted(block.length - up for up in ups) == pytest.approx([18.0, 36.0])
