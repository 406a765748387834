"""The Qt binding that is installed must not wear out None."""

import sys

from PySide6.QtGui import QPainterPath

CALLS = 300


def test_calls_that_return_nothing_leave_none_alone() -> None:
    # With PySide6 6.12.0 on Python 3.11 each such call takes one reference away from None; after some thousands the
    # process dies ("Fatal Python error: none_dealloc"). From Python 3.12 on None is immortal and its count is fixed.
    path = QPainterPath()
    before = sys.getrefcount(None)
    for x in range(CALLS):
        path.moveTo(float(x), 0.0)
    lost = before - sys.getrefcount(None)
    assert lost < CALLS / 10
