"""The plinth's shaped feet, mitres, moulding, blocks and screws against sums worked by hand; boards of it 20 thick."""

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.check.short_grain import weakest_section
from shopdraw.piece.design import Design
from shopdraw.shape.path import arc_of, bounds
from shopdraw.wood.interference import box_of
from tests.build.judging import sound

CASE = {"width": 900.0, "height": 1000.0, "depth": 480.0}


def made(kind="chest", case=CASE, **base):
    return Design.model_validate({"piece": {"kind": kind}, "case": case, "base": base})


def refusal(design):
    with pytest.raises(CannotBuild) as told:
        build(design)
    (fault,) = told.value.faults
    assert fault.right.startswith("expected")
    return fault


def arcs(board):
    pairs = board.shape.outline.pairs()
    return [arc_of((a.x, a.y), (b.x, b.y), a.bulge) for a, b in pairs if a.bulge]


def test_a_plinth_wraps_the_case_and_its_returns_end_with_it():
    piece = build(made())
    # front at long points 900 + 2 × 20, returns 480 + 20; 1.5 over the floor, 90 high over it
    assert piece.board("plinth.front").length == pytest.approx(940.0)
    assert piece.board("plinth.left").length == pytest.approx(500.0)
    assert piece.board("plinth.front").width == pytest.approx(88.5)
    # the case's foot is 90 - 20 - 15 = 55: the plinth laps it by 35
    assert box_of(piece.board("side.left"))[2] == pytest.approx(55.0)


def test_a_hollow_foot_is_a_quarter_circle_drawn_once_and_mirrored():
    piece = build(made(feet="hollow", foot=110.0, rise=40.0))
    one, other = arcs(piece.board("plinth.front"))
    assert (one.radius, other.radius) == pytest.approx((40.0, 40.0))
    # from the foot's inner end straight up into the arc, level into the edge: centre 110 + 40 out, on the lower edge
    assert (one.centre, other.centre) == (pytest.approx((150.0, 0.0)), pytest.approx((940.0 - 150.0, 0.0)))
    # the same at the sides: 500 long, and on the left one the width runs down
    assert sorted(arc.centre[0] for arc in arcs(piece.board("plinth.right"))) == pytest.approx([150.0, 350.0])
    assert {round(arc.centre[1], 6) for arc in arcs(piece.board("plinth.left"))} == {88.5}


@pytest.mark.parametrize("hand", ["front", "left", "right"])
@pytest.mark.parametrize("feet", ["hollow", "ogee"])
def test_shaped_edges_are_mirrored_and_their_arcs_tangent(feet, hand):
    board = build(made(feet=feet)).board(f"plinth.{hand}")
    outline = board.shape.outline
    corners = {(round(c.x, 6), round(c.y, 6)) for c in outline.corners}
    assert {(round(board.length - x, 6), y) for x, y in corners} == corners
    assert bounds(outline) == pytest.approx((0.0, 0.0, board.length, 88.5))
    pairs = list(outline.pairs())
    for before, here in zip(pairs, pairs[1:] + pairs[:1], strict=True):
        on_floor = min(here[0].y, 88.5 - here[0].y) < 1e-6
        if (not before[0].bulge and not here[0].bulge) or on_floor:
            continue
        leaving = _direction(*before, at_end=True)
        going = _direction(*here, at_end=False)
        assert math.cos(leaving - going) == pytest.approx(1.0), "an arc that meets its neighbour at an angle"


def _direction(a, b, *, at_end):
    """Which way a segment runs at one of its ends: the chord, turned by half of the arc's angle."""
    half = 2 * math.atan(a.bulge)
    return math.atan2(b.y - a.y, b.x - a.x) + (half if at_end else -half)


def test_an_own_edge_is_lines_with_tangent_arcs():
    # up 30 with a corner rounded by 10, across to 50 and up to 42 with 6: a right turn of 90°, tangents as long as r
    path = (0.0, 30.0, 10.0, 50.0, 30.0, 0.0, 50.0, 42.0, 6.0, 70.0, 42.0, 0.0)
    piece = build(made(feet="own", foot=100.0, foot_path=path))
    found = [(round(c.x, 3), round(c.y, 3)) for c in piece.board("plinth.front").shape.outline.corners]
    expected = [(0, 0), (100, 0), (100, 20), (110, 30), (150, 30), (150, 36), (156, 42)]
    assert found[:7] == [(float(x), float(y)) for x, y in expected]
    assert sorted({round(arc.radius, 6) for arc in arcs(piece.board("plinth.front"))}) == [6.0, 10.0]


