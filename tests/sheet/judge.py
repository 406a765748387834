"""Faults of a set of sheets, counted from its PDF's own operators. Each count must be 0.

`judge(pdf, sheet_set)` reads the pages and holds them against rules of paper: it takes from the set what a line or a
figure stands for, and from the page where it really lies, how wide it is and what it says.
"""

from __future__ import annotations

import itertools
import math
import re
from collections.abc import Iterator, Sequence
from fractions import Fraction

from shopdraw.drawing.bounds import drawing_box
from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.mark import ArcMark, Area, Line, Meaning
from shopdraw.drawing.sheet import Placed, Sheet, SheetSet
from tests.sheet.page_reader import Page, Point, Stroke, read_pages

ISO_WIDTHS = (0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0)
"""ISO 128-2."""
ISO_HEIGHTS = (1.8, 2.5, 3.5, 5.0, 7.0, 10.0, 14.0, 20.0)
"""ISO 3098-1."""
INCH_HEIGHTS = tuple(n * 25.4 / 32 for n in range(3, 25))
"""Steps of 1/32 in from 3/32 in."""
FIGURE = 0.7
LEAST_FIGURE = 1.2
FIRST_ROW, NEXT_ROW, BETWEEN_VIEWS = 10.0, 8.0, 20.0
"""ASME Y14.5 asks for 10 and 6 at least; textbook ISO practice is 10 and 8."""
LEAST_PRINT = 1.75
TOUCH = 0.1

RULES = (
    "text over text",
    "text off the frame",
    "line in text",
    "hatch in text",
    "leader crossed",
    "rows too near",
    "views too near",
    "width off the series",
    "height off the series",
    "text too small",
    "sum",
    "two strings",
    "told twice",
    "to a hidden edge",
    "figure missing",
    "printed scale",
)


def judge(pdf: object, sheet_set: SheetSet, reduction: float = 1.0) -> dict[str, list[str]]:
    """Every fault by rule; a rule without a fault has an empty list.

    Args:
        pdf: path of the file written from the set.
        sheet_set: what it was written from.
        reduction: smallest intended print over the sheet's size.
    """
    faults: dict[str, list[str]] = {rule: [] for rule in RULES}
    pages = read_pages(pdf)
    assert len(pages) == len(sheet_set.sheets), f"{len(pages)} pages for {len(sheet_set.sheets)} sheets"
    for page, sheet in zip(pages, sheet_set.sheets, strict=True):
        for rule, fault in _page_faults(page, sheet, sheet_set.style, reduction):
            faults[rule].append(f"sheet {sheet.number}: {fault}")
    for rule, fault in _set_faults(sheet_set):
        faults[rule].append(fault)
    return faults


def _page_faults(page: Page, sheet: Sheet, style: str, reduction: float) -> Iterator[tuple[str, str]]:
    yield from _text_faults(page, sheet)
    yield from _line_in_text(page, sheet)
    yield from _series_faults(page, reduction)
    leaders, lines = _leaders(page, sheet), _dimension_lines(page, sheet)
    yield from _leader_faults(page, leaders, lines)
    yield from _row_faults(sheet, lines)
    yield from _view_faults(sheet, style)
    yield from _sum_faults(page, sheet)
    yield from _hidden_faults(page, sheet)
    yield from _scale_faults(page, sheet)


# Words.


def _text_faults(page: Page, sheet: Sheet) -> Iterator[tuple[str, str]]:
    x0, y0, x1, y1 = sheet.paper.frame
    boxes = [_bounds(word.corners) for word in page.words]
    for i, word in enumerate(page.words):
        bx0, by0, bx1, by1 = boxes[i]
        within = bx0 >= x0 - TOUCH and by0 >= y0 - TOUCH and bx1 <= x1 + TOUCH and by1 <= y1 + TOUCH
        outside = bx1 <= x0 or by1 <= y0 or bx0 >= x1 or by0 >= y1
        on_paper = bx0 >= 0 and by0 >= 0 and bx1 <= page.width and by1 <= page.height
        zone = outside and on_paper and re.fullmatch(r"[A-Z]|\d{1,2}", word.words)
        if not within and not zone:
            yield "text off the frame", f"{word.words!r} at ({bx0:.1f}, {by0:.1f})"
        for j in range(i + 1, len(page.words)):
            ox0, oy0, ox1, oy1 = boxes[j]
            if bx0 < ox1 and ox0 < bx1 and by0 < oy1 and oy0 < by1:
                by = _overlap(word.corners, page.words[j].corners)
                if by > TOUCH:
                    yield "text over text", f"{word.words!r} and {page.words[j].words!r} by {by:.2f} mm"


