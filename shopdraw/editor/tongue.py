"""The person's own language: which one is spoken, and the words of it.

Parts of the editor that know no window take their words from `translate`; widgets use Qt's own `tr`. The translations
lie in `resources/translations`, made with Qt's tools (`make translations`).
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from shopdraw.shipped import NotShipped, resource_path

WRITTEN_IN = "en"
"""The language that the program is written in: it needs no translation."""
LANGUAGES: tuple[tuple[str, str], ...] = (("en", "English"), ("de", "Deutsch"))
"""The languages that are shipped, each by its own name."""


def translate(context: str, words: str) -> str:
    """Words in the person's language.

    Args:
        context: whose words they are: "Handle", "Figure", ...
        words: in English; gaps stand in braces and are filled afterwards.
    """
    return QCoreApplication.translate(context, words)


def wished_languages(chosen: str = "") -> tuple[str, ...]:
    """The languages a person wants, the best one first.

    Args:
        chosen: the one chosen in the program, or "" for the system's.
    """
    return (chosen,) if chosen else tuple(QLocale.system().uiLanguages())


def speak(app: QCoreApplication, wished: Iterable[str]) -> str:
    """Puts the first language in place that is there; Qt's own dialogs speak it too.

    Args:
        app: the running program.
        wished: names such as "de-AT" or "de", the best one first.
    Returns:
        The language that is spoken: "de", or "en" where none of them is there.
    """
    for name in wished:
        short = name.replace("_", "-").split("-")[0].lower()
        if short == WRITTEN_IN:
            break
        try:
            file = resource_path(f"translations/shopdraw_{short}.qm")
        except NotShipped:
            continue
        own, qts = QTranslator(app), QTranslator(app)
        if qts.load(f"qtbase_{short}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
            app.installTranslator(qts)
        if own.load(str(file)):
            app.installTranslator(own)
            return short
    return WRITTEN_IN
