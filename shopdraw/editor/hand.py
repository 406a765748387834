"""The hand on a handle: drags and arrow keys become drafts, and one undo step when the hand lets go."""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Signal

from shopdraw.editor.canvas import Canvas
from shopdraw.editor.drag import Drag, Step
from shopdraw.editor.handle import Handle
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.overlay import real_ratios
from shopdraw.editor.shown_size import shown_for
from shopdraw.editor.state import State
from shopdraw.editor.tidying import Tidying
from shopdraw.shape.path import Point

REST_MS = 120
"""A hand that hasn't moved for so long rests."""


class Hand(QObject):
    """Joins the canvas's handles to the open piece.

    Signals:
        said: a sentence about what a drag did besides moving.
        passed: a state that a hand has come to without letting go; it may stay there.
    """

    said = Signal(str)
    passed = Signal(object)

    def __init__(self, piece: OpenPiece, canvas: Canvas) -> None:
        super().__init__(canvas)
        self._piece = piece
        self._canvas = canvas
        self._drag: Drag | None = None
        self._keyed: tuple[str, State, int, float] | None = None
        self._series = 0
        self.decimal_sign = "."
        self.tidying = Tidying(self)
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(REST_MS)
        self._rest.timeout.connect(self._rested)
        canvas.grip_taken.connect(self._take)
        canvas.grip_moved.connect(self._move)
        canvas.grip_left.connect(self._leave)
        canvas.grip_given_up.connect(self._give_up)
        canvas.grip_nudged.connect(self._nudge)
        canvas.nudges_done.connect(self._end_keyed)
        piece.changed.connect(self._changed)

    @property
    def busy(self) -> bool:
        """Whether a drag is under way."""
        return self._drag is not None

    def _take(self, handle: Handle, point: Point) -> None:
        self.tidying.hold()
        self._keyed = None
        self._drag = self._drag_of(handle, point)
        self._canvas.show_label(self._words(self._drag.step))
        self._drag.prepare()

    def _move(self, point: Point, fine: bool) -> None:  # a signal's argument
        if self._drag is not None:
            step = self._drag.to(point, reach=self._canvas.scaled_reach(), fine=fine)
            self._canvas.show_label(self._words(step))
            self._piece.draft(step.state)
            if step.state is not self._drag.before:
                self.passed.emit(step.state)
            self._rest.start()

    def _rested(self) -> None:
        """A hand that rests is about to let go: the piece is built in full meanwhile."""
        if self._drag is not None:
            self._drag.finished()

    def _leave(self) -> None:
        self.tidying.let_go()
        self._rest.stop()
        drag, self._drag = self._drag, None
        self._canvas.show_label(())
        if drag is not None:
            self._finish(drag)

    def _give_up(self) -> None:
        self.tidying.let_go()
        self._rest.stop()
        drag, self._drag = self._drag, None
        self._canvas.show_label(())
        if drag is not None:
            self._piece.draft(drag.before)
        elif self._keyed is not None:
            _, before, series, _ = self._keyed
            self._piece.take(before, "", series=series)
            self._keyed = None

    def _nudge(self, handle: Handle, count: int, fine: bool) -> None:
        """One press of an arrow key; presses on one handle are one undo step, which Escape gives up."""
        if self._keyed is None or self._keyed[0] != handle.id:
            self._series += 1
            self._keyed = (handle.id, self._piece.state, self._series, handle.value)
        keyed = self._keyed
        self._drag = self._drag_of(handle, handle.at)
        step = self._drag.nudged(count, fine=fine)
        self._canvas.show_label(self._words(step))
        drag, self._drag = self._drag, None
        self._finish(drag, series=keyed[2])
        self._keyed = keyed
        if step.limit:
            self.said.emit(step.limit)

    def _end_keyed(self) -> None:
        """Another handle was chosen, or another widget: what the keys did stays."""
        self._keyed = None
        self._canvas.show_label(())

    def _changed(self, _state: State) -> None:
        """Something else has changed the piece (a key's own step puts its series back afterwards)."""
        self._keyed = None

    def _finish(self, drag: Drag, *, series: int = -1) -> None:
        after = drag.finished()
        self._piece.take(after, drag.handle.name, series=series)
        if after is not drag.before and drag.handle.warns:
            self.said.emit(drag.handle.warns)

    def _drag_of(self, handle: Handle, point: Point) -> Drag:
        return Drag(self._piece.state, handle, point, source=self._piece.source, variant=self._piece.variant)

    def _words(self, step: Step) -> tuple[tuple[str, bool], ...]:
        """What is said beside the pointer: the size, how far it has moved, what holds it, why it stops."""
        drag = self._drag
        design = step.state.design
        if drag is None or design is None:
            return ()
        shown, handle = shown_for(design, self.decimal_sign), drag.handle
        size = shown.angle(step.value) if handle.angle else shown.length_with_unit(step.value)
        lines = [(f"{handle.name}  {size}", True)]
        begun = self._keyed[3] if self._keyed is not None else handle.value
        by = step.value - begun
        if abs(by) > 1e-6:
            told = shown.angle(by) if handle.angle else shown.length(by)
            lines.append((self.tr("moved by {by}").format(by=told if by < 0 else f"+{told}"), False))
        if step.says:
            lines.append((step.says, False))
        elif step.state.assembly is not None and handle.id.startswith("case."):
            ratio = real_ratios(step.state.assembly)[0]
            lines.append((f"{ratio.name} = {shown.number(ratio.ratio, 3)} : 1", False))
        if step.limit:
            lines.append((self.tr("Stops here: {why}").format(why=step.limit), True))
        elif handle.warns:
            lines.append((handle.warns, False))
        return tuple(lines)
