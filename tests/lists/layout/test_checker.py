"""The judge of layouts: it passes a sound layout and finds each planted fault."""

from collections.abc import Callable
from dataclasses import replace

import pytest

from shopdraw.lists.layout.answer import CutUp, Laid, Layout, SawCut
from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.job import Piece, SheetJob, Wanted

SHEET = Piece("sheet", 1000, 600, 1, count=1)
JOB = SheetJob(
    (Wanted("a", 400, 300, strip="row"), Wanted("b", 400, 300, strip="row"), Wanted("c", 200, 590, free=True)),
    (SHEET,), 4, 5,
)  # fmt: skip
# Written by hand: trimmed 5 all round, c beside a above b.
CUTS = (
    SawCut("crosscut", 1, 0, 600), SawCut("crosscut", 995, 0, 600),
    SawCut("rip", 1, 5, 995), SawCut("rip", 595, 5, 995),
    SawCut("crosscut", 405, 5, 595), SawCut("crosscut", 609, 5, 595), SawCut("rip", 290, 5, 405),
)  # fmt: skip
SMALL = replace(
    JOB,
    parts=(Wanted("a", 400, 285, strip="row"), Wanted("b", 400, 301, strip="row"), Wanted("c", 590, 200, free=True)),
)
LAID = (Laid("a", 5, 5, 400, 285), Laid("b", 5, 294, 400, 301), Laid("c", 409, 5, 200, 590, turned=True))
SOUND = Layout(SMALL, (CutUp(SHEET, LAID, CUTS, ()),), 1, "by hand")


def with_laid(*laid: Laid, cuts: tuple[SawCut, ...] = CUTS) -> Layout:
    return replace(SOUND, cut_up=(CutUp(SHEET, laid, cuts, ()),))


def test_a_sound_layout_passes() -> None:
    assert faults_of_layout(SOUND) == ()


A, B, C = LAID
PLANTED: dict[str, tuple[Callable[[], Layout], str]] = {
    "a part left out": (lambda: with_laid(A, B), '"c" is there 0 times'),
    "a part twice": (lambda: with_laid(A, B, C, replace(C, x=620)), '"c" is there 2 times'),
    "a part of nobody": (lambda: with_laid(*LAID, Laid("d", 700, 5, 10, 10)), "not in the job"),
    "too small": (lambda: with_laid(A, B, replace(C, width=589)), "it must be"),
    "outside": (lambda: with_laid(A, B, replace(C, x=800)), "reaches out of the clear part"),
    "overlap": (lambda: with_laid(A, replace(B, y=200), C), "overlap by"),
    "kerf left out": (lambda: with_laid(A, replace(B, y=291), C), "the kerf of 4 must lie between"),
    "turned though not free": (
        lambda: replace(SOUND, job=replace(SMALL, parts=(*SMALL.parts[:2], Wanted("c", 590, 200)))),
        "isn't free to",
    ),
    "no cut between": (lambda: with_laid(*LAID, cuts=CUTS[:-1]), "isn't a piece of its own"),
    "a cut that stops half way": (
        lambda: with_laid(*LAID, cuts=(*CUTS[:4], SawCut("rip", 290, 5, 405), *CUTS[4:6])),
        "doesn't run from edge to edge",
    ),
    "a cut through a part": (lambda: with_laid(*LAID, cuts=(*CUTS, SawCut("rip", 100, 5, 405))), "of its own"),
    "strip out of order": (
        lambda: replace(SOUND, job=replace(SMALL, parts=(SMALL.parts[1], SMALL.parts[0], SMALL.parts[2]))),
        "doesn't lie behind",
    ),
    "more sheets than there are": (
        lambda: replace(SOUND, cut_up=(*SOUND.cut_up, CutUp(SHEET, (), (), ()))), "there are 1"
    ),
    "a sheet of nobody": (
        lambda: replace(SOUND, cut_up=(replace(SOUND.cut_up[0], piece=replace(SHEET, length=1001)),)),
        "not in the job",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", PLANTED)
def test_a_planted_fault_is_found(name: str) -> None:
    make, words = PLANTED[name]
    assert any(words in fault for fault in faults_of_layout(make())), faults_of_layout(make())


def test_case_59_the_pinwheel_itself_is_refused() -> None:
    """Four of 720 × 480 about a square: they don't overlap, a kerf lies between, and no first cut runs through."""
    square = Piece("square", 1220, 1220, 1)
    job = SheetJob(tuple(Wanted(f"p{i}", 720, 480, free=True) for i in range(4)), (square,), 3.2)
    wheel = (
        Laid("p0", 0, 0, 720, 480), Laid("p1", 740, 0, 480, 720, turned=True),
        Laid("p2", 500, 740, 720, 480), Laid("p3", 0, 500, 480, 720, turned=True),
    )  # fmt: skip
    for cut in (SawCut("rip", 480, 0, 720), SawCut("crosscut", 720, 0, 1220), SawCut("rip", 480, 0, 1220)):
        layout = Layout(job, (CutUp(square, wheel, (cut,), ()),), 1, "by hand")
        assert faults_of_layout(layout)
