"""What stands behind a closed lid: how far forward it may come at a height, so that the lid shuts clear of it.

Plane geometry in the side view (y to the back, z up). Source: trigonometry; DEVELOPERS.md, "Slant geometry".
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from shopdraw.build.slant import Slant


@dataclass(frozen=True, slots=True)
class Proud:
    """What is kept between the lid and what stands behind it, mm, measured square to the lid.

    Attributes:
        clearance: kept free.
        proud: what stands proud: of the lid's inner face, or of what stands behind it.
    """

    clearance: float
    proud: float = 0.0

    @property
    def off(self) -> float:
        """Both together."""
        return self.clearance + self.proud


def clear_of_lid(slant: Slant, height: float, kept: Proud) -> float:
    """World y of the foremost point that clears the shut lid at a height over the writing surface.

    y_p + h / tan α + (clearance + proud) / sin α; a pin raised by k lies so much over the writing surface, and so much
    outside the lid's inner face.

    Args:
        slant: with the pin and α.
        height: h, from the writing surface to the upper front corner of what stands there, mm.
        kept: clearance and what stands proud.
    """
    alpha = math.radians(slant.alpha)
    k = slant.pin_above
    return slant.pin[0] + (height - k) / math.tan(alpha) + (kept.off - k) / math.sin(alpha)
