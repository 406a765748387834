"""Dimensions of what lies inside a case: rows, columns, levels, clear spaces, bays and their shelves. Knows no Qt."""

from __future__ import annotations

from shopdraw.editor.bay import BaySpaces, bays_of, divisions_beside, own_table, takes_the_rest
from shopdraw.editor.division import BANK, Division, level_id, unit_of
from shopdraw.editor.figure import Figure
from shopdraw.editor.state import Setting
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import Typed, kept
from shopdraw.measure import Unit
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly, LevelFact, OpeningFact

_NEAR_MM = 0.05
_ABOVE = "above."
"""What the id of a space begins with that the file says nothing of."""
SUPPORTS = "supports"
SPACE_FIGURES = (0.28, 0.72)
"""Where in a bay the heights under its shelves are measured, in turn, as a part of its width."""
COLUMN_FIGURE = 0.25
"""How high in a column its width is measured, as a part of its height; the handle of its divider is in the middle."""


def opening_figures(design: Design, assembly: Assembly) -> list[Figure]:
    """All dimensions inside the case, in the front view."""
    bays = bays_of(design, assembly)
    divisions = divisions_beside(design, assembly, bays)
    found: list[Figure] = []
    for division in divisions:
        found += _cell_figures(division, unit_of(design))
    found += _rail(design, assembly, divisions)
    found += _spaces(design, assembly, divisions, bays)
    found += _levels(design, assembly)
    found += _supports(assembly)
    for bay in bays:
        found += _bay_figures(design, bay, bays)
    return found


# Rows and columns


def _cell_figures(division: Division, unit: Unit) -> list[Figure]:
    """Heights of rows beside the view; widths of columns in the columns themselves, low enough for handles."""
    found = []
    for index, cell in enumerate(division.cells):
        last = index == len(division.cells) - 1

        def sets(typed: Typed, index: int = index) -> tuple[Setting, ...]:
            moved = list(division.sizes)
            moved[index] = typed.mm
            return division.settings(tuple(moved), unit)

        free = division.given and not last
        drives: tuple[str, ...] = (f"{division.address}.{'sizes' if division.given else 'rule'}",)
        if last:
            drives = (*drives, "case.height" if division.rows else "case.width")
        low = cell.bottom + COLUMN_FIGURE * (cell.top - cell.bottom)
        ends = ((0.0, cell.bottom), (0.0, cell.top)) if division.rows else ((cell.left, low), (cell.right, low))
        found.append(
            Figure(
                f"opening.{division.opening}.{cell.key}@front",
                division.name(cell),
                "front",
                *ends,
                "left" if division.rows else "below",
                1,
                division.sizes[index],
                None if last else sets,
                drives=() if free else drives,
                says="" if free else _what_drives(division, last),
                handle=f"{division.address}/{cell.key}",
                line=None if division.rows else low,
            )
        )
    return found


def _what_drives(division: Division, last: bool) -> str:
    if last:
        return translate("Figure", "The last one takes what the others leave: change their sizes, or the case's.")
    rules = {
        "equal": translate("Figure", "all alike"),
        "step": translate("Figure", "each larger by a step"),
        "ratio": translate("Figure", "each larger by a factor"),
    }
    told = translate(
        "Figure", "This size follows from the rule “{rule}”. Type here to give the sizes one by one instead."
    )
    return told.format(rule=rules.get(division.rule, division.rule))


def _rail(design: Design, assembly: Assembly, divisions: tuple[Division, ...]) -> list[Figure]:
    """What is left over the topmost drawer of a desk, up to the writing surface."""
    bank = next((division for division in divisions if division.opening == BANK), None)
    if assembly.slant is None or bank is None:
        return []
    ceiling, writing = bank.cells[0].top, assembly.slant.writing_height_mm
    given = design.case.top_rail is not None
    return [
        Figure(
            "opening.bank:top/writing@front",
            translate("Size", "Rail over the top drawer"),
            "front",
            (assembly.width, ceiling),
            (assembly.width, writing),
            "right",
            1,
            writing - ceiling,
            lambda typed: (Setting("case.top_rail", typed.keeps),),
            drives=() if given else ("case.top_rail", "drawer.front"),
            says=""
            if given
            else translate("Figure", "It follows from lid and drawer front. Type here to give it instead."),
            handle="case.top_rail",
        )
    ]


