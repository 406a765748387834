"""Where a joint lies: the box round it in the world, whether a plane cuts it, its rectangle in that plane."""

from __future__ import annotations

from itertools import product

from shopdraw.shape.frame import Vec3, dot
from shopdraw.shape.path import bounds
from shopdraw.sheet.box import Bounds
from shopdraw.sheet.extent import extent
from shopdraw.sheet.planes import CuttingPlane
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board, Cut
from shopdraw.wood.prism import cut_prism

LEAST_INSIDE = 0.5
"""A plane cuts a joint when it runs at least this far inside it, mm."""


def corners_of(assembly: Assembly, joint: Joint) -> tuple[Vec3, ...]:
    """Corners of the box round a joint's body, world, mm; of a joint without one, of where its boards meet.

    Dovetails are taken as a row: their body is one tail. Empty where the boards' boxes are apart.
    """
    if joint.body is not None and joint.kind != "dovetail":
        f = joint.body.frame
        x0, y0, x1, y1 = bounds(joint.body.outline)
        return tuple(f.point((x, y, -z)) for x, y, z in product((x0, x1), (y0, y1), (0.0, joint.body.depth)))
    if not (assembly.has(joint.host) and assembly.has(joint.guest)):
        return ()
    one, two = extent([assembly.board(joint.host)]), extent([assembly.board(joint.guest)])
    low = [max(a, b) for a, b in zip(one.low, two.low, strict=True)]
    high = [min(a, b) for a, b in zip(one.high, two.high, strict=True)]
    if any(b < a - LEAST_INSIDE for a, b in zip(low, high, strict=True)):
        return ()
    return tuple((x, y, z) for x, y, z in product(*zip(low, high, strict=True)))


def corners_of_cut(board: Board, cut: Cut) -> tuple[Vec3, ...]:
    """Corners of the box round what a cut takes away, world, mm."""
    prism = cut_prism(board.shape.outline, board.shape.thickness, cut)
    x0, y0, x1, y1 = bounds(prism.outline)
    ends = product((x0, x1), (y0, y1), (prism.low, prism.high))
    return tuple(board.frame.point(prism.frame.point(end)) for end in ends)


def is_cut(corners: tuple[Vec3, ...], plane: CuttingPlane) -> bool:
    """Whether a plane runs through the box of these corners."""
    toward = plane.plane.direction.toward
    depths = [dot(corner, toward) for corner in corners]
    level = dot(plane.plane.through, toward)
    return bool(depths) and min(depths) + LEAST_INSIDE < level < max(depths) - LEAST_INSIDE


def on_plane(corners: tuple[Vec3, ...], plane: CuttingPlane) -> Bounds:
    """The rectangle of a box as a plane's view has it: x0, y0, x1, y1, true-size mm."""
    points = [plane.plane.direction.on_paper(corner) for corner in corners]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs), min(ys), max(xs), max(ys)
