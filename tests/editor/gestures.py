"""What a hand does, sent to widgets as real events."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication, QWidget

from shopdraw.editor.canvas import Canvas

STEPS = 6


def send(
    widget: QWidget, kind: QEvent.Type, at: QPointF, button: Qt.MouseButton, held: Qt.MouseButton, keys=None
) -> None:
    where = widget.mapToGlobal(at)
    modifiers = keys if keys is not None else Qt.KeyboardModifier.NoModifier
    QApplication.sendEvent(widget, QMouseEvent(kind, at, where, button, held, modifiers))


def press(widget: QWidget, at: QPointF) -> None:
    send(widget, QEvent.Type.MouseButtonPress, at, Qt.MouseButton.LeftButton, Qt.MouseButton.LeftButton)


def move(widget: QWidget, at: QPointF, *, held: bool = True, keys=None) -> None:
    button = Qt.MouseButton.LeftButton if held else Qt.MouseButton.NoButton
    send(widget, QEvent.Type.MouseMove, at, Qt.MouseButton.NoButton, button, keys)


def release(widget: QWidget, at: QPointF) -> None:
    send(widget, QEvent.Type.MouseButtonRelease, at, Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton)


def click(widget: QWidget, at: QPointF) -> None:
    press(widget, at)
    release(widget, at)


def drag(canvas: Canvas, handle_id: str, by_mm: tuple[float, float], *, keys=None, let_go: bool = True) -> None:
    """Draws a handle by so many mm of the piece (y up), in several moves."""
    handle = canvas.handle_named(handle_id)
    assert handle is not None, handle_id
    start = canvas.handle_place(handle)
    zoom = canvas.sight.zoom
    press(canvas, start)
    end = start
    for number in range(1, STEPS + 1):
        part = number / STEPS
        end = start + QPointF(by_mm[0] * zoom * part, -by_mm[1] * zoom * part)
        move(canvas, end, keys=keys)
    if let_go:
        release(canvas, end)
