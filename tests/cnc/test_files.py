"""Router files hold closed outlines, operations and notes, and nothing else; hands, faces and units agree."""

from pathlib import Path

import ezdxf
import pytest
import shapely

from shopdraw.cnc.covering import covering_tables, files_of
from shopdraw.cnc.flat import Unit, is_layer_name
from shopdraw.shape.path import Corner, area, bounds
from shopdraw.shape.path import Path as Outline
from shopdraw.wood.board import Face
from tests.cnc.router_reader import SAMPLES, one_part, piece, read, router_parts, written
from tests.write.dxf_tags import entities_of, header_of

DESKS = tuple(sample for sample in SAMPLES if piece(sample)[0].piece.kind == "slant-desk")
INCH_SAMPLE = "harbour-office-desk.piece"


def outlines(part_operations: object) -> list[Outline]:
    return [o.shape for o in part_operations if isinstance(o.shape, Outline)]  # type: ignore[attr-defined]


@pytest.mark.parametrize("sample", SAMPLES)
def test_cases_12_14_29_39_40_each_part_is_cut_out_once_and_layers_follow_the_grammar(sample: str) -> None:
    made = router_parts(sample)
    for part in made:
        assert sum(setting.flat.cut_outline for setting in part.settings) == 1
        assert part.settings[-1].flat.cut_outline, "the blank stays square for turning"
    names = [name for name, _, _ in files_of(made)]
    assert len(names) == len(set(names))
    for name, _, setting in files_of(made):
        entities = entities_of(written(setting.flat), "ENTITIES")
        layers = {e.get(8) or "" for e in entities}
        assert all(map(is_layer_name, layers)), name
        assert all(float(e.get(30) or 0) == 0.0 for e in entities), "case 40: flat"
        assert {e.kind for e in entities} <= {"LWPOLYLINE", "CIRCLE", "LINE", "ARC", "TEXT"}, "cases 29 and 39"
        closed = [e for e in entities if e.kind == "LWPOLYLINE"]
        assert all(int(e.get(70) or 0) & 1 for e in closed), "case 12: closed flags"
        for e in closed:
            points = list(zip(e.all(10), e.all(20), strict=True))
            assert points[0] != points[-1], "case 12: no repeated last point"
            assert all(abs(float(bulge)) <= 1.0 for bulge in e.all(42))
        loose = {e.get(8) for e in entities if e.kind in ("LINE", "ARC", "TEXT")}
        assert loose <= {"NOTE"}, "case 14: nothing open on a cutting layer"
        assert sum(e.get(8) == "THROUGH_ALL" for e in entities) == setting.flat.cut_outline


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_26_covering_sheet_and_files_name_the_same_layers(sample: str) -> None:
    design, _ = piece(sample)
    made = router_parts(sample)
    files, layers, faces, second, _, counted_cuts, _, words = covering_tables(made, design, {})
    told = {(row[0], row[1]) for row in layers.rows}
    there = {
        (name, e.get(8))
        for name, _, setting in files_of(made)
        for e in entities_of(written(setting.flat), "ENTITIES")
    }
    assert there == told
    counted = {
        (name, layer): sum(e.get(8) == layer for e in entities_of(written(setting.flat), "ENTITIES"))
        for name, _, setting in files_of(made)
        for layer in {layer.name for layer in setting.layers}
    }
    assert counted == {(row[0], row[1]): row[7] for row in layers.rows if row[7] is not None}
    assert len(files.rows) == len(faces.rows) == len({name for name, _ in told})
    assert len(second.rows) == sum(len(part.second) for part in made)
    assert all(cuts == in_files + later for _, cuts, in_files, later in counted_cuts.rows)  # type: ignore[operator]
    assert any("OSHA 3157" in str(row[1]) for row in words.rows)