def test_a_foot_as_long_as_its_block_needs():
    # block 45, plinth 20, 35 more
    outline = build(made(feet="hollow")).board("plinth.front").shape.outline
    assert outline.corners[1][:2] == pytest.approx((100.0, 0.0))


@pytest.mark.parametrize(
    ("base", "address"),
    [
        ({"feet": "hollow", "foot": 60.0}, "base.foot"),
        ({"feet": "hollow", "foot": 230.0}, "base.foot"),
        ({"feet": "ogee", "rise": 70.0}, "base.rise"),
        ({"feet": "own"}, "base.foot_path"),
        ({"feet": "own", "foot_path": (0.0, 30.0)}, "base.foot_path"),
        ({"feet": "own", "foot_path": (0.0, 30.0, 40.0, 10.0, 30.0, 0.0)}, "base.foot_path"),
        ({"edge": "ovolo", "edge_size": 18.0}, "base.edge_size"),
        ({"mitre": "biscuits", "height": 60.0}, "base.height"),
    ],
)
def test_what_has_no_room_on_a_plinth_is_told(base, address):
    assert refusal(made(**base)).address == address


def test_a_mitre_with_a_spline_closes_and_its_grain_runs_across():
    piece = sound(made(mitre="spline"))
    spline = piece.board("plinth.spline-left")
    # 0.3 of 20 in each board, over 90 less 12 under the edge, 1.5 over the floor, 1 of room at its end
    assert spline.length == pytest.approx(12.0)
    assert spline.width == pytest.approx(90.0 - 12.0 - 1.5 - 1.0)
    assert spline.frame.u == pytest.approx((math.sqrt(0.5), -math.sqrt(0.5), 0.0))
    grooves = [joint for joint in piece.joints if joint.guest == spline.id]
    assert {joint.host for joint in grooves} == {"plinth.front", "plinth.left"}
    assert {dict(joint.sizes)["depth"] for joint in grooves} == {6.5}


def test_biscuits_are_of_the_largest_size_that_the_mitre_takes():
    piece = sound(made(mitre="biscuits"))
    # at a third of the mitre, 9.43 from its heel: (9.43 + 2 + 12.5) / √2 = 16.9, 3 short of 20 at most is 17
    one = next(one for one in piece.hardware if one.id == "biscuit:plinth.left")
    assert (one.kind, one.quantity) == ("biscuit 20", 1)
    slots = [name for name in piece.board("plinth.front").cut_ids if name.startswith("biscuit")]
    assert len(slots) == 2
    thinner = Design.model_validate({
        "piece": {"kind": "chest"}, "case": CASE, "base": {"mitre": "biscuits"},
        "stock": {"primary": {"thickness": 18.0}},
    })  # fmt: skip
    # in 18 at 8.49: 8.49 + 2 + 12.5 gives 16.3, over 15; with 10.5 it is 14.8
    assert "biscuit 10" in {one.kind for one in build(thinner).hardware}


def test_the_upper_moulding_goes_round_three_boards():
    piece = sound(made(edge="ovolo", edge_size=8.0))
    for name in ("plinth.front", "plinth.left", "plinth.right"):
        (cut,) = [cut for cut in piece.board(name).shape.cuts if cut.kind == "moulding"]
        x0, y0, x1, y1 = bounds(cut.outline)
        assert (x1 - x0, y1 - y0) == pytest.approx((8.0, 8.0))


