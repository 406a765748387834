"""A view with its facts becomes a drawing with placed dimensions, notes and balloons."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from shopdraw.drawing.bounds import drawing_box
from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.explode import dimension_marks
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.path import Point
from shopdraw.shape.path import bounds as path_bounds
from shopdraw.sheet.balloon import place_balloons
from shopdraw.sheet.box import Bounds, box_of_text, united, words_size
from shopdraw.sheet.fact import BALLOON, Fact, Unplaced
from shopdraw.sheet.ground import Ground, What, boxes_of, strokes_of
from shopdraw.sheet.inside import place_angle, place_inside, place_slant
from shopdraw.sheet.leader import place_note, place_round
from shopdraw.sheet.look import Look
from shopdraw.sheet.mark_words import words_at_circle, words_in_free_spot
from shopdraw.sheet.rows import by_rank
from shopdraw.sheet.side import slant_side, upright_sides
from shopdraw.sheet.sides_choice import place_beside
from shopdraw.sheet.view import Balloon, ComposedView, PlainView

HATCH_CLEAR = 1.0
"""Hatch is left out this far round words."""
TITLE_GAP = 4.0
_NOTHING = 1e-6
_OUTSIDE_OUTLINE = (Meaning.PLANE, Meaning.CENTRE, Meaning.SIZE, Meaning.WORD)


class EmptyView(ValueError):
    """A view without a line has no place for dimensions; the message names it."""


def compose_view(
    view: PlainView,
    facts: Iterable[Fact],
    scale: float,
    look: Look,
    figures: Mapping[str, str],
    balloons: Sequence[Balloon] = (),
) -> ComposedView:
    """Places all that is to be told on one view.

    Args:
        view: its marks.
        facts: those that belong on it; one whose features it doesn't show comes back as unplaced.
        scale: 0.2 for 1:5.
        look: style, heights, distances.
        figures: words by fact id, from `write_figures`.
        balloons: labels to stand round it.
    Raises:
        EmptyView: it has no line.
    """
    base, outline, everything = _ground_of(view, scale)
    seen, unplaced = _seen(view.id, facts)
    points = _paper_points(view.id, seen, scale)
    banded = [fact for fact in seen if _in_band(view.id, fact)]
    sides = upright_sides(outline, everything, look)
    bands = place_beside(view.id, banded, points, figures, sides, base, look)
    dimensions = list(bands.dimensions)
    unplaced += [Unplaced(fact, view.id, "no free place for its figure beside the view") for fact in bands.failed]
    ground = bands.ground
    notes: list[Mark] = []
    for fact in sorted((f for f in seen if not _in_band(view.id, f)), key=by_rank):
        dimension, marks = _place_single(view.id, fact, points, figures[fact.id], outline, ground, look)
        dimensions += [dimension] if dimension is not None else []
        notes += marks
        if dimension is None and not marks:
            unplaced.append(Unplaced(fact.id, view.id, "no free place for its figure in the view"))
    room = _room(everything, dimensions, notes, look)
    ballooned = place_balloons(balloons, scale, room, ground, look)
    unplaced += [Unplaced(BALLOON + label, view.id, "no free place for the balloon") for label in ballooned.failed]
    notes += ballooned.marks
    names = _named(view, ballooned.marks, scale, ground)
    words = [name for name in names if isinstance(name, Text)]
    everything = united([everything, *(box_of_text(name, scale).bounds() for name in words)])
    room = _room(everything, dimensions, notes, look)
    title = _title(view.title, outline, room, look)
    room = _room(room, [], title, look)
    failed = {entry.fact for entry in unplaced}
    own = (*view.marks, *names)
    marks = (*_hatch_cleared(own, dimensions, notes, scale), *(_to_view(m, scale) for m in (*notes, *title)))
    drawing = Drawing(view.id, view.title, marks, tuple(_dimension_to_view(d, view.id, scale) for d in dimensions))
    placed = tuple(fact.id for fact in seen if fact.id not in failed)
    # Heads of arrows and strokes at the ends of lines reach a hair past the lines themselves.
    x0, y0, x1, y1 = drawing_box(drawing, scale, look.style, look.group)
    room = united([room, (x0 * scale, y0 * scale, x1 * scale, y1 * scale)])
    return ComposedView(drawing, scale, outline, room, placed, tuple(unplaced))


def _named(view: PlainView, balloons: Iterable[Mark], scale: float, ground: Ground) -> list[Text | Line]:
    """The view's names where dimensions, notes and balloons left room, with leaders from those that stand far off."""
    held = tuple(balloons) if view.names else ()
    for stroke in strokes_of(held, What.LEADER):
        ground.add_stroke(stroke)
    for box in boxes_of(held):
        ground.add_box(box, "balloon")
    found: list[Text | Line] = []
    for name in view.names:
        if name.circle is None:
            found.append(words_in_free_spot(name.text, name.spots, ground, scale))
        else:
            found += [mark for mark in words_at_circle(name, ground, scale) if mark is not None]
    return found


