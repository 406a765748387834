"""Sizes that follow from the rules of a desk, one after another from the top's edge to the divider, by hand.

The desk of these sums: 900 × 480 × 1040, writing surface at 740, top 230 deep, boards 20 thick, the pin on the front
plane, lid rabbeted 8 deep: slant 49.021° from level, 390.431 from the pin to the top's upper arris. Cherry flat-sawn
0.00248 per percent (Wood Handbook FPL-GTR-190, Table 13-5), built at 8 %, 6 to 12 % through the year.
"""

import ast
import math
from pathlib import Path

import pytest

from shopdraw.build import build
from shopdraw.build.plan import plan_desk
from shopdraw.shape.path import bounds
from shopdraw.wood.interference import box_of
from tests.check.desks import design

TESTS = Path(__file__).parents[1]
CHERRY = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
STOCK = {"primary": CHERRY, "secondary": CHERRY, "drawer": {**CHERRY, "thickness": 12.0}}
ALPHA = math.radians(49.021)
LID = {"rabbet": 8.0, "lip": 12.0, "top_clearance": 3.5, "reveal": 4.0, "clearance": 1.0}
C = 0.00248


def _desk(**tables):
    slant = {"seat": "rabbeted", "joint_gap": 1e-6, **tables.pop("slant", {})}
    return design(stock=STOCK, slant=slant, lid={**LID, **tables.pop("lid", {})}, **tables)


def _cuts(board, start):
    return [cut for cut, name in zip(board.shape.cuts, board.cut_ids, strict=True) if name.startswith(start)]


def _box(cut):
    return bounds(cut.outline)


def test_the_top_is_sawn_from_a_blank_deeper_by_its_thickness_over_the_tangent():
    # 230 + 20 / tan 49.021° = 230 + 17.375
    slant = build(_desk()).slant
    assert slant.top_blank_depth_mm == pytest.approx(230.0 + 20.0 / math.tan(ALPHA), abs=0.005)
    assert slant.top_blank_depth_mm == pytest.approx(247.37, abs=0.01)


def test_the_tops_foremost_point_lies_the_bevel_times_the_cosine_before_its_arris():
    # b 12.5: 12.5 · cos 49.021° = 8.197 before y = 250
    top = build(_desk()).board("top")
    assert box_of(top)[1] == pytest.approx(250.0 - 12.5 * math.cos(ALPHA), abs=0.005)


@pytest.mark.parametrize(
    ("seat", "bevel"),
    # rabbeted: lip 12 - gap 3.5 + reveal 4; on the slant: a seat of 10 and the reveal; flush: as given
    [("rabbeted", 12.5), ("on", 14.0), ("flush", 11.0)],
)
def test_the_bevel_by_the_lids_seat(seat, bevel):
    lid = {"bevel": 11.0} if seat == "flush" else {}
    assert build(_desk(slant={"seat": seat}, lid=lid)).slant.top_bevel_mm == pytest.approx(bevel)


@pytest.mark.parametrize(
    ("seat", "width", "core"),
    # rabbeted: 860 + 2 laps of 20 - 4 = 892, its core 860 - 2; on: 900 - 2 · 4; flush: 860 - 2
    [("rabbeted", 892.0, 858.0), ("on", 892.0, 892.0), ("flush", 858.0, 858.0)],
)
def test_the_lids_width_by_its_seat(seat, width, core):
    slant = build(_desk(slant={"seat": seat})).slant
    assert (slant.lid_width_mm, slant.core_width_mm) == pytest.approx((width, core))


def test_a_rabbeted_lids_rabbets_are_a_lap_and_the_clearance_wide():
    # at its ends 16 + 1; at its upper edge 12: 386.431 long, its core 374.431
    lid = build(_desk()).board("lid")
    spans = {name: _box(cut) for cut, name in zip(lid.shape.cuts, lid.cut_ids, strict=True) if cut.kind == "rabbet"}
    sizes = sorted(round(min(x1 - x0, y1 - y0), 3) for x0, y0, x1, y1 in spans.values())
    assert sizes == pytest.approx([12.0, 17.0, 17.0], abs=0.005)


def test_half_the_joint_gap_comes_off_the_lid_and_half_off_the_shelf():
    wide = build(_desk(slant={"joint_gap": 0.8, "pin_behind_front": 0.0}))
    tight = build(_desk(slant={"joint_gap": 1e-6, "pin_behind_front": 0.0}))
    assert wide.slant.lid_length_mm == pytest.approx(tight.slant.lid_length_mm)
    assert tight.board("lid").width - wide.board("lid").width == pytest.approx(0.4, abs=1e-4)
    shelves = [box_of(piece.board("shelf.writing"))[1] for piece in (wide, tight)]
    assert shelves == pytest.approx([0.4, 0.0], abs=1e-4)


def test_an_open_lid_projects_by_its_length_less_where_the_pin_lies():
    # the pin half a gap of 0.5 before the front plane
    slant = build(_desk(slant={"joint_gap": 0.5})).slant
    assert slant.hinge_pin_mm == pytest.approx((-0.25, 740.0))
    assert slant.open_projection_mm == pytest.approx(slant.lid_length_mm + 0.25)


