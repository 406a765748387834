"""The page one works on: the canvas in the middle, findings under it, inputs and boards beside it, all of one piece."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import QPixmap, QResizeEvent
from PySide6.QtWidgets import QSplitter, QTabWidget, QVBoxLayout, QWidget

from shopdraw.drawing.sheet import SheetSet
from shopdraw.editor.boards_panel import BoardsPanel
from shopdraw.editor.canvas import Canvas
from shopdraw.editor.entry import Entry
from shopdraw.editor.field import FormField
from shopdraw.editor.figure import Figure, named_sizes
from shopdraw.editor.finding_list import boards_of
from shopdraw.editor.findings_panel import FindingsPanel
from shopdraw.editor.form_panel import FormPanel
from shopdraw.editor.hand import Hand
from shopdraw.editor.job import Worked
from shopdraw.editor.keyed import beginnings, offered_keys
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.on_sheet import OnSheets
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.proportions_panel import ProportionsPanel
from shopdraw.editor.scene import Layers, Views
from shopdraw.editor.sheet_hand import SheetHand
from shopdraw.editor.sheets_panel import SheetsPanel
from shopdraw.editor.showing import over_marks, scene_of
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.state import Setting, State
from shopdraw.editor.tracing import load_picture, photos_of
from shopdraw.editor.typed import NotTyped, Typed
from shopdraw.editor.wish import setting_of
from shopdraw.editor.working import Working
from shopdraw.wood.finding import Finding

SIDE_IN_LETTERS = 70
MOST_FOR_THE_SIDE = 0.4
"""Of a narrow window's width: the drawing keeps the larger part."""


ON_PAPER = ("move", "dimension", "plane")
"""Tables of a person's own that change nothing but the sheets."""


def _differ_on_paper_alone(before: State, after: State) -> bool:
    """Whether two states are the same piece, drawn otherwise."""
    if before.design is None or after.design is None or before.piece is None or after.piece is None:
        return False
    if before.text == after.text or before.piece.cautions or after.piece.cautions:
        return False
    nothing: dict[str, object] = {name: {} for name in ON_PAPER}
    return before.design.model_copy(update=nothing) == after.design.model_copy(update=nothing)


def _together(before: Worked, worked: Worked) -> Worked:
    return Worked(
        worked.views or before.views,
        before.found if worked.found is None else worked.found,
        worked.sheets or before.sheets,
        worked.on_sheets or before.on_sheets,
        worked.of_layout or before.of_layout,
    )


