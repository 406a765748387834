"""One view by itself: whole, at its scale, on paper as large as it is."""

from shopdraw.drawing.bounds import drawing_box
from shopdraw.sheet.picture import MARGIN_MM, pictures
from tests.sheet.sample_set import made


def test_every_drawing_of_a_set_can_stand_alone_once():
    sheets = made("chart-room-desk")[2].sheets
    keys = [picture.key for picture in pictures(sheets)]
    assert len(keys) == len(set(keys))
    assert {placed.drawing.id for sheet in sheets.sheets for placed in sheet.placed} == set(keys)


def test_a_view_lies_inside_its_paper_with_its_margin():
    sheets = made("chart-room-desk")[2].sheets
    for picture in pictures(sheets):
        (placed,) = picture.placed
        box = drawing_box(placed.drawing, placed.scale, sheets.style, picture.paper.group)
        x0, y0, x1, y1 = (edge * placed.scale for edge in box)
        assert abs(x0 + placed.at[0] - MARGIN_MM) < 1e-6
        assert abs(y0 + placed.at[1] - MARGIN_MM) < 1e-6
        assert abs(picture.paper.width - (x1 - x0) - 2 * MARGIN_MM) < 1e-6
        assert abs(picture.paper.height - (y1 - y0) - 2 * MARGIN_MM) < 1e-6
