"""Figures and names in the words of findings."""

from __future__ import annotations


def mm(value: float, decimals: int = 2) -> str:
    """A length as a finding prints it: no needless zeros."""
    text = f"{round(value, 9):.{decimals}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return "0" if text == "-0" else text


def opened(motion: str) -> str:
    """What a person calls what opens, by its id: "lid", "drawer 2", "left support"."""
    kind, _, key = motion.partition(".")
    if kind == "drawer":
        return f"drawer {key}"
    return f"{key} support" if kind == "support" else motion
