"""Small sketches of the trade's terms, for the form: what a size means, drawn as simply as it can be. Knows no Qt.

A sketch is drawn in a square of 100 by 70; what the term names is a dimension line in it.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable

from shopdraw.drawing.mark import ArcMark, Arrow, Line, Mark, Meaning
from shopdraw.shape.path import Point

WIDTH, HEIGHT = 100.0, 70.0


def sketch_of(address: str) -> tuple[Mark, ...]:
    """The sketch for an input, by its address; empty where there is none."""
    keys = address.replace('"', "").split(".")
    for name in (address, f"{keys[0]}.{keys[-1]}", keys[-1]):
        made = _SKETCHES.get(name)
        if made is not None:
            return tuple(made())
    return ()


def _lines(*points: Point, meaning: Meaning = Meaning.VISIBLE, closed: bool = False) -> list[Mark]:
    ends = [*points, points[0]] if closed else list(points)
    return [Line(a, b, meaning) for a, b in itertools.pairwise(ends)]


def _measure(a: Point, b: Point) -> list[Mark]:
    """A dimension line between two points, an arrow at either end."""
    upright = abs(b[1] - a[1]) > abs(b[0] - a[0])
    slanted = abs(b[1] - a[1]) > 1.0 and abs(b[0] - a[0]) > 1.0
    if slanted:
        return _lines(a, b, meaning=Meaning.SIZE)
    low, high = (-90.0, 90.0) if upright else (180.0, 0.0)
    first, last = (a, b) if (a[1] < b[1] if upright else a[0] < b[0]) else (b, a)
    return [
        Line(a, b, Meaning.SIZE),
        Arrow(first, low, 6.0, 2.6),
        Arrow(last, high, 6.0, 2.6),
    ]


def _case_front() -> list[Mark]:
    marks = _lines((30, 10), (70, 10), (70, 60), (30, 60), closed=True)
    for y in (40, 30, 21):
        marks += _lines((32, y), (68, y))
    return marks


def _case_side() -> list[Mark]:
    return _lines((30, 10), (68, 10), (68, 60), (50, 60), (30, 42), closed=True)


def _width() -> list[Mark]:
    return [*_case_front(), *_measure((30, 4), (70, 4))]


def _height() -> list[Mark]:
    return [*_case_front(), *_measure((23, 10), (23, 60))]


def _depth() -> list[Mark]:
    return [*_case_side(), *_measure((30, 4), (68, 4))]


def _writing_height() -> list[Mark]:
    marks = [*_case_side(), *_lines((30, 40), (68, 40), meaning=Meaning.HIDDEN)]
    return [*marks, *_lines((16, 10), (28, 10), meaning=Meaning.SIZE), *_measure((20, 10), (20, 40))]


def _angle() -> list[Mark]:
    level = _lines((30, 42), (62, 42), meaning=Meaning.CENTRE)
    return [*_case_side(), *level, ArcMark((30, 42), 22, 0, 42, Meaning.SIZE)]


def _top_depth() -> list[Mark]:
    return [*_case_side(), *_measure((50, 65), (68, 65))]


def _seat() -> list[Mark]:
    """The lid's upper end on the slant: rabbeted over it."""
    slant = _lines((12, 10), (62, 52), (90, 52))
    lid = _lines((10, 18), (58, 58), (52, 65), (4, 25), closed=True)
    return [*slant, *lid]


def _lid_lip() -> list[Mark]:
    top = _lines((62, 44), (92, 44), (92, 28), (78, 28), (62, 44))
    lid = _lines((10, 14), (54, 48), (62, 42), (66, 47), (52, 62), (2, 24), closed=True)
    return [*top, *lid, *_measure((54, 48), (62, 42))]


def _dado() -> list[Mark]:
    side = _lines((20, 8), (44, 8), (44, 30), (34, 30), (34, 42), (44, 42), (44, 62), (20, 62), closed=True)
    shelf = _lines((34, 31), (88, 31), (88, 41), (34, 41), closed=True)
    return [*side, *shelf]


def _dado_depth() -> list[Mark]:
    return [*_dado(), *_measure((34, 48), (44, 48))]


def _fit() -> list[Mark]:
    return [*_dado(), *_measure((50, 24), (50, 31)), *_measure((50, 48), (50, 41))]


