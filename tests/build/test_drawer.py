"""Drawers: sizes worked by hand from the opening, and every joint judged by solids in three seasons.

Cherry, tangential: 0.00248 for each percent of moisture (Wood Handbook FPL-GTR-190, Table 13-5).
"""

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.build import plan_of
from shopdraw.build.drawer_joint import front_tails
from shopdraw.build.drawer_size import drawer_size
from shopdraw.check.assembly_order import assembly_findings
from shopdraw.piece.design import Design
from shopdraw.shape.path import bounds
from shopdraw.wood.interference import box_of, closing, overlaps
from shopdraw.wood.season import in_season
from shopdraw.wood.sweep import swept

STOCK = {
    "primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"},
    "drawer": {"species": "cherry_black", "thickness": 12.0, "cut": "flat"},
    "sheet": {"species": "plywood_birch", "kind": "sheet", "thickness": 6.0},
    "thin": {"species": "pine_eastern_white", "thickness": 8.0, "cut": "flat"},
}


def _chest(drawer=None, **tables):
    """A chest 660 wide and 480 deep, two openings 620 × 140 over each other; cherry built at 8 %, 6 to 12 %."""
    # from the floor: base 90, or 90 + lip + 2; two openings and a frame of 20, a top of 20
    made = {
        "piece": {"kind": "chest", "title": "Chest for charts"},
        "case": {"width": 660.0, "height": 432.0, "depth": 480.0, "top_joint": "housed"},
        "level": {"bottom": {"member": "bottom", "top": 112.0}},
        "opening": {"bank": {"divide": {"keys": ("1", "2"), "rule": "given", "sizes": (140.0, 140.0)}}},
        "stock": STOCK,
        "drawer": drawer or {},
        **tables,
    }
    return Design.model_validate(made)


def _size(drawer, key=0):
    plan = plan_of(_chest(drawer))
    return drawer_size(plan, plan.rows[key])


def _spans(box):
    return box.x1 - box.x0, box.z1 - box.z0


def _rabbets(front):
    """Width of each lip's rabbet from the front's edge inwards, by where it is."""
    found = {}
    for cut, name in zip(front.shape.cuts, front.cut_ids, strict=True):
        if name.startswith(f"rabbet:{front.id}:"):
            x0, y0, x1, y1 = bounds(cut.outline)
            found[name.rsplit(":", 1)[1]] = min(x1 - x0, y1 - y0)
    return found


LIPPED = {"front": "lipped", "lip": 8.0, "lip_thickness": 8.0, "top_clearance": 3.0, "side_clearance": 1.5}


def test_a_lipped_drawer_by_hand():
    # opening 620 × 140, lips 8, clearances 1.5 / 3 / 0: front 636 × 156, box 617 × 137
    size = _size(LIPPED)
    assert _spans(size.front) == pytest.approx((636.0, 156.0))
    assert _spans(size.box) == pytest.approx((617.0, 137.0))
    front = build(_chest(LIPPED)).board("drawer.1.front")
    assert _rabbets(front) == pytest.approx({"left": 9.5, "right": 9.5, "upper": 11.0, "lower": 8.0})


def test_edges_without_a_lip_are_level_with_the_box_and_have_no_rabbet():
    # its width is 620 less 1.5 and with one lip of 8, its height 140 less 3 and with one lip
    drawer = {**LIPPED, "lip_left": 0.0, "lip_top": 0.0}
    assert _spans(_size(drawer).front) == pytest.approx((620.0 - 1.5 + 8.0, 140.0 - 3.0 + 8.0))
    front = build(_chest(drawer)).board("drawer.1.front")
    assert _rabbets(front) == pytest.approx({"right": 9.5, "lower": 8.0})


