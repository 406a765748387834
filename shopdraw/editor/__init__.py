"""The editor: Qt windows, thin, over the same Design and the same Drawing as everything else."""

from shopdraw.editor.start import run

__all__ = ["run"]
