"""Words that belong to a mark of a view (a plane's letter, a detail's name) where they meet none of its lines."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from shopdraw.drawing.mark import Mark, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.box import box_of_text
from shopdraw.sheet.ground import Ground, What, boxes_of, strokes_of


def ground_of(marks: Iterable[Mark], scale: float) -> Ground:
    """What stands on a view: its lines and words, on paper."""
    ground = Ground()
    held = tuple(marks)
    for stroke in strokes_of(held, What.VIEW, "", scale):
        ground.add_stroke(stroke)
    for box in boxes_of(held, scale):
        ground.add_box(box, "view")
    return ground


def words_in_free_spot(text: Text, spots: Sequence[Point], ground: Ground, scale: float) -> Text:
    """The words at the first spot where they are free, else at the first one; the ground gains them.

    Args:
        text: the words; their own place is taken over by the spot.
        spots: anchors on the baseline, the best first, true-size mm.
        ground: of the view.
        scale: of the view.
    """
    options = [replace(text, at=spot) for spot in spots]
    chosen = next((o for o in options if ground.free_for_words(box_of_text(o, scale), "view", 1.0)), options[0])
    ground.add_box(box_of_text(chosen, scale), "view")
    return chosen
