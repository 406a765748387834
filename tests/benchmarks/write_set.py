"""How long a bench set of some forty sheets takes: placing its dimensions, then its PDF and DXF beside bare libraries.

Run it by hand: `python tests/benchmarks/write_set.py`. The bare libraries get the same primitives: every path, word and
entity that our files hold, read back from them. Times are the processor's own, so that what else runs matters little;
of each the least of a few rounds. Aims: 2 s for the dimensions, 10 s for the files, 1.5 × the bare libraries.
Nothing here passes or fails by the clock.
"""

from __future__ import annotations

import io
import math
import sys
import time
from collections.abc import Callable
from itertools import cycle, islice
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

import ezdxf
from ezdxf.math import Vec3
from pypdf import PdfReader
from pypdf.generic import ContentStream
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from shopdraw.build import build
from shopdraw.drawing.letters import LETTERING, font_file, lettered
from shopdraw.drawing.sheet import Sheet, SheetSet
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.piece.reading import read_piece
from shopdraw.sheet import set_views
from shopdraw.sheet.set import sheet_set
from shopdraw.write.dxf import write_dxf
from shopdraw.write.pdf import write_pdf

ROUNDS = 3
SHEETS = 40
SAMPLE = Path(__file__).resolve().parents[2] / "sample_projects" / "harbour-master-desk.piece"


def clocked(run: Callable[[], object]) -> float:
    """Seconds of the processor's own time, the least of a few rounds."""
    times = []
    for _ in range(ROUNDS):
        start = time.process_time()
        run()
        times.append(time.process_time() - start)
    return min(times)


def made_set() -> tuple[SheetSet, list[float]]:
    """The bench set of a desk with compartments, and how long each placing of its dimensions took."""
    design = read_piece(SAMPLE).design
    design = design.model_copy(update={"drawing": design.drawing.model_copy(update={"set": "bench"})})
    assembly = build(design)
    placing: list[float] = []
    place = set_views.dimension_views

    def timed(*given: object, **named: object) -> object:
        start = time.process_time()
        placed = place(*given, **named)  # type: ignore[arg-type]
        placing.append(time.process_time() - start)
        return placed

    set_views.dimension_views = timed  # type: ignore[assignment]
    try:
        whole = sheet_set(design, assembly, (), cut_list(assembly, design), (materials(assembly, design),))
    finally:
        set_views.dimension_views = place
    return whole.sheets, placing


def forty(sheets: SheetSet) -> SheetSet:
    """The set's sheets, the first ones again until there are forty."""
    every: list[Sheet] = list(islice(cycle(sheets.sheets), max(SHEETS, len(sheets.sheets))))
    return SheetSet(sheets.title, sheets.author, sheets.subject, sheets.style, tuple(every))


def bare_pages(pdf: bytes) -> list[tuple[tuple[float, float], list[tuple[str, tuple[object, ...]]]]]:
    """Each page's size in points and its operators in order."""
    reader = PdfReader(io.BytesIO(pdf))
    pages = []
    for page in reader.pages:
        found: list[tuple[str, tuple[object, ...]]] = []
        for operands, operator in ContentStream(page.get_contents(), reader).operations:
            name = operator.decode()
            found.append((name, tuple(float(v) if hasattr(v, "as_numeric") else v for v in operands)))
        box = page.mediabox
        pages.append(((float(box.width), float(box.height)), found))
    return pages


class BarePages:
    """The same paths and words by reportlab alone: a method for each operator that draws."""

    def __init__(self, canvas: Canvas) -> None:
        self.canvas = canvas
        self.path = canvas.beginPath()
        self.height = 10.0
        self.matrix: tuple[float, ...] = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
        paths = {"m": "moveTo", "l": "lineTo", "c": "curveTo", "re": "rect", "h": "close"}
        self._ways: dict[str, Callable[..., None]] = {name: self._path(way) for name, way in paths.items()}
        self._ways |= {"w": canvas.setLineWidth, "d": self._dash, "S": self._stroke, "f": self._fill, "f*": self._fill}
        self._ways |= {"Tf": self._font, "Tm": self._at, "Tj": self._show}

    def take(self, name: str, operands: tuple[object, ...]) -> None:
        """One operator."""
        if name in self._ways:
            self._ways[name](*operands)

    def _path(self, way: str) -> Callable[..., None]:
        def add(*o: float) -> None:
            getattr(self.path, way)(*o)

        return add

    def _dash(self, lengths: list[float], _phase: float) -> None:
        self.canvas.setDash([float(v) for v in lengths], 0)

    def _stroke(self) -> None:
        self.canvas.drawPath(self.path)
        self.path = self.canvas.beginPath()

    def _fill(self) -> None:
        self.canvas.drawPath(self.path, stroke=0, fill=1)
        self.path = self.canvas.beginPath()

    def _font(self, _name: object, height: float) -> None:
        self.height = float(height)

    def _at(self, *matrix: float) -> None:
        self.matrix = matrix

    def _show(self, shown: object) -> None:
        words = "n" * len(shown if isinstance(shown, bytes) else str(shown))
        self.canvas.setFont(LETTERING, self.height)
        if not self.matrix[1]:
            self.canvas.drawString(self.matrix[4], self.matrix[5], words)
            return
        self.canvas.saveState()
        self.canvas.transform(*self.matrix)
        self.canvas.drawString(0, 0, words)
        self.canvas.restoreState()


