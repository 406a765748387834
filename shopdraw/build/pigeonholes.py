"""Bays of compartments: their keys and widths, the spaces in each, and the V points of the small shelves between."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from shopdraw.build.bank import BankDisagrees, bank_heights
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan
from shopdraw.piece.design import BayTable, CompartmentsTable, OpeningTable

BAYS = 4
"""Bays of compartments whose number nobody gave (common practice)."""
LEAST_BAY_MM = 40.0
"""No bay narrower than this is built (common practice)."""
LEAST_SPACE_MM = 30.0
"""No space in a bay lower than this is built (common practice)."""
DRAWER_MM = 60.0
"""Clear height of a small drawer's space that nobody gave (common practice)."""


@dataclass(frozen=True, slots=True)
class Bay:
    """One bay between partitions or walls, from the left.

    Attributes:
        key: given once.
        name: of its boards: the room's prefix and the key.
        left, right: its sides, mm.
        spaces: (floor, ceiling) of each clear space from the lowest up; a small shelf lies between two.
        drawers: how many spaces from the lowest up have a drawer.
        bracket: the shape of the one at its head.
    """

    key: str
    name: str
    left: float
    right: float
    spaces: tuple[tuple[float, float], ...]
    drawers: int
    bracket: str

    @property
    def width(self) -> float:
        """Clear, mm."""
        return self.right - self.left


def v_length(clear: float, point: float) -> float:
    """Length of a shelf whose two ends are V points: the clear width and both points, mm."""
    return clear + 2 * point


def full_point(thickness: float) -> float:
    """The point of two cuts of 45° that meet in the middle of a shelf's thickness, mm."""
    return thickness / 2


def most_point(partition: float, *, meet: bool) -> float:
    """The deepest V that a partition may take, mm.

    Args:
        partition: its thickness.
        meet: two points at one level, from both sides: a third of it stays; else half of it does.
    """
    return partition / 3 if meet else partition / 2


def keys_of_bays(plan: CasePlan, opening: tuple[str, OpeningTable] | None) -> tuple[str, ...]:
    """The keys of the bays: an opening's columns, or as many as are asked for."""
    bays = plan.design.compartments.bays
    columns = opening is not None and _has_columns(opening[1])
    if columns and opening is not None:
        keys = opening[1].divide.keys
        if bays is not None and bays != len(keys):
            right = f"expected {len(keys)}, as many as opening.{opening[0]} has columns, or left out"
            raise CannotBuild([fault("compartments.bays", str(bays), right)])
        return keys
    return tuple(str(number + 1) for number in range(bays or BAYS))


def _has_columns(table: OpeningTable) -> bool:
    return "divide" in table.model_fields_set and table.divide.by == "columns"


def choice_of(table: CompartmentsTable, key: str) -> BayTable:
    """A bay's choices: its own, else those for all."""
    own = table.each.get(key, BayTable())
    return BayTable(
        shelves=table.shelves if own.shelves is None else own.shelves,
        drawers=table.drawers if own.drawers is None else own.drawers,
        bracket=table.bracket if own.bracket is None else own.bracket,
        width=table.width if own.width is None else own.width,
    )


def refuse_strangers(table: CompartmentsTable, keys: tuple[str, ...]) -> None:
    """Refuse a table for a bay that there isn't."""
    for key in table.each:
        if key not in keys:
            known = ", ".join(f'"{one}"' for one in keys)
            raise CannotBuild([fault(f"compartments.{key}", "a bay that there isn't", f"expected one of {known}")])


