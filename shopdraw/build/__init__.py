"""From a Design to an Assembly: every board, joint, fitting and motion of a piece, derived.

Knows how furniture is built; knows nothing of drawings, files or screens. `build` is the one way in.
"""

from shopdraw.build.build import build
from shopdraw.build.cannot import CannotBuild

__all__ = ["CannotBuild", "build"]
