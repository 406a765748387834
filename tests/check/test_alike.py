"""What is true of several boards in the same words is told once."""

from shopdraw.build import build
from shopdraw.check.alike import told_together
from shopdraw.wood.finding import Finding, Severity
from tests.check.desks import design

DESK = build(design())
LEFT, RIGHT = DESK.board("side.left"), DESK.board("side.right")


def _found(board, words, silenced=None, code="hole-into-bed", more=()):
    return Finding(code, Severity.NOTE, (board.id, *more), f"{board.label}: {words}", silenced=silenced)


def test_the_same_words_of_two_boards_are_told_once_where_the_first_stood():
    between = _found(LEFT, "something else", code="corner-relief")
    told = told_together(DESK, (_found(LEFT, "a hole", more=("bore",)), between, _found(RIGHT, "a hole")))
    assert [finding.message for finding in told] == [f"{LEFT.label}, {RIGHT.label}: a hole", between.message]
    assert told[0].where == ("side.left", "bore", "side.right")


def test_other_words_another_rule_or_a_silence_keep_them_apart():
    apart = (
        _found(LEFT, "a hole"), _found(RIGHT, "two holes"), _found(RIGHT, "a hole", code="drill-missing"),
        _found(RIGHT, "a hole", silenced="seen"),
    )  # fmt: skip
    assert told_together(DESK, apart) == apart


def test_findings_that_begin_with_no_boards_label_stay_as_they_are():
    plain = (
        Finding("web", Severity.NOTE, (), "3: is a number"),
        Finding("web", Severity.NOTE, ("case",), "3: is a number"),
        Finding("web", Severity.NOTE, ("side.left",), "the side: too thin"),
        Finding("web", Severity.NOTE, ("side.right",), "the side: too thin"),
    )
    assert told_together(DESK, plain) == plain
