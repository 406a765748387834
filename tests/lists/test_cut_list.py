"""The cut list: one row a part, each board once, thickness × width × length with their joinery."""

import re

import pytest

from shopdraw.build import build
from shopdraw.lists.cut_list import cut_list, grain, part_name
from shopdraw.measure import Unit, read_length
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.shop_reading import parse_shop
from shopdraw.shipped import sample_path
from shopdraw.wood.part import parts
from shopdraw.wood.volume import centre_of_mass
from tests.cnc.router_reader import SAMPLES, piece

HEADS = [
    "label", "name", "quantity", "stock", "thickness", "width", "length", "between shoulders", "rough thickness",
    "rough width", "rough length", "grain", "shows", "joints", "weight", "note",
]  # fmt: skip


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_61_every_board_is_listed_once(sample: str) -> None:
    design, assembly = piece(sample)
    table = cut_list(assembly, design)
    labels = [label for row in table.rows for label in str(row[0]).split(", ")]
    assert sorted(labels) == sorted(board.label for board in assembly.boards)
    assert sum(int(row[2]) for row in table.rows) == len(assembly.boards)  # type: ignore[arg-type]


@pytest.mark.parametrize("sample", SAMPLES)
def test_order_is_thickness_width_length(sample: str) -> None:
    design, assembly = piece(sample)
    assert [column.head for column in cut_list(assembly, design).columns] == HEADS
    back = next(part for part in parts(assembly.boards) if part.first.member.startswith("back"))
    row = next(row for row in cut_list(assembly, design, exact=True).rows if row[0] == back.labels)
    assert row[-3:] == (back.first.thickness, back.first.width, back.first.length)
    assert "upright" in row, "length runs along the grain"


@pytest.mark.parametrize("sample", SAMPLES)
def test_printed_sizes_are_within_half_a_step_of_the_exact_ones(sample: str) -> None:
    design, assembly = piece(sample)
    for row in cut_list(assembly, design, exact=True).rows:
        for printed, exact, step in zip(row[4:7], row[-3:], (64, 32, 32), strict=True):
            assert isinstance(exact, float)
            if isinstance(printed, str):
                assert read_length(printed, Unit.INCH).mm == pytest.approx(exact, abs=25.4 / step / 2 + 1e-6)
            else:
                assert printed == pytest.approx(exact, abs=0.05 + 1e-9)


@pytest.mark.parametrize("sample", SAMPLES)
def test_rough_is_never_less_than_net_on_any_line(sample: str) -> None:
    design, assembly = piece(sample)

    def mm(cell: object) -> float:
        return read_length(cell, Unit.INCH).mm if isinstance(cell, str) else float(cell)  # type: ignore[arg-type]

    for row in cut_list(assembly, design).rows:
        for finished, rough in zip(row[4:7], row[8:11], strict=True):
            assert mm(rough) >= mm(finished), row


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_06_length_has_the_joint_and_stands_beside_the_visible_one(sample: str) -> None:
    design, assembly = piece(sample)
    shelf = assembly.board("bottom")
    dado = next(level.dado_depth for level in assembly.levels if level.id == "bottom")
    inside = assembly.width - 2 * assembly.board("side.left").thickness
    assert shelf.between_shoulders == pytest.approx(inside)
    assert dado is not None
    assert shelf.length == pytest.approx(inside + 2 * dado)
    row = next(row for row in cut_list(assembly, design, exact=True).rows if shelf.label in str(row[0]).split(", "))
    assert row[6] != row[7]
    assert row[-1] == pytest.approx(inside + 2 * dado)


@pytest.mark.parametrize("sample", SAMPLES)
def test_weights_add_up_to_the_piece(sample: str) -> None:
    design, assembly = piece(sample)
    total = sum(float(row[14]) for row in cut_list(assembly, design).rows)  # type: ignore[arg-type]
    assert total == pytest.approx(centre_of_mass(assembly.boards)[0])


@pytest.mark.parametrize("sample", SAMPLES)
def test_matched_pairs_are_told_on_both_of_their_lines(sample: str) -> None:
    design, assembly = piece(sample)
    notes = {str(row[0]): str(row[15]) for row in cut_list(assembly, design).rows}
    left, right = assembly.board("side.left"), assembly.board("side.right")
    assert f"matched pair with {right.label}" in notes[left.label]
    assert f"matched pair with {left.label}" in notes[right.label]
    for labels, note in notes.items():
        if "matched pair with" in note:
            other = note.split("matched pair with ")[1].split(";")[0]
            assert f"matched pair with {labels}" in notes[other]


