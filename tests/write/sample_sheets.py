"""Sheets that the writers' tests share: a side of a harbour desk, drawn with one mark of every kind."""

from __future__ import annotations

from typing import Any

from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.mark import ArcMark, Area, Arrow, Dot, Hatching, Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Paper, Placed, Sheet, SheetSet
from shopdraw.shape.path import circle, rectangle

TITLE = "Écritoire 7 ⅝″ – façade"
PLACE = "Büro/Žďár ± 5° Ø 12 ≤ 3"
A3 = Paper("A3", 420.0, 297.0, (20, 10, 410, 287), "medium")
A4 = Paper("A4", 210.0, 297.0, (20, 10, 200, 287), "small")
LETTER = Paper("A", 215.9, 279.4, (20, 10, 205, 269), "small")
HUNDRED = Line((50.0, 40.0), (150.0, 40.0), Meaning.FRAME, width=0.25)
"""A line of 100 mm on paper, with nothing near it."""


def linear(words: str, length: float, **other: Any) -> Dimension:
    """A dimension under an edge along x from 0 to `length`, its line 60 below."""
    given: dict[str, Any] = {
        "id": f"foot/head@{words}",
        "kind": "linear",
        "a": (0.0, 0.0),
        "b": (length, 0.0),
        "direction_deg": 0.0,
        "line": (0.0, -60.0),
        "words": words,
        "words_at": (length / 2, -56.0),
        "words_angle_deg": 0.0,
        "height": 2.5,
        "measured": length,
    }
    return Dimension(**(given | other))


def side() -> Drawing:
    """The side at true size, with every kind of mark and dimension."""
    edges = [((0, 0), (800.1, 0)), ((800.1, 0), (800.1, 300)), ((800.1, 300), (0, 300)), ((0, 300), (0, 0))]
    marks = [Line(a, b, Meaning.VISIBLE, "side.left") for a, b in edges]
    marks += [
        Line((100, 0), (100, 300), Meaning.HIDDEN),
        Line((400, -20), (400, 320), Meaning.CENTRE),
        Line((-20, 150), (820, 150), Meaning.PLANE),
        ArcMark((600, 150), 80, 0, 360, Meaning.VISIBLE),
        ArcMark((0, 0), 200, 0, 90, Meaning.MOVING),
        Area(rectangle(120, 20, 380, 130), (circle((200, 75), 30),), Hatching("lines"), clear=((250, 60, 330, 90),)),
        Area(rectangle(120, 170, 380, 280), (), Hatching("broken", 0.0, 2.6, 7)),
        Area(rectangle(420, 170, 480, 173), (), Hatching("grey")),
        Dot((450, 75), 0.75, Meaning.SIZE),
        Arrow((500, 75), 90.0, 3.0, 1.0),
        Text((290, 70), "7 ⅝″", 2.5, "middle"),
        Text((600, 250), TITLE, 2.5, "right"),
    ]
    sizes = (
        linear('31 1/2"', 800.1),
        linear("(300)", 300.0, id="h", a=(0.0, 0.0), b=(0.0, 300.0), direction_deg=90.0, line=(-60.0, 0.0),
               words_at=(-64.0, 150.0), words_angle_deg=90.0),
        linear("100", 100.0, id="r", kind="running", a=(0.0, 300.0), b=(100.0, 300.0), line=(0.0, 340.0),
               words_at=(80.0, 344.0)),
        linear("90°", 90.0, id="a", kind="angular", a=(100.0, 0.0), b=(0.0, 100.0), line=(141.42, 141.42),
               words_at=(170.0, 170.0), vertex=(0.0, 0.0)),
        linear("R80", 80.0, id="R", kind="radius", a=(600.0, 150.0), b=(680.0, 150.0), line=(600.0, 150.0),
               words_at=(640.0, 154.0)),
        linear("Ø160", 160.0, id="D", kind="diameter", a=(600.0, 150.0), b=(600.0, 230.0), line=(600.0, 150.0),
               words_at=(590.0, 150.0), words_angle_deg=90.0),
    )  # fmt: skip
    return Drawing("side", "Side", tuple(marks), sizes)


def detail() -> Drawing:
    """A small drawing at full size."""
    marks = (Line((0, 0), (100, 0), Meaning.CUT), Line((0, 0), (40, 30), Meaning.BEHIND), Text((5, 20), PLACE, 2.5))
    return Drawing("detail.d1", "Detail d1", marks, (linear("100", 100.0, line=(0.0, -10.0), words_at=(50.0, -9.0)),))


def sheet_set(style: str = "iso", *, true_size: bool = False) -> SheetSet:
    """Two sheets: one with two scales, one on smaller paper with the line of 100 mm."""
    words = (Text((400, 15), "drawer 31 1/2 × 5/8", 3.5, "right"), Text((30, 60), "up 1/2", 5.0, angle_deg=90.0))
    first = Sheet(
        "general-arrangement",
        "1",
        TITLE,
        A3,
        (Placed(side(), 0.25, (70, 150)), Placed(detail(), 1.0, (120, 50))),
        words,
    )
    second = Sheet("parts-1", "2", "Parts", A4, (Placed(detail(), 0.5, (60, 150)),), (HUNDRED,))
    return SheetSet(TITLE, "A. Maker", "a desk for the harbour office", style, (first, second), true_size)
