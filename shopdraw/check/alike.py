"""Findings that say the same of several boards, told once with all their labels."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding


def told_together(assembly: Assembly, found: Sequence[Finding]) -> tuple[Finding, ...]:
    """The findings; those that start with a board's label and go on in the same words become one.

    "1L: a hole ..." and "1R: a hole ..." become "1L, 1R: a hole ...", where the first one stood and with the places of
    both. What a person has silenced stays apart from what isn't.
    """
    groups: dict[object, list[Finding]] = {}
    for place, finding in enumerate(found):
        words = _words_after_label(assembly, finding)
        key = place if words is None else (finding.code, finding.severity, words, finding.silenced, finding.right)
        groups.setdefault(key, []).append(finding)
    return tuple(_as_one(assembly, alike) for alike in groups.values())


def _words_after_label(assembly: Assembly, finding: Finding) -> str | None:
    """What the message says of a board, after its label; None where it says so of no single board."""
    if not finding.where or not assembly.has(finding.where[0]):
        return None
    label, separator, words = finding.message.partition(": ")
    return words if separator and label == assembly.board(finding.where[0]).label else None


def _as_one(assembly: Assembly, alike: Sequence[Finding]) -> Finding:
    first = alike[0]
    if len(alike) == 1:
        return first
    labels = dict.fromkeys(assembly.board(finding.where[0]).label for finding in alike)
    words = _words_after_label(assembly, first)
    where = tuple(dict.fromkeys(place for finding in alike for place in finding.where))
    return replace(first, where=where, message=f"{', '.join(labels)}: {words}")
