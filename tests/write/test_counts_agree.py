"""Boards, fittings and glued-up panels counted from what leaves the house: balloons, cut list, workbook and facts."""

import io
import json
import re
from collections import Counter

import openpyxl
import pytest

from shopdraw.build import build
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.lists.figures import Figures
from shopdraw.lists.hardware import hardware_table
from shopdraw.measure import millimetres
from shopdraw.piece.reading import read_piece
from shopdraw.shipped import sample_names, sample_path
from shopdraw.write.facts import facts
from shopdraw.write.tables import write_xlsx
from tests.sheet.sample_set import made
from tests.sheet.set_judge import _balloons

FIGURES = Figures(millimetres("0.1"), millimetres("0.1"))
SAMPLES = tuple(name.removesuffix(".piece") for name in sample_names())


def told(name):
    """What a reader of the files gets: facts as JSON, and the rows of the workbook's sheets by their titles."""
    design = read_piece(sample_path(f"{name}.piece")).design
    piece = build(design)
    out = io.BytesIO()
    tables = (cut_list(piece, design), materials(piece, design), hardware_table(piece, FIGURES))
    write_xlsx(tables, out)
    book = openpyxl.load_workbook(out)
    rows = {}
    for sheet in book.worksheets:
        head, *body = sheet.iter_rows(values_only=True)
        rows[sheet.title] = [dict(zip(head, row, strict=True)) for row in body]
    return json.loads(json.dumps(facts(design, piece, ()))), rows, tables


def in_balloons(name):
    found = set()
    for sheet in made(name)[2].sheets.sheets:
        for placed in sheet.placed:
            found |= set(_balloons(placed))
    return found


@pytest.mark.parametrize("name", SAMPLES)
def test_each_board_has_a_balloon_a_place_in_the_cut_list_and_one_in_facts(name):
    said, rows, tables = told(name)
    labels = {board["label"] for board in said["boards"]}
    assert len(labels) == len(said["boards"])
    assert in_balloons(name) == labels
    listed = [label for row in rows["Cut list"] for label in row["label"].split(", ")]
    assert sorted(listed) == sorted(labels)
    assert sum(row["quantity"] for row in rows["Cut list"]) == len(said["boards"])
    assert Counter(row["quantity"] for row in rows["Cut list"]) == Counter(part["quantity"] for part in said["parts"])
    # the printed list and the workbook are the same rows
    assert [row[2] for row in tables[0].rows] == [row["quantity"] for row in rows["Cut list"]]


@pytest.mark.parametrize("name", SAMPLES)
def test_each_fitting_is_bought_listed_and_in_facts_as_often(name):
    said, rows, _ = told(name)
    kinds = Counter()
    for fitting in said["hardware"]:
        kinds[fitting["kind"]] += fitting["quantity"]
    listed = Counter()
    for row in rows["Hardware"]:
        listed[row["fitting"]] += row["quantity"]
    assert listed == kinds
    bought = sum(one["quantity"] for one in said["materials"] if one["kind"] == "hardware")
    assert bought == sum(kinds.values())
    known = {board["id"] for board in said["boards"]}
    assert all(set(fitting["on"]) <= known for fitting in said["hardware"])


@pytest.mark.parametrize("name", SAMPLES)
def test_glued_up_panels_are_of_as_many_boards_in_the_list_as_in_facts(name):
    said, rows, _ = told(name)
    staves = {board["label"]: len(board["staves_mm"]) for board in said["boards"] if board["staves_mm"]}
    noted = {}
    for row in rows["Cut list"]:
        match = re.search(r"glue up from (\d+) boards: ([^;]*)", str(row["note"] or ""))
        if match:
            assert len(match[2].split(", ")) == int(match[1])
            noted |= dict.fromkeys(row["label"].split(", "), int(match[1]))
    assert noted == staves
    for board in said["boards"]:
        if board["staves_mm"]:
            assert sum(board["staves_mm"]) == pytest.approx(board["width_mm"])


def test_a_sample_has_panels_glued_up_from_boards_at_hand():
    assert sum(bool(board["staves_mm"]) for board in told("plan-chest")[0]["boards"]) >= 4
