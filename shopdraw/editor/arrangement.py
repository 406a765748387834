"""Where the views of a piece stand on the canvas: in projection, at one scale. Knows no Qt.

Canvas coordinates are true-size mm, x right and y up, with the front view's lower left corner (the floor, the left
side's outer face) at (0, 0).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from shopdraw.piece.design import Design
from shopdraw.shape.path import Point
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE, Direction
from shopdraw.wood.assembly import Assembly

if TYPE_CHECKING:
    from shopdraw.view.section import Plane

SECTION_GAPS = 2.4
"""Rows of heights stand between the side view and the section: so many gaps."""
SECTION = "section"
"""The id of the section through the middle."""
DIRECTIONS: dict[str, Direction] = {"front": FRONT, "side": RIGHT_SIDE, "plan": PLAN}
"""The views of the canvas, by the ids that dimensions and sheets know them by."""


@dataclass(frozen=True, slots=True)
class Standing:
    """A view's place on the canvas.

    Attributes:
        view: its id.
        at: where its own (0, 0) stands.
        box: least x and y, greatest x and y of the case in it, canvas mm.
    """

    view: str
    at: Point
    box: tuple[float, float, float, float]

    def on_canvas(self, point: Point) -> Point:
        """A point of the view's own plane, on the canvas."""
        return (point[0] + self.at[0], point[1] + self.at[1])

    def in_view(self, point: Point) -> Point:
        """A point of the canvas, in the view's own plane."""
        return (point[0] - self.at[0], point[1] - self.at[1])


def third_angle(design: Design) -> bool:
    """Whether the views stand in third-angle projection: as the piece says, else by its drawing style and unit."""
    drawing = design.drawing
    if drawing.projection is not None:
        return drawing.projection == "third"
    style = drawing.style or ("asme" if design.piece.units == "inch" else "iso")
    return style == "asme"


Box = tuple[float, float, float, float]
"""Least x and y, greatest x and y, mm."""


def arrange(
    assembly: Assembly, *, third: bool, gap: float, section: bool = False, moving: Mapping[str, Box] | None = None
) -> dict[str, Standing]:
    """The front view, the side view beside it and the plan over or under it.

    Args:
        assembly: the piece.
        third: third-angle (side at the right, plan above) or first-angle (side at the left, plan below).
        gap: between the views, mm; room for dimensions.
        section: whether the section through the middle stands beyond the side view.
        moving: the box of what swings or slides out of the case in each view, in the view's own plane: views step
            apart by as much, so that nothing lies over another view.
    """
    width, depth, height = assembly.width, assembly.depth, assembly.height
    cases = {"front": (width, height), "side": (depth, height), "plan": (width, depth)}
    out = {view: _beyond((moving or {}).get(view), size) for view, size in cases.items()}
    left, below, right, above = range(4)
    across = gap + (out["front"][right] + out["side"][left] if third else out["front"][left] + out["side"][right])
    up = gap + (out["front"][above] + out["plan"][below] if third else out["front"][below] + out["plan"][above])
    side_x = width + across if third else -across - depth
    plan_y = height + up if third else -up - depth
    found = {
        "front": Standing("front", (0.0, 0.0), (0.0, 0.0, width, height)),
        "side": Standing("side", (side_x, 0.0), (side_x, 0.0, side_x + depth, height)),
        "plan": Standing("plan", (0.0, plan_y), (0.0, plan_y, width, plan_y + depth)),
    }
    if section:
        beyond = SECTION_GAPS * gap
        x = side_x + (depth + beyond + out["side"][right] if third else -beyond - out["side"][left] - depth)
        found[SECTION] = Standing(SECTION, (x, 0.0), (x, 0.0, x + depth, height))
    return found


def _beyond(box: Box | None, case: tuple[float, float]) -> Box:
    """How far a box stands out of the case at the left, below, at the right and above, mm."""
    if box is None:
        return (0.0, 0.0, 0.0, 0.0)
    return (max(-box[0], 0.0), max(-box[1], 0.0), max(box[2] - case[0], 0.0), max(box[3] - case[1], 0.0))


def middle_plane(assembly: Assembly) -> Plane:
    """The plane of the section: upright, from front to back, through the middle of the case, seen from the right."""
    # Sections are cut by the worker process; the window opens without what cuts them.
    from shopdraw.view.section import Plane

    return Plane(RIGHT_SIDE, (assembly.width / 2, 0.0, 0.0))


def whole_box(standings: dict[str, Standing]) -> tuple[float, float, float, float]:
    """The box round all views, canvas mm."""
    boxes = [standing.box for standing in standings.values()]
    return (
        min(b[0] for b in boxes),
        min(b[1] for b in boxes),
        max(b[2] for b in boxes),
        max(b[3] for b in boxes),
    )
