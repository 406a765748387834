"""The order of assembly: complete, each move free, and what can't be put together is told."""

from dataclasses import replace
from pathlib import Path

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.check.assembly_order import PIECE, assembly_findings, assembly_order
from shopdraw.piece.reading import read_piece
from shopdraw.shape.frame import Frame, dot, scale
from shopdraw.shape.path import rectangle
from shopdraw.wood.assembly import Assembly, Motion
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.sweep import swept_motion
from tests.build.designs import random_design
from tests.build.kinds import KINDS, random_kind
from tests.check.desks import design
from tests.wood.pieces import LYING, board, cupboard, plain

SAMPLES = sorted((Path(__file__).parents[2] / "sample_projects").glob("*.piece"))
WANTED = 20
OF_EACH_KIND = 6
REACH = 700.0


def piece(*boards):
    return Assembly("", "free", 400.0, 300.0, 400.0, tuple(boards))


def test_each_board_goes_in_exactly_once():
    assembly = build(design())
    placed = [name for step in assembly_order(assembly).of(PIECE) for name in step.boards]
    assert sorted(placed) == sorted(b.id for b in assembly.boards)


def test_a_sub_assembly_is_whole_before_it_goes_in():
    steps = assembly_order(build(design())).steps
    for group in {step.group for step in steps} - {PIECE}:
        last = max(n for n, step in enumerate(steps) if step.group == group)
        used = [n for n, step in enumerate(steps) if step.unit == group]
        assert used, group
        assert last < used[0]


def meets(assembly, step):
    """What a step's boards run into, by the sweep: from well outside to their place."""
    assert step.direction is not None
    there = [assembly.board(name) for name in step.onto]
    away = scale(step.direction, -REACH)
    coming = [replace(b, frame=b.frame.moved(away)) for b in map(assembly.board, step.boards)]
    motion = Motion(step.unit, step.boards, "slide", (0.0, 0.0, 0.0), step.direction, REACH)
    return swept_motion([*coming, *there], motion)


def random_assemblies():
    made = 0
    for seed in range(400, 500):
        try:
            assembly = build(random_design(seed))
        except CannotBuild:
            continue
        made += 1
        yield seed, assembly
        if made == WANTED:
            return


def test_every_move_of_random_desks_is_free_and_every_board_goes_in():
    count = 0
    for seed, assembly in random_assemblies():
        order = assembly_order(assembly)
        assert not order.stuck, (seed, order.stuck)
        assert {name for step in order.of(PIECE) for name in step.boards} == {b.id for b in assembly.boards}
        for step in order.steps:
            if step.direction is not None:
                assert meets(assembly, step) == (), (seed, step.unit, step.direction)
        count += 1
    assert count == WANTED


@pytest.mark.parametrize("kind", KINDS)
def test_every_guest_of_random_pieces_of_the_other_kinds_has_an_open_way_in(kind):
    count = 0
    for seed in range(500, 530):
        try:
            assembly = build(random_kind(kind, seed))
        except CannotBuild:
            continue
        order = assembly_order(assembly)
        assert not order.stuck, (seed, order.stuck)
        for step in order.steps:
            if step.direction is not None:
                assert meets(assembly, step) == (), (seed, step.unit, step.direction)
        count += 1
        if count == OF_EACH_KIND:
            break
    assert count == OF_EACH_KIND


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_move_of_each_kind_of_piece_is_free(path):
    assembly = build(read_piece(path).design)
    order = assembly_order(assembly)
    assert not order.stuck
    for step in order.steps:
        if step.direction is not None:
            assert meets(assembly, step) == (), (step.unit, step.direction)


def test_every_joint_closes_in_one_step():
    assembly = build(design())
    closed = [joint.id for step in assembly_order(assembly).steps for joint in step.joints]
    assert sorted(closed) == sorted(set(closed))
    jointed = {j.id for j in assembly.joints if all(map(assembly.has, (j.host, *(j.guest_boards or (j.guest,)))))}
    assert set(closed) == jointed


def test_a_board_comes_after_what_the_trade_puts_in_before_it():
    placed = [step.unit for step in assembly_order(build(design())).of(PIECE)]
    for first, later in (("side.left", "back"), ("back", "plinth"), ("plinth", "drawer.1"), ("drawer.1", "lid")):
        assert placed.index(first) < placed.index(later)


def test_a_back_in_rabbets_comes_from_behind():
    assembly = piece(*cupboard())
    order = assembly_order(assembly)
    assert not order.stuck
    assert {step.unit: step.direction for step in order.of(PIECE)}["back"] == (0.0, -1.0, 0.0)


def test_glue_in_a_dado_is_not_wiped_along_it_where_the_side_can_come_last():
    assembly = build(design(case={"dado": "through"}))
    for step in assembly_order(assembly).of(PIECE):
        for joint in step.joints:
            if joint.kind == "dado" and joint.glued and step.direction is not None:
                assert abs(dot(step.direction, joint.body.frame.w)) > 0.99, (step.unit, joint.id)


def closed_box():
    """Two boards on each other, a key in the hollow between them."""
    hollow = Cut("mortise", Face.FACE, 0.0, 15.0, rectangle(40.0, 20.0, 60.0, 40.0))
    low = board("low", plain(100.0, 60.0, 20.0, hollow), LYING.moved((0.0, 0.0, 20.0)))
    high = board("high", plain(100.0, 60.0, 20.0, replace(hollow, face=Face.BACK)), LYING.moved((0.0, 0.0, 40.0)))
    key = board("key", plain(20.0, 20.0, 20.0), LYING.moved((40.0, 20.0, 30.0)))
    return low, high, key


def test_a_key_between_two_boards_goes_in_before_the_second():
    order = assembly_order(piece(*closed_box()))
    assert not order.stuck
    assert next(step.boards for step in order.steps if step.direction is not None) in (("key",), ("high",))
    assert order.steps[-1].boards != ("key",)


def test_boards_that_hold_each_other_every_way_are_told_of():
    frame = dumb_bell()
    (found,) = assembly_findings(piece(*frame))
    assert found.code == "cant-be-put-together"
    assert set(found.where) == {b.id for b in frame}


def dumb_bell():
    """A dumb-bell whose waist fills another board's mortise: nothing moves."""
    slot = Cut("mortise", Face.FACE, 0.0, 20.0, rectangle(45.0, 20.0, 65.0, 40.0))
    through = board("through", plain(110.0, 60.0, 20.0, slot), LYING.moved((0.0, 0.0, 20.0)))
    # a dumb-bell: its waist fills the mortise, its ends are larger than it on both sides
    waist_low = Cut("notch", Face.NEAR, 0.0, 10.0, rectangle(20.0, -20.0, 40.0, 0.0))
    waist_high = Cut("notch", Face.FAR, 0.0, 10.0, rectangle(20.0, -20.0, 40.0, 0.0))
    upright = Frame((0.0, 0.0, 1.0), (0.0, 1.0, 0.0), (-1.0, 0.0, 0.0), (45.0, 10.0, -20.0))
    bell = board("bell", plain(60.0, 40.0, 20.0, waist_low, waist_high), upright)
    return through, bell


@pytest.mark.parametrize("name", ["low", "high"])
def test_boards_that_only_lie_on_each_other_come_apart(name):
    low, high, _ = closed_box()
    order = assembly_order(piece(low, high))
    assert len(order.steps) == 2
    assert not order.stuck
    assert name in {step.unit for step in order.steps}
