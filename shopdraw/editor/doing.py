"""What the larger commands do: export, print, picture, variants, help. Each opens or drives a part of its own."""

from __future__ import annotations

import os
import re
import sys
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QUrl
from PySide6.QtGui import QAction, QDesktopServices
from PySide6.QtWidgets import QLabel, QMainWindow, QProgressBar, QPushButton, QWidget

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.apart import Apart
from shopdraw.editor.ask import Kind, Question, photo_files
from shopdraw.editor.beside import beside
from shopdraw.editor.easel import Easel
from shopdraw.editor.exporting import Exporting
from shopdraw.editor.figure import named_sizes
from shopdraw.editor.filing import Filing
from shopdraw.editor.freezing import freeze
from shopdraw.editor.look import Colours
from shopdraw.editor.sheet_view import SheetView, SheetWindow
from shopdraw.editor.state import State
from shopdraw.editor.tongue import LANGUAGES, translate
from shopdraw.editor.tracing import TraceWindow, load_picture
from shopdraw.editor.work_page import WorkPage

# Windows of their own, and Qt's printing, are loaded when they are first wanted: the main window opens without them.
if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

    from shopdraw.editor.picture import PictureWindow
    from shopdraw.editor.printing import Choose, Printing


class Doing(QObject):
    """Larger commands."""

    def __init__(
        self, window: QMainWindow, work: WorkPage, filing: Filing, actions: dict[str, QAction], *, apart: bool = True
    ) -> None:
        super().__init__(window)
        self._apart = apart
        self._window = window
        self._work = work
        self._filing = filing
        self._actions = actions
        self.exporting = Exporting(self)
        self.choose_printer: Choose = _choose_printer
        self.printing: Printing | None = None
        self.picture_window: PictureWindow | None = None
        self.open_windows: list[QWidget] = []
        self._folder = ""
        self._wants = ""
        self._stage = QLabel(window)
        self._bar = QProgressBar(window)
        self._bar.setAccessibleName(self.tr("How far it has come"))
        self._bar.setMaximumWidth(window.fontMetrics().averageCharWidth() * 30)
        self.give_up = QPushButton(self.tr("Give up"), window)
        self.give_up.setAccessibleName(self.tr("Give up what is being written or printed"))
        self.give_up.setToolTip(self.tr("Give it up; what was in the folder stays as it was"))
        for widget in (self._stage, self._bar, self.give_up):
            window.statusBar().addPermanentWidget(widget)
            widget.hide()
        self.give_up.clicked.connect(self.exporting.give_up)
        self.exporting.progressed.connect(self._progressed)
        self.exporting.finished.connect(self._exported)
        work.hand.tidying.busy = lambda: self.exporting.busy
        work.working.collided.connect(self._collided)
        work.working.done.connect(lambda _state, _worked: self._worked())
        self.drawing = Apart(self, apart=apart)
        self.drawing.done.connect(self._pictures_written)
        self.drawing.failed.connect(work.said)
        work.piece.changed.connect(self._changed)
        work.sheets.large_wished.connect(self._large)
        work.sheets.all_wished.connect(self._all_pages)
        work.sheets_drawn.connect(self._sheets_drawn)

    # Export

    def export(self, folder: str = "") -> None:
        """Writes the package to a folder, asking for it where none is named."""
        state = self._work.piece.state
        if not state.sound or self.exporting.busy or (self.printing is not None and self.printing.busy):
            return
        start = str(self._work.piece.path.parent) if self._work.piece.path else ""
        question = Question(Kind.FOLDER, self.tr("Write the package to this folder"), start=start)
        folder = folder or self._filing.ask(self._window, question)
        if not folder:
            return
        self._folder = folder
        self._progressed(0, 0, "")
        path = self._work.piece.path
        shop = state.design.piece.shop if state.design else ""
        shop = str((path.parent / shop).resolve()) if shop and path else ""
        self.exporting.begin(state.text, path.stem if path else _stem(state), folder, shop=shop)

    def _progressed(self, done: int, steps: int, name: str) -> None:
        for widget in (self._stage, self._bar, self.give_up):
            widget.show()
        self._bar.setRange(0, steps)
        self._bar.setValue(done)
        self._stage.setText(
            self.tr("Writing {name}").format(name=translate("Export", name)) if name else self.tr("Writing the package")
        )

    def _exported(self, done: bool, words: str) -> None:  # a signal's argument
        for widget in (self._stage, self._bar, self.give_up):
            widget.hide()
        choices = (
            (("", self.tr("Close")), ("show", self.tr("Show the folder")))
            if done
            else (("again", self.tr("Try again")), ("other", self.tr("Another folder")), ("", self.tr("Close")))
        )
        title = self.tr("The package is written") if done else self.tr("The package is not written")
        answer = self._filing.ask(self._window, Question(Kind.CHOOSE, title, words, choices))
        if answer == "show":
            QDesktopServices.openUrl(QUrl.fromLocalFile(self._folder))
        elif answer:
            self.export(self._folder if answer == "again" else "")

    # Print

    def print(self) -> None:
        """Prints sheets or templates; where they aren't drawn yet, as soon as they are."""
        self._when_drawn("print")

    def pictures(self) -> None:
        """Writes each view as SVG and PNG to a folder; where they aren't drawn yet, as soon as they are."""
        self._when_drawn("pictures")

    def _when_drawn(self, what: str) -> None:
        self._wants = what
        self._work.ask_for_sheets(self._work.piece.state)
        self._go_on_if_ready()
        if self._wants:
            self._work.said.emit(self.tr("The sheets are being drawn; the dialog comes when they are there."))

    def _worked(self) -> None:
        self._go_on_if_ready()
        if self._wants_sheets():
            self._work.ask_for_sheets(self._work.piece.state)

    def _wants_sheets(self) -> bool:
        """Whether a window that follows the sheets is open."""
        if not self.open_windows:
            return False
        from shopdraw.editor.contact_sheet import ContactSheet

        return any(isinstance(window, SheetWindow | ContactSheet) for window in self.open_windows)

    def _go_on_if_ready(self) -> None:
        sets = self._work.sheet_sets
        if not self._wants or not sets:
            return
        wants, self._wants = self._wants, ""
        if wants == "print":
            self._print(sets)
        else:
            self._write_pictures(sets[0])

    def _write_pictures(self, sheets: SheetSet) -> None:
        # The writers are loaded at the first export, never by the window as it opens.
        from shopdraw.write.picture_files import write_pictures

        path = self._work.piece.path
        question = Question(
            Kind.FOLDER, self.tr("Write the views as pictures to this folder"), start=str(path.parent) if path else ""
        )
        folder = self._filing.ask(self._window, question)
        if folder:
            self._folder = folder
            stem = path.stem if path else _stem(self._work.piece.state)
            self._work.said.emit(self.tr("Writing the views as SVG and PNG…"))
            self.drawing.begin(write_pictures, sheets, stem, Path(folder))

    def _pictures_written(self, names: tuple[str, ...]) -> None:
        self._work.said.emit(self.tr("{count} pictures written to {folder}").format(
            count=len(names), folder=self._folder
        ))  # fmt: skip

    def _print(self, sets: tuple[SheetSet, ...]) -> None:
        choices = tuple(
            (str(number), self.tr("Templates at true size") if made.true_size else self.tr("Sheets"))
            for number, made in enumerate(sets)
        )
        question = Question(
            Kind.CHOOSE, self.tr("Print"), self.tr("What shall be printed?"), (*choices, ("", self.tr("Nothing")))
        )
        answer = self._filing.ask(self._window, question)
        if answer:
            self.print_set(sets[int(answer)])

    def print_set(self, sheets: SheetSet) -> None:
        """Prints a whole set, after the printer is chosen."""
        from shopdraw.editor.printing import Printing, printer_for

        if self.exporting.busy or (self.printing is not None and self.printing.busy):
            self._work.said.emit(self.tr("Something is still being written; print when that is done."))
            return
        printer = printer_for(sheets)
        if not self.choose_printer(printer, self._window):
            return
        if self.printing is None:
            self.printing = Printing(self)
            self.printing.progressed.connect(self._print_progressed)
            self.printing.finished.connect(self._printed)
            self.give_up.clicked.connect(self.printing.give_up)
        self.printing.begin(printer, sheets, _pages(printer, len(sheets.sheets)))

    def _print_progressed(self, done: int, steps: int) -> None:
        self._progressed(done, steps, "")
        self._stage.setText(self.tr("Printing page {page} of {pages}").format(page=min(done + 1, steps), pages=steps))

    def _printed(self, _done: bool, words: str) -> None:  # a signal's argument
        for widget in (self._stage, self._bar, self.give_up):
            widget.hide()
        self._work.said.emit(words)

    # Revisions

    def freeze(self) -> None:
        """Keeps in the file what a revision was made of, as one undo step."""
        self._work.said.emit(freeze(self._work.piece, partial(self._filing.ask, self._window)))

    # Windows of their own

    def shop(self) -> None:
        """Opens the shop: the file that the piece names, else the user's own, whether it is there yet or not."""
        from shopdraw.editor.shop_window import ShopWindow

        path = self._shop_path()
        if path is None:
            self._work.said.emit(self.tr("This system tells no folder for your own files: name a shop in the piece."))
            return
        for window in self.open_windows:
            if isinstance(window, ShopWindow) and window.shop.path == path:
                window.raise_()
                window.activateWindow()
                return
        work = self._work
        window = ShopWindow(
            path, lambda: work.piece.state, lambda: self._filing.ask, work.canvas.colours, work.decimal_sign,
            apart=self._apart,
        )  # fmt: skip
        window.shop.filed.connect(work.forget_sheets)
        self._keep(window)

    def _shop_path(self) -> Path | None:
        from shopdraw.piece.shop_reading import own_shop_path

        piece = self._work.piece
        named = piece.state.design.piece.shop if piece.state.design else ""
        if named:
            return ((piece.path.parent if piece.path else Path()) / named).resolve()
        return own_shop_path(os.environ, sys.platform)

    def picture(self) -> None:
        """Opens the picture."""
        from shopdraw.editor.picture import PictureWindow

        if self.picture_window is None:
            self.picture_window = PictureWindow(self._work.canvas.colours)
            self.picture_window.resting.connect(self._work.working.ask_for_collisions)
            self.open_windows.append(self.picture_window)
        self._changed(self._work.piece.state)
        self.picture_window.show()
        self.picture_window.raise_()

    def compare(self) -> None:
        """Opens two variants side by side."""
        from shopdraw.editor.compare_window import CompareWindow

        piece = self._work.piece
        if not piece.variants():
            self._work.said.emit(self.tr("The file has no variants yet: change the piece, then keep it as a variant."))
            return
        window = CompareWindow(
            piece.state.text, piece.source, piece.variants(), self._work.decimal_sign, self._work.canvas.colours
        )
        self._keep(window)

    def keep_variant(self) -> None:
        """Keeps what differs from the saved file as a variant."""
        name = self._filing.ask(
            self._window, Question(Kind.WORDS, self.tr("Keep as a variant"), self.tr("What is it called?"))
        )
        if name and not self._work.piece.keep_variant(name):
            self._work.said.emit(self.tr("Nothing differs from the saved file, so there is nothing to keep."))

    def drop_variant(self) -> None:
        """Takes the variant that is shown out of the file; the file's own values stay."""
        if not self._work.piece.drop_variant(self.tr("Take the variant out")):
            self._work.said.emit(self.tr("Choose the variant first that is to be taken out."))

    def trace(self) -> None:
        """Lays a photo behind a view."""
        piece, assembly, shown = self._work.piece, self._work.piece.state.assembly, self._work.canvas.scene.shown
        if assembly is None or shown is None:
            return
        named = self._filing.ask(self._window, Question(Kind.OPEN, self.tr("Choose a photo"), files=photo_files()))
        if not named:
            return
        picture = load_picture(Path(named))
        if picture.isNull():
            self._work.said.emit(self.tr("{name} can't be read as a picture.").format(name=Path(named).name))
            return
        file = beside(Path(named), piece.path.parent if piece.path else None)
        window = TraceWindow(file, picture, shown.unit, named_sizes(assembly), self._work.canvas.colours)
        window.laid.connect(lambda settings: piece.set_values(settings, self.tr("Photo")))
        self._keep(window)

    def help(self) -> None:
        """Opens the help page."""
        from shopdraw.editor.help_window import HelpWindow

        self._keep(HelpWindow(self._actions))

    def choose_language(self) -> None:
        """Asks which language the window shall speak; it does from the next start on."""
        choices = (("system", self.tr("As the system")), *LANGUAGES, ("", self.tr("As it is")))
        question = Question(
            Kind.CHOOSE, self.tr("Language"), self.tr("Which language shall the window speak?"), choices
        )
        chosen = self._filing.ask(self._window, question)
        if chosen:
            self._filing.settings.setValue("language", "" if chosen == "system" else chosen)
            self._work.said.emit(self.tr("The window speaks it from the next start on."))

    def dress(self, colours: Colours) -> None:
        """Puts on another look."""
        if self.picture_window is not None:
            self.picture_window.view.colours = colours
            self.picture_window.view.repaint_all()
        for window in self.open_windows:
            for view in window.findChildren(QWidget):
                if isinstance(view, Easel | SheetView):
                    view.colours = colours
                    view.update()

    def close_windows(self) -> bool:
        """Closes what was opened beside the main window; False where one of them has something to save."""
        for window in tuple(self.open_windows):
            if not window.close():
                return False
        if self.exporting.busy:
            # Who closes the window knows it: nobody is asked whether to try again.
            self.exporting.finished.disconnect(self._exported)
            self.exporting.give_up()
        if self.printing is not None:
            self.printing.close()
        self.drawing.close()
        self.open_windows.clear()
        return True

    def _keep(self, window: QWidget) -> None:
        self.open_windows.append(window)
        window.destroyed.connect(lambda: self.open_windows.remove(window) if window in self.open_windows else None)
        window.show()

    def _large(self, sheets: SheetSet, page: int) -> None:
        work = self._work
        window = SheetWindow(sheets, page, work.canvas.colours, work.on_sheets, work.shown)
        work.sheet_hand.join(window.view)
        self._keep(window)

    def _sheets_drawn(self) -> None:
        """Windows with a sheet follow the piece."""
        from shopdraw.editor.contact_sheet import ContactSheet

        work = self._work
        for window in self.open_windows:
            if isinstance(window, SheetWindow):
                window.show_sets(work.sheet_sets, work.on_sheets, work.shown)
            elif isinstance(window, ContactSheet):
                window.show_sets(work.sheet_sets)

    def _all_pages(self, sets: tuple[SheetSet, ...]) -> None:
        from shopdraw.editor.contact_sheet import ContactSheet

        contact = ContactSheet(sets, self._work.canvas.colours)
        contact.chosen.connect(self._work.sheets.go_to)
        self._keep(contact)

    def _changed(self, state: State) -> None:
        if self.picture_window is not None and state.assembly is not None:
            self.picture_window.show_assembly(state.assembly)
        if self.open_windows:
            self._compare_again()

    def _compare_again(self) -> None:
        """Two variants side by side follow the piece."""
        from shopdraw.editor.compare_window import CompareWindow

        piece = self._work.piece
        for window in self.open_windows:
            if isinstance(window, CompareWindow):
                window.follow(piece.state.text, piece.source, piece.variants())

    def _collided(self, boards: frozenset[str]) -> None:
        if self.picture_window is not None:
            self.picture_window.show_colliding(boards)


def _choose_printer(printer: QPrinter, parent: QWidget | None) -> bool:
    from shopdraw.editor.printing import choose_printer

    return choose_printer(printer, parent)


def _pages(printer: QPrinter, count: int) -> range:
    first, last = printer.fromPage(), printer.toPage()
    return range(max(first, 1) - 1, min(last, count) if last else count)


def _stem(state: State) -> str:
    title = state.assembly.title if state.assembly else ""
    return re.sub(r"[^\w-]+", "-", title.lower()).strip("-") or "piece"
