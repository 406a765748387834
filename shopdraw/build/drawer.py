"""Drawers: front (inset or lipped), two sides, back, and a plywood bottom in grooves under the back."""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.bench import Bench, Blank, Box
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Row
from shopdraw.build.joinery import Housing, house
from shopdraw.wood.assembly import Hardware, Motion
from shopdraw.wood.board import Fixing

GROOVE_SHARE = 0.4
"""Depth of grooves and dados in drawer sides, as a share of their thickness (common practice: half at most)."""
BACK_INSET_MM = 12.0
"""The back's dado stands this far from the sides' rear ends, at least."""
BACK_DROP_MM = 3.0
"""The back ends this far below the sides' upper edges."""
LEAST_TOP_MM = 0.8
"""Clearance over a drawer besides what its boards grow."""
INSIDE_SHARE = 0.25
"""Share of the box that stays in the case when a drawer is pulled (common practice)."""


@dataclass(frozen=True, slots=True)
class DrawerSize:
    """Sizes of a drawer in the case's coordinates, mm.

    Attributes:
        box: outside of the box, from the front's inner shoulder to the sides' rear ends.
        front: the front, all over.
        shoulder: y of the front's inner face.
        entry: how far the sides enter the front.
        lipped: whether the front laps over the case.
        lip_thickness: of a lipped front's lip.
        top_clearance, side_clearance: between box and opening.
    """

    box: Box
    front: Box
    shoulder: float
    entry: float
    lipped: bool
    lip_thickness: float
    top_clearance: float
    side_clearance: float


def drawer_size(plan: CasePlan, row: Row) -> DrawerSize:
    """Work out a drawer for its opening.

    Raises:
        CannotBuild: lips thicker than the front, or sides that enter deeper than the front allows.
    """
    x0, x1 = plan.drawer_bay(row)
    lipped = plan.choice(row.key, "front") == "lipped"
    front, side = plan.stocks.of("drawer.front"), plan.stocks.of("drawer.side")
    reveal = plan.length_choice(row.key, "reveal")
    clear = plan.length_choice(row.key, "side_clearance", 1.5 if lipped else reveal)
    grows = max(plan.season.gain(row.height, side), plan.season.gain(row.height, front))
    need = math.ceil(10 * (grows + LEAST_TOP_MM)) / 10
    above = plan.length_choice(row.key, "top_clearance", need)
    lip_thickness = plan.length_choice(row.key, "lip_thickness")
    entry = plan.length_choice(row.key, "entry")
    address = f"drawer.{row.key}"
    if lipped and lip_thickness > front.thickness - 4.0:
        raise CannotBuild(
            [
                fault(
                    f"{address}.lip_thickness",
                    f"{lip_thickness:g} mm",
                    f"expected at most {front.thickness - 4.0:g} mm, 4 less than the front",
                )
            ]
        )
    full = front.thickness - lip_thickness if lipped else front.thickness
    most = full if lipped else front.thickness - 3.0
    if entry > most:
        raise CannotBuild(
            [
                fault(
                    f"{address}.entry",
                    f"{entry:g} mm",
                    f"expected at most {most:g} mm for a front of {front.thickness:g} mm",
                )
            ]
        )
    lip = plan.length_choice(row.key, "lip")
    if lipped:
        y0 = -lip_thickness
        face = Box(x0 - lip, x1 + lip, y0, y0 + front.thickness, row.floor - lip, plan.ceiling(row) + lip)
    else:
        over = math.ceil(10 * (plan.season.gain(row.height, front) + reveal)) / 10
        face = Box(x0 + reveal, x1 - reveal, 0.0, front.thickness, row.floor + reveal, plan.ceiling(row) - over)
    box = Box(x0 + clear, x1 - clear, face.y1, plan.usable, row.floor, plan.ceiling(row) - above)
    if box.y1 - box.y0 < 100.0 or box.z1 - box.z0 < 20.0:
        raise CannotBuild(
            [
                fault(
                    address,
                    f"a box {box.y1 - box.y0:.1f} mm long and {box.z1 - box.z0:.1f} mm high",
                    "expected at least 100 × 20 mm: a deeper case or higher openings",
                )
            ]
        )
    return DrawerSize(box, face, face.y1, entry, lipped, lip_thickness, above, clear)


