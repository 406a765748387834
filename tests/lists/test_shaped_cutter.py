"""Shaped cutters: each profile once, with its sizes and how often each board gets it."""

from shopdraw.build import build
from shopdraw.lists.channel import settings_of
from shopdraw.lists.figures import Figures
from shopdraw.lists.shaped_cutter import is_shaped, shaped_table
from shopdraw.measure import millimetres
from shopdraw.piece.design import Design

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
