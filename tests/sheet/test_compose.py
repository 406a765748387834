"""Where figures stand on a view: sides, rows, steps, and what is refused."""

import itertools
import math

import pytest

from shopdraw.drawing.mark import Area, Hatching, Line, Meaning, Text
from shopdraw.shape.path import rectangle
from shopdraw.sheet import Balloon, Fact, PlainView, Rank, compose_view, look_for, metric_writing, write_figures
from shopdraw.sheet.box import Box, box_of_text
from shopdraw.sheet.compose import EmptyView
from tests.sheet.random_view import VIEW, at, box_lines

ISO, ASME = look_for("iso", "large"), look_for("asme", "large")
SCALE = 0.2


def composed(facts, look=ISO, marks=(), width=600.0, height=900.0, balloons=(), scale=SCALE):
    view = PlainView(VIEW, "View", (*box_lines(0, 0, width, height), *marks))
    return compose_view(view, facts, scale, look, write_figures(facts, metric_writing()), balloons)


def height(low, high, *, x=0.0, **more):
    a, b = at(f"z{low:g}", x, low), at(f"z{high:g}", x, high)
    more.setdefault("rank", Rank.OPENING)
    return Fact(f"{a.id}/{b.id}", a, b, more.pop("rank"), (VIEW,), 90.0, **more)


def by_id(view):
    return {dimension.id.split("@")[0]: dimension for dimension in view.drawing.dimensions}


def off(dimension, x=0.0):
    """How far a plumb dimension line stands left of a place, paper mm."""
    return (x - dimension.line[0]) * SCALE


def test_case_20_a_chain_and_its_overall_close_and_the_overall_stands_outside():
    points = [0, 101.6, 812.8, 832, 900]
    links = [height(a, b, chain="c") for a, b in itertools.pairwise(points)]
    found = by_id(composed([*links, height(0, 900, rank=Rank.OVERALL)]))
    lines = {off(found[link.id]) for link in links}
    assert len(lines) == 1
    assert lines.pop() >= 10.0 - 1e-9
    assert off(found["z0/z900"]) >= off(found[links[0].id]) + 8.0 - 1e-9


def test_the_side_nearest_to_the_features_is_taken():
    found = by_id(composed([height(100, 300, x=600.0)]))
    assert found["z100/z300"].line[0] > 600.0


def test_a_side_that_is_asked_for_is_worth_20_mm_and_no_more():
    near, far = height(100, 300, x=300.0, side="right"), height(100, 300, x=0.0, side="right")
    assert by_id(composed([near]))["z100/z300"].line[0] > 600.0
    assert by_id(composed([far]))["z100/z300"].line[0] < 0.0


def test_extension_lines_rather_go_where_they_cross_nothing():
    crossed = [Line((50, 0), (50, 900), Meaning.VISIBLE), Line((80, 0), (80, 900), Meaning.VISIBLE)]
    assert by_id(composed([height(100, 300, x=250.0)]))["z100/z300"].line[0] < 0.0
    assert by_id(composed([height(100, 300, x=250.0)], marks=crossed))["z100/z300"].line[0] > 600.0


def test_the_shorter_of_two_stands_nearer():
    found = by_id(composed([height(0, 700), height(100, 400)]))
    assert off(found["z100/z400"]) < off(found["z0/z700"])


def test_two_that_lie_apart_share_a_row():
    found = by_id(composed([height(0, 200), height(500, 800)]))
    assert off(found["z0/z200"]) == pytest.approx(off(found["z500/z800"]))


@pytest.mark.parametrize("look", [ISO, ASME])
def test_case_63_figures_of_short_links_step_off_their_line(look):
    points = [0, 300, 320, 600, 620, 900]
    links = [height(a, b, chain="c") for a, b in itertools.pairwise(points)]
    view = composed(links, look)
    assert not view.unplaced
    found = by_id(view)
    assert found["z300/z320"].leader
    assert not found["z0/z300"].leader
    assert {d.terminator for d in found.values()} == {"stroke"}


def test_a_lone_short_one_has_its_arrows_outside():
    found = by_id(composed([height(300, 325)]))
    assert found["z300/z325"].terminator == "arrow-outside"


def test_iso_figures_read_from_the_right_and_asme_figures_from_below():
    fact = height(0, 400)
    iso, asme = by_id(composed([fact]))[fact.id], by_id(composed([fact], ASME))[fact.id]
    assert (iso.words_angle_deg, iso.broken) == (90.0, False)
    assert (asme.words_angle_deg, asme.broken) == (0.0, True)


