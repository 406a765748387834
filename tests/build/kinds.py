"""Random chests, bookcases, lecterns and free cases from a seed: the same seed gives the same design on any machine."""

from __future__ import annotations

import random
from typing import Any

from shopdraw.piece.design import Design
from tests.build.designs import SOLID
from tests.build.drawer_choices import lay_over_corners, lay_over_drawers
from tests.build.outer_choices import lay_over_back, lay_over_base, lay_over_handles

KINDS = ("chest", "bookcase", "lectern", "free")


def random_kind(kind: str, seed: int) -> Design:
    """The design of a kind that a seed stands for."""
    rng = random.Random(f"{kind} {seed}")
    tables = {"chest": _chest, "bookcase": _bookcase, "lectern": _lectern, "free": _free}[kind](rng)
    stocks = {
        name: {
            "species": rng.choice(SOLID),
            "thickness": round(rng.uniform(low, high), 1),
            "cut": rng.choice(("flat", "quarter", "unknown")),
        }
        for name, low, high in (
            ("primary", 17.5, 24.0),
            ("secondary", 17.5, 24.0),
            ("drawer", 10.0, 15.0),
            ("block", 35.0, 50.0),
        )
    }
    stocks["sheet"] = {"species": "plywood_birch", "kind": "sheet", "thickness": round(rng.uniform(4.0, 9.5), 2)}
    climate = rng.choice(({}, {"build": 7.0, "dry": 6.0, "wet": 11.0}, {"build": 10.0, "dry": 6.5, "wet": 13.5}))
    use = {"shelf": "secondary"} if rng.random() < 0.2 else {}
    tables |= {"stock": stocks, "use": use}
    if kind in ("chest", "free") and rng.random() < 0.3:
        tables["frame"] = {**tables.get("frame", {}), "stops": rng.random() < 0.7, "middle_over": 600.0}
    lay_over_drawers(tables, rng)
    ways = ("through", "clean-sides") if kind == "lectern" else ("through", "clean-sides", "clean-top")
    lay_over_corners(tables, rng, ways)
    lay_over_base(tables, rng)
    lay_over_back(tables, rng)
    lay_over_handles(tables, rng)
    piece = {"title": f"Random {kind}", "kind": kind, "units": rng.choice(("mm", "inch"))}
    return Design.model_validate({"piece": piece, "climate": climate, **tables})


def _case(rng: random.Random, width: float, height: float, depth: float, joints: tuple[str, ...]) -> dict[str, Any]:
    case: dict[str, Any] = {
        "width": round(width, 1),
        "height": round(height, 1),
        "depth": round(depth, 1),
        "top_joint": rng.choice(joints),
        "dado": rng.choice(("stopped", "through")),
        "fit": rng.choice((0.0, 0.1, 0.2)),
        "relief": rng.choice((0.0, 0.0, 0.4)),
    }
    if case["top_joint"] == "overhanging":
        case["overhang"] = rng.choice((0.0, 12.0, 25.0))
    return case


ANY_TOP = ("dovetail", "housed", "overhanging")


def _columns(rng: random.Random, most: int) -> dict[str, Any]:
    return {"by": "columns", "keys": tuple(str(n + 1) for n in range(rng.randint(2, most)))}


def _chest(rng: random.Random) -> dict[str, Any]:
    width = rng.uniform(600.0, 1200.0)
    rows = tuple(str(n + 1) for n in range(rng.randint(2, 5)))
    rule = rng.choice(("equal", "step", "ratio"))
    bank: dict[str, Any] = {"keys": rows, "rule": rule}
    if rule == "step":
        bank["step"] = rng.choice((6.0, 12.0, 20.0))
    openings: dict[str, Any] = {"bank": {"divide": bank}}
    for key in rows:
        if rng.random() < 0.35:
            openings[f"bank.{key}"] = {"divide": _columns(rng, 3)}
    drawer: dict[str, Any] = {"front": rng.choice(("inset", "inset", "lipped")), "lip": 5.0}
    return {
        "case": _case(rng, width, rng.uniform(650.0, 1100.0), rng.uniform(380.0, 560.0), ANY_TOP),
        "opening": openings,
        "drawer": drawer,
        "frame": {"fixing": rng.choice(("front", "front-and-rear")), "mortise": rng.choice(("round", "square"))},
    }


