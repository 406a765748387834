"""What the sections tell of compartments: the planes that cut them, bays and spaces as they are."""

import pytest

from shopdraw.sheet.extent import extent
from shopdraw.sheet.planes import cutting_planes, plane_b, plane_f
from tests.sheet.sample_set import DESKS, made

DESK = "harbour-master-desk"


def test_section_b_cuts_the_drawers_and_the_compartments():
    assembly = made(DESK)[1]
    y = plane_b(assembly).plane.through[1]
    cut = [b for b in assembly.boards if b.member in ("drawer.side", "compartment.drawer.side", "partition")]
    assert len(cut) >= 8 + 12 + 5
    assert all(extent([board]).y0 < y < extent([board]).y1 for board in cut)


def test_a_section_in_plan_cuts_the_partitions_and_the_lowest_small_drawers():
    assembly = made(DESK)[1]
    z = plane_f(assembly).plane.through[2]
    for board in assembly.boards:
        lowest = board.id in ("drawer.c1.side-left", "drawer.c2.front", "drawer.c6.side-right")
        if board.member == "partition" or lowest:
            assert extent([board]).z0 < z < extent([board]).z1, board.id


@pytest.mark.parametrize("desk", DESKS)
def test_a_desk_without_compartments_has_no_plane_through_them(desk):
    assert "F" not in [plane.letter for plane in cutting_planes(made(desk)[1])]


def test_bays_and_spaces_are_told_as_they_are():
    # 40 - 2 × 13/16 = 38 3/8 in inside, five partitions of 3/8: six bays of 6 1/12 in; spaces of 2 1/8 in
    _, _, whole_set = made(DESK)
    sizes = {fact.id: fact.size() for fact in whole_set.drawn.views.facts if fact.views == ("section.B",)}
    bays = [size for name, size in sizes.items() if name.startswith("bay ")]
    assert bays == pytest.approx([73.0 / 12 * 25.4] * 6)
    spaces = [size for name, size in sizes.items() if name.startswith("space ") and ".1." in name]
    assert spaces[:2] == pytest.approx([2.125 * 25.4] * 2)


def test_the_plumb_front_is_told_in_words():
    # 288.925 mm behind the front plane is 11 3/8 in
    facts = {fact.id: fact for fact in made(DESK)[2].drawn.views.facts}
    assert facts["compartments:front"].words == "plumb front 11 3/8 behind the front plane"
