"""The line on which each address of a TOML text stands.

TOML readers give values without lines; here the text is walked once more, only to learn where keys begin. The text is
taken to be well formed (it has been read before); where it isn't, the lines found so far are the answer.
"""

from __future__ import annotations

import contextlib
import re
import tomllib
from collections.abc import Sequence
from functools import lru_cache
from types import MappingProxyType

from shopdraw.piece.address import Path

_SPACE = re.compile(r"[ \t]*")
_BLANK = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*")
_BARE_KEY = re.compile(r"[A-Za-z0-9_-]+")
_ONE_LINE_STRING = re.compile(r'"(?:[^"\\\n]|\\.)*"' + r"|'[^'\n]*'")
_MANY_LINE_STRING = re.compile(r'"""(?:[^\\]|\\.)*?"{3,5}' + r"|'''.*?'{3,5}", re.DOTALL)
_BARE_VALUE = re.compile(r"[^,\]}#\n]*")


class _Unreadable(Exception):
    """The walk can't go on from here."""


@lru_cache(maxsize=8)
def lines_of(text: str) -> MappingProxyType[Path, int]:
    """Address → line (from 1) of every table, key and list item in the text, the first place where each is named."""
    walk = _Walk(text)
    with contextlib.suppress(_Unreadable, RecursionError):  # what was found until then still tells most lines
        walk.document()
    return MappingProxyType(walk.lines)


def line_of(text: str, path: Sequence[str | int]) -> int:
    """The line of the address, or of the nearest table above it that stands in the text; 0 where none does."""
    lines = lines_of(text)
    for length in range(len(path), 0, -1):
        line = lines.get(tuple(path[:length]))
        if line:
            return line
    return 0


class _Walk:
    """One walk through the text, noting the line of each address."""

    def __init__(self, text: str) -> None:
        self.lines: dict[Path, int] = {}
        self._text = text
        self._at = 0
        self._line = 1
        self._counted = 0
        self._items: dict[Path, int] = {}

    def document(self) -> None:
        table: Path = ()
        while self._skip(_BLANK) < len(self._text):
            if self._next("[["):
                table = self._next_item(self._within(self._key()))
                self._need("]]")
            elif self._next("["):
                table = self._within(self._key())
                self._need("]")
            else:
                self._pair(table)
                continue
            self._note(table)

    def _within(self, path: Path) -> Path:
        """A header's path, with the position of the list item that it speaks of."""
        full: Path = ()
        for key in path[:-1]:
            full = (*full, key)
            self._note(full)
            if full in self._items:
                full = (*full, self._items[full])
        return (*full, path[-1])

    def _next_item(self, path: Path) -> Path:
        self._note(path)
        self._items[path] = self._items.get(path, -1) + 1
        return (*path, self._items[path])

    def _pair(self, table: Path) -> None:
        path = (*table, *self._key())
        for length in range(len(table) + 1, len(path) + 1):
            self._note(path[:length])
        self._need("=")
        self._value(path)

    def _value(self, path: Path) -> None:
        self._skip(_SPACE)
        if self._next("["):
            index = 0
            while self._skip(_BLANK) < len(self._text) and not self._next("]"):
                self._note((*path, index))
                self._value((*path, index))
                self._skip(_BLANK)
                self._next(",")
                index += 1
        elif self._next("{"):
            while self._skip(_BLANK) < len(self._text) and not self._next("}"):
                self._pair(path)
                self._skip(_BLANK)
                self._next(",")
        elif self._text.startswith(('"""', "'''"), self._at):
            self._take(_MANY_LINE_STRING)
        elif self._text.startswith(('"', "'"), self._at):
            self._take(_ONE_LINE_STRING)
        elif not self._take(_BARE_VALUE):
            raise _Unreadable

    def _key(self) -> Path:
        keys: list[str] = []
        while True:
            self._skip(_SPACE)
            if self._text.startswith(('"', "'"), self._at):
                keys.append(_unquoted(self._take(_ONE_LINE_STRING)))
            else:
                keys.append(self._take(_BARE_KEY))
            self._skip(_SPACE)
            if not self._next("."):
                return tuple(keys)

    def _note(self, path: Path) -> None:
        self._line += self._text.count("\n", self._counted, self._at)
        self._counted = self._at
        self.lines.setdefault(path, self._line)

    def _next(self, mark: str) -> bool:
        if self._text.startswith(mark, self._at):
            self._at += len(mark)
            return True
        return False

    def _need(self, mark: str) -> None:
        self._skip(_SPACE)
        if not self._next(mark):
            raise _Unreadable

    def _skip(self, pattern: re.Pattern[str]) -> int:
        found = pattern.match(self._text, self._at)
        self._at = found.end() if found else self._at
        return self._at

    def _take(self, pattern: re.Pattern[str]) -> str:
        found = pattern.match(self._text, self._at)
        if found is None:
            raise _Unreadable
        self._at = found.end()
        return found[0]


def _unquoted(key: str) -> str:
    try:
        return str(tomllib.loads(f"k = {key}")["k"])
    except ValueError as error:
        raise _Unreadable from error
