"""Whole sets of the sample desks: the rules of paper, what is told, and that nothing vanishes."""

from __future__ import annotations

import math
import re
from fractions import Fraction
from itertools import pairwise

import pytest

from shopdraw.drawing.mark import ArcMark, Area, Line, Meaning, Text
from shopdraw.lists.cut_list import cut_list
from shopdraw.sheet.box import box_of_text
from shopdraw.sheet.extent import whole
from shopdraw.sheet.set import sheet_set
from shopdraw.shipped import sample_names
from shopdraw.wood.finding import Finding, Severity
from tests.sheet.judge import judge, report
from tests.sheet.sample_set import DESKS, made, pdf_of
from tests.sheet.set_judge import judge_set

STYLES = ("iso", "asme")


def figure(words):
    """The first figure of a string, exactly; fractions of an inch too."""
    found = re.search(r"(\d+) (\d+)/(\d+)|(\d+)/(\d+)|(\d+(?:[.,]\d+)?)", words)
    assert found, words
    a, b, c, d, e, plain = found.groups()
    if a:
        return int(a) + Fraction(int(b), int(c))
    return Fraction(int(d), int(e)) if d else Fraction(plain.replace(",", "."))


def dimensions(whole_set, view):
    return whole_set.drawn.views.done.views[view].drawing.dimensions


def drawings(whole_set):
    return [placed.drawing for sheet in whole_set.sheets.sheets for placed in sheet.placed]


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("desk", DESKS)
def test_no_fault_of_paper_on_any_sheet_of_a_wall_set(desk, style):
    faults = judge(pdf_of(desk, style), made(desk, style)[2].sheets)
    assert not any(faults.values()), report(faults)


@pytest.mark.parametrize("desk", DESKS)
def test_no_fault_of_paper_on_the_drawings_of_a_bench_set(desk):
    faults = judge(pdf_of(desk, "iso", "bench"), made(desk, "iso", "bench")[2].sheets)
    drawn = {str(2 + n) for n in range(20)} - part_numbers(made(desk, "iso", "bench")[2])
    ours = {
        rule: [f for f in found if f.split(":")[0].removeprefix("sheet ") in drawn] for rule, found in faults.items()
    }
    assert not any(ours.values()), report(ours)


def part_numbers(whole_set):
    return {sheet.number for sheet in whole_set.sheets.sheets if sheet.key.startswith("parts")}


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("desk", DESKS)
def test_every_fact_is_placed_or_named_as_without_room(desk, style):
    whole_set = made(desk, style)[2]
    done = whole_set.drawn.views.done
    placed = [fact for view in done.views.values() for fact in view.placed]
    left = [entry.fact for entry in done.unplaced]
    told = {fact.id for fact in whole_set.drawn.views.facts}
    assert len(placed) == len(set(placed))
    assert set(placed) | {fact for fact in left if not fact.startswith("balloon ")} == told
    assert not set(placed) & set(left)
    named = {finding.where[0] for finding in whole_set.findings}
    # Labels that no view had room for stand in pictures of their own.
    assert {fact for fact in left if not fact.startswith("balloon ")} == named
    assert all("no room for" in finding.message for finding in whole_set.findings)


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("desk", DESKS)
def test_a_wall_set_has_room_for_every_fact(desk, style):
    left = [entry for entry in made(desk, style)[2].drawn.views.done.unplaced if not entry.fact.startswith("balloon ")]
    assert left == []


@pytest.mark.parametrize("desk", DESKS)
def test_case_19_printed_links_add_up_to_the_printed_overall(desk):
    whole_set = made(desk)[2]
    chains = {}
    for fact in whole_set.drawn.views.facts:
        if fact.chain and fact.kind == "linear":
            chains.setdefault(fact.chain, []).append(fact)
    words = {
        d.id.rpartition("@")[0]: d.words
        for view in whole_set.drawn.views.done.views.values()
        for d in view.drawing.dimensions
    }
    sums = {
        "front.heights": ("floor/level.writing:top",),
        "front.widths": ("case:left/case:right",),
        "side.heights": ("floor/top:upper",),
        "side.depths": ("plinth.front:front/case:rear",),
        "A.frame": ("case:front/back:front",),
        "C.bays": ("opening.supports.left:left/opening.supports.right:right, in C",),
    }
    for chain, (overall,) in sums.items():
        links = [figure(words[fact.id]) for fact in chains[chain]]
        assert len(links) > 1, chain
        assert sum(links) == figure(words[overall]), (chain, [words[f.id] for f in chains[chain]], words[overall])


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("desk", DESKS)
def test_case_20_overalls_once_each_and_planes_details_and_labels_belong_together(desk, style):
    _, assembly, whole_set = made(desk, style)
    box = whole(assembly)
    overalls = {"width": box.x1 - box.x0, "height": assembly.height, "depth": box.y1 - box.y0}
    faults = judge_set(whole_set.sheets, {board.label for board in assembly.boards}, overalls)
    assert not any(faults.values()), faults


