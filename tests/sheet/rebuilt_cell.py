"""Boards made again from what their part-sheet cells say: strings give every size, the drawn views only the kinds.

A cut's size is the figure in its note that lies within half a step of the true one, its place is what a running
dimension says there. Nothing that no string tells comes out; such a cut raises `Untold`.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.path import Path, bounds
from shopdraw.sheet.cell_view import ComposedCell
from shopdraw.sheet.cut_note import home_of, standing_cuts
from shopdraw.wood.board import Board, Cut, Face, Shape
from shopdraw.wood.solid import solid

SAME = 1e-3
_NUMBER = r"\d+ \d+/\d+|\d+/\d+|\d*[.,]?\d+"
WORDS = {
    "dovetail": ("socket", "tail", "sliding dovetail"),
    "tenon": ("tenon", "tongue"),
    "v groove": ("V-groove",),
    "moulding": ("",),
}
"""Kinds whose notes use other words; a moulding's note has its profile's name."""
Placed = list[tuple[float, float]]


class Untold(AssertionError):
    """A size or a place that no string of the cell tells; the message says of which cut."""


@dataclass(frozen=True)
class Said:
    """What a cell's strings say.

    Attributes:
        inch: figures are inches.
        step: half of the step that figures of cuts are rounded to, mm, and a hair.
        notes: by view, words at leaders with the point that the leader goes to.
        heading: words over the views, each line or entry by itself.
        places: by view and way, exact distances from the reference end or edge with what stands there, mm.
        worded: by way, distances that the heading gives in words, mm.
        overall: length, width and thickness as printed, mm.
    """

    inch: bool
    step: float
    notes: dict[Face, list[tuple[str, tuple[float, float]]]]
    heading: tuple[str, ...]
    places: dict[Face, dict[str, Placed]]
    worded: dict[str, list[float]]
    overall: tuple[float, float, float]


def numbers(words: str, inch: bool) -> list[float]:
    """All figures of a string in mm."""
    found = []
    for text in re.findall(_NUMBER, words):
        if " " in text:
            whole, part = text.split()
            value = float(int(whole) + Fraction(part))
        elif "/" in text:
            value = float(Fraction(text))
        else:
            value = float(text.replace(",", "."))
        found.append(value * (25.4 if inch else 1.0))
    return found


def said_of(composed: ComposedCell, inch: bool) -> Said:
    """The strings of a composed cell: its views' words and figures, and its heading."""
    cell = composed.cell
    views = {face: s.view.drawing for s in composed.views for face in Face if s.view.drawing.id.endswith(face.value)}
    lines = " ".join(mark.words for mark in composed.marks if isinstance(mark, Text))
    entries = tuple(part.strip() for part in re.split(r"also: | (?=[a-z]: )", lines))
    letters = {entry[0]: entry[3:] for entry in entries if re.match(r"[a-z]: ", entry)}
    notes = {
        face: [(letters.get(words, words), tip) for words, tip in leaders(drawing)] for face, drawing in views.items()
    }
    (finished,) = re.findall(r"T × W × L (.*?)(?:;| rough|$)", lines)[:1]
    thick, wide, long = (part.strip() for part in finished.split(" × "))
    sizes = []
    for text, size in ((long, cell.board.length), (wide, cell.board.width), (thick, cell.board.thickness)):
        # A size that a table gives stands there as a letter; the table is held to the boards by a test of its own.
        sizes.append(numbers(re.match(_NUMBER, text)[0], inch)[0] if re.match(_NUMBER, text) else size)
    places = {face: _places(drawing, inch) for face, drawing in views.items()}
    step = (25.4 / 64 if inch else 0.05) + 1e-6
    worded = {
        way: [numbers(said, inch)[-1] for said in re.findall(rf"({_NUMBER}) from the reference {what}", lines)]
        for way, what in (("along", "end"), ("across", "edge"))
    }
    return Said(inch, step, notes, entries, places, worded, (sizes[0], sizes[1], sizes[2]))


