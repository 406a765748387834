"""Random plinths, backs and handles, laid over a random piece's tables."""

from __future__ import annotations

import random
from typing import Any

FEET = ("plain", "hollow", "ogee", "own")
MITRES = ("plain", "spline", "biscuits")
EDGES = ("square", "chamfer", "round", "ovolo", "cove", "ogee", "reverse-ogee")


def lay_over_base(tables: dict[str, Any], rng: random.Random) -> None:
    """Shaped feet, splined or biscuited mitres, a moulded upper edge and glue blocks, in two pieces of three."""
    if rng.random() < 0.35:
        return
    base: dict[str, Any] = {
        "height": rng.choice((90.0, 100.0, 120.0)),
        "feet": rng.choice(FEET),
        "mitre": rng.choice(MITRES),
        "edge": rng.choice(EDGES),
        "glue_blocks": rng.random() < 0.5,
    }
    if base["feet"] == "own":
        up = rng.choice((25.0, 40.0))
        base["foot_path"] = (rng.choice((-8.0, 0.0, 10.0)), up, 6.0, 35.0, up, 8.0, 50.0, up + 8.0, 0.0)
    elif base["feet"] != "plain" and rng.random() < 0.5:
        base["rise"] = rng.choice((25.0, 35.0))
    tables["base"] = {**tables.get("base", {}), **base}


def lay_over_back(tables: dict[str, Any], rng: random.Random) -> None:
    """A back of shiplapped boards or of frame and panels, of plywood or solid, in half of the pieces."""
    kind = rng.choice(("panel", "panel", "boards", "frame"))
    if kind == "panel":
        return
    tables["back"] = {"kind": kind}
    stock, use = tables.setdefault("stock", {}), tables.setdefault("use", {})
    if kind == "boards":
        stock["back"] = {"species": "pine_eastern_white", "thickness": rng.choice((9.0, 12.0)), "cut": "flat"}
        use["back.board"] = "back"
        tables["back"]["board"] = rng.choice((70.0, 90.0, 120.0))
    else:
        stock["back"] = {"species": "yellow_poplar", "thickness": rng.choice((16.0, 18.0)), "cut": "flat"}
        use["back.frame"] = "back"
        tables["back"]["member"] = rng.choice((45.0, 60.0))
        # a sheet of over half of the frame's thickness takes no groove in it
        if rng.random() < 0.5 or stock.get("sheet", {"thickness": 6.0})["thickness"] > stock["back"]["thickness"] / 2:
            stock["panel"] = {"species": "yellow_poplar", "thickness": 7.0, "cut": "quarter"}
            use["back.panel"] = "panel"


def lay_over_handles(tables: dict[str, Any], rng: random.Random) -> None:
    """Pulls in the place of knobs, in a third of the pieces."""
    if rng.random() < 0.33:
        tables["drawer"] = {**tables.get("drawer", {}), "handle": "pull"}
