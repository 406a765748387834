"""The hardware schedule counts each fitting once and names every board that carries one."""

import pytest

from shopdraw.build import build
from shopdraw.lists.hardware import hardware_table
from shopdraw.trade import wood_screw
from tests.check.desks import design
from tests.cnc.router_reader import SAMPLES, piece
from tests.lists.test_joint_schedule import METRIC


def test_fittings_add_up_and_stand_with_their_boards():
    assembly = build(design())
    table = hardware_table(assembly, METRIC)
    assert sum(row[1] for row in table.rows) == sum(fitting.quantity for fitting in assembly.hardware)
    words = {label for row in table.rows for pair in str(row[4]).split(", ") for label in pair.split(" + ")}
    assert words == {assembly.board(board).label for fitting in assembly.hardware for board in fitting.on}


@pytest.mark.parametrize("sample", SAMPLES)
def test_a_screws_length_is_what_it_passes_and_what_it_bites_and_never_more_than_there_is(sample):
    _, assembly = piece(sample)
    rows = {(row[0], row[2]): str(row[3]) for row in hardware_table(assembly, METRIC).rows}
    told = 0
    for fitting in assembly.hardware:
        length = dict(fitting.sizes).get("length")
        if not fitting.through or length is None:
            continue
        told += 1
        assert fitting.through < length < fitting.through + fitting.room
        # printed to 0.1 mm each
        pairs = [tuple(float(figure) for figure in pair.split(", ")) for key, words in rows.items()
                 if key[0] == fitting.kind for pair in words.split("; ") if pair]
        assert any(abs(a - fitting.through) < 0.051 and abs(b - (length - fitting.through)) < 0.051 for a, b in pairs)
    assert told


@pytest.mark.parametrize(
    ("species", "share"),
    # NDS: 70 % of the root from a specific gravity of 0.5 up, 90 % from 0.6 up, none below; cherry 0.50, sugar maple
    # 0.63, white pine 0.35 (Wood Handbook FPL-GTR-282, Table 5-3b)
    [("cherry_black", 0.7), ("maple_sugar", 0.9), ("pine_eastern_white", None)],
)
def test_a_screws_pilot_hole_follows_from_the_wood_it_bites_into(species, share):
    assembly = build(design(stock={"primary": {"species": species, "thickness": 20.0}}))
    label = assembly.board("plinth.left").label
    # through 20 of a side: gauge 8
    root = wood_screw(8).root_mm
    told = "none needed" if share is None else f"Ø {METRIC.size(share * root)}"
    rows = [row for row in hardware_table(assembly, METRIC).rows if row[0] == "wood screw" and label in str(row[4])]
    assert any("4.2" in str(row[2]) and told in str(row[5]) for row in rows)
