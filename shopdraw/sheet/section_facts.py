"""What the sections tell: levels and depths in A–A, widths and openings in B–B, bays in C–C, gaps in words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.measure import write_length
from shopdraw.shape.path import Point
from shopdraw.sheet.arrangement_facts import PLUMB, laps
from shopdraw.sheet.compartment_facts import compartment_facts, compartment_spaces
from shopdraw.sheet.fact import Fact, Feature, Rank
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.joint_body import corners_of_cut
from shopdraw.sheet.places import ABOVE, BELOW, LEFT, RIGHT, Places
from shopdraw.sheet.season import Gap, words_of_gap
from shopdraw.sheet.sighting import NEAR_MM
from shopdraw.sheet.telling import chain_of, least_link, note_at, running_from, size_between
from shopdraw.wood.assembly import Assembly, OpeningFact
from shopdraw.wood.board import Board

A, B, C, E, L = "section.A", "section.B", "section.C", "section.E", "section.L"


def section_facts(places: Places, writing: Writing) -> tuple[Fact, ...]:
    """All facts of the sections that are drawn."""
    drawn = {view.id for view in places.views}
    facts: list[Fact] = []
    if A in drawn:
        facts += _levels(places)
        facts += _depths(places, writing)
        facts += _open_lid(places)
    if B in drawn:
        facts += _widths(places)
        facts += _openings(places)
        facts += _drawer_gaps(places, writing)
        facts += _columns(places)
    if C in drawn:
        facts += _bays(places)
        facts += _drawer_depth(places, writing)
    if E in drawn:
        facts += _plinth(places)
    if L in drawn:
        facts += _lid_face(places)
    facts += compartment_facts(places, writing, drawn)
    return tuple(facts)


def _levels(places: Places) -> Iterator[Fact]:
    """Right of A–A, since the open lid lies to its left: each level from the floor."""
    assembly = places.assembly
    floor = places.floor(RIGHT)
    levels = [places.level(level.id, RIGHT) for level in sorted(assembly.levels, key=lambda fact: fact.top)]
    held = places.spaced([*levels, places.top(RIGHT)], A, 1, (floor,))
    yield from running_from("A.levels", floor, held, Rank.LEVEL, (A,), "in A", direction_deg=PLUMB, side="right", row=1)


def _depths(places: Places, writing: Writing) -> Iterator[Fact]:
    """Below A–A: the lowest frame's rails and runners; inside depth."""
    assembly = places.assembly
    front = places.case("y", False, BELOW)
    if not assembly.has("back"):
        return
    back = places.edge("back", "y", False, BELOW, "back:front")
    frames = [level for level in assembly.levels if level.kind == "web-frame"]
    ends = (front, back)
    if frames:
        frame = min(frames, key=lambda level: level.top).id
        rail, rear, runner = (assembly.board(f"{frame}.{part}") for part in ("front", "rear", "runner-left"))
        shoulder = places.extent(rail.id).y1 + (runner.between_shoulders or 0.0)
        inner = [
            places.edge(rail.id, "y", True, BELOW),
            places.edge(rear.id, "y", False, BELOW),
            places.across(f"{runner.id}:shoulder", "y", shoulder, BELOW, places.extent(runner.id)),
        ]
        row = [front, *places.spaced(inner, A, 0, ends), back]
        yield from chain_of("A.frame", row, Rank.LOCATION, (A,), None, side="below", row=1)
        gap = places.extent(rear.id).y0 - shoulder
        if gap > 0.05:
            at = places.extent(runner.id)
            point = places.point(f"{runner.id}:gap", {A: (shoulder + gap / 2, (at.z0 + at.z1) / 2)})
            words = f"gap {write_length(gap, writing.fit)}, tenon dry"
            yield note_at(f"gap:{runner.id}", point, words, Rank.CLEARANCE, (A,), board=runner.id)
    yield size_between(front, back, Rank.LEVEL, (A,), side="below", row=2)