def leaders(drawing: Drawing) -> Iterator[tuple[str, tuple[float, float]]]:
    """Words at leaders: the line from the leader's point stands before its shelf and its end."""
    for i, mark in enumerate(drawing.marks):
        before = drawing.marks[i - 3] if i >= 3 else None
        if isinstance(mark, Text) and mark.meaning is Meaning.SIZE and isinstance(before, Line):
            yield mark.words, before.start


def _places(drawing: Drawing, inch: bool) -> dict[str, Placed]:
    found: dict[str, Placed] = {"along": [], "across": []}
    for d in drawing.dimensions:
        if d.kind == "running":
            along = d.direction_deg == 0.0
            exact = abs(d.b[0] - d.a[0]) if along else abs(d.b[1] - d.a[1])
            found["along" if along else "across"].append((exact, numbers(d.words, inch)[0]))
    return found


@dataclass(frozen=True)
class _At:
    """A cut that is being made again."""

    board: Board
    cut: Cut
    name: str
    said: Said
    view: Face
    told: tuple[tuple[float, ...], ...]

    def size(self, exact: float) -> float:
        """The figure of its notes that says a size."""
        if exact < SAME:
            return exact
        near = [n for told in self.told for n in told if abs(n - exact) <= self.said.step]
        if not near:
            raise Untold(f"{self.name}: no string says {exact:.3f}; there are {self.told}")
        return min(near, key=lambda n: abs(n - exact))

    def place(self, exact: float, way: str, view: Face | None = None) -> float | None:
        """What stands at a distance from the reference end or edge."""
        whole, printed = (
            (self.board.length, self.said.overall[0]) if way == "along" else (self.board.width, self.said.overall[1])
        )
        if abs(exact) < SAME:
            return 0.0
        if abs(exact - whole) < SAME:
            return printed
        if exact < 0 or exact > whole:
            # Beyond the wood nothing is cut: where it ends there makes no difference.
            return exact
        near = [said for at, said in self.said.places[view or self.view][way] if abs(at - exact) < SAME]
        near += self.said.worded[way]
        near = [said for said in near if abs(said - exact) <= self.said.step]
        return near[0] if near else None

    def stretch(self, low: float, high: float, way: str, view: Face | None = None) -> tuple[float, float]:
        """Both ends of an extent: from their places, from one and the size, or from the middle and the size."""
        one, two = self.place(low, way, view), self.place(high, way, view)
        if one is None and two is None:
            middle = self.place((low + high) / 2, way, view)
            if middle is None:
                raise Untold(f"{self.name}: nothing says where it lies {way}: {low:.3f} to {high:.3f}")
            half = self.size(high - low) / 2
            return middle - half, middle + half
        if one is None:
            assert two is not None
            one = two - self.size(high - low)
        if two is None:
            two = one + self.size(high - low)
        return one, two

    def depth(self) -> float:
        """The depth; a through one needs no figure."""
        whole = {Face.FACE: self.board.thickness, Face.BACK: self.board.thickness}.get(self.cut.face, self.board.width)
        if self.cut.face in (Face.FOOT, Face.HEAD):
            whole = self.board.length
        return self.cut.depth if self.cut.start + self.cut.depth >= whole - SAME else self.size(self.cut.depth)

    def across(self, v: float) -> float:
        """A place across as counted from the reference edge."""
        return self.board.width - v if self.board.reference_edge == "far" else v

    def v(self, distance: float) -> float:
        """The printed board's coordinate of a distance from the reference edge."""
        return self.said.overall[1] - distance if self.board.reference_edge == "far" else distance


def remade(board: Board, composed: ComposedCell, inch: bool) -> Shape:
    """The board's shape as the strings of its cell tell it.

    Raises:
        Untold: something isn't told.
    """
    said = said_of(composed, inch)
    for printed, size in zip(said.overall, (board.length, board.width, board.thickness), strict=True):
        if abs(printed - size) > said.step:
            raise Untold(f"{board.id}: the heading says {printed:.3f} for {size:.3f}")
    standing = standing_cuts(board)
    cuts = tuple(_remade_cut(board, i, board.shape.cuts[i], said) for i in standing)
    return Shape(_remade_outline(board, said), said.overall[2], cuts)


