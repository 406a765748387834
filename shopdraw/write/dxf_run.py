"""Lines, words and solids of a DXF file in runs: their tags as text from the start.

A drawing has thousands of these and they are all alike. As entities of the library each would be held, checked and
written tag by tag; here a run of them is one member of its layout and is written as it is. Handles, layers and owners
come from the document like everyone else's. Source of tags and their order: DXF reference, LINE, TEXT, SOLID, common
group codes for entities.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ezdxf.entities.dxfentity import DXFEntity
from ezdxf.layouts.base import BaseLayout
from ezdxf.lldxf.tagwriter import AbstractTagWriter

from shopdraw.shape.path import Point

R12_NUMBER = "AC1009"
Attributes = Mapping[str, object]
"""Common attributes by the library's names: layer, linetype, color, lineweight."""
_COMMON = (("linetype", "  6"), ("color", " 62"), ("lineweight", "370"))
"""What may stand behind the layer, in the order of the format."""


class Run(DXFEntity):
    """Entities of one layout that follow one another.

    Attributes:
        written: each one's tags.
        old: for R12, which knows neither owners nor subclasses.
        owner: the tags that name the layout.
    """

    DXFTYPE = "LINE"

    def __init__(self, layout: BaseLayout) -> None:
        super().__init__()
        self.written: list[str] = []
        self.old = layout.dxfversion == R12_NUMBER
        self.owner = f"330\n{layout.layout_key}\n100\nAcDbEntity\n"
        if layout.is_any_paperspace:
            self.owner += " 67\n1\n"

    def export_dxf(self, tagwriter: AbstractTagWriter) -> None:
        """Called by the library when it gets to this member of the layout."""
        tagwriter.write_str("".join(self.written))


def add_line(layout: BaseLayout, start: Point, end: Point, attributes: Attributes) -> None:
    """Adds a LINE."""
    (x0, y0), (x1, y1) = start, end
    _add(
        layout,
        "LINE",
        attributes,
        f"100\nAcDbLine\n 10\n{x0}\n 20\n{y0}\n 30\n0.0\n 11\n{x1}\n 21\n{y1}\n 31\n0.0\n",
        f" 10\n{x0}\n 20\n{y0}\n 30\n0.0\n 11\n{x1}\n 21\n{y1}\n 31\n0.0\n",
    )


def add_solid(layout: BaseLayout, corners: Sequence[Point], attributes: Attributes) -> None:
    """Adds a SOLID of four corners, the last two of a square in reversed order."""
    tags = "".join(f" 1{n}\n{x}\n 2{n}\n{y}\n 3{n}\n0.0\n" for n, (x, y) in enumerate(corners))
    _add(layout, "SOLID", attributes, f"100\nAcDbTrace\n{tags}", tags)


def add_text(
    layout: BaseLayout,
    words: str,
    at: Point,
    height: float,
    style: str,
    attributes: Attributes,
    *,
    turned_deg: float = 0.0,
    width: float = 1.0,
    anchor: int = 0,
) -> None:
    """Adds a TEXT.

    Args:
        layout: where to.
        words: one line, without line ends or control signs.
        at: its anchor, on the base line.
        height, style: of its letters.
        attributes: common ones.
        turned_deg: anticlockwise.
        width: of its letters over what the style has.
        anchor: 0 left, 1 middle, 2 right.
    """
    x, y = at
    tags = f" 10\n{x}\n 20\n{y}\n 30\n0.0\n 40\n{height}\n  1\n{words}\n"
    if turned_deg:
        tags += f" 50\n{turned_deg}\n"
    tags += f"  7\n{style}\n"
    if width != 1.0:
        tags += f" 41\n{width}\n"
    if anchor:
        tags += f" 72\n{anchor}\n 11\n{x}\n 21\n{y}\n 31\n0.0\n"
    _add(layout, "TEXT", attributes, f"100\nAcDbText\n{tags}100\nAcDbText\n", tags)


def _add(layout: BaseLayout, kind: str, attributes: Attributes, tags: str, old_tags: str) -> None:
    """Adds one entity to the layout's last run, or to a new one behind what came since.

    Args:
        layout: where to.
        kind: of entity.
        attributes: common ones.
        tags: its own tags.
        old_tags: the same in R12, which knows no subclasses.
    """
    members = layout.entity_space.entities
    run = members[-1] if members else None
    if not isinstance(run, Run):
        run = Run(layout)
        layout.entity_space.add(run)
    handle = layout.doc.entitydb.next_handle()
    common = f"  8\n{attributes['layer']}\n"
    if len(attributes) > 1:
        common += "".join(f"{code}\n{attributes[name]}\n" for name, code in _COMMON if name in attributes)
    if run.old:
        run.written.append(f"  0\n{kind}\n  5\n{handle}\n{common}{old_tags}")
    else:
        run.written.append(f"  0\n{kind}\n  5\n{handle}\n{run.owner}{common}{tags}")
