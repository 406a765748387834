"""What is put together on the bench."""

from shopdraw.build import build
from shopdraw.check.sub_assembly import groups_of, sub_assemblies
from shopdraw.piece.design import Design
from tests.check.desks import design


def test_frames_drawers_and_plinth_are_put_together_first_and_sides_are_not():
    found = sub_assemblies(build(design()))
    assert len(found["drawer.1"]) == 5
    assert set(found["plinth"]) == {"plinth.front", "plinth.left", "plinth.right"}
    assert len(found["frame.1"]) == 4
    assert found["side.left"] == ("side.left",)


def test_a_lid_takes_its_caps_along():
    found = sub_assemblies(build(design(lid={"ends": "square"})))
    assert set(found["lid"]) == {"lid", "lid.cap-left", "lid.cap-right"}


def test_every_board_stands_in_one_group():
    assembly = build(design())
    held = [name for boards in sub_assemblies(assembly).values() for name in boards]
    assert sorted(held) == sorted(board.id for board in assembly.boards)


def test_groups_hang_together_by_joints_alone():
    beside = {"a": frozenset({"b"}), "b": frozenset({"a"}), "c": frozenset()}
    assert groups_of(("a", "c", "b"), beside) == [("a", "b"), ("c",)]


def test_shiplapped_boards_go_in_one_by_one_and_a_framed_back_as_one():
    case = {"width": 900.0, "height": 1000.0, "depth": 480.0}
    for kind, alone in (("boards", True), ("frame", False)):
        tables = {"piece": {"kind": "chest"}, "case": case, "back": {"kind": kind}}
        found = sub_assemblies(build(Design.model_validate(tables)))
        assert ("back.1" in found) == alone
        assert (len(found.get("back", ())) > 1) != alone