def _line_in_text(page: Page, sheet: Sheet) -> Iterator[tuple[str, str]]:
    hatches = list(_hatched(sheet))
    spans = [_bounds((s.start, s.end)) for s in page.strokes]
    for word in page.words:
        bx0, by0, bx1, by1 = _bounds(word.corners)
        for stroke, (sx0, sy0, sx1, sy1) in zip(page.strokes, spans, strict=True):
            reach = stroke.width / 2
            if sx1 + reach < bx0 or sx0 - reach > bx1 or sy1 + reach < by0 or sy0 - reach > by1:
                continue
            if _meets(word.corners, stroke.start, stroke.end, reach - 0.05):
                rule = "hatch in text" if any(_is_hatch(stroke, area) for area in hatches) else "line in text"
                yield rule, f"{word.words!r} is met by the line from {_at(stroke.start)} to {_at(stroke.end)}"


def _series_faults(page: Page, reduction: float) -> Iterator[tuple[str, str]]:
    for width in sorted({round(s.width, 4) for s in page.strokes if not s.filled}):
        if not any(abs(width - one) < 0.005 for one in ISO_WIDTHS):
            yield "width off the series", f"{width:.3f} mm"
    heights: dict[float, str] = {}
    for word in page.words:
        for height in word.heights:
            heights.setdefault(round(height, 2), word.words)
    allowed = (*ISO_HEIGHTS, *INCH_HEIGHTS)
    figures = [max(FIGURE * one, min(LEAST_FIGURE, one)) for one in allowed]
    for height, words in sorted(heights.items()):
        if not any(abs(height - one) < 0.02 for one in (*allowed, *figures)):
            yield "height off the series", f"{height:.2f} mm: {words!r}"
        least = LEAST_PRINT if any(abs(height - one) < 0.02 for one in allowed) else LEAST_FIGURE
        if height * reduction < least - 0.01:
            yield "text too small", f"{height * reduction:.2f} mm when printed: {words!r}"


# Leaders, rows, views.


def _leaders(page: Page, sheet: Sheet) -> list[tuple[str, Stroke]]:
    """Strokes of the page that are leaders: of dimensions, of notes, of balloons."""
    wanted: list[tuple[str, Point, Point]] = []
    for placed in sheet.placed:
        for dimension in placed.drawing.dimensions:
            points = [_on_paper(p, placed) for p in dimension.leader]
            wanted += [(dimension.id, p, q) for p, q in itertools.pairwise(points)]
        for i, mark in enumerate(placed.drawing.marks):
            if isinstance(mark, Line) and mark.meaning is Meaning.SIZE:
                wanted.append(
                    (f"{placed.drawing.id} mark {i}", _on_paper(mark.start, placed), _on_paper(mark.end, placed))
                )
    found = []
    for owner, p, q in wanted:
        stroke = next((s for s in page.strokes if _near(s.start, p) and _near(s.end, q)), None)
        assert stroke is not None, f"sheet {sheet.number}: the leader {owner} isn't on the page"
        found.append((owner, stroke))
    return found


