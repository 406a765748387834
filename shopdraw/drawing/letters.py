"""Lettering: which glyphs a line of words is drawn with, where each run stands, and how wide it is.

One answer for screen, PDF and DXF, from the fonts that we ship. A vulgar fraction is drawn as a small raised
numerator, a bar and a small denominator; `31 1/2` and `31 ½` look alike. Knows fonts; knows nothing of files.
"""

from __future__ import annotations

import json
import math
import re
import unicodedata
from dataclasses import dataclass
from functools import cache, lru_cache
from pathlib import Path as FilePath
from typing import Any

from shopdraw.drawing.mark import Text
from shopdraw.shape.path import Point
from shopdraw.shipped import resource_path

LETTERING = "RoutedGothic"
"""The lettering of every sheet."""
FALLBACK = "DejaVuSans"
"""Lends the letters and signs that the lettering lacks, each by itself."""
FONTS = (LETTERING, FALLBACK)
MISSING = "\N{REPLACEMENT CHARACTER}"
"""Drawn for a character that neither font has: seen, never dropped."""

FIGURE = 0.7
"""Height of a fraction's figures over the height of the words."""
LEAST_FIGURE_MM = 1.2
"""Least height of a fraction's figures, paper mm, as far as the words themselves are as high."""
_TUCK = 0.12
"""How far the figures reach over the bar's own width on either side, in heights of the words."""
_WORD_GAP = 0.28
"""The gap between a whole number and its fraction, in heights of the words."""

_FILES = {LETTERING: "fonts/routed-gothic.ttf", FALLBACK: "fonts/dejavu-sans.ttf"}
_FRACTION = re.compile(r"(?<![\w/.,:])(?:(\d+)([ \-]))?(\d{1,3})[/⁄](\d{1,3})(?![\w/.,:]*\d|[/⁄\w])")
_VULGAR = {
    chr(code): tuple(unicodedata.normalize("NFKC", chr(code)).split("⁄"))
    for code in (0xBC, 0xBD, 0xBE, *range(0x2150, 0x215F))
}


@dataclass(frozen=True, slots=True)
class Run:
    """Glyphs of one font and one height in a row.

    Attributes:
        glyphs: characters that the font has.
        font: a name in `FONTS`.
        dx, dy: where its baseline starts, from the start of the words' baseline, along it and square to it, paper mm.
        height: of its capitals, paper mm.
        width: its advance, paper mm.
    """

    glyphs: str
    font: str
    dx: float
    dy: float
    height: float
    width: float


@dataclass(frozen=True, slots=True)
class Lettered:
    """A line of words ready to draw: its runs, its advance, and how far its ink reaches, paper mm.

    Attributes:
        runs: in reading order.
        width: the advance of the whole line.
        below: how far the ink reaches below the baseline (0 or more).
        above: how far it reaches above it (the height of capitals or more).
    """

    runs: tuple[Run, ...]
    width: float
    below: float
    above: float


@dataclass(frozen=True, slots=True)
class _Glyph:
    advance: float
    low: float
    high: float


class _Font:
    """One shipped font's measures in heights of its capitals."""

    def __init__(self, name: str) -> None:
        told = _measures()[name]
        self._glyphs: dict[str, list[int]] = told["glyphs"]
        self._known: dict[str, _Glyph] = {}
        self.capital = float(self._glyphs["H"][2])
        self.em_per_capital = told["em"] / self.capital

    def has(self, character: str) -> bool:
        return character in self._glyphs

    def measures(self, glyphs: str) -> list[_Glyph]:
        """Of each glyph in a row."""
        known = self._known
        return [known.get(c) or self.glyph(c) for c in glyphs]

    def glyph(self, character: str) -> _Glyph:
        found = self._known.get(character)
        if found is None:
            advance, low, high = self._glyphs[character]
            found = _Glyph(advance / self.capital, low / self.capital, high / self.capital)
            self._known[character] = found
        return found


@cache
def _measures() -> dict[str, Any]:
    """By font its em and, by character, advance, least and greatest height of the ink, in the font's own units.

    Read off the fonts once and kept beside them (`tests/font_measures.py`): a window that opens needs no more of them.
    """
    found: dict[str, Any] = json.loads(FilePath(resource_path("fonts/measures.json")).read_text(encoding="utf-8"))
    return found


def font_file(font: str) -> FilePath:
    """Where the file of a font in `FONTS` lies."""
    return FilePath(resource_path(_FILES[font]))


def font_size(font: str, height: float) -> float:
    """The em size at which a font's capitals are `height` high, in the unit of `height`."""
    em_per_capital: float = _font(font).em_per_capital
    return height * em_per_capital


def has_glyph(character: str) -> bool:
    """Whether one of the shipped fonts has the character."""
    return any(_font(name).has(character) for name in FONTS)


def printable(words: str) -> str:
    """The words on one line: line ends and tabs become spaces, other control characters are taken out."""
    if words.isprintable():
        return words
    spaced = re.sub(r"[\t\n\v\f\r\x85\u2028\u2029]+", " ", words)
    return "".join(c for c in spaced if unicodedata.category(c) not in {"Cc", "Cs", "Cf"})


def plain_words(words: str) -> str:
    """The words with each vulgar fraction written with figures: `7 ⅝` becomes `7 5/8`."""
    plain = printable(words)
    if plain.isascii():
        return plain
    for sign, parts in _VULGAR.items():
        if sign in plain:
            plain = re.sub(rf"(?<=\d) ?{sign}", " " + "/".join(parts), plain).replace(sign, "/".join(parts))
    return plain


