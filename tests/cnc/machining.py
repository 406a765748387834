"""A router as a judge: cutters swept by another library over what files read by another library let them reach.

GDAL reads the files, Clipper2 (in manifold3d) sweeps the discs: neither has a part in making them.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import numpy as np
import shapely
from manifold3d import CrossSection, FillRule, JoinType

from shopdraw.cnc.cutter import Cutter
from shopdraw.cnc.part import RouterPart
from shopdraw.cnc.setting import LayerUse, Setting
from shopdraw.wood.board import Face
from tests.cnc.router_reader import read, written

EASE_MM = 1e-3
"""A cutter fills a groove of its own width; chords of the reader make that groove a hair narrower."""
WASTE_MM = 60.0
VEE_SLICES = 40


def section(shape: shapely.Geometry) -> CrossSection:
    """A shape of the reader's as Clipper2 has it."""
    rings = []
    for piece in shapely.get_parts(shape):
        if piece.geom_type == "Polygon":
            rings += [np.array(ring.coords)[:-1, :2] for ring in (piece.exterior, *piece.interiors)]
    return CrossSection(rings, FillRule.EvenOdd) if rings else CrossSection()


def swept(shape: CrossSection, radius: float) -> CrossSection:
    """What a disc covers that is kept inside a shape."""
    r = radius - EASE_MM
    return shape.offset(-r, JoinType.Round, circular_segments=128).offset(r, JoinType.Round, circular_segments=128)


Taken = tuple[float, float, CrossSection]


def wood_left(made: RouterPart, job: tuple[Cutter, ...], folder: Path) -> float:
    """Volume of the wood that the files of a part leave of its blank's box, cut by the cutters that the sheet names."""
    board = made.part.first
    radius = {cutter.id: cutter.diameter / 2 for cutter in job}
    taken = [one for setting in made.settings for one in _taken(made, setting, radius, folder)]
    blank = section(shapely.box(0.0, 0.0, board.length, board.width))
    levels = sorted({-board.thickness, 0.0, *(level for low, high, _ in taken for level in (low, high))})
    total = 0.0
    for low, high in pairwise(levels):
        here = blank
        for a, b, gone in taken:
            if a < (low + high) / 2 < b:
                here = here - gone
        total += here.area() * (high - low)
    return total


def _taken(made: RouterPart, setting: Setting, radius: dict[str, float], folder: Path) -> Iterator[Taken]:
    """What each layer of a file takes away, between two levels."""
    board = made.part.first
    unit = 25.4 if made.unit.value == "in" else 1.0
    flip = setting.face is Face.BACK
    upright = [unit, 0, 0, -unit, 0, board.width] if flip else [unit, 0, 0, unit, 0, 0]
    found = read(folder, written(setting.flat))
    for layer in setting.layers:
        verb = layer.name.split("_")[0]
        area: shapely.Geometry = shapely.Polygon()
        for name, shape, _ in found:
            if name == layer.name:
                area = area.symmetric_difference(shapely.affinity.affine_transform(shape, upright))
        low, high = (-board.thickness, layer.depth - board.thickness) if flip else (-layer.depth, 0.0)
        if layer.name.endswith("_ALL"):
            low, high = -board.thickness, 0.0
        if verb == "THROUGH":
            x0, y0, x1, y1 = area.bounds
            area = shapely.box(x0 - WASTE_MM, y0 - WASTE_MM, x1 + WASTE_MM, y1 + WASTE_MM).difference(area)
        if verb == "HOLE":
            yield low, high, section(area)
        elif verb == "VEE":
            lines = [shape for name, shape, _ in found if name == layer.name]
            yield from _vee(layer, lines, upright, board.thickness, flip)
        elif verb in ("THROUGH", "INSIDE", "SINK") and layer.cutter in radius:
            yield low, high, swept(section(area), radius[layer.cutter])


def _vee(
    layer: LayerUse, lines: list[shapely.Geometry], upright: list[float], thickness: float, flip: bool
) -> Iterator[Taken]:
    """A cone on its way along lines, in thin slices: it narrows evenly, so a slice's middle speaks for it."""
    tangent = math.tan(math.radians(int(layer.name.split("_")[2]) / 2))
    middle = shapely.union_all([shapely.affinity.affine_transform(line, upright) for line in lines])
    step = layer.depth / VEE_SLICES
    for i in range(VEE_SLICES):
        low, high = i * step, (i + 1) * step
        here = section(middle.buffer((low + high) / 2 * tangent, quad_segs=32))
        from_face = (low - layer.depth, high - layer.depth)
        from_back = (layer.depth - thickness - high, layer.depth - thickness - low)
        yield *(from_back if flip else from_face), here
