"""Which joints get a detail, and where one looks: a table of kinds. What a piece lacks has no detail.

A kind names the joint by what is cut and what enters, the sections that show it, best first, and which of its places
the circle stands round. Of all joints of a kind that a section cuts, the one furthest right and up is drawn.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.shape.frame import Vec3
from shopdraw.shape.path import Point
from shopdraw.sheet.box import Bounds
from shopdraw.sheet.details import Detail, radius_in_steps
from shopdraw.sheet.joint_body import corners_of, is_cut, on_plane
from shopdraw.sheet.planes import CuttingPlane
from shopdraw.wood.assembly import Assembly, Joint

LONG_MM = 50.0
"""A body longer than this in the section is shown at the end that its kind names, else at its middle."""


@dataclass(frozen=True, slots=True)
class JointKind:
    """A kind of joint that one detail shows.

    Attributes:
        name: of the detail.
        kinds: of the joint; empty for any.
        hosts, guests: members of what is cut and of what enters.
        letters: of the sections that show it, best first.
        end: which end of a long body: "low" and "high" along its length in the section, "" for its middle.
        around: what is shown round the body, mm.
        inward: how far the circle moves from the joint towards the middle of the piece, both ways, mm.
        opens: "up" or "down" where the kind is only one of two mirrored ones.
    """

    name: str
    kinds: tuple[str, ...]
    hosts: tuple[str, ...]
    guests: tuple[str, ...]
    letters: str
    end: str = ""
    around: float = 20.0
    inward: float = 0.0
    opens: str = ""


LEVEL = "CPRU"
"""Level sections through drawers."""
DRAWER_FRONTS = ("drawer.front", "drawer.box-front")
SMALL_GROOVED = ("compartment.drawer.front", "compartment.drawer.side")
NO_TAILS = ("dado", "groove", "rabbet", "butt")
KINDS = (
    JointKind(
        "d4a", ("groove", "dado"), ("shelf", "top", "frame.front"), ("divider",), "BN", around=26.0, opens="down",
    ),
    JointKind(
        "d4b", ("groove", "dado"), ("frame.runner", "frame.front", "shelf", "bottom"), ("divider",), "BN", around=26.0,
        opens="up",
    ),
    JointKind("d5", ("dado",), ("side",), ("frame.front", "shelf", "bottom"), "G", "low", 24.0),
    JointKind("d5b", ("lap",), ("shelf",), ("shelf.rear",), "A", around=24.0),
    JointKind("d6a", ("mortise-and-tenon",), ("frame.front",), ("frame.runner",), "G"),
    JointKind("d6b", ("mortise-and-tenon",), ("frame.rear",), ("frame.runner",), "G"),
    JointKind("d6d", ("groove",), ("frame.front", "frame.rear", "frame.runner"), ("frame.panel",), "AB", around=24.0),
    JointKind("d6c", ("mortise-and-tenon",), ("face",), ("face",), "J"),
    JointKind("d7", ("dovetail",), ("side", "top"), ("top", "side"), "T", around=30.0),
    JointKind("d7c", ("rabbet", "dado", "groove"), ("side", "top"), ("top", "side"), "B"),
    JointKind("d7b", ("butt",), ("frame.rear", "frame.front"), ("top",), "A", "high", 24.0),
    JointKind("d8", (), ("side",), ("back",), "CFG", around=24.0),
    JointKind("d8b", ("lap",), ("back.board",), ("back.board",), "CGFE", around=24.0),
    JointKind("d8c", ("groove",), ("back.frame",), ("back.panel",), "CGFEAV", around=24.0),
    JointKind("d8d", ("mortise-and-tenon",), ("back.frame",), ("back.frame",), "V"),
    JointKind("d9a", ("groove",), DRAWER_FRONTS, ("drawer.side",), LEVEL, around=26.0),
    JointKind("d9b", (), DRAWER_FRONTS, ("drawer.bottom",), "A", around=24.0),
    JointKind("d9c", (), ("drawer.side",), ("drawer.bottom",), "B", around=24.0),
    JointKind("d9d", NO_TAILS, ("drawer.side", "drawer.back"), ("drawer.back", "drawer.side"), LEVEL),
    JointKind("d9e", ("rabbet",), DRAWER_FRONTS, ("drawer.side",), LEVEL, around=26.0),
    JointKind("d9f", ("dovetail",), DRAWER_FRONTS, ("drawer.side",), "W", around=30.0),
    JointKind("d9g", ("sliding-dovetail",), DRAWER_FRONTS, ("drawer.side",), LEVEL, around=26.0),
    JointKind("d9h", ("dovetail",), ("drawer.back",), ("drawer.side",), "W", around=30.0),
    JointKind("d10", ("groove",), ("lid.cap",), ("lid",), "H", "high", 26.0),
    JointKind("d10b", ("mitre",), ("lid", "lid.cap"), ("lid.cap", "lid"), "H", around=26.0),
    JointKind("d11", ("mitre",), ("plinth",), ("plinth",), "E", around=28.0, inward=18.0),
    JointKind("d13a", ("groove",), ("shelf.rear", "shelf", "bottom", "top"), ("partition",), "B"),
    JointKind("d13b", ("v-housing",), ("partition", "side"), ("pigeonhole",), "B"),
    JointKind("d13c", (), ("compartment.drawer.front",), ("compartment.drawer.side",), "FK"),
    JointKind("d13e", ("groove",), SMALL_GROOVED, ("compartment.drawer.bottom",), "BA"),
    JointKind(
        "d13f", (), ("compartment.drawer.side", "compartment.drawer.back"),
        ("compartment.drawer.back", "compartment.drawer.side"), "FK",
    ),
    JointKind("d13d", ("groove",), ("top", "shelf.rear"), ("compartment.back",), "A"),
    JointKind("d15", (), ("side",), ("face",), "CGF", around=26.0),
)


def joint_details(assembly: Assembly, planes: Sequence[CuttingPlane]) -> Iterator[Detail]:
    """One detail for each kind of joint that the piece has and a section cuts."""
    by_letter = {plane.letter: plane for plane in planes}
    for kind in KINDS:
        joints = [joint for joint in assembly.joints if _is_of(assembly, joint, kind)]
        for letter in kind.letters:
            found = _shown(assembly, joints, by_letter[letter]) if letter in by_letter else None
            if found is not None:
                joint, box = found
                centre, radius = _look_at(box, kind)
                middle = by_letter[letter].plane.direction.on_paper(_middle(assembly))
                centre = (_moved(centre[0], middle[0], kind.inward), _moved(centre[1], middle[1], kind.inward))
                yield Detail(kind.name, by_letter[letter], centre, radius, joint=joint.id)
                break


def _is_of(assembly: Assembly, joint: Joint, kind: JointKind) -> bool:
    if not (assembly.has(joint.host) and assembly.has(joint.guest)) or (kind.kinds and joint.kind not in kind.kinds):
        return False
    if kind.opens and joint.body is not None and (joint.body.frame.w[2] > 0) != (kind.opens == "up"):
        return False
    return assembly.board(joint.host).member in kind.hosts and assembly.board(joint.guest).member in kind.guests


def _shown(assembly: Assembly, joints: Sequence[Joint], plane: CuttingPlane) -> tuple[Joint, Bounds] | None:
    """The joint furthest right, then furthest up in the world, that a plane cuts, with its rectangle there."""
    held = [(joint, corners) for joint in joints if is_cut(corners := corners_of(assembly, joint), plane)]
    if not held:
        return None
    joint, corners = max(
        held,
        key=lambda item: (round(max(c[0] for c in item[1]), 3), round(max(c[2] for c in item[1]), 3), item[0].id),
    )
    return joint, on_plane(corners, plane)


def _look_at(box: Bounds, kind: JointKind) -> tuple[Point, float]:
    """Centre and radius of the circle."""
    centre, half = [], []
    for low, high in ((box[0], box[2]), (box[1], box[3])):
        if high - low <= LONG_MM:
            centre.append((low + high) / 2)
            half.append((high - low) / 2)
        else:
            inset = kind.around / 2
            centre.append({"low": low + inset, "high": high - inset}.get(kind.end, (low + high) / 2))
            half.append(0.0)
    return (centre[0], centre[1]), radius_in_steps(math.hypot(*half) + kind.around)


def _middle(assembly: Assembly) -> Vec3:
    return assembly.width / 2, assembly.depth / 2, assembly.height / 2


def _moved(at: float, toward: float, by: float) -> float:
    return at + math.copysign(by, toward - at) if by else at
