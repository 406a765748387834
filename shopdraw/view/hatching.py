"""How cut wood is hatched: by material, by grain, and so that boards that touch can be told apart."""

from __future__ import annotations

import math
import zlib
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import Hatching
from shopdraw.shape.frame import Vec3, dot
from shopdraw.shape.inside import depth_inside
from shopdraw.shape.path import Path, Point, area, bounds, flattened
from shopdraw.view.direction import Direction
from shopdraw.view.outline import CutFace

END_GRAIN_DEG = 45.0
"""Source: common practice; DIN 919-1 as taught, from memory, to be confirmed."""
PITCH_FACTOR, LEAST_PITCH_MM, GREATEST_PITCH_MM = 0.12, 1.0, 3.5
"""Pitch on paper: 0.12 × √(area on paper), 1.0 to 3.5 mm. Our choice."""
LONG_GRAIN_PITCH = 1.3
THIRD_PITCH = 0.6
FINEST_PITCH_MM = 0.7
"""No hatch is finer on paper: nearer lines run together in print."""
THIN_MM = 1.0
"""Cut wood drawn thinner than this is filled grey. Source: ISO 128-50 practice for thin sections."""
_NEAR_EDGE_DEG, _TURN_DEG = 10.0, 15.0

Box = tuple[float, float, float, float]

_MANNERS = ((45.0, 1.0), (135.0, 1.0), (45.0, THIRD_PITCH), (135.0, THIRD_PITCH))


@dataclass(frozen=True, slots=True)
class CutBoard:
    """A cut board: its id, its stock's kind ("solid" or "sheet"), where grain and thickness run, its cut faces."""

    board: str
    kind: str
    grain: Vec3
    thickness_way: Vec3
    thickness: float
    faces: tuple[CutFace, ...]


def hatchings(cut: Sequence[CutBoard], direction: Direction, scale: float) -> dict[str, Hatching]:
    """How each cut board is hatched, by its id.

    Args:
        cut: boards in order: the first of those that touch keeps 45°.
        direction: which way the section is looked at.
        scale: of the view (0.2 for 1:5): pitches are paper mm.
    """
    found: dict[str, Hatching] = {}
    manners: dict[str, int] = {}
    boxes = {item.board: _box(item) for item in cut if item.faces}
    for item in cut:
        if not item.faces:
            continue
        if _thinnest(item, direction) * scale < THIN_MM:
            found[item.board] = Hatching("grey", seed=_seed(item.board))
        elif item.kind == "sheet":
            found[item.board] = _sheet(item, direction, scale)
        elif abs(dot(item.grain, direction.toward)) < math.cos(math.radians(45.0)):
            angle = _on_paper_deg(item.grain, direction)
            pitch = max(_pitch(item, scale) * LONG_GRAIN_PITCH, FINEST_PITCH_MM)
            found[item.board] = Hatching("broken", angle, pitch, _seed(item.board))
        else:
            near = 0.7 / scale
            beside = {
                manners[other.board]
                for other in cut
                if other.board in manners
                and _apart(boxes[item.board], boxes[other.board]) <= near
                and _touch(item, other, near)
            }
            manner = next((i for i in range(len(_MANNERS)) if i not in beside), 0)
            manners[item.board] = manner
            angle, factor = _MANNERS[manner]
            pitch = max(_pitch(item, scale) * factor, FINEST_PITCH_MM)
            found[item.board] = Hatching("lines", _clear_of_edges(angle, item), pitch, _seed(item.board))
    return found


def _sheet(item: CutBoard, direction: Direction, scale: float) -> Hatching:
    """Lines square to the sheet's face; where the plane runs along the face there are none, and 45° serves."""
    if abs(dot(item.thickness_way, direction.toward)) > math.cos(math.radians(45.0)):
        return Hatching("lines", _clear_of_edges(END_GRAIN_DEG, item), _pitch(item, scale), _seed(item.board))
    angle = _on_paper_deg(item.thickness_way, direction)
    return Hatching("lines", angle, max(item.thickness * scale / 2, LEAST_PITCH_MM), _seed(item.board))


def _seed(board: str) -> int:
    return zlib.crc32(board.encode())


def _pitch(item: CutBoard, scale: float) -> float:
    largest = max(area(face.outline) - sum(map(area, face.islands)) for face in item.faces)
    return min(GREATEST_PITCH_MM, max(LEAST_PITCH_MM, PITCH_FACTOR * math.sqrt(largest) * scale))


def _on_paper_deg(way: Vec3, direction: Direction) -> float:
    x, y = dot(way, direction.right), dot(way, direction.up)
    return round(math.degrees(math.atan2(y, x)), 9) % 180.0


def _thinnest(item: CutBoard, direction: Direction) -> float:
    """The least extent of the board's cut faces across or along its thickness, mm: the largest face's counts."""
    turn = math.radians(_on_paper_deg(item.thickness_way, direction))
    if abs(dot(item.thickness_way, direction.toward)) > 1 - 1e-9:
        turn = 0.0
    c, s = math.cos(turn), math.sin(turn)
    least = []
    for face in item.faces:
        x0, y0, x1, y1 = bounds(face.outline.mapped(lambda p: (p[0] * c + p[1] * s, -p[0] * s + p[1] * c)))
        least.append(min(x1 - x0, y1 - y0))
    return max(least)


def _clear_of_edges(angle: float, item: CutBoard) -> float:
    """The angle, turned by 15° where it runs within 10° of the longest edge of the largest face."""
    face = max(item.faces, key=lambda f: area(f.outline))
    sizes = [(math.dist((a.x, a.y), (b.x, b.y)), a, b) for a, b in face.outline.pairs() if not a.bulge]
    if not sizes:
        return angle
    _, a, b = max(sizes, key=lambda item: item[0])
    edge = math.degrees(math.atan2(b.y - a.y, b.x - a.x))
    apart = abs((angle - edge + 90.0) % 180.0 - 90.0)
    return (angle + _TURN_DEG) % 180.0 if apart < _NEAR_EDGE_DEG else angle


def _box(item: CutBoard) -> Box:
    boxes = [bounds(face.outline) for face in item.faces]
    x0, y0, x1, y1 = zip(*boxes, strict=True)
    return (min(x0), min(y0), max(x1), max(y1))


def _apart(one: Box, other: Box) -> float:
    """How far two boxes stand apart along one of the axes, the greater one."""
    return max(max(one[i], other[i]) - min(one[i + 2], other[i + 2]) for i in (0, 1))


def _touch(one: CutBoard, other: CutBoard, near: float) -> bool:
    return any(_near(a.outline, b.outline, near) for a in one.faces for b in other.faces)


def _near(one: Path, other: Path, near: float) -> bool:
    if _apart(bounds(one), bounds(other)) > near:
        return False
    return any(
        abs(depth_inside(path, point)) <= near or depth_inside(path, point) > 0
        for path, points in ((other, _corners(one)), (one, _corners(other)))
        for point in points
    )


def _corners(path: Path) -> tuple[Point, ...]:
    return flattened(path, 0.5)
