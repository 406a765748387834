"""Details: true clips of sections at full or half size, with a circle and a name on the section that they come from."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.mark import ArcMark, Area, Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import words_size
from shopdraw.sheet.ground import Ground, What, strokes_of
from shopdraw.sheet.look import Look
from shopdraw.sheet.mark_words import words_in_free_spot
from shopdraw.sheet.moving import moving_marks, open_boards
from shopdraw.sheet.near_lines import without_near
from shopdraw.sheet.planes import CuttingPlane
from shopdraw.sheet.sections import pin_marks, section_marks
from shopdraw.sheet.sighting import Seen
from shopdraw.sheet.view import Name, PlainView
from shopdraw.view.clip import Window, clipped
from shopdraw.wood.assembly import Assembly, SlantFact

NAME_GAP = 1.5
_GAPS = (NAME_GAP, 4.0, 8.0, 12.0, 17.0, 23.0, 30.0, 38.0, 47.0, 57.0, 68.0, 80.0)
"""How far off its circle a detail's name may stand, paper mm."""


@dataclass(frozen=True, slots=True)
class Detail:
    """A detail before it is drawn.

    Attributes:
        name: "d1".
        plane: of the section that it is part of.
        centre: of its circle in the section, true-size mm.
        radius: of its circle, mm.
        moving: whether moved positions are drawn.
        joint: id of the joint that it shows, or "".
        board: id of the board whose moulding it shows, or "".
    """

    name: str
    plane: CuttingPlane
    centre: Point
    radius: float
    moving: bool = False
    joint: str = ""
    board: str = ""

    @property
    def of_lid(self) -> bool:
        """Whether it is one of the lid's own, which show no single joint."""
        return not (self.joint or self.board)

    @property
    def view(self) -> str:
        """Id of its view."""
        return f"detail.{self.name}"

    @property
    def window(self) -> Window:
        """What it shows."""
        return Window.circle(self.centre, self.radius)


@dataclass(frozen=True, slots=True)
class Drawn:
    """A detail as drawn: what stands in it, and what dimensions may go to."""

    detail: Detail
    plain: PlainView
    seen: Seen


def lid_details(assembly: Assembly, planes: Sequence[CuttingPlane]) -> tuple[Detail, ...]:
    """The details of a lid: d1 top's nose and lid's upper end, d2 pin and support, d3 lid's end over the side.

    Of a lid that is hinged at its upper edge: d1 the pin, with the lid shut and open, d2 its lower edge and the ledge,
    d3 its end beside the side.
    """
    slant = assembly.slant
    if slant is None or not assembly.has("lid"):
        return ()
    by_letter = {plane.letter: plane for plane in planes}
    found: list[Detail] = []
    if slant.hinge_edge == "upper" and "A" in by_letter:
        found += [_upper_pin(slant, by_letter["A"]), _lower_edge(slant, by_letter["A"])]
    elif "A" in by_letter:
        found += [_nose(assembly, slant, by_letter["A"]), _pin(slant, by_letter["A"])]
    if "D" in by_letter:
        found.append(_lid_end(assembly, slant, by_letter["D"]))
    return tuple(found)


def _nose(assembly: Assembly, slant: SlantFact, plane: CuttingPlane) -> Detail:
    """Round the top's upper arris, its middle set into the wood so that sizes along the slope stand outside it."""
    c, s = _slope(slant)
    reach = max(slant.top_bevel_mm + slant.top_flat_mm, slant.lid_thickness_mm) + 22.0
    at = slant.run_mm - 0.4 * reach * c + 8.0 * s, assembly.height - 0.4 * reach * s - 8.0 * c
    return Detail("d1", plane, at, radius_in_steps(reach))


def _pin(slant: SlantFact, plane: CuttingPlane) -> Detail:
    """Round the pin: lid shut and open, writing shelf, the support under the open lid."""
    reach = 2.2 * slant.lid_thickness_mm + 12.0
    at = slant.hinge_pin_mm[0], slant.hinge_pin_mm[1] - 0.2 * reach
    return Detail("d2", plane, at, radius_in_steps(reach), moving=True)


def _upper_pin(slant: SlantFact, plane: CuttingPlane) -> Detail:
    """Round the pin of a lid that is hinged above: its upper edge, shut and open, and the top's front edge."""
    reach = 1.6 * slant.lid_thickness_mm + 12.0
    at = slant.hinge_pin_mm[0], slant.hinge_pin_mm[1] - 0.2 * reach
    return Detail("d1", plane, at, radius_in_steps(reach), moving=True)


