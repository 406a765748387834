"""A person's notes are printed with what they are on: in the lists and on the sheets."""

import csv
import subprocess

from shopdraw.build import build
from shopdraw.cli.command import main
from shopdraw.lists.notes import notes_of
from shopdraw.piece.reading import parse_piece
from tests.check.desks import checked, design, of_code

FEET = {"feet": {"on": "base.height", "text": "84 as measured at the left, 90 at the right: worn; built to 90"}}


def test_a_note_stands_with_the_label_and_name_of_its_board_or_with_its_id():
    piece = design(note={**FEET, "wax": {"on": "lid", "text": "waxed"}})
    (table,) = notes_of(piece, build(piece))
    assert table.rows == (
        ("base.height", "84 as measured at the left, 90 at the right: worn; built to 90"),
        ("8 lid", "waxed"),
    )
    assert notes_of(design(), build(design())) == ()


def test_a_note_may_be_on_an_input_and_on_a_table_and_on_nothing_that_isnt_there():
    on = ("base.height", "base", "case.width", "lid", "base.hight", "bases")
    piece = design(note={str(n): {"on": one, "text": "so"} for n, one in enumerate(on)})
    found = [one.where[0] for one in of_code(checked(piece), "points-nowhere")]
    assert found == ["note.4", "note.5"]


def test_case_47_worn_feet_keep_both_measures_and_the_note_is_printed(tmp_path):
    text = (
        'format = 1\n[piece]\nkind = "free"\ntitle = "Case"\n[case]\nwidth = 600\nheight = 500\ndepth = 300\n'
        '[base]\nheight = 90\n[note.feet]\non = "base.height"\n'
        'text = "feet 84 and 90 as measured, worn: built to 90"\n'
    )
    file = tmp_path / "case.piece"
    file.write_text(text, encoding="utf-8")
    assert parse_piece(text).design.base.height == 90.0
    assert main(["export", str(file), str(tmp_path / "out"), "--only", "lists", "sheets"]) == 0
    with (tmp_path / "out" / "lists" / "notes.csv").open(encoding="utf-8-sig", newline="") as read:
        rows = list(csv.reader(read))
    assert any("feet 84 and 90 as measured, worn: built to 90" in row for row in rows)
    (sheets,) = (tmp_path / "out" / "sheets").glob("*.pdf")
    words = subprocess.run(["pdftotext", str(sheets), "-"], capture_output=True, text=True, check=True).stdout
    assert "feet 84 and 90 as measured, worn: built to 90" in " ".join(words.split())
