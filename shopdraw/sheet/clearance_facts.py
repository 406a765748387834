"""What details tell beside their joint: open spaces round a lid's support, a drawer's front at its opening."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.measure import write_length
from shopdraw.sheet.details import Detail
from shopdraw.sheet.fact import Fact, Rank
from shopdraw.sheet.figure import Writing
from shopdraw.sheet.places import BELOW, LEAST_LINK, Places
from shopdraw.sheet.season import Gap, words_of_gap
from shopdraw.sheet.telling import note_at, size_between
from shopdraw.wood.assembly import OpeningFact

B, C, N = "section.B", "section.C", "section.N"


def clearance_facts(places: Places, details: Sequence[Detail], writing: Writing) -> Iterator[Fact]:
    """The facts of all details that show the open spaces of a support or of a drawer's front."""
    for detail in details:
        if not detail.joint:
            continue
        if detail.plane.view in (B, N):
            yield from _support(places, detail, writing)
        _, *boards = detail.joint.split(":")
        opening = next((o for o in places.assembly.openings if _front_of(o) in boards), None)
        if opening is not None and detail.plane.view == C:
            yield from _front(places, detail, _front_of(opening), opening, writing)


def _front_of(opening: OpeningFact) -> str:
    return f"drawer.{opening.id.removeprefix('bank.')}.front" if opening.use == "drawer" else ""


def _support(places: Places, detail: Detail, writing: Writing) -> Iterator[Fact]:
    """In words at the support's upper end: what is open above it and at each of its faces."""
    assembly = places.assembly
    for board in assembly.boards:
        if board.member != "support":
            continue
        box = places.extent(board.id)
        at = (box.x0 + box.x1) / 2, box.z1 - 2.0
        space = next((o for o in assembly.openings if o.left - 0.1 <= box.x0 and box.x1 <= o.left + o.width + 0.1
                      and o.bottom - 0.1 <= box.z0 <= o.bottom + o.height), None)  # fmt: skip
        if space is None or not detail.window.holds(at):
            continue
        over = [places.extent(b.id) for b in assembly.boards if places.extent(b.id).z0 >= box.z1 - 0.1]
        roof = min((one.z0 for one in over if one.x0 < at[0] < one.x1), default=space.bottom + space.height)
        # a shelf that reaches further down is notched over the support
        roof = min(_notched_for(places, board.id), default=roof)
        above = Gap(roof - box.z1, board.width, board.stock, assembly.moisture)
        beside = (space.width - (box.x1 - box.x0)) / 2
        words = f"gap {write_length(beside, writing.fit)} a side; above {words_of_gap(above, writing)}"
        place = places.point(f"{board.id}:gap", {detail.view: at})
        yield note_at(f"gap:{board.id}", place, words, Rank.CLEARANCE, (detail.view,), board=board.id)


def _notched_for(places: Places, bar: str) -> Iterator[float]:
    """How high the notches over a support reach, world z, mm."""
    for board in places.assembly.boards:
        for cut, name in zip(board.shape.cuts, board.cut_ids, strict=False):
            if name == f"notch:{board.id}:{bar}":
                yield places.extent(board.id).z0 + cut.depth


def _front(places: Places, detail: Detail, board: str, opening: OpeningFact, writing: Writing) -> Iterator[Fact]:
    """A front's lip over its opening's edge, or the reveal beside it."""
    box, edge = places.extent(board), opening.left + opening.width
    over = box.x1 - edge
    if abs(over) * places.scale < LEAST_LINK:
        if over < 0:
            place = places.point(f"{board}:reveal", {detail.view: (box.x1 - 1.0, box.y0 + 1.0)})
            words = f"gap {write_length(-over, writing.fit)} a side"
            yield note_at(f"reveal:{board}", place, words, Rank.CLEARANCE, (detail.view,), board=board)
        return
    outer = places.across(f"{board}:right", "x", box.x1, BELOW, box)
    inner = places.across(f"{board}:opening", "x", edge, BELOW)
    yield size_between(
        outer, inner, Rank.SIZE, (detail.view,), side="below", prefix="lip " if over > 0 else "reveal ", rounding="cut"
    )
