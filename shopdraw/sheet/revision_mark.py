"""What changed since the last frozen revision: a table, and a mark on each sheet that shows such a board."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from shopdraw.check.revision import Change, changes_since, last_revision
from shopdraw.drawing.letters import text_width
from shopdraw.drawing.mark import Dot, Text
from shopdraw.drawing.sheet import Sheet
from shopdraw.lists.table import Column, Table
from shopdraw.piece.design import Design
from shopdraw.sheet.look import Look
from shopdraw.wood.assembly import Assembly

SIGN = "△"
OFF_EDGE, UNDER_EDGE = 2.0, 0.5
"""Within the margin that views keep off the frame: from its left line, and from its upper line to the letters."""
_VIEWS = ("cover", "general-arrangement", "right-side", "plan", "sections", "details", "parts", "exploded")
_MORE = " and {} more"


@dataclass(frozen=True, slots=True)
class Revised:
    """Changes since a revision; `name` "" where there is none to compare with."""

    name: str = ""
    changes: tuple[Change, ...] = ()

    @property
    def sign(self) -> str:
        """The mark: "△A"."""
        return f"{SIGN}{self.name}"


def revised(design: Design, assembly: Assembly) -> Revised:
    """What changed since the revision that was frozen last."""
    last = last_revision(design)
    return Revised() if last is None else Revised(last[0], changes_since(assembly, last[1]))


def revision_table(revision: Revised) -> tuple[Table, ...]:
    """The changes as a table; none where nothing changed."""
    if not revision.changes:
        return ()
    rows = tuple((c.label, c.words, "cut already" if c.cut else "") for c in revision.changes)
    title = f"{revision.sign}: changed since revision {revision.name}"
    return (Table(title, (Column("label"), Column("what"), Column("in the shop")), rows),)


def concerns(sheet: Sheet, revision: Revised) -> tuple[str, ...]:
    """Labels of the changed boards that a sheet shows; a sheet of tables tells of all boards."""
    if not sheet.key.startswith(_VIEWS):
        return tuple(change.label for change in revision.changes)
    marks = [mark for placed in sheet.placed for mark in placed.drawing.marks]
    shown = {mark.board for mark in marks if not isinstance(mark, Dot)}
    said = {mark.words for mark in marks if isinstance(mark, Text)}
    cells = {placed.drawing.id for placed in sheet.placed}

    def is_on(change: Change) -> bool:
        part = f"part.{change.label}"
        return change.board in shown or change.label in said or any(f"{cell}.".startswith(f"{part}.") for cell in cells)

    return tuple(change.label for change in revision.changes if is_on(change))


def with_mark(sheet: Sheet, revision: Revised, look: Look) -> Sheet:
    """The sheet with its changed boards named along its upper edge; as it is where it shows none.

    Args:
        sheet: of the set.
        revision: what changed.
        look: height of the letters.
    """
    labels = concerns(sheet, revision)
    if not labels:
        return sheet
    x0, _, x1, y1 = sheet.paper.frame
    words = _fitting(revision.sign, labels, x1 - x0 - 2 * OFF_EDGE, look.figure)
    mark = Text((x0 + OFF_EDGE, y1 - UNDER_EDGE - look.figure), words, look.figure)
    return replace(sheet, marks=(*sheet.marks, mark))


def marked_title(sheet: Sheet, revision: Revised) -> str:
    """A sheet's title in the list of sheets, with the mark where it shows what changed."""
    return f"{sheet.title} {revision.sign}" if concerns(sheet, revision) else sheet.title


def _fitting(sign: str, labels: Sequence[str], room: float, height: float) -> str:
    """As many labels as the edge holds, and how many more there are."""
    for count in range(len(labels), 0, -1):
        rest = _MORE.format(len(labels) - count) if count < len(labels) else ""
        words = f"{sign} {', '.join(labels[:count])}{rest}"
        if text_width(words, height) <= room:
            return words
    return f"{sign} {len(labels)}"
