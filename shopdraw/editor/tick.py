"""The mark of what can be turned on and off: an open box, or a box with a tick, so that no colour has to tell it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPen, QPixmap, QPolygonF

from shopdraw.editor.look import Colours

_SIZE = 48
"""Painted so large, shown smaller: crisp at any scale of the screen."""


def tick_icon(colours: Colours) -> QIcon:
    """The mark in both states."""
    icon = QIcon()
    for on, state in ((False, QIcon.State.Off), (True, QIcon.State.On)):
        for enabled, mode in ((True, QIcon.Mode.Normal), (False, QIcon.Mode.Disabled)):
            icon.addPixmap(_box(colours.colour("words" if enabled else "faint"), on=on), mode, state)
    return icon


def _box(colour: QColor, *, on: bool) -> QPixmap:
    picture = QPixmap(_SIZE, _SIZE)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(colour, 3))
    painter.drawRoundedRect(QRectF(7, 7, 34, 34), 4, 4)
    if on:
        painter.setPen(QPen(colour, 6, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin))
        painter.drawPolyline(QPolygonF([QPointF(15, 25), QPointF(22, 32), QPointF(34, 16)]))
    painter.end()
    return picture
