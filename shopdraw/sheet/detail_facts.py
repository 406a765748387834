"""What the details tell: the top's nose and the lid's upper end, the pin, the lid's end over the side."""

from __future__ import annotations

import math
from collections.abc import Iterator

from shopdraw.measure import write_length
from shopdraw.sheet.arrangement_facts import PLUMB
from shopdraw.sheet.fact import Fact, Feature, Rank
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.places import Places
from shopdraw.sheet.telling import note_at, size_between
from shopdraw.sheet.upper_lid_facts import upper_lid_facts
from shopdraw.wood.assembly import SlantFact

D1, D2, D3 = "detail.d1", "detail.d2", "detail.d3"
LEAST_MM = 0.05
"""A size under this isn't there: a flush lid has no lip."""


def detail_facts(places: Places, writing: Writing) -> tuple[Fact, ...]:
    """All facts of the details that are drawn."""
    slant = places.assembly.slant
    drawn = {view.id for view in places.views}
    facts: list[Fact] = []
    if slant is not None and slant.hinge_edge == "upper":
        return tuple(upper_lid_facts(places, slant, writing)) if D1 in drawn else ()
    if slant is not None and D1 in drawn:
        facts += _nose(places, slant)
    if slant is not None and D2 in drawn:
        facts += _pin(places, slant, writing)
    if slant is not None and D3 in drawn:
        facts += _lid_end(places, slant)
    return tuple(facts)


def _nose(places: Places, slant: SlantFact) -> Iterator[Fact]:
    """Along the slope: bevel kept, reveal, lip, gap or seat; square to it the flat."""
    turn = math.radians(slant.angle_from_level_deg)
    c, s = math.cos(turn), math.sin(turn)
    pin, arris = slant.hinge_pin_mm, (slant.run_mm, places.assembly.height)
    show = slant.lid_thickness_mm - slant.pin_above_writing_mm
    upper = (arris[0] - pin[0]) * c + (arris[1] - pin[1]) * s
    kept = upper - slant.top_bevel_mm

    def on_lid(name: str, along: float, out: float) -> Feature:
        return places.at(name, D1, (pin[0] + along * c - out * s, pin[1] + along * s + out * c))

    below = arris[0] - slant.top_bevel_mm * c, arris[1] - slant.top_bevel_mm * s
    top, bevel = places.at("slant:end", D1, arris), places.at("top:bevel", D1, below)
    lid = on_lid("lid:upper end", slant.lid_length_mm, show)
    core = on_lid("lid:core end", slant.core_length_mm, -slant.pin_above_writing_mm)
    flush = slant.lid_inset_mm >= slant.lid_thickness_mm - LEAST_MM
    found = [
        (top, bevel, "bevel ", slant.top_bevel_mm),
        (lid, core, "lip ", slant.lid_length_mm - slant.core_length_mm),
    ]
    if not flush:
        found.append((top, lid, "reveal ", upper - slant.lid_length_mm))
    if slant.lid_inset_mm > LEAST_MM:
        found.append((bevel, core, "gap ", kept - slant.core_length_mm))
    else:
        found.append((bevel, core, "seat ", slant.core_length_mm - kept))
    for a, b, words, long in found:
        if long > LEAST_MM:
            open_space = words == "gap "
            yield size_between(
                a,
                b,
                Rank.CLEARANCE if open_space else Rank.SIZE,
                (D1,),
                direction_deg=slant.angle_from_level_deg,
                kind="clearance" if open_space else "linear",
                side="slant",
                prefix=words,
                rounding="fit" if open_space else "cut",
            )
    if slant.top_flat_mm > LEAST_MM:
        foot = places.at("top:nose", D1, (below[0] + slant.top_flat_mm * s, below[1] - slant.top_flat_mm * c))
        yield size_between(
            bevel,
            foot,
            Rank.SIZE,
            (D1,),
            direction_deg=slant.angle_from_level_deg - 90.0,
            side="slant",
            prefix="flat ",
            rounding="cut",
        )


