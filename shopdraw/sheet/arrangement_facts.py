"""What the general arrangement tells: heights on the front, depths and the slant on the side, the top on the plan."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from shopdraw.drawing.letters import text_width
from shopdraw.measure import round_to_step, write_length, write_with_complement
from shopdraw.sheet.fact import Fact, Feature, Rank, Sight
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.look import Look
from shopdraw.sheet.places import ABOVE, BELOW, LEFT, RIGHT, Places
from shopdraw.sheet.telling import chain_of, least_link, note_at, size_between

PLUMB = 90.0
WORDS_SHARE = 0.9
"""The two angles stand in one string where it takes no more than this share of the side's width at half height."""
_STANDS_OUT = 0.1
"""What stands out of the case by less is told as flush, mm."""
STEEPEST_TILT_DEG = 45.0
"""Saws and router bases tilt to 45° (common practice)."""


def arrangement_facts(places: Places, writing: Writing, look: Look) -> tuple[Fact, ...]:
    """All facts of the general arrangement, first of them the overalls.

    Args:
        places: of the piece, in its views and sections.
        writing: how figures are printed; a link that closes a row follows from the printed ones.
        look: height of the figures.
    """
    return (*front_facts(places, writing), *side_facts(places, writing, look), *plan_facts(places))


def front_facts(places: Places, writing: Writing) -> Iterator[Fact]:
    """Heights left of the front view, widths below it."""
    floor, top = places.floor(LEFT), places.top(LEFT)
    yield size_between(floor, top, Rank.OVERALL, ("front", "section.B"), direction_deg=PLUMB, side="left", row=3)
    ends = [floor]
    if places.assembly.slant is not None and places.shown(writing_level := places.level("writing", LEFT), "front"):
        yield size_between(floor, writing_level, Rank.LEVEL, ("front",), direction_deg=PLUMB, side="left", row=2)
        yield _rest("level.writing:top/top:upper", floor, writing_level, top, "front", writing)
        ends.append(writing_level)
    else:
        ends.append(top)
    links = places.spaced(_front_heights(places), "front", 1, ends)
    row = [floor, *links, *ends[1:]]
    yield from chain_of(
        "front.heights",
        row,
        Rank.OPENING,
        ("front",),
        least_link(row, "front", 1),
        direction_deg=PLUMB,
        side="left",
        row=1,
    )
    yield from _front_widths(places)


def _rest(name: str, low: Feature, middle: Feature, high: Feature, view: str, writing: Writing) -> Fact:
    """The link that closes floor, level and top: what the printed overall leaves."""
    a, b, c = (place.sight(view) for place in (low, middle, high))
    assert a is not None
    assert b is not None
    assert c is not None
    step = writing.general.step_mm
    rest = round_to_step(c.point[1] - a.point[1], step) - round_to_step(b.point[1] - a.point[1], step)
    words = write_length(rest, replace(writing.general, second=None))
    return Fact(
        name,
        middle,
        high,
        Rank.LEVEL,
        (view,),
        direction_deg=PLUMB,
        side="left",
        row=2,
        words=words,
        reference=True,
    )


def _front_heights(places: Places) -> Iterator[Feature]:
    """Plinth, then fronts that lap over their openings or else the openings' edges; lower edges before upper ones."""
    assembly = places.assembly
    if assembly.has("plinth.front"):
        yield places.edge("plinth.front", "z", True, LEFT)
    drawers = [opening for opening in assembly.openings if opening.use == "drawer"]
    for upper in (False, True):
        for opening in drawers:
            key = opening.id.removeprefix("bank.")
            if laps(places, key):
                yield places.edge(f"drawer.{key}.front", "z", upper, LEFT)
            else:
                at = opening.bottom + (opening.height if upper else 0.0)
                yield places.across(f"opening.{opening.id}:{'upper' if upper else 'lower'}", "z", at, LEFT)
    if assembly.slant is None and assembly.has("top"):
        yield places.edge("top", "z", False, LEFT)


def laps(places: Places, key: str) -> bool:
    """Whether a drawer's front laps over its opening."""
    front = f"drawer.{key}.front"
    return places.assembly.has(front) and places.extent(front).y0 < -0.01


