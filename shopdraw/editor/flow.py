"""A row that goes on in the next line where there is no room: buttons keep their whole words in any language."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowRow(QLayout):
    """Items one after the other, each at the size it asks for; hidden ones take no room."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:  # noqa: N802  # Qt's names, here and below
        """Adds an item at the end."""
        self._items.append(item)

    def count(self) -> int:
        """How many items there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """An item, or None."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:  # noqa: N802
        """Takes an item out."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:  # noqa: N802
        """It takes no more room than it needs."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:  # noqa: N802
        """The narrower, the higher."""
        return True

    def heightForWidth(self, width: int) -> int:  # noqa: N802
        """How high it is when so wide, pixels."""
        return self._lay(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:  # noqa: N802
        """Lays the items."""
        super().setGeometry(rect)
        self._lay(rect, move=True)

    def sizeHint(self) -> QSize:  # noqa: N802
        """All in one line."""
        shown = [item.sizeHint() for item in self._items if not item.isEmpty()]
        gaps = self._gap() * max(0, len(shown) - 1)
        return QSize(sum(size.width() for size in shown) + gaps, max((size.height() for size in shown), default=0))

    def minimumSize(self) -> QSize:  # noqa: N802
        """As wide as the widest item."""
        least = QSize()
        for item in self._items:
            if not item.isEmpty():
                least = least.expandedTo(item.minimumSize())
        return least

    def _gap(self) -> int:
        return max(4, self.spacing())

    def _lay(self, rect: QRect, *, move: bool) -> int:
        x, y, high = rect.x(), rect.y(), 0
        for item in self._items:
            if item.isEmpty():
                continue
            size = item.sizeHint()
            if high and x + size.width() > rect.right() + 1:
                x, y, high = rect.x(), y + high + self._gap(), 0
            if move:
                item.setGeometry(QRect(QPoint(x, y), size.boundedTo(QSize(max(rect.width(), 1), size.height()))))
            x += size.width() + self._gap()
            high = max(high, size.height())
        return y + high - rect.y()
