"""The rules of a router file as functions that fail: each judged from files, by GDAL and by the tests' own tag reader.

Neither reader knows the writer, and they share no code.
"""

from __future__ import annotations

import math
from collections import Counter
from pathlib import Path

import pytest
import shapely

from shopdraw.cnc.flat import Unit, is_layer_name
from shopdraw.cnc.part import RouterPart, router_part
from shopdraw.cnc.setting import Setting
from shopdraw.piece.design import Design
from shopdraw.shape.path import arc_of, perimeter
from shopdraw.shape.region import region_area, sides_of
from shopdraw.wood.part import Part
from tests.cnc.router_reader import on, read, written
from tests.write.dxf_tags import Entity, entities_of

GRID = {"mm": 0.001, "in": 0.00001}
CUT_KINDS = {"LWPOLYLINE", "CIRCLE"}


def keeps_every_rule(made: RouterPart, folder: Path) -> int:
    """Judges all files of a part; how many there were."""
    counts_add_up(made)
    for setting in made.settings:
        data = written(setting.flat)
        by_tags(made, setting, entities_of(data, "ENTITIES"))
        by_shapes(made, setting, data, folder)
        no_side_too_short(made, data)
        both_versions_read_alike(setting, folder)
    second_is_turned(made, folder)
    return len(made.settings)


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


LEAST_SIDE_MM, LEAST_RADIUS_MM = 0.05, 0.1


def no_side_too_short(made: RouterPart, data: bytes) -> None:
    """No side under 0.05 mm, no arc tighter than 0.1 mm: a controller reads neither."""
    unit = 25.4 if made.unit.value == "in" else 1.0
    for layer, corners in _figures(data):
        for (x0, y0, bulge), (x1, y1, _) in zip(corners, (*corners[1:], corners[0]), strict=True):
            chord = math.dist((x0, y0), (x1, y1)) * unit
            assert chord >= LEAST_SIDE_MM, (made.part.id, layer)
            assert abs(bulge) <= 1.0, (made.part.id, layer)
            assert not bulge or chord * (1 + bulge**2) / (4 * abs(bulge)) >= LEAST_RADIUS_MM, (made.part.id, layer)


Figure = tuple[str, tuple[tuple[float, float, float], ...]]


def both_versions_read_alike(setting: Setting, folder: Path) -> None:
    """R12 and R2010 by both readers: layers, corners and bulges, places of words."""
    new, old = (written(setting.flat, version) for version in ("R2010", "R12"))
    for one, two in zip(read(folder, new), read(folder, old), strict=True):
        assert (one[0], one[2]) == (two[0], two[2])
        assert shapely.force_2d(one[1]).equals_exact(shapely.force_2d(two[1]), 1e-9)
    for (layer, corners), (other, same) in zip(_figures(new), _figures(old), strict=True):
        assert (layer, len(corners)) == (other, len(same))
        assert all(math.dist(a, b) < 1e-9 for a, b in zip(corners, same, strict=True))


def _figures(data: bytes) -> list[Figure]:
    """Closed polylines as the tag reader has them, whichever version they are written in."""
    found: list[Figure] = []
    for e in entities_of(data, "ENTITIES"):
        if e.kind == "LWPOLYLINE":
            found.append((e.get(8) or "", _corners(e)))
        elif e.kind == "POLYLINE":
            found.append((e.get(8) or "", ()))
        elif e.kind == "VERTEX":
            layer, corners = found.pop()
            corner = (float(e.get(10) or 0), float(e.get(20) or 0), float(e.get(42) or 0))
            found.append((layer, (*corners, corner)))
    return found


def _corners(e: Entity) -> tuple[tuple[float, float, float], ...]:
    """Corners of a light polyline; a bulge belongs to the corner before it."""
    corners: list[list[float]] = []
    for code, value in e.tags:
        if code == 10:
            corners.append([float(value), 0.0, 0.0])
        elif code == 20:
            corners[-1][1] = float(value)
        elif code == 42 and corners:
            corners[-1][2] = float(value)
    return tuple((x, y, bulge) for x, y, bulge in corners)


