"""Sheets made by chance, held against the rules of paper by a judge that reads the PDF alone."""

import pytest

from shopdraw.drawing.sheet import SheetSet
from shopdraw.sheet import TitleFields, compose_sheet, free_area, stand_in_rows
from shopdraw.write.pdf import write_pdf
from tests.sheet.judge import judge, report
from tests.sheet.random_view import RandomView


@pytest.mark.parametrize("style", ["iso", "asme"])
@pytest.mark.parametrize("seed", range(8))
def test_no_fault_on_a_sheet_made_by_chance(seed, style, tmp_path):
    made = RandomView(seed, style)
    view = made.composed()
    standing = stand_in_rows([view], free_area(made.size, made.look))
    if standing is None:
        pytest.fail(f"seed {seed}: {view.width:.0f} × {view.height:.0f} doesn't fit {made.size.name}")
    sheet = compose_sheet("one", "1", 1, "View", made.size, standing, TitleFields(title="Desk"), made.look)
    sheets = SheetSet("Desk", "", "", style, (sheet,))
    write_pdf(sheets, tmp_path / "one.pdf")
    faults = judge(tmp_path / "one.pdf", sheets)
    assert not any(faults.values()), report(faults)


@pytest.mark.parametrize("seed", range(6))
def test_every_fact_is_placed_or_told_as_left_over(seed):
    made = RandomView(seed, "iso")
    view = made.composed()
    told = [*view.placed, *(entry.fact for entry in view.unplaced)]
    wanted = [*(fact.id for fact in made.facts), *(f"balloon {b.label}" for b in made.balloons)]
    placed_balloons = [w for w in wanted if w.startswith("balloon ") and w not in told]
    labels = [getattr(mark, "words", "") for mark in view.drawing.marks]
    assert sorted([*told, *placed_balloons]) == sorted(wanted)
    assert all(balloon.removeprefix("balloon ") in labels for balloon in placed_balloons)


@pytest.mark.parametrize("seed", range(3))
def test_the_same_view_comes_out_the_same(seed):
    assert RandomView(seed, "asme").composed() == RandomView(seed, "asme").composed()
