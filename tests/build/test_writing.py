"""The writing shelf in two boards: lap, step, levels of its dados, and what hides where they begin."""

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.plan import plan_desk
from shopdraw.build.writing import two_boards
from shopdraw.wood.interference import joint_closes, overlaps
from shopdraw.wood.season import in_season
from tests.check.desks import design

FLAT = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}


def _piece(**choices):
    return design(stock={"primary": FLAT}, writing={"boards": 2, "front_depth": 250.0, **choices})


def test_one_board_is_what_a_desk_has_unless_it_says_so():
    assert two_boards(plan_desk(design()), None) is None
    assert not build(design()).has("shelf.rear")


def test_the_lap_holds_what_both_boards_lose_and_three_millimetres():
    # flat cherry 0.00248, 8 to 6 %: front 250 × 0.00496 = 1.24; the rear one from 250 - 12 = 238 to the back's
    # rabbet at 480 - 7 = 473 is 235 deep and loses 1.1656: with 3 it is 5.4056
    sizes = two_boards(plan_desk(_piece()), None)
    assert sizes.least_lap == pytest.approx(1.24 + 1.1656 + 3.0)
    assert sizes.lap == 12.0
    assert sizes.step_at == pytest.approx(238.0)


def test_the_rear_board_lies_a_step_higher_and_its_dado_at_another_level():
    # step 12 of 20: rabbet 8 deep, underside at 740 + 12 - 20 = 732, the front board's at 720
    desk = build(_piece(step=12.0))
    levels = {level.id: level for level in desk.levels}
    assert levels["writing.rear"].top == pytest.approx(752.0)
    assert levels["writing.rear"].dado_bottom - levels["writing"].dado_bottom == pytest.approx(12.0)
    rear = desk.board("shelf.rear")
    rabbet = next(cut for cut in rear.shape.cuts if cut.kind == "rabbet")
    assert rabbet.depth == pytest.approx(8.0)
    vs = [c.y for c in rabbet.outline.corners]
    assert max(vs) - min(vs) == pytest.approx(12.0)
    joint = next(joint for joint in desk.joints if joint.kind == "lap")
    assert dict(joint.sizes) == pytest.approx({"lap": 12.0, "step": 12.0, "depth": 8.0})
    assert not joint.glued
    assert joint.floats


def test_a_step_as_thick_as_the_difference_has_both_dados_at_one_level():
    # rear 26, front 20, step 6: underside at 740 + 6 - 26 = 720, the front board's
    desk = build(
        design(
            stock={"primary": FLAT, "thick": {"species": "cherry_black", "thickness": 26.0}},
            use={"shelf.rear": "thick"},
            writing={"boards": 2, "step": 6.0},
        )
    )
    levels = {level.id: level for level in desk.levels}
    assert levels["writing.rear"].dado_bottom == pytest.approx(levels["writing"].dado_bottom)


def test_a_notch_hides_where_the_rear_dado_begins():
    # notch as deep as the dado (20 / 3), as long as the dado falls short of the edge (10) and the cutter's radius (3)
    desk = build(_piece())
    rear = desk.board("shelf.rear")
    notches = [cut for cut in rear.shape.cuts if cut.kind == "notch"]
    assert len(notches) == 2
    for notch in notches:
        us, vs = [c.x for c in notch.outline.corners], [c.y for c in notch.outline.corners]
        assert max(us) - min(us) == pytest.approx(20.0 / 3)
        assert max(vs) - min(vs) == pytest.approx(13.0)


def test_the_front_boards_dado_ends_behind_where_the_rear_board_hides_it():
    desk = build(_piece())
    side = desk.board("side.left")
    named = dict(zip(side.cut_ids, side.shape.cuts, strict=True))
    vs = [c.y for c in named["dado:side.left:shelf.writing"].outline.corners]
    # from the rear edge: 480 - (250 + cutter 3) = 227, and stopped 10 behind the front
    assert (min(vs), max(vs)) == pytest.approx((227.0, 470.0))


@pytest.mark.parametrize("edge", ["square", "chamfer", "round", "ovolo", "cove", "ogee", "reverse-ogee", "bead"])
def test_the_steps_edge_is_moulded_over_its_whole_length(edge):
    desk = build(_piece(edge=edge))
    rear = desk.board("shelf.rear")
    made = [c for c, name in zip(rear.shape.cuts, rear.cut_ids, strict=True) if name.startswith("moulding:")]
    assert bool(made) is (edge != "square")
    assert all(cut.depth == pytest.approx(rear.length) for cut in made)


@pytest.mark.parametrize("other", ["pine_eastern_white", "beech_american"])
def test_boards_of_other_wood_than_the_sides_have_room_behind_the_lap(other):
    wood = {"species": other, "thickness": 20.0, "cut": "flat"}
    desk = build(design(stock={"other": wood}, use={"shelf": "other"}, writing={"boards": 2}))
    for moisture in (8.0, 6.0, 12.0):
        assert overlaps(in_season(desk, moisture).boards) == ()
    assert all(joint_closes(desk, joint) for joint in desk.joints)


@pytest.mark.parametrize(
    ("choices", "told"),
    [
        ({"step": 18.0}, r"writing\.step: found 18 mm: expected 3 to 16 mm"),
        ({"front_depth": 20.0}, r"writing\.front_depth: found 20\.0 mm: expected 42\.0 to "),
        ({"edge_size": 9.5}, r"writing\.edge_size: found 9\.5 mm: expected at most 9 mm on a step of 10 mm"),
    ],
)
def test_what_cannot_be_made_is_refused_with_what_fits(choices, told):
    with pytest.raises(CannotBuild, match=told):
        build(_piece(**choices))


def test_a_lecterns_shelf_stays_one_board():
    piece = {
        "piece": {"kind": "lectern"},
        "case": {"width": 600.0, "height": 1200.0, "depth": 450.0},
        "slant": {"writing_height": 950.0, "top_depth": 150.0},
    }
    with pytest.raises(CannotBuild, match=r"writing\.boards: found 2: expected 1"):
        build(design(**piece, writing={"boards": 2}))
