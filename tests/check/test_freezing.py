"""Freezing: what can't be kept is refused with what would be right; the rest of the file stays as it is."""

import tomllib

import pytest

from shopdraw.build import build
from shopdraw.check.freezing import CannotFreeze, frozen_text
from shopdraw.piece.reading import parse_piece
from shopdraw.shipped import sample_path

TEXT = sample_path("pilot-station-desk").read_text(encoding="utf-8")
PIECE = parse_piece(TEXT)
ASSEMBLY = build(PIECE.design)


def test_a_revision_lists_every_board_and_leaves_the_rest_as_it_was():
    text = frozen_text(TEXT, PIECE.design, ASSEMBLY, "B", ("1L",), "2026-05-01")
    assert text.startswith(TEXT.rstrip())
    table = tomllib.loads(text)["revision"]["B"]
    assert [line.split()[0] for line in table["boards"]] == [board.id for board in ASSEMBLY.boards]
    assert (table["cut"], table["date"]) == (["1L"], "2026-05-01")


@pytest.mark.parametrize(
    ("name", "cut", "said"),
    [("", (), "letters and figures"), ("a b", (), "letters and figures"), ("B", ("99",), "label or id, such as 1L")],
)
def test_what_is_no_name_or_no_board_is_refused(name, cut, said):
    with pytest.raises(CannotFreeze, match=said):
        frozen_text(TEXT, PIECE.design, ASSEMBLY, name, cut)


def test_a_revision_is_never_frozen_twice():
    text = frozen_text(TEXT, PIECE.design, ASSEMBLY, "B")
    with pytest.raises(CannotFreeze, match="frozen already"):
        frozen_text(text, parse_piece(text).design, ASSEMBLY, "B")
