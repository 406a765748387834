"""Inputs that no other test works through, each against a value worked by hand: sides 20 thick, mm."""

import math
from itertools import pairwise

import pytest

from shopdraw.build import build
from shopdraw.build.build import plan_of
from shopdraw.build.compartment_plan import least_front
from shopdraw.build.handle import usual_knob
from shopdraw.piece.design import Design
from shopdraw.shape.path import bounds
from shopdraw.wood.interference import box_of
from shopdraw.wood.volume import mass_kg, volume_mm3
from tests.check.desks import design

CASE = {"width": 900.0, "height": 1000.0, "depth": 480.0}


def made(kind, **tables):
    return build(Design.model_validate({"piece": {"kind": kind}, "case": CASE, **tables}))


def cuts(board, start):
    return [cut for cut, name in zip(board.shape.cuts, board.cut_ids, strict=True) if name.startswith(start)]


def spans(cut):
    x0, y0, x1, y1 = bounds(cut.outline)
    return x1 - x0, y1 - y0


@pytest.mark.parametrize("slope", [5.0, 8.0])
def test_a_dovetails_slope_is_one_in_so_many(slope):
    piece = made("chest", case={**CASE, "tail_slope": slope})
    joint = next(one for one in piece.joints if one.kind == "dovetail" and one.guest == "top")
    assert dict(joint.sizes)["slope"] == slope
    # a tail widens by the side's 20 over the slope, on each of its flanks
    slanted = [
        abs(there.y - here.y) / abs(there.x - here.x)
        for cut in piece.board("top").shape.cuts
        for path in (cut.outline, *cut.islands)
        for here, there in path.pairs()
        if 1e-6 < abs(there.y - here.y) < abs(there.x - here.x)
    ]
    assert slanted
    assert slanted == pytest.approx([1 / slope] * len(slanted))


def test_a_drawers_dovetails_have_a_slope_of_their_own():
    piece = made("chest", drawer={"front_joint": "dovetail", "tail_slope": 6.0})
    joints = [one for one in piece.joints if one.kind == "dovetail" and one.host.startswith("drawer.1.")]
    assert joints
    assert {dict(one.sizes)["slope"] for one in joints} == {6.0}


def test_an_overhanging_tops_moulding_is_as_large_as_it_is_asked():
    piece = made("chest", case={**CASE, "top_joint": "overhanging", "top_edge": "ovolo", "top_edge_size": 9.0})
    mouldings = cuts(piece.board("top"), "moulding:top:")
    assert len(mouldings) == 3
    assert all(spans(cut) == pytest.approx((9.0, 9.0)) for cut in mouldings)


def test_a_lock_is_let_in_by_its_own_sizes():
    sizes = {"lock_width": 46.0, "lock_height": 30.0, "lock_depth": 9.0, "keyhole": 16.0, "bolt": 7.0}
    piece = build(design(lid={"lock": True, **sizes}))
    lid = piece.board("lid")
    (body,), (keyhole,) = cuts(lid, "lock:lid:body"), cuts(lid, "keyhole:lid")
    assert spans(body) == pytest.approx((46.0, 30.0))
    assert body.depth == pytest.approx(9.0)
    # measured down from the core's edge, which the body ends at
    edge = bounds(body.outline)[3]
    assert edge - sum(bounds(keyhole.outline)[1::2]) / 2 == pytest.approx(16.0)
    # the bolt's mortise is as deep as the bolt, the gap to the lid and 1
    size = next(one for one in piece.hardware if one.id == "lock:lid")
    assert dict(size.sizes) == {"width": 46.0, "height": 30.0, "depth": 9.0, "bolt": 7.0}


def test_hinges_are_let_in_to_their_own_length_and_thickness():
    piece = build(design(lid={"hinge_length": 50.0, "hinge_thickness": 1.6, "hinge_leaf": 15.0}))
    for cut in cuts(piece.board("lid"), "hinge:lid:"):
        # the leaf less half the joint gap of 0.5
        assert spans(cut) == pytest.approx((50.0, 14.75))
        assert cut.depth == pytest.approx(1.6)


