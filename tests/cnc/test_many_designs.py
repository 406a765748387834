"""Rules of router files over two hundred random desks: a share of each one's parts, read by two readers.

GDAL reads outlines as shapes, the tests' own tag reader reads the file's text; neither knows the writer.
"""

import math
from collections import Counter
from pathlib import Path

import pytest
import shapely

from shopdraw.build.build import build
from shopdraw.build.cannot import CannotBuild
from shopdraw.cnc.flat import is_layer_name
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.cnc.setting import Setting
from shopdraw.shape.path import arc_of, perimeter
from shopdraw.shape.region import region_area, sides_of
from shopdraw.wood.part import parts
from tests.build.designs import random_design
from tests.cnc.router_reader import on, read, written
from tests.write.dxf_tags import Entity, entities_of

DESIGNS = 200
GRID = {"mm": 0.001, "in": 0.00001}
CUT_KINDS = {"LWPOLYLINE", "CIRCLE"}


def some_parts(seed: int) -> list[RouterPart]:
    """Two parts of a desk, others for each seed; none where it can't be built."""
    design = random_design(seed)
    try:
        own = parts(build(design).boards)
    except CannotBuild:
        return []
    return [router_part(own[(seed * 7 + step * 11) % len(own)], design) for step in range(2)]


@pytest.mark.parametrize("first", range(0, DESIGNS, 25))
def test_files_of_random_desks_keep_every_rule(first: int, tmp_path: Path) -> None:
    seen = 0
    for seed in range(first, first + 25):
        for made in some_parts(seed):
            counts_add_up(made)
            for setting in made.settings:
                data = written(setting.flat)
                by_tags(made, setting, entities_of(data, "ENTITIES"))
                by_shapes(made, setting, data, tmp_path)
                seen += 1
    assert seen > 30


def counts_add_up(made: RouterPart) -> None:
    in_files = {index for setting in made.settings for index in setting.cuts}
    assert len(in_files) + len(made.second) == len(made.part.first.shape.cuts), made.part.id
    assert sum(setting.flat.cut_outline for setting in made.settings) == 1
    for setting in made.settings:
        assert all(run > radius for run, radius in setting.runs), made.part.id


def by_tags(made: RouterPart, setting: Setting, entities: list[Entity]) -> None:
    layers = Counter(e.get(8) for e in entities)
    assert all(layer is not None and is_layer_name(layer) for layer in layers)
    assert {layer.name for layer in setting.layers} | {"NOTE", "STOCK"} == set(layers)
    assert all(layers[layer.name] == layer.count for layer in setting.layers)
    for e in entities:
        assert float(e.get(30) or 0) == float(e.get(38) or 0) == float(e.get(39) or 0) == 0.0
        if e.get(8) == "NOTE":
            assert e.kind in ("LINE", "ARC", "TEXT")
            continue
        if (e.get(8) or "").startswith("VEE_"):
            assert e.kind in ("LINE", "ARC"), "a V-groove is the way of its cutter's point"
            continue
        assert e.kind in CUT_KINDS, "removing notes and stock leaves only cuts"
        if e.kind == "LWPOLYLINE":
            assert int(e.get(70) or 0) & 1
            assert len(set(zip(e.all(10), e.all(20), strict=True))) == len(e.all(10)), "no point twice"


def by_shapes(made: RouterPart, setting: Setting, data: bytes, folder: Path) -> None:
    found = read(folder, data)
    unit = 25.4 if made.unit.value == "in" else 1.0
    lines: dict[str, list[shapely.Geometry]] = {}
    for layer, shape, _ in found:
        if layer not in ("NOTE", "STOCK") and not layer.startswith("VEE_"):
            assert shape.geom_type == "Polygon", "closed"
            lines.setdefault(layer, []).append(shape.exterior)
    for layer, own in lines.items():
        for i, line in enumerate(own):
            for other in own[i + 1 :]:
                assert line.intersection(other).length * unit < 0.01, (made.part.id, layer)
            if layer.startswith("SINK") and "THROUGH_ALL" in lines:
                assert line.intersection(lines["THROUGH_ALL"][0]).length * unit < 0.01, (made.part.id, layer)
    if setting.flat.cut_outline:
        area = (on(found, "THROUGH_ALL").area - on(found, "INSIDE_ALL").area - on(found, "HOLE_ALL").area) * unit**2
        run = sum(map(perimeter, made.outline))
        # the reader's chords of half a degree lie at most 1e-5 of a radius off their arcs
        chords = sum(
            1e-5 * arc_of(a.start, a.end, a.bulge).radius * math.dist(a.start, a.end)
            for path in made.outline
            for a in sides_of(path)
            if a.bulge
        )
        grid = run * GRID[made.unit.value] * unit
        assert area == pytest.approx(region_area(made.outline), abs=grid + 1.1 * chords + 0.05)
