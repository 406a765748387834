"""A reader of DXF of our own, for the tests alone: tags, header variables, entities by section."""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise

Tag = tuple[int, str]


@dataclass
class Entity:
    """One entity: its type and its tags after the type's own."""

    kind: str
    tags: list[Tag] = field(default_factory=list)

    def get(self, code: int) -> str | None:
        """The first value with this group code."""
        return next((value for c, value in self.tags if c == code), None)

    def all(self, code: int) -> list[str]:
        """Every value with this group code."""
        return [value for c, value in self.tags if c == code]


def tags_of(data: bytes, encoding: str = "utf-8") -> list[Tag]:
    """The file as pairs of group code and value."""
    lines = data.decode(encoding).split("\n")
    return [(int(lines[i]), lines[i + 1]) for i in range(0, len(lines) - 1, 2)]


def header_of(data: bytes, encoding: str = "utf-8") -> dict[str, str]:
    """Header variables by name, first value of each."""
    found: dict[str, str] = {}
    tags = tags_of(data, encoding)
    for (code, value), (_, after) in pairwise(tags):
        if code == 9:
            found[value] = after
        if (code, value) == (0, "ENDSEC"):
            break
    return found


def entities_of(data: bytes, section: str, encoding: str = "utf-8") -> list[Entity]:
    """All entities of a section, in order."""
    found: list[Entity] = []
    within = ""
    tags = tags_of(data, encoding)
    for i, (code, value) in enumerate(tags):
        if code == 0 and value == "SECTION":
            within = tags[i + 1][1]
        elif code == 0 and value == "ENDSEC":
            within = ""
        elif within == section:
            if code == 0:
                found.append(Entity(value))
            elif found:
                found[-1].tags.append((code, value))
    return found


def blocks_of(data: bytes, encoding: str = "utf-8") -> dict[str, list[Entity]]:
    """Blocks by name, each with its entities."""
    blocks: dict[str, list[Entity]] = {}
    name = ""
    for entity in entities_of(data, "BLOCKS", encoding):
        if entity.kind == "BLOCK":
            name = entity.get(2) or ""
            blocks[name] = []
        elif entity.kind != "ENDBLK":
            blocks[name].append(entity)
    return blocks
