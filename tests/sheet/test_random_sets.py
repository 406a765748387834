"""A share of the random sets: kinds, styles and papers by number. All of them: tests/benchmarks/random_sets.py."""

from __future__ import annotations

from pathlib import Path

import pytest

from shopdraw.build import CannotBuild, build
from tests.sheet.judge import RULES, report
from tests.sheet.random_set import SIZES, STYLES, VANISHED, measured, random_set_design
from tests.sheet.set_judge import SET_RULES

NUMBERS = (0, 2, 3, 9, 10, 14, 15, 19, 39, 69, 1039)
"""A desk, chests, bookcases, lecterns; wall and bench sets in both styles; some to be read reduced.

Of these 0 has stops that no section has room to label, 10 a ledge that stands out furthest, 15 a case so narrow that
letters of planes were in the way of its depth, 19 tables of all widths, 39 large letters on narrow parts, 69 bent
leaders between a pair of sides, 1039 a name whose leader ran along its own words.
"""


@pytest.mark.parametrize("number", NUMBERS)
def test_no_fault_of_paper_and_no_fact_vanishes(number: int, tmp_path: Path) -> None:
    one = measured(number, tmp_path)
    assert one.outcome == "made", one.words
    faults = {rule: one.faults[rule] for rule in (*RULES, *SET_RULES, VANISHED)}
    assert not any(faults.values()), f"{one.words}\n{report(faults)}"
    assert one.figures["facts"] > 10
    assert 0.0 < one.figures["white space, sum over sheets"] < one.figures["sheets"]


def test_the_numbers_go_over_every_style_and_paper() -> None:
    chosen = set()
    for number in range(60):
        drawing = random_set_design(number)[0].drawing
        chosen.add((drawing.style, drawing.set, drawing.paper, drawing.smallest_print or ""))
    assert chosen == {(style, *size) for style in STYLES for size in SIZES[style]}


def test_a_number_stands_for_one_piece() -> None:
    assert random_set_design(7) == random_set_design(7)
    assert random_set_design(7)[0] != random_set_design(8)[0]


def test_a_piece_that_cannot_be_built_is_told(tmp_path: Path) -> None:
    refused = next(number for number in range(60) if not _builds(number))
    assert measured(refused, tmp_path).outcome == "refused"


def _builds(number: int) -> bool:
    try:
        build(random_set_design(number)[0])
    except CannotBuild:
        return False
    return True
