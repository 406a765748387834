"""Findings, boards, sheets, proportions and the picture: thin widgets over the piece."""

from __future__ import annotations

import math
import pickle
import re
from dataclasses import replace
from itertools import combinations
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, QTimer
from PySide6.QtGui import QIcon
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QApplication

from shopdraw.drawing.bounds import marks_box
from shopdraw.drawing.mark import Line, Meaning
from shopdraw.drawing.sheet import Paper, Sheet, SheetSet
from shopdraw.editor.compare_window import differences
from shopdraw.editor.contact_sheet import ACROSS, UP, ContactSheet
from shopdraw.editor.finding_list import boards_of, finding_words, ordered, shape_of
from shopdraw.editor.look import DARK, LIGHT, Colours
from shopdraw.editor.overlay import OVERLAYS, overlay_marks, real_ratios
from shopdraw.editor.printing import Chosen, print_pages, printer_for
from shopdraw.editor.state import Setting
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_names, sample_path
from shopdraw.wood.finding import Finding, Severity
from tests.editor.conftest import Answers
from tests.editor.frames import LATE, Frames
from tests.editor.gestures import click, move, press, release
from tests.editor.test_canvas import value
from tests.editor.test_keyboard import contrast

POINTS_PER_MM = 72 / 25.4
PAGES = 150


def finding(severity: Severity, code: str = "rule", right: tuple[str, str] | None = None, **more) -> Finding:
    return Finding(code, severity, ("drawer.2",), f"{code}: a sentence", right=right, **more)


# Findings


def test_findings_stand_worst_first_and_accepted_ones_last(open_desk: Window) -> None:
    note, caution, must = (finding(s) for s in (Severity.NOTE, Severity.CAUTION, Severity.MUST_FIX))
    accepted = finding(Severity.MUST_FIX, silenced="it is glued")
    assert ordered((note, accepted, caution, must)) == (must, caution, note, accepted)


def test_choosing_a_finding_shows_its_place_in_all_views(open_desk: Window) -> None:
    panel, canvas = open_desk.work.findings, open_desk.canvas
    panel.model.show_findings((finding(Severity.CAUTION),))
    panel.list.setCurrentIndex(panel.model.index(0))
    assert "drawer.2.front" in canvas.lit
    assert "drawer.1.front" not in canvas.lit
    assembly = open_desk.piece.state.assembly
    assert assembly is not None
    assert boards_of(finding(Severity.NOTE), assembly) == canvas.lit


def test_a_finding_with_a_right_value_offers_to_set_it(open_desk: Window) -> None:
    panel = open_desk.work.findings
    panel.model.show_findings((finding(Severity.MUST_FIX, right=("drawer.reveal", "1.5 mm")),))
    panel.list.setCurrentIndex(panel.model.index(0))
    assert panel.set_it.text() == "Set “Reveal” (Drawer) to 1.5 mm"
    panel.set_it.click()
    assert value(open_desk, "drawer", "reveal") == "1.5 mm"
    assert open_desk.piece.undo.count() == 1


@pytest.mark.parametrize(
    ("address", "right", "kept"),
    [
        ("lid.hinges", "3", 3),
        ("drawer.reveal", "1.5 mm", "1.5 mm"),
        ("drawer.reveal", "1/16", "1/16"),
        ("case.tails", "2", 2),
        ("frame.dust_panels", "yes", True),
        ("case.top_joint", "housed", "housed"),
    ],
)
def test_a_right_value_is_kept_as_its_input_keeps_it(open_desk: Window, address: str, right: str, kept: object) -> None:
    panel = open_desk.work.findings
    panel.model.show_findings((finding(Severity.CAUTION, right=(address, right)),))
    panel.list.setCurrentIndex(panel.model.index(0))
    panel.set_it.click()
    assert open_desk.piece.undo.count() == 1, "it isn't refused"
    assert value(open_desk, *address.split(".")) == kept