def _dimension_lines(page: Page, sheet: Sheet) -> list[tuple[Placed, Dimension, Stroke]]:
    """Strokes of the page that lie along a dimension's line."""
    found = []
    for placed in sheet.placed:
        for dimension in placed.drawing.dimensions:
            if dimension.kind not in ("linear", "running"):
                continue
            on = _on_paper(dimension.line, placed)
            a, b = _on_paper(dimension.a, placed), _on_paper(dimension.b, placed)
            c, s = math.cos(math.radians(dimension.direction_deg)), math.sin(math.radians(dimension.direction_deg))
            low, high = sorted((a[0] * c + a[1] * s, b[0] * c + b[1] * s))
            for stroke in page.strokes:
                if stroke.filled or stroke.dashes:
                    continue
                offs = [(p[1] - on[1]) * c - (p[0] - on[0]) * s for p in (stroke.start, stroke.end)]
                places = sorted(p[0] * c + p[1] * s for p in (stroke.start, stroke.end))
                if max(map(abs, offs)) < 0.02 and places[0] < high - 0.05 and places[1] > low + 0.05:
                    found.append((placed, dimension, stroke))
    return found


def _leader_faults(
    page: Page, leaders: Sequence[tuple[str, Stroke]], lines: Sequence[tuple[Placed, Dimension, Stroke]]
) -> Iterator[tuple[str, str]]:
    for i, (owner, leader) in enumerate(leaders):
        for other_owner, other in leaders[i + 1 :]:
            if _cross(leader, other):
                yield "leader crossed", f"{owner} crosses the leader of {other_owner}"
        for _, dimension, line in lines:
            if dimension.id != owner and _cross(leader, line):
                yield "leader crossed", f"{owner} crosses the dimension line of {dimension.id}"


def _row_faults(sheet: Sheet, lines: Sequence[tuple[Placed, Dimension, Stroke]]) -> Iterator[tuple[str, str]]:
    told: set[tuple[str, str]] = set()
    for i, (placed, one, stroke) in enumerate(lines):
        for other_placed, two, other in lines[i + 1 :]:
            if placed is not other_placed or one.id == two.id or (one.id, two.id) in told:
                continue
            off = _beside(stroke, other)
            if off is not None and 0.05 < off < NEXT_ROW - 0.05:
                told.add((one.id, two.id))
                yield "rows too near", f"{one.id} and {two.id} are {off:.2f} mm apart"
    for placed, one, stroke in lines:
        off = _off_outline(placed, stroke)
        if off is not None and off < FIRST_ROW - 0.05:
            yield "rows too near", f"{one.id} is {off:.2f} mm off the view"


def _off_outline(placed: Placed, stroke: Stroke) -> float | None:
    """How far a level or plumb dimension line outside a view lies from its edges; None for one inside or aslant."""
    box = _edges_box(placed)
    if box is None:
        return None
    x0, y0, x1, y1 = box
    (ax, ay), (bx, by) = stroke.start, stroke.end
    if abs(ax - bx) < 0.02:
        off = max(x0 - ax, ax - x1)
        beside = min(ay, by) < y1 and max(ay, by) > y0
    elif abs(ay - by) < 0.02:
        off = max(y0 - ay, ay - y1)
        beside = min(ax, bx) < x1 and max(ax, bx) > x0
    else:
        return None
    return off if off > 0.05 and beside else None


def _edges_box(placed: Placed) -> tuple[float, float, float, float] | None:
    points: list[Point] = []
    for mark in placed.drawing.marks:
        if isinstance(mark, Line) and mark.meaning in (Meaning.VISIBLE, Meaning.CUT):
            points += [_on_paper(mark.start, placed), _on_paper(mark.end, placed)]
        elif isinstance(mark, ArcMark) and mark.meaning in (Meaning.VISIBLE, Meaning.CUT):
            angles = [mark.start_deg + (mark.end_deg - mark.start_deg) * i / 32 for i in range(33)]
            points += [
                _on_paper(
                    (
                        mark.centre[0] + mark.radius * math.cos(math.radians(a)),
                        mark.centre[1] + mark.radius * math.sin(math.radians(a)),
                    ),
                    placed,
                )
                for a in angles
            ]
    return _bounds(points) if points else None