def _ground_of(view: PlainView, scale: float) -> tuple[Ground, Bounds, Bounds]:
    """The view's own lines and words on paper; the box round its edges; the box round everything."""
    ground = Ground()
    edges: list[Bounds] = []
    others: list[Bounds] = []
    for stroke in strokes_of(view.marks, What.VIEW, "", scale):
        (x0, y0), (x1, y1) = stroke.line
        ground.add_stroke(stroke)
        bounds = (min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1))
        (others if stroke.meaning in _OUTSIDE_OUTLINE else edges).append(bounds)
    for box in boxes_of(view.marks, scale):
        ground.add_box(box, "view")
        others.append(box.bounds())
    if not edges:
        raise EmptyView(f"view {view.id}: it has no line to dimension; give it at least one visible or cut edge")
    outline = united(edges)
    return ground, outline, united([outline, *others])


def _seen(view: str, facts: Iterable[Fact]) -> tuple[list[Fact], list[Unplaced]]:
    """The facts that a view can show, and why it can't show the others."""
    seen, unplaced = [], []
    for fact in facts:
        reason = why_not(view, fact)
        if reason:
            unplaced.append(Unplaced(fact.id, view, reason))
        else:
            seen.append(fact)
    return seen, unplaced


def why_not(view: str, fact: Fact) -> str:
    """Why a view can't tell a fact whatever the room; "" if it can."""
    for feature in (fact.a, fact.b, *((fact.vertex,) if fact.vertex is not None else ())):
        sight = feature.sight(view)
        if sight is None:
            return f"{feature.id} isn't in this view"
        if not sight.shown:
            return f"{feature.id} is a hidden edge in this view"
    size = fact.size_in(view)
    if fact.kind != "note" and size is not None and fact.measured is not None and abs(size - fact.measured) > 1e-3:
        return f"it isn't seen at its true size here ({size:.2f} instead of {fact.measured:.2f})"
    if fact.kind != "note" and size is not None and size < _NOTHING:
        return f"{fact.a.id} and {fact.b.id} are one place in this view"
    return ""


def _in_band(view: str, fact: Fact) -> bool:
    """Whether a fact stands on a row beside the view: level or plumb, and not asked to stand inside."""
    if fact.kind == "clearance" and fact.side in ("", "inside"):
        return False
    level = fact.direction_in(view) in (0.0, 90.0)
    return level and fact.kind in ("linear", "running", "clearance") and fact.side != "inside"


def _paper_points(view: str, facts: Iterable[Fact], scale: float) -> dict[str, Point]:
    points: dict[str, Point] = {}
    for fact in facts:
        for key, feature in (("a", fact.a), ("b", fact.b), ("v", fact.vertex)):
            sight = feature.sight(view) if feature is not None else None
            if sight is not None:
                points[fact.id + key] = (sight.point[0] * scale, sight.point[1] * scale)
    return points


