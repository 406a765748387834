"""Mouldings at full size: one detail for each profile that the piece has, where a section cuts across it."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from shopdraw.build.profile import QUIRK, told_of
from shopdraw.drawing.mark import ArcMark
from shopdraw.lists.figures import Figures
from shopdraw.sheet.details import Detail, radius_in_steps
from shopdraw.sheet.fact import Fact, Rank
from shopdraw.sheet.joint_body import corners_of_cut, is_cut, on_plane
from shopdraw.sheet.moulding_note import KIND
from shopdraw.sheet.places import Places
from shopdraw.sheet.planes import CuttingPlane
from shopdraw.sheet.telling import note_at
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Cut
from shopdraw.wood.prism import cut_prism

NAME = "d14"
AROUND_MM = 18.0
SQUARE = 0.999
NEAR_MM = 0.05


def moulding_details(assembly: Assembly, planes: Sequence[CuttingPlane]) -> Iterator[Detail]:
    """d14a, d14b, …: each profile once, on the first board that a section cuts square across it."""
    told: set[tuple[object, ...]] = set()
    for board in assembly.boards:
        for cut in board.shape.cuts:
            if cut.kind != KIND or _profile(cut) in told:
                continue
            plane = next((p for p in planes if _across(board, cut, p)), None)
            if plane is not None:
                x0, y0, x1, y1 = on_plane(corners_of_cut(board, cut), plane)
                reach = math.hypot(x1 - x0, y1 - y0) / 2 + AROUND_MM
                name = f"{NAME}{chr(ord('a') + len(told))}"
                told.add(_profile(cut))
                centre = ((x0 + x1) / 2, (y0 + y1) / 2)
                yield Detail(name, plane, centre, radius_in_steps(reach), board=board.id)


def moulding_facts(places: Places, details: Sequence[Detail], figures: Figures) -> Iterator[Fact]:
    """In words at each profile: its name, how far it reaches over the face and down the edge, its radius and steps."""
    for detail in details:
        if not detail.name.startswith(NAME):
            continue
        board = places.assembly.board(detail.board)
        cut = next(c for c in board.shape.cuts if c.kind == KIND and _is_round(board, c, detail))
        told = told_of(cut.outline)
        words = f"{told.name} {figures.size(told.across)} × {figures.size(told.deep)}"
        if told.name == QUIRK:
            words = f"quirk {figures.size(told.step)} wide; bead R {figures.size(told.radius)}"
        elif told.radius > NEAR_MM:
            words += f", R {figures.size(told.radius)}"
            words += f", steps {figures.size(told.step)}" if told.step > NEAR_MM else ""
        at = _on_curve(places, detail)
        place = places.point(f"{detail.name}:profile", {detail.view: at})
        yield note_at(f"profile:{detail.name}", place, words, Rank.RADIUS, (detail.view,), board=board.id)


def _profile(cut: Cut) -> tuple[object, ...]:
    told = told_of(cut.outline)
    sizes = sorted((round(told.across, 2), round(told.deep, 2)))
    return (told.name, *sizes, round(told.radius, 2), round(told.step, 2))


def _across(board: Board, cut: Cut, plane: CuttingPlane) -> bool:
    """Whether a plane cuts a moulding square to its run."""
    prism = cut_prism(board.shape.outline, board.shape.thickness, cut)
    run = board.frame.direction(prism.frame.w)
    toward = plane.plane.direction.toward
    square = abs(sum(a * b for a, b in zip(run, toward, strict=True))) > SQUARE
    return square and is_cut(corners_of_cut(board, cut), plane)


def _is_round(board: Board, cut: Cut, detail: Detail) -> bool:
    """Whether a detail stands round a moulding."""
    if not _across(board, cut, detail.plane):
        return False
    x0, y0, x1, y1 = on_plane(corners_of_cut(board, cut), detail.plane)
    return math.dist(((x0 + x1) / 2, (y0 + y1) / 2), detail.centre) < NEAR_MM


def _on_curve(places: Places, detail: Detail) -> tuple[float, float]:
    """The middle of the profile's arc nearest to the detail's centre; of a straight profile the centre."""
    seen = next(view for view in places.views if view.id == detail.view)
    middles = []
    for mark in seen.marks:
        if isinstance(mark, ArcMark) and mark.board == detail.board:
            turn = math.radians((mark.start_deg + mark.end_deg) / 2)
            x, y = mark.centre
            middles.append((x + mark.radius * math.cos(turn), y + mark.radius * math.sin(turn)))
    return min(middles, key=lambda p: (round(math.dist(p, detail.centre), 3), p), default=detail.centre)
