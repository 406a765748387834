"""The sets of sheets that the window shows are those that the command line writes: same templates, same shop."""

from __future__ import annotations

from pathlib import Path

from shopdraw.editor.sheet_job import sheet_sets
from shopdraw.editor.shop_of import shop_of
from shopdraw.editor.state import Setting, State, changed_text, state_of
from shopdraw.sheet.template_set import template_sheets
from shopdraw.shipped import sample_path


def desk(*settings: Setting) -> State:
    text = changed_text(sample_path("pilot-station-desk").read_text(encoding="utf-8"), settings)
    state = state_of(text)
    assert state.sound, state.faults
    return state


def templates(state: State) -> int:
    assert state.design is not None
    assert state.assembly is not None
    papers, tiles = sheet_sets(state.design, state.assembly, ())
    assert tiles.true_size
    assert not papers.true_size
    return len(tiles.sheets)


def test_templates_are_tiled_on_the_paper_in_hand_and_whole_on_a_roll() -> None:
    tiled, rolled = desk(), desk(Setting("drawing.template_paper", "roll"))
    assert rolled.design is not None
    assert rolled.assembly is not None
    made = list(template_sheets(rolled.design, rolled.assembly))
    assert templates(rolled) == len(made), "one page each"
    assert all(one.whole and not one.tiles for one in made)
    assert templates(tiled) > 4 * len(made)
    assert {one.board.label for one in made} >= {"1L", "1R"}


def test_the_shop_that_the_piece_names_is_found_beside_it_and_a_broken_one_gives_defaults(tmp_path: Path) -> None:
    state = desk(Setting("piece.shop", "mine.toml"))
    assert state.design is not None
    shop = tmp_path / "mine.toml"
    shop.write_text("format = 1\n[saw]\nkerf = 2.1\n", encoding="utf-8")
    assert shop_of(state.design, tmp_path / "desk.piece").saw.kerf == 2.1
    shop.write_text("format = 1\n[saw]\nkerf = thin\n", encoding="utf-8")
    assert shop_of(state.design, tmp_path / "desk.piece").saw.kerf == 3.2