def second_is_turned(made: RouterPart, folder: Path) -> None:
    """Face 2 is face 1 turned about its long edge: one outline at W - y, blanks of one size."""
    if len(made.settings) < 2:
        return
    one, two = (read(folder, written(setting.flat)) for setting in made.settings)
    unit = 25.4 if made.unit.value == "in" else 1.0
    stocks = [on(found, "STOCK").bounds for found in (one, two)]
    width = made.part.first.width / unit
    assert stocks[0][0::2] == pytest.approx(stocks[1][0::2], abs=GRID[made.unit.value])
    assert (width - stocks[0][3], width - stocks[0][1]) == pytest.approx(stocks[1][1::2], abs=2 * GRID[made.unit.value])
    edge = on(two, "THROUGH_ALL").exterior
    back = shapely.affinity.affine_transform(edge, [1, 0, 0, -1, 0, width])
    noted = shapely.union_all([shape for layer, shape, text in one if layer == "NOTE" and not text])
    # what is only noted is told by lines and arcs that the other reader sees as chords
    assert noted.buffer(0.02 / unit).covers(back), made.part.id


def reflected(left: RouterPart, right: RouterPart, folder: Path) -> None:
    """Right is left reflected about an upright line, layer by layer and corner by corner, bulges reversed."""
    unit = 25.4 if left.unit.value == "in" else 1.0
    length = left.part.first.length / unit
    near = 1.5 * GRID[left.unit.value]
    for a, b in zip(left.settings, right.settings, strict=True):
        assert a.face is b.face
        ours, theirs = (read(folder, written(setting.flat)) for setting in (a, b))
        layers = {layer for layer, _, _ in ours} - {"NOTE", "STOCK"}
        assert layers == {layer for layer, _, _ in theirs} - {"NOTE", "STOCK"}
        for layer in layers:
            if layer.startswith("VEE_"):
                continue
            turned = shapely.affinity.affine_transform(on(ours, layer), [-1, 0, 0, 1, length, 0])
            run = turned.length
            assert turned.symmetric_difference(on(theirs, layer)).area <= run * (near + 2e-4), (left.part.id, layer)
        mirrored = [(layer, length - x, y, bulge) for layer, x, y, bulge in _sides(_figures(written(a.flat)))]
        as_is = _sides(_figures(written(b.flat)))
        assert len(mirrored) == len(as_is)
        for one in mirrored:
            match = [two for two in as_is if one[0] == two[0] and math.dist(one[1:3], two[1:3]) <= near]
            assert any(abs(one[3] - two[3]) < 1e-4 for two in match), (left.part.id, one)


def _sides(figures: list[Figure]) -> list[tuple[str, float, float, float]]:
    """Each side of each figure: its layer, the point that halves it, its bulge as it is run anticlockwise.

    Reflected, a path runs clockwise; run anticlockwise again, each arc bulges as it did.
    """
    found = []
    for layer, corners in figures:
        if layer == "STOCK":
            continue
        sides = list(zip(corners, (*corners[1:], corners[0]), strict=True))
        hand = math.copysign(1.0, sum(x0 * y1 - x1 * y0 for (x0, y0, _), (x1, y1, _) in sides))
        for (x0, y0, bulge), (x1, y1, _) in sides:
            middle = ((x0 + x1) / 2 + bulge * (y1 - y0) / 2, (y0 + y1) / 2 - bulge * (x1 - x0) / 2)
            found.append((layer, *middle, hand * bulge))
    return found


def inch_is_mm(part: Part, design: Design, folder: Path) -> None:
    """25.4 times the inch file is the mm file."""
    inch, mm = (router_part(part, design, unit) for unit in (Unit.INCH, Unit.MM))
    for a, b in zip(inch.settings, mm.settings, strict=True):
        ones, twos = (read(folder, written(setting.flat)) for setting in (a, b))
        cuts = [[(layer.split("_")[0], shape) for layer, shape, _ in one if layer != "NOTE"] for one in (ones, twos)]
        assert [verb for verb, _ in cuts[0]] == [verb for verb, _ in cuts[1]]
        for (_, one), (_, two) in zip(*cuts, strict=True):
            scaled = shapely.affinity.scale(one, 25.4, 25.4, origin=(0, 0))
            assert scaled.hausdorff_distance(two) < 0.0015, part.id
