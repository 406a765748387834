"""A router as a judge: cutters swept by another library over what files read by another library let them reach.

GDAL reads the files, Clipper2 (in manifold3d) sweeps the discs: neither has a part in making them.
"""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import numpy as np
import shapely
from manifold3d import CrossSection, FillRule, JoinType

from shopdraw.cnc.cutter import Cutter
from shopdraw.cnc.part import RouterPart
from shopdraw.wood.board import Face
from tests.cnc.router_reader import read, written

EASE_MM = 1e-3
"""A cutter fills a groove of its own width; chords of the reader make that groove a hair narrower."""
WASTE_MM = 60.0


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


def wood_left(made: RouterPart, job: tuple[Cutter, ...], folder: Path) -> float:
    """Volume of the wood that the files of a part leave of its blank's box, cut by the cutters that the sheet names."""
    board = made.part.first
    unit = 25.4 if made.unit.value == "in" else 1.0
    radius = {cutter.id: cutter.diameter / 2 for cutter in job}
    taken: list[tuple[float, float, CrossSection]] = []
    for setting in made.settings:
        found = read(folder, written(setting.flat))
        flip = setting.face is Face.BACK

        def upright(shape: shapely.Geometry, flip: bool = flip) -> shapely.Geometry:
            down = [unit, 0, 0, -unit, 0, board.width] if flip else [unit, 0, 0, unit, 0, 0]
            return shapely.affinity.affine_transform(shape, down)

        for layer in setting.layers:
            shapes = [upright(shape) for name, shape, _ in found if name == layer.name]
            verb = layer.name.split("_")[0]
            if verb in ("MARK", "VEE"):
                continue
            if layer.name == "THROUGH_ALL":
                (outline,) = shapes
                x0, y0, x1, y1 = outline.bounds
                waste = shapely.box(x0 - WASTE_MM, y0 - WASTE_MM, x1 + WASTE_MM, y1 + WASTE_MM).difference(outline)
                taken.append((-board.thickness, 0.0, swept(section(waste), radius[layer.cutter])))
                continue
            whole = layer.name.endswith("_ALL")
            low, high = (-layer.depth, 0.0) if not flip else (-board.thickness, layer.depth - board.thickness)
            if whole:
                low, high = -board.thickness, 0.0
            area: shapely.Geometry = shapely.Polygon()
            for shape in shapes:
                area = area.symmetric_difference(shape)
            if verb == "HOLE":
                taken.append((low, high, section(area)))
            elif layer.cutter in radius:
                taken.append((low, high, swept(section(area), radius[layer.cutter])))
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