class WorkPage(QWidget):
    """Canvas and panels.

    Signals:
        said: a sentence for the foot of the window.
        silence_wished: a finding to be accepted.
        add_wished: a keyed table that a person wants one more of.
        sheets_drawn: the sheets are there, or there again.
    """

    said = Signal(str)
    silence_wished = Signal(object)
    add_wished = Signal(str)
    sheets_drawn = Signal()

    def __init__(
        self,
        piece: OpenPiece,
        working: Working,
        decimal_sign: str,
        colours: Colours = LIGHT,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.piece = piece
        self.working = working
        self.decimal_sign = decimal_sign
        self._worked_out: tuple[State, Worked] | None = None
        self._sheets_of: State | None = None
        self._on_canvas: State | None = None
        self._pictures: dict[Path, QPixmap] = {}
        self._missed: set[Path] = set()
        self.canvas = Canvas(self)
        self.hand = Hand(piece, self.canvas)
        self.hand.decimal_sign = decimal_sign
        self.entry = Entry(self.canvas)
        self.findings = FindingsPanel(self, colours)
        self.form = FormPanel(self)
        self.boards = BoardsPanel(self)
        self.proportions = ProportionsPanel(self)
        self.sheets = SheetsPanel(self)
        self.sheet_hand = SheetHand(piece, self)
        self.side = QTabWidget(self)
        self.side.setDocumentMode(True)
        self.side.setAccessibleName(self.tr("Beside the drawing"))
        for panel, words in (
            (self.form, self.tr("Sizes")),
            (self.boards, self.tr("Boards")),
            (self.proportions, self.tr("Proportions")),
            (self.sheets, self.tr("Sheets")),
        ):
            self.side.addTab(panel, words)
        self._lay_out()
        self._join()
        self.dress(colours)

    @property
    def layers(self) -> Layers:
        """What the canvas shows beside the visible lines."""
        return self.canvas.layers

    def show_layers(self, layers: Layers) -> None:
        """Shows or hides layers."""
        before = self.canvas.layers
        self.canvas.show_layers(layers)
        if self.piece.state.sound and layers.section != before.section:
            self._show_canvas(self.piece.state)
            self.working.ask(self.piece.state, section=layers.section, path=self.piece.path)
        elif self.piece.state.sound and (layers.swing, layers.travel) != (before.swing, before.travel):
            self._show_canvas(self.piece.state)  # views step apart, or together again
        elif self.piece.state.sound:
            self.canvas.show_over(over_marks(self.piece.state, layers, self.decimal_sign))

    def dress(self, colours: Colours) -> None:
        """Puts on another look."""
        self.canvas.colours = colours
        self.form.sketch.colours = colours
        self.boards.alone.colours = colours
        self.sheets.dress(colours)
        self.findings.dress(colours)
        self.canvas.update()

    def go_to_findings(self) -> None:
        """Gives the list of findings the keyboard, its first row chosen where none is."""
        rows = self.findings.list
        rows.setFocus(Qt.FocusReason.ShortcutFocusReason)
        if not rows.currentIndex().isValid():
            rows.setCurrentIndex(self.findings.model.index(0))

    def go_to(self, address: str) -> None:
        """Shows an input in the form."""
        self.side.setCurrentWidget(self.form)
        if not self.form.go_to(address):
            self.said.emit(self.tr("{address} stands in the file alone").format(address=address))

    def take_typed(self) -> None:
        """Sets what is typed in the form or over a dimension and not set yet: who saves means that, too."""
        self.form.take_typed()
        self.entry.take_typed()

    def begin_keyed(self, table: str, key: str) -> None:
        """Begins one more of a keyed table."""
        shown = self.canvas.scene.shown
        if shown is not None:
            settings = beginnings(table, key, shown, board=self._meant_board())
            if self.piece.set_values(settings, self.tr("Add {name}").format(name=key)):
                self.go_to(settings[0].address)

    def offered_keys(self, table: str) -> tuple[str, ...]:
        """What one more of a keyed table may be called, where its keys mean something in the piece."""
        return offered_keys(table, self.piece.state, self.boards.board)

    def take_out(self, address: str, name: str) -> None:
        """Takes a keyed table out of the file as one undo step."""
        self.piece.set_values((Setting(address, None),), self.tr("Take out {name}").format(name=name))

    # Inside

    def _meant_board(self) -> str:
        """The board that was chosen last, or the first one."""
        assembly = self.piece.state.assembly
        return self.boards.board or (assembly.boards[0].id if assembly is not None and assembly.boards else "")

    def _lay_out(self) -> None:
        upright = QSplitter(Qt.Orientation.Vertical)
        upright.addWidget(self.canvas)
        upright.addWidget(self.findings)
        upright.setStretchFactor(0, 1)
        upright.setSizes([700, self.fontMetrics().height() * 8])
        upright.setCollapsible(0, False)
        level = QSplitter(Qt.Orientation.Horizontal)
        level.addWidget(upright)
        level.addWidget(self.side)
        level.setStretchFactor(0, 1)
        self._level = level
        self._parted = False
        level.splitterMoved.connect(self._part_by_hand)
        self.side.setMinimumWidth(self.side.tabBar().sizeHint().width())
        level.setCollapsible(0, False)
        for splitter in (upright, level):
            splitter.setHandleWidth(5)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(level)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802  # Qt's name
        """Parts the room between the drawing and what stands beside it, until a person does so."""
        super().resizeEvent(event)
        if not self._parted:
            letters = self.fontMetrics().averageCharWidth() * SIDE_IN_LETTERS
            side = min(letters, round(MOST_FOR_THE_SIDE * self.width()))
            self._level.setSizes([self.width() - side - self._level.handleWidth(), side])

    def _part_by_hand(self, _at: int, _handle: int) -> None:
        self._parted = True

    def _join(self) -> None:
        self.piece.changed.connect(self._show)
        self.piece.drafted.connect(self._draft)
        self.piece.refused.connect(self._refused)
        self.working.done.connect(self._worked)
        self.working.failed.connect(self._failed)
        self.hand.said.connect(self.said)
        self.hand.passed.connect(self.working.ask_ahead)
        self.canvas.board_pointed.connect(self._pointed)
        self.canvas.board_chosen.connect(self._choose_board)
        self.canvas.figure_picked.connect(self._type_into)
        self.entry.typed.connect(self._typed)
        self.entry.led.connect(self._led)
        self.form.wished.connect(self._wished)
        self.form.add_wished.connect(self.add_wished)
        self.form.take_out_wished.connect(self.take_out)
        self.boards.chosen.connect(self._board_chosen)
        self.boards.router_wished.connect(
            lambda board: self.working.ask_for_router(self.piece.state, board, self.piece.path)
        )
        self.findings.chosen.connect(self._finding_chosen)
        self.findings.set_wished.connect(self._set_right)
        self.findings.led.connect(self.go_to)
        self.findings.silence_wished.connect(self.silence_wished)
        self.proportions.overlay_wished.connect(self._overlay)
        self.sheet_hand.join(self.sheets.view)
        self.sheet_hand.said.connect(self.said)
        self.side.currentChanged.connect(lambda _tab: self._show_side(self.piece.state))

    def _show(self, state: State) -> None:
        # Undo, another variant, another file: a hand that still holds a handle of what was there holds nothing now.
        self.canvas.give_up()
        if self.entry.isVisible():
            self.entry.close_slip()  # what it stands over is another size now
        if not state.sound:
            return
        self._lay_photos(state)
        self._show_canvas(state)
        self.form.show_state(state, self._shown(), self.boards.board)
        self._show_side(state)
        if state.faults:
            self.findings.model.show_faults(state.faults)
        if not self._keep_what_holds(state):
            self.working.ask(state, section=self.layers.section, path=self.piece.path)

    def _lay_photos(self, state: State) -> None:
        """Lays the photos of a state behind the views; each is read once."""

        def load(path: Path) -> QPixmap:
            if path in self._pictures:
                return self._pictures[path]
            picture = load_picture(path)
            if not picture.isNull():
                self._pictures[path] = picture
            elif path not in self._missed:
                self._missed.add(path)
                self.said.emit(self.tr("The photo {name} isn't there, or it is no picture.").format(name=path.name))
            return picture

        if state.design is not None:
            folder = self.piece.path.parent if self.piece.path else None
            self.canvas.photos = photos_of(state.design, folder, load)

    def _show_side(self, state: State) -> None:
        """Brings the panel in sight up to date; the others follow when they are turned to."""
        shown = self.canvas.scene.shown
        if shown is None or not state.sound:
            return
        panel = self.side.currentWidget()
        if panel is self.boards:
            self.boards.show_state(state, shown)
        elif panel is self.proportions:
            self.proportions.show_state(state, shown)
        elif panel is self.sheets:
            self.ask_for_sheets(state)

    def ask_for_sheets(self, state: State) -> None:
        """Asks for the sheets of a state, once, when its findings are there (they stand on the cover)."""
        worked = self._worked_out
        if worked is None or worked[0] is not state or worked[1].found is None or self._sheets_of is state:
            return
        self._sheets_of = state
        self.sheets.show_waiting()
        self.working.ask_for_sheets(state, worked[1].found, self.piece.path)

    def _keep_what_holds(self, state: State) -> bool:
        """Keeps views and findings where only the sheets' own tables have changed: no board is another one.

        Returns:
            Whether nothing but the sheets is to be worked out again.
        """
        before = self._worked_out
        if before is None or before[1].views is None or before[1].found is None or self.layers.section:
            return False
        if not _differ_on_paper_alone(before[0], state):
            return False
        self._worked_out = (state, Worked(views=before[1].views, found=before[1].found))
        self._show_canvas(state)
        # Who waited for the views of this state has them now.
        self.working.done.emit(state, self._worked_out[1])
        return True

    def forget_sheets(self) -> None:
        """The shop has changed: sheets that were drawn for the old one are drawn again when they are looked at."""
        self._sheets_of = None
        if self._worked_out is not None:
            state, worked = self._worked_out
            self._worked_out = (state, replace(worked, sheets=None))
        self._show_side(self.piece.state)

    def _draft(self, state: State) -> None:
        # A hand moves many times within one size.
        if state.sound and state is not self._on_canvas:
            self._show_canvas(state)

    def _show_canvas(self, state: State) -> None:
        worked = self._worked_out
        lines = worked[1].views if worked is not None and worked[0] is state else None
        self.canvas.show_scene(scene_of(state, self.canvas.layers, self.decimal_sign, lines))
        self._on_canvas = state

    def _show_lines(self, state: State, lines: Views) -> None:
        """Shows the full views of a state; its draft, figures and handles aren't made twice."""
        if self._on_canvas is state:
            self.canvas.show_lines(lines)
        else:
            self._show_canvas(state)

    def _worked(self, state: State, worked: Worked) -> None:
        if state is not self.piece.state:
            return
        before = self._worked_out[1] if self._worked_out and self._worked_out[0] is state else Worked()
        self._worked_out = (state, _together(before, worked))
        if worked.views is not None and not self.hand.busy:
            self._show_lines(state, worked.views)
        if worked.found is not None:
            self.findings.model.show_findings((*worked.found, *self._worked_out[1].of_layout))
            self._show_side(state)
        if worked.router is not None:
            self.boards.show_router(worked.router)
        if worked.sheets is not None:
            self.findings.model.show_findings((*(self._worked_out[1].found or ()), *worked.of_layout))
            self.sheets.show_sets(worked.sheets, worked.on_sheets, self._shown())
            self.sheets_drawn.emit()
            self.sheet_hand.drawn_again(worked.on_sheets)

    def _failed(self, sentence: str) -> None:
        """A job of the worker couldn't be done."""
        self.sheets.show_failed(sentence)
        self.said.emit(sentence)

    @property
    def sheet_sets(self) -> tuple[SheetSet, ...]:
        """The sheets of the piece as it is now; none while they are being drawn."""
        worked = self._worked_out
        return (worked[1].sheets or ()) if worked is not None and worked[0] is self.piece.state else ()

    @property
    def on_sheets(self) -> OnSheets:
        """What can be taken hold of on the sheets."""
        worked = self._worked_out
        return worked[1].on_sheets if worked is not None and worked[0] is self.piece.state else {}

    @property
    def shown(self) -> Shown | None:
        """How sizes of the piece are shown."""
        return self.canvas.scene.shown

    def _shown(self) -> Shown:
        assert self.canvas.scene.shown is not None
        return self.canvas.scene.shown

    def _pointed(self, board: str) -> None:
        chosen = {self.boards.board} if self.side.currentWidget() is self.boards and self.boards.board else set()
        self.canvas.light(frozenset({board} if board else chosen))

    def _choose_board(self, board: str) -> None:
        if not board:
            return
        shown = self.canvas.scene.shown
        self.side.setCurrentWidget(self.boards)
        if shown is not None and not self.boards.model.rows:
            self.boards.show_state(self.piece.state, shown)
        self.boards.choose(board)
        self._board_chosen(board)

    def _board_chosen(self, board: str) -> None:
        self.canvas.show_place(frozenset({board} if board else ()))
        shown = self.canvas.scene.shown
        if shown is not None:
            self.form.show_state(self.piece.state, shown, board)

    def _finding_chosen(self, chosen: object) -> None:
        assembly = self.piece.state.assembly
        if isinstance(chosen, Finding) and assembly is not None:
            self.canvas.show_place(boards_of(chosen, assembly))
        else:
            self.canvas.light(frozenset())

    def _type_into(self, figure: Figure, place: QRect) -> None:
        shown, assembly = self.canvas.scene.shown, self.piece.state.assembly
        if shown is not None and assembly is not None:
            self.entry.open_on(figure, place, shown, named_sizes(assembly))

    def _typed(self, figure: Figure, typed: Typed) -> None:
        if figure.sets is not None and self.piece.set_values(figure.sets(typed), figure.name):
            self.entry.close_slip()

    def _led(self, address: str) -> None:
        self.entry.close_slip()
        self.go_to(address)

    def _wished(self, field: FormField, text: str) -> None:
        assembly, shown = self.piece.state.assembly, self.canvas.scene.shown
        if assembly is None or shown is None:
            return
        try:
            setting = setting_of(field, text, shown.unit, named_sizes(assembly))
        except NotTyped as error:
            self._not_so(field, str(error))
            return
        refused: list[str] = []
        self.piece.refused.connect(refused.append)
        done = self.piece.set_values((setting,), field.label)
        self.piece.refused.disconnect(refused.append)
        if not done and refused:
            self._not_so(field, refused[0])

    def _not_so(self, field: FormField, sentence: str) -> None:
        """Says why a field can't be so, and puts back what holds."""
        self.form.show_state(self.piece.state, self._shown(), self.boards.board)
        self.form.complain(field.address, sentence)

    def _set_right(self, setting: Setting) -> None:
        """Sets the value that would mend a finding: written as a person would type it, kept as its input keeps it."""
        field, shown, assembly = self.form.field_of(setting.address), self.shown, self.piece.state.assembly
        if field is not None and shown is not None and assembly is not None:
            with suppress(NotTyped):
                setting = setting_of(field, str(setting.value), shown.unit, named_sizes(assembly))
        self.piece.set_values((setting,), self.tr("Mend a finding"))

    def _refused(self, sentence: str) -> None:
        if self.entry.isVisible():
            self.entry.complain(sentence)
        else:
            self.said.emit(sentence)

    def _overlay(self, name: str) -> None:
        self.show_layers(replace(self.canvas.layers, overlay=name))
