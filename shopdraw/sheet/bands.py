"""Rows of dimensions round a view: their lines first, then each figure where it is free. Paper mm."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.dimension import Dimension
from shopdraw.sheet.figure_spot import LEVELS, Row, bare, running_spots, spots, stepped_reach
from shopdraw.sheet.ground import Ground, What
from shopdraw.sheet.look import Look
from shopdraw.sheet.rows import by_rank, outer_lines, row_distances, stack_rows
from shopdraw.sheet.side import Run, Side, Span
from shopdraw.sheet.trial import Tried, fits, stand, tried, words_free

PASSES = 8
"""Rows move apart where figures had to leave their lines; after this many passes what still fails is told."""


@dataclass(frozen=True, slots=True)
class Bands:
    """Dimensions placed on rows, and the facts that found no room."""

    dimensions: tuple[Dimension, ...]
    failed: tuple[str, ...]
    ground: Ground


@dataclass(frozen=True, slots=True)
class _Post:
    """One span on its row, and the row's number on its side."""

    span: Span
    row: Row
    side: int
    index: int


def place_bands(sides: Sequence[tuple[Side, Sequence[Run]]], under: Ground, look: Look) -> Bands:
    """Stands runs on rows and finds each figure's spot.

    Args:
        sides: each side with its runs.
        under: the view's own lines and words.
        look: heights and distances.
    Returns:
        Placed dimensions in paper mm, ids of facts without room, and the ground with all of it.
    """
    ranks = {span.fact.id: span.fact.rank for _, runs in sides for run in runs for span in run.spans}
    grown: dict[tuple[int, int], tuple[float, float]] = {}
    dropped: frozenset[str] = frozenset()
    for number in range(PASSES):
        stacks = [(side, stack_rows(_without(runs, dropped), look)) for side, runs in sides]
        placed, failed, ground, reaches = _one_pass(stacks, grown, under, look, number)
        wider = {
            key: (max(new[0], grown.get(key, (0.0, 0.0))[0]), max(new[1], grown.get(key, (0.0, 0.0))[1]))
            for key, new in reaches.items()
        }
        settled = all(wider[key] == grown.get(key, (0.0, 0.0)) for key in wider)
        if settled and not failed:
            break
        if failed and (settled or number >= PASSES // 2) and number + 1 < PASSES:
            # What matters least gives way first: it may be what stands in the others' way.
            least = max(ranks[fact] for fact in failed)
            dropped = dropped | frozenset(fact for fact in failed if ranks[fact] == least)
            grown = {}
        else:
            grown = wider
    return Bands(tuple(placed), tuple(sorted(dropped | frozenset(failed))), ground)


def _without(runs: Sequence[Run], dropped: frozenset[str]) -> Iterator[Run]:
    for run in runs:
        spans = tuple(span for span in run.spans if span.fact.id not in dropped)
        if spans:
            yield Run(run.key, spans)


def _one_pass(
    stacks: Sequence[tuple[Side, list[list[Run]]]],
    grown: Mapping[tuple[int, int], tuple[float, float]],
    under: Ground,
    look: Look,
    number: int,
) -> tuple[list[Dimension], list[str], Ground, dict[tuple[int, int], tuple[float, float]]]:
    """All rows once: lines, then the figures that stand centred, then the others."""
    ground = Ground(under)
    posts: list[_Post] = []
    running: list[tuple[_Post, tuple[float, ...]]] = []
    for place, (side, rows) in enumerate(stacks):
        distances = row_distances(rows, side, look, {i: g for (s, i), g in grown.items() if s == place})
        for index, (row, out) in enumerate(zip(rows, distances, strict=True)):
            for run in row:
                held = [_Post(span, Row(side, out, run), place, index) for span in run.spans]
                if run.running:
                    running.append((held[0], outer_lines(rows, index)))
                else:
                    posts.extend(held)
                for post in held:
                    stand(tried(bare(post.span, post.row, look), look), ground)
    posts.sort(key=lambda p: (by_rank(p.span.fact)[0], p.side, p.index, p.span.low, p.span.fact.id))
    found: dict[str, Tried] = {}
    failed = _place_running(running, ground, look, found)
    waiting = [post for post in posts if not _try_spots(post, ground, look, found, 0, 1)]
    failed += [post.span.fact.id for post in waiting if not _try_spots(post, ground, look, found, 2, 4)]
    reaches = _reaches(posts, running, found)
    _ask_for_room(posts, found, reaches, look, number)
    ordered = sorted(posts + [post for post, _ in running], key=lambda p: (p.side, p.index, p.span.low, p.span.fact.id))
    ids = [span.fact.id for post in ordered for span in (post.row.run.spans if post.row.run.running else (post.span,))]
    return _tidied([found[i].dimension for i in ids if i in found]), failed, ground, reaches


def _try_spots(post: _Post, ground: Ground, look: Look, found: dict[str, Tried], first: int, last: int) -> bool:
    for step, dimension in spots(post.span, post.row, look):
        if first <= step <= last and words_free(dimension, ground):
            attempt = tried(dimension, look)
            if fits(attempt, ground):
                stand(attempt, ground)
                found[post.span.fact.id] = attempt
                return True
    return False


def _place_running(
    running: Sequence[tuple[_Post, tuple[float, ...]]], ground: Ground, look: Look, found: dict[str, Tried]
) -> list[str]:
    failed: list[str] = []
    for post, fixed in running:
        friends = frozenset(span.fact.id for span in post.row.run.spans)
        for dimension in running_spots(post.row, look, fixed):
            attempt = tried(dimension, look)
            if fits(attempt, ground, friends):
                stand(attempt, ground)
                found[dimension.id] = attempt
            else:
                failed.append(dimension.id)
    return failed


def _reaches(
    posts: Sequence[_Post], running: Sequence[tuple[_Post, tuple[float, ...]]], found: Mapping[str, Tried]
) -> dict[tuple[int, int], tuple[float, float]]:
    """By side and row, how far its figures and leaders reach inwards and outwards of its line."""
    reaches: dict[tuple[int, int], tuple[float, float]] = {}
    for post in (*posts, *(post for post, _ in running)):
        for span in post.row.run.spans:
            attempt = found.get(span.fact.id)
            if attempt is None:
                continue
            points = [p for stroke in attempt.strokes if stroke.what is What.LEADER for p in stroke.line]
            if attempt.box is not None:
                points.extend(attempt.box.corners())
            outs = [post.row.side.place(p)[1] - post.row.out for p in points]
            inner, outer = reaches.get((post.side, post.index), (0.0, 0.0))
            reaches[post.side, post.index] = (
                round(max(inner, -min(outs, default=0.0)), 6), round(max(outer, max(outs, default=0.0)), 6),
            )
    return reaches


def _ask_for_room(
    posts: Sequence[_Post], found: Mapping[str, Tried], reaches: dict[tuple[int, int], tuple[float, float]], look: Look,
    number: int,
) -> None:
    """Widens the rows of figures that found no place, one line of words more with each pass, up to all levels."""
    for post in posts:
        if post.span.fact.id not in found:
            inner, outer = reaches.get((post.side, post.index), (0.0, 0.0))
            wanted = round(stepped_reach(post.span, post.row, look, min(number, LEVELS - 1)), 6)
            reaches[post.side, post.index] = (inner, max(outer, wanted))


def _tidied(dimensions: list[Dimension]) -> list[Dimension]:
    """The same, each extension line that lies whole under a longer one left out."""
    feet = [(d, end, _foot(d, end)) for d in dimensions for end in (0, 1)]
    covered: set[tuple[str, int]] = set()
    for d, end, (place, near, far) in feet:
        for other, other_end, (at, begin, finish) in feet:
            if (other.id, other_end) == (d.id, end) or (other.id, other_end) in covered:
                continue
            same_way = abs(d.direction_deg - other.direction_deg) < 1e-6
            if same_way and abs(place - at) < 0.02 and (far - near) * (finish - begin) > 0:
                outward = far > near
                sign = 1.0 if outward else -1.0
                if sign * (near - begin) >= -0.02 and sign * (finish - far) >= -0.02:
                    covered.add((d.id, end))
                    break
    return [
        _with_extension(d, (d.id, 0) not in covered, (d.id, 1) not in covered) for d in dimensions
    ]


def _foot(dimension: Dimension, end: int) -> tuple[float, float, float]:
    """An extension line: its place along what is measured, where it starts and where it meets the dimension line."""
    radians = math.radians(dimension.direction_deg)
    c, s = math.cos(radians), math.sin(radians)
    x, y = dimension.b if end else dimension.a
    return x * c + y * s, y * c - x * s, dimension.line[1] * c - dimension.line[0] * s


def _with_extension(dimension: Dimension, a: bool, b: bool) -> Dimension:
    return dimension if a and b else replace(dimension, extension=(a, b))
