"""Shaped cutters: each profile once, with its sizes and how often each board gets it."""

from pathlib import Path

from shopdraw.build import build
from shopdraw.lists.channel import settings_of
from shopdraw.lists.figures import Figures
from shopdraw.lists.shaped_cutter import is_shaped, shaped_table
from shopdraw.measure import millimetres
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece

FIGURES = Figures(millimetres("0.1"), millimetres("0.1"))


def _piece(**drawer):
    tables = {
        "piece": {"kind": "chest"},
        "case": {"width": 660.0, "height": 300.0, "depth": 480.0, "top_joint": "housed"},
        "opening": {"bank": {"divide": {"keys": ("1",)}}},
        "drawer": drawer,
    }
    return build(Design.model_validate(tables))


def test_a_moulding_round_a_front_is_one_setting():
    table = shaped_table(_piece(edge="ovolo", edge_size=5.0), FIGURES)
    # steps of a fifth of 5, a quarter round of 4
    assert table.rows == (("ovolo", "5.0 × 5.0", "R 4.0", "1.0", "7.1a (4 ×)"),)


def test_a_sliding_dovetail_names_the_cutters_angle():
    rows = {row[0]: row[1:] for row in shaped_table(_piece(front_joint="sliding", entry=8.0), FIGURES).rows}
    # 1:6 leans atan(1 / 6) = 9.46°; 6 wide, 8 / 6 narrower on each side
    assert rows["dovetail socket"] == ("6.0 × 8.0", "9.5°", "3.3", "7.1a (2 ×)")
    assert rows["sliding dovetail on an end"] == ("6.0 × 8.0", "9.5°", "3.3", "7.1c, 7.1d")


def test_shaped_cuts_are_in_no_table_of_straight_cutters():
    assembly = _piece(front_joint="sliding", edge="bead")
    shaped = {board.id for board in assembly.boards for cut in board.shape.cuts if is_shaped(cut)}
    assert len(shaped) == 3
    for board in assembly.boards:
        assert all(setting.kind not in ("moulding", "dovetail") for setting in settings_of(board, assembly))


def test_a_piece_without_them_has_no_rows():
    assert shaped_table(_piece(), FIGURES).rows == ()


def test_v_grooves_of_small_shelves_are_set_by_their_section():
    sample = Path(__file__).parents[2] / "sample_projects" / "harbour-master-desk.piece"
    assembly = build(read_piece(sample).design)
    hosts = {joint.host for joint in assembly.joints if joint.kind == "v-housing"}
    assert hosts
    rows = [row for row in shaped_table(assembly, FIGURES).rows if row[0] == "V-groove"]
    # 3/8 in wide at the face, 1/8 in deep, flanks of 45 degrees, so 3/8 - 2 * 1/8 = 1/8 in flat
    assert [row[1:4] for row in rows] == [("9.5 × 3.2", "45.0°", "3.2")]
    labels = {label.split(" ")[0] for label in rows[0][4].split(", ")}
    assert labels == {assembly.board(host).label for host in hosts}
    assert not [s for board in assembly.boards for s in settings_of(board, assembly) if s.kind == "v-groove"]