def test_one_drawer_may_have_lips_of_its_own():
    piece = _chest({**LIPPED, "each": {"2": {"lip_bottom": 5.0, "lip": 6.0}}})
    plan = plan_of(piece)
    assert drawer_size(plan, plan.rows[1]).lips == pytest.approx((6.0, 6.0, 6.0, 5.0))
    assert drawer_size(plan, plan.rows[0]).lips == pytest.approx((8.0, 8.0, 8.0, 8.0))


def test_an_inset_front_by_hand():
    # width 620 - 2 × 1; M_w of 140 high: 140 × 0.00248 × 4 = 1.39, and 1 of reveal: 2.4 in tenths
    size = _size({"reveal": 1.0})
    assert round(140 * 0.00248 * 4, 2) == 1.39
    assert _spans(size.front) == pytest.approx((618.0, 140.0 - 1.0 - 2.4))


def test_an_overlay_front_by_hand():
    # overlaps of 10 all round and 15 above: 640 × 165; the box has a front of its own, 12 thick, behind the front plane
    size = _size({"front": "overlay", "lip": 10.0, "lip_top": 15.0, "side_clearance": 1.5})
    assert _spans(size.front) == pytest.approx((640.0, 165.0))
    assert (size.front.y0, size.front.y1) == (-20.0, 0.0)
    assert (size.inner.y0, size.inner.y1) == (0.0, 12.0)
    assert _spans(size.inner) == _spans(size.box)


@pytest.mark.parametrize(
    ("drawer", "length"),
    [
        # usable U = 480 - 7 - 480 × 0.00248 × 2 - 2 = 468.62; a lipped front goes p = 12 into the case
        ({**LIPPED, "front_joint": "dovetail", "entry": 12.0}, 468.62),
        ({**LIPPED, "front_joint": "dovetail", "entry": 8.0}, 464.62),
        ({**LIPPED, "front_joint": "sliding", "entry": 8.0}, 464.62),
        ({**LIPPED, "front_joint": "tongue", "entry": 8.0}, 464.62),
        # inset, lap 20 - 17 = 3: U - (20 - 17); rabbet 8: U - (20 - 8)
        ({"front_joint": "dovetail", "entry": 17.0}, 465.62),
        ({"front_joint": "rabbet", "entry": 8.0}, 456.62),
        # overlay: the box's front is 12 thick: U - (12 - 8)
        ({"front": "overlay", "front_joint": "dovetail", "entry": 8.0}, 464.62),
    ],
)
def test_the_sides_lengths_by_hand(drawer, length):
    assert build(_chest(drawer)).board("drawer.1.side-left").length == pytest.approx(length, abs=0.005)


@pytest.mark.parametrize(
    ("joint", "length", "behind"),
    # box 618 - 2 × 12 = 594 between the sides; entries 0.4 and 0.5 of 12, or all of it
    [("dado", 594 + 2 * 4.8, 12.0), ("rabbet", 594 + 2 * 6.0, 0.0), ("dovetail", 618.0, 0.0)],
)
def test_the_backs_length_by_hand(joint, length, behind):
    assembly = build(_chest({"back_joint": joint, "side_clearance": 1.0}))
    back, side = assembly.board("drawer.1.back"), assembly.board("drawer.1.side-left")
    assert back.length == pytest.approx(length)
    assert box_of(side)[4] - box_of(back)[4] == pytest.approx(behind)


def test_the_backs_height_and_the_bottoms_sizes_by_hand():
    assembly = build(_chest({"groove_up": 10.0, "drop": 5.0, "top_clearance": 3.0, "side_clearance": 1.0}))
    # side 137 less groove 10, bottom 6 and its fit 0.1, drop 5
    assert assembly.board("drawer.1.back").width == pytest.approx(137 - 10 - 6 - 0.1 - 5)
    bottom = assembly.board("drawer.1.bottom")
    # 594 and two grooves of 4.8, less 0.5 at each end
    assert bottom.length == pytest.approx(594 + 2 * 4.8 - 1.0)
    # from the front groove's floor, 4.8 into a front whose inner face lies at 20, less 0.5; to the back's rear face
    assert bottom.width == pytest.approx((468.62 - 12.0) - (20.0 - 4.8 + 0.5), abs=0.005)


