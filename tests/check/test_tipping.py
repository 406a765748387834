"""Tipping over: moments about the front foot line, written out again."""

import pytest

from shopdraw.build import build
from shopdraw.check.gather import findings
from shopdraw.check.subject import subject_of
from shopdraw.check.tipping import Weight, front_foot_line, resting_moment, tipping_load, worst_pose
from shopdraw.piece.design import Design
from shopdraw.wood.finding import Severity
from tests.check.desks import checked, design, of_code


def chest(**load) -> Design:
    return Design.model_validate(
        {
            "piece": {"kind": "chest"},
            "case": {"width": 900.0, "height": 1219.0, "depth": 480.0},
            "load": load,
        }
    )


def test_case_01_weight_that_tips_a_tall_chest_with_its_drawers_out():
    # 38 kg 240 mm behind the line; four drawers of 11 kg, 230 mm behind it shut and pulled 267 mm
    weights = (Weight(38.0, 240.0), *(Weight(11.0, 230.0 - 267.0) for _ in range(4)))
    assert resting_moment(weights) == pytest.approx(9120.0 - 1628.0)
    hung = Weight(27.2, -287.0)
    assert resting_moment((*weights, hung)) == pytest.approx(9120.0 - 1628.0 - 7806.4)
    assert tipping_load(weights, 287.0) == pytest.approx(26.1, abs=0.01)


def test_case_01_a_tall_chest_is_told_to_be_anchored_and_what_the_standard_covers():
    finding = of_code(checked(chest()), "tipping")[0]
    assert finding.severity in (Severity.CAUTION, Severity.MUST_FIX)
    for word in ("fix it to the wall", "685.8 mm", "13.6 kg", "90.6 dm³", "imitates carpet", "not a test"):
        assert word in finding.message


def test_a_chest_weighed_board_by_board_agrees_with_its_finding():
    piece = chest(contents=0.0, hung=10.0)
    assembly = build(piece)
    line = front_foot_line(assembly.boards)
    pulled = {board: motion.reach for motion in assembly.motions for board in motion.boards}
    moment = 0.0
    for board in assembly.boards:
        box = (board.length, board.width, board.thickness)
        corners = [board.frame.point((u, v, w)) for u in (0, box[0]) for v in (0, box[1]) for w in (0, -box[2])]
        # no board but a cut one has its centre far from its blank's: within a few per cent of the piece's moment
        middle = sum(corner[1] for corner in corners) / 8
        mass = box[0] * box[1] * box[2] * board.stock.density * 1e-9
        moment += mass * (middle - pulled.get(board.id, 0.0) - line)
    pose = worst_pose(subject_of(piece, assembly))
    assert resting_moment(pose.weights) == pytest.approx(moment, rel=0.08)
    finding = of_code(findings(piece, assembly), "tipping")[0]
    assert finding.value == pytest.approx(tipping_load(pose.weights, pose.edges[0].arm))


def test_more_on_the_edge_than_it_takes_is_a_caution_and_an_anchored_one_a_note():
    takes = of_code(checked(chest(hung=0.1)), "tipping")[0]
    if takes.value > 0.1:
        assert takes.severity is Severity.NOTE
    over = of_code(checked(chest(hung=takes.value + 1.0)), "tipping")[0]
    assert over.severity is (Severity.CAUTION if takes.value > 0 else Severity.MUST_FIX)
    anchored = of_code(checked(chest(hung=takes.value + 1.0, anchored=True)), "tipping")[0]
    assert anchored.severity is Severity.NOTE
    assert "fixed to a wall" in anchored.message


def test_drawers_filled_with_lead_tip_the_chest_by_themselves():
    finding = of_code(checked(chest(contents=3000.0)), "tipping")[0]
    assert finding.severity is Severity.MUST_FIX
    assert finding.value == 0.0


def test_the_open_lid_is_the_edge_of_a_desk_that_reaches_furthest():
    finding = of_code(checked(design()), "tipping")[0]
    assert finding.where[0] == "lid"
    assert finding.unit == "kg"


def test_a_piece_that_opens_nothing_to_the_front_has_no_finding():
    shelves = Design.model_validate(
        {"piece": {"kind": "bookcase"}, "case": {"width": 700.0, "height": 1200.0, "depth": 300.0}}
    )
    assert of_code(checked(shelves), "tipping") == []