def test_a_finding_is_accepted_with_a_reason(open_desk: Window, answers: Answers) -> None:
    panel = open_desk.work.findings
    panel.model.show_findings((finding(Severity.CAUTION, code="drawer-racks"),))
    panel.list.setCurrentIndex(panel.model.index(0))
    answers.ready = ["waxed runners"]
    panel.accept.click()
    table = value(open_desk, "silence", "drawer-racks-1")
    assert table == {"code": "drawer-racks", "where": "drawer.2", "reason": "waxed runners"}


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_a_chosen_findings_shape_stands_out_from_the_chosen_row(qapp: QApplication, colours: Colours) -> None:
    for severity in Severity:
        icon = shape_of(severity, colours)
        for mode, ground in ((QIcon.Mode.Normal, "field"), (QIcon.Mode.Selected, "accent")):
            picture = icon.pixmap(QSize(64, 64), mode).toImage()
            inks = [
                picture.pixelColor(x, y) for x in range(64) for y in range(64) if picture.pixelColor(x, y).alpha() > 250
            ]
            # of signs that carry meaning to what is behind them; source: WCAG 2.2, success criterion 1.4.11
            assert min(contrast(ink, colours.colour(ground)) for ink in inks) > 3.0, (severity, mode)


def test_each_severity_has_a_shape_of_its_own(open_desk: Window) -> None:
    inked = []
    for severity in Severity:
        picture = shape_of(severity, LIGHT).pixmap(64, 64).toImage()
        inked.append(sum(picture.pixelColor(x, y).alpha() > 128 for x in range(64) for y in range(64)))
    filled, half, empty = inked
    assert filled > 1.4 * half > 2 * empty > 0


def test_findings_of_the_real_piece_come_by_themselves(open_desk: Window, qtmodeltester) -> None:
    model = open_desk.work.findings.model
    assert model.rowCount() > 0
    assert "caution" in str(model.data(model.index(0), Qt.ItemDataRole.AccessibleTextRole))
    qtmodeltester.check(model)


# Boards


def test_the_list_of_boards_says_what_the_canvas_shows(open_desk: Window, qtmodeltester) -> None:
    open_desk.work.side.setCurrentWidget(open_desk.work.boards)
    model = open_desk.work.boards.model
    assembly = open_desk.piece.state.assembly
    assert assembly is not None
    assert model.rowCount() == len(assembly.boards)
    assert model.rows[0].cells[:5] == ("1L", "side, left", "38 15/16", "19 1/2", "13/16")
    qtmodeltester.check(model)


def test_choosing_a_board_lights_it_up_and_shows_it_alone(open_desk: Window) -> None:
    boards, canvas = open_desk.work.boards, open_desk.canvas
    open_desk.work.side.setCurrentWidget(boards)
    boards.table.setCurrentIndex(boards.model.index(boards.model.row_of("drawer.3.front"), 0))
    assert canvas.lit == frozenset({"drawer.3.front"})
    assert boards.alone.isVisible()
    assert "rabbet" in boards.about.text()


def test_every_column_of_the_boards_is_in_sight_and_names_take_what_is_left(open_desk: Window, qtbot) -> None:
    table = open_desk.work.boards.table
    open_desk.work.side.setCurrentWidget(open_desk.work.boards)
    for width in (1440, 1152, 1900):
        open_desk.resize(width, 900)
        qtbot.wait(20)
        header = table.horizontalHeader()
        assert header.length() <= table.viewport().width(), width
        names = [str(open_desk.work.boards.model.index(row, 1).data()) for row in range(10)]
        longest = max(table.fontMetrics().horizontalAdvance(word) for name in names for word in name.split())
        assert header.sectionSize(1) > longest


def test_clicking_a_board_on_the_canvas_chooses_it_in_the_list(open_desk: Window) -> None:
    canvas = open_desk.canvas
    at = canvas.sight.on_screen(canvas.scene.standings["front"].on_canvas((450.0, 180.0)))
    click(canvas, QPointF(*at))
    assert open_desk.work.side.currentWidget() is open_desk.work.boards
    assert open_desk.work.boards.board == "drawer.4.front"


