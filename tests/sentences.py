"""Finds the sentences of the layers that know no translation, in their source: `make translations` writes them down.

A rule words its finding in English, in an f-string. Where its values stand the sentence has gaps. A window in another
language reads a finding back into such a sentence and its values (`shopdraw/editor/said.py`); so every text that these
layers can hand to the window must be found here. Nothing in those layers knows of it.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from shopdraw.trade.sheet_goods import panels
from shopdraw.trade.species import all_species

PLACES = (
    "check/*.py", "build/*.py", "cli/export.py", "cli/package.py", "measure/*.py", "wood/finding.py",
    "cnc/advice.py", "cnc/corner.py", "cnc/setting.py", "cnc/part.py",
    "cnc/second.py", "cnc/side_name.py", "piece/design.py", "piece/fault.py", "piece/migration.py",
    "piece/quantity.py", "piece/reading.py", "piece/refusal.py", "piece/saving.py", "piece/shop.py",
    "piece/shop_reading.py", "piece/source_text.py", "piece/unknown.py", "piece/variant.py", "sheet/set.py",
    "sheet/compose.py", "sheet/spread.py", "lists/layout/yard.py", "lists/layout/bundle.py",
    "lists/layout/layout_table.py", "trade/moisture.py", "trade/table.py", "editor/sheet_grips.py",
)  # fmt: skip
"""Modules whose words reach the window: findings, faults, names of boards and what is said when a value is typed."""
SINGLE = (
    "back", "bead", "bevel", "board", "bottom", "build", "chamfer", "changed", "cove", "dado", "dovetail", "drawn",
    "dry", "eased", "fast", "foot", "front", "glued", "groove", "head", "hollow", "keyhole", "kicker", "knob", "lap",
    "ledge", "left", "length", "less", "lid", "lower", "middle", "middle {0}", "mitre", "more", "mortise", "new",
    "notch", "nothing", "ogee", "over", "ovolo", "partition", "pin", "plinth", "point", "pull", "rabbet", "rear",
    "relief", "reliefs", "reverse ogee", "right", "round", "runner", "scallop", "sheet", "shelf", "side", "slide",
    "species", "swung", "tail", "tails", "tenon", "tongue", "top", "upper", "wet", "{0} ({1})", "{0} and {1}",
    "{0} to {1}",
)  # fmt: skip
"""Words that stand alone in a gap, and how two of them are joined; a word of the file itself ("inset") is never one."""
TITLES = (
    "Boards within", "Cover", "Cut list", "Cutting layouts", "Details {0}", "Exploded picture", "General arrangement",
    "Jig for {0}", "Joint schedule", "Materials", "Order of assembly", "Parts: {0}", "Profile of {0}", "Rod: {0}",
    "Section {0}", "Sections {0}", "Template {0}", "What to buy", "case", "compartments", "cuts in order",
    "depth", "details {0}", "drawers", "frames and rails", "from the floor", "from the front plane",
    "from the left outer face", "guide collar", "height", "its end", "lid and supports", "machine settings",
    "reference face to the right", "row {0} of {1}", "column {0} of {1}", "sides", "view {0}", "width", "{0} sawn",
)  # fmt: skip
"""What the titles of sheets are made of, which are put together in many places."""
PLACES_ON_SHEETS = (
    "bay", "bays", "butt", "end", "floor", "hinge {0}", "inner", "lip", "opening", "outer", "show face", "slant",
    "space", "start", "support", "v-housing", "writing face",
)  # fmt: skip
"""Edges and ends that are no board's own side, as a person reads them when one more dimension is drawn."""
SIDES = tuple(
    f"{article}{way} {what}"
    for article in ("", "the ")
    for way in ("left", "right", "front", "back", "lower", "upper")
    for what in ("edge", "end")
)
"""What a person at the bench calls a board's edges and ends, alone and where something is measured from them."""
READERS = (
    "cannot declare {0} twice", "cannot mutate immutable namespace {0}", "cannot overwrite a value",
    "duplicate inline table key {0}", "expected '=' after a key in a key/value pair",
    "expected ']' at the end of a table declaration", "expected ']]' at the end of an array declaration",
    "expected newline or end of document after a statement", "found invalid character {0}", "illegal character {0}",
    "invalid date or datetime", "invalid hex value", "invalid initial character for a key part", "invalid statement",
    "invalid value", "unclosed array", "unclosed inline table", "unescaped '\\' in a string", "unterminated string",
    "greater than {0}", "greater than or equal to {0}", "less than {0}", "less than or equal to {0}",
    "file exists", "is a directory", "no space left on device", "no such file or directory", "not a directory",
    "permission denied", "read-only file system",
)  # fmt: skip
"""What Python's own reader of TOML, pydantic and the system say, where their words are passed on in brackets."""
_NEVER_SAID = {"compile", "fullmatch", "search", "sub", "Field", "AssertionError", "getattr", "isinstance", "open"}
_BASIS = re.compile(r"Handbook|\bcommon practice\b|^Wood |maker, as the piece says|own (keys|ids)|^the keys of")
_IN_THE_FILE = re.compile(
    r"""[\w.]+ = ["\w-]+|\S+|\{\d+\} (?:mm|in|in³|kg|MB)|Application Support|Untitled piece|Working drawings.*"""
)
"""What stands in a file as it is: an input with its value, an id, a unit."""
_GAP = re.compile(r"\{\d+\}")
_FIGURE = r"(?:\{\d+\}|\d+(?:\.\d+)?)"
_LENGTH = re.compile(rf"{_FIGURE}(?:(?: to | × ){_FIGURE})* mm(?:³|\b)|\d+\.\d+(?= kg|°|%| dm³)")
"""A length with its unit, and a figure that may be told with a decimal comma."""
_ADDRESS = re.compile(r"(?:\b[a-z]+\.)?\{\d+\}(?:\.(?:[a-z_]+|\{\d+\}))*")
"""A gap, with the rest of an address of the piece file round it."""


