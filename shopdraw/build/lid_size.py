"""The lid's sizes by its seat: length from the pin, widths, lips, bevel and the clearance at the upper end."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.slant_plan import SlantPlan, lid_inset

SEAT_MM = 10.0
"""How much of a lid on the slant lies on the top's bevel (common practice)."""
LEAST_COVER_MM = 3.0
"""What a lip still covers in the driest season."""
ENDS_CLEAR_MM, ENDS_PLAY_MM = 1.0, 0.5
"""Between a lid and each side, with a film finish; and what caps keep there in the wettest season (common practice)."""


@dataclass(frozen=True, slots=True)
class LidSize:
    """Sizes of the lid, mm.

    Attributes:
        length: from the pin to its upper end.
        width: over all, left to right.
        core_length, core_width: of the part that goes between the sides (all of it, for a lid on the slant).
        lip: how far it laps over at the upper end.
        lap: how far it laps over each side.
        bevel: kept on the top's edge (b).
        gap: clearance at the upper end (g).
        inset: of the writing face inside the slant plane (o).
    """

    length: float
    width: float
    core_length: float
    core_width: float
    lip: float
    lap: float
    bevel: float
    gap: float
    inset: float


def net_gain(plan: SlantPlan) -> float:
    """What a lid's upper end nears the top from build to the wettest season, mm: lid's own growth less the sides'."""
    lid = plan.stocks.of("lid")
    return _net(plan, plan.season.gain(1.0, lid), plan.season.gain(1.0, plan.side))


def net_loss(plan: SlantPlan) -> float:
    """What a lid's upper end draws away from the top in the driest season, mm."""
    lid = plan.stocks.of("lid")
    return _net(plan, plan.season.loss(1.0, lid), plan.season.loss(1.0, plan.side))


def _net(plan: SlantPlan, of_lid: float, of_sides: float) -> float:
    """The change at the upper end for a change per mm of lid and of sides; both are held in front, at the pin.

    Of one stock, lid and slant stretch alike from level to front, and only the lid's rise counts: length × sin² α.
    """
    s = plan.slant
    alpha = math.radians(s.alpha)
    length = s.s1 - (
        _bevel_flush(plan) if plan.design.slant and plan.design.slant.seat == "flush" else plan.design.lid.reveal
    )
    if abs(of_lid - of_sides) < 1e-12:
        return length * of_lid * math.sin(alpha) ** 2
    return length * of_lid - s.run * math.cos(alpha) * of_sides


def _bevel_flush(plan: SlantPlan) -> float:
    """The bevel kept over a flush lid: as given, else 12 mm, and no more than six tenths of the whole."""
    given = plan.design.lid.bevel
    whole = plan.stocks.of("top").thickness / math.sin(math.radians(plan.slant.alpha))
    return given if given is not None else min(12.0, 0.6 * whole)


def top_gap(plan: SlantPlan) -> float:
    """Clearance between the lid's upper end and the top: its net growth and 1 mm, in half millimetres, or as given."""
    given = plan.design.lid.top_clearance
    return given if given is not None else max(1.5, math.ceil(2 * (net_gain(plan) + 1.0)) / 2)


def ends_need(plan: SlantPlan) -> float:
    """What a lid with caps needs beside each end, mm: half of what both caps gain, a strip's own, and half a mm."""
    lid = plan.design.lid
    grows = plan.season.gain(lid.cap, plan.stocks.of("lid.cap")) if lid.ends != "none" else 0.0
    strip = plan.season.gain(plan.strip, plan.stocks.of("strip")) if plan.strip and lid.ends != "none" else 0.0
    return grows + strip + ENDS_PLAY_MM


def end_clearance(plan: SlantPlan) -> float:
    """Between core or flush lid and each side, mm: as given, else 1 mm, and no less than its caps need."""
    given = plan.design.lid.clearance
    return given if given is not None else max(ENDS_CLEAR_MM, math.ceil(10 * ends_need(plan) - 1e-9) / 10)


def lid_size(plan: SlantPlan) -> LidSize:
    """All sizes of the lid for the piece's seat."""
    slant_table, lid, s = plan.design.slant, plan.design.lid, plan.slant
    assert slant_table is not None
    inset = lid_inset(plan.design, plan.stocks)
    gap = top_gap(plan)
    whole = plan.stocks.of("top").thickness / math.sin(math.radians(s.alpha))
    if slant_table.seat == "on":
        bevel = lid.bevel if lid.bevel is not None else min(SEAT_MM + lid.reveal, whole)
        length, width = s.s1 - lid.reveal, plan.width - 2 * lid.reveal
        return LidSize(
            length, width, length, width, bevel - lid.reveal, plan.side.thickness - lid.reveal, bevel, 0.0, inset
        )
    if slant_table.seat == "flush":
        bevel = _bevel_flush(plan)
        length, width = s.s1 - bevel - gap, plan.inside - 2 * end_clearance(plan)
        return LidSize(length, width, length, width, 0.0, 0.0, bevel, gap, inset)
    lap = lid.lap if lid.lap is not None else plan.side.thickness - lid.reveal
    least_lip = gap + net_loss(plan) + LEAST_COVER_MM
    lip = lid.lip if lid.lip is not None else max(12.0, math.ceil(least_lip))
    bevel = lip - gap + lid.reveal
    return LidSize(
        length=s.s1 - lid.reveal,
        width=plan.inside + 2 * lap,
        core_length=s.s1 - bevel - gap,
        core_width=plan.inside - 2 * end_clearance(plan),
        lip=lip,
        lap=lap,
        bevel=bevel,
        gap=gap,
        inset=inset,
    )
