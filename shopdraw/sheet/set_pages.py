"""A set's drawn views on pages: the largest scale at which they fit the paper, in projection and in rows."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.mark import Mark
from shopdraw.sheet.arrange import (
    BETWEEN_VIEWS,
    FreeArea,
    Standing,
    stand_in_projection,
    stand_on_pages,
    with_more,
)
from shopdraw.sheet.box import united
from shopdraw.sheet.caution_note import with_cautions
from shopdraw.sheet.extent import whole
from shopdraw.sheet.manner import Manner, larger_papers
from shopdraw.sheet.set_views import SetViews, set_views
from shopdraw.sheet.view import ComposedView
from shopdraw.trade.scale import Scale
from shopdraw.wood.assembly import Assembly

LEAST_BANDS = 60.0
"""Paper beside a view that its rows take at least; only a first sieve of scales."""
LARGEST_RATIO = 0.5
DETAIL_SCALES = ("1:1", "1:2")
MOST_NAMED = 3
"""A sheet's title names each of so many details that follow each other; of more, the first and the last."""
FEW_DETAILS = 4
"""So many details at most stand beside the arrangement instead of having a sheet to themselves (own choice)."""
TILT = ("tilt",)


class NoRoomForSet(ValueError):
    """A piece that fits no paper at any preferred scale; the message says what was tried."""


@dataclass(frozen=True, slots=True)
class Page:
    """What a sheet of drawings holds before it has its number.

    Attributes:
        key, title: of the sheet.
        standing: views and where they stand.
        marks: cautions.
        scale: as the title block says it.
    """

    key: str
    title: str
    standing: tuple[Standing, ...]
    marks: tuple[Mark, ...]
    scale: str


@dataclass(frozen=True, slots=True)
class Drawn:
    """Views on pages, the paper that they were drawn for, and what they tell."""

    manner: Manner
    views: SetViews
    pages: tuple[Page, ...]


def drawn_pages(assembly: Assembly, manner: Manner, *, apart: bool) -> Drawn:
    """The sheets of arrangement, sections and details.

    Args:
        assembly: the piece.
        manner: the paper that is asked for; a larger one of its series is taken only where no scale fits.
        apart: the plan, or each view, may stand on a sheet of its own (bench sets).
    Raises:
        NoRoomForSet: no paper of the series holds the piece at any preferred scale.
    """
    for size in larger_papers(manner.size):
        held = manner.on(size)
        area, _ = with_cautions(TILT, size, held.look)
        for scale in held.scales:
            if scale.ratio <= LARGEST_RATIO and _may_fit(assembly, scale.ratio, area, apart=apart):
                found = _at_scale(assembly, held, scale, apart=apart)
                if found is not None:
                    return found
    raise NoRoomForSet(
        f"{manner.size.name} and larger sheets of its series hold the piece at none of the scales "
        f"{', '.join(scale.name for scale in manner.scales)}"
    )


def _may_fit(assembly: Assembly, ratio: float, area: FreeArea, *, apart: bool) -> bool:
    box = whole(assembly)
    opened = assembly.slant.open_projection_mm if assembly.slant is not None else 0.0
    wide, deep, high = box.x1 - box.x0, box.y1 - box.y0, box.z1 - box.z0
    x0, y0, x1, y1 = area.box
    across = (wide + deep + opened) * ratio + BETWEEN_VIEWS + LEAST_BANDS
    up = (high if apart else high + deep) * ratio + LEAST_BANDS
    return across <= x1 - x0 and up <= y1 - y0


def _at_scale(assembly: Assembly, manner: Manner, scale: Scale, *, apart: bool) -> Drawn | None:
    """All views at a scale, each detail at the largest one at which it stands on a sheet; None where they don't fit."""
    largest, *smaller = (_named_scale(manner, name) for name in DETAIL_SCALES)
    given: dict[str, Scale] = {}
    while True:
        made = set_views(assembly, manner, scale, largest, given)
        arrangement = _arrangement(made, manner, apart=apart)
        if arrangement is None:
            return None
        rest = _rows(made, manner)
        if rest is not None:
            first, others = _shared(arrangement[0], rest, made, manner)
            return Drawn(manner, made, (first, *arrangement[1:], *_named(others, made, manner)))
        reduced = dict(_reduced(made, manner, (largest, *smaller)))
        if not reduced:
            return None
        given |= reduced


def _reduced(made: SetViews, manner: Manner, scales: Sequence[Scale]) -> Iterator[tuple[str, Scale]]:
    """The details that don't stand on a sheet, each with the next smaller scale, where there is one."""
    area, _ = with_cautions(TILT, manner.size, manner.look)
    for detail in made.details:
        if stand_on_pages([made.done.views[detail.view]], area) is None:
            now = made.detail_scales[detail.name].ratio
            less = next((one for one in scales if one.ratio < now), None)
            if less is not None:
                yield detail.name, less


def _named_scale(manner: Manner, name: str) -> Scale:
    return next(scale for scale in manner.scales if scale.name == name)


