"""A person's notes on boards, joints, fittings, openings and inputs: `[note.ID]` of the piece file."""

from __future__ import annotations

from shopdraw.lists.table import Column, Table
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly

TITLE = "Notes"


def notes_of(design: Design, assembly: Assembly) -> tuple[Table, ...]:
    """One row for each note, in the file's order: what it is on, and its words; none where the piece has no notes."""
    if not design.note:
        return ()
    rows = tuple((_on(assembly, note.on), note.text) for note in design.note.values())
    return (Table(TITLE, (Column("on"), Column("note")), rows),)


def _on(assembly: Assembly, on: str) -> str:
    """A board by its label and name; anything else by its id."""
    if not assembly.has(on):
        return on
    board = assembly.board(on)
    return f"{board.label} {board.name}"
