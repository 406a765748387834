"""Every state of the window, one after the other, with every widget that is then in sight."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from html import unescape
from pathlib import Path

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QAbstractSlider,
    QApplication,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QMenuBar,
    QPlainTextEdit,
    QScrollBar,
    QStyle,
    QStyleOptionComboBox,
    QTabBar,
    QTableView,
    QToolBar,
    QToolButton,
    QWidget,
)

from shopdraw.editor.ask import Kind, Question, question_box
from shopdraw.editor.canvas import Canvas
from shopdraw.editor.picture import PictureView
from shopdraw.editor.sheet_view import SheetView
from shopdraw.editor.state import Setting
from shopdraw.editor.tracing import PointPicker
from shopdraw.editor.window import Window
from shopdraw.wood.finding import Finding, Severity
from tests.editor.gestures import click

CONTROLS = (
    QAbstractButton, QLineEdit, QComboBox, QAbstractSlider, QAbstractItemView, QPlainTextEdit, Canvas, PictureView,
    SheetView, PointPicker,
)  # fmt: skip


def every_state(window: Window, file: Path, folder: Path) -> Iterator[tuple[str, QWidget]]:
    """Goes through the states; each is named, with the window that shows it.

    Args:
        window: in sight, with nothing open.
        file: a desk to open.
        folder: for what is written.
    """
    work, doing = window.work, window.doing
    window.start.show_recent([str(file)])
    yield "start", window
    window.open_file(file)
    window.piece.set_values((Setting("case.width", "44"),), "Wider")
    window.filing.ask = lambda _parent, _question: "wide"  # type: ignore[assignment]
    doing.keep_variant()
    for tab in range(work.side.count()):
        work.side.setCurrentIndex(tab)
        yield f"panel {tab}", window
    work.side.setCurrentWidget(work.form)
    for group in work.form._groups:
        work.form._headers[group.key][0].setChecked(True)
    work.form.go_to("slant.writing_height")
    yield "every field", window
    work.form.complain("case.width", "it can't be so")
    work._choose_board("side.left")
    yield "a board", window
    told = Finding("x", Severity.MUST_FIX, ("side.left",), "a dado is too deep", right=("case.dado_depth", "1/4"))
    work.findings.model.show_findings((told,))
    work.findings.list.setCurrentIndex(work.findings.model.index(0))
    yield "a finding", window
    window.grab()
    for figure in window.canvas.scene.figures:
        place = window.canvas.figure_place(figure.id)
        if not place.isEmpty():
            click(window.canvas, place.center())
            yield f"typing into {figure.name}", window
            work.entry.close_slip()
    if work.sheet_sets:
        doing._large(work.sheet_sets[0], 0)
        yield "a sheet", doing.open_windows[-1]
        work.sheets.all_pages.click()
        yield "all pages", doing.open_windows[-1]
    doing.shop()
    yield "shop", doing.open_windows[-1]
    doing._progressed(2, 5, "templates")
    yield "exporting", window
    doing.picture()
    assert doing.picture_window is not None
    doing.picture_window.show_colliding(frozenset({"lid"}))
    yield "picture", doing.picture_window
    doing.compare()
    yield "compare", doing.open_windows[-1]
    doing.help()
    yield "help", doing.open_windows[-1]
    yield from _tracing(window, folder)
    yield from _questions(window)
    window.piece.set_text(window.piece.state.text.replace('width = "44"', 'width = "44'), "Break")
    yield "faults", window


def _tracing(window: Window, folder: Path) -> Iterator[tuple[str, QWidget]]:
    photo = folder / "old.png"
    picture = QPixmap(400, 300)
    picture.fill(Qt.GlobalColor.white)
    picture.save(str(photo))
    window.filing.ask = lambda _parent, _question: str(photo)  # type: ignore[assignment]
    window.doing.trace()
    tracing = window.doing.open_windows[-1]
    yield "photo", tracing
    tracing.picker.points = [QPointF(10, 200), QPointF(300, 200), QPointF(300, 20), QPointF(10, 20)]  # type: ignore[attr-defined]
    tracing.picker.picked.emit()  # type: ignore[attr-defined]
    yield "photo, four points", tracing


def _questions(window: Window) -> Iterator[tuple[str, QWidget]]:
    for choices in ((), (("save", window.filing.tr("Save in another place")), ("", window.filing.tr("Go back")))):
        box, _ = question_box(window, Question(Kind.CHOOSE, "title", "words", choices))
        box.show()
        yield f"a question with {len(choices)} choices", box
        box.close()
        box.setParent(None)
        box.deleteLater()
        QApplication.sendPostedEvents(box, QEvent.Type.DeferredDelete)


def own_controls(window: QWidget) -> list[QWidget]:
    """Every control that a person can use; Qt's own parts of a control belong to it."""
    return [
        widget
        for widget in window.findChildren(QWidget)
        if isinstance(widget, CONTROLS)
        and not isinstance(widget, QScrollBar | QHeaderView)
        and not part_of_another(widget)
    ]


