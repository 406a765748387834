"""Facts with what a person wants of them: moved to a side and a row, and dimensions of their own."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from shopdraw.sheet.fact import Fact, Feature, Rank
from shopdraw.sheet.own import Nowhere, OwnDimension, OwnMove
from shopdraw.sheet.places import ABOVE, BELOW, LEFT, RIGHT, Places
from shopdraw.sheet.view import ComposedView

BESIDE = ("linear", "running")
"""Kinds of fact that stand on rows beside a view."""
_TOWARD = {"left": LEFT, "right": RIGHT, "above": ABOVE, "below": BELOW}
_LEVEL_SIDES, _PLUMB_SIDES = ("above", "below"), ("left", "right")
_EDGES = {
    "left": ("x", False),
    "right": ("x", True),
    "front": ("y", False),
    "rear": ("y", True),
    "lower": ("z", False),
    "upper": ("z", True),
}
_SAME = 0.01


def with_own_moves(facts: Sequence[Fact], moves: Sequence[OwnMove]) -> tuple[tuple[Fact, ...], tuple[Nowhere, ...]]:
    """The facts, those that a person moved pinned to their view, side and row; and which moves do nothing.

    Args:
        facts: all of them.
        moves: in the file's order; of two for one fact the later one counts.
    """
    by_id = {fact.id: fact for fact in facts}
    nowhere: list[Nowhere] = []
    for move in moves:
        fact = by_id.get(move.fact)
        why = _why_not(fact, move) if fact is not None else f"there is no dimension {move.fact!r}"
        if fact is None or why:
            nowhere.append(Nowhere(move.address, why))
            continue
        views = (move.view, *(view for view in fact.views if view != move.view))
        by_id[fact.id] = replace(
            fact, views=views, side=move.side or fact.side, row=move.row or fact.row, offset=move.offset,
            pinned=bool(move.side),
        )  # fmt: skip
    return tuple(by_id[fact.id] for fact in facts), tuple(nowhere)


def _why_not(fact: Fact, move: OwnMove) -> str:
    if fact.kind not in BESIDE or fact.direction_in(move.view) not in (0.0, 90.0):
        return f"{move.fact!r} doesn't stand on a row beside its view; only level and plumb dimensions are moved"
    a, b = fact.a.sight(move.view), fact.b.sight(move.view)
    if a is None or b is None or not (a.shown and b.shown):
        return f"{move.fact!r} isn't to be seen in {move.view!r}"
    size, true = fact.size_in(move.view), fact.size_in(fact.views[0])
    if size is None or (true is not None and abs(size - true) > _SAME):
        return f"{move.fact!r} isn't to be seen at true length in {move.view!r}"
    allowed = _LEVEL_SIDES if fact.direction_in(move.view) == 0.0 else _PLUMB_SIDES
    if move.side and move.side not in allowed:
        return f"{move.fact!r} can't stand {move.side}: it belongs {' or '.join(allowed)}"
    return ""


def own_facts(
    facts: Sequence[Fact], own: Sequence[OwnDimension], flat: Places, near: Places
) -> tuple[tuple[Fact, ...], tuple[Nowhere, ...]]:
    """A person's own dimensions as facts, and which tables do nothing.

    One that tells what its view tells already is printed in ( ).

    Args:
        facts: that the sheets tell of themselves.
        own: in the file's order.
        flat: places in arrangement and sections.
        near: places in details.
    """
    known = {fact.id for fact in facts}
    made: list[Fact] = []
    nowhere: list[Nowhere] = []
    for table in own:
        places = near if table.view.startswith("detail.") else flat
        if not any(view.id == table.view for view in places.views):
            nowhere.append(Nowhere(table.address, f"there is no view {table.view!r}"))
            continue
        ends = [_feature(name, table, facts, places) for name in (table.a, table.b)]
        lost = [name for name, end in zip((table.a, table.b), ends, strict=True) if not _shown(end, table.view)]
        a, b = ends
        if a is None or b is None or lost:
            nowhere.append(Nowhere(table.address, f"{table.view!r} shows no {' and no '.join(map(repr, lost))}"))
            continue
        told = _fact(table, a, b, places)
        if (told.size_in(table.view) or 0.0) < _SAME:
            nowhere.append(Nowhere(table.address, f"{table.a!r} and {table.b!r} are level with each other there"))
            continue
        free = told.id if told.id not in known else f"{told.id}, {table.address}"
        known.add(free)
        made.append(replace(told, id=free, reference=_told_already(told, table.view, facts)))
    return tuple(made), tuple(nowhere)


def _shown(feature: Feature | None, view: str) -> bool:
    sight = feature.sight(view) if feature is not None else None
    return sight is not None and sight.shown


def _feature(name: str, table: OwnDimension, facts: Sequence[Fact], places: Places) -> Feature | None:
    """The feature of that name: a board's edge, the floor, a level; or any that a fact of that view goes to."""
    board, _, edge = name.rpartition(":")
    if edge in _EDGES and places.assembly.has(board):
        axis, high = _EDGES[edge]
        return places.edge(board, axis, high, _TOWARD.get(table.side, BELOW), name)
    for fact in facts:
        for feature in (fact.a, fact.b):
            if feature.id.split(",")[0] == name and _shown(feature, table.view):
                return feature
    return None


