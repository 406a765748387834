"""``shopdraw check``: the findings of a piece, and an exit code that says whether something must be fixed."""

from __future__ import annotations

import json
import sys

from shopdraw.cli.built import Work
from shopdraw.cli.work import work_on
from shopdraw.wood.finding import Finding, Severity
from shopdraw.write.finding_facts import finding_facts

EXIT_MUST_FIX = 1
_ORDER = {severity: place for place, severity in enumerate(Severity)}


def check(file: str, *, as_json: bool, shop: str | None = None) -> int:
    """Prints the findings, worst first; 1 where one that nobody silenced must be fixed, else 0."""
    work = work_on(file, shop)
    if as_json:
        told = {"format": 1, "findings": [finding_facts(finding) for finding in work.findings]}
        sys.stdout.write(json.dumps(told, indent=1, allow_nan=False) + "\n")
    else:
        sys.stdout.write("\n".join(report(work)) + "\n")
    return EXIT_MUST_FIX if work.must_fix else 0


def report(work: Work) -> tuple[str, ...]:
    """One line for each finding and one that sums up."""
    ordered = sorted(work.findings, key=lambda finding: _ORDER[finding.severity])
    open_ones = [finding for finding in ordered if finding.silenced is None]
    counts = [sum(finding.severity is severity for finding in open_ones) for severity in Severity]
    sums = ", ".join(f"{count} {severity.value}" for count, severity in zip(counts, Severity, strict=True))
    silenced = len(ordered) - len(open_ones)
    return (*map(finding_line, ordered), sums + (f", {silenced} silenced" if silenced else ""))


def finding_line(finding: Finding) -> str:
    """A finding in one line: how much it matters, its code, where, and the sentence."""
    state = f" (silenced: {finding.silenced})" if finding.silenced is not None else ""
    where = f" {', '.join(finding.where)}" if finding.where else ""
    return f"{finding.severity.value}{state} {finding.code}{where}: {finding.message}"
