"""Pictures of the editor in each of its states, to be looked at.

Run: python tests/benchmarks/editor_screenshots.py FOLDER [SCALE [LANGUAGE [STATE …]]]

LANGUAGE is en, de, or long: a made-up one whose words are 40 % longer.
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
if len(sys.argv) > 2:
    os.environ["QT_SCALE_FACTOR"] = sys.argv[2]

from PySide6.QtCore import QLocale, QPointF, QSettings, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPen
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from shopdraw.editor.ask import Kind, Question, question_box
from shopdraw.editor.contact_sheet import ContactSheet
from shopdraw.editor.sheet_view import SheetView, SheetWindow
from shopdraw.editor.shop_window import ShopWindow
from shopdraw.editor.start import application
from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import speak
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_path
from tests.editor.gestures import click, drag, move, press
from tests.editor.long_words import LongWords

SIZE = (1440, 900)
LANGUAGE = sys.argv[3] if len(sys.argv) > 3 else "en"
LONG = LongWords()


def main(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    app = application()
    if LANGUAGE == "long":
        app.installTranslator(LONG)
    else:
        speak(app, [LANGUAGE])
        QLocale.setDefault(QLocale(LANGUAGE))
    memory = Path(tempfile.mkdtemp())
    os.environ["XDG_CONFIG_HOME"] = str(memory / "config")

    def window(sample: str = "harbour-office-desk") -> Window:
        made = Window(
            apart=False, settings=QSettings(str(memory / "memory.ini"), QSettings.Format.IniFormat), folder=memory
        )
        made.filing.ask = lambda _parent, question: "wide" if question.kind is Kind.WORDS else ""
        made.resize(*SIZE)
        made.show()
        if sample:
            file = memory / f"{sample}.piece"
            file.write_bytes(sample_path(sample).read_bytes())
            made.open_file(file)
            app.processEvents()
        return made

    def shoot(name: str, widget: QWidget) -> None:
        app.processEvents()
        widget.grab().save(str(folder / f"{name}.png"))
        print(folder / f"{name}.png")

    for name in sys.argv[4:] or STATES:
        state = STATES[name]
        made = window("" if name == "start" else METRIC.get(name, "harbour-office-desk"))
        shoot(name, state(made))
        made.piece.undo.setClean()
        made.close()


def _drag(window: Window, handle: str, by_mm: tuple[float, float]) -> QWidget:
    window.grab()
    drag(window.canvas, handle, by_mm, let_go=False)
    return window


def _typing(window: Window, name: str) -> QWidget:
    window.grab()
    canvas = window.canvas
    figure = next(f for f in canvas.scene.figures if f.id == name)
    click(canvas, canvas.figure_place(figure.id).center())
    return window


def _keys(window: Window) -> QWidget:
    window.grab()
    QTest.keyClick(window.canvas, Qt.Key.Key_Tab)
    for _ in range(3):
        QTest.keyClick(window.canvas, Qt.Key.Key_Right)
    return window


def _exporting(window: Window) -> QWidget:
    window.doing._progressed(2, 5, "templates")
    return window


def _pointing(window: Window) -> QWidget:
    at = window.canvas.sight.on_screen(window.canvas.scene.standings["front"].on_canvas((450.0, 380.0)))
    move(window.canvas, QPointF(*at), held=False)
    return window


def _layers(window: Window) -> QWidget:
    for key in ("dados", "swing", "travel"):
        window.actions_by_key[key].trigger()
    return window


def _tab(window: Window, panel: QWidget) -> QWidget:
    window.work.side.setCurrentWidget(panel)
    return window


def _board(window: Window) -> QWidget:
    window.work._choose_board("side.left")
    return window


def _router(window: Window) -> QWidget:
    window.work._choose_board("side.left")
    window.work.boards.sight.setCurrentIndex(1)
    window.work.boards.sight.activated.emit(1)
    return window


def _shop(window: Window) -> QWidget:
    window.doing.shop()
    shop = window.doing.open_windows[-1]
    assert isinstance(shop, ShopWindow)
    return shop


def _layouts(window: Window) -> QWidget:
    shop = _shop(window)
    assert isinstance(shop, ShopWindow)
    shop.shop.set_text(SHOP, "Shop")
    shop.layouts.lay_out.click()
    return shop


def _broken_shop(window: Window) -> QWidget:
    shop = _shop(window)
    assert isinstance(shop, ShopWindow)
    shop.shop.set_text(SHOP.replace("kerf = 2.8", "kerf = thin"), "Shop")
    return shop


def _contact(window: Window) -> QWidget:
    window.work.side.setCurrentWidget(window.work.sheets)
    window.work.sheets.all_pages.click()
    contact = window.doing.open_windows[-1]
    contact.grab()
    while isinstance(contact, ContactSheet) and contact._timer.isActive():
        QApplication.processEvents()
    return contact


def _compartments(window: Window) -> QWidget:
    window.piece.set_values((Setting("compartments.bays", 4), Setting("compartments.shelves", ["4"])), "Bays")
    return window


def _golden(window: Window) -> QWidget:
    window.work.side.setCurrentWidget(window.work.proportions)
    window.work.proportions.buttons["golden section"].setChecked(True)
    return window


def _field(window: Window) -> QWidget:
    window.work.form.go_to("slant.writing_height")
    window.activateWindow()
    return window


def _finding(window: Window) -> QWidget:
    window.piece.set_values((Setting("case.dado_depth", "7/16"),), "Dado depth")
    panel = window.work.findings
    panel.list.setCurrentIndex(panel.model.index(0))
    return window


def _picture(window: Window) -> QWidget:
    window.doing.picture()
    picture = window.doing.picture_window
    assert picture is not None
    picture.resize(1000, 720)
    for name in ("lid", "support.left", "support.right", "drawer.2"):
        picture.sliders[name].setValue(100)
    while not picture.view._resting:
        QApplication.processEvents()
    return picture


def _colliding(window: Window) -> QWidget:
    """What the program can't let happen by itself is marked where it would: the lid and what it meets."""
    picture = _picture(window)
    assert window.doing.picture_window is not None
    window.doing.picture_window.show_colliding(frozenset({"lid", "support.left"}))
    return picture


