"""Labels: short names for sheets and stickers, a pure function of a board's id.

Number first, so that none can be taken for a paper size, a zone or a section's letter.
"""

from __future__ import annotations

FAMILIES = {
    "side": 1,
    "top": 2,
    "bottom": 3,
    "shelf": 4,
    "back": 5,
    "frame": 6,
    "drawer": 7,
    "lid": 8,
    "support": 9,
    "plinth": 10,
    "divider": 11,
    "rail": 12,
    "kicker": 13,
    "stop": 14,
    "block": 15,
    "guide": 16,
    "face": 17,
    "partition": 18,
    "pigeonhole": 19,
    "compartment": 20,
    "bracket": 21,
    "strip": 22,
}
LETTERS = {
    "left": "L",
    "right": "R",
    "front": "a",
    "rear": "b",
    "back": "b",
    "side-left": "c",
    "side-right": "d",
    "bottom": "e",
    "runner-left": "f",
    "runner-right": "g",
    "runner-middle": "h",
    "writing": "",
    "top": "",
    "drawer": "m",
    "support-left": "L",
    "support-right": "R",
    "cap-left": "L",
    "cap-right": "R",
    "front-left": "p",
    "front-right": "q",
    "rear-left": "s",
    "rear-right": "t",
    "stile-left": "L",
    "stile-right": "R",
    "rail-upper": "a",
    "rail-lower": "b",
    "box-front": "f",
    "ledge": "n",
    "head": "u",
    "divider-left": "wL",
    "divider-right": "wR",
    "stop": "v",
    "spline-left": "xL",
    "spline-right": "xR",
}
MIDDLE = "runner-middle-"
"""Runners between the outer ones are told apart by the key of the divider that they carry."""
NUMBERED = {"glue-": "g", "muntin-": "m"}
"""Glue blocks and muntins are told apart by their number."""
PANEL = "panel-"
"""Dust panels of one frame are told apart by their number from the left."""


def label_of(board_id: str) -> str:
    """The label of a board: family, key, letter within.

    `side.left` is `1L`, `drawer.2.front` is `7.2a`; a family without a number gets 99.
    """
    family, *rest = board_id.split(".")
    label = str(FAMILIES.get(family, 99))
    for part in rest:
        if part in LETTERS:
            label += LETTERS[part]
        elif part.startswith(PANEL):
            label += "k" + part.removeprefix(PANEL)
        elif begun := next((start for start in NUMBERED if part.startswith(start)), ""):
            label += NUMBERED[begun] + part.removeprefix(begun)
        elif part.startswith(MIDDLE):
            label += LETTERS["runner-middle"] + part.removeprefix(MIDDLE)
        else:
            label += f".{part}"
    return label


def order_of(board_id: str) -> tuple[object, ...]:
    """Where a board stands in every list: family, then keys as numbers where they are, then its part in the family."""
    family, *rest = board_id.split(".")
    ranked = tuple((0, int(key), "") if key.isdigit() else (1, 0, LETTERS.get(key, key)) for key in rest)
    return (FAMILIES.get(family, 99), ranked, board_id)
