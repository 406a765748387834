"""`facts`: everything derived from a piece as one JSON object. Millimetres, degrees, kilograms; keys are a contract."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields
from typing import Any

from shopdraw.lists.buying import Material, materials_of
from shopdraw.piece.design import WIDTHS, Design
from shopdraw.piece.shop import Shop
from shopdraw.shape.path import Path
from shopdraw.wood.assembly import Assembly, Hardware, Joint, LevelFact, Motion, OpeningFact, SlantFact
from shopdraw.wood.board import Board, Cut
from shopdraw.wood.finding import Finding
from shopdraw.wood.part import Part, parts
from shopdraw.wood.volume import centre_of_mass, mass_kg
from shopdraw.write.finding_facts import finding_facts

FORMAT = 1
_PLAIN_SIZES = frozenset({"slope", "tails", "pins", "count"})
"""Sizes of joints that are no lengths."""


def facts(
    design: Design, assembly: Assembly, findings: Sequence[Finding], shop: Shop | None = None
) -> dict[str, Any]:
    """Everything derived from a piece, closed and at rest, in full precision.

    Args:
        design: what a person decided.
        assembly: what was built from it.
        findings: what is wrong with it, silenced ones included.
        shop: whose allowances for waste hold where the piece states none; None for the stated defaults.
    Returns:
        Plain values, ready for JSON; what the piece doesn't have is None or an empty list.
    """
    made = parts(assembly.boards)
    part_of = {board.id: part.id for part in made for board in part.boards}
    total, centre = centre_of_mass(assembly.boards)
    return {
        "format": FORMAT,
        "piece": {
            "title": assembly.title,
            "kind": assembly.kind,
            "units": design.piece.units,
            "width_mm": assembly.width,
            "width_over_top_mm": _over(assembly, "top"),
            "width_over_feet_mm": _over(assembly, "plinth.front"),
            "width_input": next(f"case.{name}" for name in WIDTHS if getattr(design.case, name) is not None),
            "height_mm": assembly.height,
            "depth_mm": assembly.depth,
        },
        "slant": None if assembly.slant is None else _slant(assembly.slant),
        "moisture_percent": {
            "build": assembly.moisture.build,
            "dry": assembly.moisture.dry,
            "wet": assembly.moisture.wet,
        },
        "levels": [_level(level) for level in assembly.levels],
        "openings": [_opening(opening) for opening in assembly.openings],
        "boards": [_board(board, part_of[board.id]) for board in assembly.boards],
        "parts": [_part(part) for part in made],
        "joints": [_joint(joint) for joint in assembly.joints],
        "hardware": [_hardware(fitting) for fitting in assembly.hardware],
        "motions": [_motion(motion) for motion in assembly.motions],
        "findings": [finding_facts(finding) for finding in findings],
        "materials": [_material(material) for material in materials_of(assembly, design, shop)],
        "mass": {
            "total_kg": total,
            "hardware_kg": None,
            "centre_mm": list(centre) if assembly.boards else None,
        },
    }


def _over(assembly: Assembly, board: str) -> float:
    """The piece's width where a board lies across it, mm: over its sides, or over a longer board's ends."""
    return max(assembly.width, assembly.board(board).length if assembly.has(board) else 0.0)


def _slant(slant: SlantFact) -> dict[str, Any]:
    told = {field.name: getattr(slant, field.name) for field in fields(slant)}
    told["hinge_pin_mm"] = list(slant.hinge_pin_mm)
    return told


def _level(level: LevelFact) -> dict[str, Any]:
    return {
        "id": level.id,
        "kind": level.kind,
        "top_mm": level.top,
        "thickness_mm": level.thickness,
        "dado_bottom_mm": level.dado_bottom,
        "dado_width_mm": level.dado_width,
        "dado_depth_mm": level.dado_depth,
    }


def _opening(opening: OpeningFact) -> dict[str, Any]:
    return {
        "id": opening.id,
        "use": opening.use,
        "bottom_mm": opening.bottom,
        "height_mm": opening.height,
        "width_mm": opening.width,
        "depth_mm": opening.depth,
        "left_mm": opening.left,
        "front_mm": opening.front,
    }


def _board(board: Board, part: str) -> dict[str, Any]:
    return {
        "id": board.id,
        "label": board.label,
        "name": board.name,
        "part": part,
        "quantity": 1,
        "stock": board.stock.name,
        "length_mm": board.length,
        "width_mm": board.width,
        "thickness_mm": board.thickness,
        "between_shoulders_mm": board.between_shoulders,
        "reference_edge": board.reference_edge,
        "weight_kg": mass_kg(board),
        "layers": list(board.layers),
        "staves_mm": list(board.staves),
        "outline_mm": _corners(board.shape.outline),
        "cuts": [_cut(board, index, cut) for index, cut in enumerate(board.shape.cuts)],
        "placement": list(board.frame.rows()),
    }


def _cut(board: Board, index: int, cut: Cut) -> dict[str, Any]:
    return {
        "id": board.cut_ids[index] if index < len(board.cut_ids) else f"{cut.kind}:{board.id}:{index}",
        "kind": cut.kind,
        "face": cut.face.value,
        "start_mm": cut.start,
        "depth_mm": cut.depth,
        "outline_mm": _corners(cut.outline),
        "islands_mm": [_corners(island) for island in cut.islands],
        "open": list(cut.open),
        "stopped": cut.stopped,
        "for": board.cut_for[index] if index < len(board.cut_for) else "",
        "frame": None if cut.frame is None else list(cut.frame.rows()),
    }


def _corners(path: Path) -> list[list[float]]:
    return [[corner.x, corner.y, corner.bulge] for corner in path.corners]


def _part(part: Part) -> dict[str, Any]:
    return {"id": part.id, "boards": [board.id for board in part.boards], "quantity": part.quantity}


def _joint(joint: Joint) -> dict[str, Any]:
    return {
        "id": joint.id,
        "kind": joint.kind,
        "host": joint.host,
        "guest": joint.guest,
        "boards": list(joint.guest_boards),
        "fit_mm": joint.fit,
        "relief_mm": joint.relief,
        "glued": joint.glued,
        "floats": joint.floats,
        "gap_mm": joint.gap,
        **{_size_key(name): size for name, size in joint.sizes},
    }


def _size_key(name: str) -> str:
    """A size's key with its unit: `half_pin_mm`, `angle_deg`; counts and slopes have none."""
    key = name.replace("-", "_")
    if key in _PLAIN_SIZES:
        return key
    return f"{key}_deg" if key == "angle" else f"{key}_mm"


def _hardware(fitting: Hardware) -> dict[str, Any]:
    return {
        "id": fitting.id,
        "kind": fitting.kind,
        "quantity": fitting.quantity,
        "on": list(fitting.on),
        **{_size_key(name): size for name, size in fitting.sizes},
        **({"through_mm": fitting.through, "room_mm": fitting.room} if fitting.through else {}),
    }


def _motion(motion: Motion) -> dict[str, Any]:
    return {
        "id": motion.id,
        "boards": list(motion.boards),
        "kind": motion.kind,
        "axis_mm": [list(motion.point), list(motion.direction)],
        "reach": motion.reach,
    }


def _material(material: Material) -> dict[str, Any]:
    return {
        "stock": material.stock,
        "kind": material.kind,
        "buy": material.buy,
        "quantity": material.quantity,
        "unit": material.unit,
        "net": material.net,
        "waste_percent": material.waste_percent,
        "reason": material.reason,
        "counted_by": material.rule,
        "boards": material.boards,
        "finished_m3": material.finished_m3,
        "weight_kg": material.weight_kg,
    }