@pytest.mark.parametrize("desk", DESKS)
def test_case_20_heights_run_from_the_floor_to_the_top_without_a_gap(desk):
    _, assembly, whole_set = made(desk)
    rows = [d for d in dimensions(whole_set, "front") if d.direction_deg == 90.0]
    ends = sorted({round(p[1], 3) for d in rows for p in (d.a, d.b)})
    assert ends[0] == 0.0
    assert ends[-1] == pytest.approx(assembly.height, abs=1e-3)
    links = {(round(min(d.a[1], d.b[1]), 3), round(max(d.a[1], d.b[1]), 3)) for d in rows}
    assert all(pair in links for pair in pairwise(ends))


@pytest.mark.parametrize("desk", DESKS)
def test_case_21_both_angles_are_printed_and_named(desk):
    _, assembly, whole_set = made(desk)
    alpha = math.degrees(math.atan2(assembly.slant.rise_mm, assembly.slant.run_mm))
    said = " ".join(
        [d.words for drawing in drawings(whole_set) for d in drawing.dimensions]
        + [m.words for drawing in drawings(whole_set) for m in drawing.marks if isinstance(m, Text)]
    ).replace(",", ".")
    assert f"{alpha:.1f}° from level" in said
    assert f"tilt saw {90 - alpha:.1f}° from square" in said


@pytest.mark.parametrize("desk", DESKS)
def test_case_64_no_dimension_goes_to_a_hidden_edge(desk):
    for name, view in made(desk)[2].drawn.views.done.views.items():
        lines = [m for m in view.drawing.marks if isinstance(m, Line) and m.meaning is not Meaning.SIZE]
        for d in view.drawing.dimensions:
            if d.kind not in ("linear", "running"):
                continue
            for p in (d.a, d.b):
                near = [m for m in lines if distance(p, m.start, m.end) * view.scale < 0.75]
                assert near, (name, d.id, p)
                assert any(m.meaning is not Meaning.HIDDEN for m in near), (name, d.id, p)


def distance(p, a, b):
    long2 = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2
    t = 0.0 if long2 < 1e-18 else ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / long2
    t = min(1.0, max(0.0, t))
    return math.hypot(p[0] - a[0] - t * (b[0] - a[0]), p[1] - a[1] - t * (b[1] - a[1]))


@pytest.mark.parametrize("projection", ["first", "third"])
def test_views_stand_as_the_symbol_says(projection):
    whole_set = made("chart-room-desk", "", "wall", projection)[2]
    sheet = next(s for s in whole_set.sheets.sheets if s.key == "general-arrangement")
    at = {placed.drawing.id: placed.at for placed in sheet.placed}
    # ISO 5456-2: third angle has the plan above and the right side on the right; first angle the other way round.
    sign = 1 if projection == "third" else -1
    assert sign * (at["side"][0] - at["front"][0]) > 0
    assert sign * (at["plan"][1] - at["front"][1]) > 0
    assert at["side"][1] == pytest.approx(at["front"][1])
    assert at["plan"][0] == pytest.approx(at["front"][0])
    words = " ".join(m.words for m in sheet.marks if isinstance(m, Text))
    assert f"{projection.capitalize()}-angle" in words
    circles = [m for m in sheet.marks if isinstance(m, ArcMark)]
    frustum = [m for m in sheet.marks if isinstance(m, Line) and near(m, circles[0]) and m.meaning is Meaning.FRAME]
    left_of_circles = min(m.start[0] for m in frustum) < circles[0].centre[0]
    assert left_of_circles == (projection == "first")


def near(line, circle):
    return all(
        math.dist(p, circle.centre) < 25.0 and abs(p[1] - circle.centre[1]) < 3.3 for p in (line.start, line.end)
    )


@pytest.mark.parametrize("desk", DESKS)
def test_details_and_circles_name_each_others_sheet_and_zone(desk):
    whole_set = made(desk)[2]
    size = whole_set.drawn.manner.size
    where = {}
    for sheet in whole_set.sheets.sheets:
        for placed in sheet.placed:
            for mark in placed.drawing.marks:
                if (
                    isinstance(mark, ArcMark)
                    and mark.end_deg - mark.start_deg == 360.0
                    and mark.meaning is Meaning.SIZE
                ):
                    at = [placed.at[i] + placed.scale * mark.centre[i] for i in (0, 1)]
                    where[placed.drawing.id, circle(mark)] = f"{sheet.number}-{size.zone_at(*at)}"
    texts = {d.id: [m.words for m in d.marks if isinstance(m, Text)] for d in drawings(whole_set)}
    assert whole_set.drawn.views.details
    for detail in whole_set.drawn.views.details:
        drawn_at = where[detail.view, circle(detail)]
        circle_at = where[detail.plane.view, circle(detail)]
        assert f"{detail.name} / {drawn_at}" in texts[detail.plane.view]
        assert any(words.endswith(f"({circle_at})") for words in texts[detail.view])


