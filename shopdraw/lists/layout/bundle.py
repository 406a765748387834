"""What the searches lay out: single parts, and strips of parts that stay together in order."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from shopdraw.lists.layout.answer import Misfit, Way
from shopdraw.lists.layout.job import BoardJob, Job, Piece, Wanted
from shopdraw.lists.layout.tree import Leaf, Node, Split

_NEAR = 1e-6


@dataclass(frozen=True, slots=True)
class Bundle:
    """A part, or the parts of one strip with the kerfs between them, as one rectangle.

    Attributes:
        parts: in the strip's order.
        way: how the strip is cut apart: crosscut (parts end to end) or rip (parts side by side).
        length, width: of the whole, mm.
        free: it may be turned.
    """

    parts: tuple[Wanted, ...]
    way: Way
    length: float
    width: float
    free: bool

    def node(self, turned: bool) -> Node:
        """The bundle as a place in a tree of cuts."""
        if len(self.parts) == 1:
            part = self.parts[0]
            return Leaf(part.id, part.width, part.length, True) if turned else Leaf(part.id, part.length, part.width)
        return Split(self.way, tuple(Leaf(part.id, part.length, part.width) for part in self.parts))


def prepared(job: Job) -> tuple[Job, tuple[Bundle, ...], tuple[Misfit, ...]]:
    """The job that can be laid out, its bundles, and what had to be left out or taken apart."""
    misfits: list[Misfit] = []
    fitting: list[Wanted] = []
    for part in job.parts:
        reason = _why_not(part, job)
        if reason:
            misfits.append(Misfit(part.id, reason))
        else:
            fitting.append(part)
    bundles: list[Bundle] = []
    strips: dict[str, list[Wanted]] = {}
    for part in fitting:
        strips.setdefault(part.strip or f"\0{part.id}", []).append(part)
    kept: dict[str, Wanted] = {part.id: part for part in fitting}
    for name, parts in strips.items():
        bundle = _bundle(parts, job)
        if bundle is not None:
            bundles.append(bundle)
            continue
        runs = _runs(parts, job)
        told = ", ".join(" + ".join(part.label or part.id for part in run.parts) for run in runs)
        misfits.append(Misfit(f"strip {name}", f"too long for any board or sheet in one; cut in order as {told}"))
        for number, run in enumerate(runs, 1):
            named = f"{name} {number}" if len(run.parts) > 1 else ""
            kept.update((part.id, replace(part, strip=named)) for part in run.parts)
            bundles.append(replace(run, parts=tuple(kept[part.id] for part in run.parts)))
    return replace(job, parts=tuple(kept.values())), tuple(bundles), tuple(misfits)


def _bundle(parts: Sequence[Wanted], job: Job) -> Bundle | None:
    """The parts of one strip as one rectangle that fits somewhere, or None."""
    if len(parts) == 1:
        return _single(parts[0])
    kerfs = job.kerf * (len(parts) - 1)
    across = Bundle(
        tuple(parts), "rip", max(part.length for part in parts), sum(part.width for part in parts) + kerfs, free=False
    )
    along = Bundle(
        tuple(parts), "crosscut", sum(part.length for part in parts) + kerfs, max(part.width for part in parts), False
    )
    choices = (along,) if isinstance(job, BoardJob) else (across, along)
    return next((one for one in choices if _fits_somewhere(one.length, one.width, job)), None)


def _runs(parts: Sequence[Wanted], job: Job) -> list[Bundle]:
    """A strip that fits nowhere, in its order in as few shorter strips as may be."""
    runs: list[Bundle] = []
    rest = list(parts)
    while rest:
        lengths = range(len(rest), 0, -1)
        run = next(found for found in (_bundle(rest[:count], job) for count in lengths) if found is not None)
        runs.append(run)
        rest = rest[len(run.parts) :]
    return runs


def _single(part: Wanted) -> Bundle:
    return Bundle((part,), "crosscut", part.length, part.width, part.free)


def spaces_of(piece: Piece, job: Job) -> tuple[tuple[float, float], ...]:
    """The clear stretches of a board between its trims and defects: from and to, mm."""
    start, _, end, _ = job.clear(piece)
    stretches: list[tuple[float, float]] = []
    at = start
    for bad, good in sorted(piece.defects):
        if bad - at > _NEAR:
            stretches.append((at, min(bad, end)))
        at = max(at, good)
    if end - at > _NEAR:
        stretches.append((at, end))
    return tuple(stretches)


def _fits_somewhere(length: float, width: float, job: Job) -> bool:
    for piece in job.stock:
        _, y0, _, y1 = job.clear(piece)
        wide = piece.count != 0 and width <= y1 - y0 + _NEAR
        if wide and any(length <= end - start + _NEAR for start, end in spaces_of(piece, job)):
            return True
    return False


def _why_not(part: Wanted, job: Job) -> str:
    """Why a part fits nowhere: by how much, and what would be long or wide enough; "" where it fits."""
    turned = part.free and not isinstance(job, BoardJob)
    if _fits_somewhere(part.length, part.width, job) or (turned and _fits_somewhere(part.width, part.length, job)):
        return ""
    clear = [
        (max((end - start for start, end in spaces_of(piece, job)), default=0.0), y1 - y0, piece)
        for piece in job.stock
        if piece.count != 0
        for _, y0, _, y1 in (job.clear(piece),)
    ]
    if not clear:
        return f"{part.length:.1f} × {part.width:.1f} mm: there is nothing to cut it from"
    along, across, piece = min(
        clear, key=lambda one: max(part.length - one[0], 0.0) + max(part.width - one[1], 0.0)
    )
    parts = []
    if part.length > along:
        parts.append(f"{part.length - along:.1f} mm too long")
    if part.width > across:
        parts.append(f"{part.width - across:.1f} mm too wide")
    return (
        f"{part.length:.1f} × {part.width:.1f} mm is {' and '.join(parts) or 'too large'} for {piece.called}, "
        f"of which {along:.1f} × {across:.1f} is clear"
    )


def by_size(bundles: Iterable[Bundle]) -> list[list[Bundle]]:
    """Bundles of one size gathered, the largest first; within a size as they came."""
    groups: dict[tuple[float, float, bool], list[Bundle]] = {}
    for bundle in bundles:
        groups.setdefault((round(bundle.length, 6), round(bundle.width, 6), bundle.free), []).append(bundle)
    return [groups[key] for key in sorted(groups, key=lambda key: (-key[0], -key[1], key[2]))]
