"""A DXF is at true size in its unit, its dimensions are there for every reader, its layouts show the sheets.

Read by ezdxf's auditor, by GDAL (pyogrio), and by the tag reader beside this file.
"""

import hashlib
import io
import math
import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import ezdxf
import pyogrio.raw
import pytest
import shapely
from PIL import ImageFont

from shopdraw.drawing.letters import FALLBACK, LETTERING, font_file, text_width
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.drawing.sheet import Drawing, Placed, Sheet, SheetSet
from shopdraw.write.dxf import CannotWriteDxf, write_dxf
from shopdraw.write.finite import NotFinite
from tests.write.dxf_tags import blocks_of, entities_of, header_of
from tests.write.sample_sheets import A3, PLACE, TITLE, linear, sheet_set, side

ROOT = Path(__file__).resolve().parents[2]
LAYERS = {"EDGE", "HIDDEN", "CENTRE", "CUT", "HATCH", "SIZE", "WORD", "MOVING", "FRAME"}
VERSIONS = ["R12", "R2010"]
UNITS = [("mm", 1.0), ("in", 25.4)]
OLD_ENTITIES = {"LINE", "ARC", "CIRCLE", "TEXT", "SOLID", "POLYLINE", "DIMENSION"}


def dxf(sheets: SheetSet, unit: str = "mm", version: str = "R2010") -> bytes:
    out = io.BytesIO()
    write_dxf(sheets, out, unit, version)
    return out.getvalue()


def encoding(version: str) -> str:
    return "cp1252" if version == "R12" else "utf-8"


def one_view(*marks: Line | Text, scale: float = 1.0) -> SheetSet:
    sheet = Sheet("s", "1", "s", A3, (Placed(Drawing("front", "", marks), scale, (50.0, 50.0)),))
    return SheetSet("", "", "", "iso", (sheet,))


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize("unit", ["mm", "in"])
@pytest.mark.parametrize("style", ["iso", "asme"])
def test_auditor_finds_nothing(tmp_path: Path, style: str, unit: str, version: str) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(sheet_set(style), unit, version))
    file = ezdxf.readfile(tmp_path / "a.dxf")
    audit = file.audit()
    assert not audit.errors
    assert not audit.fixes
    assert len(file.modelspace()) > 50


@pytest.mark.parametrize(("unit", "insunits", "measurement"), [("mm", "4", "1"), ("in", "1", "0")])
def test_case_2_unit_is_said_both_ways(unit: str, insunits: str, measurement: str) -> None:
    header = header_of(dxf(sheet_set(), unit))
    assert (header["$INSUNITS"], header["$MEASUREMENT"]) == (insunits, measurement)
    assert header["$LUNITS"] == ("5" if unit == "in" else "2")
    old = header_of(dxf(sheet_set(), unit, "R12"), "cp1252")
    assert "$INSUNITS" not in old, "the old format has no such variable"


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize(("unit", "unit_mm"), UNITS)
def test_model_space_is_at_true_size(tmp_path: Path, unit: str, unit_mm: float, version: str) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(sheet_set(), unit, version))
    info, _, shapes, fields = pyogrio.raw.read(tmp_path / "a.dxf", ENCODING=encoding(version).upper())
    layer = fields[list(info["fields"]).index("Layer")]
    edges = [shapely.from_wkb(s).length for s, name in zip(shapes, layer, strict=True) if name == "EDGE"]
    # An edge of 800.1 mm, and one of 300, as drawn in the sample; twice each.
    for wanted in (800.1, 300.0):
        assert sum(math.isclose(length, wanted / unit_mm, abs_tol=1e-5) for length in edges) == 2


@pytest.mark.parametrize("version", VERSIONS)
def test_case_67_every_dimension_has_its_drawn_block(tmp_path: Path, version: str) -> None:
    data = dxf(sheet_set(), "mm", version)
    blocks = blocks_of(data, encoding(version))
    sizes = [e for e in entities_of(data, "ENTITIES", encoding(version)) if e.kind == "DIMENSION"]
    wanted = [d.words for sheet in sheet_set().sheets for p in sheet.placed for d in p.drawing.dimensions]
    assert len(sizes) == len(wanted) == 8
    drawn = []
    for size in sizes:
        block = blocks[size.get(2) or ""]
        assert {"LINE", "TEXT"} <= {e.kind for e in block} or {"ARC", "TEXT"} <= {e.kind for e in block}
        drawn.append(next(e.get(1) for e in block if e.kind == "TEXT"))
    assert drawn == wanted
    (tmp_path / "a.dxf").write_bytes(data)
    info, _, shapes, fields = pyogrio.raw.read(tmp_path / "a.dxf", ENCODING=encoding(version).upper())
    names = list(info["fields"])
    texts = zip(fields[names.index("Text")], fields[names.index("Layer")], strict=True)
    seen = [text for text, layer in texts if layer == "SIZE" and text]
    assert sorted(seen) == sorted(wanted), "a reader that explodes dimensions finds each figure as printed"
    assert len(shapes) > 100


