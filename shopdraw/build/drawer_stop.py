"""Stops of drawers: a block on the front rail, under the drawer's bottom, that meets its front's inner face."""

from __future__ import annotations

from collections.abc import Iterable

from shopdraw.build.bench import Bench, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.joinery import butt
from shopdraw.build.screw import Passing, lay_screws
from shopdraw.wood.board import Fixing

LENGTH_MM, WIDTH_MM = 50.0, 25.0
"""Of a block, along the front and front to back (common practice)."""
UNDER_BOTTOM_MM = 2.0
"""Between a block and the drawer's bottom, which passes over it, besides what its front grows."""
LEAST_MM = 4.0


def lay_stops(bench: Bench, plan: CasePlan, places: Iterable[tuple[Row, float]]) -> None:
    """Lay a block for each drawer; a drawer stops at the front rail and never at the back.

    Args:
        places: each drawer's row, and the world y of its front's inner face.
    Raises:
        CannotBuild: a bottom too low for a block under it.
    """
    if not plan.design.frame.stops:
        return
    stock = plan.stocks.of("stop")
    for row, shoulder in places:
        x0, x1 = plan.drawer_bay(row)
        middle = (x0 + x1) / 2
        groove = plan.length_choice(row.key, "groove_up")
        high = groove - UNDER_BOTTOM_MM
        if high < LEAST_MM:
            right = (
                f"expected at least {LEAST_MM + UNDER_BOTTOM_MM:g} mm, for the block that stops it, or stops = false"
            )
            raise CannotBuild([fault(f"drawer.{row.key}.groove_up", f"{groove:g} mm", right)])
        board = f"{row.level}.front" if f"{row.level}.front" in bench.blanks else row.level
        host = bench[board]
        block = bench.lay(
            f"stop.{row.key}", f"stop of drawer {row.key}", "stop", stock,
            Box(middle - LENGTH_MM / 2, middle + LENGTH_MM / 2, shoulder, shoulder + WIDTH_MM, row.floor,
                row.floor + high),
            u="+x", w="+z", fixing=Fixing("", (middle, shoulder, row.floor)),
        )  # fmt: skip
        butt(bench, host, block, glued=True)
        y, z = shoulder + WIDTH_MM / 2, row.floor + high / 2
        screws = [Passing((middle + off, y, z)) for off in (-LENGTH_MM / 4, LENGTH_MM / 4)]
        lay_screws(bench, plan, block, host, "+z", screws, host.stock.thickness)
