"""Balloons: labels in circles beside a view, in straight columns or rows, leaders not crossing. Paper mm.

Practice of ISO 6433 (read second-hand): outside the outline, in line, one height larger than dimensions; leaders and
their ends as ISO 128-2 has them.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from shopdraw.drawing.explode import ARROW_LENGTH_MM, ARROW_WIDTH_MM
from shopdraw.drawing.mark import ArcMark, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds, Segment, crossing, upright, words_size
from shopdraw.sheet.crowd import Crowd
from shopdraw.sheet.ground import Ground, Stroke, What
from shopdraw.sheet.leader import ANGLES, DOT_RADIUS, LENGTHS, leader_clashes
from shopdraw.sheet.look import Look
from shopdraw.sheet.view import Balloon

CIRCLE = 2.5
"""Diameter of the circle over the label's height."""
LONGEST = 80.0
LEAST_LEAN_DEG = 15.0
_FLAT_ANGLES = (16.0, 164.0, 344.0, 196.0)
"""As flat as leaders may be: they pass between two balloons."""
_FREE_WAYS = tuple((math.cos(math.radians(a)), math.sin(math.radians(a))) for a in (*ANGLES, *_FLAT_ANGLES))
_TURNS = 3
_CLEAR = 1.0
"""How far lines and words keep off a circle."""
_AIR = 2.0
_SIDES = ("right", "above", "left", "below")


@dataclass(frozen=True, slots=True)
class _Seat:
    """A place for a balloon: its middle and the side that it stands on."""

    at: Point
    side: str


@dataclass(frozen=True, slots=True)
class Ballooned:
    """Balloons as marks on paper, and the labels that found no place."""

    marks: tuple[Mark, ...]
    failed: tuple[str, ...]


def place_balloons(balloons: Sequence[Balloon], scale: float, around: Bounds, ground: Ground, look: Look) -> Ballooned:
    """Balloons round a view, or on free paper within it; the last things to be placed.

    Each side is tried in turn for the balloons that are still without a seat; on a side they are ordered along it by
    their targets, and neighbours are swapped while leaders cross.

    Args:
        balloons: labels with targets, true-size mm.
        scale: of the view.
        around: box round the view with its rows, paper mm.
        ground: what stands there.
        look: heights and widths.
    """
    waiting = sorted(balloons, key=lambda b: (b.label, b.target))
    marks: list[Mark] = []
    for distance in (0.0, 12.0):
        for side in _by_nearness(waiting, scale, around):
            waiting, made = _fill_side(side, waiting, scale, around, distance, ground, look)
            marks.extend(made)
    waiting, made = _fill_free_paper(waiting, scale, ground, look)
    marks.extend(made)
    return Ballooned(tuple(marks), tuple(b.label for b in waiting))


def _by_nearness(balloons: Sequence[Balloon], scale: float, around: Bounds) -> list[str]:
    """Sides in the order in which they suit most of the balloons."""
    counts = dict.fromkeys(_SIDES, 0)
    for balloon in balloons:
        gaps = {side: _gap(_turned(balloon, scale, around, side), scale, around, side) for side in _SIDES}
        counts[min(_SIDES, key=lambda side: gaps[side])] += 1
    return sorted(_SIDES, key=lambda side: -counts[side])


def _gap(balloon: Balloon, scale: float, around: Bounds, side: str) -> float:
    x, y = balloon.target[0] * scale, balloon.target[1] * scale
    x0, y0, x1, y1 = around
    return {"left": x - x0, "right": x1 - x, "above": y1 - y, "below": y - y0}[side]


def _fill_side(
    side: str, waiting: list[Balloon], scale: float, around: Bounds, distance: float, ground: Ground, look: Look
) -> tuple[list[Balloon], list[Mark]]:
    """Seats as many as a side holds without a clash; gives back the rest."""
    radius = max((_radius(b, look) for b in waiting), default=0.0)
    upright_side = side in ("left", "right")
    turned = [_turned(b, scale, around, side) for b in waiting]
    held = sorted(
        (b for b in turned if _gap(b, scale, around, side) + distance < LONGEST),
        key=lambda b: (b.target[1] if upright_side else b.target[0], b.target, b.label),
    )
    seated = _seats(held, side, scale, around, distance + radius + _AIR, look)
    seated = _swapped(seated, scale, radius)
    marks: list[Mark] = []
    done: set[tuple[str, tuple[str, ...]]] = set()
    for balloon, seat in seated:
        placed = _balloon_marks(balloon, seat, scale, ground, look)
        if placed is not None:
            marks.extend(placed)
            done.add((balloon.label, balloon.stack))
    return [b for b in waiting if (b.label, b.stack) not in done], marks


