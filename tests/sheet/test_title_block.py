"""The title block: fields of ISO 7200, words that stay in their cells, a true scale bar, the right symbol."""

from dataclasses import fields as fields_of

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from shopdraw.drawing.mark import ArcMark, Line, Text
from shopdraw.sheet import TitleFields, look_for
from shopdraw.sheet.box import box_of_text
from shopdraw.sheet.title_block import WARNING, block_box, block_height, title_block_marks, title_cells
from shopdraw.trade.drafting import title_block_fields
from shopdraw.trade.paper import paper, papers

A1 = paper("A1")
LOOKS = {group: look_for("iso", group) for group in ("large", "medium", "small")}
WORDS = [f.name for f in fields_of(TitleFields) if f.name not in ("projection", "inch_bar")]
text = st.text(st.sampled_from("abcdefg HIJ éü ½ 12-/.W"), max_size=90)


def marks(fields, size=A1, title="General arrangement", number="2", count=9):
    return title_block_marks(size, fields, title, number, count, LOOKS[size.group])


@settings(max_examples=40)
@given(st.fixed_dictionaries(dict.fromkeys(WORDS, text)), st.sampled_from(["A1", "A3", "A4"]), text)
def test_words_never_leave_their_cell_nor_meet_a_line(words, name, title):
    size = paper(name)
    made = marks(TitleFields(**words, projection="first"), size, title)
    texts = [box_of_text(m) for m in made if isinstance(m, Text)]
    for line in (m for m in made if isinstance(m, Line)):
        half = (line.width or 0.25) / 2
        assert not any(box.grown(half).meets_line(line.start, line.end) for box in texts)
    for i, box in enumerate(texts):
        assert not any(box.meets_box(other) for other in texts[i + 1 :])


@pytest.mark.parametrize("size", papers(), ids=lambda size: size.name)
def test_the_block_is_180_wide_at_the_lower_right_of_the_frame(size):
    x0, y0, x1, y1 = block_box(size, LOOKS[size.group])
    assert x1 - x0 == 180.0
    assert (x1, y0) == (size.frame[2], size.frame[1])
    assert y1 < size.frame[3]
    assert x0 >= size.frame[0] - 1e-9


def test_every_mandatory_field_of_iso_7200_has_a_cell():
    names = {cell.name.lower() for cell in title_cells(TitleFields(), "", "1", 1, LOOKS["large"])}
    wanted = {
        "legal owner": "legal owner",
        "identification number": "number",
        "date of issue": "date of issue",
        "sheet number": "sheet",
        "title": "title",
        "approval person": "approved by",
        "creator": "created by",
        "document type": "document type",
    }
    mandatory = {field.name for field in title_block_fields() if field.mandatory}
    assert mandatory == set(wanted)
    assert set(wanted.values()) <= names


def test_a_field_that_the_piece_says_nothing_about_stays_empty():
    cells = title_cells(TitleFields(), "Cover", "1", 4, LOOKS["large"])
    said = {cell.name: cell.words for cell in cells if cell.words}
    assert said == {"Units and rounding": "Sizes in mm", "Note": WARNING, "Title": "Cover", "Sheet": "1 of 4"}


def test_cells_fill_the_block_without_overlap():
    look = LOOKS["large"]
    cells = title_cells(TitleFields(), "", "1", 1, look)
    assert sum(cell.width * cell.height for cell in cells) == pytest.approx(180.0 * block_height(look))
    assert all(c.x >= 0 and c.x + c.width <= 180.0 and c.y + c.height <= block_height(look) + 1e-9 for c in cells)


@pytest.mark.parametrize(("inch", "length"), [(False, 100.0), (True, 101.6)])
def test_the_scale_bar_is_true(inch, length):
    lines = [m for m in marks(TitleFields(inch_bar=inch)) if isinstance(m, Line)]
    assert any(abs(m.end[0] - m.start[0] - length) < 1e-9 and m.start[1] == m.end[1] for m in lines)


@pytest.mark.parametrize(("projection", "circles_left"), [("first", False), ("third", True)])
def test_the_symbol_has_its_circles_on_the_side_of_the_projection(projection, circles_left):
    """ISO 5456-2: frustum with its small end to the left; first angle has the circles on the right of it."""
    made = marks(TitleFields(projection=projection))
    circle = next(m for m in made if isinstance(m, ArcMark))
    slanted = [m for m in made if isinstance(m, Line) and m.start[0] != m.end[0] and m.start[1] != m.end[1]]
    assert len(slanted) == 2
    middle = sum(p[0] for m in slanted for p in (m.start, m.end)) / 4
    assert (circle.centre[0] < middle) == circles_left
    upper = max(slanted, key=lambda m: max(m.start[1], m.end[1]))
    left, right = sorted((upper.start, upper.end))
    assert abs(left[1] - circle.centre[1]) < abs(right[1] - circle.centre[1])


def test_a_sheet_without_views_has_no_symbol():
    assert not [m for m in marks(TitleFields()) if isinstance(m, ArcMark)]
