"""The judge of layouts. It shares nothing with the searches: it saws the layout as printed and looks at the pieces.

From each whole board or sheet the cuts are made in their order; each must run from edge to edge of a piece that is
there. Every part must be one of the pieces that are then on the bench, at its place, of its size, its grain as asked.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from shopdraw.lists.layout.answer import CutUp, Laid, Layout
from shopdraw.lists.layout.job import BoardJob, Job, Wanted

NEAR_MM = 1e-4
_Box = tuple[float, float, float, float]


def faults_of_layout(layout: Layout) -> tuple[str, ...]:
    """What is wrong with a layout, a sentence each; empty when it can be cut as it is printed."""
    job = layout.job
    wanted = {part.id: part for part in job.parts}
    found: list[str] = [*_counts(layout, wanted), *_stock(layout), *_strips(layout)]
    for number, cut in enumerate(layout.cut_up, 1):
        name = f"{cut.piece.id}, number {number}"
        found += [f"{name}: {fault}" for fault in (*_places(cut, job, wanted), *_sawn(cut, job))]
    return tuple(found)


def _counts(layout: Layout, wanted: dict[str, Wanted]) -> Iterator[str]:
    """Each part of the job lies in the layout once."""
    laid = [one.part for cut in layout.cut_up for one in cut.laid]
    for part in wanted:
        if laid.count(part) != 1:
            yield f'part "{part}" is there {laid.count(part)} times; it must be there once'
    for part in dict.fromkeys(laid):
        if part not in wanted:
            yield f'part "{part}" is in the layout and not in the job'


def _stock(layout: Layout) -> Iterator[str]:
    """No more of a board or sheet is used than there is, and only what the job offers."""
    for piece in layout.job.stock:
        used = sum(cut.piece == piece for cut in layout.cut_up)
        if piece.count is not None and used > piece.count:
            yield f'stock "{piece.id}" is used {used} times; there are {piece.count}'
    for cut in layout.cut_up:
        if cut.piece not in layout.job.stock:
            yield f'stock "{cut.piece.id}" is in the layout and not in the job'


def _strips(layout: Layout) -> Iterator[str]:
    """Parts of one strip lie on one piece, one behind the other in the job's order, a kerf between."""
    where = {one.part: (number, one) for number, cut in enumerate(layout.cut_up) for one in cut.laid}
    for name in dict.fromkeys(part.strip for part in layout.job.parts if part.strip):
        row = [where[part.id] for part in layout.job.parts if part.strip == name and part.id in where]
        for (piece, one), (other_piece, other) in pairwise(row):
            kerf = layout.job.kerf
            behind = _near(other.x, one.x + one.length + kerf) and _near(other.y, one.y)
            above = _near(other.y, one.y + one.width + kerf) and _near(other.x, one.x)
            if piece != other_piece or not (behind or above):
                yield f'strip "{name}": {other.part} doesn\'t lie behind {one.part}'


def _places(cut: CutUp, job: Job, wanted: dict[str, Wanted]) -> Iterator[str]:
    """Sizes, grain, inside the clear part, clear of defects and of each other by a kerf."""
    clear = job.clear(cut.piece)
    for one in cut.laid:
        part = wanted.get(one.part)
        if part is not None:
            sizes = (part.width, part.length) if one.turned else (part.length, part.width)
            if not (_near(one.length, sizes[0]) and _near(one.width, sizes[1])):
                yield f"{one.part} is {one.length} × {one.width}; it must be {sizes[0]} × {sizes[1]}"
            if one.turned and (not part.free or isinstance(job, BoardJob)):
                yield f"{one.part} lies turned and isn't free to"
        x0, y0, x1, y1 = _box(one)
        if x0 < clear[0] - NEAR_MM or y0 < clear[1] - NEAR_MM or x1 > clear[2] + NEAR_MM or y1 > clear[3] + NEAR_MM:
            yield f"{one.part} reaches out of the clear part of the piece"
        for start, end in cut.piece.defects:
            if x0 < end - NEAR_MM and x1 > start + NEAR_MM:
                yield f"{one.part} lies in the defect from {start} to {end}"
    for i, one in enumerate(cut.laid):
        for other in cut.laid[i + 1 :]:
            a, b = _box(one), _box(other)
            gap = max(b[0] - a[2], a[0] - b[2], b[1] - a[3], a[1] - b[3])
            if gap < job.kerf - NEAR_MM:
                what = f"overlap by {-gap:g}" if gap < 0 else f"are {gap:g} apart"
                yield f"{one.part} and {other.part} {what}; the kerf of {job.kerf:g} must lie between"


def _sawn(cut: CutUp, job: Job) -> Iterator[str]:
    """Makes the cuts in order; then each part must be a piece of its own."""
    bench: list[_Box] = [(0.0, 0.0, cut.piece.length, cut.piece.width)]
    for number, saw in enumerate(cut.cuts, 1):
        rip = saw.way == "rip"
        across = _piece_under(bench, rip, saw.at, job.kerf, saw.start, saw.end)
        if across is None:
            yield f"cut {number} ({saw.way} at {saw.at:g}) doesn't run from edge to edge of any piece"
            return
        bench.remove(across)
        x0, y0, x1, y1 = across
        halves = (
            [(x0, y0, x1, saw.at), (x0, saw.at + job.kerf, x1, y1)]
            if rip
            else [(x0, y0, saw.at, y1), (saw.at + job.kerf, y0, x1, y1)]
        )
        bench += [box for box in halves if box[2] - box[0] > NEAR_MM and box[3] - box[1] > NEAR_MM]
    for one in cut.laid:
        if not any(_same(_box(one), box) for box in bench):
            yield f"{one.part} isn't a piece of its own after the last cut"


def _piece_under(
    bench: Sequence[_Box], rip: bool, at: float, kerf: float, start: float, end: float
) -> _Box | None:
    """The piece on the bench that the kerf crosses from edge to edge."""
    for box in bench:
        low, high = (box[1], box[3]) if rip else (box[0], box[2])
        edges = (box[0], box[2]) if rip else (box[1], box[3])
        meets = at < high - NEAR_MM and at + kerf > low - NEAR_MM and (kerf > 0 or at > low + NEAR_MM)
        if meets and _near(edges[0], start) and _near(edges[1], end):
            return box
    return None


def _box(one: Laid) -> _Box:
    return one.x, one.y, one.x + one.length, one.y + one.width


def _same(one: _Box, two: _Box) -> bool:
    return all(_near(a, b) for a, b in zip(one, two, strict=True))


def _near(one: float, two: float) -> bool:
    return abs(one - two) <= NEAR_MM