def _open_lid(places: Places) -> Iterator[Fact]:
    """What the open lid takes in front of the case, and the supports under it."""
    assembly, slant = places.assembly, places.assembly.slant
    if slant is None or slant.hinge_edge == "upper" or not assembly.has("lid"):
        return
    pin_z = slant.hinge_pin_mm[1]
    front = places.case("y", False, BELOW)
    end = places.point("lid:end, open", {A: (-slant.open_projection_mm, pin_z - slant.lid_thickness_mm)})
    yield size_between(end, front, Rank.LOCATION, (A,), side="below", row=2)
    supports = [m for m in assembly.motions if m.boards[0].startswith("support.")]
    if not supports:
        return
    box, reach = places.extent(supports[0].boards[0]), supports[0].reach
    outer = places.point("support:end, out", {A: (-reach, box.z0)})
    yield size_between(outer, front, Rank.LOCATION, (A,), side="below", row=1)
    inner = places.point("support:inner end, out", {A: (box.y1 - reach, box.z0)})
    plane = places.point("case:front, at the support", {A: (0.0, box.z0)})
    yield size_between(
        plane, inner, Rank.SIZE, (A,), kind="clearance", side="inside", suffix=" left inside", rounding="general"
    )
    floor = places.floor(LEFT)
    upper = places.point("support:top, out", {A: (-reach, box.z1)})
    yield size_between(floor, upper, Rank.LEVEL, (A,), direction_deg=PLUMB, side="left", row=1)
    if abs(slant.pin_above_writing_mm) > 0.01:
        pin = places.point("lid:pin", {A: slant.hinge_pin_mm})
        yield size_between(floor, pin, Rank.LEVEL, (A,), direction_deg=PLUMB, side="left", row=2)


def _widths(places: Places) -> Iterator[Fact]:
    """Below B–B: side, inside width, side; width at the dados' bottoms."""
    assembly = places.assembly
    if not (assembly.has("side.left") and assembly.has("side.right")):
        return
    left, right = places.case("x", False, BELOW), places.case("x", True, BELOW)
    inner = places.edge("side.left", "x", True, BELOW), places.edge("side.right", "x", False, BELOW)
    if len(places.spaced(inner, B, 0, (left, right))) == len(inner):
        yield from chain_of("B.widths", [left, *inner, right], Rank.OPENING, (B,), 2, "in B", side="below", row=1)
    else:
        yield size_between(*inner, Rank.OPENING, (B,), "in B", side="below", row=1)
    if assembly.has("bottom"):
        ends = places.edge("bottom", "x", False, BELOW), places.edge("bottom", "x", True, BELOW)
        yield size_between(*ends, Rank.SIZE, (B,), side="below", row=2, reference=True)
    yield size_between(left, right, Rank.LEVEL, (B,), "in B", side="below", row=3, reference=True)


def _openings(places: Places) -> Iterator[Fact]:
    """Right of B–B, where fronts hide them from the front: openings and what lies between, up to the writing level."""
    assembly = places.assembly
    if not any(laps(places, opening.id.rpartition(".")[2]) for opening in _drawers(assembly)):
        return
    floor = places.floor(RIGHT)
    ends = [floor]
    # Behind its step a shelf in two boards shows the rear one's level.
    shown = [places.level(level.id, RIGHT) for level in assembly.levels if level.id in ("writing", "writing.rear")]
    ends += [level for level in shown if places.shown(level, B)][:1] or shown[:1]
    inner = [
        places.across(f"opening.{opening.id}:{name}", "z", at, RIGHT)
        for upper in (False, True)
        for opening in _drawers(assembly)
        for name, at in (("upper", opening.bottom + opening.height) if upper else ("lower", opening.bottom),)
    ]
    row = [floor, *places.spaced(inner, B, 1, ends), *ends[1:]]
    chain = chain_of(
        "B.openings", row, Rank.OPENING, (B,), least_link(row, B, 1), "in B", direction_deg=PLUMB, side="right", row=1
    )
    yield from chain
    if len(ends) > 1:
        yield size_between(
            floor, ends[1], Rank.LEVEL, (B,), "in B", direction_deg=PLUMB, side="right", row=2, reference=True
        )


def _drawers(assembly: Assembly) -> list[OpeningFact]:
    return [opening for opening in assembly.openings if opening.use == "drawer"]


