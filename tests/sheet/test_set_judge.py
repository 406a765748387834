"""The judge of whole sets: each fault is planted in a small good set, and each is caught."""

from dataclasses import replace

import pytest

from shopdraw.drawing.mark import ArcMark, Meaning, Text
from shopdraw.drawing.sheet import SheetSet
from shopdraw.sheet import (
    Balloon,
    Fact,
    PlainView,
    Rank,
    TitleFields,
    compose_sheet,
    compose_view,
    free_area,
    look_for,
    metric_writing,
    stand_in_rows,
    write_figures,
)
from shopdraw.trade.paper import paper
from tests.sheet.random_view import at, box_lines
from tests.sheet.set_judge import SET_RULES, judge_set

A1 = paper("A1")
LOOK = look_for("iso", "large")
LABELS = ("1L", "2")


def a_view(name, facts=(), marks=(), balloons=()):
    plain = PlainView(name, name, (*box_lines(0, 0, 600, 900), *marks))
    return compose_view(plain, facts, 0.2, LOOK, write_figures(facts, metric_writing()), balloons)


def good_set():
    a, b = at("left", 0, 0, view="front"), at("right", 600, 0, view="front")
    width = Fact("left/right", a, b, Rank.OVERALL, ("front",), side="below")
    letters = [Text((-60.0, 450.0), "A", 7.0)]
    balloons = [Balloon("1L", (20, 700)), Balloon("2", (560, 600))]
    views = [
        a_view("front", [width], letters, balloons),
        a_view("section.A", marks=[Text((650.0, 450.0), "d1 / 3-C4", 5.0)]),
        a_view("detail.d1"),
    ]
    standing = stand_in_rows(views, free_area(A1, LOOK))
    sheet = compose_sheet("general-arrangement", "1", 1, "Views", A1, standing, TitleFields(), LOOK)
    return SheetSet("Desk", "", "", "iso", (sheet,))


def judged(sheets, labels=LABELS, width=600.0):
    found = judge_set(sheets, labels, {"width": width})
    return {rule for rule, faults in found.items() if faults}


def without(sheets, words):
    """The set without a text."""
    (sheet,) = sheets.sheets
    placed = tuple(
        replace(
            p, drawing=replace(p.drawing, marks=tuple(m for m in p.drawing.marks if getattr(m, "words", "") != words))
        )
        for p in sheet.placed
    )
    return replace(sheets, sheets=(replace(sheet, placed=placed),))


def with_placed(sheets, *placed):
    (sheet,) = sheets.sheets
    return replace(sheets, sheets=(replace(sheet, placed=placed),))


def test_a_good_set_has_no_fault():
    assert judged(good_set()) == set()
    assert set(judge_set(good_set(), LABELS, {})) == set(SET_RULES)


@pytest.mark.parametrize(
    ("rule", "labels"), [("balloon without a board", ("2",)), ("board without a balloon", (*LABELS, "3"))]
)
def test_balloons_and_the_cut_list_hold_the_same_labels(rule, labels):
    assert judged(good_set(), labels) == {rule}


def test_a_label_twice_in_a_view_is_caught():
    front, *rest = good_set().sheets[0].placed
    again = (ArcMark((300.0, 417.5), 31.25, 0.0, 360.0, Meaning.SIZE), Text((300.0, 405.0), "1L", 5.0, "middle"))
    twice = replace(front, drawing=replace(front.drawing, marks=(*front.drawing.marks, *again)))
    assert judged(with_placed(good_set(), twice, *rest)) == {"label twice in a view"}


def test_a_label_is_ballooned_once_however_often_it_is_asked_for():
    view = a_view("front", balloons=[Balloon("1L", (20, 700)), Balloon("1L", (560, 600))])
    assert [m.words for m in view.drawing.marks if isinstance(m, Text)].count("1L") == 1


def test_a_plane_without_its_section_is_caught():
    front, _, detail = good_set().sheets[0].placed
    assert "plane without its section" in judged(with_placed(good_set(), front, detail))


def test_a_section_without_its_plane_is_caught():
    assert judged(without(good_set(), "A")) == {"section without its plane"}


def test_a_detail_without_its_circle_is_caught():
    assert judged(without(good_set(), "d1 / 3-C4")) == {"detail without its circle"}


def test_an_overall_that_is_told_nowhere_is_caught():
    assert judged(good_set(), width=601.0) == {"overall not told once"}
