"""The legend: the kinds of lines and the hatches that a set uses, each with a sample. Paper mm."""

from __future__ import annotations

from collections.abc import Iterable

from shopdraw.drawing.mark import Area, Hatching, Line, Mark, Meaning
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.path import Point, rectangle
from shopdraw.sheet.column import SAMPLE, Block, Entry, Sample
from shopdraw.sheet.look import Look
from shopdraw.wood.assembly import Assembly

LINES = {
    Meaning.VISIBLE: "edge in sight",
    Meaning.CUT: "outline of cut wood",
    Meaning.BEHIND: "edge behind a section's plane",
    Meaning.HIDDEN: "hidden edge",
    Meaning.CENTRE: "centre line, hinge pin",
    Meaning.PLANE: "cutting plane; the arrows look at the section",
    Meaning.MOVING: "moved position: lid open, supports out, swing",
    Meaning.SIZE: "dimension, extension, leader; circle of a detail",
}
HATCHES = {
    "end": ("solid wood, end grain", Hatching("lines", 45.0, 2.0)),
    "long": ("solid wood, cut along the grain", Hatching("broken", 0.0, 1.5, 1)),
    "sheet": ("plywood: lines square to its faces", Hatching("lines", 90.0, 1.0)),
    "grey": ("wood drawn too thin for a hatch", Hatching("grey")),
}
_WIDE = SAMPLE - 3.0


def legend(drawings: Iterable[Drawing], assembly: Assembly) -> tuple[Block, Block]:
    """Lines and hatches that the drawings use, in a fixed order."""
    meanings: set[Meaning] = set()
    hatches: set[str] = set()
    for drawing in drawings:
        for mark in drawing.marks:
            if isinstance(mark, Area):
                hatches.add(_hatch(mark, assembly))
            else:
                meanings.add(mark.meaning)
        if drawing.dimensions:
            meanings.add(Meaning.SIZE)
    lines = tuple(Entry(words, _line_sample(meaning)) for meaning, words in LINES.items() if meaning in meanings)
    cut = tuple(Entry(words, _hatch_sample(hatching)) for name, (words, hatching) in HATCHES.items() if name in hatches)
    return Block("Lines", lines), Block("Cut wood", cut)


def _hatch(area: Area, assembly: Assembly) -> str:
    if area.hatching.kind == "grey":
        return "grey"
    if assembly.board(area.board).stock.kind == "sheet":
        return "sheet"
    return "long" if area.hatching.kind == "broken" else "end"


def _line_sample(meaning: Meaning) -> Sample:
    def draw(at: Point, look: Look) -> tuple[Mark, ...]:
        y = at[1] + look.figure / 2
        return (Line((at[0], y), (at[0] + _WIDE, y), meaning),)

    return draw


def _hatch_sample(hatching: Hatching) -> Sample:
    def draw(at: Point, look: Look) -> tuple[Mark, ...]:
        x, y = at[0], at[1] - 0.4 * look.figure
        top = y + 1.6 * look.figure
        corners = ((x, y), (x + _WIDE, y), (x + _WIDE, top), (x, top))
        edge = tuple(Line(p, q, Meaning.CUT) for p, q in zip(corners, (*corners[1:], corners[0]), strict=True))
        return (Area(rectangle(x, y, x + _WIDE, top), (), hatching), *edge)

    return draw
