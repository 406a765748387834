"""Renews the translations: `make translations`. Run by hand and by tests, with Qt's own tools from the PySide6 wheel.

Texts in widgets are found by lupdate itself. Words that live in data (commands, the help, names and explanations of
inputs, which come from the typed Design) are handed to it in a file that is written here: so a new input is to be
translated as soon as it is there. So are the sentences of the layers below (`sentences.py`), which are also written
down for the program, so that it can read a text back into its sentence.
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import get_origin

import PySide6
from pydantic import BaseModel

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from shopdraw.editor.board_list import COLUMNS
from shopdraw.editor.command_list import COMMANDS, MENUS
from shopdraw.editor.field import choices_of, explanation_of, inner_table, spelt
from shopdraw.editor.finding_list import WORDS
from shopdraw.editor.help_window import help_steps
from shopdraw.editor.holding import RATIOS
from shopdraw.editor.overlay import OVERLAYS
from shopdraw.editor.said import CONTEXT
from shopdraw.editor.state import state_of
from shopdraw.editor.tongue import LANGUAGES, WRITTEN_IN
from shopdraw.editor.tracing import CORNERS
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.shipped import sample_names, sample_path
from tests.sentences import sentences

FOLDER = ROOT / "resources" / "translations"
TOOLS = Path(PySide6.__file__).parent
SENTENCES = "sentences.txt"
EXPORTED = ("sheets", "templates", "drawing", "cnc", "lists")
HELD = ("glued", "floats", "dry")


def words_in_data() -> list[tuple[str, str]]:
    """Context and English words of everything that is translated where it is shown, not where it is written."""
    found: list[tuple[str, str]] = [("Command", name) for name in MENUS]
    for command in COMMANDS:
        found += [("Command", command.words), ("Command", command.tells)]
    found += [("Help", words) for step in help_steps() for words in step]
    found += [("Board", words) for words in COLUMNS]
    found += [("Finding", words) for words in WORDS.values()]
    found += [("Ratio", name) for name, _ in RATIOS] + [("Ratio", name) for name in OVERLAYS]
    sides = ("height", "width", "depth", "writing height")
    found += [("Ratio", f"{one} : {other}") for one in sides for other in sides if one != other]
    found += [("Corner", words) for words in CORNERS]
    found += [("Export", words) for words in EXPORTED]
    found += [("Joint", words) for words in HELD]
    seen: set[type[BaseModel]] = set()
    found += [*_words_of_inputs(Design, seen), *_words_of_inputs(Shop, seen)]
    found += _words_of_samples()
    found += [(CONTEXT, sentence) for sentence in _sentences()]
    return [pair for pair in dict.fromkeys(found) if pair[1] and any(letter.isalpha() for letter in pair[1])]


def _words_of_inputs(model: type[BaseModel], seen: set[type[BaseModel]]) -> Iterator[tuple[str, str]]:
    if model in seen:
        return
    seen.add(model)
    yield "Explanation", explanation_of(model)
    for name, info in model.model_fields.items():
        table = inner_table(info)
        yield ("Input" if table is None and get_origin(info.annotation) is not dict else "Table"), spelt(name)
        yield "Explanation", info.description or ""
        yield from (("Choice", choice) for choice in choices_of(info))
        if table is not None:
            yield from _words_of_inputs(table, seen)


def _words_of_samples() -> Iterator[tuple[str, str]]:
    """What boards carry and what opens, as it comes out in the samples."""
    for name in sample_names():
        assembly = state_of(sample_path(name).read_text(encoding="utf-8"), name).assembly
        assert assembly is not None, name
        for board in assembly.boards:
            for cut in board.shape.cuts:
                yield "Cut", cut.kind
                yield "Face", cut.face.value
        for joint in assembly.joints:
            yield "Joint", joint.kind
        for motion in assembly.motions:
            if not motion.id.startswith("drawer."):
                yield "Motion", motion.id.replace(".", " ").replace("-", " ").capitalize()


def _sentences() -> list[str]:
    """Sentences of the layers that know no translation."""
    return sentences(ROOT / "shopdraw")


def renew(folder: Path = FOLDER) -> list[Path]:
    """Brings the sources (.ts) and the compiled translations (.qm) in a folder up to date; gives back the sources."""
    folder.mkdir(parents=True, exist_ok=True)
    made = []
    (folder / SENTENCES).write_text("".join(f"{sentence}\n" for sentence in _sentences()), encoding="utf-8")
    with tempfile.TemporaryDirectory() as name:
        data = Path(name) / "words_in_data.py"
        data.write_text("".join(f"translate({context!r}, {_quoted(words)})\n" for context, words in words_in_data()))
        sources = [*sorted((ROOT / "shopdraw" / "editor").glob("*.py")), data]
        for language, _ in LANGUAGES:
            if language == WRITTEN_IN:
                continue
            source = folder / f"shopdraw_{language}.ts"
            _run("lupdate", *sources, "-ts", source, "-locations", "none", "-no-obsolete", "-source-language", "en",
                 "-target-language", language)  # fmt: skip
            compile_source(source, source.with_suffix(".qm"))
            made.append(source)
    return made


def compile_source(source: Path, into: Path) -> None:
    """Compiles a source."""
    _run("lrelease", source, "-qm", into)


def _quoted(words: str) -> str:
    return '"' + words.replace("\\", "\\\\").replace('"', '\\"') + '"'


def _run(tool: str, *words: str | Path) -> None:
    done = subprocess.run([TOOLS / tool, *words], capture_output=True, text=True, check=False)
    if done.returncode != 0:
        raise RuntimeError(f"{tool}: {done.stderr or done.stdout}")


if __name__ == "__main__":
    for made in renew():
        print(made.relative_to(ROOT), made.with_suffix(".qm").relative_to(ROOT))