def test_the_bottoms_groove_lies_inside_the_lowest_tail():
    piece = _chest({"front_joint": "dovetail", "entry": 8.0, "groove_up": 10.0})
    plan = plan_of(piece)
    tails = front_tails(plan, plan.rows[0], drawer_size(plan, plan.rows[0]))
    low, high = tails.spans[0]
    narrowing = 8.0 / 8.0
    assert low + narrowing <= 10.0 - 1.5
    assert high - narrowing >= 10.0 + 6.1 + 1.5
    # equal tails, pins and half pins fill the side
    n, tail = len(tails.spans), high - low
    height = build(piece).board("drawer.1.side-left").width
    assert 2 * tails.half_pin + n * tail + (n - 1) * tails.pin == pytest.approx(height)


def test_the_lowest_tails_groove_shows_on_no_end():
    assembly = build(_chest({"front_joint": "dovetail"}))
    front, side = assembly.board("drawer.1.front"), assembly.board("drawer.1.side-left")
    groove = next(
        cut for cut, name in zip(front.shape.cuts, front.cut_ids, strict=True) if name.startswith("groove:")
    )
    x0, _, x1, _ = bounds(groove.outline)
    # its ends lie in the sockets: behind the side's inner face by its depth, before its outer face
    assert x0 == pytest.approx(side.thickness - 0.4 * side.thickness)
    assert front.length - x1 == pytest.approx(side.thickness - 0.4 * side.thickness)


@pytest.mark.parametrize(
    ("drawer", "words"),
    [
        ({**LIPPED, "entry": 12.5}, "expected at most 12 mm"),
        ({"front_joint": "dovetail", "entry": 17.5}, "expected at most 17 mm"),
        ({**LIPPED, "lip_thickness": 17.0}, "expected at most 16 mm"),
        ({"front_joint": "dovetail", "groove_up": 4.0}, "a half pin stands under the groove"),
        ({"front_joint": "dovetail", "tails": 20}, "the lowest tail holds the bottom's groove"),
        ({"front_joint": "sliding", "entry": 14.0}, "left at the dovetail's root"),
        ({**LIPPED, "edge": "round", "edge_size": 7.0}, "expected at most 6 mm"),
    ],
)
def test_what_cant_be_made_is_refused_with_what_can(drawer, words):
    with pytest.raises(CannotBuild, match=words):
        build(_chest(drawer))


CHOICES = [
    {"front": front, "front_joint": joint, "back_joint": back, "lip": 7.0, "edge": edge}
    for front, edge in (("inset", "bead"), ("lipped", "ovolo"), ("overlay", "cove"))
    for joint, back in (
        ("tongue", "rabbet"),
        ("rabbet", "dovetail"),
        ("dovetail", "dado"),
        ("dovetail", "dovetail"),
        ("sliding", "rabbet"),
        ("sliding", "dovetail"),
    )
]


@pytest.mark.parametrize("drawer", CHOICES, ids=lambda one: "-".join(map(str, one.values())))
@pytest.mark.parametrize("bottom", ["sheet", "thin"])
def test_every_joint_goes_together_and_holds_in_every_season(drawer, bottom):
    pine = {"species": "pine_eastern_white", "thickness": 12.0, "cut": "flat"}
    piece = _chest(
        drawer,
        stock={**STOCK, "drawer": pine},
        use={"drawer.bottom": bottom},
        opening={"bank": {"divide": {"keys": ("1",)}}},
        case={"width": 660.0, "height": 280.0, "depth": 480.0, "top_joint": "housed"},
    )
    assembly = build(piece)
    m = assembly.moisture
    for moisture in (m.build, m.dry, m.wet):
        now = in_season(assembly, moisture)
        assert overlaps(now.boards) == ()
        assert swept(now.boards, now.motions) == ()
    for joint in assembly.joints:
        found = closing(assembly, joint)
        assert found is None or found.closes(), f"{joint.id}: {found}"
    assert assembly_findings(assembly) == ()


