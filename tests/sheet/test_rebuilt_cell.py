"""Each board made again from the strings of its part-sheet cell alone is its solid, to within its surface times half
the step of the strings."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from functools import lru_cache

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.drawing.mark import Text
from shopdraw.lists.rough_size import Yard
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.cell_view import ComposedCell
from shopdraw.sheet.manner import Manner, larger_papers, manner_of
from shopdraw.sheet.part_sheet import NoRoomForPart, part_pages
from shopdraw.shipped import sample_names, sample_path
from shopdraw.wood.assembly import Assembly
from tests.build.designs import random_design
from tests.build.kinds import KINDS, random_kind
from tests.sheet.rebuilt_cell import Untold, allowed_volume, differing_volume, leaders, remade


def cells_of(design: Design) -> tuple[tuple[ComposedCell, ...], bool]:
    """The cells on the set's paper, or on the next larger one that has room for them."""
    assembly, asked = build(design), manner_of(design)
    for size in larger_papers(asked.size):
        with suppress(NoRoomForPart):
            return _cells_on(assembly, asked.on(size))
    raise AssertionError("no paper of the series has room for every part")


def _cells_on(assembly: Assembly, manner: Manner) -> tuple[tuple[ComposedCell, ...], bool]:
    pages = part_pages(assembly, manner.writing, manner.scales, manner.look, manner.size, manner.third_angle, Yard())
    return tuple(at.cell for page in pages for at in page.cells), manner.inch


@lru_cache(maxsize=16)
def sample(name: str, paper_set: str) -> tuple[tuple[ComposedCell, ...], bool]:
    design = read_piece(sample_path(name)).design
    return cells_of(design.model_copy(update={"drawing": design.drawing.model_copy(update={"set": paper_set})}))


def off(made: tuple[ComposedCell, ...], inch: bool) -> list[str]:
    """Boards that their cells don't tell, or tell otherwise."""
    found = []
    for composed in made:
        board = composed.cell.board
        try:
            by = differing_volume(board, remade(board, composed, inch))
        except Untold as error:
            found.append(str(error))
            continue
        most = allowed_volume(board, 25.4 / 64 if inch else 0.05)
        if by > most:
            found.append(f"{board.id}: {by:.0f} mm³ differ, {most:.0f} may")
    return found


@pytest.mark.parametrize("paper_set", ["wall", "bench"])
@pytest.mark.parametrize("name", sample_names())
def test_each_board_of_a_sample_is_remade_from_its_cell(name: str, paper_set: str) -> None:
    made, inch = sample(name, paper_set)
    assert len(made) > 8
    assert off(made, inch) == []


@pytest.mark.parametrize("kind", ["slant-desk", *KINDS])
def test_each_board_of_random_pieces_is_remade_from_its_cell(kind: str) -> None:
    built = 0
    for seed in range(400, 404):
        design = random_design(seed) if kind == "slant-desk" else random_kind(kind, seed)
        try:
            made, inch = cells_of(design)
        except CannotBuild:
            continue
        assert off(made, inch) == [], seed
        built += 1
    assert built >= 2


@pytest.mark.parametrize("spoil", ["no places", "wrong place", "wrong width", "no words", "wrong length", "no depth"])
def test_the_remaking_notices_what_is_missing_or_wrong(spoil: str) -> None:
    made, inch = sample("chart-room-desk", "wall")
    (cell,) = [one for one in made if one.cell.board.id == "side.left"]
    (standing,) = [s for s in cell.views if s.view.drawing.id.endswith(".face")]
    drawing, heading = standing.view.drawing, cell.marks
    marks, dimensions = drawing.marks, drawing.dimensions
    if spoil == "no places":
        dimensions = tuple(d for d in dimensions if d.kind != "running")
    elif spoil == "wrong place":
        dimensions = tuple(replace(d, words=d.words.replace("15", "25")) for d in dimensions)
    elif spoil == "wrong width":
        marks = tuple(replace(m, words=m.words.replace("21.10", "22.10")) if isinstance(m, Text) else m for m in marks)
    elif spoil == "no words":
        marks = tuple(m for m in marks if not (isinstance(m, Text) and "dado" in m.words))
    elif spoil == "wrong length":
        length = f"{cell.cell.board.length:g}"
        assert any(isinstance(m, Text) and length in m.words for m in heading)
        wrong = f"{cell.cell.board.length + 3.0:g}"
        heading = tuple(replace(m, words=m.words.replace(length, wrong)) if isinstance(m, Text) else m for m in heading)
    else:
        depth = f"{min(c.depth for c in cell.cell.board.shape.cuts if c.kind == 'dado'):g}"
        marks = tuple(
            replace(m, words=m.words.replace(f"× {depth}", "")) if isinstance(m, Text) and "dado" in m.words else m
            for m in marks
        )
    spoilt_view = replace(standing.view, drawing=replace(drawing, marks=marks, dimensions=dimensions))
    views = tuple(replace(s, view=spoilt_view) if s is standing else s for s in cell.views)
    assert off((cell,), inch) == []
    assert off((replace(cell, views=views, marks=heading),), inch)



@pytest.mark.parametrize("name", sample_names())
def test_leaders_of_alike_notes_end_in_cuts_of_their_own(name: str) -> None:
    for composed in sample(name, "wall")[0]:
        for standing in composed.views:
            ends: dict[str, set[int]] = {}
            view = standing.view.drawing.id.rpartition(".")[2]
            for words, tip in leaders(standing.view.drawing):
                for note in composed.cell.notes:
                    if note.words == words and note.view.value == view and tip in note.targets:
                        cuts = ends.setdefault(words, set())
                        assert not cuts & set(note.cuts), f"{standing.view.drawing.id}: two leaders of {words!r}"
                        cuts |= set(note.cuts)
