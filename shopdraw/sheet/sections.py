"""Sections as they are drawn, before their dimensions: wood cut and hatched, what lies behind, what moves."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.mark import ArcMark, Area, Line, Mark, Meaning
from shopdraw.shape.path import Point
from shopdraw.sheet.extent import extent
from shopdraw.sheet.moving import moving_marks, open_boards, swing_marks
from shopdraw.sheet.near_lines import without_near
from shopdraw.sheet.planes import D_BELOW_MM, CuttingPlane
from shopdraw.sheet.sighting import Seen
from shopdraw.sheet.view import PlainView
from shopdraw.view.clip import Window, clipped
from shopdraw.view.section import section
from shopdraw.wood.assembly import Assembly

LID = ("lid", "lid.cap", "lid.ledge")
"""What section H–H and view L show: the lid alone."""
ROUND_TOP_MM = 40.0
"""What section T–T shows round the top."""
PIN_CROSS = 3.0
"""Half the length of the centre lines that mark the lid's pin, paper mm."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A section.

    Attributes:
        plane: where it is.
        plain: what is drawn.
        seen: what dimensions may go to.
    """

    plane: CuttingPlane
    plain: PlainView
    seen: Seen


def cut_view(assembly: Assembly, plane: CuttingPlane, scale: float) -> Cut:
    """A section at a scale, true-size mm; in A–A the open lid and its supports stand as moved positions."""
    marks = section_marks(assembly, plane, scale)
    if plane.letter == "D":
        marks = clipped(marks, _lid_window(assembly, plane))
    elif plane.letter == "T" and plane.shows:
        marks = _round_top(assembly, plane, marks)
    drawn: list[Mark] = [mark for mark in marks if isinstance(mark, Area)]
    drawn += without_near([mark for mark in marks if isinstance(mark, Line | ArcMark)], scale)
    if plane.letter == "A":
        drawn += moving_marks(open_boards(assembly), plane.plane.direction)
        drawn += swing_marks(assembly, plane.plane.direction)
        drawn += pin_marks(assembly, plane, scale)
    plain = PlainView(plane.view, plane.title, tuple(drawn))
    return Cut(plane, plain, Seen(plane.view, plane.plane.direction, marks))


def section_marks(assembly: Assembly, plane: CuttingPlane, scale: float) -> tuple[Mark, ...]:
    """The section's own marks; the scale decides pitches of hatches and what is too thin for one."""
    boards = assembly.boards
    if plane.letter in "HL":
        boards = tuple(board for board in boards if board.member in LID)
    elif plane.shows:
        boards = tuple(board for board in boards if board.id in plane.shows)
    marks = section(boards, plane.plane, scale)
    if plane.letter == "L":
        return tuple(replace(mark, meaning=Meaning.VISIBLE) for mark in marks if not isinstance(mark, Area))
    return marks


def pin_of(assembly: Assembly, plane: CuttingPlane) -> Point | None:
    """The lid's pin in a section that one sees along the pin; None where there is none."""
    if assembly.slant is None or plane.letter != "A":
        return None
    return plane.plane.direction.on_paper((0.0, *assembly.slant.hinge_pin_mm))


def pin_marks(assembly: Assembly, plane: CuttingPlane, scale: float) -> tuple[Mark, ...]:
    """Crossed centre lines at the lid's pin."""
    pin = pin_of(assembly, plane)
    if pin is None:
        return ()
    reach = PIN_CROSS / scale
    return (
        Line((pin[0] - reach, pin[1]), (pin[0] + reach, pin[1]), Meaning.CENTRE, "lid"),
        Line((pin[0], pin[1] - reach), (pin[0], pin[1] + reach), Meaning.CENTRE, "lid"),
    )


def _lid_window(assembly: Assembly, plane: CuttingPlane) -> Window:
    """Section D–D from just above the lid down to a stated depth behind it."""
    slant = assembly.slant
    assert slant is not None
    x, y = plane.plane.direction.on_paper(plane.plane.through)
    margin = assembly.width / 10
    return Window.box(x - margin, y - D_BELOW_MM, x + assembly.width + margin, y + 2 * slant.lid_thickness_mm)


def _round_top(assembly: Assembly, plane: CuttingPlane, marks: Sequence[Mark]) -> tuple[Mark, ...]:
    """Section T–T round the top: it is there for what the sides have in common with it.

    What lies behind and reaches past the top, as a side does in front of it, ends with it.
    """
    behind = [mark for mark in marks if isinstance(mark, Line | ArcMark) and mark.meaning is Meaning.BEHIND]
    cut = [mark for mark in marks if isinstance(mark, Area) or mark.meaning is not Meaning.BEHIND]
    return (
        *clipped(cut, _top_window(assembly, plane, ROUND_TOP_MM)), *clipped(behind, _top_window(assembly, plane, 0.0))
    )  # fmt: skip


def _top_window(assembly: Assembly, plane: CuttingPlane, margin: float) -> Window:
    box = extent([assembly.board("top")])
    ends = [plane.plane.direction.on_paper(corner) for corner in (box.low, box.high)]
    xs, ys = (sorted(end[axis] for end in ends) for axis in (0, 1))
    return Window.box(xs[0] - margin, ys[0] - margin, xs[1] + margin, ys[1] + margin)
