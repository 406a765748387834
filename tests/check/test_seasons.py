"""The piece in three seasons: a lid that leans on sides that shrink, and solids stretched instead of made anew."""

import math

import pytest

from shopdraw.build import build
from shopdraw.check.seasons import seasons
from shopdraw.wood.interference import overlaps
from shopdraw.wood.solid import placed_solid
from tests.check.desks import design

FLAT = {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}


@pytest.mark.parametrize("seat", ["on", "rabbeted"])
@pytest.mark.parametrize("pin_above", [0.0, 2.0])
def test_the_shut_lid_is_turned_open_by_sides_that_shrink(seat, pin_above):
    assembly = build(design(stock={"primary": FLAT}, slant={"seat": seat, "pin_above_writing": pin_above}))
    slant = assembly.slant
    pin_y, pin_z = slant.hinge_pin_mm
    offset = slant.lid_inset_mm + pin_above

    def rests_at(run):
        dy, dz = run - pin_y, 1040.0 - pin_z
        return math.degrees(math.atan2(dz, dy) - math.asin(offset / math.hypot(dy, dz)))

    # the upper arris of the sides, held in front, goes back as they grow and comes forward as they shrink: forward, it
    # pushes the lid open; backward, the lid stays where hinges and habit left it
    turned = []
    for season in seasons(assembly):
        run = slant.run_mm * (1 + 0.00248 * (season.moisture - 8.0))
        v = season.assembly.board("lid").frame.v
        shut = math.degrees(math.atan2(v[2], v[1]))
        assert shut == pytest.approx(max(rests_at(run), rests_at(slant.run_mm)), abs=1e-9)
        turned.append(shut - rests_at(slant.run_mm))
        # opened, it lies level in every season
        motion = next(motion for motion in season.assembly.motions if motion.id == "lid")
        assert motion.reach == pytest.approx(180.0 - shut, abs=1e-9)
    as_built, driest, wettest = turned
    assert driest > 0.05
    assert (as_built, wettest) == pytest.approx((0.0, 0.0), abs=1e-9)


def test_solids_stretched_from_those_at_build_are_those_made_anew():
    assembly = build(design(drawer={"front": "lipped"}, lid={"ends": "square"}))
    for season in seasons(assembly):
        for board in season.assembly.boards:
            stretched, anew = season.wood(board), placed_solid(board)
            assert stretched.bounding_box() == pytest.approx(anew.bounding_box(), abs=1e-6), board.id
            assert stretched.volume() == pytest.approx(anew.volume(), rel=1e-4), board.id
        assert overlaps(season.assembly.boards, wood=season.wood) == overlaps(season.assembly.boards)


def test_a_season_as_moist_as_another_counts_once():
    still = build(design(climate={"build": 8.0, "dry": 8.0, "wet": 12.0}))
    assert [season.words for season in seasons(still)] == ["as built", "in the wettest season"]
