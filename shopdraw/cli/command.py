"""The words of the command line, and what becomes of errors.

Nothing but argparse is imported before a verb is known, so that ``shopdraw --help`` answers at once; each verb's
modules are imported when it runs.
"""

from __future__ import annotations

import argparse
import gc
import os
import sys

from shopdraw import __version__
from shopdraw.cli.refused import Refused, reason_of

TYPE_CHECKING = False
if TYPE_CHECKING:  # the same name that typing has, whose import would take a tenth of the time that --help takes
    from collections.abc import Callable, Sequence
    from typing import Any, NoReturn

KINDS_OF_PIECE = ("slant-desk", "chest", "bookcase", "lectern", "free")
KINDS_OF_OUTPUT = ("sheets", "templates", "drawing", "cnc", "lists")

EXIT_REFUSED = 2
EXIT_STOPPED = 130
"""128 + SIGINT, as shells report it."""


class _Lines(argparse.HelpFormatter):
    """Help as wide as the terminal; argparse itself would import every compression library to ask how wide that is."""

    def __init__(self, prog: str) -> None:
        super().__init__(prog, width=_columns() - 2)


def _columns() -> int:
    try:
        return max(int(os.environ.get("COLUMNS", "")), 40)
    except ValueError:
        pass
    try:
        return max(os.get_terminal_size(sys.stdout.fileno()).columns, 40)
    except (OSError, ValueError, AttributeError):  # no terminal
        return 80


class _Parser(argparse.ArgumentParser):
    """Argparse, with an error in one line."""

    def __init__(self, **settings: Any) -> None:
        super().__init__(**{"formatter_class": _Lines, **settings})

    def error(self, message: str) -> NoReturn:
        sys.stderr.write(f"{self.prog}: {message}; see {self.prog} --help\n")
        raise SystemExit(EXIT_REFUSED)


def parser() -> argparse.ArgumentParser:
    """The verbs and their options."""
    top = _Parser(
        prog="shopdraw",
        description="Working drawings for furniture makers from one piece file. Without a verb: opens the editor.",
    )
    top.add_argument("--version", action="version", version=f"shopdraw {__version__}")
    verbs = top.add_subparsers(dest="verb", metavar="VERB", title="verbs")

    edit = verbs.add_parser("edit", help="open the editor on a piece")
    edit.add_argument("file", metavar="FILE", help="piece file")

    start = verbs.add_parser("start", help="write a new piece file; never over an existing one")
    start.add_argument("kind", metavar="KIND", choices=KINDS_OF_PIECE, help=", ".join(KINDS_OF_PIECE))
    start.add_argument("file", metavar="FILE", help="piece file to write")

    check = verbs.add_parser("check", help="list what is wrong with a piece; exit 1 where something must be fixed")
    check.add_argument("file", metavar="FILE", help="piece file")
    check.add_argument("--json", action="store_true", help="print the findings as JSON, as in facts")

    facts = verbs.add_parser("facts", help="print everything derived from a piece as one JSON object")
    facts.add_argument("file", metavar="FILE", help="piece file")

    export = verbs.add_parser("export", help="write sheets, templates, drawing, router files and lists")
    export.add_argument("file", metavar="FILE", help="piece file")
    export.add_argument("folder", metavar="DIR", help="folder to write to")
    export.add_argument(
        "--only", nargs="+", action="extend", choices=KINDS_OF_OUTPUT, metavar="PART",
        help=f"only these parts of the package: {', '.join(KINDS_OF_OUTPUT)}",
    )
    export.add_argument(
        "--board", nargs="+", action="extend", metavar="LABEL",
        help="only these boards: part sheet, full-size template, router file",
    )

    freeze = verbs.add_parser("freeze", help="keep a revision in the piece file, so that later changes can be told")
    freeze.add_argument("file", metavar="FILE", help="piece file")
    freeze.add_argument("name", metavar="NAME", help="of the revision: A, B, ...")
    freeze.add_argument("--cut", nargs="+", action="extend", metavar="LABEL", default=[], help="boards already cut")
    freeze.add_argument("--date", metavar="DATE", default="", help="as it is to read")
    for verb in (check, facts, export):
        verb.add_argument("--shop", metavar="FILE", help="shop file; else the one that the piece names, else your own")
    return top