def _view_faults(sheet: Sheet, style: str) -> Iterator[tuple[str, str]]:
    boxes = []
    for placed in sheet.placed:
        x0, y0, x1, y1 = drawing_box(placed.drawing, placed.scale, style, sheet.paper.group)
        (ax, ay), (bx, by) = _on_paper((x0, y0), placed), _on_paper((x1, y1), placed)
        boxes.append((placed.drawing.id, (ax, ay, bx, by)))
    fx0, fy0, fx1, fy1 = sheet.paper.frame
    for i, (name, (x0, y0, x1, y1)) in enumerate(boxes):
        if min(x0 - fx0, y0 - fy0, fx1 - x1, fy1 - y1) < 5.0 - 0.05:
            yield "views too near", f"{name} is nearer than 5 mm to the frame"
        for other, (ox0, oy0, ox1, oy1) in boxes[i + 1 :]:
            gap = max(ox0 - x1, x0 - ox1, oy0 - y1, y0 - oy1)
            if gap < BETWEEN_VIEWS - 0.05:
                yield "views too near", f"{name} and {other} are {gap:.1f} mm apart"


# Figures.


def _sum_faults(page: Page, sheet: Sheet) -> Iterator[tuple[str, str]]:
    """Rows of links that don't add up to an overall with the same ends, and figures that aren't on the page."""
    for placed in sheet.placed:
        rows: dict[tuple[float, float], list[tuple[float, float, Dimension]]] = {}
        spans: list[tuple[float, float, float, Dimension]] = []
        for dimension in placed.drawing.dimensions:
            if not _printed(page, placed, dimension):
                yield "figure missing", f"{dimension.id}: {dimension.words!r} isn't on the page where it belongs"
            if dimension.kind != "linear" or figure_in(dimension.words) is None:
                continue
            c, s = math.cos(math.radians(dimension.direction_deg)), math.sin(math.radians(dimension.direction_deg))
            low, high = sorted((dimension.a[0] * c + dimension.a[1] * s, dimension.b[0] * c + dimension.b[1] * s))
            off = dimension.line[1] * c - dimension.line[0] * s
            spans.append((dimension.direction_deg % 180.0, low, high, dimension))
            rows.setdefault((round(dimension.direction_deg % 180.0, 3), round(off, 2)), []).append(
                (low, high, dimension)
            )
        for (direction, _), links in rows.items():
            yield from _chain_faults(direction, sorted(links, key=lambda link: link[:2]), spans)


def _chain_faults(
    direction: float,
    links: Sequence[tuple[float, float, Dimension]],
    spans: Sequence[tuple[float, float, float, Dimension]],
) -> Iterator[tuple[str, str]]:
    start = 0
    for end in range(1, len(links) + 1):
        if end < len(links) and abs(links[end][0] - links[end - 1][1]) < 0.01:
            continue
        chain = links[start:end]
        start = end
        if len(chain) < 2:
            continue
        total = sum((figure_in(d.words) for _, _, d in chain), Fraction(0))
        for way, low, high, overall in spans:
            same = abs(way - direction) < 0.01 and abs(low - chain[0][0]) < 0.01 and abs(high - chain[-1][1]) < 0.01
            if same and figure_in(overall.words) != total:
                links_said = " + ".join(d.words for _, _, d in chain)
                yield "sum", f"{links_said} make {float(total):g}, {overall.id} says {overall.words}"


def _set_faults(sheet_set: SheetSet) -> Iterator[tuple[str, str]]:
    said: dict[str, str] = {}
    told: dict[frozenset[str], list[str]] = {}
    for sheet in sheet_set.sheets:
        for placed in sheet.placed:
            for dimension in placed.drawing.dimensions:
                fact = dimension.id.split("@")[0]
                bare = dimension.words.strip("()")
                if said.setdefault(fact, bare) != bare:
                    yield "two strings", f"{fact} says {said[fact]!r} and {bare!r}"
                if not dimension.words.startswith("("):
                    told.setdefault(frozenset(fact.split("/")), []).append(dimension.id)
    for ids in told.values():
        if len(ids) > 1:
            yield "told twice", ", ".join(ids)


