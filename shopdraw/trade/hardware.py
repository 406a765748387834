"""Hardware: usual hinges and knobs to begin with, wood screws and their pilot holes."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from shopdraw.trade.table import NotInTable, Source, inches, sources, table


@dataclass(frozen=True, slots=True)
class ButtHinge:
    """A butt hinge; a usual size, to be replaced by the one in hand.

    Attributes:
        key: as in piece files.
        name: as people read it.
        length_mm: along the pin.
        open_width_mm: over both leaves laid flat, barrel included.
        leaf_thickness_mm: what a leaf is let in by.
        barrel_mm: diameter of the barrel.
        screws_per_leaf: number of screws.
        screw_gauge: their gauge.
        source: "common practice".
    """

    key: str
    name: str
    length_mm: float
    open_width_mm: float
    leaf_thickness_mm: float
    barrel_mm: float
    screws_per_leaf: int
    screw_gauge: int
    source: Source

    @property
    def leaf_reach_mm(self) -> float:
        """How far a leaf reaches from the pin's axis."""
        return self.open_width_mm / 2


@dataclass(frozen=True, slots=True)
class Knob:
    """A drawer knob; a usual size, to be replaced by the one in hand.

    Attributes:
        key: as in piece files.
        name: as people read it.
        diameter_mm: at its widest.
        projection_mm: how far it stands out from the front.
        screw_mm: diameter of its screw's hole.
        source: "common practice".
    """

    key: str
    name: str
    diameter_mm: float
    projection_mm: float
    screw_mm: float
    source: Source


@dataclass(frozen=True, slots=True)
class WoodScrew:
    """A gauge of wood screw.

    Attributes:
        gauge: its number.
        shank_mm: diameter of the shank.
        root_mm: diameter at the root of the thread, or None where it isn't known.
        source: of both.
    """

    gauge: int
    shank_mm: float
    root_mm: float | None
    source: Source


@lru_cache
def butt_hinges() -> tuple[ButtHinge, ...]:
    """Usual butt hinges, smallest first."""
    known = sources("hardware")
    return tuple(ButtHinge(**{**row, "source": known[row["source"]]}) for row in table("hardware")["butt_hinge"])


@lru_cache
def knobs() -> tuple[Knob, ...]:
    """Usual knobs, smallest first."""
    known = sources("hardware")
    return tuple(Knob(**{**row, "source": known[row["source"]]}) for row in table("hardware")["knob"])


def butt_hinge(key: str) -> ButtHinge:
    """The butt hinge of that key.

    Raises:
        NotInTable: there is none.
    """
    for hinge in butt_hinges():
        if hinge.key == key:
            return hinge
    raise NotInTable("butt hinge", key, [hinge.key for hinge in butt_hinges()])


def knob(key: str) -> Knob:
    """The knob of that key.

    Raises:
        NotInTable: there is none.
    """
    for one in knobs():
        if one.key == key:
            return one
    raise NotInTable("knob", key, [one.key for one in knobs()])


@lru_cache
def wood_screw(gauge: int) -> WoodScrew:
    """The wood screw of that gauge.

    Raises:
        NotInTable: there is none.
    """
    rows = table("hardware")["wood_screws"]
    for row in rows["rows"]:
        if row["gauge"] == gauge:
            root = inches(row["root"]) if "root" in row else None
            return WoodScrew(gauge, inches(row["shank"]), root, sources("hardware")[rows["source"]])
    raise NotInTable("wood screw gauge", str(gauge), [str(row["gauge"]) for row in rows["rows"]])


def pilot_mm(root_mm: float, specific_gravity: float) -> float | None:
    """Diameter of the pilot hole for a wood screw that is pulled along its axis; None where none is needed.

    Args:
        root_mm: diameter at the root of the thread.
        specific_gravity: of the wood.
    Source:
        NDS, wood screws: 90 % of the root from 0.6 up, 70 % from 0.5 to 0.6.
    """
    for row in table("hardware")["pilot"]["rows"]:
        if specific_gravity >= row["from_sg"]:
            return float(row["share"] * root_mm)
    return None


@lru_cache
def clearance_hole_mm(gauge: int) -> float:
    """Diameter of the hole that a wood screw of that gauge passes through with a little play.

    Raises:
        NotInTable: there is none.
    """
    rows = table("hardware")["clearance_holes"]["rows"]
    for row in rows:
        if row["gauge"] == gauge:
            return float(row["hole"])
    raise NotInTable("screw hole's gauge", str(gauge), [str(row["gauge"]) for row in rows])


def thread_mm(length_mm: float) -> float:
    """Length of a wood screw's thread, about two thirds of the screw. Source: Noyes, Handwork in Wood."""
    return float(length_mm * table("hardware")["thread"]["share_of_length"])


@dataclass(frozen=True, slots=True)
class Biscuit:
    """A biscuit, mm; half of its width lies in each board.

    Attributes:
        key: its size as the trade numbers it.
        length_mm, width_mm, thickness_mm: dry.
        source: of the sizes.
    """

    key: str
    length_mm: float
    width_mm: float
    thickness_mm: float
    source: Source


@lru_cache
def biscuits() -> tuple[Biscuit, ...]:
    """Usual biscuits, smallest first."""
    found = table("hardware")["biscuits"]
    known = sources("hardware")
    return tuple(
        Biscuit(row["key"], row["length"], row["width"], row["thickness"], known[row.get("source", found["source"])])
        for row in found["rows"]
    )


@lru_cache
def screw_lengths(inch: bool) -> tuple[float, ...]:
    """Usual lengths of wood screws, shortest first, mm: those sold by the inch, or by the mm."""
    rows = table("hardware")["screw_lengths"]
    return tuple(inches(one) for one in rows["inch"]) if inch else tuple(map(float, rows["mm"]))


def screw_gauge(through_mm: float) -> int:
    """The usual gauge of a wood screw that passes so much wood before it bites."""
    rows = table("hardware")["screw_lengths"]["gauge_from"]
    return int([row["gauge"] for row in rows if through_mm >= row["through"]][-1])
