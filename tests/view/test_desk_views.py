"""The sample desks' views and sections, judged by rays."""

from functools import cache
from pathlib import Path

import pytest

from shopdraw.build.build import build
from shopdraw.drawing.mark import Area, Meaning
from shopdraw.piece.reading import read_piece
from shopdraw.shape.frame import dot
from shopdraw.view.direction import FRONT, ISOMETRIC, PLAN, RIGHT_SIDE
from shopdraw.view.projection import project
from shopdraw.view.section import Plane, section
from tests.view.judge import Judge
from tests.view.test_projection import _scans

SAMPLES = sorted(path.stem for path in (Path(__file__).parents[2] / "sample_projects").glob("*.piece"))
DIRECTIONS = {"front": FRONT, "side": RIGHT_SIDE, "plan": PLAN, "isometric": ISOMETRIC}


@cache
def _desk(name):
    return build(read_piece(Path(__file__).parents[2] / "sample_projects" / f"{name}.piece").design)


def test_there_are_samples():
    assert len(SAMPLES) >= 3


@pytest.mark.parametrize("direction", DIRECTIONS)
@pytest.mark.parametrize("name", SAMPLES)
def test_a_desks_view_shows_what_rays_see(name, direction):
    boards, looking = _desk(name).boards, DIRECTIONS[direction]
    seen = [mark for mark in project(boards, looking) if mark.meaning is Meaning.VISIBLE]
    judge = Judge(boards, looking)
    assert judge.idle_lines(seen[:: 15 if direction == "isometric" else 1]) == []
    assert judge.gaps(seen, _scans(boards, looking, 6), 4.0) == []


@pytest.mark.parametrize("name", SAMPLES)
@pytest.mark.parametrize("letter", ["A", "B", "D"])
def test_a_desks_section_shows_what_rays_see(name, letter):
    piece = _desk(name)
    plane = {
        "A": Plane(RIGHT_SIDE, (piece.width / 2 + 31.0, 0.0, 0.0)),
        "B": Plane(FRONT, (0.0, piece.depth / 2 + 3.3, 0.0)),
        "D": Plane(PLAN, (0.0, 0.0, piece.height * 0.8 + 1.234)),
    }[letter]
    drawn = [mark for mark in section(piece.boards, plane, 0.2) if not isinstance(mark, Area)]
    judge = Judge(piece.boards, plane.direction, dot(plane.through, plane.direction.toward))
    assert judge.idle_lines(drawn) == []
    assert judge.gaps(drawn, _scans(piece.boards, plane.direction, 8), 3.0) == []
