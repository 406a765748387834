"""A router that cuts exactly what the files say leaves the board, and the wood for the second settings: by volume.

The files are read back by GDAL and cut by shapely; the board's volume comes from slabs of its own shape.
"""

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest
import shapely

from shopdraw.cnc.part import RouterPart
from shopdraw.shape.path import area, perimeter
from shopdraw.shape.region import region_area
from shopdraw.wood.board import Face
from shopdraw.wood.volume import volume_mm3
from tests.cnc.router_reader import SAMPLES, on, piece, read, router_parts, written

GRID_MM = {"mm": 0.001, "in": 0.00001 * 25.4}


def wood_left(made: RouterPart, folder: Path) -> tuple[float, float]:
    """Wood after both settings, mm³, and what a grid's rounding may change of it."""
    board = made.part.first
    scale = 25.4 if made.unit.value == "in" else 1.0
    pockets: list[tuple[float, float, shapely.Geometry]] = []
    edge: shapely.Geometry = None
    for setting in made.settings:
        found = read(folder, written(setting.flat))
        flip = 1.0 if setting.face is Face.FACE else -1.0

        def upright(shape: shapely.Geometry, flip: float = flip) -> shapely.Geometry:
            """In mm, as seen on the reference face."""
            return shapely.affinity.affine_transform(
                shape, [scale, 0, 0, flip * scale, 0, 0 if flip > 0 else board.width]
            )

        if setting.flat.cut_outline:
            edge = upright(on(found, "THROUGH_ALL")).difference(upright(on(found, "INSIDE_ALL")))
            edge = edge.difference(upright(on(found, "HOLE_ALL")))
        for layer in setting.layers:
            if layer.name.startswith(("SINK", "HOLE")) and not layer.name.endswith("ALL"):
                low, high = (-layer.depth, 0.0) if setting.face is Face.FACE else (
                    -board.thickness, layer.depth - board.thickness
                )  # fmt: skip
                pockets.append((low, high, upright(on(found, layer.name))))
    levels = sorted({-board.thickness, 0.0, *(level for low, high, _ in pockets for level in (low, high))})
    total = 0.0
    for low, high in pairwise(levels):
        gone = shapely.union_all([shape for a, b, shape in pockets if a < (low + high) / 2 < b])
        total += edge.difference(gone).area * (high - low)
    # every outline may be off by the grid all along; chords of the reader lie inside their arcs
    run = edge.length + sum(shape.length for _, _, shape in pockets)
    # a round hole read as 720 chords is smaller by 1.3e-5 of its area
    return total, run * board.thickness * (GRID_MM[made.unit.value] + 0.0001) + 1.0


@pytest.mark.parametrize("sample", SAMPLES)
def test_what_the_files_leave_is_the_board_and_the_wood_for_second_settings(sample: str, tmp_path: Path) -> None:
    for made in router_parts(sample):
        board = made.part.first
        in_files = {index for setting in made.settings for index in setting.cuts}
        flat = replace(board.shape, cuts=tuple(cut for i, cut in enumerate(board.shape.cuts) if i in in_files))
        left, allowed = wood_left(made, tmp_path)
        tenons = sum(wood.volume for wood in made.corners if wood.what.startswith("round"))
        assert left == pytest.approx(volume_mm3(flat) + tenons, abs=allowed), board.id
        assert left >= volume_mm3(board.shape) - allowed, "wood is left on for the second setting, never taken"


@pytest.mark.parametrize("sample", SAMPLES)
def test_every_cut_is_in_a_file_or_in_the_second_setting_table(sample: str) -> None:
    _, assembly = piece(sample)
    counted = 0
    for made in router_parts(sample):
        board = made.part.first
        in_files = {index for setting in made.settings for index in setting.cuts}
        assert len(in_files) + len(made.second) == len(board.shape.cuts), board.id
        assert {made_id.cut for made_id in made.second} == {
            board.cut_ids[i] for i in range(len(board.shape.cuts)) if i not in in_files
        }
        counted += (len(in_files) + len(made.second)) * made.part.quantity
    assert counted == sum(len(board.shape.cuts) for board in assembly.boards)


@pytest.mark.parametrize("sample", SAMPLES)
def test_outline_has_the_area_of_the_facts_within_perimeter_times_grid(sample: str, tmp_path: Path) -> None:
    for made in router_parts(sample):
        board, setting = made.part.first, made.settings[-1]
        scale = 25.4 if made.unit.value == "in" else 1.0
        found = read(tmp_path, written(setting.flat))
        allowed = perimeter(board.shape.outline) * GRID_MM[made.unit.value]
        cut_out = on(found, "THROUGH_ALL").area - on(found, "INSIDE_ALL").area - on(found, "HOLE_ALL").area
        holes = sum(perimeter(path) for path in made.outline) * 1e-3
        assert cut_out * scale**2 == pytest.approx(region_area(made.outline), abs=allowed + holes)
        if not any(cut.depth >= board.thickness - 1e-6 or cut.kind == "tenon" for cut in board.shape.cuts):
            assert on(found, "THROUGH_ALL").area * scale**2 == pytest.approx(area(board.shape.outline), abs=allowed)
