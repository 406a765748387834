"""Lid supports: length, travel, layers, head, stop; each number done by hand."""

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.plan import plan_desk
from shopdraw.build.support import STOP_MM, groove_needed, support_size
from shopdraw.check.pin_side import least_over_drawer, most_over_support, pin_side_findings
from shopdraw.check.subject import subject_of
from shopdraw.check.support import support_findings
from shopdraw.wood.interference import box_of
from tests.build.judging import sound
from tests.check.desks import checked, design

CHERRY = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
STOCK = {"primary": CHERRY, "ply": {"species": "plywood_birch", "kind": "sheet", "thickness": 9.0}}


def _desk(**tables):
    return design(stock=STOCK, **tables)


def test_a_bar_of_layers_is_as_thick_as_they_are_together():
    piece = _desk(use={"support": "ply", "support.head": "primary"}, supports={"layers": 3, "head": True})
    bar = sound(piece).board("support.left")
    assert bar.layers == (9.0, 9.0, 9.0)
    assert bar.thickness == pytest.approx(27.0)
    assert plan_desk(piece).bay == pytest.approx(27.0 + 2 * 0.5)


def test_bar_and_head_end_2_before_the_back_in_the_driest_season():
    # D - M_d(D) - r - 2: 480 · 0.00248 · 2 = 2.38, back's rabbet 7
    piece = _desk(supports={"head": True}, back={"rabbet_depth": 7.0})
    assembly = sound(piece)
    bar, head = box_of(assembly.board("support.left")), box_of(assembly.board("support.left.head"))
    assert (head[1], head[4], bar[1]) == pytest.approx((0.0, 20.0, 20.0))
    assert bar[4] == pytest.approx(480.0 - 480.0 * 0.00248 * 2 - 7.0 - 2.0)
    screw = next(h for h in assembly.hardware if h.id == "screw:knob:support.left")
    assert screw.on == ("support.left.head", "support.left")
    assert dict(screw.sizes)["length"] > 20.0


def test_the_block_meets_the_divider_at_full_reach_above_the_guide():
    piece = _desk(supports={"head": True, "divider": 150.0, "stop": True, "reach": 240.0})
    assembly = sound(piece)
    block, guide = box_of(assembly.board("support.left.stop")), box_of(assembly.board("guide.divider-left"))
    divider = box_of(assembly.board("divider.left"))
    # drawn by its reach it stands at the divider's rear edge
    assert block[1] - 240.0 == pytest.approx(divider[4]) == pytest.approx(150.0)
    assert block[4] - block[1] == pytest.approx(STOP_MM)
    assert block[2] >= guide[5] + 1.0
    # one guide serves drawer and support: it is as wide as the divider
    assert (guide[0], guide[3]) == pytest.approx((divider[0], divider[3]))
    # and the block keeps clear of the drawer beside it
    assert block[3] <= divider[3] - 1.0 + 1e-9
    motion = next(m for m in assembly.motions if m.id == "support.left")
    assert motion.boards == ("support.left", "support.left.head", "support.left.stop")


def test_a_block_needs_a_short_divider_and_room_behind_it():
    with pytest.raises(CannotBuild, match=r"supports\.divider"):
        build(_desk(supports={"stop": True}))
    with pytest.raises(CannotBuild, match=r"supports\.reach"):
        build(_desk(supports={"stop": True, "divider": 200.0, "reach": 260.0}))


def test_the_reach_leaves_room_for_the_block():
    # usable 480 - 2.38 - 7 - 2 = 468.62; divider 200, block 40: 228.62 of travel at most
    piece = _desk(supports={"stop": True, "divider": 200.0}, back={"rabbet_depth": 7.0})
    assert support_size(plan_desk(piece)).reach == pytest.approx(228.62, abs=0.005)


def test_case_48_a_bar_455_long_drawn_250_keeps_205_inside():
    # lid 22, level 736.6: the support's top is 714.6; supports 25.4, dividers 19.05, clearances 0.5 a side
    still = {"species": "cherry_black", "coefficient": 0.0}
    piece = design(
        case={"width": 876.3 + 2 * 20.0, "depth": 464.0, "height": 1016.0},
        slant={"writing_height": 736.6, "top_depth": 200.0},
        stock={
            "primary": {**still, "thickness": 20.0},
            "lid": {**still, "thickness": 22.0},
            "bar": {**still, "thickness": 25.4},
            "divider": {**still, "thickness": 19.05},
        },
        use={"lid": "lid", "support": "bar", "divider": "divider"},
        supports={"reach": 250.0},
    )
    plan = plan_desk(piece)
    assert plan.support_top == pytest.approx(714.6)
    assert support_size(plan).length == pytest.approx(455.0)
    assert support_size(plan).inside == pytest.approx(205.0)
    left, right = plan.drawer_bay(plan.rows[0])
    # 876.3 - 2 · (25.4 + 19.05) = 787.4, less the supports' clearances 785.4
    assert right - left == pytest.approx(785.4)
    # 205 of 455 is over a third
    found = {one.code for one in support_findings(subject_of(piece, build(piece)))}
    assert "support-inside" not in found


