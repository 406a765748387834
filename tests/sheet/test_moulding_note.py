"""Notes of moulded edges and sliding dovetails: name, reach, radius, steps and widths as they were asked for."""

import pytest

from shopdraw.build import build
from shopdraw.piece.design import Design
from shopdraw.sheet.cut_note import cut_notes
from shopdraw.sheet.cut_size import CutSizes
from shopdraw.sheet.figure import metric_writing


def _notes(board_id, **drawer):
    tables = {
        "piece": {"kind": "chest"},
        "case": {"width": 660.0, "height": 300.0, "depth": 480.0, "top_joint": "housed"},
        "opening": {"bank": {"divide": {"keys": ("1",)}}},
        "drawer": drawer,
    }
    board = build(Design.model_validate(tables)).board(board_id)
    return [note.words for note in cut_notes(board, CutSizes(metric_writing(".")))]


@pytest.mark.parametrize(
    ("edge", "words"),
    [
        # an ovolo of 5 in all: steps of a fifth, 1, and a quarter round of 4
        ("ovolo", "ovolo 5 × 5, R 4, steps 1"),
        ("round", "round 5 × 5, R 5"),
        ("cove", "cove 5 × 5, R 5"),
        # an ogee of 5 in all: steps of 1, two quarter rounds of 2
        ("ogee", "ogee 5 × 5, R 2, steps 1"),
        # half of a bead 5 wide, rounded like any edge; its quirk 0.4 of it, half as deep as the bead is wide
        ("bead", "round 2.5 × 2.5, R 2.5"),
    ],
)
def test_a_moulding_is_told_by_name_reach_radius_and_steps(edge, words):
    notes = _notes("drawer.1.front", edge=edge, edge_size=5.0)
    assert any(note.removeprefix("2 × ") == words for note in notes), notes


def test_a_beads_quirk_is_told_with_where_it_stops():
    notes = _notes("drawer.1.front", edge="bead", edge_size=5.0)
    # the front is 660 - 40 - 2 = 618 long: the quirk stops 5 short of both ends
    assert any("quirk 2 wide × 2.5 deep, bead R 2.5, from 5 in, 608 long" in note for note in notes), notes


def test_a_sliding_dovetail_and_its_socket_are_told_by_their_widths():
    # half of 12 thick, 8 long, 1:6 in poplar: 8 / 6 = 1.3 narrower on each side at its root
    tongue = _notes("drawer.1.side-left", front_joint="sliding", entry=8.0)
    assert any(note.startswith("sliding dovetail 6 at end, 3.3 at shoulder × 8 long") for note in tongue), tongue
    socket = _notes("drawer.1.front", front_joint="sliding", entry=8.0)
    assert any("dovetail socket 3.3 at face, 6 at floor × 8 deep" in note for note in socket), socket
