"""Details of joints: every kind of joint is shown once, as a true clip of its section, with the joint's own sizes."""

from __future__ import annotations

import math

import pytest

from shopdraw.drawing.mark import ArcMark, Line, Meaning, Text
from shopdraw.sheet.details import draw_detail
from shopdraw.sheet.joint_details import KINDS
from shopdraw.sheet.sections import section_marks
from tests.sheet.judge import judge, report
from tests.sheet.sample_set import SAMPLES, made, pdf_of

PIECES = tuple(sorted(path.stem for path in SAMPLES.glob("*.piece")))
OTHERS = ("logbook-shelves", "mail-case", "plan-chest", "tide-lectern")
BARE = ("butt",)
"""Boards that only meet, without a cut for each other."""


def joint_of(assembly, detail):
    return next((joint for joint in assembly.joints if joint.id == detail.joint), None)


@pytest.mark.parametrize("piece", PIECES)
def test_every_kind_of_joint_in_a_piece_has_a_detail(piece):
    _, assembly, whole_set = made(piece)
    shown = {joint.kind for d in whole_set.drawn.views.details if (joint := joint_of(assembly, d)) is not None}
    assert {joint.kind for joint in assembly.joints} - shown <= set(BARE)


@pytest.mark.parametrize("piece", PIECES)
def test_a_kind_of_joint_has_one_detail_and_what_a_piece_lacks_has_none(piece):
    _, assembly, whole_set = made(piece)
    names = [detail.name for detail in whole_set.drawn.views.details]
    assert len(names) == len(set(names))
    members = {board.member for board in assembly.boards}
    for kind in KINDS:
        if not (members & set(kind.hosts) and members & set(kind.guests)):
            assert kind.name not in names, kind.name


@pytest.mark.parametrize("piece", ["harbour-master-desk", "plan-chest", "logbook-shelves"])
def test_a_detail_is_a_true_clip_of_its_section(piece):
    _, assembly, whole_set = made(piece)
    for detail in whole_set.drawn.views.details:
        if detail.of_lid:
            continue
        lines = [mark for mark in section_marks(assembly, detail.plane, 1.0) if isinstance(mark, Line)]
        drawn = [mark for mark in draw_detail(assembly, detail, 1.0, "").seen.marks if isinstance(mark, Line)]
        assert drawn, detail.name
        for line in drawn:
            for point in (line.start, line.end):
                assert math.dist(point, detail.centre) <= detail.radius + 1e-6, detail.name
            middle = ((line.start[0] + line.end[0]) / 2, (line.start[1] + line.end[1]) / 2)
            assert min(off(middle, whole.start, whole.end) for whole in lines) < 1e-6, (detail.name, line)


def off(p, a, b):
    """How far a point lies from a stretch."""
    long2 = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2
    t = min(1.0, max(0.0, ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / long2))
    return math.hypot(p[0] - a[0] - t * (b[0] - a[0]), p[1] - a[1] - t * (b[1] - a[1]))


@pytest.mark.parametrize("piece", PIECES)
def test_case_64_depths_in_details_are_those_that_are_cut(piece):
    _, assembly, whole_set = made(piece)
    told = 0
    for detail in whole_set.drawn.views.details:
        joint = joint_of(assembly, detail)
        if joint is None or joint.body is None:
            continue
        sizes = dict(joint.sizes)
        cut = sizes.get("depth", sizes.get("mortise"))
        if cut is None:
            continue
        for dimension in whole_set.drawn.views.done.views[detail.view].drawing.dimensions:
            if ":depth 0/" in dimension.id:
                told += 1
                assert dimension.measured == pytest.approx(cut, abs=0.02), (detail.name, joint.id)
    assert told >= 1


@pytest.mark.parametrize("piece", PIECES)
def test_case_20_each_detail_tells_its_joint_in_words(piece):
    _, assembly, whole_set = made(piece)
    for detail in whole_set.drawn.views.details:
        joint = joint_of(assembly, detail)
        if joint is None:
            continue
        said = [m.words for m in whole_set.drawn.views.done.views[detail.view].drawing.marks if isinstance(m, Text)]
        wanted = {
            "mortise-and-tenon": "tenon",
            "v-housing": "V-housing",
            "dovetail": "dovetails",
            "butt": assembly.board(joint.guest).name,
        }.get(joint.kind, joint.kind.replace("-", " "))
        assert any(wanted in words for words in said), (detail.name, said)
        if joint.gap > 0.1:
            assert any("gap" in words for words in said), (detail.name, said)


def test_a_moulding_is_drawn_full_size_with_its_radius():
    _, _, whole_set = made("harbour-master-desk")
    view = whole_set.drawn.views.done.views["detail.d14a"]
    assert view.scale == 1.0
    # An ovolo 4 mm each way with steps of a fifth of that leaves a quarter round of 3.2 mm, to 1/32 in: 1/8.
    assert any(isinstance(m, Text) and "ovolo" in m.words and "R 1/8" in m.words for m in view.drawing.marks)
    arcs = [m for m in view.drawing.marks if isinstance(m, ArcMark) and m.meaning is Meaning.CUT]
    assert any(arc.radius == pytest.approx(4.0 - 4.0 / 5, abs=0.01) for arc in arcs)


@pytest.mark.parametrize("piece", ["harbour-office-desk", "harbour-master-desk"])
def test_view_l_tells_the_lids_length_and_width(piece):
    _, assembly, whole_set = made(piece)
    sizes = [d.measured for d in whole_set.drawn.views.done.views["section.L"].drawing.dimensions]
    # Along the slope the lid is measured from its pin, which lies half the joint gap before its wood.
    long = assembly.slant.lid_length_mm - assembly.slant.hinge_gap_mm / 2
    for wanted in (long, assembly.slant.lid_width_mm):
        assert any(size == pytest.approx(wanted, abs=0.01) for size in sizes), (wanted, sizes)


@pytest.mark.parametrize("style", ["iso", "asme"])
@pytest.mark.parametrize("piece", OTHERS)
def test_no_fault_of_paper_on_drawings_of_other_kinds_of_piece(piece, style):
    whole_set = made(piece, style)[2]
    faults = judge(pdf_of(piece, style), whole_set.sheets)
    drawn = {str(2 + n) for n in range(len(whole_set.drawn.pages))}
    ours = {rule: [f for f in told if number_of(f) in drawn] for rule, told in faults.items()}
    assert not any(ours.values()), report(ours)


def number_of(fault):
    return fault.split(":")[0].removeprefix("sheet ")
