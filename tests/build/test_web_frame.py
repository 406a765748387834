"""Web frames: dust panels and haunches, runners under wide drawers, stops; each number done by hand."""

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.plan import plan_desk
from shopdraw.build.web_frame import frame_size
from shopdraw.wood.board import Face
from shopdraw.wood.interference import box_of
from tests.build.judging import sound
from tests.check.desks import design

CHERRY = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
STOCK = {"primary": CHERRY, "secondary": CHERRY}


def _desk(**frame):
    return design(stock=STOCK, back={"rabbet_depth": 7.0}, frame=frame)


@pytest.mark.parametrize("fixing", ["front", "front-and-rear"])
def test_frames_with_dust_panels_are_sound(fixing):
    assembly = sound(_desk(dust_panels=True, fixing=fixing))
    assert assembly.has("frame.1.panel-1")


def test_a_panels_groove_is_deep_enough_for_what_the_rear_rail_moves():
    # glue lines 473 - 25 = 448 apart: gap 448 · 0.00248 · 2 + 0.5 = 2.72, in half millimetres 3; wet 448 · 0.00248 · 4
    # = 4.44: the groove holds 4 and a play of 0.5 besides: 11.94, so 12
    size = frame_size(plan_desk(_desk(dust_panels=True)))
    assert size.gap == 3.0
    assert size.groove == 12.0


def test_a_haunch_is_as_deep_as_the_groove_and_as_thick_as_the_panel():
    piece = _desk(dust_panels=True)
    size, assembly = frame_size(plan_desk(piece)), build(piece)
    runner = assembly.board("frame.1.runner-left")
    cuts = dict(zip(runner.cut_ids, runner.shape.cuts, strict=True))
    haunch, tenon = cuts["haunch:frame.1.runner-left:frame.1.front"], cuts["tenon:frame.1.runner-left:frame.1.front"]
    assert haunch.depth == pytest.approx(size.groove - 0.5)
    assert haunch.depth + tenon.depth == pytest.approx(size.front_tenon)
    ys = [c.y for c in haunch.islands[0].corners]
    assert max(ys) - min(ys) == pytest.approx(6.0)


def test_a_panel_is_the_clear_size_and_its_grooves_less_play_and_what_the_runners_grow():
    piece = _desk(dust_panels=True)
    size, assembly = frame_size(plan_desk(piece)), build(piece)
    panel = assembly.board("frame.2.panel-1")
    left, right = box_of(assembly.board("frame.2.runner-left")), box_of(assembly.board("frame.2.runner-right"))
    front, rear = box_of(assembly.board("frame.2.front")), box_of(assembly.board("frame.2.rear"))
    wide = left[3] - left[0]
    assert panel.length == pytest.approx(right[0] - left[3] + 2 * size.groove - 2 * (0.5 + wide * 0.00248 * 4))
    assert panel.width == pytest.approx(rear[1] - front[4] + 2 * size.groove - 2 * 0.5 - size.gap)


def test_a_runner_under_the_middle_of_drawers_wider_than_stated():
    # the topmost opening is narrower by both supports and dividers: 860 - 2 · (21 + 20) = 778
    assembly = sound(_desk(middle_over=800.0))
    assert not assembly.has("frame.1.runner-middle-1")
    middle = box_of(assembly.board("frame.2.runner-middle-2"))
    assert (middle[0] + middle[3]) / 2 == pytest.approx(450.0)


def test_a_stop_meets_the_drawers_front_and_passes_under_its_bottom():
    assembly = sound(_desk(stops=True))
    stop, front = box_of(assembly.board("stop.2")), box_of(assembly.board("drawer.2.front"))
    bottom = box_of(assembly.board("drawer.2.bottom"))
    assert stop[1] == pytest.approx(front[4])
    assert stop[5] <= bottom[2] - 2.0 + 1e-9


def test_a_bottom_too_low_for_a_stop_is_refused():
    with pytest.raises(CannotBuild, match="groove_up"):
        build(design(stock=STOCK, frame={"stops": True}, drawer={"groove_up": 5.0}))


def test_case_10_a_frame_fixed_in_front_has_57_and_a_half_millimetre_free_behind():
    # cherry sides 457.2 deep, flat-sawn, built at the wet end of a swing of 5 %: 457.2 · 0.00248 · 5 = 5.67, and 0.5
    piece = design(
        stock=STOCK,
        case={"depth": 457.2},
        frame={"fixing": "front"},
        climate={"build": 11.0, "dry": 6.0, "wet": 11.0},
    )
    plan, assembly = plan_desk(piece), sound(piece)
    assert plan.season.loss(457.2, plan.side) == pytest.approx(5.7, abs=0.05)
    behind = box_of(assembly.board("back"))[1] - box_of(assembly.board("frame.1.rear"))[4]
    assert behind >= 457.2 * 0.00248 * 5 + 0.5
    assert behind < 457.2 * 0.00248 * 5 + 1.0


def test_grooves_and_mortises_lie_in_line():
    assembly = build(_desk(dust_panels=True))
    rail = assembly.board("frame.1.front")
    named = {cut.kind: cut for cut in rail.shape.cuts if cut.face is Face.FAR}
    groove, mortise = named["groove"], named["mortise"]

    def middle(cut):
        ys = [c.y for c in cut.outline.corners]
        return (min(ys) + max(ys)) / 2

    assert middle(groove) == pytest.approx(middle(mortise))
