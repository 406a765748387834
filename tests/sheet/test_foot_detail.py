"""d12, a shaped foot, and the details of a lid hinged above: their figures are the boards' own."""

from __future__ import annotations

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.sheet.foot_detail import NAME, foot_details, foot_plane
from tests.sheet.random_set import random_set_design
from tests.sheet.sample_set import made


def right_half_arcs(board, width):
    """Radius and both ends, world x and z, of the arcs in the right half of a board, from its bulges.

    The radius of an arc of bulge b over a chord c is c (1 + b²) / (4 |b|): DXF reference, LWPOLYLINE, group code 42.
    """
    corners = list(board.shape.outline.corners)
    for here, there in zip(corners, (*corners[1:], corners[0]), strict=True):
        one, two = (board.frame.point((corner.x, corner.y, 0.0)) for corner in (here, there))
        if here.bulge and min(one[0], two[0]) > width / 2:
            yield math.dist(one, two) * (1 + here.bulge**2) / (4 * abs(here.bulge)), one, two


def test_a_foots_radii_and_the_places_of_its_arcs_are_the_plinths():
    _, assembly, whole_set = made("plan-chest")
    plinth = assembly.board("plinth.front")
    arcs = list(right_half_arcs(plinth, assembly.width))
    dimensions = whole_set.drawn.views.done.views[f"detail.{NAME}"].drawing.dimensions
    radii = [d.measured for d in dimensions if d.kind == "radius"]
    assert sorted(radii) == pytest.approx(sorted({round(radius, 3) for radius, _, _ in arcs}), abs=0.01)
    end = max(plinth.frame.point((u, 0.0, 0.0))[0] for u in (0.0, plinth.length))
    along = [d.measured for d in dimensions if d.kind == "running" and d.direction_deg == 0.0]
    up = [d.measured for d in dimensions if d.kind == "running" and d.direction_deg == 90.0]
    floor = min(plinth.frame.point((0.0, v, 0.0))[2] for v in (0.0, plinth.width))
    for _, *ends in arcs:
        for x, _, z in ends:
            assert any(abs(told - (end - x)) < 0.01 for told in along), (x, along)
            assert z - floor < 0.01 or any(abs(told - (z - floor)) < 0.01 for told in up), (z, up)


def test_what_has_no_shaped_foot_has_no_such_detail():
    looked_at = set()
    for number in range(40):
        try:
            assembly = build(random_set_design(number)[0])
        except CannotBuild:
            continue
        shaped = assembly.has("plinth.front") and any(right_half_arcs(assembly.board("plinth.front"), assembly.width))
        planes = tuple(foot_plane(assembly))
        assert bool(planes) == bool(list(foot_details(assembly, planes))) == shaped, number
        looked_at.add(shaped)
    assert looked_at == {True, False}


def test_a_lid_hinged_above_has_its_pin_and_its_lower_edge():
    _, assembly, whole_set = made("tide-lectern")
    views = whole_set.drawn.views.done.views
    reach = next(motion.reach for motion in assembly.motions if motion.boards[0] == "lid")
    words = " ".join(mark.words for mark in views["detail.d1"].drawing.marks if hasattr(mark, "words"))
    assert f"opens by {reach:.1f}°" in words
    sizes = [d.measured for d in views["detail.d2"].drawing.dimensions]
    ledge = assembly.board("lid.ledge")
    for wanted in (assembly.slant.lid_thickness_mm, ledge.width, ledge.thickness):
        assert any(size == pytest.approx(wanted, abs=0.01) for size in sizes), (wanted, sizes)