def _place_single(
    view: str, fact: Fact, points: Mapping[str, Point], words: str, outline: Bounds, ground: Ground, look: Look
) -> tuple[Dimension | None, tuple[Mark, ...]]:
    """A fact that stands in the view or at a leader."""
    a, b = points[fact.id + "a"], points[fact.id + "b"]
    if fact.kind == "note":
        return None, place_note(fact, a, words, ground, look) or ()
    if fact.kind in ("radius", "diameter"):
        return place_round(fact, a, b, words, ground, look), ()
    if fact.kind == "angular":
        return place_angle(fact, points[fact.id + "v"], a, b, words, ground, look), ()
    direction = fact.direction_in(view)
    if fact.side == "inside" or fact.kind == "clearance" or direction in (0.0, 90.0):
        return place_inside(fact, direction, a, b, words, outline, ground, look), ()
    side = slant_side(direction, outline, (a, b), ground, look)
    placed = place_slant(fact, side, a, b, words, ground, look)
    return placed or place_inside(fact, direction, a, b, words, outline, ground, look), ()


def _room(box: Bounds, dimensions: Iterable[Dimension], marks: Iterable[Mark], look: Look) -> Bounds:
    """The box round a view and what has been placed, line widths left out."""
    boxes = [box]
    every = [*marks, *(mark for d in dimensions for mark in dimension_marks(d, 1.0, look.style, look.group))]
    for stroke in strokes_of(every, What.DIMENSION):
        (x0, y0), (x1, y1) = stroke.line
        boxes.append((min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)))
    boxes.extend(found.bounds() for found in boxes_of(every))
    return united(boxes)


def _title(title: str, outline: Bounds, room: Bounds, look: Look) -> tuple[Mark, ...]:
    """The view's title, below all that belongs to it, under the middle of its outline."""
    if not title:
        return ()
    _, _, above = words_size(title, look.balloon)
    at = ((outline[0] + outline[2]) / 2, room[1] - TITLE_GAP - above)
    return (Text(at, title, look.balloon, "middle"),)


def _hatch_cleared(
    marks: Sequence[Mark], dimensions: Iterable[Dimension], notes: Iterable[Mark], scale: float
) -> tuple[Mark, ...]:
    """The view's marks, hatches left out round words that stand over them."""
    texts = [mark for mark in notes if isinstance(mark, Text)]
    texts += [Text(d.words_at, d.words, d.height, "middle", d.words_angle_deg) for d in dimensions]
    boxes = [box_of_text(text).grown(HATCH_CLEAR).bounds() for text in texts if text.words]
    named = [mark for mark in marks if isinstance(mark, Text)]
    boxes += [box_of_text(text, scale).grown(HATCH_CLEAR).bounds() for text in named]
    own = [tuple(value / scale for value in box) for box in boxes]
    done: list[Mark] = []
    for mark in marks:
        if isinstance(mark, Area):
            ax0, ay0, ax1, ay1 = path_bounds(mark.outline)
            over = tuple(
                (x0, y0, x1, y1) for x0, y0, x1, y1 in own if x1 > ax0 and x0 < ax1 and y1 > ay0 and y0 < ay1
            )
            done.append(replace(mark, clear=(*mark.clear, *over)) if over else mark)
        else:
            done.append(mark)
    return tuple(done)


def _to_view(mark: Mark, scale: float) -> Mark:
    """A mark given in paper mm, in the view's own true-size mm."""
    match mark:
        case Line():
            return replace(mark, start=_own(mark.start, scale), end=_own(mark.end, scale))
        case ArcMark():
            return replace(mark, centre=_own(mark.centre, scale), radius=mark.radius / scale)
        case Dot():
            return replace(mark, centre=_own(mark.centre, scale))
        case Arrow():
            return replace(mark, tip=_own(mark.tip, scale))
        case Text():
            return replace(mark, at=_own(mark.at, scale))
        case Area():
            raise TypeError("areas are never made on paper")


def _dimension_to_view(dimension: Dimension, view: str, scale: float) -> Dimension:
    """A dimension given in paper mm, in the view's own true-size mm, with the view in its id."""
    return replace(
        dimension,
        id=f"{dimension.id}@{view}",
        a=_own(dimension.a, scale),
        b=_own(dimension.b, scale),
        line=_own(dimension.line, scale),
        words_at=_own(dimension.words_at, scale),
        leader=tuple(_own(p, scale) for p in dimension.leader),
        vertex=_own(dimension.vertex, scale) if dimension.vertex is not None else None,
    )


def _own(point: Point, scale: float) -> Point:
    return point[0] / scale, point[1] / scale
