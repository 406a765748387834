"""Wood that is kept between the sizes a hand passes: the views are those made anew."""

import gc
from pathlib import Path

import pytest

from shopdraw.drawing.mark import Line
from shopdraw.editor import kept_wood
from shopdraw.editor.kept_wood import KeptWood
from shopdraw.editor.state import Setting, changed_text, state_of
from shopdraw.editor.views import full_views

SAMPLES = sorted((Path(__file__).parents[2] / "sample_projects").glob("*.piece"))


def _sizes(path):
    """A sample and the same at sizes that a hand may pass."""
    base = state_of(path.read_text(encoding="utf-8"))
    yield base
    for key, by in (("width", 1.5), ("width", 12.0), ("depth", -2.0), ("height", 3.0)):
        size = getattr(base.design.case, key) + by
        state = state_of(changed_text(base.text, [Setting(f"case.{key}", size)]), rough=True)
        if state.sound:
            yield state


def _places(marks):
    """Where lines run and what they mean; of two boards' that lie on one place either may be named."""
    found = set()
    for mark in marks:
        if isinstance(mark, Line):
            places = [value for end in sorted((mark.start, mark.end)) for value in end]
        else:
            places = [*mark.centre, mark.radius, mark.start_deg, mark.end_deg]
        found.add((mark.meaning, *(round(value, 4) + 0.0 for value in places)))
    return found


@pytest.mark.parametrize("path", SAMPLES, ids=[path.stem for path in SAMPLES])
def test_views_of_passed_sizes_are_those_made_anew(path):
    kept = KeptWood()
    for state in _sizes(path):
        found, anew = full_views(state.assembly, wood=kept.of), full_views(state.assembly)
        assert {view: _places(marks) for view, marks in found.items()} == {
            view: _places(marks) for view, marks in anew.items()
        }


def test_sizes_that_were_passed_are_forgotten_when_there_are_many(monkeypatch):
    kept = KeptWood()
    for state in _sizes(SAMPLES[0]):
        full_views(state.assembly, wood=kept.of)
    many = len(kept._known)
    kept.tidy()
    assert len(kept._known) == many
    monkeypatch.setattr(kept_wood, "MOST", 10)
    kept.tidy()
    assert 0 < len(kept._known) < many


def test_views_of_passed_sizes_leave_no_dead_rings_behind():
    """The worker process that makes them never searches for any."""
    kept = KeptWood()
    sizes = [state.assembly for state in _sizes(SAMPLES[0])]
    full_views(sizes[0], wood=kept.of)
    gc.collect()
    gc.disable()
    try:
        for assembly in sizes[1:]:
            full_views(assembly, wood=kept.of)
        assert gc.collect() < 50
    finally:
        gc.enable()
