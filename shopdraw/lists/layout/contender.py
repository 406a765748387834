"""What a search hands in."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.lists.layout.answer import CutUp


@dataclass(frozen=True, slots=True)
class Entry:
    """An answer before it is judged.

    Attributes:
        contender: which search made it.
        cut_up: boards and sheets; None where it found nothing.
        bound: on the cost of any layout; 0 where it knows none.
        hurried: the clock ended the search.
    """

    contender: str
    cut_up: tuple[CutUp, ...] | None
    bound: float = 0.0
    hurried: bool = False
