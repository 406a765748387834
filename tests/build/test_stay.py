"""Stays in the place of supports: lengths by trigonometry at the pin, fixings, and a desk without bars and dividers."""

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.plan import plan_desk
from shopdraw.build.stay import stay_size
from shopdraw.piece.design import Design
from shopdraw.shape.path import bounds
from shopdraw.wood.interference import box_of
from shopdraw.wood.volume import mass_kg
from tests.build.judging import sound
from tests.check.desks import checked, design, must_fix, of_code

STOCK = {"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}}
STAYS = {"supports": {"kind": "stays"}}


def _desk(**tables):
    return design(stock=STOCK, **STAYS, **tables)


def test_a_stay_is_as_long_as_from_fixing_to_fixing_with_the_lid_level():
    # the pin at (-0.25, 740); 180 out on the lid, 120 up
    plan = plan_desk(_desk(lid={"stay_out": 180.0, "stay_up": 120.0}))
    alpha = math.radians(plan.slant.alpha)
    size = stay_size(plan)
    behind = -0.25 + 120.0 / math.tan(alpha) + 20.0 / math.sin(alpha)
    assert size.behind == pytest.approx(behind)
    assert size.length == pytest.approx(math.hypot(behind + 0.25 + 180.0, 120.0))
    # shut, by the law of cosines about the pin
    arm, angle = math.hypot(behind + 0.25, 120.0), alpha - math.atan2(120.0, behind + 0.25)
    assert size.folded == pytest.approx(math.sqrt(arm**2 + 180.0**2 - 2 * arm * 180.0 * math.cos(angle)))
    assert size.folded < size.length


@pytest.mark.parametrize("seat", ["rabbeted", "on", "flush"])
@pytest.mark.parametrize("ends", ["none", "square"])
def test_the_fixings_stand_where_the_stay_reaches_them(seat, ends):
    piece = sound(_desk(slant={"seat": seat}, lid={"ends": ends, "stay_out": 180.0}))
    plan = plan_desk(_desk(slant={"seat": seat}, lid={"ends": ends, "stay_out": 180.0}))
    size, pin = stay_size(plan), plan.slant.pin
    for hand in ("left", "right"):
        found = {}
        for board in (piece.board(f"side.{hand}"), piece.board(f"lid.cap-{hand}" if ends == "square" else "lid")):
            named = zip(board.cut_ids, board.shape.cuts, strict=True)
            bores = [cut for name, cut in named if name.startswith(f"screw:{board.id}:stay.{hand}.")]
            assert len(bores) == 2
            assert {cut.depth for cut in bores} == {3.0}
            boxes = [bounds(cut.outline) for cut in bores]
            u, v = (sum(box[i] + box[i + 2] for box in boxes) / 4 for i in (0, 1))
            found[board.member] = board.frame.point((u, v, 0.0))
        _, y, z = found["side"]
        assert (y, z) == pytest.approx((size.behind, pin[1] + size.up))
        # on the writing face of the shut lid, the stay's length from the pin, inside the side
        _, y, z = next(at for member, at in found.items() if member != "side")
        assert math.dist((y, z), pin) == pytest.approx(180.0)
        assert math.dist((y, z), (size.behind, pin[1] + size.up)) == pytest.approx(size.folded)


def test_without_bars_the_topmost_drawer_is_as_wide_as_the_others():
    piece = sound(_desk())
    assert not [board.id for board in piece.boards if board.id.startswith(("support.", "divider."))]
    assert piece.slant.support_extension_mm is None
    widths = [opening.width for opening in piece.openings if opening.use == "drawer"]
    assert sorted(widths) == pytest.approx([860.0] * len(widths))
    assert not [opening for opening in piece.openings if opening.use == "lid-supports"]
    rail = box_of(piece.board("rail.top"))
    assert (rail[0], rail[3]) == pytest.approx((20.0, 880.0))
    stays = [one for one in piece.hardware if one.kind == "lid stay with stop"]
    assert [one.quantity for one in stays] == [1, 1]
    assert [one.quantity for one in piece.hardware if one.id.startswith("screw:stay.")] == [4, 4]


def test_a_desk_with_stays_and_compartments_is_sound():
    piece = _desk(compartments={"bays": 3}, writing={"boards": 2})
    sound(piece)
    assert must_fix(checked(piece)) == set()


def test_case_49_stays_on_a_desk_of_50_degrees_are_a_caution_unless_their_maker_says_otherwise():
    slant = {"seat": "on", "angle": 50.19, "top_depth": None}
    found = of_code(checked(_desk(slant=slant)), "stay-flat")
    assert found[0].severity.value == "caution"
    assert (found[0].value, found[0].limit) == (pytest.approx(50.19), 60.0)
    assert of_code(checked(_desk(slant=slant, lid={"stay_angle": 45.0})), "stay-flat") == []
    assert of_code(checked(design(stock=STOCK, slant=slant)), "stay-flat") == []


def test_a_lectern_hinged_below_has_the_same_stays():
    slant = {"writing_height": 960.0, "hinge_edge": "lower", "top_depth": 200.0}
    tables = {"piece": {"kind": "lectern"}, "case": {"width": 560.0, "height": 1150.0, "depth": 430.0}, "slant": slant}
    piece = build(Design.model_validate({**tables, "lid": {"stay_out": 90.0, "stay_up": 60.0}}))
    sizes = [dict(one.sizes)["length"] for one in piece.hardware if one.kind == "lid stay with stop"]
    alpha = math.radians(piece.slant.angle_from_level_deg)
    behind = 60.0 / math.tan(alpha) + 20.0 / math.sin(alpha)
    assert sizes == pytest.approx([math.hypot(behind + 90.0, 60.0)] * 2)


@pytest.mark.parametrize(
    ("lid", "address"), [({"stay_out": 380.0}, "lid.stay_out"), ({"stay_up": 20.0}, "lid.stay_up")]
)
def test_a_fixing_off_the_lid_or_the_side_is_refused(lid, address):
    with pytest.raises(CannotBuild) as refused:
        build(_desk(lid=lid))
    assert refused.value.faults[0].address == address


def test_what_each_stay_pulls_follows_from_moments_about_the_pin():
    piece = _desk(lid={"stay_out": 180.0, "stay_up": 120.0}, load={"hung": 10.0})
    assembly, plan = build(piece), plan_desk(piece)
    found = of_code(checked(piece), "stay-pull")[0]
    # the stay's line runs from (b, 120) to (-180, 0) about the pin: 120 · 180 / its length from it
    b = 120.0 / math.tan(math.radians(plan.slant.alpha)) + 20.0 / math.sin(math.radians(plan.slant.alpha))
    lever = 120.0 * 180.0 / math.hypot(b + 180.0, 120.0)
    long, own = assembly.slant.lid_length_mm, mass_kg(assembly.board("lid"))
    assert found.value == pytest.approx(9.80665 * (own * long / 2 + 10.0 * long) / lever / 2)
    assert found.unit == "N"
    # a lectern's stays pull, too; a desk on bars has none
    assert of_code(checked(design(stock=STOCK)), "stay-pull") == []


def test_between_strips_the_rail_has_room_for_what_they_gain():
    # strips of 30: 30 · 0.00248 · 4 = 0.298, and 0.1: 0.4 at each end
    face = {**STOCK["primary"]}
    stock = {**STOCK, "face": face, "strip": {**face, "thickness": 8.0}}
    use = {"rail.face": "face", "strip": "strip"}
    piece = sound(design(stock=stock, use=use, face={"kind": "rails", "rail": 32.0, "strip": 30.0}, **STAYS))
    assert piece.board("rail.top").length == pytest.approx(900.0 - 2 * 30.0 - 2 * 0.4)