def sentences(package: Path) -> list[str]:
    """Every sentence, its gaps numbered in braces, in the order of the alphabet.

    Args:
        package: the folder of shopdraw.
    """
    found = {*SINGLE, *TITLES, *SIDES, *PLACES_ON_SHEETS, *READERS}
    found |= {one.name for one in (*all_species(), *panels())}
    for place in PLACES:
        for file in sorted(package.glob(place)):
            found |= {sentence for sentence in _of(file) if _tells(sentence)}
    return sorted(found)


def _of(file: Path) -> Iterator[str]:
    tree = ast.parse(file.read_text(encoding="utf-8"))
    unsaid = {id(part) for node in ast.walk(tree) for part in _unsaid(node)}
    for node in ast.walk(tree):
        if id(node) in unsaid:
            continue
        if isinstance(node, ast.JoinedStr):
            yield _with_gaps(node)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and " " in node.value.strip():
            yield with_lengths(node.value.strip())


def _unsaid(node: ast.AST) -> Iterator[ast.AST]:
    """Parts of a node that nobody is told: docstrings, patterns, bases, pieces of a sentence that is taken whole."""
    if isinstance(node, ast.Expr):
        yield node.value
    elif isinstance(node, ast.JoinedStr):
        yield from (value for value in node.values if isinstance(value, ast.Constant))
    elif isinstance(node, ast.Call):
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if name in _NEVER_SAID:
            yield from (each for part in (*node.args, *node.keywords) for each in ast.walk(part))
        yield from (each for part in node.keywords if part.arg in ("basis", "description") for each in ast.walk(part))


def _with_gaps(node: ast.JoinedStr) -> str:
    told, gaps = "", 0
    for part in node.values:
        if isinstance(part, ast.Constant):
            told += str(part.value)
        else:
            told += f"{{{gaps}}}"
            gaps += 1
    return with_lengths(told.strip())


def with_lengths(sentence: str) -> str:
    """The sentence with each length, its unit with it, as one gap: an inch piece is told in inches. Addresses too."""
    found: list[str] = []

    def gap(_: re.Match[str]) -> str:
        found.append("")
        return f"{{{len(found) - 1}}}"

    return re.sub(rf"{_LENGTH.pattern}|{_ADDRESS.pattern}", gap, sentence)


def _tells(sentence: str) -> bool:
    """Whether there is anything in it for a person to read."""
    words = _GAP.sub(" ", sentence)
    return (
        "\n" not in sentence
        and bool(re.search(r"[^\W\d_]{2,}", words))
        and not _BASIS.search(sentence)
        and not re.search(r"[\\^$]|\(\?|^moments about", sentence)
        and (sentence in SINGLE or not _IN_THE_FILE.fullmatch(sentence))
        and bool(re.search(r"[^\W\d_]{2,}(?![\w]*[.:=])", words))
    )