def _fill_free_paper(
    waiting: Sequence[Balloon], scale: float, ground: Ground, look: Look
) -> tuple[list[Balloon], list[Mark]]:
    """What no side has room for stands on free paper within the view, as near to its board as it can.

    Where some find no place they have the first choice in the next of a few turns; the best turn counts.
    """
    if not waiting:
        return [], []
    crowd = Crowd(ground.lines())
    seats = {balloon: _Seats(_free_seats(balloon, scale, crowd, ground, look)) for balloon in waiting}
    order = list(waiting)
    best: tuple[list[Balloon], list[Mark]] = (order, [])
    for _ in range(_TURNS):
        left, marks = _free_turn(order, seats, scale, Ground(ground), look)
        if not best[1] or len(left) < len(best[0]):
            best = (left, marks)
        if not left:
            break
        order = [*left, *(balloon for balloon in order if balloon not in left)]
    return best


def _free_turn(
    waiting: Sequence[Balloon],
    seats: Mapping[Balloon, _Seats],
    scale: float,
    ground: Ground,
    look: Look,
) -> tuple[list[Balloon], list[Mark]]:
    """One turn in a given order: those without a place, and the marks of the others."""
    marks: list[Mark] = []
    left: list[Balloon] = []
    for balloon in waiting:
        tried = (
            _balloon_marks(option, seat, scale, ground, look, slide=False)
            for option, seat in seats[balloon]
        )
        placed = next((made for made in tried if made is not None), None)
        if placed is None:
            left.append(balloon)
        else:
            marks.extend(placed)
    return left, marks


class _Seats:
    """Seats of one balloon, each sought once: what is free on the ground itself doesn't change from turn to turn."""

    def __init__(self, seats: Iterator[tuple[Balloon, _Seat]]) -> None:
        self._known: list[tuple[Balloon, _Seat]] = []
        self._rest = seats

    def __iter__(self) -> Iterator[tuple[Balloon, _Seat]]:
        yield from self._known
        for seat in self._rest:
            self._known.append(seat)
            yield seat


