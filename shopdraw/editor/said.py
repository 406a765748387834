"""Sentences of the layers below in the person's language: findings, faults, names of boards.

Those layers know no translation: they word what they find in English, for files, sheets and the command line. All
their sentences are written down in `resources/translations/sentences.txt` (`make translations` finds them in the
source), with gaps where values stand. Here a text is read back into its sentence and its values, and the sentence is
translated with Qt's own tools. What fills a gap is a figure, an id, or again such a sentence: a board's name, a season,
a remedy. What can't be read back stays as it is.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache

from PySide6.QtCore import QLocale

from shopdraw.editor.tongue import translate
from shopdraw.measure import with_comma, with_point
from shopdraw.shipped import resource_path

CONTEXT = "Sentence"
_RATIO = re.compile(r"(?<=ratio )\d+\.\d+|(?<=be )\d+\.\d+(?= at most)|\d+\.\d+(?= or \d)")
"""Bare figures that take the reader's decimal sign before their sentence is read: no unit tells them afterwards."""
_GAP = re.compile(r"\{(\d+)\}")
_JOINTS = ("; ", ". ", ": ", ", ", " and ", " + ", " × ", "/")
"""Where several sentences stand behind each other, the widest joint first."""
_IN_QUOTES = re.compile(r'"[^"]*"')
_INSIDE_A_WORD = re.compile(r"[^\W_]{2}")
_KEY_FOLLOWS = re.compile(
    r"(?:\b(?:stock|fitting|finding|board|revision|opening|a value for|expected one of|stocks:|nearest are|files in) "
    r"|\")$"
)
"""A gap behind these words holds a key of the file, which is no word of a language."""
_ONE_KEY = re.compile(r"""(?:[\w./-]|"[^"]*")+""")
_ONE_KEY_BEHIND = re.compile(
    r"(?:^|\b)(?:drawer|bay|column|divider right of|named|namespace|table key|declare|stands at|such as|one value;"
    r"|it would count with|isn't in this file; found) $"
)
_ONE_KEY_BEFORE = re.compile(
    r"^(?: is no key of| has no effect on|,? is a table| is a value, not a table|: expected the address of a value"
    r"|: a table stands there|: the value can't stand there|: this file is laid out| twice$)"
)
"""A gap behind or before these words holds one key or address, if what stands there can be one."""
_A_DRAWER = re.compile(r"(?:^|\b)drawer $")
"""A gap behind this word holds the drawer's key and nothing more."""
_A_PATH_BEFORE = re.compile(r"^(?:: can't be written \(|: found a (?:NUL|file)\b| is as it was$)")
"""A gap before these words holds the path of a file or a folder."""
_LABELLED = re.compile(r"(\d[\w.-]*) (.+)")
"""A board's label and its name."""
_UNITS = {"mm", "in", "kg", "dm", "GPa", "ft", "cm", "MB", "true", "false"}
_OF_THE_FILE = re.compile(r"\w[_:=/.]\w|\d|_")
_TOO_DEEP = 12


@dataclass(frozen=True, slots=True)
class _Sentence:
    """A sentence of the layers below.

    Attributes:
        english: with its gaps.
        pieces: the words before, between and behind the gaps.
        gaps: their numbers, in the order in which they stand.
        weight: how many letters of it are its own.
        longest: the longest of the pieces: a text without it isn't this sentence.
    """

    english: str
    pieces: tuple[str, ...]
    gaps: tuple[str, ...]
    weight: int
    longest: str


@dataclass(frozen=True, slots=True)
class _Reading:
    """A text read back.

    Attributes:
        words: in the person's language.
        unread: how many letters of it were not understood and stand as they were.
        weight: how many letters belong to sentences.
        count: of how many sentences it is made up.
    """

    words: str
    unread: int
    weight: int = 0
    count: int = 0

    def rank(self) -> tuple[int, int, int]:
        """Least for the best: more of the text is understood, then by fewer sentences."""
        return self.unread, -self.weight, self.count

    def put(self, words: str) -> _Reading:
        """The same reading in other words."""
        return replace(self, words=words)


def said(text: str) -> str:
    """A text of the layers below in the person's language, its figures with the reader's decimal sign.

    Args:
        text: in English, as a finding, a fault or a board's name has it.
    """
    if QLocale().decimalPoint() != ",":
        return _read_back(text, _tongue()).words
    told = _RATIO.sub(lambda ratio: ratio[0].replace(".", ","), text)
    return with_comma(_read_back(told, _tongue()).words)


def in_readers_sign(words: str) -> str:
    """Words whose figures with a unit have the reader's decimal sign, whatever the piece's own drawings print."""
    return with_comma(words) if QLocale().decimalPoint() == "," else with_point(words)


def left_over(text: str) -> int:
    """How many letters of a text can't be read back into sentences: 0 where all of it can be translated."""
    return _read_back(text, _tongue()).unread


def _tongue() -> str:
    """A mark of the language that is spoken."""
    return translate(CONTEXT, "lid")


@lru_cache(maxsize=4096)
def _read_back(text: str, _spoken: str) -> _Reading:
    if _spoken == "lid":
        return _Reading(text, 0)
    return _Reader().read(text)


@lru_cache(maxsize=1)
def _sentences() -> tuple[_Sentence, ...]:
    lines = resource_path("translations/sentences.txt").read_text(encoding="utf-8").splitlines()
    made = []
    for english in lines:
        pieces = _GAP.split(english)
        weight = sum(letter.isalpha() for piece in pieces[::2] for letter in piece)
        made.append(_Sentence(english, tuple(pieces[::2]), tuple(pieces[1::2]), weight, max(pieces[::2], key=len)))
    return tuple(sorted(made, key=lambda one: -one.weight))


