"""Boards that no view had room to label stand in pictures of their own: no board is left without a balloon."""

import math
from itertools import product

import pytest
from shapely import LineString, MultiPoint

from shopdraw.build import build
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.exploded_picture import exploded_boards, exploded_leaf
from shopdraw.sheet.in_sight import points_in_sight
from shopdraw.sheet.label_picture import label_leaves, labelled_in, labels_beside
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


@pytest.mark.parametrize("name", sample_names())
def test_strips_too_narrow_for_a_leaders_end_in_them_are_labelled_at_their_edges(name):
    design = read_piece(sample_path(name)).design
    assembly = build(design)
    (leaf,) = exploded_leaf(assembly, manner_of(design))
    (standing,) = leaf.standing
    labelled = labelled_in([standing.view.drawing])
    places = {board.id: board for board in exploded_boards(assembly)}
    seen = points_in_sight(list(places.values()), ISOMETRIC)
    for board in assembly.boards:
        ends = [ISOMETRIC.on_paper(places[board.id].frame.point(end)) for end in corners(board)]
        longest = max(math.dist(a, b) for a, b in zip(ends[:4], ends[4:], strict=True))
        shown = [m for m in standing.view.drawing.marks if isinstance(m, Line) and m.board == board.id]
        whole = [m for m in shown if math.dist(m.start, m.end) > 0.95 * longest]
        # A long edge from end to end, and yet no face that is wide enough for a dot.
        assert not whole or board.id in seen or board.id in labelled, board.label


def test_boards_within_stand_beside_the_exploded_picture_where_it_leaves_room():
    design = read_piece(sample_path("plan-chest")).design
    assembly = build(design)
    manner = manner_of(design)
    (leaf,) = exploded_leaf(assembly, manner)
    hidden = next(board for board in assembly.boards if board.label == "15g2")
    others = {board.id for board in assembly.boards} - {hidden.id}
    both = labels_beside(leaf, assembly, manner, others)
    assert both.title == "Exploded picture, Boards within"
    assert both.standing[0] == leaf.standing[0]
    assert labelled_in([both.standing[1].view.drawing]) == {hidden.id}
    (ax0, ay0, ax1, ay1), (bx0, by0, bx1, by1) = (standing.box for standing in both.standing)
    assert max(bx0 - ax1, ax0 - bx1, by0 - ay1, ay0 - by1) > 20.0 - 1e-6
    assert labels_beside(leaf, assembly, manner, ()) is None
    assert labels_beside(leaf, assembly, manner, {board.id for board in assembly.boards}) == leaf
