"""A finding as plain values: a part of the contract of `facts`."""

from __future__ import annotations

from typing import Any

from shopdraw.wood.finding import Finding


def finding_facts(finding: Finding) -> dict[str, Any]:
    """A finding as `facts`, `check --json` and the manifest tell it."""
    return {
        "code": finding.code,
        "severity": finding.severity.value,
        "where": list(finding.where),
        "message": finding.message,
        "value": finding.value,
        "limit": finding.limit,
        "unit": finding.unit,
        "basis": finding.basis,
        "silenced": finding.silenced,
        "right": None if finding.right is None else {"address": finding.right[0], "value": finding.right[1]},
    }
