"""Sheet goods: sizes as sold, plywood thicknesses, what panels weigh."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from shopdraw.trade.table import NotInTable, Row, Source, inches, sources, table

Surface = Literal["unsanded", "sanded", "hardwood"]


@dataclass(frozen=True, slots=True)
class SheetGoodsSize:
    """A sheet as sold; grain of the faces runs along the length.

    Attributes:
        key: "4x8".
        name: "4 × 8 ft".
        width_mm, length_mm: as it measures.
        source: of these.
    """

    key: str
    name: str
    width_mm: float
    length_mm: float
    source: Source


@dataclass(frozen=True, slots=True)
class PlywoodThickness:
    """What a plywood sheet of a category may measure, and what its label says.

    Attributes:
        category: the thickness it is sold by, in inches: "23/32".
        least_mm, most_mm, label_mm: unsanded, touch-sanded or overlaid.
        source: of these.
    """

    category: str
    least_mm: float
    most_mm: float
    label_mm: float
    source: Source


@dataclass(frozen=True, slots=True)
class Panel:
    """A material that comes in sheets; it doesn't move across a grain as solid wood does.

    Attributes:
        key: as in piece files: "plywood_birch".
        name: as people read it.
        density_kg_m3: as sold.
        source: of the density.
    """

    key: str
    name: str
    density_kg_m3: float
    source: Source


@lru_cache
def sheet_sizes() -> tuple[SheetGoodsSize, ...]:
    """Sheets as sold."""
    return tuple(
        SheetGoodsSize(row["key"], row["name"], float(row["width_mm"]), float(row["length_mm"]), _source(row))
        for row in table("sheet_goods")["sheet"]
    )


def sheet_size(key: str) -> SheetGoodsSize:
    """The sheet of that key.

    Raises:
        NotInTable: there is none.
    """
    for size in sheet_sizes():
        if size.key == key:
            return size
    raise NotInTable("sheet size", key, [size.key for size in sheet_sizes()])


@lru_cache
def plywood_thicknesses() -> tuple[PlywoodThickness, ...]:
    """Plywood by performance category, thinnest first. Source: US PS 1."""
    return tuple(
        PlywoodThickness(row["category"], inches(row["least"]), inches(row["most"]), inches(row["label"]), _source(row))
        for row in table("sheet_goods")["plywood"]
    )


def plywood_thickness(category: str) -> PlywoodThickness:
    """The thicknesses of a performance category, "23/32" say.

    Raises:
        NotInTable: there is no such category.
    """
    for thickness in plywood_thicknesses():
        if thickness.category == category.strip():
            return thickness
    raise NotInTable("plywood category", category, [thickness.category for thickness in plywood_thicknesses()])


def metric_thicknesses_mm() -> tuple[float, ...]:
    """Usual metric thicknesses of plywood."""
    return tuple(float(mm) for mm in table("sheet_goods")["metric_thicknesses"]["mm"])


def thickness_tolerance_mm(nominal_mm: float, surface: Surface) -> tuple[float, float]:
    """How much a sheet may be thicker and thinner than its nominal thickness, mm, both positive.

    Args:
        nominal_mm: thickness it is sold by.
        surface: "unsanded", "sanded", or "hardwood" for hardwood plywood.
    Raises:
        NotInTable: no such surface.
    """
    known: dict[str, Row] = {row["surface"]: row for row in table("sheet_goods")["tolerance"]}
    if surface not in known:
        raise NotInTable("plywood surface", surface, known)
    row = known[surface]
    if row["share_above"] and nominal_mm > inches(row["up_to"]):
        return nominal_mm * row["share_above"], nominal_mm * row["share_above"]
    return inches(row["plus"]), inches(row["minus"])


@lru_cache
def panels() -> tuple[Panel, ...]:
    """Materials that come in sheets."""
    rows = table("sheet_goods")["panel"]
    return tuple(Panel(row["key"], row["name"], float(row["density_kg_m3"]), _source(row)) for row in rows)


def panel(key: str) -> Panel:
    """The panel material of that key, or of that name as people read it.

    Raises:
        NotInTable: there is none.
    """
    wanted = key.strip().lower()
    for one in panels():
        if wanted in (one.key, one.name.lower()):
            return one
    raise NotInTable("panel", key, [one.key for one in panels()])


def _source(row: Row) -> Source:
    return sources("sheet_goods")[row["source"]]
