"""Layers of router files follow their grammar, and each takes its own kind of shape."""

import math

import pytest

from shopdraw.cnc.flat import Circle, NotFlat, OpenLine, Operation, is_layer_name
from shopdraw.shape.path import rectangle


@pytest.mark.parametrize(
    ("name", "right"),
    [
        ("SINK_635H", True), ("SINK_250T_N2", True), ("HOLE_1200H", True), ("HOLE_ALL", True), ("VEE_300H_90", True),
        ("MARK_30H", True), ("THROUGH_ALL", True), ("NOTE", True), ("STOCK", True), ("SINK_ALL", False),
        ("sink_635H", False), ("SINK_6.35", False), ("THROUGH", False), ("VEE_300H", False), ("SINK_635H/2", False),
    ],
)  # fmt: skip
def test_layer_names_follow_their_grammar(name: str, right: bool) -> None:
    assert is_layer_name(name) is right


@pytest.mark.parametrize(
    ("layer", "shape"),
    [
        ("SINK_635", rectangle(0, 0, 1, 1)),
        ("HOLE_ALL", rectangle(0, 0, 1, 1)),
        ("SINK_635H", OpenLine((0, 0), (1, 1))),
        ("VEE_300H_90", rectangle(0, 0, 1, 1)),
        ("HOLE_ALL", Circle((math.nan, 0), 1.0)),
    ],
)
def test_operation_that_its_layer_does_not_take_is_refused(layer: str, shape: object) -> None:
    with pytest.raises(NotFlat, match=layer):
        Operation(layer, shape)  # type: ignore[arg-type]
