"""The list of findings under the canvas, and what can be done about the one that is chosen."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QSize, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QLabel, QListView, QPushButton, QVBoxLayout, QWidget

from shopdraw.editor.entry import address_words
from shopdraw.editor.finding_list import FindingModel
from shopdraw.editor.flow import FlowRow
from shopdraw.editor.look import LIGHT, Colours
from shopdraw.editor.said import in_readers_sign
from shopdraw.editor.state import Setting
from shopdraw.wood.finding import Finding


class FindingsPanel(QWidget):
    """Findings, worst first.

    Signals:
        chosen: the finding or fault that was chosen, or None.
        set_wished: a setting that would mend the finding.
        silence_wished: a finding that a person accepts, with a reason to be asked for.
        led: the address of the input that a fault or finding speaks of.
    """

    chosen = Signal(object)
    set_wished = Signal(object)
    silence_wished = Signal(object)
    led = Signal(str)

    def __init__(self, parent: QWidget | None = None, colours: Colours = LIGHT) -> None:
        super().__init__(parent)
        self.model = FindingModel(colours)
        self.list = QListView(self)
        self.list.setModel(self.model)
        self.list.setWordWrap(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.list.setIconSize(QSize(14, 14))
        self.list.setSpacing(2)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setAccessibleName(self.tr("Findings, worst first"))
        self.heading = QLabel(self)
        self.heading.setTextFormat(Qt.TextFormat.PlainText)
        self.set_it = QPushButton(self)
        self.set_it.setAccessibleName(self.tr("Set the value that would mend it"))
        self.lead = QPushButton(self.tr("Show the input"), self)
        self.lead.setAccessibleName(self.tr("Show the input that it speaks of"))
        self.accept = QPushButton(self.tr("Accept with a reason"), self)
        self.accept.setAccessibleName(self.tr("Accept this finding with a reason"))
        top = FlowRow()
        top.addWidget(self.heading)
        for button in (self.set_it, self.lead, self.accept):
            top.addWidget(button)
            button.setToolTip(button.accessibleName())
            button.hide()
        whole = QVBoxLayout(self)
        whole.setContentsMargins(8, 4, 8, 6)
        whole.addLayout(top)
        whole.addWidget(self.list, 1)
        self.list.selectionModel().currentChanged.connect(self._choose)
        self.model.modelReset.connect(self._refreshed)
        self.set_it.clicked.connect(self._set)
        self.lead.clicked.connect(self._lead)
        self.accept.clicked.connect(lambda: self.silence_wished.emit(self._finding()))
        self._refreshed()

    def dress(self, colours: Colours) -> None:
        """Puts on another look."""
        self.model.dress(colours)

    def _finding(self) -> Finding | None:
        return self.model.finding(self.list.currentIndex().row())

    def _choose(self, current: QModelIndex, _before: QModelIndex) -> None:
        finding, fault = self.model.finding(current.row()), self.model.fault(current.row())
        right = finding.right if finding else None
        self.set_it.setVisible(right is not None)
        if right is not None:
            value = in_readers_sign(right[1])
            self.set_it.setText(self.tr("Set {name} to {value}").format(name=address_words(right[0]), value=value))
        self.lead.setVisible(bool(right is not None or (fault and fault.address)))
        self.accept.setVisible(finding is not None and finding.silenced is None)
        self.chosen.emit(finding or fault)

    def _refreshed(self) -> None:
        rows, worst = self.model.rowCount(), self.model.open_count()
        if not rows:
            self.heading.setText(self.tr("Nothing found wrong"))
        elif worst:
            self.heading.setText(
                self.tr("{worst} must be fixed, {rows} in all").format(worst=worst, rows=rows)
                if worst != rows
                else self.tr("{worst} must be fixed").format(worst=worst)
            )
        else:
            self.heading.setText(self.tr("Nothing must be fixed; {rows} to look at").format(rows=rows))
        for button in (self.set_it, self.lead, self.accept):
            button.hide()

    def _set(self) -> None:
        finding = self._finding()
        if finding is not None and finding.right is not None:
            self.set_wished.emit(Setting(*finding.right))

    def _lead(self) -> None:
        row = self.list.currentIndex().row()
        finding, fault = self.model.finding(row), self.model.fault(row)
        if finding is not None and finding.right is not None:
            self.led.emit(finding.right[0])
        elif fault is not None:
            self.led.emit(fault.address)
