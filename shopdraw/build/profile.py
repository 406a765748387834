"""Profiles of moulded edges: what a cutter takes off along an edge, as closed paths with true arcs.

A profile is drawn in the plane square to the edge. The sharp arris lies at (0, 0); the first coordinate runs from it
over the face, the second down the edge, both into the wood, mm. `mould` takes it away along a whole edge; two profiles
that meet at a corner mitre there by themselves.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from shopdraw.build.bench import Blank
from shopdraw.shape.path import Corner, Path, Point, arc_of, bounds, polygon
from shopdraw.wood.board import Face

Kind = Literal["chamfer", "bevel", "round", "ovolo", "cove", "ogee", "reverse-ogee", "bead"]
KINDS: tuple[Kind, ...] = ("chamfer", "bevel", "round", "ovolo", "cove", "ogee", "reverse-ogee", "bead")
QUIRK_SHARE = 0.4
"""Width of a bead's quirk as a share of the bead, at least `LEAST_QUIRK_MM` (common practice)."""
LEAST_QUIRK_MM = 1.5
_QUARTER = math.tan(math.pi / 8)


@dataclass(frozen=True, slots=True)
class Profile:
    """A profile as what it takes away.

    Attributes:
        kind: the trade's word for it.
        size: as `profile` was asked, mm.
        paths: closed, anticlockwise, none meeting another but in a point; the arris at (0, 0).
        words: what it is called; its sizes are printed in the piece's own unit.
    """

    kind: Kind
    size: float
    paths: tuple[Path, ...]
    words: str

    @property
    def over_face(self) -> float:
        """How far it reaches over the face, mm."""
        return max(bounds(path)[2] for path in self.paths)

    @property
    def down_edge(self) -> float:
        """How far it reaches down the edge, mm."""
        return max(bounds(path)[3] for path in self.paths)


@lru_cache(maxsize=256)
def profile(kind: Kind, size: float, *, step: float = 0.0, over: float | None = None) -> Profile:
    """A profile from the trade's few sizes.

    Args:
        kind: chamfer (45°), bevel, round (a quarter round), ovolo (a quarter round), cove (a quarter hollow), ogee
            (hollow at the face, round at the edge), reverse-ogee (round at the face, hollow at the edge), bead (a
            round as wide as `size`, level with the face, a quirk beside it).
        size: how far the curve goes down the edge, and over the face, mm; of a bead its width.
        step: of a round, ovolo, cove or ogee, the square steps at both ends of its curve, mm.
        over: of a bevel, how far it goes over the face; of a bead, the quirk's width, mm.
    Raises:
        ValueError: a size that isn't above 0.
    """
    if size <= 0 or step < 0 or (over is not None and over <= 0):
        raise ValueError(f"a {kind} needs sizes above 0, found {size:g}, {step:g}, {over}")
    if kind == "chamfer":
        return Profile(kind, size, (polygon([(0, 0), (size, 0), (0, size)]),), "chamfer 45°")
    if kind == "bevel":
        wide = over if over is not None else size
        level = math.degrees(math.atan2(size, wide))
        return Profile(
            kind,
            size,
            (polygon([(0, 0), (wide, 0), (0, size)]),),
            f"bevel {level:.1f}° from the face",
        )
    if kind == "bead":
        quirk = over if over is not None else max(LEAST_QUIRK_MM, round(QUIRK_SHARE * size * 2) / 2)
        return Profile(kind, size, _bead(size / 2, quirk), "bead and quirk")
    curve = _curve(kind, size)
    words = kind.replace("-", " ")
    return Profile(kind, size, (_stepped(curve, step),), f"{words} between steps" if step else words)


STEP_SHARE = 0.2
"""Square steps of an ovolo or an ogee as a share of the whole moulding (common practice)."""


def edge_profile(kind: Kind, size: float) -> Profile:
    """A profile that reaches `size` over the face and down the edge in all, steps of an ovolo or ogee included.

    A bead is as wide as `size` and half as deep, with its quirk beside it.
    """
    if kind in ("ovolo", "ogee", "reverse-ogee"):
        step = STEP_SHARE * size
        return profile(kind, size - step, step=step)
    return profile(kind, size)


def _curve(kind: Kind, size: float) -> list[Corner]:
    """The curve from the face to the edge, without steps; the last corner's bulge counts for nothing."""
    if kind == "cove":
        return [Corner(size, 0.0, _QUARTER), Corner(0.0, size)]
    if kind in ("round", "ovolo"):
        return [Corner(size, 0.0, -_QUARTER), Corner(0.0, size)]
    first = _QUARTER if kind == "ogee" else -_QUARTER
    return [Corner(size, 0.0, first), Corner(size / 2, size / 2, -first), Corner(0.0, size)]


