"""Chests, bookcases, lecterns and free cases against sums worked by hand: sides 20 thick, cherry of C 0.00248."""

import math
from itertools import pairwise

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.build import plan_of
from shopdraw.build.upper_plan import PAST_UPRIGHT_DEG
from shopdraw.piece.design import Design
from shopdraw.wood.interference import box_of

CASE = {"width": 900.0, "height": 1000.0, "depth": 480.0}


def made(kind, **tables):
    return Design.model_validate({"piece": {"kind": kind}, "case": CASE, **tables})


def refusal(design):
    with pytest.raises(CannotBuild) as told:
        build(design)
    (fault,) = told.value.faults
    return fault


def spans(board, kind):
    cuts = [cut for cut in board.shape.cuts if cut.kind == kind]
    return [(min(c.y for c in cut.outline.corners), max(c.y for c in cut.outline.corners)) for cut in cuts]


def test_columns_are_equal_and_close_with_their_divider():
    columns = {"divide": {"by": "columns", "keys": ("1", "2")}}
    design = made("chest", opening={"bank": {"divide": {"keys": ("1", "2")}}, "bank.1": columns})
    # 860 inside, a divider of 20: 420 each; fronts with a reveal of 1 a side
    assert [o.width for o in build(design).openings if o.id.startswith("bank.1.")] == pytest.approx([420.0, 420.0])
    assert build(design).board("drawer.1.1.front").length == pytest.approx(418.0)
    left, divider = plan_of(design).rows[0], plan_of(design).space.uprights[0]
    assert divider.left == pytest.approx(20.0 + left.right - left.left)


def test_dados_of_dividers_that_meet_back_to_back_are_a_third_together():
    columns = {"divide": {"by": "columns", "keys": ("1", "2")}}
    bank = {"divide": {"keys": ("1", "2")}}
    piece = build(made("chest", opening={"bank": bank, "bank.1": columns, "bank.2": columns}))
    rail = piece.board("frame.1.front")
    depths = [cut.depth for cut, name in zip(rail.shape.cuts, rail.cut_ids, strict=True) if ":divider." in name]
    assert sum(depths[:2]) == pytest.approx(20.0 / 3)


def test_a_level_without_a_height_lies_midway_between_its_neighbours():
    # from 90 up to 980, a shelf of 20: (890 - 20) / 2 = 435 clear under and over it
    piece = build(made("bookcase", level={"1": {"member": "shelf"}}))
    assert piece.board("shelf.1").frame.at[2] == pytest.approx(90.0 + 435.0 + 20.0)
    assert [o.height for o in piece.openings] == pytest.approx([435.0, 435.0])


def test_a_loose_shelf_is_shorter_than_the_clear_width_and_lies_on_four_pins():
    piece = build(made("bookcase", level={"1": {"member": "pinned-shelf", "top": 520.0}}, pins={"play": 2.5}))
    assert piece.board("shelf.1").length == pytest.approx(857.5)
    assert next(one.quantity for one in piece.hardware if one.kind == "shelf pin") == 4
    side = piece.board("side.left")
    named = zip(side.cut_ids, side.shape.cuts, strict=True)
    holes = [cut for name, cut in named if cut.kind == "bore" and not name.startswith("screw:")]
    rises = sorted({round(sum(c.x for c in cut.outline.corners) / len(cut.outline.corners), 6) for cut in holes})
    # its own hole, two spare ones over and two under it, in two rows
    assert len(holes) == 10
    assert [high - low for low, high in pairwise(rises)] == pytest.approx([32.0] * 4)
    # the foot is at 90 - 20 - 15 = 55; the pin's upper side, 2.5 over its middle, is the shelf's underside
    assert rises[2] + 55.0 + 2.5 == pytest.approx(500.0)


def test_a_shelf_off_the_row_of_holes_is_told_the_heights_that_fit():
    levels = {str(n): {"member": "pinned-shelf", "top": top} for n, top in ((1, 400.0), (2, 730.0))}
    fault = refusal(made("bookcase", level=levels))
    assert fault.address == "level.2.top"
    assert "720.00 or 752.00" in fault.right


def test_an_overhanging_top_is_fast_in_front_and_in_slots_behind():
    piece = build(made("chest", case={**CASE, "top_joint": "overhanging", "overhang": 20.0}))
    top = piece.board("top")
    assert (top.length, top.width) == pytest.approx((940.0, 500.0))
    # 480 × 0.00248 × (2 + 4) = 7.14, and 1 of play; the hole of 5 at the ends of the slot
    slots = spans(piece.board("frame.top.rear"), "slot")
    assert [high - low for low, high in slots] == pytest.approx([480 * 0.00248 * 6 + 1.0] * 3, abs=5e-3)
    assert len(spans(piece.board("frame.top.front"), "bore")) == 3


