"""How the space of a case is divided: fixed and loose levels, openings above them, rows and columns, what fills them.

An opening is the clear space above a fixed level. It may be divided by rows, between which lie web frames where drawers
run and shelves elsewhere, or by columns, between which stand dividers; each row may be divided into columns again.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from shopdraw.build.bank import BankDisagrees, bank_heights
from shopdraw.build.cannot import CannotBuild, fault
from shopdraw.build.case_plan import CasePlan, Level, Row, Space, Upright
from shopdraw.build.level import levels_between
from shopdraw.piece.design import DivideTable, LevelTable, OpeningTable

LEAST_COLUMN_MM = 100.0
"""No column narrower than this is built (common practice)."""
BANK = "bank"
"""The opening whose drawers are called by their keys alone."""


@dataclass(frozen=True, slots=True)
class Clear:
    """A clear space: the ids of what is below and above it, its heights and its sides in the world, mm."""

    below: str
    above: str
    floor: float
    ceiling: float
    left: float
    right: float

    @property
    def height(self) -> float:
        """Clear height, mm."""
        return self.ceiling - self.floor


def space_of(
    case: CasePlan, openings: Mapping[str, OpeningTable], levels: Mapping[str, LevelTable], ceiling: float, above: str
) -> Space:
    """Divide a case.

    Args:
        case: its sizes.
        openings: by id; `ID.key` is a cell of `ID`.
        levels: between bottom and ceiling, by key, from the bottom up.
        ceiling: world z of the underside of what closes the space above, mm.
        above: id of that board or frame.
    Raises:
        CannotBuild: levels or openings that don't fit, with their addresses and what would be right.
    """
    laid = levels_between(case, levels, ceiling)
    dividing = _Dividing(case, openings)
    fixed = [("bottom", "bottom", case.bottom_top)]
    fixed += [(key, level.id, level.top) for key, level in laid.items() if level.kind != "pinned-shelf"]
    by_level = _by_level(openings, [key for key, _, _ in fixed])
    undersides = [laid[key].under for key, _, _ in fixed[1:]]
    for number in reversed(range(len(fixed))):
        key, below, top = fixed[number]
        last = number + 1 == len(fixed)
        over, under = (above, ceiling) if last else (fixed[number + 1][1], undersides[number])
        clear = Clear(below, over, top, under, case.left, case.right)
        opening = by_level.get(key)
        if opening is None:
            dividing.keep(f"above.{key}", f"above.{key}", clear, "none")
        else:
            loose = [one for one, level in laid.items() if level.kind == "pinned-shelf" and top < level.top < under]
            _refuse_loose(opening, openings[opening], loose)
            dividing.divide(opening, openings[opening], clear)
    dividing.refuse_strangers()
    every = sorted([*laid.values(), *dividing.levels], key=lambda level: level.top)
    return Space(tuple(every), tuple(dividing.cells), tuple(dividing.uprights))


def _by_level(openings: Mapping[str, OpeningTable], keys: list[str]) -> dict[str, str]:
    """The opening above each level, by the level's key."""
    found: dict[str, str] = {}
    for id, table in openings.items():
        if "." in id:
            continue
        if table.above not in keys:
            known = ", ".join(f'"{key}"' for key in keys)
            raise CannotBuild([fault(f"opening.{id}.above", f'"{table.above}"', f"expected a fixed level: {known}")])
        if table.above in found:
            right = f'expected a level of its own: opening "{found[table.above]}" lies there'
            raise CannotBuild([fault(f"opening.{id}.above", f'"{table.above}"', right)])
        found[table.above] = id
    return found


def _refuse_loose(id: str, table: OpeningTable, loose: list[str]) -> None:
    """A shelf on pins lies between the case's sides: in a space that is divided, or has drawers, it can't."""
    if loose and (_divides(id, table) or table.fill == "drawer"):
        what = "is divided" if _divides(id, table) else "has a drawer"
        right = f"expected a shelf or none: opening {id}, in which it would lie on its pins, {what}"
        raise CannotBuild([fault(f"level.{loose[0]}.member", '"pinned-shelf"', right)])