def test_a_board_is_shown_as_the_router_gets_it_with_what_is_left_for_a_second_setting(
    open_desk: Window, qtbot
) -> None:
    boards = open_desk.work.boards
    open_desk.work.side.setCurrentWidget(boards)
    boards.table.setCurrentIndex(boards.model.index(boards.model.row_of("top"), 0))
    alone = boards.alone.grab().toImage()
    boards.sight.setFocus()
    qtbot.keyClick(boards.sight, Qt.Key.Key_Down)
    boards.sight.activated.emit(boards.sight.currentIndex())
    assert "Setting 1, " in boards.about.text()
    assert "THROUGH_ALL" in boards.about.text()
    assert "bevel" in boards.about.text(), "the top's front edge slopes with the lid: no flat file holds it"
    assert "cm³ of wood" in boards.about.text()
    assert boards.alone.grab().toImage() != alone
    boards.table.setCurrentIndex(boards.model.index(boards.model.row_of("back"), 0))
    assert "Nothing is left for another setting." in boards.about.text()


# Layers and proportions


@pytest.mark.parametrize(("key", "layer"), [("dados", "dados"), ("swing", "swing"), ("travel", "travel")])
def test_layers_are_shown_and_left_out(open_desk: Window, key: str, layer: str) -> None:
    canvas = open_desk.canvas
    assert not canvas.scene.over.get(layer)
    open_desk.actions_by_key[key].trigger()
    assert canvas.scene.over[layer]["side"]
    open_desk.actions_by_key[key].trigger()
    assert not canvas.scene.over.get(layer)


@pytest.mark.parametrize("sample", ["harbour-office-desk", "chart-room-desk", "plan-chest", "tide-lectern"])
def test_what_swings_and_slides_lies_over_no_other_view(window: Window, sample: str, qtbot) -> None:
    """Third angle and first angle: the views step apart for it, and together again."""
    window.show()
    window.open_file(sample_path(sample))
    together = window.canvas.scene.standings
    for keys in (("swing",), ("swing", "travel"), ("travel",)):
        for key in ("swing", "travel"):
            if window.actions_by_key[key].isChecked() is not (key in keys):
                window.actions_by_key[key].trigger()
        scene = window.canvas.scene
        boxes = {}
        for view, standing in scene.standings.items():
            marks = [mark for layer in keys for mark in scene.over[layer][view]]
            x0, y0, x1, y1 = marks_box(marks) if marks else (0.0, 0.0, 0.0, 0.0)
            case = standing.box
            low, high = standing.on_canvas((x0, y0)), standing.on_canvas((x1, y1))
            boxes[view] = (
                min(case[0], low[0]), min(case[1], low[1]), max(case[2], high[0]), max(case[3], high[1]),
            )  # fmt: skip
        for one, other in combinations(boxes.values(), 2):
            assert one[2] < other[0] or other[2] < one[0] or one[3] < other[1] or other[3] < one[1]
    window.actions_by_key["travel"].trigger()
    assert window.canvas.scene.standings == together


@pytest.mark.parametrize("sample", sample_names())
def test_no_figure_stands_over_another_view(window: Window, sample: str, qtbot) -> None:
    window.show()
    window.open_file(sample_path(sample))
    window.actions_by_key["section"].trigger()
    qtbot.waitExposed(window)
    canvas = window.canvas
    canvas.grab()
    boxes = {
        view: QRectF(
            QPointF(*canvas.sight.on_screen(standing.box[:2])), QPointF(*canvas.sight.on_screen(standing.box[2:]))
        ).normalized()
        for view, standing in canvas.scene.standings.items()
    }
    assert set(boxes) == {"front", "side", "plan", "section"}
    over = {
        (figure.id, view)
        for figure in canvas.scene.figures
        for view, box in boxes.items()
        if view != figure.view and canvas.figure_place(figure.id).intersects(box)
    }
    assert over == set()


def test_hidden_lines_can_be_left_out(open_desk: Window) -> None:
    before = open_desk.canvas.grab().toImage()
    open_desk.actions_by_key["hidden"].trigger()
    assert open_desk.canvas.grab().toImage() != before