def test_five_locations_count_from_one_origin():
    origin = at("foot", 0, 0)
    facts = [
        Fact(f"foot/z{z}", origin, at(f"z{z}", 0, z), Rank.LOCATION, (VIEW,), 90.0, "running", chain="r")
        for z in (100, 110, 300, 320, 700)
    ]
    found = by_id(composed(facts))
    assert {d.kind for d in found.values()} == {"running"}
    assert len({round(d.line[0], 6) for d in found.values()}) == 1
    levels = [d.words_at[1] * SCALE for d in sorted(found.values(), key=lambda d: d.b[1])]
    assert all(b - a > 3.5 for a, b in itertools.pairwise(levels))


def test_case_64_a_dimension_never_goes_to_a_hidden_edge():
    hidden = Fact("a/b", at("a", 0, 0), at("b", 0, 50, shown=False), Rank.SIZE, (VIEW,), 90.0)
    view = composed([hidden])
    assert not view.drawing.dimensions
    assert [(u.fact, u.reason) for u in view.unplaced] == [("a/b", "b is a hidden edge in this view")]


def test_a_size_that_is_foreshortened_is_not_told_here():
    fact = Fact("a/b", at("a", 0, 0), at("b", 0, 50), Rank.SIZE, (VIEW,), 90.0, measured=70.0)
    assert "true size" in composed([fact]).unplaced[0].reason


@pytest.mark.parametrize("kind", ["linear", "running", "radius", "diameter", "clearance", "angular"])
def test_a_size_of_nothing_is_told_as_such(kind):
    place = at("a", 0, 100)
    vertex = place if kind == "angular" else None
    fact = Fact("a/b", place, at("b", 0, 100), Rank.SIZE, (VIEW,), 90.0, kind, vertex=vertex)
    assert [left.reason for left in composed([fact]).unplaced] == ["a and b are one place in this view"]


def test_hatch_is_left_out_a_millimetre_round_words():
    area = Area(rectangle(0, 0, 600, 900), (), Hatching("lines"))
    gap = Fact("a/b", at("a", 300, 400), at("b", 300, 500), Rank.CLEARANCE, (VIEW,), 90.0, "clearance", prefix="gap ")
    view = composed([gap], marks=[area])
    hatch = next(mark for mark in view.drawing.marks if isinstance(mark, Area))
    dimension = by_id(view)["a/b"]
    (box,) = hatch.clear
    x, y = dimension.words_at
    assert box[0] < x < box[2]
    assert box[1] < y < box[3]
    assert min(box[2] - box[0], box[3] - box[1]) * SCALE >= dimension.height + 2.0


def test_a_clearance_stands_inside_the_view():
    gap = Fact("a/b", at("a", 300, 400), at("b", 300, 500), Rank.CLEARANCE, (VIEW,), 90.0, "clearance", prefix="gap ")
    dimension = by_id(composed([gap]))["a/b"]
    assert 0 < dimension.line[0] < 600
    assert dimension.words == "gap 100"


def test_a_slope_is_dimensioned_along_itself_outside_the_view():
    a, b = (0.0, 600.0), (300.0, 900.0)
    marks = [Line(a, b, Meaning.VISIBLE)]
    fact = Fact("a/b", at("a", *a), at("b", *b), Rank.LEVEL, (VIEW,), 45.0, side="slant")
    dimension = by_id(composed([fact], marks=marks))["a/b"]
    away = (dimension.line[1] - dimension.line[0] - 600.0) / math.sqrt(2) * SCALE
    assert dimension.direction_deg == pytest.approx(45.0)
    assert away >= 10.0 - 1e-6


def test_a_note_has_an_arrow_on_an_edge_and_a_dot_in_a_face():
    edge = Fact("e", at("e", 300, 900), at("e", 300, 900), Rank.SIZE, (VIEW,), kind="note", words="dado 17.96 × 6.4")
    face = Fact("f", at("f", 300, 300), at("f", 300, 300), Rank.SIZE, (VIEW,), kind="note", words="face up")
    kinds = [type(mark).__name__ for mark in composed([edge, face]).drawing.marks]
    assert (kinds.count("Arrow"), kinds.count("Dot")) == (1, 1)


def test_a_radius_points_from_its_centre():
    fact = Fact("c/e", at("c", 300, 400), at("e", 330, 440), Rank.RADIUS, (VIEW,), kind="radius")
    dimension = by_id(composed([fact]))["c/e"]
    assert dimension.words == "R50"
    run = math.atan2(dimension.line[1] - 400, dimension.line[0] - 300)
    assert run == pytest.approx(math.atan2(40, 30))


def test_an_angle_with_many_words_has_them_at_a_leader():
    fact = Fact(
        "l/s",
        at("l", 400, 300),
        at("s", 400, 420),
        Rank.SIZE,
        (VIEW,),
        kind="angular",
        vertex=at("v", 200, 300),
        words="50.2° from level; tilt saw 39.8° from square",
    )
    assert by_id(composed([fact]))["l/s"].leader