class _Dividing:
    """Collects levels, cells and dividers while one opening after the other is divided."""

    def __init__(self, case: CasePlan, openings: Mapping[str, OpeningTable]) -> None:
        self._case, self._openings = case, openings
        self._used: set[str] = set()
        self.levels: list[Level] = []
        self.cells: list[Row] = []
        self.uprights: list[Upright] = []

    def divide(self, id: str, table: OpeningTable, clear: Clear) -> None:
        """Divide one opening, and the cells of its rows again where the piece says so."""
        self._used.add(id)
        if not _divides(id, table):
            self.keep(id, id, clear, table.fill)
        elif table.divide.by == "columns":
            self._columns(id, table, clear)
        else:
            self._rows(id, table, clear)

    def keep(self, id: str, key: str, clear: Clear, fill: str) -> None:
        """An opening or a cell that is divided no further."""
        if fill == "lid-supports":
            right = "expected drawer, pigeonhole or none: lid supports stand beside the topmost drawer of a slant-desk"
            raise CannotBuild([fault(f"opening.{id}.fill", '"lid-supports"', right)])
        self.cells.append(
            Row(key, clear.floor, clear.height, clear.below, clear.left, clear.right, fill=fill, opening=id)
        )

    def _rows(self, id: str, table: OpeningTable, clear: Clear) -> None:
        drawers = table.fill == "drawer"
        stock = self._case.stocks.of("frame" if drawers else "shelf")
        family, kind = ("frame", "web-frame") if drawers else ("shelf", "shelf")
        try:
            heights = _shares(self._case, table.divide, clear.height, stock.thickness)
        except BankDisagrees as error:
            raise CannotBuild([fault(f"opening.{id}.divide", "", str(error))]) from error
        keys, top, above = table.divide.keys, clear.ceiling, clear.above
        for key, height in zip(keys, heights, strict=True):
            name, floor = _name(id, key), top - height
            below = clear.below if key == keys[-1] else f"{family}.{name}"
            row = replace(clear, below=below, above=above, floor=floor, ceiling=top)
            self._cell(f"{id}.{key}", name, row, table.fill, again=True)
            if key != keys[-1]:
                self.levels.append(Level(below, kind, floor, stock.thickness))
            top, above = floor - stock.thickness, below

    def _columns(self, id: str, table: OpeningTable, clear: Clear) -> None:
        between = self._case.stocks.of("divider").thickness
        keys, width = table.divide.keys, clear.right - clear.left
        free = width - (len(keys) - 1) * between
        try:
            widths = _shares(self._case, table.divide, width, between)
        except BankDisagrees:
            widths = (0.0,) * len(keys)
        if min(widths) < LEAST_COLUMN_MM:
            right = (
                f"expected columns that add up to {free:.1f} mm, each at least {LEAST_COLUMN_MM:g} mm: "
                "fewer columns, other sizes, or a wider case"
            )
            found = f"{len(keys)} columns in {width:.1f} mm with dividers of {between:g} mm"
            raise CannotBuild([fault(f"opening.{id}.divide", found, right)])
        left = clear.left
        for key, wide in zip(keys, widths, strict=True):
            name = _name(id, key)
            cell = replace(clear, left=left, right=left + wide)
            self._cell(f"{id}.{key}", name, cell, table.fill, again=False)
            left += wide
            if key != keys[-1]:
                words = f"divider right of {name}"
                here = Upright(f"divider.{name}", words, left, clear.floor, clear.ceiling, clear.below, clear.above)
                self.uprights.append(here)
                left += between

    def _cell(self, id: str, name: str, clear: Clear, fill: str, *, again: bool) -> None:
        """A row or a column, with what the piece says about it alone."""
        table = self._openings.get(id)
        if table is None:
            self.keep(id, name, clear, fill)
            return
        self._used.add(id)
        own = table.fill if "fill" in table.model_fields_set else fill
        if "divide" not in table.model_fields_set:
            self.keep(id, name, clear, own)
        elif again and table.divide.by == "columns":
            self._columns(id, table.model_copy(update={"fill": own}), clear)
        else:
            right = "expected columns in a row, or a fill alone: rows are divided into columns and these no further"
            raise CannotBuild([fault(f"opening.{id}.divide", f"by {table.divide.by}", right)])

    def refuse_strangers(self) -> None:
        """A table for a cell that there isn't."""
        for id in self._openings:
            if id not in self._used:
                parent = id.rpartition(".")[0]
                right = f"expected a key of opening.{parent}.divide.keys"
                raise CannotBuild([fault(f"opening.{id}", "a cell that there isn't", right)])


def _divides(id: str, table: OpeningTable) -> bool:
    """Whether an opening is divided: where the file says so; the bank of drawers always is."""
    return "divide" in table.model_fields_set or (id == BANK and table.fill == "drawer")


def _name(id: str, key: str) -> str:
    """What boards of a cell are called by: "2" in the bank, else the whole path."""
    whole = f"{id}.{key}"
    return whole.removeprefix(f"{BANK}.")


def _shares(case: CasePlan, divide: DivideTable, total: float, between: float) -> tuple[float, ...]:
    """Clear sizes in the order of the keys, mm; columns are equal unless a rule is given."""
    rule = divide.rule if divide.by == "rows" or "rule" in divide.model_fields_set else "equal"
    inch = case.design.piece.units == "inch"
    return bank_heights(
        total,
        between,
        len(divide.keys),
        rule,
        step=divide.step if divide.step is not None else (19.05 if inch else 20.0),
        ratio=divide.ratio if divide.ratio is not None else 1.15,
        sizes=divide.sizes,
    )
