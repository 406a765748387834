"""The lines that fill a hatched area: one generator for screen, PDF and DXF, so that the three can't differ."""

from __future__ import annotations

import math
import random
from functools import lru_cache

from ezdxf.math import Vec2
from ezdxf.render.hatching import HatchBaseLine, hatch_polygons

from shopdraw.drawing.mark import Area
from shopdraw.shape.path import Point, flattened

Segment = tuple[Point, Point]

FIRST_LINE = 0.37
"""Where the first line lies, in pitches from the area's edge: seldom on a corner, never on the edge itself."""
DRAWN_MM = (8.0, 24.0)
"""Least and greatest length of a broken line's drawn pieces, paper mm (common practice)."""
EMPTY_MM = (1.0, 3.0)
"""Least and greatest length of the gaps between them, paper mm (common practice)."""
_CHORD_PAPER_MM = 0.02
_SHORTEST_PAPER_MM = 0.2


@lru_cache(maxsize=4096)
def hatch_lines(area: Area, scale: float) -> tuple[Segment, ...]:
    """The hatch of an area as straight lines.

    Args:
        area: with its islands and the boxes kept clear; a grey area has no lines.
        scale: of the drawing on paper: pitch and broken lengths are paper mm.
    Returns:
        Segments in the area's own coordinates, from the first line on and along each, in a fixed order.
    """
    hatching = area.hatching
    if hatching.kind == "grey":
        return ()
    pitch = hatching.pitch / scale
    angle = math.radians(hatching.angle_deg)
    along = (math.cos(angle), math.sin(angle))
    across = (-along[1], along[0])
    polygons = [flattened(path, _CHORD_PAPER_MM / scale) for path in (area.outline, *area.islands)]
    heights = [x * across[0] + y * across[1] for x, y in polygons[0]]
    # An area thinner than that still gets one line, along its middle.
    start = min(heights) + min(FIRST_LINE * pitch, (max(heights) - min(heights)) / 2)
    baseline = HatchBaseLine(
        Vec2(across[0] * start, across[1] * start), Vec2(along), Vec2(across[0] * pitch, across[1] * pitch)
    )
    found = sorted(
        hatch_polygons(baseline, [[Vec2(p) for p in polygon] for polygon in polygons]),
        key=lambda line: (round(line.distance / pitch), line.start.x * along[0] + line.start.y * along[1]),
    )
    shortest = _SHORTEST_PAPER_MM / scale
    whole = [((line.start.x, line.start.y), (line.end.x, line.end.y)) for line in found]
    pieces = [piece for line in whole for piece in _outside(line, area.clear)]
    if hatching.kind == "broken":
        pieces = [piece for line in pieces for piece in _in_broken_lengths(line, area, scale)]
    return tuple(piece for piece in pieces if math.dist(*piece) >= shortest)


def _in_broken_lengths(whole: Segment, area: Area, scale: float) -> list[Segment]:
    """A line cut into pieces of varying length, the same on every run."""
    (x0, y0), (x1, y1) = whole
    size = math.dist(*whole)
    if size == 0.0:
        return []
    # The seed is made of whole numbers alone, so that it is the same in every process.
    key = (area.hatching.seed * 1_000_003 + round(x0 * 10) * 8191 + round(y0 * 10) * 131) & 0xFFFFFFFF
    chance = random.Random(key)
    pieces = []
    place = -chance.uniform(0.0, DRAWN_MM[0]) / scale
    while place < size:
        end = place + chance.uniform(*DRAWN_MM) / scale
        low, high = max(0.0, place) / size, min(size, end) / size
        pieces.append(((x0 + (x1 - x0) * low, y0 + (y1 - y0) * low), (x0 + (x1 - x0) * high, y0 + (y1 - y0) * high)))
        place = end + chance.uniform(*EMPTY_MM) / scale
    return pieces


def _outside(whole: Segment, boxes: tuple[tuple[float, float, float, float], ...]) -> list[Segment]:
    """The parts of a line outside all the boxes."""
    parts = [whole]
    for box in boxes:
        parts = [piece for part in parts for piece in _outside_box(part, box)]
    return parts


def _outside_box(whole: Segment, box: tuple[float, float, float, float]) -> list[Segment]:
    (x0, y0), (x1, y1) = whole
    low, high = 0.0, 1.0
    for start, change, least, greatest in ((x0, x1 - x0, box[0], box[2]), (y0, y1 - y0, box[1], box[3])):
        if abs(change) < 1e-12:
            if not least < start < greatest:
                return [whole]
            continue
        enters, leaves = sorted(((least - start) / change, (greatest - start) / change))
        low, high = max(low, enters), min(high, leaves)
    if low >= high:
        return [whole]
    a = (x0 + (x1 - x0) * low, y0 + (y1 - y0) * low)
    b = (x0 + (x1 - x0) * high, y0 + (y1 - y0) * high)
    return [piece for piece in ((whole[0], a), (b, whole[1])) if math.dist(*piece) > 1e-9]
