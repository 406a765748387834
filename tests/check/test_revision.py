"""Revisions: what counts as a change, and what it means for boards already cut."""

from dataclasses import replace

from shopdraw.build import build
from shopdraw.check.revision import changes_since, fingerprint, frozen_boards, revision_findings
from shopdraw.piece.design import Design, RevisionTable
from shopdraw.shape.path import rectangle
from tests.check.desks import checked, design, of_code
from tests.wood.pieces import LYING, board, dado, plain


def frozen(assembly, *cut):
    return RevisionTable(boards=tuple(b.line for b in frozen_boards(assembly)), cut=cut)


def at_revision(piece: Design, table: RevisionTable) -> Design:
    return piece.model_copy(update={"revision": {"A": table}})


def changes(before, after):
    return {change.board: change for change in changes_since(build(after), frozen(build(before)))}


def test_nothing_changes_when_nothing_is_changed():
    assembly = build(design())
    assert changes_since(assembly, frozen(assembly)) == ()


def test_a_fingerprint_is_of_the_shape_alone():
    one = board("one", plain(300.0, 80.0, 20.0, dado(50.0, 20.0, 6.0, (0.0, 80.0))), LYING)
    moved = replace(one, id="two", frame=LYING.moved((10.0, 20.0, 30.0)))
    assert fingerprint(one) == fingerprint(moved)
    turned = replace(one, shape=replace(one.shape, outline=rectangle(0.0, 0.0, 300.0, 80.0)))
    assert fingerprint(one) == fingerprint(turned)


def test_each_thing_that_is_cut_changes_a_fingerprint():
    plain_one = board("one", plain(300.0, 80.0, 20.0), LYING)
    others = [
        plain(300.1, 80.0, 20.0), plain(300.0, 80.1, 20.0), plain(300.0, 80.0, 20.1),
        plain(300.0, 80.0, 20.0, dado(50.0, 20.0, 6.0, (0.0, 80.0))),
        plain(300.0, 80.0, 20.0, dado(50.0, 20.0, 6.1, (0.0, 80.0))),
        plain(300.0, 80.0, 20.0, dado(50.1, 20.0, 6.0, (0.0, 80.0))),
    ]  # fmt: skip
    prints = {fingerprint(board("one", shape, LYING)) for shape in others}
    assert len(prints) == len(others)
    assert fingerprint(plain_one) not in prints


def test_a_far_smaller_difference_than_a_saw_makes_is_none():
    one, two = (board("one", plain(size, 80.0, 20.0), LYING) for size in (300.0, 300.0000001))
    assert fingerprint(one) == fingerprint(two)


def test_a_wider_piece_changes_what_runs_across_it_and_leaves_its_sides():
    found = changes(design(), design(case={"width": 910.0}))
    assert {"bottom", "top", "shelf.writing", "back", "frame.1.front", "plinth.front"} <= set(found)
    assert not {"side.left", "side.right", "drawer.1.side-left", "support.left"} & set(found)
    assert found["bottom"].words.startswith("changed: was ")


def test_a_drawer_more_brings_new_boards_and_one_less_takes_them_away():
    three = design(opening={"bank": {"divide": {"keys": ("1", "2", "3"), "rule": "equal"}}})
    four = design(opening={"bank": {"divide": {"keys": ("1", "2", "3", "4"), "rule": "equal"}}})
    assert changes(three, four)["drawer.4.front"].kind == "new"
    assert changes(four, three)["drawer.4.front"].kind == "gone"


def test_a_board_already_cut_that_changed_must_be_fixed_and_others_not():
    table = frozen(build(design()), "3", "side.left")
    wider = at_revision(design(case={"width": 910.0}), table)
    (found,) = of_code(checked(wider), "cut-board-wrong")
    assert found.where == ("bottom",)
    assert found.severity.value == "must-fix"
    assert "cut it again" in found.message


def test_nothing_is_said_of_cut_boards_that_are_as_they_were():
    same = at_revision(design(), frozen(build(design()), "3", "side.left"))
    assert not of_code(checked(same), "cut-board-wrong")


def test_the_last_revision_counts():
    first, second = frozen(build(design()), "3"), frozen(build(design(case={"width": 910.0})), "3")
    piece = design(case={"width": 910.0}).model_copy(update={"revision": {"A": first, "B": second}})
    assert not revision_findings(piece, build(piece))


def test_what_cannot_be_read_or_points_nowhere_is_told():
    piece = at_revision(design(), RevisionTable(boards=("side.left 1L",), cut=("99",)))
    messages = [finding.message for finding in revision_findings(piece, build(piece))]
    assert len(messages) == 2
    assert "side.left 1L" in messages[0]
    assert "99" in messages[1]
