"""One setting of a part: what lies up, what is cut, what stands on its note layer."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from shopdraw.cnc.advice import round_of
from shopdraw.cnc.corner import CHISEL, least_of, name_of, pocket_cutter, run_radius
from shopdraw.cnc.cutter import RUN_OUT_MM, Cutter, is_drilled, vee_for
from shopdraw.cnc.flat import INSIDE, THROUGH, Circle, FlatPart, Operation, Unit
from shopdraw.cnc.free_place import Ground
from shopdraw.cnc.lay import Lay, lay
from shopdraw.cnc.layer import depth_figure, sink_layers
from shopdraw.cnc.note import boxes_of, grain_arrow, layout_lines, measures, placed_words
from shopdraw.cnc.pocket import Pocket, tenon_edges
from shopdraw.cnc.run_out import run_out
from shopdraw.cnc.second import finished_lines
from shopdraw.cnc.side_name import reference_edge, side_name, side_word
from shopdraw.cnc.sunk import Sunk
from shopdraw.cnc.vee import Vee, vee_layer, vee_line
from shopdraw.drawing.mark import Line, Text
from shopdraw.lists.cut_list import part_name
from shopdraw.lists.size import Sizes
from shopdraw.measure import decimal_inches, millimetres, write_length
from shopdraw.shape.path import Path, arc_of, rectangle, signed_area
from shopdraw.shape.reach import Left
from shopdraw.shape.region import Region, sides_of
from shopdraw.wood.board import Face
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.part import Part

MARK_MM = 0.3
"""Depth of scored lines."""
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


@dataclass(frozen=True, slots=True)
class Through:
    """What cuts a part out: the cutter, and the hollow corners that it leaves."""

    cutter: Cutter | None
    corners: Left


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
        sunk: Mapping[Sunk, Left],
        others: Sequence[int],
        sizes: Sizes,
        vees: Sequence[Vee],
        through: Through,
        job: Sequence[Cutter],
        marks: bool,
    ) -> None:
        self._part, self._board = part, part.first
        self._face, self._number, self._faces, self._unit = face, number, faces, unit
        self._outline, self._pockets, self._sunk, self._others, self._sizes = outline, pockets, sunk, others, sizes
        self._vees = [vee for vee in vees if vee.face is face]
        self._through, self._job, self._marks = through, tuple(job), marks
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
        operations.extend(self._grooves())
        layers.extend(self._vee_layers(operations))
        if self._last:
            operations.extend(self._openings())
            layers.extend(self._through_layers(operations))
        if self._marks:
            lines = self._layout()
            figure = depth_figure(MARK_MM, self._unit)
            operations.extend(Operation(f"MARK_{figure}", vee_line(line.start, line.end)) for line in lines)
            if lines:
                layers.append(LayerUse(f"MARK_{figure}", MARK_MM, "layout of second settings", "vee", len(lines)))
        cuts = [*(i for each in self._sunk for i in each.cuts), *(vee.cut for vee in self._vees)]
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
        radius = run_radius(sunk)
        carried, by = run_out(outer, opens, radius + RUN_OUT_MM, self._outline)
        least = pocket_cutter(sunk, self._outline, self._job)
        if by < radius + RUN_OUT_MM - 1e-9 and least is not None and least.diameter / 2 < radius:
            # other wood stands there: the smaller cutter that makes the corners runs out as far as it needs
            radius = least.diameter / 2
            carried, by = run_out(outer, opens, radius + RUN_OUT_MM, self._outline)
        if any(opens):
            self._runs.append((by, radius))
            if by < radius + RUN_OUT_MM - 1e-9:
                self._finding(
                    "no-room-to-run-out",
                    f"a pocket may run only {by:.2f} mm past the edge, other wood stands there; finish it by hand",
                    by, radius + RUN_OUT_MM,
                )  # fmt: skip
        round_whole = _circle(self._lay.path(carried))
        if round_whole is not None and not any(opens) and is_drilled(2 * round_whole.radius, self._job):
            figure = depth_figure(sunk.depth, self._unit)
            return [Operation(f"HOLE_{figure}", round_whole)]
        found = [Operation(layer, round_whole or self._lay.path(carried))]
        found.extend(Operation(layer, self._lay.path(island), island=True) for island in islands)
        return found

    def _grooves(self) -> list[Operation]:
        return [
            Operation(vee_layer(vee, self._unit), vee_line(self._lay.point(vee.start), self._lay.point(vee.end)))
            for vee in self._vees
        ]

    def _vee_layers(self, operations: Sequence[Operation]) -> list[LayerUse]:
        found = []
        for name, count in _counted([o for o in operations if o.layer.startswith("VEE")]):
            own = [vee for vee in self._vees if vee_layer(vee, self._unit) == name]
            cutter = vee_for(own[0].angle, self._job, own[0].width)
            width = self._sizes.words(own[0].width, self._sizes.thickness)
            words = "; ".join(dict.fromkeys(self._purpose(vee.cut) for vee in own))
            purpose = f"{words}, {width} wide at the surface"
            found.append(LayerUse(name, own[0].depth, purpose, name_of(cutter), count))
        return found

    def _openings(self) -> list[Operation]:
        found = []
        for path in self._outline:
            if signed_area(path) > 0:
                continue
            hole = _circle(self._lay.path(path))
            drilled = hole is not None and is_drilled(2 * hole.radius, self._job)
            found.append(Operation("HOLE_ALL" if drilled else INSIDE, hole or self._lay.path(path)))
        return found

    def _layer_uses(self, operations: Sequence[Operation], sunk: Sequence[Sunk]) -> list[LayerUse]:
        indices = sorted({i for each in sunk for i in each.cuts})
        purposes = dict.fromkeys(self._purpose(i) for i in indices)
        named = name_of(least_of([pocket_cutter(each, self._outline, self._job) for each in sunk]))
        rounded = sorted({round(each.radius, 3) for each in sunk if each.radius is not None})
        words = [f"round, R {self._sizes.words(radius, self._sizes.thickness)}" for radius in rounded]
        sharp = sum(self._sunk[each].places for each in sunk)
        if sharp:
            words.append(f"{sharp} {CHISEL}")
        corners = ", ".join(words) or "none"
        return [
            LayerUse(name, sunk[0].depth, "; ".join(purposes), _tool(name, named), count, corners)
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
        corners = self._through.corners.places
        words, cutter = f"{corners} {CHISEL}" if corners else "none", name_of(self._through.cutter)
        found = [LayerUse(THROUGH, self._board.thickness, purpose, cutter, 1, words)]
        for name, count in _counted([o for o in operations if o.layer in (INSIDE, "HOLE_ALL")]):
            found.append(LayerUse(name, self._board.thickness, purpose, _tool(name, cutter), count))
        return found

    def _layout(self) -> list[Line]:
        """Where the walls of cuts of other settings meet the faces."""
        return [
            line
            for index in self._others
            for line in layout_lines(finished_lines(self._board, self._board.shape.cuts[index]), self._lay)
        ]

    def _notes(self, table: Region, operations: Sequence[Operation]) -> tuple[Text | Line, ...]:
        cut = tuple(o.shape for o in operations if isinstance(o.shape, Path) and o.layer.startswith("SINK"))
        layout = self._layout()
        ground = Ground(table, cut, boxes_of(layout))
        texts, box = placed_words(self._words(), ground)
        line, line_box = measures(self._unit, ground.with_taken(box))
        arrow = grain_arrow(ground.with_taken(box, line_box))
        return (*texts, *line, *arrow, *(() if self._marks else layout))

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
        radii = {round(radius, 6) for cut in board.shape.cuts for radius, _ in tenon_edges(board.shape, cut)}
        words += [f"tenon's edges: round to R {_file_size(radius, self._unit)}" for radius in sorted(radii)]
        if self._others:
            words.append("not flat: see sheet")
        return words


def _tool(layer: str, cutter: str) -> str:
    return "drill, or the cutter" if layer.startswith("HOLE") else cutter


def _file_size(size_mm: float, unit: Unit) -> str:
    return write_length(size_mm, millimetres("0.1") if unit is Unit.MM else decimal_inches(4))


def _counted(operations: Sequence[Operation]) -> list[tuple[str, int]]:
    counts: dict[str, int] = {}
    for operation in operations:
        counts[operation.layer] = counts.get(operation.layer, 0) + 1
    return list(counts.items())


def _circle(path: Path) -> Circle | None:
    """The full circle that a path of arcs of one centre is, or None."""
    radius = round_of(path)
    if radius is None:
        return None
    first = sides_of(path)[0]
    return Circle(arc_of(first.start, first.end, first.bulge).centre, radius)
