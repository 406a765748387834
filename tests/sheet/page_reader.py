"""What really stands on a PDF's pages, read from their operators: words with boxes, strokes with widths, fills. mm.

Knows PDF (ISO 32000-1) and nothing of the layout that made the page.
"""

from __future__ import annotations

import io
import itertools
import math
import re
from dataclasses import dataclass
from functools import lru_cache

from fontTools.ttLib import TTFont
from pypdf import PdfReader
from pypdf.generic import ContentStream

MM = 25.4 / 72
Point = tuple[float, float]
Matrix = tuple[float, float, float, float, float, float]


@dataclass(frozen=True)
class Word:
    """One text object: its words, the four corners of its ink's box as read, and heights of capitals used in it."""

    words: str
    corners: tuple[Point, Point, Point, Point]
    heights: tuple[float, ...]
    angle_deg: float

    @property
    def middle(self) -> Point:
        (x0, y0), _, (x1, y1), _ = self.corners
        return (x0 + x1) / 2, (y0 + y1) / 2


@dataclass(frozen=True)
class Stroke:
    """A straight piece of a stroked path; a curve is several. Width in mm; `dashes` in mm, empty when continuous."""

    start: Point
    end: Point
    width: float
    dashes: tuple[float, ...] = ()
    filled: bool = False


@dataclass(frozen=True)
class Page:
    """A page: its size in mm and what stands on it."""

    width: float
    height: float
    words: tuple[Word, ...]
    strokes: tuple[Stroke, ...]


@dataclass(frozen=True)
class _Font:
    widths: tuple[float, ...]
    first: int
    letters: dict[int, str]
    capital: float
    inks: dict[int, tuple[float, float]]

    def advance(self, code: int) -> float:
        place = code - self.first
        return self.widths[place] if 0 <= place < len(self.widths) else 0.0


def read_pages(path: object) -> tuple[Page, ...]:
    """Every page of a PDF file."""
    reader = PdfReader(str(path))
    return tuple(_page(reader, page) for page in reader.pages)


def _page(reader: PdfReader, page: object) -> Page:
    box = page.mediabox
    state = _State(reader, page)
    for operands, operator in ContentStream(page.get_contents(), reader).operations:
        state.take(operands, operator.decode())
    return Page(float(box.width) * MM, float(box.height) * MM, tuple(state.words), tuple(state.strokes))


