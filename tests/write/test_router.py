"""Router files hold closed outlines with true arcs, on layers that every reader takes; read by GDAL and by tags."""

import io
import math
import re
from dataclasses import replace
from pathlib import Path

import ezdxf
import pyogrio.raw
import pytest
import shapely

from shopdraw.cnc.flat import Circle, FlatPart, NotFlat, OpenLine, Operation, Unit
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.shape.path import Corner, area, circle, perimeter, rectangle
from shopdraw.shape.path import Path as Outline
from shopdraw.write.finite import NotFinite
from shopdraw.write.router import write_router_file
from tests.write.dxf_tags import Entity, entities_of, header_of

EDGE = Outline((Corner(0, 0), Corner(800.1, 0), Corner(800.1, 350, 0.4), Corner(700, 457.2), Corner(0, 457.2)))
PART = FlatPart(
    "1L side-left",
    Unit.MM,
    EDGE,
    (
        Operation("SINK_635H", rectangle(-7, 100, 470, 118.05)),
        Operation("SINK_635H", rectangle(100, 105, 120, 112), island=True),
        Operation("HOLE_ALL", Circle((50, 50), 6.0)),
        Operation("SINK_300H", circle((200, 50), 17.5)),
        Operation("INSIDE_ALL", rectangle(300, 300, 350, 350)),
        Operation("VEE_300H_90", OpenLine((10, 10), (20, 30), 0.3)),
        Operation("MARK_30H", OpenLine((10, 200), (790, 200))),
    ),
    (
        Text((20, 250), "1L side-left, front edge, 7 ⅝″", 8.0, meaning=Meaning.WORD),
        Line((20, 230), (120, 230), Meaning.WORD),
    ),
    rectangle(-12, -12, 812.1, 469.2),
)


def router(part: FlatPart = PART, version: str = "R2010") -> bytes:
    out = io.BytesIO()
    write_router_file(part, out, version)
    return out.getvalue()


def gdal(folder: Path, data: bytes) -> list[tuple[str, shapely.Geometry, str | None]]:
    (folder / "part.dxf").write_bytes(data)
    pyogrio.set_gdal_config_options({"OGR_ARC_STEPSIZE": "0.1"})
    info, _, shapes, fields = pyogrio.raw.read(folder / "part.dxf", CLOSED_LINE_AS_POLYGON="YES", ENCODING="UTF-8")
    names = list(info["fields"])
    layers, texts = fields[names.index("Layer")], fields[names.index("Text")]
    return [(layer, shapely.from_wkb(s), t) for layer, s, t in zip(layers, shapes, texts, strict=True)]


@pytest.mark.parametrize("version", ["R12", "R2010"])
def test_closed_outlines_keep_their_area_within_perimeter_times_grid(tmp_path: Path, version: str) -> None:
    found = gdal(tmp_path, router(version=version))
    through = next(shape for layer, shape, _ in found if layer == "THROUGH_ALL")
    assert through.geom_type == "Polygon"
    assert through.area == pytest.approx(area(EDGE), abs=perimeter(EDGE) * 0.001 + 0.5), "0.1° chords of an R of 79"
    sinks = [shape.area for layer, shape, _ in found if layer == "SINK_635H"]
    assert sinks == pytest.approx([477 * 18.05, 20 * 7], abs=0.001 * 1000)


@pytest.mark.parametrize("version", ["R12", "R2010"])
def test_both_versions_hold_the_same_corners_and_bulges(version: str) -> None:
    data = router(version=version)
    if version == "R12":
        entities = entities_of(data, "ENTITIES", "cp1252")
        start = next(i for i, e in enumerate(entities) if e.kind == "POLYLINE" and e.get(8) == "THROUGH_ALL")
        vertices: list[Entity] = []
        for e in entities[start + 1 :]:
            if e.kind != "VERTEX":
                break
            vertices.append(e)
        assert int(entities[start].get(70) or 0) & 1, "closed"
        corners = [(float(v.get(10) or 0), float(v.get(20) or 0), float(v.get(42) or 0)) for v in vertices]
    else:
        line = next(e for e in entities_of(data, "ENTITIES") if e.kind == "LWPOLYLINE" and e.get(8) == "THROUGH_ALL")
        assert int(line.get(70) or 0) & 1, "closed"
        bulges, corners = {}, []
        for code, value in line.tags:
            if code == 10:
                corners.append([float(value), 0.0, 0.0])
            elif code == 20:
                corners[-1][1] = float(value)
            elif code == 42:
                bulges[len(corners) - 1] = float(value)
        corners = [(x, y, bulges.get(i, 0.0)) for i, (x, y, _) in enumerate(corners)]
    assert corners == [tuple(map(float, c)) for c in EDGE.corners]


def test_case_2_unit_and_extents(tmp_path: Path) -> None:
    plain = replace(PART, operations=(), outline=rectangle(0, 0, 800.1, 457.2))
    inches = replace(plain, unit=Unit.INCH)
    for part, size, insunits, measurement in ((plain, (800.1, 457.2), "4", "1"), (inches, (31.5, 18.0), "1", "0")):
        data = router(part)
        header = header_of(data)
        assert (header["$INSUNITS"], header["$MEASUREMENT"]) == (insunits, measurement)
        edge = next(shape for layer, shape, _ in gdal(tmp_path, data) if layer == "THROUGH_ALL")
        assert edge.bounds[2:] == pytest.approx(size, abs=1e-4)


