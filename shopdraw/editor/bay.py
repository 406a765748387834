"""Bays of compartments as they came out: how wide each is, and the heights under its shelves. Knows no Qt."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.editor.division import Division, divisions_of, fine_size, unit_of
from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import kept
from shopdraw.piece.address import address_text
from shopdraw.piece.design import BayTable, Design
from shopdraw.wood.assembly import Assembly, OpeningFact

_BAY_AND_SPACE = 2


@dataclass(frozen=True, slots=True)
class BaySpaces:
    """One bay, world mm: x to the right, z up.

    Attributes:
        room: the opening that it stands in.
        key: of the bay.
        left, right: its clear space.
        spaces: (from, to) of each clear space in it, from the lowest up.
    """

    room: str
    key: str
    left: float
    right: float
    spaces: tuple[tuple[float, float], ...]

    @property
    def name(self) -> str:
        """What a person calls it."""
        return translate("Bay", "Bay {key}").format(key=self.key)

    @property
    def width_address(self) -> str:
        """Of its width in the piece file."""
        return address_text(("compartments", self.key, "width"))

    @property
    def shelves_address(self) -> str:
        """Of the heights under its shelves in the piece file."""
        return address_text(("compartments", self.key, "shelves"))

    def with_height(self, number: int, mm: float, design: Design) -> tuple[Setting, ...]:
        """Settings that give the heights under its shelves, one of them another one."""
        unit = unit_of(design)
        heights = [high - low for low, high in self.spaces[:-1]]
        heights[number] = mm
        return (Setting(self.shelves_address, [kept(fine_size(height, unit), unit) for height in heights]),)


def own_table(design: Design, bay: BaySpaces) -> BayTable:
    """What the file says of one bay alone."""
    return design.compartments.each.get(bay.key, BayTable())


def bays_of(design: Design, assembly: Assembly) -> tuple[BaySpaces, ...]:
    """The bays of all compartments, from the left in each."""
    known = {fact.id for fact in assembly.openings}
    found: dict[tuple[str, str], list[OpeningFact]] = {}
    for fact in assembly.openings:
        room, *last = fact.id.rsplit(".", _BAY_AND_SPACE)
        # Behind a slant every pigeonhole is a bay's; elsewhere the room is itself an opening of the piece.
        stands = assembly.slant is not None or ("compartments" in design.model_fields_set and room in known)
        if fact.use == "pigeonhole" and len(last) == _BAY_AND_SPACE and stands:
            found.setdefault((room, last[0]), []).append(fact)
    return tuple(
        BaySpaces(
            room, key, facts[0].left, facts[0].left + facts[0].width,
            tuple((fact.bottom, fact.bottom + fact.height) for fact in sorted(facts, key=lambda one: one.bottom)),
        )
        for (room, key), facts in found.items()
    )  # fmt: skip


def takes_the_rest(design: Design, bay: BaySpaces, bays: tuple[BaySpaces, ...]) -> bool:
    """Whether a bay is as wide as the others leave it: every other one in its room has a width of its own."""
    others = [one for one in bays if one.room == bay.room and one.key != bay.key]
    return own_table(design, bay).width is None and all(own_table(design, one).width is not None for one in others)


def divisions_beside(design: Design, assembly: Assembly, bays: tuple[BaySpaces, ...]) -> tuple[Division, ...]:
    """The divisions of a piece without those whose columns are bays: these have widths of their own."""
    rooms = {bay.room for bay in bays}
    return tuple(division for division in divisions_of(design, assembly) if division.opening not in rooms)
