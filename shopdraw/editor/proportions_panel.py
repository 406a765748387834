"""Proportions: overlays to lay over the views, and the ratios that the piece really has."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QLabel, QRadioButton, QVBoxLayout, QWidget

from shopdraw.editor.overlay import OVERLAYS, bank_steps, real_ratios
from shopdraw.editor.shown_size import Shown
from shopdraw.editor.state import State
from shopdraw.editor.tongue import translate


class ProportionsPanel(QWidget):
    """Overlays and ratios.

    Signals:
        overlay_wished: the name of an overlay, or "".
    """

    overlay_wished = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        whole = QVBoxLayout(self)
        whole.addWidget(QLabel(self.tr("Lay over the drawing"), self))
        self.buttons: dict[str, QRadioButton] = {}
        self._group = QButtonGroup(self)
        for name in ("", *OVERLAYS):
            button = QRadioButton(translate("Ratio", name) if name else self.tr("nothing"), self)
            button.setAccessibleName(self.tr("Overlay: {name}").format(name=button.text()))
            button.toggled.connect(lambda on, name=name: self.overlay_wished.emit(name) if on else None)
            self._group.addButton(button)
            self.buttons[name] = button
            whole.addWidget(button)
        self.buttons[""].setChecked(True)
        self.real = QLabel(self)
        self.real.setWordWrap(True)
        self.real.setTextFormat(Qt.TextFormat.RichText)
        self.real.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.real.setAccessibleName(self.tr("Ratios of the piece"))
        whole.addSpacing(12)
        whole.addWidget(self.real)
        whole.addStretch(1)

    def show_state(self, state: State, shown: Shown) -> None:
        """Shows the ratios of a state."""
        assembly = state.assembly
        if assembly is None:
            return
        rows = []
        for ratio in real_ratios(assembly):
            off = f"{shown.number(abs(ratio.off) * 100, 1)} %"
            near = (
                self.tr("just {name}").format(name=ratio.nearest)
                if abs(ratio.off) < 0.0005
                else self.tr("{off} {way} {name}").format(
                    off=off, way=self.tr("over") if ratio.off > 0 else self.tr("under"), name=ratio.nearest
                )
            )
            rows.append(
                f"<tr><td>{ratio.name}&nbsp;&nbsp;</td><td><b>{shown.in_column(ratio.ratio)}</b>&nbsp;&nbsp;</td><td>{near}</td></tr>"
            )
        steps = [
            self.tr("{more} higher, {times} times").format(
                more=shown.length_with_unit(more), times=shown.in_column(times)
            )
            for more, times in bank_steps(assembly)
        ]
        has, over_it = self.tr("What the piece has"), self.tr("Each drawer opening over the one above it")
        words = f"<b>{has}</b><table cellspacing='4'>{''.join(rows)}</table>"
        if steps:
            words += f"<p><b>{over_it}</b><br>{'<br>'.join(steps)}</p>"
        self.real.setText(words)