def test_the_title_stands_below_all_that_belongs_to_the_view():
    facts = [Fact("w", at("a", 0, 0), at("b", 600, 0), Rank.OVERALL, (VIEW,), side="below")]
    view = composed(facts)
    title = next(mark for mark in view.drawing.marks if isinstance(mark, Text) and mark.words == "View")
    assert title.at[1] < by_id(view)["w"].line[1]
    assert title.at[1] * SCALE >= view.room[1] - 1e-6


def test_the_room_reaches_round_dimensions():
    view = composed([height(0, 900, rank=Rank.OVERALL)])
    assert view.outline == (0.0, 0.0, 120.0, 180.0)
    assert view.room[0] < -10.0


def test_a_figure_without_room_is_told_and_never_overprinted():
    wall = [Line((x, 0), (x, 2000), Meaning.VISIBLE) for x in range(0, 2001, 10)]
    gap = Fact("a/b", at("a", 1000, 400), at("b", 1000, 500), Rank.CLEARANCE, (VIEW,), 90.0, "clearance", prefix="gap ")
    note = Fact(
        "n", at("n", 1000, 1000), at("n", 1000, 1000), Rank.SIZE, (VIEW,), kind="note", words="in the thick of it"
    )
    view = composed([gap, note], marks=wall, width=2000, height=2000)
    assert {entry.fact for entry in view.unplaced} == {"a/b", "n"}
    assert not view.drawing.dimensions


def test_an_empty_view_is_refused_by_name():
    with pytest.raises(EmptyView, match="view view: it has no line"):
        compose_view(PlainView(VIEW, "", ()), [], 1.0, ISO, {})


def test_balloons_stand_outside_in_line_and_their_leaders_cross_nothing():
    targets = [(80, 850), (500, 700), (300, 500), (550, 450), (100, 200), (520, 60)]
    view = composed([], balloons=[Balloon(f"{i}L", t) for i, t in enumerate(targets)], scale=0.1)
    assert not view.unplaced
    lines = [m for m in view.drawing.marks if isinstance(m, Line) and m.meaning is Meaning.SIZE]
    assert len(lines) == 6
    for line in lines:
        lean = abs(math.degrees(math.atan2(line.end[1] - line.start[1], line.end[0] - line.start[0]))) % 90
        assert 14.0 < lean < 76.0
        assert math.dist(line.start, line.end) * 0.1 <= 80.0
    labels = [m for m in view.drawing.marks if isinstance(m, Text) and m.words.endswith("L")]
    assert all(not (0 < m.at[0] < 600 and 0 < m.at[1] < 900) for m in labels)


def test_a_balloon_takes_the_target_that_is_nearest_to_its_side():
    balloon = Balloon("7L", (300, 450), also=((590, 450),))
    view = composed([], balloons=[balloon], scale=0.2)
    line = next(m for m in view.drawing.marks if isinstance(m, Line) and m.meaning is Meaning.SIZE)
    assert line.start == pytest.approx((590, 450))


def test_a_slope_inside_is_dimensioned_beside_its_line_and_never_on_it():
    a, b = (100.0, 300.0), (400.0, 600.0)
    fact = Fact("a/b", at("a", *a), at("b", *b), Rank.LEVEL, (VIEW,), 45.0, side="inside")
    dimension = by_id(composed([fact], marks=[Line(a, b, Meaning.VISIBLE)]))["a/b"]
    off_line = abs(dimension.line[1] - dimension.line[0] - 200.0) / math.sqrt(2) * SCALE
    assert off_line >= 2.5


def test_figures_of_neighbours_never_read_as_one():
    points = [0, 300, 320, 340, 360, 600]
    links = [height(p, q, chain="c") for p, q in itertools.pairwise(points)]
    found = by_id(composed(links))
    boxes = [
        box_of_text(Text(d.words_at, d.words, d.height, "middle", d.words_angle_deg), SCALE) for d in found.values()
    ]
    for one, two in itertools.combinations(boxes, 2):
        assert not Box(one.x, one.y, one.along + 1.5, one.across, one.cos, one.sin).meets_box(two)


def test_a_millimetre_more_width_moves_no_height_by_more_than_a_row():
    points = [0, 120, 140, 420, 440, 460, 900]
    facts = [height(p, q, chain="c") for p, q in itertools.pairwise(points)]
    facts += [height(0, 900, rank=Rank.OVERALL), height(0, 440, rank=Rank.LEVEL)]
    before, after = by_id(composed(facts, width=600.0)), by_id(composed(facts, width=601.0))
    assert set(before) == set(after)
    for fact, dimension in before.items():
        assert math.dist(dimension.words_at, after[fact].words_at) * SCALE <= ISO.next_row
