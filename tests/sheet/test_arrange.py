"""Views on paper: each in its place for the projection, far enough apart, off frame and title block."""

import itertools
import random

import pytest

from shopdraw.measure import Unit
from shopdraw.sheet import (
    PlainView,
    choose_scale,
    compose_view,
    free_area,
    look_for,
    stand_in_projection,
    stand_in_rows,
    stand_on_pages,
)
from shopdraw.sheet.arrange import with_more
from shopdraw.trade.paper import paper, papers_of
from shopdraw.trade.scale import preferred_scales
from tests.sheet.random_view import box_lines

A1 = paper("A1")
LOOK = look_for("iso", A1.group)
AREA = free_area(A1, LOOK)


def view(name, width, height, scale=0.2, look=LOOK):
    return compose_view(PlainView(name, name, tuple(box_lines(0, 0, width, height))), [], scale, look, {})


def three(scale=0.2, look=LOOK):
    return (
        view("front", 900, 1050, scale, look),
        view("side", 500, 1050, scale, look),
        view("plan", 900, 500, scale, look),
    )


def gaps(standing):
    for one, two in itertools.combinations(standing, 2):
        (ax0, ay0, ax1, ay1), (bx0, by0, bx1, by1) = one.box, two.box
        yield max(bx0 - ax1, ax0 - bx1, by0 - ay1, ay0 - by1)


def test_third_angle_has_the_plan_above_and_the_right_side_on_the_right():
    front, side, plan = (s.at for s in stand_in_projection(*three(), AREA, third_angle=True))
    assert side[0] > front[0]
    assert side[1] == pytest.approx(front[1])
    assert plan[1] > front[1]
    assert plan[0] == pytest.approx(front[0])


def test_first_angle_has_the_plan_below_and_the_right_side_on_the_left():
    front, side, plan = (s.at for s in stand_in_projection(*three(), AREA, third_angle=False))
    assert side[0] < front[0]
    assert side[1] == pytest.approx(front[1])
    assert plan[1] < front[1]
    assert plan[0] == pytest.approx(front[0])


@pytest.mark.parametrize("third", [True, False])
def test_views_stand_20_apart_and_off_frame_and_title_block(third):
    standing = stand_in_projection(*three(), AREA, third_angle=third)
    assert min(gaps(standing)) >= 20.0 - 1e-9
    assert all(AREA.holds(s.box) for s in standing)


def test_views_too_large_for_the_paper_do_not_stand():
    assert stand_in_projection(*three(1.0), AREA, third_angle=True) is None


def test_rows_fill_from_the_upper_left_in_order():
    views = [view(f"v{i}", 600, 500) for i in range(7)]
    standing = stand_in_rows(views, AREA)
    feet = [round(s.box[1], 3) for s in standing]
    assert feet == sorted(feet, reverse=True)
    assert [s.view.drawing.id for s in standing] == [f"v{i}" for i in range(7)]
    assert min(gaps(standing)) >= 20.0 - 1e-9
    assert all(AREA.holds(s.box) for s in standing)


def test_what_does_not_fit_one_sheet_goes_on_to_the_next():
    views = [view(f"v{i}", 600, 500) for i in range(30)]
    assert stand_in_rows(views, AREA) is None
    pages = stand_on_pages(views, AREA)
    assert len(pages) > 1
    assert [s.view.drawing.id for page in pages for s in page] == [f"v{i}" for i in range(30)]


def test_a_view_too_large_for_any_sheet_is_refused():
    assert stand_on_pages([view("v", 5000, 5000, 1.0)], AREA) is None


def test_the_largest_preferred_scale_that_fits_is_taken():
    """ISO 5455: 1:5 before 1:10; 1:2 of this desk is wider than A1."""
    choice = choose_scale(
        [A1],
        preferred_scales(Unit.MM),
        lambda size: look_for("iso", size.group),
        lambda scale, look, area: stand_in_projection(*three(scale.ratio, look), area, third_angle=False),
    )
    assert choice.scale.name == "1:5"


def test_a_larger_paper_is_taken_where_no_scale_fits_the_first():
    def only_full_size(scale, look, area):
        return stand_in_rows([view("v", 600, 400, 1.0, look)], area) if scale.ratio == 1.0 else None

    choice = choose_scale(
        papers_of("iso"), preferred_scales(Unit.MM), lambda size: look_for("iso", size.group), only_full_size
    )
    assert choice.size.name == "A1"


