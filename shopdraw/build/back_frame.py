"""A back of frame and panels: stiles, rails and muntins mortised and tenoned, panels that float in their grooves."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.build.joinery import Tenon, butt, mortise_and_tenon
from shopdraw.build.screw import EDGE_ROOM_MM, wood_screws
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Fixing, Stock

GROOVE_MM = 9.0
"""Depth of the panels' grooves (common practice)."""
PLAY_MM = 0.5
"""Kept beside every computed movement gap."""
STILL_IN_MM = 4.0
"""What a panel keeps in its groove in the driest season (common practice)."""
BEYOND_GROOVE_MM = 16.0
"""A tenon goes so far beyond the groove (common practice)."""
DEEPER_MM = 2.0
"""A mortise is this much deeper than its tenon is long."""
MOST_PANEL_MM = 320.0
"""Wider panels get a muntin between them (common practice)."""
LEAST_PANEL_MM = 60.0
SCREW_EACH_MM = 250.0


@dataclass(frozen=True, slots=True)
class _Sizes:
    """What the frame's boards share, mm."""

    stock: Stock
    panel: Stock
    seat: Box
    wide: float
    groove: float
    tenon: float

    @property
    def rear(self) -> float:
        """World y of the frame's rear face."""
        return self.seat.y0 + self.stock.thickness

    @property
    def middle(self) -> float:
        """World y of the middle of its thickness."""
        return self.seat.y0 + self.stock.thickness / 2