def _relief() -> list[Mark]:
    side = _lines((20, 8), (44, 8), (44, 30), (30, 30), (30, 42), (44, 42), (44, 62), (20, 62), closed=True)
    shelf = _lines((36, 31), (88, 31), (88, 41), (36, 41), closed=True)
    return [*side, *shelf, *_measure((30, 36), (36, 36))]


def _dado_stop() -> list[Mark]:
    side = _lines((20, 8), (80, 8), (80, 62), (20, 62), closed=True)
    dado = _lines((32, 30), (80, 30), (80, 40), (32, 40), closed=True, meaning=Meaning.HIDDEN)
    return [*side, *dado, *_measure((20, 48), (32, 48))]


def _tails() -> list[Mark]:
    marks = _lines((10, 14), (90, 14), (90, 56), (10, 56), closed=True)
    for x in (22, 46, 70):
        marks += _lines((x - 8, 34), (x - 4, 14), (x + 8, 14), (x + 12, 34))
    return [*marks, *_lines((10, 34), (90, 34), meaning=Meaning.HIDDEN)]


def _lipped() -> list[Mark]:
    rail = _lines((40, 8), (62, 8), (62, 22), (40, 22), closed=True)
    front = _lines((30, 16), (38, 16), (38, 26), (50, 26), (50, 62), (30, 62), closed=True)
    return [*rail, *front]


def _lip() -> list[Mark]:
    return [*_lipped(), *_measure((24, 16), (24, 22))]


def _lip_thickness() -> list[Mark]:
    return [*_lipped(), *_measure((30, 12), (38, 12))]


def _reveal() -> list[Mark]:
    case = _lines((12, 10), (24, 10), (24, 60), (12, 60), closed=True)
    front = _lines((32, 14), (90, 14), (90, 56), (32, 56), closed=True)
    return [*case, *front, *_measure((24, 35), (32, 35))]


def _plinth() -> list[Mark]:
    marks = _lines((16, 8), (84, 8), (84, 30), (16, 30), closed=True)
    return [*marks, *_lines((20, 30), (20, 62)), *_lines((80, 30), (80, 62)), *_measure((9, 8), (9, 30))]


def _reach() -> list[Mark]:
    case = _lines((50, 8), (90, 8), (90, 62), (50, 62), closed=True)
    bar = _lines((14, 34), (78, 34), (78, 42), (14, 42), closed=True, meaning=Meaning.MOVING)
    return [*case, *bar, *_measure((14, 28), (50, 28))]


def _graduated() -> list[Mark]:
    marks = _lines((30, 6), (70, 6), (70, 64), (30, 64), closed=True)
    for y in (52, 39, 24):
        marks += _lines((30, y), (70, y))
    for low, high in ((52, 64), (39, 52), (24, 39), (6, 24)):
        marks += _measure((22, low), (22, high))
    return marks


def _joint_gap() -> list[Mark]:
    shelf = _lines((54, 30), (94, 30), (94, 44), (54, 44), closed=True)
    lid = _lines((6, 30), (48, 30), (48, 44), (6, 44), closed=True, meaning=Meaning.MOVING)
    pin = ArcMark((51, 44), 2.5, 0, 360, Meaning.VISIBLE)
    return [*shelf, *lid, pin, *_measure((48, 24), (54, 24))]


_SKETCHES: dict[str, Callable[[], list[Mark]]] = {
    "case.width": _width,
    "case.height": _height,
    "case.depth": _depth,
    "case.dado": _dado,
    "case.dado_depth": _dado_depth,
    "case.dado_stop": _dado_stop,
    "case.fit": _fit,
    "case.relief": _relief,
    "case.top_joint": _tails,
    "case.tails": _tails,
    "case.tail_slope": _tails,
    "slant.writing_height": _writing_height,
    "slant.angle": _angle,
    "slant.top_depth": _top_depth,
    "slant.seat": _seat,
    "slant.joint_gap": _joint_gap,
    "lid.rabbet": _seat,
    "lid.lip": _lid_lip,
    "lid.reveal": _lid_lip,
    "drawer.front": _lipped,
    "drawer.lip": _lip,
    "drawer.lip_thickness": _lip_thickness,
    "drawer.reveal": _reveal,
    "drawer.side_clearance": _reveal,
    "base.height": _plinth,
    "supports.reach": _reach,
    "opening.rule": _graduated,
    "opening.step": _graduated,
    "opening.ratio": _graduated,
    "opening.sizes": _graduated,
}
