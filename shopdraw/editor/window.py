"""The main window: its pages, its commands, what it does when files are dropped on it or it is closed."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QByteArray, QLocale, QSettings, QSize, Qt
from PySide6.QtGui import QAction, QCloseEvent, QDragEnterEvent, QDropEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QComboBox, QMainWindow, QStackedWidget, QToolBar, QWidget

from shopdraw.editor.ask import Kind, Question
from shopdraw.editor.canvas import Canvas
from shopdraw.editor.command_list import COMMANDS, MENUS, Command
from shopdraw.editor.doing import Doing
from shopdraw.editor.drawer_count import one_drawer_fewer, one_more_drawer
from shopdraw.editor.faults_page import FaultsPage
from shopdraw.editor.field import table_words
from shopdraw.editor.filing import Filing, data_folder
from shopdraw.editor.look import DARK, LIGHT, dress
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.scene import with_layer
from shopdraw.editor.starting import StartPage
from shopdraw.editor.state import Setting, State
from shopdraw.editor.tick import tick_icon
from shopdraw.editor.tongue import translate
from shopdraw.editor.work_page import WorkPage
from shopdraw.editor.working import Working
from shopdraw.piece.address import address_text
from shopdraw.wood.finding import Finding

MESSAGE_MS = 9000
NEED_A_DRAWING = (
    "export",
    "print",
    "pictures",
    "freeze",
    "keep_variant",
    "drop_variant",
    "trace",
    "more_drawers",
    "fewer_drawers",
    "fit",
    "larger",
    "smaller",
    "hidden",
    "dimensions",
    "dados",
    "swing",
    "travel",
    "section",
    "picture",
    "compare",
    "go_drawing",
    "go_findings",
    "go_beside",
)


class Window(QMainWindow):
    """The editor."""

    def __init__(self, *, apart: bool = True, settings: QSettings | None = None, folder: Path | None = None) -> None:
        """Builds the window.

        Args:
            apart: views and findings are worked out in a worker process; else at once.
            settings: the window's memory (its place, files that were open lately).
            folder: where recovery copies and the list of errors lie.
        """
        super().__init__()
        self.settings = settings or QSettings("shopdraw", "shopdraw")
        self.folder = folder or data_folder()
        self.piece = OpenPiece(self)
        self.working = Working(self, apart=apart)
        self.filing = Filing(self.piece, self, self.settings, self.folder)
        self.filing.said = self.say
        self.filing.settle = self._take_typed
        self.actions_by_key: dict[str, QAction] = {}
        colours = DARK if bool(self.settings.value("dark", False, type=bool)) else LIGHT
        app = QApplication.instance()
        if isinstance(app, QApplication):
            dress(app, colours)
        self.work = WorkPage(self.piece, self.working, QLocale().decimalPoint(), colours, self)
        self.start = StartPage(self, colours)
        self.faults = FaultsPage(self)
        self.pages = QStackedWidget(self)
        for page in (self.start, self.work, self.faults):
            self.pages.addWidget(page)
        self.setCentralWidget(self.pages)
        self.setAcceptDrops(True)
        self.statusBar().setSizeGripEnabled(False)
        self.doing = Doing(self, self.work, self.filing, self.actions_by_key, apart=apart)
        self.bar = QToolBar(self.tr("Commands"), self)
        self.variants = QComboBox(self)
        self._make_commands()
        self._join()
        self.resize(1440, 900)
        geometry = self.settings.value("geometry")
        if isinstance(geometry, QByteArray):
            self.restoreGeometry(geometry)
        self._show_start()

    # For short: what tests and other parts reach for most

    @property
    def canvas(self) -> Canvas:
        """The canvas."""
        return self.work.canvas

    def open_file(self, path: Path) -> None:
        """Opens a piece file, whatever is wrong with it."""
        self.piece.open_file(path)

    def say(self, sentence: str) -> None:
        """Shows a sentence at the foot of the window."""
        self.statusBar().showMessage(sentence, MESSAGE_MS)

    def ask(self, question: Question) -> str:
        """Asks through the one function that a test may replace."""
        return self.filing.ask(self, question)

    def tell(self, sentence: str) -> None:
        """Tells something that must be read."""
        self.ask(Question(Kind.TELL, self.tr("shopdraw"), sentence))

    # Qt's events

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802  # Qt's name
        """Takes piece files."""
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802
        """Opens the file that was dropped."""
        files = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        if files:
            event.acceptProposedAction()
            self.filing.open(files[0])

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: N802
        """Asks for what isn't saved, then ends the worker."""
        if not self.filing.may_leave() or not self.doing.close_windows():
            event.ignore()
            return
        self.filing.recovery.drop()
        self.settings.setValue("geometry", self.saveGeometry())
        self.working.close()
        super().closeEvent(event)

    def _take_typed(self) -> None:
        page = self.pages.currentWidget()
        if page is self.work:
            self.work.take_typed()
        elif page is self.faults:
            self.faults.take_typed()

    # Commands

    def _make_commands(self) -> None:
        does: dict[str, Callable[[], object]] = {
            "new": self._new,
            "open": self.filing.open,
            "save": self.filing.save,
            "save_as": self.filing.save_as,
            "close": self.close,
            "undo": self.piece.undo.undo,
            "redo": self.piece.undo.redo,
            "fit": self.canvas.fit,
            "larger": lambda: self.canvas.zoom(1.25),
            "smaller": lambda: self.canvas.zoom(0.8),
            "dark": self._dress,
            "more_drawers": partial(self._change, one_more_drawer),
            "fewer_drawers": partial(self._change, one_drawer_fewer),
            "export": self.doing.export,
            "print": self.doing.print,
            "pictures": self.doing.pictures,
            "freeze": self.doing.freeze,
            "shop": self.doing.shop,
            "picture": self.doing.picture,
            "compare": self.doing.compare,
            "keep_variant": self.doing.keep_variant,
            "drop_variant": self.doing.drop_variant,
            "help": self.doing.help,
            "language": self.doing.choose_language,
            "go_drawing": self.work.canvas.setFocus,
            "go_findings": self.work.go_to_findings,
            "go_beside": self.work.side.tabBar().setFocus,
            "trace": self.doing.trace,
        }
        for key in ("hidden", "dimensions", "dados", "swing", "travel", "section"):
            does[key] = partial(self._show_layer, key)
        menus = {name: self.menuBar().addMenu(translate("Command", name)) for name in MENUS}
        bar = self.bar
        bar.setMovable(False)
        bar.setIconSize(QSize(self.fontMetrics().height(), self.fontMetrics().height()))
        bar.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.addToolBar(bar)
        menu_before = ""
        for command in COMMANDS:
            if command.key not in does:
                continue
            action = self._action(command, does[command.key])
            if command.after:
                menus[command.menu].addSeparator()
            menus[command.menu].addAction(action)
            if command.bar:
                if menu_before and (menu_before != command.menu or command.after):
                    bar.addSeparator()
                bar.addAction(action)
                menu_before = command.menu
        self._before_variants = bar.addSeparator()
        self.variants.setAccessibleName(self.tr("Variant"))
        self.variants.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self._variants_on_bar = bar.addWidget(self.variants)
        for name, on in (("hidden", True), ("dimensions", True)):
            self.actions_by_key[name].setChecked(on)
        self.actions_by_key["dark"].setChecked(bool(self.settings.value("dark", False, type=bool)))
        self._dress_actions()
        self.recent_menu = menus["File"].addMenu(self.tr("Open lately"))

    def _action(self, command: Command, does: Callable[[], object]) -> QAction:
        action = QAction(translate("Command", command.words), self)
        action.setCheckable(command.turns)
        action.setIconVisibleInMenu(False)  # a menu has a mark of its own
        standard = getattr(QKeySequence.StandardKey, command.shortcut, None) if command.shortcut else None
        if standard is not None:
            action.setShortcuts(QKeySequence.keyBindings(standard))
        elif command.shortcut:
            action.setShortcut(QKeySequence(command.shortcut))
        keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        tells = translate("Command", command.tells)
        action.setToolTip(f"{tells} ({keys})" if keys else tells)
        action.setStatusTip(tells)
        action.triggered.connect(lambda _checked=False: does())
        self.actions_by_key[command.key] = action
        return action

    def _join(self) -> None:
        self.piece.changed.connect(self._changed)
        self.piece.filed.connect(self._filed)
        self.piece.undo.cleanChanged.connect(lambda _clean: self._mark_unsaved())
        self.piece.undo.canUndoChanged.connect(self.actions_by_key["undo"].setEnabled)
        self.piece.undo.canRedoChanged.connect(self.actions_by_key["redo"].setEnabled)
        self.piece.undo.undoTextChanged.connect(lambda words: self._name_step("undo", words))
        self.piece.undo.redoTextChanged.connect(lambda words: self._name_step("redo", words))
        self.start.begun.connect(self.filing.begin)
        self.start.open_wished.connect(self.filing.open)
        self.start.recent_wished.connect(self.filing.open)
        self.faults.mended.connect(lambda text: self.piece.set_text(text, self.tr("Mend the text")))
        self.work.said.connect(self.say)
        self.work.silence_wished.connect(self._silence)
        self.work.add_wished.connect(self._add)
        self.variants.activated.connect(lambda _row: self.piece.choose_variant(self.variants.currentData()))
        for key in ("undo", "redo"):
            self.actions_by_key[key].setEnabled(False)

    # What commands do

    def _new(self) -> None:
        if self.filing.may_leave():
            self._show_start()

    def _change(self, settings_for: Callable[[State], tuple[Setting, ...]]) -> None:
        settings = settings_for(self.piece.state)
        if settings:
            self.piece.set_values(settings, self.tr("Drawers"))
        else:
            self.say(self.tr("This piece has no bank of drawers to change."))

    def _show_layer(self, key: str) -> None:
        self.work.show_layers(with_layer(self.work.layers, key, shown=self.actions_by_key[key].isChecked()))

    def _dress_actions(self) -> None:
        mark = tick_icon(self.canvas.colours)
        for action in self.actions_by_key.values():
            if action.isCheckable():
                action.setIcon(mark)

    def _dress(self) -> None:
        dark = self.actions_by_key["dark"].isChecked()
        self.settings.setValue("dark", dark)
        colours = DARK if dark else LIGHT
        app = QApplication.instance()
        if isinstance(app, QApplication):
            dress(app, colours)
        self.work.dress(colours)
        self.start.dress(colours)
        self.doing.dress(colours)
        self._dress_actions()

    def _silence(self, finding: Finding) -> None:
        question = Question(Kind.WORDS, self.tr("Accept a finding"), self.tr("Why is it all right here?"))
        reason = self.ask(question)
        if reason:
            key = f"{finding.code}-{len(self.piece.state.design.silence) + 1 if self.piece.state.design else 1}"
            parts = (("code", finding.code), ("where", finding.where[0] if finding.where else ""), ("reason", reason))
            settings = [Setting(address_text(("silence", key, name)), words) for name, words in parts]
            self.piece.set_values(settings, self.tr("Accept a finding"))

    def _add(self, table: str) -> None:
        words = self.tr("{name}: what is the new one called?").format(name=table_words(table))
        offers = self.work.offered_keys(table)
        if offers:
            words = self.tr("{name}: which one?").format(name=table_words(table))
        key = self.ask(Question(Kind.WORDS, self.tr("Add"), words, offers=offers))
        if key:
            self.work.begin_keyed(table, key)

    # What is shown

    def _show_start(self) -> None:
        self.start.show_recent(self.filing.recent())
        self._show_page(self.start)
        self.setWindowTitle(self.tr("shopdraw"))

    def _changed(self, state: State) -> None:
        if state.sound:
            came = self.pages.currentWidget() is not self.work
            self._show_page(self.work)
            if came:
                self.canvas.setFocus()
        else:
            self.faults.show_state(state, self.piece.source)
            self._show_page(self.faults)
        names = self.piece.variants()
        if [self.variants.itemData(row) for row in range(self.variants.count())] != [None, *names]:
            self.variants.clear()
            self.variants.addItem(self.tr("as in the file"), None)
            for name in names:
                self.variants.addItem(name, name)
        self.variants.setCurrentIndex(names.index(self.piece.variant) + 1 if self.piece.variant in names else 0)
        for action in (self._before_variants, self._variants_on_bar):
            action.setVisible(bool(names))

    def _show_page(self, page: QWidget) -> None:
        """Shows a page; commands that need a drawing rest where there is none."""
        self.pages.setCurrentWidget(page)
        self.bar.setVisible(page is self.work)
        for key in NEED_A_DRAWING:
            self.actions_by_key[key].setEnabled(page is self.work)
        open_piece, undo = page is not self.start, self.piece.undo
        self.actions_by_key["save_as"].setEnabled(open_piece and bool(self.piece.state.text))
        self.actions_by_key["save"].setEnabled(open_piece and bool(self.piece.state.text))
        self.actions_by_key["undo"].setEnabled(open_piece and undo.canUndo())
        self.actions_by_key["redo"].setEnabled(open_piece and undo.canRedo())

    def _filed(self) -> None:
        self.recent_menu.clear()
        for path in self.filing.recent():
            self.recent_menu.addAction(Path(path).name).triggered.connect(partial(self._open_recent, path))
        self._mark_unsaved()

    def _open_recent(self, path: str) -> None:
        self.filing.open(path)

    def _mark_unsaved(self) -> None:
        self.setWindowModified(self.piece.unsaved)
        title = self.piece.state.assembly.title if self.piece.state.assembly else ""
        name = self.piece.source
        self.setWindowTitle(f"{name}[*]" + (f"  {title}" if title else ""))
        self.actions_by_key["save"].setText(translate("Command", "Save") + (" •" if self.piece.unsaved else ""))

    def _name_step(self, key: str, words: str) -> None:
        verb = translate("Command", "Undo" if key == "undo" else "Redo")
        self.actions_by_key[key].setToolTip(f"{verb}: {words}" if words else verb)