@pytest.mark.parametrize(
    ("name", "ratio"),
    [
        ("1 : 1", 1.0),
        ("√2 : 1", math.sqrt(2)),
        ("3 : 2", 1.5),
        ("5 : 3", 5 / 3),
        ("golden section", (1 + math.sqrt(5)) / 2),
    ],
)  # fmt: skip
def test_an_overlay_has_the_ratio_of_its_name(open_desk: Window, name: str, ratio: float) -> None:
    open_desk.work.proportions.buttons[name].setChecked(True)
    assert open_desk.canvas.layers.overlay == name
    assembly = open_desk.piece.state.assembly
    assert assembly is not None
    first, second = overlay_marks(assembly, "front", name, open_desk.canvas.scene.shown)[:2]
    assert isinstance(first, Line)
    assert isinstance(second, Line)
    sides = sorted((math.dist(first.start, first.end), math.dist(second.start, second.end)))
    assert sides[1] / sides[0] == pytest.approx(ratio)


def test_figures_of_a_column_have_as_many_places(open_desk: Window) -> None:
    open_desk.work.side.setCurrentWidget(open_desk.work.proportions)
    figures = re.findall(r"<b>(\d+\.\d+)</b>", open_desk.work.proportions.real.text())
    assert len(figures) > 2
    assert {len(figure.partition(".")[2]) for figure in figures} == {3}


def test_the_real_ratios_are_told(open_desk: Window) -> None:
    assembly = open_desk.piece.state.assembly
    assert assembly is not None
    ratios = {ratio.name: ratio for ratio in real_ratios(assembly)}
    assert ratios["height : width"].ratio == pytest.approx(41.5 / 36)
    open_desk.work.side.setCurrentWidget(open_desk.work.proportions)
    assert "1.153" in open_desk.work.proportions.real.text()
    assert set(open_desk.work.proportions.buttons) == {"", *OVERLAYS}


# Picture


def test_the_picture_turns_with_the_mouse_and_opens_with_its_sliders(open_desk: Window, qtbot) -> None:
    open_desk.doing.picture()
    window = open_desk.doing.picture_window
    assert window is not None
    qtbot.waitExposed(window)
    before = window.view.round_deg
    press(window.view, QPointF(100, 100))
    move(window.view, QPointF(160, 100))
    release(window.view, QPointF(160, 100))
    assert window.view.round_deg != before
    lid = next(board for board in window.boards() if board.id == "lid")
    window.sliders["lid"].setValue(100)
    opened = next(board for board in window.boards() if board.id == "lid")
    assert abs(opened.frame.w[2]) == pytest.approx(1.0), "open, the lid lies level"
    assert opened.frame.w != lid.frame.w
    qtbot.waitUntil(lambda: not window._still.isActive(), timeout=5000)
    assert window.view.colliding == frozenset()


def test_boards_that_run_into_each_other_are_marked(open_desk: Window, qtbot) -> None:
    open_desk.doing.picture()
    window = open_desk.doing.picture_window
    assert window is not None
    window.sliders["drawer.1"].setValue(100)
    window.sliders["lid"].setValue(60)
    window.show_colliding(frozenset({"lid", "drawer.1.front"}))
    assert "drawer 1, front" in window.note.text()


def test_boards_that_share_wood_where_they_stand_are_found_when_the_hand_rests(open_desk: Window, qtbot) -> None:
    """A fault is planted: one drawer's front stands 40 mm too high; drawn out it is clear of the rail again."""
    open_desk.doing.picture()
    picture, assembly = open_desk.doing.picture_window, open_desk.piece.state.assembly
    assert picture is not None
    assert assembly is not None
    picture.sliders["drawer.2"].setValue(0)
    qtbot.wait(400)
    assert picture.note.text() == ""
    boards = tuple(
        replace(board, frame=board.frame.moved((0.0, 0.0, 40.0))) if board.id == "drawer.3.front" else board
        for board in assembly.boards
    )
    picture.show_assembly(replace(assembly, boards=boards))
    qtbot.waitUntil(lambda: bool(picture.view.colliding), timeout=60_000)
    assert "drawer.3.front" in picture.view.colliding
    assert "drawer 3, front" in picture.note.text()
    picture.show_assembly(assembly)
    qtbot.waitUntil(lambda: picture.note.text() == "", timeout=60_000)


