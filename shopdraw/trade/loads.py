"""What furniture carries, how far a shelf may sag, which storage the tip-over rule covers, how much room knees need."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from shopdraw.trade.table import Source, sources, table

GRAVITY = 9.80665
"""m/s², standard gravity."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure of the trade, with its source."""

    value: float
    source: Source


@lru_cache
def figure(group: str, name: str) -> Figure:
    """A figure of the table `loads`: `figure("load", "shelf")`.

    Args:
        group: "load" (kg a metre, kg/m³, kg), "limit" (shares, MPa), "scope" (mm, kg, litres), "knees",
            "writing" (mm) or "lid" (degrees, mm).
        name: within the group.
    Raises:
        KeyError: there is none.
    """
    row = table("loads")[group][name]
    return Figure(float(row["value"]), sources("loads")[row["source"]])


def sag_mm(span_mm: float, width_mm: float, thickness_mm: float, kg_per_m: float, stiffness_mpa: float) -> float:
    """How far an evenly loaded shelf on two ends sags at once, in the middle, mm: 5 w L⁴ / (384 E I), I = b t³ / 12.

    Source:
        Wood Handbook FPL-GTR-190 (2010), eq. 9-2 and 9-3, without the part of shear.
    """
    load = kg_per_m * GRAVITY / 1000.0
    inertia = width_mm * thickness_mm**3 / 12.0
    return 5.0 * load * span_mm**4 / (384.0 * stiffness_mpa * inertia)


def in_scope_of_tip_over_rule(height_mm: float, mass_kg: float, room_litres: float) -> bool:
    """Whether free-standing clothing storage of this size must pass the US rule's tests; other furniture needn't.

    Source:
        16 CFR 1261, ASTM F2057-23: 27 in and taller, 30 lb and heavier, 3.2 ft³ and more of enclosed room.
    """
    sizes = {"height": height_mm, "mass": mass_kg, "room": room_litres}
    return all(size >= figure("scope", name).value for name, size in sizes.items())
