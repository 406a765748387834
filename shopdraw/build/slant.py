"""The slant, the lid's pin and the lid's length: plane geometry in the side view (y to the back, z up).

Formulas and a worked table stand in DEVELOPERS.md, "Slant geometry"; the tests write them out again from closed
trigonometry. Nothing here knows a board.
"""

from __future__ import annotations

import math
from dataclasses import dataclass


class SlantDisagrees(ValueError):
    """Inputs of the slant that can't all hold; the message names what is held and what would fit."""


@dataclass(frozen=True, slots=True)
class Slant:
    """The slant line and the pin, mm and degrees.

    Attributes:
        alpha: angle from level, degrees.
        run, rise: of the slant line on the side panel.
        z0: where it starts in the front plane.
        z1: where it meets the upper face of the top.
        writing: height of the writing surface.
        inset: how far the writing face, closed, lies inside the slant plane (o).
        pin: (y, z) of the hinge pin.
        joint_gap: between shelf and lid (j).
        pin_above: height of the pin over the writing surface (k).
        s1: from the pin to the top's upper arris along the slope.
    """

    alpha: float
    run: float
    rise: float
    z0: float
    z1: float
    writing: float
    inset: float
    pin: tuple[float, float]
    joint_gap: float
    pin_above: float
    s1: float

    @property
    def tilt(self) -> float:
        """The saw's tilt from square, degrees."""
        return 90.0 - self.alpha

    @property
    def slope_length(self) -> float:
        """Length of the slant line, mm."""
        return math.hypot(self.run, self.rise)

    @property
    def swing(self) -> float:
        """How far the lid turns from shut to level, degrees."""
        return 180.0 - self.alpha

    def on_line(self, behind: float) -> float:
        """The height of the slant line so far behind the front plane, mm."""
        return self.z0 + behind * math.tan(math.radians(self.alpha))

    def on_slope(self, along: float, out: float) -> tuple[float, float]:
        """The (y, z) of a point beside the shut lid.

        Args:
            along: up the slope from the pin, mm.
            out: from the writing face towards the room, mm.
        """
        c, s = math.cos(math.radians(self.alpha)), math.sin(math.radians(self.alpha))
        return (self.pin[0] + along * c - out * s, self.pin[1] + along * s + out * c)


def slant_from_angle(
    depth: float,
    z1: float,
    writing: float,
    inset: float,
    angle: float,
    *,
    joint_gap: float = 0.5,
    pin_above: float = 0.0,
    pin_behind: float | None = None,
) -> Slant:
    """The slant when its angle from level is given; the top's depth follows.

    Args:
        depth, z1, writing: case depth, height of the top's upper face, height of the writing surface, mm.
        inset: of the writing face inside the slant plane, mm.
        angle: from level, degrees, over 0 and under 90.
        joint_gap, pin_above: j and k, mm.
        pin_behind: how far the pin lies behind the front plane (y_h); default −j/2, just in front of it.
    Raises:
        SlantDisagrees: the slant would not leave a top, or runs out of the case.
    """
    behind = -joint_gap / 2 if pin_behind is None else pin_behind
    _refuse_unless_slope(angle)
    alpha = math.radians(angle)
    pin_z = writing + pin_above
    run = behind + (z1 - pin_z) / math.tan(alpha) - (inset + pin_above) / math.sin(alpha)
    if run <= 0:
        raise SlantDisagrees(
            f"an angle of {angle:g}° from level leaves no run; "
            "with this height and writing height the slant must be flatter"
        )
    if run >= depth:
        least = slant_from_top_depth_angle(depth, z1, pin_z, inset + pin_above, behind, 0.0)
        raise SlantDisagrees(
            f"an angle of {angle:g}° from level runs {run:.1f} mm back, "
            f"past the case's depth of {depth:.1f} mm; it must be over {least:.1f}°"
        )
    return _slant(alpha, run, z1, writing, inset, joint_gap, pin_above, behind)


def slant_from_top_depth(
    depth: float,
    z1: float,
    writing: float,
    inset: float,
    top_depth: float,
    *,
    joint_gap: float = 0.5,
    pin_above: float = 0.0,
    pin_behind: float | None = None,
) -> Slant:
    """The slant when the top's depth (at its upper face) is given; the angle follows. Arguments as `slant_from_angle`.

    Raises:
        SlantDisagrees: the top is as deep as the case, or the lid's inset doesn't go into the triangle.
    """
    behind = -joint_gap / 2 if pin_behind is None else pin_behind
    if not 0 < top_depth < depth:
        raise SlantDisagrees(
            f"a top {top_depth:.1f} mm deep must be deeper than 0 and less deep than the case ({depth:.1f} mm)"
        )
    angle = slant_from_top_depth_angle(depth, z1, writing + pin_above, inset + pin_above, behind, top_depth)
    return _slant(math.radians(angle), depth - top_depth, z1, writing, inset, joint_gap, pin_above, behind)


