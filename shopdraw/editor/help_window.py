"""The help page: the first ten minutes, inside the program, and every command with its keys."""

from __future__ import annotations

from html import escape

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QTextBrowser, QVBoxLayout, QWidget

from shopdraw.editor.command_list import COMMANDS
from shopdraw.editor.tongue import translate

STEPS: tuple[tuple[str, str], ...] = (
    (
        "Begin",
        """Choose one of the starting pieces. It is a whole desk already: every board, joint and drawer is
        there.""",
    ),
    (
        "Shape it",
        """Take hold of a green bar on the drawing and drag: width, height, depth, the slant, the writing
        height, the rails between drawers. The size runs along beside the pointer. It holds to whole steps, to equal
        drawers and to plain ratios; with Shift it goes in fine steps. Escape gives up. Where the piece can't be built
        any further, the drag stops and says why.""",
    ),
    (
        "Type",
        """Click a dimension and type: 36 1/2, 800 mm, 31 1/2 + 3/4, or a part of another size such as 1/2 of
        depth. A dimension that follows from others says what drives it; typing into it takes the other one's
        place.""",
    ),
    (
        "Decide the rest",
        """Under Sizes stands every other choice: stocks, lid, drawers, plinth, seasons, sheets. Empty
        fields keep their defaults. A sketch shows what a word means.""",
    ),
    (
        "Look at the findings",
        """Under the drawing stands what must be fixed (filled), what to be careful about (half
        filled) and what to know (open). Choose one and its boards light up. Where there is a right value, one button
        sets it. What is all right in your case you accept with a reason.""",
    ),
    (
        "Look at it from all sides",
        """Picture opens a window: turn the desk with the mouse, open lid and drawers. What
        runs into something is hatched.""",
    ),
    (
        "Get it made",
        """Sheets shows each page as it prints. Write the package puts sheets, full-size templates, drawings
        for the router, and lists into a folder. Print templates at 100 %, and measure the check line before you trust
        them.""",
    ),
    (
        "Set the sheets right",
        """Show a sheet large and drag a figure to another side or row, or the end of a cutting plane's line to where it
        shall cut; draw from one edge to another for one more dimension. It stays so whatever the sizes become. Delete
        puts back what you chose.""",
    ),
    (
        "Stay safe",
        """Nothing is lost: what isn't saved is kept aside every 20 seconds and offered at the next start. For
        blades, routers and finishes the machine's manual and your local rules come first.""",
    ),
)


def help_steps() -> tuple[tuple[str, str], ...]:
    """Heads and paragraphs in English, each paragraph in one line."""
    return tuple((head, " ".join(words.split())) for head, words in STEPS)


class HelpWindow(QWidget):
    """A page to read."""

    def __init__(self, actions: dict[str, QAction]) -> None:
        super().__init__()
        self.setWindowTitle(self.tr("The first ten minutes"))
        self.page = QTextBrowser(self)
        self.page.setAccessibleName(self.tr("Help"))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self.page)
        self.page.setHtml(self._words(actions))
        self.page.document().setDocumentMargin(28)
        self.resize(720, 780)

    def _words(self, actions: dict[str, QAction]) -> str:
        steps = "".join(
            f"<h3>{escape(translate('Help', head))}</h3><p>{escape(translate('Help', words))}</p>"
            for head, words in help_steps()
        )
        commands = self.tr("Commands")
        rows = []
        for command in COMMANDS:
            action = actions.get(command.key)
            if action is not None:
                keys = escape(action.shortcut().toString())
                cells = (f"<b>{escape(action.iconText())}</b>", keys, escape(action.statusTip()))
                rows.append(f"<tr>{''.join(f'<td>{cell}</td>' for cell in cells)}</tr>")
        table = f"<table cellspacing='6'>{''.join(rows)}</table>"
        return f"<h2>{escape(self.windowTitle())}</h2>{steps}<h3>{escape(commands)}</h3>{table}"
