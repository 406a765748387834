"""What details tell of open spaces, against rays cast through the solids."""

import re

import pytest

from shopdraw.wood.interference import box_of
from shopdraw.wood.solid import placed_solid
from tests.sheet.sample_set import DESKS, made


def _open_above(assembly, bar):
    """From the middle of a support's upper face up to the first wood, mm."""
    box = box_of(bar)
    x, y = (box[0] + box[3]) / 2, (box[1] + box[4]) / 2
    start, end = (x, y, box[5] + 1e-3), (x, y, assembly.height + 10.0)
    hits = [hit for other in assembly.boards if other.id != bar.id for hit in placed_solid(other).ray_cast(start, end)]
    return min(hit.distance for hit in hits) * (end[2] - start[2])


@pytest.mark.parametrize("desk", DESKS)
def test_the_room_over_a_support_is_what_is_open_there(desk):
    """Also where the shelf reaches further down and is notched over it."""
    design, assembly, whole = made(desk)
    told = {fact.id: fact.words for fact in whole.drawn.views.facts if fact.id.startswith("gap:support")}
    assert told
    for name, words in told.items():
        found = re.search(r"above ([\d /.,]+?)(?: \(|$)", words)
        figures = found.group(1).replace(",", ".").split()
        size = sum(_fraction(part) for part in figures) * (25.4 if design.piece.units == "inch" else 1.0)
        assert size == pytest.approx(_open_above(assembly, assembly.board(name.removeprefix("gap:"))), abs=0.4)


def _fraction(part):
    """A whole number, a decimal or a fraction."""
    above, _, below = part.partition("/")
    return float(above) / float(below or 1)