@pytest.mark.parametrize("edge", ["upper", "lower"])
def test_a_lecterns_ledge_stands_over_its_lid_as_far_as_it_is_asked(edge):
    slant = {"writing_height": 960.0, "hinge_edge": edge, "top_depth": 200.0}
    if edge == "upper":
        slant |= {"top_depth": 130.0, "start": 1020.0}
    case = {"width": 560.0, "height": 1150.0, "depth": 430.0}
    piece = made("lectern", case=case, slant=slant, lid={"ledge": 16.0})
    ledge, lid = piece.board("lid.ledge"), piece.board("lid")
    assert ledge.width == pytest.approx(16.0)
    # its width runs off the lid's outer face, and begins there
    off = lid.frame.local_direction(ledge.frame.v)
    assert abs(off[2]) == pytest.approx(1.0)
    start = lid.frame.local(ledge.frame.at)[2]
    assert min(abs(start), abs(start + lid.thickness)) == pytest.approx(0.0, abs=1e-6)


def test_a_plinth_stands_off_the_floor_by_its_gap():
    plinth = made("chest", base={"foot_gap": 2.5}).board("plinth.front")
    assert box_of(plinth)[2] == pytest.approx(2.5)
    assert plinth.width == pytest.approx(87.5)


def test_the_backs_rabbet_is_as_wide_as_it_is_asked():
    piece = made("chest", back={"rabbet_width": 8.0, "rabbet_depth": 9.0})
    # opening 860 and two rabbets of 8, less 1
    assert piece.board("back").width == pytest.approx(875.0)
    (rabbet,) = cuts(piece.board("side.left"), "rabbet:side.left:back")
    assert rabbet.depth == pytest.approx(8.0)
    assert box_of(piece.board("back"))[1] == pytest.approx(471.0)


def test_a_lip_of_its_own_on_the_right_edge():
    piece = made("chest", drawer={"front": "lipped", "lip": 8.0, "lip_right": 3.0})
    # opening 860: 8 on the left, 3 on the right
    front = piece.board("drawer.1.front")
    assert front.length == pytest.approx(871.0)
    assert box_of(front)[3] == pytest.approx(880.0 + 3.0)


def test_knobs_stand_at_the_quarters_of_a_wide_front_with_screws_as_long_as_they_need():
    piece = made("chest", drawer={"knob_diameter": 30.0, "knob_projection": 24.0})
    front = piece.board("drawer.1.front")
    bores = cuts(front, "knob:")
    # 858 long: at 214.5 and 643.5; half its height up
    assert sorted(sum(bounds(cut.outline)[::2]) / 2 for cut in bores) == pytest.approx([214.5, 643.5])
    assert [sum(bounds(cut.outline)[1::2]) / 2 for cut in bores] == pytest.approx([front.width / 2] * 2)
    knob = next(one for one in piece.hardware if one.id == "knob:drawer.1")
    assert (knob.quantity, dict(knob.sizes)) == (2, {"diameter": 30.0, "projection": 24.0})
    # through 20, 21 of the knob before it: 40 asked for, 39 at most
    screw = next(one for one in piece.hardware if one.id == "screw:knob:drawer.1")
    assert (screw.quantity, dict(screw.sizes)["length"]) == (2, 35.0)


def test_a_pull_has_two_holes_as_far_apart_as_its_posts():
    piece = made("chest", drawer={"handle": "pull", "pull_centres": 96.0, "knobs": 1})
    front = piece.board("drawer.2.front")
    middles = sorted(sum(bounds(cut.outline)[::2]) / 2 for cut in cuts(front, "pull:"))
    assert middles == pytest.approx([429.0 - 48.0, 429.0 + 48.0])
    pull = next(one for one in piece.hardware if one.id == "pull:drawer.2")
    assert (pull.kind, pull.quantity, dict(pull.sizes)) == ("pull", 1, {"centres": 96.0})
    assert next(one for one in piece.hardware if one.id == "screw:pull:drawer.2").quantity == 2


@pytest.mark.parametrize(("high", "diameter"), [(60.0, 20.0), (110.0, 25.0), (140.0, 32.0)])
def test_a_usual_knob_is_no_larger_than_a_quarter_of_its_front(high, diameter):
    assert usual_knob(high).diameter == diameter


