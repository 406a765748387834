"""Names of layers tell depths in the file's own unit."""

import pytest

from shopdraw.cnc.flat import Unit, is_layer_name
from shopdraw.cnc.layer import depth_figure, distinct, sink_layers


@pytest.mark.parametrize(
    ("depth", "mm", "inch"),
    [(6.35, "635H", "250T"), (12.7, "1270H", "500T"), (9.525, "953H", "375T"), (0.3, "30H", "12T")],
)
def test_case_26_depth_is_told_in_the_files_own_unit(depth: float, mm: str, inch: str) -> None:
    assert depth_figure(depth, Unit.MM) == mm
    assert depth_figure(depth, Unit.INCH) == inch


def test_depths_that_round_alike_get_numbers() -> None:
    names = sink_layers([6.351, 6.349, 9.0], Unit.MM)
    assert names == {6.349: "SINK_635H_N1", 6.351: "SINK_635H_N2", 9.0: "SINK_900H"}
    assert all(map(is_layer_name, names.values()))


def test_noise_makes_no_second_layer() -> None:
    assert distinct([6.35, 6.35 + 1e-9, 9.0]) == (6.35, 9.0)
