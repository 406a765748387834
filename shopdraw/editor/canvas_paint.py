"""What the canvas paints, layer by layer. Functions of values and a painter; the widget decides what and when."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QPolygonF

from shopdraw.editor.look import Colours
from shopdraw.shape.path import Point
from shopdraw.view.draft import DraftFace

GRIP_LONG, GRIP_WIDE = 22.0, 8.0
"""A handle's length across its way and its width along it, pixels."""
LABEL_IN_LETTERS = 50
"""How wide a slip of words may be before it goes on in another line."""
_SIDES_OF_POINTER = ((1, 1), (-1, 1), (1, -1), (-1, -1), (1, 0), (-1, 0), (0, 1), (0, -1))
_BESIDE, _ROUND_POINTER = 19.0, 15.0
"""How far a slip stands from the pointer, and what it leaves free round it, pixels."""


def paint_faces(painter: QPainter, faces: Iterable[DraftFace], colours: Colours) -> None:
    """Paints a draft: each face filled and outlined over what lies behind it."""
    fill = QBrush(colours.colour("paper"))
    edge = QPen(colours.colour("ink"), 1.2)
    edge.setCosmetic(True)
    edge.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    thin = QPen(colours.colour("faint"), 1.0)
    thin.setCosmetic(True)
    of_cut = None
    for face in faces:
        if face.cut is not of_cut:
            of_cut = face.cut
            painter.setPen(thin if of_cut else edge)
            painter.setBrush(Qt.BrushStyle.NoBrush if of_cut else fill)
        # Most faces are upright rectangles, which Qt paints in half of the time.
        points = face.points
        (x0, y0), (x1, y1) = points[0], points[2]
        if len(points) == 4 and points[1] in ((x1, y0), (x0, y1)) and points[3] in ((x1, y0), (x0, y1)):
            painter.drawRect(QRectF(min(x0, x1), min(y0, y1), abs(x1 - x0), abs(y1 - y0)))
        else:
            painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in points]))


def contour(faces: Iterable[DraftFace]) -> QPainterPath:
    """What faces cover together."""
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    for face in faces:
        if not face.cut:
            path.addPolygon(QPolygonF([QPointF(x, y) for x, y in (*face.points, face.points[0])]))
    return path


def paint_glow(painter: QPainter, path: QPainterPath, colours: Colours) -> None:
    """Paints what is pointed at: filled, and outlined so that it isn't told by colour alone."""
    painter.fillPath(path, QBrush(colours.colour("glow")))
    edge = QPen(colours.colour("accent"), 2.4)
    edge.setCosmetic(True)
    painter.strokePath(path, edge)


def paint_grip(painter: QPainter, at: QPointF, along: Point, colours: Colours, *, strong: bool, focus: bool) -> None:
    """Paints a handle: a bar across the way it moves, with an arrow either way when it is pointed at.

    Args:
        painter: standing in pixels.
        at: where.
        along: the way it moves, on the canvas (y up).
        colours: of the look.
        strong: pointed at or held.
        focus: chosen with the keyboard.
    """
    upright = abs(along[0]) > abs(along[1])
    long, wide = (GRIP_LONG, GRIP_WIDE) if not strong else (GRIP_LONG + 4, GRIP_WIDE + 2)
    size = (wide, long) if upright else (long, wide)
    box = QRectF(at.x() - size[0] / 2, at.y() - size[1] / 2, *size)
    accent = colours.colour("accent")
    painter.setPen(QPen(colours.colour("paper"), 1.5))
    painter.setBrush(accent)
    painter.drawRoundedRect(box, wide / 2, wide / 2)
    if strong or focus:
        reach = wide / 2 + 4
        for way in (-1, 1):
            tip = (
                QPointF(at.x() + way * (reach + 7), at.y()) if upright else QPointF(at.x(), at.y() + way * (reach + 7))
            )
            foot = QPointF(at.x() + way * reach, at.y()) if upright else QPointF(at.x(), at.y() + way * reach)
            side = QPointF(0, 5) if upright else QPointF(5, 0)
            painter.drawPolygon(QPolygonF([tip, foot + side, foot - side]))
    if focus:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(accent, 1.5, Qt.PenStyle.DotLine))
        painter.drawRoundedRect(box.adjusted(-5, -5, 5, 5), 6, 6)


