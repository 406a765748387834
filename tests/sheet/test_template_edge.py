"""Templates of other boards than sides: which there are, profiles and jigs measured from their marks."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path as FilePath

import pytest

from shopdraw.build import build
from shopdraw.drawing.mark import Line, Meaning
from shopdraw.lists.machine_settings import Tools
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.manner import manner_of
from shopdraw.sheet.template import template_of
from shopdraw.sheet.template_choice import capped_boards, full_boards, profiled_boards
from shopdraw.sheet.template_edge import Making, NoCollar, jig_template, profile_template
from shopdraw.wood.assembly import Assembly

SAMPLES = FilePath(__file__).parents[2] / "sample_projects"


@lru_cache
def sample(name: str) -> tuple[Assembly, Making]:
    design = read_piece(SAMPLES / f"{name}.piece").design
    manner = manner_of(design)
    return build(design), Making(manner.writing, "desk", manner.inch)


def lines(marks: object, meaning: Meaning) -> list[Line]:
    return [mark for mark in marks if isinstance(mark, Line) and mark.meaning is meaning]  # type: ignore[attr-defined]


def test_boards_with_templates_are_sides_tails_shaped_ones_and_those_grooved_for_partitions() -> None:
    assembly, _ = sample("harbour-master-desk")
    chosen = [board.id for board in full_boards(assembly)]
    assert chosen[:2] == ["side.left", "side.right"]
    assert {"top", "shelf.rear", "bracket.1"} <= set(chosen)
    assert "back" not in chosen
    assert [board.id for board in capped_boards(assembly)] == ["lid.cap-left", "lid.cap-right"]
    chest, _ = sample("plan-chest")
    feet = ["plinth.left", "plinth.right", "plinth.front"]
    assert [board.id for board in full_boards(chest)] == ["side.left", "side.right", *feet]
    assert capped_boards(chest) == profiled_boards(chest) == ()
    plain, _ = sample("mail-case")
    assert not {board.id for board in full_boards(plain)} & set(feet)


def test_cuts_of_the_other_face_are_dashed_and_marked() -> None:
    assembly, making = sample("harbour-master-desk")
    top = assembly.board("top")
    made = template_of(top, assembly, making.writing, "desk", inch=making.inch)
    assert any(words.endswith(", other face") for words, _ in made.labels)
    dashed = lines(made.lines, Meaning.HIDDEN)
    groove = next(cut for cut in top.shape.cuts if cut.kind == "groove")
    for corner in groove.outline.corners:
        near = [
            line for line in dashed
            if min(abs(line.start[1] - corner.y), abs(line.end[1] - corner.y)) < 1e-6
        ]
        assert near, f"no dashed line at v = {corner.y:.2f}"


def test_a_profile_is_as_wide_as_the_front_and_as_thick() -> None:
    assembly, making = sample("harbour-office-desk")
    for board in profiled_boards(assembly):
        made = profile_template(board, making)
        x0, y0, x1, y1 = made.box
        assert (x1 - x0, y1 - y0) == pytest.approx((board.thickness, board.width))
        drawn = lines(made.lines, Meaning.TEMPLATE)
        points = [p for line in drawn for p in (line.start, line.end)]
        assert max(p[0] for p in points) - min(p[0] for p in points) == pytest.approx(board.thickness)
        assert max(p[1] for p in points) - min(p[1] for p in points) == pytest.approx(board.width)
        assert len(drawn) > 4, "a profile shows its lip"


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_jigs_opening_is_larger_all_round_by_half_of_collar_less_cutter(side: str) -> None:
    """A collar of 16 round a cutter of 6 keeps its side (16 − 6) / 2 = 5 from the template."""
    assembly, making = sample("harbour-master-desk")
    board = assembly.board(f"lid.cap-{side}")
    made = jig_template(board, Tools((6.0,), 75.0, (16.0,)), making)
    dashed = lines(made.lines, Meaning.HIDDEN)
    low, high = (pick(y for line in dashed for y in (line.start[1], line.end[1])) for pick in (min, max))
    levels = {round(y, 4) for line in lines(made.lines, Meaning.TEMPLATE) for y in (line.start[1], line.end[1])}
    assert round(low - 5.0, 4) in levels
    assert round(high + 5.0, 4) in levels
    groove = next(cut for cut in board.shape.cuts if cut.kind == "groove")
    widths = [corner.y for corner in groove.outline.corners]
    assert high - low == pytest.approx(max(widths) - min(widths))


def test_a_left_and_a_right_jig_are_of_opposite_hand() -> None:
    """The left cap's groove is in its far edge, which is seen with the face below; the right one's in its near edge."""
    assembly, making = sample("harbour-master-desk")
    told = []
    for side in ("left", "right"):
        made = jig_template(assembly.board(f"lid.cap-{side}"), Tools((6.0,), 75.0, (16.0,)), making)
        told.append(" ".join(mark.words for mark in made.lines if hasattr(mark, "words")))
    assert "reference face below" in told[0]
    assert "reference face above" in told[1]


def test_a_shop_without_a_collar_that_fits_is_told() -> None:
    assembly, making = sample("harbour-master-desk")
    with pytest.raises(NoCollar, match="8L"):
        jig_template(assembly.board("lid.cap-left"), Tools((20.0,), 75.0, (16.0,)), making)
