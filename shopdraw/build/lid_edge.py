"""The lid's three free edges: rabbets with their leaning shoulders, and a moulding on the show face.

Spans are given in the lid's own frame (u to the left, v up the slope from the hinge edge, w out of the writing face)
and cut into whatever board has wood there, panel or cap.
"""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.build.bench import Blank
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.lid_size import LidSize
from shopdraw.build.profile import profile
from shopdraw.build.slant_plan import SlantPlan
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import Path, Point, polygon, rectangle
from shopdraw.wood.board import Face

LEAST_LEFT_MM = 2.0
"""Wood left under a moulding, down the edge (common practice)."""


def rabbets(board: Blank, lid: Frame, size: LidSize, half_gap: float, bevel: float) -> None:
    """Rabbets on the writing face along both ends and the upper edge; what stays is the lip.

    Args:
        lid: the whole lid's frame.
        size: the lid's.
        half_gap: from the pin to the hinge edge, mm.
        bevel: how far the core's edges lean in at the writing face, mm.
    Raises:
        CannotBuild: a bevel wider than the rabbet is deep.
    """
    side = (size.width - size.core_width) / 2
    long, wide = size.width, size.length - half_gap
    core = size.core_length - half_gap
    spans = {
        "right": rectangle(0.0, 0.0, side, wide),
        "left": rectangle(long - side, 0.0, long, wide),
        "upper": rectangle(0.0, core, long, wide),
    }
    for where, span in spans.items():
        cut_id = f"rabbet:{board.id}:{where}"
        board.sink_rectangle("rabbet", Face.FACE, lid, span, floor=-size.inset, id=cut_id, purpose=f"lip, {where}")
    if not bevel:
        return
    if bevel > size.inset:
        raise CannotBuild([fault("lid.rabbet_bevel", f"{bevel:g} mm", f"expected at most {size.inset:g} mm")])
    low = -size.inset
    leaning = {
        "right": (polygon([(side, low), (side + bevel, 0.0), (side, 0.0)]), True),
        "left": (polygon([(long - side, low), (long - side, 0.0), (long - side - bevel, 0.0)]), True),
        "upper": (polygon([(core, low), (core, 0.0), (core - bevel, 0.0)]), False),
    }
    for where, (path, end) in leaning.items():
        words = f"core's edge leans in {bevel:g} mm, {where}"
        along(board, lid, path, "bevel", end=end, id=f"bevel:{board.id}:{where}", purpose=words)


def along(board: Blank, lid: Frame, path: Path, kind: str, *, end: bool, id: str, purpose: str) -> None:
    """Cut a profile along a whole edge of the lid into one of its boards.

    Args:
        path: in the lid's (u, w) for an end, in its (v, w) for the upper edge.
        end: along an end, else along the upper edge.
    """
    turned = abs(sum(a * b for a, b in zip(board.frame.u, lid.u, strict=True))) < 0.5
    axis = (1 if end else 0) if turned else (0 if end else 1)

    def placed(point: Point) -> Point:
        at = lid.point((point[0], 0.0, point[1]) if end else (0.0, point[0], point[1]))
        local = board.frame.local(at)
        return (local[axis], local[2])

    cut = path.mapped(placed, mirrored=turned and end)
    if _in_reach(board, cut, axis):
        board.sink(kind, Face.NEAR if axis == 0 else Face.FOOT, cut, id=id, purpose=purpose)


def _in_reach(board: Blank, path: Path, axis: int) -> bool:
    """Whether the board has wood where the profile runs."""
    at = [corner.x for corner in path.corners]
    return max(at) > board.low[axis] + 1e-6 and min(at) < board.high[axis] - 1e-6


def mould(plan: SlantPlan, panel: Blank, caps: Sequence[Blank], size: LidSize) -> None:
    """The moulding on the show face, along both ends and the free edge.

    Where two edges meet, each board has the one that reaches deeper there: mitred caps need none on their ends.

    Raises:
        CannotBuild: a moulding that leaves less than 2 mm of the edge.
    """
    choice, stock = plan.design.lid, panel.stock
    if choice.edge == "square":
        return
    seat = plan.design.slant.seat if plan.design.slant is not None else "on"
    edge = stock.thickness - (size.inset if seat == "rabbeted" else 0.0)
    given = choice.edge_size
    asked = given if given is not None else max(1.0, round(edge / 3 * 2) / 2)
    made = profile(choice.edge, asked)
    if made.down_edge > edge - LEAST_LEFT_MM:
        right = f"expected at most {edge - LEAST_LEFT_MM:.1f} mm on an edge of {edge:.1f} mm"
        raise CannotBuild([fault("lid.edge_size", f"{asked:g} mm", right)])
    long, high, back = size.width, size.length - plan.slant.joint_gap / 2, -stock.thickness
    ways = {
        "right": (lambda p: (p[0], back + p[1]), False, True),
        "left": (lambda p: (long - p[0], back + p[1]), True, True),
        "upper": (lambda p: (high - p[0], back + p[1]), True, False),
    }
    square = choice.ends == "square"
    kind = "chamfer" if made.kind == "chamfer" else "moulding"
    for board in (panel, *caps):
        for where, (placed, mirrored, end) in ways.items():
            if (board is panel and caps and end) or (board is not panel and not end and not square):
                continue
            for number, path in enumerate(made.paths, 1):
                name = f"{choice.edge}:{board.id}:{where}" + (f".{number}" if number > 1 else "")
                on = path.mapped(placed, mirrored=mirrored)
                along(board, panel.frame, on, kind, end=end, id=name, purpose=f"show face, {where} edge, {made.words}")