def lay_back_frame(bench: Bench, plan: CasePlan, hosts: Sequence[Blank], seat: Box) -> None:
    """Lay and join the frame in its seat, and the panels in its grooves.

    Args:
        hosts: what it is fixed to besides the sides.
        seat: what the rabbets hold.
    Raises:
        CannotBuild: members too wide for the opening, or too thin for the panels' grooves.
    """
    stock, panel, table = plan.stocks.of("back.frame"), plan.stocks.of("back.panel"), plan.design.back
    if panel.thickness > stock.thickness / 2:
        right = f"expected at most half of the frame's {stock.thickness:g} mm"
        raise CannotBuild([fault("use.back.panel", f"{panel.thickness:g} mm", right)])
    sizes = _Sizes(stock, panel, seat, table.member, GROOVE_MM, GROOVE_MM + BEYOND_GROOVE_MM)
    play = max(table.clearance / 2, plan.season.gain(table.member, stock) + PLAY_MM)
    if table.member < sizes.tenon + DEEPER_MM + 8.0:
        right = f"expected at least {sizes.tenon + DEEPER_MM + 8.0:g} mm, for its mortises"
        raise CannotBuild([fault("back.member", f"{table.member:g} mm", right)])
    x0, x1 = seat.x0 + play + table.member, seat.x1 - play - table.member
    z0, z1 = seat.z0 + table.member, seat.z1 - 2 * play - table.member
    panels = table.panels or max(1, math.ceil((x1 - x0 + table.member) / (MOST_PANEL_MM + table.member)))
    clear = (x1 - x0 - (panels - 1) * table.member) / panels
    if clear < LEAST_PANEL_MM or z1 - z0 < LEAST_PANEL_MM:
        right = f"expected panels at least {LEAST_PANEL_MM:g} mm each way: narrower members, or fewer panels"
        raise CannotBuild([fault("back.member", f"panels of {clear:.1f} × {z1 - z0:.1f} mm", right)])
    stiles = _stiles(bench, sizes, (x0, x1), (seat.z0, seat.z1 - 2 * play))
    rails = _rails(bench, sizes, (x0, x1), (z0, z1))
    middles = [x0 + (n + 1) * clear + n * table.member for n in range(panels - 1)]
    muntins = _muntins(bench, sizes, middles, (z0, z1))
    for rail in rails:
        for stile, into in zip(stiles, ("-x", "+x"), strict=True):
            _tenon(bench, plan, sizes, stile, rail, into)
    for muntin in muntins:
        for rail, into in zip(rails, ("-z", "+z"), strict=True):
            _tenon(bench, plan, sizes, rail, muntin, into)
    uprights = sorted((*stiles, *muntins), key=lambda one: one.box().x0)
    _panels(bench, plan, sizes, uprights, rails)
    for hand, stile in zip(("left", "right"), stiles, strict=True):
        butt(bench, bench[f"side.{hand}"], stile, glued=False)
    for host in hosts:
        nearest = min(rails, key=lambda rail: abs(rail.box().z0 - host.box().z0))
        butt(bench, host, nearest, glued=False)
    count = 2 * math.ceil((x1 - x0) / SCREW_EACH_MM)
    for rail in rails:
        on = (rail.id, *(joint.host for joint in bench.joints if joint.guest == rail.id and joint.kind == "butt"))
        screws = wood_screws(plan, f"screw:{rail.id}", count // 2, on, stock.thickness, EDGE_ROOM_MM)
        bench.hardware.append(screws)


def _stiles(bench: Bench, s: _Sizes, xs: tuple[float, float], zs: tuple[float, float]) -> tuple[Blank, Blank]:
    """Held at their inner edges: what they grow goes into the rabbets' clearance."""
    made = []
    for hand, x0, x1, held in (("left", xs[0] - s.wide, xs[0], xs[0]), ("right", xs[1], xs[1] + s.wide, xs[1])):
        made.append(
            bench.lay(
                f"back.stile-{hand}", f"back, {hand} stile", "back.frame", s.stock,
                Box(x0, x1, s.seat.y0, s.rear, *zs), u="+z", w="-y",
                reference_edge="far" if hand == "left" else "near",
                fixing=Fixing("side.left", (held, s.seat.y0, zs[0])),
            )
        )  # fmt: skip
    return made[0], made[1]


def _rails(bench: Bench, s: _Sizes, xs: tuple[float, float], zs: tuple[float, float]) -> tuple[Blank, Blank]:
    """The lower and the upper rail, held at their inner edges."""
    made = []
    for name, z0, z1, held in (("lower", zs[0] - s.wide, zs[0], zs[0]), ("upper", zs[1], zs[1] + s.wide, zs[1])):
        made.append(
            bench.lay(
                f"back.rail-{name}", f"back, {name} rail", "back.frame", s.stock,
                Box(*xs, s.seat.y0, s.rear, z0, z1), u="+x", w="-y",
                fixing=Fixing("side.left", ((xs[0] + xs[1]) / 2, s.seat.y0, held)),
            )
        )  # fmt: skip
    return made[0], made[1]


def _muntins(bench: Bench, s: _Sizes, places: Sequence[float], zs: tuple[float, float]) -> list[Blank]:
    return [
        bench.lay(
            f"back.muntin-{number}", f"back, muntin {number}", "back.frame", s.stock,
            Box(x, x + s.wide, s.seat.y0, s.rear, *zs), u="+z", w="-y",
            fixing=Fixing("side.left", (x + s.wide / 2, s.seat.y0, zs[0])),
        )
        for number, x in enumerate(places, 1)
    ]  # fmt: skip


def _tenon(bench: Bench, plan: CasePlan, s: _Sizes, host: Blank, guest: Blank, into: str) -> None:
    """A tenon as thick as the panels' groove is wide, set in from the groove's side by its depth."""
    room = plan.season.gain(guest.high[1] - guest.low[1], guest.stock) + 0.1
    inset = s.groove + 1.0
    how = Tenon(
        s.panel.thickness, (inset, inset), s.tenon, s.tenon + DEEPER_MM, room=room, fit=plan.design.case.fit,
        radius=plan.radius,
    )  # fmt: skip
    mortise_and_tenon(bench, host, guest, into, how, glued=True, purpose=guest.name)


def _panels(bench: Bench, plan: CasePlan, s: _Sizes, uprights: Sequence[Blank], rails: tuple[Blank, Blank]) -> None:
    """Groove the members' inner edges and lay a panel in each opening, held at its middle and glued nowhere."""
    lower, upper = rails
    fit = plan.design.case.fit
    y0, y1 = s.middle - s.panel.thickness / 2 - fit / 2, s.middle + s.panel.thickness / 2 + fit / 2
    inner = {one.id: one.box() for one in (*uprights, *rails)}
    z0, z1 = inner[lower.id].z1, inner[upper.id].z0
    for rail, low, high, into in ((lower, z0 - s.groove, z0, "-z"), (upper, z1, z1 + s.groove, "+z")):
        run = rail.box()._replace(y0=y0, y1=y1, z0=low, z1=high)
        rail.sink_box("groove", run, into, id=f"groove:{rail.id}:panels", purpose="panels of the back")
    for number, (left, right) in enumerate(pairwise(uprights), 1):
        x0, x1 = inner[left.id].x1, inner[right.id].x0
        name = f"back.panel-{number}"
        for host, run, into in (
            (left, Box(x0 - s.groove, x0, y0, y1, z0 - s.groove, z1 + s.groove), "-x"),
            (right, Box(x1, x1 + s.groove, y0, y1, z0 - s.groove, z1 + s.groove), "+x"),
        ):
            host.sink_box("groove", run, into, id=f"groove:{host.id}:{name}", purpose="panel of the back")
        beside = sum(plan.season.gain(s.wide, one.stock) for one in (left, right)) / 2
        room = plan.season.gain(x1 - x0, s.panel) / 2 + beside + PLAY_MM
        gone = plan.season.loss(x1 - x0, s.panel) / 2 + room
        if s.groove - gone < STILL_IN_MM:
            right_would = f"expected narrower panels, or plywood: {s.groove - gone:.1f} mm stay in the groove when dry"
            raise CannotBuild([fault("back.panels", f"panels of {x1 - x0:.0f} mm", right_would)])
        rise = s.groove - plan.season.gain(s.wide, s.stock) - PLAY_MM
        middle = s.middle - s.panel.thickness / 2
        panel = bench.lay(
            name, f"back, panel {number}", "back.panel", s.panel,
            Box(x0 - s.groove + room, x1 + s.groove - room, middle, middle + s.panel.thickness, z0 - rise, z1 + rise),
            u="+z", w="-y", fixing=Fixing("side.left", ((x0 + x1) / 2, s.seat.y0, z0)),
        )  # fmt: skip
        for host in (left, right, lower, upper):
            sizes = (("width", s.panel.thickness + fit), ("depth", s.groove))
            bench.joints.append(
                Joint(
                    f"panel:{host.id}:{panel.id}", "groove", host.id, panel.id, (panel.id,), fit=fit, glued=False,
                    floats=True, gap=room if host in (left, right) else s.groove - rise, sizes=sizes,
                )
            )  # fmt: skip

