"""Glue lines of panels: where the boards meet, and only where the panel has wood."""

import pytest

from shopdraw.build import build
from shopdraw.drawing.mark import Meaning
from shopdraw.sheet.glue_line import glue_lines
from shopdraw.wood.board import Face
from tests.check.desks import design


def _side():
    stock = {"primary": {"species": "cherry_black", "thickness": 20.0, "widths": (152.0,), "jointing": 3.0}}
    return build(design(stock=stock, case={"depth": 482.6})).board("side.left")


def test_case_57_a_side_of_four_boards_shows_three_lines():
    # 482.6 from boards of 152 that lose 3 on each edge: 146 clear, 584 together, 50.7 trimmed off each edge
    side = _side()
    assert side.staves == pytest.approx((95.3, 146.0, 146.0, 95.3))
    lines = glue_lines(side, Face.FACE)
    assert [line.start[1] for line in lines] == pytest.approx([95.3, 241.3, 387.3])
    assert all(line.meaning is Meaning.CENTRE for line in lines)


def test_a_line_ends_at_the_slant():
    side = _side()
    last = glue_lines(side, Face.FACE)[-1]
    # 482.6 - 387.3 = 95.3 behind the front plane the slant stands at z0 + 95.3 · tan α, from the side's foot
    corners = sorted((c.y, c.x) for c in side.shape.outline.corners)
    (v0, u0), (v1, u1) = corners[-1], next(c for c in corners[::-1] if c[1] == max(x for _, x in corners))
    front = max(u for v, u in corners if v == v0)
    assert last.end[0] == pytest.approx(front + (u1 - front) * (v0 - last.end[1]) / (v0 - v1))
    assert u0 <= front


def test_the_other_face_is_turned_over_and_edges_show_none():
    side = _side()
    assert [line.start[1] for line in glue_lines(side, Face.BACK)] == pytest.approx([-95.3, -241.3, -387.3])
    assert glue_lines(side, Face.NEAR) == ()
