"""No handle covers a figure: it gives way along its own bar, and what a hand finds under a figure is the figure."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, QRectF

from shopdraw.editor.window import Window
from shopdraw.editor.yielding import Grip, shifts
from shopdraw.shipped import sample_names, sample_path
from tests.editor.gestures import drag, move
from tests.editor.test_canvas import value

BAR = (22.0, 8.0)
"""A handle's bar, pixels, as it is painted: across its way and along it."""


def bar(window: Window, handle_id: str) -> QRectF:
    handle = window.canvas.handle_named(handle_id)
    assert handle is not None
    at, upright = window.canvas.handle_place(handle), abs(handle.along[0]) > abs(handle.along[1])
    wide, high = BAR[::-1] if upright else BAR
    return QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high)


@pytest.mark.parametrize("sample", sample_names())
def test_no_handle_covers_a_figure_when_the_whole_sheet_is_in_sight(lone: Window, sample: str) -> None:
    for size in ((1280, 800), (1920, 1080)):
        lone.resize(*size)
        lone.show()
        lone.open_file(sample_path(sample))
        lone.canvas.fit()
        lone.grab()
        canvas = lone.canvas
        figures = {figure.name: canvas.figure_place(figure.id) for figure in canvas.scene.figures}
        shown = {name: place for name, place in figures.items() if not place.isEmpty()}
        assert len(shown) > 5
        for handle in canvas.scene.handles:
            covered = [name for name, place in shown.items() if place.intersects(bar(lone, handle.id))]
            assert covered == [], (handle.id, size)
        for figure in canvas.scene.figures:
            place = canvas.figure_place(figure.id)
            if not place.isEmpty():
                move(canvas, place.center(), held=False)
                assert canvas._over_figure == figure.id, (figure.name, canvas._over_handle)


def test_a_handle_that_gave_way_is_drawn_where_it_stands(lone: Window) -> None:
    lone.resize(1280, 800)
    lone.show()
    lone.open_file(sample_path("harbour-master-desk"))
    lone.grab()
    canvas = lone.canvas
    moved = [one for one in canvas.scene.handles if canvas.shift_of(one) != QPointF()]
    assert moved
    handle = next(one for one in moved if one.id == "compartments.1.width@front")
    before = handle.value
    drag(canvas, handle.id, (25.4, 0.0))
    after = canvas.handle_named(handle.id)
    assert after is not None
    assert after.value == pytest.approx(before + 25.4, abs=25.4 / 4)  # held to a whole step
    assert value(lone, "compartments", "1", "width") is not None


def test_a_handle_on_words_goes_along_its_own_bar() -> None:
    words = QRectF(90, 90, 20, 20)
    level, upright = Grip("level", QPointF(100, 100), (0.0, 1.0)), Grip("upright", QPointF(100, 100), (1.0, 0.0))
    found = shifts([level], [words])
    assert found["level"].y() == 0
    assert not level.box(found["level"]).intersects(words)
    found = shifts([upright], [words])
    assert found["upright"].x() == 0
    assert not upright.box(found["upright"]).intersects(words)


def test_handles_that_cover_nothing_stay_and_none_goes_onto_another() -> None:
    words = QRectF(90, 90, 20, 20)
    free, beside = Grip("free", QPointF(300, 300), (0.0, 1.0)), Grip("beside", QPointF(128, 100), (0.0, 1.0))
    on_it = Grip("on it", QPointF(100, 100), (0.0, 1.0))
    found = shifts([free, beside, on_it], [words])
    assert set(found) == {"on it"}
    assert not on_it.box(found["on it"]).intersects(beside.box(QPointF()))


def test_where_there_is_no_room_at_all_a_handle_stays() -> None:
    assert shifts([Grip("one", QPointF(0, 0), (1.0, 0.0))], [QRectF(-500, -500, 1000, 1000)]) == {}
