"""Random desks over the whole space of inputs, from a seed: the same seed gives the same design on any machine.

Sizes are drawn from what is ordinary in a workshop, choices from all there are. Not each draw can be built (six drawers
under a low writing surface can't): who uses them looks at what is refused, and how often.
"""

from __future__ import annotations

import random
from typing import Any

from shopdraw.piece.design import Design
from tests.build.compartment_designs import compartment_tables
from tests.build.drawer_choices import lay_over_corners, lay_over_drawers
from tests.build.outer_choices import lay_over_back, lay_over_base, lay_over_handles

SOLID = (
    "cherry_black",
    "maple_sugar",
    "walnut_black",
    "yellow_poplar",
    "pine_eastern_white",
    "oak_white",
    "beech_american",
)


def random_design(seed: int) -> Design:
    """The design that a seed stands for."""
    rng = random.Random(seed)
    return Design.model_validate(random_tables(rng))


def random_tables(rng: random.Random) -> dict[str, Any]:
    """The tables of a random piece, lengths in mm."""
    writing = round(rng.uniform(690.0, 780.0), 1)
    height = round(writing + rng.uniform(220.0, 340.0), 1)
    depth = round(rng.uniform(380.0, 560.0), 1)
    seat = rng.choice(("on", "rabbeted", "flush"))
    slant: dict[str, Any] = {"writing_height": writing, "seat": seat}
    if rng.random() < 0.5:
        slant["angle"] = round(rng.uniform(40.0, 60.0), 2)
    else:
        slant["top_depth"] = round(depth * rng.uniform(0.4, 0.6), 1)
    if rng.random() < 0.2:
        slant["joint_gap"] = rng.choice((0.2, 0.5, 1.0))
    if rng.random() < 0.15:
        slant["pin_above_writing"] = rng.choice((1.0, 3.0))
    tables: dict[str, Any] = {
        "piece": {"title": "Random desk", "units": rng.choice(("mm", "inch"))},
        "case": _case(rng, height, depth),
        "slant": slant,
        "stock": _stocks(rng),
        "use": _use(rng),
        "opening": {"bank": {"divide": _bank(rng)}},
        "drawer": _drawer(rng),
        "lid": {
            "hinges": rng.choice((2, 3, 4)),
            "reveal": rng.choice((2.0, 4.0, 6.0)),
            "ends": rng.choice(("none", "none", "square")),
        },
        "frame": {"fixing": rng.choice(("front", "front-and-rear")), "rail": rng.choice((50.0, 65.0, 80.0))},
        "climate": rng.choice(
            (
                {},
                {"build": 7.0, "dry": 6.0, "wet": 11.0},
                {"build": 10.0, "dry": 6.5, "wet": 13.5},
                {"temperature": 20.0, "humidity_build": 45.0, "humidity_dry": 35.0, "humidity_wet": 65.0},
            )
        ),
    }
    # drawn last, so that a seed's other choices stay what they were
    tables["lid"] |= _lid(rng, seat)
    tables |= compartment_tables(rng)
    lay_over_drawers(tables, rng)
    lay_over_corners(tables, rng, ("through", "clean-sides", "clean-top"))
    lay_over_face(tables, rng)
    lay_over_base(tables, rng)
    lay_over_back(tables, rng)
    lay_over_handles(tables, rng)
    if rng.random() < 0.15:
        tables["supports"]["kind"] = "stays"
    tables["opening"]["bank"]["divide"] = _with_room(tables, writing)
    return tables


LEAST_OPENING_MM = 50.0
"""Nobody asks for a lower drawer in the height there is."""


def _with_room(tables: dict[str, Any], writing: float) -> dict[str, Any]:
    """The bank with as many of its drawers as have room under the writing surface: asked for more, it is refused."""
    bank = dict(tables["opening"]["bank"]["divide"])
    between = tables["face"]["rail"] if "face" in tables else 24.0
    clear = writing - 160.0 + between
    while len(bank["keys"]) > 1 and _lowest(bank, clear - between * len(bank["keys"])) < LEAST_OPENING_MM:
        bank["keys"] = bank["keys"][:-1]
        if "sizes" in bank:
            bank["sizes"] = bank["sizes"][: len(bank["keys"]) - 1] or (0.0,)
    return bank


def _lowest(bank: dict[str, Any], clear: float) -> float:
    """Height of the lowest drawer of a bank in a clear height, mm."""
    n = len(bank["keys"])
    if bank["rule"] == "given":
        return float(min(*bank["sizes"], clear - sum(bank["sizes"])))
    if bank["rule"] == "step":
        return clear / n - bank["step"] * (n - 1) / 2
    if bank["rule"] == "ratio":
        return float(clear * (bank["ratio"] - 1) / (bank["ratio"] ** n - 1))
    return clear / n


