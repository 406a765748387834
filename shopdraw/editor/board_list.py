"""The boards of the piece as a table model: label, name, size, stock, how many; and what a board carries. Keyboard
and screen reader reach here what the canvas shows.
"""

from __future__ import annotations

import itertools
from collections import Counter
from dataclasses import dataclass

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt

from shopdraw.editor.said import said
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.tongue import translate
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

COLUMNS = ("Label", "Board", "Length", "Width", "Thick", "Stock", "Alike")
_Index = QModelIndex | QPersistentModelIndex


@dataclass(frozen=True, slots=True)
class BoardRow:
    """One board as shown.

    Attributes:
        board: its id.
        cells: words by column.
        sizes: length, width, thickness, mm: what columns of figures are sorted by.
    """

    board: str
    cells: tuple[str, ...]
    sizes: tuple[float, float, float]


def rows_of(assembly: Assembly, shown: Shown) -> tuple[BoardRow, ...]:
    """A row for each board, in the piece's order."""
    alike: dict[object, int] = {}
    for board in assembly.boards:
        key = (board.shape, board.stock)
        alike[key] = alike.get(key, 0) + 1
    return tuple(
        BoardRow(
            board.id,
            (
                board.label,
                said(board.name),
                shown.length(board.length),
                shown.length(board.width),
                shown.length(board.thickness),
                board.stock.name,
                str(alike[board.shape, board.stock]),
            ),
            (board.length, board.width, board.thickness),
        )
        for board in assembly.boards
    )


def carried(assembly: Assembly, board: Board, shown: Shown) -> tuple[str, ...]:
    """What a board carries: its cuts and joints, a line each; those alike together."""
    lines: list[str] = []
    for number, cut in enumerate(board.shape.cuts):
        purpose = _name(assembly, board.cut_for[number] if number < len(board.cut_for) else "")
        deep = shown.length(cut.depth)
        told = translate("Board", "{cut}, {face}, {deep} deep")
        kind, face = translate("Cut", cut.kind), translate("Face", cut.face.value)
        lines.append(told.format(cut=kind, face=face, deep=deep) + (f": {purpose}" if purpose else ""))
    for joint in assembly.joints:
        if board.id == joint.host or board.id == joint.guest or board.id in joint.guest_boards:
            other = _name(assembly, joint.guest if board.id == joint.host else joint.host)
            held = translate("Joint", "glued" if joint.glued else "floats" if joint.floats else "dry")
            told = translate("Board", "{joint} with {other}, {held}")
            lines.append(told.format(joint=translate("Joint", joint.kind), other=other, held=held))
    alike = Counter(lines)
    return tuple(f"{count} × {line}" if count > 1 else line for line, count in alike.items())


def cut_words(assembly: Assembly, purposes: str) -> str:
    """What is cut for what, as the router's layers have it, in a person's words.

    Args:
        assembly: the piece.
        purposes: such as "dado: bottom; dado: frame.1": kinds of cuts, each with a board, a group or words.
    """
    return "; ".join(_cut_for(assembly, one) for one in purposes.split("; "))


def left_words(assembly: Assembly, kind: str, setting: str) -> str:
    """A cut that the router leaves, in a person's words: what it is, how it is made, for what.

    Args:
        assembly: the piece.
        kind: of the cut, or "".
        setting: how it is made, and for what.
    """
    how, joint, what = setting.rpartition(": ")
    name = _name(assembly, what) if joint else ""
    told = f"{said(how)}{joint}{name}" if name and name != said(what) else said(setting)
    return _once(translate("Cut", kind), told) if kind else told


def _cut_for(assembly: Assembly, purpose: str) -> str:
    kind, joint, what = purpose.partition(": ")
    told = translate("Cut", kind)
    if not joint:
        return told if told != kind else said(purpose)
    return _once(told, _name(assembly, what))


def _once(kind: str, what: str) -> str:
    """A cut and what it is for; "tenon into the rail" needs no second tenon."""
    return what if what.lower().startswith(kind.lower()) else f"{kind}: {what}"


def _name(assembly: Assembly, board: str) -> str:
    """What a person calls a board or a group of them; other words stay as they are."""
    if assembly.has(board):
        return said(assembly.board(board).name)
    return said(_shared([one.name for one in assembly.boards if one.id.startswith(f"{board}.")]) or board)


def _shared(names: list[str]) -> str:
    """What the names of a group have in common: of "front rail, web frame 1" and "runner, web frame 1" the frame."""
    rows = [name.split(", ") for name in names]
    for turned in (True, False):
        columns = zip(*(row[::-1] if turned else row for row in rows), strict=False)
        alike = [column[0] for column in itertools.takewhile(lambda column: len(set(column)) == 1, columns)]
        if alike:
            return ", ".join(alike[::-1] if turned else alike)
    return ""


class BoardModel(QAbstractTableModel):
    """Rows of boards."""

    def __init__(self) -> None:
        super().__init__()
        self.rows: tuple[BoardRow, ...] = ()

    def show_rows(self, rows: tuple[BoardRow, ...]) -> None:
        """Shows rows; where only figures change, the selection stays."""
        if [row.board for row in rows] == [row.board for row in self.rows]:
            self.rows = rows
            if rows:
                self.dataChanged.emit(self.index(0, 0), self.index(len(rows) - 1, len(COLUMNS) - 1))
            return
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()

    def row_of(self, board: str) -> int:
        """The row of a board, or -1."""
        return next((number for number, row in enumerate(self.rows) if row.board == board), -1)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: N802, B008  # Qt's name and default
        """How many boards."""
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: N802, B008
        """How many columns."""
        return 0 if parent.isValid() else len(COLUMNS)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """A cell."""
        if not index.isValid():
            return None
        row = self.rows[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return row.cells[index.column()]
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() in (2, 3, 4, 6):
            return int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{translate('Board', COLUMNS[index.column()])}: {row.cells[index.column()]}"
        return None

    def headerData(  # noqa: N802  # Qt's name
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        """Column titles."""
        if role == Qt.ItemDataRole.DisplayRole and orientation is Qt.Orientation.Horizontal:
            return translate("Board", COLUMNS[section])
        return None