def _section(window: Window) -> QWidget:
    window.actions_by_key["section"].trigger()
    return window


def _graduated(window: Window) -> QWidget:
    window.work.side.setCurrentWidget(window.work.proportions)
    window.work.proportions.buttons["graduated drawers"].setChecked(True)
    return window


def _photo(window: Window) -> Path:
    """An old piece, drawn askew as a camera sees it from a corner."""
    picture = QImage(640, 560, QImage.Format.Format_RGB32)
    picture.fill(QColor(228, 216, 196))
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor(90, 60, 35), 5))
    painter.setBrush(QColor(168, 120, 78))
    painter.drawPolygon([QPointF(110, 470), QPointF(520, 440), QPointF(490, 90), QPointF(140, 60)])
    for part in (0.3, 0.55, 0.78):
        painter.drawLine(QPointF(110 + 30 * part, 470 - 410 * part), QPointF(520 - 30 * part, 440 - 350 * part))
    painter.end()
    file = Path(window.folder) / "old.png"
    picture.save(str(file))
    return file


def _tracing(window: Window) -> QWidget:
    file = _photo(window)
    window.filing.ask = lambda _parent, _question: str(file)
    window.doing.trace()
    tracing = window.doing.open_windows[-1]
    tracing.grab()
    for x, y in ((110, 470), (520, 440), (490, 90), (140, 60)):
        click(tracing.picker, tracing.picker.on_screen(QPointF(x, y)))
    return tracing


def _traced(window: Window) -> QWidget:
    tracing = _tracing(window)
    tracing.done.click()
    return window


def _question(window: Window) -> QWidget:
    window.piece.set_values((Setting("case.width", "44"),), "Wider")
    asked: list[Question] = []
    window.filing.ask = lambda _parent, question: asked.append(question) or ""
    window.filing.may_leave()
    box, _ = question_box(window, asked[0])
    box.show()
    return box


def _narrow(window: Window) -> QWidget:
    window.resize(1024, 700)
    return window


def _compare(window: Window) -> QWidget:
    window.piece.set_values((Setting("case.width", "44"), Setting("slant.top_depth", "10 1/2")), "Wider")
    window.doing.keep_variant()
    window.doing.compare()
    return window.doing.open_windows[-1]


def _help(window: Window) -> QWidget:
    window.doing.help()
    return window.doing.open_windows[-1]


def _broken(window: Window) -> QWidget:
    window.piece.set_text(window.piece.state.text.replace('width = "36"', 'width = "36 1/'), "Break")
    return window


def _dark(window: Window) -> QWidget:
    window.actions_by_key["dark"].trigger()
    _pointing(window)
    return window


def _dark_board(window: Window) -> QWidget:
    _dark(window)
    return _board(window)


def _dark_finding(window: Window) -> QWidget:
    _dark(window)
    return _finding(window)


