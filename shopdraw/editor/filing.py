"""Files of the open piece: new, open, save, recent, recovery copies, and files that another program changed."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QFileSystemWatcher, QObject, QSettings, QStandardPaths, QTimer
from PySide6.QtWidgets import QWidget

from shopdraw.editor.ask import Ask, Kind, Question, ask
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.recovery import Copy, Recovery, forget
from shopdraw.editor.said import said
from shopdraw.piece.saving import CannotSave
from shopdraw.shipped import sample_path

AUTOSAVE_SECONDS = 20
RECENT_KEPT = 8
SUFFIX = ".piece"


def data_folder() -> Path:
    """Where recovery copies and the list of errors lie."""
    return Path(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppLocalDataLocation))


class Filing(QObject):
    """Everything about files that a person can wish for.

    Attributes:
        ask: the function that every question goes through.
        settle: takes over what is typed somewhere and not set yet, before anything is saved or left.
    """

    def __init__(self, piece: OpenPiece, window: QWidget, settings: QSettings, folder: Path) -> None:
        super().__init__(window)
        self.ask: Ask = ask
        self.piece = piece
        self.recovery = Recovery(folder / "recovery")
        self._window = window
        self.settings = settings
        self._told_full = False
        self.said: Callable[[str], None] = lambda _words: None
        self.settle: Callable[[], None] = lambda: None
        self._watcher = QFileSystemWatcher(self)
        self._watcher.fileChanged.connect(self._file_changed)
        self._timer = QTimer(self)
        self._timer.setInterval(AUTOSAVE_SECONDS * 1000)
        self._timer.timeout.connect(self.keep_copy)
        self._timer.start()
        piece.filed.connect(self._filed)

    # What a person wishes

    def begin(self, sample: str) -> None:
        """Begins a new piece from a starting one."""
        if self.may_leave():
            self.piece.begin(sample_path(sample).read_text(encoding="utf-8"))

    def open(self, path: str = "") -> None:
        """Opens a file, asking for it where none is named."""
        if not self.may_leave():
            return
        path = path or self.ask(self._window, Question(Kind.OPEN, self.tr("Open a piece"), start=self._last_folder()))
        if path:
            self.piece.open_file(Path(path))

    def save(self) -> bool:
        """Saves to the piece's file, asking for one where it has none; whether it is saved.

        A file that couldn't be read is never written over in passing: what is typed in its place goes to another one.
        """
        self.settle()
        return self._save_to(self.piece.path) if self.piece.path and not self.piece.unread else self.save_as()

    def save_as(self) -> bool:
        """Saves under another name; whether it is saved."""
        self.settle()
        start = str(self.piece.path or Path(self._last_folder()) / self.tr("piece.piece"))
        path = self.ask(self._window, Question(Kind.SAVE, self.tr("Save the piece as"), start=start))
        if not path:
            return False
        target = Path(path)
        if not target.suffix:
            target = target.with_suffix(SUFFIX)
            # The dialog asked for the name without its ending.
            words = self.tr("{name} is there already.").format(name=target.name)
            if target.exists() and target != self.piece.path and not self._overwrite(words):
                return False
        return self._save_to(target)

    def may_leave(self) -> bool:
        """Whether the open piece may be left: it is saved, or a person says so."""
        self.settle()
        if not self.piece.unsaved:
            return True
        question = Question(
            Kind.CHOOSE,
            self.tr("Not saved yet"),
            self.tr("{name} has changes that are not saved.").format(name=self.piece.source),
            (("save", self.tr("Save")), ("leave", self.tr("Leave without saving")), ("", self.tr("Go back"))),
        )
        answer = self.ask(self._window, question)
        if answer == "save":
            return self.save()
        if answer == "leave":
            self.recovery.drop()
        return answer == "leave"

    def recent(self) -> list[str]:
        """Files that were open lately and are still there, the last one first."""
        held = self.settings.value("recent", [])
        paths = [held] if isinstance(held, str) else list(held) if isinstance(held, list | tuple) else []
        return [str(path) for path in paths if path and Path(str(path)).is_file()]

    # Recovery

    def keep_copy(self) -> bool:
        """Keeps a recovery copy of what isn't saved; whether one is kept."""
        if not self.piece.unsaved:
            return False
        try:
            self.recovery.keep(self.piece.state.text, self.piece.path)
        except CannotSave as error:
            if not self._told_full:  # said once: every 20 seconds would be worse than the trouble itself
                self._told_full = True
                self.said(said(str(error)))
            return False
        return True

    def offer_recovery(self) -> None:
        """Offers the copies that a program left behind when it died."""
        for copy in self.recovery.found():
            answer = self.ask(self._window, self._recovery_question(copy))
            if answer == "open":
                self.piece.begin(copy.text, path=copy.path, unsaved=True)
                self.keep_copy()
            if answer in ("open", "drop"):
                forget(copy)
            if answer == "open":
                return

    def _recovery_question(self, copy: Copy) -> Question:
        words = self.tr(
            "The program ended before {name} was saved. A copy of the work is there; the file itself is as it was."
        ).format(name=copy.name)
        return Question(
            Kind.CHOOSE,
            self.tr("Work was kept"),
            words,
            (
                ("open", self.tr("Open the copy")),
                ("drop", self.tr("Throw the copy away")),
                ("", self.tr("Decide later")),
            ),
        )

    # Inside

    def _save_to(self, target: Path) -> bool:
        own = self.piece.path == target
        if own and self.piece.unread and target.exists():
            words = self.tr("{name} couldn't be read here: writing over it loses what is in it.")
            if not self._overwrite(words.format(name=target.name)):
                return False
        words = self.tr("{name} was changed by another program since it was opened here.")
        if own and self.changed_on_disk() and not self._overwrite(words.format(name=target.name)):
            return False
        self._forget_watched()
        try:
            self.piece.save(target)
        except CannotSave as error:
            self._watch()
            question = Question(
                Kind.CHOOSE,
                self.tr("Not saved"),
                said(str(error)),
                (("as", self.tr("Save in another place")), ("again", self.tr("Try again")), ("", self.tr("Go back"))),
            )
            answer = self.ask(self._window, question)
            return self.save_as() if answer == "as" else self._save_to(target) if answer == "again" else False
        self.recovery.drop()
        return True

    def _overwrite(self, words: str) -> bool:
        question = Question(
            Kind.CHOOSE,
            self.tr("The file is another one"),
            words,
            (("", self.tr("Go back")), ("over", self.tr("Write over it"))),
        )
        return self.ask(self._window, question) == "over"

    def changed_on_disk(self) -> bool:
        """Whether the file holds something else than what was read or written here."""
        path, seen = self.piece.path, self.piece.seen
        if path is None or seen is None:
            return False
        try:
            return path.read_bytes() != seen
        except OSError:
            return False

    def _file_changed(self, path: str) -> None:
        # Programs that save by renaming take the watched file away: watch the one that took its place.
        QTimer.singleShot(100, self._watch)
        if self.piece.path is None or Path(path) != self.piece.path or not self.changed_on_disk():
            return
        words = self.tr("Another program changed {name}.").format(name=self.piece.path.name)
        if self.piece.unsaved:
            words += " " + self.tr("What you changed here isn't saved: reading it again gives that up.")
        question = Question(
            Kind.CHOOSE,
            self.tr("The file has changed"),
            words,
            (("read", self.tr("Read it again")), ("", self.tr("Keep what is here"))),
        )
        if self.ask(self._window, question) == "read":
            self.piece.open_file(self.piece.path)
        else:
            self.piece.undo.resetClean()

    def _filed(self) -> None:
        self._watch()
        path = self.piece.path
        if path is not None and path.is_file():
            named = str(path.resolve())
            self.settings.setValue("recent", [named, *(p for p in self.recent() if p != named)][:RECENT_KEPT])

    def _watch(self) -> None:
        self._forget_watched()
        path = self.piece.path
        if path is not None and path.is_file():
            self._watcher.addPath(str(path))

    def _forget_watched(self) -> None:
        watched = self._watcher.files()
        if watched:
            self._watcher.removePaths(watched)

    def _last_folder(self) -> str:
        recent = self.recent()
        home = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        return str(Path(recent[0]).parent) if recent else home
