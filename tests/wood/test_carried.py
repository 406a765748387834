"""Facets carried over to other sizes, against solids made anew."""

import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.piece.reading import parse_piece
from shopdraw.piece.saving import set_value
from shopdraw.shape.frame import Frame
from shopdraw.shape.path import circle, polygon, rectangle
from shopdraw.wood.board import Cut, Face, Shape
from shopdraw.wood.carried import carried
from shopdraw.wood.facet import facets
from tests.wood.pieces import bored, dado, plain, slanted_side, tenoned_rail

SAMPLES = sorted((Path(__file__).parents[2] / "sample_projects").glob("*.piece"))


def _volume(found):
    """What facets enclose, mm³: by tetrahedra from the origin."""
    a, b, c = (found.points[found.triangles[:, k]] for k in range(3))
    return float((np.cross(a, b) * c).sum() / 6)


def _agree(before, after):
    """Checks that facets were carried over and are those made anew, but for how faces are parted in triangles."""
    found, anew = carried(facets(before), before, after), facets(after)
    assert found is not None
    assert _volume(found) == pytest.approx(_volume(anew), abs=1e-3)
    assert np.allclose(found.points.min(axis=0), anew.points.min(axis=0), atol=1e-9)
    assert np.allclose(found.points.max(axis=0), anew.points.max(axis=0), atol=1e-9)
    a, b, c = (found.points[found.triangles[:, k]] for k in range(3))
    square = np.cross(b - a, c - a)
    large = np.linalg.norm(square, axis=1) > 0.1
    unit = square[large] / np.linalg.norm(square[large], axis=1)[:, None]
    assert np.abs(unit - found.normals[large])[found.cylinder[large] < 0].max(initial=0.0) < 1e-5
    for rods, shape in ((found.cylinders, "carried"), (anew.cylinders, "anew")):
        assert len(rods) == len(anew.cylinders), shape
    if len(anew.cylinders):
        across = np.cross(found.cylinders[:, :3] - anew.cylinders[:, :3], anew.cylinders[:, 3:6])
        used = np.isin(np.arange(len(across)), found.cylinder)
        assert np.abs(across[used]).max(initial=0.0) < 1e-6
    return found


def test_a_longer_board_has_its_dado_further_along():
    def shelved(length, width, at):
        dadoes = dado(50.0, 20.0, 6.0, (0.0, width)), dado(at, 20.0, 6.0, (0.0, width - 10.0))
        return plain(length, width, 20.0, *dadoes)

    _agree(shelved(400.0, 100.0, 300.0), shelved(433.3, 101.0, 333.0))


def test_a_hole_keeps_its_size_and_its_true_circle_moves():
    before = plain(100.0, 60.0, 20.0, Cut("bore", Face.FACE, 0.0, 20.0, circle((40.0, 30.0), 5.0)))
    after = plain(100.2, 60.02, 20.0, Cut("bore", Face.FACE, 0.0, 20.0, circle((40.1, 30.01), 5.0)))
    found = _agree(before, after)
    assert found.cylinders[0, :2] == pytest.approx((40.1, 30.01))


def test_a_hole_that_moves_far_past_others_is_made_anew():
    """The triangles between two holes would lie over one another."""

    def two(first, second):
        holes = (Cut("bore", Face.FACE, 0.0, 20.0, circle(at, 5.0)) for at in (first, second))
        return plain(300.0, 60.0, 20.0, *holes)

    before = two((40.0, 20.0), (150.0, 40.0))
    assert carried(facets(before), before, two((134.0, 20.0), (150.0, 40.0))) is None


def test_a_tenon_and_an_arc_on_an_edge_go_with_the_board():
    before = tenoned_rail()
    longer = replace(
        before,
        outline=rectangle(0.0, 0.0, 250.0, 60.0),
        cuts=(before.cuts[0], replace(before.cuts[1], depth=250.0)),
    )
    _agree(before, longer)


