"""``shopdraw export``: the package of a piece, put in place whole.

Each part of the package has a producer, which writes its files into a folder of the part's name and returns the
findings of its layout ("no room for ..."); these stand in the manifest.
"""

from __future__ import annotations

import multiprocessing
import os
import pickle
import sys
from collections.abc import Callable, Mapping, Sequence
from contextlib import nullcontext
from pathlib import Path
from typing import Any

from shopdraw.cli.check import finding_line
from shopdraw.cli.package import write_package
from shopdraw.cli.progress import Progress
from shopdraw.cli.refused import refused
from shopdraw.cli.work import Work, work_on
from shopdraw.wood.finding import Finding
from shopdraw.write.facts import finding_facts

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


def _drawing(work: Work, folder: Path) -> Sequence[Finding]:
    from shopdraw.cli.drawing_files import write_drawing

    return write_drawing(work, folder)


PRODUCERS: Mapping[str, Producer] = {
    "sheets": _sheets, "templates": _templates, "drawing": _drawing, "cnc": _cnc, "lists": _lists
}
"""What writes each part; a producer imports its writers when it runs, so that one part doesn't wait for another's."""
_WORK = "work.pickle"
ASIDE = ("templates", "cnc", "lists")
"""Parts that a second process writes while this one makes the sheets, where there are two cores and sheets to make."""


def _aside(kinds: Sequence[str]) -> tuple[str, ...]:
    """The parts that a second process writes: none where there is one core, or nothing else to do meanwhile."""
    parts = tuple(kind for kind in kinds if kind in ASIDE)
    return parts if len(parts) < len(kinds) and (os.cpu_count() or 1) > 1 else ()


def _written(kind: str, place: Path) -> Sequence[Finding]:
    """One part, written by the second process; the piece lies beside the package's new files."""
    work: Work = pickle.loads((place.parent / _WORK).read_bytes())
    return PRODUCERS[kind](work, place / kind)


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
    work = work_on(file, shop)
    for kind in kinds:
        if kind not in producers:
            raise refused(f"--only: {kind} isn't there yet; expected one of {', '.join(producers)}")
    progress = Progress(len(kinds), sys.stderr)

    aside = _aside(kinds) if producers is PRODUCERS else ()

    def fill(place: Path) -> Mapping[str, Any]:
        for kind in kinds:
            (place / kind).mkdir()
        found: dict[str, Sequence[Finding]] = {}
        if aside:
            # By a file, not through the pool's pipe: a pipe that nobody reads yet would hold up giving up.
            (place.parent / _WORK).write_bytes(pickle.dumps(work))
        # Left early (a person gave up, a part can't be written), the pool ends its process at once.
        with multiprocessing.get_context("spawn").Pool(1) if aside else nullcontext() as second:
            waiting = {kind: second.apply_async(_written, (kind, place)) for kind in aside} if second else {}
            for kind in kinds:
                progress.begins(kind)
                if kind not in waiting:
                    found[kind] = producers[kind](work, place / kind)
                    progress.ends()
            for kind, part in waiting.items():
                found[kind] = part.get()
                progress.ends()
        layout = [finding for kind in kinds for finding in found[kind]]
        return {
            "piece": work.piece.design.piece.title,
            "must_fix": [finding_facts(finding) for finding in work.must_fix],
            "findings": [finding_facts(finding) for finding in layout],
        }

    try:
        written = write_package(Path(folder), kinds, fill)
    finally:
        progress.wiped()
    for finding in work.must_fix:
        sys.stderr.write(finding_line(finding) + "\n")
    sys.stdout.write(f"{len(written)} files in {folder}\n")
    return 0