def _dark_drag(window: Window) -> QWidget:
    _dark(window)
    return _drag(window, "slant.top_depth@side", (60.0, 0.0))


def _light_again(window: Window) -> QWidget:
    window.actions_by_key["dark"].setChecked(False)
    window._dress()
    return window


def _large_sheet(window: Window) -> SheetView:
    window.work.side.setCurrentWidget(window.work.sheets)
    sets = window.work.sheet_sets
    page = next(number for number, sheet in enumerate(sets[0].sheets) if sheet.key == "general-arrangement")
    window.doing._large(sets[0], page)
    large = window.doing.open_windows[-1]
    assert isinstance(large, SheetWindow)
    large.grab()
    return large.view


def _moving_dimension(window: Window) -> QWidget:
    """A height drawn to the other side of its view."""
    view = _large_sheet(window)
    grip = next(one for one in view.on_sheet.dimensions if one.of == "floor/top:upper@front")
    _draw_on(view, view.place_of(grip.middle), view.place_of((grip.view.box[2] + 12.0, grip.middle[1])))
    return view.window()


def _moving_plane(window: Window) -> QWidget:
    view = _large_sheet(window)
    grip = next(one for one in view.on_sheet.planes if one.letter == "A")
    end = view.place_of(grip.ends[1])
    _draw_on(view, end, end + QPointF(60, 0))
    return view.window()


def _adding_dimension(window: Window) -> QWidget:
    view = _large_sheet(window)
    places = {place.name: place for place in view.on_sheet.places if place.view.id == "front"}
    ends = (view.place_of(places[name].at) for name in ("drawer.3.front:lower", "drawer.1.front:upper"))
    _draw_on(view, *ends)
    return view.window()


def _draw_on(view: SheetView, start: QPointF, end: QPointF) -> None:
    move(view, start, held=False)
    press(view, start)
    for part in (0.3, 0.7, 1.0):
        move(view, start + (end - start) * part)


METRIC = {"first-angle": "chart-room-desk", "small": "pilot-station-desk", "sheets": "chart-room-desk",
          "shelves": "logbook-shelves", "large-desk": "harbour-master-desk",
          "mail-case": "mail-case", "typing-level": "logbook-shelves",
          "layouts": "chart-room-desk", "contact-sheet": "chart-room-desk"}  # fmt: skip
SHOP = """format = 1

[saw]
kerf = 2.8  # measured in a cut of oak

[sheet.birch]
width = 1250
length = 2500
price = 48

[offcut.rack-1]
species = "plywood_birch"
kind = "sheet"
thickness = 6.3
width = 620
length = 1400
"""
STATES: dict[str, Callable[[Window], QWidget]] = {
    "start": lambda window: window,
    "desk": lambda window: window,
    "first-angle": lambda window: window,
    "small": lambda window: window,
    "dragging": lambda window: _drag(window, "case.width@front", (90.0, 0.0)),
    "dragging-slant": lambda window: _drag(window, "slant.top_depth@side", (60.0, 0.0)),
    "dragging-division": lambda window: _drag(window, "opening.bank.divide/2@front", (0.0, -40.0)),
    "limit": lambda window: _drag(window, "slant.writing_height@side", (0.0, 400.0)),
    "typing": lambda window: _typing(window, "level/slant@side"),
    "keys": _keys,
    "exporting": _exporting,
    "pointing": _pointing,
    "layers": _layers,
    "golden": _golden,
    "field": _field,
    "board": _board,
    "finding": _finding,
    "sheets": lambda window: _tab(window, window.work.sheets),
    "picture": _picture,
    "moving-dimension": _moving_dimension,
    "moving-plane": _moving_plane,
    "adding-dimension": _adding_dimension,
    "router": _router,
    "shop": _shop,
    "layouts": _layouts,
    "broken-shop": _broken_shop,
    "contact-sheet": _contact,
    "shelves": lambda window: window,
    "mail-case": lambda window: window,
    "compartments": _compartments,
    "large-desk": lambda window: window,
    "typing-level": lambda window: _typing(window, "floor/level.3@front"),
    "compare": _compare,
    "section": _section,
    "graduated": _graduated,
    "tracing": _tracing,
    "traced": _traced,
    "colliding": _colliding,
    "question": _question,
    "narrow": _narrow,
    "help": _help,
    "broken": _broken,
    "dark": _dark,
    "dark-board": _dark_board,
    "dark-finding": _dark_finding,
    "dark-dragging": _dark_drag,
    "light-again": _light_again,
}

if __name__ == "__main__":
    main(Path(sys.argv[1]))
