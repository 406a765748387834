"""Freezing a revision from the window: what it is called and which boards are cut already, then one undo step."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QDate, Qt

from shopdraw.editor.ask import Kind, Question
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.said import said
from shopdraw.editor.state import CannotSet
from shopdraw.editor.tongue import translate


def freeze(piece: OpenPiece, ask: Callable[[Question], str]) -> str:
    """Asks, and keeps in the file what the revision is made of.

    Args:
        piece: the open piece.
        ask: asks a question.

    Returns:
        What came of it, in a sentence; "" where a person gave up.
    """
    # Only a revision needs the checks: the window opens without loading them.
    from shopdraw.check.freezing import CannotFreeze, frozen_text

    design, assembly = piece.state.design, piece.state.assembly
    if design is None or assembly is None:
        return ""
    if piece.variant is not None:
        return translate("Freeze", "A revision is frozen of the file itself: choose “as in the file” first.")
    title = translate("Freeze", "Freeze a revision")
    words = translate("Freeze", "What is the revision called? Later changes are told against it.")
    name = ask(Question(Kind.WORDS, title, words, start=design.piece.revision))
    if not name:
        return ""
    words = translate("Freeze", "Which boards are cut already? Their labels, such as 3 7.1a; none if nothing is cut.")
    cut = ask(Question(Kind.WORDS, title, words)).replace(",", " ").split()
    day = QDate.currentDate().toString(Qt.DateFormat.ISODate)
    try:
        text = frozen_text(piece.state.text, design, assembly, name, cut, day)
    except (CannotFreeze, CannotSet) as error:
        return said(str(error))
    piece.set_text(text, translate("Freeze", "Freeze revision {name}").format(name=name))
    told = translate("Freeze", "Revision {name}: {count} boards frozen; save the file to keep it.")
    return told.format(name=name, count=len(assembly.boards))
