"""All that the canvas shows, as one value: views, figures, handles, what lies over and under them. Knows no Qt."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from shopdraw.drawing.mark import Mark
from shopdraw.editor.arrangement import Standing
from shopdraw.editor.figure import Figure
from shopdraw.editor.handle import Handle
from shopdraw.editor.shown_size import Shown
from shopdraw.view.draft import DraftFace

Views = dict[str, tuple[Mark, ...]]
"""View id to marks in the view's own plane, true-size mm."""


@dataclass(frozen=True, slots=True)
class Layers:
    """What is shown beside the visible lines; each can be turned on and off."""

    hidden: bool = True
    dimensions: bool = True
    dados: bool = False
    swing: bool = False
    travel: bool = False
    section: bool = False
    overlay: str = ""
    """Name of a proportion overlay, or ""."""


def with_layer(layers: Layers, name: str, *, shown: bool) -> Layers:
    """The layers with one of them turned on or off.

    Args:
        layers: as they are.
        name: "hidden", "dimensions", "dados", "swing", "travel" or "section".
        shown: whether it is wanted.
    """
    return Layers(
        shown if name == "hidden" else layers.hidden,
        shown if name == "dimensions" else layers.dimensions,
        shown if name == "dados" else layers.dados,
        shown if name == "swing" else layers.swing,
        shown if name == "travel" else layers.travel,
        shown if name == "section" else layers.section,
        layers.overlay,
    )


@dataclass(frozen=True)
class Scene:
    """One picture of the canvas.

    Attributes:
        standings: where each view stands.
        faces: of each view, from the back to the front: the draft, and what the pointer meets.
        lines: the full views; None while only the draft is there.
        figures: dimensions.
        handles: what can be taken hold of.
        shown: how sizes are shown.
        style: "iso" or "asme", of the dimensions.
        over: further marks of each view by layer: "dados", "swing", "travel", "overlay".
    """

    standings: Mapping[str, Standing] = field(default_factory=dict)
    faces: Mapping[str, tuple[DraftFace, ...]] = field(default_factory=dict)
    lines: Mapping[str, tuple[Mark, ...]] | None = None
    figures: tuple[Figure, ...] = ()
    handles: tuple[Handle, ...] = ()
    shown: Shown | None = None
    style: str = "iso"
    over: Mapping[str, Mapping[str, tuple[Mark, ...]]] = field(default_factory=dict)

    def board_at(self, view: str, point: tuple[float, float]) -> str:
        """The board that is seen at a point of a view's plane, or ""."""
        for face in reversed(self.faces.get(view, ())):
            if not face.cut and _inside(face.points, point):
                return face.board
        return ""


def _inside(points: tuple[tuple[float, float], ...], point: tuple[float, float]) -> bool:
    x, y = point
    inside = False
    before = points[-1]
    for here in points:
        if (here[1] > y) != (before[1] > y):
            at = here[0] + (y - here[1]) * (before[0] - here[0]) / (before[1] - here[1])
            if x < at:
                inside = not inside
        before = here
    return inside