_JOINED = _Reading("", 0, 0, 1)
"""Texts behind each other count for one more: a board's name is taken whole rather than cut at its comma."""


class _Reader:
    """Reads one text back; what was read once is remembered."""

    def __init__(self) -> None:
        self._known: dict[str, _Reading] = {}
        self._deep = 0

    def read(self, text: str) -> _Reading:
        """The best reading of a text."""
        known = self._known.get(text)
        if known is not None:
            return known
        stripped = text.strip()
        if not stripped:
            return _Reading(text, 0)
        if stripped != text:
            inner, at = self.read(stripped), text.index(stripped)
            return inner.put(text[:at] + inner.words + text[at + len(stripped) :])
        best = _Reading(text, _unread(text))
        if not best.unread:
            return best
        if self._deep >= _TOO_DEEP:
            return best
        self._known[text] = best
        self._deep += 1
        found = self._joined(text, self._whole(text, best))
        self._deep -= 1
        if found.unread <= found.weight:  # less than half understood is worse than all in one language
            best = found
        self._known[text] = best
        return best

    def _whole(self, text: str, best: _Reading) -> _Reading:
        """The text as one sentence."""
        for sentence in [one for one in _sentences() if one.longest in text]:
            filled = self._filled(sentence.pieces, text)
            if filled is None:
                continue
            told = translate(CONTEXT, sentence.english)
            values = {gap: value.words for gap, value in zip(sentence.gaps, filled, strict=True)}
            words = _GAP.sub(lambda gap, told_by=values: str(told_by.get(gap[1], "")), told)  # type: ignore[misc]
            reading = _together(words, (*filled, _Reading("", 0, sentence.weight, 1)))
            best = min((best, reading), key=_Reading.rank)
            if not best.unread and best.weight >= sentence.weight:
                break
        return best

    def _filled(self, pieces: tuple[str, ...], text: str) -> tuple[_Reading, ...] | None:
        """What fills the gaps of a sentence, read as well as can be; None where the text isn't that sentence."""
        first, *rest = pieces
        if not text.startswith(first):
            return None
        text = text[len(first) :]
        if not rest:
            return () if not text else None
        best: tuple[_Reading, ...] | None = None
        for end in self._ends(rest, text):
            if _A_DRAWER.search(first) and not _ONE_KEY.fullmatch(text[:end]):
                continue
            behind = self._filled(tuple(rest), text[end:])
            if behind is None:
                continue
            one = _Reading(text[:end], 0) if _is_key(first, text[:end], rest[0]) else self.read(text[:end])
            found = (one, *behind)
            if best is None or _together("", found).rank() < _together("", best).rank():
                best = found
                if not rest[0] and not sum(one.unread for one in best):
                    break  # two gaps with nothing between them may part anywhere
        return best

    @staticmethod
    def _ends(rest: list[str], text: str) -> list[int]:
        """Where a gap may end: where the words behind it begin."""
        after = rest[0]
        if len(rest) == 1:
            end = len(text) - len(after)
            return [end] if end >= 0 and text.endswith(after) else []
        if not after:
            return [at for at in range(len(text) + 1) if not _INSIDE_A_WORD.fullmatch(text[max(at - 1, 0) : at + 1])]
        return [found.start() for found in re.finditer(re.escape(after), text)]

    @staticmethod
    def _begins(text: str) -> bool:
        """Whether a sentence begins with the sign at the head of a text: a rest such as ", proud of the lid"."""
        return any(text.startswith(one.pieces[0]) for one in _sentences() if one.pieces[0][:1] in (",", ";"))

    def _joined(self, text: str, best: _Reading) -> _Reading:
        """The text as sentences behind each other."""
        labelled = _LABELLED.fullmatch(text)
        if labelled:
            named = self.read(labelled[2])
            # On a tie the label stands before the name, and isn't part of it.
            best = min((named.put(f"{labelled[1]} {named.words}"), best), key=_Reading.rank)
        if not best.unread:
            return best
        for joint in _JOINTS:
            at = text.find(joint)
            while at > 0:
                before, behind = self.read(text[:at]), self.read(text[at + len(joint) :])
                between = translate(CONTEXT, "{0} and {1}").format("", "") if joint == " and " else joint
                reading = _together(before.words + between + behind.words, (before, behind, _JOINED))
                best = min((best, reading), key=_Reading.rank)
                if best.unread and self._begins(text[at:]):
                    behind = self.read(text[at:])
                    rest = _together(before.words + behind.words, (before, behind, _JOINED))
                    best = min((best, rest), key=_Reading.rank)
                if not best.unread:
                    return best
                at = text.find(joint, at + 1)
        return best


def _is_key(before: str, gap: str, behind: str) -> bool:
    """Whether what fills a gap is the file's own: a key that is also a word ("lid") isn't translated."""
    if _KEY_FOLLOWS.search(before) or _A_PATH_BEFORE.search(behind):
        return True
    told = _ONE_KEY_BEHIND.search(before) or _ONE_KEY_BEFORE.search(behind)
    return told is not None and _ONE_KEY.fullmatch(gap) is not None


def _together(words: str, parts: Iterable[_Reading]) -> _Reading:
    """A reading made up of others."""
    parts = tuple(parts)
    return _Reading(
        words, sum(one.unread for one in parts), sum(one.weight for one in parts), sum(one.count for one in parts)
    )


def _unread(text: str) -> int:
    """How many letters of a text are words: figures, units, ids and what stands in quotes as in the file are none."""
    unread = 0
    for token in _IN_QUOTES.sub(" ", text).split():
        word = token.strip("()[]{};:,.!?’'„“³×–-")
        if len(word) > 1 and not word.isupper() and word not in _UNITS and not _OF_THE_FILE.search(word):
            unread += sum(letter.isalpha() for letter in word)
    return unread
