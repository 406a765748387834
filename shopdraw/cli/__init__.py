"""The command line: reads the words, calls what does the work, tells the outcome."""

from shopdraw.cli.command import main, run

__all__ = ["main", "run"]
