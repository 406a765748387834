"""Facts over views: each goes to the first candidate that shows it and has room; what is left over is told.

Facts placed and facts left over are all facts: none vanishes.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from shopdraw.sheet.compose import compose_view, why_not
from shopdraw.sheet.fact import BALLOON, Fact, Unplaced
from shopdraw.sheet.look import Look
from shopdraw.sheet.rows import by_rank
from shopdraw.sheet.view import Balloon, ComposedView, PlainView

LEAST_ON_PAPER = 2.0
"""Two features nearer than this on paper are told in another view."""


@dataclass(frozen=True, slots=True)
class Dimensioned:
    """Views with their facts placed.

    Attributes:
        views: composed views by id.
        unplaced: the last reason for each fact that no view could tell.
        moved: facts that stand in another view than their first candidate, with that view.
    """

    views: Mapping[str, ComposedView]
    unplaced: tuple[Unplaced, ...]
    moved: tuple[tuple[str, str], ...]


def dimension_views(
    views: Sequence[PlainView],
    facts: Iterable[Fact],
    scales: float | Mapping[str, float],
    look: Look,
    figures: Mapping[str, str],
    balloons: Mapping[str, Sequence[Balloon]] | None = None,
) -> Dimensioned:
    """Places all facts on the views.

    Each chain stays together while a view has all of it. What a view has no room for goes on to its next candidate;
    there are as many rounds as the longest list of candidates.

    Args:
        views: plain views; each id once.
        facts: all of them; a candidate view that isn't among `views` is passed over.
        scales: one scale, or one by view id.
        look: heights and distances.
        figures: words by fact id.
        balloons: by view id.
    """
    every = sorted(facts, key=by_rank)
    ratio = {view.id: scales if isinstance(scales, float | int) else scales[view.id] for view in views}
    refused: dict[str, dict[str, str]] = {fact.id: {} for fact in every}
    done: dict[str, tuple[tuple[str, ...], ComposedView]] = {}
    for _ in range(max((len(fact.views) for fact in every), default=1)):
        homes = _homes(every, ratio, refused)
        new = False
        for view in views:
            held = [fact for fact in every if homes.get(fact.id) == view.id]
            key = tuple(fact.id for fact in held)
            if view.id in done and done[view.id][0] == key:
                continue
            shown = (balloons or {}).get(view.id, ())
            composed = compose_view(view, held, ratio[view.id], look, figures, shown)
            done[view.id] = (key, composed)
            for left in composed.unplaced:
                if left.fact in refused:
                    refused[left.fact][view.id] = left.reason
                    new = True
        if not new:
            break
    composed_views = {view.id: done[view.id][1] for view in views}
    return Dimensioned(composed_views, _left_over(every, composed_views, refused), _moved(every, composed_views))


def _homes(
    facts: Sequence[Fact], ratio: Mapping[str, float], refused: dict[str, dict[str, str]]
) -> dict[str, str]:
    """The view that each fact goes to; reasons against the others are noted in `refused`."""
    homes: dict[str, str] = {}
    chains: dict[str, list[Fact]] = {}
    for fact in facts:
        chains.setdefault(fact.chain or fact.id, []).append(fact)
    for members in chains.values():
        for fact in members:
            for view in fact.views:
                _note_refusal(fact, view, ratio, refused)
        common = [v for v in members[0].views if all(v in f.views and v not in refused[f.id] for f in members)]
        for fact in members:
            own = next((view for view in fact.views if view not in refused[fact.id]), None)
            home = common[0] if common else own
            if home is not None:
                homes[fact.id] = home
    return homes


def _note_refusal(fact: Fact, view: str, ratio: Mapping[str, float], refused: dict[str, dict[str, str]]) -> None:
    if view in refused[fact.id]:
        return
    if view not in ratio:
        refused[fact.id][view] = "the view isn't drawn"
        return
    reason = why_not(view, fact)
    size = fact.size_in(view)
    if not reason and fact.kind in ("linear", "running") and size is not None and size * ratio[view] < LEAST_ON_PAPER:
        reason = f"its features are {size * ratio[view]:.1f} mm apart on paper; at least {LEAST_ON_PAPER:g} is readable"
    if reason:
        refused[fact.id][view] = reason


def _left_over(
    facts: Sequence[Fact], views: Mapping[str, ComposedView], refused: Mapping[str, Mapping[str, str]]
) -> tuple[Unplaced, ...]:
    placed = {fact for view in views.values() for fact in view.placed}
    left = []
    for fact in facts:
        if fact.id not in placed:
            view = fact.views[-1]
            left.append(Unplaced(fact.id, view, refused[fact.id].get(view, "no view had room for it")))
    balloons = [entry for view in views.values() for entry in view.unplaced if entry.fact.startswith(BALLOON)]
    return (*left, *balloons)


def _moved(facts: Sequence[Fact], views: Mapping[str, ComposedView]) -> tuple[tuple[str, str], ...]:
    homes = {fact: view.drawing.id for view in views.values() for fact in view.placed}
    return tuple((f.id, homes[f.id]) for f in facts if f.id in homes and homes[f.id] != f.views[0])
