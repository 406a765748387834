"""What a person reads of a finding is in the piece's own unit and sign; its numbers stay in mm."""

from __future__ import annotations

import math
import re
from dataclasses import replace

import pytest

from shopdraw.build import build
from shopdraw.check.gather import findings
from shopdraw.check.own_figures import in_own_figures, inches_in_words, words_in_own_figures
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.saving import set_value
from shopdraw.shipped import sample_names, sample_path
from shopdraw.wood.finding import Finding, Severity


def found_in(sample: str, **changes: str):
    text = sample_path(sample).read_text(encoding="utf-8")
    for address, value in changes.items():
        text = set_value(text, address.replace("__", "."), value)
    design = parse_piece(text, sample).design
    return design, findings(design, build(design))


@pytest.mark.parametrize(
    ("mm", "words"),
    [
        (6.35, "1/4"),  # 25.4 / 4
        (12.7, "1/2"),
        (785.58, "30 59/64"),  # 30.928 in; 59/64 = 0.9219, 60/64 = 0.9375
        (1.5, "0.059"),  # 1.5 / 25.4
        (0.1, "0.004"),
        (0.0, "0"),
        (-2.54, "-0.100"),
    ],
)
def test_sizes_are_fractions_and_play_is_in_thousandths(mm: float, words: str) -> None:
    assert inches_in_words(mm) == words


def test_an_inch_piece_speaks_inches_throughout() -> None:
    _, found = found_in("harbour-office-desk", case__dado_depth="7/16")
    assert found
    assert [finding.message for finding in found if re.search(r"\d mm\b|mm³", finding.message)] == []
    assert [finding.right for finding in found if finding.right and " mm" in finding.right[1]] == []


def test_a_right_value_in_inches_is_the_size_that_the_rule_worked_out() -> None:
    _, found = found_in("harbour-office-desk", case__dado_depth="7/16")
    finding = next(f for f in found if f.right and f.right[0] == "case.dado_depth")
    # A third of the side's 13/16 in, to the 0.01 mm that the rule gives: 6.88 mm.
    address, value = finding.right
    assert (address, value) == ("case.dado_depth", "0.2709 in")
    assert math.isclose(float(value.split()[0]) * 25.4, 13 / 16 / 3 * 25.4, abs_tol=0.005)
    assert math.isclose(finding.value or 0.0, 7 / 16 * 25.4)
    assert finding.unit == "mm"
    _, mended = found_in("harbour-office-desk", case__dado_depth=value)
    assert finding.code not in [f.code for f in mended]


def test_a_metric_piece_keeps_its_mm() -> None:
    design, found = found_in("chart-room-desk")
    assert any(" mm" in finding.message for finding in found)
    assert in_own_figures(design, found) == found


def test_a_piece_that_prints_commas_is_told_with_commas() -> None:
    _, found = found_in("chart-room-desk", drawing__decimal="comma")
    figures = [word for f in found for word in re.findall(r"(?<![\w.])\d+\.\d+(?= mm|°)", f.message)]
    assert figures == []
    assert any(re.search(r"\d,\d+ mm", f.message) for f in found)


def test_labels_and_ids_keep_their_points() -> None:
    inch, _ = found_in("harbour-office-desk")
    told = Finding("x", Severity.NOTE, (), "7.1a: 800.1 × 457.2 × 19.05 mm, case.height 12.7 mm, M6 mm")
    (worded,) = in_own_figures(inch, [told])
    assert worded.message == "7.1a: 31 1/2 × 18 × 3/4 in, case.height 1/2 in, M6 mm"
    assert replace(worded, message=told.message) == told


@pytest.mark.parametrize("name", sample_names())
def test_a_finding_speaks_of_boards_and_drawers_by_name_and_not_by_id(name: str) -> None:
    text = sample_path(name).read_text(encoding="utf-8")
    design = parse_piece(text, name).design
    assembly = build(design)
    ids = {board.id for board in assembly.boards} | {motion.id for motion in assembly.motions}
    ids |= {joint.id for joint in assembly.joints}
    spoken = {
        finding.message: one
        for finding in findings(design, assembly)
        for one in ids
        if "." in one and re.search(rf"(?<![\w.]){re.escape(one)}(?![\w.])", finding.message)
    }
    assert spoken == {}


def test_two_sizes_of_which_one_is_wanted_are_both_in_inches() -> None:
    design = parse_piece(sample_path("harbour-office-desk").read_text(encoding="utf-8"), "desk").design
    assert words_in_own_figures(design, "expected 254 or 279.4 mm") == "expected 10 or 11 in"