# Variants


def test_what_differs_is_kept_as_a_variant_and_the_file_stays(open_desk: Window, answers: Answers, desk: Path) -> None:
    before = open_desk.piece.state.text
    open_desk.piece.set_values((Setting("case.width", "40"), Setting("slant.top_depth", "10")), "Wider")
    answers.ready = ["wide"]
    open_desk.actions_by_key["keep_variant"].trigger()
    assert value(open_desk, "case", "width") == "36"
    assert value(open_desk, "variant", "wide") == {"case.width": "40", "slant.top_depth": "10"}
    assert open_desk.piece.variant == "wide"
    design = open_desk.piece.state.design
    assert design is not None
    assert design.case.width == pytest.approx(40 * 25.4)
    open_desk.piece.set_values((Setting("case.height", "43"),), "Height")
    assert value(open_desk, "variant", "wide", "case.height") == "43"
    assert value(open_desk, "case", "height") == "41 1/2"
    while open_desk.piece.undo.canUndo():
        open_desk.piece.undo.undo()
    assert open_desk.piece.state.text == before


def test_a_variant_does_without_what_the_file_gives(open_desk: Window, answers: Answers, qtbot) -> None:
    before = open_desk.piece.state.text
    open_desk.piece.set_values((Setting("slant.angle", 50), Setting("slant.top_depth", None)), "Slant")
    answers.ready = ["steep"]
    open_desk.actions_by_key["keep_variant"].trigger()
    assert value(open_desk, "slant", "top_depth") is not None
    assert value(open_desk, "variant", "steep") == {"unset": ["slant.top_depth"], "slant.angle": 50}
    design = open_desk.piece.state.design
    assert design is not None
    assert design.slant is not None
    assert (design.slant.angle, design.slant.top_depth) == (50.0, None)
    open_desk.doing.compare()
    window = open_desk.doing.open_windows[-1]
    qtbot.waitExposed(window)
    assert [state.sound for state in window.states()] == [True, True]
    assert [state.design.slant.angle for state in window.states()] == [None, 50.0]
    assert all(note.text() == "" for note in window.notes)
    open_desk.piece.set_values((Setting("slant.top_depth", "9"), Setting("slant.angle", None)), "Top depth")
    assert value(open_desk, "variant", "steep") == {"slant.top_depth": "9"}
    open_desk.piece.set_values((Setting("lid.hinges", None),), "Hinges")
    while open_desk.piece.undo.canUndo():
        open_desk.piece.undo.undo()
    assert open_desk.piece.state.text == before


def test_two_variants_stand_side_by_side_at_one_scale(open_desk: Window, answers: Answers, qtbot) -> None:
    open_desk.piece.set_values((Setting("case.width", "44"),), "Wider")
    answers.ready = ["wide"]
    open_desk.actions_by_key["keep_variant"].trigger()
    open_desk.doing.compare()
    window = open_desk.doing.open_windows[-1]
    qtbot.waitExposed(window)
    widths = [state.design.case.width for state in window.states()]
    assert widths == pytest.approx([36 * 25.4, 44 * 25.4])
    assert window.left.sight.zoom == pytest.approx(window.right.sight.zoom)
    told = [{figure.id for figure in canvas.scene.figures} for canvas in (window.left, window.right)]
    assert told[0] == told[1]
    assert "case:left/case:right@front" in told[0]
    assert not any("opening" in name for name in told[0]), "what is inside would crowd at half the size"
    assert "36 → 44" in window.differences.text()
    for size in ((1360, 760), (900, 600), (1500, 900)):
        window.resize(*size)
        qtbot.wait(20)
        left, right = window.left.sight, window.right.sight
        assert (left.zoom, left.y) == pytest.approx((right.zoom, right.y)), "one scale, one floor"
    open_desk.piece.choose_variant("wide")
    open_desk.piece.set_values((Setting("case.height", "40"),), "Lower")
    assert "41 1/2 → 40" in window.differences.text(), "it follows the piece"
    open_desk.doing.drop_variant()
    assert [window.boxes[1].itemText(row) for row in range(window.boxes[1].count())] == ["as in the file"]
    assert window.differences.text() == "Nothing differs."


