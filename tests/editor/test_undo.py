"""Undo and redo: byte for byte, through everything that changes a piece."""

from __future__ import annotations

import random
from pathlib import Path

from shopdraw.editor.drag import Drag
from shopdraw.editor.handles import handles_of
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.state import Setting

EDITS = 50


def edited(piece: OpenPiece, chance: random.Random) -> None:
    """One random edit: a drag, a typed value, or a value taken out."""
    handle = chance.choice(handles_of(piece.state))
    drag = Drag(piece.state, handle, handle.at)
    by = chance.choice((-30.0, -10.0, 10.0, 30.0))
    step = drag.to((handle.at[0] + handle.along[0] * by, handle.at[1] + handle.along[1] * by), reach=2.0)
    piece.take(step.state, handle.name)
    choice = chance.choice(("climate.wet", "lid.hinges", "base.height"))
    values = {
        "climate.wet": chance.choice((11, 12.5, None)),
        "lid.hinges": chance.choice((2, 4)),
        "base.height": chance.choice((80, None)),
    }
    piece.set_values((Setting(choice, values[choice]),), choice)


def test_case_34_undo_all_gives_the_file_byte_for_byte_and_redo_all_the_end(desk: Path, qtbot) -> None:
    piece = OpenPiece()
    piece.open_file(desk)
    before = desk.read_bytes()
    chance = random.Random(34)
    while piece.undo.count() < EDITS:
        edited(piece, chance)
    end = piece.state
    piece.save()
    at_end = desk.read_bytes()
    while piece.undo.canUndo():
        piece.undo.undo()
    piece.save()
    assert desk.read_bytes() == before
    while piece.undo.canRedo():
        piece.undo.redo()
    piece.save()
    assert desk.read_bytes() == at_end
    assert piece.state is end


def test_case_33_what_nobody_knows_survives_open_change_save(desk: Path, qtbot) -> None:
    text = desk.read_text(encoding="utf-8") + '\n[board."side.left"]\nshop_note = "ask about grain"  # a colleague\'s\n'
    desk.write_text(text, encoding="utf-8")
    piece = OpenPiece()
    piece.open_file(desk)
    piece.set_values((Setting("case.width", "37"),), "Width")
    piece.save()
    assert desk.read_text(encoding="utf-8") == text.replace('width = "36"', 'width = "37"')


def test_line_ends_and_byte_order_mark_stay(desk: Path, qtbot) -> None:
    data = b"\xef\xbb\xbf" + desk.read_bytes().replace(b"\n", b"\r\n")
    desk.write_bytes(data)
    piece = OpenPiece()
    piece.open_file(desk)
    piece.set_values((Setting("case.width", "37"),), "Width")
    piece.save()
    assert desk.read_bytes() == data.replace(b'width = "36"', b'width = "37"')
    piece.undo.undo()
    piece.save()
    assert desk.read_bytes() == data


def test_a_change_that_leads_to_the_same_text_is_no_step(desk: Path, qtbot) -> None:
    piece = OpenPiece()
    piece.open_file(desk)
    piece.set_values((Setting("case.width", "36"),), "Width")
    assert piece.undo.count() == 0
    assert not piece.unsaved
