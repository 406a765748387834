"""``shopdraw`` and ``shopdraw edit``: the editor's window."""

from __future__ import annotations

from shopdraw.cli.refused import refused


def open_window(file: str | None) -> int:
    """Opens the editor, on a piece where one is named; returns when its window is closed.

    Raises:
        Refused: the piece can't be read, or Qt can't be loaded here.
    """
    if file is not None:
        from shopdraw.cli.built import read

        read(file)
    try:
        from shopdraw.editor import run
    except ImportError as error:
        raise refused(
            f"the editor can't be opened ({error}); Qt needs system libraries, on Debian: sudo apt-get install "
            "libglib2.0-0 libegl1 libgl1 libxkbcommon0 libdbus-1-3 libfontconfig1"
        ) from error
    return run(file)
