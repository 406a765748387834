"""Views judged by rays, by the solids' own edges, and by planted faults."""

import itertools
import math
import random

import pytest

from shopdraw.drawing.mark import ArcMark, Line, Meaning
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import polygon, rectangle
from shopdraw.view import projection
from shopdraw.view.direction import FRONT, ISOMETRIC, PLAN, RIGHT_SIDE, looking
from shopdraw.view.projection import project
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.facet import DRAWN_CHORD_MM, facets
from tests.view.judge import Judge, distance
from tests.wood.pieces import LYING, board, bored, box_board, cupboard, plain, rack, tenoned_rail

SLANTWISE = looking((0.3, 0.8, -0.52))
PEG = board("peg", bored(4.0), LYING.moved((30.0, -70.0, 60.0)))
PIECES = {
    "box": (box_board(),),
    "cupboard": cupboard(),
    "bored": (board("bored", bored(), LYING), board("under", bored(9.0), LYING.moved((5.0, 5.0, -30.0)))),
    "rail": (board("rail", tenoned_rail(), LYING),),
    "all": (*cupboard(), board("rail", tenoned_rail(), LYING.moved((50.0, -40.0, 150.0))), PEG),
}
DIRECTIONS = {"front": FRONT, "side": RIGHT_SIDE, "plan": PLAN, "isometric": ISOMETRIC, "slantwise": SLANTWISE}
CASES = [pytest.param(PIECES[p], DIRECTIONS[d], id=f"{p}-{d}") for p in PIECES for d in DIRECTIONS]


def _visible(marks):
    return [mark for mark in marks if mark.meaning is Meaning.VISIBLE]


def _scans(boards, direction, count):
    """Seeded random lines across what is shown."""
    chance = random.Random(7)
    corners = [
        direction.on_paper(b.frame.point(tuple(map(float, p)))) for b in boards for p in facets(b.shape).points
    ]
    xs, ys = [c[0] for c in corners], [c[1] for c in corners]
    return [
        tuple((chance.uniform(min(xs) - 5, max(xs) + 5), chance.uniform(min(ys) - 5, max(ys) + 5)) for _ in range(2))
        for _ in range(count)
    ]


@pytest.mark.parametrize(("boards", "direction"), CASES)
def test_rays_beside_each_visible_line_see_different_things(boards, direction):
    assert Judge(boards, direction).idle_lines(_visible(project(boards, direction))) == []


@pytest.mark.parametrize(("boards", "direction"), CASES)
def test_where_near_rays_differ_a_line_passes(boards, direction):
    marks = _visible(project(boards, direction))
    assert Judge(boards, direction).gaps(marks, _scans(boards, direction, 12)) == []


@pytest.mark.parametrize(("boards", "direction"), CASES)
def test_every_sharp_edge_is_drawn_visible_or_hidden(boards, direction):
    marks = project(boards, direction)
    for shown in boards:
        faces = facets(shown.shape)
        for edge in faces.edges[faces.sharp][::5]:
            a, b = (direction.on_paper(shown.frame.point(tuple(map(float, faces.points[i])))) for i in edge)
            for part in (0.25, 0.6):
                point = (a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part)
                assert min(distance(mark, point) for mark in marks) < 1.5 * DRAWN_CHORD_MM


@pytest.mark.parametrize(("boards", "direction"), CASES)
def test_no_place_is_drawn_twice(boards, direction):
    lines = [mark for mark in project(boards, direction) if isinstance(mark, Line)]
    for one, other in itertools.combinations(lines, 2):
        middle = ((one.start[0] + one.end[0]) / 2, (one.start[1] + one.end[1]) / 2)
        if distance(other, middle) < 1e-4:
            way = [(m.end[0] - m.start[0], m.end[1] - m.start[1]) for m in (one, other)]
            turn = (way[0][0] * way[1][1] - way[0][1] * way[1][0]) / math.hypot(*way[0]) / math.hypot(*way[1])
            assert abs(turn) > 1e-4


def test_a_line_left_out_is_caught():
    boards = cupboard()
    marks = _visible(project(boards, FRONT))
    gone = next(m for m in marks if m.board == "shelf" and m.start[1] == pytest.approx(220.0))
    left = [m for m in marks if m is not gone]
    assert Judge(boards, FRONT).gaps(left, [((200.0, 100.0), (205.0, 300.0))]) != []


def test_a_line_too_many_is_caught():
    boards = cupboard()
    extra = Line((100.0, 100.0), (200.0, 100.0), Meaning.VISIBLE, "back")
    assert Judge(boards, FRONT).idle_lines([extra]) == [extra]


def test_a_line_drawn_too_long_is_caught():
    boards = cupboard()
    shelf = next(
        m for m in _visible(project(boards, FRONT)) if m.board == "shelf" and m.start[1] == pytest.approx(220.0)
    )
    longer = Line((shelf.start[0] - 60.0, 220.0), shelf.end, Meaning.VISIBLE, "shelf")
    assert Judge(boards, FRONT).idle_lines([shelf, longer]) == [longer]


def test_a_line_with_another_boards_id_is_caught():
    boards = cupboard()
    wrong = Line((20.0, 220.0), (380.0, 220.0), Meaning.VISIBLE, "bottom")
    assert Judge(boards, FRONT).idle_lines([wrong]) == [wrong]


def test_a_box_is_a_rectangle_from_each_main_direction():
    for direction in (FRONT, RIGHT_SIDE, PLAN):
        marks = project((box_board(),), direction)
        assert len(marks) == 4
        assert {m.meaning for m in marks} == {Meaning.VISIBLE}