def test_what_differs_is_told_by_address_whichever_side_has_it() -> None:
    text = sample_path("harbour-office-desk").read_text(encoding="utf-8")
    text += '\n[variant.steep]\nunset = ["slant.top_depth"]\n"slant.angle" = 50\n[variant.low]\n"case.height" = "40"\n'
    assert differences(text, None, "low") == (("case.height", "41 1/2", "40"),)
    assert differences(text, "low", None) == (("case.height", "40", "41 1/2"),)
    assert set(differences(text, "low", "steep")) == {
        ("case.height", "40", "41 1/2"), ("slant.top_depth", "9 1/4", ""), ("slant.angle", "", "50"),
    }  # fmt: skip
    assert differences(text, "low", "low") == ()


# Print


def test_a_page_prints_at_its_own_size_and_a_mm_is_a_mm(open_desk: Window, tmp_path: Path) -> None:
    paper = Paper("A4", 210.0, 297.0, (10, 10, 200, 287), "small")
    marks = (Line((30.0, 40.0), (130.0, 40.0), Meaning.TEMPLATE),)
    sheets = SheetSet("check", "", "", "iso", (Sheet("a", "1", "Check", paper, (), marks),) * 2, true_size=True)
    printer = printer_for(sheets)
    printer.setOutputFileName(str(tmp_path / "check.pdf"))
    print_pages(printer, sheets, range(2))
    pages = PdfReader(tmp_path / "check.pdf").pages
    assert len(pages) == 2
    assert float(pages[0].mediabox.width) / POINTS_PER_MM == pytest.approx(210, abs=0.3)
    xs = drawn_xs(pages[0])
    assert max(xs) - min(xs) == pytest.approx(100, abs=0.1)


def ready_to_print(window: Window, file: Path) -> SheetSet:
    """Many pages, and a printer that writes a file."""
    paper = Paper("A4", 210.0, 297.0, (10, 10, 200, 287), "small")
    marks = tuple(Line((30.0, 10.0 + number / 4), (130.0, 12.0 + number / 4), Meaning.HIDDEN) for number in range(900))

    def choose(printer, _parent) -> bool:
        printer.setOutputFileName(str(file))
        return True

    window.doing.choose_printer = choose
    return SheetSet("check", "", "", "iso", tuple(Sheet(f"s{n}", str(n), "P", paper, (), marks) for n in range(PAGES)))


def test_printing_tells_its_progress_and_the_window_goes_on(open_desk: Window, tmp_path: Path, qtbot) -> None:
    doing, file = open_desk.doing, tmp_path / "pages.pdf"
    ticks: list[int] = []
    timer = QTimer()
    timer.timeout.connect(lambda: ticks.append(1))
    timer.start(5)
    doing.print_set(ready_to_print(open_desk, file))
    assert doing.printing is not None
    assert doing.printing.busy, "the dialog is gone and the pages are still to come"
    assert doing._bar.isVisible()
    told: list[str] = []
    doing.printing.progressed.connect(lambda _done, _steps: told.append(doing._stage.text()))
    qtbot.waitUntil(lambda: not doing.printing.busy, timeout=60_000)
    assert len(PdfReader(file).pages) == PAGES
    assert len(ticks) > 5, "the window had its turns meanwhile"
    assert len(set(told)) > 3
    assert f"of {PAGES}" in told[0]
    assert not doing._bar.isVisible()
    assert f"{PAGES} pages" in open_desk.statusBar().currentMessage()


