"""Two fingers that zoom: on a trackpad, or on the screen."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QNativeGestureEvent
from PySide6.QtWidgets import QGestureEvent, QPinchGesture


def takes_pinch(
    event: QEvent, on_pad: Callable[[float, QPointF], None], on_screen: Callable[[QPinchGesture], None]
) -> bool:
    """Hands a pinch on; whether the event was one.

    Args:
        event: any event of a widget that has grabbed the pinch gesture.
        on_pad: is given the factor and where the pointer is, logical pixels of the widget.
        on_screen: is given the gesture.
    """
    if isinstance(event, QNativeGestureEvent) and event.gestureType() is Qt.NativeGestureType.ZoomNativeGesture:
        on_pad(1.0 + event.value(), event.position())
        return True
    if isinstance(event, QGestureEvent):
        pinch = event.gesture(Qt.GestureType.PinchGesture)
        if isinstance(pinch, QPinchGesture):
            on_screen(pinch)
            event.accept(pinch)
            return True
    return False