def bare_pdf(pages: list[tuple[tuple[float, float], list[tuple[str, tuple[object, ...]]]]]) -> None:
    """All pages by reportlab alone."""
    canvas = Canvas(io.BytesIO(), invariant=1, pageCompression=1, initialFontName=LETTERING)
    for size, operations in pages:
        canvas.setPageSize(size)
        page = BarePages(canvas)
        for name, operands in operations:
            page.take(name, operands)
        canvas.showPage()
    canvas.save()


def entities(dxf: bytes) -> list[tuple[str, str, tuple[object, ...], dict[str, object]]]:
    """Layout, kind, points and attributes of every entity of a DXF file."""
    file = ezdxf.read(io.StringIO(dxf.decode()))
    found: list[tuple[str, str, tuple[object, ...], dict[str, object]]] = []
    for layout in file.layouts:
        for entity in layout:
            kind, at = entity.dxftype(), entity.dxf
            own: dict[str, object] = {"layer": at.layer}
            match kind:
                case "LINE":
                    found.append((layout.name, kind, (at.start, at.end), own))
                case "ARC":
                    found.append((layout.name, kind, (at.center, at.radius, at.start_angle, at.end_angle), own))
                case "CIRCLE":
                    found.append((layout.name, kind, (at.center, at.radius), own))
                case "TEXT":
                    found.append((layout.name, kind, (at.text, at.height, at.insert, at.rotation), own))
                case "SOLID":
                    found.append((layout.name, kind, (at.vtx0, at.vtx1, at.vtx2, at.vtx3), own))
                case "LWPOLYLINE":
                    found.append((layout.name, kind, tuple(entity.get_points("xyb")), own))
                case "DIMENSION":
                    ends = (at.defpoint, at.get("defpoint2", Vec3()), at.get("defpoint3", Vec3()))
                    found.append((layout.name, kind, (*ends, at.get("angle", 0.0), at.text), own))
                case "HATCH":
                    found.append((layout.name, kind, (), own))
                case "VIEWPORT":
                    pass
                case _:
                    raise AssertionError(f"the file has a {kind}, which this comparison doesn't draw")
    return found


def bare_dxf(found: list[tuple[str, str, tuple[object, ...], dict[str, object]]]) -> None:
    """The same entities by ezdxf alone."""
    file = ezdxf.new("R2010", units=4)
    file.dimstyles.new("OWN", {"dimtxt": 2.5, "dimasz": 3.0, "dimdec": 1, "dimexo": 0.0})
    for layer in sorted({str(own["layer"]) for *_, own in found}):
        if layer not in file.layers:
            file.layers.add(layer)
    for name, kind, o, own in found:
        if name not in file.layouts:
            file.layouts.new(name)
        _BARE[kind](file.layouts.get(name), o, own)
    file.write(io.StringIO())


def _text(layout: Any, o: Any, own: Any) -> None:
    layout.add_text(o[0], height=o[1], rotation=o[3], dxfattribs=own).set_placement(o[2])


def _dimension(layout: Any, o: Any, own: Any) -> None:
    made = layout.add_linear_dim(o[0], o[1], o[2], angle=o[3], text=o[4] or "<>", dimstyle="OWN", dxfattribs=own)
    made.render()


_BARE: dict[str, Callable[[Any, Any, Any], object]] = {
    "LINE": lambda layout, o, own: layout.add_line(*o, dxfattribs=own),
    "ARC": lambda layout, o, own: layout.add_arc(*o, dxfattribs=own),
    "CIRCLE": lambda layout, o, own: layout.add_circle(*o, dxfattribs=own),
    "TEXT": _text,
    "SOLID": lambda layout, o, own: layout.add_solid(o, dxfattribs=own),
    "LWPOLYLINE": lambda layout, o, own: layout.add_lwpolyline(o, format="xyb", dxfattribs=own),
    "DIMENSION": _dimension,
    "HATCH": lambda layout, _o, own: layout.add_hatch(dxfattribs=own),
}


def main() -> None:
    """All of it, a line for each."""
    pdfmetrics.registerFont(TTFont(LETTERING, str(font_file(LETTERING))))
    sheets, placing = made_set()
    scales = len(placing)
    print(f"placing the dimensions of {len(sheets.sheets)} sheets: {placing[-1]:.2f} s; {scales} scales were tried")
    whole = forty(sheets)
    pdf, dxf = io.BytesIO(), io.BytesIO()
    write_pdf(whole, pdf)
    write_dxf(whole, dxf)
    pages, found = bare_pages(pdf.getvalue()), entities(dxf.getvalue())
    paths = sum(name in ("S", "f", "f*") for _, ops in pages for name, _ in ops)
    words = sum(name == "Tj" for _, ops in pages for name, _ in ops)
    dims = sum(kind == "DIMENSION" for _, kind, *_ in found)
    print(f"{len(whole.sheets)} sheets: {paths} paths and {words} words; {len(found)} entities, {dims} dimensions")

    def our_pdf() -> None:
        lettered.cache_clear()
        write_pdf(whole, io.BytesIO())

    for what, ours, bare in (
        ("PDF", our_pdf, lambda: bare_pdf(pages)),
        ("DXF", lambda: write_dxf(whole, io.BytesIO()), lambda: bare_dxf(found)),
    ):
        own, floor = clocked(ours), clocked(bare)
        ratio = own / floor if floor else math.inf
        print(f"{what}: ours {own:6.2f} s, bare {floor:6.2f} s, {ratio:4.2f} ×")


if __name__ == "__main__":
    main()
