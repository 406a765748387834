"""Layouts drawn: each board and sheet with its parts white, its offcuts hatched and its cuts numbered in order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.drawing.letters import text_width
from shopdraw.drawing.mark import Area, Arrow, Hatching, Line, Mark, Meaning, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.lists.layout.answer import CutUp, Laid, Layout, Offcut, SawCut
from shopdraw.lists.layout.headline import Headline
from shopdraw.lists.layout.layout_table import kept_offcuts, numbered
from shopdraw.lists.layout.plan import StockPlan
from shopdraw.lists.size import Sizes, sizes_of
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.shape.path import Point, polygon

HEIGHTS = (3.5, 2.5, 1.8)
"""Of labels, largest first; the last one is that of sizes and of cuts' numbers."""
_LEADING = 1.5
_TITLE_DROP = 3.0
_NUMBER_IN = 3.0
_GAP = 0.8
_PITCH = 2.5
"""All paper mm."""
_Box = tuple[float, float, float, float]


def layout_drawings(
    plans: Sequence[StockPlan], design: Design, shop: Shop, scale: float, heights: tuple[float, ...] = HEIGHTS
) -> list[Drawing]:
    """One drawing for each board or sheet, grain from left to right, at true size.

    Args:
        plans: of the piece's stocks.
        design: for how sizes are written.
        shop: which offcuts are worth their size on the drawing.
        scale: at which they will stand on paper: words are chosen to fit at that scale.
        heights: of letters, largest first, paper mm.
    """
    sizes = sizes_of(design)
    drawings: list[Drawing] = []
    for place, plan in enumerate(plans, 1):
        cut_up = list(numbered(plan))
        for number, layout, cut in cut_up:
            title = (
                f"{plan.name}: {number} of {len(cut_up)}, {cut.piece.called}, "
                f"{sizes.words(cut.piece.width, sizes.rough)} × {sizes.words(cut.piece.length, sizes.rough)}"
            )
            picture = _Picture(layout, cut, sizes, shop, 1.0 / scale, heights)
            drawings.append(Drawing(f"layout.{place}.{number}", title, (*picture.marks(), picture.title(title))))
    return drawings


def headline_drawing(headlines: Sequence[Headline], scale: float, heights: tuple[float, ...] = HEIGHTS) -> Drawing:
    """What is to be bought of each stock, and the least that it could be: two lines a stock, from the top down.

    Args:
        headlines: by stock.
        scale: at which they will stand on paper.
        heights: of letters, largest first, paper mm.
    """
    large, small = heights[0], heights[1]
    marks: list[Mark] = []
    y = 0.0
    for one in headlines:
        y -= large * _LEADING
        marks.append(Text((0.0, y / scale), one.words, large))
        y -= small * 2 * _LEADING
        marks.append(Text((0.0, y / scale), one.more, small))
        y -= large
    return Drawing("layout.headlines", "", tuple(marks))


