"""Drags through real mouse events change the piece file's text, the figures, and nothing else."""

from __future__ import annotations

import re
import tomllib
from itertools import combinations

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPixmap, QWheelEvent
from PySide6.QtWidgets import QApplication

from shopdraw.editor.canvas_paint import label_place, paint_label
from shopdraw.editor.look import LIGHT
from shopdraw.editor.state import Setting
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_path
from tests.editor.gestures import click, drag, move, press, release


def value(window: Window, *keys: str) -> object:
    found: object = tomllib.loads(window.piece.state.text)
    for key in keys:
        assert isinstance(found, dict)
        found = found.get(key)
    return found


# The desk is built in inches: 36 wide, 41 1/2 high, 19 1/2 deep, writing 29 1/2, top 9 1/4; a drag holds to 1/4 in.
@pytest.mark.parametrize(
    ("handle", "by_mm", "keys", "typed"),
    [
        ("case.width@front", (25.4, 0), ("case", "width"), "37"),
        ("case.width@plan", (-50.8, 0), ("case", "width"), "34"),
        ("case.height@front", (0, 25.4), ("case", "height"), "42 1/2"),
        ("case.height@side", (0, -12.7), ("case", "height"), "41"),
        ("case.depth@side", (12.7, 0), ("case", "depth"), "20"),
        ("case.depth@plan", (0, 25.4), ("case", "depth"), "20 1/2"),
        ("slant.top_depth@side", (25.4, 0), ("slant", "top_depth"), "8 1/4"),
        ("slant.writing_height@side", (0, 12.7), ("slant", "writing_height"), "30"),
        ("slant.writing_height@front", (0, -12.7), ("slant", "writing_height"), "29"),
    ],
)
def test_a_drag_sets_its_input(open_desk: Window, handle: str, by_mm, keys, typed: str) -> None:
    drag(open_desk.canvas, handle, by_mm)
    assert value(open_desk, *keys) == typed
    assert open_desk.piece.undo.count() == 1


def test_a_drag_shows_its_size_while_it_goes_on(open_desk: Window) -> None:
    canvas = open_desk.canvas
    drag(canvas, "case.width@front", (25.4, 0), let_go=False)
    assert canvas.label[0][0] == "Width  37 in"
    assert next(f for f in canvas.scene.figures if f.name == "Width").value == pytest.approx(37 * 25.4)
    assert value(open_desk, "case", "width") == "36"


def test_shift_drags_fine(open_desk: Window) -> None:
    drag(open_desk.canvas, "case.width@front", (3.2, 0), keys=Qt.KeyboardModifier.ShiftModifier)
    assert value(open_desk, "case", "width") == "36 1/8"


def test_escape_gives_up_a_drag(open_desk: Window, qtbot) -> None:
    before = open_desk.piece.state.text
    drag(open_desk.canvas, "case.width@front", (60, 0), let_go=False)
    qtbot.keyClick(open_desk.canvas, Qt.Key.Key_Escape)
    assert open_desk.piece.state.text == before
    assert open_desk.piece.undo.count() == 0
    assert open_desk.canvas.scene.shown is not None
    assert next(f for f in open_desk.canvas.scene.figures if f.name == "Width").value == pytest.approx(36 * 25.4)


def test_dragging_a_division_that_a_rule_made_gives_the_sizes_and_says_so(open_desk: Window, qtbot) -> None:
    with qtbot.waitSignal(open_desk.work.hand.said) as said:
        drag(open_desk.canvas, "opening.bank.divide/1@front", (0, -12.7))
    divide = value(open_desk, "opening", "bank", "divide")
    assert isinstance(divide, dict)
    assert divide["rule"] == "given"
    assert "step" not in divide
    assert divide["sizes"][0] == "4 3/4"
    assert "given" in said.args[0]


