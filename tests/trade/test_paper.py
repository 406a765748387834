"""Paper: sizes, frames and zones."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from shopdraw.trade import NotInTable, PaperSize, paper, papers, papers_of

# ISO 216 trimmed sizes; frames and zone counts of ISO 5457:1999 as quoted in teaching (20 mm left, 10 mm elsewhere).
ISO = {
    "A0": ((1189, 841), (1159, 821), (24, 16)),
    "A1": ((841, 594), (811, 574), (16, 12)),
    "A2": ((594, 420), (564, 400), (12, 8)),
    "A3": ((420, 297), (390, 277), None),
    "A4": ((210, 297), (180, 277), None),
}


@pytest.mark.parametrize(("name", "figures"), ISO.items())
def test_iso_sheets(name: str, figures: tuple[tuple[int, int], tuple[int, int], tuple[int, int] | None]) -> None:
    size, frame, zones = figures
    sheet = paper(name)
    x0, y0, x1, y1 = sheet.frame
    assert (sheet.width_mm, sheet.height_mm) == size
    assert (x1 - x0, y1 - y0) == frame
    assert (x0, y0) == (20, 10)
    if zones:
        assert (sheet.columns, sheet.rows) == zones


# ASME Y14.1 in inches; a drafting guide for ARCH D and E1.
@pytest.mark.parametrize(
    ("name", "inches"),
    [
        ("ANSI A", (8.5, 11)), ("ANSI B", (17, 11)), ("ANSI C", (22, 17)), ("ANSI D", (34, 22)), ("ANSI E", (44, 34)),
        ("ANSI F", (40, 28)), ("ARCH D", (36, 24)), ("ARCH E1", (42, 30)), ("Letter", (8.5, 11)), ("Tabloid", (17, 11)),
    ],
)  # fmt: skip
def test_inch_sheets(name: str, inches: tuple[float, float]) -> None:
    sheet = paper(name)
    assert (sheet.width_mm, sheet.height_mm) == pytest.approx([inch * 25.4 for inch in inches])


def test_a0_is_a_square_metre_and_each_size_half_the_one_before() -> None:
    # ISO 216: A0 is 1 m² with sides as 1 : sqrt 2, each next size half of it, rounded down to whole mm.
    long, short = 1189, 841
    assert long / short == pytest.approx(math.sqrt(2), abs=0.001)
    for name in ("A0", "A1", "A2", "A3", "A4"):
        sheet = paper(name)
        assert sorted((sheet.width_mm, sheet.height_mm)) == [short, long]
        long, short = short, long // 2


@pytest.mark.parametrize("sheet", papers(), ids=lambda sheet: sheet.name)
def test_frames_and_zones_lie_on_the_paper(sheet: PaperSize) -> None:
    x0, y0, x1, y1 = sheet.frame
    assert 0 < x0 < x1 < sheet.width_mm
    assert 0 < y0 < y1 < sheet.height_mm
    assert list(sheet.column_lines) == sorted(sheet.column_lines)
    assert list(sheet.row_lines) == sorted(sheet.row_lines)
    assert (len(sheet.column_lines), len(sheet.row_lines)) == (sheet.columns + 1, sheet.rows + 1)
    # ISO 5457:1980: an even number of fields, 25 to 75 mm long; the outermost reach to the paper's edge.
    for inner, length in ((sheet.column_lines[1:-1], sheet.width_mm), (sheet.row_lines[1:-1], sheet.height_mm)):
        assert len(inner) % 2 == 1
        assert all(25 <= b - a <= 75 for a, b in pairwise((0.0, *inner, length)))
    assert sheet.group in ("large", "medium", "small")


def test_iso_fields_are_fifty_millimetres_from_the_centre() -> None:
    # ISO 5457:1999 as quoted: fields of 50 mm counted from the centre axes, the corner field takes the rest.
    lines = paper("A1").column_lines
    assert 420.5 in lines
    assert all(b - a == 50 for a, b in pairwise(lines[1:-1]))


def test_zones_are_named_from_the_upper_left_without_i_and_o() -> None:
    # ISO 5457:1999 as quoted: letters I and O are skipped.
    sheet = paper("A0")
    assert sheet.zone_at(21, 830) == "A1"
    assert sheet.zone_at(1178, 11) == "R24"
    assert not {"I", "O"} & set(sheet.row_names)
    assert sheet.zone_at(-5, 9999) == "A1"


def test_papers_go_up_in_size() -> None:
    assert [sheet.name for sheet in papers_of("iso")] == ["A4", "A3", "A2", "A1", "A0"]
    assert papers_of("asme")[0].name == "ANSI A"


@pytest.mark.parametrize("name", ["a1", "A 1", "ansi d", "ARCHD"])
def test_names_are_found_however_they_are_spaced(name: str) -> None:
    assert paper(name).name in ("A1", "ANSI D", "ARCH D")


def test_unknown_paper_names_the_nearest() -> None:
    with pytest.raises(NotInTable, match="ARCH D"):
        paper("ARCH G")
