"""Which way one looks, and how what is seen lies on paper."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.shape.frame import Vec3, cross, dot, scale, subtract, unit
from shopdraw.shape.path import Point


@dataclass(frozen=True, slots=True)
class Direction:
    """A way of looking, as the world directions that point right and up on paper.

    Attributes:
        right, up: unit directions in the world, square to each other.
    """

    right: Vec3
    up: Vec3

    @property
    def toward(self) -> Vec3:
        """The world direction that points from the piece to the viewer."""
        return cross(self.right, self.up)

    def on_paper(self, point: Vec3) -> Point:
        """Where a world point lies in the view's plane, mm."""
        return (dot(point, self.right), dot(point, self.up))


FRONT = Direction((1.0, 0.0, 0.0), (0.0, 0.0, 1.0))
"""Along +y: paper x is world x, paper y is world z."""
RIGHT_SIDE = Direction((0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
"""Along -x: paper x is world y (front at the left), paper y is world z."""
PLAN = Direction((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
"""Along -z: paper x is world x, paper y is world y (front at the bottom)."""


def looking(along: Vec3, up: Vec3 = (0.0, 0.0, 1.0)) -> Direction:
    """Any way of looking.

    Args:
        along: the world direction one looks along.
        up: a world direction that is to point up on paper, as nearly as the view allows.
    Raises:
        ValueError: `up` runs along the line of sight.
    """
    sight = unit(along)
    rest = subtract(up, scale(sight, dot(up, sight)))
    if dot(rest, rest) < 1e-12:
        raise ValueError("looking straight along the direction that is to point up: give another one for up")
    upward = unit(rest)
    return Direction(cross(sight, upward), upward)


ISOMETRIC = looking((-1.0, 1.0, -1.0))
"""From the right, in front and above, the three axes foreshortened alike."""