def _stepped(curve: list[Corner], step: float) -> Path:
    if not step:
        return Path((Corner(0.0, 0.0), *curve))
    moved = [Corner(c.x + step, c.y + step, c.bulge) for c in curve]
    first, last = moved[0], moved[-1]
    return Path((Corner(0.0, 0.0), Corner(first.x, 0.0), *moved, Corner(0.0, last.y)))


def _bead(r: float, quirk: float) -> tuple[Path, Path]:
    """The outer quarter round of a bead, and its inner one with the quirk, which is as deep as the bead's middle."""
    outer = Path((Corner(0.0, 0.0), Corner(r, 0.0, -_QUARTER), Corner(0.0, r)))
    wide = 2 * r + quirk
    # from the bead's crown over the face to the quirk's far wall, down, back to the bead's foot and up its round
    inner = Path((Corner(r, 0.0), Corner(wide, 0.0), Corner(wide, r), Corner(2 * r, r, -_QUARTER)))
    return outer, inner


def mould(
    board: Blank,
    edge: str,
    face: str,
    made: Profile,
    *,
    id: str,
    purpose: str = "",
    inset: tuple[float, float] = (0.0, 0.0),
) -> None:
    """Cut a profile along the whole of a board's edge.

    Args:
        board: whose arris lies where two of its sides meet now; let it grow before.
        edge, face: world directions of those two sides; the profile's first coordinate runs over `face`, away from
            `edge`, its second over `edge`, away from `face`.
        made: from `profile`.
        id: of the cut; a second path gets ".2" behind it.
        purpose: in words, before those of the profile.
        inset: how far from the edge's two ends it stops, the lesser coordinate's first, mm; (0, 0) for all of it.
    Raises:
        ValueError: the two directions don't meet in an arris.
    """
    (p, p_sign), (q, q_sign) = board.axis_of(edge), board.axis_of(face)
    if p == q:
        raise ValueError(f"{edge} and {face} are no two sides that meet")
    run = 3 - p - q
    at = [board.high[axis] if sign > 0 else board.low[axis] for axis, sign in ((p, p_sign), (q, q_sign))]
    # the plane's two coordinates come in the order of the board's axes
    swapped = p > q

    def placed(point: Point) -> Point:
        one, two = at[0] - p_sign * point[0], at[1] - q_sign * point[1]
        return (two, one) if swapped else (one, two)

    mirrored = (p_sign * q_sign < 0) != swapped
    low = board.low[run] + inset[0] if inset[0] else None
    high = board.high[run] - inset[1] if inset[1] else None
    side, enter, floor = _ENTERED[run], low, high
    if side is Face.FACE:
        enter, floor = high, low
    words = f"{purpose}, {made.words}" if purpose else made.words
    for number, path in enumerate(made.paths, 1):
        board.sink(
            "chamfer" if made.kind == "chamfer" else "bevel" if made.kind == "bevel" else "moulding",
            side,
            path.mapped(placed, mirrored=mirrored),
            enter=enter,
            floor=floor,
            id=id if number == 1 else f"{id}.{number}",
            purpose=words,
        )


_ENTERED = {0: Face.FOOT, 1: Face.NEAR, 2: Face.FACE}
"""By the axis along which a profile runs, the side that its cutter enters."""


@dataclass(frozen=True, slots=True)
class Told:
    """What can be said of a profile from its path alone, mm.

    Attributes:
        name: round, ovolo, cove, ogee, quirk; moulding where it has no arc.
        across, deep: its extent along the path's first and second coordinate.
        radius: of its curve, 0 where it has none.
        step: width of its square steps, or of a quirk.
    """

    name: str
    across: float
    deep: float
    radius: float = 0.0
    step: float = 0.0


QUIRK = "quirk"
"""What a bead's inner path is told as: the quirk, its width as the step, and the bead's radius."""


def told_of(path: Path) -> Told:
    """A moulding's path read back, wherever on a board it lies."""
    x0, y0, x1, y1 = bounds(path)
    across, deep = x1 - x0, y1 - y0
    arcs = [(arc_of(a[:2], b[:2], a.bulge).radius, a.bulge) for a, b in path.pairs() if a.bulge]
    straight = len(path.corners) - len(arcs)
    if not arcs:
        return Told("moulding", across, deep)
    radius = arcs[0][0]
    if len(arcs) > 1:
        return Told("ogee", across, deep, radius, min(across, deep) - 2 * radius)
    if straight == 3:
        return Told(QUIRK, across, deep, radius, max(across, deep) - radius)
    step = min(across, deep) - radius
    if arcs[0][1] > 0:
        return Told("cove", across, deep, radius, step)
    return Told("round" if straight == 2 else "ovolo", across, deep, radius, step)
