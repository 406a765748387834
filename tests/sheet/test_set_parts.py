"""What a set is composed of: planes, moved positions, points in sight, seasons, manner, columns."""

import math

import pytest
from shapely import LineString

from shopdraw.drawing.letters import text_width
from shopdraw.drawing.mark import Line, Meaning, Text
from shopdraw.sheet.column import Block, Column, Entry, flowed
from shopdraw.sheet.extent import extent, whole
from shopdraw.sheet.figure import metric_writing
from shopdraw.sheet.in_sight import points_in_sight
from shopdraw.sheet.look import look_for
from shopdraw.sheet.manner import larger_papers, manner_of
from shopdraw.sheet.moving import moving_marks, open_boards
from shopdraw.sheet.planes import cutting_planes
from shopdraw.sheet.season import Gap, words_of_gap
from shopdraw.view.direction import FRONT, PLAN, RIGHT_SIDE
from shopdraw.wood.assembly import Moisture
from shopdraw.wood.board import Stock
from shopdraw.wood.facet import facets
from tests.sheet.sample_set import DESKS, made

LOOK = look_for("iso", "large")


@pytest.mark.parametrize("desk", DESKS)
def test_a_plane_runs_inside_no_upright_board_and_in_no_face(desk):
    _, assembly, _ = made(desk)
    planes = {plane.letter: plane for plane in cutting_planes(assembly)}
    assert list(planes) == ["A", "B", "C", "D", "E", "G", "L"]
    x = planes["A"].plane.through[0]
    for board in assembly.boards:
        box = extent([board])
        if board.member in ("side", "divider", "kicker", "support"):
            assert not box.x0 - 0.5 < x < box.x1 + 0.5, board.id
        for letter, axis in (("A", 0), ("B", 1), ("C", 2), ("E", 2), ("G", 2)):
            at = planes[letter].plane.through[axis]
            assert min(abs(box[axis] - at), abs(box[axis + 3] - at)) > 0.4, (letter, board.id)


@pytest.mark.parametrize("desk", DESKS)
def test_the_open_lid_lies_level_at_the_writing_height(desk):
    _, assembly, _ = made(desk)
    slant = assembly.slant
    lid = next(board for board in open_boards(assembly) if board.id == "lid")
    box = extent([lid])
    # Turned by 180° − α about its pin the writing face is level, its free end a lid's length in front of the pin.
    assert box.z1 == pytest.approx(slant.writing_height_mm, abs=1e-3)
    assert box.z0 == pytest.approx(slant.writing_height_mm - slant.lid_thickness_mm, abs=1e-3)
    assert box.y0 == pytest.approx(slant.hinge_pin_mm[0] - slant.lid_length_mm, abs=1e-3)
    assert any(isinstance(mark, Line) for mark in moving_marks([lid], RIGHT_SIDE))


@pytest.mark.parametrize("direction", [FRONT, PLAN, RIGHT_SIDE])
def test_a_balloons_point_lies_where_its_board_is_nearest(direction):
    _, assembly, _ = made("harbour-office-desk")
    found = points_in_sight(assembly.boards, direction)
    assert found
    for board_id, points in found.items():
        for point in points:
            depths = {b.id: depth for b in assembly.boards if (depth := depth_at(b, direction, point)) is not None}
            assert depths[board_id] == max(depths.values()), (board_id, point)


def depth_at(board, direction, point):
    """How near to the viewer a board's surface is on the line of sight through a point; None where it isn't met."""
    best = None
    solid = facets(board.shape)
    corners = [board.frame.point(tuple(p)) for p in solid.points]
    for triangle in solid.triangles:
        a, b, c = (
            (
                *direction.on_paper(corners[i]),
                math.fsum(u * v for u, v in zip(direction.toward, corners[i], strict=True)),
            )
            for i in triangle
        )
        turn = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
        if abs(turn) < 1e-9:
            continue
        s = ((point[0] - a[0]) * (c[1] - a[1]) - (point[1] - a[1]) * (c[0] - a[0])) / turn
        t = ((b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0])) / turn
        if s >= -1e-9 and t >= -1e-9 and s + t <= 1 + 1e-9:
            depth = a[2] + s * (b[2] - a[2]) + t * (c[2] - a[2])
            best = depth if best is None else max(best, depth)
    return best


def test_case_17_a_gap_is_told_at_build_and_in_both_seasons():
    # Wood Handbook, dimensional change coefficients: black cherry tangential 0.00248 per 1 %.
    stock = Stock("primary", "cherry_black", "solid", 20.0, "", 0.00248, 560.0)
    gap = Gap(3.0, 203.2, stock, Moisture(7.0, 6.0, 11.0))
    assert gap.at(11.0) == pytest.approx(3.0 - 203.2 * 0.00248 * 4)
    assert words_of_gap(gap, metric_writing(".")) == "3 (3.5 dry, 1 wet)"


def test_a_gap_beside_plywood_has_one_figure():
    stock = Stock("sheet", "plywood_birch", "sheet", 6.0, "", 0.0, 680.0)
    assert words_of_gap(Gap(1.5, 300.0, stock, Moisture(8.0, 6.0, 12.0)), metric_writing(",")) == "1,5"


def test_a_piece_that_says_nothing_gets_its_units_style():
    inch, metric = (manner_of(made(desk)[0]) for desk in ("harbour-office-desk", "chart-room-desk"))
    assert (inch.style, inch.third_angle, inch.size.name) == ("asme", True, "ARCH D")
    assert (metric.style, metric.third_angle, metric.size.name) == ("iso", False, "A1")