def _hidden_faults(page: Page, sheet: Sheet) -> Iterator[tuple[str, str]]:
    for placed in sheet.placed:
        shown = [
            (_on_paper(m.start, placed), _on_paper(m.end, placed))
            for m in placed.drawing.marks
            if isinstance(m, Line) and m.meaning is not Meaning.HIDDEN and m.meaning is not Meaning.SIZE
        ]
        for dimension in placed.drawing.dimensions:
            if dimension.kind not in ("linear", "running"):
                continue
            for point in (_on_paper(dimension.a, placed), _on_paper(dimension.b, placed)):
                dashed = any(len(s.dashes) == 2 and _off(point, s.start, s.end) < 0.1 for s in page.strokes)
                wide = any(not s.dashes and s.width > 0.4 and _off(point, s.start, s.end) < 0.15 for s in page.strokes)
                if dashed and not wide and not any(_off(point, p, q) < 0.15 for p, q in shown):
                    yield "to a hidden edge", f"{dimension.id} at {_at(point)}"


def _scale_faults(page: Page, sheet: Sheet) -> Iterator[tuple[str, str]]:
    """Edges whose length on the page, over the scale, isn't their true length to 0.1 mm on paper: three a sheet."""
    for placed in sheet.placed:
        edges = [m for m in placed.drawing.marks if isinstance(m, Line) and m.meaning in (Meaning.VISIBLE, Meaning.CUT)]
        edges.sort(key=lambda m: -math.dist(m.start, m.end))
        for mark in edges[:3]:
            p, q = _on_paper(mark.start, placed), _on_paper(mark.end, placed)
            if not any(_runs(s, p, q) or _runs(s, q, p) for s in page.strokes):
                true = math.dist(mark.start, mark.end)
                yield "printed scale", f"{placed.drawing.id}: an edge of {true:.1f} mm isn't on the page at its scale"


def _printed(page: Page, placed: Placed, dimension: Dimension) -> bool:
    """Whether the page has the dimension's words with the middle of their baseline where it belongs."""
    at = _on_paper(dimension.words_at, placed)
    plain = _plain(dimension.words)
    return any(_plain(w.words) == plain and math.dist(w.middle, at) < dimension.height * 1.5 for w in page.words)


def _plain(words: str) -> str:
    return re.sub(r"\s+", "", words)


def figure_in(words: str) -> Fraction | None:
    """The first figure in a string, exactly: `31 1/2`, `(12,5)`, `3/4`, `.75`; None where there is none."""
    found = re.search(r"(\d+) (\d+)/(\d+)|(\d+)/(\d+)|(\d*[.,]?\d+)", words)
    if found is None:
        return None
    whole, top, foot, only_top, only_foot, plain = found.groups()
    if whole:
        return int(whole) + Fraction(int(top), int(foot))
    if only_top:
        return Fraction(int(only_top), int(only_foot))
    return Fraction("0" + plain.replace(",", ".") if plain[0] in ".," else plain.replace(",", "."))


# Geometry of its own.


def _on_paper(point: Point, placed: Placed) -> Point:
    return point[0] * placed.scale + placed.at[0], point[1] * placed.scale + placed.at[1]


def _bounds(points: Sequence[Point]) -> tuple[float, float, float, float]:
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs), min(ys), max(xs), max(ys)


def _near(p: Point, q: Point) -> bool:
    return abs(p[0] - q[0]) < 0.01 and abs(p[1] - q[1]) < 0.01


def _runs(stroke: Stroke, p: Point, q: Point) -> bool:
    return _near(stroke.start, p) and _near(stroke.end, q)


def _at(p: Point) -> str:
    return f"({p[0]:.1f}, {p[1]:.1f})"


def _overlap(one: Sequence[Point], two: Sequence[Point]) -> float:
    """How far two convex boxes overlap: the least shift that parts them; 0 where they are apart."""
    least = math.inf
    for box in (one, two):
        for p, q in zip(box, (*box[1:], box[0]), strict=True):
            long = math.dist(p, q)
            if long < 1e-9:
                continue
            nx, ny = (q[1] - p[1]) / long, (p[0] - q[0]) / long
            ours = [x * nx + y * ny for x, y in one]
            theirs = [x * nx + y * ny for x, y in two]
            least = min(least, max(ours) - min(theirs), max(theirs) - min(ours))
    return max(0.0, least)


