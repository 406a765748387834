"""Species: how much they move across the grain, what they weigh, how stiff they are."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from shopdraw.trade.table import NotInTable, Row, Source, sources, table

MPA_PER_MILLION_PSI = 6894.757
"""1 psi = 6.894757 kPa."""
SG_MOISTURE = 12.0
"""Moisture content, %, at which specific gravity and stiffness are given."""


@dataclass(frozen=True, slots=True)
class Species:
    """A species or a trade group of species.

    Attributes:
        key: as in piece files: "cherry_black".
        name: as people read it: "Cherry, black".
        radial, tangential: change of size across the grain for 1 % change of moisture content, as a fraction of the
            size; radial for the width of a quartersawn board, tangential for that of a flatsawn one. Valid 6 to 14 %.
        radial_source, tangential_source: of these.
        shrinkage_radial, shrinkage_tangential: % from green to ovendry, or None.
        shrinkage_source: of these, or None.
        shrinks_from: moisture content, %, at which shrinking starts.
        sg_green: ovendry mass over green volume, or None.
        sg_12: ovendry mass over volume at 12 %.
        stiffness_mpa: modulus of elasticity along the grain at 12 %.
        strength_source: of specific gravity and stiffness.
    """

    key: str
    name: str
    radial: float
    tangential: float
    radial_source: Source
    tangential_source: Source
    shrinkage_radial: float | None
    shrinkage_tangential: float | None
    shrinkage_source: Source | None
    shrinks_from: float
    sg_green: float | None
    sg_12: float
    stiffness_mpa: float
    strength_source: Source

    def density_kg_m3(self, moisture_percent: float = SG_MOISTURE) -> float:
        """Density, kg/m³, water in the wood included.

        At 12 % it is specific gravity × 1.12 × 1000; elsewhere the ovendry mass stays and the volume follows the change
        coefficients.

        Args:
            moisture_percent: moisture content.
        """
        points = moisture_percent - SG_MOISTURE
        volume = (1 + self.radial * points) * (1 + self.tangential * points)
        return self.sg_12 * 1000 * (1 + moisture_percent / 100) / volume


@lru_cache
def all_species() -> tuple[Species, ...]:
    """Every species of the table, in its order."""
    return tuple(_species(row) for row in table("species")["species"])


@lru_cache
def species(key: str) -> Species:
    """The species of that key, or of that name as people read it.

    Raises:
        NotInTable: there is none; says the nearest.
    """
    wanted = key.strip().lower()
    for one in all_species():
        if wanted in (one.key, one.name.lower()):
            return one
    raise NotInTable("species", key, [one.key for one in all_species()])


def _species(row: Row) -> Species:
    known = sources("species")
    stiffness = row["e_mpa"] if "e_mpa" in row else row["e_million_psi"] * MPA_PER_MILLION_PSI
    return Species(
        key=row["key"],
        name=row["name"],
        radial=row["radial"],
        tangential=row["tangential"],
        radial_source=known[row["radial_source"]],
        tangential_source=known[row["tangential_source"]],
        shrinkage_radial=row.get("shrinkage_radial"),
        shrinkage_tangential=row.get("shrinkage_tangential"),
        shrinkage_source=known[row["shrinkage_source"]] if "shrinkage_source" in row else None,
        shrinks_from=float(row.get("shrinks_from", 30)),
        sg_green=row.get("sg_green"),
        sg_12=row["sg_12"] if "sg_12" in row else _sg_12_from_green(row),
        stiffness_mpa=float(stiffness),
        strength_source=known[row["strength_source"]],
    )


def _sg_12_from_green(row: Row) -> float:
    """Specific gravity at 12 % where only the green one is given: the volume has shrunk by 18/30 of its total."""
    lost = (row["shrinkage_radial"] + row["shrinkage_tangential"]) / 100 * (30 - SG_MOISTURE) / 30
    return float(row["sg_green"] / (1 - lost))
