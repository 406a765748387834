"""A file that can't be read as a piece: its faults with their lines, beside its text, which can be mended here."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFontDatabase, QTextCursor
from PySide6.QtWidgets import (
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPlainTextEdit,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from shopdraw.editor.finding_list import fault_words
from shopdraw.editor.state import State
from shopdraw.piece.fault import Fault


class FaultsPage(QWidget):
    """Faults and text.

    Signals:
        mended: the text as it stands here, to be read again.
    """

    mended = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.heading = QLabel(self)
        self.heading.setWordWrap(True)
        self.faults = QListWidget(self)
        self.faults.setWordWrap(True)
        self.faults.setAccessibleName(self.tr("Faults of the file"))
        self.text = QPlainTextEdit(self)
        self.text.setAccessibleName(self.tr("Text of the piece file"))
        self.text.setTabChangesFocus(True)
        self.text.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        self.again = QPushButton(self.tr("Read it again"), self)
        self.again.setAccessibleName(self.tr("Read the text again"))
        self.again.setToolTip(self.tr("Read the text as it stands here; undo brings back what was"))
        parts = QSplitter(Qt.Orientation.Vertical, self)
        parts.addWidget(self.faults)
        parts.addWidget(self.text)
        parts.setStretchFactor(1, 2)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(24, 20, 24, 20)
        whole.addWidget(self.heading)
        whole.addWidget(parts, 1)
        whole.addWidget(self.again, 0, Qt.AlignmentFlag.AlignLeft)
        self.again.clicked.connect(lambda: self.mended.emit(self.text.toPlainText()))
        self.faults.currentRowChanged.connect(self._go_to)

    def show_state(self, state: State, source: str) -> None:
        """Shows why a piece can't be read or built."""
        self.show_faults(state.text, state.faults, source)

    def show_faults(self, text: str, faults: tuple[Fault, ...], source: str) -> None:
        """Shows why a text can't be read.

        Args:
            text: as it stands.
            faults: with their lines.
            source: the file's name.
        """
        self.heading.setText(
            self.tr("{name} can't be shown yet. Put right what is listed; nothing has been changed.").format(
                name=source
            )
        )
        self.faults.clear()
        for fault in faults:
            item = QListWidgetItem(fault_words(fault))
            item.setData(Qt.ItemDataRole.UserRole, fault.line)
            self.faults.addItem(item)
        if self.text.toPlainText() != text:
            self.text.setPlainText(text)
        self.text.document().setModified(False)
        self.text.setEnabled(bool(text))
        self.again.setEnabled(bool(text))

    def take_typed(self) -> None:
        """Hands over what was typed into the text and not read again yet."""
        if self.text.isEnabled() and self.text.document().isModified():
            self.mended.emit(self.text.toPlainText())

    def _go_to(self, row: int) -> None:
        item = self.faults.item(row)
        line = int(item.data(Qt.ItemDataRole.UserRole)) if row >= 0 else 0
        block = self.text.document().findBlockByNumber(line - 1)
        if line and block.isValid():
            cursor = QTextCursor(block)
            cursor.movePosition(QTextCursor.MoveOperation.EndOfBlock, QTextCursor.MoveMode.KeepAnchor)
            self.text.setTextCursor(cursor)
            self.text.centerCursor()