def main(arguments: Sequence[str] | None = None) -> int:
    """Runs one command.

    Args:
        arguments: the words after the program's name; the process's own where not given.
    Returns:
        The exit code: 0 done, 1 something must be fixed (`check`), 2 refused, with the reason on stderr.
    """
    try:
        words = parser().parse_args(arguments)
    except SystemExit as end:
        return end.code if isinstance(end.code, int) else EXIT_REFUSED
    try:
        code = _VERBS[words.verb](words)
        sys.stdout.flush()
    except Refused as error:
        return _tell(error.lines)
    except BrokenPipeError:
        # Whoever read our output has enough of it (shopdraw facts FILE | head): that is no error.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as error:
        return _tell((f"{error.filename or 'shopdraw'}: {reason_of(error)}",))
    except KeyboardInterrupt:
        _tell(("shopdraw: stopped",))
        return EXIT_STOPPED
    except Exception as error:  # noqa: BLE001  # the last line of defence: a traceback never reaches a user
        return _tell((_own_error(error),))
    return code


def run() -> NoReturn:
    """Runs the process's own command, then ends the process at once.

    All is written and every other process has ended by then. Taking thousands of solids apart one by one, only to give
    their memory back, would take a tenth of the time that `facts` takes. A window ends the ordinary way.
    """
    code = main()
    if "PySide6" in sys.modules:
        raise SystemExit(code)
    for stream in (sys.stdout, sys.stderr):
        try:  # noqa: SIM105  # contextlib would have to be imported first
            stream.flush()
        except OSError:  # whoever read it is gone
            pass
    os._exit(code)


def _tell(lines: Sequence[str]) -> int:
    for line in lines:
        sys.stderr.write("".join(c if c.isprintable() else " " for c in line) + "\n")
    return EXIT_REFUSED


def _own_error(error: Exception) -> str:
    """An error that nobody foresaw: where it arose, in one line that can be passed on."""
    at = error.__traceback__
    while at is not None and at.tb_next is not None:
        at = at.tb_next
    place = f"{at.tb_frame.f_code.co_name}:{at.tb_lineno}" if at else "?"
    return f"shopdraw: an error of the program itself ({type(error).__name__} at {place}: {error}); please report it"


def _open(words: argparse.Namespace) -> int:
    from shopdraw.cli.window import open_window

    return open_window(getattr(words, "file", None))


def _start(words: argparse.Namespace) -> int:
    from shopdraw.cli.start import start

    return start(words.kind, words.file)


def _work_alone() -> None:
    """Sets the process up for one run of a second or two, before anything large is imported.

    A run that ends in seconds holds on to nearly all that it makes: looking for rings of unused values more seldom
    saves a fifth of the time for a little memory. And no matrix here is large enough for more than one thread:
    further ones only spin, a fifth of the processor's time, and keep a process from splitting.
    """
    gc.set_threshold(500_000, 20, 100)
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")


def _check(words: argparse.Namespace) -> int:
    _work_alone()
    from shopdraw.cli.check import check

    return check(words.file, as_json=words.json, shop=words.shop)


def _facts(words: argparse.Namespace) -> int:
    _work_alone()
    from shopdraw.cli.facts import print_facts

    return print_facts(words.file, words.shop)


def _export(words: argparse.Namespace) -> int:
    import signal

    _work_alone()
    from shopdraw.cli.export import export

    # Told to end, it ends as Ctrl+C would end it: the half-written package is taken away first.
    signal.signal(signal.SIGTERM, signal.default_int_handler)

    if words.board:
        from shopdraw.cli.single_boards import export_boards

        return export_boards(words.file, words.folder, words.board, words.only or (), words.shop)
    chosen = set(words.only or KINDS_OF_OUTPUT)
    return export(words.file, words.folder, tuple(kind for kind in KINDS_OF_OUTPUT if kind in chosen), shop=words.shop)


def _freeze(words: argparse.Namespace) -> int:
    from shopdraw.cli.freeze import freeze

    return freeze(words.file, words.name, words.cut, words.date)


_VERBS: dict[str | None, Callable[[argparse.Namespace], int]] = {
    None: _open,
    "edit": _open,
    "start": _start,
    "check": _check,
    "facts": _facts,
    "export": _export,
    "freeze": _freeze,
}
