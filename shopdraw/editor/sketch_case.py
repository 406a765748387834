"""Sketches of a case's terms: its sizes, dados, dovetails, the slant. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable

from shopdraw.drawing.mark import ArcMark, Mark, Meaning
from shopdraw.editor.sketch_lines import box, lines, measure, round_hole


def _case_front() -> list[Mark]:
    marks = lines((30, 10), (70, 10), (70, 60), (30, 60), closed=True)
    for y in (40, 30, 21):
        marks += lines((32, y), (68, y))
    return marks


def _case_side() -> list[Mark]:
    return lines((30, 10), (68, 10), (68, 60), (50, 60), (30, 42), closed=True)


def _width() -> list[Mark]:
    return [*_case_front(), *measure((30, 4), (70, 4))]


def _height() -> list[Mark]:
    return [*_case_front(), *measure((23, 10), (23, 60))]


def _depth() -> list[Mark]:
    return [*_case_side(), *measure((30, 4), (68, 4))]


def _writing_height() -> list[Mark]:
    marks = [*_case_side(), *lines((30, 40), (68, 40), meaning=Meaning.HIDDEN)]
    return [*marks, *lines((16, 10), (28, 10), meaning=Meaning.SIZE), *measure((20, 10), (20, 40))]


def _angle() -> list[Mark]:
    level = lines((30, 42), (62, 42), meaning=Meaning.CENTRE)
    return [*_case_side(), *level, ArcMark((30, 42), 22, 0, 42, Meaning.SIZE)]


def _top_depth() -> list[Mark]:
    return [*_case_side(), *measure((50, 65), (68, 65))]


def _seat() -> list[Mark]:
    """The lid's upper end on the slant: rabbeted over it."""
    slant = lines((12, 10), (62, 52), (90, 52))
    lid = lines((10, 18), (58, 58), (52, 65), (4, 25), closed=True)
    return [*slant, *lid]


def _lid_lip() -> list[Mark]:
    top = lines((62, 44), (92, 44), (92, 28), (78, 28), (62, 44))
    lid = lines((10, 14), (54, 48), (62, 42), (66, 47), (52, 62), (2, 24), closed=True)
    return [*top, *lid, *measure((54, 48), (62, 42))]


def _dado() -> list[Mark]:
    side = lines((20, 8), (44, 8), (44, 30), (34, 30), (34, 42), (44, 42), (44, 62), (20, 62), closed=True)
    shelf = lines((34, 31), (88, 31), (88, 41), (34, 41), closed=True)
    return [*side, *shelf]


def _dado_depth() -> list[Mark]:
    return [*_dado(), *measure((34, 48), (44, 48))]


def _fit() -> list[Mark]:
    return [*_dado(), *measure((50, 24), (50, 31)), *measure((50, 48), (50, 41))]


def _relief() -> list[Mark]:
    side = lines((20, 8), (44, 8), (44, 30), (30, 30), (30, 42), (44, 42), (44, 62), (20, 62), closed=True)
    shelf = lines((36, 31), (88, 31), (88, 41), (36, 41), closed=True)
    return [*side, *shelf, *measure((30, 36), (36, 36))]


def _dado_stop() -> list[Mark]:
    side = lines((20, 8), (80, 8), (80, 62), (20, 62), closed=True)
    dado = lines((32, 30), (80, 30), (80, 40), (32, 40), closed=True, meaning=Meaning.HIDDEN)
    return [*side, *dado, *measure((20, 48), (32, 48))]


def _tails() -> list[Mark]:
    marks = lines((10, 14), (90, 14), (90, 56), (10, 56), closed=True)
    for x in (22, 46, 70):
        marks += lines((x - 8, 34), (x - 4, 14), (x + 8, 14), (x + 12, 34))
    return [*marks, *lines((10, 34), (90, 34), meaning=Meaning.HIDDEN)]


def _lipped() -> list[Mark]:
    rail = lines((40, 8), (62, 8), (62, 22), (40, 22), closed=True)
    front = lines((30, 16), (38, 16), (38, 26), (50, 26), (50, 62), (30, 62), closed=True)
    return [*rail, *front]


def _lip() -> list[Mark]:
    return [*_lipped(), *measure((24, 16), (24, 22))]


def _lip_thickness() -> list[Mark]:
    return [*_lipped(), *measure((30, 12), (38, 12))]


def _reveal() -> list[Mark]:
    case = lines((12, 10), (24, 10), (24, 60), (12, 60), closed=True)
    front = lines((32, 14), (90, 14), (90, 56), (32, 56), closed=True)
    return [*case, *front, *measure((24, 35), (32, 35))]


def _plinth() -> list[Mark]:
    marks = lines((16, 8), (84, 8), (84, 30), (16, 30), closed=True)
    return [*marks, *lines((20, 30), (20, 62)), *lines((80, 30), (80, 62)), *measure((9, 8), (9, 30))]


def _reach() -> list[Mark]:
    case = lines((50, 8), (90, 8), (90, 62), (50, 62), closed=True)
    bar = lines((14, 34), (78, 34), (78, 42), (14, 42), closed=True, meaning=Meaning.MOVING)
    return [*case, *bar, *measure((14, 28), (50, 28))]


