"""What cutters of the sheet's sizes leave is the board, the named corner wood and the second settings' wood.

The judge shares nothing with the files' maker: GDAL reads, Clipper2 sweeps the discs, slabs weigh the board.
"""

import math
from pathlib import Path

import pytest

from shopdraw.build.build import build
from shopdraw.build.cannot import CannotBuild
from shopdraw.cnc.cutter import Cutter, default_cutters
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.piece.design import Design
from shopdraw.shape.path import Path as Path2
from shopdraw.shape.path import arc_of, perimeter
from shopdraw.wood.part import parts
from shopdraw.wood.volume import volume_mm3
from tests.build.designs import random_design
from tests.build.kinds import KINDS, random_kind
from tests.cnc.machining import wood_left
from tests.cnc.router_reader import SAMPLES, piece, router_parts

GRID_MM = {"mm": 0.001, "in": 0.00001 * 25.4}
READER_STEP_DEG = 0.5
"""As the reader is told to lay arcs out."""


def job_of(design: Design) -> tuple[Cutter, ...]:
    return default_cutters(inch=design.piece.units == "inch")


def off(path: Path2) -> float:
    """Length of a path's arcs, each by the height of the reader's chords under it, mm²."""
    arcs = ((arc_of((a.x, a.y), (b.x, b.y), a.bulge), a.bulge) for a, b in path.pairs() if a.bulge)
    height = 1 - math.cos(math.radians(READER_STEP_DEG) / 2)
    return sum(arc.radius**2 * height * 4 * abs(math.atan(bulge)) for arc, bulge in arcs)


def judged(made: RouterPart, job: tuple[Cutter, ...], folder: Path) -> None:
    shape = made.part.first.shape
    named = volume_mm3(shape) + sum(wood.volume for wood in made.corners) + sum(one.volume for one in made.second)
    run = perimeter(shape.outline) + sum(perimeter(cut.outline) for cut in shape.cuts)
    # every line may be off by half a step of the grid; Clipper2 keeps 256 chords to a circle, and the reader lays an
    # arc out in steps of half a degree: between a chord and its arc lie two thirds of its length by its height
    allowed = run * shape.thickness * GRID_MM[made.unit.value] / 2 + 3.0
    curved = sum(off(path) for path in (shape.outline, *(cut.outline for cut in shape.cuts)))
    allowed += 2 / 3 * shape.thickness * curved
    assert wood_left(made, job, folder) == pytest.approx(named, abs=allowed), made.part.id


@pytest.mark.parametrize("sample", SAMPLES)
def test_wood_left_is_the_board_and_what_is_named(sample: str, tmp_path: Path) -> None:
    design, _ = piece(sample)
    for made in router_parts(sample):
        judged(made, job_of(design), tmp_path)


@pytest.mark.parametrize("first", range(0, 32, 8))
def test_wood_left_of_parts_of_random_desks(first: int, tmp_path: Path) -> None:
    done = 0
    for seed in range(first, first + 8):
        design = random_design(seed)
        try:
            boards = build(design).boards
        except CannotBuild:
            continue
        own = parts(boards)
        for part in own[seed % 5 :: 5]:
            judged(router_part(part, design), job_of(design), tmp_path)
            done += 1
    assert done > 20


@pytest.mark.parametrize("kind", KINDS)
def test_wood_left_of_parts_of_random_pieces_of_the_other_kinds(kind: str, tmp_path: Path) -> None:
    done = 0
    for seed in range(8):
        design = random_kind(kind, seed)
        try:
            boards = build(design).boards
        except CannotBuild:
            continue
        for part in parts(boards)[seed % 5 :: 5]:
            judged(router_part(part, design), job_of(design), tmp_path)
            done += 1
    assert done > 8


@pytest.mark.parametrize("sample", SAMPLES)
def test_corner_wood_is_little_and_each_piece_names_what_to_do(sample: str) -> None:
    for made in router_parts(sample):
        for wood in made.corners:
            assert wood.volume > 0.0
            assert wood.places > 0
            assert wood.what
            # no corner of a 12.7 mm cutter holds more than (1 − π/4) r² of a board's thickness, acute ones twice that
            assert wood.volume / wood.places < 2 * 0.2146 * 6.35**2 * made.part.first.thickness, made.part.id
