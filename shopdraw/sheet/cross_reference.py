"""Where details are drawn and where they come from: sheet and zone, filled in once every view has its place."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from shopdraw.drawing.mark import Text
from shopdraw.shape.path import Point
from shopdraw.sheet.arrange import Standing
from shopdraw.sheet.details import Detail
from shopdraw.sheet.set_pages import Drawn, Page
from shopdraw.sheet.set_views import UNKNOWN, detail_name, detail_title


def with_references(drawn: Drawn, first_number: int) -> tuple[Page, ...]:
    """The pages with each detail's circle naming the detail's sheet and zone, and each detail naming its circle's.

    Args:
        drawn: views on pages.
        first_number: number of the first page's sheet.
    """
    circles, details = {}, {}
    for number, page in enumerate(drawn.pages, start=first_number):
        for standing in page.standing:
            for detail in drawn.views.details:
                if standing.view.drawing.id == detail.plane.view:
                    circles[detail.name] = f"{number}-{_zone(drawn, standing, detail.centre)}"
                if standing.view.drawing.id == detail.view:
                    details[detail.name] = f"{number}-{_zone(drawn, standing, detail.centre)}"
    words = _words(drawn, circles, details)
    return tuple(replace(page, standing=tuple(_filled(s, words) for s in page.standing)) for page in drawn.pages)


def _zone(drawn: Drawn, standing: Standing, point: Point) -> str:
    scale = standing.view.scale
    return drawn.manner.size.zone_at(standing.at[0] + point[0] * scale, standing.at[1] + point[1] * scale)


def _words(drawn: Drawn, circles: Mapping[str, str], details: Mapping[str, str]) -> dict[str, str]:
    found: dict[str, str] = {}
    every: Sequence[Detail] = drawn.views.details
    for detail in every:
        scale = drawn.views.detail_scales[detail.name]
        found[detail_name(detail, UNKNOWN)] = detail_name(detail, details[detail.name])
        found[detail_title(detail, scale, UNKNOWN)] = detail_title(detail, scale, circles[detail.name])
    return found


def _filled(standing: Standing, words: Mapping[str, str]) -> Standing:
    drawing = standing.view.drawing
    marks = tuple(
        replace(mark, words=words[mark.words]) if isinstance(mark, Text) and mark.words in words else mark
        for mark in drawing.marks
    )
    title = words.get(drawing.title, drawing.title)
    return replace(standing, view=replace(standing.view, drawing=replace(drawing, title=title, marks=marks)))
