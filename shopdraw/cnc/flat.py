"""A flat part as the router gets it: outline, operations by layer, notes, blank. Geometry only, no toolpaths.

Part frame: x along the grain, reference edge on y = 0, reference end on x = 0; mm, whatever unit the file has.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from enum import Enum

from shopdraw.drawing.mark import Line, Text
from shopdraw.shape.path import Path, Point

THROUGH = "THROUGH_ALL"
INSIDE = "INSIDE_ALL"
NOTE = "NOTE"
STOCK = "STOCK"

LONGEST_LAYER = 24
_LAYER = re.compile(
    r"(?:THROUGH_ALL|INSIDE_ALL|SINK_\d+[HT](?:_N\d+)?|HOLE_(?:\d+[HT]|ALL)|VEE_\d+[HT]_\d+|MARK_\d+[HT]|NOTE|STOCK)"
)


class NotFlat(ValueError):
    """A part that can't be written as flat geometry; the message says what was found and what would be right."""


class Unit(Enum):
    """The unit of a file for the router."""

    MM = "mm"
    INCH = "in"


@dataclass(frozen=True, slots=True)
class Circle:
    """A full circle, mm."""

    centre: Point
    radius: float


@dataclass(frozen=True, slots=True)
class OpenLine:
    """A line or an arc that the middle of a tool follows, mm.

    Attributes:
        start, end: its ends.
        bulge: tangent of a quarter of the arc's angle, positive when it turns left; 0 for a straight line.
    """

    start: Point
    end: Point
    bulge: float = 0.0


@dataclass(frozen=True, slots=True)
class Operation:
    """One thing to cut.

    Attributes:
        layer: its name by the grammar of layers: `SINK_635H`, `INSIDE_ALL`, `HOLE_ALL`, `VEE_300H_90`.
        shape: closed path, circle, or open line; `Path` may be given either way round, the file has it the way its
            layer wants.
        island: wood left standing inside a pocket of the same layer (run the other way round).
    Raises:
        NotFlat: the layer's name isn't one, or the shape isn't one that its verb takes.
    """

    layer: str
    shape: Path | Circle | OpenLine
    island: bool = False

    def __post_init__(self) -> None:
        if not is_layer_name(self.layer):
            raise NotFlat(f"layer {self.layer!r} isn't a layer of a router file; right would be SINK_635H or HOLE_ALL")
        opened = isinstance(self.shape, OpenLine)
        if opened != self.layer.startswith(("VEE_", "MARK_")):
            wanted = "a closed outline" if opened else "an open line"
            raise NotFlat(f"layer {self.layer} takes {wanted}, found {type(self.shape).__name__}")
        if self.layer.startswith("HOLE_") and not isinstance(self.shape, Circle):
            raise NotFlat(f"layer {self.layer} takes a circle, found {type(self.shape).__name__}")
        if not all(map(math.isfinite, _numbers(self.shape))):
            raise NotFlat(f"layer {self.layer} must have finite numbers, found {self.shape}")


@dataclass(frozen=True, slots=True)
class FlatPart:
    """One setting of one part, or a nested sheet.

    Attributes:
        name: what stands in the file's title.
        unit: of the file.
        outline: the finished edge, or None on a nested sheet (whose parts' outlines are operations on `THROUGH_ALL`).
        operations: everything that is cut, the outline apart.
        notes: words and lines that are never cut; heights are true mm.
        stock: the blank or sheet, or None.
        cut_outline: False for the setting that leaves the outline to the other one: it then stands on the note layer.
    """

    name: str
    unit: Unit
    outline: Path | None
    operations: tuple[Operation, ...] = ()
    notes: tuple[Text | Line, ...] = ()
    stock: Path | None = None
    cut_outline: bool = True


def is_layer_name(name: str) -> bool:
    """Whether a name follows the grammar of layers: verb, depth with its unit or ALL, and the verb's own extra."""
    return len(name) <= LONGEST_LAYER and _LAYER.fullmatch(name) is not None


def _numbers(shape: Path | Circle | OpenLine) -> tuple[float, ...]:
    match shape:
        case Path():
            return ()  # a path refuses such corners itself
        case Circle():
            return (*shape.centre, shape.radius)
        case OpenLine():
            return (*shape.start, *shape.end, shape.bulge)
