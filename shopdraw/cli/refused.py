"""What stops a command: lines that say where, what was found and what would be right."""

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:  # spares --help an import
    from collections.abc import Iterable


class Refused(Exception):
    """The command can't be done; exit 2. Each line stands for itself."""

    def __init__(self, lines: Iterable[str]) -> None:
        self.lines = tuple(lines)
        super().__init__("\n".join(self.lines))

    def __reduce__(self) -> tuple[type[Refused], tuple[tuple[str, ...]]]:
        # On its way from another process it would otherwise be made of its message's letters.
        return Refused, (self.lines,)


def refused(line: str) -> Refused:
    """A refusal of one line."""
    return Refused((line,))


def reason_of(error: OSError) -> str:
    """Why the system refused, in its own words, as part of a sentence."""
    words = (error.strerror or str(error)).rstrip(".")
    return words[:1].lower() + words[1:]
