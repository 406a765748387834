"""A set after a change: the changed boards in a table, their sheets marked, and no fault of paper by it."""

import pytest

from shopdraw.build import build
from shopdraw.check.revision import frozen_boards
from shopdraw.drawing.mark import Text
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.piece.design import RevisionTable
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.revision_mark import SIGN, revised, revision_table
from shopdraw.sheet.set import sheet_set
from shopdraw.write.pdf import write_pdf
from tests.sheet.judge import judge, report
from tests.sheet.sample_set import SAMPLES


@pytest.fixture(scope="module")
def changed():
    before = read_piece(SAMPLES / "chart-room-desk.piece").design
    table = RevisionTable(boards=tuple(b.line for b in frozen_boards(build(before))), cut=("3",))
    case = before.case.model_copy(update={"width": before.case.width + 10.0})
    design = before.model_copy(update={"case": case, "revision": {"A": table}})
    assembly = build(design)
    whole = sheet_set(design, assembly, (), cut_list(assembly, design), (materials(assembly, design),))
    return design, assembly, whole


def words(sheet):
    return [mark.words for mark in sheet.marks if isinstance(mark, Text)]


def test_sheets_that_show_a_changed_board_are_marked_and_named_on_the_cover(changed):
    _, _, whole = changed
    cover, *rest = whole.sheets.sheets
    marked = [sheet for sheet in rest if any(said.startswith(f"{SIGN}A ") for said in words(sheet))]
    assert marked
    for sheet in marked:
        assert any(
            sheet.title in said and said.endswith(f"{SIGN}A") for said in [" ".join(words(cover)), *words(cover)]
        )


def test_no_fault_of_paper_comes_of_the_marks(changed, tmp_path):
    whole = changed[2]
    write_pdf(whole.sheets, tmp_path / "set.pdf")
    faults = judge(tmp_path / "set.pdf", whole.sheets)
    assert not any(faults.values()), report(faults)


def test_the_table_names_each_changed_board_and_those_cut_already(changed):
    design, assembly, _ = changed
    (table,) = revision_table(revised(design, assembly))
    cut = [row[0] for row in table.rows if row[2]]
    assert cut == ["3"]
    assert {"2", "3", "4", "5"} <= {row[0] for row in table.rows}
    assert "1L" not in {row[0] for row in table.rows}


def test_a_part_sheet_names_only_boards_that_stand_on_it(changed):
    _, assembly, whole = changed
    labels = {board.label for board in assembly.boards}
    for sheet in whole.sheets.sheets:
        if sheet.key.startswith("parts"):
            on_it = {p.drawing.id.split(".face")[0].removeprefix("part.") for p in sheet.placed}
            for said in words(sheet):
                if said.startswith(f"{SIGN}A "):
                    named = set(said.removeprefix(f"{SIGN}A ").split(" and ")[0].split(", "))
                    assert named <= labels
                    assert named & on_it or not on_it


def test_a_piece_without_a_revision_has_no_marks():
    design = read_piece(SAMPLES / "chart-room-desk.piece").design
    revision = revised(design, build(design))
    assert revision_table(revision) == ()
    assert revision.changes == ()
