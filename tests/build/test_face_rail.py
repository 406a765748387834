"""Face rails, strips, guides and kickers of a desk: chains in the front plane, lugs, what hides what."""

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.plan import plan_desk
from shopdraw.build.web_frame import frame_size
from shopdraw.shape.path import bounds
from shopdraw.wood.interference import box_of
from tests.build.judging import sound
from tests.check.desks import design

CHERRY = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}
STOCK = {"primary": CHERRY, "face": {**CHERRY, "thickness": 20.0}, "strip": {**CHERRY, "thickness": 8.0}}
USE = {"rail.face": "face", "strip": "strip"}


def _desk(**tables):
    face = {"kind": "rails", "rail": 32.0, **tables.pop("face", {})}
    return design(stock=STOCK, use=USE, face=face, **tables)


def test_a_desk_with_strips_and_rails_is_sound():
    assert sound(_desk(face={"strip": 30.0})).has("strip.left")


def test_top_of_frame_and_opening_and_rail_make_the_next_frame():
    piece = _desk()
    plan, assembly = plan_desk(piece), build(piece)
    for lower, upper in zip(plan.rows[1:], plan.rows, strict=False):
        assert lower.floor + lower.height + 32.0 == pytest.approx(upper.floor)
    for row in plan.rows[:-1]:
        rail, frame = box_of(assembly.board(f"rail.{row.key}")), box_of(assembly.board(f"frame.{row.key}.front"))
        # rail and frame are level above, and no drawer climbs over a rail; the rest of it hangs below
        assert rail[5] == pytest.approx(frame[5]) == pytest.approx(row.floor)
        assert rail[5] - rail[2] == pytest.approx(32.0)


def test_a_face_rail_is_the_inside_width_and_two_dados_long():
    piece = _desk(face={"strip": 0.0})
    plan, rail = plan_desk(piece), build(piece).board("rail.1")
    # 900 - 2 · 20 inside, dados a third of 20 deep
    assert rail.length == pytest.approx(860.0 + 2 * 20.0 / 3)
    assert plan.inside == 860.0
    # below the frame's thickness it is notched to the inside width
    notches = [
        bounds(cut.outline) for cut, name in zip(rail.shape.cuts, rail.cut_ids, strict=True)
        if name.startswith("notch:rail.1:side")
    ]  # fmt: skip
    assert len(notches) == 2
    assert all(box[2] - box[0] == pytest.approx(20.0 / 3) for box in notches)


def test_strips_cover_the_dados_and_the_lugs_are_set_back_by_them():
    assembly = build(_desk())
    side, strip, rail = (assembly.board(one) for one in ("side.left", "strip.left", "rail.1"))
    # the side's board is the depth less the strip
    assert side.width == pytest.approx(480.0 - 8.0)
    assert (box_of(strip)[1], box_of(strip)[4]) == pytest.approx((0.0, 8.0))
    assert box_of(strip)[3] - box_of(strip)[0] == pytest.approx(20.0)
    cuts = dict(zip(rail.cut_ids, rail.shape.cuts, strict=True))
    assert "notch:rail.1:strip.left" in cuts
    dado = next(
        cut for cut, name in zip(side.shape.cuts, side.cut_ids, strict=True) if name == "dado:side.left:frame.1"
    )
    assert not dado.stopped


def test_the_slant_runs_on_through_the_strip():
    assembly = build(_desk())
    strip, slant = assembly.board("strip.left"), assembly.slant
    # at its rear, 8 behind the front plane, it is 8 · tan α higher than the slant's start
    assert box_of(strip)[5] == pytest.approx(
        slant.slant_start_mm + 8.0 * math.tan(math.radians(slant.angle_from_level_deg))
    )


def test_guides_lie_in_the_plane_of_the_strips_edges_and_kickers_level_with_the_opening():
    piece = _desk(face={"strip": 34.0})
    plan, assembly = plan_desk(piece), build(piece)
    row = plan.rows[1]
    assert row.left == pytest.approx(34.0)
    guide, kicker = box_of(assembly.board("guide.2.left")), box_of(assembly.board("kicker.2.left"))
    assert guide[3] == pytest.approx(34.0)
    assert guide[3] - guide[0] <= 34.0 - 20.0
    # a kicker is as thick as the rail is higher than the frame
    assert kicker[5] - kicker[2] == pytest.approx(32.0 - 20.0)
    assert kicker[2] == pytest.approx(plan.ceiling(row))


def test_no_guides_behind_strips_as_wide_as_the_sides():
    assembly = build(_desk())
    assert not [board.id for board in assembly.boards if board.id.startswith("guide.")]


def test_a_frame_behind_a_face_rail_is_453_deep_and_its_runners_320_between_shoulders():
    # D 480, r 7, face rail 20, rails 70 and 60, gap 3: 480 - 7 - 20 = 453; 453 - 70 - 60 - 3 = 320
    piece = _desk(back={"rabbet_depth": 7.0}, frame={"rail": 70.0, "rear_rail": 60.0})
    size = frame_size(plan_desk(piece))
    assert size.depth == pytest.approx(453.0)
    # sides 480 deep lose 480 · 0.00248 · 2 = 2.4; the glue lines lie 25 nearer: 2.25 + 0.5, in half millimetres 3
    assert size.gap == 3.0
    assert build(piece).board("frame.1.runner-left").between_shoulders == pytest.approx(320.0)


@pytest.mark.parametrize(
    ("face", "address"),
    [({"rail": 15.0}, r"face\.rail"), ({"strip": 10.0}, r"face\.strip"), ({"kind": "frame"}, r"face\.kind")],
)
def test_what_cant_be_is_refused_with_its_address(face, address):
    with pytest.raises(CannotBuild, match=address):
        build(_desk(face=face))