def test_the_topmost_runner_carries_support_divider_and_drawer_side():
    # dado 20/3, support 20 and 2 · 0.5, divider 20, drawer side 12 and 2 of clearance, 10 to bear on
    piece = build(_desk())
    runner = box_of(piece.board("frame.1.runner-left"))
    assert runner[3] - 20.0 == pytest.approx(20.0 + 2 * 0.5 + 20.0 + 12.0 + 2.0 + 10.0)
    # it keeps 0.5 and what it gains off the dado's floor; the groove for the divider begins at 21 from the side
    outer = 20.0 / 3 - 0.5 - (65.0 + 20.0 / 3) * C * 4
    assert runner[0] == pytest.approx(20.0 - outer, abs=0.01)
    groove = _cuts(piece.board("frame.1.runner-left"), "groove:frame.1.runner-left:divider.left")[0]
    board = piece.board("frame.1.runner-left")
    across = sorted(board.frame.point((0.0, y, 0.0))[0] for y in _box(groove)[1::2])
    assert across[0] == pytest.approx(20.0 + 21.0 - 0.05)
    assert across[1] - across[0] == pytest.approx(20.0 + 0.1)


def test_a_divider_is_free_above_by_what_it_gains_and_half_a_millimetre():
    piece = _desk()
    plan, assembly = plan_desk(piece), build(piece)
    tall = 720.0 - plan.rows[0].floor
    joint = next(one for one in assembly.joints if one.id == "groove:shelf.writing:divider.left")
    assert joint.gap == pytest.approx(tall * C * 4 + 0.5)
    assert joint.floats


@pytest.mark.parametrize(("rail", "lip"), [(30.0, 8.0), (36.0, 6.0)])
def test_between_lipped_fronts_the_rail_less_their_lips_shows(rail, lip):
    stock = {**STOCK, "face": CHERRY}
    piece = design(
        stock=stock,
        use={"rail.face": "face"},
        face={"kind": "rails", "rail": rail},
        drawer={"front": "lipped", "lip": lip},
    )
    assembly = build(piece)
    upper, lower = box_of(assembly.board("drawer.2.front")), box_of(assembly.board("drawer.3.front"))
    assert upper[2] - lower[5] == pytest.approx(rail - 2 * lip)


def test_a_runners_tenon_is_a_third_of_its_thickness():
    piece = build(_desk())
    tenon = _cuts(piece.board("frame.1.runner-left"), "tenon:")[0]
    (island,) = tenon.islands
    x0, y0, x1, y1 = bounds(island)
    assert min(x1 - x0, y1 - y0) == pytest.approx(20.0 / 3)


def test_a_kicker_over_a_support_fills_what_shelf_and_lid_leave():
    # a shelf of 12 begins at 728; the bar ends at 740 - 20 and has 1.5 free above
    thin = {**CHERRY, "thickness": 12.0}
    piece = design(stock={**STOCK, "thin": thin}, use={"shelf": "thin"}, supports={"clearance_above": 1.5})
    kicker = box_of(build(piece).board("kicker.support-left"))
    assert (kicker[2], kicker[5]) == pytest.approx((720.0 + 1.5, 728.0))


WORKED = {
    "bevel 12.5, flat 16.11, lid 386.43, core 374.43": ("build/test_lid_size.py", "test_a_rabbeted_lid"),
    "shut, the outer lower corner at (-15.10, 753.12)": (
        "build/test_lid_size.py",
        "test_a_rabbeted_lids_outer_lower_corner_when_shut",
    ),
    "on the slant, reveal 6: lid 384.51": ("build/test_lid_size.py", "test_a_lid_on_the_slant"),
    "flush, b 12, g 3.5: lid 374.50, flat 16.48": ("build/test_lid_size.py", "test_a_flush_lid"),
    "alone -1.9 / +3.8, net -1.09 / +2.18, g 3.2, cover 7.4": (
        "build/test_lid_size.py",
        "test_what_a_rabbeted_lids_end_moves_in_flat_sawn_cherry",
    ),
    "frame depth 453, runner 320": (
        "build/test_face_rail.py",
        "test_a_frame_behind_a_face_rail_is_453_deep_and_its_runners_320_between_shoulders",
    ),
    "sides 480 deep: 2.4 close, 4.8 open": ("build/test_lid_size.py", "test_a_frame_fixed_in_front_and_behind"),
    "lipped front 636 × 156, rabbets 9.5 / 11 / 8, box 617 × 137": (
        "build/test_drawer.py",
        "test_a_lipped_drawer_by_hand",
    ),
    "its sides 468.62 and 464.62": ("build/test_drawer.py", "test_the_sides_lengths_by_hand"),
    "droop 1.8": ("build/test_lid_size.py", "test_a_supports_droop"),
    "mitre 0.42 / 0.84": ("check/test_lid_cap.py", "test_a_mitred_cap_60_wide_opens_042_when_dry_and_084_when_wet"),
    "pin raised 3 moves back 6.7": (
        "build/test_slant.py",
        "test_a_pin_raised_by_three_moves_back_by_3_over_tan_of_half_the_angle",
    ),
    "rail 29 / 19, notch 10": (
        "build/test_lid_size.py",
        "test_the_rail_over_a_lipped_drawer_and_the_notch_over_a_support",
    ),
    "slant, saw tilt, start and pin to arris by seat": (
        "build/test_slant.py",
        "test_the_worked_table_when_the_tops_depth_is_given",
    ),
    "run, top depth and start at 50°": (
        "build/test_slant.py",
        "test_the_worked_table_when_an_angle_of_50_degrees_is_given",
    ),
    "V joint: clear width and two points": (
        "build/test_v_housing.py",
        "test_a_full_point_is_half_the_shelf_and_adds_to_both_ends",
    ),
}


@pytest.mark.parametrize("figure", WORKED)
def test_each_worked_figure_is_tested(figure):
    file, name = WORKED[figure]
    tree = ast.parse((TESTS / file).read_text(encoding="utf-8"))
    found = [one for one in tree.body if isinstance(one, ast.FunctionDef) and one.name == name]
    assert found, f"{figure}: {file} has no {name}"
    assert any(isinstance(part, ast.Assert) for part in ast.walk(found[0]))