def test_case_48_over_a_lipped_drawer_29_and_over_a_support_19():
    # t_l 20, lip 8: 20 + 8 + 1 over the drawer, 20 - 1 over a support: a rail of 29 over both is notched by 10
    plan = plan_desk(_desk(drawer={"front": "lipped", "lip": 8.0}))
    assert least_over_drawer(plan, 8.0) == pytest.approx(29.0)
    assert most_over_support(plan) == pytest.approx(19.0)
    assert least_over_drawer(plan, 8.0) - most_over_support(plan) == pytest.approx(10.0)


def test_case_48_the_rail_of_29_ends_at_the_dividers_and_19_of_wood_stay_over_a_support():
    piece = build(_desk(drawer={"front": "lipped", "lip": 8.0}))
    writing = piece.slant.writing_height_mm
    rail, shelf = box_of(piece.board("rail.top")), piece.board("shelf.writing")
    # 29 under the writing surface, and what the front below it grows
    assert 29.0 <= writing - rail[2] <= 31.0
    for hand in ("left", "right"):
        bar, divider = box_of(piece.board(f"support.{hand}")), box_of(piece.board(f"divider.{hand}"))
        # no rail over the bar, and the shelf of 20 notched there by what is missing: the bar's top is 20 below
        assert min(rail[3], divider[3]) - max(rail[0], divider[0]) <= 1e-6
        assert bar[5] == pytest.approx(writing - 20.0)
        named = zip(shelf.cut_ids, shelf.shape.cuts, strict=True)
        (notch,) = [cut for name, cut in named if cut.kind == "notch" and f"support.{hand}" in name]
        assert shelf.thickness - notch.depth <= 19.0


def test_a_shelf_as_thick_as_the_lid_is_notched_over_the_supports_by_their_clearance():
    piece = _desk(supports={"clearance_above": 1.5})
    found = next(pin_side_findings(subject_of(piece, build(piece))))
    assert (found.code, found.value) == ("shelf-notched", pytest.approx(1.5))
    thin = design(stock={**STOCK, "thin": {**CHERRY, "thickness": 16.0}}, use={"shelf": "thin"})
    assert not list(pin_side_findings(subject_of(thin, build(thin))))


def test_case_18_supports_keep_clear_of_the_back_when_the_case_has_shrunk():
    # cherry case 457.2 deep built at 11 %, dries to 6 %: 457.2 · 0.00248 · 5 = 5.67
    piece = _desk(case={"depth": 457.2}, climate={"build": 11.0, "dry": 6.0, "wet": 12.0}, supports={"head": True})
    plan, assembly = plan_desk(piece), build(piece)
    bar = box_of(assembly.board("support.left"))
    free = plan.rear - bar[4]
    assert free == pytest.approx(457.2 * 0.00248 * 5.0 + 2.0)


def test_a_divider_too_tall_for_its_groove_above_has_its_grain_up():
    # one drawer: 740 - 20 - 90 = 630 tall, cherry: free 630 · 0.00248 · 4 + 0.5 = 6.75, shrinks 3.12, 2 stay in: 11.87,
    # so 12 deep, and a third of the shelf is 6.67
    one = {"bank": {"divide": {"keys": ("1",)}}}
    piece = _desk(opening=one)
    assert groove_needed(plan_desk(piece)) == pytest.approx(12.0)
    assembly = sound(piece)
    divider = assembly.board("divider.left")
    # 4 and 6 deep, 0.1 and 0.5 short of their floors
    assert divider.length == pytest.approx(630.0 + 3.9 + 5.5)
    assert dict(next(j.sizes for j in assembly.joints if j.id == "groove:shelf.writing:divider.left"))["depth"] == 6.0
    # four drawers: the topmost opening is low, grain runs front to back
    assert sound(_desk()).board("divider.left").length > 450.0
    assert groove_needed(plan_desk(_desk())) <= 20.0 / 3


def test_a_tall_dividers_stop_has_room_for_what_it_swells():
    # 200 deep: 200 · 0.00248 · 4 = 1.98, up to 2.0
    piece = _desk(opening={"bank": {"divide": {"keys": ("1",)}}}, supports={"divider": 200.0, "stop": True})
    assembly = sound(piece)
    stop, slides = box_of(assembly.board("support.left.stop")), assembly.motions
    reach = next(one.reach for one in slides if one.id == "support.left")
    assert stop[1] - reach == pytest.approx(200.0 + 2.0)


def test_a_desk_with_compartments_needs_no_mending_where_their_grooves_cross_the_dividers():
    for thickness in (17.5, 19.0, 20.0, 24.0):
        stock = {"primary": {**CHERRY, "thickness": thickness}}
        piece = design(stock=stock, compartments={"bays": 3}, lid={"ends": "square"})
        assert [f.code for f in checked(piece) if f.severity.value == "must-fix"] == [], thickness
        crossed = [f for f in checked(piece) if f.code in ("cuts-back-to-back", "dado-deep")]
        assert [f.where for f in crossed if "shelf.writing" in f.where] == [], thickness