def _meets(box: Sequence[Point], p: Point, q: Point, reach: float) -> bool:
    """Whether a line as wide as twice `reach` meets the inside of a box (shrunk by what `reach` is below 0)."""
    low, high = 0.0, 1.0
    for a, b in zip(box, (*box[1:], box[0]), strict=True):
        long = math.dist(a, b)
        if long < 1e-9:
            return False
        nx, ny = (b[1] - a[1]) / long, (a[0] - b[0]) / long
        edge = a[0] * nx + a[1] * ny + reach
        start, end = p[0] * nx + p[1] * ny - edge, q[0] * nx + q[1] * ny - edge
        if start >= 0 and end >= 0:
            return False
        if start > 0 or end > 0:
            t = start / (start - end)
            low, high = (max(low, t), high) if start > 0 else (low, min(high, t))
        if low >= high:
            return False
    return True


def _cross(one: Stroke, two: Stroke) -> bool:
    """Whether two strokes cross inside both."""
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = one.start, one.end, two.start, two.end
    turn = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx)
    if abs(turn) < 1e-9:
        return False
    t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / turn
    u = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / turn
    e1, e2 = 0.06 / max(math.dist(one.start, one.end), 0.06), 0.06 / max(math.dist(two.start, two.end), 0.06)
    return e1 < t < 1 - e1 and e2 < u < 1 - e2


def _beside(one: Stroke, two: Stroke) -> float | None:
    """How far apart two parallel strokes run where they run beside each other; None where they don't."""
    (ax, ay), (bx, by) = one.start, one.end
    long, other = math.dist(one.start, one.end), math.dist(two.start, two.end)
    if long < 0.3 or other < 0.3:
        return None
    ux, uy = (bx - ax) / long, (by - ay) / long
    if abs((two.end[1] - two.start[1]) * ux - (two.end[0] - two.start[0]) * uy) > 0.02 * other:
        return None
    places = sorted((p[0] - ax) * ux + (p[1] - ay) * uy for p in (two.start, two.end))
    if min(long, places[1]) - max(0.0, places[0]) < 0.3:
        return None
    return abs((two.start[1] - ay) * ux - (two.start[0] - ax) * uy)


def _off(point: Point, p: Point, q: Point) -> float:
    """How far a point lies from a line between two others."""
    long2 = (q[0] - p[0]) ** 2 + (q[1] - p[1]) ** 2
    t = 0.0 if long2 < 1e-18 else ((point[0] - p[0]) * (q[0] - p[0]) + (point[1] - p[1]) * (q[1] - p[1])) / long2
    t = min(1.0, max(0.0, t))
    return math.hypot(point[0] - p[0] - t * (q[0] - p[0]), point[1] - p[1] - t * (q[1] - p[1]))


def _hatched(sheet: Sheet) -> Iterator[tuple[tuple[float, float, float, float], float]]:
    for placed in sheet.placed:
        for mark in placed.drawing.marks:
            if isinstance(mark, Area) and mark.hatching.kind != "grey":
                corners = [_on_paper((c.x, c.y), placed) for c in mark.outline.corners]
                yield _bounds(corners), mark.hatching.angle_deg


def _is_hatch(stroke: Stroke, area: tuple[tuple[float, float, float, float], float]) -> bool:
    (x0, y0, x1, y1), angle = area
    sx0, sy0, sx1, sy1 = _bounds((stroke.start, stroke.end))
    if sx0 < x0 - 0.1 or sy0 < y0 - 0.1 or sx1 > x1 + 0.1 or sy1 > y1 + 0.1:
        return False
    way = math.degrees(math.atan2(stroke.end[1] - stroke.start[1], stroke.end[0] - stroke.start[0]))
    return abs((way - angle + 90.0) % 180.0 - 90.0) < 1.0


def report(faults: dict[str, list[str]]) -> str:
    """Counts and faults in words."""
    return "\n".join(
        f"{rule}: {len(found)}" + "".join(f"\n    {fault}" for fault in found[:20]) for rule, found in faults.items()
    )
