"""``python -m shopdraw``: the command line."""

from shopdraw.cli import run

run()
