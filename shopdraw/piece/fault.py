"""Faults: why a file can't be read as a piece; each says where, what was found and what would be right."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from shopdraw.piece.address import NotAnAddress, Path, address_path
from shopdraw.piece.line import line_of

FAULTS_SHOWN = 20


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing that must be put right in the file.

    Attributes:
        line: line in the file, from 1; 0 where no line is to blame.
        address: the value's address (``case.width``), or "" for the file as a whole.
        found: what stands there, as it would be written in the file; "" where it needs no telling.
        right: what would be right; begins with "expected" or is a sentence of its own.
    """

    line: int
    address: str
    found: str
    right: str

    def told(self, source: str) -> str:
        """One line: file, line, address, what was found, what would be right."""
        place = f"{source}:{self.line}" if self.line else source
        parts = [place, self.address, f"found {self.found}" if self.found else "", self.right]
        return _one_line(": ".join(part for part in parts if part))


class PieceError(Exception):
    """The file can't be read as a piece."""

    def __init__(self, source: str, faults: Iterable[Fault]) -> None:
        self.source = source
        self.faults = tuple(faults)
        super().__init__("\n".join(self.lines()))

    def lines(self) -> tuple[str, ...]:
        """One line for each fault; of very many the first ones and how many more there are."""
        told = [fault.told(self.source) for fault in self.faults[:FAULTS_SHOWN]]
        more = len(self.faults) - len(told)
        return (*told, f"{self.source}: {more} more like these") if more > 0 else tuple(told)


def with_lines(faults: Iterable[Fault], text: str) -> tuple[Fault, ...]:
    """The same faults, those without a line given the line of their address in the file's text."""
    return tuple(fault if fault.line else replace(fault, line=_line(fault.address, text)) for fault in faults)


def _line(address: str, text: str) -> int:
    try:
        path: Path = address_path(address)
    except NotAnAddress:
        return 0
    return line_of(text, path)


def _one_line(text: str) -> str:
    return "".join(c if c.isprintable() else " " for c in text)
