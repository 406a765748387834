"""Formats: earlier ones are brought up in order, later ones are refused."""

import tomllib

import pytest
from tomlkit.toml_document import TOMLDocument

from shopdraw.piece.migration import FORMAT, MIGRATIONS, LaterFormat, Migration, migrated


def rename(document: TOMLDocument) -> None:
    document["case"]["height"] = document["case"].pop("hight")


def double(document: TOMLDocument) -> None:
    document["case"]["height"] = 2 * document["case"]["height"]


STEPS = (Migration(1, "hight is spelt height", rename), Migration(2, "height is doubled", double))
OLD = "format = 1 # first\n\n[case]\n# from the floor\nhight = 5\nwidth = 7 # wide\n"


def test_steps_run_in_order_from_the_files_own_format() -> None:
    text, said = migrated(OLD, 1, STEPS, latest=3)
    assert tomllib.loads(text) == {"format": 3, "case": {"height": 10, "width": 7}}
    assert said == ("hight is spelt height", "height is doubled")


def test_steps_before_the_files_format_are_left_out() -> None:
    text, said = migrated(OLD.replace("hight", "height").replace("1", "2", 1), 2, STEPS, latest=3)
    assert tomllib.loads(text)["case"]["height"] == 10
    assert said == ("height is doubled",)


def test_comments_stay() -> None:
    text, _ = migrated(OLD, 1, STEPS, latest=3)
    assert all(comment in text for comment in ("# first", "# from the floor", "# wide"))


def test_the_present_format_is_left_as_it_is() -> None:
    assert migrated(OLD, FORMAT) == (OLD, ())


def test_a_later_format_is_refused() -> None:
    with pytest.raises(LaterFormat):
        migrated(OLD, FORMAT + 1)


def test_each_format_before_the_present_one_has_its_step() -> None:
    assert [step.before for step in MIGRATIONS] == list(range(1, FORMAT))