def _drawer_gaps(places: Places, writing: Writing) -> Iterator[Fact]:
    """In B–B, in words: what is open beside and above each drawer's box, at build and in both seasons.

    Drawers side by side with the same gaps are told once.
    """
    assembly = places.assembly
    told: set[tuple[str, float]] = set()
    for opening in _drawers(assembly):
        name = f"drawer.{opening.id.removeprefix('bank.')}.side-left"
        if not assembly.has(name):
            continue
        side: Board = assembly.board(name)
        box = places.extent(name)
        beside = box.x0 - opening.left
        above = Gap(opening.bottom + opening.height - box.z1, side.width, side.stock, assembly.moisture)
        words = f"gap {write_length(beside, writing.fit)} a side; above {words_of_gap(above, writing)}"
        if (words, round(opening.bottom, 2)) in told:
            continue
        told.add((words, round(opening.bottom, 2)))
        at = places.point(f"{name}:gap", {B: ((box.x0 + box.x1) / 2, box.z1 - 0.2 * (box.z1 - box.z0))})
        yield note_at(f"gap:{name}", at, words, Rank.CLEARANCE, (B,), board=name)


def _bays(places: Places) -> Iterator[Fact]:
    """Below C–C: support's bay, divider, drawer's bay, and the same again; inside width and width over the sides."""
    left, right = places.case("x", False, BELOW), places.case("x", True, BELOW)
    small = compartment_spaces(places)
    openings = [opening for opening in places.assembly.openings if opening not in small]
    highest = max((opening.bottom for opening in openings if opening.use == "drawer"), default=0.0)
    row = sorted((o for o in openings if abs(o.bottom - highest) < 0.01), key=lambda o: o.left)
    links = places.spaced(_upright_edges(places, row, BELOW), C, 0, (left, right))
    if len(links) > 1:
        yield from chain_of("C.bays", links, Rank.OPENING, (C,), len(links) - 2, "in C", side="below", row=1)
    if len(links) > 2:
        yield size_between(links[0], links[-1], Rank.LEVEL, (C,), "in C", side="below", row=2, reference=True)
    yield size_between(left, right, Rank.LEVEL, (C,), "in C", side="below", row=3, reference=True)


def _upright_edges(places: Places, row: Sequence[OpeningFact], toward: Point) -> list[Feature]:
    """The left and the right edge of each opening of a row."""
    return [
        place
        for o in row
        for place in (
            places.across(f"opening.{o.id}:left", "x", o.left, toward),
            places.across(f"opening.{o.id}:right", "x", o.left + o.width, toward),
        )
    ]


def _columns(places: Places) -> Iterator[Fact]:
    """Above B–B: openings that stand side by side and that neither the front's lowest row nor C–C tells."""
    small = compartment_spaces(places)
    openings = [opening for opening in places.assembly.openings if opening not in small]
    drawers = [opening.bottom for opening in openings if opening.use == "drawer"]
    told = {min((opening.bottom for opening in openings), default=0.0), max(drawers, default=0.0)}
    rows: dict[float, list[OpeningFact]] = {}
    for opening in openings:
        rows.setdefault(round(opening.bottom, 2), []).append(opening)
    shown: list[list[float]] = []
    for bottom in sorted(rows, reverse=True):
        row = sorted(rows[bottom], key=lambda o: o.left)
        lefts = [o.left for o in row]
        if len(row) < 2 or any(abs(bottom - other) < 0.02 for other in told) or lefts in shown:
            continue
        edges = _upright_edges(places, row, ABOVE)
        if not all(places.shown(edge, B) for edge in edges):
            continue
        shown.append(lefts)
        # Without what stands between them, whose thickness is the stock's: bays that are alike print alike.
        for left, right in zip(edges[::2], edges[1::2], strict=True):
            yield size_between(left, right, Rank.OPENING, (B,), "in B", side="above", row=len(shown))


