"""Tables on sheets: widths from their words, wrapped cells, pages that go on, no words over a line."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from shopdraw.drawing.mark import Line, Text
from shopdraw.lists.table import Column, Table
from shopdraw.sheet import TitleFields, count_table_sheets, free_area, look_for, table_sheets
from shopdraw.sheet.box import box_of_text
from shopdraw.sheet.table_page import LEAST_COLUMN, cell_words, column_widths, table_pages
from shopdraw.trade.paper import paper

A3 = paper("A3")
LOOK = look_for("iso", A3.group)
AREA = free_area(A3, LOOK)
COLUMNS = (Column("label"), Column("name"), Column("quantity", "", 0), Column("length", "mm"), Column("note"))
cell = st.one_of(
    st.none(), st.text(st.sampled_from("abcdef ghij-½W"), max_size=70), st.integers(0, 999), st.floats(0, 3000)
)


def table(rows, title="Cut list"):
    return Table(title, COLUMNS, tuple(rows))


def row(i, note=""):
    return (f"{i}L", "side, left", 1, 1020.5 + i, note)


@settings(max_examples=30)
@given(st.lists(st.tuples(cell, cell, cell, cell, cell), max_size=40))
def test_words_stay_off_lines_and_off_each_other(rows):
    for page in table_pages([table(rows)], AREA, LOOK):
        texts = [box_of_text(m) for m in page if isinstance(m, Text)]
        for line in (m for m in page if isinstance(m, Line)):
            assert not any(box.grown((line.width or 0) / 2).meets_line(line.start, line.end) for box in texts)
        for i, box in enumerate(texts):
            assert not any(box.meets_box(other) for other in texts[i + 1 :])


def test_nothing_stands_outside_the_free_area_or_over_the_title_block():
    rows = [row(i, "finished sizes before sanding; " * (i % 9)) for i in range(120)]
    for page in table_pages([table(rows), table(rows[:7], "Materials")], AREA, LOOK):
        for mark in page:
            if isinstance(mark, Text):
                assert AREA.holds(box_of_text(mark).bounds())
            else:
                (ax, ay), (bx, by) = mark.start, mark.end
                assert AREA.holds((min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)))


def test_a_table_that_goes_on_has_its_title_and_its_head_again():
    pages = table_pages(
        [table([row(i, "finished sizes before sanding, edges broken by hand") for i in range(120)])], AREA, LOOK
    )
    assert len(pages) > 1
    for number, page in enumerate(pages):
        said = [m.words for m in page if isinstance(m, Text)]
        assert said[0] == ("Cut list" if number == 0 else "Cut list (continued)")
        assert said.count("length (mm)") == said.count("Cut list") + said.count("Cut list (continued)")


def test_a_narrow_table_goes_on_in_a_column_beside_itself():
    (page,) = table_pages([table([row(i) for i in range(90)])], AREA, LOOK)
    titles = [m for m in page if isinstance(m, Text) and m.words.startswith("Cut list")]
    assert [m.words for m in titles[:2]] == ["Cut list", "Cut list (continued)"]
    assert [m.at[0] for m in titles] == sorted({m.at[0] for m in titles})
    assert len({m.at[1] for m in titles}) == 1


def test_a_title_wider_than_its_table_keeps_to_it():
    (page,) = table_pages([table([row(1)], "A title that is a good deal wider than its table " * 2)], AREA, LOOK)
    title = next(m for m in page if isinstance(m, Text))
    width = sum(column_widths(table([row(1)]), 400.0, LOOK))
    assert box_of_text(title).bounds()[2] <= AREA.box[0] + width + 1e-6


def test_every_row_stands_once_on_some_page():
    pages = table_pages([table([row(i) for i in range(120)])], AREA, LOOK)
    said = [m.words for page in pages for m in page if isinstance(m, Text)]
    assert all(said.count(f"{i}L") == 1 for i in range(120))


def test_columns_are_as_wide_as_their_words_and_no_narrower_than_their_least():
    widths = column_widths(table([row(1)]), 400.0, LOOK)
    assert min(widths) >= LEAST_COLUMN
    assert sum(widths) < 400.0


def test_heads_are_wrapped_first_then_the_widest_columns_give_way():
    wide = column_widths(table([row(1, "finished sizes before sanding; " * 20)]), 250.0, LOOK)
    plain = column_widths(table([row(1)]), 250.0, LOOK)
    assert sum(wide) <= 250.0 + 1e-6
    assert wide[:3] == pytest.approx(plain[:3])
    # "length (mm)" stands in two lines, its figures in one
    assert wide[3] == LEAST_COLUMN < plain[3]


def test_heads_alone_are_wrapped_where_that_is_enough():
    heads = tuple(Column(f"rough length between the shoulders of {name}", "mm") for name in "abcdef")
    (page,) = table_pages([Table("Cut list", heads, ((1020.5,) * 6, (17.0,) * 6))], AREA, LOOK)
    said = [m.words for m in page if isinstance(m, Text)]
    assert said.count("1020.5") == said.count("17.0") == 6
    assert not any("shoulders" in words and words.endswith("(mm)") for words in said)


def joints(rows):
    return Table("Joints", COLUMNS[:3], tuple(row(i)[:3] for i in range(rows)))


def test_a_table_without_room_below_stands_beside_the_others_on_the_same_sheet():
    def said(page):
        return [m.words for m in page if isinstance(m, Text)]

    rows = next(n for n in range(1, 99) if "Joints (continued)" in said(table_pages([joints(n)], AREA, LOOK)[0])) - 3
    long = joints(rows)
    words = "unplug the saw to set it, keep the fence on the side away from the tilt, cut a test piece first"
    cautions = Table("Cautions", (Column("hazard"), Column("caution")), (("tilted blade", words),) * 4)
    last = Table("Bores", COLUMNS[:3], (row(1)[:3],))
    for tables in ([long, cautions], [long, cautions, last], [long, cautions, cautions]):
        (page,) = table_pages(tables, AREA, LOOK)
        titles = {m.words: m.at for m in page if isinstance(m, Text) and m.words in ("Joints", "Cautions", "Bores")}
        assert titles["Cautions"][0] > titles["Joints"][0]
        assert not any("continued" in words for words in said(page))
        texts = [box_of_text(m) for m in page if isinstance(m, Text)]
        assert not any(box.meets_box(other) for i, box in enumerate(texts) for other in texts[i + 1 :])
        assert all(AREA.holds(box.bounds()) for box in texts)


def test_a_table_that_would_end_over_the_title_block_is_made_narrower_where_it_then_stands_on_one_sheet():
    large = paper("A1")
    look = look_for("iso", large.group)
    area = free_area(large, look)
    note = "finished sizes before sanding, edges broken by hand; " * 6

    def lowest(rows):
        pages = table_pages([table([row(i, note if i == 0 else "") for i in range(rows)])], area, look)
        return len(pages), min(m.at[1] for m in pages[0] if isinstance(m, Text))

    assert sum(column_widths(table([row(1, note)]), 2000.0, look)) > area.block[0] - area.box[0]
    over = [rows for rows in range(60, 130) if lowest(rows)[0] == 1 and lowest(rows)[1] < area.block[3]]
    assert over == list(range(over[0], over[-1] + 1))
    assert len(over) > 5
    assert lowest(over[-1])[1] < area.box[1] + 2 * look.balloon


def test_numbers_have_their_columns_decimals_and_the_sheets_sign():
    assert cell_words(1020.46, COLUMNS[3], ",") == "1020,5"
    assert cell_words(3, COLUMNS[2]) == "3"
    assert cell_words("31 1/2", COLUMNS[3], ",") == "31 1/2"
    assert cell_words(None, COLUMNS[0]) == ""


def test_sheets_are_numbered_on_from_the_first():
    tables = [table([row(i) for i in range(120)])]
    count = count_table_sheets(tables, A3, LOOK)
    sheets = table_sheets("cut-list", "Cut list", tables, A3, TitleFields(), LOOK, 4, 9)
    assert len(sheets) == count
    assert [sheet.number for sheet in sheets] == [str(4 + i) for i in range(count)]
    assert len({sheet.key for sheet in sheets}) == count
    assert all(any(isinstance(m, Text) and m.words == f"{s.number} of 9" for m in s.marks) for s in sheets)


@pytest.mark.parametrize("rows", [40, 60, 80])
def test_a_wide_table_after_a_narrow_one_that_went_on_beside_itself_keeps_to_the_paper(rows):
    """The narrow one ends in a second column, where no wide one has room."""
    narrow = Table("Joints", COLUMNS[:3], tuple(row(i)[:3] for i in range(rows)))
    wide = table([row(i, "finished sizes before sanding, edges broken by hand " * 3) for i in range(3)])
    for page in table_pages([narrow, wide], AREA, LOOK):
        for mark in page:
            if isinstance(mark, Text):
                assert AREA.holds(box_of_text(mark).bounds()), mark.words
