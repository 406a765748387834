"""The judge of sheets: each kind of fault is planted in a good sheet, and each is caught, and nothing else."""

import itertools
from dataclasses import replace

import pytest

from shopdraw.drawing.mark import Area, Hatching, Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Placed, SheetSet
from shopdraw.shape.path import rectangle
from shopdraw.sheet import (
    Fact,
    PlainView,
    Rank,
    TitleFields,
    compose_sheet,
    compose_view,
    free_area,
    inch_writing,
    look_for,
    stand_in_rows,
    write_figures,
)
from shopdraw.trade.paper import paper
from shopdraw.write.pdf import write_pdf
from tests.sheet.judge import RULES, judge, report
from tests.sheet.random_view import VIEW, at, box_lines

A1 = paper("A1")
LOOK = look_for("iso", "large")
LEVELS = (0.0, 150.0, 450.0, 900.0)


def good_sheets():
    ends = [at(f"z{z:g}", 0.0, z) for z in LEVELS]
    facts = [
        Fact(f"{a.id}/{b.id}", a, b, Rank.OPENING, (VIEW,), 90.0, side="left", chain="c")
        for a, b in itertools.pairwise(ends)
    ]
    facts.append(Fact("z0/z900", ends[0], ends[-1], Rank.OVERALL, (VIEW,), 90.0, side="left"))
    target = at("n", 300.0, 450.0)
    facts.append(Fact("n", target, target, Rank.SIZE, (VIEW,), kind="note", words="dado 18 × 6"))
    marks = [*box_lines(0, 0, 600, 900), Line((0, 450), (600, 450), Meaning.VISIBLE)]
    marks += [Line((0, 150), (600, 150), Meaning.HIDDEN), Line((0, 150), (30, 150), Meaning.VISIBLE)]
    marks.append(Area(rectangle(0, 450, 600, 520), (), Hatching("lines", 45.0, 2.0)))
    writing = inch_writing()
    figures = write_figures(facts, writing)
    view = compose_view(PlainView(VIEW, "View", tuple(marks)), facts, 0.2, LOOK, figures)
    other = compose_view(PlainView("other", "Other", tuple(box_lines(0, 0, 300, 300))), [], 0.2, LOOK, {})
    standing = stand_in_rows([view, other], free_area(A1, LOOK))
    sheet = compose_sheet("one", "1", 1, "Views", A1, standing, TitleFields(title="Desk"), LOOK)
    return SheetSet("Desk", "", "", "iso", (sheet,))


def faults_of(sheets, tmp_path, **more):
    write_pdf(sheets, tmp_path / "sheets.pdf")
    found = judge(tmp_path / "sheets.pdf", sheets, **more)
    return {rule for rule, faults in found.items() if faults}, found


def with_view(sheets, change):
    """The set with its first view's drawing changed."""
    sheet = sheets.sheets[0]
    first, *rest = sheet.placed
    changed = replace(first, drawing=change(first.drawing))
    return replace(sheets, sheets=(replace(sheet, placed=(changed, *rest)),))


def with_marks(sheets, *marks):
    sheet = sheets.sheets[0]
    return replace(sheets, sheets=(replace(sheet, marks=(*sheet.marks, *marks)),))


def dimension_of(drawing, fact):
    return next(d for d in drawing.dimensions if d.id.split("@")[0] == fact)


def changed(drawing, fact, **values):
    dims = tuple(replace(d, **values) if d.id.split("@")[0] == fact else d for d in drawing.dimensions)
    return replace(drawing, dimensions=dims)


def moved(fact, dx):
    """A dimension's line and figure shifted, true-size mm."""

    def change(drawing: Drawing) -> Drawing:
        d = dimension_of(drawing, fact)
        at_words = (d.words_at[0] + dx, d.words_at[1])
        return changed(drawing, fact, line=(d.line[0] + dx, d.line[1]), words_at=at_words)

    return change


def figure_at_another(fact, other):
    def change(drawing: Drawing) -> Drawing:
        at_words = dimension_of(drawing, other).words_at
        return changed(drawing, fact, words_at=(at_words[0], at_words[1] + 5.0))

    return change


def doubled(fact, words, new_id=None):
    def change(drawing: Drawing) -> Drawing:
        d = dimension_of(drawing, fact)
        again = replace(
            d,
            id=f"{new_id or fact}@again",
            words=words,
            line=(d.line[0] - 200.0, d.line[1]),
            words_at=(d.words_at[0] - 200.0, d.words_at[1]),
            extension=(False, False),
        )
        return replace(drawing, dimensions=(*drawing.dimensions, again))

    return change


def added(*marks):
    return lambda drawing: replace(drawing, marks=(*drawing.marks, *marks))