def differing_volume(board: Board, shape: Shape) -> float:
    """Wood that only one of the two has, mm³."""
    one, two = solid(board.shape), solid(shape)
    return float((one - two).volume()) + float((two - one).volume())


def allowed_volume(board: Board, step: float) -> float:
    """The board's surface times half the step of its figures, mm³."""
    return float(solid(board.shape).surface_area()) * step


def _remade_outline(board: Board, said: Said) -> Path:
    blank = Cut("outline", Face.FACE, 0.0, 0.0, board.shape.outline)
    at = _At(board, blank, f"{board.id}: outline", said, Face.FACE, ())
    corners = []
    for corner in board.shape.outline.corners:
        x, y = at.place(corner.x, "along"), at.place(at.across(corner.y), "across")
        if x is None or y is None:
            raise Untold(f"{board.id}: no string says where the outline's corner {corner.x:.2f}, {corner.y:.2f} lies")
        corners.append(corner._replace(x=x, y=at.v(y)))
    return Path(tuple(corners))


def _remade_cut(board: Board, index: int, cut: Cut, said: Said) -> Cut:
    view = home_of(board, cut)
    name = f"{board.id}: {board.cut_ids[index]}"
    told = tuple(tuple(numbers(words, said.inch)) for words in _words_for(said, cut, view))
    if not told:
        raise Untold(f"{name}: no words on {view.value}")
    at = _At(board, cut, name, said, view, told)
    if cut.kind == "moulding":
        # The profile's curve is drawn at full size; its note must be there.
        return cut
    if cut.face in (Face.FACE, Face.BACK):
        return _tails(at) if cut.islands else replace(cut, outline=_in_face(at), depth=at.depth())
    if len(cut.open) < 2 and _is_askew(cut.outline):
        return _askew(at)
    across = cut.kind in ("v-groove", "dovetail") or all(c.bulge for c in cut.outline.corners)
    if cut.face in (Face.NEAR, Face.FAR) and (cut.depth < board.width - SAME or across):
        return _in_edge(at)
    if cut.islands and cut.face in (Face.FOOT, Face.HEAD):
        return _tenon(at)
    return _at_end(at)


def _words_for(said: Said, cut: Cut, view: Face) -> Iterator[str]:
    """The notes that name a cut's kind and whose leader ends at it or that speak for several; the heading's entries."""
    kind = cut.kind.replace("-", " ")
    kinds = WORDS.get(kind, (kind,))
    for words, tip in said.notes[view]:
        if any(k in words for k in kinds) and (re.match(r"\d+ × ", words) or _belongs(tip, cut)):
            yield words
            bare = re.sub(r"^\d+ × ", "", words)
            yield from (line[line.index(f"{bare}: ") :] for line in said.heading if f"{bare}: " in line)
    named = [re.compile(rf"(\d+ × )?{re.escape(k)}\b") for k in kinds if k]
    yield from (entry for entry in said.heading if any(name.match(entry) for name in named))


def _belongs(tip: tuple[float, float], cut: Cut) -> bool:
    """Whether a leader ends within a cut that its view shows square; in any other view the kind must do."""
    if cut.face not in (Face.FACE, Face.BACK):
        return True
    x0, y0, x1, y1 = bounds(cut.outline)
    y = -tip[1] if cut.face is Face.BACK and tip[1] < 0 else tip[1]
    return x0 - 1e-6 <= tip[0] <= x1 + 1e-6 and y0 - 1e-6 <= y <= y1 + 1e-6


def _mapped(path: Path, x: Callable[[float], float], y: Callable[[float], float]) -> Path:
    return Path(tuple(c._replace(x=x(c.x), y=y(c.y)) for c in path.corners))


def _line(low: float, high: float, to: tuple[float, float]) -> Callable[[float], float]:
    """What carries one stretch to another."""
    share = (to[1] - to[0]) / (high - low) if high - low > SAME else 1.0
    return lambda value: to[0] + (value - low) * share


def _in_face(at: _At) -> Path:
    """A pocket by its sides, or any outline by all of its corners."""
    u0, v0, u1, v1 = bounds(at.cut.outline)
    low, high = sorted((at.across(v0), at.across(v1)))
    try:
        along, across = at.stretch(u0, u1, "along"), at.stretch(low, high, "across")
    except Untold:
        return _by_corners(at)
    ends = sorted(at.v(d) for d in across)
    return _mapped(at.cut.outline, _line(u0, u1, along), _line(v0, v1, (ends[0], ends[1])))


