"""Divided openings as they came out: which cells a division has, how large they are, and how to give their sizes.

Knows no Qt.
"""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import kept
from shopdraw.measure import Unit
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design, DivideTable, LevelTable
from shopdraw.wood.assembly import Assembly, OpeningFact

BANK = "bank"
"""The opening that a slant-front desk has even where its file names none."""


def unit_of(design: Design) -> Unit:
    """The unit of the piece's bare numbers."""
    return Unit.INCH if design.piece.units == "inch" else Unit.MM


def drawer_key(opening: str) -> str:
    """What the file calls the drawer of an opening: in the bank by its key alone, else by its whole path."""
    return opening.removeprefix(f"{BANK}.")


def level_id(key: str, table: LevelTable) -> str:
    """The id of the board or frame that a level of the file becomes."""
    return f"frame.{key}" if table.member == "web-frame" else f"shelf.{key}"


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell of a division, world mm: x to the right, z up.

    Attributes:
        key: in the division.
        left, bottom, right, top: its clear space.
        drawer: whether a drawer fills it.
    """

    key: str
    left: float
    bottom: float
    right: float
    top: float
    drawer: bool


@dataclass(frozen=True, slots=True)
class Division:
    """A divided opening.

    Attributes:
        opening: its key in the file.
        rows: divided by rows, from the top down; else by columns, from the left.
        rule: how its sizes come about: equal, given, step or ratio.
        cells: in the order of the keys.
    """

    opening: str
    rows: bool
    rule: str
    cells: tuple[Cell, ...]

    @property
    def address(self) -> str:
        """Of the division in the piece file."""
        return address_text(("opening", self.opening, "divide"))

    @property
    def sizes(self) -> tuple[float, ...]:
        """Heights of rows or widths of columns, mm."""
        return tuple(c.top - c.bottom if self.rows else c.right - c.left for c in self.cells)

    @property
    def given(self) -> bool:
        """Whether its sizes are given one by one."""
        return self.rule == "given"

    def name(self, cell: Cell) -> str:
        """What a person calls a cell."""
        whole = drawer_key(f"{self.opening}.{cell.key}")
        if cell.drawer:
            return translate("Division", "Drawer {key}").format(key=whole)
        if self.rows:
            return translate("Division", "Row {key}").format(key=whole)
        return translate("Division", "Bay {key}").format(key=whole)

    def settings(self, sizes: tuple[float, ...], unit: Unit) -> tuple[Setting, ...]:
        """Settings that give the sizes one by one, the last cell taking what is left.

        Args:
            sizes: of all cells, mm.
            unit: the piece's.
        """
        given = Setting(f"{self.address}.sizes", [kept(fine_size(size, unit), unit) for size in sizes[:-1]])
        if self.given:
            return (given,)
        # What is the same in each step of a drag comes first: it is worked out once.
        ruled = Setting(f"{self.address}.rule", "given")
        return (ruled, *(Setting(f"{self.address}.{key}", None) for key in ("step", "ratio")), given)


def divisions_of(design: Design, assembly: Assembly) -> tuple[Division, ...]:
    """The divisions of more than one cell, those first that others lie in."""
    tables = {key: table.divide for key, table in design.opening.items()}
    if assembly.slant is not None:
        tables.setdefault(BANK, DivideTable())
    found = []
    for key, divide in tables.items():
        cells = [_cell(f"{key}.{cell}", cell, assembly) for cell in divide.keys]
        sound = [cell for cell in cells if cell is not None]
        if len(sound) == len(cells) > 1:
            rows = divide.by == "rows"
            # Columns are alike unless the file names a rule; the table's default is meant for rows.
            rule = divide.rule if rows or "rule" in divide.model_fields_set else "equal"
            found.append(Division(key, rows, rule, tuple(sound)))
    return tuple(sorted(found, key=lambda division: division.opening.count(".")))


def fine_size(mm: float, unit: Unit) -> float:
    """A size that a rule worked out, as a person would give it: to 0.1 mm or 1/64 in."""
    step = 0.1 if unit is Unit.MM else float(unit.in_mm) / 64
    return round(mm / step) * step


def _cell(name: str, key: str, assembly: Assembly) -> Cell | None:
    """A cell's clear space, whether it is one opening or is divided further."""
    inside: list[OpeningFact] = [
        opening for opening in assembly.openings if opening.id == name or opening.id.startswith(f"{name}.")
    ]
    if not inside:
        return None
    whole = [opening for opening in inside if opening.id == name]
    return Cell(
        key,
        min(o.left for o in inside),
        min(o.bottom for o in inside),
        max(o.left + o.width for o in inside),
        max(o.bottom + o.height for o in inside),
        bool(whole) and whole[0].use == "drawer",
    )