# Levels and the clear spaces between them


def _levels(design: Design, assembly: Assembly) -> list[Figure]:
    """The upper face of each level of the file, from the floor."""
    facts = {fact.id: fact for fact in assembly.levels}
    found = []
    keys = list(design.level)
    for number, (key, table) in enumerate(design.level.items()):
        fact = facts.get(level_id(key, table))
        if fact is None:
            continue
        address = address_text(("level", key, "top"))
        given = table.top is not None
        found.append(
            Figure(
                f"floor/level.{key}@front",
                translate("Size", "Level {key}").format(key=key),
                "front",
                (0.0, 0.0),
                (0.0, fact.top),
                "left",
                2,
                fact.top,
                lambda typed, address=address: (Setting(address, typed.keeps),),  # type: ignore[misc]
                drives=() if given else _neighbours(design, keys, number),
                says=""
                if given
                else translate("Figure", "It shares the space between its neighbours. Type here to give it instead."),
                handle=address,
            )
        )
    return found


def _neighbours(design: Design, keys: list[str], number: int) -> tuple[str, ...]:
    """What a level whose height isn't given follows from: the next given ones below and above, or the case."""
    below = next((key for key in reversed(keys[:number]) if design.level[key].top is not None), None)
    above = next((key for key in keys[number + 1 :] if design.level[key].top is not None), None)
    return (
        "base.height" if below is None else address_text(("level", below, "top")),
        "case.height" if above is None else address_text(("level", above, "top")),
    )


def _spaces(
    design: Design, assembly: Assembly, divisions: tuple[Division, ...], bays: tuple[BaySpaces, ...]
) -> list[Figure]:
    """The clear height of each space over a level; one that is divided by rows is measured by these."""
    by_rows = {division.opening for division in divisions if division.rows}
    rooms = {bay.room for bay in bays} if assembly.slant is not None else set()
    found = []
    for name, facts in _by_space(assembly).items():
        if name in by_rows or name == SUPPORTS or name in rooms:
            continue
        low, high = min(f.bottom for f in facts), max(f.bottom + f.height for f in facts)
        loose = [level for level in assembly.levels if low + _NEAR_MM < level.top < high - _NEAR_MM]
        heights = [low, *(height for one in sorted(loose, key=_top) for height in (one.top - one.thickness, one.top))]
        ends = list(zip(heights[::2], [*heights[1::2], high], strict=True))
        for number, (floor, ceiling) in enumerate(ends, start=1):
            space = _Space(name, number if len(ends) > 1 else 0, floor, ceiling)
            found.append(space.figure(design, assembly))
    return found


def _by_space(assembly: Assembly) -> dict[str, list[OpeningFact]]:
    """Openings by the space over a level that they lie in."""
    found: dict[str, list[OpeningFact]] = {}
    for fact in assembly.openings:
        name = fact.id if fact.id.startswith(_ABOVE) else fact.id.partition(".")[0]
        found.setdefault(name, []).append(fact)
    return found


def _top(level: LevelFact) -> float:
    return level.top


class _Space:
    """A clear space, from one horizontal member to the next one."""

    def __init__(self, opening: str, number: int, floor: float, ceiling: float) -> None:
        self._opening, self._number = opening, number
        self._floor, self._ceiling = floor, ceiling

    def figure(self, design: Design, assembly: Assembly) -> Figure:
        """Its clear height; typing moves the level above it, where the file has that one."""
        over = next((f for f in assembly.levels if abs(f.top - f.thickness - self._ceiling) < _NEAR_MM), None)
        keys = {level_id(key, table): key for key, table in design.level.items()}
        key = keys.get(over.id) if over is not None else None
        tail = f":{self._number}" if self._number else ""
        address = address_text(("level", key, "top")) if key is not None else ""
        thickness = over.thickness if over is not None else 0.0

        def sets(typed: Typed) -> tuple[Setting, ...]:
            return (Setting(address, kept(self._floor + typed.mm + thickness, unit_of(design))),)

        return Figure(
            f"opening.{self._opening}{tail}@front",
            self._name(),
            "front",
            (0.0, self._floor),
            (0.0, self._ceiling),
            "left",
            1,
            self._ceiling - self._floor,
            sets if address else None,
            drives=(address,) if address else ("case.height", *self._below(assembly, keys)),
            says=translate("Figure", "It follows from the levels. Type here to move the level above it.")
            if address
            else translate("Figure", "It takes what is left under the top: change the case's height, or the levels."),
            handle=address,
        )

    def _name(self) -> str:
        if not self._opening.startswith(_ABOVE):
            name = translate("Size", "Opening {key}, clear height").format(key=self._opening)
        elif self._opening == f"{_ABOVE}bottom":
            name = translate("Size", "Clear height over the bottom")
        else:
            name = translate("Size", "Clear height over level {key}").format(key=self._opening.removeprefix(_ABOVE))
        return f"{name} ({self._number})" if self._number else name

    def _below(self, assembly: Assembly, keys: dict[str, str]) -> tuple[str, ...]:
        under = next((f for f in assembly.levels if abs(f.top - self._floor) < _NEAR_MM and f.id in keys), None)
        return (address_text(("level", keys[under.id], "top")),) if under is not None else ()


