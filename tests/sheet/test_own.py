"""A person's own dimensions, moves and planes: where they stand, that sizes may change, what is told when lost."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path as FilePath

import pytest

from shopdraw.build import build
from shopdraw.drawing.dimension import Dimension
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.piece.reading import parse_piece
from shopdraw.sheet.own_facts import standing_dimensions
from shopdraw.sheet.set import Set, sheet_set
from shopdraw.write.pdf import write_pdf
from tests.sheet.judge import judge, report

DESK = (FilePath(__file__).parents[2] / "sample_projects" / "pilot-station-desk.piece").read_text(encoding="utf-8")
OWN = """
[move.height]
of = "floor/top:upper@front"
side = "right"
offset = 6

[dimension.fronts]
of = "drawer.3.front:lower/drawer.1.front:upper"
view = "front"
side = "right"

[dimension.inside]
of = "side.left:right/side.right:left"
view = "section.B"
side = "above"

[plane.M]
at = 150
cuts = "front-to-back"
"""


@lru_cache(maxsize=16)
def made(own: str = "", width: str = "") -> Set:
    text = DESK + own
    if width:
        assert "width = 640" in text
        text = text.replace("width = 640", f"width = {width}")
    design = parse_piece(text, "desk.piece").design
    assembly = build(design)
    return sheet_set(design, assembly, (), cut_list(assembly, design), (materials(assembly, design),))


def dimension(whole: Set, view: str, start: str) -> Dimension:
    return next(d for d in whole.drawn.views.done.views[view].drawing.dimensions if d.id.startswith(start))


def lost(whole: Set) -> dict[str, str]:
    return {f.where[0]: f.message for f in whole.findings if f.code == "points-nowhere"}


def test_a_moved_dimension_stands_on_its_side_and_further_out() -> None:
    before, after = dimension(made(), "front", "floor/top:upper"), dimension(made(OWN), "front", "floor/top:upper")
    assert before.line[0] < 0.0
    view = made(OWN).drawn.views.done.views["front"]
    assert after.line[0] * view.scale > view.outline[2]
    near = dimension(made(OWN.replace("offset = 6\n", "")), "front", "floor/top:upper")
    assert (after.line[0] - near.line[0]) * view.scale == pytest.approx(6.0)
    assert (after.words, after.measured) == (before.words, before.measured)


def test_an_added_dimension_measures_what_it_names() -> None:
    """Inside width: the case's width less two sides."""
    told = dimension(made(OWN), "section.B", "side.left:right/side.right:left@")
    whole = dimension(made(OWN), "section.B", "case:left/case:right")
    side = made(OWN).drawn.views
    assert side.nowhere == ()
    thick = dimension(made(OWN), "section.B", "case:left/side.left:right")
    assert told.measured == pytest.approx(whole.measured - 2 * thick.measured)


def test_what_the_view_tells_already_is_printed_in_brackets() -> None:
    told = dimension(made(OWN), "section.B", "side.left:right/side.right:left@")
    assert told.words.startswith("(")
    new = dimension(made(OWN), "front", "drawer.3.front:lower/drawer.1.front:upper")
    assert not new.words.startswith("(")


def test_an_added_plane_has_its_section_and_its_line() -> None:
    whole = made(OWN)
    titles = [placed.drawing.title for sheet in whole.sheets.sheets for placed in sheet.placed]
    assert titles.count("Section M–M") == 1
    front = whole.drawn.views.done.views["front"]
    assert sum(getattr(mark, "words", "") == "M" for mark in front.drawing.marks) == 2


def test_a_moved_plane_cuts_there() -> None:
    """A level plane through the middle drawer, where the topmost one was cut."""
    plane = next(p for p in made("[plane.C]\nat = 400\n").drawn.views.planes if p.letter == "C")
    assert plane.ends[0][1] == plane.ends[1][1] == pytest.approx(400.0, abs=1.0)


def test_no_fault_of_paper_with_all_of_them(tmp_path: FilePath) -> None:
    whole = made(OWN)
    write_pdf(whole.sheets, tmp_path / "own.pdf")
    faults = judge(tmp_path / "own.pdf", whole.sheets)
    assert not any(faults.values()), report(faults)


def test_they_survive_a_change_of_size() -> None:
    whole = made(OWN, width="700")
    assert lost(whole) == {}
    after = dimension(whole, "front", "floor/top:upper")
    view = whole.drawn.views.done.views["front"]
    assert after.line[0] * view.scale > view.outline[2]
    inside = dimension(whole, "section.B", "side.left:right/side.right:left@")
    assert inside.measured == pytest.approx(
        dimension(made(OWN), "section.B", "side.left:right/side.right:left@").measured + 60.0
    )


@pytest.mark.parametrize(
    ("own", "address", "words"),
    [
        ('[move.a]\nof = "floor/attic:upper@front"\n', "move.a", "no dimension"),
        ('[move.a]\nof = "case:left/case:right@front"\nside = "left"\n', "move.a", "above or below"),
        ('[move.a]\nof = "floor/top:upper@plan"\n', "move.a", "isn't to be seen"),
        ('[dimension.a]\nof = "side.left:left/attic:left"\nview = "front"\n', "dimension.a", "attic"),
        ('[dimension.a]\nof = "side.left:left/side.right:right"\nview = "moon"\n', "dimension.a", "no view"),
        ('[dimension.a]\nof = "back:left/back:right"\nview = "front"\n', "dimension.a", "shows no"),
        ("[plane.N]\nat = 100\n", "plane.N", "no section N–N"),
        ('[plane.Q]\nat = 100\ncuts = "level"\n', "plane.Q", "no letter"),
        ("[plane.A]\nat = 5000\n", "plane.A", "outside the piece"),
        ("[plane.L]\nat = 100\n", "plane.L", "aslant"),
        ('[plane.A]\nat = 100\ncuts = "level"\n', "plane.A", "not turned"),
    ],
)
def test_a_table_whose_fact_is_gone_points_nowhere(own: str, address: str, words: str) -> None:
    told = lost(made(own))
    assert list(told) == [address]
    assert words in told[address]


def test_every_dimension_can_be_named_by_an_editor() -> None:
    whole = made()
    told = standing_dimensions(whole.drawn.views.done.views)
    names = [one.of for one in told]
    assert len(names) == len(set(names))
    height = next(one for one in told if one.of == "floor/top:upper@front")
    assert (height.view, height.side, height.words) == ("front", "left", dimension(whole, "front", "floor/top").words)
    assert height.out > 0.0
    moved = made('[move.x]\nof = "floor/top:upper@front"\nside = "right"\n')
    again = next(one for one in standing_dimensions(moved.drawn.views.done.views) if one.of == height.of)
    assert again.side == "right"
