"""A piece's findings put together from what two processes found; what finds them is imported elsewhere."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from shopdraw.check.gather import together, worded
from shopdraw.check.unknown_key import unknown_key
from shopdraw.cli.built import Work
from shopdraw.wood.finding import Finding, Ruled


def with_findings(work: Work, solids: Ruled, figures: Ruled, further: Sequence[Finding]) -> Work:
    """The same work with all findings, those of keys that mean nothing included."""
    keys = tuple(unknown_key(caution) for caution in (*work.piece.cautions, *work.shop.cautions))
    told = worded(work.piece.design, work.assembly, (*together(solids, figures), *further))
    return replace(work, findings=(*told, *keys))
