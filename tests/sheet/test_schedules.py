"""Schedules of the sample desks: on their sheets, in the drawing's own strings, each with its cautions."""

import re

import pytest

from shopdraw.drawing.mark import Text
from shopdraw.sheet.cut_note import cut_notes
from shopdraw.sheet.cut_size import cut_sizes
from shopdraw.sheet.schedules import given_by_sheet
from shopdraw.trade.cautions import cautions_for
from tests.sheet.sample_set import DESKS, made

TITLES = {
    "cover": "cover", "general-arrangement": "arrangement, sections, details",
    "sections": "arrangement, sections, details", "details": "arrangement, sections, details", "parts": "parts",
    "settings": "machine settings", "assembly": "order of assembly",
}  # fmt: skip


def words(sheet):
    return [mark.words for mark in sheet.marks if isinstance(mark, Text)]


def sheets(whole_set, key):
    return [sheet for sheet in whole_set.sheets.sheets if re.sub(r"-\d+$", "", sheet.key) == key]


@pytest.mark.parametrize("desk", DESKS)
def test_each_caution_stands_on_each_sheet_that_calls_for_it(desk):
    _, assembly, whole_set = made(desk)
    given = given_by_sheet(assembly)
    for key, title in TITLES.items():
        if key == "cover":
            continue
        for sheet in sheets(whole_set, key):
            said = " ".join(words(sheet))
            for caution in cautions_for(given[title]):
                assert caution.words in said, (sheet.key, caution.key)


@pytest.mark.parametrize("desk", DESKS)
def test_tilts_of_the_settings_are_the_part_sheets_own_strings(desk):
    _design, assembly, whole_set = made(desk)
    writing = whole_set.drawn.manner.writing
    told = {word for sheet in sheets(whole_set, "settings") for word in words(sheet)}
    for board in assembly.boards:
        for note in cut_notes(board, cut_sizes(board, assembly, writing)):
            for tilt in re.findall(r"tilt saw (\S+°) from square", note.words):
                assert tilt in told, (board.label, note.words)


@pytest.mark.parametrize("desk", DESKS)
def test_the_exploded_picture_labels_boards_that_are_in_the_cut_list(desk):
    _, assembly, whole_set = made(desk)
    (sheet,) = sheets(whole_set, "exploded")
    (placed,) = sheet.placed
    known = {board.label for board in assembly.boards}
    labels = [mark.words for mark in placed.drawing.marks if isinstance(mark, Text) and mark.words in known]
    assert len(labels) == len(set(labels))
    assert len(labels) > len(known) / 3
    assert "not to scale" in " ".join(m.words for m in placed.drawing.marks if isinstance(m, Text))
