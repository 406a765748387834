"""Inside corners and round cutters: reliefs past a corner where nothing shows, rounded mortises and tenons.

A relief is a cut of its own beside the cut whose corner it clears, so that its wood is out of the solid, and a router
file that joins cuts of one depth has it in the same polyline. Its radius is the piece's own input and never the shop's.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from shopdraw.build.bench import SLIGHT_MM, Blank, Box, opposite
from shopdraw.shape.path import Corner, Path, Point, bounds, circle

EASE_MM = 0.05
"""A relief's radius is this much more than the cutter's, so that the cutter needn't stop dead in it."""
COVER_MM = 1.0
"""What a shoulder covers beyond a relief, at least."""
KIND = "relief"
_LEAST_WALL_MM = 3.0
"""Wood narrower than this beside a relief would break away: the whole wall goes back instead (common practice)."""
_QUARTER = math.tan(math.pi / 8)


class Corners(Enum):
    """What becomes of a mortise's inside corners."""

    BISECTOR = "relief on the bisector"
    ALONG = "relief along the length"
    CHISEL = "square by chisel"


@dataclass(frozen=True, slots=True)
class Relief:
    """A relief at one corner of a pocket's section.

    Attributes:
        centre: of the cutter's circle, in the section's two coordinates, mm.
        radius: of the circle: the cutter's and a little more.
    """

    centre: tuple[float, float]
    radius: float


def bisector_relief(corner: tuple[float, float], into: tuple[int, int], radius: float) -> Relief:
    """The relief on a square corner's bisector: its middle stands the cutter's radius off the corner.

    Args:
        corner: of the pocket, mm.
        into: the signs of the way from the corner into the pocket, along both coordinates.
        radius: of the cutter, mm.
    Source: trigonometry: the middle stands r / √2 off each wall, the circle reaches (1 - 1/√2) r = 0.293 r beyond it.
    """
    off = radius / math.sqrt(2.0)
    return Relief((corner[0] + into[0] * off, corner[1] + into[1] * off), radius + EASE_MM)


def wall_relief(corner: tuple[float, float], along: int, into: int, radius: float) -> Relief:
    """The relief on a wall: its middle stands on it, the cutter's radius from the corner; the other wall is clean.

    Args:
        corner: of the pocket, mm.
        along: the coordinate (0 or 1) along which the wall runs.
        into: the sign of the way from the corner along it.
        radius: of the cutter, mm.
    """
    centre = [*corner]
    centre[along] += into * radius
    return Relief((centre[0], centre[1]), radius + EASE_MM)


def reach_beyond(radius: float) -> float:
    """How far a relief on the bisector reaches beyond each wall, mm."""
    return radius * (1.0 - 1.0 / math.sqrt(2.0)) + EASE_MM


def mortise_corners(across: float, lengthwise: float, radius: float) -> Corners:
    """What a square tenon's mortise gets.

    Args:
        across: how far the shoulder covers the host beyond the mortise across its width, mm; the lesser side.
        lengthwise: the same beyond its ends.
        radius: of the cutter, mm.
    """
    least = radius * (1.0 - 1.0 / math.sqrt(2.0)) + COVER_MM
    if across >= least and lengthwise >= least:
        return Corners.BISECTOR
    return Corners.ALONG if lengthwise >= radius + COVER_MM else Corners.CHISEL


def rounded(path: Path, radius: float) -> Path:
    """An upright rectangle with round corners, as a cutter leaves a mortise; fully round ends where it is narrow."""
    x0, y0, x1, y1 = bounds(path)
    r = min(radius, (x1 - x0) / 2, (y1 - y0) / 2)
    corners = [
        Corner(x0 + r, y0), Corner(x1 - r, y0, _QUARTER), Corner(x1, y0 + r), Corner(x1, y1 - r, _QUARTER),
        Corner(x1 - r, y1), Corner(x0 + r, y1, _QUARTER), Corner(x0, y1 - r), Corner(x0, y0 + r, _QUARTER),
    ]  # fmt: skip
    return Path(_each_place_once(corners))


