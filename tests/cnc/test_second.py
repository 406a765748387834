"""Cuts for a second setting are named with tilt and level, place, depth and the wood left on."""

import math

import pytest

from shopdraw.build.profile import profile
from shopdraw.cnc.second import finished_lines, second_setting
from shopdraw.lists.size import sizes_of
from shopdraw.piece.design import CaseTable, Design
from shopdraw.shape.path import polygon, rectangle
from shopdraw.wood.board import Board, Cut, Face
from tests.cnc.router_reader import one_part
from tests.wood.pieces import LYING, board, plain

SIZES = sizes_of(Design(case=CaseTable(width=900, height=1000, depth=480)))


def cut_board(cut: Cut) -> Board:
    return board("b", plain(400.0, 100.0, 20.0, cut), LYING)


def test_bevel_tells_both_angles_and_the_wood_left() -> None:
    # run 254, rise 304.8: 50.194° from level, saw tilt 39.806° (trigonometry)
    run = 20.0 / math.tan(math.radians(50.194))
    bevel = Cut("bevel", Face.FOOT, 0.0, 400.0, polygon([(0, -20), (run, 0), (0, 0)]))
    told = second_setting(cut_board(bevel), 0, SIZES)
    assert told.on == "front edge"
    assert "tilt 39.8° from square, 50.2° from level" in told.setting
    assert told.place.endswith("all along")
    assert told.wood_left == f"up to {run:.1f} mm"


def test_tilt_over_45_says_that_a_table_saw_can_not() -> None:
    bevel = Cut("bevel", Face.FOOT, 0.0, 400.0, polygon([(0, -20), (30, 0), (0, 0)]))
    told = second_setting(cut_board(bevel), 0, SIZES)
    assert "tilt 56.3° from square" in told.setting
    assert "over 45°" in told.setting


def test_mortise_in_an_edge_tells_depth_and_place() -> None:
    told = second_setting(cut_board(Cut("mortise", Face.FAR, 0.0, 17.0, rectangle(10, -13, 60, -6))), 0, SIZES)
    assert told.on == "back edge"
    place = "10.0 mm to 60.0 mm from the left end, 6.0 mm to 13.0 mm below the reference face, 17.0 mm deep"
    assert told.place == place


def test_finished_line_of_a_mitre_lies_where_it_meets_the_second_face() -> None:
    mitre = Cut("mitre", Face.NEAR, 0.0, 100.0, polygon([(0, -20), (20, -20), (0, 0)]))
    ((start, end),) = finished_lines(cut_board(mitre), mitre)
    assert (start, end) == (pytest.approx((20.0, 0.0)), pytest.approx((20.0, 100.0)))


def test_sockets_are_laid_out_on_the_note_layer_only() -> None:
    made = one_part("harbour-office-desk", "side.left")
    assert {row.kind for row in made.second} == {"dovetail"}
    assert all("template" in row.setting for row in made.second)
    length, thickness = made.part.first.length, made.part.first.thickness
    lines = [note for note in made.settings[0].flat.notes if hasattr(note, "start")]
    base = [line for line in lines if abs(line.start[0] - (length - thickness)) < 1e-6 and line.start[0] == line.end[0]]
    assert len(base) == 4, "one base line a socket"


def test_a_moulded_edge_is_left_to_a_moulding_cutter_on_the_edge_that_it_lies_on() -> None:
    ovolo = Cut("moulding", Face.FOOT, 0.0, 400.0, profile("ovolo", 5.0).paths[0].moved(0.0, -5.0))
    told = second_setting(cut_board(ovolo), 0, SIZES)
    assert told.on == "front edge"
    assert told.setting.startswith("moulding cutter of this profile")


def test_a_sliding_dovetail_and_its_socket_are_left_to_a_dovetail_cutter() -> None:
    socket = Cut("dovetail", Face.NEAR, 0.0, 90.0, polygon([(50, 0), (49, -8), (57, -8), (56, 0)]))
    assert "dovetail cutter, from this edge" in second_setting(cut_board(socket), 0, SIZES).setting
    tongue = Cut(
        "dovetail", Face.NEAR, 0.0, 100.0, rectangle(0, -20, 8, 0), (polygon([(0, -10), (8, -9), (8, -1), (0, 0)]),)
    )
    assert "dovetail cutter, along the end" in second_setting(cut_board(tongue), 0, SIZES).setting
