"""What sections tell of compartments: clear widths of bays, clear heights in the outer ones, front and depth."""

from __future__ import annotations

from collections.abc import Iterator

from shopdraw.measure import write_length
from shopdraw.sheet.arrangement_facts import PLUMB
from shopdraw.sheet.fact import Fact, Rank
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.places import ABOVE, BELOW, LEFT, RIGHT, Places
from shopdraw.sheet.telling import chain_of, note_at, size_between
from shopdraw.wood.assembly import OpeningFact

A, B, F = "section.A", "section.B", "section.F"
SAME_MM = 0.01


def compartment_facts(places: Places, writing: Writing, drawn: set[str]) -> Iterator[Fact]:
    """The facts of the sections, where they are drawn and there are partitions."""
    bays = compartment_spaces(places)
    if not bays:
        return
    if B in drawn:
        yield from _widths(places, bays)
        first, last = min(bays, key=lambda bay: bay.left), max(bays, key=lambda bay: bay.left)
        yield from _heights(places, [bay for bay in bays if abs(bay.left - first.left) < SAME_MM], LEFT)
        if _levels(bays, first) != _levels(bays, last):
            yield from _heights(places, [bay for bay in bays if abs(bay.left - last.left) < SAME_MM], RIGHT)
    if F in drawn:
        yield from _in_plan(places)
    if A in drawn and places.assembly.slant is not None:
        board = next(board for board in places.assembly.boards if board.member == "partition")
        box = places.extent(board.id)
        point = places.point(f"{board.id}:plumb front", {A: (box.y0, box.z0 + 0.3 * (box.z1 - box.z0))})
        words = f"plumb front {write_length(box.y0, writing.general)} behind the front plane"
        yield note_at("compartments:front", point, words, Rank.LOCATION, (A,), board=board.id)


def compartment_spaces(places: Places) -> list[OpeningFact]:
    """The clear spaces beside partitions."""
    partitions = [places.extent(board.id) for board in places.assembly.boards if board.member == "partition"]

    def beside(opening: OpeningFact) -> bool:
        left, right = opening.left, opening.left + opening.width
        return any(abs(left - box.x1) < SAME_MM or abs(right - box.x0) < SAME_MM for box in partitions)

    return [opening for opening in places.assembly.openings if opening.use == "pigeonhole" and beside(opening)]


def _levels(bays: list[OpeningFact], like: OpeningFact) -> tuple[float, ...]:
    return tuple(round(bay.bottom, 3) for bay in bays if abs(bay.left - like.left) < SAME_MM)


def _widths(places: Places, bays: list[OpeningFact]) -> Iterator[Fact]:
    """Above B–B: each bay between its walls."""
    for left, width in sorted({(round(bay.left, 6), round(bay.width, 6)) for bay in bays}):
        low = places.across(f"bay {left:.2f}:left", "x", left, ABOVE)
        high = places.across(f"bay {left:.2f}:right", "x", left + width, ABOVE)
        yield size_between(low, high, Rank.OPENING, (B,), side="above", row=1)


def _heights(places: Places, bay: list[OpeningFact], toward: tuple[float, float]) -> Iterator[Fact]:
    """Beside B–B: the clear spaces of an outer bay, from the lowest up."""
    side = "left" if toward == LEFT else "right"
    for space in bay:
        name = f"space {space.id}"
        low = places.across(f"{name}:lower", "z", space.bottom, toward)
        high = places.across(f"{name}:upper", "z", space.bottom + space.height, toward)
        yield size_between(low, high, Rank.OPENING, (B,), direction_deg=PLUMB, side=side, row=1)


def _in_plan(places: Places) -> Iterator[Fact]:
    """Right of F–F: how deep the last partition is, and what is behind it; below it the clear width of all bays."""
    partitions = [places.extent(board.id) for board in places.assembly.boards if board.member == "partition"]
    last = max(partitions, key=lambda box: box.x1)
    front = places.across("partition:front", "y", last.y0, RIGHT, last)
    rear = places.across("partition:rear", "y", last.y1, RIGHT, last)
    row = [front, rear]
    if places.assembly.has("back"):
        row += places.spaced([places.edge("back", "y", False, RIGHT)], F, 1, row)
    yield from chain_of("F.depths", row, Rank.LOCATION, (F,), None, direction_deg=PLUMB, side="right", row=1)
    spaces = compartment_spaces(places)
    low = places.across("bays:left", "x", min(space.left for space in spaces), BELOW)
    high = places.across("bays:right", "x", max(space.left + space.width for space in spaces), BELOW)
    yield size_between(low, high, Rank.LEVEL, (F,), side="below", row=1, reference=True)
