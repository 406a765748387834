"""The editor: Qt windows, thin, over the same Design and the same Drawing as everything else."""

from __future__ import annotations

import gc


def run(file: str | None) -> int:
    """Opens the window and returns when it is closed.

    Args:
        file: a piece file to open, or None to begin from a starting piece.
    Returns:
        The exit code: 0.
    """
    # The search for rings of dead values would go again and again through what is being loaded; `Tidying` begins it.
    gc.disable()
    # Qt is loaded here, so that worker processes, which import this package too, do without it.
    from shopdraw.editor.start import run as run_window

    return run_window(file)
