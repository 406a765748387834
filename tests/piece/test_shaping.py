"""Ids with dots in them: quoted or as tables in tables, they are the same id."""

import pytest

from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import parse_piece
from tests.piece.sample import SAMPLE

OWN = '[board{}]\nstock = "cherry 4/4"\nnote = "quiet grain"\n'


@pytest.mark.parametrize("written", ['."side.left"', ".side.left", '.side."left"'])
def test_a_boards_id_is_read_in_either_form(written: str) -> None:
    assert parse_piece(SAMPLE + OWN.format(written)).design.board["side.left"].note == "quiet grain"


def test_an_id_may_be_the_beginning_of_another() -> None:
    text = SAMPLE + OWN.format(".drawer.2") + OWN.format(".drawer.2.front") + '[board.drawer]\nname = "all"\n'
    assert set(parse_piece(text).design.board) == {"drawer", "drawer.2", "drawer.2.front"}


def test_a_members_stock_is_read_in_either_form() -> None:
    text = SAMPLE.replace("[use]\n", '[use]\nlid.cap = "cherry 4/4"\n')
    assert parse_piece(text).design.use == {
        "lid.cap": "cherry 4/4", "side": "cherry 4/4", "drawer.front": "cherry 4/4"
    }  # fmt: skip


def test_a_fault_in_it_has_its_own_line() -> None:
    text = SAMPLE + OWN.format(".side.left").replace('"quiet grain"', "5")
    with pytest.raises(PieceError) as error:
        parse_piece(text)
    (fault,) = error.value.faults
    assert text.split("\n")[fault.line - 1] == "note = 5"
    assert fault.address == 'board."side.left".note'


def test_an_unknown_key_in_it_has_its_own_line() -> None:
    text = SAMPLE + OWN.format(".side.left").replace("note", "notee")
    caution = parse_piece(text).cautions[-1]
    assert text.split("\n")[caution.line - 1] == 'notee = "quiet grain"'
    assert (caution.address, caution.nearest) == ('board."side.left".notee', "note")