def test_printing_is_given_up_and_leaves_no_half_file(open_desk: Window, tmp_path: Path, qtbot) -> None:
    doing, file = open_desk.doing, tmp_path / "pages.pdf"
    sheets = ready_to_print(open_desk, file)
    doing.print_set(sheets)
    qtbot.waitUntil(lambda: doing._bar.value() > 2, timeout=30_000)
    doing.print_set(sheets)  # while it prints nothing else is begun
    doing.export(str(tmp_path))
    assert not doing.exporting.busy
    qtbot.mouseClick(doing.give_up, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not doing.printing.busy, timeout=10_000)
    assert not file.exists()
    assert not doing.give_up.isVisible()
    assert "given up" in open_desk.statusBar().currentMessage()
    doing.print_set(sheets)
    qtbot.waitUntil(lambda: not doing.printing.busy, timeout=60_000)
    assert len(PdfReader(file).pages) == PAGES


def test_a_window_that_is_closed_while_it_prints_leaves_no_half_file(open_desk: Window, tmp_path: Path, qtbot) -> None:
    doing, file = open_desk.doing, tmp_path / "pages.pdf"
    doing.print_set(ready_to_print(open_desk, file))
    qtbot.waitUntil(lambda: doing._bar.value() > 0, timeout=30_000)
    assert open_desk.close()
    assert not doing.printing.busy
    assert not file.exists()


def test_what_cannot_be_printed_is_told_and_the_next_is(open_desk: Window, tmp_path: Path, qtbot) -> None:
    doing, nowhere, file = open_desk.doing, tmp_path / "no folder" / "pages.pdf", tmp_path / "pages.pdf"
    doing.print_set(ready_to_print(open_desk, nowhere))
    qtbot.waitUntil(lambda: not doing.printing.busy, timeout=30_000)
    assert str(nowhere) in open_desk.statusBar().currentMessage()
    doing.print_set(ready_to_print(open_desk, file))
    qtbot.waitUntil(lambda: not doing.printing.busy, timeout=60_000)
    assert len(PdfReader(file).pages) == PAGES


def test_an_older_file_stays_where_printing_is_given_up_before_its_first_page(
    open_desk: Window, tmp_path: Path, qtbot
) -> None:
    doing, file = open_desk.doing, tmp_path / "pages.pdf"
    file.write_bytes(b"an older print")
    doing.print_set(ready_to_print(open_desk, file))
    qtbot.mouseClick(doing.give_up, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not doing.printing.busy, timeout=10_000)
    assert file.read_bytes() == b"an older print"


def test_the_process_that_prints_has_what_was_chosen(tmp_path: Path) -> None:
    paper = Paper("A4", 210.0, 297.0, (10, 10, 200, 287), "small")
    chosen = printer_for(SheetSet("check", "", "", "iso", (Sheet("a", "1", "Check", paper, (), ()),)))
    chosen.setOutputFileName(str(tmp_path / "pages.pdf"))
    chosen.setCopyCount(3)
    chosen.setCollateCopies(False)
    chosen.setResolution(600)
    chosen.setColorMode(QPrinter.ColorMode.GrayScale)
    chosen.setPageOrder(QPrinter.PageOrder.LastPageFirst)
    other = QPrinter(QPrinter.PrinterMode.HighResolution)
    assert Chosen.of(other) != Chosen.of(chosen)
    pickle.loads(pickle.dumps(Chosen.of(chosen))).set(other)
    assert Chosen.of(other) == Chosen.of(chosen)


def test_a_heavy_page_does_not_hold_the_window_up(open_desk: Window, tmp_path: Path, qtbot) -> None:
    """A page of thousands of lines is written when the next one is begun; the window's timer runs on meanwhile."""
    paper = Paper("A4", 210.0, 297.0, (10, 10, 200, 287), "small")
    heavy = tuple(Line((30.0, 10.0 + n / 20), (130.0, 12.0 + n / 20), Meaning.HIDDEN) for n in range(4_000))
    sheets = SheetSet("check", "", "", "iso", tuple(Sheet(f"s{n}", str(n), "P", paper, (), heavy) for n in range(2)))

    def choose(printer, _parent) -> bool:
        printer.setOutputFileName(str(tmp_path / "pages.pdf"))
        return True

    open_desk.doing.choose_printer = choose
    with Frames() as frames:
        open_desk.doing.print_set(sheets)
        qtbot.waitUntil(lambda: not open_desk.doing.printing.busy, timeout=60_000)
    assert max(frames.own) < LATE
    assert max(frames.gaps) < LATE + 3 * frames.idle


