"""The bookcase: shelves fixed in dados, shelves on pins."""

from __future__ import annotations

from shopdraw.build.case_plan import CasePlan
from shopdraw.build.open_case import plan_open_case
from shopdraw.piece.design import Design, LevelTable

STANDARD_LEVELS = {
    "1": LevelTable(member="pinned-shelf"),
    "2": LevelTable(member="shelf"),
    "3": LevelTable(member="pinned-shelf"),
}
"""A fixed shelf that keeps the sides straight, and loose ones under and over it (common practice)."""


def plan_bookcase(design: Design) -> CasePlan:
    """A bookcase's sizes; one that names neither level nor opening has a fixed shelf between two loose ones.

    Raises:
        CannotBuild: inputs that can't all hold.
    """
    named = set(design.level) - {"bottom"} or design.opening
    return plan_open_case(design, design.opening, design.level if named else STANDARD_LEVELS)