def widths_of_bays(
    plan: CasePlan, room: tuple[float, float], opening: tuple[str, OpeningTable] | None, keys: tuple[str, ...]
) -> tuple[float, ...]:
    """Clear widths from the left: bays and partitions add up to the inside width."""
    between = plan.stocks.of("partition").thickness
    total = room[1] - room[0]
    free = total - (len(keys) - 1) * between
    given = [choice_of(plan.design.compartments, key).width for key in keys]
    if opening is not None and _has_columns(opening[1]) and not any(given):
        divide = opening[1].divide
        rule = divide.rule if "rule" in divide.model_fields_set else "equal"
        try:
            widths = bank_heights(
                total, between, len(keys), rule, step=divide.step or 0.0, ratio=divide.ratio or 1.0, sizes=divide.sizes
            )
        except BankDisagrees as error:
            raise CannotBuild([fault(f"opening.{opening[0]}.divide", "", str(error))]) from error
    else:
        open_ones = sum(width is None for width in given)
        left = free - sum(width or 0.0 for width in given)
        if not open_ones and abs(left) > 0.01:
            right = f"expected widths that add up to {free:.2f} mm: {abs(left):.2f} mm {'more' if left > 0 else 'less'}"
            found = f"widths that add up to {free - left:.2f} mm"
            raise CannotBuild([fault("compartments", found, f"{right}, or one bay without a width")])
        widths = tuple(left / open_ones if width is None else width for width in given)
    if min(widths) < LEAST_BAY_MM:
        most = int((total + between) / (LEAST_BAY_MM + between))
        right = f"expected bays of {LEAST_BAY_MM:g} mm at least, at most {most} of them in {total:.1f} mm"
        raise CannotBuild([fault("compartments.bays", f"a bay {min(widths):.1f} mm wide", right)])
    return widths


def spaces_of(
    address: str, own: BayTable, floor: float, ceiling: float, shelf: float
) -> tuple[tuple[float, float], ...]:
    """The clear spaces of a bay from the lowest up; drawers that no shelf was given for get one over them."""
    heights = list(own.shelves or ())
    heights += [DRAWER_MM] * ((own.drawers or 0) - len(heights))
    spaces, low = [], floor
    for height in heights:
        spaces.append((low, low + height))
        low += height + shelf
    spaces.append((low, ceiling))
    if ceiling - low < LEAST_SPACE_MM or min(heights, default=LEAST_SPACE_MM) < LEAST_SPACE_MM:
        most = (ceiling - floor - LEAST_SPACE_MM - len(heights) * shelf) / max(1, len(heights))
        right = f"expected clear heights of {LEAST_SPACE_MM:g} mm at least, {most:.1f} mm each at most"
        told = ", ".join(f"{height:g}" for height in heights)
        raise CannotBuild([fault(f"{address}.shelves", f"{told} mm in {ceiling - floor:.1f} mm", right)])
    return tuple(spaces)


def refuse_bracket(table: CompartmentsTable, bay: Bay) -> None:
    """Refuse a bracket that takes more than half of the space at the head of its bay, or has no path."""
    low, high = bay.spaces[-1]
    if bay.bracket != "none" and table.bracket_height > (high - low) / 2:
        right = f"expected at most {(high - low) / 2:.1f} mm, half the space at the head of bay {bay.key}"
        raise CannotBuild([fault("compartments.bracket_height", f"{table.bracket_height:g} mm", right)])
    if bay.bracket == "own" and table.bracket_path is None:
        right = "expected bracket_path, or another bracket"
        raise CannotBuild([fault("compartments.bracket_path", "nothing", right)])


def points_meet(bays: Sequence[Bay], shelf: float) -> bool:
    """Whether small shelves on both sides of a partition lie so that their points meet in it."""
    for one, other in pairwise(bays):
        levels = [{high for _, high in bay.spaces[:-1]} for bay in (one, other)]
        if any(abs(a - b) < shelf for a in levels[0] for b in levels[1]):
            return True
    return False


def refuse_point(bays: Sequence[Bay], point: float, partition: float, shelf: float) -> None:
    """Refuse a V point that goes past the middle of its shelf, through a partition, or into another one."""
    if not any(len(bay.spaces) > 1 for bay in bays):
        return
    meet = points_meet(bays, shelf)
    most = min(full_point(shelf), partition / 2 - 0.2 if meet else partition - 1.0)
    if point > most + 1e-9:
        right = f"expected at most {most:.2f} mm: half the shelf, and no further than the partition goes"
        raise CannotBuild([fault("compartments.point", f"{point:g} mm", right)])
