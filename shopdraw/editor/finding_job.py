"""What is wrong with a piece, as the command line tells it: rules, the shop's cutters, unknown keys. Knows no Qt."""

from __future__ import annotations

from pathlib import Path

from shopdraw.check.gather import findings
from shopdraw.check.unknown_key import unknown_key
from shopdraw.cnc.part import router_findings
from shopdraw.cnc.shop_cutters import cutters_of
from shopdraw.editor.shop_of import shop_read
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.piece.unknown import UnknownKey
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding


def piece_findings(
    design: Design, assembly: Assembly, cautions: tuple[UnknownKey, ...], path: Path | None
) -> tuple[Finding, ...]:
    """Every finding, worst first.

    Args:
        design, assembly: the piece.
        cautions: keys of its file that mean nothing.
        path: of the piece file, if it has one: the shop is found from there.
    """
    read = shop_read(design, path)
    cutters = cutters_of(read.shop if read is not None else Shop())
    found = findings(design, assembly, router_findings(assembly, design, cutters))
    unknown = (*cautions, *(read.cautions if read is not None else ()))
    return (*found, *(unknown_key(caution) for caution in unknown))
