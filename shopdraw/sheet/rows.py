"""Which side and which row each dimension stands on. Paper mm."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from shopdraw.sheet.box import words_size
from shopdraw.sheet.fact import Fact, Rank
from shopdraw.sheet.figure_spot import LEAST_ARROWED, reach_of_row
from shopdraw.sheet.ground import Ground
from shopdraw.sheet.look import Look
from shopdraw.sheet.side import COST_OF_OTHER_SIDE, Run, Side, Span, cost

COST_OF_FORBIDDEN_SIDE = 1e6
"""Of a side other than that which a person chose: more than anything else can cost."""
BETWEEN_ROWS = 1.0
"""Least free paper between what two rows hold."""


def runs_of(
    facts: Iterable[Fact], points: Mapping[str, tuple[float, float]], words: Mapping[str, str], side: Side
) -> list[Run]:
    """Facts as runs along a side: chains together, running ones of a chain together, the rest alone.

    Args:
        facts: that belong to one direction.
        points: paper places of features, by `fact.id + "a"` and `"b"`.
        words: figures by fact id.
        side: whose positions are counted.
    """
    grouped: dict[str, list[Span]] = {}
    for fact in facts:
        key = f"{fact.kind} {fact.chain}" if fact.chain else fact.id
        span = Span(fact, side.place(points[fact.id + "a"]), side.place(points[fact.id + "b"]), words[fact.id])
        grouped.setdefault(key, []).append(span)
    return [Run(key, tuple(sorted(spans, key=_along))) for key, spans in grouped.items()]


def _along(span: Span) -> tuple[float, float, str]:
    return span.low, span.high, span.fact.id


def price_of_side(side: Side, run: Run, ground: Ground) -> float:
    """What a run costs on a side: its extension lines, what they cross, and that its facts prefer another side."""
    return sum(
        cost(side, span, ground) + (_of_other_side(span.fact) if span.fact.side not in ("", side.name) else 0.0)
        for span in run.spans
    )


def _of_other_side(fact: Fact) -> float:
    return COST_OF_FORBIDDEN_SIDE if fact.pinned else COST_OF_OTHER_SIDE


def stack_rows(runs: Iterable[Run], look: Look) -> list[list[Run]]:
    """Runs in rows, nearest first: what lies within another stands nearer, running ones beyond chains, overalls
    outermost.

    A run goes to the row it asks for or the next one where its interval, with its figure, is free and nothing that
    it reaches over stands further out.
    """
    rows: list[list[Run]] = []
    for run in sorted(runs, key=lambda r: (r.overall, r.running, r.row, r.high - r.low, r.low, r.key)):
        last = run.overall or run.running
        least = len(rows) if last and rows and _over_any(run, rows) else max(run.row - 1, 0)
        asked = run.row - 1 if run.pinned else 0
        inner = [i + 1 for i, row in enumerate(rows) if any(_within(other, run) for other in row)]
        least = max([least, asked, *inner])
        low, high = _room(run, look)
        while least < len(rows) and any(low < _room(o, look)[1] and high > _room(o, look)[0] for o in rows[least]):
            least += 1
        while len(rows) <= least:
            rows.append([])
        rows[least].append(run)
    return [row for row in rows if row]


def row_distances(
    rows: Sequence[Sequence[Run]], side: Side, look: Look, grown: Mapping[int, tuple[float, float]]
) -> list[float]:
    """How far out each row's line stands.

    Args:
        rows: nearest first.
        side: of the view.
        look: least distances.
        grown: by row, how far its figures were found to reach inwards and outwards.
    """
    distances: list[float] = []
    before = 0.0
    for i, row in enumerate(rows):
        inner = outer = 0.0
        for run in row:
            run_inner, run_outer = reach_of_row(side, run, look)
            inner, outer = max(inner, run_inner), max(outer, run_outer)
        more_inner, more_outer = grown.get(i, (0.0, 0.0))
        inner, outer = max(inner, more_inner), max(outer, more_outer)
        if not distances:
            distances.append(max(side.start, side.base + inner + BETWEEN_ROWS))
        else:
            distances.append(distances[-1] + max(look.next_row, before + inner + BETWEEN_ROWS))
        distances[-1] += max((run.offset for run in row), default=0.0)
        before = outer
    return distances


def outer_lines(rows: Sequence[Sequence[Run]], index: int) -> tuple[float, ...]:
    """Where extension lines of rows further out pass a row."""
    places = {
        round(place, 6)
        for row in rows[index + 1 :]
        for run in row
        for span in run.spans
        for place in (span.a[0], span.b[0])
    }
    return tuple(sorted(places))


def by_rank(fact: Fact) -> tuple[Rank, str]:
    """The fixed order in which facts are placed."""
    return fact.rank, fact.id


def _within(inner: Run, outer: Run) -> bool:
    """Whether one run lies along another and is shorter, so that it must stand nearer."""
    longer = outer.high - outer.low > inner.high - inner.low + 1e-6
    return longer and inner.low < outer.high - 1e-6 and inner.high > outer.low + 1e-6


def _over_any(run: Run, rows: Sequence[Sequence[Run]]) -> bool:
    return any(_within(other, run) or not _apart(other, run) for row in rows for other in row)


def _apart(one: Run, two: Run) -> bool:
    return one.high <= two.low + 1e-6 or two.high <= one.low + 1e-6


def _room(run: Run, look: Look) -> tuple[float, float]:
    """The interval of a run with the room that a figure past its end takes, and a little air."""
    low, high = run.low - 1.0, run.high + 1.0
    if len(run.spans) == 1 and not run.running:
        width = words_size(run.spans[0].words, look.figure)[0]
        if run.high - run.low < max(width, LEAST_ARROWED):
            return low - 2 * LEAST_ARROWED, high + LEAST_ARROWED + width
    return low, high
