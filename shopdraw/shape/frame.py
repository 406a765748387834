"""Points, directions and right-handed frames in space, as plain floats.

Knows vectors and rigid placements; knows nothing of wood.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

Vec3 = tuple[float, float, float]


def add(a: Vec3, b: Vec3) -> Vec3:
    """The sum of two vectors, mm."""
    return (a[0] + b[0], a[1] + b[1], a[2] + b[2])


def subtract(a: Vec3, b: Vec3) -> Vec3:
    """The vector from `b` to `a`, mm."""
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def scale(a: Vec3, factor: float) -> Vec3:
    """The vector stretched by a factor."""
    return (a[0] * factor, a[1] * factor, a[2] * factor)


def dot(a: Vec3, b: Vec3) -> float:
    """The scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Vec3, b: Vec3) -> Vec3:
    """The vector product, right-handed."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def length(a: Vec3) -> float:
    """The length of a vector, mm."""
    return math.sqrt(dot(a, a))


def unit(a: Vec3) -> Vec3:
    """The vector's direction.

    Raises:
        ValueError: the vector has no length.
    """
    size = length(a)
    if size == 0.0:
        raise ValueError("a vector of length 0 has no direction")
    return scale(a, 1.0 / size)


@dataclass(frozen=True, slots=True)
class Frame:
    """A right-handed frame: three unit axes and the point they start from.

    Attributes:
        u, v, w: unit axes in the outer (world) frame, u × v = w.
        at: the origin in the outer frame, mm.
    """

    u: Vec3
    v: Vec3
    w: Vec3
    at: Vec3

    def point(self, p: Vec3) -> Vec3:
        """A point given in this frame, in the outer frame."""
        (ux, uy, uz), (vx, vy, vz), (wx, wy, wz), (x, y, z) = self.u, self.v, self.w, self.at
        a, b, c = p
        return (ux * a + vx * b + wx * c + x, uy * a + vy * b + wy * c + y, uz * a + vz * b + wz * c + z)

    def direction(self, d: Vec3) -> Vec3:
        """A direction given in this frame, in the outer frame."""
        return subtract(self.point(d), self.at)

    def local(self, p: Vec3) -> Vec3:
        """A point of the outer frame, in this one."""
        (ux, uy, uz), (vx, vy, vz), (wx, wy, wz), (x, y, z) = self.u, self.v, self.w, self.at
        a, b, c = p[0] - x, p[1] - y, p[2] - z
        return (a * ux + b * uy + c * uz, a * vx + b * vy + c * vz, a * wx + b * wy + c * wz)

    def local_direction(self, d: Vec3) -> Vec3:
        """A direction of the outer frame, in this one."""
        return (dot(d, self.u), dot(d, self.v), dot(d, self.w))

    def within(self, outer: Frame) -> Frame:
        """This frame, given in `outer`, expressed in the frame that `outer` is given in."""
        return Frame(outer.direction(self.u), outer.direction(self.v), outer.direction(self.w), outer.point(self.at))

    def moved(self, by: Vec3) -> Frame:
        """The frame shifted by a vector of the outer frame, mm."""
        return Frame(self.u, self.v, self.w, add(self.at, by))

    def turned(self, about: Vec3, axis: Vec3, degrees: float) -> Frame:
        """The frame turned about a line of the outer frame.

        Args:
            about: a point on the line, mm.
            axis: the line's unit direction; the turn is right-handed about it.
            degrees: the angle.
        """
        return Frame(
            turn_direction(self.u, axis, degrees),
            turn_direction(self.v, axis, degrees),
            turn_direction(self.w, axis, degrees),
            add(about, turn_direction(subtract(self.at, about), axis, degrees)),
        )

    def rows(self) -> tuple[float, ...]:
        """Twelve numbers, three rows of four (R | t): this frame's coordinates to the outer ones."""
        return tuple(value for i in range(3) for value in (self.u[i], self.v[i], self.w[i], self.at[i]))


def turn_direction(d: Vec3, axis: Vec3, degrees: float) -> Vec3:
    """A vector turned right-handed about a unit axis (Rodrigues' formula)."""
    radians = math.radians(degrees)
    c, s = math.cos(radians), math.sin(radians)
    along = scale(axis, dot(axis, d) * (1.0 - c))
    return add(add(scale(d, c), scale(cross(axis, d), s)), along)


WORLD = Frame((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, 0.0))
"""The frame of the finished piece: x right, y to the back, z up from the floor."""
