"""Views on paper: in projection or in rows, far enough apart, off the frame and the title block. Paper mm."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass

from shopdraw.drawing.sheet import Placed
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds, united
from shopdraw.sheet.look import Look
from shopdraw.sheet.title_block import block_box
from shopdraw.sheet.view import ComposedView
from shopdraw.trade.paper import PaperSize
from shopdraw.trade.scale import Scale

BETWEEN_VIEWS = 20.0
LITTLE_TALLER = 1.3
"""A view that comes before its order may make a row so much taller."""
OFF_FRAME = 5.0
_CORNERS = ((0.5, 0.5), (0.0, 1.0), (1.0, 1.0), (0.0, 0.0), (0.5, 1.0), (0.0, 0.5))


@dataclass(frozen=True, slots=True)
class Standing:
    """A view and where its (0, 0) stands on the paper."""

    view: ComposedView
    at: Point

    @property
    def box(self) -> Bounds:
        """The room that it takes on the paper."""
        x0, y0, x1, y1 = self.view.room
        return x0 + self.at[0], y0 + self.at[1], x1 + self.at[0], y1 + self.at[1]

    def placed(self) -> Placed:
        """As a sheet carries it."""
        return Placed(self.view.drawing, self.view.scale, self.at)


@dataclass(frozen=True, slots=True)
class FreeArea:
    """Where views may stand: a box less the corner that the title block takes, both with their margins."""

    box: Bounds
    block: Bounds

    def holds(self, room: Bounds) -> bool:
        """Whether a view's room lies inside and off the title block."""
        x0, y0, x1, y1 = self.box
        bx0, _, _, by1 = self.block
        inside = room[0] >= x0 - 1e-6 and room[1] >= y0 - 1e-6 and room[2] <= x1 + 1e-6 and room[3] <= y1 + 1e-6
        return inside and (room[2] <= bx0 + 1e-6 or room[1] >= by1 - 1e-6)


@dataclass(frozen=True, slots=True)
class Choice:
    """What `choose_scale` settled on."""

    size: PaperSize
    scale: Scale
    look: Look
    standing: tuple[Standing, ...]


def free_area(size: PaperSize, look: Look) -> FreeArea:
    """The area inside a sheet's frame, 5 off the frame and off the title block."""
    x0, y0, x1, y1 = size.frame
    bx0, by0, bx1, by1 = block_box(size, look)
    return FreeArea(
        (x0 + OFF_FRAME, y0 + OFF_FRAME, x1 - OFF_FRAME, y1 - OFF_FRAME),
        (bx0 - OFF_FRAME, by0, bx1, by1 + OFF_FRAME),
    )


def stand_in_projection(
    front: ComposedView, side: ComposedView, plan: ComposedView, area: FreeArea, *, third_angle: bool
) -> tuple[Standing, ...] | None:
    """Front, right side and plan in projection; None where they don't fit.

    Third angle: the plan above the front, the right side on its right. First angle: the plan below, the right side on
    its left. Floors are level, the plan is in line with the front.
    """
    fx0, _, fx1, _ = front.room
    sx0, _, sx1, _ = side.room
    beside = fx1 + BETWEEN_VIEWS - sx0 if third_angle else fx0 - BETWEEN_VIEWS - sx1
    # Further out the side view leaves the plan the paper over or under the front view alone.
    clear = plan.room[2] + BETWEEN_VIEWS - sx0 if third_angle else plan.room[0] - BETWEEN_VIEWS - sx1
    further = max(beside, clear) if third_angle else min(beside, clear)
    for side_x in dict.fromkeys((beside, further)):
        group = _projected(front, side, plan, side_x, third_angle=third_angle)
        found = _slid_into(group, area)
        if found is not None:
            return found
    return None


def _projected(
    front: ComposedView, side: ComposedView, plan: ComposedView, side_x: float, *, third_angle: bool
) -> tuple[Standing, ...]:
    """The front view at (0, 0), the side view beside it, the plan as near as both leave it room."""
    near = [front.room]
    plan_x0, plan_x1 = plan.room[0] - BETWEEN_VIEWS, plan.room[2] + BETWEEN_VIEWS
    if side.room[0] + side_x < plan_x1 - 1e-9 and side.room[2] + side_x > plan_x0 + 1e-9:
        near.append(side.room)
    top, foot = max(box[3] for box in near), min(box[1] for box in near)
    plan_y = top + BETWEEN_VIEWS - plan.room[1] if third_angle else foot - BETWEEN_VIEWS - plan.room[3]
    return Standing(front, (0.0, 0.0)), Standing(side, (side_x, 0.0)), Standing(plan, (0.0, plan_y))