def _front_widths(places: Places) -> Iterator[Fact]:
    left, right = places.case("x", False, BELOW), places.case("x", True, BELOW)
    assembly = places.assembly
    row = [left, *places.spaced(_lowest_edges(places), "front", 0, (left, right)), right]
    # Where the scale leaves no edge between them, left to right is the overall itself.
    if len(row) > 2:
        yield from chain_of("front.widths", row, Rank.OPENING, ("front",), len(row) - 2, side="below", row=1)
    over_plinth = assembly.has("plinth.left") and assembly.has("plinth.right")
    rank = Rank.LEVEL if over_plinth else Rank.OVERALL
    yield size_between(left, right, rank, ("front", "plan", "section.B"), side="below", row=2)
    if over_plinth:
        outer = places.edge("plinth.left", "x", False, BELOW), places.edge("plinth.right", "x", True, BELOW)
        yield size_between(*outer, Rank.OVERALL, ("front", "plan"), side="below", row=3)


def _lowest_edges(places: Places) -> Iterator[Feature]:
    """The upright edges beside the lowest openings: what shows of the sides, and the fronts between them."""
    openings = places.assembly.openings
    lowest = min((opening.bottom for opening in openings), default=0.0)
    for opening in openings:
        if abs(opening.bottom - lowest) > 0.01:
            continue
        key = opening.id.removeprefix("bank.")
        if opening.use == "drawer" and laps(places, key):
            yield places.edge(f"drawer.{key}.front", "x", False, BELOW)
            yield places.edge(f"drawer.{key}.front", "x", True, BELOW)
        else:
            box = places.whole._replace(z0=opening.bottom, z1=opening.bottom + opening.height)
            yield places.across(f"opening.{opening.id}:left", "x", opening.left, BELOW, box)
            yield places.across(f"opening.{opening.id}:right", "x", opening.left + opening.width, BELOW, box)


def side_facts(places: Places, writing: Writing, look: Look) -> Iterator[Fact]:
    """Depths below the right side view, the slant above, right and along it."""
    assembly = places.assembly
    front, rear = places.case("y", False, BELOW), places.case("y", True, BELOW)
    row = [front, rear]
    views = ("side", "section.A")
    foremost, rearmost = _outermost(places, high=False), _outermost(places, high=True)
    if foremost or rearmost:
        outer = places.edge(foremost, "y", False, BELOW) if foremost else front
        last = places.edge(rearmost, "y", True, BELOW) if rearmost else rear
        yield size_between(outer, last, Rank.OVERALL, views, side="below", row=2)
        beyond = [place for place in (outer, last) if place not in row]
        ends = places.spaced(beyond, "side", 0, row)
        links = [*(p for p in ends if p == outer), *row, *(p for p in ends if p == last)]
        closing = 0 if len(ends) == len(beyond) else None
        yield from chain_of("side.depths", links, Rank.LEVEL, views, closing, side="below", row=1)
    else:
        yield size_between(front, rear, Rank.OVERALL, views, side="below", row=1)
    if assembly.slant is not None:
        yield from _slant_facts(places, writing, look)


def _outermost(places: Places, *, high: bool) -> str:
    """The board that stands furthest in front of the case or behind it; "" where none does; a plinth before others."""
    limit = places.assembly.depth if high else 0.0
    sign = 1.0 if high else -1.0
    reach = {b.id: sign * (places.extent(b.id)[4 if high else 1] - limit) for b in places.assembly.boards}
    furthest = max(reach.values(), default=0.0)
    if furthest <= _STANDS_OUT:
        return ""
    return min((name for name, by in reach.items() if by > furthest - 0.01), key=lambda n: (n != "plinth.front", n))


