"""Cells: which boards share one, what stands over it, and how cells are packed."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from shopdraw.build import build
from shopdraw.piece.reading import read_piece
from shopdraw.shape.path import rectangle
from shopdraw.sheet.arrange import FreeArea
from shopdraw.sheet.cell import GROUPS, Cell, cells, group_of
from shopdraw.sheet.cell_heading import heading_lines
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.part_page import BETWEEN_CELLS, fits_alone
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Cut, Face, Shape
from shopdraw.wood.part import mirrored

SAMPLE = Path(__file__).parents[2] / "sample_projects" / "chart-room-desk.piece"


@lru_cache
def sample() -> tuple[Assembly, tuple[Cell, ...]]:
    piece = read_piece(SAMPLE)
    assembly = build(piece.design)
    return assembly, cells(assembly, manner_of(piece.design).writing)


def cell_of(board: str) -> Cell:
    return next(c for c in sample()[1] if any(b.id == board for part in (*c.parts, *c.mirrored) for b in part.boards))


def heading(board: str) -> tuple[str, ...]:
    return heading_lines(cell_of(board), sample()[0], ())


def test_cells_come_in_the_order_of_the_groups() -> None:
    numbers = [cell.group for cell in sample()[1]]
    assert numbers == sorted(numbers)
    one_of_each = ("side", "top", "frame.front", "drawer.side", "lid", "partition", "plinth")
    assert [group_of(name) for name in one_of_each] == list(range(len(GROUPS)))


def test_drawer_sides_alike_but_for_their_width_share_a_view_and_a_table() -> None:
    cell = cell_of("drawer.1.side-left")
    assert cell.varies == "width"
    assert len(cell.parts) == len(cell.mirrored) == 3
    lines = heading("drawer.1.side-left")
    rows = [line for line in lines if ": W " in line]
    widths = [f"{part.first.width:.1f}".removesuffix(".0") for part in cell.parts]
    assert [row.split(": W ")[1].split(",")[0] for row in rows] == widths


def test_case_06_overall_length_and_between_shoulders_stand_together() -> None:
    board = sample()[0].board("shelf.writing")
    assert board.between_shoulders is not None
    text = " ".join(heading("shelf.writing"))
    assert f"× {board.length:g}; between shoulders {board.between_shoulders:g}" in text


def test_case_60_sizes_stand_in_one_order_thickness_width_length() -> None:
    for cell in sample()[1]:
        (line,) = [line for line in heading_lines(cell, sample()[0], ()) if line.startswith("T × W × L")]
        board = cell.board
        told = line.removeprefix("T × W × L ").split(";")[0].split(" × ")
        exact = [board.thickness, board.width, board.length]
        for figure, size in zip(told, exact, strict=True):
            assert figure in ("W", "L") or abs(float(figure) - size) <= 0.0501


def test_a_bevelled_top_says_how_wide_to_cut_it_first() -> None:
    slant = sample()[0].slant
    assert slant is not None
    assert f"blank: cut {slant.top_blank_depth_mm:.1f} wide before the bevels" in heading("top")


def test_the_other_hand_keeps_foot_and_face_and_changes_the_edge() -> None:
    left = Shape(
        rectangle(0, 0, 800, 400),
        20.0,
        (
            Cut("rabbet", Face.FACE, 0.0, 6.0, rectangle(0, 0, 800, 10)),
            Cut("mortise", Face.NEAR, 0.0, 9.0, rectangle(5, -8, 9, -4)),
        ),
    )
    right = mirrored(left)
    assert right.cuts[0].outline.corners[0].y == 390.0
    assert right.cuts[1].face is Face.FAR
    assert right.cuts[1].outline == left.cuts[1].outline
    assert mirrored(right).cuts[0].outline.corners[0].y == 0.0


def test_a_page_holds_a_cell_only_off_the_title_block() -> None:
    area = FreeArea((10, 10, 400, 280), (200, 10, 400, 80))
    assert fits_alone(390, 200, area)
    assert not fits_alone(390, 201, area)
    assert fits_alone(190, 270, area)
    assert BETWEEN_CELLS >= 20.0
