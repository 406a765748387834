"""``shopdraw start``: a new piece file, with words on what each part is for."""

from __future__ import annotations

import sys
from pathlib import Path

from shopdraw.cli.refused import reason_of, refused
from shopdraw.piece.beginning import BEGINNINGS


def start(kind: str, file: str) -> int:
    """Writes the new piece file of a kind; never over one that is there.

    Raises:
        Refused: a file of that name is there already, or it can't be written.
    """
    path = Path(file)
    try:
        with path.open("x", encoding="utf-8", newline="\n") as new:
            try:
                new.write(BEGINNINGS[kind])
            except BaseException:
                path.unlink(missing_ok=True)
                raise
    except FileExistsError as error:
        raise refused(f"{file}: there is a file of this name already; expected a new name") from error
    except OSError as error:
        raise refused(f"{file}: can't be written ({reason_of(error)})") from error
    except ValueError as error:
        raise refused(f"{file}: can't be a file's name ({error})") from error
    sys.stdout.write(f"{file} written; next: shopdraw check {file}\n")
    return 0
