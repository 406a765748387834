"""A second program, which knows nothing but `facts`, makes each board's wood again and finds the same.

It shares no code with the solids of the program: outlines are read from the JSON text, arcs are laid out from their
bulges as the DXF reference defines them (tangent of a quarter of the angle), the library cuts.
"""

from __future__ import annotations

import json
import math
from typing import Any

import manifold3d
import numpy as np
import pytest

from shopdraw.build import build
from shopdraw.build.cannot import CannotBuild
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece
from shopdraw.shipped import sample_names, sample_path
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.solid import placed_solid
from shopdraw.write.facts import facts
from tests.build.designs import random_design
from tests.build.kinds import random_kind

CHORD_MM = 0.001
DESIGN_CHORD_MM = 0.002
"""How far chords of the program's solids may lie off their arcs."""
Ring = list[list[float]]


def laid_out(ring: Ring) -> tuple[list[tuple[float, float]], float]:
    """Corners with arcs as chords, and the length of all arcs."""
    points: list[tuple[float, float]] = []
    arcs = 0.0
    for (x0, y0, bulge), (x1, y1, _) in zip(ring, ring[1:] + ring[:1], strict=True):
        points.append((x0, y0))
        if bulge:
            angle = 4 * math.atan(bulge)
            chord = math.hypot(x1 - x0, y1 - y0)
            radius = chord / (2 * math.sin(abs(angle) / 2))
            arcs += radius * abs(angle)
            # the centre stands left of the chord for a positive bulge up to a half turn
            high = chord / 2 / math.tan(angle / 2)
            cx = (x0 + x1) / 2 - high * (y1 - y0) / chord
            cy = (y0 + y1) / 2 + high * (x1 - x0) / chord
            steps = max(2, math.ceil(abs(angle) / (2 * math.acos(1 - min(CHORD_MM / radius, 1.0)))))
            start = math.atan2(y0 - cy, x0 - cx)
            for k in range(1, steps):
                at = start + angle * k / steps
                points.append((cx + radius * math.cos(at), cy + radius * math.sin(at)))
    return points, arcs


def prism(rings: list[Ring], low: float, high: float) -> manifold3d.Manifold:
    """Straight up between two heights."""
    section = manifold3d.CrossSection([laid_out(ring)[0] for ring in rings], manifold3d.FillRule.EvenOdd)
    return manifold3d.Manifold.extrude(section, high - low).translate((0.0, 0.0, low))


def on_face(board: dict[str, Any], cut: dict[str, Any]) -> np.ndarray:
    """Rows of a matrix from (a, b, out of the face) to the board's u, v, w."""
    length, width, thickness = (board[f"{name}_mm"] for name in ("length", "width", "thickness"))
    return np.array(
        {
            "face": [[1, 0, 0, 0], [0, 1, 0, 0], [0, 0, 1, 0]],
            "back": [[1, 0, 0, 0], [0, 1, 0, 0], [0, 0, -1, -thickness]],
            "near": [[1, 0, 0, 0], [0, 0, -1, 0], [0, 1, 0, 0]],
            "far": [[1, 0, 0, 0], [0, 0, 1, width], [0, 1, 0, 0]],
            "foot": [[0, 0, -1, 0], [1, 0, 0, 0], [0, 1, 0, 0]],
            "head": [[0, 0, 1, length], [1, 0, 0, 0], [0, 1, 0, 0]],
            "tilted": None if cut["frame"] is None else np.array(cut["frame"]).reshape(3, 4),
        }[cut["face"]],
        dtype=float,
    )


def rebuilt(board: dict[str, Any]) -> manifold3d.Manifold:
    """A board's wood in its own frame: its blank less its cuts."""
    wood = prism([board["outline_mm"]], -board["thickness_mm"], 0.0)
    for cut in board["cuts"]:
        body = prism([cut["outline_mm"], *cut["islands_mm"]], -cut["start_mm"] - cut["depth_mm"], -cut["start_mm"])
        wood -= body.transform(on_face(board, cut))
    return wood


def taken_up(board: dict[str, Any], wood: manifold3d.Manifold) -> manifold3d.Manifold:
    """Wood in the world moved into the board's frame, by the inverse of its placement.

    Square to the axes two woods are compared more soundly: leaning ones whose faces lie within rounding of each other
    have led the library's cut astray.
    """
    placement = np.array(board["placement"], dtype=float).reshape(3, 4)
    turn, at = placement[:, :3], placement[:, 3]
    return wood.transform(np.hstack([turn.T, (-turn.T @ at)[:, None]]))


def allowed(board: dict[str, Any]) -> float:
    """1 mm³, and two thirds of the chords' distance from their arcs along all arcs of both programs."""
    arcs = laid_out(board["outline_mm"])[1] * board["thickness_mm"]
    arcs += sum(
        laid_out(ring)[1] * cut["depth_mm"] for cut in board["cuts"] for ring in (cut["outline_mm"], *cut["islands_mm"])
    )
    return 1.0 + 2 / 3 * (CHORD_MM + DESIGN_CHORD_MM) * arcs


def differing(design: Design, assembly: Assembly) -> list[str]:
    """Boards that come out otherwise, with the volume in which they differ."""
    told = json.loads(json.dumps(facts(design, assembly, ())))
    found = []
    seen: set[str] = set()
    for board in told["boards"]:
        known = json.dumps([board["outline_mm"], board["thickness_mm"], board["cuts"]])
        if known in seen:
            continue
        seen.add(known)
        mine, theirs = rebuilt(board), taken_up(board, placed_solid(assembly.board(board["id"])))
        off = float((mine - theirs).volume()) + float((theirs - mine).volume())
        if off > allowed(board):
            found.append(f"{board['id']}: {off:.2f} mm³, allowed {allowed(board):.2f}")
    return found


@pytest.mark.parametrize("name", sample_names())
def test_each_board_of_a_sample_is_rebuilt_from_facts_alone(name: str) -> None:
    design = read_piece(sample_path(name)).design
    assembly = build(design)
    assert differing(design, assembly) == []


@pytest.mark.parametrize("kind", ["slant-desk", "chest", "bookcase", "lectern", "free"])
def test_each_board_of_random_pieces_is_rebuilt_from_facts_alone(kind: str) -> None:
    built = 0
    for seed in range(300, 308):
        design = random_design(seed) if kind == "slant-desk" else random_kind(kind, seed)
        try:
            assembly = build(design)
        except CannotBuild:
            continue
        assert differing(design, assembly) == [], seed
        built += 1
    assert built >= 4


def test_the_second_program_sees_a_forgotten_cut() -> None:
    design = read_piece(sample_path(sample_names()[0])).design
    assembly = build(design)
    board = facts(design, assembly, ())["boards"][0]
    whole = rebuilt(board).volume()
    board["cuts"] = board["cuts"][1:]
    assert rebuilt(board).volume() > whole + 1.0


def test_arcs_are_laid_out_as_half_and_quarter_circles() -> None:
    round_hole, run = laid_out([[0.0, 0.0, 1.0], [10.0, 0.0, 1.0]])
    assert run == pytest.approx(math.pi * 10.0)
    assert all(math.hypot(x - 5.0, y) == pytest.approx(5.0) for x, y in round_hole)
