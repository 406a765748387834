"""Which faces of a board show once the piece stands closed: those that look out, to the front, a side or upwards.

What looks to the wall, to the floor or into the case is no show face. Front edges are told where they show.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from shopdraw.shape.frame import Vec3
from shopdraw.shape.region import inside
from shopdraw.wood.board import Board

_SAMPLES = (0.15, 0.5, 0.85)
_OFF_MM = 0.5
_SHOWS = 0.5
"""Share of a face that must look out freely."""
_MOST_DOWN_OR_BACK = 0.3
_Floats = npt.NDArray[np.float64]


def show_faces(boards: Sequence[Board]) -> Mapping[str, str]:
    """What shows of each board, by its id, in words: "front", "left", "upper, front edge"; no key where nothing does.

    A box round each other board stands for it, so that a face is rather called hidden than shown.

    Args:
        boards: of the piece, in place.
    """
    turns = np.array([[board.frame.u, board.frame.v, board.frame.w] for board in boards])
    origins = np.array([board.frame.at for board in boards])
    boxes = np.array([(*board.shape.box[:2], -board.thickness, *board.shape.box[2:], 0.0) for board in boards])
    told: dict[str, str] = {}
    for number, board in enumerate(boards):
        others = _Others(*(np.delete(rows, number, axis=0) for rows in (turns, origins, boxes)))
        words = [name for name, way, points in _sides(board) if _free(points, way, others)]
        if words:
            told[board.id] = ", ".join(dict.fromkeys(words))
    return told


def _sides(board: Board) -> Iterator[tuple[str, Vec3, _Floats]]:
    """Both faces, then the edges and ends that look to the front: name, direction, points just off them."""
    u0, v0, u1, v1 = board.shape.box
    frame, thick = board.frame, board.thickness
    spots = [(u0 + (u1 - u0) * a, v0 + (v1 - v0) * b) for a in _SAMPLES for b in _SAMPLES]
    wood = [spot for spot in spots if inside((board.shape.outline,), spot)] or spots
    for way, w in ((frame.w, _OFF_MM), (_against(frame.w), -thick - _OFF_MM)):
        name = _name(way)
        if name:
            yield name, way, np.array([frame.point((u, v, w)) for u, v in wood])
    middle = -thick / 2
    along_u = [u0 + (u1 - u0) * share for share in _SAMPLES]
    along_v = [v0 + (v1 - v0) * share for share in _SAMPLES]
    edges = (
        (frame.v, [(u, v1 + _OFF_MM, middle) for u in along_u]),
        (_against(frame.v), [(u, v0 - _OFF_MM, middle) for u in along_u]),
        (frame.u, [(u1 + _OFF_MM, v, middle) for v in along_v]),
        (_against(frame.u), [(u0 - _OFF_MM, v, middle) for v in along_v]),
    )
    for way, points in edges:
        if _name(way) == "front":
            yield "front edge", way, np.array([frame.point(point) for point in points])


def _name(way: Vec3) -> str:
    """Where a direction looks; "" for what looks to the wall or to the floor."""
    x, y, z = way
    if y > _MOST_DOWN_OR_BACK or z < -_MOST_DOWN_OR_BACK:
        return ""
    if abs(x) >= max(abs(y), abs(z)):
        return "right" if x > 0 else "left"
    return "front" if -y >= z else "upper"


@dataclass(frozen=True, slots=True)
class _Others:
    """Boxes in their own frames: rows of axes, of origins, of least and greatest u, v, w."""

    turns: _Floats
    origins: _Floats
    boxes: _Floats


def _free(points: _Floats, way: Vec3, others: _Others) -> bool:
    """Whether most rays from points along a direction meet no box."""
    if not len(others.boxes):
        return True
    starts = np.einsum("bij,pbj->pbi", others.turns, points[:, None, :] - others.origins[None, :, :])
    ways = others.turns @ np.array(way)
    low, high = others.boxes[None, :, :3] - starts, others.boxes[None, :, 3:] - starts
    level = np.abs(ways) < 1e-9
    safe = np.where(level, 1.0, ways)
    beside = (level & ((low > 0) | (high < 0))).any(axis=2)
    near = np.where(level, -np.inf, np.minimum(low / safe, high / safe)).max(axis=2)
    far = np.where(level, np.inf, np.maximum(low / safe, high / safe)).min(axis=2)
    met = ~beside & (np.maximum(near, 0.0) < far - 1e-9)
    return bool(np.mean(~met.any(axis=1)) >= _SHOWS)


def _against(way: Vec3) -> Vec3:
    return (-way[0], -way[1], -way[2])
