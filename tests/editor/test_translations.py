"""The translations are whole: every text of the source stands in them, none is unfinished, compiled ones are new."""

from __future__ import annotations

import ast
import os
import re
import shutil
import subprocess
import sys
import tomllib
import xml.etree.ElementTree as ElementTree
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from shopdraw.editor.finding_job import piece_findings
from shopdraw.editor.finding_list import finding_words
from shopdraw.editor.said import said
from shopdraw.editor.state import Setting, state_of
from shopdraw.editor.tongue import LANGUAGES, WRITTEN_IN, speak, wished_languages
from shopdraw.editor.window import Window
from shopdraw.shipped import sample_path
from tests import translations

SOURCES = sorted((translations.ROOT / "shopdraw" / "editor").glob("*.py"))
SHOWING = {
    "setText", "setWindowTitle", "setToolTip", "setStatusTip", "setPlaceholderText", "setAccessibleName", "addItem",
    "setAccessibleDescription", "addTab", "addAction", "addMenu", "addRow", "showMessage", "QLabel", "QPushButton",
    "QCheckBox", "QRadioButton", "QAction", "QToolBar", "NotTyped",
}  # fmt: skip
"""Calls whose words a person reads."""
OTHERS = [language for language, _ in LANGUAGES if language != WRITTEN_IN]


def messages(language: str, folder: Path = translations.FOLDER) -> dict[tuple[str, str], tuple[str, str]]:
    """Context and English words, and for each what it is called and whether it is done."""
    root = ElementTree.parse(folder / f"shopdraw_{language}.ts").getroot()
    found = {}
    for context in root.iter("context"):
        for message in context.iter("message"):
            told = message.find("translation")
            assert told is not None
            key = (context.findtext("name") or "", message.findtext("source") or "")
            found[key] = (told.text or "", told.get("type") or "done")
    return found


def calls(name: str) -> Iterator[tuple[Path, ast.Call]]:
    for file in SOURCES:
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call):
                called = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
                if called == name:
                    yield file, node


@pytest.mark.parametrize("language", OTHERS)
def test_every_text_of_the_source_is_there(language: str) -> None:
    known = messages(language)
    words = {words for _, words in known}
    written = [(file, c.args[0]) for file, c in calls("tr")]
    written += [(file, c.args[1]) for file, c in calls("translate") if len(c.args) > 1]
    literal = [(file.name, a.value) for file, a in written if isinstance(a, ast.Constant)]
    assert len(literal) > 250
    assert [(file, text) for file, text in literal if text not in words] == []
    assert [pair for pair in translations.words_in_data() if pair not in known] == []


@pytest.mark.parametrize("language", OTHERS)
def test_sources_and_compiled_ones_are_new(language: str, tmp_path: Path) -> None:
    name = f"shopdraw_{language}.ts"
    shutil.copy(translations.FOLDER / name, tmp_path / name)
    translations.renew(tmp_path)
    assert set(messages(language, tmp_path)) == set(messages(language)), "make translations renews them"
    sentences = [(folder / translations.SENTENCES).read_bytes() for folder in (tmp_path, translations.FOLDER)]
    assert sentences[0] == sentences[1], "make translations writes them down"
    compiled = tmp_path / f"of-the-{language}.qm"
    translations.compile_source(translations.FOLDER / name, compiled)
    shipped = (translations.FOLDER / name).with_suffix(".qm")
    assert compiled.read_bytes() == shipped.read_bytes(), "make translations compiles them"


@pytest.mark.parametrize("language", OTHERS)
def test_nothing_is_unfinished(language: str) -> None:
    left = [key for key, (words, state) in messages(language).items() if state != "done" or not words]
    assert left == []


@pytest.mark.parametrize("language", OTHERS)
def test_gaps_are_the_same_in_every_language(language: str) -> None:
    for (context, source), (words, _) in messages(language).items():
        assert sorted(re.findall(r"\{\w+\}", source)) == sorted(re.findall(r"\{\w+\}", words)), (context, source)


def test_no_words_are_shown_past_the_translators() -> None:
    past = [
        f"{file.name}:{call.lineno}: {argument.value}"
        for name in SHOWING
        for file, call in calls(name)
        for argument in call.args
        if isinstance(argument, ast.Constant) and isinstance(argument.value, str) and re.search(r"\w", argument.value)
    ]
    assert past == []


def test_the_window_speaks_german(qapp: QApplication, make_window, desk: Path) -> None:
    assert speak(qapp, ["xx-XX", "de-AT", "en"]) == "de"
    try:
        window: Window = make_window()
        window.open_file(desk)
        assert [action.text() for action in window.menuBar().actions()] == ["Datei", "Ändern", "Zeigen", "Hilfe"]
        assert window.work.side.tabText(0) == "Maße"
        assert window.work.form.widget_for("case.dado_depth").accessibleName() == "Tiefe der Quernut, in"
        assert "Schreibhöhe" in {figure.name for figure in window.canvas.scene.figures}
        # Sizes go by their names in either language.
        from shopdraw.editor.figure import named_sizes

        assert window.piece.state.assembly is not None
        sizes = named_sizes(window.piece.state.assembly)
        assert sizes["schreibhöhe"] == sizes["writing height"]
    finally:
        silence(qapp)