def _by_corners(at: _At) -> Path:
    corners = []
    for corner in at.cut.outline.corners:
        x, y = at.place(corner.x, "along"), at.place(at.across(corner.y), "across")
        if x is None or y is None:
            raise Untold(f"{at.name}: no string says where its corner {corner.x:.3f}, {corner.y:.3f} lies")
        corners.append(corner._replace(x=x, y=at.v(y)))
    return Path(tuple(corners))


def _in_edge(at: _At) -> Cut:
    """A pocket, a V-groove or a dovetail's socket in an edge: along from the end, down from the face."""
    u0, w0, u1, w1 = bounds(at.cut.outline)
    if at.cut.islands:
        (island,) = at.cut.islands
        return replace(at.cut, islands=(_flanked(at, island),))
    if all(c.bulge for c in at.cut.outline.corners):
        (a, b), middle = at.stretch(u0, u1, "along"), (w0 + w1) / 2
        level, half = (-at.size(-middle) if middle < -SAME else middle), at.size(w1 - w0) / 2
        outline = _mapped(at.cut.outline, _line(u0, u1, (a, b)), _line(w0, w1, (level - half, level + half)))
        return replace(at.cut, outline=outline, depth=at.depth())
    if at.cut.kind == "dovetail":
        return _sliding_socket(at, w0, w1)
    along = at.stretch(u0, u1, "along")
    return replace(at.cut, outline=_mapped(at.cut.outline, _line(u0, u1, along), _down(at, w0, w1)), depth=at.depth())


def _sliding_socket(at: _At, w0: float, w1: float) -> Cut:
    """A socket that a tongue slides into: its width at the face and at its floor, its place at the face."""
    corners = at.cut.outline.corners
    low, high = (sorted(c.x for c in corners if abs(c.y - level) < SAME) for level in (w0, w1))
    face = high if w1 >= -SAME else low
    begin, _ = at.stretch(face[0], face[1], "along")
    shift = begin - face[0]
    down = _down(at, w0, w1)
    made = []
    for corner in corners:
        span = low if abs(corner.y - w0) < SAME else high
        middle, half = (span[0] + span[1]) / 2, at.size(span[1] - span[0]) / 2
        x = middle + shift + math.copysign(half, corner.x - middle)
        made.append(corner._replace(x=x, y=down(corner.y)))
    return replace(at.cut, outline=Path(tuple(made)), depth=at.depth())


def _down(at: _At, w0: float, w1: float) -> Callable[[float], float]:
    """Levels from the reference face: the gap over a cut and its own thickness; from face to face none is told."""
    whole = at.board.thickness
    if w0 <= -whole + SAME:
        foot = w0 - (at.said.overall[2] - whole)
        return _line(w0, w1, (foot, w1 if w1 >= -SAME else foot + at.size(w1 - w0)))
    top = -at.size(-w1) if w1 < -SAME else w1
    return _line(w0, w1, (top - at.size(w1 - w0), top))


def _is_askew(path: Path) -> bool:
    """Whether a path is a rectangle whose sides run with neither axis."""
    corners = path.corners
    if len(corners) != 4 or any(c.bulge for c in corners):
        return False
    (ax, ay, _), (bx, by, _), (cx, cy, _), (dx, dy, _) = corners
    square = abs((bx - ax) * (cx - bx) + (by - ay) * (cy - by)) < 1e-6
    even = math.dist((ax + cx, ay + cy), (bx + dx, by + dy)) < 1e-6
    return square and even and abs(bx - ax) > SAME and abs(by - ay) > SAME