# Beside a desk's topmost drawer, and compartments


def _supports(assembly: Assembly) -> list[Figure]:
    """The width of the space that a lid support runs in."""
    fact = next((one for one in assembly.openings if one.id == f"{SUPPORTS}.left"), None)
    if fact is None:
        return []
    return [
        Figure(
            "opening.supports.left@plan",
            translate("Size", "Space for a support"),
            "plan",
            (fact.left, 0.0),
            (fact.left + fact.width, 0.0),
            "below",
            1,
            fact.width,
            None,
            drives=("supports.clearance", "supports.layers"),
            says=translate("Figure", "As wide as the support's stock and a clearance at each side."),
        )
    ]


def _bay_figures(design: Design, bay: BaySpaces, bays: tuple[BaySpaces, ...]) -> list[Figure]:
    """A bay's clear width, and the clear heights under its shelves inside it."""
    given = own_table(design, bay).width is not None
    rest = takes_the_rest(design, bay, bays)
    others = tuple(one.width_address for one in bays if one.room == bay.room and one.key != bay.key)
    told = (
        translate("Figure", "The last one takes what the others leave: change their sizes, or the case's.")
        if rest
        else translate("Figure", "Bays without a width of their own share what is left. Type here to give this one.")
    )
    width = Figure(
        f"compartments.{bay.room}.{bay.key}@front",
        translate("Size", "{bay}, clear width").format(bay=bay.name),
        "front",
        (bay.left, bay.spaces[-1][1]),
        (bay.right, bay.spaces[-1][1]),
        "above",
        1,
        bay.right - bay.left,
        None if rest else lambda typed: (Setting(bay.width_address, typed.keeps),),
        drives=() if given else ("case.width", *others) if rest else (_shared_by(design, bay),),
        says="" if given else told,
        handle=bay.width_address,
    )
    found = [width]
    for number, (low, high) in enumerate(bay.spaces if len(bay.spaces) > 1 else ()):
        last = number == len(bay.spaces) - 1
        # Low spaces have no room for their words beside those of the next one: they take turns.
        across = bay.left + SPACE_FIGURES[number % len(SPACE_FIGURES)] * (bay.right - bay.left)

        def sets(typed: Typed, number: int = number) -> tuple[Setting, ...]:
            return bay.with_height(number, typed.mm, design)

        found.append(
            Figure(
                f"compartments.{bay.room}.{bay.key}:{number + 1}@front",
                translate("Size", "{bay}, space {number}").format(bay=bay.name, number=number + 1),
                "front",
                (across, low),
                (across, high),
                "left",
                1,
                high - low,
                None if last else sets,
                drives=("slant.writing_height", "case.height") if last else (),
                says=translate("Figure", "The last one takes what the others leave: change their sizes, or the case's.")
                if last
                else "",
                handle="" if last else f"{bay.shelves_address}/{number + 1}",
                line=across,
            )
        )
    return found


def _shared_by(design: Design, bay: BaySpaces) -> str:
    """The input that says how bays without a width of their own come about."""
    columns = bay.room in design.opening and "divide" in design.opening[bay.room].model_fields_set
    return address_text(("opening", bay.room, "divide", "rule")) if columns else "compartments.bays"