@pytest.mark.parametrize("sample", SAMPLES)
def test_depth_of_a_layer_is_the_cuts_depth_from_the_face_that_is_up(sample: str) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            for layer in setting.layers:
                _, figure = layer.name.split("_")[:2]
                if figure == "ALL":
                    assert layer.depth == made.part.first.thickness
                    continue
                unit = 25.4 / 1000 if figure.endswith("T") else 0.01
                assert int(figure[:-1]) * unit == pytest.approx(layer.depth, abs=unit / 2 + 1e-9)
                flat_cuts = [made.part.first.shape.cuts[i] for i in setting.cuts]
                below_face = [cut.depth if cut.face in (Face.FACE, Face.BACK) else 0.0 for cut in flat_cuts]
                # a cut in an edge that reaches a face is a pocket in that face as deep as it is wide
                in_edge = [bounds(p) for cut in flat_cuts for p in (cut.outline, *cut.islands)]
                thick = made.part.first.thickness
                levels = [*(-w0 for _, w0, _, _ in in_edge), *(thick + w1 for _, _, _, w1 in in_edge)]
                levels += [*(-w1 for _, _, _, w1 in in_edge), *(thick + w0 for _, w0, _, _ in in_edge)]
                assert any(abs(depth - layer.depth) < 1e-6 for depth in (*below_face, *levels))


@pytest.mark.parametrize("sample", SAMPLES)
@pytest.mark.parametrize("pair", [("side.left", "side.right"), ("drawer.1.side-left", "drawer.1.side-right")])
def test_case_04_the_right_one_is_the_left_one_reflected(sample: str, pair: tuple[str, str]) -> None:
    _, assembly = piece(sample)
    if not all(assembly.has(board) for board in pair):
        assert pair[0].startswith("drawer"), "every sample has sides"
        return
    left, right = (one_part(sample, board) for board in pair)
    assert left is not right
    length = left.part.first.length
    assert len(left.settings) == len(right.settings)
    for a, b in zip(left.settings, right.settings, strict=True):
        assert a.face is b.face
        mirrored = sorted(_corners_of(a.flat, lambda x, y, bulge: (length - x, y, abs(bulge))))
        as_is = sorted(_corners_of(b.flat, lambda x, y, bulge: (x, y, abs(bulge))))
        assert len(mirrored) == len(as_is)
        for one in mirrored:
            match = next(two for two in as_is if all(abs(v - w) <= 0.001 for v, w in zip(one, two, strict=True)))
            as_is.remove(match)


def _corners_of(flat: object, to: object) -> list[tuple[float, float, float]]:
    found = []
    for path in (flat.outline, *outlines(flat.operations)):  # type: ignore[attr-defined]
        for (x, y, bulge), (x1, y1, _) in path.pairs():
            # an arc told by its middle doesn't care which way it is run
            middle = ((x + x1) / 2 + bulge * (y1 - y) / 2, (y + y1) / 2 - bulge * (x1 - x) / 2)
            found.append(tuple(round(v, 4) for v in to(*middle, bulge)))  # type: ignore[operator]
    return found


def test_case_04_dados_are_as_far_from_the_foot_and_the_rabbet_changes_edge() -> None:
    left, right = (one_part("pilot-station-desk.piece", f"side.{hand}").part.first for hand in ("left", "right"))
    foot = lambda board: sorted(bounds(cut.outline)[0] for cut in board.shape.cuts if cut.kind == "dado")  # noqa: E731
    assert foot(left) == pytest.approx(foot(right))
    rabbets = [next(c for c in board.shape.cuts if "back" in c.kind or c.kind == "rabbet") for board in (left, right)]
    assert bounds(rabbets[0].outline)[1] == pytest.approx(0.0)
    assert bounds(rabbets[1].outline)[3] == pytest.approx(right.width)


@pytest.mark.parametrize("sample", SAMPLES)
def test_face_2_is_turned_about_its_long_edge(sample: str) -> None:
    two_faced = [made for made in router_parts(sample) if len(made.settings) == 2]
    assert two_faced or sample not in DESKS
    for made in two_faced:
        first, second = made.settings
        assert {first.face, second.face} == {Face.FACE, Face.BACK}
        width = made.part.first.width
        one = {(round(c.x, 3), round(width - c.y, 3)) for c in first.flat.outline.corners}  # type: ignore[union-attr]
        two = {(round(c.x, 3), round(c.y, 3)) for c in second.flat.outline.corners}  # type: ignore[union-attr]
        assert one == two
        words = " ".join(note.words for note in second.flat.notes if hasattr(note, "words"))
        assert "turned about its long edge" in " ".join(words.split())


