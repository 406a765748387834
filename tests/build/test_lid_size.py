"""Lid, frame, drawer and support sizes against worked examples; each number can be done by hand."""

import math

import pytest

from shopdraw.build import build
from shopdraw.build.drawer import drawer_size
from shopdraw.build.lid_size import lid_size, net_gain, net_loss
from shopdraw.build.plan import plan_desk
from shopdraw.build.support import over_support, support_size
from shopdraw.build.web_frame import frame_size
from tests.check.desks import design

FLAT_CHERRY = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
STOCK = {"primary": FLAT_CHERRY}
# the pin on the front plane, as in the worked examples: the joint gap is a hair
RABBETED = {"seat": "rabbeted", "joint_gap": 1e-6}


def _plan(**tables):
    return plan_desk(design(stock=STOCK, **tables))


def test_a_rabbeted_lid():
    # o 8, lip 12, g 3.5, reveal 4
    piece = design(stock=STOCK, slant=RABBETED, lid={"rabbet": 8.0, "lip": 12.0, "top_clearance": 3.5, "reveal": 4.0})
    size = lid_size(plan_desk(piece))
    assert size.bevel == pytest.approx(12.5)
    assert size.length == pytest.approx(386.43, abs=0.005)
    assert size.core_length == pytest.approx(374.43, abs=0.005)
    assert build(piece).slant.top_flat_mm == pytest.approx(16.11, abs=0.005)


def test_a_rabbeted_lids_outer_lower_corner_when_shut():
    piece = design(stock=STOCK, slant=RABBETED, lid={"rabbet": 8.0})
    plan = plan_desk(piece)
    y, z = plan.slant.on_slope(0.0, 20.0)
    alpha = math.radians(49.021)
    # t_l · sin α before the pin, t_l · cos α above the writing surface
    assert (y, z) == pytest.approx((-20.0 * math.sin(alpha), 740.0 + 20.0 * math.cos(alpha)), abs=0.001)
    assert (y, z) == pytest.approx((-15.10, 753.12), abs=0.005)
    lid = build(piece).board("lid")
    lowest = min(
        (lid.frame.point((u, v, w)) for u in (0.0, lid.length) for v in (0.0,) for w in (-20.0,)), key=lambda p: p[1]
    )
    assert lowest[1:] == pytest.approx((-15.10, 753.12), abs=0.005)


def test_a_lid_on_the_slant():
    size = lid_size(_plan(slant={"seat": "on", "joint_gap": 1e-6}, lid={"reveal": 6.0}))
    assert size.length == pytest.approx(384.51, abs=0.005)
    assert size.width == pytest.approx(900.0 - 12.0)


def test_a_flush_lid():
    piece = design(stock=STOCK, slant={"seat": "flush", "joint_gap": 1e-6}, lid={"bevel": 12.0, "top_clearance": 3.5})
    assert lid_size(plan_desk(piece)).length == pytest.approx(374.50, abs=0.005)
    assert build(piece).slant.top_flat_mm == pytest.approx(16.48, abs=0.005)


def test_what_a_rabbeted_lids_end_moves_in_flat_sawn_cherry():
    # 8 % at build, 6 to 12 %: alone -1.9 / +3.8, against sides of the same stock -1.09 / +2.18
    plan = _plan(slant=RABBETED, lid={"rabbet": 8.0})
    lid = plan.stocks.of("lid")
    assert lid.coefficient == 0.00248
    assert plan.season.loss(386.43, lid) == pytest.approx(1.9, abs=0.05)
    assert plan.season.gain(386.43, lid) == pytest.approx(3.8, abs=0.05)
    assert net_loss(plan) == pytest.approx(1.09, abs=0.005)
    assert net_gain(plan) == pytest.approx(2.18, abs=0.006)
    # so g must be 3.2 at least, and the lip keeps 7.4 when dry
    assert lid_size(plan).gap + 0.02 >= 3.2
    assert 12.0 - 3.5 - net_loss(plan) == pytest.approx(7.4, abs=0.05)


def test_a_lid_of_plywood_nears_the_top_as_the_sides_shrink_not_as_it_grows():
    ply = {"species": "plywood_birch", "kind": "sheet", "thickness": 20.0}
    plan = plan_desk(design(stock={"primary": FLAT_CHERRY, "ply": ply}, use={"lid": "ply"}, slant={"seat": "rabbeted"}))
    alpha = math.radians(plan.slant.alpha)
    assert net_gain(plan) == pytest.approx(-plan.slant.run * math.cos(alpha) * 0.00248 * 4)
    # then the driest season brings them together
    assert net_loss(plan) < 0


@pytest.mark.parametrize(("depth", "rabbet"), [(480.0, 7.0)])
def test_a_frame_fixed_in_front_and_behind(depth, rabbet):
    # sides 480 deep, flat-sawn cherry, 8 to 6 %: lose 2.4; to 12 %: gain 4.8
    plan = _plan(case={"depth": depth}, back={"rabbet_depth": rabbet})
    assert plan.season.loss(depth, plan.side) == pytest.approx(2.4, abs=0.05)
    assert plan.season.gain(depth, plan.side) == pytest.approx(4.8, abs=0.05)
    size = frame_size(plan)
    assert size.depth == pytest.approx(depth - rabbet)
    assert size.gap >= plan.season.loss(depth - rabbet - 25.0, plan.side) + 0.5
    # what the dry tenon keeps when the shoulder has opened
    assert size.rear_tenon - size.gap - plan.season.gain(depth - rabbet - 25.0, plan.side) >= 10.0


