"""Compartments as boards: bays that add up, partitions, backs, brackets and small drawers, and the way each goes in."""

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.compartment_plan import compartments_of
from shopdraw.build.plan import plan_desk
from shopdraw.check.assembly_order import assembly_order
from shopdraw.wood.interference import joint_closes, overlaps
from shopdraw.wood.season import in_season
from shopdraw.wood.sweep import swept
from tests.check.desks import design

GALLERY = {"gallery": {"above": "writing", "fill": "pigeonhole"}}
FULL = {
    "bays": 5,
    "shelves": (55.0,),
    "each": {"1": {"drawers": 2}, "3": {"drawers": 1, "bracket": "scallop"}, "5": {"drawers": 2, "bracket": "none"}},
}


def _one(piece):
    (found,) = compartments_of(plan_desk(piece))
    return found


def test_a_desk_has_none_unless_it_says_so_and_an_opening_filled_with_pigeonholes_is_enough():
    assert not any(board.member == "partition" for board in build(design()).boards)
    desk = build(design(opening=GALLERY))
    members = {board.member for board in desk.boards}
    assert {"partition", "bracket", "compartment.back"} <= members
    assert {opening.id for opening in desk.openings if opening.use == "pigeonhole"} == {
        f"gallery.{key}.1" for key in "1234"
    }


def test_bays_and_partitions_add_up_to_the_inside_width():
    # 900 - 2 × 20 = 860; four bays, three partitions of 8: (860 - 24) / 4 = 209
    bays = _one(design(opening=GALLERY)).bays
    assert [bay.width for bay in bays] == pytest.approx([209.0] * 4)
    assert bays[0].left == pytest.approx(20.0)
    assert bays[-1].right == pytest.approx(880.0)


def test_bays_by_count_given_or_by_the_openings_columns():
    # five of them have four partitions of 8 between: 860 less 32, by five
    assert [bay.width for bay in _one(design(compartments={"bays": 5})).bays] == pytest.approx([165.6] * 5)
    # 120 and 200 given, the two others share 860 - 24 - 320 = 516
    given = {"bays": 4, "each": {"1": {"width": 120.0}, "4": {"width": 200.0}}}
    assert [bay.width for bay in _one(design(compartments=given)).bays] == pytest.approx([120.0, 258.0, 258.0, 200.0])
    columns = {"by": "columns", "keys": ("a", "b", "c"), "rule": "given", "sizes": (200.0, 444.0)}
    opening = {"gallery": {**GALLERY["gallery"], "divide": columns}}
    bays = _one(design(opening=opening)).bays
    assert [bay.key for bay in bays] == ["a", "b", "c"]
    # 860 - 16 - 200 - 444 = 200
    assert [bay.width for bay in bays] == pytest.approx([200.0, 444.0, 200.0])


def test_a_partition_is_as_high_as_the_clear_height_and_two_grooves_less_half_a_millimetre():
    # from the shelf at 740 to the top's underside at 1020: 280 + 2 × 4 - 0.5 = 287.5
    desk = build(design(opening=GALLERY))
    board = desk.board("partition.1")
    assert board.length == pytest.approx(287.5)
    assert abs(board.frame.u[2]) == pytest.approx(1.0)
    # a step of 10 takes as much away
    stepped = build(design(opening=GALLERY, writing={"boards": 2}))
    assert stepped.board("partition.1").length == pytest.approx(277.5)


