"""Random writing shelves in two boards and random compartments, for the desks of `designs`."""

from __future__ import annotations

import random
from typing import Any


def compartment_tables(rng: random.Random) -> dict[str, Any]:
    """The tables [writing] and [compartments], each in some of the desks."""
    tables: dict[str, Any] = {}
    if rng.random() < 0.4:
        tables["writing"] = _writing(rng)
    if rng.random() < 0.4:
        tables["compartments"] = _compartments(rng)
    return tables


def _writing(rng: random.Random) -> dict[str, Any]:
    """A writing shelf in two boards."""
    writing: dict[str, Any] = {"boards": 2, "edge": rng.choice(("square", "round", "ovolo", "ogee", "bead"))}
    if rng.random() < 0.3:
        writing["step"] = rng.choice((6.0, 8.0))
    return writing


def _compartments(rng: random.Random) -> dict[str, Any]:
    """Bays of all kinds: open, with small shelves, with small drawers; brackets of each shape."""
    bays = rng.randint(1, 6)
    each: dict[str, Any] = {}
    for number in range(bays):
        bay: dict[str, Any] = {}
        cut = rng.random()
        if cut < 0.3:
            bay["drawers"] = rng.choice((1, 2))
        elif cut < 0.6:
            bay["shelves"] = tuple(rng.choice((45.0, 50.0, 60.0)) for _ in range(rng.randint(1, 2)))
        if rng.random() < 0.3:
            bay["bracket"] = rng.choice(("none", "scallop"))
        if bay:
            each[str(number + 1)] = bay
    return {
        "bays": bays,
        "each": each,
        "back": rng.choice((True, True, False)),
        "bracket_height": rng.choice((25.0, 35.0)),
        "knob": rng.choice((0.0, 12.0)),
    }
