"""One drag of a handle, from taking hold to letting go: each move gives a state, its limits, and what to say. No Qt.

A piece that can't be built is never shown as if it could: the drag stops at the last value that holds and says why.
"""

from __future__ import annotations

import contextlib
from dataclasses import dataclass

from shopdraw.editor.division import unit_of
from shopdraw.editor.handle import Handle
from shopdraw.editor.holding import Held, held, steps
from shopdraw.editor.said import said
from shopdraw.editor.state import CannotSet, State, changed_text, state_of
from shopdraw.editor.tongue import translate
from shopdraw.shape.path import Point

ANGLE_STEPS = (1.0, 0.1)
"""Degrees, without and with Shift."""
_HALVINGS = 6


@dataclass(frozen=True, slots=True)
class Step:
    """Where a drag stands.

    Attributes:
        value: of the handle, mm or degrees.
        state: the piece with that value, built for a draft.
        says: the magnet that holds it, or "".
        limit: why it goes no further, or "".
    """

    value: float
    state: State
    says: str = ""
    limit: str = ""


class Drag:
    """A drag in progress. Every step starts from the state at its beginning, so steps never add up errors."""

    def __init__(
        self, before: State, handle: Handle, grip: Point, *, source: str = "piece", variant: str | None = None
    ) -> None:
        """Takes hold.

        Args:
            before: the state at the beginning.
            handle: what is taken hold of.
            grip: where, in the view's plane, mm.
            source: the file's name, for faults.
            variant: the variant that is shown, if any.
        """
        self.before = before
        self.handle = handle
        self._off = handle.value - handle.reads(grip)
        self._source = source
        self._variant = variant
        self._known: dict[float, State] = {handle.value: before}
        self._low: tuple[float, str] | None = None
        self._high: tuple[float, str] | None = None
        self.step = Step(handle.value, before)
        self._full: State | None = None

    def prepare(self) -> None:
        """Takes the text apart before the first move: the moves then only put their values in."""
        with contextlib.suppress(CannotSet):
            changed_text(self.before.text, self.handle.sets(self.handle.value), self._variant)

    def to(self, point: Point, *, reach: float, fine: bool = False) -> Step:
        """Moves to a point of the view's plane.

        Args:
            point: mm.
            reach: how near a value must come to a magnet to be held by it, mm (for angles: taken as degrees by 10).
            fine: Shift is down.
        """
        return self.to_value(self.handle.reads(point) + self._off, reach=reach, fine=fine)

    def to_value(self, wanted: float, *, reach: float = 0.0, fine: bool = False) -> Step:
        """Moves to a value, held to the steps."""
        rest = self._rest(wanted, reach, fine)
        value, limit = self._within(rest.value)
        state = self._state(value)
        if not state.sound:
            value, limit = self._last_sound(value, self._reason(state))
            state = self._state(value)
        says = rest.says if value == rest.value else ""
        self.step = Step(value, state, says, limit)
        return self.step

    def finished(self) -> State:
        """The state in which the drag ends, built in full; the one before where nothing has changed."""
        text = self.step.state.text
        if text == self.before.text:
            return self.before
        if self._full is None or self._full.text != text:
            self._full = state_of(text, self._source, self._variant)
        return self._full

    def nudged(self, count: int, *, fine: bool = False) -> Step:
        """Moves by whole steps from where it stands, as the arrow keys do."""
        step, fine_step = self._steps()
        by = fine_step if fine else step
        return self.to_value(self.step.value + count * by, fine=True)

    def _rest(self, wanted: float, reach: float, fine: bool) -> Held:
        step, fine_step = self._steps()
        if self.handle.angle:
            reach /= 10.0
        return held(wanted, step, fine_step, self.handle.magnets, reach, fine=fine)

    def _steps(self) -> tuple[float, float]:
        if self.handle.angle:
            return ANGLE_STEPS
        design = self.before.design
        assert design is not None
        return steps(unit_of(design), design.drawing.denominator)

    def _within(self, value: float) -> tuple[float, str]:
        if self._low and value < self._low[0]:
            return self._low
        if self._high and value > self._high[0]:
            return self._high
        return value, ""

    def _state(self, value: float) -> State:
        known = self._known.get(value)
        if known is None:
            try:
                text = changed_text(self.before.text, self.handle.sets(value), self._variant)
            except CannotSet:
                return self.before
            known = self._known[value] = state_of(text, self._source, self._variant, rough=True)
        return known

    def _last_sound(self, value: float, reason: str) -> tuple[float, str]:
        """The value furthest on the way that can be built, on the fine step; remembered as this drag's limit."""
        fine = self._steps()[1]
        good, bad = self.handle.value, value
        for _ in range(_HALVINGS):
            if abs(bad - good) <= fine:
                break
            middle = round(round((good + bad) / 2 / fine) * fine, 9)
            if middle in (good, bad):
                break
            state = self._state(middle)
            if state.sound:
                good = middle
            else:
                bad, reason = middle, self._reason(state)
        if bad > self.handle.value:
            self._high = (good, reason)
        else:
            self._low = (good, reason)
        return good, reason

    @staticmethod
    def _reason(state: State) -> str:
        return next((said(fault.right) for fault in state.faults), translate("Drag", "It can't be built so."))
