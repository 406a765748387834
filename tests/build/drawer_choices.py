"""Random choices of drawers and dovetailed corners, laid over a random piece's tables."""

from __future__ import annotations

import random
from typing import Any

FRONTS = ("inset", "inset", "lipped", "overlay")
FRONT_JOINTS = ("tongue", "rabbet", "dovetail", "sliding")
BACK_JOINTS = ("dado", "rabbet", "dovetail")
EDGES = ("square", "square", "round", "ovolo", "cove", "bead")


def lay_over_drawers(tables: dict[str, Any], rng: random.Random) -> None:
    """Choose fronts, lips, joints, mouldings and bottoms for all drawers, other joints for one of them now and then."""
    drawer: dict[str, Any] = tables.setdefault("drawer", {})
    if "front" not in drawer:
        drawer["front"] = rng.choice(FRONTS)
    elif drawer["front"] == "lipped" and rng.random() < 0.3:
        drawer["front"] = "overlay"
    drawer["front_joint"] = rng.choice(FRONT_JOINTS)
    drawer["back_joint"] = rng.choice(BACK_JOINTS)
    drawer["edge"] = rng.choice(EDGES)
    if drawer["front"] == "overlay" or drawer["front_joint"] == "sliding":
        drawer["entry"] = rng.choice((5.0, 6.0))
    if drawer["front"] != "inset":
        # lips of 8 and more meet over many a frame; those are tried by the rule's own test
        drawer["lip"] = rng.choice((4.0, 6.0))
        if rng.random() < 0.4:
            drawer[f"lip_{rng.choice(('left', 'right', 'top', 'bottom'))}"] = 0.0
    if rng.random() < 0.2:
        drawer["1"] = {"front_joint": rng.choice(FRONT_JOINTS[:3]), "drop": rng.choice((0.0, 6.0))}
    if rng.random() < 0.25:
        thin = {"species": "pine_eastern_white", "thickness": rng.choice((6.0, 8.0)), "cut": "flat"}
        tables["stock"] = {**tables.get("stock", {}), "thin": thin}
        tables["use"] = {**tables.get("use", {}), "drawer.bottom": "thin"}
    each = {key: drawer.pop(key) for key in ("1",) if key in drawer}
    if each:
        drawer["each"] = each


def lay_over_corners(tables: dict[str, Any], rng: random.Random, ways: tuple[str, ...]) -> None:
    """Choose through or half-blind dovetails for the top, a template's pitch, a moulded edge where it lies over all."""
    case: dict[str, Any] = tables["case"]
    if case["top_joint"] == "dovetail":
        case["dovetails"] = rng.choice(ways)
        if rng.random() < 0.2:
            case["tail_pitch"] = rng.choice((38.0, 45.0))
    elif case["top_joint"] == "overhanging":
        case["top_edge"] = rng.choice(("square", "ovolo", "ogee", "chamfer"))
