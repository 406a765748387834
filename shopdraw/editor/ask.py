"""Every question that stops the work goes through one function, which a test replaces; nothing else opens a dialog."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum

from PySide6.QtWidgets import QAbstractButton, QFileDialog, QInputDialog, QLineEdit, QMessageBox, QWidget

from shopdraw.editor.tongue import translate


def piece_files() -> str:
    """Which files a dialog for pieces shows."""
    return translate("Ask", "Piece files (*.piece);;All files (*)")


def photo_files() -> str:
    """Which files a dialog for photos shows."""
    return translate("Ask", "Photos (*.png *.jpg *.jpeg *.webp *.bmp)")


class Kind(Enum):
    """What kind of answer is asked for."""

    TELL = "tell"
    CHOOSE = "choose"
    OPEN = "open"
    SAVE = "save"
    FOLDER = "folder"
    WORDS = "words"


@dataclass(frozen=True, slots=True)
class Question:
    """A question.

    Attributes:
        kind: of answer.
        title: of the dialog.
        words: what is asked, in a sentence.
        choices: for CHOOSE: (key, words on the button), the first one is taken by Enter.
        start: where a file dialog begins, or the words that stand in the line.
        files: for OPEN and SAVE: which files are shown; pieces where nothing is said.
        offers: for WORDS: words to choose from; others can be written.
    """

    kind: Kind
    title: str
    words: str = ""
    choices: tuple[tuple[str, str], ...] = ()
    start: str = ""
    files: str = ""
    offers: tuple[str, ...] = ()


Ask = Callable[[QWidget | None, Question], str]
"""Asks and gives back the key that was chosen, the path or the words; "" where a person gave up."""


def ask(parent: QWidget | None, question: Question) -> str:
    """Asks with Qt's own dialogs."""
    files = question.files or piece_files()
    match question.kind:
        case Kind.OPEN:
            return str(QFileDialog.getOpenFileName(parent, question.title, question.start, files)[0])
        case Kind.SAVE:
            return str(QFileDialog.getSaveFileName(parent, question.title, question.start, files)[0])
        case Kind.FOLDER:
            return str(QFileDialog.getExistingDirectory(parent, question.title, question.start))
        case Kind.WORDS if question.offers:
            words, fine = QInputDialog.getItem(parent, question.title, question.words, question.offers)
            return str(words).strip() if fine else ""
        case Kind.WORDS:
            words, fine = QInputDialog.getText(
                parent, question.title, question.words, QLineEdit.EchoMode.Normal, question.start
            )
            return str(words).strip() if fine else ""
        case Kind.TELL | Kind.CHOOSE:
            return _choose(parent, question)


def question_box(parent: QWidget | None, question: Question) -> tuple[QMessageBox, dict[QAbstractButton, str]]:
    """The box of a question with choices, and which button means which key."""
    box = QMessageBox(parent)
    box.setWindowTitle(question.title)
    box.setText(question.words)
    choices = question.choices or (("", translate("Ask", "Close")),)
    buttons: dict[QAbstractButton, str] = {}
    for number, (key, words) in enumerate(choices):
        button = box.addButton(
            words, QMessageBox.ButtonRole.AcceptRole if number == 0 else QMessageBox.ButtonRole.RejectRole
        )
        buttons[button] = key
        if number == 0:
            box.setDefaultButton(button)
    return box, buttons


def _choose(parent: QWidget | None, question: Question) -> str:
    box, buttons = question_box(parent, question)
    box.exec()
    return next((key for button, key in buttons.items() if button is box.clickedButton()), "")
