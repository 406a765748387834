"""Boards that share wood and joints that don't close; the judge is judged by faults that were planted."""

import re
from dataclasses import replace

import pytest

from shopdraw.build import build
from shopdraw.build.bench import Bench, Box
from shopdraw.build.joinery import Housing, house
from shopdraw.check.fit import joints_open
from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Stock
from tests.check.desks import checked, design, lengthened, must_fix, of_code, with_board, without_cuts

PIECE = design()
PINE = Stock("pine", "pine_eastern_white", "solid", 19.05, "", 0.0, 400.0)


def test_an_ordinary_desk_has_nothing_that_must_be_fixed():
    assert must_fix(checked(PIECE)) == set()


def test_a_shelf_a_millimetre_short_is_found_with_both_numbers():
    assembly = build(PIECE)
    short = lengthened(assembly.board("shelf.writing"), -1.0)
    found = of_code(checked(PIECE, with_board(assembly, short)), "joint-open")
    assert [finding.where[0] for finding in found] == ["dado:side.right:shelf.writing"]
    # dados are a third of 20 mm deep
    assert found[0].value == pytest.approx(1.0, abs=1e-6)
    assert "enters side, right by 5.667 mm, its dado is 6.667 mm deep" in found[0].message
    assert "1 mm short" in found[0].message


def test_a_shelf_a_millimetre_long_is_found_as_wood_shared_and_as_a_joint_that_does_not_close():
    assembly = build(PIECE)
    spoilt = with_board(assembly, lengthened(assembly.board("shelf.writing"), 1.0))
    found = checked(PIECE, spoilt)
    assert {"boards-overlap", "joint-open"} <= must_fix(found)
    overlap = of_code(found, "boards-overlap")[0]
    assert set(overlap.where) == {"side.right", "shelf.writing"}
    told = re.search(r"about ([0-9.]+) mm less in width", overlap.message)
    assert float(told[1]) == pytest.approx(1.0, abs=0.05)


def test_sockets_that_were_forgotten_are_found():
    assembly = build(PIECE)
    spoilt = with_board(assembly, without_cuts(assembly.board("side.left"), "top"))
    found = checked(PIECE, spoilt)
    assert ("side.left", "top") in [finding.where for finding in of_code(found, "boards-overlap")]
    assert any(finding.where[0] == "dovetail:side.left:top" for finding in of_code(found, "joint-open"))


def test_a_dado_that_was_forgotten_is_found():
    assembly = build(PIECE)
    spoilt = with_board(assembly, without_cuts(assembly.board("side.right"), "bottom"))
    assert {"boards-overlap", "joint-open"} <= must_fix(checked(PIECE, spoilt))


def test_a_guest_that_is_nowhere_near_its_joint_is_found():
    assembly = build(PIECE)
    shelf = assembly.board("shelf.writing")
    away = replace(shelf, frame=shelf.frame.moved((0.0, 0.0, 60.0)))
    found = of_code(checked(PIECE, with_board(assembly, away)), "joint-open")
    assert any("no wood of writing shelf stands in" in finding.message for finding in found)


def _panel_between_sides(relief: float, length: float | None = None) -> Assembly:
    """Two sides 508 apart and a panel in dados 9.525 deep; the panel may be cut to a length of its own."""
    bench = Bench()
    left = bench.lay("side.left", "left side", "side", PINE, Box(-19.05, 0.0, 0.0, 400.0, 0.0, 600.0), u="+z", w="+x")
    right = bench.lay(
        "side.right", "right side", "side", PINE, Box(508.0, 527.05, 0.0, 400.0, 0.0, 600.0), u="+z", w="-x"
    )
    panel = bench.lay("panel", "dust panel", "frame", PINE, Box(0.0, 508.0, 0.0, 390.0, 300.0, 319.05), u="+x", w="+z")
    for side, into, x in ((left, "-x", 0.0), (right, "+x", 508.0)):
        box = Box(x, x, 0.0, 390.0, 300.0, 319.05)
        house(bench, "dado", side, "panel", (panel,), box, into, Housing(9.525, 0.1, relief=relief), purpose="panel")
    boards = bench.boards(lambda board_id: (board_id,))
    if length is not None:
        made = next(board for board in boards if board.id == "panel")
        shape = replace(made.shape, outline=rectangle(0.0, 0.0, length, made.width))
        # the shorter panel stands in the middle
        frame = made.frame.moved(((made.length - length) / 2, 0.0, 0.0))
        boards = tuple(replace(made, shape=shape, frame=frame) if b.id == "panel" else b for b in boards)
    return Assembly("", "free", 546.1, 400.0, 600.0, boards, tuple(bench.joints))


@pytest.mark.parametrize(("relief", "length"), [(0.0, 527.05), (0.4, 526.25)])
def test_case_08_a_panel_reaches_its_dados_less_the_stated_relief(relief, length):
    assembly = _panel_between_sides(relief)
    # 508 + 2 × 9.525 = 527.05, and 2 × 0.4 less: 526.25
    assert assembly.board("panel").length == pytest.approx(length)
    assert list(joints_open(assembly)) == []


def test_case_08_a_panel_cut_for_shallower_dados_is_told_with_both_numbers():
    found = list(joints_open(_panel_between_sides(0.0, 520.7)))
    assert [finding.where[0] for finding in found] == ["dado:side.left:panel", "dado:side.right:panel"]
    for finding in found:
        assert finding.value == pytest.approx(3.175)
        assert "enters" in finding.message
        assert "by 6.35 mm, its dado is 9.525 mm deep" in finding.message
        assert "3.175 mm short" in finding.message