def _graduated() -> list[Mark]:
    marks = lines((30, 6), (70, 6), (70, 64), (30, 64), closed=True)
    for y in (52, 39, 24):
        marks += lines((30, y), (70, y))
    for low, high in ((52, 64), (39, 52), (24, 39), (6, 24)):
        marks += measure((22, low), (22, high))
    return marks


def _joint_gap() -> list[Mark]:
    shelf = lines((54, 30), (94, 30), (94, 44), (54, 44), closed=True)
    lid = lines((6, 30), (48, 30), (48, 44), (6, 44), closed=True, meaning=Meaning.MOVING)
    pin = ArcMark((51, 44), 2.5, 0, 360, Meaning.VISIBLE)
    return [*shelf, *lid, pin, *measure((48, 24), (54, 24))]


def _top_width() -> list[Mark]:
    return [*box(26, 54, 74, 60), *box(32, 8, 68, 54), *measure((26, 65), (74, 65))]


def _overhang() -> list[Mark]:
    return [*box(26, 50, 86, 58), *box(38, 8, 78, 50), *measure((26, 64), (38, 64))]


def _foot_width() -> list[Mark]:
    return [*box(32, 24, 68, 62), *box(26, 10, 74, 24), *measure((26, 5), (74, 5))]


def _top_rail() -> list[Mark]:
    marks = [*box(24, 6, 84, 46), *box(24, 46, 84, 52), *box(30, 14, 78, 34)]
    return [*marks, *measure((16, 34), (16, 52))]


def _round_end() -> list[Mark]:
    """A stopped dado as a round cutter leaves it."""
    marks = [*box(12, 8, 88, 62), *lines((88, 26), (40, 26)), *lines((88, 44), (40, 44))]
    return [*marks, ArcMark((40, 35), 9, 90, 270, Meaning.VISIBLE), *measure((31, 35), (40, 35))]


def _tail_pitch() -> list[Mark]:
    return [*_tails(), *measure((24, 62), (48, 62))]


def _half_blind() -> list[Mark]:
    """The side's end seen from above: the tail stops before the face."""
    marks = [*box(8, 10, 44, 60), *lines((44, 24), (24, 18), (24, 52), (44, 46))]
    return [*marks, *lines((44, 24), (92, 24)), *lines((44, 46), (92, 46)), *measure((8, 4), (24, 4))]


def moulding() -> list[Mark]:
    """A board's edge with an ovolo between steps, and how much it takes."""
    marks = lines((10, 8), (78, 8), (78, 30), (70, 30))
    marks += [ArcMark((70, 48), 18, 180, 270, Meaning.VISIBLE), *lines((52, 48), (52, 56), (10, 56), (10, 8))]
    return [*marks, *measure((52, 63), (78, 63))]


def _slant_start() -> list[Mark]:
    return [*_case_side(), *lines((16, 42), (28, 42), meaning=Meaning.SIZE), *measure((20, 10), (20, 42))]


def _hinge_edge() -> list[Mark]:
    """The lid shut on the slant, and open about its lower edge."""
    pin = round_hole(30, 42, 2.5)
    shut = lines((28, 44), (48, 62), (52, 58), (32, 40), closed=True)
    return [*_case_side(), *shut, *box(2, 40, 28, 45, Meaning.MOVING), *pin]


def _pin_above() -> list[Mark]:
    shelf = box(54, 20, 94, 40)
    lid = box(6, 20, 48, 40, Meaning.MOVING)
    return [*shelf, *lid, *round_hole(51, 46, 2.5), *measure((60, 40), (60, 46))]


def _pin_behind() -> list[Mark]:
    plane = lines((40, 6), (40, 66), meaning=Meaning.CENTRE)
    return [*plane, *box(40, 20, 92, 38), *round_hole(52, 40, 2.5), *measure((40, 50), (52, 50))]


SKETCHES: dict[str, Callable[[], list[Mark]]] = {
    "case.width": _width,
    "case.top_width": _top_width,
    "case.foot_width": _foot_width,
    "case.height": _height,
    "case.depth": _depth,
    "case.overhang": _overhang,
    "case.top_rail": _top_rail,
    "case.dado": _dado,
    "case.dado_depth": _dado_depth,
    "case.dado_stop": _dado_stop,
    "case.cutter_radius": _round_end,
    "case.fit": _fit,
    "case.relief": _relief,
    "case.top_joint": _tails,
    "case.tails": _tails,
    "case.tail_slope": _tails,
    "case.tail_pitch": _tail_pitch,
    "case.dovetails": _half_blind,
    "case.dovetail_lap": _half_blind,
    "case.top_edge": moulding,
    "case.top_edge_size": moulding,
    "slant.writing_height": _writing_height,
    "slant.angle": _angle,
    "slant.top_depth": _top_depth,
    "slant.start": _slant_start,
    "slant.seat": _seat,
    "slant.hinge_edge": _hinge_edge,
    "slant.joint_gap": _joint_gap,
    "slant.pin_above_writing": _pin_above,
    "slant.pin_behind_front": _pin_behind,
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
