"""A handle: something that can be taken hold of on the drawing, which way it moves and what it sets. Knows no Qt.

A handle reads a point of its view as a wanted value, and turns a value into settings of the piece file; how a piece
follows from these is `build`'s affair.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from shopdraw.editor.holding import Magnet
from shopdraw.editor.state import Setting
from shopdraw.editor.typed import kept
from shopdraw.measure import Unit
from shopdraw.piece.design import WIDTHS, Design
from shopdraw.shape.path import Point
from shopdraw.wood.assembly import Assembly


@dataclass(frozen=True)
class Handle:
    """Something to take hold of.

    Attributes:
        id: `address@view`, for a division `opening.bank.divide/KEY@view`.
        name: what a person reads: "Width".
        view: the view it stands in.
        at: where, in the view's plane, mm.
        along: unit direction in the view's plane in which it moves.
        value: what it stands at, mm or degrees.
        angle: whether the value is degrees.
        reads: the value that a point of the view's plane asks for.
        sets: the settings of the piece file for a value.
        magnets: values worth holding to.
        warns: what else a drag changes, in a sentence, or "".
    """

    id: str
    name: str
    view: str
    at: Point
    along: Point
    value: float
    reads: Callable[[Point], float]
    sets: Callable[[float], tuple[Setting, ...]]
    angle: bool = False
    magnets: tuple[Magnet, ...] = ()
    warns: str = ""


def setter(address: str, unit: Unit, *drops: str) -> Callable[[float], tuple[Setting, ...]]:
    """Sets an address to a size, and takes out what would contradict it."""

    def sets(value: float) -> tuple[Setting, ...]:
        # What is the same in each step of a drag comes first: it is worked out once.
        return (*(Setting(drop, None) for drop in drops), Setting(address, kept(value, unit)))

    return sets


def width_given(design: Design, assembly: Assembly) -> tuple[str, float]:
    """Where a piece gives its width, and how much more that is than the case's, mm."""
    case = design.case
    for key in WIDTHS:
        given: float | None = getattr(case, key)
        if given is not None:
            return f"case.{key}", given - assembly.width
    return "case.width", 0.0
