"""``shopdraw facts``: everything derived from a piece, as one JSON object on stdout.

Where the system can, a second process asks the rules that look at solids (`solids.py`); each imports what it needs
itself.
"""

from __future__ import annotations

import json
import sys
from typing import Any

from shopdraw.cli.solids import solids_judged


def print_facts(file: str, shop: str | None = None) -> int:
    """Prints the facts; always 0, whatever the findings say."""
    sys.stdout.write(json.dumps(_told(file, shop), indent=1, allow_nan=False) + "\n")
    return 0


def _told(file: str, shop: str | None) -> dict[str, Any]:
    """All facts; the findings keep their place in the order of the keys."""
    with solids_judged() as solids:
        from shopdraw.cli.built import built

        work = built(file, shop)
        solids.begin(work.assembly)
        from shopdraw.cli.found import with_findings
        from shopdraw.cli.work import further_findings
        from shopdraw.write.facts import facts
        from shopdraw.write.finding_facts import finding_facts

        figures, further = further_findings(work)
        told = facts(work.piece.design, work.assembly, (), work.shop.shop)
        found = with_findings(work, solids.found(), figures, further).findings
    told["findings"] = [finding_facts(finding) for finding in found]
    return told