def test_a_face_frames_rail_is_between_the_stiles_and_two_tenons():
    piece = build(made("bookcase", face={"stile": 45.0, "overhang": 3.0, "tenon": 25.0}))
    # 900 + 2 × 3 - 2 × 45 = 816 between shoulders, 866 over all
    rail = piece.board("face.rail-upper")
    assert rail.between_shoulders == pytest.approx(816.0)
    assert rail.length == pytest.approx(866.0)
    # the case stands behind it: 480 less 20
    assert piece.board("side.left").width == pytest.approx(460.0)


def test_a_lid_hinged_above_has_its_pin_on_the_reading_face_at_the_tops_surface():
    slant = {"hinge_edge": "upper", "writing_height": 960.0, "start": 1020.0, "angle": 22.0}
    design = made("lectern", case={"width": 560.0, "height": 1150.0, "depth": 430.0}, slant=slant)
    piece, run = build(design), 130.0 / math.tan(math.radians(22.0))
    # flush: o = t, so y_p = run - (t - o) / sin α = run; length y_p cos α + (z1 - z0) sin α
    assert piece.slant.hinge_pin_mm == pytest.approx((run, 1150.0))
    assert piece.slant.lid_length_mm == pytest.approx(math.hypot(run, 130.0))
    (motion,) = piece.motions
    assert motion.boards == ("lid", "lid.ledge")
    # it stays open only past 90° + α
    assert motion.reach == pytest.approx(90.0 + 22.0 + PAST_UPRIGHT_DEG)
    # the top's front edge is square to the lid: over its thickness it goes back by t tan α
    bevel = next(cut for cut in piece.board("top").shape.cuts if cut.kind == "bevel")
    back = sorted({round(c.x, 6) for c in bevel.outline.corners})
    assert back[-1] - back[-2] == pytest.approx(20.0 * math.tan(math.radians(22.0)))


def test_a_free_piece_is_an_empty_case():
    piece = build(made("free"))
    assert {board.member for board in piece.boards} == {"side", "bottom", "top", "back", "plinth", "block"}
    assert [(o.use, o.height) for o in piece.openings] == [("none", pytest.approx(890.0))]
    assert piece.slant is None


@pytest.mark.parametrize(
    ("kind", "tables", "address"),
    [
        ("free", {"opening": {"a": {"above": "nowhere"}}}, "opening.a.above"),
        ("free", {"opening": {"a": {}, "b": {}}}, "opening.b.above"),
        ("free", {"opening": {"a": {"fill": "lid-supports"}}}, "opening.a.fill"),
        ("free", {"opening": {"a": {"divide": {"by": "columns", "keys": tuple("123456789")}}}}, "opening.a.divide"),
        ("chest", {"opening": {"bank": {}, "bank.9": {"fill": "none"}}}, "opening.bank.9"),
        ("chest", {"opening": {"bank": {}, "bank.1": {"divide": {"by": "rows"}}}}, "opening.bank.1.divide"),
        ("chest", {"face": {}}, "face"),
        ("bookcase", {"face": {"kind": "rails"}}, "face.kind"),
        ("bookcase", {"level": {"1": {"member": "shelf", "top": 100.0}}}, "level.1.top"),
        ("bookcase", {"face": {"overhang": 40.0}}, "face.overhang"),
        ("lectern", {}, "slant"),
        ("lectern", {"slant": {"writing_height": 1200.0, "angle": 30.0}}, "slant.writing_height"),
    ],
)
def test_what_does_not_fit_is_told_at_its_address(kind, tables, address):
    fault = refusal(made(kind, **tables))
    assert fault.address == address
    assert fault.right.startswith("expected")


def test_a_wide_drawers_frame_has_a_runner_under_its_middle_and_a_stop_behind_its_front():
    tables = {"opening": {"bank": {"divide": {"keys": ("1", "2")}}}, "frame": {"middle_over": 600.0, "stops": True}}
    piece = build(made("chest", **tables))
    runner = box_of(piece.board("frame.1.runner-middle-1"))
    assert (runner[0] + runner[3]) / 2 == pytest.approx(450.0)
    # the front is 20 thick: the block stands behind it, on the frame's front rail and on the bottom
    assert box_of(piece.board("stop.1"))[1] == pytest.approx(20.0)
    assert box_of(piece.board("stop.2"))[2] == pytest.approx(90.0)
    assert not build(made("chest", **{**tables, "frame": {"middle_over": 900.0}})).has("frame.1.runner-middle-1")


def test_a_column_of_0_takes_what_is_left():
    columns = {"divide": {"by": "columns", "keys": ("1", "2", "3"), "rule": "given", "sizes": (200.0, 0.0, 200.0)}}
    design = made("chest", opening={"bank": {"divide": {"keys": ("1",)}}, "bank.1": columns})
    # 860 inside less two dividers of 20 and 400
    assert [one.width for one in build(design).openings] == pytest.approx([200.0, 420.0, 200.0])
