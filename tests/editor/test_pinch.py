"""Two fingers: on a trackpad or on the screen they zoom the sheet at the place where they are."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QNativeGestureEvent, QPointingDevice
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from shopdraw.editor.canvas import Canvas
from shopdraw.editor.window import Window

SCREEN = QTest.createTouchDevice


@pytest.fixture
def canvas(open_desk: Window) -> Canvas:
    return open_desk.canvas


def on_trackpad(canvas: QWidget, at: QPointF, value: float) -> None:
    pad = QPointingDevice.primaryPointingDevice()
    event = QNativeGestureEvent(
        Qt.NativeGestureType.ZoomNativeGesture, pad, 2, at, at, canvas.mapToGlobal(at), value, QPointF()
    )
    QApplication.sendEvent(canvas, event)


@pytest.mark.parametrize("value", [0.25, -0.2])
def test_a_pinch_on_a_trackpad_zooms_at_the_pointer(canvas: Canvas, value: float) -> None:
    at = QPointF(310, 240)
    before, zoom = canvas.in_view("front", at), canvas.sight.zoom
    on_trackpad(canvas, at, value)
    assert canvas.sight.zoom == pytest.approx(zoom * (1 + value))
    assert canvas.in_view("front", at) == pytest.approx(before)


def two_fingers(canvas: QWidget, spreads: list[float], middle: QPointF) -> None:
    """Two fingers beside a point, first so far apart, then so far."""
    screen = SCREEN()
    for number, spread in enumerate(spreads):
        points = [QPointF(middle.x() + way * spread / 2, middle.y()).toPoint() for way in (-1, 1)]
        touch = QTest.touchEvent(canvas.window().windowHandle(), screen)
        for finger, point in enumerate(points):
            there = canvas.mapTo(canvas.window(), point)
            (touch.press if number == 0 else touch.move)(finger, there)
        touch.commit()
        QApplication.processEvents()
    touch = QTest.touchEvent(canvas.window().windowHandle(), screen)
    for finger, point in enumerate(points):
        touch.release(finger, canvas.mapTo(canvas.window(), point))
    touch.commit()
    QApplication.processEvents()


def test_two_fingers_on_the_screen_zoom_where_they_are(canvas: Canvas) -> None:
    middle = QPointF(330, 260)
    before, zoom = canvas.in_view("front", middle), canvas.sight.zoom
    two_fingers(canvas, [100, 110, 130, 160, 200], middle)
    assert canvas.sight.zoom / zoom == pytest.approx(2.0, rel=0.15)  # twice as far apart
    here = canvas.in_view("front", middle)
    assert here == pytest.approx(before, abs=6.0 / zoom)


def test_two_fingers_never_drag_a_handle(canvas: Canvas, open_desk: Window) -> None:
    handle = canvas.handle_named("case.width@front")
    assert handle is not None
    text = open_desk.piece.state.text
    place = canvas.handle_place(handle)
    two_fingers(canvas, [80, 90, 110, 150], QPointF(place.x() + 40, place.y()))
    assert open_desk.piece.state.text == text
    assert not open_desk.work.hand.busy


@pytest.mark.parametrize("value", [0.25, -0.2])
def test_a_pinch_on_a_trackpad_brings_the_picture_nearer(open_desk: Window, value: float) -> None:
    open_desk.doing.picture()
    picture = open_desk.doing.picture_window
    assert picture is not None
    zoom = picture.view.zoom
    on_trackpad(picture.view, QPointF(200, 150), value)
    assert picture.view.zoom == pytest.approx(zoom * (1 + value))


def test_two_fingers_bring_the_picture_nearer_without_turning_it(open_desk: Window, qtbot) -> None:
    open_desk.doing.picture()
    picture = open_desk.doing.picture_window
    assert picture is not None
    qtbot.waitExposed(picture)
    view = picture.view
    zoom, turned = view.zoom, (view.round_deg, view.over_deg)
    two_fingers(view, [100, 110, 130, 160, 200], QPointF(250, 200))
    assert view.zoom > 1.3 * zoom
    assert (view.round_deg, view.over_deg) == turned
