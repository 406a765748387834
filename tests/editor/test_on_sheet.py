"""Hands on the sheet: dimensions to another side and row, planes, one more dimension; each is one undo step."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from pytestqt.qtbot import QtBot

from shopdraw.editor.on_sheet import DimensionGrip, PlaneGrip
from shopdraw.editor.sheet_view import SheetView, SheetWindow
from shopdraw.editor.window import Window
from shopdraw.measure import Unit, read_length
from shopdraw.shape.path import Point
from tests.editor.conftest import Answers
from tests.editor.gestures import move, press, release
from tests.editor.test_canvas import value

PAGE = "general-arrangement"
HEIGHT = "floor/top:upper@front"


@pytest.fixture
def window(window: Window, desk, qtbot: QtBot) -> Window:
    window.show()
    window.open_file(desk)
    window.work.side.setCurrentWidget(window.work.sheets)
    qtbot.waitExposed(window)
    return window


@pytest.fixture
def view(window: Window, qtbot: QtBot) -> SheetView:
    """The arrangement in a window of its own."""
    sets = window.work.sheet_sets
    page = next(number for number, sheet in enumerate(sets[0].sheets) if sheet.key == PAGE)
    window.doing._large(sets[0], page)
    large = window.doing.open_windows[-1]
    assert isinstance(large, SheetWindow)
    qtbot.waitExposed(large)
    large.view.grab()
    return large.view


def dimension(view: SheetView, of: str) -> DimensionGrip:
    return next(one for one in view.on_sheet.dimensions if one.of == of)


def plane(view: SheetView, letter: str) -> PlaneGrip:
    return next(one for one in view.on_sheet.planes if one.letter == letter)


def draw(view: SheetView, start: Point, end: Point, *, let_go: bool = True) -> None:
    """Draws from one point of the page to another one, in steps."""
    a, b = view.place_of(start), view.place_of(end)
    move(view, a, held=False)
    press(view, a)
    for number in range(1, 6):
        move(view, a + (b - a) * (number / 5))
    if let_go:
        release(view, b)


def beside(view: SheetView, of: str, x: float) -> Point:
    """A point of the page level with a dimension's figure, so far beyond the right edge of its view."""
    grip = dimension(view, of)
    return grip.view.box[2] + x, grip.middle[1]


def test_a_dimension_is_drawn_to_the_other_side_of_its_view_and_back_by_undo(window: Window, view: SheetView) -> None:
    before = window.piece.state.text
    assert dimension(view, HEIGHT).side == "left"
    draw(view, dimension(view, HEIGHT).middle, beside(view, HEIGHT, 12.0))
    table = value(window, "move", "floor-top-upper-front")
    assert table == {"of": HEIGHT, "side": "right", "row": 1}
    assert dimension(view, HEIGHT).side == "right", "the window follows: the sheet is drawn again"
    assert window.piece.undo.count() == 1
    window.piece.undo.undo()
    assert window.piece.state.text == before
    assert dimension(view, HEIGHT).side == "left"


def test_a_dimension_is_drawn_further_out_and_in_again(window: Window, view: SheetView) -> None:
    grip = dimension(view, HEIGHT)
    draw(view, grip.middle, (grip.view.box[0] - grip.out - 9.0, grip.middle[1]))
    further = dimension(view, HEIGHT)
    assert further.out == pytest.approx(grip.out + 9.0, abs=0.6)
    assert value(window, "move", "floor-top-upper-front")["row"] == grip.row
    draw(view, further.middle, (further.view.box[0] - grip.out, further.middle[1]))
    assert dimension(view, HEIGHT).out == pytest.approx(grip.out, abs=0.6)
    assert "offset" not in value(window, "move", "floor-top-upper-front")


def test_a_row_that_cannot_be_is_said(window: Window, view: SheetView) -> None:
    said: list[str] = []
    window.work.said.connect(said.append)
    grip = dimension(view, HEIGHT)
    draw(view, grip.middle, (grip.view.box[0] - 3.0, grip.middle[1]))
    assert value(window, "move", "floor-top-upper-front")["row"] == 1
    row = dimension(view, HEIGHT).row
    assert row > 1, "heights within it stand nearer"
    assert any(f"41 1/2 stands in row {row}" in sentence for sentence in said)