def relieve_end(
    blank: Blank, pocket: Box, into: str, end: str, sides: Sequence[str], radius: float, *, id: str, purpose: str
) -> None:
    """Clear the corners at one end of a pocket by reliefs past that end; its width stays clean.

    Args:
        blank: what is cut.
        pocket: the pocket, in the world.
        into: the world direction in which its cutter enters.
        end: the world direction at whose end the corners are.
        sides: the world directions of the walls that meet the end there; what has no wall is open.
        radius: of the cutter, mm.
        id, purpose: of the cut or cuts made; numbered where there are two.
    """
    across = sides[0][1]
    wide = pocket.side("+" + across) - pocket.side("-" + across)
    left = wide - len(sides) * 2 * radius
    if wide < radius:
        return
    if left < _LEAST_WALL_MM:
        _back_by(blank, pocket, into, end, sides, min(radius, wide / len(sides)), id=id, purpose=purpose)
        return
    for number, side in enumerate(sides, 1):
        corner = (pocket.side(end), pocket.side(side))
        found = wall_relief(corner, 1, -1 if side[0] == "+" else 1, radius)
        own = id if len(sides) == 1 else f"{id}.{number}"
        _sink_disc(blank, pocket, into, (end[1], across), found, id=own, purpose=purpose)


def relieve_corners(
    blank: Blank, pocket: Box, into: str, axes: tuple[str, str], how: Corners, radius: float, *, id: str, purpose: str
) -> None:
    """Clear all four corners of a mortise for a square tenon.

    Args:
        axes: names of the world axes across the mortise and along it.
        how: from `mortise_corners`.
    """
    across, along = axes
    if how is Corners.BISECTOR:
        ends = [(sign, other) for sign in ("-", "+") for other in ("-", "+")]
        for number, (one, two) in enumerate(ends, 1):
            corner = (pocket.side(one + across), pocket.side(two + along))
            found = bisector_relief(corner, (1 if one == "-" else -1, 1 if two == "-" else -1), radius)
            _sink_disc(blank, pocket, into, axes, found, id=f"{id}.{number}", purpose=purpose)
    elif how is Corners.ALONG:
        for number, sign in enumerate("-+", 1):
            sides = ("-" + across, "+" + across)
            relieve_end(blank, pocket, into, sign + along, sides, radius, id=f"{id}.{number}", purpose=purpose)


def _sink_disc(
    blank: Blank, pocket: Box, into: str, axes: tuple[str, str], found: Relief, *, id: str, purpose: str
) -> None:
    """Take a relief's cylinder away, as deep as its pocket; its middle is given along two world axes."""
    disc = pocket
    for axis, middle in zip(axes, found.centre, strict=True):
        disc = disc.with_side("-" + axis, middle - found.radius).with_side("+" + axis, middle + found.radius)
    blank.sink_box(KIND, disc, into, id=id, purpose=purpose)
    made = blank.cuts[-1]
    x0, y0, x1, y1 = bounds(made.outline)
    made.outline, made.clipped = circle(((x0 + x1) / 2, (y0 + y1) / 2), found.radius), False


def _back_by(
    blank: Blank, pocket: Box, into: str, end: str, sides: Sequence[str], radius: float, *, id: str, purpose: str
) -> None:
    """The whole end moved back by the radius, its corners rounded: full width as far as the pocket should reach."""
    strip = pocket.with_side(opposite(end), pocket.side(end)).grown(opposite(end), radius).grown(end, radius)
    blank.sink_box(KIND, strip, into, id=id, purpose=purpose)
    made = blank.cuts[-1]
    places = [_on_section(blank, strip.with_side(opposite(end), strip.side(end)), into, side) for side in sides]
    corners = made.outline.corners
    turned = [any(math.dist(corner[:2], place) < SLIGHT_MM for place in places) for corner in corners]
    made.outline = _with_round(corners, turned, radius)


def _on_section(blank: Blank, box: Box, into: str, side: str) -> Point:
    """A box's edge towards a side, as a point of the outline on the face that the cutter enters."""
    low, _ = box.with_side(opposite(side), box.side(side)).corners()
    local = blank.frame.local(low)
    entered, _ = blank.axis_of(into)
    first, second = (axis for axis in range(3) if axis != entered)
    return local[first], local[second]


def _with_round(corners: Sequence[Corner], turned: Sequence[bool], radius: float) -> Path:
    found: list[Corner] = []
    for i, corner in enumerate(corners):
        if not turned[i]:
            found.append(corner)
            continue
        before, after = corners[i - 1], corners[(i + 1) % len(corners)]
        for other, bulge in ((before, _QUARTER), (after, 0.0)):
            share = radius / math.dist(other[:2], corner[:2])
            x, y = corner.x + (other.x - corner.x) * share, corner.y + (other.y - corner.y) * share
            found.append(Corner(x, y, bulge))
    return Path(_each_place_once(found))


def _each_place_once(corners: Sequence[Corner]) -> tuple[Corner, ...]:
    """Corners without the straight sides of no length between quarters that meet: what leaves the place last counts."""
    return tuple(
        corner
        for corner, after in zip(corners, (*corners[1:], corners[0]), strict=True)
        if math.dist(corner[:2], after[:2]) >= SLIGHT_MM
    )