class _State:
    """Runs a content stream's operators and keeps what they draw."""

    def __init__(self, reader: PdfReader, page: object) -> None:
        self.words: list[Word] = []
        self.strokes: list[Stroke] = []
        self._fonts = {name: _font(reader, ref) for name, ref in page["/Resources"]["/Font"].items()}
        self._ctm: Matrix = (1, 0, 0, 1, 0, 0)
        self._stack: list[tuple[Matrix, float, tuple[float, ...]]] = []
        self._width = 1.0
        self._dashes: tuple[float, ...] = ()
        self._path: list[list[Point]] = []
        self._text: Matrix = (1, 0, 0, 1, 0, 0)
        self._line: Matrix = (1, 0, 0, 1, 0, 0)
        self._font: _Font | None = None
        self._size = 0.0
        self._runs: list[tuple[str, Matrix, float, float, float, float]] = []
        self._actual: str | None = None

    def take(self, operands: list, operator: str) -> None:
        method = getattr(self, f"_op_{_NAMES.get(operator, '')}", None)
        if method is not None:
            method(operands)
        elif operator not in _WITHOUT_MARKS:
            raise AssertionError(f"the page has the operator {operator}, which this reader doesn't know")

    def _op_save(self, _o: list) -> None:
        self._stack.append((self._ctm, self._width, self._dashes))

    def _op_restore(self, _o: list) -> None:
        self._ctm, self._width, self._dashes = self._stack.pop()

    def _op_matrix(self, o: list) -> None:
        self._ctm = _product(tuple(float(v) for v in o), self._ctm)

    def _op_width(self, o: list) -> None:
        self._width = float(o[0])

    def _op_dash(self, o: list) -> None:
        self._dashes = tuple(float(v) * MM for v in o[0])

    def _op_move(self, o: list) -> None:
        self._path.append([self._at(o[0], o[1])])

    def _op_line(self, o: list) -> None:
        self._path[-1].append(self._at(o[0], o[1]))

    def _op_curve(self, o: list) -> None:
        p0 = self._path[-1][-1]
        p1, p2, p3 = self._at(o[0], o[1]), self._at(o[2], o[3]), self._at(o[4], o[5])
        for i in range(1, 9):
            t = i / 8
            a, b, c, d = (1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t**3
            self._path[-1].append(tuple(a * p0[k] + b * p1[k] + c * p2[k] + d * p3[k] for k in (0, 1)))

    def _op_rectangle(self, o: list) -> None:
        x, y, w, h = (float(v) for v in o)
        self._path.append([self._at(*p) for p in ((x, y), (x + w, y), (x + w, y + h), (x, y + h), (x, y))])

    def _op_close(self, _o: list) -> None:
        self._path[-1].append(self._path[-1][0])

    def _op_stroke(self, _o: list) -> None:
        self._paint(filled=False)

    def _op_fill(self, _o: list) -> None:
        self._paint(filled=True)

    def _op_drop(self, _o: list) -> None:
        self._path = []

    def _paint(self, *, filled: bool) -> None:
        scale = math.sqrt(abs(self._ctm[0] * self._ctm[3] - self._ctm[1] * self._ctm[2]))
        width = 0.0 if filled else self._width * scale * MM
        for path in self._path:
            points = [*path, path[0]] if filled and path[-1] != path[0] else path
            for p, q in itertools.pairwise(points):
                start, end = (p[0] * MM, p[1] * MM), (q[0] * MM, q[1] * MM)
                self.strokes.append(Stroke(start, end, width, () if filled else self._dashes, filled))
        self._path = []

    def _op_marked(self, o: list) -> None:
        found = o[1].get("/ActualText") if hasattr(o[1], "get") else None
        self._actual = str(found) if found is not None else None

    def _op_unmarked(self, _o: list) -> None:
        self._actual = None

    def _op_begin(self, _o: list) -> None:
        self._text = self._line = (1, 0, 0, 1, 0, 0)
        self._runs = []

    def _op_end(self, _o: list) -> None:
        if self._runs:
            self.words.append(_word(self._runs, self._actual))
        self._runs = []

    def _op_font(self, o: list) -> None:
        self._font, self._size = self._fonts[o[0]], float(o[1])

    def _op_text_matrix(self, o: list) -> None:
        self._text = self._line = tuple(float(v) for v in o)

    def _op_text_move(self, o: list) -> None:
        self._line = self._text = _product((1, 0, 0, 1, float(o[0]), float(o[1])), self._line)

    def _op_show(self, o: list) -> None:
        codes = _codes(o[0])
        font, size = self._font, self._size
        advance = sum(font.advance(code) for code in codes) * size / 1000
        inks = [font.inks[code] for code in codes if code in font.inks] or [(0.0, font.capital)]
        low, high = min(i[0] for i in inks) * size, max(i[1] for i in inks) * size
        letters = "".join(font.letters.get(code, "?") for code in codes)
        matrix = _product(self._text, self._ctm)
        if letters.strip():
            self._runs.append((letters, matrix, advance, low, high, font.capital * size))
        self._text = _product((1, 0, 0, 1, advance, 0), self._text)

    def _at(self, x: object, y: object) -> Point:
        a, b, c, d, e, f = self._ctm
        return a * float(x) + c * float(y) + e, b * float(x) + d * float(y) + f


_NAMES = {
    "q": "save",
    "Q": "restore",
    "cm": "matrix",
    "w": "width",
    "d": "dash",
    "m": "move",
    "l": "line",
    "c": "curve",
    "re": "rectangle",
    "h": "close",
    "S": "stroke",
    "f": "fill",
    "f*": "fill",
    "n": "drop",
    "BDC": "marked",
    "EMC": "unmarked",
    "BT": "begin",
    "ET": "end",
    "Tf": "font",
    "Tm": "text_matrix",
    "Td": "text_move",
    "Tj": "show",
}
_WITHOUT_MARKS = {"g", "G", "rg", "RG", "J", "j", "M", "i", "gs", "ri", "TL", "Tc", "Tw"}


def _word(runs: list[tuple[str, Matrix, float, float, float, float]], actual: str | None) -> Word:
    """A text object's runs as one word with one box, in the direction of its first run."""
    a, b, *_ = runs[0][1]
    long = math.hypot(a, b)
    c, s = a / long, b / long
    us, vs = [], []
    for _, matrix, advance, low, high, _ in runs:
        for x in (0.0, advance):
            for y in (low, high):
                px, py = matrix[0] * x + matrix[2] * y + matrix[4], matrix[1] * x + matrix[3] * y + matrix[5]
                us.append((px * c + py * s) * MM)
                vs.append((py * c - px * s) * MM)
    corners = ((min(us), min(vs)), (max(us), min(vs)), (max(us), max(vs)), (min(us), max(vs)))
    turned = tuple((u * c - v * s, u * s + v * c) for u, v in corners)
    scale = math.hypot(a, b) * MM
    heights = tuple(dict.fromkeys(round(run[5] * scale, 4) for run in runs))
    words = actual if actual is not None else "".join(run[0] for run in runs)
    return Word(words, turned, heights, math.degrees(math.atan2(s, c)))


def _product(one: Matrix, two: Matrix) -> Matrix:
    a, b, c, d, e, f = one
    g, h, i, j, k, m = two
    return a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + m


def _codes(shown: object) -> bytes:
    return shown if isinstance(shown, bytes) else shown.original_bytes


def _font(reader: PdfReader, ref: object) -> _Font:
    font = ref.get_object()
    descriptor = font.get("/FontDescriptor")
    widths = tuple(float(w) for w in font.get("/Widths", ()))
    if descriptor is None:
        return _Font(widths, int(font.get("/FirstChar", 0)), {}, 0.7, {})
    descriptor = descriptor.get_object()
    data = bytes(descriptor["/FontFile2"].get_object().get_data())
    letters = _letters(bytes(font["/ToUnicode"].get_object().get_data()))
    capital, inks = _inks(data, tuple(sorted(letters.items())), float(descriptor["/CapHeight"]) / 1000)
    return _Font(widths, int(font["/FirstChar"]), letters, capital, inks)


def _letters(cmap: bytes) -> dict[int, str]:
    """Codes and the characters that they stand for, from a ToUnicode map of single characters."""
    pairs = re.findall(rb"<([0-9A-Fa-f]{2})>\s*<([0-9A-Fa-f]{4})>", cmap)
    return {int(code, 16): chr(int(char, 16)) for code, char in pairs if int(char, 16)}


@lru_cache(maxsize=64)
def _inks(
    data: bytes, letters: tuple[tuple[int, str], ...], stated: float
) -> tuple[float, dict[int, tuple[float, float]]]:
    """Height of capitals and each code's ink below and above the baseline, in ems, from the embedded outlines."""
    font = TTFont(io.BytesIO(data))
    em = font["head"].unitsPerEm
    glyf = font["glyf"]
    cmap = font["cmap"].tables[0].cmap
    inks: dict[int, tuple[float, float]] = {}
    capital = stated
    for code, letter in letters:
        name = cmap.get(code)
        if name is None or glyf[name].numberOfContours == 0:
            continue
        inks[code] = (glyf[name].yMin / em, glyf[name].yMax / em)
        if letter == "H":
            capital = glyf[name].yMax / em
    return capital, inks