def lay_drawers(bench: Bench, plan: CasePlan) -> None:
    """Lay every drawer of the bank, from the top down."""
    for row in plan.rows:
        lay_drawer(bench, plan, row, drawer_size(plan, row))


def lay_drawer(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize) -> None:
    """Lay one drawer, with the plan's stocks and choices for it, in any place that its size says."""
    front = _front(bench, plan, row, size)
    sides = {hand: _side(bench, plan, row, size, hand) for hand in ("left", "right")}
    for hand, side in sides.items():
        _front_joint(bench, plan, row, size, front, side, hand)
    back = _back(bench, plan, row, size, sides)
    bottom = _bottom(bench, plan, row, size, front, sides)
    drawer = f"drawer.{row.key}"
    boards = (front.id, sides["left"].id, sides["right"].id, back.id, bottom.id)
    length = size.box.y1 - size.shoulder
    bench.motions.append(
        Motion(drawer, boards, "slide", (size.box.x0, 0.0, row.floor), (0.0, -1.0, 0.0), (1 - INSIDE_SHARE) * length)
    )
    knobs = plan.choice(row.key, "knobs")
    count = int(knobs) if isinstance(knobs, int | float) else (2 if size.front.x1 - size.front.x0 > 450 else 1)
    if count:
        bench.hardware.append(Hardware(f"knob:{drawer}", "knob", count, (front.id,)))
    bench.hardware.append(Hardware(f"screw:{drawer}.bottom", "wood screw", 3, (bottom.id, back.id)))


def _front(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize) -> Blank:
    stock = plan.stocks.of("drawer.front")
    middle = (size.front.x0 + size.front.x1) / 2
    front = bench.lay(
        f"drawer.{row.key}.front",
        f"drawer {row.key}, front",
        "drawer.front",
        stock,
        size.front,
        u="-x",
        w="+y",
        fixing=Fixing("", (middle, 0.0, row.floor)),
    )
    if size.lipped:
        box, face, lip = size.box, size.front, size.front.y0 + size.lip_thickness
        spans = {
            "left": face._replace(x1=box.x0),
            "right": face._replace(x0=box.x1),
            "lower": face._replace(z1=box.z0),
            "upper": face._replace(z0=box.z1),
        }
        for where, span in spans.items():
            front.sink_box(
                "rabbet", span._replace(y0=lip), "-y", id=f"rabbet:{front.id}:{where}", purpose=f"lip, {where}"
            )
    return front


def _side(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, hand: str) -> Blank:
    """A side from the front's inner shoulder to the box's rear end; inner face as reference."""
    stock = plan.stocks.of("drawer.side")
    t = stock.thickness
    x0 = size.box.x0 if hand == "left" else size.box.x1 - t
    return bench.lay(
        f"drawer.{row.key}.side-{hand}",
        f"drawer {row.key}, side, {hand}",
        "drawer.side",
        stock,
        size.box._replace(x0=x0, x1=x0 + t),
        u="+y",
        w="+x" if hand == "left" else "-x",
        reference_edge="near" if hand == "left" else "far",
        fixing=Fixing("", (x0, 0.0, row.floor)),
    )


def _front_joint(
    bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, front: Blank, side: Blank, hand: str
) -> None:
    """A tongue on the side in a groove of the front, or the side's whole end in a rabbet."""
    stock, fit = plan.stocks.of("drawer.side"), plan.design.case.fit
    box = side.box()
    tongue = plan.choice(row.key, "front_joint") == "tongue"
    half = stock.thickness / 2 if tongue else stock.thickness
    into_front = size.front.y1
    # The tongue stands on the inner half of the side's thickness.
    x0, x1 = (box.x1 - half, box.x1) if hand == "left" else (box.x0, box.x0 + half)
    section = Box(x0, x1, into_front, into_front, size.front.z0, size.front.z1)
    how = Housing(size.entry, fit if tongue else 0.0, "-x" if hand == "left" else "+x")
    house(bench, "groove" if tongue else "rabbet", front, side.id, (side,), section, "-y", how, purpose=side.name)
    if tongue:
        end = side.box()
        cheek = end._replace(y1=into_front)
        cheek = cheek._replace(x1=end.x1 - half) if hand == "left" else cheek._replace(x0=end.x0 + half)
        into = "+x" if hand == "left" else "-x"
        side.sink_box("tongue", cheek, into, id=f"tongue:{side.id}:{front.id}", purpose=f"tongue into {front.name}")


