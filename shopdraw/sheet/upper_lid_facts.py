"""What the details of a lid hinged at its upper edge tell: its pin and how far it opens, its ledge, its ends."""

from __future__ import annotations

import math
from collections.abc import Iterator

from shopdraw.measure import write_angle, write_length
from shopdraw.sheet.fact import Fact, Feature, Rank
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.places import Places
from shopdraw.sheet.telling import note_at, size_between
from shopdraw.wood.assembly import SlantFact

D1, D2, D3 = "detail.d1", "detail.d2", "detail.d3"
BEHIND_MM = 1.0


def upper_lid_facts(places: Places, slant: SlantFact, writing: Writing) -> Iterator[Fact]:
    """The facts of d1, d2 and d3 of such a lid."""
    yield from _pin(places, slant, writing)
    yield from _lower_edge(places, slant)
    yield from _end(places, slant)


def _pin(places: Places, slant: SlantFact, writing: Writing) -> Iterator[Fact]:
    """The pin's place, the joint gap and the swing in words; how thick the top and the lid are."""
    reach = next((motion.reach for motion in places.assembly.motions if motion.boards[0] == "lid"), 0.0)
    words = (
        f"pin where reading face and top meet; joint gap {write_length(slant.hinge_gap_mm, writing.fit)}; "
        f"opens by {write_angle(reach, writing.decimal_sign)}"
    )
    pin = places.point("lid:pin", {D1: slant.hinge_pin_mm})
    yield note_at("lid:pin", pin, words, Rank.SIZE, (D1,), board="lid")
    if places.assembly.has("top"):
        box = places.extent("top")
        # The top's edge is square to the lid: its lower face begins further back.
        y = slant.hinge_pin_mm[0] + (box.z1 - box.z0) * math.tan(math.radians(slant.angle_from_level_deg)) + BEHIND_MM
        upper, lower = (
            places.at(f"top:{name}, at the pin", D1, (y, z)) for name, z in (("upper", box.z1), ("lower", box.z0))
        )
        yield size_between(upper, lower, Rank.SIZE, (D1,), direction_deg=90.0, side="right", rounding="cut")


def _lower_edge(places: Places, slant: SlantFact) -> Iterator[Fact]:
    """The lid's thickness; how far the ledge stands over its face and how thick that is."""
    turn = math.radians(slant.angle_from_level_deg)
    c, s = math.cos(turn), math.sin(turn)

    def on_lid(name: str, along: float, out: float) -> Feature:
        y, z = slant.hinge_pin_mm
        return places.at(f"lid:{name}", D2, (y - along * c - out * s, z - along * s + out * c))

    long = slant.lid_length_mm
    square = slant.angle_from_level_deg - 90.0
    face, back = on_lid("reading face, low", long, 0.0), on_lid("back, low", long, -slant.lid_thickness_mm)
    yield size_between(face, back, Rank.SIZE, (D2,), direction_deg=square, side="slant", rounding="cut", board="lid")
    if places.assembly.has("lid.ledge"):
        ledge = places.assembly.board("lid.ledge")
        low, high = on_lid("ledge, low", long, ledge.width), on_lid("ledge, high", long - ledge.thickness, ledge.width)
        yield size_between(
            face, low, Rank.SIZE, (D2,), direction_deg=square, side="slant", prefix="ledge ", rounding="cut",
            board=ledge.id,
        )  # fmt: skip
        yield size_between(
            low, high, Rank.SIZE, (D2,), direction_deg=slant.angle_from_level_deg, side="slant", rounding="cut",
            board=ledge.id,
        )  # fmt: skip


def _end(places: Places, slant: SlantFact) -> Iterator[Fact]:
    """The gap between the lid's end and the side, or how far it lies over that."""
    direction = next((view.direction for view in places.views if view.id == D3), None)
    if direction is None or not places.assembly.has("side.right"):
        return
    _, reading_face = direction.on_paper((0.0, *slant.hinge_pin_mm))
    side, end = places.extent("side.right"), (places.assembly.width + slant.lid_width_mm) / 2
    within = end < side.x0
    level = reading_face if within else reading_face - slant.lid_thickness_mm
    lid, inner = places.at("lid:right", D3, (end, level)), places.at("side.right:left", D3, (side.x0, level))
    if within:
        yield size_between(
            lid, inner, Rank.CLEARANCE, (D3,), kind="clearance", side="above", prefix="gap ", rounding="fit"
        )
    else:
        yield size_between(inner, lid, Rank.SIZE, (D3,), side="below", prefix="lap ", rounding="cut")