def _free_seats(
    balloon: Balloon, scale: float, crowd: Crowd, ground: Ground, look: Look
) -> Iterator[tuple[Balloon, _Seat]]:
    """Seats on free paper, the nearest first."""
    radius = _radius(balloon, look)
    options = [replace(balloon, target=target, also=()) for target in (balloon.target, *balloon.also)]
    targets = np.array([option.target for option in options]) * scale
    off = (radius + np.array(LENGTHS))[:, None, None, None] * np.array(_FREE_WAYS)
    at = (targets[:, None] + off).reshape(-1, 2)  # by length, then by option, then by way
    for i in np.flatnonzero(~crowd.meets(at[:, 0], at[:, 1], radius + _CLEAR)).tolist():
        option = options[i // len(_FREE_WAYS) % len(options)]
        x, y = at[i].tolist()
        seat = _Seat((x, y), "right" if _FREE_WAYS[i % len(_FREE_WAYS)][0] > 0 else "left")
        if _fitted(option, seat, scale, radius, ground) is not None:
            yield option, seat


def _turned(balloon: Balloon, scale: float, around: Bounds, side: str) -> Balloon:
    """The balloon with whichever of its points lies nearest to a side as its target."""
    options = [replace(balloon, target=point, also=()) for point in (balloon.target, *balloon.also)]
    return min(options, key=lambda option: _gap(option, scale, around, side))


def _seats(
    held: Sequence[Balloon], side: str, scale: float, around: Bounds, off: float, look: Look
) -> list[tuple[Balloon, _Seat]]:
    """Seats in a straight line, each as near to its target's level as its neighbours allow, leaning by 15° or more."""
    x0, y0, x1, y1 = around
    upright_side = side in ("left", "right")
    low, high = (y0, y1) if upright_side else (x0, x1)
    across = {"left": x0 - off, "right": x1 + off, "above": y1 + off, "below": y0 - off}[side]
    pitch = max((2 * _radius(b, look) for b in held), default=0.0) + _AIR
    made: list[tuple[Balloon, _Seat]] = []
    last = low - pitch / 2
    lean = math.tan(math.radians(LEAST_LEAN_DEG + 1.0))
    for balloon in held:
        tx, ty = balloon.target[0] * scale, balloon.target[1] * scale
        level, gap = (ty, abs(across - tx)) if upright_side else (tx, abs(across - ty))
        wanted = max(last + pitch, level - lean * gap)
        if abs(wanted - level) < lean * gap - 1e-9:
            wanted = max(wanted, level + lean * gap)
        depth = pitch * len(balloon.stack)
        if wanted > high + pitch:
            continue
        last = wanted + (depth if upright_side else 0.0)
        made.append((balloon, _Seat((across, wanted) if upright_side else (wanted, across), side)))
    return made


def _swapped(seated: list[tuple[Balloon, _Seat]], scale: float, radius: float) -> list[tuple[Balloon, _Seat]]:
    """Neighbours exchange seats while that lessens crossings; a fixed number of rounds."""
    order = list(seated)
    for _ in range(len(order)):
        changed = False
        for i in range(len(order) - 1):
            (one, here), (two, there) = order[i], order[i + 1]
            now = crossing(_leader(one, here, scale, radius), _leader(two, there, scale, radius))
            then = crossing(_leader(two, here, scale, radius), _leader(one, there, scale, radius))
            if now is not None and then is None:
                order[i], order[i + 1] = (two, here), (one, there)
                changed = True
        if not changed:
            break
    return order


def _leader(balloon: Balloon, seat: _Seat, scale: float, radius: float) -> Segment:
    target = (balloon.target[0] * scale, balloon.target[1] * scale)
    long = math.dist(target, seat.at)
    share = (long - radius) / long if long > radius else 0.0
    return target, (target[0] + (seat.at[0] - target[0]) * share, target[1] + (seat.at[1] - target[1]) * share)


def _balloon_marks(
    balloon: Balloon, seat: _Seat, scale: float, ground: Ground, look: Look, *, slide: bool = True
) -> list[Mark] | None:
    """A balloon at its seat or at one slid along the row until nothing is in its way; None where all is taken."""
    radius = _radius(balloon, look)
    for at in _slid(seat) if slide else (seat.at,):
        found = _fitted(balloon, _Seat(at, seat.side), scale, radius, ground)
        if found is not None:
            return _stand(balloon, *found, radius, ground, look)
    return None


def _fitted(
    balloon: Balloon, seat: _Seat, scale: float, radius: float, ground: Ground
) -> tuple[list[tuple[Point, str]], Segment] | None:
    """Circles and leader at a seat; None where something is in their way."""
    line = _leader(balloon, seat, scale, radius)
    if not _leans(line) or math.dist(*line) > LONGEST:
        return None
    circles = list(_circles(balloon, seat, radius))
    # Most places are refused by their circles, few by their leaders.
    if all(_free_circle(middle, radius, ground) for middle, _ in circles) and not leader_clashes(line, ground):
        return circles, line
    return None


def _slid(seat: _Seat) -> Iterator[Point]:
    x, y = seat.at
    for by in (0.0, 4.0, -4.0, 8.0, -8.0, 12.0, -12.0, 18.0, -18.0, 24.0, -24.0):
        yield (x, y + by) if seat.side in ("left", "right") else (x + by, y)


def _leans(line: Segment) -> bool:
    (x0, y0), (x1, y1) = line
    angle = abs(math.degrees(math.atan2(y1 - y0, x1 - x0))) % 90.0
    return LEAST_LEAN_DEG - 0.5 <= angle <= 90.0 - LEAST_LEAN_DEG + 0.5


def _circles(balloon: Balloon, seat: _Seat, radius: float) -> Iterable[tuple[Point, str]]:
    """Middles and labels; a stack goes on away from the view, or upwards in a column."""
    x, y = seat.at
    for i, label in enumerate((balloon.label, *balloon.stack)):
        by = 2 * radius * i
        yield {"left": (x - by, y), "right": (x + by, y), "above": (x, y + by), "below": (x, y - by)}[seat.side], label


def _free_circle(middle: Point, radius: float, ground: Ground) -> bool:
    x, y = middle
    return ground.free_for_words(upright((x - radius, y - radius, x + radius, y + radius)), "balloon", _CLEAR)


def _stand(
    balloon: Balloon, circles: list[tuple[Point, str]], line: Segment, radius: float, ground: Ground, look: Look
) -> list[Mark]:
    target, foot = line
    board = balloon.board
    marks: list[Mark] = [Line(target, foot, Meaning.SIZE, board)]
    if balloon.end == "arrow":
        angle = math.degrees(math.atan2(target[1] - foot[1], target[0] - foot[0])) % 360.0
        marks.append(Arrow(target, angle, ARROW_LENGTH_MM, ARROW_WIDTH_MM, Meaning.SIZE, board))
    else:
        marks.append(Dot(target, DOT_RADIUS, Meaning.SIZE, board))
    ground.add_stroke(Stroke(line, What.LEADER, f"balloon {balloon.label}"))
    for (x, y), label in circles:
        height = _label_height(label, radius, look)
        marks.append(ArcMark((x, y), radius, 0.0, 360.0, Meaning.SIZE, board))
        marks.append(Text((x, y - height / 2), label, height, "middle", 0.0, Meaning.WORD, board))
        ground.add_box(upright((x - radius, y - radius, x + radius, y + radius)), f"balloon {balloon.label}")
    return marks


def _label_height(label: str, radius: float, look: Look) -> float:
    """The balloon height, or the height of dimensions where the label would touch its circle."""
    return look.balloon if _needed(label, look.balloon) <= radius else look.figure


def _radius(balloon: Balloon, look: Look) -> float:
    """Of a balloon's circles: 2.5 × text height across, more only where a label needs it at the smaller height."""
    labels = (balloon.label, *balloon.stack)
    return max(CIRCLE * look.balloon / 2, *(_needed(label, look.figure) for label in labels))


def _needed(label: str, height: float) -> float:
    """The least radius of a circle round a label whose capitals stand in its middle; a g reaches further down."""
    wide, below, above = words_size(label, height)
    return math.hypot(wide / 2, max(height / 2 + below, above - height / 2)) + 0.6