def test_a_drag_stops_where_the_piece_cannot_be_built_and_says_why(open_desk: Window) -> None:
    drag(open_desk.canvas, "slant.top_depth@side", (-900, 0), let_go=False)
    assert any("Stops here" in words for words, _ in open_desk.canvas.label)
    assert open_desk.canvas.scene.figures


def test_arrow_keys_move_the_chosen_handle(open_desk: Window, qtbot) -> None:
    canvas = open_desk.canvas
    canvas.setFocus()
    qtbot.keyClick(canvas, Qt.Key.Key_Tab)
    assert canvas.chosen_handle == "case.width@front"
    qtbot.keyClick(canvas, Qt.Key.Key_Right)
    assert value(open_desk, "case", "width") == "36 1/4"
    assert "36 1/4" in canvas.accessibleDescription()


@pytest.mark.parametrize(
    ("name", "typed", "keys", "kept"),
    [
        ("Width", "35 3/8", ("case", "width"), "35 3/8"),
        ("Depth", "1/2 of width", ("case", "depth"), "18"),
        ("Height", "40 + 1 1/2", ("case", "height"), "40 + 1 1/2"),
        ("Top depth", "9.5", ("slant", "top_depth"), 9.5),
        ("Writing height", "750 mm", ("slant", "writing_height"), "750 mm"),
        ("Slant from level", "50", ("slant", "angle"), 50),
    ],
)
def test_typing_into_a_dimension_sets_it(open_desk: Window, qtbot, name: str, typed: str, keys, kept) -> None:
    canvas = open_desk.canvas
    figure = next(f for f in canvas.scene.figures if f.name == name)
    click(canvas, canvas.figure_place(figure.id).center())
    assert open_desk.work.entry.isVisible()
    open_desk.work.entry.line.selectAll()
    qtbot.keyClicks(open_desk.work.entry.line, typed)
    qtbot.keyClick(open_desk.work.entry.line, Qt.Key.Key_Return)
    assert value(open_desk, *keys) == kept
    assert not open_desk.work.entry.isVisible()


def test_a_derived_dimension_says_what_drives_it_and_typing_takes_its_place(open_desk: Window, qtbot) -> None:
    canvas = open_desk.canvas
    figure = next(f for f in canvas.scene.figures if f.name == "Slant from level")
    click(canvas, canvas.figure_place(figure.id).center())
    assert "top's depth" in open_desk.work.entry.hint
    open_desk.work.entry.line.setText("50")
    qtbot.keyClick(open_desk.work.entry.line, Qt.Key.Key_Return)
    assert value(open_desk, "slant", "top_depth") is None


def test_what_cannot_be_read_or_built_is_said_and_changes_nothing(open_desk: Window, qtbot) -> None:
    canvas, entry = open_desk.canvas, open_desk.work.entry
    before = open_desk.piece.state.text
    figure = next(f for f in canvas.scene.figures if f.name == "Width")
    click(canvas, canvas.figure_place(figure.id).center())
    for text in ("1/2 of length", "31 -1/2", "2"):
        entry.line.setText(text)
        qtbot.keyClick(entry.line, Qt.Key.Key_Return)
        assert entry.isVisible()
        assert entry.hint
    assert open_desk.piece.state.text == before


def test_the_board_under_the_pointer_lights_up_in_every_view(open_desk: Window) -> None:
    canvas = open_desk.canvas
    fact = canvas.scene.standings["front"]
    middle = canvas.sight.on_screen(fact.on_canvas((450.0, 180.0)))
    move(canvas, QPointF(*middle), held=False)
    assert canvas.lit == frozenset({"drawer.4.front"})
    press(canvas, QPointF(5, 5))


