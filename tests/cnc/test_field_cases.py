"""Field cases of router files that need both readers, or a board where no board should be."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from pathlib import Path as FilePath

import pytest

from shopdraw.cnc.flat import Circle, FlatPart, NotFlat, OpenLine
from shopdraw.cnc.part import router_part
from shopdraw.drawing.mark import Line, Text
from shopdraw.piece.design import CaseTable, Design
from shopdraw.shape.path import Path, polygon, rectangle
from shopdraw.shape.region import Side, Unclosed, stitched
from shopdraw.wood.board import Shape
from shopdraw.wood.part import Part
from tests.cnc.router_reader import SAMPLES, one_part, piece, read, router_parts, written
from tests.wood.pieces import LYING, board
from tests.write.dxf_tags import entities_of

DESIGN = Design(case=CaseTable(width=900, height=1000, depth=480))
SEVEN = ((0.0, 0.0), (400.0, 0.0), (400.0, 150.0), (330.0, 200.0), (200.0, 200.0), (60.0, 180.0), (0.0, 120.0))


def sides(end: tuple[float, float]) -> list[Side]:
    """Seven lines, the last of which ends where it is told to."""
    corners = [*SEVEN, end]
    return [Side(corners[i], corners[i + 1], 0.0) for i in range(7)]


def test_case_12_seven_sides_that_miss_by_4_microns_are_refused_with_the_gap() -> None:
    (closed,) = stitched(sides((0.0, 0.0)))
    assert len(closed.corners) == 7, "the first corner isn't repeated"
    with pytest.raises(Unclosed, match=r"stays open at \(0\.000, 0\.004\).* 0\.004 mm"):
        stitched(sides((0.0, 0.004)))


def test_case_12_a_board_whose_outline_does_not_close_is_named(monkeypatch: pytest.MonkeyPatch) -> None:
    def open_region(*_: object) -> object:
        raise Unclosed("an outline stays open at (0.000, 0.004): the next side begins 0.004 mm from there")

    monkeypatch.setattr("shopdraw.cnc.part._flat_region", open_region)
    one = board("shelf", Shape(polygon(SEVEN), 20.0), LYING)
    with pytest.raises(NotFlat, match=r"^shelf: .*0\.004 mm"):
        router_part(Part("shelf", (one,)), DESIGN)


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_12_every_cutting_polyline_has_its_closed_flag_and_no_point_twice(sample: str) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            for e in entities_of(written(setting.flat), "ENTITIES"):
                if e.kind == "LWPOLYLINE":
                    points = list(zip(e.all(10), e.all(20), strict=True))
                    assert int(e.get(70) or 0) & 1, made.part.id
                    assert len(points) == len(set(points)), made.part.id


def told(flat: FlatPart) -> Counter[str]:
    """What a file should hold, by layer: cuts, the outline (as sides where it is only noted), notes and stock."""
    found = Counter(one.layer for one in flat.operations)
    if flat.outline is not None:
        found["THROUGH_ALL" if flat.cut_outline else "NOTE"] += 1 if flat.cut_outline else len(flat.outline.corners)
    found["NOTE"] += len(flat.notes)
    found["STOCK"] += flat.stock is not None
    return +found


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_29_entities_read_back_are_those_written_and_none_is_a_spline_or_an_ellipse(
    sample: str, tmp_path: FilePath
) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            data = written(setting.flat)
            tags = entities_of(data, "ENTITIES")
            assert {e.kind for e in tags} <= {"LWPOLYLINE", "CIRCLE", "LINE", "ARC", "TEXT"}
            assert Counter(e.get(8) for e in tags) == told(setting.flat), made.part.id
            assert Counter(layer for layer, _, _ in read(tmp_path, data)) == told(setting.flat), made.part.id


def test_case_29_a_curved_bracket_is_tangent_arcs_and_not_chords() -> None:
    """The scalloped brackets of the largest desk: each curve is a handful of bulges, as smooth as its own outline."""
    brackets = [made for made in router_parts("harbour-master-desk.piece") if made.part.first.member == "bracket"]
    assert brackets
    for made in brackets:
        (setting,) = made.settings
        (edge,) = [e for e in entities_of(written(setting.flat), "ENTITIES") if e.get(8) == "THROUGH_ALL"]
        assert sum(float(b) != 0.0 for b in edge.all(42)) >= 1
        assert len(edge.all(10)) == len(made.part.first.shape.outline.corners) < 30


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_38_a_label_is_single_line_text_on_the_note_layer_inside_its_part(
    sample: str, tmp_path: FilePath
) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            data = written(setting.flat)
            words = [e for e in entities_of(data, "ENTITIES") if e.kind in ("TEXT", "MTEXT")]
            assert all(e.kind == "TEXT" and e.get(8) == "NOTE" for e in words)
            assert any((e.get(1) or "").split()[0].rstrip(",") == made.part.first.label for e in words), made.part.id
            spots = [shape for layer, shape, text in read(tmp_path, data) if text and layer == "NOTE"]
            unit = 25.4 if made.unit.value == "in" else 1.0
            length, width = made.part.first.length / unit, made.part.first.width / unit
            assert any(-1e-6 <= s.x <= length and -1e-6 <= s.y <= width for s in spots), made.part.id


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_39_four_feet_are_plain_geometry_each_and_nothing_is_a_block(sample: str) -> None:
    _, assembly = piece(sample)
    feet = [each for each in assembly.boards if each.member == "block"]
    if feet:
        made = [one for one in router_parts(sample) if one.part.first.member == "block"]
        assert sum(one.part.quantity for one in made) == len(feet)
    for one in router_parts(sample):
        for setting in one.settings:
            data = written(setting.flat)
            assert not [e for e in entities_of(data, "ENTITIES") if e.kind == "INSERT"]
            own = [e for e in entities_of(data, "BLOCKS") if e.kind not in ("BLOCK", "ENDBLK")]
            assert own == []


def test_case_40_a_board_far_from_the_origin_is_flat_at_0_0(tmp_path: FilePath) -> None:
    """At (250 000, -12 000, 736.6) and at (0, 0, 0) the file is the same, byte for byte."""
    shape = Shape(rectangle(0.0, 0.0, 800.1, 457.2), 19.0)
    files = []
    for place in ((0.0, 0.0, 0.0), (250_000.0, -12_000.0, 736.6)):
        one = board("1L", shape, replace(LYING, at=place))
        (setting,) = router_part(Part("1L", (one,)), DESIGN).settings
        files.append(written(setting.flat))
    assert files[0] == files[1]
    edge = next(shape for layer, shape, _ in read(tmp_path, files[1]) if layer == "THROUGH_ALL")
    assert edge.bounds == pytest.approx((0.0, 0.0, 800.1, 457.2))
    for e in entities_of(files[1], "ENTITIES"):
        assert float(e.get(30) or 0) == float(e.get(38) or 0) == 0.0


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_40_no_number_of_a_file_lies_far_from_its_part(sample: str) -> None:
    for made in router_parts(sample):
        far = 2 * max(made.part.first.length, made.part.first.width) + 200.0
        for setting in made.settings:
            for one in (*setting.flat.operations, *setting.flat.notes):
                for x, y in _points(one.shape if hasattr(one, "shape") else one):
                    assert -100.0 <= x <= far, made.part.id
                    assert -100.0 <= y <= far, made.part.id


def _points(shape: object) -> list[tuple[float, float]]:
    match shape:
        case Path():
            return [(c.x, c.y) for c in shape.corners]
        case Circle():
            return [shape.centre]
        case OpenLine() | Line():
            return [shape.start, shape.end]
        case Text():
            return [shape.at]
        case _:
            return []


def test_a_rounded_tenons_radius_stands_in_its_notes() -> None:
    made = one_part("pilot-station-desk.piece", "frame.1.runner-left")
    words = [note.words for setting in made.settings for note in setting.flat.notes if isinstance(note, Text)]
    told_words = " ".join(" ".join(words).split())
    # 6 mm cutters, so mortises end in 3 mm radii
    assert "round to R 3.0" in told_words


@pytest.mark.parametrize("sample", SAMPLES)
def test_a_dado_at_a_boards_end_leaves_no_sliver_there(sample: str) -> None:
    """A pocket that runs out of the board's end has square corners there: a cutter that leaves the wood rounds none."""
    for made in router_parts(sample):
        shape = made.part.first.shape
        for cut in shape.cuts:
            if cut.kind == "dado":
                for corner, after in cut.outline.pairs():
                    if corner.bulge:
                        inner = max(corner.x, after.x) < shape.box[2] - 1e-6 and min(corner.x, after.x) > 1e-6
                        assert inner, made.part.id
        slivers = [finding for finding in made.findings if finding.code == "sliver" and (finding.value or 9.0) < 2.0]
        assert slivers == [], made.part.id
