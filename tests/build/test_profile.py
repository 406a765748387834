"""Profiles: areas and places by closed geometry (quarter circles), and what they take off a board."""

import math

import pytest

from shopdraw.build.bench import Bench, Box
from shopdraw.build.profile import KINDS, mould, profile
from shopdraw.shape.path import arc_of, area, bounds, signed_area
from shopdraw.wood.board import Stock
from shopdraw.wood.facet import facets
from shopdraw.wood.solid import placed_solid, solid_volume
from shopdraw.wood.volume import volume_mm3

OAK = Stock("oak", "oak_white", "solid", 20.0, "", 0.0, 700.0)
CORNER = 1 - math.pi / 4
"""What a quarter round of radius 1 leaves of its square."""


def _board():
    bench = Bench()
    return bench, bench.lay("shelf.1", "shelf", "shelf", OAK, Box(0, 300, 0, 80, 0, 20), u="+x", w="+z")


def _areas(made):
    return sum(area(path) for path in made.paths)


@pytest.mark.parametrize(
    ("made", "taken"),
    [
        (profile("chamfer", 4.0), 4 * 4 / 2),
        (profile("bevel", 5.0, over=12.0), 5 * 12 / 2),
        (profile("round", 6.0), 36 * CORNER),
        (profile("ovolo", 6.0, step=1.5), 36 * CORNER + 1.5 * 7.5 + 1.5 * 6.0),
        (profile("cove", 6.0), 36 * math.pi / 4),
        (profile("ogee", 8.0), 8 * 8 / 2),
        (profile("reverse-ogee", 8.0, step=2.0), 8 * 8 / 2 + 2 * 10 + 2 * 8),
        # two quarter rounds of radius 3 and a quirk 2 wide, 3 deep
        (profile("bead", 6.0, over=2.0), 2 * 9 * CORNER + 2 * 3),
    ],
)
def test_a_profile_takes_what_its_sizes_say(made, taken):
    assert _areas(made) == pytest.approx(taken)
    assert all(signed_area(path) > 0 for path in made.paths)


@pytest.mark.parametrize("kind", KINDS)
def test_a_profile_starts_at_the_arris_and_stays_in_the_wood(kind):
    made = profile(kind, 6.0)
    x0, y0, _, _ = bounds(made.paths[0])
    assert (x0, y0) == (0.0, 0.0)
    assert all(bounds(path)[0] >= 0 and bounds(path)[1] >= 0 for path in made.paths)
    assert made.down_edge <= 6.0 + 1e-9


def test_an_ogee_is_two_arcs_that_run_into_each_other():
    path = profile("ogee", 8.0).paths[0]
    arcs = [arc_of(a[:2], b[:2], a.bulge) for a, b in path.pairs() if a.bulge]
    # radius 4 each; the middles of both and the point where they meet, (4, 4), lie in one line
    assert [arc.radius for arc in arcs] == pytest.approx([4.0, 4.0])
    assert [arc.centre for arc in arcs] == [pytest.approx((4.0, 0.0)), pytest.approx((4.0, 8.0))]


def test_sizes_of_nothing_are_refused():
    with pytest.raises(ValueError, match="above 0"):
        profile("cove", 0.0)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize(("edge", "face"), [("-y", "+z"), ("+y", "-z"), ("-x", "+z"), ("+x", "-z"), ("+z", "-y")])
def test_a_profile_runs_along_any_edge(kind, edge, face):
    bench, board = _board()
    made = profile(kind, 6.0)
    mould(board, edge, face, made, id="moulding:shelf.1")
    (finished,) = bench.boards(lambda name: (name,))
    run = 80.0 if edge[1] == "x" else 300.0
    left = 300.0 * 80.0 * 20.0 - _areas(made) * run
    assert volume_mm3(finished.shape) == pytest.approx(left, abs=0.01)
    arcs = sum(math.pi / 2 * 6.0 for _ in range(2))
    assert solid_volume(finished.shape) == pytest.approx(left, abs=1.0 + 2 / 3 * 0.002 * arcs * run)
    x, y, z = (150.0, 40.0, 10.0)
    near = {"-y": (x, 0.2, z), "+y": (x, 79.8, z), "-x": (0.2, y, z), "+x": (299.8, y, z), "+z": (x, y, 19.8)}[edge]
    axis = "xyz".index(face[1])
    arris = [*near]
    arris[axis] = {"+z": 19.8, "-z": 0.2, "-y": 0.2}[face]
    there = placed_solid(finished)
    out = [*arris]
    out[axis] += 50.0 if face[0] == "+" else -50.0
    # a ray from just inside the arris straight out over the face meets no wood: the arris is gone
    assert not there.ray_cast(tuple(arris), tuple(out))


def test_two_profiles_mitre_where_they_meet():
    bench, board = _board()
    made = profile("chamfer", 6.0)
    mould(board, "-y", "+z", made, id="moulding:shelf.1:front")
    mould(board, "-x", "+z", made, id="moulding:shelf.1:left")
    (finished,) = bench.boards(lambda name: (name,))
    # both chamfers take 18 mm² × length; what both take is a pyramid over the corner: 6³ / 3
    taken = 18 * 300 + 18 * 80 - 6**3 / 3
    assert volume_mm3(finished.shape) == pytest.approx(300 * 80 * 20 - taken, abs=0.01)
    assert solid_volume(finished.shape) == pytest.approx(300 * 80 * 20 - taken, abs=0.5)


def test_a_profile_stops_where_it_is_told():
    bench, board = _board()
    mould(board, "-y", "+z", profile("cove", 6.0), id="moulding:shelf.1", inset=(20.0, 30.0))
    (finished,) = bench.boards(lambda name: (name,))
    assert volume_mm3(finished.shape) == pytest.approx(300 * 80 * 20 - 36 * math.pi / 4 * 250.0, abs=0.01)
    cut = finished.shape.cuts[0]
    assert (cut.start, cut.depth) == pytest.approx((20.0, 250.0))


def test_faces_remember_the_arcs_of_a_moulding():
    bench, board = _board()
    mould(board, "-y", "+z", profile("ogee", 8.0), id="moulding:shelf.1")
    (finished,) = bench.boards(lambda name: (name,))
    found = facets(finished.shape)
    assert sorted(found.cylinders[:, 6]) == pytest.approx([4.0, 4.0])
    # both axes run along the edge
    assert abs(found.cylinders[:, 3]) == pytest.approx([1.0, 1.0])
