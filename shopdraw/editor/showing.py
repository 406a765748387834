"""From a state to the scene that the canvas shows. Knows no Qt."""

from __future__ import annotations

from collections.abc import Mapping

from shopdraw.drawing.bounds import marks_box
from shopdraw.drawing.mark import Mark
from shopdraw.editor.arrangement import DIRECTIONS, SECTION, Box, arrange, third_angle
from shopdraw.editor.figures import figures_of
from shopdraw.editor.handles import handles_of
from shopdraw.editor.motion import dado_marks, motion_marks
from shopdraw.editor.overlay import overlay_marks
from shopdraw.editor.scene import Layers, Scene, Views
from shopdraw.editor.shown_size import shown_for
from shopdraw.editor.state import State
from shopdraw.piece.design import Design
from shopdraw.view.direction import RIGHT_SIDE
from shopdraw.view.draft import DraftFace, draft
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

MOVING = ("swing", "travel")
"""Layers whose marks reach out of the case."""
GAP_PART, LEAST_GAP_MM = 0.24, 180.0
"""Between the views: a part of the front view's diagonal half, and never less than that."""


def scene_of(state: State, layers: Layers, decimal_sign: str, lines: Views | None = None) -> Scene:
    """What the canvas shows of a state.

    Args:
        state: sound: read and built.
        layers: what is wanted beside the visible lines.
        decimal_sign: the reader's.
        lines: full views, once they are there.
    Raises:
        ValueError: the state isn't sound.
    """
    design, assembly = state.design, state.assembly
    if design is None or assembly is None:
        raise ValueError("only a piece that can be built is shown")
    faces: dict[str, tuple[DraftFace, ...]] = {
        view: draft(assembly.boards, direction) for view, direction in DIRECTIONS.items()
    }
    if layers.section:
        middle = assembly.width / 2
        left = [board for board in assembly.boards if reach_across(board)[0] < middle]
        faces[SECTION] = draft(left, RIGHT_SIDE)
    over = over_marks(state, layers, decimal_sign)
    return Scene(
        standings=arrange(
            assembly,
            third=third_angle(design),
            gap=gap_of(assembly),
            section=layers.section,
            moving=moving_boxes(over),
        ),
        faces=faces,
        lines=lines,
        figures=figures_of(state),
        handles=handles_of(state),
        shown=shown_for(design, decimal_sign),
        style=style_of(design),
        over=over,
    )


def moving_boxes(over: Mapping[str, Mapping[str, tuple[Mark, ...]]]) -> dict[str, Box]:
    """The box of all that swings or slides, by view."""
    views = {view: [mark for layer in MOVING for mark in over.get(layer, {}).get(view, ())] for view in DIRECTIONS}
    return {view: marks_box(marks) for view, marks in views.items() if marks}


def over_marks(state: State, layers: Layers, decimal_sign: str) -> dict[str, dict[str, tuple[Mark, ...]]]:
    """The marks of the layers that are wanted, by layer and view."""
    design, assembly = state.design, state.assembly
    if design is None or assembly is None:
        return {}
    shown = shown_for(design, decimal_sign)
    made: dict[str, dict[str, tuple[Mark, ...]]] = {}
    for view, direction in DIRECTIONS.items():
        if layers.dados:
            made.setdefault("dados", {})[view] = dado_marks(assembly, direction)
        if layers.swing:
            made.setdefault("swing", {})[view] = motion_marks(assembly, direction, "turn")
        if layers.travel:
            made.setdefault("travel", {})[view] = motion_marks(assembly, direction, "slide")
        if layers.overlay:
            made.setdefault("overlay", {})[view] = overlay_marks(assembly, view, layers.overlay, shown)
    return made


def reach_across(board: Board) -> tuple[float, float]:
    """From where to where a board reaches across the piece, mm: world x."""
    corners = [
        board.frame.point((u, v, w))[0]
        for u in (0.0, board.length)
        for v in (0.0, board.width)
        for w in (0.0, -board.thickness)
    ]
    return min(corners), max(corners)


def gap_of(assembly: Assembly) -> float:
    """Room between the views, mm."""
    return max(LEAST_GAP_MM, GAP_PART * (assembly.width + assembly.height) / 2)


def style_of(design: Design) -> str:
    """The drawing style: as the piece says, else by its unit."""
    return design.drawing.style or ("asme" if design.piece.units == "inch" else "iso")