def _bookcase(rng: random.Random) -> dict[str, Any]:
    levels: dict[str, Any] = {}
    for number in range(rng.randint(2, 5)):
        levels[str(number + 1)] = {"member": rng.choice(("shelf", "pinned-shelf"))}
    tables: dict[str, Any] = {
        "case": _case(rng, rng.uniform(500.0, 1000.0), rng.uniform(1100.0, 2000.0), rng.uniform(230.0, 400.0), ANY_TOP),
        "level": levels,
        "pins": {"pitch": rng.choice((25.0, 32.0)), "play": rng.choice((2.0, 3.0))},
    }
    if rng.random() < 0.5:
        tables["face"] = {"overhang": rng.choice((0.0, 3.0, 6.0)), "stile": rng.choice((38.0, 50.0))}
    return tables


def _lectern(rng: random.Random) -> dict[str, Any]:
    edge = rng.choice(("upper", "lower"))
    writing, depth = rng.uniform(880.0, 1020.0), rng.uniform(380.0, 480.0)
    slant: dict[str, Any] = {"writing_height": round(writing, 1), "hinge_edge": edge}
    if edge == "upper":
        start, slope = round(writing + rng.uniform(40.0, 90.0), 1), rng.uniform(0.3, 0.6)
        top = round(rng.uniform(85.0, 120.0), 1)
        slant |= {"start": start, "top_depth": top}
        height = start + (depth - top) * slope
    else:
        slant["seat"] = rng.choice(("on", "rabbeted", "flush"))
        slant["top_depth"] = round(depth * rng.uniform(0.4, 0.55), 1)
        height = writing + rng.uniform(160.0, 240.0)
    tables: dict[str, Any] = {
        "case": _case(rng, rng.uniform(450.0, 700.0), height, depth, ("dovetail", "housed")),
        "slant": slant,
        "lid": {"hinges": rng.choice((2, 3))},
    }
    if rng.random() < 0.6:
        tables["level"] = {"1": {"member": rng.choice(("shelf", "pinned-shelf"))}}
    if rng.random() < 0.3:
        tables["opening"] = {"low": {"fill": "none", "divide": _columns(rng, 2)}}
    return tables


def _free(rng: random.Random) -> dict[str, Any]:
    levels: dict[str, Any] = {}
    openings: dict[str, Any] = {}
    above = "bottom"
    for number in range(rng.randint(0, 3)):
        key = str(number + 1)
        drawers = rng.random() < 0.4
        if rng.random() < 0.8:
            fill = "drawer" if drawers else rng.choice(("none", "pigeonhole"))
            table: dict[str, Any] = {"above": above, "fill": fill}
            cut = rng.random()
            if cut < 0.4:
                table["divide"] = _columns(rng, 3)
            elif cut < 0.7:
                table["divide"] = {"by": "rows", "keys": ("1", "2"), "rule": "equal"}
                if rng.random() < 0.5:
                    openings[f"space{key}.1"] = {"divide": _columns(rng, 3)}
            openings[f"space{key}"] = table
        levels[key] = {"member": rng.choice(("shelf", "web-frame"))}
        above = key
    case = _case(rng, rng.uniform(550.0, 1100.0), rng.uniform(700.0, 1200.0), rng.uniform(350.0, 500.0), ANY_TOP)
    tables: dict[str, Any] = {"case": case, "level": levels, "opening": openings}
    boards = case["top_joint"] != "overhanging" and all(level["member"] == "shelf" for level in levels.values())
    if boards and rng.random() < 0.6:
        # partitions stand between boards, in each opening that is filled with pigeonholes
        tables["compartments"] = {"bays": rng.randint(1, 3), "bracket_height": 25.0, "drawers": rng.choice((0, 0, 1))}
    return tables
