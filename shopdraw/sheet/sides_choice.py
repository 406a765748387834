"""Each run on the side that costs least, or on the other one where that has no room for its figures. Paper mm."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from shopdraw.shape.path import Point
from shopdraw.sheet.bands import Bands, place_bands
from shopdraw.sheet.fact import Fact
from shopdraw.sheet.ground import Ground
from shopdraw.sheet.look import Look
from shopdraw.sheet.rows import price_of_side, runs_of
from shopdraw.sheet.side import Run, Side

DEAREST = 400.0
"""What a figure may cost on its second side: extension lines over eight lines of the view aren't read any more."""
TURNS = 4
"""How many runs without room are tried on their other side."""

Option = tuple[float, Side, Run]


def place_beside(
    view: str, facts: Sequence[Fact], points: Mapping[str, Point], figures: Mapping[str, str],
    upright: Mapping[str, Side], ground: Ground, look: Look,
) -> Bands:
    """Level and plumb facts on rows round the view.

    Args:
        view: its id.
        facts: measured level or plumb.
        points: paper places of features, by `fact.id + "a"` and `"b"`.
        figures: words by fact id.
        upright: the four sides by name.
        ground: the view's own lines and words.
        look: heights and distances.
    """
    options = _options(view, facts, points, figures, upright, ground)
    chosen = [0] * len(options)
    best = _placed(options, chosen, ground, look)
    turned = 0
    for i, option in enumerate(options):
        without = [span for span in option[0][2].spans if span.fact.id in best.failed]
        if not without or turned >= TURNS or option[1][0] > DEAREST * len(option[0][2].spans):
            continue
        turned += 1
        other = [*chosen[:i], 1, *chosen[i + 1 :]]
        bands = _placed(options, other, ground, look)
        if len(bands.failed) < len(best.failed):
            chosen, best = other, bands
    return best


def _options(
    view: str, facts: Sequence[Fact], points: Mapping[str, Point], figures: Mapping[str, str],
    upright: Mapping[str, Side], ground: Ground,
) -> list[tuple[Option, Option]]:
    """Each run with its two sides, the cheaper one first; below and left come first of equals."""
    options: list[tuple[Option, Option]] = []
    for direction in dict.fromkeys(fact.direction_in(view) for fact in facts):
        members = [fact for fact in facts if fact.direction_in(view) == direction]
        one, two = (upright[name] for name in (("below", "above") if direction == 0.0 else ("left", "right")))
        pairs = zip(runs_of(members, points, figures, one), runs_of(members, points, figures, two), strict=True)
        for first, second in pairs:
            a = (price_of_side(one, first, ground), one, first)
            b = (price_of_side(two, second, ground), two, second)
            options.append((a, b) if a[0] <= b[0] else (b, a))
    return options


def _placed(options: Sequence[tuple[Option, Option]], chosen: Sequence[int], ground: Ground, look: Look) -> Bands:
    held: dict[str, tuple[Side, list[Run]]] = {}
    for option, which in zip(options, chosen, strict=True):
        _, side, run = option[which]
        held.setdefault(side.name, (side, []))[1].append(run)
    return place_bands([held[name] for name in sorted(held)], ground, look)