def test_inch_file_times_25_4_is_the_mm_file(tmp_path: Path) -> None:
    closed = tuple(o for o in PART.operations if o.layer == "INSIDE_ALL")
    mm, inch = replace(PART, operations=closed), replace(PART, operations=closed, unit=Unit.INCH)
    for (layer, a, _), (other, b, _) in zip(gdal(tmp_path, router(mm)), gdal(tmp_path, router(inch)), strict=True):
        assert layer == other
        if layer != "NOTE":
            assert [v * 25.4 for v in b.bounds] == pytest.approx(list(a.bounds), abs=0.001)


def test_outer_runs_anticlockwise_and_inner_clockwise() -> None:
    for layer, wanted in (("THROUGH_ALL", 1), ("INSIDE_ALL", -1), ("SINK_635H", 1)):
        line = next(e for e in entities_of(router(), "ENTITIES") if e.kind == "LWPOLYLINE" and e.get(8) == layer)
        points = list(zip(map(float, line.all(10)), map(float, line.all(20)), strict=True))
        doubled = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1], strict=True))
        assert math.copysign(1, doubled) == wanted, layer


def test_full_circle_is_a_circle_and_open_paths_are_lines_and_arcs() -> None:
    entities = entities_of(router(), "ENTITIES")
    kinds = {(e.get(8), e.kind) for e in entities}
    assert {("HOLE_ALL", "CIRCLE"), ("SINK_300H", "CIRCLE"), ("VEE_300H_90", "ARC"), ("MARK_30H", "LINE")} <= kinds
    assert {e.kind for e in entities} == {"LWPOLYLINE", "CIRCLE", "ARC", "LINE", "TEXT"}
    recess = next(e for e in entities if e.get(8) == "SINK_300H")
    assert [float(recess.get(c) or 0) for c in (10, 20, 40)] == pytest.approx([200.0, 50.0, 17.5])
    assert all(float(e.get(30) or 0) == 0.0 for e in entities), "flat"


def test_case_14_without_notes_and_stock_only_cuts_are_left() -> None:
    left = {e.get(8) for e in entities_of(router(), "ENTITIES")} - {"NOTE", "STOCK"}
    assert left == {"THROUGH_ALL", "SINK_635H", "HOLE_ALL", "SINK_300H", "INSIDE_ALL", "VEE_300H_90", "MARK_30H"}


@pytest.mark.parametrize(("version", "words"), [(v, '1L side-left, front edge, 7 5/8"') for v in ("R12", "R2010")])
def test_note_can_be_read_by_any_reader(tmp_path: Path, version: str, words: str) -> None:
    assert words in [text for layer, _, text in gdal(tmp_path, router(version=version)) if layer == "NOTE"]


def test_outline_that_is_cut_from_the_other_face_is_never_closed_here() -> None:
    entities = entities_of(router(replace(PART, cut_outline=False)), "ENTITIES")
    assert "THROUGH_ALL" not in {e.get(8) for e in entities}
    assert {e.kind for e in entities if e.get(8) == "NOTE"} == {"LINE", "ARC", "TEXT"}


@pytest.mark.parametrize("version", ["R12", "R2010"])
def test_auditor_finds_nothing_and_every_layer_is_colour_7(tmp_path: Path, version: str) -> None:
    (tmp_path / "a.dxf").write_bytes(router(version=version))
    file = ezdxf.readfile(tmp_path / "a.dxf")
    assert not file.audit().errors
    used = {e.dxf.layer for e in file.modelspace()}
    assert not used & {"0", "Defpoints"}
    assert {file.layers.get(name).dxf.color for name in used} == {7}
    assert not len(file.layouts.get("Layout1"))


def test_coordinates_lie_on_the_grid() -> None:
    part = replace(PART, operations=(), outline=rectangle(0, 0, 100 / 3, 200 / 3), stock=None)
    for unit, digits in ((Unit.MM, 3), (Unit.INCH, 5)):
        line = next(e for e in entities_of(router(replace(part, unit=unit)), "ENTITIES") if e.kind == "LWPOLYLINE")
        assert all(re.fullmatch(rf"-?\d+\.\d{{1,{digits}}}", v) for v in line.all(10) + line.all(20))


def test_corners_that_fall_together_on_the_grid_are_refused() -> None:
    tiny = Outline((Corner(0, 0), Corner(10, 0), Corner(10, 0.0002), Corner(0, 10)))
    with pytest.raises(NotFlat, match=r"1L side-left, layer THROUGH_ALL: two corners.*\(10, 0\)"):
        router(replace(PART, outline=tiny))


def test_note_with_a_number_that_is_not_finite_is_refused() -> None:
    with pytest.raises(NotFinite, match="notes of 1L side-left"):
        router(replace(PART, notes=(Line((0, 0), (math.nan, 0), Meaning.WORD),)))


def test_same_part_gives_the_same_bytes() -> None:
    assert router() == router()
    assert router(version="R12") == router(version="R12")


def test_newer_version_is_refused() -> None:
    with pytest.raises(ValueError, match="R12 or R2010"):
        router(version="R2018")
