"""Backs of plywood, of shiplapped boards and of frame and panels, against sums worked by hand."""

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.build.build import plan_of
from shopdraw.check.back import back_findings
from shopdraw.check.subject import subject_of
from shopdraw.piece.design import Design
from shopdraw.wood.finding import Severity
from shopdraw.wood.interference import box_of
from tests.build.judging import sound

CASE = {"width": 900.0, "height": 1000.0, "depth": 480.0}
PINE = {"species": "pine_eastern_white", "thickness": 12.0, "cut": "flat"}


def of_back(piece):
    return [board for board in piece.boards if board.member.partition(".")[0] == "back"]


def findings(design):
    return tuple(back_findings(subject_of(design, build(design))))


def test_a_plywood_back_is_a_millimetre_smaller_than_its_seat_each_way():
    # opening 860 and two rabbets of 10, less 1; from the bottom's underside at 70 to half the top at 990, less 1
    (back,) = of_back(build(Design.model_validate({"piece": {"kind": "chest"}, "case": CASE})))
    assert (back.width, back.length) == pytest.approx((879.0, 919.0))


def test_case_53_back_boards_neither_buckle_nor_gap():
    # white pine, flat-sawn: C 0.00212 (Wood Handbook FPL-GTR-190, Table 13-5); 89 wide over 5 % of moisture
    design = Design.model_validate({
        "piece": {"kind": "chest"}, "case": {**CASE, "width": 909.0 + 1.0}, "stock": {"pine": PINE},
        "use": {"back.board": "pine"}, "back": {"kind": "boards", "board": 89.0},
        "climate": {"build": 8.0, "dry": 6.0, "wet": 11.0},
    })  # fmt: skip
    piece = sound(design)
    boards = of_back(piece)
    # 870 and two rabbets of 10 over ten boards: each covers 89
    assert len(boards) == 10
    moves = 89.0 * 0.00212 * 5
    assert moves == pytest.approx(0.94, abs=5e-3)
    laps = [joint for joint in piece.joints if joint.kind == "lap"]
    assert {dict(joint.sizes)["lap"] for joint in laps} == {6.0}
    assert min(dict(joint.sizes)["lap"] for joint in laps) >= 3 * moves
    # 89 × 0.00212 × 3 by the wettest season and 0.5: 1.07, to the next tenth
    assert {joint.gap for joint in laps} == {1.1}
    assert boards[4].width == pytest.approx(89.0 + 6.0)
    # one fixing on each board that a board crosses
    for board in boards:
        (screws,) = [one for one in piece.hardware if one.id == f"screw:{board.id}"]
        assert screws.quantity == len(screws.on) - 1
    # the rabbet's depth is taken off the depth inside and the drawers' length: 480 - 13, less 2.38 and 2
    plan = plan_of(design)
    assert plan.rear == pytest.approx(480.0 - 13.0)
    side = piece.board("drawer.1.side-left")
    loss = 480.0 * 0.00248 * 2
    assert box_of(side)[4] == pytest.approx(480.0 - 13.0 - loss - 2.0)


@pytest.mark.parametrize(
    ("back", "code", "severity"),
    [
        ({"gap": 0.5}, "back-gap", Severity.MUST_FIX),
        ({"gap": 1.0}, "back-gap", Severity.CAUTION),
        ({"lap": 2.5}, "back-lap", Severity.CAUTION),
        ({"lap": 0.8}, "back-lap", Severity.MUST_FIX),
        ({}, None, None),
    ],
)
def test_boards_laid_tight_and_narrow_laps_are_found(back, code, severity):
    # boards of 88: they gain 88 × 0.00212 × 4 = 0.75, lose 0.37
    told = findings(_boards(**back))
    assert [(one.code, one.severity) for one in told] == ([(code, severity)] if code else [])
    if code:
        address, value = told[0].right
        assert findings(_boards(**{address.partition(".")[2]: float(value.removesuffix(" mm"))})) == ()


def _boards(**back):
    tables = {"stock": {"pine": PINE}, "use": {"back.board": "pine"}, "back": {"kind": "boards", **back}}
    return Design.model_validate({"piece": {"kind": "chest"}, "case": CASE, **tables})


def _framed(**back):
    return Design.model_validate({"piece": {"kind": "chest"}, "case": CASE, "back": {"kind": "frame", **back}})


def test_a_framed_back_has_floating_panels_between_stiles_rails_and_muntins():
    piece = sound(_framed(member=60.0, panels=3))
    names = {board.id for board in of_back(piece)}
    assert names == {
        "back.stile-left", "back.stile-right", "back.rail-upper", "back.rail-lower", "back.muntin-1", "back.muntin-2",
        "back.panel-1", "back.panel-2", "back.panel-3",
    }  # fmt: skip
    # poplar, C 0.00289 at the most: a stile of 60 gains 0.69 and has 0.5 more; the frame is 880 less twice that
    stile, rail = piece.board("back.stile-left"), piece.board("back.rail-lower")
    gain = 60.0 * stile.stock.coefficient * 4
    assert box_of(stile)[0] == pytest.approx(10.0 + gain + 0.5)
    assert rail.between_shoulders == pytest.approx(880.0 - 2 * (gain + 0.5) - 2 * 60.0)
    # tenons of 9 + 16 at both ends
    assert rail.length == pytest.approx(rail.between_shoulders + 50.0)
    for joint in piece.joints:
        if joint.guest.startswith("back.panel"):
            assert joint.floats
            assert not joint.glued


def test_a_wide_back_gets_muntins():
    # 880 less 2 × 1.2 and 120 is 757.6: (757.6 + 60) / (320 + 60) = 2.2, so three panels
    assert len([board for board in of_back(build(_framed())) if board.member == "back.panel"]) == 3


@pytest.mark.parametrize(
    ("back", "address"),
    [
        ({"kind": "boards", "board": 300.0}, "back.board"),
        ({"kind": "boards", "lap": 40.0}, "back.lap"),
        ({"kind": "frame", "member": 30.0}, "back.member"),
        ({"kind": "frame", "panels": 8}, "back.member"),
    ],
)
def test_a_back_that_has_no_room_is_told(back, address):
    with pytest.raises(CannotBuild) as told:
        build(Design.model_validate({"piece": {"kind": "chest"}, "case": CASE, "back": back}))
    assert told.value.faults[0].address == address
    assert told.value.faults[0].right.startswith("expected")
