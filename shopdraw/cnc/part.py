"""All that the router does to a part: one setting for each face that is cut, and what is left to a second setting."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

from shopdraw.cnc.advice import (
    hole_findings,
    pocket_findings,
    relief_findings,
    through_findings,
    vee_findings,
)
from shopdraw.cnc.corner import CornerWood, Reached, reached_by, through_cutter
from shopdraw.cnc.cutter import RUN_OUT_MM, Cutter, default_cutters
from shopdraw.cnc.flat import FlatPart, NotFlat, Unit
from shopdraw.cnc.pocket import Pocket, pockets_of
from shopdraw.cnc.second import SecondSetting, second_settings
from shopdraw.cnc.setting import Maker, Setting, Through
from shopdraw.cnc.sunk import Sunk, sunk_from
from shopdraw.cnc.vee import Vee, vee_of
from shopdraw.lists.size import sizes_of
from shopdraw.piece.design import Design
from shopdraw.shape.path import signed_area
from shopdraw.shape.reach import Left
from shopdraw.shape.region import Region, Unclosed, difference, region, region_area
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
        corners: what stays in corners, or round a tenon, for a hand to finish.
    """

    part: Part
    unit: Unit
    outline: Region
    settings: tuple[Setting, ...]
    second: tuple[SecondSetting, ...]
    findings: tuple[Finding, ...]
    corners: tuple[CornerWood, ...] = ()


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


@dataclass(frozen=True, slots=True)
class _Flat:
    """A board's cuts sorted by what makes them."""

    pockets: tuple[Pocket, ...]
    vees: tuple[Vee, ...]
    others: tuple[int, ...]
    outline: Region


@lru_cache(maxsize=1024)
def _flat_region(board: Board) -> _Flat:
    pockets, rest = pockets_of(board)
    outline = region(board.shape.outline)
    for pocket in pockets:
        if pocket.through:
            outline = difference(outline, pocket.region)
    found = {index: vee_of(board, index, RUN_OUT_MM) for index in rest}
    vees = tuple(vee for vee in found.values() if vee is not None)
    return _Flat(pockets, vees, tuple(index for index, vee in found.items() if vee is None), outline)


def router_part(
    part: Part,
    design: Design,
    unit: Unit | None = None,
    cutters: Sequence[Cutter] | None = None,
    *,
    marks: bool = False,
) -> RouterPart:
    """The settings of a part, and what they leave.

    Args:
        part: boards that are made alike; the first one is laid on the table.
        design: the piece's inputs.
        unit: of the files; the piece's own where not given.
        cutters: of the job; the stated defaults where not given.
        marks: the layout of second settings is scored, not only noted.
    Raises:
        NotFlat: the board falls apart when its cuts are made, or an outline doesn't close.
    """
    board = part.first
    unit = unit or unit_of(design)
    job = cutters if cutters is not None else default_cutters(inch=design.piece.units == "inch")
    try:
        flat = _flat_region(board)
    except Unclosed as error:
        raise NotFlat(f"{board.id}: {error}") from error
    outer = [path for path in flat.outline if signed_area(path) > 0]
    if len(outer) != 1:
        raise NotFlat(f"{board.id}: its cuts leave {len(outer)} pieces; a board must stay one piece")
    sunk = {face: sunk_from(face, flat.pockets, flat.outline, job) for face in (Face.FACE, Face.BACK)}
    both = tuple((face, each) for face, found in sunk.items() for each in found)
    reached = _reached(board, both, flat, tuple(job))
    left = {each: one for (_, each), one in zip(both, reached.sunk, strict=True)}
    through = Through(reached.through, reached.corners)
    areas = {face: sum(region_area(each.paths) for each in found) for face, found in sunk.items()}
    first = Face.BACK if areas[Face.BACK] > areas[Face.FACE] + 1e-6 else Face.FACE
    other = Face.FACE if first is Face.BACK else Face.BACK
    grooved = any(vee.face is other for vee in flat.vees)
    faces = [first, other] if sunk[other] or grooved else [first]
    sizes = sizes_of(design)
    findings = list(_findings(board, flat, both, through, job))
    settings = []
    for number, face in enumerate(faces, 1):
        mine = {each: left[each] for each in sunk[face]}
        maker = Maker(
            part, face, number, len(faces), unit, flat.outline, flat.pockets, mine, flat.others, sizes,
            flat.vees, through, job, marks,
        )  # fmt: skip
        settings.append(maker.made())
        findings.extend(maker.findings)
    second = second_settings(board, flat.others, sizes)
    return RouterPart(part, unit, flat.outline, tuple(settings), second, _each_once(findings), reached.wood)


@lru_cache(maxsize=1024)
def _reached(
    board: Board, both: tuple[tuple[Face, Sunk], ...], flat: _Flat, job: tuple[Cutter, ...]
) -> Reached:
    cut_through = tuple(dict.fromkeys(pocket.cut for pocket in flat.pockets if pocket.through))
    return reached_by(board, both, flat.outline, cut_through, job)


def _findings(
    board: Board, flat: _Flat, both: Sequence[tuple[Face, Sunk]], through: Through, job: Sequence[Cutter]
) -> Iterator[Finding]:
    for _, each in both:
        yield from pocket_findings(board, each, flat.outline)
    yield from relief_findings(board)
    yield from through_findings(board, flat.outline, through.cutter, job)
    yield from hole_findings(board, both, flat.outline, job)
    yield from vee_findings(board, flat.vees, job)


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
        flat = _flat_region(part.first)
        both = tuple(
            (face, each) for face in (Face.FACE, Face.BACK) for each in sunk_from(face, flat.pockets, flat.outline, job)
        )
        cutter = through_cutter(flat.outline, tuple(job))
        found.extend(_findings(part.first, flat, both, Through(cutter, Left()), job))
    return _each_once(found)


def _each_once(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    """Findings without those that say the same again."""
    told: dict[tuple[str, str], Finding] = {}
    for finding in findings:
        told.setdefault((finding.code, finding.message), finding)
    return tuple(told.values())
