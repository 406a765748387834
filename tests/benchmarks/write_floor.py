"""How long our writers take beside bare ezdxf and reportlab for the same entities, both in one process.

Run it by hand: `python tests/benchmarks/write_floor.py`. It prints medians and their ratio; the aim is 1.5 or less.
Nothing here passes or fails by the clock.
"""

from __future__ import annotations

import io
import math
import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

import ezdxf
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from shopdraw.cnc.flat import FlatPart, Operation, Unit
from shopdraw.drawing.dimension import Dimension
from shopdraw.drawing.letters import LETTERING, font_file, font_size, lettered
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Paper, Placed, Sheet, SheetSet
from shopdraw.shape.path import Corner, circle
from shopdraw.shape.path import Path as Outline
from shopdraw.write.dxf import write_dxf
from shopdraw.write.pdf import write_pdf
from shopdraw.write.router import write_router_file

ROUNDS = 7
A1 = Paper("A1", 841.0, 594.0, (20, 10, 831, 584), "large")
MM = 72 / 25.4
POCKET = ((0.0, 0.0, 0.0), (40.0, 0.0, 0.3), (40.0, 20.0, 0.0), (0.0, 20.0, 0.0))


def segments(count: int) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    """Short lines spread over a sheet, the same every time."""
    starts = [(30 + 780 * math.modf(n * 0.618034)[0], 20 + 550 * math.modf(n * 0.754878)[0]) for n in range(count)]
    return [((x, y), (x + 15 * math.cos(n), y + 15 * math.sin(n))) for n, (x, y) in enumerate(starts)]


def words(count: int) -> list[tuple[tuple[float, float], str]]:
    """Words without fractions: bare libraries have none to compare with."""
    return [(start, f"drawer {n} side") for n, (start, _) in enumerate(segments(count))]


def drawing_of(lines: int, texts: int, dimensions: int) -> Drawing:
    """A drawing of loose lines, words and linear dimensions."""
    marks = [Line(a, b, Meaning.VISIBLE) for a, b in segments(lines)]
    marks += [Text(at, said, 2.5) for at, said in words(texts)]
    sizes = []
    for n in range(dimensions):
        x, y = 5.0 * n, 3.0 * n
        sizes.append(
            Dimension(f"d{n}", "linear", (x, y), (x + 100.0 + n, y), 0.0, (x, y + 20.0), f"{100 + n}",
                      (x + 50.0, y + 21.0), 0.0, 2.5, 100.0 + n)
        )  # fmt: skip
    return Drawing("front", "", tuple(marks), tuple(sizes))


def bare_dxf() -> None:
    """The same entities by ezdxf alone."""
    file = ezdxf.new("R2010", units=4)
    for layer in ("EDGE", "WORD", "SIZE"):
        file.layers.add(layer)
    style = file.dimstyles.new("OWN", {"dimtxt": 2.5, "dimasz": 3.0, "dimdec": 1, "dimexo": 0.0})
    model = file.modelspace()
    for a, b in segments(2000):
        model.add_line(a, b, dxfattribs={"layer": "EDGE"})
    for at, said in words(300):
        model.add_text(said, height=2.5, dxfattribs={"layer": "WORD"}).set_placement(at)
    for n in range(200):
        x, y = 5.0 * n, 3.0 * n
        model.add_linear_dim(
            (x, y + 20.0), (x, y), (x + 100.0 + n, y), dimstyle=style.dxf.name, dxfattribs={"layer": "SIZE"}
        ).render()
    file.write(io.StringIO())


def our_dxf(sheets: SheetSet) -> None:
    """Our writer, from a drawing that is there already, as it is in an export."""
    write_dxf(sheets, io.BytesIO())


def bare_pdf() -> None:
    """Lines and words by reportlab alone."""
    canvas = Canvas(
        io.BytesIO(), pagesize=(A1.width * MM, A1.height * MM), invariant=1, pageCompression=1,
        initialFontName=LETTERING,
    )  # fmt: skip
    size = font_size(LETTERING, 2.5) * MM
    for _ in range(20):
        canvas.setLineWidth(0.7 * MM)
        canvas.setFont(LETTERING, size)
        for (x0, y0), (x1, y1) in segments(1000):
            canvas.line(x0 * MM, y0 * MM, x1 * MM, y1 * MM)
        for (x, y), said in words(150):
            canvas.drawString(x * MM, y * MM, said)
        canvas.showPage()
    canvas.save()


def our_pdf(sheets: SheetSet) -> None:
    """Our writer, letters measured anew each time."""
    lettered.cache_clear()
    write_pdf(sheets, io.BytesIO())


def bare_router() -> None:
    """A thousand closed polylines with an arc each by ezdxf alone."""
    file = ezdxf.new("R2010", units=4)
    file.layers.add("SINK_635H")
    model = file.modelspace()
    for (x, y), _ in segments(1000):
        model.add_lwpolyline(
            [(x + dx, y + dy, b) for dx, dy, b in POCKET], format="xyb", close=True, dxfattribs={"layer": "SINK_635H"}
        )
    file.write(io.StringIO())


def our_router(part: FlatPart) -> None:
    """Our writer of flat files."""
    write_router_file(part, io.BytesIO())


def compare(what: str, bare: Callable[[], None], ours: Callable[[], None]) -> None:
    """Print the medians of both, run in turn."""
    times: tuple[list[float], list[float]] = ([], [])
    for _ in range(ROUNDS):
        for run, kept in zip((bare, ours), times, strict=True):
            start = time.perf_counter()
            run()
            kept.append((time.perf_counter() - start) * 1000)
    floor, own = (statistics.median(kept) for kept in times)
    print(f"{what:<58} bare {floor:7.1f} ms   ours {own:7.1f} ms   ratio {own / floor:4.2f}")


def main() -> None:
    """All comparisons."""
    pdfmetrics.registerFont(TTFont(LETTERING, str(font_file(LETTERING))))
    view = drawing_of(2000, 300, 200)
    one = SheetSet("", "", "", "iso", (Sheet("front", "1", "", A1, (Placed(view, 1.0, (0.0, 0.0)),)),))
    page = tuple(drawing_of(1000, 150, 0).marks)
    many = SheetSet("", "", "", "iso", tuple(Sheet(f"s{n}", str(n), "", A1, (), page) for n in range(1, 21)))
    pockets = tuple(
        Operation("SINK_635H", Outline(tuple(Corner(x + dx, y + dy, b) for dx, dy, b in POCKET)))
        for (x, y), _ in segments(1000)
    )
    part = FlatPart("bench", Unit.MM, circle((0.0, 0.0), 10.0), pockets)
    compare("DXF R2010: 2,000 lines, 300 texts, 200 dimensions", bare_dxf, lambda: our_dxf(one))
    compare("PDF: 20 pages of 1,000 lines and 150 texts", bare_pdf, lambda: our_pdf(many))
    compare("router file: 1,000 closed polylines", bare_router, lambda: our_router(part))


if __name__ == "__main__":
    main()
