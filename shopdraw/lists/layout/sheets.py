"""Strips with restarts by chance of a fixed seed, repairs of the best answer, and the best choice of sheets seen."""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from dataclasses import replace

from shopdraw.lists.layout.clock import worked
from shopdraw.lists.layout.lengths import Lengths, Space
from shopdraw.lists.layout.master import choose
from shopdraw.lists.layout.rectangles import Column, CutSheet, Placed, Rectangles, Strip, least_cost, next_sum
from shopdraw.lists.layout.strips import Attempt, Manner, in_order

_SEED = 5
_SLACKS = (1.0, 0.5, 0.3, 0.15, 0.05)
_NEAR = 1e-6
POLISH = 40
"""Attempts made even when the first one costs no more than the bound: for a larger offcut."""
RESTARTS = 160
"""Attempts from nothing before the best answer is repaired, unless they use up a third of the work."""
REPAIRS_EACH = 10
"""Repairs for each part: with few parts there is soon nothing new to try."""
ROUNDS = 4
"""Rounds of repairs, each followed by a choice; one that saves nothing is the last, unless one step of cost is left."""
OFTEN = 75
"""Up to so many parts a choice takes tenths of a second; of more it takes seconds, and is made once, at the end."""
WORK = 4_000_000
"""Columns and strips looked at in all: the search's own end, the same on every machine; one or two seconds."""
MOST_SEEN = 20_000
MOST_CHOICES = 700
"""Sheets among which the best choice is sought: the fullest."""

Cut = tuple[CutSheet, ...]