def test_escape_gives_a_drag_on_the_sheet_up(window: Window, view: SheetView, qtbot: QtBot) -> None:
    before = window.piece.state.text
    end = beside(view, HEIGHT, 12.0)
    draw(view, dimension(view, HEIGHT).middle, end, let_go=False)
    qtbot.keyClick(view, Qt.Key.Key_Escape)
    release(view, view.place_of(end))
    assert window.piece.state.text == before
    assert not window.piece.undo.count()


def test_a_cutting_plane_is_drawn_along_and_stays_within_the_piece(window: Window, view: SheetView) -> None:
    grip = plane(view, "A")
    end = grip.ends[1]
    draw(view, end, (end[0] + 40.0, end[1]))
    at = plane(view, "A").value
    assert at == pytest.approx(grip.value + 40.0 / grip.scale, abs=6.35 / 2 + 1e-6), "to the piece's step, 1/4 in"
    told = read_length(str(value(window, "plane", "A", "at")), Unit.INCH)
    assert float(told.mm) == pytest.approx(at)
    draw(view, plane(view, "A").ends[1], (end[0] + 900.0, end[1]))
    assert plane(view, "A").value < plane(view, "A").high
    window.piece.undo.undo()
    window.piece.undo.undo()
    assert plane(view, "A").value == pytest.approx(grip.value)


def test_one_more_dimension_is_drawn_from_edge_to_edge(window: Window, view: SheetView) -> None:
    places = {place.name: place for place in view.on_sheet.places if place.view.id == "front"}
    first, other = places["drawer.3.front:lower"], places["drawer.1.front:upper"]
    draw(view, first.at, other.at)
    table = next(iter(value(window, "dimension").values()))
    assert table["of"] == "drawer.3.front:lower/drawer.1.front:upper"
    assert table["view"] == "front"
    added = dimension(view, "drawer.3.front:lower/drawer.1.front:upper@front")
    assert added.side == table["side"]
    view._choose(added)
    view.put_back.emit(added)
    assert not value(window, "dimension")
    assert not [one for one in view.on_sheet.dimensions if one.of == added.of]


def test_a_dimension_goes_to_other_sides_by_keyboard_and_is_put_back(
    window: Window, view: SheetView, qtbot: QtBot
) -> None:
    before = {one.of: (one.side, one.row) for one in view.on_sheet.dimensions}
    view.setFocus()
    while not (isinstance(view.chosen, DimensionGrip) and view.chosen.of == "case:front/case:rear@side"):
        qtbot.keyClick(view, Qt.Key.Key_Tab)
    assert "19 1/2" in view.accessibleDescription()
    assert "Below the view, row 1" in view.accessibleDescription()
    qtbot.keyClick(view, Qt.Key.Key_Up)
    assert dimension(view, "case:front/case:rear@side").side == "above"
    assert "Above the view" in view.accessibleDescription(), "it stays chosen"
    qtbot.keyClick(view, Qt.Key.Key_Delete)
    assert {one.of: (one.side, one.row) for one in view.on_sheet.dimensions} == before


def test_the_wheel_looks_closer_where_the_pointer_is_and_home_shows_all(view: SheetView, qtbot: QtBot) -> None:
    at = QPointF(300, 200)
    point = view.sight.on_canvas((300.0, 200.0))
    view.zoom(2.0, at)
    assert view.sight.on_canvas((300.0, 200.0)) == pytest.approx(point)
    qtbot.keyClick(view, Qt.Key.Key_Home)
    corner = view.place_of((0.0, 0.0))
    assert view.rect().contains(corner.toPoint())


def test_what_a_table_of_ones_own_does_not_find_is_among_the_findings(window: Window, answers: Answers) -> None:
    text = window.piece.state.text + '\n[move.gone]\nof = "floor/attic:upper@front"\n'
    window.piece.set_text(text, "Edit")
    told = [window.work.findings.model.finding(row) for row in range(window.work.findings.model.rowCount())]
    assert any(one is not None and one.code == "points-nowhere" for one in told)
