"""Findings beside the drawing, worst first, as rows of a model; and their shapes. Choosing one shows its place."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPen, QPixmap, QPolygonF

from shopdraw.editor.look import Colours
from shopdraw.editor.said import in_readers_sign, said
from shopdraw.editor.tongue import translate
from shopdraw.piece.fault import Fault
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Severity

_WORST_FIRST = {Severity.MUST_FIX: 0, Severity.CAUTION: 1, Severity.NOTE: 2}
WORDS = {Severity.MUST_FIX: "must be fixed", Severity.CAUTION: "caution", Severity.NOTE: "note"}
_Index = QModelIndex | QPersistentModelIndex


def ordered(found: Iterable[Finding]) -> tuple[Finding, ...]:
    """Findings worst first, silenced ones last of all."""
    return tuple(sorted(found, key=lambda finding: (finding.silenced is not None, _WORST_FIRST[finding.severity])))


def boards_of(finding: Finding, assembly: Assembly) -> frozenset[str]:
    """The boards that a finding speaks of: ids themselves, or those named in a joint, a cut or an opening."""
    named: set[str] = set()
    for where in finding.where:
        parts = {where, *where.split(":"), *where.split("/")}
        for board in assembly.boards:
            if board.id in parts or any(part and board.id.startswith(f"{part}.") for part in parts):
                named.add(board.id)
    return frozenset(named)


class FindingModel(QAbstractListModel):
    """Faults of the file first, then findings of the piece."""

    def __init__(self, colours: Colours) -> None:
        super().__init__()
        self._colours = colours
        self._faults: tuple[Fault, ...] = ()
        self._findings: tuple[Finding, ...] = ()

    def dress(self, colours: Colours) -> None:
        """Puts on another look."""
        self._colours = colours
        if self.rowCount():
            self.dataChanged.emit(self.index(0), self.index(self.rowCount() - 1))

    def show_faults(self, faults: tuple[Fault, ...]) -> None:
        """Shows why a file can't be read or built."""
        self.beginResetModel()
        self._faults, self._findings = faults, ()
        self.endResetModel()

    def show_findings(self, findings: Iterable[Finding]) -> None:
        """Shows what is wrong with the piece; the same findings again leave the rows as they are."""
        shown = ordered(findings)
        if shown == self._findings and not self._faults:
            return
        self.beginResetModel()
        self._faults, self._findings = (), shown
        self.endResetModel()

    def finding(self, row: int) -> Finding | None:
        """The finding of a row; None where the row is a fault, or there is none."""
        return self._findings[row] if not self._faults and 0 <= row < len(self._findings) else None

    def fault(self, row: int) -> Fault | None:
        """The fault of a row, or None."""
        return self._faults[row] if 0 <= row < len(self._faults) else None

    def open_count(self) -> int:
        """How many faults and findings there are that must be fixed and aren't silenced."""
        worst = [f for f in self._findings if f.severity is Severity.MUST_FIX and f.silenced is None]
        return len(self._faults) + len(worst)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: N802, B008  # Qt's name and default
        """How many rows."""
        return 0 if parent.isValid() else len(self._faults) or len(self._findings)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """A row's words, shape and what a screen reader says."""
        if not index.isValid():
            return None
        fault, finding = self.fault(index.row()), self.finding(index.row())
        severity = finding.severity if finding else Severity.MUST_FIX
        if role == Qt.ItemDataRole.DecorationRole:
            return shape_of(severity, self._colours)
        words = fault_words(fault) if fault else finding_words(finding) if finding else ""
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return words
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{translate('Finding', WORDS[severity])}: {words}"
        if role == Qt.ItemDataRole.ForegroundRole and finding is not None and finding.silenced is not None:
            return self._colours.colour("dim")
        return None


def fault_words(fault: Fault) -> str:
    """A fault in a line: where, what was found, what would be right."""
    place = translate("Finding", "Line {line}").format(line=fault.line) if fault.line else ""
    found = translate("Finding", "found {found}").format(found=said(fault.found)) if fault.found else ""
    told = "; ".join(part for part in (found, said(fault.right)) if part)
    return ": ".join(part for part in (place, fault.address, told) if part)


def finding_words(finding: Finding) -> str:
    """A finding in a line."""
    message = _as_a_sentence(in_readers_sign(said(finding.message)))
    if finding.silenced is None:
        return message
    return translate("Finding", "{message} (accepted: {reason})").format(message=message, reason=finding.silenced)


def _as_a_sentence(words: str) -> str:
    """With a capital at its head, where that is a word and no id or address."""
    first = words.split(" ", 1)[0].rstrip(":;,")
    return words if any(sign in first for sign in ":._=/") else words[:1].upper() + words[1:]


def shape_of(severity: Severity, colours: Colours) -> QIcon:
    """The shape of a severity: a filled lozenge, a half filled one, an open one; light in a chosen row."""
    icon = QIcon(_lozenge(severity, colours.colour("words")))
    icon.addPixmap(_lozenge(severity, colours.colour("field")), QIcon.Mode.Selected)
    return icon


def _lozenge(severity: Severity, ink: QColor) -> QPixmap:
    size = 64
    picture = QPixmap(size, size)
    picture.fill(QColor(0, 0, 0, 0))
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    middle, reach = size / 2, size * 0.4
    lozenge = QPolygonF(
        [
            QPointF(middle, middle - reach),
            QPointF(middle + reach, middle),
            QPointF(middle, middle + reach),
            QPointF(middle - reach, middle),
        ]
    )
    painter.setPen(QPen(ink, 5))
    painter.drawPolygon(lozenge)
    painter.setBrush(ink)
    if severity is Severity.MUST_FIX:
        painter.drawPolygon(lozenge)
    elif severity is Severity.CAUTION:
        painter.setClipRect(QRectF(0, middle, size, middle))
        painter.drawPolygon(lozenge)
    painter.end()
    return picture
