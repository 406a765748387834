"""The mitred housing: lengths with their points, what two points leave of a partition, and how the joint closes."""

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.pigeonholes import full_point, most_point, v_length
from shopdraw.wood.interference import closing, joint_closes, overlaps
from shopdraw.wood.season import in_season
from tests.check.desks import design

THICK = {"species": "cherry_black", "thickness": 12.7}
THIN = {"species": "cherry_black", "thickness": 8.0}


def _desk(**choices):
    return build(
        design(
            stock={"partition": THICK, "little": THIN},
            use={"partition": "partition", "pigeonhole": "little"},
            compartments={"bays": 3, "shelves": (80.0,), **choices},
        )
    )


def test_a_full_point_is_half_the_shelf_and_adds_to_both_ends():
    # 8 thick: two cuts of 45° meet 4 deep; 150 between partitions: 150 + 2 × 4 = 158
    assert full_point(8.0) == 4.0
    assert v_length(150.0, full_point(8.0)) == 158.0


def test_two_points_at_one_level_leave_a_third_of_the_partition():
    # 12.7: a third is 4.233, and 12.7 - 2 × 4 = 4.7 is more; 9.5: 9.5 - 8 = 1.5 is less than 3.167
    assert 12.7 - 2 * full_point(8.0) >= 12.7 / 3
    assert most_point(12.7, meet=True) == pytest.approx(4.2333, abs=1e-4)
    assert 9.5 - 2 * full_point(8.0) < 9.5 / 3
    assert 9.5 - 2 * most_point(9.5, meet=True) == pytest.approx(9.5 / 3)


def test_a_small_shelf_is_as_long_as_its_bay_and_two_points():
    # inside 900 - 2 × 20 = 860, two partitions of 12.7: bays of (860 - 25.4) / 3 = 278.2; with points of 4: 286.2
    shelf = _desk().board("pigeonhole.2.1")
    assert shelf.between_shoulders == pytest.approx(278.2)
    assert shelf.length == pytest.approx(286.2)


def test_the_points_are_two_cuts_of_45_degrees_over_the_shelfs_whole_width():
    shelf = _desk().board("pigeonhole.2.1")
    cuts = [cut for cut in shelf.shape.cuts if cut.kind == "mitre"]
    assert len(cuts) == 4
    for cut in cuts:
        us, ws = [c.x for c in cut.outline.corners], [c.y for c in cut.outline.corners]
        assert math.degrees(math.atan2(max(ws) - min(ws), max(us) - min(us))) == pytest.approx(45.0)
        assert cut.depth == pytest.approx(shelf.width)


def test_a_thin_partition_gets_blunt_points_and_keeps_a_third():
    # 9.5 thick: points of 3.167, a flat of 8 - 2 × 3.167 = 1.667 between the cuts
    thin = {"species": "cherry_black", "thickness": 9.5}
    desk = build(
        design(
            stock={"partition": thin, "little": THIN},
            use={"partition": "partition", "pigeonhole": "little"},
            compartments={"bays": 3, "shelves": (80.0,)},
        )
    )
    groove = next(cut for cut in desk.board("partition.1").shape.cuts if cut.kind == "v-groove")
    ws = sorted(c.y for c in groove.outline.corners)
    assert ws[-1] - ws[0] == pytest.approx(9.5 / 3)
    us = sorted(c.x for c in groove.outline.corners if abs(c.y - ws[0]) < 1e-9 or abs(c.y - ws[-1]) < 1e-9)
    assert us[2] - us[1] == pytest.approx(8.0 - 2 * 9.5 / 3)


def test_shelves_stepped_apart_have_full_points_in_a_thin_partition():
    # 8 thick both: at one level 8/3 is the most, stepped by 20 the full 4
    level = build(design(compartments={"bays": 2, "shelves": (80.0,)}))
    stepped = build(design(compartments={"bays": 2, "each": {"1": {"shelves": (80.0,)}, "2": {"shelves": (100.0,)}}}))
    bay = (860.0 - 8.0) / 2
    assert level.board("pigeonhole.1.1").length == pytest.approx(bay + 2 * 8.0 / 3)
    assert stepped.board("pigeonhole.1.1").length == pytest.approx(bay + 8.0)


def test_every_v_joint_closes_and_nothing_overlaps_in_any_season():
    desk = _desk()
    joints = [joint for joint in desk.joints if joint.kind == "v-housing"]
    assert len(joints) == 6
    for joint in joints:
        assert joint_closes(desk, joint), closing(desk, joint)
    for moisture in (desk.moisture.build, desk.moisture.dry, desk.moisture.wet):
        assert overlaps(in_season(desk, moisture).boards) == ()


def test_a_point_past_the_middle_of_its_shelf_is_refused_with_what_fits():
    with pytest.raises(CannotBuild, match=r"compartments\.point: found 4\.5 mm: expected at most 4\.00 mm"):
        _desk(point=4.5)


def test_in_a_case_side_the_groove_begins_at_the_shelf_and_runs_out_behind():
    desk = _desk()
    side, shelf = desk.board("side.left"), desk.board("pigeonhole.1.1")
    cut = next(cut for cut in side.shape.cuts if cut.kind == "v-groove")
    # v runs from back to front on the left side: the groove is as deep from the rear edge as the shelf's front is
    assert cut.start == 0.0
    assert cut.depth == pytest.approx(480.0 - shelf.frame.at[1])
