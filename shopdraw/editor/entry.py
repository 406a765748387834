"""The slip that opens over a dimension: type a value, a sum, or a part of another size; it says what drives it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QRect, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from shopdraw.editor.field import label_words, table_words
from shopdraw.editor.figure import Figure
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.tongue import translate
from shopdraw.editor.typed import NotTyped, Typed, read_typed, read_typed_angle
from shopdraw.piece.address import address_path

_WIDTH_IN_LETTERS = 34
KEYS_WITHOUT_ID = 2
"""A table and its input; in between stands the id of one of several (`level.2.top`)."""


class Entry(QFrame):
    """Typing into a dimension.

    Signals:
        typed: the figure and what was typed.
        led: the address of an input that drives the figure, when a person wants to go there.
    """

    typed = Signal(object, object)
    led = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._figure: Figure | None = None
        self._shown: Shown | None = None
        self._sizes: dict[str, float] = {}
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.setAutoFillBackground(True)
        self._title = QLabel(self)
        self.line = QLineEdit(self)
        self.line.setAccessibleName(self.tr("Size"))
        self._unit = QLabel(self)
        self.set_it = QPushButton(self.tr("Set"), self)
        self.set_it.setAccessibleName(self.tr("Set this size"))
        self.set_it.setToolTip(self.tr("Set this size (Enter)"))
        self._hint = QLabel(self)
        self._hint.setWordWrap(True)
        self._drivers = QVBoxLayout()
        row = QHBoxLayout()
        row.addWidget(self.line, 1)
        row.addWidget(self._unit)
        row.addWidget(self.set_it)
        whole = QVBoxLayout(self)
        whole.addWidget(self._title)
        whole.addLayout(row)
        whole.addWidget(self._hint)
        whole.addLayout(self._drivers)
        self.line.returnPressed.connect(self._set)
        self.set_it.clicked.connect(self._set)
        self.line.installEventFilter(self)
        self.hide()

    @property
    def hint(self) -> str:
        """What is said under the line."""
        return self._hint.text()

    def open_on(self, figure: Figure, place: QRect, shown: Shown, sizes: dict[str, float]) -> None:
        """Opens over a dimension.

        Args:
            figure: what is typed into.
            place: of its words, in the parent's pixels.
            shown: how sizes are shown.
            sizes: sizes that can be named.
        """
        self._figure, self._shown, self._sizes = figure, shown, sizes
        self._title.setText(f"<b>{figure.name}</b>")
        self._unit.setText("°" if figure.angle else shown.unit.short)
        size = shown.angle(figure.value).rstrip("°") if figure.angle else shown.length(figure.value)
        self.line.setText(size)
        self.line.setModified(False)
        self.line.selectAll()
        can = figure.sets is not None
        for widget in (self.line, self.set_it):
            widget.setEnabled(can)
        self._hint.setText(figure.says or self.tr("Also a sum, or a part of another size: 1/2 of depth"))
        self._show_drivers(figure)
        self._fit_words()
        parent = self.parentWidget()
        assert parent is not None
        x = min(max(4, place.center().x() - self.width() // 2), parent.width() - self.width() - 4)
        y = min(max(4, place.top() - 8), parent.height() - self.height() - 4)
        self.move(x, y)
        self.show()
        self.raise_()
        (self.line if can else self).setFocus()

    def take_typed(self) -> None:
        """Sets what was typed and not set yet, as Enter would."""
        if self.isVisible() and self.line.isEnabled() and self.line.isModified():
            self._set()

    def close_slip(self) -> None:
        """Closes without a change."""
        parent = self.parentWidget()
        if parent is not None:
            parent.setFocus()
        self.hide()

    def complain(self, sentence: str) -> None:
        """Says why what was typed can't be; stays open."""
        self._hint.setText(sentence)
        self._fit_words()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802  # Qt's name
        """Escape closes."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress and event.key() == Qt.Key.Key_Escape:
            self.close_slip()
            return True
        return super().eventFilter(watched, event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Escape closes; no key goes on to the canvas below."""
        if event.key() == Qt.Key.Key_Escape:
            self.close_slip()
        event.accept()

    def _fit_words(self) -> None:
        """As wide as its longest button, as high as its words need at that width."""
        layout = self.layout()
        assert layout is not None
        layout.activate()
        wide = max(self.fontMetrics().averageCharWidth() * _WIDTH_IN_LETTERS, layout.minimumSize().width())
        self.setFixedSize(wide, layout.totalHeightForWidth(wide))

    def _set(self) -> None:
        figure, shown = self._figure, self._shown
        if figure is None or shown is None or figure.sets is None:
            return
        try:
            typed: Typed = (
                read_typed_angle(self.line.text())
                if figure.angle
                else read_typed(self.line.text(), shown.unit, self._sizes)
            )
        except NotTyped as error:
            self.complain(str(error))
            return
        self.typed.emit(figure, typed)

    def _show_drivers(self, figure: Figure) -> None:
        while self._drivers.count():
            item = self._drivers.takeAt(0)
            widget = item.widget() if item else None
            if widget is not None:
                widget.deleteLater()
        for address in figure.drives:
            button = QPushButton(self.tr("Go to {name}").format(name=address_words(address)), self)
            button.setAccessibleName(button.text())
            button.setToolTip(self.tr("Show the input that this size follows from"))
            button.clicked.connect(lambda _checked=False, address=address: self.led.emit(address))
            self._drivers.addWidget(button)


def address_words(address: str) -> str:
    """An address of the piece file in a person's words: the last key, spelt out, and the table it stands in."""
    keys = address_path(address)
    words = label_words(keys[-1])
    if len(keys) == 1:
        return words
    table = f"{table_words(keys[0])} {keys[1]}" if len(keys) > KEYS_WITHOUT_ID else table_words(keys[0])
    return translate("Entry", "“{input}” ({table})").format(input=words, table=table)