def _arrangement(made: SetViews, manner: Manner, *, apart: bool) -> tuple[Page, ...] | None:
    views = made.done.views
    area, marks = with_cautions(TILT, manner.size, manner.look)
    third, printed = manner.third_angle, made.scale.printed
    whole_set = stand_in_projection(views["front"], views["side"], views["plan"], area, third_angle=third)
    if whole_set is not None:
        return (Page("general-arrangement", "General arrangement", whole_set, marks, printed),)
    if not apart:
        return None
    alone = {name: stand_on_pages([views[name]], area) for name in ("front", "side", "plan")}
    plan = alone["plan"]
    beside = _side_by_side(views["front"], views["side"], area, third_angle=third)
    if plan is not None and beside is not None:
        return (
            Page("general-arrangement", "General arrangement", beside, marks, printed),
            Page("plan", "Plan", plan[0], marks, printed),
        )
    pages = [
        Page(key, f"General arrangement: {name}", held[0], marks, printed)
        for key, name, held in (
            ("general-arrangement", "front", alone["front"]),
            ("right-side", "right side", alone["side"]),
            ("plan", "plan", alone["plan"]),
        )
        if held is not None
    ]
    return tuple(pages) if len(pages) == len(alone) else None


def _side_by_side(
    front: ComposedView, side: ComposedView, area: FreeArea, *, third_angle: bool
) -> tuple[Standing, ...] | None:
    """Front and right side, floors level, in the order of the projection; None where they don't fit."""
    gap = front.room[2] + BETWEEN_VIEWS - side.room[0] if third_angle else front.room[0] - BETWEEN_VIEWS - side.room[2]
    group = (Standing(front, (0.0, 0.0)), Standing(side, (gap, 0.0)))
    x0, _, x1, y1 = united([standing.box for standing in group])
    ax0, _, ax1, ay1 = area.box
    for share in (0.5, 0.0):
        dx = ax0 - x0 + share * ((ax1 - ax0) - (x1 - x0))
        moved = tuple(Standing(s.view, (s.at[0] + dx, s.at[1] + ay1 - y1)) for s in group)
        if all(area.holds(s.box) for s in moved):
            return moved
    return None


def _rows(made: SetViews, manner: Manner) -> tuple[tuple[Standing, ...], ...] | None:
    """Sections, then details, on as many sheets as they need; None where one is too large."""
    area, _ = with_cautions(TILT, manner.size, manner.look)
    names = [*(plane.view for plane in made.planes), *(detail.view for detail in made.details)]
    return stand_on_pages([made.done.views[name] for name in names], area, {detail.view for detail in made.details})


def _shared(
    arrangement: Page, rest: Sequence[tuple[Standing, ...]], made: SetViews, manner: Manner
) -> tuple[Page, Sequence[tuple[Standing, ...]]]:
    """The arrangement with the few details that would have the last sheet to themselves, where it has room for them."""
    names = {detail.view: detail.name for detail in made.details}
    held = [standing.view for standing in rest[-1]] if rest else []
    if not 0 < len(held) <= FEW_DETAILS or any(view.drawing.id not in names for view in held):
        return arrangement, rest
    area, _ = with_cautions(TILT, manner.size, manner.look)
    found = with_more([arrangement.standing], held, area)
    if found is None:
        return arrangement, rest
    told = _from_to(list(names.values()), {names[view.drawing.id] for view in held})
    title = f"{arrangement.title}; detail{'s' if len(held) > 1 else ''} {', '.join(told)}"
    return replace(arrangement, title=title, standing=found[0]), rest[:-1]


def _named(pages: Sequence[tuple[Standing, ...]], made: SetViews, manner: Manner) -> Iterator[Page]:
    _, marks = with_cautions(TILT, manner.size, manner.look)
    counts: dict[str, int] = {}
    for standing in pages:
        held = {s.view.drawing.id for s in standing}
        shown = [plane for plane in made.planes if plane.view in held]
        sections = [f"{plane.letter}–{plane.letter}" for plane in shown if plane.letter != "L"]
        views = [plane.letter for plane in shown if plane.letter == "L"]
        details = _from_to([detail.name for detail in made.details], {d.name for d in made.details if d.view in held})
        key = "sections" if shown else "details"
        counts[key] = counts.get(key, 0) + 1
        title = "; ".join(
            f"{word}{'s' if len(names) > 1 or ' ' in names[0] else ''} {', '.join(names)}"
            for word, names in (("section", sections), ("view", views), ("detail", details))
            if names
        )
        yield Page(
            key if counts[key] == 1 else f"{key}-{counts[key]}",
            title[:1].upper() + title[1:],
            standing,
            marks,
            made.scale.printed if shown else _most(made, held).printed,
        )


def _most(made: SetViews, held: Collection[str]) -> Scale:
    """The scale of most details on a sheet; of as many the larger one."""
    scales = [made.detail_scales[detail.name] for detail in made.details if detail.view in held]
    return max(scales, key=lambda scale: (scales.count(scale), scale.ratio))


def _from_to(names: Sequence[str], held: Collection[str]) -> list[str]:
    """The names that a sheet holds; of many that follow each other the first and the last one."""
    runs: list[list[str]] = []
    for name, before in zip(names, ("", *names), strict=False):
        if name in held:
            if runs and before in held:
                runs[-1].append(name)
            else:
                runs.append([name])
    return [
        word for run in runs for word in (run if len(run) <= MOST_NAMED else [f"{run[0]} to {run[-1]}"])
    ]
