"""One setting of a part: what lies up, what is cut, what stands on its note layer."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from shopdraw.cnc.cutter import RUN_OUT_MM
from shopdraw.cnc.flat import INSIDE, THROUGH, Circle, FlatPart, Operation, Unit
from shopdraw.cnc.free_place import Ground
from shopdraw.cnc.lay import Lay, lay
from shopdraw.cnc.layer import depth_figure, sink_layers
from shopdraw.cnc.note import boxes_of, grain_arrow, layout_lines, measures, placed_words
from shopdraw.cnc.pocket import Pocket
from shopdraw.cnc.run_out import run_out
from shopdraw.cnc.second import finished_lines
from shopdraw.cnc.side_name import reference_edge, side_name, side_word
from shopdraw.cnc.sunk import Sunk, sharp_hollows
from shopdraw.drawing.mark import Line, Text
from shopdraw.lists.cut_list import part_name
from shopdraw.lists.size import Sizes
from shopdraw.measure import decimal_inches, millimetres, write_length
from shopdraw.shape.path import Path, arc_of, rectangle, signed_area
from shopdraw.shape.region import Region, sides_of
from shopdraw.wood.board import Face
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.part import Part

TRIM_MM = 12.0
"""Waste on each side of the finished outline."""


@dataclass(frozen=True, slots=True)
class LayerUse:
    """One layer of one file, as the covering sheet tells it.

    Attributes:
        name: the layer.
        depth: exact, mm; the stock's thickness where it goes through.
        purpose: what is cut there.
        cutter: the largest that may cut all of it, or "none fits".
        count: outlines and circles on it.
        corners: what becomes of inside corners.
    """

    name: str
    depth: float
    purpose: str
    cutter: str
    count: int
    corners: str = ""


@dataclass(frozen=True, slots=True)
class Setting:
    """One face up.

    Attributes:
        face: the one that is up.
        number: 1 for the face that is cut first.
        flat: what the file holds.
        layers: its layers in the order in which they are told.
        cuts: indices of the board's cuts that it makes, wholly or in part.
        runs: how far each open pocket runs past the edge, and its cutter's radius, mm.
    """

    face: Face
    number: int
    flat: FlatPart
    layers: tuple[LayerUse, ...]
    cuts: tuple[int, ...]
    runs: tuple[tuple[float, float], ...]


class Maker:
    """Puts one setting of a part together."""

    def __init__(
        self,
        part: Part,
        face: Face,
        number: int,
        faces: int,
        unit: Unit,
        outline: Region,
        pockets: Sequence[Pocket],
        sunk: Sequence[Sunk],
        others: Sequence[int],
        sizes: Sizes,
    ) -> None:
        self._part, self._board = part, part.first
        self._face, self._number, self._faces, self._unit = face, number, faces, unit
        self._outline, self._pockets, self._sunk, self._others, self._sizes = outline, pockets, sunk, others, sizes
        self._lay: Lay = lay(self._board, face)
        self._last = number == faces
        self._runs: list[tuple[float, float]] = []
        self.findings: list[Finding] = []

    def made(self) -> Setting:
        """The setting."""
        operations: list[Operation] = []
        layers: list[LayerUse] = []
        names = sink_layers({each.depth for each in self._sunk}, self._unit)
        for depth, name in names.items():
            alike = [each for each in self._sunk if each.depth == depth]
            own = [operation for each in alike for operation in self._pocket(each, name)]
            operations.extend(own)
            layers.extend(self._layer_uses(own, alike))
            if "_N" in name:
                self._finding("depths-round-alike", f"two depths round to {name[:-3]}; the table tells them apart")
        if self._last:
            operations.extend(self._openings())
            layers.extend(self._through_layers(operations))
        cuts = [i for each in self._sunk for i in each.cuts]
        if self._last:
            cuts += [pocket.cut for pocket in self._pockets if pocket.through]
        table = self._lay.region(self._outline)
        outer = next(path for path in table if signed_area(path) > 0)
        flat = FlatPart(
            name=f"{self._part.labels} {part_name(self._part)}",
            unit=self._unit,
            outline=outer,
            operations=tuple(operations),
            notes=self._notes(table, operations),
            stock=rectangle(-TRIM_MM, -TRIM_MM, self._board.length + TRIM_MM, self._board.width + TRIM_MM),
            cut_outline=self._last,
        )
        return Setting(self._face, self._number, flat, tuple(layers), tuple(sorted(set(cuts))), tuple(self._runs))

    def _finding(self, code: str, words: str, value: float | None = None, limit: float | None = None) -> None:
        self.findings.append(
            Finding(code, Severity.CAUTION, (self._board.id,), f"{self._board.label}: {words}", value, limit, "mm")
        )

    def _pocket(self, sunk: Sunk, layer: str) -> list[Operation]:
        outer, *islands = sunk.paths
        opens = sunk.opens
        # where nothing fits the finding says so; its run-out is the least radius that there could be
        radius = sunk.cutter.diameter / 2 if sunk.cutter is not None else min(sunk.width, 1e3) / 2
        carried, by = run_out(outer, opens, radius + RUN_OUT_MM, self._outline)
        if any(opens):
            self._runs.append((by, radius))
            if by < radius + RUN_OUT_MM - 1e-9:
                self._finding(
                    "no-room-to-run-out",
                    f"a pocket may run only {by:.2f} mm past the edge, other wood stands there; finish it by hand",
                    by, radius + RUN_OUT_MM,
                )  # fmt: skip
        found = []
        round_whole = _circle(self._lay.path(carried))
        if round_whole is not None and not any(opens):
            figure = depth_figure(sunk.depth, self._unit)
            return [Operation(f"HOLE_{figure}", round_whole)]
        found.append(Operation(layer, self._lay.path(carried)))
        found.extend(Operation(layer, self._lay.path(island), island=True) for island in islands)
        return found

    def _openings(self) -> list[Operation]:
        found = []
        for path in self._outline:
            if signed_area(path) > 0:
                continue
            hole = _circle(self._lay.path(path))
            found.append(Operation("HOLE_ALL", hole) if hole else Operation(INSIDE, self._lay.path(path)))
        return found

    def _layer_uses(self, operations: Sequence[Operation], sunk: Sequence[Sunk]) -> list[LayerUse]:
        indices = sorted({i for each in sunk for i in each.cuts})
        purposes = dict.fromkeys(self._purpose(i) for i in indices)
        cutters = [each.finishing for each in sunk]
        least = min((c.diameter for c in cutters if c is not None), default=None)
        named = next((c.id for c in cutters if c is not None and c.diameter == least), "none fits")
        rounded = sorted({round(each.radius, 3) for each in sunk if each.radius is not None})
        words = [f"round, R {self._sizes.words(radius, self._sizes.thickness)}" for radius in rounded]
        sharp = sum(each.chiselled for each in sunk)
        if sharp:
            words.append(f"{sharp} square by chisel")
        return [
            LayerUse(name, sunk[0].depth, "; ".join(purposes), named, count, ", ".join(words) or "none")
            for name, count in _counted(operations)
        ]

    def _purpose(self, index: int) -> str:
        board = self._board
        purpose = board.cut_for[index] if index < len(board.cut_for) else ""
        kind = board.shape.cuts[index].kind
        return f"{kind}: {purpose}" if purpose else kind

    def _through_layers(self, operations: Sequence[Operation]) -> list[LayerUse]:
        through = [self._purpose(pocket.cut) for pocket in self._pockets if pocket.through]
        purpose = "; ".join(["outer edge", *dict.fromkeys(through)])
        corners = sharp_hollows(self._outline)
        words = f"{corners} square by chisel" if corners else "none"
        found = [LayerUse(THROUGH, self._board.thickness, purpose, "any", 1, words)]
        for name, count in _counted([o for o in operations if o.layer in (INSIDE, "HOLE_ALL")]):
            found.append(LayerUse(name, self._board.thickness, purpose, "any", count))
        return found

    def _notes(self, table: Region, operations: Sequence[Operation]) -> tuple[Text | Line, ...]:
        cut = tuple(o.shape for o in operations if isinstance(o.shape, Path) and o.layer.startswith("SINK"))
        layout = [
            line
            for index in self._others
            for line in layout_lines(finished_lines(self._board, self._board.shape.cuts[index]), self._lay)
        ]
        ground = Ground(table, cut, boxes_of(layout))
        texts, box = placed_words(self._words(), ground)
        line, line_box = measures(self._unit, ground.with_taken(box))
        arrow = grain_arrow(ground.with_taken(box, line_box))
        return (*texts, *line, *arrow, *layout)

    def _words(self) -> list[str]:
        board, lay_ = self._board, self._lay
        width, length = _file_size(board.width, self._unit), _file_size(board.length, self._unit)
        thick = _file_size(board.thickness, self._unit)
        edge = reference_edge(board)
        front = next((f for f in (Face.NEAR, Face.FAR, Face.FOOT, Face.HEAD) if side_word(board, f) == "front"), None)
        words = [
            f"{self._part.labels} {part_name(self._part)}",
            f"{'mm' if self._unit is Unit.MM else 'inch'}: {thick} x {width} x {length}",
            "thickness as measured",
            f"this face up: {side_name(board, self._face)}",
            f"({side_word(board, self._face)} in the piece)",
            f"{side_name(board, edge)} {lay_.edge_at(edge)}: reference edge",
            f"{side_name(board, Face.FOOT)} {lay_.edge_at(Face.FOOT)}: foot",
        ]
        if front is not None:
            words.append(f"front edge {lay_.edge_at(front)}")
        if self._faces > 1:
            fence = side_name(board, edge)
            turned = ", turned about its long edge" if self._number > 1 else ""
            words.append(f"face {self._number} of {self._faces}{turned}; {fence} to the fence both times")
        if self._others:
            words.append("not flat: see sheet")
        return words


def _file_size(size_mm: float, unit: Unit) -> str:
    return write_length(size_mm, millimetres("0.1") if unit is Unit.MM else decimal_inches(4))


def _counted(operations: Sequence[Operation]) -> list[tuple[str, int]]:
    counts: dict[str, int] = {}
    for operation in operations:
        counts[operation.layer] = counts.get(operation.layer, 0) + 1
    return list(counts.items())


def _circle(path: Path) -> Circle | None:
    """The full circle that a path of arcs of one centre is, or None."""
    sides = sides_of(path)
    if not all(side.bulge for side in sides):
        return None
    arcs = [arc_of(side.start, side.end, side.bulge) for side in sides]
    if any(math.dist(a.centre, arcs[0].centre) > 1e-6 or abs(a.radius - arcs[0].radius) > 1e-6 for a in arcs):
        return None
    return Circle(arcs[0].centre, arcs[0].radius)
