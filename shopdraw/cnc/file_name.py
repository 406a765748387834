"""Names of router files: label, name, face, unit: `1L_side-left_f1_mm.dxf`."""

from __future__ import annotations

import re
import unicodedata

from shopdraw.cnc.flat import Unit
from shopdraw.wood.part import Part

LONGEST_NAME = 40


def file_name(part: Part, number: int, unit: Unit) -> str:
    """The name of one setting's file.

    Args:
        part: its first board's label and name are told.
        number: 1 for the first face, 2 for the one cut after turning.
        unit: of the file.
    """
    label = re.sub(r"[^0-9A-Za-z.-]+", "-", part.first.label)
    return f"{label}_{_plain(part.first.name)}_f{number}_{unit.value}.dxf"


def _plain(name: str) -> str:
    """A name in a–z, 0–9 and hyphens: accents fall off, everything else becomes a hyphen."""
    letters = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    return re.sub(r"[^a-z0-9]+", "-", letters).strip("-")[:LONGEST_NAME].strip("-") or "board"