def _fact(table: OwnDimension, a: Feature, b: Feature, places: Places) -> Fact:
    direction = _direction(table, places)
    return Fact(
        f"{table.a}/{table.b}", a, b, Rank.LEVEL, (table.view,), direction, side=table.side, row=table.row,
        rounding="cut", offset=table.offset, pinned=bool(table.side),
    )  # fmt: skip


def _direction(table: OwnDimension, places: Places) -> float:
    """Across the paper or up it: as the side says, else as the first feature's axis lies in the view."""
    if table.side:
        return 0.0 if table.side in _LEVEL_SIDES else 90.0
    edge = table.a.rpartition(":")[2]
    axis = _EDGES[edge][0] if edge in _EDGES else "z"
    view = next(view for view in places.views if view.id == table.view)
    return 90.0 if abs(view.direction.up["xyz".index(axis)]) > abs(view.direction.right["xyz".index(axis)]) else 0.0


def _told_already(told: Fact, view: str, facts: Sequence[Fact]) -> bool:
    """Whether a fact of the same view measures between the same places."""
    ends = _ends(told, view)
    return any(
        fact.kind in BESIDE and view in fact.views and fact.direction_in(view) == told.direction_deg
        and (other := _ends(fact, view)) is not None and ends is not None
        and all(abs(p - q) < _SAME for p, q in zip(ends, other, strict=True))
        for fact in facts
    )  # fmt: skip


def _ends(fact: Fact, view: str) -> tuple[float, float] | None:
    a, b = fact.a.sight(view), fact.b.sight(view)
    if a is None or b is None:
        return None
    axis = 0 if fact.direction_in(view) == 0.0 else 1
    low, high = sorted((a.point[axis], b.point[axis]))
    return low, high


@dataclass(frozen=True, slots=True)
class StandingDimension:
    """A dimension on a sheet, for a window that lets it be moved.

    Attributes:
        of: `feature/feature@view`: what a [move.ID] names it by.
        view: where it stands.
        side: "left", "right", "above" or "below" the view; "" where it stands inside or aslant and isn't moved.
        out: how far its line stands from the view's outline, paper mm.
        words: its figure.
        words_at: the middle of its figure, true-size mm in the view.
    """

    of: str
    view: str
    side: str
    out: float
    words: str
    words_at: tuple[float, float]


def standing_dimensions(views: Mapping[str, ComposedView]) -> tuple[StandingDimension, ...]:
    """Every dimension of a set's views, by view and in the view's order.

    Args:
        views: composed ones by id.
    """
    return tuple(
        StandingDimension(one.id, name, *_side_of(one.direction_deg, one.line, view), one.words, one.words_at)
        for name, view in views.items()
        for one in view.drawing.dimensions
    )


def _side_of(direction_deg: float, line: tuple[float, float], view: ComposedView) -> tuple[str, float]:
    """On which side of the view a dimension line lies, and how far out, paper mm."""
    x, y = line[0] * view.scale, line[1] * view.scale
    x0, y0, x1, y1 = view.outline
    if direction_deg % 180.0 == 0.0:
        outs = (("below", y0 - y), ("above", y - y1))
    elif direction_deg % 180.0 == 90.0:
        outs = (("left", x0 - x), ("right", x - x1))
    else:
        return "", 0.0
    return next(((side, out) for side, out in outs if out > 0.0), ("", 0.0))
