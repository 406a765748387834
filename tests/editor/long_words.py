"""A made-up language 40 % longer than English, made from the sources of the translations.

Each vowel carries an accent, so that a word that went through no translator stands out, and each text is longer by two
fifths. What isn't in the sources is left as it is: a test sees it.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ElementTree
from pathlib import Path

from PySide6.QtCore import QTranslator

WORDS_LONGER = 1.4
SOURCE = Path(__file__).parents[2] / "resources" / "translations" / "shopdraw_de.ts"
_ACCENTS = str.maketrans("aeiouAEIOU", "åéîøüÅÉÎØÜ")
_KEPT = re.compile(r"(\{\w+\}|%n|\(\*[^)]*\)|;;)")
_MORE = "ñøw måré wørds "


def stretched(words: str) -> str:
    """The words in the made-up language; gaps in braces stay what they are."""
    accented = "".join(part if _KEPT.fullmatch(part) else part.translate(_ACCENTS) for part in _KEPT.split(words))
    more = max(1, round(len(words) * (WORDS_LONGER - 1)))
    filling = (_MORE * (more // len(_MORE) + 1))[:more].strip() or "ø"
    # One word stays one word; a sentence gets more words, as it would in another language.
    return f"{accented} {filling}" if " " in words else f"{accented}{filling.replace(' ', '')}"


def untranslated(words: str) -> list[str]:
    """Words that went through no translator: plain letters, with a vowel among them."""
    return [word for word in re.findall(r"[^\W\d_]{3,}", words) if re.search(r"[aeiouAEIOU]", word)]


class LongWords(QTranslator):
    """Speaks the made-up language."""

    def __init__(self) -> None:
        super().__init__()
        root = ElementTree.parse(SOURCE).getroot()
        self._words = {
            (context.findtext("name"), message.findtext("source")): stretched(message.findtext("source") or "")
            for context in root.iter("context")
            for message in context.iter("message")
        }

    def translate(self, context: str, source: str, disambiguation: str | None = None, n: int = -1) -> str | None:
        return self._words.get((context, source))

    def isEmpty(self) -> bool:  # noqa: N802
        return False