def part_of_another(widget: QWidget) -> bool:
    """Whether a widget is a piece of a larger control."""
    parent = widget.parent()
    while isinstance(parent, QObject):
        if isinstance(parent, QComboBox | QAbstractItemView | QLineEdit | QTabBar | QMenuBar):
            return True
        parent = parent.parent()
    return isinstance(widget, QToolButton) and widget.objectName() == "qt_toolbar_ext_button"


def cut_off(window: QWidget) -> list[str]:
    """What is in sight and hasn't the room that its words need."""
    found = []
    for widget in window.findChildren(QWidget):
        if widget.isVisible() and widget.width() and not part_of_another(widget):
            found += [f"{type(widget).__name__} {words[:60]!r}" for words in _lacking(widget)]
            if isinstance(widget, QLabel | QAbstractButton | QLineEdit | QComboBox) and _hangs_out(widget):
                found.append(
                    f"{type(widget).__name__} {widget.accessibleName()!r} hangs out of its parent: {_told(widget)!r}"
                )
    return found


def _told(widget: QWidget) -> str:
    return widget.text()[:40] if isinstance(widget, QLabel | QAbstractButton) else widget.accessibleName()


def _lacking(widget: QWidget) -> Iterator[str]:
    """Words for which a widget hasn't the room."""
    for kind, lacking in _LACKING:
        if isinstance(widget, kind):
            yield from lacking(widget)
            return


def _label_lacks(label: QLabel) -> Iterator[str]:
    if label.text() and label.pixmap().isNull():
        high = label.heightForWidth(label.width()) if label.wordWrap() else label.sizeHint().height()
        wide = 0 if label.wordWrap() else label.sizeHint().width()
        if high > label.height() + 1 or wide > label.width() + 1:
            yield label.text()


def _choice_lacks(box: QComboBox) -> Iterator[str]:
    option = QStyleOptionComboBox()
    box.initStyleOption(option)
    field = box.style().subControlRect(
        QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, box
    )
    if box.fontMetrics().horizontalAdvance(box.currentText()) > field.width():
        yield box.currentText()


def _line_lacks(line: QLineEdit) -> Iterator[str]:
    if line.fontMetrics().horizontalAdvance(line.placeholderText()) > line.width() - 10:
        yield line.placeholderText()


def _tabs_lack(bar: QTabBar) -> Iterator[str]:
    for tab in range(bar.count()):
        place = bar.tabRect(tab)
        if not bar.rect().contains(place) or place.width() < bar.fontMetrics().horizontalAdvance(bar.tabText(tab)):
            yield bar.tabText(tab)


def _table_lacks(view: QAbstractItemView) -> Iterator[str]:
    for header in view.findChildren(QHeaderView):
        for section in range(header.count() if header.isVisible() else 0):
            if header.sectionSizeHint(section) > header.sectionSize(section):
                yield str(header.model().headerData(section, header.orientation()))


def _button_lacks(button: QAbstractButton) -> Iterator[str]:
    needs = button.fontMetrics().boundingRect(0, 0, 4000, 4000, 0, button.text())
    if button.text() and (needs.width() > button.width() or needs.height() > button.height()):
        yield button.text()


_LACKING: tuple[tuple[type[QWidget], Callable[..., Iterator[str]]], ...] = (
    (QLabel, _label_lacks),
    (QComboBox, _choice_lacks),
    (QLineEdit, _line_lacks),
    (QTabBar, _tabs_lack),
    (QAbstractItemView, _table_lacks),
    (QAbstractButton, _button_lacks),
)


def _hangs_out(widget: QWidget) -> bool:
    """Whether a part of it lies outside its parent, where nothing can be scrolled to bring it in."""
    parent = widget.parentWidget()
    while parent is not None and not parent.isWindow():
        if isinstance(parent, QToolBar) or isinstance(parent.parentWidget(), QAbstractScrollArea):
            return False
        place = QRect(widget.mapTo(parent, QPoint(0, 0)), widget.size())
        if not parent.rect().adjusted(-1, -1, 1, 1).contains(place):
            return True
        parent = parent.parentWidget()
    return False


def words_of(window: QWidget) -> Iterator[str]:
    """Every text that a person or a screen reader meets in a window."""
    yield window.windowTitle().replace("[*]", "")
    for action in window.actions():
        yield from (action.text(), action.toolTip(), action.statusTip())
    for widget in (window, *window.findChildren(QWidget)):
        if part_of_another(widget):
            continue
        yield from (widget.accessibleName(), widget.accessibleDescription(), widget.toolTip())
        if isinstance(widget, QLabel | QAbstractButton):
            yield unescape(re.sub(r"<[^>]*>", " ", widget.text()))
        elif isinstance(widget, QLineEdit):
            yield widget.placeholderText()
        elif isinstance(widget, QComboBox):
            yield from (widget.itemText(row) for row in range(widget.count()))
        elif isinstance(widget, QTabBar):
            yield from (widget.tabText(tab) for tab in range(widget.count()))
        elif isinstance(widget, QMenuBar):
            for action in widget.actions():
                yield action.text()
                yield from (each.text() for each in action.menu().actions()) if action.menu() else ()
        elif isinstance(widget, QTableView):
            model = widget.model()
            for column in range(model.columnCount()):
                yield str(model.headerData(column, Qt.Orientation.Horizontal))
