"""Every input of a piece that shapes its boards is set by some test that knows what comes of it."""

import re
import typing
from collections.abc import Iterable
from pathlib import Path

import pytest
from pydantic import BaseModel

from shopdraw.piece.design import CutTable, Design, DivideTable, FittingTable, LevelTable, OpeningTable, StockTable

TABLES = (
    "case", "slant", "lid", "supports", "base", "back", "frame", "drawer", "pins", "face", "writing", "compartments",
    "climate", "load",
)  # fmt: skip
KEYED = (StockTable, LevelTable, OpeningTable, DivideTable, CutTable, FittingTable)
TESTS = Path(__file__).parents[1]
BY_CHANCE = re.compile("random|no_effect|test_inputs")
"""Tests that set everything without knowing what comes of it."""


def tables() -> Iterable[tuple[str, type[BaseModel]]]:
    for name in TABLES:
        found = Design.model_fields[name].annotation
        every = (*typing.get_args(found), found)
        yield name, next(one for one in every if isinstance(one, type) and issubclass(one, BaseModel))
    for model in KEYED:
        yield model.__name__.removesuffix("Table").lower(), model


def words() -> str:
    folders = ("build", "check", "piece", "lists", "trade", "cnc")
    files = [file for folder in folders for file in sorted((TESTS / folder).rglob("*.py"))]
    return "\n".join(file.read_text("utf-8") for file in files if _knows(file))


def _knows(file: Path) -> bool:
    build = file.parent.name == "build" and file.name == "test_inputs.py"
    return build or (file.name.startswith(("test_", "desks")) and not BY_CHANCE.search(file.name))


def untested(key: str, text: str) -> bool:
    """Whether no test sets a key: as a dict's, as a keyword or in a piece file's text."""
    return re.search(rf"""["']{key}["']\s*:|\b{key}\s*=""", text) is None


@pytest.mark.parametrize(("name", "model"), list(tables()))
def test_each_input_has_a_test_that_sets_it(name: str, model: type[BaseModel]) -> None:
    text = words()
    missing = [key for key in model.model_fields if key != "each" and untested(key, text)]
    assert missing == [], f"[{name}] {missing}: no test sets these"


def test_a_key_that_no_test_sets_is_found() -> None:
    assert untested("nothing_like_it", words())
    assert untested("lap", "overlap = 3")
    assert not untested("lap", '{"lap": 3.0}')