def test_joints_of_a_board_are_counted_by_kind() -> None:
    design, assembly = piece("pilot-station-desk")
    side = assembly.board("side.left")
    (words,) = [str(row[13]) for row in cut_list(assembly, design).rows if row[0] == side.label]
    for kind in {joint.kind for joint in assembly.joints if joint.host == side.id}:
        count = sum(joint.host == side.id and joint.kind == kind for joint in assembly.joints)
        assert (f"{kind.replace('-', ' ')} ×{count}" if count > 1 else kind.replace("-", " ")) in words


@pytest.mark.parametrize("sample", SAMPLES)
def test_fronts_and_outsides_are_told_to_show(sample: str) -> None:
    design, assembly = piece(sample)
    told = {label: str(row[12]) for row in cut_list(assembly, design).rows for label in str(row[0]).split(", ")}
    for each in assembly.boards:
        if each.member == "drawer.front" and not each.id.startswith("compartment"):
            assert "front" in told[each.label], each.id
        if each.member == "bottom":
            assert told[each.label] in ("", "front edge"), "its faces look into the case and to the floor"
        if each.member in ("drawer.back", "drawer.bottom") or each.id.startswith("block."):
            assert told[each.label] == "", each.id
    assert told[assembly.board("side.left").label].startswith("left")
    assert told[assembly.board("side.right").label].startswith("right")
    assert told[assembly.board("top").label].startswith("upper")


def test_case_58_fronts_of_a_bank_are_named_as_one_strip_in_order() -> None:
    """Four fronts, each under 5 3/4 in, from boards of 6 in: the drawers from the top down."""
    text = sample_path("harbour-office-desk").read_text(encoding="utf-8")
    design = parse_piece(text).design
    assembly = build(design)
    wide = parse_shop(
        '[yard.a]\nquarters = "4/4"\nwidths = [400]\nlengths = [3000]\n'
        '[yard.b]\nquarters = "5/4"\nwidths = [400]\nlengths = [3000]\n'
    ).shop
    fronts = [each for each in assembly.boards if each.member == "drawer.front"]
    rows = [str(row[15]) for row in cut_list(assembly, design, wide).rows if "from one strip, in order" in str(row[15])]
    assert rows
    heights = {each.label: each.frame.at[2] for each in fronts}
    for note in rows:
        labels = note.split("in order ")[1].split(";")[0].split(", ")
        assert len(labels) > 1
        assert [heights[label] for label in labels] == sorted((heights[label] for label in labels), reverse=True)


def test_name_of_a_part_is_what_its_boards_names_share() -> None:
    _, assembly = piece("pilot-station-desk")
    named = {part.id: part_name(part) for part in parts(assembly.boards)}
    assert named["side.left"] == "side, left"
    assert named["block.front-left"] == "foot block"
    assert named["drawer.2.bottom"] == "drawer bottom"


@pytest.mark.parametrize("name", SAMPLES)
def test_a_part_of_several_kinds_of_boards_is_called_by_each_of_their_names(name: str) -> None:
    _, assembly = piece(name)
    for part in parts(assembly.boards):
        told = part_name(part)
        for board in part.boards:
            assert re.split(r"[ ,]", board.name)[0] in re.split(r"[ ,]+", told), f"{part.labels}: {told}"


def test_a_bottom_and_a_shelf_alike_are_a_bottom_and_a_shelf() -> None:
    _, assembly = piece("logbook-shelves")
    (told,) = [part_name(part) for part in parts(assembly.boards) if part.id == "bottom"]
    assert told == "bottom and shelf 2"


def test_a_runner_between_the_outer_ones_says_what_it_stands_under() -> None:
    _, assembly = piece("plan-chest")
    names = {board.name for board in assembly.boards if board.member == "frame.runner"}
    assert "runner, middle at 1.1, web frame 1" in names


def test_grain_is_told_by_its_direction_in_the_piece() -> None:
    _, assembly = piece("pilot-station-desk")
    told = {name: grain(assembly.board(name)) for name in ("side.left", "top", "frame.1.runner-left")}
    assert told == {"side.left": "upright", "top": "left to right", "frame.1.runner-left": "front to back"}
