"""Upright rectangles that a flat outline fills. Knows no numpy: drafts use it at every step of a hand."""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.shape.path import Point

Box = tuple[float, float, float, float]
"""Least x and y, greatest x and y."""

SLACK_MM = 1e-9
"""Boxes worked out in another way than faces may be off by so much."""


def area(box: Box) -> float:
    """The area of an upright rectangle, mm²."""
    return (box[2] - box[0]) * (box[3] - box[1])


def is_upright(points: Sequence[Point], box: Box) -> bool:
    """Whether an outline is the rectangle of its box."""
    if len(points) != 4:
        return False
    x0, y0, x1, y1 = box
    return all(
        (x - x0 < 1e-6 or x1 - x < 1e-6) and (y - y0 < 1e-6 or y1 - y < 1e-6)  # each corner on a corner of the box
        for x, y in points
    )


def filled(points: Sequence[Point], box: Box) -> list[Box]:
    """Upright rectangles that an outline fills: itself, or what a slanting edge leaves below it and behind it.

    Args:
        points: its corners in order; straight lines between them.
        box: the rectangle round it.
    """
    if is_upright(points, box):
        return [box]
    edges = list(zip(points, (*points[1:], points[0]), strict=True))
    turns = [
        (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0])
        for (a, b), (c, d) in zip(edges, (*edges[1:], edges[0]), strict=True)
    ]
    if min(turns) < -SLACK_MM < SLACK_MM < max(turns):
        return []  # hollow somewhere
    slanting = [end for a, b in edges if abs(a[0] - b[0]) > SLACK_MM < abs(a[1] - b[1]) for end in (a, b)]
    xs, ys = [x for x, _ in slanting], [y for _, y in slanting]
    x0, y0, x1, y1 = box
    tried = ((x0, y0, x1, min(ys)), (x0, max(ys), x1, y1), (x0, y0, min(xs), y1), (max(xs), y0, x1, y1))
    return [found for found in tried if found[0] < found[2] and found[1] < found[3] and _holds(points, found)]


def _holds(points: Sequence[Point], box: Box) -> bool:
    """Whether an outline without hollows holds a rectangle: no corner of it lies beyond an edge."""
    turned = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, (*points[1:], points[0]), strict=True))
    way = 1.0 if turned > 0.0 else -1.0
    corners = [(x, y) for x in (box[0], box[2]) for y in (box[1], box[3])]
    return all(
        way * ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) >= -SLACK_MM
        for a, b in zip(points, (*points[1:], points[0]), strict=True)
        for x, y in corners
    )
