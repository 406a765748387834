"""`facts` has every key of the contract, in mm and full precision, and what it tells holds together."""

import json
import math
from typing import Any

import pytest

from shopdraw.build.build import build
from shopdraw.piece.reading import parse_piece
from shopdraw.wood.finding import Finding, Severity
from shopdraw.write.facts import facts
from shopdraw.write.finding_facts import finding_facts
from tests.cnc.router_reader import SAMPLES, piece

KEYS = {
    "": "format piece slant moisture_percent levels openings boards parts joints hardware motions findings materials "
    "mass",
    "piece": "title kind units width_mm height_mm depth_mm",
    "slant": "seat hinge_edge angle_from_level_deg saw_tilt_deg run_mm rise_mm slope_length_mm slant_start_mm "
    "top_depth_mm hinge_pin_mm hinge_gap_mm pin_above_writing_mm writing_height_mm lid_inset_mm lid_thickness_mm "
    "lid_length_mm lid_width_mm core_length_mm core_width_mm lip_mm top_bevel_mm top_flat_mm top_blank_depth_mm "
    "open_projection_mm support_extension_mm support_top_mm support_droop_mm",
    "moisture_percent": "build dry wet",
    "levels": "id kind top_mm thickness_mm dado_bottom_mm dado_width_mm dado_depth_mm",
    "openings": "id use bottom_mm height_mm width_mm depth_mm",
    "boards": "id label name part quantity stock length_mm width_mm thickness_mm reference_edge weight_kg layers "
    "outline_mm cuts placement",
    "boards.cuts": "id kind face start_mm depth_mm outline_mm islands_mm open stopped for frame",
    "parts": "id boards quantity",
    "joints": "id kind host guest fit_mm relief_mm glued floats gap_mm",
    "hardware": "id kind quantity on",
    "motions": "id boards kind axis_mm reach",
    "findings": "code severity where message value limit unit basis silenced",
    "materials": "stock kind buy quantity unit",
    "mass": "total_kg hardware_kg centre_mm",
}
"""The contract, by path; what isn't there is null or empty, never missing."""

FOUND = Finding("sliver", Severity.CAUTION, ("side.left",), "a pocket ends short", 1.5, 3.0)
DESK = """
format = 1
[piece]
kind = "slant-desk"
units = "mm"
[case]
width = {width}
height = 1040
depth = 480
dado_depth = {dado}
[slant]
writing_height = 740
angle = 50
[stock.primary]
thickness = {thickness}
"""


def told(sample: str) -> dict[str, Any]:
    design, assembly = piece(sample)
    made: dict[str, Any] = json.loads(json.dumps(facts(design, assembly, (FOUND,)), allow_nan=False))
    return made


def desk(width: str = "900", dado: str = "7", thickness: str = "20") -> dict[str, Any]:
    design = parse_piece(DESK.format(width=width, dado=dado, thickness=thickness)).design
    return facts(design, build(design), ())


@pytest.mark.parametrize("sample", SAMPLES)
def test_every_key_of_the_contract_is_there(sample: str) -> None:
    made = told(sample)
    for path, keys in KEYS.items():
        rows: list[Any] = [made]
        for step in filter(None, path.split(".")):
            rows = [each for row in rows for each in (row[step] if isinstance(row[step], list) else [row[step]])]
        if rows == [None]:
            # what a piece doesn't have is null: only a piece with a slant has this
            assert path == "slant"
            assert made["piece"]["kind"] not in ("slant-desk", "lectern")
            continue
        if not rows:
            assert path == "motions"
            assert made["piece"]["kind"] in ("bookcase", "free")
        for row in rows:
            assert set(keys.split()) <= set(row), path


def test_what_a_piece_does_not_have_is_null_or_empty() -> None:
    made = told("pilot-station-desk")
    assert all(board["layers"] == [] for board in made["boards"])
    assert all(cut["frame"] is None for board in made["boards"] for cut in board["cuts"] if cut["face"] != "tilted")
    assert made["findings"][0]["silenced"] is None


@pytest.mark.parametrize("sample", SAMPLES)
def test_placements_are_proper_rotations_and_boards_lie_in_the_piece(sample: str) -> None:
    made = told(sample)
    for board in made["boards"]:
        rows = [board["placement"][i : i + 4] for i in (0, 4, 8)]
        (a, b, c), (d, e, f), (g, h, i) = (row[:3] for row in rows)
        assert a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g) == pytest.approx(1.0)
        corner = [row[3] for row in rows]
        assert -30.0 < corner[0] < made["piece"]["width_mm"] + 30.0
        assert -1.0 < corner[2] < made["piece"]["height_mm"] + 1.0


@pytest.mark.parametrize("sample", SAMPLES)
def test_open_segments_say_whether_a_cut_is_stopped(sample: str) -> None:
    for board in told(sample)["boards"]:
        for cut in board["cuts"]:
            assert cut["stopped"] is (not cut["open"])
            assert all(0 <= segment < len(cut["outline_mm"]) for segment in cut["open"])