def test_a_partitions_rear_is_free_to_grow_before_the_back():
    # 0.00248 × 4 % of its depth and 0.5 mm
    piece = design(opening=GALLERY, stock={"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}})
    one = _one(piece)
    need = (one.room.rear - one.room.front) * 0.00248 * 4.0 + 0.5
    assert need <= one.room.rear - one.rear < need + 0.1


def test_case_16_the_plumb_front_clears_the_shut_lid_by_the_clearance():
    # at the top's underside, 280 over the writing surface: -0.25 + 280 / tan α + 6 / sin α, up to the next millimetre
    piece = design(opening=GALLERY)
    alpha = math.radians(plan_desk(piece).slant.alpha)
    need = -0.25 + 280.0 / math.tan(alpha) + 6.0 / math.sin(alpha)
    assert need <= _one(piece).room.front < need + 1.0


def test_case_16_knobs_of_small_drawers_are_counted():
    # a steep slant and a drawer right under the top, its knob 60 out: the knob and not the corner decides
    tall = {"shelves": (200.0,), "drawers": 1, "knob": 60.0, "bays": 2, "bracket": "none"}
    piece = design(compartments=tall)
    plan = plan_desk(piece)
    alpha = math.radians(plan.slant.alpha)
    # a blunt shelf over it leaves the knob in the middle of 200, 8 more to its upper edge
    need = -0.25 + 108.0 / math.tan(alpha) + 66.0 / math.sin(alpha)
    corner = -0.25 + 280.0 / math.tan(alpha) + 6.0 / math.sin(alpha)
    assert _one(piece).room.front == pytest.approx(math.ceil(max(need, corner)))


def test_small_drawers_and_shelves_stand_one_over_another_from_the_lowest_up():
    bay = _one(design(compartments={"bays": 3, "drawers": 2, "each": {"2": {"shelves": (50.0, 70.0)}}})).bays[1]
    # 740 to 790, 8 of shelf, 798 to 868, 8 of shelf, 876 to the top's underside
    levels = [level for space in bay.spaces for level in space]
    assert levels == pytest.approx([740.0, 790.0, 798.0, 868.0, 876.0, 1020.0])
    other = _one(design(compartments={"bays": 3, "drawers": 2})).bays[0]
    assert other.spaces[0] == pytest.approx((740.0, 800.0))


def test_a_small_drawers_front_is_rabbeted_over_its_sides():
    desk = build(design(compartments=FULL))
    front, side = desk.board("drawer.c3.front"), desk.board("drawer.c3.side-left")
    # bay 165.6, 0.8 beside it on both sides: 164; sides enter 9 of 12
    assert front.length == pytest.approx(164.0)
    joint = next(joint for joint in desk.joints if joint.host == front.id and joint.guest == side.id)
    assert joint.kind == "rabbet"
    assert dict(joint.sizes)["depth"] == pytest.approx(9.0)
    assert {board.stock.name for board in desk.boards if board.member == "compartment.drawer.side"} == {"small"}


def test_small_stocks_are_of_the_pieces_own_wood():
    desk = build(design(stock={"primary": {"species": "walnut_black", "thickness": 20.0}}, compartments=FULL))
    assert desk.board("partition.1").stock.species == "walnut_black"
    assert desk.board("drawer.c3.front").stock.species == "walnut_black"


def test_the_back_is_solid_and_floats_about_its_middle():
    desk = build(design(opening=GALLERY, writing={"boards": 2}))
    back = desk.board("compartment.back")
    assert abs(back.frame.u[0]) == pytest.approx(1.0)
    joints = [joint for joint in desk.joints if joint.guest == back.id]
    assert {joint.host for joint in joints} == {"shelf.rear", "top"}
    assert all(joint.floats and not joint.glued and joint.gap > 0 for joint in joints)
    # clear 270, grooves of 6, on each side free by what half of it gains: ceil(10 × (141 × 0.00248 × 4 + 0.5)) / 10
    free = math.ceil(10 * (141.0 * 0.00248 * 4.0 + 0.5)) / 10
    assert back.width == pytest.approx(270.0 + 2 * (6.0 - free))


def test_brackets_are_half_a_millimetre_shorter_than_their_bay_and_set_back():
    desk = build(design(opening=GALLERY))
    bracket, partition = desk.board("bracket.2"), desk.board("partition.1")
    assert bracket.length == pytest.approx(209.0 - 0.5)
    # the show face of one, the front edge of the other
    assert bracket.frame.at[1] - partition.frame.at[1] == pytest.approx(6.0)
    assert not build(design(compartments=FULL)).has("bracket.5")


@pytest.mark.parametrize(
    "tables",
    [
        {"opening": GALLERY},
        {"compartments": FULL, "writing": {"boards": 2}},
        {"compartments": {**FULL, "back": False}, "case": {"top_joint": "housed"}},
    ],
)
def test_all_of_it_closes_moves_and_goes_together_in_every_season(tables):
    desk = build(design(**tables))
    assert [joint.id for joint in desk.joints if not joint_closes(desk, joint)] == []
    for moisture in (8.0, 6.0, 12.0):
        now = in_season(desk, moisture)
        assert overlaps(now.boards) == ()
        assert swept(now.boards, now.motions) == ()
    assert assembly_order(desk).stuck == ()


def test_the_back_goes_in_from_above_after_the_partitions_and_before_the_top():
    steps = [step.unit for step in assembly_order(build(design(opening=GALLERY))).of("piece")]
    back = steps.index("compartment.back")
    assert all(steps.index(f"partition.{key}") < back for key in "123")
    assert back < steps.index("top")
    way = next(s for s in assembly_order(build(design(opening=GALLERY))).of("piece") if s.unit == "compartment.back")
    assert way.direction == pytest.approx((0.0, 0.0, -1.0))


def test_small_drawers_come_out_when_the_lid_is_open():
    desk = build(design(compartments=FULL))
    motions = {motion.id: motion for motion in desk.motions}
    assert motions["drawer.c3"].after == ("lid",)
    assert motions["drawer.1"].after == ()


@pytest.mark.parametrize(
    ("choices", "told"),
    [
        ({"bays": 16}, r"compartments\.bays: found a bay .* expected bays of 40 mm at least, at most 18"),
        ({"shelves": (200.0, 100.0)}, r"compartments\.1\.shelves: found 200, 100 mm in 280\.0 mm"),
        ({"each": {"9": {"drawers": 1}}}, r"compartments\.9: found a bay that there isn't: expected one of \"1\""),
        ({"front": 440.0}, r"compartments\.front: found compartments .* mm deep"),
        ({"bracket": "own"}, r"compartments\.bracket_path: found nothing: expected bracket_path"),
        ({"bracket_height": 200.0}, r"compartments\.bracket_height: found 200 mm: expected at most 140\.0 mm"),
        ({"each": {key: {"width": 200.0} for key in "1234"}}, r"expected widths that add up to 836\.00 mm: 36\.00 mm"),
    ],
)
def test_what_cannot_be_made_is_refused_with_what_fits(choices, told):
    if choices.get("bays") == 16:
        choices = {**choices, "each": {"1": {"width": 300.0}}}
    with pytest.raises(CannotBuild, match=told):
        build(design(compartments=choices))


FREE = {
    "piece": {"kind": "free"},
    "case": {"width": 720.0, "height": 800.0, "depth": 350.0, "top_joint": "housed"},
    "slant": None,
    "level": {"1": {"member": "shelf", "top": 400.0}},
    "opening": {"A": {"above": "bottom", "fill": "none"}, "B": {"above": "1", "fill": "pigeonhole"}},
}


def _free(**more):
    tables = {name: table for name, table in {**FREE, **more}.items() if table is not None}
    return type(design()).model_validate(tables)


def test_a_free_opening_filled_with_pigeonholes_gets_them_when_the_piece_has_the_table():
    assert not any(board.member == "partition" for board in build(_free()).boards)
    case = build(_free(compartments={"bays": 3, "shelves": (90.0,), "drawers": 1}))
    # inside 680, two partitions of 8: 221.333; grooves a sixth of 20 so that two back to back take a third
    assert case.board("pigeonhole.B-1.1").between_shoulders == pytest.approx((680.0 - 16.0) / 3)
    grooves = [j for j in case.joints if j.guest == "partition.B-1"]
    assert {joint.host for joint in grooves} == {"shelf.1", "top"}
    assert all(dict(joint.sizes)["depth"] == pytest.approx(20.0 / 6) for joint in grooves)
    assert [joint.id for joint in case.joints if not joint_closes(case, joint)] == []
    for moisture in (8.0, 6.0, 12.0):
        now = in_season(case, moisture)
        assert overlaps(now.boards) == ()
        assert swept(now.boards, now.motions) == ()
    assert assembly_order(case).stuck == ()


def test_compartments_over_a_web_frame_are_refused():
    with pytest.raises(CannotBuild, match=r"opening\.B: found a web frame: expected a board below and above"):
        build(_free(level={"1": {"member": "web-frame", "top": 400.0}}, compartments={"bays": 2}))
