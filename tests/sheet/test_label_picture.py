"""Boards that no view had room to label stand in pictures of their own: no board is left without a balloon."""

import pytest

from shopdraw.build import build
from shopdraw.drawing.mark import Text
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.label_picture import label_leaves, labelled_in
from shopdraw.sheet.manner import manner_of
from shopdraw.shipped import sample_names, sample_path


@pytest.mark.parametrize("name", sample_names())
@pytest.mark.parametrize("paper_set", ["wall", "bench"])
def test_every_board_is_labelled_once_where_no_view_had_room_for_any(name, paper_set):
    design = read_piece(sample_path(name)).design
    design = design.model_copy(update={"drawing": design.drawing.model_copy(update={"set": paper_set})})
    assembly = build(design)
    leaves = label_leaves(assembly, manner_of(design), ())
    said = [
        mark.words
        for leaf in leaves
        for standing in leaf.standing
        for mark in standing.view.drawing.marks
        if isinstance(mark, Text) and mark.board
    ]
    assert sorted(said) == sorted(board.label for board in assembly.boards)


def test_boards_that_have_a_balloon_are_left_out():
    design = read_piece(sample_path(sample_names()[0])).design
    assembly = build(design)
    assert label_leaves(assembly, manner_of(design), {board.id for board in assembly.boards}) == ()
    (leaf,) = label_leaves(assembly, manner_of(design), {board.id for board in assembly.boards[3:]})
    shown = labelled_in(standing.view.drawing for standing in leaf.standing)
    assert shown == {board.id for board in assembly.boards[:3]}
