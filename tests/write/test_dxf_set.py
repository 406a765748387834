"""A whole set as DXF says what its PDF says: each dimension's text is the sheets' string, and its points measure it.

Read by the tag reader beside this file: lengths are worked out from definition points (DXF reference, DIMENSION: 13/23
and 14/24 are what is measured, 50 the direction, 10/20 and 15/25 the ends of a radius or diameter).
"""

from __future__ import annotations

import io
import math
from collections import Counter
from functools import lru_cache

import pytest

from shopdraw.drawing.sheet import SheetSet
from shopdraw.write.dxf import write_dxf
from tests.sheet.judge import figure_in
from tests.sheet.sample_set import made
from tests.write.dxf_tags import Entity, blocks_of, entities_of

SETS = (("chart-room-desk", "mm", 0.5), ("harbour-office-desk", "in", 1 / 16))
"""A set in millimetres and one in inches, with the step of its general figures in the file's unit."""


@lru_cache(maxsize=4)
def sizes_of(desk: str, unit: str) -> tuple[SheetSet, list[tuple[Entity, str]]]:
    """A set, and each DIMENSION of its file with the text that its block draws."""
    sheets = made(desk)[2].sheets
    out = io.BytesIO()
    write_dxf(sheets, out, unit)
    data = out.getvalue()
    blocks = blocks_of(data)
    found = [e for e in entities_of(data, "ENTITIES") if e.kind == "DIMENSION"]
    drawn = [" ".join(t.get(1) or "" for t in blocks[e.get(2) or ""] if t.kind in ("TEXT", "MTEXT")) for e in found]
    return sheets, list(zip(found, drawn, strict=True))


def measured(size: Entity) -> float | None:
    """What a dimension's points measure, in the file's unit; None for an angle."""
    kind = int(size.get(70) or 0) & 7

    def at(code: int) -> tuple[float, float]:
        return float(size.get(code) or 0.0), float(size.get(code + 10) or 0.0)

    if kind in (0, 1):
        (ax, ay), (bx, by) = at(13), at(14)
        turn = math.radians(float(size.get(50) or 0.0))
        along = (bx - ax) * math.cos(turn) + (by - ay) * math.sin(turn)
        return abs(along) if kind == 0 else math.dist((ax, ay), (bx, by))
    if kind in (3, 4):
        return math.dist(at(10), at(15))
    return None


@pytest.mark.parametrize(("desk", "unit", "step"), SETS)
def test_every_dimension_has_the_sheets_string(desk: str, unit: str, step: float) -> None:
    sheets, found = sizes_of(desk, unit)
    wanted = Counter(d.words for s in sheets.sheets for p in s.placed for d in p.drawing.dimensions)
    assert sum(wanted.values()) > 100
    assert Counter(text for _, text in found) == wanted


@pytest.mark.parametrize(("desk", "unit", "step"), SETS)
def test_text_and_measured_length_agree(desk: str, unit: str, step: float) -> None:
    _, found = sizes_of(desk, unit)
    checked = 0
    for size, text in found:
        length, figure = measured(size), figure_in(text)
        if length is None or figure is None:
            continue
        # A part that stands for several prints a letter, and a link of a chain may be rounded by a step.
        assert abs(float(figure) - length) <= step + 1e-6, f"{text!r} measures {length:.4f} {unit}"
        assert float(size.get(42) or 0.0) == pytest.approx(length, abs=1e-4)
        checked += 1
    assert checked > 100
