"""Writing the package: done by the command line in a process of its own, so that the window stays alive.

What is written is what is on the screen: a piece that isn't saved is exported from a copy. Giving up ends the process;
the package that was there before stays, since a new one is put in place only when it is whole.
"""

from __future__ import annotations

import os
import shutil
import sys
import tempfile
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QObject, QProcess, QProcessEnvironment, Signal

from shopdraw.editor.said import said
from shopdraw.editor.told_lines import ToldLines

PATIENCE = 10
"""How far an export steps back behind the window: POSIX niceness."""
PROGRESS_VARIABLE = "SHOPDRAW_PROGRESS"
PROGRESS_MARK = "progress "
"""A line of progress on stderr: `progress 2/5 templates`."""


def _in_words(lines: Iterable[str]) -> str:
    """What the command line said, in the person's language."""
    return "\n".join(map(said, lines))


class Exporting(QObject):
    """One export at a time.

    Signals:
        progressed: parts done, parts in all, the name of the part under way.
        finished: whether it is written, and what was said, line by line.
    """

    progressed = Signal(int, int, str)
    finished = Signal(bool, str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._process: QProcess | None = None
        self._copy: Path | None = None
        self._given_up = False
        self._lines = ToldLines()
        self._said: list[str] = []

    @property
    def busy(self) -> bool:
        """Whether an export is under way."""
        return self._process is not None

    def begin(self, text: str, stem: str, folder: str, *, shop: str = "") -> None:
        """Begins an export.

        Args:
            text: the piece file's text.
            stem: what exported files are called after.
            folder: where to write.
            shop: path of the shop file that the piece names, or "".
        """
        self._given_up = False
        self._lines, self._said = ToldLines(), []
        self._copy = Path(tempfile.mkdtemp(prefix="shopdraw-"))
        file = self._copy / f"{stem}.piece"
        file.write_text(text, encoding="utf-8", newline="")
        process = QProcess(self)
        environment = QProcessEnvironment.systemEnvironment()
        environment.insert(PROGRESS_VARIABLE, "lines")
        environment.insert("PYTHONIOENCODING", "utf-8")
        process.setProcessEnvironment(environment)
        process.readyReadStandardError.connect(self._read)
        process.started.connect(self._step_back)
        process.finished.connect(lambda code, _status: self._end(code))
        process.errorOccurred.connect(self._failed)
        self._process = process
        process.start(
            sys.executable, ["-m", "shopdraw", "export", str(file), folder, *(["--shop", shop] if shop else [])]
        )

    def give_up(self) -> None:
        """Ends the export; the old package stays."""
        if self._process is not None:
            self._given_up = True
            # Asked first: the program then takes its half-written folder away itself.
            self._process.terminate()
            if not self._process.waitForFinished(2000) and self._process is not None:
                self._process.kill()

    def _step_back(self) -> None:
        """The export and the processes that it starts give way to the window: on two cores they would leave it none."""
        if self._process is not None and hasattr(os, "setpriority"):
            with suppress(OSError):  # it may have ended already
                os.setpriority(os.PRIO_PROCESS, self._process.processId(), PATIENCE)

    def _read(self) -> None:
        process = self._process
        if process is None:
            return
        for line in self._lines.read(process):
            if line.startswith(PROGRESS_MARK):
                _, count, name = line.split(" ", 2)
                done, _, steps = count.partition("/")
                self.progressed.emit(int(done), int(steps), name)
            elif line.strip():
                self._said.append(line)

    def _end(self, code: int) -> None:
        process = self._process
        if process is None:
            return
        self._read()
        told = bytes(process.readAllStandardOutput().data()).decode("utf-8", "replace").strip()
        self._clear()
        if self._given_up:
            self.finished.emit(False, self.tr("Given up; what was in the folder is as it was."))
        elif code == 0:
            self.finished.emit(True, _in_words([told, *self._said]))
        else:
            self.finished.emit(False, _in_words(self._said) or self.tr("The export ended without a word."))

    def _failed(self, error: QProcess.ProcessError) -> None:
        if error is QProcess.ProcessError.FailedToStart:
            self._clear()
            self.finished.emit(False, self.tr("The export can't be started: {program}").format(program=sys.executable))

    def _clear(self) -> None:
        if self._copy is not None:
            shutil.rmtree(self._copy, ignore_errors=True)
        if self._process is not None:
            self._process.deleteLater()
        self._process = self._copy = None