def circle(of):
    return round(of.centre[0], 3), round(of.centre[1], 3), round(of.radius, 3)


@pytest.mark.parametrize("desk", DESKS)
def test_every_line_of_a_view_carries_the_board_that_it_shows(desk):
    _, assembly, whole_set = made(desk)
    shown = (Meaning.VISIBLE, Meaning.CUT, Meaning.BEHIND, Meaning.HIDDEN, Meaning.MOVING)
    for view in whole_set.drawn.views.done.views.values():
        for mark in view.drawing.marks:
            if isinstance(mark, Area) or (isinstance(mark, Line | ArcMark) and mark.meaning in shown):
                assert assembly.has(mark.board), (view.drawing.id, mark)


def test_the_sheets_stand_in_order_and_are_numbered_through():
    whole_set = made("harbour-office-desk")[2]
    sheets = whole_set.sheets.sheets
    assert [sheet.number for sheet in sheets] == [str(n) for n in range(1, len(sheets) + 1)]
    keys = [re.sub(r"-\d+$", "", sheet.key) for sheet in sheets]
    order = ["cover", "general-arrangement", "sections", "parts", "settings", "cut-list", "exploded", "assembly"]
    assert [key for key in dict.fromkeys(keys) if key in order] == order
    bought = [
        n for n, sheet in enumerate(sheets) if any(isinstance(m, Text) and m.words == "Materials" for m in sheet.marks)
    ]
    assert bought
    assert keys.index("cut-list") <= min(bought) < keys.index("exploded")


def test_what_must_be_fixed_stands_on_the_cover():

    design, assembly, _ = made("pilot-station-desk")
    wrong = Finding("lid-hits-side", Severity.MUST_FIX, ("lid",), "the lid meets the left side")
    quiet = Finding("quiet", Severity.MUST_FIX, ("lid",), "somebody looked at this", silenced="looked at")
    whole_set = sheet_set(design, assembly, (wrong, quiet), cut_list(assembly, design), ())
    words = " ".join(m.words for m in whole_set.sheets.sheets[0].marks if isinstance(m, Text))
    assert "Must be fixed" in words
    assert "the lid meets the left side" in words
    assert "somebody looked at this" not in words


def test_the_same_piece_gives_the_same_set():
    first = made("pilot-station-desk")[2]
    made.cache_clear()
    assert made("pilot-station-desk")[2].sheets == first.sheets


def test_openings_side_by_side_are_told_where_no_drawer_is():
    _, assembly, whole_set = made("mail-case")
    dimensions = whole_set.drawn.views.done.views["section.B"].drawing.dimensions
    told = sorted(round(d.measured, 2) for d in dimensions if "opening.C.1." in d.id)
    row = sorted((o for o in assembly.openings if o.id.startswith("C.1.")), key=lambda o: o.left)
    assert len(row) == 3
    assert told == pytest.approx(sorted(o.width for o in row), abs=0.01)


@pytest.mark.parametrize("piece", ["harbour-master-desk", "mail-case", "plan-chest", "chart-room-desk"])
def test_a_details_name_is_near_its_circle_or_has_a_leader_to_it(piece):
    _, _, whole_set = made(piece)
    views = whole_set.drawn.views
    looked_at = 0
    for detail in views.details:
        view = views.done.views[detail.plane.view]
        (name,) = [m for m in view.drawing.marks if isinstance(m, Text) and m.words.startswith(f"{detail.name} / ")]
        box = [v / view.scale for v in box_of_text(name, view.scale).bounds()]
        x, y = detail.centre
        off = math.hypot(max(box[0] - x, 0.0, x - box[2]), max(box[1] - y, 0.0, y - box[3])) - detail.radius
        leaders = [
            m
            for m in view.drawing.marks
            if isinstance(m, Line) and m.meaning is Meaning.SIZE and abs(math.dist(m.end, (x, y)) - detail.radius) < 0.1
        ]
        # Where a dimension line stands between the two no leader can: the name stands just beyond it then.
        assert off * view.scale <= 20.0 or leaders, (detail.name, off * view.scale)
        looked_at += 1
    assert looked_at > 5


@pytest.mark.parametrize("piece", sample_names())
def test_no_view_tells_the_same_two_features_twice(piece):
    _, _, whole_set = made(piece)
    for view in whole_set.drawn.views.done.views.values():
        pairs = [
            (frozenset(part.split(", ")[0] for part in d.id.split("@")[0].split("/")), round(d.measured, 3))
            for d in view.drawing.dimensions
            if d.kind in ("linear", "running")
        ]
        twice = [pair for pair in pairs if pairs.count(pair) > 1 and len(pair[0]) == 2]
        assert not twice, (view.drawing.id, twice)
