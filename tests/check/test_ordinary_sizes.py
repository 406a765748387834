"""Width, height, depth, writing height and one of angle and top depth are enough for a sound desk."""

from itertools import product

import pytest

from shopdraw.build import build
from shopdraw.check.gather import findings
from shopdraw.piece.design import Design

WIDTHS = (520.0, 800.0, 1100.0)
HEIGHTS = ((715.0, 240.0), (760.0, 300.0))
"""Writing height, and what the case is higher than that."""
DEPTHS = (430.0, 520.0)
SLANTS = (("angle", 45.0), ("angle", 52.0), ("top_depth", 0.48))


@pytest.mark.parametrize("seat", [None, "on", "flush"])
@pytest.mark.parametrize("units", ["mm", "inch"])
def test_five_numbers_are_enough_for_a_desk_with_nothing_that_must_be_fixed(seat, units):
    for number, (width, (writing, more), depth, (key, value)) in enumerate(product(WIDTHS, HEIGHTS, DEPTHS, SLANTS)):
        if seat is not None and number % 3:
            continue
        slant = {"writing_height": writing, key: value * depth if key == "top_depth" else value}
        if seat is not None:
            slant["seat"] = seat
        case = {"width": width, "height": writing + more, "depth": depth}
        design = Design.model_validate({"piece": {"units": units}, "case": case, "slant": slant})
        bad = [f.message for f in findings(design, build(design)) if f.severity.value == "must-fix"]
        assert bad == [], f"{case}, {slant}"