def _slant_facts(places: Places, writing: Writing, look: Look) -> Iterator[Fact]:
    slant = places.assembly.slant
    assert slant is not None
    side = places.extent("side.right") if places.assembly.has("side.right") else places.whole
    x = side.x1
    start_at, end_at = (x, 0.0, slant.slant_start_mm), (x, slant.run_mm, places.assembly.height)
    start = places.sightings.place("slant:start", start_at, start_at, RIGHT)
    end = places.sightings.place("slant:end", end_at, end_at, ABOVE)
    floor, top = places.floor(RIGHT), places.top(RIGHT)
    front, rear = places.case("y", False, ABOVE), places.case("y", True, ABOVE)
    views = ("side",)
    yield from chain_of(
        "side.heights", [floor, start, top], Rank.LEVEL, views, None, direction_deg=PLUMB, side="right", row=1
    )
    yield size_between(
        floor, top, Rank.OVERALL, views, "on the side", direction_deg=PLUMB, side="right", row=2, reference=True
    )
    yield from chain_of("side.top", [front, end, rear], Rank.LEVEL, views, None, side="above", row=1)
    yield size_between(
        start, end, Rank.LEVEL, views, direction_deg=slant.angle_from_level_deg, side="slant", reference=True
    )
    level = places.point("slant:level", {"side": (slant.run_mm, slant.slant_start_mm)})
    named, tilt = angle_words(slant.angle_from_level_deg, writing, square_to_lid=slant.hinge_edge == "upper")
    together = f"{named}; {tilt}"
    narrow = text_width(together, look.figure) > WORDS_SHARE * (places.assembly.depth - slant.run_mm / 2) * places.scale
    yield Fact(
        "slant:level/slant:end",
        level,
        end,
        Rank.LEVEL,
        views,
        kind="angular",
        vertex=start,
        rounding="angle",
        words=named if narrow else together,
    )
    if narrow:
        yield note_at("slant:tilt", _on_slant(places, x), tilt, Rank.LEVEL, (*views, "section.A", "detail.d1"))


def _on_slant(places: Places, x: float) -> Feature:
    """A point of the slant: on the side's edge, and in the detail of the top's nose on its bevel."""
    slant = places.assembly.slant
    assert slant is not None
    share = 0.4
    at = share * slant.run_mm, slant.slant_start_mm + share * slant.rise_mm
    edge = places.sightings.place("slant", (x, *at), (x, *at), ABOVE)
    turn = math.radians(slant.angle_from_level_deg)
    half = slant.top_bevel_mm / 2
    bevel = slant.run_mm - half * math.cos(turn), places.assembly.height - half * math.sin(turn)
    return Feature(edge.id, (*edge.sights, Sight("detail.d1", bevel)))


def angle_words(from_level_deg: float, writing: Writing, *, square_to_lid: bool = False) -> tuple[str, str]:
    """Both angles, named, since they are mixed up daily; and that a tilt over 45° can't be sawn so.

    Args:
        from_level_deg: the slant's.
        writing: how figures are written.
        square_to_lid: the top's front edge is square to a lid hinged above, so that the saw tilts by the slant itself.
    """
    level, tilt = write_with_complement(from_level_deg, writing.decimal_sign)
    tilted = from_level_deg if square_to_lid else 90.0 - from_level_deg
    tilt = level if square_to_lid else tilt
    steep = "" if tilted <= STEEPEST_TILT_DEG else ": over 45°, can't be sawn by tilting"
    what = "top's edge square to the lid: " if square_to_lid else ""
    return f"{level} from level", f"{what}tilt saw {tilt} from square{steep}"


def plan_facts(places: Places) -> Iterator[Fact]:
    """The top's length and depth and the lid's width."""
    assembly = places.assembly
    if assembly.has("top"):
        box = places.extent("top")
        as_case = abs(box.x0) < 0.01 and abs(box.x1 - assembly.width) < 0.01
        if as_case:
            pair = places.case("x", False, ABOVE), places.case("x", True, ABOVE)
        else:
            pair = places.edge("top", "x", False, ABOVE), places.edge("top", "x", True, ABOVE)
        # The case's own width goes to the plan where the front doesn't show it: the top's would say it twice there.
        if not as_case or all(places.shown(end, "front") for end in pair):
            yield size_between(*pair, Rank.LEVEL, ("plan",), "top" if as_case else "", side="above", row=2)
        front = (
            places.across("slant:end", "y", assembly.slant.run_mm, RIGHT)
            if assembly.slant is not None
            else places.edge("top", "y", False, RIGHT)
        )
        rear = places.case("y", True, RIGHT)
        yield size_between(front, rear, Rank.LEVEL, ("plan",), "top", direction_deg=PLUMB, side="right", row=1)
    if assembly.has("lid"):
        pair = places.edge("lid", "x", False, ABOVE), places.edge("lid", "x", True, ABOVE)
        yield size_between(*pair, Rank.SIZE, ("plan", "front"), side="above", row=1)