def _askew(at: _At) -> Cut:
    """A groove that lies askew across an edge: its width, its depth each way, its angle to the face, its middle."""
    corners = [(c.x, c.y) for c in at.cut.outline.corners]
    middle = (sum(x for x, _ in corners) / 4, sum(y for _, y in corners) / 4)
    sides = [math.dist(corners[0], corners[1]), math.dist(corners[1], corners[2])]
    first = 0 if sides[0] > sides[1] else 1
    (ax, ay), (bx, by) = corners[first], corners[first + 1]
    long, wide = max(sides), min(sides)
    angle = math.degrees(math.atan2(abs(by - ay), abs(bx - ax)))
    units = 25.4 if at.said.inch else 1.0
    degrees = [n / units for told in at.told for n in told if abs(n / units - angle) < 0.051]
    if not degrees:
        raise Untold(f"{at.name}: no string says {angle:.1f}° to the face; there are {at.told}")
    turned = math.radians(degrees[0])
    way = (math.copysign(math.cos(turned), bx - ax), math.copysign(math.sin(turned), by - ay))
    reach, half = at.size(long / 2), at.size(wide) / 2
    x, w = at.size(middle[0]), -at.size(-middle[1])
    made = []
    for corner in at.cut.outline.corners:
        dx, dy = corner.x - middle[0], corner.y - middle[1]
        along = math.copysign(reach, dx * (bx - ax) + dy * (by - ay))
        across = math.copysign(half, dy * (bx - ax) - dx * (by - ay))
        made.append(corner._replace(x=x + along * way[0] - across * way[1], y=w + along * way[1] + across * way[0]))
    return replace(at.cut, outline=Path(tuple(made)), start=at.size(at.cut.start), depth=at.size(at.cut.depth))


def _flanked(at: _At, island: Path) -> Path:
    """A tongue with sloping flanks: its widths at the end and at the shoulder, about its middle."""
    made = []
    for corner in island.corners:
        ys = [c.y for c in island.corners if abs(c.x - corner.x) < SAME]
        width, middle = max(ys) - min(ys), (max(ys) + min(ys)) / 2
        made.append(corner._replace(y=middle + math.copysign(at.size(width) / 2, corner.y - middle)))
    return Path(tuple(made))


def _tenon(at: _At) -> Cut:
    """Tenons on an end: length, width, thickness, how far from the face and from the reference edge."""
    islands = []
    for island in at.cut.islands:
        v0, w0, v1, w1 = bounds(island)
        low, high = sorted((at.across(v0), at.across(v1)))
        ends = sorted(at.v(d) for d in at.stretch(low, high, "across"))
        islands.append(_mapped(island, _line(v0, v1, (ends[0], ends[1])), _down(at, w0, w1)))
    return replace(at.cut, islands=tuple(islands), depth=at.size(at.cut.depth))


def _tails(at: _At) -> Cut:
    """Tails on an end: each by its place there, its widths at end and shoulder; the strip by its length."""
    u0, _, u1, _ = bounds(at.cut.outline)
    long = at.size(u1 - u0)
    foot = u0 <= SAME
    along = (0.0, long) if foot else (at.said.overall[0] - long, at.said.overall[0])
    x = _line(u0, u1, along)
    islands = []
    for island in at.cut.islands:
        ends: dict[float, tuple[float, float]] = {}
        for corner in island.corners:
            ys = sorted(c.y for c in island.corners if abs(c.x - corner.x) < SAME)
            ends[round(corner.x, 3)] = (ys[0], ys[-1])
        end = min(ends, key=lambda at_x: min(abs(at_x - u0), abs(at_x - u1)) if foot else -at_x)
        y0, y1 = ends[end]
        low, high = sorted((at.across(y0), at.across(y1)))
        to = sorted(at.v(d) for d in at.stretch(low, high, "across"))
        middle = (to[0] + to[1]) / 2
        halves = {key: at.size(b - a) / 2 for key, (a, b) in ends.items()}
        old = (y0 + y1) / 2
        islands.append(
            Path(
                tuple(
                    c._replace(x=x(c.x), y=middle + math.copysign(halves[round(c.x, 3)], c.y - old))
                    for c in island.corners
                )
            )
        )
    outline = _mapped(at.cut.outline, x, lambda y: y)
    return replace(at.cut, outline=outline, islands=tuple(islands), depth=at.depth())