def lay_over_face(tables: dict[str, Any], rng: random.Random) -> None:
    """Face rails and strips, dust panels, stops, middle runners, supports with heads and stops, in some desks."""
    if rng.random() < 0.4:
        side = tables["stock"]["primary"]["thickness"]
        tables["stock"]["face"] = {"thickness": round(rng.uniform(18.0, 28.0), 1)}
        tables["use"]["rail.face"] = "face"
        tables["face"] = {
            "kind": "rails",
            "rail": rng.choice((26.0, 32.0, 40.0)),
            "strip": rng.choice((None, 0.0, side, side + 10.0)),
        }
    if rng.random() < 0.25:
        tables["frame"] |= {"dust_panels": True, "mortise": rng.choice(("round", "square"))}
    if rng.random() < 0.3:
        tables["frame"] |= {"stops": True, "middle_over": 600.0}
    supports: dict[str, Any] = {"layers": rng.choice((1, 1, 2)), "head": rng.random() < 0.4}
    thick = round(rng.uniform(9.0, 13.0), 1)
    tables["stock"]["bar"] = {"species": "plywood_birch", "kind": "sheet", "thickness": thick}
    if supports["layers"] == 2:
        tables["use"] |= {"support": "bar", "support.head": "primary"}
    if rng.random() < 0.5:
        # a tall divider of solid wood needs a groove deeper than the shelf allows
        tables["use"]["divider"] = "bar"
    if rng.random() < 0.4:
        supports |= {"divider": 160.0, "stop": rng.random() < 0.6}
    tables["supports"] = supports


def _lid(rng: random.Random, seat: str) -> dict[str, Any]:
    """Mitred caps, their glue and tongue, mouldings, leaning cores and locks, each in some of the desks."""
    lid: dict[str, Any] = {}
    if rng.random() < 0.3:
        lid |= {"ends": "mitred", "cap": rng.choice((40.0, 55.0)), "clearance": 2.0}
    lid["glue"] = rng.choice(("hinge", "middle"))
    if rng.random() < 0.3:
        lid["edge"] = rng.choice(("chamfer", "round", "ovolo", "cove", "ogee", "reverse-ogee"))
    if rng.random() < 0.2:
        lid["rabbet_bevel"] = 1.5
    if seat != "on" and rng.random() < 0.15:
        lid["lock"] = True
    return lid


def _case(rng: random.Random, height: float, depth: float) -> dict[str, Any]:
    case: dict[str, Any] = {
        "width": round(rng.uniform(450.0, 1200.0), 1),
        "height": height,
        "depth": depth,
        "top_joint": rng.choice(("dovetail", "housed")),
        "dado": rng.choice(("stopped", "through")),
        "fit": rng.choice((0.0, 0.1, 0.2)),
        "relief": rng.choice((0.0, 0.0, 0.4)),
    }
    if rng.random() < 0.2:
        case["cutter_radius"] = rng.choice((3.0, 4.0, 6.0))
    return case


def _stocks(rng: random.Random) -> dict[str, Any]:
    def solid(low: float, high: float) -> dict[str, Any]:
        return {
            "species": rng.choice(SOLID),
            "thickness": round(rng.uniform(low, high), 1),
            "cut": rng.choice(("flat", "quarter", "unknown")),
        }

    return {
        "primary": solid(17.5, 24.0),
        "secondary": solid(17.5, 24.0),
        "drawer": solid(10.0, 15.0),
        "sheet": {"species": "plywood_birch", "kind": "sheet", "thickness": round(rng.uniform(4.0, 9.5), 2)},
        "block": solid(35.0, 50.0),
        "lid": solid(18.0, 26.0),
    }


def _use(rng: random.Random) -> dict[str, str]:
    use = {}
    if rng.random() < 0.5:
        use["lid"] = "lid"
    if rng.random() < 0.2:
        use["frame"] = "primary"
    if rng.random() < 0.2:
        use["shelf"] = "secondary"
    return use


def _bank(rng: random.Random) -> dict[str, Any]:
    count = rng.randint(1, 6)
    rule = rng.choice(("equal", "step", "ratio", "given"))
    bank: dict[str, Any] = {"keys": tuple(str(i + 1) for i in range(count)), "rule": rule}
    if rule == "step":
        bank["step"] = rng.choice((6.0, 10.0, 19.05, 25.4))
    elif rule == "ratio":
        bank["ratio"] = round(rng.uniform(1.05, 1.25), 3)
    elif rule == "given":
        bank["sizes"] = tuple(round(rng.uniform(60.0, 110.0), 1) for _ in range(count - 1)) or (0.0,)
        if count == 1:
            bank["rule"] = "equal"
            del bank["sizes"]
    return bank


def _drawer(rng: random.Random) -> dict[str, Any]:
    drawer: dict[str, Any] = {"front": rng.choice(("inset", "lipped")), "front_joint": rng.choice(("tongue", "rabbet"))}
    if drawer["front"] == "lipped":
        drawer["lip"] = rng.choice((5.0, 8.0))
        drawer["lip_thickness"] = rng.choice((6.0, 8.0))
    return drawer
