"""Flat parts of desks of any size: cut by another library they leave the board's own volume."""

import random
from dataclasses import replace
from itertools import pairwise

import pytest
import shapely
from shapely.geometry import Polygon

from shopdraw.build.build import build
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.piece.reading import parse_piece
from shopdraw.shape.path import Path, circle, flattened
from shopdraw.wood.board import Face
from shopdraw.wood.part import parts
from shopdraw.wood.volume import volume_mm3

DESK = """
format = 1
[case]
width = {width}
height = 1040
depth = {depth}
top_joint = "{top}"
dado = "{dado}"
[slant]
writing_height = 740
angle = {angle}
seat = "{seat}"
[opening.bank]
divide = {{ keys = ["1", "2", "3"], rule = "step" }}
[drawer]
front = "{front}"
front_joint = "{joint}"
[frame]
fixing = "{fixing}"
[stock.primary]
thickness = {thickness}
"""


def desk_of(seed: int) -> str:
    rng = random.Random(seed)
    return DESK.format(
        width=round(rng.uniform(650, 1150), 2),
        depth=round(rng.uniform(430, 540), 2),
        top=("dovetail", "housed")[seed % 2],
        dado=rng.choice(("stopped", "through")),
        angle=round(rng.uniform(45, 55), 2),
        seat=("on", "rabbeted", "flush")[seed % 3],
        front=rng.choice(("inset", "lipped")),
        joint=rng.choice(("tongue", "rabbet")),
        fixing=rng.choice(("front", "front-and-rear")),
        thickness=round(rng.uniform(18, 23), 2),
    )


def left_by_the_router(made: RouterPart) -> float:
    board = made.part.first
    edge: shapely.Geometry = Polygon()
    pockets: list[tuple[float, float, shapely.Geometry]] = []
    for setting in made.settings:
        flip = setting.face is Face.BACK

        def seen(path: Path, flip: bool = flip) -> shapely.Geometry:
            shape = Polygon(flattened(path, 1e-4))
            return shapely.affinity.affine_transform(shape, [1, 0, 0, -1, 0, board.width]) if flip else shape

        if setting.flat.cut_outline and setting.flat.outline is not None:
            edge = seen(setting.flat.outline)
        depths = {layer.name: layer.depth for layer in setting.layers}
        by_layer: dict[str, shapely.Geometry] = {}
        for operation in setting.flat.operations:
            drawn = operation.shape
            path = drawn if isinstance(drawn, Path) else circle(drawn.centre, drawn.radius)
            before = by_layer.get(operation.layer, Polygon())
            by_layer[operation.layer] = before.symmetric_difference(seen(path))
        for layer, shape in by_layer.items():
            low, high = (-board.thickness, depths[layer] - board.thickness) if flip else (-depths[layer], 0.0)
            pockets.append((low, high, shape))
    levels = sorted({-board.thickness, 0.0, *(level for low, high, _ in pockets for level in (low, high))})
    return sum(
        edge.difference(shapely.union_all([s for a, b, s in pockets if a < (low + high) / 2 < b])).area * (high - low)
        for low, high in pairwise(levels)
    )


@pytest.mark.parametrize("seed", range(8))
def test_flat_parts_of_any_desk_leave_the_boards_volume(seed: int) -> None:
    design = parse_piece(desk_of(seed)).design
    for part in parts(build(design).boards):
        made = router_part(part, design)
        shape = part.first.shape
        in_files = {index for setting in made.settings for index in setting.cuts}
        assert len(in_files) + len(made.second) == len(shape.cuts)
        flat = replace(shape, cuts=tuple(cut for i, cut in enumerate(shape.cuts) if i in in_files))
        tenons = sum(wood.volume for wood in made.corners if wood.what.startswith("round"))
        assert left_by_the_router(made) == pytest.approx(volume_mm3(flat) + tenons, abs=1.0), part.id
