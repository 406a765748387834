"""Whether what stands before the pin leaves the open lid its room."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import box_of

UNDER_LID_MM = 1.0
"""What stands before the pin ends so far below the open lid (common practice)."""


def fouls_open_lid(subject: Subject) -> Iterator[Finding]:
    """Must be fixed: something stands before the pin where the open lid, its thickness below the surface, will lie."""
    assembly, slant = subject.assembly, subject.assembly.slant
    if slant is None or slant.hinge_edge == "upper":
        return
    pin_y = slant.hinge_pin_mm[0]
    limit = slant.writing_height_mm - slant.lid_thickness_mm - UNDER_LID_MM
    half = slant.lid_width_mm / 2
    for board in assembly.boards:
        if board.member in ("lid", "side", "shelf", "top") or board.id.startswith("lid"):
            continue
        box = box_of(board)
        most = limit + UNDER_LID_MM if board.member == "support" else limit
        beside = box[3] < assembly.width / 2 - half or box[0] > assembly.width / 2 + half
        if box[1] >= pin_y - 1e-6 or box[5] <= most + 1e-6 or beside or box[2] > slant.writing_height_mm:
            continue
        drop = None if subject.desk is None else subject.desk.rail_drop + box[5] - most
        mend = "lower it, or set it back" if drop is None else f"case.top_rail {mm(drop)} mm or more"
        yield Finding(
            "fouls-open-lid",
            Severity.MUST_FIX,
            (board.id, "lid"),
            f"{board.name} stands {mm(pin_y - box[1])} mm before the pin and reaches {mm(box[5])} mm above the "
            "floor; the open "
            f"lid's underside is at {mm(limit + UNDER_LID_MM)} mm, so it may reach {mm(most)} mm at most: "
            f"{mend}",
            box[5],
            most,
            right=None if drop is None else ("case.top_rail", f"{drop:.2f} mm"),
        )
