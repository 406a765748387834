"""Lid supports and the writing height."""

import pytest

from shopdraw.build import build
from tests.check.desks import checked, design, of_code


def test_case_48_bars_beside_the_topmost_drawer():
    # inside 876.3, bars 25.4, partitions 19.05; 0.5 a side; lid 22 thick, writing surface at 736.6
    def solid(thickness):
        return {"species": "cherry_black", "thickness": thickness}

    piece = design(
        case={"width": 876.3 + 40.0},
        slant={"writing_height": 736.6},
        stock={"primary": solid(20.0), "bar": solid(25.4), "partition": solid(19.05), "lid": solid(22.0)},
        use={"support": "bar", "divider": "partition", "lid": "lid"},
    )
    assembly = build(piece)
    opening = next(one for one in assembly.openings if one.id == "bank.1")
    # 876.3 - 2 × (25.4 + 19.05) = 787.4, less 0.5 on both sides of both bars
    assert opening.width == pytest.approx(787.4 - 4 * 0.5)
    assert assembly.slant.support_top_mm == pytest.approx(714.6)
    bar = assembly.board("support.left")
    top = max(bar.frame.point((0.0, v, 0.0))[2] for v in (0.0, bar.width))
    assert top == pytest.approx(714.6)


def test_case_48_a_short_reach_is_a_caution_and_half_the_lid_is_right():
    piece = design(supports={"reach": 150.0})
    lid = build(piece).slant.lid_length_mm
    found = of_code(checked(piece), "support-reach")
    assert {finding.where[0] for finding in found} == {"support.left", "support.right"}
    assert found[0].limit == pytest.approx(lid / 2)


def test_case_48_a_bar_of_455_pulled_250_keeps_205_inside_and_reaches_two_thirds():
    # length 455 when 473 deep: less rabbet 7, 2, and no movement
    still = {"species": "cherry_black", "thickness": 20.0, "coefficient": 0.0}
    piece = design(case={"depth": 464.0}, supports={"reach": 250.0}, stock={"primary": still})
    assembly = build(piece)
    assert assembly.board("support.left").length == pytest.approx(455.0)
    found = checked(piece, assembly)
    assert of_code(found, "support-inside") == []
    assert of_code(found, "support-reach") == []
    assert "with 205 mm inside" in of_code(found, "support-droop")[0].message


def test_case_48_less_than_a_third_inside_is_a_caution():
    still = {"species": "cherry_black", "thickness": 20.0, "coefficient": 0.0}
    piece = design(case={"depth": 464.0}, supports={"reach": 320.0}, stock={"primary": still})
    found = of_code(checked(piece), "support-inside")
    assert found[0].value == pytest.approx(135.0)
    assert found[0].limit == pytest.approx(455.0 / 3)


def test_a_bar_with_more_play_droops_by_play_times_reach_over_rest():
    still = {"species": "cherry_black", "thickness": 20.0, "coefficient": 0.0}
    piece = design(
        case={"depth": 464.0, "top_rail": 40.0},
        supports={"reach": 250.0, "clearance_above": 1.5},
        stock={"primary": still, "thin": {"species": "cherry_black", "thickness": 15.0}},
        use={"shelf": "thin"},
    )
    found = of_code(checked(piece), "support-droop")
    # 1.5 × 250 / 205 = 1.83
    assert found[0].value == pytest.approx(1.5 * 250 / 205, abs=1e-6)
    assert "falls 1.83 mm" in found[0].message
