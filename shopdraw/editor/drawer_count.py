"""One more drawer, or one fewer: the settings of the piece file that it takes. Knows no Qt."""

from __future__ import annotations

from shopdraw.editor.division import BANK, divisions_of, fine_size
from shopdraw.editor.handle import unit_of
from shopdraw.editor.state import Setting, State
from shopdraw.editor.typed import kept

_BANK = "opening.bank.divide"
_ALL = ("1", "2", "3", "4")


def one_more_drawer(state: State) -> tuple[Setting, ...]:
    """A drawer more below the others, under a new key; where heights are given, the lowest drawer shares its own."""
    keys, heights = _bank(state)
    if not keys:
        return ()
    used = [int(key) for key in (*keys, *_ALL[: len(keys)]) if key.isdigit()]
    settings = [Setting(f"{_BANK}.keys", [*keys, str(max(used, default=0) + 1)])]
    return tuple(settings + _given(state, [*heights[:-1], heights[-1] / 2] if heights else []))


def one_drawer_fewer(state: State) -> tuple[Setting, ...]:
    """The lowest drawer taken out; empty where only one is left."""
    keys, heights = _bank(state)
    if len(keys) < 2:
        return ()
    return (Setting(f"{_BANK}.keys", [*keys[:-1]]), *_given(state, list(heights[:-2])))


def _bank(state: State) -> tuple[list[str], list[float]]:
    """Keys and heights of the bank's drawers from the top down; none where the piece has no bank."""
    if state.design is None or state.assembly is None:
        return [], []
    bank = next((d for d in divisions_of(state.design, state.assembly) if d.opening == BANK and d.rows), None)
    return ([cell.key for cell in bank.cells], list(bank.sizes)) if bank is not None else ([], [])


def _given(state: State, heights: list[float]) -> list[Setting]:
    """Heights of all but the lowest, where the bank gives them; none where a rule makes them."""
    design = state.design
    bank = design.opening.get("bank") if design else None
    if design is None or bank is None or bank.divide.rule != "given":
        return []
    unit = unit_of(design)
    if not heights:
        return [Setting(f"{_BANK}.rule", "equal"), Setting(f"{_BANK}.sizes", None)]
    return [Setting(f"{_BANK}.sizes", [kept(fine_size(height, unit), unit) for height in heights])]
