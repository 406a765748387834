"""``python -m shopdraw``: the command line."""

import sys

from shopdraw.cli import main

sys.exit(main())
