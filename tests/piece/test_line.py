"""Lines of addresses: where each key of a TOML text stands."""

import tomllib
from collections.abc import Iterator

import pytest
import tomlkit
from hypothesis import given
from hypothesis import strategies as st

from shopdraw.piece.line import line_of, lines_of
from tests.piece.sample import SAMPLE


def addresses(node: object, path: tuple[str | int, ...] = ()) -> Iterator[tuple[str | int, ...]]:
    if path:
        yield path
    items = node.items() if isinstance(node, dict) else enumerate(node) if isinstance(node, list) else ()
    for key, value in items:
        yield from addresses(value, (*path, key))


@pytest.mark.parametrize(
    ("path", "key"),
    [
        (("format",), "format"),
        (("case", "depth"), "depth"),
        (("stock", "cherry 4/4", "thickness"), "thickness"),
        (("opening", "bank", "divide", "keys", 2), "divide"),
        (("drawer", "2"), "[drawer.2]"),
        (("drawer", "2", "knobs"), "knobs"),
        (("note", "grain", "text"), "text"),
        (("variant", "tall", "slant", "writing_height"), "slant.writing_height"),
    ],
)
def test_an_address_has_the_line_of_its_key(path: tuple[str | int, ...], key: str) -> None:
    assert SAMPLE.split("\n")[line_of(SAMPLE, path) - 1].startswith(key)


def test_what_is_not_there_has_the_line_of_the_nearest_table_above() -> None:
    assert line_of(SAMPLE, ("case", "widht", "x")) == line_of(SAMPLE, ("case",)) > 0
    assert line_of(SAMPLE, ("nothing", "here")) == 0


def test_each_item_of_a_list_of_tables_has_its_own_line() -> None:
    text = "[[a]]\nx = 1\n[[a.b]]\ny = 1\n[[a]]\n[[a.b]]\n\n[[a.b]]\ny = 2\n"
    assert line_of(text, ("a", 0, "x")) == 2
    assert line_of(text, ("a", 0, "b", 0, "y")) == 4
    assert line_of(text, ("a", 1, "b", 1, "y")) == 9


def test_text_in_many_lines_and_marks_in_quotes_lead_nobody_astray() -> None:
    text = "a = '''\n[b]\nc = 1\n'''\n\"b.c\" = { d = \"}\", e = [ # ]\n 1,\n [2],\n] }\n"
    text += "f = \"\"\"\\\"\"\"\n\"\"\"\ng = 1\n"
    tables = tomllib.loads(text)
    assert set(addresses(tables)) == set(lines_of(text))
    assert line_of(text, ("b.c", "d")) == 5
    assert line_of(text, ("b.c", "e", 1)) == 7
    assert line_of(text, ("g",)) == 11


def test_every_address_of_the_sample_has_a_line() -> None:
    assert set(addresses(tomllib.loads(SAMPLE))) == set(lines_of(SAMPLE))


KEYS = st.text(st.sampled_from("ab.\"' #=[é"), min_size=1, max_size=4)
VALUES = st.recursive(
    st.integers(-9, 9) | st.booleans() | st.text(st.sampled_from("ab\"'\n\\#[]{},="), max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(KEYS, inner, max_size=3),
    max_leaves=8,
)


@given(st.dictionaries(KEYS, VALUES, max_size=4))
def test_every_address_of_any_tables_has_a_line(tables: dict[str, object]) -> None:
    # Another library writes the text; the standard library reads it.
    text = tomlkit.dumps(tables)
    assert set(addresses(tomllib.loads(text))) == set(lines_of(text))


@given(st.text(st.sampled_from("ab=.[]{}\"'#\n ,1\\"), max_size=40))
def test_any_text_at_all_gives_lines_that_it_has(text: str) -> None:
    assert all(1 <= line <= text.count("\n") + 1 for line in lines_of(text).values())