@pytest.mark.parametrize("version", VERSIONS)
def test_layers_are_named_by_meaning_and_have_no_colour(tmp_path: Path, version: str) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(sheet_set(), "mm", version))
    file = ezdxf.readfile(tmp_path / "a.dxf")
    assert {layer.dxf.name for layer in file.layers} - {"0", "Defpoints", "VIEWPORTS"} == LAYERS
    assert {layer.dxf.color for layer in file.layers if layer.dxf.name in LAYERS} == {7}
    assert {e.dxf.layer for e in file.modelspace()} <= LAYERS
    if version != "R12":
        weights = {layer.dxf.name: layer.dxf.lineweight for layer in file.layers}
        assert (weights["EDGE"], weights["HIDDEN"], weights["FRAME"]) == (50, 25, 70)


@pytest.mark.parametrize(("unit", "unit_mm"), UNITS)
def test_dashes_have_their_printed_length_times_the_scale(tmp_path: Path, unit: str, unit_mm: float) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(sheet_set(), unit))
    file = ezdxf.readfile(tmp_path / "a.dxf")
    hidden = next(e for e in file.modelspace() if e.dxf.layer == "HIDDEN")
    name = hidden.dxf.linetype if hidden.dxf.linetype != "BYLAYER" else file.layers.get("HIDDEN").dxf.linetype
    pattern = [t.value for t in file.linetypes.get(name).pattern_tags.tags if t.code == 49]
    # Dash 3 mm and gap 0.75 mm on paper, drawn at 1:4.
    assert pattern == pytest.approx([12.0 / unit_mm, -3.0 / unit_mm])
    assert (file.header["$LTSCALE"], file.header["$PSLTSCALE"]) == (1.0, 0)


@pytest.mark.parametrize(("unit", "unit_mm"), UNITS)
def test_layouts_show_the_drawings_at_the_sheets_scale(tmp_path: Path, unit: str, unit_mm: float) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(sheet_set(), unit))
    file = ezdxf.readfile(tmp_path / "a.dxf")
    assert file.layouts.names_in_taborder() == ["Model", "1 general-arrangement", "2 parts-1"]
    for name, scales, paper in (("1 general-arrangement", [0.25, 1.0], A3), ("2 parts-1", [0.5], None)):
        layout = file.layouts.get(name)
        views = [v for v in layout.viewports() if v.dxf.id != 1]
        assert [v.get_scale() for v in views] == pytest.approx(scales, rel=1e-5)
        assert all(v.dxf.flags & 0x4000 for v in views), "locked"
        if paper:
            assert (layout.dxf.paper_width, layout.dxf.paper_height) == pytest.approx((paper.width, paper.height))
    # A point of the side, seen through its viewport, lies where the sheet has it.
    view = next(v for v in file.layouts.get("1 general-arrangement").viewports() if v.dxf.id != 1)
    low = min(
        (e.dxf.start for e in file.modelspace() if e.dxftype() == "LINE" and e.dxf.layer == "EDGE"),
        key=lambda p: (round(p.x, 3), round(p.y, 3)),
    )
    on_paper = (low - view.dxf.view_center_point) * 0.25 + view.dxf.center
    assert (on_paper.x * unit_mm, on_paper.y * unit_mm) == pytest.approx((70.0, 150.0), abs=1e-3)


def test_two_sheets_with_one_name_have_a_layout_each(tmp_path: Path) -> None:
    sheet = sheet_set().sheets[1]
    file = _read(tmp_path, dxf(SheetSet("", "", "", "iso", (sheet, sheet))))
    assert file.layouts.names_in_taborder() == ["Model", "2 parts-1", "2 parts-1 2"]


def test_words_of_the_sheet_stand_on_its_layout_in_paper_mm(tmp_path: Path) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(sheet_set()))
    texts = ezdxf.readfile(tmp_path / "a.dxf").layouts.get("1 general-arrangement").query("TEXT")
    found = {t.dxf.text: (t.dxf.height, t.dxf.rotation) for t in texts}
    assert found == {"drawer 31 1/2 × 5/8": (3.5, 0.0), "up 1/2": (5.0, 90.0)}


def test_case_37_letters_survive_in_both_versions(tmp_path: Path) -> None:
    for version, place in (("R2010", PLACE), ("R12", PLACE)):
        (tmp_path / "a.dxf").write_bytes(dxf(sheet_set(), "mm", version))
        file = ezdxf.readfile(tmp_path / "a.dxf")
        words = {e.dxf.text for e in file.modelspace().query("TEXT")}
        shown = {ezdxf.lldxf.encoding.decode_dxf_unicode(w) for w in words}
        assert place in shown
        assert (TITLE if version == "R2010" else 'Écritoire 7 5/8" – façade') in shown
    assert TITLE.encode() in dxf(sheet_set())


