"""Each trade's term in the form has a sketch: inside its square, with a dimension line where the input is a size."""

from __future__ import annotations

from functools import cache

import pytest

from shopdraw.drawing.bounds import marks_box
from shopdraw.drawing.mark import ArcMark, Arrow, Line, Meaning
from shopdraw.editor.field import FormField, form_of
from shopdraw.editor.shown_size import shown_for
from shopdraw.editor.sketch import HEIGHT, SKETCHES, WIDTH, sketch_of
from shopdraw.editor.state import Setting, changed_text, state_of
from shopdraw.shipped import sample_names, sample_path

NOT_OF_THE_TRADE = {
    "piece", "use", "board", "climate", "load", "drawing", "fitting", "photo", "note", "silence", "move", "dimension",
    "plane", "revision", "variant",
}  # fmt: skip
"""Tables of words, of moisture and loads, of sheets: nothing in them has a shape."""
IN_WORDS = {
    "stock.species", "stock.kind", "stock.nominal", "stock.coefficient", "stock.density", "stock.stiffness",
    "stock.measured", "stock.waste", "stock.waste_reason", "stock.sheet", "cut.board", "cut.reason",
}  # fmt: skip


@cache
def fields() -> dict[str, FormField]:
    """Every input of every sample, by table and last key."""
    found: dict[str, FormField] = {}
    for name in sample_names():
        text = sample_path(name).read_text(encoding="utf-8")
        text = changed_text(text, (Setting("cut.try.board", "side.left"), Setting("cut.try.reason", "try"),
                                   Setting("cut.try.along", 100), Setting("cut.try.across", 100)))  # fmt: skip
        state = state_of(text, name)
        assert state.design is not None, [fault.right for fault in state.faults]
        for group in form_of(state, shown_for(state.design), "side.left"):
            for field in group.fields:
                keys = field.address.replace('"', "").split(".")
                found[f"{keys[0]}.{keys[-1]}"] = field
    return found


def test_every_term_of_the_trade_has_a_sketch() -> None:
    there = fields()
    trade = {name for name in there if name.partition(".")[0] not in NOT_OF_THE_TRADE} - IN_WORDS
    assert len(trade) > 150
    assert {name for name in trade if not sketch_of(there[name].address)} == set()


def test_what_is_a_size_is_measured_in_its_sketch() -> None:
    sizes = {name for name, field in fields().items() if field.kind in ("length", "offset")}
    unmeasured = {
        name
        for name in sizes & set(SKETCHES)
        if not any(isinstance(mark, Line) and mark.meaning is Meaning.SIZE for mark in SKETCHES[name]())
    }
    assert unmeasured == set()


@pytest.mark.parametrize("name", sorted(SKETCHES))
def test_a_sketch_stands_in_its_square_and_says_something(name: str) -> None:
    marks = SKETCHES[name]()
    assert len(marks) > 3
    plain = [mark for mark in marks if isinstance(mark, Line | ArcMark | Arrow)]
    assert len(plain) == len(marks)
    x0, y0, x1, y1 = marks_box(plain)
    assert x0 >= 0.0
    assert y0 >= 0.0
    assert x1 <= WIDTH
    assert y1 <= HEIGHT


def test_no_sketch_is_there_for_an_input_that_isnt() -> None:
    assert {name for name in SKETCHES if name not in fields()} == set()