def stand_in_rows(views: Sequence[ComposedView], area: FreeArea) -> tuple[Standing, ...] | None:
    """Views in rows from the upper left, all of them; None where they don't fit."""
    standing, rest = _fill(views, area)
    return standing if not rest else None


def stand_on_pages(
    views: Sequence[ComposedView], area: FreeArea, loose: Collection[str] = ()
) -> tuple[tuple[Standing, ...], ...] | None:
    """Views in rows on as many sheets as they need, in their order; None where one is too large for any sheet.

    Loose views that would have the last sheet to themselves stand in what earlier ones leave free, where all of them
    find room there.

    Args:
        views: in order.
        area: free area of each sheet.
        loose: ids of views that may come earlier than their order where a row or a sheet has room for them.
    """
    made = [
        pages
        for early, spread in ((loose, True), (loose, False), ((), True), ((), False))
        if (pages := _on_pages(views, area, early, spread=spread)) is not None
    ]
    if not made or len(made[0]) == 1:
        return made[0] if made else None
    closed = [_without_last(pages, area, loose) for pages in made]
    return min(closed, key=len)


def _on_pages(
    views: Sequence[ComposedView], area: FreeArea, loose: Collection[str], *, spread: bool
) -> tuple[tuple[Standing, ...], ...] | None:
    pages: list[tuple[Standing, ...]] = []
    rest: Sequence[ComposedView] = views
    while rest:
        standing, after = _fill(rest, area, loose, spread=spread)
        if not standing:
            return None
        pages.append(standing)
        rest = after
    return tuple(pages)


def _without_last(
    pages: tuple[tuple[Standing, ...], ...], area: FreeArea, loose: Collection[str]
) -> tuple[tuple[Standing, ...], ...]:
    """The pages without their last ones, as long as these hold loose views alone and others have room for them."""
    while len(pages) > 1 and all(standing.view.drawing.id in loose for standing in pages[-1]):
        shared = with_more(pages[:-1], [standing.view for standing in pages[-1]], area)
        if shared is None:
            break
        pages = shared
    return pages


def with_more(
    pages: Sequence[Sequence[Standing]], views: Sequence[ComposedView], area: FreeArea
) -> tuple[tuple[Standing, ...], ...] | None:
    """Pages with further views in what they leave free; None where not all of these have room.

    Args:
        pages: as they stand; what stands on them keeps its place.
        views: that are to stand on any of them.
        area: free area of each.
    """
    held = [list(page) for page in pages]
    for view in sorted(views, key=lambda one: -one.width * one.height):
        found = next(((page, spot) for page in held if (spot := _spot_for(view, page, area))), None)
        if found is None:
            return None
        found[0].append(found[1])
    return tuple(tuple(page) for page in held)


def _spot_for(view: ComposedView, page: Sequence[Standing], area: FreeArea) -> Standing | None:
    """Where a page has room for one more view: level with another one if it can be, else as high as it can be."""
    boxes = [standing.box for standing in page]
    x0, y0, x1, y1 = area.box
    wide, high = view.width, view.height
    if sum((b[2] - b[0]) * (b[3] - b[1]) for b in boxes) + wide * high > (x1 - x0) * (y1 - y0):
        return None
    level = sorted({b[1] for b in boxes}, reverse=True)
    below = {y1 - high, *(b[1] - BETWEEN_VIEWS - high for b in boxes), *(b[3] + BETWEEN_VIEWS for b in boxes), y0}
    lefts = {x0, x1 - wide, area.block[0] - wide, *(b[2] + BETWEEN_VIEWS for b in boxes)}
    lefts |= {b[0] - BETWEEN_VIEWS - wide for b in boxes}
    apart = BETWEEN_VIEWS - 1e-6
    for foot in (*level, *sorted(below, reverse=True)):
        if foot < y0 - 1e-6 or foot + high > y1 + 1e-6:
            continue
        beside = [b for b in boxes if b[1] < foot + high + apart and b[3] > foot - apart]
        for left in sorted(lefts):
            room = (left, foot, left + wide, foot + high)
            if area.holds(room) and not any(b[0] < room[2] + apart and b[2] > room[0] - apart for b in beside):
                return Standing(view, (left - view.room[0], foot - view.room[1]))
    return None


def choose_scale(
    sizes: Iterable[PaperSize],
    scales: Sequence[Scale],
    look_of: Callable[[PaperSize], Look],
    stand: Callable[[Scale, Look, FreeArea], tuple[Standing, ...] | None],
) -> Choice | None:
    """The first paper on which the views fit, at the largest scale that fits on it; None where nothing fits.

    Args:
        sizes: papers, the one asked for first, then larger ones.
        scales: preferred scales, largest first.
        look_of: the look on a paper.
        stand: composes the views at a scale and stands them in the free area, or gives None.
    """
    for size in sizes:
        look = look_of(size)
        area = free_area(size, look)
        for scale in scales:
            standing = stand(scale, look, area)
            if standing is not None:
                return Choice(size, scale, look, standing)
    return None


