"""Slots with round ends, for screws and pegs that the wood slides along."""

from __future__ import annotations

from shopdraw.shape.path import Corner, Path


def across_slot(u: float, v0: float, v1: float, radius: float) -> Path:
    """A slot across the grain, as a path in a face's (u, v).

    Args:
        u: of its middle line, mm.
        v0, v1: middles of its two round ends, the lesser first, mm.
        radius: of the ends, mm.
    """
    return Path(
        (Corner(u + radius, v0), Corner(u + radius, v1, 1.0), Corner(u - radius, v1), Corner(u - radius, v0, 1.0))
    )


def along_slot(u0: float, u1: float, v: float, radius: float) -> Path:
    """A slot along the grain, as a path in a face's (u, v).

    Args:
        u0, u1: middles of its two round ends, the lesser first, mm.
        v: of its middle line, mm.
        radius: of the ends, mm.
    """
    low, high = v - radius, v + radius
    return Path((Corner(u0, low), Corner(u1, low, 1.0), Corner(u1, high), Corner(u0, high, 1.0)))


def open_slot(u: float, v0: float, edge: float, radius: float) -> Path:
    """A slot across the grain that runs out at the edge, as a path in a face's (u, v).

    Args:
        u: of its middle line, mm.
        v0: middle of its round end, mm.
        edge: v of the edge that it runs out at, mm.
        radius: of the end, mm.
    """
    return Path(
        (Corner(u + radius, v0), Corner(u + radius, edge), Corner(u - radius, edge), Corner(u - radius, v0, 1.0))
    )