def test_larger_papers_are_of_the_series_and_begin_with_the_one_asked_for():
    names = [size.name for size in larger_papers(manner_of(made("chart-room-desk")[0]).size)]
    assert names == ["A1", "A0"]


@pytest.mark.parametrize("desk", DESKS)
def test_a_sheet_that_gives_a_tilt_carries_its_caution(desk):
    for sheet in made(desk)[2].sheets.sheets:
        words = " ".join(mark.words for mark in sheet.marks if isinstance(mark, Text))
        views = " ".join(
            [d.words for p in sheet.placed for d in p.drawing.dimensions]
            + [m.words for p in sheet.placed for m in p.drawing.marks if isinstance(m, Text)]
        )
        if "tilt saw" in views:
            assert "Tilted blade: unplug the saw to set it" in words


def test_words_flow_from_column_to_column_and_sheet_to_sheet_without_loss():
    sentences = [f"sentence number {n} of the notes that a cover carries" for n in range(60)]
    pages = iter(
        [[Column(0, 60, 100, 0)], [Column(0, 60, 100, 0), Column(70, 60, 100, 0)], *([[Column(0, 60, 100, 0)]] * 20)]
    )
    made_pages = flowed([Block("Notes", tuple(Entry(words) for words in sentences))], pages, LOOK)
    words = " ".join(mark.words for page in made_pages for mark in page)
    assert words == " ".join(["Notes", *sentences])
    for page in made_pages:
        for mark in page:
            assert 0 <= mark.at[1] <= 100
            assert text_width(mark.words, mark.height) <= 60 + 1e-6


def test_the_whole_is_as_large_as_its_parts():
    _, assembly, _ = made("pilot-station-desk")
    box = whole(assembly)
    assert box.z0 == 0.0
    assert box.x1 - box.x0 == pytest.approx(assembly.width + 2 * 18.0)


SLANTED = ("harbour-office-desk", "chart-room-desk", "pilot-station-desk", "harbour-master-desk", "tide-lectern")


@pytest.mark.parametrize("piece", SLANTED)
def test_every_lids_end_has_its_detail_with_the_gap_or_lap_at_the_side(piece):
    _, assembly, whole_set = made(piece)
    d3 = whole_set.drawn.views.done.views["detail.d3"].drawing
    side, lids = extent([assembly.board("side.right")]), [b for b in assembly.boards if b.member in ("lid", "lid.cap")]
    end = extent(lids).x1
    told = [d for d in d3.dimensions if d.words.split(" ")[0] == ("lap" if end > side.x0 else "gap")]
    assert [round(d.measured, 6) for d in told] == [round(abs(end - side.x0), 6)]
    assert any(plane.letter == "D" for plane in whole_set.drawn.views.planes)


@pytest.mark.parametrize("piece", SLANTED)
def test_nothing_that_lies_behind_the_tops_section_is_broken_off_beyond_it(piece):
    _, assembly, whole_set = made(piece)
    view = whole_set.drawn.views.done.views.get("section.T")
    if view is None:
        assert not [j for j in assembly.joints if j.kind == "dovetail" and "top" in (j.host, j.guest)]
        return
    top = extent([assembly.board("top")])
    behind = [m for m in view.drawing.marks if isinstance(m, Line) and m.meaning is Meaning.BEHIND]
    cut = [m for m in view.drawing.marks if isinstance(m, Line) and m.meaning is Meaning.CUT]
    assert cut
    for mark in behind:
        assert min(mark.start[1], mark.end[1]) >= top.y0 - 1e-6


def test_a_few_details_stand_beside_the_arrangement_rather_than_alone():
    _, _, whole_set = made("mail-case")
    kinds = [{s.view.drawing.id.split(".")[0] for s in page.standing} for page in whole_set.drawn.pages]
    assert kinds[0] == {"front", "side", "plan", "detail"}
    assert all(kind != {"detail"} for kind in kinds)
    held = [s.view.drawing.id.removeprefix("detail.") for s in whole_set.drawn.pages[0].standing]
    assert all(name in whole_set.drawn.pages[0].title for name in held if name.startswith("d"))
    # the circle of each names the sheet on which it stands
    sheet = next(s for s in whole_set.sheets.sheets if s.key == "general-arrangement")
    names = [n for n in held if n.startswith("d")]
    words = [m.words for s in whole_set.sheets.sheets for p in s.placed for m in p.drawing.marks if isinstance(m, Text)]
    assert all(any(w.startswith(f"{name} / {sheet.number}-") for w in words) for name in names)


@pytest.mark.parametrize("paper_set", ["wall", "bench"])
@pytest.mark.parametrize("piece", SLANTED[:4])
def test_the_marks_of_the_view_from_above_keep_off_the_shut_lid_at_every_scale(piece, paper_set):
    _, _, whole_set = made(piece, "", paper_set)
    marks = [m for m in whole_set.drawn.views.done.views["section.A"].drawing.marks if isinstance(m, Line)]
    level = [m for m in marks if m.meaning is Meaning.PLANE and min(abs(m.start[i] - m.end[i]) for i in (0, 1)) < 1e-9]
    lid = [LineString((m.start, m.end)) for m in marks if m.meaning is Meaning.CUT and m.board.startswith("lid")]
    assert len(level) >= 4
    assert lid
    assert not any(LineString((m.start, m.end)).intersects(edge) for m in level for edge in lid)
