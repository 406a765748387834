"""Handles give way to figures: where one would cover a dimension's words it stands further along its own bar.

A handle moves one way; where it stands across that way means nothing, so it can be shifted there. Knows pixels alone.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF

from shopdraw.editor.canvas_paint import GRIP_LONG, GRIP_WIDE
from shopdraw.shape.path import Point

CLEAR = 3.0
"""Between a handle and a figure's words, pixels."""
STEP, FURTHEST = 3.0, 90.0
"""A handle is tried so many pixels further, and no further than so many."""


@dataclass(frozen=True, slots=True)
class Grip:
    """A handle on the screen.

    Attributes:
        id: the handle's.
        at: its middle, pixels.
        along: the way it moves, on the canvas (y up).
    """

    id: str
    at: QPointF
    along: Point

    def box(self, off: QPointF) -> QRectF:
        """What its bar covers, shifted by so many pixels."""
        upright = abs(self.along[0]) > abs(self.along[1])
        wide, high = (GRIP_WIDE, GRIP_LONG) if upright else (GRIP_LONG, GRIP_WIDE)
        middle = self.at + off
        return QRectF(middle.x() - wide / 2, middle.y() - high / 2, wide, high)


def shifts(grips: Sequence[Grip], words: Iterable[QRectF]) -> dict[str, QPointF]:
    """How far handles give way, pixels; those that cover nothing stay and are left out.

    Args:
        grips: the handles.
        words: where figures' words stand, pixels.
    """
    clear = [box.adjusted(-CLEAR, -CLEAR, CLEAR, CLEAR) for box in words]
    standing = {grip.id: grip.box(QPointF()) for grip in grips}
    found: dict[str, QPointF] = {}
    for grip in grips:
        if not _meets(standing[grip.id], clear):
            continue
        others = [box for other, box in standing.items() if other != grip.id]
        off = next((off for off in _offs(grip) if not _meets(grip.box(off), (*clear, *others))), None)
        if off is not None:
            found[grip.id] = off
            standing[grip.id] = grip.box(off)
    return found


def _offs(grip: Grip) -> Iterable[QPointF]:
    """Shifts across the way it moves, the smallest first."""
    upright = abs(grip.along[0]) > abs(grip.along[1])
    for count in range(1, int(FURTHEST / STEP) + 1):
        for way in (1, -1):
            off = way * count * STEP
            yield QPointF(0, off) if upright else QPointF(off, 0)


def _meets(box: QRectF, others: Iterable[QRectF]) -> bool:
    return any(box.intersects(other) for other in others)