@lru_cache(maxsize=65536)
def lettered(words: str, height: float) -> Lettered:
    """A line of words as runs of glyphs.

    Args:
        words: one line; control characters are left out.
        height: of capitals, paper mm.
    """
    row = _Row(height)
    text = plain_words(words)
    end = 0
    for match in _FRACTION.finditer(text):
        whole, gap, numerator, denominator = match.groups()
        row.plain(text[end : match.start()] + (whole or ""))
        if gap == " ":
            row.gap()
        elif gap:
            row.plain(gap)
        row.fraction(numerator, denominator)
        end = match.end()
    row.plain(text[end:])
    return row.finished()


def text_runs(words: str, height: float) -> tuple[Run, ...]:
    """The runs of glyphs that a line of words is drawn with; see `lettered`."""
    return lettered(words, height).runs


def text_width(words: str, height: float) -> float:
    """How far a line of words reaches along its baseline, paper mm."""
    return lettered(words, height).width


def one_font(words: str) -> str:
    """The font for a reader that sets all the words in one: the lettering, or the fallback if that lacks a letter."""
    lettering = _font(LETTERING)
    return LETTERING if all(map(lettering.has, printable(words))) else FALLBACK


@lru_cache(maxsize=65536)
def one_font_width(words: str, height: float) -> float:
    """How wide the words are when a reader sets them all in one font and one height, fractions included, paper mm."""
    font = _font(one_font(words))
    text = unicodedata.normalize("NFC", printable(words))
    return sum(font.glyph(c if font.has(c) else "?").advance for c in text) * height


def text_start(text: Text, scale: float = 1.0) -> Point:
    """Where the baseline of a text starts, in the coordinates that it stands in.

    Args:
        text: the words and their anchor.
        scale: of the drawing that it stands in (0.2 for 1:5); 1 on the sheet itself.
    """
    share = {"left": 0.0, "middle": 0.5, "right": 1.0}[text.anchor]
    back = share * text_width(text.words, text.height) / scale
    angle = math.radians(text.angle_deg)
    return text.at[0] - back * math.cos(angle), text.at[1] - back * math.sin(angle)


def text_box(text: Text, scale: float = 1.0) -> tuple[Point, Point, Point, Point]:
    """The box round a text's ink, turned with it: lower left, lower right, upper right, upper left as one reads.

    Args:
        text: the words, their anchor and direction.
        scale: of the drawing that it stands in; the box is given in that drawing's own mm.
    """
    line = lettered(text.words, text.height)
    x, y = text_start(text, scale)
    angle = math.radians(text.angle_deg)
    c, s = math.cos(angle), math.sin(angle)
    width, below, above = line.width / scale, line.below / scale, line.above / scale
    low = (x + s * below, y - c * below)
    high = (x - s * above, y + c * above)
    return low, (low[0] + c * width, low[1] + s * width), (high[0] + c * width, high[1] + s * width), high


class _Row:
    """Runs set one after the other."""

    def __init__(self, height: float) -> None:
        self._height = height
        self._runs: list[Run] = []
        self._x = 0.0
        self._below = 0.0
        self._above = height

    def plain(self, words: str) -> None:
        self._set(words, 0.0, self._height)

    def gap(self) -> None:
        """A space drawn narrow, so that the fraction stands by its number and is still read as two words."""
        before = self._x
        self._set(" ", 0.0, self._height)
        self._x = before + _WORD_GAP * self._height

    def fraction(self, numerator: str, denominator: str) -> None:
        height = self._height
        figure = max(FIGURE * height, min(LEAST_FIGURE_MM, height))
        self._set(numerator, height - figure, figure)
        self._x -= _TUCK * height
        self._set("/", 0.0, height)
        self._x -= _TUCK * height
        self._set(denominator, 0.0, figure)

    def _set(self, words: str, dy: float, height: float) -> None:
        for name, glyphs in _by_font(words):
            font = _font(name)
            measures = font.measures(glyphs)
            width = sum([m.advance for m in measures]) * height
            self._runs.append(Run(glyphs, name, self._x, dy, height, width))
            self._x += width
            self._below = max(self._below, -dy - min([m.low for m in measures]) * height)
            self._above = max(self._above, dy + max([m.high for m in measures]) * height)

    def finished(self) -> Lettered:
        return Lettered(tuple(self._runs), self._x, self._below, self._above)


def _by_font(words: str) -> list[tuple[str, str]]:
    """The words cut where the font changes, missing characters replaced."""
    parts: list[tuple[str, str]] = []
    homes = [_home(character) for character in unicodedata.normalize("NFC", words)]
    if len({name for name, _ in homes}) == 1:
        return [(homes[0][0], "".join([shown for _, shown in homes]))]
    for name, shown in homes:
        if parts and parts[-1][0] == name:
            parts[-1] = (name, parts[-1][1] + shown)
        else:
            parts.append((name, shown))
    return parts


@lru_cache(maxsize=4096)
def _home(character: str) -> tuple[str, str]:
    """The font that has a character, and the character; or the one that stands for what no font has."""
    name = next((f for f in FONTS if _font(f).has(character)), None)
    return (name, character) if name else (FALLBACK, MISSING)


@cache
def _font(name: str) -> _Font:
    return _Font(name)