def test_a_runner_between_shoulders_and_its_tenons_make_its_length():
    piece = design(stock=STOCK, frame={"rail": 65.0, "fixing": "front-and-rear"})
    plan, assembly = plan_desk(piece), build(piece)
    size = frame_size(plan)
    runner = assembly.board("frame.1.runner-left")
    shoulders = size.depth - 2 * 65.0 - size.gap
    assert runner.between_shoulders == pytest.approx(shoulders)
    assert runner.length == pytest.approx(shoulders + size.front_tenon + size.rear_tenon)


def test_a_lipped_drawer():
    # opening 620 × 140, lips 8, clearances 1.5 / 3 / 0, front 20, lip 8 thick: front 636 × 156, box 617 × 137
    tables = {
        "case": {"width": 660.0},
        "drawer": {"front": "lipped", "lip": 8.0, "lip_thickness": 8.0, "top_clearance": 3.0, "side_clearance": 1.5},
        "opening": {"bank": {"divide": {"keys": ("1", "2", "3"), "rule": "given", "sizes": (150.0, 140.0)}}},
    }
    plan = _plan(**tables)
    size = drawer_size(plan, plan.rows[1])
    assert plan.rows[1].height == pytest.approx(140.0)
    assert (size.front.x1 - size.front.x0, size.front.z1 - size.front.z0) == pytest.approx((636.0, 156.0))
    assert (size.box.x1 - size.box.x0, size.box.z1 - size.box.z0) == pytest.approx((617.0, 137.0))
    front = build(design(stock=STOCK, **tables)).board("drawer.2.front")
    assert (front.length, front.width, front.thickness) == pytest.approx((636.0, 156.0, 20.0))
    # rabbets from the edge inwards: 9.5 at the sides, 11 above, 8 below
    rabbets = {}
    for cut, name in zip(front.shape.cuts, front.cut_ids, strict=True):
        if cut.kind == "rabbet" and name.startswith(f"rabbet:{front.id}:"):
            xs, ys = [c.x for c in cut.outline.corners], [c.y for c in cut.outline.corners]
            rabbets[name.rsplit(":", 1)[1]] = min(max(xs) - min(xs), max(ys) - min(ys))
    assert rabbets == pytest.approx({"left": 9.5, "right": 9.5, "upper": 11.0, "lower": 8.0})


@pytest.mark.parametrize(("entry", "side"), [(12.0, 468.62), (8.0, 464.62)])
def test_the_sides_of_a_lipped_drawer(entry, side):
    # usable depth 468.62 = 480 - 7 - 2.38 - 2; the front goes 12 into the case: sides 468.62 less (12 - q)
    piece = design(
        stock=STOCK,
        drawer={"front": "lipped", "lip": 8.0, "lip_thickness": 8.0, "entry": entry},
        opening={"bank": {"divide": {"keys": ("1", "2", "3"), "rule": "equal"}}},
    )
    assert plan_desk(piece).usable == pytest.approx(468.62, abs=0.005)
    assert build(piece).board("drawer.2.side-left").length == pytest.approx(side, abs=0.005)


def test_a_supports_droop():
    # 1.5 above, reach 250, 205 inside: 1.8 at the end
    still = {"species": "cherry_black", "thickness": 20.0, "coefficient": 0.0}
    thin = {"species": "cherry_black", "thickness": 15.0}
    piece = design(
        case={"depth": 464.0, "top_rail": 40.0},
        stock={"primary": still, "thin": thin},
        use={"shelf": "thin"},
        supports={"reach": 250.0, "clearance_above": 1.5},
    )
    size = support_size(plan_desk(piece))
    assert size.inside == pytest.approx(205.0)
    assert size.droop == pytest.approx(1.8, abs=0.05)


def test_the_rail_over_a_lipped_drawer_and_the_notch_over_a_support():
    # t_l 20, lip 8: 29 over the drawer (and what its front grows), 19 over a support: a rail of 29 is notched by 10
    piece = design(stock=STOCK, drawer={"front": "lipped", "lip": 8.0}, case={"top_rail": 29.0})
    plan = plan_desk(piece)
    assert plan.rail_drop == 29.0
    assert plan.ceiling(plan.rows[0]) + 8.0 == pytest.approx(740.0 - 20.0 - 1.0)
    # a bar may stand 1 under what lies over it: shelf and rail together are at most 19 thick over it
    assert 29.0 - (20.0 - 1.0) == 10.0
    above = support_size(plan).above
    assert over_support(plan) == pytest.approx(20.0 - 20.0 - above)
    by_default = plan_desk(design(stock=STOCK, drawer={"front": "lipped", "lip": 8.0}))
    grows = (by_default.rows[0].height + 16.0) * 0.00248 * 4
    assert by_default.rail_drop == pytest.approx(29.0 + grows, abs=0.15)
    assert by_default.rail_drop >= 29.0 + (by_default.rows[0].height + 8.0) * 0.00248 * 4
