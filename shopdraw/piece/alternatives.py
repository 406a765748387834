"""Inputs of which one is given: setting one of them takes the others of its group out."""

from __future__ import annotations

GROUPS: tuple[tuple[str, ...], ...] = (
    ("case.width", "case.top_width", "case.foot_width"),
    ("slant.angle", "slant.top_depth"),
)
"""Addresses that say one thing in other words."""


def contradicted(address: str) -> tuple[str, ...]:
    """The addresses that a value set at an address takes the place of; none for most."""
    group = next((one for one in GROUPS if address in one), ())
    return tuple(one for one in group if one != address)
