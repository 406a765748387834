"""What drawing standards say of letters, lines and title blocks."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from shopdraw.trade.table import NotInTable, Source, sources, table


@dataclass(frozen=True, slots=True)
class Lettering:
    """A size of lettering, type B, mm on paper. Source: ISO 3098.

    Attributes:
        height: of capitals and figures.
        lower_case: height of lower-case letters without stems.
        stroke: width of the lines.
        gap: between letters.
        pitch: from line to line, with accents.
        pitch_capitals: from line to line, capitals only.
    """

    height: float
    lower_case: float
    stroke: float
    gap: float
    pitch: float
    pitch_capitals: float


@dataclass(frozen=True, slots=True)
class LineGroup:
    """Line widths that go together, mm on paper. Source: ISO 128."""

    narrow: float
    symbols: float
    wide: float
    extra_wide: float


@dataclass(frozen=True, slots=True)
class TitleField:
    """A field of the title block.

    Attributes:
        key: short name.
        name: the standard's name.
        longest: characters, or None where the standard leaves it open.
        mandatory: whether the standard asks for it.
        source: of the row.
    """

    key: str
    name: str
    longest: int | None
    mandatory: bool
    source: Source


@lru_cache
def letterings() -> tuple[Lettering, ...]:
    """All sizes of lettering, smallest first."""
    return tuple(Lettering(*(float(mm) for mm in row)) for row in table("drafting")["lettering"]["rows"])


def lettering(height: float) -> Lettering:
    """The lettering whose capitals are that high.

    Raises:
        NotInTable: the standard has no such height.
    """
    for one in letterings():
        if one.height == height:
            return one
    raise NotInTable("height of letters", f"{height:g}", [f"{one.height:g}" for one in letterings()])


@lru_cache
def line_groups() -> tuple[LineGroup, ...]:
    """Groups of line widths, finest first."""
    return tuple(LineGroup(*row) for row in table("drafting")["lines"]["groups"])


@lru_cache
def title_block_fields() -> tuple[TitleField, ...]:
    """The fields of a title block, the mandatory ones first. Source: ISO 7200:2004."""
    return tuple(
        TitleField(
            row["key"], row["name"], row["longest"] or None, row["mandatory"], sources("drafting")[row["source"]]
        )
        for row in table("drafting")["title_block"]
    )