def _back(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, sides: dict[str, Blank]) -> Blank:
    """The back in dados of the sides; it stands on the bottom."""
    stock, ply = plan.stocks.of("drawer.back"), plan.stocks.of("drawer.bottom")
    side = plan.stocks.of("drawer.side")
    groove = plan.length_choice(row.key, "groove_up")
    y1 = size.box.y1 - BACK_INSET_MM
    low = size.box.z0 + groove + ply.thickness + plan.design.case.fit
    high = size.box.z1 - BACK_DROP_MM
    if high - low < 15.0:
        raise CannotBuild(
            [
                fault(
                    f"drawer.{row.key}",
                    f"a back {high - low:.1f} mm high",
                    "expected at least 15 mm: a higher opening or a lower groove",
                )
            ]
        )
    x0, x1 = size.box.x0 + side.thickness, size.box.x1 - side.thickness
    back = bench.lay(
        f"drawer.{row.key}.back",
        f"drawer {row.key}, back",
        "drawer.back",
        stock,
        Box(x0, x1, y1 - stock.thickness, y1, low, high),
        u="+x",
        w="-y",
        fixing=Fixing(f"drawer.{row.key}.bottom", ((x0 + x1) / 2, y1, low)),
    )
    depth = GROOVE_SHARE * side.thickness
    for hand, into, x in (("left", "-x", x0), ("right", "+x", x1)):
        section = Box(x, x, y1 - stock.thickness, y1, size.box.z0, size.box.z1)
        house(
            bench,
            "dado",
            sides[hand],
            back.id,
            (back,),
            section,
            into,
            Housing(depth, plan.design.case.fit, "-y"),
            purpose=back.name,
        )
    return back


def _bottom(bench: Bench, plan: CasePlan, row: Row, size: DrawerSize, front: Blank, sides: dict[str, Blank]) -> Blank:
    """The bottom slides in from the rear under the back, in grooves of sides and front."""
    stock, side = plan.stocks.of("drawer.bottom"), plan.stocks.of("drawer.side")
    depth, fit = GROOVE_SHARE * side.thickness, plan.design.case.fit
    low = size.box.z0 + plan.length_choice(row.key, "groove_up")
    high = low + stock.thickness
    # A groove keeps its width and moves with the wood at its middle.
    middle = low + (stock.thickness + fit) / 2
    x0, x1 = size.box.x0 + side.thickness, size.box.x1 - side.thickness
    bottom = bench.lay(
        f"drawer.{row.key}.bottom",
        f"drawer {row.key}, bottom",
        "drawer.bottom",
        stock,
        Box(x0, x1, size.shoulder, size.box.y1 - BACK_INSET_MM, low, high),
        u="+x",
        w="+z",
        fixing=Fixing(sides["left"].id, (x0, size.shoulder, middle)),
    )
    for hand, into, x in (("left", "-x", x0), ("right", "+x", x1)):
        section = Box(x, x, size.front.y0, size.box.y1, low, high)
        house(
            bench,
            "groove",
            sides[hand],
            bottom.id,
            (bottom,),
            section,
            into,
            Housing(depth, fit, relief=0.5),
            purpose=bottom.name,
            glued=False,
        )
    across = Box(x0 - depth, x1 + depth, size.shoulder, size.shoulder, low, high)
    # Bottom and sides move alike; the front's groove is eased by what the front moves more or less than they do.
    front_stock, up = plan.stocks.of("drawer.front"), middle - row.floor
    ease = max(
        abs(plan.season.gain(up, front_stock) - plan.season.gain(up, side)),
        abs(plan.season.loss(up, front_stock) - plan.season.loss(up, side)),
    )
    how = Housing(min(depth, size.entry), fit, relief=0.5, ease=ease)
    house(bench, "groove", front, bottom.id, (bottom,), across, "-y", how, purpose=bottom.name, glued=False)
    return bottom
