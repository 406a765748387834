"""The sets of sheets that the window shows are those that the command line writes: same templates, same shop."""

from __future__ import annotations

from pathlib import Path

import pytest

from shopdraw.cli.built import built
from shopdraw.cli.work import checked
from shopdraw.editor.finding_job import piece_findings
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
    papers, tiles = sheet_sets(state.design, state.assembly, ()).sets
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


def test_templates_are_corrected_for_the_shops_printer_as_the_command_line_does(tmp_path: Path) -> None:
    state = desk(Setting("piece.shop", "mine.toml"))
    assert state.design is not None
    assert state.assembly is not None
    shop = tmp_path / "mine.toml"
    # A line of 200 mm that a printer draws 201 mm long is to be sent 200 / 201 as long.
    shop.write_text('format = 1\n[printer.desk]\nacross = "201"\n', encoding="utf-8")
    plain = sheet_sets(state.design, state.assembly, ()).sets[1].sheets[0]
    mended = sheet_sets(state.design, state.assembly, (), tmp_path / "desk.piece").sets[1].sheets[0]
    assert plain.stretch == (1.0, 1.0)
    paper = mended.paper
    assert mended.stretch == pytest.approx((1.0, 200 / 201) if paper.width > paper.height else (200 / 201, 1.0))


def test_findings_of_the_window_are_those_of_the_command_line(tmp_path: Path) -> None:
    """The shop's cutters and keys that mean nothing included: code, place and words of every one."""
    shop = tmp_path / "mine.toml"
    shop.write_text('format = 1\n[cutter.large]\ndiameter = "16"\nreach = "20"\n', encoding="utf-8")
    file = tmp_path / "desk.piece"
    text = changed_text(
        sample_path("pilot-station-desk").read_text(encoding="utf-8"),
        (Setting("piece.shop", "mine.toml"), Setting("case.widht", "3")),
    )
    file.write_text(text, encoding="utf-8")
    state = state_of(text, file.name)
    assert state.piece is not None
    assert state.assembly is not None
    found = piece_findings(state.piece.design, state.assembly, state.piece.cautions, file)
    work = checked(built(str(file), None))
    assert [(f.code, f.where, f.message) for f in found] == [(f.code, f.where, f.message) for f in work.findings]
    assert [f.where for f in found if f.code == "unknown-key"] == [("case.widht",), ("cutter.large.reach",)]
    default = piece_findings(state.piece.design, state.assembly, (), None)
    assert {f.code for f in found} - {f.code for f in default} > {"unknown-key"}, "what a large cutter alone can't do"
