"""Reads router files with GDAL: layers, shapes, texts; and the samples as router parts."""

from __future__ import annotations

import io
from functools import lru_cache
from pathlib import Path

import pyogrio
import pyogrio.raw
import shapely
from shapely.geometry import Polygon

from shopdraw.build.build import build
from shopdraw.cnc.flat import FlatPart, Unit
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece
from shopdraw.shipped import sample_names, sample_path
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.part import parts
from shopdraw.write.router import write_router_file

SAMPLES = tuple(sample_names())


@lru_cache
def piece(sample: str) -> tuple[Design, Assembly]:
    design = read_piece(sample_path(sample)).design
    return design, build(design)


@lru_cache
def router_parts(sample: str, unit: Unit | None = None) -> tuple[RouterPart, ...]:
    design, assembly = piece(sample)
    return tuple(router_part(part, design, unit) for part in parts(assembly.boards))


def one_part(sample: str, board: str, unit: Unit | None = None) -> RouterPart:
    return next(made for made in router_parts(sample, unit) if board in [b.id for b in made.part.boards])


def written(part: FlatPart, version: str = "R2010") -> bytes:
    out = io.BytesIO()
    write_router_file(part, out, version)
    return out.getvalue()


def read(folder: Path, data: bytes) -> list[tuple[str, shapely.Geometry, str | None]]:
    """Layer, shape and text of everything in a file; closed outlines come as polygons."""
    (folder / "part.dxf").write_bytes(data)
    pyogrio.set_gdal_config_options({"OGR_ARC_STEPSIZE": "0.5"})
    info, _, shapes, fields = pyogrio.raw.read(folder / "part.dxf", CLOSED_LINE_AS_POLYGON="YES", ENCODING="UTF-8")
    names = list(info["fields"])
    layers, texts = fields[names.index("Layer")], fields[names.index("Text")]
    return [(layer, _area(shapely.from_wkb(s), layer), t) for layer, s, t in zip(layers, shapes, texts, strict=True)]


def _area(shape: shapely.Geometry, layer: str) -> shapely.Geometry:
    """GDAL gives a circle as a line that ends where it starts."""
    closed = shape.geom_type == "LineString" and shape.is_ring and layer != "NOTE"
    return Polygon(shape) if closed else shape


def on(found: list[tuple[str, shapely.Geometry, str | None]], layer: str) -> shapely.Geometry:
    """The area on a layer: outlines, less what stands inside them."""
    shape: shapely.Geometry = Polygon()
    for name, one, _ in found:
        if name == layer:
            shape = shape.symmetric_difference(one)
    return shape
