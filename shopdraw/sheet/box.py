"""Boxes that may be turned, and whether lines and other boxes meet them. Paper mm."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.drawing.letters import lettered, text_box
from shopdraw.drawing.mark import Text
from shopdraw.shape.path import Point

Segment = tuple[Point, Point]
Bounds = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle: its middle, half its size along and across, and the unit direction it lies along."""

    x: float
    y: float
    along: float
    across: float
    cos: float = 1.0
    sin: float = 0.0

    def grown(self, by: float) -> Box:
        """The box with a margin all round."""
        return Box(self.x, self.y, self.along + by, self.across + by, self.cos, self.sin)

    def corners(self) -> tuple[Point, Point, Point, Point]:
        """Anticlockwise from the lower left as it lies."""
        ax, ay = self.along * self.cos, self.along * self.sin
        bx, by = -self.across * self.sin, self.across * self.cos
        x, y = self.x, self.y
        return (
            (x - ax - bx, y - ay - by),
            (x + ax - bx, y + ay - by),
            (x + ax + bx, y + ay + by),
            (x - ax + bx, y - ay + by),
        )

    def bounds(self) -> Bounds:
        """The upright box round it."""
        w = abs(self.along * self.cos) + abs(self.across * self.sin)
        h = abs(self.along * self.sin) + abs(self.across * self.cos)
        return self.x - w, self.y - h, self.x + w, self.y + h

    def meets_line(self, p: Point, q: Point) -> bool:
        """Whether a straight line between two points has a point inside."""
        c, s = self.cos, self.sin
        px, py, qx, qy = p[0] - self.x, p[1] - self.y, q[0] - self.x, q[1] - self.y
        ax, ay, bx, by = px * c + py * s, py * c - px * s, qx * c + qy * s, qy * c - qx * s
        low, high = 0.0, 1.0
        for start, run, half in ((ax, bx - ax, self.along), (ay, by - ay, self.across)):
            if abs(run) < 1e-12:
                if abs(start) >= half:
                    return False
                continue
            t0, t1 = (-half - start) / run, (half - start) / run
            low, high = max(low, min(t0, t1)), min(high, max(t0, t1))
            if low >= high:
                return False
        return True

    def meets_box(self, other: Box) -> bool:
        """Whether the two share more than an edge."""
        dx, dy = other.x - self.x, other.y - self.y
        for one, two in ((self, other), (other, self)):
            turn_c = abs(one.cos * two.cos + one.sin * two.sin)
            turn_s = abs(one.cos * two.sin - one.sin * two.cos)
            if abs(dx * one.cos + dy * one.sin) >= one.along + two.along * turn_c + two.across * turn_s:
                return False
            if abs(dy * one.cos - dx * one.sin) >= one.across + two.along * turn_s + two.across * turn_c:
                return False
        return True


def box_of_text(text: Text, scale: float = 1.0) -> Box:
    """The box round a text's ink on paper.

    Args:
        text: in a drawing's own mm.
        scale: of that drawing; 1 when it stands on paper already.
    """
    corners = text_box(text, scale)
    (x0, y0), (x1, y1), (x2, y2), _ = ((x * scale, y * scale) for x, y in corners)
    angle = math.radians(text.angle_deg)
    return Box(
        (x0 + x2) / 2, (y0 + y2) / 2, math.dist((x0, y0), (x1, y1)) / 2, math.dist((x1, y1), (x2, y2)) / 2,
        _exact(math.cos(angle)), _exact(math.sin(angle)),
    )


def words_size(words: str, height: float) -> tuple[float, float, float]:
    """Width, ink below the baseline and ink above it of a line of words, paper mm."""
    line = lettered(words, height)
    return line.width, line.below, line.above


def upright(bounds: Bounds) -> Box:
    """A box from its least and greatest x and y."""
    x0, y0, x1, y1 = bounds
    return Box((x0 + x1) / 2, (y0 + y1) / 2, (x1 - x0) / 2, (y1 - y0) / 2)


def united(boxes: list[Bounds]) -> Bounds:
    """The upright box round all of them; at least one."""
    return (
        min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes),
    )


def crossing(one: Segment, two: Segment, slack: float = 0.05) -> Point | None:
    """Where two lines cross inside both, ends apart by more than `slack`; None where they don't."""
    (ax, ay), (bx, by) = one
    (cx, cy), (dx, dy) = two
    rx, ry, sx, sy = bx - ax, by - ay, dx - cx, dy - cy
    turn = rx * sy - ry * sx
    long1, long2 = math.hypot(rx, ry), math.hypot(sx, sy)
    if long1 < 1e-9 or long2 < 1e-9 or abs(turn) < 1e-7 * long1 * long2:
        return None
    t = ((cx - ax) * sy - (cy - ay) * sx) / turn
    u = ((cx - ax) * ry - (cy - ay) * rx) / turn
    e1, e2 = slack / long1, slack / long2
    if e1 < t < 1 - e1 and e2 < u < 1 - e2:
        return ax + t * rx, ay + t * ry
    return None


def overlap(one: Segment, two: Segment, apart: float = 0.05) -> float:
    """How far two lines run along each other, less than `apart` from one another; 0 where they don't."""
    (ax, ay), (bx, by) = one
    long1 = math.hypot(bx - ax, by - ay)
    if long1 < 1e-9:
        return 0.0
    ux, uy = (bx - ax) / long1, (by - ay) / long1
    places = []
    for x, y in two:
        if abs((y - ay) * ux - (x - ax) * uy) > apart:
            return 0.0
        places.append((x - ax) * ux + (y - ay) * uy)
    return max(0.0, min(long1, max(places)) - max(0.0, min(places)))


def _exact(value: float) -> float:
    """Sines and cosines of quarter turns without their noise."""
    return round(value) + 0.0 if abs(value - round(value)) < 1e-12 else value