def paint_label(
    painter: QPainter,
    pointer: QPointF,
    lines: Sequence[tuple[str, bool]],
    font: QFont,
    colours: Colours,
    room: QRectF,
    clear: Iterable[QRectF] = (),
) -> QRectF:
    """Paints a small slip of words beside the pointer, where it covers least of what must stay in sight.

    Args:
        painter: standing in pixels.
        pointer: what it stands beside.
        lines: words, and whether they are strong; long ones go on below.
        font: of the words.
        colours: of the look.
        room: where it must stay.
        clear: what it should not cover, the first rectangles for choice: figures, what is held.
    Returns:
        Where it stands.
    """
    strong = QFont(font)
    strong.setBold(True)
    widest = min(room.width() - 40, QFontMetricsF(font).averageCharWidth() * LABEL_IN_LETTERS)
    lines = [(part, bold) for words, bold in lines for part in _broken(words, strong if bold else font, widest)]
    fonts = [strong if bold else font for _, bold in lines]
    widths = [QFontMetricsF(f).horizontalAdvance(words) for f, (words, _) in zip(fonts, lines, strict=True)]
    high = QFontMetricsF(strong).height() + 3
    box = label_place(pointer, (max(widths) + 20, high * len(lines) + 12), room, tuple(clear))
    painter.setPen(QPen(colours.colour("accent"), 1.5))
    painter.setBrush(colours.colour("field"))
    painter.drawRoundedRect(box, 4, 4)
    painter.setPen(colours.colour("words"))
    for number, (f, (words, _)) in enumerate(zip(fonts, lines, strict=True)):
        painter.setFont(f)
        painter.drawText(QPointF(box.x() + 10, box.y() + 6 + high * number + QFontMetricsF(f).ascent()), words)
    return box


def label_place(pointer: QPointF, size: tuple[float, float], room: QRectF, clear: Sequence[QRectF]) -> QRectF:
    """Where a slip of words stands: on the side of the pointer where it covers least, never on the pointer itself.

    Args:
        pointer: in pixels.
        size: of the slip, width and height.
        room: where it must stay.
        clear: what it should not cover.
    """
    width, height = size
    inner = room.adjusted(4, 4, -4, -4)
    held = QRectF(pointer, pointer).adjusted(-_ROUND_POINTER, -_ROUND_POINTER, _ROUND_POINTER, _ROUND_POINTER)
    best, least = QRectF(), (math.inf, math.inf)
    for further in (1.0, 3.0, 6.0):
        for across, down in _SIDES_OF_POINTER:
            x = pointer.x() + across * (width / 2 + _BESIDE * further) - width / 2
            y = pointer.y() + down * (height / 2 + _BESIDE * further) - height / 2
            x = min(max(x, inner.left()), max(inner.right() - width, inner.left()))
            y = min(max(y, inner.top()), max(inner.bottom() - height, inner.top()))
            box = QRectF(x, y, width, height)
            covers = (_common(box, held), sum(_common(box, one) for one in clear if box.intersects(one)))
            if covers < least:
                best, least = box, covers
            if not any(covers):
                return box
    return best


def _common(one: QRectF, other: QRectF) -> float:
    shared = one.intersected(other)
    return shared.width() * shared.height()


def _broken(words: str, font: QFont, width: float) -> list[str]:
    """Words in lines no wider than so many pixels; a single word may be wider."""
    metrics = QFontMetricsF(font)
    lines = [""]
    for word in words.split(" "):
        longer = f"{lines[-1]} {word}" if lines[-1] else word
        if lines[-1] and metrics.horizontalAdvance(longer) > width:
            lines.append(word)
        else:
            lines[-1] = longer
    return lines


def paint_projection(painter: QPainter, lines: Iterable[tuple[QPointF, QPointF]], colours: Colours) -> None:
    """Paints lines that lead from a board in one view to the same board in another."""
    line = QPen(QColor(colours.accent), 1.0)
    line.setDashPattern([2.0, 5.0])
    painter.setPen(line)
    for start, end in lines:
        painter.drawLine(start, end)
