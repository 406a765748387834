"""Layouts of dovetails along a corner: tails, pins and half pins, as wide as they are at the tails' wide ends."""

from __future__ import annotations

from dataclasses import dataclass

from shopdraw.build.bench import AXES
from shopdraw.shape.frame import Frame, Vec3, cross
from shopdraw.shape.path import Path, Point, polygon
from shopdraw.trade.species import species
from shopdraw.wood.assembly import Body
from shopdraw.wood.board import Stock

TAIL_MM = 45.0
"""About how wide a tail of a case is (common practice)."""
LEAST_PIN_MM = 6.0
"""No pin of a case narrower than this at its narrow side (common practice)."""
SOFT_SG = 0.45
"""Under this specific gravity tails slope 1:6, else 1:8 (common practice)."""


@dataclass(frozen=True, slots=True)
class Tails:
    """A layout of tails along a corner, mm.

    Attributes:
        slope: 8 for 1:8.
        half_pin: at the corner's beginning, at the tails' wide ends.
        pin: between two tails, there.
        spans: (from, to) of each tail at its wide end, measured from the corner's beginning.
        narrowing: how much narrower a tail is on each side at its root.
        last_half_pin: at the corner's other end.
        pitch: of the fixed template, or None.
    """

    slope: float
    half_pin: float
    pin: float
    spans: tuple[tuple[float, float], ...]
    narrowing: float
    last_half_pin: float
    pitch: float | None = None

    @property
    def tail(self) -> float:
        """Width of a tail at its wide end, mm."""
        return self.spans[0][1] - self.spans[0][0]

    def sizes(self) -> tuple[tuple[str, float], ...]:
        """By name, for the joint: tails as wide as they are at their roots."""
        found = (
            ("slope", self.slope),
            ("tails", len(self.spans)),
            ("tail", self.tail - 2 * self.narrowing),
            ("half-pin", self.half_pin),
            ("pin", self.pin),
        )
        if self.pitch is None:
            return found
        return (*found, ("rear-half-pin", self.last_half_pin), ("pitch", self.pitch))


class NoRoom(ValueError):
    """A corner too short for its tails.

    Attributes:
        most: how many tails there is room for; 0 where there is none for one.
        least: the length that one tail needs, mm.
    """

    def __init__(self, most: int, least: float) -> None:
        super().__init__(f"room for {most} tails; one needs {least:.1f} mm")
        self.most, self.least = most, least


def slope_of(stock: Stock, given: float | None) -> float:
    """The tails' slope as given, else 1:8, in softwood 1:6."""
    if given is not None:
        return given
    soft = stock.kind == "solid" and species(stock.species).sg_12 < SOFT_SG
    return 6.0 if soft else 8.0


def tails_along(
    length: float,
    deep: float,
    slope: float,
    half_pin: float,
    pin: float,
    *,
    count: int | None = None,
    wide: float = TAIL_MM,
    least_tail: float = 0.0,
) -> Tails:
    """Equal tails with equal half pins on a given length.

    Args:
        length: of the corner, mm.
        deep: the tails' length, mm.
        slope: 8 for 1:8.
        half_pin: at each end, at the tails' wide ends, mm.
        pin: between two tails, there, mm.
        count: of tails; by default as many as make them about `wide`.
        least_tail: no tail narrower than this at its wide end, mm; and none narrower at its root than a pin.
    Raises:
        NoRoom: so many tails, or so short a corner, that a tail would be too narrow.
    """
    narrowing = deep / slope
    least = max(least_tail, pin + 2 * narrowing)
    free = length - 2 * half_pin
    most = int((free + pin) / (pin + least) + 1e-9)
    if most < 1 or (count is not None and count > most):
        raise NoRoom(max(most, 0), 2 * half_pin + least)
    count = count or min(most, max(min(2, most), round((free + pin) / (wide + pin))))
    tail = (free - (count - 1) * pin) / count
    spans = tuple((half_pin + i * (tail + pin), half_pin + i * (tail + pin) + tail) for i in range(count))
    return Tails(slope, half_pin, pin, spans, narrowing, half_pin)


def tails_on_pitch(
    length: float, deep: float, slope: float, half_pin: float, pin: float, pitch: float, count: int | None = None
) -> Tails:
    """Tails cut with a template of fixed pitch: its stop gives the first half pin, the last one is what is left.

    Args:
        length: of the corner, mm.
        deep: the tails' length, mm.
        slope: 8 for 1:8.
        half_pin: the first one, at the tails' wide ends, mm; the last one is no narrower.
        pin: between two tails, there, mm.
        pitch: from tail to tail, mm.
        count: of tails; by default as many as there is room for.
    Raises:
        NoRoom: a pitch too small for a tail and a pin, or more tails than there is room for.
    """
    narrowing = deep / slope
    tail = pitch - pin
    if tail < pin + 2 * narrowing:
        raise NoRoom(0, 2 * half_pin + pin + 2 * narrowing)
    most = int((length - 2 * half_pin + pin) / pitch + 1e-9)
    if most < 1 or (count is not None and count > most):
        raise NoRoom(max(most, 0), 2 * half_pin + tail)
    count = count or most
    spans = tuple((half_pin + i * pitch, half_pin + i * pitch + tail) for i in range(count))
    return Tails(slope, half_pin, pin, spans, narrowing, length - half_pin - (count * pitch - pin), pitch)


def equal_lengths(length: float, tails: Tails) -> tuple[float, float]:
    """The lengths nearest to a corner's own, shorter and longer, on which a template gives equal half pins, mm.

    Length = n·pitch - pin + 2 h, with as many tails n as the corner has, and with one more.
    """
    pitch = tails.pitch if tails.pitch is not None else tails.tail + tails.pin
    over = (tails.last_half_pin - tails.half_pin) % pitch
    return length - over, length - over + pitch


def trapezoid(
    span: tuple[float, float], narrowing: float, *, begin: float, wide_at: float, narrow_at: float
) -> list[Point]:
    """A tail's corners as (along its length, along the corner).

    Args:
        span: of the tail at its wide end, from the corner's beginning.
        begin: where the corner begins, mm.
        wide_at, narrow_at: where the tail ends and where it has its root, mm.
    """
    low, high = begin + span[0], begin + span[1]
    return [(wide_at, low), (narrow_at, low + narrowing), (narrow_at, high - narrowing), (wide_at, high)]


def prism_body(corners: list[Vec3], out: str, depth: float) -> Body:
    """The body of a prism that enters its host against a world direction.

    Args:
        corners: in the plane of the host's surface, world, mm.
        out: the world direction out of the host.
        depth: how far it reaches into it, mm.
    """
    w = AXES[out]
    u: Vec3 = AXES["+y"] if out[1] == "x" else AXES["+x"]
    frame = Frame(u, cross(w, u), w, corners[0])
    points = [frame.local(corner) for corner in corners]
    return Body(frame, polygon((p[0], p[1]) for p in points), depth)


def in_plane(frame: Frame, corners: list[Vec3], axes: tuple[int, int]) -> Path:
    """An outline through world points, in two of a board's own coordinates."""
    points = [frame.local(corner) for corner in corners]
    return polygon((p[axes[0]], p[axes[1]]) for p in points)
