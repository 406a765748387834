"""Which stock a member is made of, and how that stock moves with the seasons."""

from __future__ import annotations

from collections.abc import Mapping

from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.piece.design import Design, StockTable
from shopdraw.trade.moisture import NoSuchAir, equilibrium_moisture
from shopdraw.trade.movement import coefficient
from shopdraw.trade.species import species
from shopdraw.trade.table import NotInTable
from shopdraw.wood.assembly import Moisture
from shopdraw.wood.board import Stock
from shopdraw.wood.glue_up import Width

LEAST_STAVE_MM = 20.0
"""No board of a glued-up panel is narrower than this (common practice)."""
SHEET_DENSITY = 680.0
"""Birch plywood, kg/m³ (common practice); a piece may state its own."""

STANDARD: Mapping[str, tuple[str, str, float, float, str, str]] = {
    "primary": ("cherry_black", "solid", 20.0, 19.05, "20 mm", "4/4"),
    "secondary": ("yellow_poplar", "solid", 20.0, 19.05, "20 mm", "4/4"),
    "drawer": ("yellow_poplar", "solid", 12.0, 12.7, "12 mm", "4/4"),
    "sheet": ("birch plywood", "sheet", 6.0, 6.0, "6 mm", "6 mm"),
    "block": ("yellow_poplar", "solid", 45.0, 44.45, "45 mm", "8/4"),
    "thin": ("cherry_black", "solid", 8.0, 7.9375, "8 mm", "4/4"),
    "small": ("yellow_poplar", "solid", 7.0, 6.35, "7 mm", "4/4"),
    "small-front": ("cherry_black", "solid", 12.0, 12.7, "12 mm", "4/4"),
    "thin-sheet": ("birch plywood", "sheet", 4.0, 3.0, "4 mm", "3 mm"),
}
"""Stock of a piece that names none (common practice): species, kind, thickness in mm and in inch
pieces, trade names."""

STANDARD_USE: Mapping[str, str] = {
    "frame": "secondary",
    "frame.panel": "sheet",
    "strip": "thin",
    "guide": "secondary",
    "kicker": "secondary",
    "stop": "secondary",
    "block": "block",
    "block.glue": "secondary",
    "plinth.spline": "thin-sheet",
    "drawer.side": "drawer",
    "drawer.box-front": "drawer",
    "drawer.back": "drawer",
    "drawer.bottom": "sheet",
    "back": "sheet",
    "back.board": "thin",
    "back.frame": "secondary",
    "back.panel": "sheet",
    "partition": "thin",
    "pigeonhole": "thin",
    "bracket": "thin",
    "compartment.back": "thin",
    "compartment.drawer.front": "small-front",
    "compartment.drawer": "small",
    "compartment.drawer.bottom": "thin-sheet",
}
"""Members that aren't made of primary stock unless the piece says so (common practice)."""

LIKE: Mapping[str, str] = {"thin": "primary", "small-front": "primary", "small": "drawer"}
"""Standard stocks of the species, cut and coefficient of another one of the piece's."""


class Stocks:
    """The stocks of one piece, by member: `drawer.front` before `drawer` before the primary stock."""

    def __init__(self, design: Design) -> None:
        self.moisture = moisture_of(design)
        self._tables = _tables(design)
        self._use = {**STANDARD_USE, **design.use}
        self._made: dict[str, Stock] = {}

    def name_of(self, member: str) -> str:
        """The name of a member's stock; the most exact name in the piece wins."""
        parts = member.split(".")
        for count in range(len(parts), 0, -1):
            name = self._use.get(".".join(parts[:count]))
            if name is not None:
                return name
        return "primary"

    def of(self, member: str) -> Stock:
        """A member's stock.

        Raises:
            CannotBuild: the piece uses a stock that it doesn't have, or its species is in no table.
        """
        name = self.name_of(member)
        if name not in self._made:
            if name not in self._tables:
                known = ", ".join(sorted(self._tables))
                raise CannotBuild([fault(f"use.{member}", f'"{name}"', f"expected one of the piece's stocks: {known}")])
            self._made[name] = _stock(name, self._tables[name])
        return self._made[name]


def moisture_of(design: Design) -> Moisture:
    """Moisture content at build, driest and wettest, percent; from the air's humidity where the piece gives that.

    Raises:
        CannotBuild: the driest season is wetter than the wettest, or the air is outside the table.
    """
    c = design.climate
    try:
        build, dry, wet = (
            given if humidity is None else equilibrium_moisture(c.temperature, humidity)
            for humidity, given in ((c.humidity_build, c.build), (c.humidity_dry, c.dry), (c.humidity_wet, c.wet))
        )
    except NoSuchAir as error:
        raise CannotBuild([fault("climate", "", str(error))]) from error
    if not dry <= build <= wet:
        raise CannotBuild(
            [fault("climate", f"build {build:.1f} %, dry {dry:.1f} %, wet {wet:.1f} %", "expected dry ≤ build ≤ wet")]
        )
    return Moisture(build, dry, wet)


def _tables(design: Design) -> dict[str, StockTable]:
    inch = design.piece.units == "inch"
    tables = {
        name: StockTable(
            species=key,
            kind="sheet" if kind == "sheet" else "solid",
            thickness=b if inch else a,
            nominal=d if inch else c,
        )
        for name, (key, kind, a, b, c, d) in STANDARD.items()
    }
    tables |= design.stock
    for name, other in LIKE.items():
        if name not in design.stock and tables[other].kind == "solid":
            one = tables[other]
            same = {"species": one.species, "cut": one.cut, "coefficient": one.coefficient, "density": one.density}
            tables[name] = tables[name].model_copy(update=same)
    return tables


def _stock(name: str, table: StockTable) -> Stock:
    if table.kind == "sheet":
        return Stock(
            name,
            table.species,
            "sheet",
            table.thickness,
            table.nominal,
            0.0,
            table.density or SHEET_DENSITY,
            table.measured,
        )
    try:
        wood = species(table.species)
    except NotInTable as error:
        raise CannotBuild([fault(f"stock.{name}.species", f'"{table.species}"', str(error))]) from error
    at_hand = tuple(Width(one, one - 2 * table.jointing) for one in sorted(set(table.widths or ())))
    if any(one.clear < LEAST_STAVE_MM for one in at_hand):
        least = LEAST_STAVE_MM + 2 * table.jointing
        found = f"{min(table.widths or ()):g} mm"
        raise CannotBuild([fault(f"stock.{name}.widths", found, f"expected at least {least:g} mm, edges jointed")])
    change = coefficient(wood, table.cut) if table.coefficient is None else table.coefficient
    return Stock(
        name,
        table.species,
        "solid",
        table.thickness,
        table.nominal,
        change,
        table.density or wood.density_kg_m3(),
        table.measured,
        at_hand,
    )
