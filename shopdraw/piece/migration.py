"""Formats of the piece file: a file of an earlier format is brought up step by step, one of a later format is refused.

What each format changed is told in `MIGRATIONS`. A migration works on the text, comments and order included, in
memory; the file itself changes only when a person saves.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import tomlkit
from tomlkit.toml_document import TOMLDocument

FORMAT = 1
"""The format that this version writes."""


@dataclass(frozen=True, slots=True)
class Migration:
    """The step from one format to the next.

    Attributes:
        before: the format that it starts from; it ends at the next one.
        says: what changed, in a sentence for the person who owns the file.
        change: alters the document in place.
    """

    before: int
    says: str
    change: Callable[[TOMLDocument], None]


MIGRATIONS: tuple[Migration, ...] = ()
"""In order. Format 1 is the first one, so there is no step yet."""


class LaterFormat(Exception):
    """The file comes from a later version; it is left as it is."""


def migrated(
    text: str, found: int, migrations: Sequence[Migration] = MIGRATIONS, latest: int = FORMAT
) -> tuple[str, tuple[str, ...]]:
    """The text in the latest format, and what each step changed.

    Args:
        text: a well-formed piece file.
        found: the format that it states.
        migrations: steps, in order, without a gap.
        latest: the format to reach.
    Raises:
        LaterFormat: the file's format is later than the latest one known here.
    """
    if found > latest:
        raise LaterFormat(f"format {found} is later than {latest}")
    if found == latest:
        return text, ()
    document = tomlkit.parse(text)
    steps = [step for step in migrations if found <= step.before < latest]
    for step in steps:
        step.change(document)
    document["format"] = latest
    return tomlkit.dumps(document), tuple(step.says for step in steps)