def test_a_box_from_a_corner_shows_nine_edges_and_hides_three():
    meanings = [m.meaning for m in project((box_board(),), ISOMETRIC)]
    assert (meanings.count(Meaning.VISIBLE), meanings.count(Meaning.HIDDEN)) == (9, 3)


def test_a_bore_seen_along_its_axis_is_one_true_circle():
    arcs = [m for m in project((board("b", bored(), LYING),), PLAN) if isinstance(m, ArcMark)]
    assert [(a.centre, a.radius, a.end_deg - a.start_deg) for a in arcs] == [((40.0, 30.0), 5.0, 360.0)]


def test_a_bore_seen_from_the_edge_is_two_hidden_lines():
    marks = [m for m in project((board("b", bored(), LYING),), FRONT) if m.meaning is Meaning.HIDDEN]
    assert sorted(round(m.start[0], 6) for m in marks) == [35.0, 45.0]


def test_a_quarter_round_seen_along_its_run_is_one_true_arc():
    arcs = [m for m in project((board("r", tenoned_rail(), LYING),), RIGHT_SIDE) if isinstance(m, ArcMark)]
    assert len(arcs) == 1
    assert arcs[0].radius == pytest.approx(8.0)
    assert (arcs[0].start_deg, arcs[0].end_deg) == (pytest.approx(180.0), pytest.approx(270.0))


def test_hidden_lines_can_be_left_out():
    assert {m.meaning for m in project(cupboard(), FRONT, hidden=False)} == {Meaning.VISIBLE}


def test_the_side_view_lies_with_the_front_at_the_left_and_the_plan_with_it_below():
    assert RIGHT_SIDE.on_paper((5.0, 7.0, 9.0)) == (7.0, 9.0)
    assert PLAN.on_paper((5.0, 7.0, 9.0)) == (5.0, 7.0)
    assert FRONT.on_paper((5.0, 7.0, 9.0)) == (5.0, 9.0)


def test_looking_up_the_direction_of_sight_is_refused():
    with pytest.raises(ValueError, match="another one for up"):
        looking((0.0, 0.0, 1.0))


def test_a_hundred_boards_give_the_same_lines_each_time():
    boards = rack()
    assert len(boards) == 100
    first = project(boards, FRONT)
    projection.forget()
    assert project(boards, FRONT) == first


def test_at_a_mitre_the_line_belongs_to_the_board_whose_face_is_seen():
    cut = Cut("mitre", Face.FACE, 0.0, 100.0, polygon(((200.0, 0.0), (180.0, 20.0), (200.0, 20.0))))
    front = board("front", plain(200.0, 20.0, 100.0, cut), LYING)
    other = Cut("mitre", Face.FACE, 0.0, 100.0, polygon(((0.0, 0.0), (20.0, 20.0), (0.0, 20.0))))
    turned = Frame((0, 1, 0), (-1, 0, 0), (0, 0, 1), (200.0, 0.0, 0.0))
    side = board("a.side", plain(150.0, 20.0, 100.0, other), turned)
    for boards in ((front, side), (side, front)):
        marks = _visible(project(boards, FRONT))
        assert {m.board for m in marks} == {"front"}


@pytest.mark.parametrize(("boards", "direction"), CASES)
@pytest.mark.parametrize("share", [0.0, 0.3, 0.7])
def test_of_some_boards_all_hidden_lines_are_told_and_of_the_others_none(boards, direction, share):
    """None of theirs is lost because a line of a board that tells none lies on the same place, but nearer."""
    chance = random.Random(len(boards) + int(10 * share))
    told = frozenset(board.id for board in boards if chance.random() < share)
    marks = project(boards, direction, hidden=told)
    assert set(_visible(marks)) == set(_visible(project(boards, direction)))
    assert {mark.board for mark in marks if mark.meaning is Meaning.HIDDEN} <= told
    for shown in boards:
        faces = facets(shown.shape)
        for edge in faces.edges[faces.sharp & ~faces.inner][::3] if shown.id in told else ():
            middle = faces.points[edge].mean(axis=0)
            point = direction.on_paper(shown.frame.point(tuple(map(float, middle))))
            assert min(distance(mark, point) for mark in marks) < 1.5 * DRAWN_CHORD_MM


def test_a_told_line_stays_where_one_that_isnt_told_lies_nearer_on_the_same_place():
    cover = board("cover", plain(200.0, 20.0, 200.0), LYING.moved((0.0, 0.0, 200.0)))
    near, far = (board(name, plain(100.0, 10.0, 50.0), LYING.moved((50.0, y, 150.0)))
                 for name, y in (("near", 30.0), ("far", 60.0)))  # fmt: skip
    hidden = [mark for mark in project((cover, near, far), FRONT, hidden=frozenset({"far"}))
              if mark.meaning is Meaning.HIDDEN]  # fmt: skip
    assert len(hidden) == 4
    assert {mark.board for mark in hidden} == {"far"}


def test_told_hidden_lines_are_those_of_boards_and_grooves_not_of_mortises_and_holes():
    cover = board("cover", plain(200.0, 20.0, 200.0), LYING.moved((0.0, 0.0, 200.0)))
    square = rectangle(40.0, -30.0, 60.0, -20.0)
    kept, left_out = (
        board(name, plain(100.0, 20.0, 50.0, Cut(name, Face.NEAR, 0.0, 10.0, square)), LYING.moved((50.0, 30.0, 150.0)))
        for name in ("groove", "mortise")
    )
    for one, lines in ((kept, 8), (left_out, 4)):
        marks = project((cover, one), FRONT, hidden=frozenset({one.id}))
        assert sum(mark.meaning is Meaning.HIDDEN for mark in marks) == lines
        assert sum(mark.meaning is Meaning.HIDDEN for mark in project((cover, one), FRONT)) == 8
