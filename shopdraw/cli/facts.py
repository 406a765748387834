"""``shopdraw facts``: everything derived from a piece, as one JSON object on stdout.

Where the system can, a second process, split off once the piece is built, does what needs hardly a solid; each imports
what it needs itself.
"""

from __future__ import annotations

import json
import sys
from typing import Any

from shopdraw.cli.beside import Beside, Other, has_cores, may_split
from shopdraw.cli.built import Work, built
from shopdraw.wood.finding import Finding, Ruled


def print_facts(file: str, shop: str | None = None) -> int:
    """Prints the facts; always 0, whatever the findings say."""
    told = _told(built(file, shop), split=has_cores() and may_split(wholly=True))
    sys.stdout.write(json.dumps(told, indent=1, allow_nan=False) + "\n")
    return 0


def _told(work: Work, *, split: bool) -> dict[str, Any]:
    if not split:
        return _with_findings(work, _solids(work), *_further(None, work))
    with Beside(_further, work, split=True) as other:
        return _with_findings(work, _solids(work), *other.outcome())


def _solids(work: Work) -> Ruled:
    from shopdraw.check.gather import Part, ruled

    return ruled(work.piece.design, work.assembly, (Part.SOLIDS,))


def _further(_: Other | None, work: Work) -> tuple[Ruled, tuple[Finding, ...], dict[str, Any]]:
    from shopdraw.cli.work import further_findings
    from shopdraw.write.facts import facts

    return (*further_findings(work), facts(work.piece.design, work.assembly, (), work.shop.shop))


def _with_findings(
    work: Work, solids: Ruled, figures: Ruled, further: tuple[Finding, ...], told: dict[str, Any]
) -> dict[str, Any]:
    """All facts; the findings keep their place in the order of the keys."""
    from shopdraw.cli.found import with_findings
    from shopdraw.write.finding_facts import finding_facts

    found = with_findings(work, solids, figures, further).findings
    told["findings"] = [finding_facts(finding) for finding in found]
    return told
