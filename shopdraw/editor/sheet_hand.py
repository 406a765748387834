"""The hand on a sheet: what it moves becomes tables of the piece file, kept by names and rows, each one undo step."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping

from PySide6.QtCore import QObject, Signal

from shopdraw.editor.division import unit_of
from shopdraw.editor.on_sheet import DimensionGrip, OnSheets, PlaceOnSheet, PlaneGrip, Stand
from shopdraw.editor.open_piece import OpenPiece
from shopdraw.editor.said import said
from shopdraw.editor.sheet_view import SheetView
from shopdraw.editor.state import Setting
from shopdraw.editor.typed import kept
from shopdraw.piece.address import address_text
from shopdraw.piece.design import Design


class SheetHand(QObject):
    """Joins the sheets that are in sight to the open piece.

    Signals:
        said: a sentence about what came of a move.
    """

    said = Signal(str)

    def __init__(self, piece: OpenPiece, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._piece = piece
        self._wished: tuple[str, Stand] | None = None

    def join(self, view: SheetView) -> None:
        """Listens to one more view of a sheet."""

        def done(does: Callable[..., bool]) -> Callable[..., None]:
            def wished(*wish: object) -> None:
                if not does(*wish):
                    view.stop_waiting()

            return wished

        view.dimension_moved.connect(done(self._move))
        view.plane_moved.connect(done(self._move_plane))
        view.joined.connect(done(self._add))
        view.put_back.connect(self._put_back)

    def drawn_again(self, held: OnSheets) -> None:
        """The sheets are there again: a dimension that had to stand elsewhere than it was put is told."""
        wished, self._wished = self._wished, None
        if wished is None:
            return
        of, stand = wished
        found = next((one for on in held.values() for one in on.dimensions if one.of == of), None)
        if found is not None and (found.side, found.row) != (stand.side, stand.row):
            told = self.tr("{words} stands in row {row}: shorter dimensions stand nearer to the view, longer beyond.")
            self.said.emit(told.format(words=found.words, row=found.row))

    def _move(self, grip: DimensionGrip, stand: Stand) -> bool:
        """Whether it is in the file now."""
        design = self._piece.state.design
        if design is None:
            return False
        self._wished = (grip.of, stand)
        settings = stand_settings(design, grip, stand)
        return self._piece.set_values(settings, self.tr("Move {words} on the sheet").format(words=grip.words))

    def _move_plane(self, grip: PlaneGrip, value: float) -> bool:
        design = self._piece.state.design
        if design is None:
            return False
        setting = Setting(address_text(("plane", grip.letter, "at")), kept(value, unit_of(design)))
        return self._piece.set_values((setting,), self.tr("Move {name}").format(name=said(grip.name)))

    def _add(self, first: PlaceOnSheet, other: PlaceOnSheet, side: str) -> bool:
        design = self._piece.state.design
        if design is None:
            return False
        key = _free_key(f"{first.name}-{other.name}", design.dimension)
        parts = (("of", f"{first.name}/{other.name}"), ("view", first.view.id), ("side", side))
        settings = [Setting(address_text(("dimension", key, name)), value) for name, value in parts]
        return self._piece.set_values(settings, self.tr("Add a dimension"))

    def _put_back(self, grip: DimensionGrip | PlaneGrip) -> None:
        """Takes out what the file says of it; nothing where it says nothing."""
        design = self._piece.state.design
        if design is None:
            return
        settings = list(put_back_settings(design, grip))
        if settings:
            words = grip.words if isinstance(grip, DimensionGrip) else grip.name
            self._piece.set_values(settings, self.tr("Put {words} back").format(words=words))
        else:
            self.said.emit(self.tr("It stands where the sheet itself puts it."))


def stand_settings(design: Design, grip: DimensionGrip, stand: Stand) -> list[Setting]:
    """What puts a dimension where it is to stand: in its own table, in that which moves it, or in one more."""
    own = own_dimension(design, grip)
    moved = next((key for key, move in design.move.items() if move.of == grip.of), "")
    path = ("dimension", own) if own else ("move", moved or _free_key(grip.of, design.move))
    before = design.dimension[own].offset if own else design.move[moved].offset if moved else 0.0
    settings = [] if own or moved else [Setting(address_text((*path, "of")), grip.of)]
    settings += [Setting(address_text((*path, "side")), stand.side), Setting(address_text((*path, "row")), stand.row)]
    same = (stand.side, stand.row) == (grip.side, grip.row)
    offset = max(0.0, before + stand.more) if same else 0.0
    if offset or before:
        settings.append(Setting(address_text((*path, "offset")), kept(offset, unit_of(design)) if offset else None))
    return settings


def own_dimension(design: Design, grip: DimensionGrip) -> str:
    """The key of the person's own dimension that a grip is, or ""."""
    of, _, view = grip.of.rpartition("@")
    for key, own in design.dimension.items():
        if own.view == view and of in (own.of, f"{own.of}, dimension.{key}"):
            return key
    return ""


def put_back_settings(design: Design, grip: DimensionGrip | PlaneGrip) -> Iterable[Setting]:
    """What takes out all that the file says of where a dimension or a plane stands."""
    if isinstance(grip, PlaneGrip):
        if grip.letter in design.plane:
            yield Setting(address_text(("plane", grip.letter)), None)
        return
    own = own_dimension(design, grip)
    if own:
        yield Setting(address_text(("dimension", own)), None)
    for key, move in design.move.items():
        if move.of == grip.of:
            yield Setting(address_text(("move", key)), None)


def _free_key(name: str, taken: Mapping[str, object]) -> str:
    """A key that a file can bear bare, like a name, that nothing else has."""
    plain = re.sub(r"[^A-Za-z0-9]+", "-", name).strip("-") or "own"
    key, number = plain, 2
    while key in taken:
        key, number = f"{plain}-{number}", number + 1
    return key
