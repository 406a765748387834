"""Sizes of a drawer for its opening: front, lips, box, and how far its sides enter the front."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple

from shopdraw.build.bench import Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row, lip_of
from shopdraw.wood.board import Stock

LEAST_TOP_MM = 0.8
"""Clearance over a drawer besides what its boards grow."""
BEHIND_LIP_MM = 1.5
"""Clearance on each side of a box whose front hides it (common practice)."""
LEAST_LAP_MM = 3.0
"""Wood of an inset front before the sides' ends."""
LEAST_BEHIND_LIP_MM = 4.0
"""Wood of a lipped front behind its lip."""
LEAST_LENGTH_MM = 100.0
LEAST_HEIGHT_MM = 20.0


class Lips(NamedTuple):
    """How far a front laps over each edge of its opening, mm; 0 on an edge without a lip."""

    left: float = 0.0
    right: float = 0.0
    top: float = 0.0
    bottom: float = 0.0


NO_LIPS = Lips()


@dataclass(frozen=True, slots=True)
class DrawerSize:
    """Sizes of a drawer in the case's coordinates, mm.

    Attributes:
        box: outside of the box, from the front's inner shoulder to the sides' rear ends.
        front: the front that shows, all over.
        shoulder: y of the inner face of the front that the sides enter.
        entry: how far the sides enter it.
        lipped: whether the front laps over the case by rabbets.
        lip_thickness: of a lipped front's lip.
        top_clearance, side_clearance: between box and opening.
        lips: of a lipped or overlay front.
        inner: the box's own front behind an overlay front, or None.
    """

    box: Box
    front: Box
    shoulder: float
    entry: float
    lipped: bool
    lip_thickness: float
    top_clearance: float
    side_clearance: float
    lips: Lips = NO_LIPS
    inner: Box | None = None

    @property
    def entered(self) -> Box:
        """The board that the sides enter: the box's own front, else the one that shows."""
        return self.inner if self.inner is not None else self.front


def drawer_size(plan: CasePlan, row: Row) -> DrawerSize:
    """Work out a drawer for its opening.

    Raises:
        CannotBuild: lips thicker than the front, or sides that enter deeper than the front allows.
    """
    x0, x1 = plan.drawer_bay(row)
    kind = str(plan.choice(row.key, "front"))
    front, side = plan.stocks.of("drawer.front"), plan.stocks.of("drawer.side")
    reveal = plan.length_choice(row.key, "reveal")
    clear = plan.length_choice(row.key, "side_clearance", reveal if kind == "inset" else BEHIND_LIP_MM)
    grows = max(plan.season.gain(row.height, side), plan.season.gain(row.height, front))
    need = math.ceil(10 * (grows + LEAST_TOP_MM)) / 10
    above = plan.length_choice(row.key, "top_clearance", need)
    lip_thickness = plan.length_choice(row.key, "lip_thickness")
    entered = plan.stocks.of("drawer.box-front") if kind == "overlay" else front
    entry = plan.length_choice(row.key, "entry")
    _refuse(row, kind, entered, lip_thickness, entry)
    lips = NO_LIPS if kind == "inset" else Lips(*(lip_of(plan.design, row.key, edge) for edge in Lips._fields))
    inner = None
    if kind == "inset":
        over = math.ceil(10 * (plan.season.gain(row.height, front) + reveal)) / 10
        face = Box(x0 + reveal, x1 - reveal, 0.0, front.thickness, row.floor + reveal, plan.ceiling(row) - over)
    else:
        # an edge without a lip is level with the box
        reach = Lips(lips.left or -clear, lips.right or -clear, lips.top or -above, lips.bottom)
        y0 = -lip_thickness if kind == "lipped" else -front.thickness
        face = Box(
            x0 - reach.left,
            x1 + reach.right,
            y0,
            y0 + front.thickness,
            row.floor - reach.bottom,
            plan.ceiling(row) + reach.top,
        )
    shoulder = face.y1 if kind != "overlay" else entered.thickness
    box = Box(x0 + clear, x1 - clear, shoulder, plan.usable, row.floor, plan.ceiling(row) - above)
    if kind == "overlay":
        inner = box._replace(y0=0.0, y1=shoulder)
    if box.y1 - box.y0 < LEAST_LENGTH_MM or box.z1 - box.z0 < LEAST_HEIGHT_MM:
        found = f"a box {box.y1 - box.y0:.1f} mm long and {box.z1 - box.z0:.1f} mm high"
        right = f"expected at least {LEAST_LENGTH_MM:g} × {LEAST_HEIGHT_MM:g} mm: a deeper case or higher openings"
        raise CannotBuild([fault(f"drawer.{row.key}", found, right)])
    return DrawerSize(box, face, shoulder, entry, kind == "lipped", lip_thickness, above, clear, lips=lips, inner=inner)


def _refuse(row: Row, kind: str, entered: Stock, lip_thickness: float, entry: float) -> None:
    """Refuse lips and entries that leave too little of the front."""
    address, thick = f"drawer.{row.key}", entered.thickness
    if kind == "lipped" and lip_thickness > thick - LEAST_BEHIND_LIP_MM:
        right = f"expected at most {thick - LEAST_BEHIND_LIP_MM:g} mm, {LEAST_BEHIND_LIP_MM:g} less than the front"
        raise CannotBuild([fault(f"{address}.lip_thickness", f"{lip_thickness:g} mm", right)])
    most = thick - lip_thickness if kind == "lipped" else thick - LEAST_LAP_MM
    if entry > most:
        right = f"expected at most {most:g} mm for a front of {thick:g} mm"
        raise CannotBuild([fault(f"{address}.entry", f"{entry:g} mm", right)])
