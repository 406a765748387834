"""``shopdraw export``: the package of a piece, put in place whole.

Each part of the package has a producer, which writes its files into a folder of the part's name and returns the
findings of its layout ("no room for ..."); these stand in the manifest.
"""

from __future__ import annotations

import pickle
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import AbstractContextManager, ExitStack, contextmanager
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from shopdraw.cli.beside import Beside, Other, has_cores, may_split
from shopdraw.cli.built import Work, built
from shopdraw.cli.check import finding_line
from shopdraw.cli.package import write_package
from shopdraw.cli.progress import Progress
from shopdraw.cli.refused import refused
from shopdraw.cli.work import checked
from shopdraw.wood.finding import Finding
from shopdraw.write.finding_facts import finding_facts

if TYPE_CHECKING:
    from shopdraw.cli.drawing_files import Views

Producer = Callable[[Work, Path], Sequence[Finding]]
"""Writes one part of the package into the folder that it is given (which is there and empty)."""


def _cnc(work: Work, folder: Path) -> Sequence[Finding]:
    from shopdraw.cli.router_files import write_router_files

    return write_router_files(work, folder)


def _lists(work: Work, folder: Path) -> Sequence[Finding]:
    from shopdraw.cli.list_files import write_lists

    return write_lists(work, folder)


def _templates(work: Work, folder: Path) -> Sequence[Finding]:
    from shopdraw.cli.template_files import write_templates

    return write_templates(work, folder)


def _sheets(work: Work, folder: Path) -> Sequence[Finding]:
    from shopdraw.cli.drawing_files import write_sheets

    return write_sheets(work, folder)


def _drawing(work: Work, folder: Path, shared: Views | None = None) -> Sequence[Finding]:
    from shopdraw.cli.drawing_files import write_drawing

    return write_drawing(work, folder, shared)


def _judged_meanwhile(work: Work, second: Beside) -> Work:
    """The work as the second process judged it; the set of sheets is made meanwhile, and from what that one tells."""
    from shopdraw.cli.drawing_files import begin_set, finish_set

    begin_set(work)
    judged = replace(work, findings=second.hear())
    finish_set(judged, second.hear())
    return judged


def _tell_order(other: Other, work: Work) -> None:
    """Makes the pages of the order of assembly for the first process."""
    from shopdraw.cli.drawing_files import order_of

    other.tell(order_of(work))


def _views(work: Work, place: Path) -> AbstractContextManager[Views | None]:
    """A third process for the views of the drawing, which has the set of sheets: begun when that is made."""
    from shopdraw.cli.drawing_files import views_meanwhile

    return views_meanwhile(work, place / "drawing")


PRODUCERS: Mapping[str, Producer] = {
    "sheets": _sheets,
    "templates": _templates,
    "drawing": _drawing,
    "cnc": _cnc,
    "lists": _lists,
}
"""What writes each part; a producer imports its writers when it runs, so that one part doesn't wait for another's."""
_WORK = "work.pickle"
ASIDE = ("lists", "cnc")
"""Parts that a second process writes meanwhile, in its order, where there are two cores and sheets to make."""
DRAWN = ("sheets", "drawing")
"""Parts made of the set of sheets."""
Found = Mapping[str, Sequence[Finding]]
"""The findings of each part's layout."""


def _aside(kinds: Sequence[str]) -> tuple[str, ...]:
    """The parts that a second process writes: none where there is one core, or nothing else to do meanwhile."""
    parts = tuple(kind for kind in ASIDE if kind in kinds)
    return parts if len(parts) < len(kinds) and has_cores() else ()


def _written(other: Other, kinds: Sequence[str], drawn: bool, place: Path, work: Work | None) -> Found:
    """Parts written by the second process, which checks the piece first and tells what it found.

    Args:
        other: the first process, which makes the sheets meanwhile.
        kinds: the parts.
        drawn: whether it does, and waits for the order of assembly.
        place: the package's new files.
        work: the piece; None where it lies beside the new files.
    """
    here: Work = work if work is not None else pickle.loads((place.parent / _WORK).read_bytes())
    here = checked(here)
    other.tell(here.findings)
    if drawn:
        _tell_order(other, here)
    return {kind: PRODUCERS[kind](here, place / kind) for kind in kinds}