@pytest.mark.parametrize("sample", SAMPLES)
def test_lower_left_of_the_finished_part_is_at_the_origin(sample: str) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            x0, y0, x1, y1 = bounds(setting.flat.outline)  # type: ignore[arg-type]
            assert (x0, y0) == pytest.approx((0.0, 0.0), abs=1e-9)
            assert (x1, y1) == pytest.approx((made.part.first.length, made.part.first.width))


@pytest.mark.parametrize("sample", SAMPLES)
def test_open_pockets_run_past_the_edge_and_stopped_ends_stay(sample: str) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            assert all(run >= radius + 1.0 - 1e-9 for run, radius in setting.runs), made.part.id


@pytest.mark.parametrize("sample", DESKS)
def test_stopped_dados_of_a_desks_sides_end_exactly(sample: str) -> None:
    left = one_part(sample, "side.left")
    board, setting = left.part.first, left.settings[0]
    dados = [cut for cut in board.shape.cuts if cut.kind == "dado"]
    sunk = [bounds(path) for path in outlines(setting.flat.operations)]
    for dado in dados:
        x0, _, x1, _ = bounds(dado.outline)
        # the dados of a shelf in two boards meet and are one polyline
        (own,) = [b for b in sunk if b[0] < x0 + 1e-6 and b[2] > x1 - 1e-6 and b[2] - b[0] < 2 * board.thickness]
        joined = [bounds(d.outline) for d in dados]
        stop = max(b[3] for b in joined if own[0] < b[0] + 1e-6 and own[2] > b[2] - 1e-6)
        assert own[3] == pytest.approx(stop, abs=0.001), "the stopped end in front"
        assert own[1] <= -7.0, "past the back edge by a 6 mm radius and 1"


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_13_no_cutting_line_lies_on_another(sample: str, tmp_path: Path) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            found = read(tmp_path, written(setting.flat))
            by_layer: dict[str, list[shapely.Geometry]] = {}
            for layer, shape, _ in found:
                if layer not in ("NOTE", "STOCK"):
                    by_layer.setdefault(layer, []).append(shape.boundary)
            for layer, lines in by_layer.items():
                for i, line in enumerate(lines):
                    for other in lines[i + 1 :]:
                        assert line.intersection(other).length < 0.01, (made.part.id, layer)
            scale = 25.4 if made.unit is Unit.INCH else 1.0
            for layer, lines in by_layer.items():
                if layer.startswith("SINK") and "THROUGH_ALL" in by_layer:
                    assert all(
                        line.intersection(by_layer["THROUGH_ALL"][0]).length * scale < 0.01 for line in lines
                    ), made.part.id


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_41_both_versions_read_alike(sample: str, tmp_path: Path) -> None:
    for made in router_parts(sample)[:12]:
        for setting in made.settings:
            new, old = (read(tmp_path, written(setting.flat, version)) for version in ("R2010", "R12"))
            assert len(new) == len(old)
            for (layer, shape, _), (other, same, _) in zip(new, old, strict=True):
                assert layer == other
                assert shapely.force_2d(shape).equals_exact(shapely.force_2d(same), 1e-9)


def test_25_4_times_the_inch_file_is_the_mm_file(tmp_path: Path) -> None:
    for board in ("side.left", "side.right", "lid", "frame.1.runner-left"):
        inch, mm = (one_part(INCH_SAMPLE, board, unit) for unit in (Unit.INCH, Unit.MM))
        for a, b in zip(inch.settings, mm.settings, strict=True):
            ones, twos = (
                [(layer, shape) for layer, shape, _ in read(tmp_path, written(one.flat)) if layer != "NOTE"]
                for one in (a, b)
            )
            for (layer_a, one), (layer_b, two) in zip(ones, twos, strict=True):
                assert layer_a.split("_")[0] == layer_b.split("_")[0]
                scaled = shapely.affinity.scale(one, 25.4, 25.4, origin=(0, 0))
                assert scaled.hausdorff_distance(two) < 0.0015


