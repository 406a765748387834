"""All that the router does to a part: one setting for each face that is cut, and what is left to a second setting."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.cnc.advice import pocket_findings
from shopdraw.cnc.cutter import Cutter, default_cutters
from shopdraw.cnc.flat import FlatPart, NotFlat, Unit
from shopdraw.cnc.pocket import Pocket, pockets_of
from shopdraw.cnc.second import SecondSetting, second_setting
from shopdraw.cnc.setting import Maker, Setting
from shopdraw.cnc.sunk import sunk_from
from shopdraw.lists.size import sizes_of
from shopdraw.piece.design import Design
from shopdraw.shape.path import signed_area
from shopdraw.shape.region import Region, difference, region, region_area
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face
from shopdraw.wood.finding import Finding
from shopdraw.wood.part import Part, parts


@dataclass(frozen=True, slots=True)
class RouterPart:
    """All that the router and those after it do to a part.

    Attributes:
        part: the boards that are made alike.
        unit: of its files.
        outline: what the files cut through, board's u and v, mm.
        settings: one or two.
        second: cuts that are left to another setting.
        findings: about cutters and slivers.
    """

    part: Part
    unit: Unit
    outline: Region
    settings: tuple[Setting, ...]
    second: tuple[SecondSetting, ...]
    findings: tuple[Finding, ...]


def flat_part(board: Board, assembly: Assembly, design: Design, face: Face, unit: Unit | None = None) -> FlatPart:
    """What the router gets for one face of a board.

    Args:
        board: one of the assembly's.
        assembly, design: whose piece it is.
        face: `Face.FACE` or `Face.BACK`: the one that is up.
        unit: of the file; the piece's own where not given.
    Raises:
        NotFlat: nothing is cut from that face, or the board isn't one piece when its cuts are made.
    """
    if not assembly.has(board.id):
        raise NotFlat(f"{board.id} is no board of {assembly.title}")
    made = router_part(Part(board.id, (board,)), design, unit)
    for setting in made.settings:
        if setting.face is face:
            return setting.flat
    faces = ", ".join(setting.face.value for setting in made.settings)
    raise NotFlat(f"{board.id}: nothing is cut from its {face.value}; it is cut from: {faces}")


def unit_of(design: Design) -> Unit:
    """The unit of a piece's router files."""
    return Unit.INCH if design.piece.units == "inch" else Unit.MM


@lru_cache(maxsize=1024)
def _flat_region(board: Board) -> tuple[tuple[Pocket, ...], tuple[int, ...], Region]:
    pockets, others = pockets_of(board)
    outline = region(board.shape.outline)
    for pocket in pockets:
        if pocket.through:
            outline = difference(outline, pocket.region)
    return pockets, others, outline


def router_part(
    part: Part, design: Design, unit: Unit | None = None, cutters: Sequence[Cutter] | None = None
) -> RouterPart:
    """The settings of a part, and what they leave.

    Args:
        part: boards that are made alike; the first one is laid on the table.
        design: the piece's inputs.
        unit: of the files; the piece's own where not given.
        cutters: of the job; the stated defaults where not given.
    Raises:
        NotFlat: the board falls apart when its cuts are made.
    """
    board = part.first
    unit = unit or unit_of(design)
    job = cutters if cutters is not None else default_cutters(inch=design.piece.units == "inch")
    pockets, others, outline = _flat_region(board)
    outer = [path for path in outline if signed_area(path) > 0]
    if len(outer) != 1:
        raise NotFlat(f"{board.id}: its cuts leave {len(outer)} pieces; a board must stay one piece")
    sunk = {face: sunk_from(face, pockets, outline, job) for face in (Face.FACE, Face.BACK)}
    areas = {face: sum(region_area(each.paths) for each in found) for face, found in sunk.items()}
    first = Face.BACK if areas[Face.BACK] > areas[Face.FACE] + 1e-6 else Face.FACE
    faces = [first]
    other = Face.FACE if first is Face.BACK else Face.BACK
    if sunk[other]:
        faces.append(other)
    sizes = sizes_of(design)
    findings = [f for face in faces for each in sunk[face] for f in pocket_findings(board, each, outline)]
    settings = []
    for number, face in enumerate(faces, 1):
        maker = Maker(part, face, number, len(faces), unit, outline, pockets, sunk[face], others, sizes)
        settings.append(maker.made())
        findings.extend(maker.findings)
    second = tuple(second_setting(board, index, sizes) for index in others)
    return RouterPart(part, unit, outline, tuple(settings), second, _each_once(findings))


def router_findings(
    assembly: Assembly, design: Design, cutters: Sequence[Cutter] | None = None
) -> tuple[Finding, ...]:
    """What the cutters of the job mean for the piece, part by part.

    Args:
        assembly, design: the piece.
        cutters: of the job; the stated defaults where not given.
    """
    job = cutters if cutters is not None else default_cutters(inch=design.piece.units == "inch")
    found: list[Finding] = []
    for part in parts(assembly.boards):
        pockets, _, outline = _flat_region(part.first)
        for face in (Face.FACE, Face.BACK):
            for each in sunk_from(face, pockets, outline, job):
                found.extend(pocket_findings(part.first, each, outline))
    return _each_once(found)


def _each_once(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    """Findings without those that say the same again."""
    told: dict[tuple[str, str], Finding] = {}
    for finding in findings:
        told.setdefault((finding.code, finding.message), finding)
    return tuple(told.values())
