"""The judges of router files see the faults that are planted for them."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from shopdraw.cnc.flat import Operation
from shopdraw.cnc.part import RouterPart
from shopdraw.cnc.setting import Setting
from shopdraw.shape.path import Path as Outline
from tests.cnc.router_reader import one_part, written
from tests.cnc.rules import by_shapes, by_tags, counts_add_up, keeps_every_rule, reflected, second_is_turned
from tests.write.dxf_tags import entities_of

SAMPLE = "pilot-station-desk.piece"


def side() -> RouterPart:
    return one_part(SAMPLE, "side.left")


def with_operations(made: RouterPart, operations: tuple[Operation, ...], at: int = 0) -> RouterPart:
    settings = list(made.settings)
    settings[at] = replace(settings[at], flat=replace(settings[at].flat, operations=operations))
    return replace(made, settings=tuple(settings))


def moved(setting: Setting, by: float) -> tuple[Operation, ...]:
    """The first pocket moved along the board."""
    operations = list(setting.flat.operations)
    at = next(i for i, one in enumerate(operations) if isinstance(one.shape, Outline))
    shape = operations[at].shape
    assert isinstance(shape, Outline)
    operations[at] = replace(operations[at], shape=shape.moved(by, 0.0))
    return tuple(operations)


def test_what_is_right_passes(tmp_path: Path) -> None:
    assert keeps_every_rule(side(), tmp_path) == 1
    reflected(side(), one_part(SAMPLE, "side.right"), tmp_path)


def test_a_right_side_that_is_a_left_one_again_is_seen(tmp_path: Path) -> None:
    with pytest.raises(AssertionError):
        reflected(side(), side(), tmp_path)


@pytest.mark.parametrize("by", [0.01, 1.0])
def test_a_dado_out_of_place_on_one_hand_is_seen(by: float, tmp_path: Path) -> None:
    right = one_part(SAMPLE, "side.right")
    with pytest.raises(AssertionError):
        reflected(side(), with_operations(right, moved(right.settings[0], by)), tmp_path)


def test_a_doubled_pocket_is_seen(tmp_path: Path) -> None:
    made = side()
    (setting,) = made.settings
    twice = with_operations(made, (*setting.flat.operations, setting.flat.operations[0]))
    with pytest.raises(AssertionError):
        by_shapes(twice, twice.settings[0], written(twice.settings[0].flat), tmp_path)


def test_an_open_line_on_a_cutting_layer_is_seen() -> None:
    made = side()
    (setting,) = made.settings
    entities = entities_of(written(setting.flat), "ENTITIES")
    by_tags(made, setting, entities)
    loose = next(e for e in entities if (e.get(8) or "").startswith("SINK"))
    loose.tags = [(code, "0" if code == 70 else value) for code, value in loose.tags]
    with pytest.raises(AssertionError):
        by_tags(made, setting, entities)


def test_a_lost_cut_is_seen() -> None:
    made = side()
    (setting,) = made.settings
    with pytest.raises(AssertionError):
        counts_add_up(replace(made, settings=(replace(setting, cuts=setting.cuts[1:]),)))


def test_an_outline_cut_twice_is_seen() -> None:
    two = one_part(SAMPLE, "frame.1.runner-left")
    first, second = two.settings
    wrong = replace(two, settings=(replace(first, flat=replace(first.flat, cut_outline=True)), second))
    with pytest.raises(AssertionError):
        counts_add_up(wrong)


def test_a_second_face_that_is_not_turned_is_seen(tmp_path: Path) -> None:
    two = one_part(SAMPLE, "frame.1.runner-left")
    first, second = two.settings
    assert second.flat.outline is not None
    shifted = second.flat.outline.moved(0.0, 0.5)
    wrong = replace(two, settings=(first, replace(second, flat=replace(second.flat, outline=shifted))))
    with pytest.raises(AssertionError):
        second_is_turned(wrong, tmp_path)