def _pin(places: Places, slant: SlantFact, writing: Writing) -> Iterator[Fact]:
    """The pin's place and the joint gap in words; lid and shelf as they lie over the support."""
    y, z = slant.hinge_pin_mm
    off = write_length(abs(y), writing.fit)
    where = f"{off} before the front plane" if y < 0 else f"{off} behind the front plane"
    level = "on the writing surface"
    if slant.pin_above_writing_mm > LEAST_MM:
        level = f"{write_length(slant.pin_above_writing_mm, writing.fit)} above the writing surface"
    words = f"pin {level}, {where}; joint gap {write_length(slant.hinge_gap_mm, writing.fit)}"
    yield note_at("lid:pin", places.point("lid:pin", {D2: (y, z)}), words, Rank.SIZE, (D2,), board="lid")
    if slant.support_top_mm is not None:
        beside = -slant.lid_thickness_mm
        upper = places.point("level.writing:top", {D2: (beside, slant.writing_height_mm)})
        lower = places.point("support:top, out", {D2: (beside, slant.support_top_mm)})
        yield size_between(upper, lower, Rank.SIZE, (D2,), direction_deg=PLUMB, side="left", rounding="cut")
    if places.assembly.has("shelf.writing"):
        box = places.extent("shelf.writing")
        lower_face = places.at("shelf.writing:lower", D2, (0.0, box.z0))
        upper_face = places.at("shelf.writing:upper", D2, (0.0, box.z1))
        yield size_between(lower_face, upper_face, Rank.SIZE, (D2,), direction_deg=PLUMB, side="right", rounding="cut")


def _lid_end(places: Places, slant: SlantFact) -> Iterator[Fact]:
    """Across the lid's end: its lap over the side, what shows of the side, the gap beside its core; its thickness."""
    direction = next(view.direction for view in places.views if view.id == D3)
    _, writing_face = direction.on_paper((0.0, *slant.hinge_pin_mm))
    width = places.assembly.width
    side = places.extent("side.right") if places.assembly.has("side.right") else places.whole
    end, core = (width + slant.lid_width_mm) / 2, (width + slant.core_width_mm) / 2
    inset, show = slant.lid_inset_mm, writing_face + slant.lid_thickness_mm
    lip = writing_face + inset
    outer, inner = (
        places.at("case:right", D3, (width, lip)),
        places.at("side.right:left", D3, (side.x0, lip if end > side.x0 else writing_face)),
    )
    lid, tongue = places.at("lid:right", D3, (end, show)), places.at("lid:core right", D3, (core, writing_face))
    lids_end = places.at("lid:right", D3, (end, lip if end > core + LEAST_MM else writing_face))
    if abs(width - end) > LEAST_MM and end > side.x0:
        yield size_between(lid, outer, Rank.SIZE, (D3,), side="above", prefix="reveal ", rounding="cut")
    if end - side.x0 > LEAST_MM:
        yield size_between(inner, lids_end, Rank.SIZE, (D3,), side="below", prefix="lap ", rounding="cut")
    if 0 < side.x0 - core < side.x1 - side.x0:
        yield size_between(
            tongue, inner, Rank.CLEARANCE, (D3,), kind="clearance", side="below", prefix="gap ", rounding="fit"
        )
    if inset > LEAST_MM and end > core + LEAST_MM:
        low, high = places.at("lid:writing face", D3, (core, writing_face)), places.at("lid:lip", D3, (end, lip))
        yield size_between(low, high, Rank.SIZE, (D3,), direction_deg=PLUMB, side="right", rounding="cut")
    face, back = places.at("lid:writing face", D3, (core, writing_face)), places.at("lid:show face", D3, (end, show))
    yield size_between(face, back, Rank.SIZE, (D3,), direction_deg=PLUMB, side="right", rounding="cut")
