"""The commands of the window as data: menus, shortcuts and the help page are made from this list. Knows no Qt.

Words are given here in English and translated where they are shown.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Command:
    """One command.

    Attributes:
        key: its name in the code.
        words: on the menu.
        menu: under which it stands.
        shortcut: a standard one by Qt's name ("Save"), or keys ("Ctrl+0"); "" for none.
        tells: a sentence for tooltip and help.
        turns: whether it is turned on and off.
        bar: whether it also stands on the bar over the canvas.
        after: a line is drawn before it.
    """

    key: str
    words: str
    menu: str
    shortcut: str = ""
    tells: str = ""
    turns: bool = False
    bar: bool = False
    after: bool = False


COMMANDS: tuple[Command, ...] = (
    Command("new", "New piece", "File", "New", "Go back to the starting pieces."),
    Command("open", "Open…", "File", "Open", "Open a piece file."),
    Command("save", "Save", "File", "Save", "Save the piece to its file.", bar=True),
    Command("save_as", "Save as…", "File", "SaveAs", "Save the piece under another name."),
    Command(
        "export",
        "Write the package…",
        "File",
        "Ctrl+E",
        "Write sheets, templates, drawing, router files and lists to a folder.",
        after=True,
        bar=True,
    ),
    Command("pictures", "Write views as pictures…", "File", "", "Write each view as SVG and PNG to a folder."),
    Command("print", "Print…", "File", "Print", "Print sheets, or templates at true size."),
    Command(
        "freeze",
        "Freeze a revision…",
        "File",
        "",
        "Keep in the file what a revision was made of, so that later changes are told.",
        after=True,
    ),
    Command("shop", "Shop and layouts", "File", "", "Cutters, saw, stock and offcuts of the shop; lay the piece out."),
    Command("close", "Close", "File", "Quit", "Close the window.", after=True),
    Command("undo", "Undo", "Change", "Undo", "Take the last change back.", bar=True),
    Command("redo", "Redo", "Change", "Redo", "Do it again.", bar=True),
    Command("more_drawers", "One more drawer", "Change", "Ctrl+Shift+D", "Add a drawer below the others.", after=True),
    Command("fewer_drawers", "One drawer fewer", "Change", "", "Take the lowest drawer out."),
    Command(
        "keep_variant",
        "Keep as a variant…",
        "Change",
        "",
        "Keep what differs from the saved file under a name.",
        after=True,
    ),
    Command("drop_variant", "Take this variant out", "Change", "", "Take the variant that is shown out of the file."),
    Command("trace", "Lay a photo behind a view…", "Change", "", "Trace the proportions of an old piece from a photo."),
    Command("fit", "Whole sheet", "Show", "Ctrl+0", "Show the whole sheet.", bar=True),
    Command("larger", "Larger", "Show", "ZoomIn", "Show the sheet larger."),
    Command("smaller", "Smaller", "Show", "ZoomOut", "Show the sheet smaller."),
    Command(
        "hidden", "Hidden lines", "Show", "Ctrl+H", "Show or leave out hidden lines.", turns=True, bar=True, after=True
    ),
    Command("dimensions", "Dimensions", "Show", "Ctrl+D", "Show or leave out dimensions.", turns=True, bar=True),
    Command("dados", "Dados", "Show", "", "Show where dados, grooves and rabbets run.", turns=True, bar=True),
    Command("swing", "Lid swing", "Show", "", "Show the open lid and its way.", turns=True, bar=True),
    Command("travel", "Drawers drawn out", "Show", "", "Show drawers and supports drawn out.", turns=True, bar=True),
    Command("section", "Section", "Show", "", "Show the piece cut through its middle.", turns=True, bar=True),
    Command(
        "picture",
        "Picture",
        "Show",
        "Ctrl+I",
        "Turn the piece in a window of its own, open its lid and drawers.",
        after=True,
        bar=True,
    ),
    Command("compare", "Two variants side by side", "Show", "", "Compare the piece with one of its variants."),
    Command("go_drawing", "Go to the drawing", "Show", "Ctrl+1", "Give the keyboard to the drawing.", after=True),
    Command("go_findings", "Go to the findings", "Show", "Ctrl+2", "Give the keyboard to the list of findings."),
    Command("go_beside", "Go to the panels", "Show", "Ctrl+3", "Give the keyboard to the panels beside the drawing."),
    Command(
        "language",
        "Language…",
        "Show",
        "",
        "Choose the language of the window; the drawing keeps its own.",
    ),
    Command("dark", "Dark", "Show", "", "Light words on a dark ground, for the evening.", turns=True),
    Command("help", "The first ten minutes", "Help", "HelpContents", "How to shape a piece and get it made."),
)

MENUS: tuple[str, ...] = ("File", "Change", "Show", "Help")