def test_a_side_whose_slant_grows_steeper_is_carried_part_by_part():
    cuts = (
        Cut("dovetail", Face.HEAD, 0.0, 20.0, polygon(((60.0, -20.0), (57.0, 0.0), (43.0, 0.0), (40.0, -20.0)))),
        Cut("dado", Face.FACE, 0.0, 6.0, rectangle(200.0, 0.0, 220.0, 290.0)),
        Cut("bore", Face.FACE, 0.0, 20.0, circle((30.0, 200.0), 3.0)),
    )
    before = slanted_side(*cuts)
    outline = polygon(((0.0, 0.0), (400.0, 0.0), (400.0, 150.0), (240.0, 310.0), (0.0, 310.0)))
    deeper = replace(cuts[1], outline=rectangle(200.0, 0.0, 220.0, 300.0))
    _agree(before, Shape(outline, 20.0, (cuts[0], deeper, cuts[2])))


@pytest.mark.parametrize(
    "after",
    [
        plain(100.0, 60.0, 20.0),
        bored(6.0),
        replace(bored(), cuts=(*bored().cuts, dado(80.0, 10.0, 5.0, (0.0, 60.0)))),
        replace(bored(), cuts=(replace(bored().cuts[0], face=Face.BACK),)),
        replace(bored(), cuts=(replace(bored().cuts[0], kind="groove"),)),
        Shape(polygon(((0.0, 0.0), (100.0, 0.0), (90.0, 60.0))), 20.0, bored().cuts),
    ],
    ids=["a cut less", "a larger hole", "a cut more", "from the other face", "another kind of cut", "another outline"],
)
def test_what_isnt_the_same_board_in_other_sizes_is_made_anew(after):
    assert carried(facets(bored()), bored(), after) is None


def test_where_two_cuts_that_touched_part_the_board_is_made_anew():
    touching = plain(100.0, 60.0, 20.0, dado(20.0, 10.0, 5.0, (0.0, 60.0)), dado(30.0, 10.0, 5.0, (0.0, 60.0)))
    apart = plain(100.0, 60.0, 20.0, dado(20.0, 10.0, 5.0, (0.0, 60.0)), dado(31.0, 10.0, 5.0, (0.0, 60.0)))
    assert carried(facets(touching), touching, apart) is None
    assert carried(facets(apart), apart, touching) is None


def test_a_tilted_cut_that_turns_is_made_anew_and_one_that_moves_is_carried():
    def leaning(angle, at, length=100.0):
        c, s = math.cos(angle), math.sin(angle)
        frame = Frame((1.0, 0.0, 0.0), (0.0, c, -s), (0.0, s, c), at)
        bevel = Cut("bevel", Face.TILTED, 0.0, 5.0, rectangle(0.0, 0.0, 40.0, 8.0), frame=frame)
        return plain(length, 60.0, 20.0, bevel)

    before = leaning(0.3, (30.0, 20.0, -3.0))
    assert carried(facets(before), before, leaning(0.4, (30.0, 20.0, -3.0))) is None
    _agree(before, leaning(0.3, (50.0, 20.0, -3.0), 120.0))


@pytest.mark.parametrize("path", SAMPLES, ids=[path.stem for path in SAMPLES])
def test_boards_of_a_sample_that_is_changed_are_those_made_anew(path):
    text = path.read_text(encoding="utf-8")
    design = parse_piece(text).design
    before = {board.id: board.shape for board in build(design).boards}
    tried = done = 0
    for key, by in (("width", 1.3), ("width", -9.0), ("depth", 2.0), ("height", 7.0)):
        try:
            now = build(parse_piece(set_value(text, f"case.{key}", getattr(design.case, key) + by)).design)
        except CannotBuild:
            continue
        for shape, name in {board.shape: board.id for board in now.boards}.items():
            if before.get(name, shape) == shape:
                continue
            tried += 1
            found = carried(facets(before[name]), before[name], shape)
            if found is not None:
                done += 1
                assert _volume(found) == pytest.approx(_volume(facets(shape)), abs=0.01), name
    assert done > 0.7 * tried > 0