def test_returns_are_glued_in_front_and_screwed_in_slots_behind():
    piece = build(made())
    glued = next(joint for joint in piece.joints if joint.id == "butt:side.left:plinth.left")
    assert glued.glued
    assert dict(glued.sizes)["glue"] == 75.0
    side = piece.board("side.left")
    named = [(name, cut) for name, cut in zip(side.cut_ids, side.shape.cuts, strict=True) if ":plinth.left." in name]
    assert [cut.kind for _, cut in named] == ["bore", "slot", "slot", "slot"]
    # the last one 480 - 7 - 45 = 428 behind the front: cherry, 428 × 0.00248 × (2 + 4) and 1 of play, holes of 4.5
    x0, y0, x1, y1 = bounds(named[-1][1].outline)
    assert (y1 - y0, x1 - x0) == pytest.approx((428.0 * 0.00248 * 6 + 1.0 + 4.5, 4.5), abs=0.02)
    # a side of 20 and a return of 20: 35 long bites 15
    screws = next(one for one in piece.hardware if one.id == "screw:plinth.left")
    assert (screws.quantity, dict(screws.sizes)["length"], screws.through, screws.room) == (4, 40.0 - 5.0, 20.0, 20.0)


def test_foot_blocks_carry_the_case_and_stand_on_the_floor_with_eased_edges():
    piece = build(made())
    block = piece.board("block.front-left")
    assert box_of(block)[2] == 0.0
    assert box_of(block)[5] == pytest.approx(box_of(piece.board("side.left"))[2])
    assert [cut.kind for cut in block.shape.cuts] == ["chamfer"] * 4 + ["bore"] * 2


def test_glue_blocks_are_short_across_a_sides_grain():
    piece = sound(made(glue_blocks=True))
    blocks = [board for board in piece.boards if board.member == "block.glue"]
    assert len(blocks) >= 5
    assert all(board.length <= 75.0 for board in blocks)


def test_the_weakest_section_of_a_foot_is_where_it_is_shortest_for_its_height():
    # a foot of 100 with a straight inner end 40 high: 100 long along the grain, 40 over its end
    piece = build(made(feet="own", foot=100.0, foot_path=(0.0, 40.0, 0.0, 10.0, 40.0, 0.0)))
    weakest = weakest_section(piece.board("plinth.left").shape.outline)
    assert (weakest.length, weakest.height) == (pytest.approx(100.0, abs=0.01), pytest.approx(40.0, abs=0.01))
    # undercut by 70 at 30 up: 30 left there
    neck = build(made(feet="own", foot=100.0, foot_path=(-70.0, 30.0, 0.0, 0.0, 45.0, 0.0)))
    weakest = weakest_section(neck.board("plinth.front").shape.outline)
    assert (weakest.length, weakest.height) == (pytest.approx(30.0, abs=0.1), pytest.approx(30.0, abs=0.1))
    assert weakest_section(build(made()).board("plinth.front").shape.outline) is None


def test_a_high_plinths_foot_blocks_are_glued_above_and_dry_below():
    piece = build(made(height=130.0))
    joint = next(one for one in piece.joints if one.id == "butt:plinth.left:block.front-left")
    # the block is 130 - 20 - 15 = 95 high, 93.5 of it behind the plinth
    assert dict(joint.sizes)["glue-above"] == 75.0
    low = next(one for one in build(made()).joints if one.id == "butt:plinth.left:block.front-left")
    assert dict(low.sizes)["glue-above"] == pytest.approx(55.0 - 1.5)


def test_glue_blocks_behind_a_face_frame_stand_behind_its_lower_rail():
    tables = {"piece": {"kind": "bookcase"}, "case": CASE, "face": {}, "base": {"glue_blocks": True}}
    piece = sound(Design.model_validate(tables))
    assert box_of(piece.board("block.glue-1"))[1] == pytest.approx(box_of(piece.board("face.rail-lower"))[4])


@pytest.mark.parametrize(
    ("depth", "foot", "rise"),
    # usual: a block of 45, the plinth's 20 and 35 make 100, a rise of 0.45 · 90 makes 40; the edge's level part begins
    # at half of depth + 20 less half of 20 at the latest: at 135 a foot of 95 is left, at 115 one of 75, at 90 a foot
    # that just covers its block and a rise of 25
    [(480.0, 100.0, 40.0), (270.0, 95.0, 40.0), (230.0, 75.0, 40.0), (180.0, 65.0, 25.0)],
)
def test_on_short_returns_feet_and_edge_take_the_room_there_is(depth, foot, rise):
    board = build(made(case={**CASE, "depth": depth}, feet="hollow", height=90.0)).board("plinth.right")
    one = min(arcs(board), key=lambda arc: arc.centre[0])
    assert one.radius == pytest.approx(rise)
    assert one.centre[0] - rise == pytest.approx(foot)
