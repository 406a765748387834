"""The steps as a table: every board moves in, floating joints say by how much, and heavy things are weighed."""

import re

import pytest

from shopdraw.build import build
from shopdraw.check.assembly_order import PIECE, assembly_order
from shopdraw.lists.assembly_table import assembly_tables, way_words
from shopdraw.piece.reading import parse_piece
from shopdraw.shipped import sample_names, sample_path
from shopdraw.wood.volume import mass_kg
from tests.check.desks import design
from tests.lists.test_joint_schedule import METRIC


def told(assembly):
    return assembly_tables(assembly, METRIC)


def test_steps_are_numbered_through():
    numbers = [row[0] for table in told(build(design())) for row in table.rows]
    assert numbers == list(range(1, len(numbers) + 1))


def test_every_board_of_a_sub_assembly_is_named_in_it():
    assembly = build(design())
    bench, _ = told(assembly)
    words = " ".join(str(row[1]) for row in bench.rows)
    for step in assembly_order(assembly).steps:
        if step.group != PIECE:
            for name in step.boards:
                label = assembly.board(name).label
                assert re.search(rf"(?<![\w.]){re.escape(label)}(?![\w.])", words), label


def test_alike_sub_assemblies_stand_in_one_row():
    bench, _ = told(build(design()))
    fronts = [row for row in bench.rows if row[2] and re.search(r"7\.\d+a", str(row[1]))]
    assert len(fronts) == 1


def test_a_floating_joint_says_by_how_much_in_its_step():
    assembly = build(design())
    words = " ".join(str(row[4]) for table in told(assembly) for row in table.rows)
    assert words.count("floats, gap") >= 3
    assert not re.search(r"gap(?! \d)", words)


def test_what_a_step_lifts_weighs_what_its_boards_do():
    assembly = build(design())
    _, main = told(assembly)
    weights = [row[3] for row in main.rows if row[3] is not None]
    light = sum(row[2] != "" and row[3] is None for row in main.rows)
    assert abs(sum(weights) - sum(mass_kg(board) for board in assembly.boards)) < 0.05 * light + 1e-6


@pytest.mark.parametrize("name", sample_names())
def test_nothing_is_said_to_weigh_nothing(name):
    assembly = build(parse_piece(sample_path(name).read_text(encoding="utf-8")).design)
    told_kg = [f"{row[3]:.1f}" for table in told(assembly) for row in table.rows if row[3] is not None]
    assert told_kg
    assert "0.0" not in told_kg


def test_the_lid_is_hung_and_taken_off_before_it_is_finished():
    _, main = told(build(design()))
    (lid,) = [row for row in main.rows if str(row[1]).startswith("8 ")]
    assert "hung, taken off" in lid[4]
    assert "butt hinge" in lid[4]
    assert lid[2] == "square onto the slant"


def test_a_way_is_told_by_where_it_comes_from():
    assert way_words((0.0, 0.0, -1.0)) == "down from above"
    assert way_words((-1.0, 0.0, 0.0)) == "from the right"
    assert way_words((0.0, 1.0, 0.0)) == "from the front"
    assert way_words(None) == "lies ready"


@pytest.mark.parametrize("name", sample_names())
def test_what_is_clamped_is_glued(name):
    """The last case board that glue holds is where clamps go on; shelves on pins and a screwed top come after it."""
    assembly = build(parse_piece(sample_path(name).read_text(encoding="utf-8")).design)
    rows = [row for table in told(assembly) for row in table.rows]
    clamped = [str(row[4]) for row in rows if "clamp;" in str(row[4])]
    assert len(clamped) == 1
    assert "glued" in clamped[0]
