"""What a drawing is made of: marks with a meaning and the id of the board they show.

A view's marks lie in the view's own plane at true size in mm (x right, y up on paper). Heights of letters, line
widths and hatch pitches are always paper mm. Marks on a sheet itself lie in paper mm from its lower left corner.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from shopdraw.shape.path import Path, Point


class Meaning(Enum):
    """What a line stands for; widths and dashes follow from it, see `line_style`."""

    VISIBLE = "visible"
    """A visible edge (01.2 wide)."""
    CUT = "cut"
    """The outline of cut material in a section (01.2 wide)."""
    BEHIND = "behind"
    """An edge behind a section's plane (01.1 narrow)."""
    HIDDEN = "hidden"
    """A hidden edge (02.1 narrow dashed)."""
    CENTRE = "centre"
    """A centre or symmetry line (04.1 narrow long-dash dot)."""
    PLANE = "plane"
    """A cutting plane (04.2 wide long-dash dot at its ends and corners)."""
    MOVING = "moving"
    """A moved position, swing or travel (05.1 narrow long-dash double-dot)."""
    HATCH = "hatch"
    SIZE = "size"
    """Dimension, extension and leader lines and their figures (01.1 narrow)."""
    WORD = "word"
    """Titles, notes, tables."""
    FRAME = "frame"
    """Frame, title block, zones."""
    TEMPLATE = "template"
    """A full-size template's outline: 0.25 mm on any sheet."""


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line."""

    start: Point
    end: Point
    meaning: Meaning
    board: str = ""
    width: float | None = None
    """Paper mm, where the meaning's own width doesn't serve (frame, tables)."""


@dataclass(frozen=True, slots=True)
class ArcMark:
    """An arc, given anticlockwise from `start_deg` to `end_deg`; a full circle when they differ by 360."""

    centre: Point
    radius: float
    start_deg: float
    end_deg: float
    meaning: Meaning
    board: str = ""


@dataclass(frozen=True, slots=True)
class Dot:
    """A filled circle: leader ends and origin points; radius in paper mm."""

    centre: Point
    radius: float
    meaning: Meaning
    board: str = ""


@dataclass(frozen=True, slots=True)
class Arrow:
    """A filled arrowhead with its tip at a point; length and width in paper mm.

    Attributes:
        angle_deg: the way it points, degrees from +x.
    """

    tip: Point
    angle_deg: float
    length: float
    width: float
    meaning: Meaning = Meaning.SIZE
    board: str = ""


@dataclass(frozen=True, slots=True)
class Text:
    """One line of words.

    Attributes:
        at: the anchor, on the baseline.
        height: of capitals, paper mm.
        anchor: "left", "middle" or "right" of the baseline.
        angle_deg: direction of reading, degrees from +x.
    """

    at: Point
    words: str
    height: float
    anchor: str = "left"
    angle_deg: float = 0.0
    meaning: Meaning = Meaning.WORD
    board: str = ""


@dataclass(frozen=True, slots=True)
class Hatching:
    """How a cut area is filled.

    Attributes:
        kind: "lines" (parallel), "broken" (parallel, in broken lengths), "grey" (filled, for what is drawn too thin).
        angle_deg: of the lines.
        pitch: between lines, paper mm.
        seed: a whole number from the board's id; broken lengths start from it, the same every run.
    """

    kind: str
    angle_deg: float = 45.0
    pitch: float = 2.0
    seed: int = 0


@dataclass(frozen=True, slots=True)
class Area:
    """A hatched area; the hatch is left out inside `clear` boxes (x0, y0, x1, y1), where text stands."""

    outline: Path
    islands: tuple[Path, ...]
    hatching: Hatching
    board: str = ""
    clear: tuple[tuple[float, float, float, float], ...] = ()


Mark = Line | ArcMark | Dot | Arrow | Text | Area