def _drawer_depth(places: Places, writing: Writing) -> Iterator[Fact]:
    """Right of C–C: how far back the topmost drawer reaches, and what is open behind it."""
    assembly = places.assembly
    drawers = _drawers(assembly)
    key = max(drawers, key=lambda opening: opening.bottom).id.rpartition(".")[2]
    name = f"drawer.{key}.side-right"
    if not (assembly.has(name) and assembly.has("back")):
        return
    front, rear = places.case("y", False, RIGHT), places.edge(name, "y", True, RIGHT)
    yield size_between(front, rear, Rank.LOCATION, (C,), direction_deg=PLUMB, side="right", row=1)
    sides = [board for board in assembly.boards if board.member == "side"]
    gap = places.extent("back").y0 - places.extent(name).y1
    depth = Gap(gap, assembly.depth, sides[0].stock, assembly.moisture, closes=False)
    box = places.extent(name)
    at = places.point(f"{name}:gap behind", {C: ((box.x0 + box.x1) / 2, box.y1 + gap / 2)})
    words = f"gap behind {words_of_gap(depth, writing)}"
    yield note_at(f"gap behind:{name}", at, words, Rank.CLEARANCE, (C,), board=name)


def _plinth(places: Places) -> Iterator[Fact]:
    """Below E–E: projection, case, projection; right of it the return's length and how deep a block is."""
    assembly = places.assembly
    outer = places.edge("plinth.left", "x", False, BELOW), places.edge("plinth.right", "x", True, BELOW)
    inner = places.edge("plinth.left", "x", True, BELOW), places.edge("plinth.right", "x", False, BELOW)
    if len(places.spaced(inner, E, 0, outer)) == len(inner):
        row = [outer[0], *inner, outer[1]]
        yield from chain_of("E.widths", row, Rank.OPENING, (E,), 2, "in E", side="below", row=1)
    else:
        yield size_between(*inner, Rank.OPENING, (E,), "in E", side="below", row=1)
    yield size_between(*outer, Rank.LEVEL, (E,), "in E", side="below", row=2, reference=True)
    front, rear = places.edge("plinth.front", "y", False, RIGHT), places.edge("plinth.right", "y", True, RIGHT)
    yield size_between(front, rear, Rank.LEVEL, (E,), "in E", direction_deg=PLUMB, side="right", row=2)
    block = "block.front-right"
    if assembly.has(block):
        ends = places.edge(block, "y", False, RIGHT), places.edge(block, "y", True, RIGHT)
        yield size_between(*ends, Rank.SIZE, (E,), "in E", direction_deg=PLUMB, side="right", row=1)


def _lid_face(places: Places) -> Iterator[Fact]:
    """Below view L: ends and panel; the lid's width. Right of it: its length along the slope. Above: its hinges."""
    lines = [line for view in places.views if view.id == L for line in view.lines()]
    xs, ys = ([point[axis] for line in lines for point in line] for axis in (0, 1))
    ends = ("left", 0, min(xs)), ("right", 0, max(xs)), ("lower", 1, min(ys)), ("upper", 1, max(ys))
    left, right, low, high = (
        places.at(f"lid:{name}, seen", L, _end_of(lines, axis, at)) for name, axis, at in ends
    )
    inner = [
        places.across(f"{board.id}:inner", "x", at, BELOW, box)
        for board in places.assembly.boards
        if board.member == "lid.cap"
        for box in (places.extent(board.id),)
        for at in (box.x1 if box.x0 + box.x1 < places.assembly.width else box.x0,)
    ]
    links = [left, *places.spaced(inner, L, 0, (left, right)), right]
    if len(links) > 2:
        yield from chain_of("L.ends", links, Rank.OPENING, (L,), 1, side="below", row=1)
    yield size_between(left, right, Rank.LEVEL, (L,), side="below", row=2, reference=True)
    yield size_between(low, high, Rank.LEVEL, (L,), direction_deg=PLUMB, side="right", row=1)
    lid, box = places.assembly.board("lid"), places.extent("lid")
    begun = sorted(min(x for x, _, _ in corners_of_cut(lid, c)) for c in lid.shape.cuts if c.kind == "hinge-leaf")
    leaves = [places.across(f"lid:hinge {n}", "x", x, ABOVE, box) for n, x in enumerate(begun, 1)]
    held = places.spaced(leaves, L, 0, (left,))
    yield from running_from("L.hinges", left, held, Rank.LOCATION, (L,), side="above", row=1, rounding="cut")


def _end_of(lines: Sequence[tuple[Point, Point]], axis: int, at: float) -> Point:
    """The lowest, then leftmost end of a line that reaches a coordinate."""
    return min((p for line in lines for p in line if abs(p[axis] - at) < NEAR_MM), key=lambda p: (p[1], p[0]))
