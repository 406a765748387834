"""Faults of a whole set that no single page shows: balloons and labels, planes and sections, details and circles,
overalls. Each list must be empty.
"""

from __future__ import annotations

import math
import re
from collections.abc import Collection, Iterator, Mapping

from shopdraw.drawing.mark import ArcMark, Text
from shopdraw.drawing.sheet import Drawing, Placed, SheetSet

SET_RULES = (
    "balloon without a board",
    "board without a balloon",
    "label twice in a view",
    "plane without its section",
    "section without its plane",
    "detail without its circle",
    "overall not told once",
)
PLANE_LETTERS = "ABCDEFGHJKLMNPRTUVW"
"""ASME Y14.3 practice (read second-hand): I, O, Q, S, X, Y, Z are left out."""


def judge_set(
    sheet_set: SheetSet,
    labels: Collection[str],
    overalls: Mapping[str, float],
    arrangement: str = "general-arrangement",
) -> dict[str, list[str]]:
    """Every fault by rule.

    Args:
        sheet_set: the whole set.
        labels: of all boards, as the cut list has them.
        overalls: sizes in mm that the arrangement's sheet must tell once each, by name.
        arrangement: how that sheet's key begins.
    """
    faults: dict[str, list[str]] = {rule: [] for rule in SET_RULES}
    drawings = [placed.drawing for sheet in sheet_set.sheets for placed in sheet.placed]
    for rule, fault in (
        *_balloon_faults(sheet_set, labels),
        *_plane_faults(drawings),
        *_detail_faults(drawings),
        *_overall_faults(sheet_set, overalls, arrangement),
    ):
        faults[rule].append(fault)
    return faults


def _balloon_faults(sheet_set: SheetSet, labels: Collection[str]) -> Iterator[tuple[str, str]]:
    ballooned: set[str] = set()
    for sheet in sheet_set.sheets:
        for placed in sheet.placed:
            if placed.drawing.id.startswith("detail"):
                continue
            found = list(_balloons(placed))
            ballooned.update(found)
            for label in sorted({one for one in found if found.count(one) > 1}):
                yield "label twice in a view", f"{label} in {placed.drawing.id}"
    for label in sorted(ballooned - set(labels)):
        yield "balloon without a board", label
    for label in sorted(set(labels) - ballooned):
        yield "board without a balloon", label


def _balloons(placed: Placed) -> Iterator[str]:
    """Words that stand in the middle of a full circle not much larger than they are, on paper."""
    circles = [
        mark
        for mark in placed.drawing.marks
        if isinstance(mark, ArcMark) and mark.end_deg - mark.start_deg >= 360.0 - 1e-9
    ]
    for text in placed.drawing.marks:
        if isinstance(text, Text) and text.anchor == "middle":
            middle = (text.at[0], text.at[1] + text.height / 2 / placed.scale)
            around = (
                math.dist(c.centre, middle) * placed.scale < 0.1 and c.radius * placed.scale < 30.0 for c in circles
            )
            if any(around):
                yield text.words


def _plane_faults(drawings: Collection[Drawing]) -> Iterator[tuple[str, str]]:
    lettered = {
        mark.words
        for drawing in drawings
        for mark in drawing.marks
        if isinstance(mark, Text) and len(mark.words) == 1 and mark.words in PLANE_LETTERS and mark.height >= 5.0 - 0.3
    }
    sections = {drawing.id.removeprefix("section.") for drawing in drawings if drawing.id.startswith("section.")}
    for letter in sorted(lettered - sections):
        yield "plane without its section", letter
    for letter in sorted(sections - lettered):
        yield "section without its plane", letter


def _detail_faults(drawings: Collection[Drawing]) -> Iterator[tuple[str, str]]:
    for drawing in drawings:
        if not drawing.id.startswith("detail."):
            continue
        name = drawing.id.removeprefix("detail.")
        told = any(
            isinstance(mark, Text) and re.match(rf"{re.escape(name)}\b", mark.words)
            for other in drawings
            if other.id != drawing.id
            for mark in other.marks
        )
        if not told:
            yield "detail without its circle", name


def _overall_faults(sheet_set: SheetSet, overalls: Mapping[str, float], arrangement: str) -> Iterator[tuple[str, str]]:
    found = [
        dimension
        for sheet in sheet_set.sheets
        if sheet.key.startswith(arrangement)
        for placed in sheet.placed
        for dimension in placed.drawing.dimensions
        if dimension.kind == "linear" and not dimension.words.startswith("(")
    ]
    for name, size in overalls.items():
        told = [dimension.id for dimension in found if abs(dimension.measured - size) < 0.01]
        if len(told) != 1:
            yield "overall not told once", f"{name} {size:g}: {', '.join(told) or 'nowhere'}"
