"""Which flanks of a cut leave the wood, and which lie on its surface."""

from shopdraw.shape.path import Corner, Path, polygon, rectangle
from shopdraw.wood.board import Cut, Face
from shopdraw.wood.flank import open_segments, surface_segments
from shopdraw.wood.prism import cut_prism
from tests.wood.pieces import dado

SLANTED = polygon(((0, 0), (200, 0), (200, 40), (140, 100), (0, 100)))


def _on_surface(outline, cut, beyond=1.0):
    return surface_segments(outline, 20.0, cut_prism(outline, 20.0, cut), cut.outline, beyond)


def test_open_segments_of_a_stopped_dado():
    outline = rectangle(0, 0, 400, 300)
    assert open_segments(outline, 20.0, dado(50, 20, 6, (0, 290))) == (0,)
    assert open_segments(outline, 20.0, dado(50, 20, 6, (10, 290))) == ()
    assert open_segments(outline, 20.0, dado(50, 20, 6, (-5, 305))) == (0, 2)


def test_open_segments_on_an_edge_and_on_an_end():
    outline = rectangle(0, 0, 400, 300)
    rabbet = Cut("rabbet", Face.FAR, 0.0, 6.0, rectangle(0, -8, 400, 0))
    assert open_segments(outline, 20.0, rabbet) == (1, 2, 3)
    mortise = Cut("mortise", Face.FAR, 0.0, 30.0, rectangle(100, -14, 140, -6))
    assert open_segments(outline, 20.0, mortise) == ()
    end = Cut("tenon", Face.FOOT, 0.0, 30.0, rectangle(0, -20, 300, 0))
    assert open_segments(outline, 20.0, end) == (0, 1, 2, 3)


def test_a_segment_on_a_slant_is_open_and_one_that_crosses_it_is_not():
    along = Cut("dado", Face.FACE, 0.0, 6.0, polygon(((150.0, 0.0), (160.0, 0.0), (160.0, 80.0), (150.0, 90.0))))
    assert open_segments(SLANTED, 20.0, along) == (0, 2)
    assert open_segments(SLANTED, 20.0, dado(150, 10, 6, (0, 85))) == (0,)


def test_a_flank_that_starts_in_the_wood_and_leaves_it_is_not_open():
    arc = Path((Corner(88.0, -17.3, 0.5), Corner(147.0, -17.3), Corner(147.0, -11.0)))
    assert open_segments(rectangle(0, 0, 200, 100), 20.0, Cut("cove", Face.NEAR, 0.0, 6.5, arc)) == ()


def test_an_edge_cut_beyond_a_slant_is_open_where_the_slant_has_taken_the_wood():
    pocket = Cut("pocket", Face.HEAD, 0.0, 10.0, rectangle(60, -15, 70, -5))
    assert open_segments(SLANTED, 20.0, pocket) == (0, 1, 2, 3)
    assert _on_surface(SLANTED, pocket) == ()


def test_what_lies_outside_needs_no_overrun_and_what_lies_on_the_surface_does():
    assert _on_surface(rectangle(0, 0, 400, 300), dado(50, 20, 6, (0, 290))) == (0,)
    assert _on_surface(rectangle(0, 0, 400, 300), dado(50, 20, 6, (-5, 290))) == ()


def test_a_flank_on_the_surface_with_wood_just_beyond_it_is_not_moved():
    # a slot half a millimetre wide in the outline: moved by 1 mm the flank would stand in the wood past it
    slotted = polygon(((0, 0), (200, 0), (200, 100), (100.5, 100), (100.5, 50), (100, 50), (100, 100), (0, 100)))
    cut = Cut("notch", Face.FACE, 0.0, 6.0, rectangle(80, 60, 100, 90))
    assert open_segments(slotted, 20.0, cut) == (1,)
    assert _on_surface(slotted, cut, 1.0) == ()
    assert _on_surface(slotted, cut, 0.3) == (1,)