def unhatched_clear(drawing: Drawing) -> Drawing:
    marks = tuple(replace(m, clear=()) if isinstance(m, Area) else m for m in drawing.marks)
    return replace(drawing, marks=(*marks, Text((300.0, 470.0), "gap 3", 3.5, meaning=Meaning.SIZE)))


def test_a_good_sheet_has_no_fault(tmp_path):
    rules, found = faults_of(good_sheets(), tmp_path)
    assert not rules, report(found)
    assert set(found) == set(RULES)


VIEW_FAULTS = [
    ("text over text", figure_at_another("z0/z150", "z150/z450")),
    ("line in text", added(Text((290.0, 445.0), "words", 3.5))),
    ("hatch in text", unhatched_clear),
    (
        "leader crossed",
        added(Line((200.0, 300.0), (400.0, 600.0), Meaning.SIZE), Line((400.0, 300.0), (200.0, 600.0), Meaning.SIZE)),
    ),
    ("rows too near", moved("z0/z900", 15.0)),
    ("width off the series", added(Line((10.0, 10.0), (50.0, 10.0), Meaning.FRAME, "", 0.3))),
    ("height off the series", added(Text((300.0, 300.0), "words", 3.1))),
    ("sum", lambda drawing: changed(drawing, "z0/z150", words="6")),
    ("two strings", doubled("z0/z900", "(35 1/2)")),
    ("told twice", doubled("z0/z900", "35 7/16")),
    ("to a hidden edge", lambda drawing: changed(drawing, "z0/z150", b=(300.0, 150.0))),
]


@pytest.mark.parametrize(("rule", "change"), VIEW_FAULTS, ids=[rule for rule, _ in VIEW_FAULTS])
def test_a_planted_fault_in_a_view_is_caught(rule, change, tmp_path):
    rules, found = faults_of(with_view(good_sheets(), change), tmp_path)
    assert rule in rules, report(found)


def test_first_rows_too_near_to_the_view_are_caught(tmp_path):
    _rules, found = faults_of(with_view(good_sheets(), moved("z0/z150", 20.0)), tmp_path)
    assert any("off the view" in fault for fault in found["rows too near"])


def test_words_off_the_frame_are_caught(tmp_path):
    rules, _ = faults_of(with_marks(good_sheets(), Text((A1.frame[2] - 5, 300.0), "a long note", 3.5)), tmp_path)
    assert "text off the frame" in rules


def test_views_too_near_to_each_other_are_caught(tmp_path):
    sheets = good_sheets()
    sheet = sheets.sheets[0]
    first, second = sheet.placed
    near = Placed(second.drawing, second.scale, (first.at[0] + 600 * 0.2 + 10.0, first.at[1]))
    rules, _ = faults_of(replace(sheets, sheets=(replace(sheet, placed=(first, near)),)), tmp_path)
    assert rules == {"views too near"}


def test_a_view_too_near_to_the_frame_is_caught(tmp_path):
    sheets = good_sheets()
    sheet = sheets.sheets[0]
    first, second = sheet.placed
    near = Placed(second.drawing, second.scale, (A1.frame[2] - 62.0, second.at[1]))
    rules, _ = faults_of(replace(sheets, sheets=(replace(sheet, placed=(first, near)),)), tmp_path)
    assert rules == {"views too near"}


def test_letters_too_small_on_a_reduced_print_are_caught(tmp_path):
    rules, _ = faults_of(good_sheets(), tmp_path, reduction=0.4)
    assert "text too small" in rules


def test_a_sheet_drawn_at_another_scale_than_it_says_is_caught(tmp_path):
    sheets = good_sheets()
    sheet = sheets.sheets[0]
    write_pdf(sheets, tmp_path / "sheets.pdf")
    wrong = tuple(replace(placed, scale=0.25) for placed in sheet.placed)
    lonely = tuple(
        replace(
            p,
            drawing=replace(
                p.drawing,
                dimensions=(),
                marks=tuple(m for m in p.drawing.marks if getattr(m, "meaning", None) is Meaning.VISIBLE),
            ),
        )
        for p in wrong
    )
    found = judge(tmp_path / "sheets.pdf", replace(sheets, sheets=(replace(sheet, placed=lonely),)))
    assert found["printed scale"]


def test_a_figure_that_the_page_lacks_is_caught(tmp_path):
    sheets = good_sheets()
    write_pdf(sheets, tmp_path / "sheets.pdf")
    claimed = with_view(sheets, lambda drawing: changed(drawing, "z0/z150", words="7"))
    assert judge(tmp_path / "sheets.pdf", claimed)["figure missing"]
