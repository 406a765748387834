"""The top's dovetails against lengths and layouts worked by hand, and by solids in three seasons."""

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.check.assembly_order import assembly_findings
from shopdraw.piece.design import Design
from shopdraw.shape.path import bounds
from shopdraw.wood.interference import box_of, closing, overlaps
from shopdraw.wood.season import in_season
from tests.check.desks import checked, design, of_code

STOCK = {"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}}
WAYS = ("through", "clean-sides", "clean-top")


def _chest(**case):
    sizes = {"width": 660.0, "height": 432.0, "depth": 480.0, "top_joint": "dovetail", **case}
    return Design.model_validate({"piece": {"kind": "chest"}, "case": sizes, "stock": STOCK})


def _corner(assembly):
    return next(joint for joint in assembly.joints if joint.kind == "dovetail" and "top" in (joint.host, joint.guest))


@pytest.mark.parametrize(
    ("way", "length"),
    # laps of a quarter of 20: the top is two of them shorter than the case where the sides stay clean
    [("through", 660.0), ("clean-sides", 660.0 - 2 * 5.0), ("clean-top", 660.0)],
)
def test_the_tops_length_by_hand(way, length):
    assembly = build(_chest(dovetails=way))
    assert assembly.board("top").length == pytest.approx(length)
    side = box_of(assembly.board("side.left"))
    assert side[5] == pytest.approx(432.0 - 5.0 if way == "clean-top" else 432.0)


def test_under_a_clean_upper_surface_a_slanted_side_ends_at_the_lap_further_forward():
    # rabbeted lid 8 deep: slant 49.021° from level, top 230 deep of 480: the line meets 1040 at y = 250
    piece = design(case={"top_joint": "dovetail", "dovetails": "clean-top", "dovetail_lap": 6.0}, stock=STOCK)
    side = build(piece).board("side.left")
    corners = [side.frame.point((c.x, c.y, 0.0)) for c in side.shape.outline.corners]
    upper = [y for _, y, z in corners if z == pytest.approx(1040.0 - 6.0)]
    assert min(upper) == pytest.approx(250.0 - 6.0 / math.tan(math.radians(49.021)), abs=0.01)
    assert max(z for _, _, z in corners) == pytest.approx(1034.0)


def test_over_the_sides_a_slanted_top_keeps_its_sharp_corner():
    top = build(design(case={"top_joint": "dovetail", "dovetails": "clean-top"}, stock=STOCK)).board("top")
    flat = top.shape.cuts[top.cut_ids.index("bevel:top:flat")]
    assert (flat.start, flat.depth) == pytest.approx((20.0, top.length - 40.0))
    through = build(design(case={"top_joint": "dovetail"}, stock=STOCK)).board("top")
    whole = through.shape.cuts[through.cut_ids.index("bevel:top:flat")]
    assert (whole.start, whole.depth) == pytest.approx((0.0, through.length))


def test_equal_half_pins_fill_the_depth():
    sizes = dict(_corner(build(_chest(tails=6))).sizes)
    # at their wide ends: tails 6, pins 10 between them, half pins 7 + 3 + 20/8 = 12.5 behind the back's rabbet
    assert (sizes["pin"], sizes["half-pin"]) == pytest.approx((10.0, 12.5))
    tail = (480 - 2 * 12.5 - 5 * 10) / 6
    assert sizes["tail"] == pytest.approx(tail - 2 * 20 / 8)


def test_softwood_slopes_one_in_six():
    pine = {"primary": {"species": "pine_eastern_white", "thickness": 20.0}}
    assert dict(_corner(build(_chest())).sizes)["slope"] == 8.0
    softer = Design.model_validate({**_chest().model_dump(), "stock": pine})
    assert dict(_corner(build(softer)).sizes)["slope"] == 6.0


def test_a_fixed_pitch_leaves_the_last_half_pin_what_is_left():
    # 12.5 in front, 10 tails on 45 with pins of 10: 10 × 45 - 10 = 440; 480 - 12.5 - 440 = 27.5 are left
    sizes = dict(_corner(build(_chest(tail_pitch=45.0))).sizes)
    assert (sizes["tails"], sizes["half-pin"], sizes["rear-half-pin"]) == pytest.approx((10, 12.5, 27.5))


def test_unequal_half_pins_are_told_with_the_nearest_depth_that_makes_them_equal():
    # depth = n·pitch - pin + 2 h: 10 × 45 - 10 + 25 = 465, or 510 with one more; 465 is nearer
    found = of_code(checked(_chest(tail_pitch=45.0)), "half-pins-unequal")
    assert found[0].value == pytest.approx(15.0)
    assert found[0].right == ("case.depth", "465.00 mm")
    assert "465 mm" in found[0].message
    assert of_code(checked(_chest(tail_pitch=45.0, depth=465.0)), "half-pins-unequal") == []


def test_under_a_slant_the_tops_depth_is_named():
    piece = design(case={"top_joint": "dovetail", "tail_pitch": 45.0}, stock=STOCK)
    # top 230 deep: 4 × 45 - 10 + 25 = 195, or 5 × 45 - 10 + 25 = 240, which is nearer
    found = of_code(checked(piece), "half-pins-unequal")
    assert found[0].right == ("slant.top_depth", "240.00 mm")


def test_the_rear_half_pin_keeps_wood_behind_the_rabbet_whatever_the_way():
    for way in WAYS:
        sizes = dict(_corner(build(_chest(dovetails=way))).sizes)
        narrowing = (20.0 if way == "through" else 15.0) / 8
        # measured at the tails' wide ends; at their roots there is more
        assert sizes["half-pin"] >= 7.0 + 3.0 + narrowing - 1e-9


@pytest.mark.parametrize(
    ("case", "words"),
    [
        ({"dovetails": "clean-sides", "dovetail_lap": 12.0}, "expected at most 10.0 mm of 20"),
        ({"tail_pitch": 20.0}, "expected at least 25.0 mm"),
        ({"tail_pitch": 45.0, "tails": 12}, "expected at most 10"),
        ({"tails": 30}, "expected at most"),
    ],
)
def test_what_cant_be_laid_out_is_refused(case, words):
    with pytest.raises(CannotBuild, match=words):
        build(_chest(**case))


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("seat", ["chest", "on", "rabbeted", "flush"])
def test_tails_and_sockets_are_one_body_in_every_season(way, seat):
    piece = (
        _chest(dovetails=way)
        if seat == "chest"
        else design(case={"top_joint": "dovetail", "dovetails": way}, slant={"seat": seat}, stock=STOCK)
    )
    assembly = build(piece)
    top = {"top", "side.left", "side.right", "back", "lid"}
    m = assembly.moisture
    for moisture in (m.build, m.dry, m.wet):
        now = [board for board in in_season(assembly, moisture).boards if board.id in top]
        assert overlaps(now) == ()
    for joint in assembly.joints:
        if joint.kind == "dovetail":
            assert closing(assembly, joint).closes(), joint.id
    assert assembly_findings(assembly) == ()


def test_a_half_blind_corner_shows_nothing_where_it_is_clean():
    side = build(_chest(dovetails="clean-sides")).board("side.left")
    for cut, name in zip(side.shape.cuts, side.cut_ids, strict=True):
        if name.startswith("dovetail:"):
            _, w0, _, _ = bounds(cut.outline)
            assert w0 == pytest.approx(-(20.0 - 5.0))
    top = build(_chest(dovetails="clean-top")).board("top")
    sockets = [cut for cut, name in zip(top.shape.cuts, top.cut_ids, strict=True) if name.startswith("dovetail:")]
    assert sockets
    assert all(bounds(cut.outline)[3] == pytest.approx(-5.0) for cut in sockets)