def test_the_wheel_zooms_at_the_pointer_and_a_hand_on_the_paper_moves_the_sheet(open_desk: Window) -> None:
    canvas = open_desk.canvas
    at = QPointF(300, 200)
    before, zoom = canvas.sight.on_canvas((300, 200)), canvas.sight.zoom
    for turn, nearer in ((240, True), (-480, False)):
        wheel = QWheelEvent(
            at, canvas.mapToGlobal(at), QPoint(), QPoint(0, turn), Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(canvas, wheel)
        assert (canvas.sight.zoom > zoom) is nearer
        assert canvas.sight.on_canvas((300, 200)) == pytest.approx(before)
    empty = QPointF(40, 40)
    held = canvas.sight.on_canvas((empty.x(), empty.y()))
    press(canvas, empty)
    for part in (0.3, 0.7, 1.0):
        move(canvas, empty + QPointF(90, 60) * part)
    release(canvas, empty + QPointF(90, 60))
    assert canvas.sight.on_canvas((130.0, 100.0)) == pytest.approx(held)
    assert open_desk.piece.undo.count() == 0
    open_desk.actions_by_key["fit"].trigger()
    assert canvas.sight.zoom == pytest.approx(canvas.fitting().zoom)


def test_lines_of_projection_lead_from_a_board_that_is_pointed_at_to_the_other_views(open_desk: Window) -> None:
    canvas = open_desk.canvas
    fact = canvas.scene.standings["front"]
    plain = canvas.grab().toImage()
    middle = canvas.sight.on_screen(fact.on_canvas((450.0, 180.0)))
    move(canvas, QPointF(*middle), held=False)
    lit = canvas.grab().toImage()
    front, side, plan = (canvas.scene.standings[view].box for view in ("front", "side", "plan"))
    right, left = canvas.sight.on_screen((front[2], 0.0))[0], canvas.sight.on_screen((side[0], 0.0))[0]
    between = canvas.sight.on_screen((0.0, front[3]))[1], canvas.sight.on_screen((0.0, plan[1]))[1]

    def new_ink(x0: float, x1: float, y0: float, y1: float) -> int:
        return sum(
            plain.pixelColor(x, y) != lit.pixelColor(x, y)
            for x in range(round(min(x0, x1)) + 3, round(max(x0, x1)) - 3)
            for y in range(round(min(y0, y1)) + 3, round(max(y0, y1)) - 3)
        )

    assert new_ink(right, left, 0, canvas.height()) > 10, "beside"
    assert new_ink(0, canvas.width(), *between) > 10, "above"


def test_no_two_figures_stand_on_one_spot_and_what_is_left_out_is_there_from_nearer(window: Window, qtbot) -> None:
    window.show()
    window.open_file(sample_path("harbour-master-desk"))
    qtbot.waitExposed(window)
    canvas = window.canvas
    canvas.grab()

    def places() -> dict[str, QRectF]:
        found = {figure.id: canvas.figure_place(figure.id) for figure in canvas.scene.figures}
        return {name: place for name, place in found.items() if not place.isEmpty()}

    far = places()
    for one, other in combinations(far.values(), 2):
        assert not one.intersects(other)
    left_out = {figure.id for figure in canvas.scene.figures} - set(far)
    assert left_out
    canvas.zoom(6.0)
    canvas.grab()
    assert left_out <= set(places())


def test_where_the_width_is_given_over_the_top_a_hand_and_a_figure_set_that(open_desk: Window, qtbot) -> None:
    # a desk's top ends with its sides: 36 over the one is 36 over the other
    open_desk.piece.set_values((Setting("case.top_width", "36"),), "Width")
    open_desk.grab()
    drag(open_desk.canvas, "case.width@front", (25.4, 0))
    assert (value(open_desk, "case", "top_width"), value(open_desk, "case", "width")) == ("37", None)
    figures = {figure.id: figure for figure in open_desk.canvas.scene.figures}
    assert figures["case.top_width@front"].value == pytest.approx(37 * 25.4)
    assert figures["case:left/case:right@front"].drives == ("case.top_width",)


@pytest.mark.parametrize("long", ["short", "It stops here because " + "of a very long reason " * 6])
def test_words_beside_the_pointer_leave_figures_and_what_is_held_in_sight(open_desk: Window, long: str) -> None:
    """Wherever a hand is: the slip stands inside the canvas, off the pointer, and off figures where there is room."""
    canvas = open_desk.canvas
    room = QRectF(canvas.rect())
    figures = [canvas.figure_place(figure.id) for figure in canvas.scene.figures]
    picture = QPixmap(canvas.size())
    covered, places = 0, 0
    for handle in canvas.scene.handles:
        at = canvas.handle_place(handle)
        painter = QPainter(picture)
        box = paint_label(painter, at, ((handle.name, True), (long, False)), canvas.font(), LIGHT, room, figures)
        painter.end()
        assert room.contains(box)
        assert not box.contains(at)
        assert box.width() < room.width() / 2
        places += 1
        covered += any(box.intersects(place) for place in figures)
    assert places > 8
    assert covered <= places * (0.1 if long == "short" else 0.5)


def test_at_the_edge_of_the_canvas_the_words_turn_to_the_other_side() -> None:
    room = QRectF(0, 0, 600, 400)
    for at in (QPointF(2, 2), QPointF(598, 2), QPointF(2, 398), QPointF(598, 398), QPointF(300, 200)):
        box = label_place(at, (220.0, 60.0), room, ())
        assert room.contains(box)
        assert not box.contains(at)
    full = [QRectF(0, 0, 600, 400)]
    assert room.contains(label_place(QPointF(300, 200), (220.0, 60.0), room, full)), "where all is taken it stands too"


@pytest.mark.parametrize("what", ["undo", "redo", "variant", "another file", "a broken text"])
def test_whatever_changes_the_piece_under_a_hand_ends_the_drag_and_is_not_undone_by_it(
    open_desk: Window, what: str, qtbot
) -> None:
    canvas, piece = open_desk.canvas, open_desk.piece
    piece.set_text(piece.state.text + '\n[variant.low]\n"case.height" = "40"\n', "Variant")
    piece.set_values((Setting("case.height", "43"),), "Height")
    if what == "redo":
        piece.undo.undo()
    drag(canvas, "case.width@front", (60, 0), let_go=False)
    does = {
        "undo": lambda: qtbot.keyClick(canvas, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier),
        "redo": open_desk.actions_by_key["redo"].trigger,
        "variant": lambda: piece.choose_variant("low"),
        "another file": lambda: piece.open_file(sample_path("plan-chest")),
        "a broken text": lambda: piece.set_text("[[", "Break"),
    }
    does[what]()
    text, steps = piece.state.text, piece.undo.count()
    assert not open_desk.work.hand.busy
    assert canvas.label == ()
    move(canvas, QPointF(700, 500))
    release(canvas, QPointF(700, 500))
    assert (piece.state.text, piece.undo.count()) == (text, steps)
    heights = {"undo": "41 1/2", "redo": "43", "variant": "43"}
    if what in heights:
        assert value(open_desk, "case", "height") == heights[what]
        assert value(open_desk, "case", "width") == "36"
        assert next(f for f in canvas.scene.figures if f.name == "Width").value == pytest.approx(36 * 25.4)


def test_an_inch_piece_is_told_its_limits_in_inches(open_desk: Window) -> None:
    canvas, piece = open_desk.canvas, open_desk.piece
    drag(canvas, "case.width@front", (-5000, 0), let_go=False)
    told = [words for words, _ in canvas.label if "Stops here" in words]
    assert told
    assert " in" in told[0]
    canvas.give_up()
    refused: list[str] = []
    piece.refused.connect(refused.append)
    for address in ("case.width", "case.depth", "case.height", "opening.bank.divide.step", "base.height"):
        piece.set_values((Setting(address, "0.4 in" if address != "opening.bank.divide.step" else "10"),), "Small")
    assert len(refused) == 5
    assert [words for words in (*refused, *told) if re.search(r"\d mm\b", words)] == []
