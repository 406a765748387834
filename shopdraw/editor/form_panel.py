"""The form beside the canvas: every input of the piece file, by member, with its unit, its default and a short word.

Thin: what fields there are comes from `field`, what a value leads to from the open piece.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import partial
from typing import Any

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QMenu,
    QPushButton,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from shopdraw.editor.field import (
    FormField,
    FormGroup,
    choice_words,
    form_of,
    table_words,
    typed_at,
    typed_values,
)
from shopdraw.editor.keyed import keyed_tables
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.sketch import sketch_of
from shopdraw.editor.sketch_view import SketchView
from shopdraw.editor.state import State

LABEL_IN_LETTERS = 21
"""How wide a label is before its words go on in a second line."""
ROUND_WORDS = 20
"""A line's own frame and margins beside its words, pixels."""
OPEN_AT_FIRST = ("case", "slant", "opening.bank.divide")


class FormPanel(QWidget):
    """Fields by group.

    Signals:
        wished: a field and the text that a person gave ("" for the default).
        add_wished: the name of a keyed table that a person wants one more of.
        take_out_wished: the address of a keyed table that a person wants taken out, and what it is called.
        pointed: the address of the field that has the focus.
    """

    wished = Signal(object, str)
    add_wished = Signal(str)
    take_out_wished = Signal(str, str)
    pointed = Signal(str)

    def __init__(
        self,
        parent: QWidget | None = None,
        tables: tuple[str, ...] | None = None,
        opened: tuple[str, ...] = OPEN_AT_FIRST,
    ) -> None:
        """Makes an empty form.

        Args:
            parent: owner.
            tables: keyed tables that one more can be begun of; those of the piece file where nothing is given.
            opened: groups that are open at first.
        """
        super().__init__(parent)
        self._open_at_first = opened
        self._groups: tuple[FormGroup, ...] = ()
        self._fields: dict[str, FormField] = {}
        self._widgets: dict[str, QLineEdit | QComboBox] = {}
        self._headers: dict[str, tuple[QToolButton, QWidget]] = {}
        self._group_of: dict[str, FormGroup] = {}
        self._told: dict[str, str] = {}
        self._rows: dict[str, QFormLayout] = {}
        self._made: set[str] = set()
        self.take_out: dict[str, QToolButton] = {}
        self._tables: Mapping[str, Any] = {}
        self._shown: Shown | None = None
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(self.tr("Find an input"))
        self.search.setAccessibleName(self.tr("Find an input"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self._filter)
        self.add = QPushButton(self.tr("Add"), self)
        self.add.setAccessibleName(self.tr("Add a stock, a note or another keyed table"))
        self.add.setToolTip(self.add.accessibleName())
        menu = QMenu(self.add)
        for name in keyed_tables() if tables is None else tables:
            menu.addAction(table_words(name)).triggered.connect(partial(self._wish_more, name))
        self.add.setMenu(menu)
        self._body = QVBoxLayout()
        self._body.setContentsMargins(0, 0, 8, 0)
        self._body.setSpacing(2)
        self._body.addStretch(1)
        inner = QWidget(self)
        inner.setLayout(self._body)
        self._scroll = QScrollArea(self)
        self._scroll.setWidget(inner)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setAccessibleName(self.tr("Inputs of the piece"))
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._about = QLabel(self)
        self._about.setWordWrap(True)
        self._about.setTextFormat(Qt.TextFormat.RichText)
        self._about.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.sketch = SketchView(self)
        self.sketch.hide()
        top = QHBoxLayout()
        top.addWidget(self.search, 1)
        top.addWidget(self.add)
        foot = QHBoxLayout()
        foot.addWidget(self.sketch)
        foot.addWidget(self._about, 1)
        whole = QVBoxLayout(self)
        whole.addLayout(top)
        whole.addWidget(self._scroll, 1)
        whole.addLayout(foot)
        self._about.setText(self.tr("Click a field to read what it means. An empty field keeps its default."))

    def show_state(self, state: State, shown: Shown, board: str = "") -> None:
        """Shows what a state gives; widgets are made anew only where the set of inputs is another one."""
        self.show_form(form_of(state, shown, board), state.text, shown)

    def show_form(self, groups: tuple[FormGroup, ...], text: str, shown: Shown) -> None:
        """Shows fields with what a file's text gives for them."""
        self._tables, self._shown = typed_values(text), shown
        if groups != self._groups:
            self._make(groups)
        for address, widget in self._widgets.items():
            self._fill(widget, self._fields[address], typed_at(self._tables, address), shown)

    def go_to(self, address: str) -> bool:
        """Opens an input's group and gives it the focus; False where there is no such input."""
        if address not in self._fields:
            return False
        self.search.clear()
        widget = self.widget_for(address)
        self._headers[self._group_of[address].key][0].setChecked(True)
        self._scroll.ensureWidgetVisible(widget)
        widget.setFocus()
        return True

    def take_typed(self) -> None:
        """Sets what is typed into the line with the focus, as leaving it would."""
        line = self.focusWidget()
        field = self._fields.get(str(line.property("address"))) if isinstance(line, QLineEdit) else None
        if isinstance(line, QLineEdit) and field is not None:
            self._finished(field, line)

    def field_of(self, address: str) -> FormField | None:
        """The field of an input, or None where it stands in the file alone."""
        return self._fields.get(address)

    def widget_for(self, address: str) -> QLineEdit | QComboBox:
        """The widget of an input; its group's are made where it hasn't been opened yet."""
        self._make_rows(self._group_of[address])
        return self._widgets[address]

    def complain(self, address: str, sentence: str) -> None:
        """Says why an input can't be as it was typed."""
        field = self._fields.get(address)
        name = field.label if field else address
        self._about.setText(f"<b>{name}</b><br>{sentence}")

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802  # Qt's name
        """Tells what the field with the focus means."""
        if event.type() == QEvent.Type.FocusIn:
            address = str(watched.property("address"))
            if address in self._fields:
                self._tell(self._fields[address])
                # What is told takes room from the form: the field itself stays in sight.
                QTimer.singleShot(0, self, self._keep_in_sight)
                self.pointed.emit(address)
        return super().eventFilter(watched, event)

    def _keep_in_sight(self) -> None:
        widget: QWidget | None = self.focusWidget()
        if widget is not None and self._scroll.isAncestorOf(widget):
            self._scroll.ensureWidgetVisible(widget)

    def _wish_more(self, name: str) -> None:
        self.add_wished.emit(name)

    def _tell(self, field: FormField) -> None:
        words = [f"<b>{field.label}</b>"]
        if field.description:
            words.append(field.description[:1].upper() + field.description[1:] + ".")
        if field.needed:
            words.append(self.tr("It must be given."))
        elif field.follows:
            words.append(self.tr("Left empty, it is worked out."))
        elif field.default:
            words.append(self.tr("Left empty: {default}.").format(default=field.default))
        words.append(f"<span style='font-size:small'>{field.address}</span>")
        self._about.setText("<br>".join(words))
        self.sketch.show_marks(sketch_of(field.address))

    def _make(self, groups: tuple[FormGroup, ...]) -> None:
        opened = {key for key, (header, _) in self._headers.items() if header.isChecked()} or set(self._open_at_first)
        while self._body.count() > 1:
            item = self._body.takeAt(0)
            widget = item.widget() if item else None
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self._groups = groups
        self._fields.clear()
        self._widgets.clear()
        self._headers.clear()
        self._told.clear()
        self._group_of.clear()
        self._rows.clear()
        self._made.clear()
        self.take_out.clear()
        for number, group in enumerate(groups):
            self._body.insertWidget(number, self._group_widget(group, group.key in opened))
        self._filter(self.search.text())

    def _group_widget(self, group: FormGroup, opened: bool) -> QWidget:
        whole = QWidget(self)
        header = QToolButton(whole)
        header.setText(group.title)
        header.setToolTip(group.about or group.title)
        header.setAccessibleName(group.title)
        header.setAccessibleDescription(group.about)
        header.setCheckable(True)
        header.setChecked(opened)
        header.setAutoRaise(True)
        header.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        header.setArrowType(Qt.ArrowType.DownArrow if opened else Qt.ArrowType.RightArrow)
        font = header.font()
        font.setBold(True)
        header.setFont(font)
        body = QWidget(whole)
        rows = QFormLayout(body)
        rows.setContentsMargins(20, 0, 0, 8)
        rows.setVerticalSpacing(4)
        rows.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        rows.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        self._rows[group.key] = rows
        for field in group.fields:
            self._fields[field.address] = field
            self._group_of[field.address] = group
            words = f"{group.title} {field.label} {field.description} {field.address.replace('_', ' ')}"
            self._told[field.address] = words.lower()
        if opened:
            self._make_rows(group)
        body.setVisible(opened)

        def turn(checked: bool) -> None:
            if checked:
                self._make_rows(group)
            body.setVisible(checked)
            header.setArrowType(Qt.ArrowType.DownArrow if checked else Qt.ArrowType.RightArrow)

        header.toggled.connect(turn)
        layout = QVBoxLayout(whole)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        head = QHBoxLayout()
        head.addWidget(header)
        head.addStretch(1)
        if group.own:
            head.addWidget(self._take_out(group, whole))
        layout.addLayout(head)
        layout.addWidget(body)
        self._headers[group.key] = (header, whole)
        return whole

    def _take_out(self, group: FormGroup, parent: QWidget) -> QToolButton:
        """The button that takes a table of a person's own out of the file."""
        button = QToolButton(parent)
        button.setText(self.tr("Take out"))
        button.setAccessibleName(self.tr("Take {name} out of the file").format(name=group.title))
        button.setToolTip(button.accessibleName())
        button.setAutoRaise(True)
        button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        button.clicked.connect(lambda: self._wish_out(group))
        self.take_out[group.key] = button
        return button

    def _wish_out(self, group: FormGroup) -> None:
        """Wishes a table out; the keyboard goes on to what stood before it."""
        keys = [one.key for one in self._groups]
        before = keys[max(keys.index(group.key) - 1, 0)]
        self.take_out_wished.emit(group.key, group.title)
        if group.key not in self._headers and before in self._headers:
            self._headers[before][0].setFocus()

    def _make_rows(self, group: FormGroup) -> None:
        """Makes the rows of a group when it is first opened: the panel itself is there at once."""
        if group.key in self._made:
            return
        self._made.add(group.key)
        for field in group.fields:
            self._add_row(self._rows[group.key], field)
            if self._shown is not None:
                typed = typed_at(self._tables, field.address)
                self._fill(self._widgets[field.address], field, typed, self._shown)

    def _add_row(self, rows: QFormLayout, field: FormField) -> None:
        widget = self._widget(field)
        label = QLabel(f"{field.label}, {field.unit}" if field.unit else field.label)
        label.setWordWrap(True)
        letters = label.fontMetrics()
        room = letters.averageCharWidth() * LABEL_IN_LETTERS
        label.setMinimumWidth(min(letters.horizontalAdvance(label.text()) + 1, room))
        label.setBuddy(widget)
        rows.addRow(label, widget)
        self._widgets[field.address] = widget

    def _widget(self, field: FormField) -> QLineEdit | QComboBox:
        made: QLineEdit | QComboBox
        if field.kind in ("choice", "yes-no"):
            made = QComboBox()
            default = field.default or self.tr("worked out")
            if not field.needed:
                made.addItem(self.tr("default: {value}").format(value=default), "")
            for choice in field.choices or ("yes", "no"):
                made.addItem(choice_words(choice), choice)
            made.activated.connect(lambda _row, field=field, box=made: self.wished.emit(field, str(box.currentData())))
            made.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContentsOnFirstShow)
            # A wheel that passes over the form must not change a piece.
            made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        else:
            made = QLineEdit()
            made.editingFinished.connect(lambda field=field, line=made: self._finished(field, line))
        made.setAccessibleName(f"{field.label}, {field.unit}" if field.unit else field.label)
        made.setAccessibleDescription(field.description)
        made.setToolTip(field.description)
        made.setProperty("address", field.address)
        made.installEventFilter(self)
        return made

    def _fill(self, widget: QLineEdit | QComboBox, field: FormField, typed: str, shown: Shown) -> None:
        if isinstance(widget, QComboBox):
            row = widget.findData(typed)
            widget.setCurrentIndex(max(row, 0))
            return
        words = typed.replace(".", ",") if shown.decimal_sign == "," and _is_number(typed) else typed
        widget.setProperty("was", words)
        if widget.text() != words:
            widget.setText(words)
        unsaid = field.default or (self.tr("worked out") if field.follows else "")
        if widget.placeholderText() != unsaid:
            widget.setPlaceholderText(unsaid)
            widget.setMinimumWidth(widget.fontMetrics().horizontalAdvance(unsaid) + ROUND_WORDS)

    def _finished(self, field: FormField, line: QLineEdit) -> None:
        if line.text() != str(line.property("was") or ""):
            self.wished.emit(field, line.text().strip())

    def _filter(self, words: str) -> None:
        wanted = words.lower().split()
        for group in self._groups:
            header, whole = self._headers[group.key]
            fits = {f.address: all(word in self._told[f.address] for word in wanted) for f in group.fields}
            whole.setVisible(any(fits.values()))
            if wanted and any(fits.values()):
                header.setChecked(True)
            for address, fit in fits.items() if group.key in self._made else ():
                self._rows[group.key].setRowVisible(self._widgets[address], fit)


def _is_number(text: str) -> bool:
    return text.replace(".", "", 1).isdigit()