def test_words_are_as_wide_as_on_the_sheet_and_in_a_font_that_has_them(tmp_path: Path) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(one_view(Text((0, 0), "31 1/2", 2.5), Text((0, 9), "Žďár", 2.5), scale=0.25)))
    file = ezdxf.readfile(tmp_path / "a.dxf")
    fraction, name = file.modelspace().query("TEXT")

    for text, font, capital in ((fraction, LETTERING, 736 / 1024), (name, FALLBACK, 1493 / 2048)):
        plain = ImageFont.truetype(str(font_file(font)), 1000, layout_engine=ImageFont.Layout.BASIC)
        wide = plain.getlength(text.dxf.text) / 1000 / capital * text.dxf.height * text.dxf.width
        assert wide == pytest.approx(4 * text_width(text.dxf.text, 2.5), rel=2e-3)
    assert fraction.dxf.height == 10.0, "2.5 on paper at 1:4"


def test_control_signs_of_the_format_are_shown_and_control_characters_left_out(tmp_path: Path) -> None:
    (tmp_path / "a.dxf").write_bytes(dxf(one_view(Text((0, 0), "100 %%c ^J a\x00b\nc", 2.5))))
    text = ezdxf.readfile(tmp_path / "a.dxf").modelspace().query("TEXT").first
    assert text.plain_text() == "100 %%c ^J ab c"


def test_old_version_has_sheets_side_by_side_and_only_old_entities(tmp_path: Path) -> None:
    data = dxf(sheet_set(), "mm", "R12")
    entities = [e for e in entities_of(data, "ENTITIES", "cp1252") if e.kind not in ("VERTEX", "SEQEND", "VIEWPORT")]
    assert {e.kind for e in entities} <= OLD_ENTITIES
    assert not [e for e in entities if e.get(67) == "1"], "nothing in paper space"
    frame = next(e for e in entities if e.get(8) == "FRAME")
    # The second sheet begins behind the first one, A3 at 4 times its size with 40 mm between; it is enlarged twice.
    assert float(frame.get(10) or 0) == pytest.approx((420 + 40) * 4 + 50 * 2)
    factors = [s.dxf.dimlfac for s in _read(tmp_path, data).dimstyles if s.dxf.name.startswith("SIZE_")]
    assert set(factors) == {0.25, 1.0}, "the detail at 1:1 is drawn 4 times too large, and measured as it is"


def _read(folder: Path, data: bytes) -> ezdxf.document.Drawing:
    (folder / "read.dxf").write_bytes(data)
    return ezdxf.readfile(folder / "read.dxf")


def test_number_that_is_not_finite_is_refused_with_its_place() -> None:
    with pytest.raises(NotFinite, match=r"sheet 1, front: .*inf"):
        dxf(one_view(Line((0.0, 0.0), (math.inf, 1.0), Meaning.VISIBLE)))
    bad = replace(side(), dimensions=(linear("100", 100.0, measured=math.nan),))
    with pytest.raises(NotFinite, match=r"sheet 1, side, dimension foot/head@100"):
        dxf(SheetSet("", "", "", "iso", (Sheet("s", "1", "s", A3, (Placed(bad, 0.25, (0, 0)),)),)))


def test_numbers_are_rounded_below_what_anyone_sees() -> None:
    data = dxf(one_view(Line((0.1 + 0.2, 0.0), (100.0 / 3, 1e-9), Meaning.VISIBLE)))
    line = next(e for e in entities_of(data, "ENTITIES") if e.kind == "LINE")
    assert all(len((line.get(code) or "").partition(".")[2]) <= 6 for code in (10, 20, 11, 21))


@pytest.mark.parametrize(("unit", "version", "right"), [("cm", "R2010", "mm, in"), ("mm", "R14", "R12, R2010")])
def test_unknown_unit_or_version_is_refused_with_what_would_be_right(unit: str, version: str, right: str) -> None:
    with pytest.raises(CannotWriteDxf, match=right):
        dxf(sheet_set(), unit, version)


def test_empty_drawing_and_empty_sheet_do_no_harm() -> None:
    assert entities_of(dxf(one_view()), "ENTITIES") is not None
    with pytest.raises(CannotWriteDxf, match="at least one sheet"):
        dxf(replace(sheet_set(), sheets=()))


@pytest.mark.parametrize("version", VERSIONS)
def test_same_set_gives_the_same_bytes_in_another_process(version: str) -> None:
    script = (
        "import io, hashlib; from shopdraw.write.dxf import write_dxf\n"
        "from tests.write.sample_sheets import sheet_set\n"
        f"out = io.BytesIO(); write_dxf(sheet_set(), out, 'in', {version!r})\n"
        "print(hashlib.sha256(out.getvalue()).hexdigest())"
    )
    found = {hashlib.sha256(dxf(sheet_set(), "in", version)).hexdigest()}
    for seed in ("1", "2", "3", "4"):
        ran = subprocess.run(
            [sys.executable, "-c", script], capture_output=True, check=True, text=True, cwd=ROOT,
            env=os.environ | {"PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)},
        )  # fmt: skip
        found.add(ran.stdout.strip())
    assert len(found) == 1


def test_option_of_the_library_is_put_back() -> None:
    before = ezdxf.options.write_fixed_meta_data_for_testing
    dxf(sheet_set())
    assert ezdxf.options.write_fixed_meta_data_for_testing is before
