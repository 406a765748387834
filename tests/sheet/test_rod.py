"""Rods: every level, dado and opening is ticked where it lies, true to size on paper, and named without a clash."""

import re
from itertools import combinations, pairwise

import pytest

from shopdraw.build import build
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.drawing.sheet import SheetSet
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.box import box_of_text
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.rod import PITCH, rods, spread, ticks_of
from shopdraw.sheet.template import MARGIN, true_size_sheet
from shopdraw.sheet.tile import tiled_sheets
from shopdraw.trade.paper import paper
from shopdraw.wood.interference import box_of
from shopdraw.write.pdf import write_pdf
from tests.sheet.page_reader import read_pages
from tests.sheet.sample_set import DESKS, SAMPLES


def desk(name):
    design = read_piece(SAMPLES / f"{name}.piece").design
    assembly, manner = build(design), manner_of(design)
    return assembly, rods(assembly, manner.writing, design.piece.title, inch=manner.inch)


def ticked(rod):
    return sorted(m.start[0] for m in rod.lines if isinstance(m, Line) and m.meaning is Meaning.TEMPLATE)


def near(place, places):
    return min(abs(place - other) for other in places) < 0.06


@pytest.mark.parametrize("name", DESKS)
def test_every_level_dado_and_opening_is_ticked(name):
    assembly, made = desk(name)
    height, width, depth = (ticked(rod) for rod in made)
    foot = box_of(assembly.board("side.left"))[2]
    for level in assembly.levels:
        assert near(level.top, height), level.id
        assert near(level.top - level.thickness, height), level.id
        if level.dado_bottom is not None:
            assert near(foot + level.dado_bottom, height)
            assert near(foot + level.dado_bottom + level.dado_width, height)
    for opening in assembly.openings:
        assert near(opening.bottom, height)
        assert near(opening.bottom + opening.height, height)
        assert near(opening.left, width)
        assert near(opening.left + opening.width, width)
        assert near(opening.front + opening.depth, depth)
    assert near(0.0, height)
    assert near(assembly.height, height)
    assert near(assembly.width, width)
    assert near(assembly.depth, depth)


@pytest.mark.parametrize("name", DESKS)
def test_each_tick_has_its_own_name_and_names_do_not_overlap(name):
    for rod in desk(name)[1]:
        words = [mark for mark in rod.lines if isinstance(mark, Text)]
        assert len(words) == len(ticked(rod))
        boxes = [box_of_text(mark).bounds() for mark in words]
        for one, other in combinations(boxes, 2):
            assert one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
        x0, y0, x1, y1 = rod.box
        assert all(b[0] >= x0 and b[1] >= y0 and b[2] <= x1 and b[3] <= y1 for b in boxes)


def test_leaders_of_crowded_names_do_not_cross():
    for rod in desk("harbour-office-desk")[1]:
        leads = [m for m in rod.lines if isinstance(m, Line) and m.meaning is Meaning.SIZE and m.start[1] == 20.0]
        assert len(leads) == len(ticked(rod))
        for one, other in pairwise(sorted(leads, key=lambda m: m.start)):
            assert one.start[0] < other.start[0]
            assert one.end[0] < other.end[0]


def test_a_printed_rod_is_true_to_size(tmp_path):
    _, made = desk("chart-room-desk")
    rod = made[0]
    sheet = true_size_sheet(rod)
    write_pdf(SheetSet("rod", "", "", "iso", (sheet,), true_size=True), tmp_path / "rod.pdf")
    (page,) = read_pages(tmp_path / "rod.pdf")
    # upright strokes, from the page's own operators: one for each tick, 20 mm long
    found = sorted(
        stroke.start[0] for stroke in page.strokes
        if abs(stroke.start[0] - stroke.end[0]) < 1e-3 and abs(abs(stroke.end[1] - stroke.start[1]) - 20.0) < 0.01
    )  # fmt: skip
    x0 = rod.box[0]
    wanted = [place - x0 + MARGIN for place in ticked(rod)]
    assert len(found) == len(wanted)
    assert found == pytest.approx(wanted, abs=0.01)


@pytest.mark.parametrize("size", ["A4", "Letter"])
def test_tiles_hold_every_tick(size):
    _, made = desk("chart-room-desk")
    for rod in made:
        sheets = tiled_sheets(rod, paper(size))
        found = set()
        for sheet in sheets:
            for placed in sheet.placed:
                found |= {
                    round(m.start[0], 3) for m in placed.drawing.marks
                    if isinstance(m, Line) and m.meaning is Meaning.TEMPLATE and m.board == rod.board.id
                }  # fmt: skip
        assert found == {round(place, 3) for place in ticked(rod)}


def test_a_rod_tells_of_no_face_edge_or_grain():
    for rod in desk("chart-room-desk")[1]:
        said = " ".join(m.words for p in true_size_sheet(rod).placed for m in p.drawing.marks if isinstance(m, Text))
        assert not re.search(r"grain|reference face|reference edge|foot, reference", said)
        assert "check 100 mm" in said


def test_ticks_on_one_line_are_one_tick():
    assembly = desk("chart-room-desk")[0]
    for way in ("width", "depth", "height"):
        places = [tick.at for tick in ticks_of(assembly, way)]
        assert all(b - a >= 0.05 - 1e-9 for a, b in pairwise(places))


def test_names_are_spread_in_order_and_stay_about_their_ticks():
    assert spread([0.0, 50.0], 5.0) == [0.0, 50.0]
    assert spread([10.0, 10.0, 10.0], 5.0) == [5.0, 10.0, 15.0]
    places = [0.0, 1.0, 2.0, 30.0, 31.0, 90.0]
    moved = spread(places, PITCH)
    assert all(b - a >= PITCH - 1e-9 for a, b in pairwise(moved))
    assert sum(moved) == pytest.approx(sum(places))
