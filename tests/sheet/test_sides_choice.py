"""A run goes to its second side where the first has no room, and stays where it is cheapest otherwise."""

from shopdraw.drawing.mark import Text
from tests.sheet.test_compose import by_id, composed, height


def test_words_in_the_way_of_its_extension_lines_send_a_figure_to_the_other_side():
    """Letters of a cutting plane on both extension lines' way: the left side would cost more than the right one."""
    letters = [Text((-40.0, 90.0), "C", 7.0), Text((-40.0, 290.0), "C", 7.0)]
    fact = height(100, 300, x=0.0)
    assert by_id(composed([fact]))[fact.id].line[0] < 0.0
    assert by_id(composed([fact], marks=letters))[fact.id].line[0] > 600.0


def test_a_run_without_room_on_its_side_is_tried_on_the_other():
    """One letter stands in the way on the left: still the cheaper side by 20 mm, but without room."""
    letter = [Text((-40.0, 390.0), "C", 7.0)]
    fact = height(400, 600, x=10.0)
    view = composed([fact], marks=letter)
    assert not view.unplaced
    assert by_id(view)[fact.id].line[0] > 600.0


def test_a_figure_that_neither_side_has_room_for_is_told():
    words = [Text((x, z), "words that stand in the way", 7.0) for x in (-340.0, 605.0) for z in range(-60, 1000, 40)]
    fact = height(400, 600, x=10.0)
    assert [left.fact for left in composed([fact], marks=words).unplaced] == [fact.id]
