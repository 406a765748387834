"""One more drawer, or one fewer: the settings of the piece file that it takes. Knows no Qt."""

from __future__ import annotations

from shopdraw.editor.division import BANK, Division, divisions_of, fine_size, unit_of
from shopdraw.editor.state import Setting, State
from shopdraw.editor.typed import kept
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design


def one_more_drawer(state: State) -> tuple[Setting, ...]:
    """A drawer more below the others, under a key that nothing had before; given heights: the lowest shares its own."""
    design, bank = state.design, bank_of(state)
    if design is None or bank is None:
        return ()
    keys, heights = [cell.key for cell in bank.cells], list(bank.sizes)
    new = str(max(_numbers(design, bank), default=0) + 1)
    settings = [Setting(f"{bank.address}.keys", [*keys, new])]
    return tuple(settings + _given(design, bank, [*heights[:-1], heights[-1] / 2]))


def one_drawer_fewer(state: State) -> tuple[Setting, ...]:
    """The lowest drawer taken out, with what the file says of it alone; empty where only one is left."""
    design, bank = state.design, bank_of(state)
    if design is None or bank is None or len(bank.cells) < 2:
        return ()
    *kept_cells, last = bank.cells
    path = f"{bank.opening}.{last.key}"
    alone = [
        Setting(address_text(("opening", name)), None)
        for name in design.opening
        if name == path or name.startswith(f"{path}.")
    ]
    keys = Setting(f"{bank.address}.keys", [cell.key for cell in kept_cells])
    return (keys, *alone, *_given(design, bank, list(bank.sizes[:-2])))


def bank_of(state: State) -> Division | None:
    """The rows that drawers are added to: the bank, else the first opening with drawers over each other."""
    if state.design is None or state.assembly is None:
        return None
    rows = [division for division in divisions_of(state.design, state.assembly) if division.rows]
    drawers = [d for d in rows if d.opening == BANK or any(cell.drawer for cell in d.cells)]
    return next((d for d in drawers if d.opening == BANK), drawers[0] if drawers else None)


def _numbers(design: Design, bank: Division) -> list[int]:
    """Every number that is, or was, the key of a row: of a row there now, of a table for a row or for its drawer."""
    paths = [f"{bank.opening}.{cell.key}" for cell in bank.cells]
    own = [f"{BANK}.{key}" for key in design.drawer.each] if bank.opening == BANK else list(design.drawer.each)
    behind = [path.removeprefix(f"{bank.opening}.") for path in (*paths, *design.opening, *own)
              if path.startswith(f"{bank.opening}.")]  # fmt: skip
    return [int(key.partition(".")[0]) for key in behind if key.partition(".")[0].isdigit()]


def _given(design: Design, bank: Division, heights: list[float]) -> list[Setting]:
    """Heights of all but the lowest, where the file gives them; none where a rule makes them."""
    if not bank.given:
        return []
    if not heights:
        return [Setting(f"{bank.address}.rule", "equal"), Setting(f"{bank.address}.sizes", None)]
    unit = unit_of(design)
    return [Setting(f"{bank.address}.sizes", [kept(fine_size(height, unit), unit) for height in heights])]