@contextmanager
def _second(work: Work, kinds: Sequence[str], place: Path, *, drawn: bool) -> Iterator[Beside | None]:
    """The second process, begun; None where it has nothing to write.

    Args:
        drawn: whether sheets are made here meanwhile.
    """
    if not kinds:
        yield None
        return
    split = may_split(wholly=True)
    if split:
        import shopdraw.cli.drawing_files  # noqa: F401  # what both processes need is imported once, before the split
    else:
        # By a file, not through the pipe: a pipe that nobody reads yet would hold up giving up.
        (place.parent / _WORK).write_bytes(pickle.dumps(work))
    with Beside(_written, kinds, drawn, place, work if split else None, split=split) as second:
        yield second


def export(
    file: str,
    folder: str,
    kinds: Sequence[str],
    producers: Mapping[str, Producer] = PRODUCERS,
    shop: str | None = None,
) -> int:
    """Writes the parts of the package; 0 whatever the findings say, with what must be fixed named on stderr.

    Args:
        file: the piece file.
        folder: where to write.
        kinds: the parts to write, in order.
        producers: what writes each part.
        shop: the shop file for this run, if one was named.
    Raises:
        Refused: the piece can't be read or built, or the folder can't be written; the folder is then as it was.
    """
    work = built(file, shop)
    for kind in kinds:
        if kind not in producers:
            raise refused(f"--only: {kind} isn't there yet; expected one of {', '.join(producers)}")
    progress = Progress(len(kinds), sys.stderr)
    judged = work

    def fill(place: Path) -> Mapping[str, Any]:
        nonlocal judged
        for kind in kinds:
            (place / kind).mkdir()
        if producers is PRODUCERS:
            judged, found = _by_several(work, kinds, place, progress)
        else:
            judged = checked(work)
            found = {}
            for kind in kinds:
                progress.begins(kind)
                found[kind] = producers[kind](judged, place / kind)
                progress.ends()
        return {
            "piece": work.piece.design.piece.title,
            "csv": {"separator": work.shop.shop.habit.separator, "decimal": work.shop.shop.habit.decimal},
            "must_fix": [finding_facts(finding) for finding in judged.must_fix],
            "findings": [finding_facts(finding) for kind in kinds for finding in found[kind]],
        }

    try:
        written = write_package(Path(folder), kinds, fill)
    finally:
        progress.wiped()
    for finding in judged.must_fix:
        sys.stderr.write(finding_line(finding) + "\n")
    sys.stdout.write(f"{len(written)} files in {folder}\n")
    return 0


def _by_several(work: Work, kinds: Sequence[str], place: Path, progress: Progress) -> tuple[Work, Found]:
    """Checks the piece and writes its parts, each in the process that has the time; left early, all are ended.

    Returns:
        The work with its findings, and what each part's layout found.
    """
    aside = _aside(kinds)
    drawn = bool(set(DRAWN) & set(kinds))
    progress.begins(kinds[0])
    found: dict[str, Sequence[Finding]] = {}
    with ExitStack() as others:
        second = others.enter_context(_second(work, aside, place, drawn=drawn))
        judged = _judged(work, second, drawn=drawn)
        third: Views | None = None
        for kind in kinds:
            if kind != kinds[0]:
                progress.begins(kind)
            if kind in aside:
                continue
            if "drawing" in kinds and third is None and kind in DRAWN:
                third = others.enter_context(_views(judged, place))
            if kind == "drawing" and third is not None:
                found[kind] = _drawing(judged, place / kind, third)
            else:
                found[kind] = PRODUCERS[kind](judged, place / kind)
            progress.ends()
        if third is not None:
            third.other.outcome()
        if second is not None:
            found |= second.outcome()
            for _ in aside:
                progress.ends()
    return judged, found


def _judged(work: Work, second: Beside | None, *, drawn: bool) -> Work:
    """The work with what is wrong with it.

    Args:
        second: the process that finds it, if there is one.
        drawn: whether the set of sheets is wanted and made meanwhile.
    """
    if second is None:
        return checked(work)
    return _judged_meanwhile(work, second) if drawn else replace(work, findings=second.hear())