def _at_end(at: _At) -> Cut:
    """Bevels and mitres by tilt and one point, sockets by both widths, channels along the grain by their diameter."""
    board, cut, said = at.board, at.cut, at.said
    if any(c.bulge for c in cut.outline.corners):
        x0, _, x1, _ = bounds(cut.outline)
        wide, long = at.size(x1 - x0), at.size(cut.depth)
        start = cut.start if cut.face is Face.FOOT else board.length - cut.start - cut.depth
        placed = at.place(start, "along", Face.FACE)
        if placed is None:
            raise Untold(f"{at.name}: nothing says where it begins along the grain")
        middle = (x0 + x1) / 2
        outline = _mapped(cut.outline, _line(x0, x1, (middle - wide / 2, middle + wide / 2)), lambda w: w)
        begin = placed if cut.face is Face.FOOT else said.overall[0] - placed - long
        return replace(cut, outline=outline, start=begin, depth=long)
    levels = sorted({round(c.y, 6) for c in cut.outline.corners})
    lengthwise = cut.face in (Face.FOOT, Face.HEAD)
    if cut.depth < board.length / 2 and len(levels) == 2 and lengthwise:
        return _socket(at, levels)
    flank = [i for i in range(len(cut.outline.corners)) if i not in cut.open]
    if len(flank) != 1:
        return _listed(at)
    (ax, aw, _), (bx, bw, _) = list(cut.outline.pairs())[flank[0]]
    slope = (bx - ax) / (bw - aw)
    whole = board.width if lengthwise else board.length
    shift = _crossing_shift(at, ax, aw, slope, whole)
    tilt = abs(math.degrees(math.atan(slope)))
    units = 25.4 if said.inch else 1.0
    degrees = [n / units for told in at.told for n in told if abs(n / units - tilt) < 0.051]
    if not degrees:
        raise Untold(f"{at.name}: no string says {tilt:.1f}° from square; there are {at.told}")
    return replace(cut, outline=_mapped(cut.outline, lambda x: x + shift, lambda w: w))


def _crossing_shift(at: _At, ax: float, aw: float, slope: float, whole: float) -> float:
    """How far what is printed of a flank's crossing with a face lies beside it."""
    shifts = []
    for level in (0.0, -at.board.thickness):
        x = ax + slope * (level - aw)
        for exact, sign in ((x, 1.0), (whole - x, -1.0)):
            near = [n for told in at.told for n in told if abs(n - exact) <= at.said.step] if exact >= 0 else []
            shifts += [sign * (n - exact) for n in near]
            shifts += [0.0] if abs(exact) < SAME else []
    if not shifts:
        raise Untold(f"{at.name}: no string says where its flank meets a face; there are {at.told}")
    return min(shifts, key=abs)


def _socket(at: _At, levels: Sequence[float]) -> Cut:
    """A socket in an end by its widths at both levels and a place across."""
    corners = at.cut.outline.corners
    spans = {level: sorted(c.x for c in corners if abs(c.y - level) < SAME) for level in levels}
    shift = None
    for span in spans.values():
        for x in span:
            placed = at.place(at.across(x), "across")
            if placed is not None and shift is None:
                shift = at.v(placed) - x
    if shift is None:
        raise Untold(f"{at.name}: nothing says where it lies across")
    made = []
    for corner in corners:
        low, high = spans[min(levels, key=lambda level: abs(level - corner.y))]
        middle = (low + high) / 2 + shift
        made.append(corner._replace(x=middle + math.copysign(at.size(high - low) / 2, corner.x - (low + high) / 2)))
    return replace(at.cut, outline=Path(tuple(made)), depth=at.size(at.cut.depth))


def _listed(at: _At) -> Cut:
    """Any other outline across an edge or an end: every corner in words."""
    corners = []
    for corner in at.cut.outline.corners:
        first = at.across(corner.x) if at.cut.face in (Face.FOOT, Face.HEAD) else corner.x
        x = at.size(abs(first)) * (1 if first >= 0 else -1)
        w = -at.size(-corner.y) if corner.y < -SAME else corner.y
        corners.append(corner._replace(x=at.v(x) if at.cut.face in (Face.FOOT, Face.HEAD) else x, y=w))
    return replace(at.cut, outline=Path(tuple(corners)))
