"""What a dragged size holds to: the piece's step, and sizes that mean something (equal, a plain ratio). Knows no Qt."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.editor.tongue import translate
from shopdraw.measure import Unit

GOLDEN = (1 + math.sqrt(5)) / 2
RATIOS: tuple[tuple[str, float], ...] = (
    ("1 : 1", 1.0),
    ("√2 : 1", math.sqrt(2.0)),
    ("3 : 2", 3 / 2),
    ("5 : 3", 5 / 3),
    ("golden section", GOLDEN),
    ("2 : 1", 2.0),
)
"""Ratios of the longer to the shorter side that a maker looks for, by the name shown."""


@dataclass(frozen=True, slots=True)
class Magnet:
    """A value worth holding to.

    Attributes:
        value: mm or degrees.
        says: what it is: "width : height = 3 : 2".
    """

    value: float
    says: str


@dataclass(frozen=True, slots=True)
class Held:
    """Where a drag comes to rest.

    Attributes:
        value: mm or degrees.
        says: the magnet that holds it, or "".
    """

    value: float
    says: str = ""


def steps(unit: Unit, denominator: int) -> tuple[float, float]:
    """The step of a drag and the fine one with Shift, mm: 5 and 0.5, or 1/4 in and the finest printed fraction."""
    if unit is Unit.MM:
        return 5.0, 0.5
    inch = float(unit.in_mm)
    return inch / 4, inch / max(4, denominator)


def held(wanted: float, step: float, fine_step: float, magnets: Sequence[Magnet], reach: float, *, fine: bool) -> Held:
    """The value that a hand at `wanted` gives.

    Args:
        wanted: where the pointer stands, mm or degrees.
        step, fine_step: without and with Shift.
        magnets: values worth holding to; none of them holds a fine drag.
        reach: how near a magnet must be, in the value's unit.
        fine: Shift is down.
    """
    if fine:
        return Held(on_step(wanted, fine_step))
    near = min(magnets, key=lambda magnet: abs(magnet.value - wanted), default=None)
    if near is not None and abs(near.value - wanted) <= reach:
        return Held(on_step(near.value, fine_step), near.says)
    return Held(on_step(wanted, step))


def on_step(value: float, step: float) -> float:
    """The nearest whole number of steps."""
    return round(round(value / step) * step, 9)


def ratio_magnets(other: float, name: str) -> tuple[Magnet, ...]:
    """Sizes that stand to another one in a plain ratio, longer or shorter.

    Args:
        other: the other size, mm.
        name: how the pair is called: "width : height".
    """
    found = []
    for key, ratio in RATIOS:
        says = translate("Ratio", key)
        found.append(Magnet(other * ratio, f"{name} = {says}"))
        if ratio != 1.0:
            left, _, right = says.partition(" : ")
            turned = f"{right} : {left}" if right else translate("Ratio", "{name}, upright").format(name=says)
            found.append(Magnet(other / ratio, f"{name} = {turned}"))
    return tuple(found)
