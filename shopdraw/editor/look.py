"""Colours and fonts of the editor: a palette of our own, light and dark, set whole so that no desktop's theme mixes in.

No meaning is carried by colour alone: what a colour tells is told by a word, a line or a shape as well.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from PySide6.QtGui import QColor, QFont, QFontDatabase, QPalette
from PySide6.QtWidgets import QApplication, QToolTip

from shopdraw.drawing.letters import FALLBACK, FONTS, font_file


@dataclass(frozen=True, slots=True)
class Colours:
    """The colours of one of the two looks.

    Attributes:
        surround: behind the paper.
        paper: of the drawing.
        ink: lines of the drawing that are seen.
        faint: narrow lines: hidden, behind, hatches.
        figure: dimensions.
        accent: what can be taken hold of and what has the focus.
        glow: behind what is pointed at.
        panel, field, words, dim: of the panels: ground, fields, words, explanations.
        line: borders between panels.
        wrong: words about what can't be.
        box, mark: of what is ticked or chosen among others: its ground, and the mark in it.
    """

    surround: str
    paper: str
    ink: str
    faint: str
    figure: str
    accent: str
    glow: str
    panel: str
    field: str
    words: str
    dim: str
    line: str
    wrong: str
    box: str
    mark: str

    def colour(self, name: str) -> QColor:
        """One of the colours as Qt takes it."""
        return QColor(str(getattr(self, name)))


LIGHT = Colours(
    surround="#d9d4c7",
    paper="#fbfaf5",
    ink="#23211e",
    faint="#a39d90",
    figure="#4a5a68",
    accent="#0f6b5c",
    glow="#bfe3d6",
    panel="#f1eee6",
    field="#ffffff",
    words="#262420",
    dim="#5f5a50",
    line="#c4bdae",
    wrong="#9a3412",
    box="#ffffff",
    mark="#262420",
)
DARK = Colours(
    surround="#191b1c",
    paper="#25292b",
    ink="#ece8dd",
    faint="#8f949a",
    figure="#a9bccb",
    accent="#6fd0b8",
    glow="#20564c",
    panel="#1f2224",
    field="#2c3033",
    words="#ebe7dc",
    dim="#b1aea4",
    line="#454a4d",
    wrong="#f0a27c",
    box="#9aa0a6",
    mark="#1f2224",
)


@cache
def families() -> dict[str, str]:
    """Our fonts as Qt knows them, by their names in `shopdraw.drawing.letters.FONTS`; loaded once."""
    found: dict[str, str] = {}
    for name in FONTS:
        number = QFontDatabase.addApplicationFont(str(font_file(name)))
        named = QFontDatabase.applicationFontFamilies(number) if number >= 0 else []
        found[name] = named[0] if named else ""
    return found


def palette(colours: Colours) -> QPalette:
    """Every role of Qt's palette in our colours."""
    roles = {
        QPalette.ColorRole.Window: "panel",
        QPalette.ColorRole.WindowText: "words",
        QPalette.ColorRole.Base: "field",
        QPalette.ColorRole.AlternateBase: "panel",
        QPalette.ColorRole.Text: "words",
        QPalette.ColorRole.PlaceholderText: "dim",
        QPalette.ColorRole.Button: "panel",
        QPalette.ColorRole.ButtonText: "words",
        QPalette.ColorRole.BrightText: "wrong",
        QPalette.ColorRole.ToolTipBase: "field",
        QPalette.ColorRole.ToolTipText: "words",
        QPalette.ColorRole.Highlight: "accent",
        QPalette.ColorRole.HighlightedText: "field",
        QPalette.ColorRole.Link: "accent",
        QPalette.ColorRole.LinkVisited: "accent",
        QPalette.ColorRole.Accent: "accent",
        QPalette.ColorRole.Light: "field",
        QPalette.ColorRole.Midlight: "panel",
        QPalette.ColorRole.Mid: "line",
        QPalette.ColorRole.Dark: "line",
        QPalette.ColorRole.Shadow: "line",
    }
    made = QPalette()
    for role, name in roles.items():
        made.setColor(role, colours.colour(name))
    for role in (QPalette.ColorRole.WindowText, QPalette.ColorRole.Text, QPalette.ColorRole.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, role, colours.colour("faint"))
    return made


def dress(app: QApplication, colours: Colours) -> None:
    """Sets style, font and palette of the whole program.

    No style sheet: it would be matched against every widget, and Qt's own focus frames follow the palette.
    """
    if app.style().objectName() != "fusion":
        app.setStyle("Fusion")
    app.setPalette(palette(colours))
    ticked = palette(colours)
    ticked.setColor(QPalette.ColorRole.Base, colours.colour("box"))
    ticked.setColor(QPalette.ColorRole.Text, colours.colour("mark"))
    for kind in ("QRadioButton", "QCheckBox"):
        app.setPalette(ticked, kind)  # type: ignore[arg-type]  # it takes a str; PySide's own stub says bytes
    font = QFont(families()[FALLBACK])
    font.setPointSizeF(9.5)
    app.setFont(font)
    QToolTip.setPalette(app.palette())
