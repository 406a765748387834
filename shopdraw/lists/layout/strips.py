"""Rip, then crosscut: rectangles one by one into columns of strips of sheets, wherever they waste least."""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass, field

from shopdraw.lists.layout.rectangles import Area, Column, CutSheet, Placed, Rectangles, Strip


@dataclass(slots=True, eq=False)
class _Column:
    x: int
    left: int
    placed: list[Placed]


@dataclass(slots=True, eq=False)
class _Strip:
    y: int
    left: int
    columns: list[_Column]
    room: int = 0
    """The most that is left in any of its columns."""


@dataclass(slots=True, eq=False)
class _Sheet:
    area: int
    x: int
    left: int
    strips: list[_Strip] = field(default_factory=list)
    filled: int = 0
    as_cut: CutSheet | None = None
    """What it was taken over from, while nothing more has been put on it."""


@dataclass(frozen=True, slots=True)
class Manner:
    """How one attempt goes about it.

    Attributes:
        slack: share of a strip's width that a rectangle may leave beside it while a strip of its own could be opened.
        dear: kinds of sheets in the order in which they are opened.
    """

    slack: float
    dear: tuple[int, ...]


Turn = tuple[int, tuple[tuple[int, int, bool], ...]]
"""A rectangle whose turn it is: its kind and the ways it may lie."""


_Spot = tuple[_Sheet, _Strip, _Column | None, int, int, bool]
"""Sheet, strip and column (None for a new one) of a rectangle, how it lies there along x and y, whether turned."""


