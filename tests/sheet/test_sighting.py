"""A dimension finds the edge in sight, never a hidden one."""

from shopdraw.drawing.mark import Line, Meaning
from shopdraw.sheet.sighting import Seen, Sightings
from shopdraw.view.direction import FRONT


def front(*marks):
    return Sightings((Seen("front", FRONT, marks),))


def visible(a, b):
    return Line(a, b, Meaning.VISIBLE, "shelf")


def hidden(a, b):
    return Line(a, b, Meaning.HIDDEN, "shelf")


def level_at(sightings, z, toward=(-1.0, 0.0)):
    return sightings.place("shelf:upper", (0.0, 0.0, z), (900.0, 400.0, z), toward).sight("front")


def test_of_an_edge_in_sight_the_end_nearest_to_the_dimension_is_taken():
    views = front(visible((20.0, 700.0), (300.0, 700.0)), visible((500.0, 700.0), (880.0, 700.0)))
    left, right = level_at(views, 700.0), level_at(views, 700.0, (1.0, 0.0))
    assert left.shown
    assert left.point == (20.0, 700.0)
    assert right.point == (880.0, 700.0)


def test_a_hidden_edge_is_no_place_for_a_dimension():
    assert not level_at(front(hidden((20.0, 700.0), (880.0, 700.0))), 700.0).shown


def test_a_line_that_only_crosses_the_level_doesnt_show_it():
    assert not level_at(front(visible((20.0, 0.0), (20.0, 900.0))), 700.0).shown


def test_a_line_that_ends_at_the_level_shows_it():
    sight = level_at(front(visible((20.0, 0.0), (20.0, 700.0))), 700.0)
    assert sight.shown
    assert sight.point == (20.0, 700.0)


def test_a_point_is_shown_where_an_edge_passes_it():
    views = front(visible((0.0, 0.0), (100.0, 100.0)))
    assert views.passes("front", (40.0, 40.0))
    assert not views.passes("front", (40.0, 41.0))
