"""Which part of the canvas is looked at, and how large: a value, without Qt.

Canvas coordinates are mm with y up; screen coordinates are device-independent pixels with y down.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from shopdraw.shape.path import Point

LEAST_ZOOM, GREATEST_ZOOM = 0.02, 40.0
"""Pixels per mm."""


@dataclass(frozen=True, slots=True)
class Sight:
    """Zoom and place.

    Attributes:
        zoom: pixels per mm.
        x, y: where the canvas's (0, 0) lies on the screen, pixels.
    """

    zoom: float = 0.5
    x: float = 0.0
    y: float = 0.0

    def on_screen(self, point: Point) -> Point:
        """Where a point of the canvas lies on the screen, pixels."""
        return (self.x + point[0] * self.zoom, self.y - point[1] * self.zoom)

    def on_canvas(self, pixel: Point) -> Point:
        """The point of the canvas under a pixel, mm."""
        return ((pixel[0] - self.x) / self.zoom, (self.y - pixel[1]) / self.zoom)

    def moved(self, dx: float, dy: float) -> Sight:
        """The sight shifted by pixels."""
        return replace(self, x=self.x + dx, y=self.y + dy)

    def zoomed(self, factor: float, at: Point) -> Sight:
        """The sight made larger or smaller so that the point under a pixel stays where it is."""
        zoom = min(GREATEST_ZOOM, max(LEAST_ZOOM, self.zoom * factor))
        part = zoom / self.zoom
        return Sight(zoom, at[0] + (self.x - at[0]) * part, at[1] + (self.y - at[1]) * part)


def fitted(
    box: tuple[float, float, float, float], width: float, height: float, room: tuple[float, float, float, float]
) -> Sight:
    """The sight in which a box fills the screen.

    Args:
        box: least x and y, greatest x and y, canvas mm.
        width, height: of the screen, pixels.
        room: kept free at the left, top, right and bottom, pixels.
    """
    left, top, right, bottom = room
    across, up = max(box[2] - box[0], 1e-6), max(box[3] - box[1], 1e-6)
    zoom = min((width - left - right) / across, (height - top - bottom) / up)
    zoom = min(GREATEST_ZOOM, max(LEAST_ZOOM, zoom))
    x = left + (width - left - right - across * zoom) / 2 - box[0] * zoom
    y = top + (height - top - bottom + up * zoom) / 2 + box[1] * zoom
    return Sight(zoom, x, y)