class Attempt:
    """Sheets being filled."""

    def __init__(self, problem: Rectangles, manner: Manner, areas: Sequence[Area] | None = None) -> None:
        """Begins with no sheet opened.

        Args:
            problem: what is wanted.
            manner: how to go about it.
            areas: what sheets there are; None for those of the problem.
        """
        self._areas = problem.areas if areas is None else areas
        self._manner = manner
        self._least = problem.least_ways
        self._left = [area.count for area in self._areas]
        self._sheets: list[_Sheet] = []
        self._open_strips: list[tuple[_Sheet, _Strip]] = []
        """Those that may hold one more rectangle."""
        self.looked = 0
        """Columns and strips looked at: the measure of work done."""

    def keep(self, sheets: Sequence[CutSheet]) -> None:
        """Takes over sheets as they were cut, to go on filling them."""
        for cut in sheets:
            sheet = self._open(cut.area)
            for strip in cut.strips:
                made = self._rip(sheet, strip.y)
                for column in strip.columns:
                    made.left -= column.x
                    taken = sum(placed.y for placed in column.placed)
                    made.columns.append(_Column(column.x, strip.y - taken, list(column.placed)))
                    made.room = max(made.room, strip.y - taken)
                    sheet.filled += sum(placed.x * placed.y for placed in column.placed)
                if not self._is_full(made):
                    self._open_strips.append((sheet, made))
            sheet.as_cut = cut

    def place(self, turn: Turn) -> bool:
        """Puts a rectangle where it wastes least; False where no sheet is left to open."""
        kind, ways = turn
        self.looked += 6
        return self._in_open_strip(kind, ways, self._manner.slack) or (
            self._in_new_strip(kind, ways)
            or (self._manner.slack < 1 and self._in_open_strip(kind, ways, 1.0))
            or self._in_new_sheet(kind, ways)
        )

    def cut(self, *, across: bool) -> tuple[CutSheet, ...]:
        """What has become of the sheets, each exchanged for the cheapest kind that holds its strips.

        Args:
            across: what the sheets say of their x and y.
        """
        return tuple(self._cut(sheet, across) for sheet in self._sheets if sheet.strips)

    def _cut(self, sheet: _Sheet, across: bool) -> CutSheet:
        kind, known = self._cheapest(sheet), sheet.as_cut
        if known is not None and known.area == kind and known.across == across:
            return known
        strips = [
            Strip(strip.y, tuple([Column(column.x, tuple(column.placed)) for column in strip.columns]))
            for strip in sheet.strips
        ]
        return CutSheet(kind, tuple(strips), across)

    def _in_open_strip(self, kind: int, ways: tuple[tuple[int, int, bool], ...], slack: float) -> bool:
        spot = self._open_spot(ways, slack)
        if spot is None:
            return False
        sheet, strip, found, x, y, turned = spot
        placed = Placed(kind, x, y, turned)
        if found is None:
            strip.columns.append(_Column(x, strip.y - y, [placed]))
            strip.left -= x
            strip.room = max(strip.room, strip.y - y)
        else:
            found.placed.append(placed)
            found.left -= y
            strip.room = max(column.left for column in strip.columns)
        sheet.filled += x * y
        sheet.as_cut = None
        if self._is_full(strip):
            self._open_strips.remove((sheet, strip))
        return True

    def _open_spot(self, ways: tuple[tuple[int, int, bool], ...], slack: float) -> _Spot | None:
        """Where a rectangle wastes least in the strips that are there, of equals the first; None where it fits none."""
        least, looked = -1, 0
        spot: _Spot | None = None
        for x, y, turned in ways:
            for sheet, strip in self._open_strips:
                over = strip.y - y
                if over < 0:
                    continue
                columns = strip.columns if strip.room >= y else ()
                looked += len(columns) + 2
                for column in columns:
                    if column.left >= y and column.x >= x:
                        waste = (column.x - x) * y
                        if least < 0 or waste < least:
                            least, spot = waste, (sheet, strip, column, x, y, turned)
                if strip.left >= x and over <= slack * strip.y:
                    waste = over * x
                    if least < 0 or waste < least:
                        least, spot = waste, (sheet, strip, None, x, y, turned)
                if not least:
                    self.looked += looked
                    return spot
        self.looked += looked
        return spot

    def _in_new_strip(self, kind: int, ways: tuple[tuple[int, int, bool], ...]) -> bool:
        least = -1
        spot: tuple[_Sheet, int, int, bool] | None = None
        for x, y, turned in ways:
            for sheet in self._sheets:
                if sheet.left >= y and sheet.x >= x and (least < 0 or sheet.left - y < least):
                    least, spot = sheet.left - y, (sheet, x, y, turned)
        if spot is None:
            return False
        sheet, x, y, turned = spot
        self._first(self._rip(sheet, y), sheet, Placed(kind, x, y, turned))
        return True

    def _in_new_sheet(self, kind: int, ways: tuple[tuple[int, int, bool], ...]) -> bool:
        for area in self._manner.dear:
            if self._left[area] == 0:
                continue
            for x, y, turned in ways:
                if self._areas[area].x >= x and self._areas[area].y >= y:
                    sheet = self._open(area)
                    self._first(self._rip(sheet, y), sheet, Placed(kind, x, y, turned))
                    return True
        return False

    def _open(self, area: int) -> _Sheet:
        count = self._left[area]
        if count is not None:
            self._left[area] = count - 1
        sheet = _Sheet(area, self._areas[area].x, self._areas[area].y)
        self._sheets.append(sheet)
        return sheet

    def _rip(self, sheet: _Sheet, y: int) -> _Strip:
        strip = _Strip(y, sheet.x, [])
        sheet.as_cut = None
        sheet.strips.append(strip)
        sheet.left -= y
        return strip

    def _first(self, strip: _Strip, sheet: _Sheet, placed: Placed) -> None:
        strip.columns.append(_Column(placed.x, strip.y - placed.y, [placed]))
        strip.room = strip.y - placed.y
        strip.left -= placed.x
        sheet.filled += placed.x * placed.y
        if not self._is_full(strip):
            self._open_strips.append((sheet, strip))

    def _is_full(self, strip: _Strip) -> bool:
        """Whether no rectangle of all fits any more."""
        return strip.left < self._least[0] and strip.room < self._least[1]

    def _cheapest(self, sheet: _Sheet) -> int:
        needed_x = max(sheet.x - strip.left for strip in sheet.strips)
        needed_y = self._areas[sheet.area].y - sheet.left
        best = sheet.area
        for other, area in enumerate(self._areas):
            fits = area.x >= needed_x and area.y >= needed_y and self._left[other] != 0
            if fits and area.cost < self._areas[best].cost:
                best = other
        if best != sheet.area:
            for area_index, change in ((best, -1), (sheet.area, 1)):
                count = self._left[area_index]
                if count is not None:
                    self._left[area_index] = count + change
        return best


def in_order(problem: Rectangles, chance: random.Random | None, by: int) -> list[Turn]:
    """All rectangles, largest first by one of several measures, shaken a little by chance.

    Args:
        problem: what is wanted.
        chance: None for the plain order.
        by: 0 along y, 1 area, 2 along x, 3 the longer side.
    """
    keyed: list[tuple[float, int]] = []
    for kind, one in enumerate(problem.wanted):
        size = (one.y + one.x * 1e-4, float(one.x * one.y), one.x + one.y * 1e-4, float(max(one.x, one.y)))[by]
        shaken = (1.0 if chance is None else 1.0 + chance.uniform(-0.25, 0.25) for _ in range(one.count))
        keyed.extend((-size * factor, kind) for factor in shaken)
    keyed.sort()
    return [(kind, problem.wanted[kind].ways) for _, kind in keyed]