def drawn_xs(page) -> list[float]:
    """Where lines start and end across the page, mm."""
    found = []

    def visit(operator, operands, matrix, _text) -> None:
        if operator in (b"m", b"l"):
            x, y = (float(n) for n in operands)
            found.append((matrix[0] * x + matrix[2] * y + matrix[4]) / POINTS_PER_MM)

    page.extract_text(visitor_operand_before=visit)
    return found


def test_sheets_are_previewed_as_they_print(open_desk: Window) -> None:
    paper = Paper("A3", 420.0, 297.0, (10, 10, 410, 287), "medium")
    marks = (Line((100.0, 100.0), (300.0, 100.0), Meaning.VISIBLE),)
    sheets = SheetSet("desk", "", "", "iso", (Sheet("a", "1", "Cover", paper, (), marks),))
    panel = open_desk.work.sheets
    panel.show_sets((sheets,))
    assert panel.pages.itemText(0) == "1  Cover"
    assert "1 sheets" in panel.note.text()
    open_desk.work.side.setCurrentWidget(panel)
    panel.view.grab()


def test_all_pages_stand_on_one_contact_sheet_and_a_click_goes_to_one(open_desk: Window, qtbot) -> None:
    paper = Paper("A3", 420.0, 297.0, (10, 10, 410, 287), "medium")
    marks = (Line((100.0, 100.0), (300.0, 100.0), Meaning.VISIBLE),)
    pages = tuple(Sheet(f"s{number}", str(number), f"Page {number}", paper, (), marks) for number in range(1, 41))
    panel = open_desk.work.sheets
    open_desk.work.side.setCurrentWidget(panel)
    panel.show_sets((SheetSet("desk", "", "", "iso", pages[:30]), SheetSet("t", "", "", "iso", pages[30:], True)))
    qtbot.mouseClick(panel.all_pages, Qt.MouseButton.LeftButton)
    contact = open_desk.doing.open_windows[-1]
    assert isinstance(contact, ContactSheet)
    qtbot.waitExposed(contact)
    assert contact.pages.count() == 40
    qtbot.waitUntil(lambda: not contact._timer.isActive(), timeout=10_000)
    assert 0 < contact.left < 40, "pages out of sight wait until they are scrolled to"
    picture = contact.pages.item(0).icon().pixmap(ACROSS, UP).toImage()
    tones = {picture.pixelColor(x, y).lightness() for x in range(0, ACROSS, 2) for y in range(UP)}
    assert max(tones) - min(tones) > 100, "a dark line on light paper"
    place = contact.pages.visualItemRect(contact.pages.item(2)).center()
    qtbot.mouseClick(contact.pages.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert panel.pages.currentText() == "3  Page 3"
    qtbot.keyClick(contact.pages, Qt.Key.Key_End)
    qtbot.keyClick(contact.pages, Qt.Key.Key_Return)
    assert panel.pages.currentText() == "Page 40"
    contact.show_sets((SheetSet("desk", "", "", "iso", pages[:12]),))
    assert (contact.pages.count(), contact.left) == (12, 12), "pages that are drawn again are painted again"


def test_an_id_at_the_head_of_a_finding_keeps_its_letters() -> None:
    def told(message: str) -> str:
        return finding_words(Finding("x", Severity.NOTE, (), message))

    assert told("the lid is thin") == "The lid is thin"
    for words in ("groove:shelf:lid and another meet", "lid.reveal has no effect", "7.c1d: a groove is narrow"):
        assert told(words) == words
