"""One nested sheet as a value, and as the flat geometry of its file."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Literal

from shopdraw.cnc.flat import THROUGH, Circle, FlatPart, OpenLine, Operation, Unit
from shopdraw.cnc.free_place import Ground
from shopdraw.cnc.layer import distinct, sink_layers
from shopdraw.cnc.note import placed_words
from shopdraw.cnc.part import RouterPart
from shopdraw.cnc.setting import LayerUse, Setting
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.lists.layout.job import Span
from shopdraw.lists.rough import trade_name
from shopdraw.shape.path import Path, Point, bounds, rectangle
from shopdraw.shape.region import region
from shopdraw.wood.board import Board, Stock

CAUTIONS = (
    "Measure the stock and scale first. Run the shop's simulation. Zero and depth are set by the operator.",
    "No screw, clamp or pin inside outlines and run-outs. Small and narrow parts need tabs, skin or adhesive.",
    "Guards, eye and ear protection, dust extraction; offcuts may be thrown; never reach in while it turns.",
    "The machine's manual, the shop's rules and local codes come first.",
)
"""What stands on each nested sheet, in short."""


Way = Literal["in strips", "freely"]
"""How a sheet was filled: with cuts that run edge to edge, or by true outlines."""


@dataclass(frozen=True, slots=True)
class Nesting:
    """How a shop wants its sheets nested; the defaults are common practice.

    Attributes:
        allowance: left on an outline for the finishing pass, mm.
        margin: from the sheet's edges to the first part, mm.
        keep_out: strips across the sheet's width for clamps and screws, from and to, mm from the end at x = 0.
    """

    allowance: float = 0.5
    margin: float = 15.0
    keep_out: tuple[Span, ...] = ()


@dataclass(frozen=True, slots=True)
class Nested:
    """One part on a sheet.

    Attributes:
        board: which it is.
        at: its lower left corner on the sheet, mm.
        made: what the router does to it.
        quarters: right angles by which it lies turned, anticlockwise.
        free: its grain may run across the sheet's.
    """

    board: Board
    at: tuple[float, float]
    made: RouterPart
    quarters: int = 0
    free: bool = False

    @property
    def setting(self) -> Setting:
        """Its only setting."""
        return self.made.settings[0]

    def paths(self) -> Iterator[tuple[Operation, Path | Circle | OpenLine]]:
        """Everything that is cut, on the sheet; the outer edge last."""
        place = self._placing()
        for operation in (*self.setting.flat.operations, Operation(THROUGH, self.outline)):
            shape = operation.shape
            if operation.layer == THROUGH:
                yield operation, shape
                continue
            match shape:
                case Path():
                    moved: Path | Circle | OpenLine = shape.mapped(place)
                case Circle():
                    moved = Circle(place(shape.centre), shape.radius)
                case OpenLine():
                    moved = OpenLine(place(shape.start), place(shape.end), shape.bulge)
            yield operation, moved

    @property
    def outline(self) -> Path:
        """Its outer edge on the sheet."""
        assert self.setting.flat.outline is not None
        return self.setting.flat.outline.mapped(self._placing())

    def _placing(self) -> Callable[[Point], Point]:
        """From the part's own frame to the sheet's."""
        assert self.setting.flat.outline is not None
        _, _, length, width = bounds(self.setting.flat.outline)
        (x, y), quarters = self.at, self.quarters % 4

        def place(point: Point) -> Point:
            u, v = point
            return {
                0: (x + u, y + v), 1: (x + width - v, y + u),
                2: (x + length - u, y + width - v), 3: (x + v, y + length - u),
            }[quarters]  # fmt: skip

        return place


@dataclass(frozen=True, slots=True)
class Nest:
    """One sheet.

    Attributes:
        number: of the sheet in the package.
        code: of its stock: P1, P2, ...
        stock: what it is.
        size: length and width, mm.
        parts: what lies on it.
        cutter: the diameter that the gaps are for, mm.
        gap: between parts, at least, mm.
        nesting: as the shop wants it.
        flat: what the file holds.
        layers: its layers.
        way: how it was filled.
    """

    number: int
    code: str
    stock: Stock
    size: tuple[float, float]
    parts: tuple[Nested, ...]
    cutter: float
    gap: float
    nesting: Nesting
    flat: FlatPart
    layers: tuple[LayerUse, ...]
    way: Way = "in strips"

    @property
    def file(self) -> str:
        """The name of its file."""
        return f"sheet-{self.number:02d}_{self.code}_{self.flat.unit.value}.dxf"


def nested_sheet(
    number: int, code: str, stock: Stock, size: tuple[float, float], parts: tuple[Nested, ...], cutter: float,
    gap: float, how: Nesting, way: Way = "in strips",
) -> Nest:  # fmt: skip
    """A sheet with its parts: layers of one name for all of them, a label on each, words beyond the sheet's edge.

    Args:
        number, code, stock, size: of the sheet, mm.
        parts: what lies on it.
        cutter, gap: what the gaps are for, and their least, mm.
        how: as the shop wants it.
        way: how it was filled.
    """
    unit = parts[0].made.unit if parts else Unit.MM
    depths = distinct(layer.depth for one in parts for layer in one.setting.layers if layer.name.startswith("SINK"))
    names = sink_layers(depths, unit)
    operations: list[Operation] = []
    uses: dict[str, LayerUse] = {}
    for one in parts:
        own = {layer.name: layer for layer in one.setting.layers}
        for operation, shape in one.paths():
            layer = own[operation.layer]
            name = operation.layer
            if name.startswith("SINK"):
                name = names[min(names, key=lambda depth: abs(depth - layer.depth))]
            operations.append(replace(operation, layer=name, shape=shape))
            there = uses.get(name)
            uses[name] = _joined(there, layer, name, one.board.label)
    length, width = size
    flat = FlatPart(
        name=f"sheet {number} {trade_name(stock)}",
        unit=unit,
        outline=None,
        operations=tuple(operations),
        notes=(*(note for one in parts for note in _label_notes(one)), *_sheet_notes(number, stock, size, unit)),
        stock=rectangle(0.0, 0.0, length, width),
    )
    return Nest(number, code, stock, size, parts, cutter, gap, how, flat, tuple(uses.values()), way)


def _joined(there: LayerUse | None, layer: LayerUse, name: str, label: str) -> LayerUse:
    """One layer of several parts: what for, of which part, and how many shapes."""
    purpose = f"{label}: {layer.purpose}"
    if there is None:
        return replace(layer, name=name, purpose=purpose, count=1)
    known = there.purpose.split("; ")
    joined = there.purpose if purpose in known else f"{there.purpose}; {purpose}"
    return replace(there, purpose=joined, count=there.count + 1)


def _label_notes(one: Nested) -> tuple[Text | Line, ...]:
    outline = one.outline
    cuts = tuple(shape for operation, shape in one.paths() if isinstance(shape, Path) and operation.layer != THROUGH)
    turned = ", grain across the sheet" if one.quarters % 2 else ""
    texts, _ = placed_words([f"{one.board.label} {one.board.name}{turned}"], Ground(region(outline), cuts))
    return texts


def _sheet_notes(number: int, stock: Stock, size: tuple[float, float], unit: Unit) -> tuple[Text | Line, ...]:
    """Beyond the sheet's upper edge: what it is, its size, the grain, the cautions."""
    length, width = size
    factor, places = (1.0, 1) if unit is Unit.MM else (25.4, 4)
    figures = f"{length / factor:.{places}f} x {width / factor:.{places}f}"
    thick = f"{stock.thickness / factor:.{places + 1}f}"
    rows = (
        f"sheet {number}: {trade_name(stock)}, {figures} {unit.value}, measured {thick} thick; grain along x",
        *CAUTIONS,
    )
    return tuple(
        Text((0.0, width + 20.0 + 20.0 * i), row, 10.0, meaning=Meaning.WORD) for i, row in enumerate(reversed(rows))
    )