def slant_from_start(
    depth: float,
    z1: float,
    writing: float,
    inset: float,
    start: float,
    *,
    angle: float | None,
    top_depth: float | None,
    joint_gap: float = 0.5,
    pin_above: float = 0.0,
) -> Slant:
    """The slant of an old piece whose start in the front plane was measured; the pin's place behind it follows.

    Args:
        start: z0 as measured, mm; the rest as `slant_from_angle`. Exactly one of angle and top
            depth, or both if they agree.
    Raises:
        SlantDisagrees: neither is given, or both and they disagree by over 0.05°.
    """
    if not 0 < start < z1:
        raise SlantDisagrees(
            f"a slant that starts at {start:.1f} mm must start below the top's upper face at {z1:.1f} mm"
        )
    if top_depth is not None:
        if not 0 < top_depth < depth:
            raise SlantDisagrees(
                f"a top {top_depth:.1f} mm deep must be deeper than 0 and less deep than the case ({depth:.1f} mm)"
            )
        found = math.degrees(math.atan2(z1 - start, depth - top_depth))
        if angle is not None and abs(found - angle) > 0.05:
            run = depth - top_depth
            rise = run * math.tan(math.radians(angle))
            raise SlantDisagrees(
                f"depth {depth:.1f}, top depth {top_depth:.1f} and rise {z1 - start:.1f} mm "
                f"give {found:.2f}°, not {angle:g}°; "
                f"for {angle:g}° either the rise is {rise:.1f} mm (start at {z1 - rise:.1f}) "
                f"or the top depth is {depth - (z1 - start) / math.tan(math.radians(angle)):.1f} mm"
            )
        alpha = math.radians(found)
    elif angle is not None:
        _refuse_unless_slope(angle)
        alpha = math.radians(angle)
    else:
        raise SlantDisagrees("a slant needs its angle or the top's depth beside its start")
    run = (z1 - start) / math.tan(alpha)
    if run >= depth:
        raise SlantDisagrees(
            f"a slant from {start:.1f} mm at {math.degrees(alpha):.1f}° runs {run:.1f} mm back, "
            f"past the case's depth of {depth:.1f} mm"
        )
    behind = (writing + pin_above + (inset + pin_above) / math.cos(alpha) - start) / math.tan(alpha)
    return _slant(alpha, run, z1, writing, inset, joint_gap, pin_above, behind)


def slant_from_top_depth_angle(
    depth: float, z1: float, pin_z: float, out: float, behind: float, top_depth: float
) -> float:
    """The angle from level in degrees when run = depth − top depth and the plane lies `out` beyond the pin."""
    dy, dz = depth - top_depth - behind, z1 - pin_z
    reach = math.hypot(dy, dz)
    if dz <= 0 or out >= reach:
        raise SlantDisagrees(f"the top must lie higher than the pin: its upper face is {dz:.1f} mm over it")
    return math.degrees(math.atan2(dz, dy) - math.asin(out / reach))


def _slant(
    alpha: float, run: float, z1: float, writing: float, inset: float, joint_gap: float, pin_above: float, behind: float
) -> Slant:
    _refuse_unless_slope(math.degrees(alpha))
    z0 = writing + pin_above + (inset + pin_above) / math.cos(alpha) - behind * math.tan(alpha)
    pin = (behind, writing + pin_above)
    reach = math.hypot(run - behind, z1 - pin[1])
    s1 = math.sqrt(reach * reach - (inset + pin_above) ** 2)
    return Slant(math.degrees(alpha), run, z1 - z0, z0, z1, writing, inset, pin, joint_gap, pin_above, s1)


def _refuse_unless_slope(angle: float) -> None:
    if not 5.0 <= angle <= 85.0:
        raise SlantDisagrees(f"a slant of {angle:.1f}° from level is none; it must lie between 5° and 85°")


def top_flat(thickness: float, bevel: float, alpha_deg: float) -> float:
    """The flat, square to the slant, that takes off the top's sharp lower corner, mm.

    Args:
        thickness: the top's.
        bevel: what is kept of the slanted edge, down the slope from the upper arris.
        alpha_deg: slant from level.
    """
    alpha = math.radians(alpha_deg)
    return (thickness / math.sin(alpha) - bevel) * math.tan(alpha)
