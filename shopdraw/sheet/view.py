"""A view before its dimensions, and after: what it holds and the room it takes on paper."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.drawing.mark import Mark, Text
from shopdraw.drawing.sheet import Drawing
from shopdraw.shape.path import Point
from shopdraw.sheet.fact import Unplaced


@dataclass(frozen=True, slots=True)
class Name:
    """Words that belong to a place of a view and stand where its dimensions and balloons leave room.

    Attributes:
        text: the words; their own place is taken over by the spot.
        spots: where they may stand, the best first, true-size mm in the view.
        circle: middle and radius of the circle that they name, true-size mm: from far off a leader goes to it.
    """

    text: Text
    spots: tuple[Point, ...]
    circle: tuple[Point, float] | None = None


@dataclass(frozen=True, slots=True)
class PlainView:
    """A view, section, detail or part as `shopdraw.view` gives it.

    Attributes:
        id: "front", "section.A", "part.1L", ...
        title: words below it, or "".
        marks: in the view's own plane, true-size mm.
        names: to be placed last.
    """

    id: str
    title: str
    marks: tuple[Mark, ...]
    names: tuple[Name, ...] = ()


@dataclass(frozen=True, slots=True)
class Balloon:
    """A label in a circle outside the view, with a leader to what it names.

    Attributes:
        label: what stands in the circle: the board's label.
        target: the point that the leader goes to, true-size mm in the view.
        end: "dot" (inside a face) or "arrow" (on an edge).
        stack: further labels that share the leader.
        board: id of the board it belongs to, or "".
        also: further points that would do as well; the one nearest to the balloon's side is taken.
    """

    label: str
    target: Point
    end: str = "dot"
    stack: tuple[str, ...] = ()
    board: str = ""
    also: tuple[Point, ...] = ()


@dataclass(frozen=True, slots=True)
class ComposedView:
    """A view with its dimensions placed.

    Attributes:
        drawing: marks and dimensions, true-size mm.
        scale: it is drawn at.
        outline: box round the view's own marks (x0, y0, x1, y1), paper mm from the view's (0, 0).
        room: box round everything, rows, figures, balloons and title included, paper mm from the view's (0, 0).
        placed: ids of the facts it tells, in order.
        unplaced: the facts that it had no room for.
    """

    drawing: Drawing
    scale: float
    outline: tuple[float, float, float, float]
    room: tuple[float, float, float, float]
    placed: tuple[str, ...]
    unplaced: tuple[Unplaced, ...]

    @property
    def width(self) -> float:
        """Of the room, paper mm."""
        return self.room[2] - self.room[0]

    @property
    def height(self) -> float:
        """Of the room, paper mm."""
        return self.room[3] - self.room[1]