def test_case_02_unit_stands_in_header_name_note_and_extents(tmp_path: Path) -> None:
    for unit, insunits, measurement, size in ((Unit.MM, "4", "1", 25.4), (Unit.INCH, "1", "0", 1.0)):
        made = one_part(INCH_SAMPLE, "side.left", unit)
        data = written(made.settings[0].flat)
        header = header_of(data)
        assert (header["$INSUNITS"], header["$MEASUREMENT"]) == (insunits, measurement)
        found = read(tmp_path, data)
        edge = next(shape for layer, shape, _ in found if layer == "THROUGH_ALL")
        # 41 1/2 in high on a plinth's lap of 2 17/32 in: the side is 38.9685 in long, 19 1/2 in deep
        assert edge.bounds[3] == pytest.approx(19.5 * size, abs=0.001)
        assert edge.bounds[2] == pytest.approx(made.part.first.length / 25.4 * size, abs=0.001)
        words = " ".join(text for _, _, text in found if text)
        assert ("inch:" if unit is Unit.INCH else "mm:") in words
        assert files_of((made,))[0][0] == f"1L_side-left_f1_{unit.value}.dxf"


def test_note_tells_face_edges_foot_and_a_known_length(tmp_path: Path) -> None:
    for board, front, end in (("side.left", "at the top", "on the left"), ("side.right", "at the top", "on the right")):
        found = read(tmp_path, written(one_part(INCH_SAMPLE, board).settings[0].flat))
        words = " ".join(text for _, _, text in found if text)
        for told in ("this face up: reference face", f"front edge {front}", f"lower end {end}: foot", "grain", "4 in"):
            assert told in words
        lines = [shape.length for layer, shape, _ in found if layer == "NOTE" and shape.geom_type == "LineString"]
        assert any(abs(length - 4.0) < 1e-6 for length in lines), "a line of 4 in"


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_42_words_lie_inside_their_part_off_the_cuts_where_there_is_room(sample: str) -> None:
    small = 0
    for made in router_parts(sample):
        for setting in made.settings:
            texts = [note for note in setting.flat.notes if hasattr(note, "words")]
            label = next(text for text in texts if text.words.startswith(made.part.first.label))
            edge = shapely.Polygon([(c.x, c.y) for c in setting.flat.outline.corners])  # type: ignore[union-attr]
            assert edge.contains(shapely.Point(label.at)), made.part.id
            small += label.height < 4.0
        if made.part.id.startswith("side"):
            cuts = [shapely.Polygon([(c.x, c.y) for c in path.corners]) for path in outlines(setting.flat.operations)]
            assert not any(cut.contains(shapely.Point(text.at)) for cut in cuts for text in texts)
    assert small < len(router_parts(sample)) / 3


def test_auditor_finds_nothing(tmp_path: Path) -> None:
    for name, _, setting in files_of(router_parts("pilot-station-desk.piece")):
        (tmp_path / name).write_bytes(written(setting.flat))
        assert not ezdxf.readfile(tmp_path / name).audit().errors, name


def test_case_28_rounded_ends_stay_arcs() -> None:
    (setting,) = one_part("pilot-station-desk.piece", "side.left").settings
    dado = next(o.shape for o in setting.flat.operations if o.layer == "SINK_600H" and len(o.shape.corners) == 6)
    assert isinstance(dado, Outline)
    assert [corner.bulge for corner in dado.corners if corner.bulge] == pytest.approx([0.41421356] * 2)
    x0, y0, x1, y1 = bounds(dado)
    # two corners of radius 3 take 2 × (1 − π/4) × 9 mm² off the rectangle
    assert area(dado) == pytest.approx((x1 - x0) * (y1 - y0) - 2 * (1 - 3.14159265 / 4) * 9, abs=1e-3)
    assert Corner(*dado.corners[0])


@pytest.mark.parametrize("sample", SAMPLES)
def test_no_segment_is_shorter_and_no_arc_tighter_than_a_controller_reads(sample: str) -> None:
    for made in router_parts(sample):
        for setting in made.settings:
            for path in (setting.flat.outline, *outlines(setting.flat.operations)):
                for here, there in path.pairs():  # type: ignore[union-attr]
                    chord = ((there.x - here.x) ** 2 + (there.y - here.y) ** 2) ** 0.5
                    assert chord >= 0.05, made.part.id
                    assert not here.bulge or chord * (1 + here.bulge**2) / (4 * abs(here.bulge)) >= 0.1