class SheetSearch:
    """One search over a problem, strips along x and strips along y."""

    def __init__(self, problem: Rectangles, stop: float) -> None:
        self._problems = (problem, problem.across())
        self._stop = stop
        self._chance = random.Random(_SEED)
        self._work = 0
        self._seen: dict[tuple[int, tuple[int, ...]], CutSheet] = {}
        self.best: Cut | None = None
        self._key: tuple[float, ...] = ()
        self.bound = least_cost(problem)
        self.hurried = False

    def run(self) -> Cut | None:
        """The best answer found; None where the counted sheets ran out in every attempt."""
        for number in range(RESTARTS):
            if (self._over and number >= POLISH) or self._work > WORK / 3:
                break
            self._restart(number)
        often = self._problems[0].number <= OFTEN
        if often:
            self._choose()
        for _ in range(ROUNDS):
            if self.best is None or self._over:
                break
            before = self._cost(self.best)
            self._repairs()
            if often:
                self._choose()
            if self._cost(self.best) >= before - _NEAR and not self._is_near:
                break
        if not often:
            self._choose()
        return self.best

    def _repairs(self) -> None:
        """One round of them."""
        left = REPAIRS_EACH * self._problems[0].number
        while left and not self._over:
            self._repair()
            left -= 1

    @property
    def _over(self) -> bool:
        if worked() > self._stop:
            self.hurried = True
            return True
        return self._reached or self._work > WORK

    @property
    def _reached(self) -> bool:
        return self.best is not None and self._cost(self.best) <= self.bound + _NEAR

    @property
    def _is_near(self) -> bool:
        """No whole sum of prices lies between the bound and the best answer's cost."""
        if self.best is None:
            return False
        if not self._problems[0].whole_costs:
            return True
        prices = [area.cost for area in self._problems[0].areas]
        return self._cost(self.best) <= next_sum(math.ceil(self.bound + 0.5), prices) + _NEAR

    def _cost(self, cut: Sequence[CutSheet]) -> float:
        return sum(self._problems[0].areas[sheet.area].cost for sheet in cut)

    def _size(self, area: int) -> int:
        return self._problems[0].areas[area].x * self._problems[0].areas[area].y

    def _beyond(self, sheet: CutSheet) -> float:
        """The area beyond the last strip: the offcut that stays in one piece."""
        area = self._problems[sheet.across].areas[sheet.area]
        return float(area.x * (area.y - sum(strip.y for strip in sheet.strips)))

    def _manner(self, number: int) -> Manner:
        areas = self._problems[0].areas
        dear = sorted(range(len(areas)), key=lambda i: (areas[i].cost / (areas[i].x * areas[i].y), i))
        if number >= 8 and len(areas) > 1:
            owned = [i for i in dear if areas[i].cost == 0]
            bought = [i for i in dear if areas[i].cost > 0]
            self._chance.shuffle(bought)
            dear = owned + bought
        return Manner(_SLACKS[number % len(_SLACKS)] if number >= 8 else (1.0, 0.15)[number // 4], tuple(dear))

    def _restart(self, number: int) -> None:
        side = number % 2 if number < 8 else self._chance.randrange(2)
        problem = self._problems[side]
        by = (number // 2) % 2 if number < 8 else self._chance.choice((0, 0, 1, 2, 3))
        attempt = Attempt(problem, self._manner(number))
        if self._all_placed(attempt, in_order(problem, self._chance if number >= 8 else None, by)):
            self._offer(attempt.cut(across=bool(side)))

    def _repair(self) -> None:
        """Takes some sheets of the best answer apart, the emptiest among them, and fills again."""
        assert self.best is not None
        side = self._chance.randrange(2)
        problem = self._problems[side]
        fills = [_filled(sheet) for sheet in self.best]
        emptiest = min(range(len(fills)), key=lambda i: fills[i])
        number = min(len(self.best), 1 + self._chance.randrange(1, 4))
        apart = {emptiest, *self._chance.sample(range(len(self.best)), number)}
        crosswise = [i for i, sheet in enumerate(self.best) if sheet.across != bool(side)]
        apart.update(i for i in crosswise if self._chance.random() < 0.3)
        kept = [sheet for i, sheet in enumerate(self.best) if i not in apart]
        mine = [sheet for sheet in kept if sheet.across == bool(side)]
        others = [sheet for sheet in kept if sheet.across != bool(side)]
        counts = [0] * len(problem.wanted)
        for i in sorted(apart):
            for placed in _placed(self.best[i]):
                counts[placed.kind] += 1
        rest = Rectangles(
            tuple(replace(one, count=count) for one, count in zip(problem.wanted, counts, strict=True)), problem.areas
        )
        areas = list(problem.areas)
        for sheet in others:
            count = areas[sheet.area].count
            if count is not None:
                areas[sheet.area] = replace(areas[sheet.area], count=count - 1)
        attempt = Attempt(rest, self._manner(8 + self._chance.randrange(100)), areas)
        attempt.keep(mine)
        if self._all_placed(attempt, in_order(rest, self._chance, self._chance.choice((0, 0, 1, 2, 3)))):
            self._offer(attempt.cut(across=bool(side)), others)

    def _all_placed(self, attempt: Attempt, turns: Sequence[tuple[int, tuple[tuple[int, int, bool], ...]]]) -> bool:
        placed = all(attempt.place(turn) for turn in turns)
        self._work += attempt.looked
        return placed

    def _offer(self, cut: Sequence[CutSheet], others: Sequence[CutSheet] = ()) -> None:
        made: Cut = (*cut, *others)
        kinds = len(self._problems[0].wanted)
        if len(self._seen) < MOST_SEEN:
            for sheet in made:
                self._seen.setdefault((sheet.area, sheet.held(kinds)), sheet)
        key = (self._cost(made), float(len(made)), -sum((_filled(sheet) / 1e6) ** 2 for sheet in made))
        if self._cost(made) <= self.bound + _NEAR:
            key = (*key[:2], -max(self._beyond(sheet) for sheet in made))
        if self.best is None or key <= self._key:
            self.best, self._key = made, key

    @property
    def _step(self) -> float:
        """Less than the least that a cheaper answer can save."""
        return 0.5 if self._problems[0].whole_costs else 0.0

    def _choose(self) -> None:
        """The cheapest choice among all sheets that any attempt has cut, where that may be cheaper."""
        if self.best is None or self.hurried or self._reached:
            return
        problem = self._problems[0]
        lengths = Lengths(
            (1,) * len(problem.wanted),
            tuple(one.count for one in problem.wanted),
            tuple(Space(1, area.cost, area.count) for area in problem.areas),
        )
        fullest = sorted(self._seen, key=lambda seen: -_filled(self._seen[seen]) / self._size(seen[0]))
        fills = fullest[:MOST_CHOICES]
        chosen, _, late = choose(lengths, fills, self._stop - worked(), 60, self._cost(self.best) - self._step)
        self.hurried = late
        if chosen is None:
            return
        left = list(lengths.demand)
        made = [sheet for sheet in (_without(self._seen[fill], left) for fill in chosen) if sheet.strips]
        if self._cost(made) < self._cost(self.best) - _NEAR:
            self._offer(made)


def _filled(sheet: CutSheet) -> int:
    return sum(placed.x * placed.y for placed in _placed(sheet))


def _placed(sheet: CutSheet) -> list[Placed]:
    return [placed for strip in sheet.strips for column in strip.columns for placed in column.placed]


def _without(sheet: CutSheet, left: list[int]) -> CutSheet:
    """The sheet without what is there already; `left` is counted down."""
    strips: list[Strip] = []
    for strip in sheet.strips:
        columns: list[Column] = []
        for column in strip.columns:
            kept: list[Placed] = []
            for placed in column.placed:
                if left[placed.kind]:
                    left[placed.kind] -= 1
                    kept.append(placed)
            if kept:
                columns.append(Column(column.x, tuple(kept)))
        if columns:
            strips.append(Strip(strip.y, tuple(columns)))
    return replace(sheet, strips=tuple(strips))
