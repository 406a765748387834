"""Machine settings: offsets by arithmetic, tilts by trigonometry, nothing left out and nothing set twice."""

import math
from pathlib import Path

import pytest

from shopdraw.build import build
from shopdraw.lists.channel import settings_of
from shopdraw.lists.machine_settings import Tools, machine_settings, tools_of
from shopdraw.lists.tilt import tilts_of
from shopdraw.piece.reading import read_piece
from shopdraw.piece.shop import CollarTable, CutterTable, RouterTable, Shop
from tests.check.desks import design
from tests.lists.test_joint_schedule import METRIC

SAMPLES = sorted((Path(__file__).parents[2] / "sample_projects").glob("*.piece"))
SLANTED = [path for path in SAMPLES if "[slant]" in path.read_text(encoding="utf-8")]
TOOLS = Tools((3.0, 6.0, 12.0), 75.0, (17.0,))


def tables(assembly, tools=TOOLS):
    return {table.title: table for table in machine_settings(assembly, METRIC, tools)}


def column(table, head):
    place = [c.head for c in table.columns].index(head)
    return [row[place] for row in table.rows]


def test_a_straight_edge_stands_half_a_base_less_half_a_cutter_off():
    table = tables(build(design()))["Dados, grooves, rabbets"]
    pairs = set(zip(column(table, "cutter"), column(table, "straight edge off the near side"), strict=True))
    assert pairs <= {("12", "69"), ("6", "72"), ("3", "73.5")}
    assert pairs


def test_a_template_is_half_of_collar_less_cutter_away():
    table = tables(build(design()))["Pockets with a guide collar"]
    pairs = set(zip(column(table, "cutter"), column(table, "template offset"), strict=True))
    # half of what is left when 12, 6 or 3 is taken from 17
    assert pairs <= {("12", "2.5"), ("6", "5.5"), ("3", "7")}
    assert pairs


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_tilt_from_square_and_angle_from_level_make_ninety(path):
    assembly = build(read_piece(path).design)
    table = tables(assembly).get("Saw tilts")
    if table is None:
        assert not [tilt for board in assembly.boards for tilt in tilts_of(board)]
        return
    square = [float(words.rstrip("°")) for words in column(table, "saw tilt from square")]
    level = [float(words.rstrip("°")) for words in column(table, "angle from level")]
    for kind, first, second in zip(column(table, "cut"), square, level, strict=True):
        assert kind == "slant" or first + second == pytest.approx(90.0, abs=0.11)


@pytest.mark.parametrize("path", SLANTED, ids=lambda p: p.stem)
def test_the_tops_front_edge_is_tilted_as_the_slant_asks(path):
    assembly = build(read_piece(path).design)
    alpha = math.degrees(math.atan2(assembly.slant.rise_mm, assembly.slant.run_mm))
    # in the slant plane for a lid hinged below, square to the lid for one hinged above
    wanted = 90.0 - alpha if assembly.slant.hinge_edge == "lower" else alpha
    tilts = [tilt.from_square for tilt in tilts_of(assembly.board("top"))]
    assert min(abs(tilt - wanted) for tilt in tilts) < 1e-6
    table = tables(assembly)["Saw tilts"]
    row = column(table, "cut").index("slant")
    assert float(column(table, "angle from level")[row].rstrip("°")) == pytest.approx(alpha, abs=0.051)


def test_a_flank_over_what_a_saw_tilts_is_cut_on_edge():
    table = tables(build(design(slant={"top_depth": None, "angle": 48.0})))["Saw tilts"]
    steep = [
        words for tilt, words in zip(column(table, "saw tilt from square"), column(table, "setting"), strict=True)
        if float(tilt.rstrip("°")) > 45.05
    ]  # fmt: skip
    assert steep
    assert all("tall fence" in words for words in steep)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_every_dado_is_set_from_where_its_level_lies(path):
    assembly = build(read_piece(path).design)
    side = assembly.board("side.left")
    found = {round(s.distance, 6) for s in settings_of(side, assembly) if s.kind == "dado" and s.reference == "end"}
    told = {round(level.dado_bottom, 6) for level in assembly.levels if level.dado_bottom is not None}
    assert told <= found


def test_mirrored_sides_are_set_alike():
    assembly = build(design())

    def settings(name):
        return sorted(
            (s.kind, round(s.width, 6), round(s.depth, 6), round(s.distance, 6), s.reference)
            for s in settings_of(assembly.board(name), assembly)
        )

    assert settings("side.left") == settings("side.right")


def test_each_setting_stands_in_one_row():
    for table in tables(build(design())).values():
        settings = [row[:-1] for row in table.rows]
        assert len(settings) == len(set(settings)), table.title


def test_a_cutter_is_never_wider_than_its_cut():
    tools = Tools((3.0, 6.0, 12.0), 75.0, (17.0,))
    assert tools.cutter_for(6.0) == 6.0
    assert tools.cutter_for(5.9) == 3.0
    assert tools.cutter_for(2.0) is None


def test_the_shops_own_tools_come_before_stated_defaults():
    shop = Shop(
        router=RouterTable(base=80.0),
        cutter={"a": CutterTable(diameter=8.0), "b": CutterTable(kind="drill", diameter=5.0)},
        collar={"c": CollarTable(outside=20.0)},
    )
    assert tools_of(shop, (3.0,), inch=False) == Tools((8.0,), 80.0, (20.0,), ())
    plain = tools_of(Shop(), (3.0, 6.0), inch=False)
    assert plain.cutters == (3.0, 6.0)
    assert plain.stated == ("cutters", "base", "collar")


def test_what_is_a_default_is_said():
    tools = tools_of(Shop(), (3.0, 6.0, 12.0), inch=False)
    assert all("default" in words for words in column(tables(build(design()), tools)["Worked out for"], "from"))


def test_a_splines_groove_is_set_by_the_spline_not_by_its_shadow():
    assembly = build(read_piece(SAMPLES[0].with_name("plan-chest.piece")).design)
    joints = [joint for joint in assembly.joints if "spline" in joint.guest]
    assert joints
    wanted = {(round(dict(j.sizes)["width"], 6), round(dict(j.sizes)["depth"], 6)) for j in joints}
    hosts = {joint.host for joint in joints}
    found = [s for board in assembly.boards if board.id in hosts for s in settings_of(board, assembly)]
    sloping = [setting for setting in found if setting.reference == "sloping face"]
    assert {(round(s.width, 6), round(s.depth, 6)) for s in sloping} == wanted
    assert {s.board.id for s in sloping} == hosts
    # a groove that stops runs along the board, so nothing that a cutter is set to goes deeper than the board is thick
    assert all(s.depth <= s.board.thickness for s in found if s.form == "channel")
    row = next(row for row in tables(assembly)["Dados, grooves, rabbets"].rows if "sloping face" in row[-1])
    assert row[:3] == ("groove", "4.30", "7")
    assert row[4:] == ("", "", "10L, 10R, 10a: at the sloping face")


def test_flanks_alike_are_told_once_for_all_boards():
    assembly = build(read_piece(SAMPLES[0].with_name("plan-chest.piece")).design)
    told = {row[0]: row[-1] for row in tables(assembly)["Saw tilts"].rows}
    assert told["chamfer"] == "15p, 15q, 15s, 15t: face and other face, 2 from the end"
    assert told["mitre"].count("10a") == 1
    assert told["mitre"].count("10L, 10R: other face, 21 from the end") == 1
