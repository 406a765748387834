"""Scales."""

from __future__ import annotations

import pytest

from shopdraw.measure import Unit, read_length
from shopdraw.trade import NotInTable, Scale, preferred_scales, scale, scales

# ISO 5455:1979, recommended scales.
ISO_5455 = [
    "50:1",
    "20:1",
    "10:1",
    "5:1",
    "2:1",
    "1:1",
    "1:2",
    "1:5",
    "1:10",
    "1:20",
    "1:50",
    "1:100",
    "1:200",
    "1:500",
]
ISO_5455 += ["1:1000", "1:2000", "1:5000", "1:10000"]

# Drafting chart of text heights by architectural scale: words and factor.
ARCHITECTURAL = {
    "6 in = 1 ft": 2,
    "3 in = 1 ft": 4,
    "1 1/2 in = 1 ft": 8,
    "1 in = 1 ft": 12,
    "3/4 in = 1 ft": 16,
    "1/2 in = 1 ft": 24,
    "3/8 in = 1 ft": 32,
    "1/4 in = 1 ft": 48,
    "3/16 in = 1 ft": 64,
    "1/8 in = 1 ft": 96,
    "3/32 in = 1 ft": 128,
    "1/16 in = 1 ft": 192,
}


def test_metric_scales_are_the_standards() -> None:
    assert [one.name for one in scales(Unit.MM)] == ISO_5455


@pytest.mark.parametrize(("words", "factor"), ARCHITECTURAL.items())
def test_inch_scales_are_named_as_architects_do(words: str, factor: int) -> None:
    one = scale(f"1:{factor}", Unit.INCH)
    assert one.words == words
    assert one.factor == pytest.approx(factor)


@pytest.mark.parametrize("one", scales(Unit.INCH), ids=lambda one: one.name)
def test_words_say_what_the_ratio_says(one: Scale) -> None:
    if "=" in one.words:
        paper, true = (read_length(side, Unit.INCH).mm for side in one.words.split("="))
        assert paper / true == pytest.approx(one.ratio)


@pytest.mark.parametrize("unit", Unit)
def test_scales_go_down_and_their_names_say_the_ratio(unit: Unit) -> None:
    ratios = [one.ratio for one in scales(unit)]
    assert ratios == sorted(ratios, reverse=True)
    for one in scales(unit):
        top, under = one.name.split(":")
        assert one.ratio == pytest.approx(int(top) / int(under))


def test_an_eighth_inch_letter_at_a_quarter_inch_scale() -> None:
    # The same chart: 1/8 in plotted at 1/4 in = 1 ft is 6 in in true size.
    assert 1 / 8 * scale("1:48", Unit.INCH).factor == pytest.approx(6)


def test_preferred_scales() -> None:
    assert [one.name for one in preferred_scales(Unit.MM)] == ["5:1", "2:1", "1:1", "1:2", "1:5", "1:10", "1:20"]
    assert [one.name for one in preferred_scales(Unit.INCH)][2:] == ["1:1", "1:2", "1:4", "1:8", "1:12", "1:16"]


def test_as_printed() -> None:
    assert scale("1:4", Unit.INCH).printed == "1:4 (3 in = 1 ft)"
    assert scale("1:5", Unit.MM).printed == "1:5"


def test_a_scale_of_the_other_series_is_refused() -> None:
    with pytest.raises(NotInTable):
        scale("1:5", Unit.INCH)
