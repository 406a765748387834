"""Every shipped table is whole: each row names a source that the table lists."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest

from shopdraw.trade.table import NotInTable, sources, table

TABLES = ["species", "lumber", "sheet_goods", "paper", "drafting", "hardware", "cautions"]
MARKS = {"published", "second-hand", "derived", "practice", "memory"}


def _source_keys(value: Any) -> Iterator[str]:
    if isinstance(value, dict):
        for key, inner in value.items():
            if key == "source" or key.endswith("_source"):
                yield inner
            else:
                yield from _source_keys(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from _source_keys(inner)


@pytest.mark.parametrize("name", TABLES)
def test_every_source_is_listed_and_used(name: str) -> None:
    rows = {key: value for key, value in table(name).items() if key != "source"}
    assert set(_source_keys(rows)) == set(sources(name))


@pytest.mark.parametrize("name", TABLES)
def test_every_table_row_names_a_source(name: str) -> None:
    for key, rows in table(name).items():
        if isinstance(rows, list):
            assert all(any(field.endswith("source") for field in row) for row in rows), key


@pytest.mark.parametrize("name", TABLES)
def test_sources_are_publications_not_addresses(name: str) -> None:
    for source in sources(name).values():
        assert source.mark in MARKS
        assert "http" not in source.publication
        assert "www" not in source.publication
        assert (source.mark == "practice") == (source.publication == "common practice")
        assert source.mark != "memory" or "from memory, to be confirmed" in source.publication


def test_the_nearest_names_keep_their_spelling() -> None:
    error = NotInTable("paper", "ansi x", ["ANSI A", "A1"])
    assert error.nearest == ("ANSI A",)
    assert str(error) == 'no paper "ansi x"; the nearest are ANSI A'


def test_where_nothing_is_near_the_first_names_are_given() -> None:
    assert NotInTable("paper", "", ["A0", "A1", "A2", "A3"]).nearest == ("A0", "A1", "A2")