def _slid_into(group: Sequence[Standing], area: FreeArea) -> tuple[Standing, ...] | None:
    """The group as a whole in the middle of the area, or else in the first corner where it clears the title block."""
    x0, y0, x1, y1 = united([standing.box for standing in group])
    ax0, ay0, ax1, ay1 = area.box
    spare_x, spare_y = (ax1 - ax0) - (x1 - x0), (ay1 - ay0) - (y1 - y0)
    if spare_x < -1e-6 or spare_y < -1e-6:
        return None
    for share_x, share_y in _CORNERS:
        dx, dy = ax0 - x0 + spare_x * share_x, ay0 - y0 + spare_y * share_y
        moved = tuple(Standing(s.view, (s.at[0] + dx, s.at[1] + dy)) for s in group)
        if all(area.holds(standing.box) for standing in moved):
            return moved
    return None


def _fill(
    views: Sequence[ComposedView], area: FreeArea, loose: Collection[str] = (), *, spread: bool = True
) -> tuple[tuple[Standing, ...], Sequence[ComposedView]]:
    """Rows from the top down until no further view finds a place; what stands, and what is left.

    Spread, rows share out what they and the page leave free; else that is left at the right and at the foot.
    """
    x0, y0, x1, y1 = area.box
    standing: list[Standing] = []
    top = y1
    rest = list(views)
    while rest:
        held = _row_from(rest, top, area, loose)
        if not held:
            break
        row = [rest[i] for i in held]
        tall = max(view.height for view in row)
        right = area.block[0] if top - tall < area.block[3] else x1
        spare = (right - x0 - sum(v.width for v in row) - BETWEEN_VIEWS * (len(row) - 1)) / (len(row) + 1)
        spare = spare if spread else 0.0
        x = x0
        waiting = [view for i, view in enumerate(rest) if i not in held]
        for view in row:
            x += spare
            standing.append(Standing(view, (x - view.room[0], top - tall - view.room[1])))
            over, y = _over(waiting, loose, view.width, tall - view.height), top - tall + view.height + BETWEEN_VIEWS
            for other in over:
                middle = x + (view.width - other.width) / 2
                standing.append(Standing(other, (middle - other.room[0], y - other.room[1])))
                y += other.height + BETWEEN_VIEWS
            waiting = [one for one in waiting if one not in over]
            x += view.width + BETWEEN_VIEWS
        top -= tall + BETWEEN_VIEWS
        rest = waiting
    lowest = min((s.box[1] for s in standing), default=y0) if spread else y0
    return tuple(_lowered(standing, max(0.0, lowest - y0), area)), rest


def _row_from(views: Sequence[ComposedView], top: float, area: FreeArea, loose: Collection[str]) -> list[int]:
    """Which of the views make the next row: those that come next, then loose ones that make it little taller."""
    x0, y0, x1, _ = area.box
    held: list[int] = []
    wide = tall = 0.0
    for i, view in enumerate(views):
        in_order = len(held) == i
        if not in_order and view.drawing.id not in loose:
            continue
        taller = max(tall, view.height)
        wider = wide + view.width + (BETWEEN_VIEWS if held else 0.0)
        right = area.block[0] if top - taller < area.block[3] - 1e-6 else x1
        fits = top - taller >= y0 - 1e-6 and wider <= right - x0 + 1e-6
        if fits and (in_order or not held or taller <= LITTLE_TALLER * tall):
            held.append(i)
            wide, tall = wider, taller
    return held


def _over(
    waiting: Sequence[ComposedView], loose: Collection[str], width: float, spare: float
) -> list[ComposedView]:
    """Loose views that stand over a lower one of a row, within what the row is high anyway."""
    found: list[ComposedView] = []
    for view in waiting:
        if view.drawing.id in loose and view.width <= width and view.height + BETWEEN_VIEWS <= spare + 1e-6:
            found.append(view)
            spare -= view.height + BETWEEN_VIEWS
    return found


def _lowered(standing: Sequence[Standing], spare: float, area: FreeArea) -> Iterator[Standing]:
    """Rows moved down evenly, where that keeps them off the title block."""
    levels = sorted({round(s.box[1], 6) for s in standing}, reverse=True)
    step = spare / (len(levels) + 1)
    moved = [Standing(s.view, (s.at[0], s.at[1] - step * (levels.index(round(s.box[1], 6)) + 1))) for s in standing]
    yield from moved if all(area.holds(s.box) for s in moved) else standing
