"""Lumber as it is sold: dressed softwood, hardwood by quarters, board feet."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.measure import MM_PER_INCH
from shopdraw.trade.table import NotInTable, Row, Source, inches, sources, table

_INCH = float(MM_PER_INCH)
_FOOT = 12 * _INCH
_BOARD_FOOT = 144 * _INCH**3
"""A board foot is 144 cubic inches; mm³."""
_NOISE = 1e-9


@dataclass(frozen=True, slots=True)
class Dressed:
    """A dressed softwood size.

    Attributes:
        nominal: as sold: "1x8".
        thickness_mm, width_mm: least dressed sizes.
        source: of both.
    """

    nominal: str
    thickness_mm: float
    width_mm: float
    source: Source


@dataclass(frozen=True, slots=True)
class Quarter:
    """A hardwood thickness.

    Attributes:
        name: as sold: "5/4".
        rough_mm: rough thickness, the one that is paid for.
        surfaced_mm: surfaced two sides, the larger of the usual figures.
        surfaced_least_mm: the smaller of them.
        source: of all three.
    """

    name: str
    rough_mm: float
    surfaced_mm: float
    surfaced_least_mm: float
    source: Source


def dressed_softwood(nominal: str, *, green: bool = False) -> Dressed:
    """The least dressed size of a softwood board.

    Args:
        nominal: thickness x width in inches, as sold: "1x8", "1-1/4x6".
        green: green rather than dry (at most 19 % moisture).
    Raises:
        NotInTable: there is no such thickness or width.
    Source:
        PS 20.
    """
    thickness, _, width = nominal.lower().replace("×", "x").replace(" ", "").partition("x")
    state = "green" if green else "dry"
    thick, wide = _softwood("softwood_thickness", thickness), _softwood("softwood_width", width)
    return Dressed(
        f"{thickness}x{width}", inches(thick[state]), inches(wide[state]), sources("lumber")[thick["source"]]
    )


def _softwood(rows: str, nominal: str) -> Row:
    known: dict[str, Row] = {row["nominal"]: row for row in table("lumber")[rows]}
    if nominal not in known:
        raise NotInTable(rows.replace("_", " "), nominal, known)
    return known[nominal]


@lru_cache
def hardwood_quarters() -> tuple[Quarter, ...]:
    """Hardwood thicknesses as sold, thinnest first."""
    return tuple(_quarter(row) for row in table("lumber")["hardwood"])


def _quarter(row: Row) -> Quarter:
    surfaced = inches(row["surfaced"])
    least = inches(row["surfaced_least"]) if "surfaced_least" in row else surfaced
    return Quarter(row["quarters"], inches(row["rough"]), surfaced, least, sources("lumber")[row["source"]])


def hardwood_quarter(name: str) -> Quarter:
    """The hardwood thickness of that name.

    Raises:
        NotInTable: there is none.
    """
    for quarter in hardwood_quarters():
        if quarter.name == name.strip():
            return quarter
    raise NotInTable("hardwood thickness", name, [quarter.name for quarter in hardwood_quarters()])


def rough_quarter_for(finished_thickness_mm: float) -> Quarter | None:
    """The thinnest hardwood thickness that can be surfaced to the finished one; None where only a glue-up will do."""
    for quarter in hardwood_quarters():
        if quarter.surfaced_mm >= finished_thickness_mm - _NOISE:
            return quarter
    return None


def board_feet(thickness_mm: float, width_mm: float, length_mm: float) -> float:
    """Board feet, not rounded: cubic inches / 144. Sizes in mm."""
    return thickness_mm * width_mm * length_mm / _BOARD_FOOT


def surface_measure(width_mm: float, length_mm: float) -> int:
    """Surface measure of a hardwood board, whole square feet: inches of width × whole feet of length / 12.

    The length is cut down to the whole foot; half a square foot goes up.

    Source:
        American Hardwood Export Council, measurement of sawn lumber (NHLA rules); what half a foot does is common
        practice.
    """
    feet = math.floor(length_mm / _FOOT + _NOISE)
    return math.floor(width_mm / _INCH * feet / 12 + 0.5 + _NOISE)


def tally_board_feet(nominal_thickness_mm: float, width_mm: float, length_mm: float) -> float:
    """Board feet as a hardwood yard tallies them: surface measure × nominal thickness in inches, at least 1.

    Args:
        nominal_thickness_mm: rough, as sold; `Quarter.rough_mm`.
        width_mm, length_mm: of the rough board.
    Source:
        As `surface_measure`; lumber under 1 in is tallied as 1 in.
    """
    return surface_measure(width_mm, length_mm) * max(1.0, nominal_thickness_mm / _INCH)


def export_tally(width_mm: float, length_mm: float) -> tuple[int, int]:
    """Width in whole inches and length in whole feet as written on an export tally; half an inch is dropped.

    Source:
        American Hardwood Export Council: 5 1/4 in by 8 1/2 ft is written 5 in and 8 ft. What half an inch does is
        common practice.
    """
    width = math.ceil(width_mm / _INCH - 0.5 - _NOISE)
    return width, math.floor(length_mm / _FOOT + _NOISE)
