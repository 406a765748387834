"""Boards that no view had room to label stand in pictures of their own: no board is left without a balloon."""

from itertools import product

import pytest
from shapely import LineString, MultiPoint

from shopdraw.build import build
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.label_picture import label_leaves, labelled_in
from shopdraw.sheet.manner import manner_of
from shopdraw.shipped import sample_names, sample_path
from shopdraw.view.direction import ISOMETRIC


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


@pytest.mark.parametrize("name", ["harbour-master-desk", "plan-chest"])
def test_the_box_round_the_piece_is_hidden_where_boards_stand_before_it(name):
    design = read_piece(sample_path(name)).design
    assembly = build(design)
    plain = [board for board in assembly.boards if not board.shape.cuts and len(board.shape.outline.corners) == 4]
    views = [standing.view for leaf in label_leaves(assembly, manner_of(design), ()) for standing in leaf.standing]
    looked_at = 0
    for view in views:
        shown = labelled_in([view.drawing]) | {m.board for m in view.drawing.marks if isinstance(m, Line)}
        # What a plain board covers is the hull of its corners; the box's rear edges lie behind all boards.
        hulls = [
            MultiPoint([ISOMETRIC.on_paper(board.frame.point(corner)) for corner in corners(board)]).convex_hull
            for board in plain
            if board.id in shown
        ]
        box = [m for m in view.drawing.marks if isinstance(m, Line) and m.meaning is Meaning.MOVING]
        assert box
        for line in box:
            for hull in hulls:
                assert LineString((line.start, line.end)).intersection(hull.buffer(-0.5)).length < 1e-6, line
                looked_at += 1
    assert looked_at > 50


def corners(board):
    return product((0.0, board.length), (0.0, board.width), (-board.thickness, 0.0))