def test_nothing_fits_nowhere():
    assert choose_scale([A1], preferred_scales(Unit.MM), lambda _: LOOK, lambda *_: None) is None


def test_loose_views_fill_rows_and_sheets_that_others_leave_open():
    """A tall view leaves its row and the foot of the sheet open; small details come there, large ones keep order."""
    large = [view(f"section.{n}", 2000, 2000) for n in "ABC"]
    small = [view(f"detail.{n}", 250, 250) for n in range(16)]
    plain = stand_on_pages([*large, *small], AREA)
    pages = stand_on_pages([*large, *small], AREA, {v.drawing.id for v in small})
    assert len(pages) < len(plain)
    names = [s.view.drawing.id for page in pages for s in page]
    assert sorted(names) == sorted(v.drawing.id for v in [*large, *small])
    assert [n for n in names if n.startswith("section")] == [v.drawing.id for v in large]
    for page in pages:
        assert min(gaps(page), default=20.0) >= 20.0 - 1e-6
        assert all(AREA.holds(s.box) for s in page)


def test_without_loose_views_the_order_stands():
    views = [view("a", 1700, 1300), view("b", 1700, 1300), view("c", 200, 200)]
    names = [s.view.drawing.id for page in stand_on_pages(views, AREA) for s in page]
    assert names == ["a", "b", "c"]


def test_a_tall_side_view_moves_out_so_that_the_plan_has_room():
    """With the side at its least distance the plan would stand over both and leave the paper."""
    front, side, plan = view("front", 900, 1300), view("side", 500, 2100), view("plan", 1000, 900)
    standing = stand_in_projection(front, side, plan, AREA, third_angle=True)
    assert standing is not None
    assert min(gaps(standing)) >= 20.0 - 1e-6
    assert all(AREA.holds(s.box) for s in standing)
    assert standing[0].at[1] == pytest.approx(standing[1].at[1])
    assert standing[0].at[0] == pytest.approx(standing[2].at[0])


def test_loose_views_stand_over_low_ones_of_a_row_too():
    # A row of a tall and of a low section: the second detail stands over the low one, the first beside both.
    views = [view("tall", 1200, 1600), view("low", 1200, 200), view("d1", 500, 400), view("d2", 1000, 400)]
    (page,) = stand_on_pages(views, AREA, {"d1", "d2"})
    low = next(s for s in page if s.view.drawing.id == "low")
    over = [s for s in page if s.view.drawing.id == "d2"]
    assert all(s.box[1] > low.box[3] for s in over)
    assert all(low.box[0] - 1e-6 <= s.box[0] and s.box[2] <= low.box[2] + 1e-6 for s in over)
    assert min(gaps(page)) >= 20.0 - 1e-6
    assert all(AREA.holds(s.box) for s in page)


def test_loose_views_close_up_the_last_sheet_and_nothing_comes_too_near():
    pick = random.Random(5)
    closed = 0
    for _ in range(60):
        sections = [view(f"section.{n}", pick.randint(700, 1300), pick.randint(300, 1200)) for n in range(4)]
        details = [view(f"detail.{n}", pick.randint(250, 700), pick.randint(250, 700)) for n in range(12)]
        loose = {one.drawing.id for one in details}
        pages = stand_on_pages([*sections, *details], AREA, loose)
        for page in pages:
            assert all(AREA.holds(standing.box) for standing in page)
            assert min(gaps(page), default=20.0) > 20.0 - 1e-6
        names = [standing.view.drawing.id for page in pages for standing in page]
        assert sorted(names) == sorted([one.drawing.id for one in sections] + list(loose))
        last = [standing.view for standing in pages[-1]]
        if len(pages) > 1 and {one.drawing.id for one in last} <= loose:
            assert with_more(pages[:-1], last, AREA) is None
        closed += len(pages) == 1
    assert closed


def test_what_stands_keeps_its_place_where_more_comes_to_it():
    page = stand_in_rows([view("section.A", 900, 900), view("section.B", 900, 700)], AREA)
    (more,) = with_more([page], [view("detail.1", 300, 300), view("detail.2", 300, 300)], AREA)
    assert more[:2] == page
    assert len(more) == 4
    assert min(gaps(more)) > 20.0 - 1e-6
    assert all(AREA.holds(standing.box) for standing in more)
    # level with what stands there already, where there is room for it
    assert {round(s.box[1], 6) for s in more[2:]} <= {round(s.box[1], 6) for s in page}
    assert with_more([page], [view("detail.1", 4000, 1500)], AREA) is None