def test_a_solid_bottom_is_glued_in_front_and_slides_in_slots_behind():
    assembly = build(_chest(use={"drawer.bottom": "thin"}))
    joints = {j.id: j for j in assembly.joints if j.guest == "drawer.1.bottom"}
    assert joints["groove:drawer.1.front:drawer.1.bottom"].glued
    side = joints["groove:drawer.1.side-left:drawer.1.bottom"]
    # pine flat-sawn 0.00212 (Wood Handbook, Table 13-5); from the front's inner face at 20 to the back at 456.62: 6 %
    moves = (468.62 - 12.0 - 20.0) * 0.00212 * 6
    assert side.floats
    assert side.gap == pytest.approx(moves, abs=0.01)
    bottom = assembly.board("drawer.1.bottom")
    slots = [cut for cut in bottom.shape.cuts if cut.kind == "slot"]
    assert len(slots) == 3
    # screws 4 thick stand 6 before the back's rear face; in front of them lies what the bottom grows and half of 1 mm
    for slot in slots:
        _, y0, _, y1 = bounds(slot.outline)
        assert y0 == pytest.approx(bottom.width - 6.0 - moves * 4 / 6 - 0.5 - 2.0, abs=0.01)
        # less than 5 mm would be left behind a slot's end: it runs out
        assert y1 == pytest.approx(bottom.width)
        assert not slot.stopped


def test_an_overlay_front_is_screwed_fast_below_and_in_slots_above():
    assembly = build(_chest({"front": "overlay", "lip": 8.0}))
    inner = assembly.board("drawer.1.box-front")
    bores = [cut for cut in inner.shape.cuts if cut.kind == "bore"]
    slots = [cut for cut in inner.shape.cuts if cut.kind == "slot"]
    screws = next(item for item in assembly.hardware if item.id == "screw:drawer.1.box-front:front")
    assert screws.quantity == len(bores) + len(slots)
    low, high = (max(bounds(cut.outline)[3] for cut in bores), min(bounds(cut.outline)[1] for cut in slots))
    assert low < high
    # a slot is longer than a screw by what 100 and more between the rows move from dry to wet
    between = sum(bounds(slots[0].outline)[1::2]) / 2 - sum(bounds(bores[0].outline)[1::2]) / 2
    _, y0, _, y1 = bounds(slots[0].outline)
    assert (y1 - y0) - 4.5 == pytest.approx(between * 0.00248 * 6 + 1.0, abs=0.01)


def test_a_moulding_runs_round_the_front_and_a_beads_quirk_stops_at_its_corners():
    front = build(_chest({"edge": "bead", "edge_size": 6.0})).board("drawer.1.front")
    cuts = {name: cut for cut, name in zip(front.shape.cuts, front.cut_ids, strict=True) if cut.kind == "moulding"}
    assert len(cuts) == 8
    upper = cuts["moulding:drawer.1.front:upper"]
    quirk = cuts["moulding:drawer.1.front:upper.2"]
    assert (upper.start, upper.depth) == pytest.approx((0.0, front.length))
    assert (quirk.start, quirk.depth) == pytest.approx((6.0, front.length - 12.0))


def test_dovetailed_sides_move_as_the_front_does():
    pine = {"species": "pine_eastern_white", "thickness": 12.0, "cut": "flat"}
    assembly = build(_chest({"front_joint": "dovetail"}, stock={**STOCK, "drawer": pine}))
    wet = in_season(assembly, assembly.moisture.wet)
    for name in ("side-left", "side-right", "front"):
        before, after = assembly.board(f"drawer.1.{name}").width, wet.board(f"drawer.1.{name}").width
        assert after / before - 1 == pytest.approx(0.00248 * 4)