@pytest.mark.parametrize("sample", SAMPLES)
def test_every_board_is_in_one_part_and_masses_add_up(sample: str) -> None:
    made = told(sample)
    listed = [board for part in made["parts"] for board in part["boards"]]
    assert sorted(listed) == sorted(board["id"] for board in made["boards"])
    assert all(part["quantity"] == len(part["boards"]) for part in made["parts"])
    assert sum(board["weight_kg"] for board in made["boards"]) == pytest.approx(made["mass"]["total_kg"])
    x, y, z = made["mass"]["centre_mm"]
    assert x == pytest.approx(made["piece"]["width_mm"] / 2, abs=2.0)
    assert 0.0 < y < made["piece"]["depth_mm"]
    assert 0.0 < z < made["piece"]["height_mm"]


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_04_left_and_right_are_two_parts_of_one_each(sample: str) -> None:
    made = told(sample)
    sides = [part for part in made["parts"] if part["boards"][0].startswith("side.")]
    assert [(part["boards"], part["quantity"]) for part in sides] == [(["side.left"], 1), (["side.right"], 1)]
    left, right = ([b for b in made["boards"] if b["id"] == f"side.{hand}"][0] for hand in ("left", "right"))  # noqa: RUF015
    assert (left["name"], right["name"]) == ("side, left", "side, right")
    assert (left["reference_edge"], right["reference_edge"]) == ("near", "far")

    def starts(board: dict[str, Any]) -> list[float]:
        return sorted(min(c[0] for c in cut["outline_mm"]) for cut in board["cuts"] if cut["kind"] == "dado")

    def across(board: dict[str, Any]) -> list[float]:
        (rabbet,) = [cut for cut in board["cuts"] if "back" in cut["for"]]
        return sorted({c[1] for c in rabbet["outline_mm"]})

    assert starts(left) == pytest.approx(starts(right)), "as far from the foot"
    assert across(left)[0] == pytest.approx(0.0), "the rabbet changes edge"
    assert across(right)[1] == pytest.approx(right["width_mm"])


def test_case_06_a_shelf_is_longer_than_the_inside_by_its_dados() -> None:
    # between sides 876.3, dados 6.35 deep: 889.0
    made = desk(width=str(876.3 + 2 * 20), dado="6.35")
    shelf = next(board for board in made["boards"] if board["id"] == "shelf.writing")
    assert shelf["length_mm"] == pytest.approx(889.0)
    assert shelf["between_shoulders_mm"] == pytest.approx(876.3)
    runner = next(board for board in made["boards"] if board["id"] == "frame.1.runner-left")
    tenons = [j["tenon_mm"] for j in made["joints"] if j["guest"] == "frame.1.runner-left" and "tenon_mm" in j]
    assert len(tenons) == 2
    assert runner["length_mm"] == pytest.approx(runner["between_shoulders_mm"] + sum(tenons))


def test_case_07_dados_follow_the_measured_thickness_and_tops_stay() -> None:
    # 0.703 in stock: 17.856 + 0.10 fit = 17.956 wide; the dado's bottom lies the measured thickness below the top
    made = desk(thickness='"0.703 in"', dado="5.9")
    shelf = next(level for level in made["levels"] if level["id"] == "writing")
    assert shelf["thickness_mm"] == pytest.approx(17.8562)
    assert shelf["dado_width_mm"] == pytest.approx(17.956, abs=0.001)
    assert shelf["top_mm"] == pytest.approx(740.0)
    foot = next(b for b in made["boards"] if b["id"] == "side.left")["placement"][11]
    assert shelf["dado_bottom_mm"] == pytest.approx(740.0 - 17.8562 - foot)
    side = next(b for b in made["boards"] if b["id"] == "side.left")
    cut = next(c for c in side["cuts"] if c["kind"] == "dado" and "shelf" in c["for"])
    assert min(c[0] for c in cut["outline_mm"]) == pytest.approx(shelf["dado_bottom_mm"])


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_08_every_guest_reaches_the_dados_bottom_less_its_relief(sample: str) -> None:
    made = told(sample)
    boards = {board["id"]: board for board in made["boards"]}
    checked = 0
    for joint in made["joints"]:
        if joint["kind"] != "dado" or not joint["host"].startswith("side.") or len(joint["boards"]) != 1:
            continue
        guest, host = boards[joint["boards"][0]], boards[joint["host"]]
        out = _inside_face(host)
        reach = max(_corners_along(guest, out))
        # how far beyond the host's face the guest stands in it
        assert joint["depth_mm"] - reach == pytest.approx(joint["relief_mm"], abs=1e-6), joint["id"]
        checked += 1
    assert checked >= 4


def _inside_face(host: dict[str, Any]) -> tuple[float, float]:
    """x of the side's reference face, and the way into its wood."""
    p = host["placement"]
    return p[3], -p[2]


def _corners_along(guest: dict[str, Any], face: tuple[float, float]) -> list[float]:
    p, (x, way) = guest["placement"], face
    return [
        (p[0] * u + p[1] * v + p[2] * w + p[3] - x) * way
        for u, v, _ in guest["outline_mm"]
        for w in (0.0, -guest["thickness_mm"])
    ]


def test_slant_holds_together_by_trigonometry() -> None:
    slant = told("chart-room-desk")["slant"]
    angle = math.degrees(math.atan2(slant["rise_mm"], slant["run_mm"]))
    assert slant["angle_from_level_deg"] == pytest.approx(angle)
    assert slant["saw_tilt_deg"] == pytest.approx(90.0 - angle)
    assert slant["slope_length_mm"] == pytest.approx(math.hypot(slant["rise_mm"], slant["run_mm"]))


def test_finding_is_told_with_its_numbers_and_what_would_be_right() -> None:
    made = finding_facts(Finding("web", Severity.NOTE, ("a",), "m", right=("case.depth", "480 mm")))
    assert (made["severity"], made["right"]) == ("note", {"address": "case.depth", "value": "480 mm"})
    assert finding_facts(FOUND)["value"] == 1.5