def silence(app: QApplication) -> None:
    """Takes the translators away again."""
    from PySide6.QtCore import QTranslator

    for translator in app.findChildren(QTranslator):
        app.removeTranslator(translator)
        translator.deleteLater()


def test_an_unknown_language_leaves_english(qapp: QApplication) -> None:
    assert speak(qapp, ["xx"]) == WRITTEN_IN
    assert speak(qapp, ["en-GB", "de"]) == WRITTEN_IN


def test_the_one_that_was_chosen_comes_before_the_system() -> None:
    assert wished_languages("de") == ("de",)
    assert wished_languages()


def test_findings_are_told_with_the_readers_decimal_sign(make_window, desk: Path) -> None:
    window: Window = make_window(QLocale(QLocale.Language.German, QLocale.Country.Germany))
    window.open_file(desk)
    window.piece.set_values((Setting("case.dado_depth", "7/16"),), "Deeper")
    model, panel = window.work.findings.model, window.work.findings
    told = [str(model.data(model.index(row))) for row in range(model.rowCount())]
    assert any(re.search(r"0,\d+ in", words) for words in told)
    assert not any(re.search(r"(?<![\w.])\d+\.\d+ (in|mm)", words) for words in told)
    panel.list.setCurrentIndex(model.index(0))
    assert "0,2709 in" in panel.set_it.text()
    panel.set_it.click()  # the file has its point
    assert tomllib.loads(window.piece.state.text)["case"]["dado_depth"] == "0.2709 in"


@pytest.mark.parametrize(
    ("country", "told", "never"),
    [(QLocale.Country.Germany, r"\d,\d+ kg", r"\d\.\d+ (?:kg|mm|in)|ratio \d\.|be \d\.\d+ at most"),
     (QLocale.Country.Switzerland, r"\d\.\d+ kg", r"\d,\d+ (?:kg|mm|in)|ratio \d,|be \d,\d+ at most")],
)  # fmt: skip
def test_the_readers_sign_holds_whatever_the_piece_prints(make_window, country, told: str, never: str) -> None:
    """One sample prints commas, the other points; limits of a drag and findings are told with the reader's own."""
    make_window(QLocale(QLocale.Language.German, country))
    for sample in ("pilot-station-desk", "chart-room-desk"):
        state = state_of(sample_path(sample).read_text(encoding="utf-8"), sample)
        assert state.design is not None
        assert state.assembly is not None
        words = [finding_words(one) for one in piece_findings(state.design, state.assembly, (), sample_path(sample))]
        assert any(re.search(told, one) for one in words)
        assert [one for one in words if re.search(never, one)] == []
    assert ("," if country is QLocale.Country.Germany else ".") in said("a slant of 4.8° from level is none")


STARTED = """
import sys
from pathlib import Path
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QDialogButtonBox
from shopdraw.editor.start import application
from shopdraw.editor.window import Window
app = application()
folder = Path(sys.argv[1])
window = Window(apart=False, settings=QSettings(str(folder / "m.ini"), QSettings.Format.IniFormat), folder=folder)
box = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
words = [window.menuBar().actions()[0].text(), box.buttons()[0].text().replace("&", ""), window.work.decimal_sign]
sys.stdout.buffer.write("|".join(words).encode())
sys.stdout.flush()
import os
os._exit(0)
"""


@pytest.mark.parametrize(
    ("lang", "words"),
    [
        ("de_DE.UTF-8", "Datei|Abbrechen|,"),  # Qt's own dialogs speak it as well
        ("en_GB.UTF-8", "File|Cancel|."),
        ("pt_BR.UTF-8", "File|Cancel|,"),  # not shipped: English words, the reader's decimal sign
    ],
)
def test_it_starts_in_the_language_of_the_system(lang: str, words: str, tmp_path: Path) -> None:
    kept = {key: value for key, value in os.environ.items() if not key.startswith("LC_") and key != "LANGUAGE"}
    done = subprocess.run(
        [sys.executable, "-c", STARTED, str(tmp_path)],
        env={**kept, "LANG": lang, "QT_QPA_PLATFORM": "offscreen", "HOME": str(tmp_path)},
        cwd=translations.ROOT, capture_output=True, check=True, timeout=120,
    )  # fmt: skip
    assert done.stdout.decode() == words


def test_the_language_is_chosen_in_the_window(window: Window, answers) -> None:
    answers.ready = ["de"]
    window.actions_by_key["language"].trigger()
    assert window.settings.value("language") == "de"
    answers.ready = ["system"]
    window.actions_by_key["language"].trigger()
    assert window.settings.value("language") == ""
    answers.ready = [""]
    window.actions_by_key["language"].trigger()
    assert window.settings.value("language") == ""