def _lower_edge(slant: SlantFact, plane: CuttingPlane) -> Detail:
    """Round the lower edge of a lid that is hinged above."""
    c, s = _slope(slant)
    reach = 2.0 * slant.lid_thickness_mm + 12.0
    along = slant.lid_length_mm - 0.3 * reach
    at = slant.hinge_pin_mm[0] - along * c, slant.hinge_pin_mm[1] - along * s
    return Detail("d2", plane, at, radius_in_steps(reach))


def _lid_end(assembly: Assembly, slant: SlantFact, plane: CuttingPlane) -> Detail:
    """Round the lid's right end, square to its length."""
    _, up = plane.plane.direction.on_paper((0.0, *slant.hinge_pin_mm))
    reach = slant.lid_thickness_mm + 20.0
    return Detail("d3", plane, (assembly.width - reach / 4, up), radius_in_steps(reach))


def _slope(slant: SlantFact) -> tuple[float, float]:
    turn = math.radians(slant.angle_from_level_deg)
    return math.cos(turn), math.sin(turn)


def radius_in_steps(reach: float) -> float:
    """A radius in whole steps of 5 mm, so that a slightly larger piece keeps its details' size."""
    return 5.0 * math.ceil(reach / 5.0)


def draw_detail(assembly: Assembly, detail: Detail, scale: float, title: str) -> Drawn:
    """A detail at a scale, its edge a narrow circle."""
    marks = clipped(section_marks(assembly, detail.plane, scale), detail.window)
    drawn: list[Mark] = [mark for mark in marks if isinstance(mark, Area)]
    drawn += without_near([mark for mark in marks if isinstance(mark, Line | ArcMark)], scale)
    if detail.moving:
        opened = moving_marks(open_boards(assembly), detail.plane.plane.direction)
        drawn += clipped(without_near(opened, scale), detail.window)
        drawn += pin_marks(assembly, detail.plane, scale)
    drawn.append(_rim(detail))
    return Drawn(
        detail, PlainView(detail.view, title, tuple(drawn)), Seen(detail.view, detail.plane.plane.direction, marks)
    )


def _rim(detail: Detail) -> ArcMark:
    return ArcMark(detail.centre, detail.radius, 0.0, 360.0, Meaning.SIZE)


def circle_of(detail: Detail, scale: float, ground: Ground) -> ArcMark:
    """The detail's circle on its section; the section's ground gains it."""
    circle = _rim(detail)
    for stroke in strokes_of((circle,), What.VIEW, "", scale):
        ground.add_stroke(stroke)
    return circle


def name_at_circle(detail: Detail, words: str, scale: float, look: Look, ground: Ground) -> Text:
    """The detail's name beside its circle, with where it is drawn.

    Args:
        words: "d1 / 5-C4".
        ground: of the section, with the circles of all details; it gains the words.
    """
    spots = list(_name_spots(detail, words, scale, look, EIGHT, (NAME_GAP, 6.0, 12.0, 20.0, 30.0)))
    spots += _name_spots(detail, words, scale, look, range(0, 360, 15), _GAPS)
    return words_in_free_spot(Text((0.0, 0.0), words, look.balloon), spots, ground, scale)


def name_near_circle(detail: Detail, words: str, scale: float, look: Look, middle: Point) -> Name:
    """The name of a joint's detail, to stand near its circle where dimensions and balloons leave room.

    Args:
        words: "d7 / 5-C4".
        middle: of the section: the name stands on that side of its circle rather than among the rows round it.
    """
    inward = math.degrees(math.atan2(middle[1] - detail.centre[1], middle[0] - detail.centre[0]))
    turns = sorted(range(0, 360, 15), key=lambda turn: round(abs((turn - inward + 180.0) % 360.0 - 180.0), 3))
    spots = tuple(_name_spots(detail, words, scale, look, turns, _GAPS))
    return Name(Text((0.0, 0.0), words, look.balloon), spots, (detail.centre, detail.radius))


EIGHT = (45.0, 135.0, 0.0, 180.0, 315.0, 225.0, 90.0, 270.0)
"""Where names of a lid's details stand round their circles, the best first."""


def _name_spots(
    detail: Detail, words: str, scale: float, look: Look, turns: Sequence[float], gaps: Sequence[float]
) -> Iterator[Point]:
    """Where the name may begin, round the circle, then further off."""
    x, y = detail.centre
    wide, _, _ = words_size(words, look.balloon)
    for gap in gaps:
        off = detail.radius + gap / scale
        for turn in turns:
            c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
            left = 0.0 if c > 0.1 else wide if c < -0.1 else wide / 2
            down = 0.0 if s > 0.1 else look.balloon if s < -0.1 else look.balloon / 2
            yield x + off * c - left / scale, y + off * s - down / scale
