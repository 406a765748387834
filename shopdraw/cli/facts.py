"""``shopdraw facts``: everything derived from a piece, as one JSON object on stdout."""

from __future__ import annotations

import json
import sys

from shopdraw.cli.work import work_on
from shopdraw.write.facts import facts


def print_facts(file: str, shop: str | None = None) -> int:
    """Prints the facts; always 0, whatever the findings say."""
    work = work_on(file, shop)
    told = facts(work.piece.design, work.assembly, work.findings)
    sys.stdout.write(json.dumps(told, indent=1, allow_nan=False) + "\n")
    return 0