class _Picture:
    """The marks of one board or sheet."""

    def __init__(
        self, layout: Layout, cut: CutUp, sizes: Sizes, shop: Shop, mm: float, heights: tuple[float, ...]
    ) -> None:
        self._layout, self._cut, self._sizes, self._shop = layout, cut, sizes, shop
        self._mm = mm
        """A paper millimetre in the drawing."""
        self._heights = heights
        self._small = heights[-1]
        self._labels = {part.id: part.label or part.id for part in layout.job.parts}

    def marks(self) -> tuple[Mark, ...]:
        """Offcuts first, then parts, the piece's edge, cuts' numbers and the grain's arrow."""
        piece = self._cut.piece
        parts = [mark for laid in self._cut.laid for mark in self._part(laid)]
        grain = self._grain()
        words = [mark for mark in (*parts, *grain) if isinstance(mark, Text)]
        numbers = self._numbers(words)
        found: list[Mark] = []
        for offcut in self._cut.offcuts:
            found += self._offcut(offcut, numbers)
        found += parts
        for start, end in piece.defects:
            found += _cross((start, 0.0, end, piece.width))
        found += _edges((0.0, 0.0, piece.length, piece.width), Meaning.VISIBLE, "")
        return (*found, *numbers, *grain)

    def title(self, words: str) -> Text:
        """The drawing's title, below the piece."""
        height = self._heights[1]
        return Text((0.0, -(_TITLE_DROP + height) * self._mm), words, height)

    def _part(self, laid: Laid) -> list[Mark]:
        box = (laid.x, laid.y, laid.x + laid.length, laid.y + laid.width)
        length, width = (laid.width, laid.length) if laid.turned else (laid.length, laid.width)
        size = f"{_bare(self._sizes, width)} × {_bare(self._sizes, length)}"
        lines = [self._labels[laid.part], size + (", turned" if laid.turned else "")]
        return [*_edges(box, Meaning.VISIBLE, laid.part), *self._words(box, lines, laid.part)]

    def _words(self, box: _Box, lines: Sequence[str], board: str) -> list[Mark]:
        """Label and size in the middle of a box, upright or along its longer side, as large as they fit."""
        wide, high = (box[2] - box[0]) / self._mm, (box[3] - box[1]) / self._mm
        turned = wide < high
        along, across = (high, wide) if turned else (wide, high)
        angle = 90.0 if turned else 0.0
        small = self._small
        for height in self._heights:
            if text_width(lines[0], height) > along - 2 * _GAP or height > across - 2 * _GAP:
                continue
            second = height + _LEADING * small
            fits = second <= across - 2 * _GAP and len(lines) > 1
            both = fits and text_width(lines[1], small) <= along - 2 * _GAP
            whole = second if both else height
            found: list[Mark] = [self._text(box, whole / 2 - height, lines[0], height, angle, board)]
            if both:
                found.append(self._text(box, -whole / 2, lines[1], small, angle, board))
            return found
        height = max(0.8, min(small, across * 0.8))
        return [self._text(box, -height / 2, lines[0], height, angle, board)]

    def _text(self, box: _Box, above: float, words: str, height: float, angle: float, board: str) -> Text:
        """Words whose baseline lies so much above the box's middle, paper mm, seen the way they are read."""
        x, y = (box[0] + box[2]) / 2, (box[1] + box[3]) / 2
        at = (x - above * self._mm, y) if angle else (x, y + above * self._mm)
        return Text(at, words, height, "middle", angle, board=board)

    def _offcut(self, offcut: Offcut, numbers: Sequence[Text]) -> list[Mark]:
        box = (offcut.x, offcut.y, offcut.x + offcut.length, offcut.y + offcut.width)
        kept = offcut in kept_offcuts(self._cut, self._shop)
        words: list[Mark] = []
        clear = tuple(room for room in map(self._room, numbers) if _meet(room, box))
        if kept:
            told = f"{_bare(self._sizes, offcut.width)} × {_bare(self._sizes, offcut.length)}"
            words = self._words(box, [told], "")
            clear += tuple(self._room(word) for word in words if isinstance(word, Text))
        outline = polygon(((box[0], box[1]), (box[2], box[1]), (box[2], box[3]), (box[0], box[3])))
        hatch = Area(outline, (), Hatching("lines", 45.0, _PITCH), clear=clear)
        return [hatch, *_edges(box, Meaning.BEHIND, ""), *words]

    def _room(self, word: Text) -> _Box:
        wide = text_width(word.words, word.height) * self._mm
        half = wide / 2 + _GAP * self._mm
        low, high = _GAP * self._mm, (word.height + _GAP) * self._mm
        x, y = word.at
        x += {"left": wide / 2, "right": -wide / 2}.get(word.anchor, 0.0)
        return (x - high, y - half, x + low, y + half) if word.angle_deg else (x - half, y - low, x + half, y + high)

    def _numbers(self, words: Sequence[Text]) -> list[Text]:
        """The cuts' numbers, each at the first of its places that no other words take."""
        taken = [self._room(word) for word in words]
        found: list[Text] = []
        for number, saw in enumerate(self._cut.cuts, 1):
            places = [Text(at, str(number), self._small, anchor) for at, anchor in self._places(saw)]
            free = (one for one in places if not any(_meet(self._tight(one), room) for room in taken))
            found.append(next(free, places[0]))
            taken.append(self._tight(found[-1]))
        return found

    def _places(self, saw: SawCut) -> Iterator[tuple[Point, str]]:
        """Where a cut's number may stand, those that are liked first: beside the kerf, then beyond the piece's edge."""
        gap, height, kerf = _GAP / 2 * self._mm, self._small * self._mm, self._layout.job.kerf
        if saw.way == "rip":
            under, over = saw.at - gap - height, saw.at + kerf + gap
            first = (under, over) if under > gap else (over, under)
            for share in (0.0, 0.3, 0.6, 0.9):
                along = saw.start + (_NUMBER_IN * self._mm if share == 0.0 else share * (saw.end - saw.start))
                yield from (((along, y), "left") for y in first)
            middle = saw.at + (kerf - height) / 2
            yield from (((saw.end + kerf + gap, middle), "left"), ((saw.start - kerf - gap, middle), "right"))
            return
        x0, _, x1, _ = self._layout.job.clear(self._cut.piece)
        left, right = (saw.at - gap, "right"), (saw.at + kerf + gap, "left")
        sides = (right,) if saw.at <= x0 else (left, right)
        low, high = saw.start + gap, saw.end - gap - height
        inside = (high, low) if saw.at >= x1 - kerf else (low, high)
        yield from (((x, y), anchor) for x, anchor in sides for y in inside)
        beyond = (-gap - height, self._cut.piece.width + gap)
        yield from (((saw.at + kerf / 2, y), "middle") for y in beyond)

    def _tight(self, word: Text) -> _Box:
        """The box of a number's own figures."""
        x0, y0, x1, y1 = self._room(word)
        less = 0.75 * _GAP * self._mm
        return x0 + less, y0 + less, x1 - less, y1 - less

    def _grain(self) -> list[Mark]:
        """An arrow above the piece along its grain."""
        piece = self._cut.piece
        y = piece.width + 3.0 * self._mm
        length = min(piece.length / 3, 40.0 * self._mm)
        return [
            Line((0.0, y), (length, y), Meaning.SIZE),
            Arrow((length, y), 0.0, 2.5, 0.8),
            Text((length + 2.0 * self._mm, y - 0.9 * self._mm), "grain", self._small),
        ]


def _meet(one: _Box, two: _Box) -> bool:
    return one[0] < two[2] and two[0] < one[2] and one[1] < two[3] and two[1] < one[3]


def _bare(sizes: Sizes, size_mm: float) -> str:
    """A size without its unit."""
    return sizes.words(size_mm).removesuffix(f" {sizes.unit}")


def _edges(box: _Box, meaning: Meaning, board: str) -> list[Mark]:
    x0, y0, x1, y1 = box
    corners = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
    return [Line(corners[i - 1], corners[i], meaning, board) for i in range(4)]


def _cross(box: _Box) -> list[Mark]:
    """A defect: crossed out."""
    x0, y0, x1, y1 = box
    return [
        Line((x0, y0), (x1, y1), Meaning.BEHIND), Line((x0, y1), (x1, y0), Meaning.BEHIND),
        *_edges(box, Meaning.BEHIND, ""),
    ]  # fmt: skip