def test_pins_stand_as_far_from_the_shelfs_edges_as_they_are_asked():
    piece = made("bookcase", level={"1": {"member": "pinned-shelf"}}, pins={"setback": 50.0})
    shelf = box_of(piece.board("shelf.1"))
    side = piece.board("side.left")
    rows = {round(side.frame.point((0.0, sum(bounds(cut.outline)[1::2]) / 2, 0.0))[1], 6) for cut in cuts(side, "pin")}
    assert rows == {round(shelf[1] + 50.0, 6), round(shelf[4] - 50.0, 6)}


def test_brackets_stand_back_from_the_partitions_by_their_setback():
    tables = {"bays": 4, "bracket_setback": 9.0, "bracket_height": 36.0}
    piece = build(design(compartments=tables))
    bracket, partition = piece.board("bracket.2"), piece.board("partition.1")
    assert box_of(bracket)[1] - box_of(partition)[1] == pytest.approx(9.0)
    assert bracket.width == pytest.approx(36.0)


def test_an_own_bracket_path_is_every_brackets_edge():
    # up 0.25 of 40 at half of the half length, 0.5 in the middle
    path = (0.0, 0.0, 0.0, 0.5, 0.25, 0.0, 1.0, 0.5, 0.0)
    piece = build(design(compartments={"bays": 4, "bracket": "own", "bracket_path": path}))
    outline = piece.board("bracket.1").shape.outline
    length = piece.board("bracket.1").length
    assert [(c.x, c.y) for c in outline.corners[1:3]] == [
        (pytest.approx(length / 4), pytest.approx(10.0)),
        (pytest.approx(length / 2), pytest.approx(20.0)),
    ]


def test_a_weighed_stock_gives_its_boards_weight():
    stock = {"primary": {"thickness": 20.0, "density": 700.0}}
    side = made("chest", stock=stock).board("side.left")
    # the density is that at 12 % of moisture
    assert mass_kg(side) == pytest.approx(volume_mm3(side.shape) * 1e-9 * 700.0)


def test_moisture_follows_from_the_airs_humidity():
    # FPL-GTR-282, Table 4-2, at 70 °F: 30, 50 and 75 % of humidity give 6.2, 9.2 and 14.4 %, to its printed tenth
    air = {"temperature": 21.1, "humidity_dry": 30.0, "humidity_build": 50.0, "humidity_wet": 75.0}
    m = made("chest", climate=air).moisture
    assert (m.dry, m.build, m.wet) == pytest.approx((6.2, 9.2, 14.4), abs=0.065)
    assert math.isclose(made("chest", climate={**air, "build": 7.0}).moisture.build, m.build)


def test_pins_are_as_far_apart_as_their_pitch():
    piece = made("bookcase", level={"1": {"member": "pinned-shelf"}}, pins={"pitch": 25.0, "spare": 1})
    rises = sorted({round(sum(bounds(cut.outline)[::2]) / 2, 6) for cut in cuts(piece.board("side.left"), "pin")})
    assert [there - here for here, there in pairwise(rises)] == pytest.approx([25.0, 25.0])


def test_what_stands_proud_of_the_lid_moves_the_compartments_back_by_it_over_the_sine():
    pieces = [design(compartments={"bays": 4, "proud": size}) for size in (0.0, 5.0)]
    alpha = math.radians(build(pieces[0]).slant.angle_from_level_deg)
    plain, proud = (least_front(plan_of(piece)) for piece in pieces)
    assert proud - plain == pytest.approx(5.0 / math.sin(alpha))
    assert box_of(build(pieces[1]).board("partition.1"))[1] >= proud


def test_jointing_is_taken_off_each_edge_of_a_board_at_hand():
    stock = {"primary": {"thickness": 20.0, "widths": (150.0,), "jointing": 4.0}}
    side = made("chest", stock=stock).board("side.left")
    # 142 clear of each: three give 426, so four are glued up to 480
    assert len(side.staves) == 4
    assert max(side.staves) <= 142.0
    assert sum(side.staves) == pytest.approx(480.0)
