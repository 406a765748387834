"""Small sketches of the trade's terms, for the form: what a size means, drawn as simply as it can be. Knows no Qt.

A sketch is drawn in a square of 100 by 70; what the term names is a dimension line in it.
"""

from __future__ import annotations

from shopdraw.drawing.mark import Mark
from shopdraw.editor.sketch_case import SKETCHES as OF_THE_CASE
from shopdraw.editor.sketch_inside import SKETCHES as INSIDE
from shopdraw.editor.sketch_lid import SKETCHES as OF_THE_LID
from shopdraw.editor.sketch_lines import HEIGHT, WIDTH

SKETCHES = {**OF_THE_CASE, **OF_THE_LID, **INSIDE}


def sketch_of(address: str) -> tuple[Mark, ...]:
    """The sketch for an input, by its address; empty where there is none."""
    keys = address.replace('"', "").split(".")
    for name in (address, f"{keys[0]}.{keys[-1]}", keys[-1]):
        made = SKETCHES.get(name)
        if made is not None:
            return tuple(made())
    return ()


__all__ = ["HEIGHT", "SKETCHES", "WIDTH", "sketch_of"]
