"""Faces and edges of solids: counted by hand, and by Euler's rule."""

import math

import numpy as np
import pytest

from shopdraw.wood.facet import facets, facets_beyond
from tests.wood.pieces import bored, cupboard, dado, plain, tenoned_rail


def test_a_box_has_six_faces_and_twelve_sharp_edges():
    box = facets(plain(100.0, 60.0, 20.0))
    assert len(set(box.face.tolist())) == 6
    assert len(box.edges) == 12
    assert box.sharp.all()


def test_a_stopped_dado_adds_eight_edges_and_four_corners_to_two():
    # floor: 4; mouth: 3 on the face and 1 shared with the edge it opens in; upright corners: 2 inside, 2 at the mouth
    shape = facets(plain(100.0, 60.0, 20.0, dado(40.0, 10.0, 8.0, (0.0, 50.0))))
    corners = set(shape.edges.ravel().tolist())
    assert len(corners) == 8 + 8
    # V - E + F = 2 for a solid without a hole: eight corners more, four faces more
    assert len(corners) - len(shape.edges) + len(set(shape.face.tolist())) == 2


@pytest.mark.parametrize("shape", [b.shape for b in cupboard()] + [tenoned_rail(), bored()])
def test_normals_are_unit_and_square_to_their_triangles(shape):
    made = facets(shape)
    corners = made.points[made.triangles]
    assert np.allclose(np.linalg.norm(made.normals, axis=1), 1.0)
    for first, second in ((0, 1), (1, 2)):
        assert np.abs(((corners[:, second] - corners[:, first]) * made.normals).sum(axis=1)).max() < 1e-6


@pytest.mark.parametrize("shape", [b.shape for b in cupboard()] + [tenoned_rail(), bored()])
def test_normals_point_outwards(shape):
    made = facets(shape)
    a, b, c = (made.points[made.triangles[:, k]] for k in range(3))
    assert ((np.cross(b - a, c - a) * made.normals).sum(axis=1) >= 0).all()
    # the divergence theorem: a third of the sum of area times distance is the volume
    volume = (np.cross(b - a, c - a) * a).sum() / 6
    assert volume > 0


def test_a_bores_wall_is_smooth_and_its_rims_are_sharp():
    made = facets(bored(5.0))
    wall = (made.edge_cylinder >= 0).all(axis=1)
    rims = (made.edge_cylinder >= 0).any(axis=1) & ~wall
    assert not made.sharp[wall].any()
    assert made.sharp[rims].all()
    points = made.points[made.edges[rims]]
    assert np.allclose(np.hypot(points[..., 0] - 40.0, points[..., 1] - 30.0), 5.0)


def test_a_cut_off_solid_is_capped():
    made = facets_beyond(plain(100.0, 60.0, 20.0), (1.0, 0.0, 0.0), 40.0)
    assert made.points[:, 0].min() == pytest.approx(40.0)
    assert np.allclose(made.normals[made.capped], (-1.0, 0.0, 0.0))
    corners = made.points[made.triangles[made.capped]]
    area = np.linalg.norm(np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]), axis=1).sum() / 2
    assert area == pytest.approx(1200.0)


def test_a_quarter_round_that_runs_out_into_faces_has_sharp_ends_only():
    made = facets(tenoned_rail())
    along = np.abs(made.points[made.edges[:, 0], 0] - made.points[made.edges[:, 1], 0]) > 1.0
    on_arc = (made.edge_cylinder >= 0).any(axis=1)
    # along the run the hollow meets face and edge square (its centre is the board's corner): two sharp edges
    assert made.sharp[along & on_arc].sum() == 2
    assert math.isclose(made.cylinders[made.edge_cylinder[on_arc].max(), 6], 8.0)
