"""Findings that a person has silenced, with the reason; silences, notes and boards' tables that point nowhere."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from shopdraw.check.subject import Subject
from shopdraw.piece.design import Design, SilenceTable
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Severity

EDGES = frozenset({"left", "right", "front", "rear", "lower", "upper", "top"})
"""Features that a board, a level or an opening has: what is named so goes with its board."""


def silenced(subject: Subject, found: Sequence[Finding]) -> tuple[Finding, ...]:
    """The findings, those that a [silence.ID] names with its reason; a caution for each table that points nowhere."""
    tables = subject.design.silence
    used: set[str] = set()
    marked = []
    for finding in found:
        name = next((key for key, table in tables.items() if _names(table, finding)), None)
        if name is not None:
            used.add(name)
        marked.append(replace(finding, silenced=tables[name].reason) if name is not None else finding)
    return (*marked, *_unused(tables, used), *_nowhere(subject), *_own_nowhere(subject))


def _names(table: SilenceTable, finding: Finding) -> bool:
    return table.code == finding.code and (not table.where or table.where in finding.where)


def _unused(tables: dict[str, SilenceTable], used: set[str]) -> Iterator[Finding]:
    for key, table in tables.items():
        if key not in used:
            place = f" at {table.where}" if table.where else ""
            yield _points_nowhere(
                f"silence.{key}", f"there is no finding {table.code}{place} to silence: the table does nothing"
            )


def _nowhere(subject: Subject) -> Iterator[Finding]:
    known = known_ids(subject.assembly)
    for key, note in subject.design.note.items():
        if note.on and note.on not in known and not _is_input(subject.design, note.on):
            yield _points_nowhere(
                f"note.{key}", f"the note is on {note.on!r}, and there is nothing of that name in this piece"
            )
    for board_id in subject.design.board:
        if not subject.assembly.has(board_id):
            yield _points_nowhere(f"board.{board_id}", f"there is no board {board_id!r} in this piece")


def _is_input(design: Design, address: str) -> bool:
    """Whether a note is on the piece as a whole, on a table of its file, or on an input there."""
    name, _, key = address.partition(".")
    table = getattr(design, name, None) if name in type(design).model_fields else None
    return table is not None and (not key or key in getattr(type(table), "model_fields", table))


def _own_nowhere(subject: Subject) -> Iterator[Finding]:
    """Dimensions moved or added whose board is gone; what else their sheets don't show is told with the layout."""
    known = known_ids(subject.assembly) | {"case"}
    known |= {f"level.{level.id}" for level in subject.assembly.levels}
    known |= {f"opening.{opening.id}" for opening in subject.assembly.openings}
    design = subject.design
    told = [(f"move.{key}", move.of.rpartition("@")[0]) for key, move in design.move.items()]
    told += [(f"dimension.{key}", own.of) for key, own in design.dimension.items()]
    for address, features in told:
        for feature in features.split("/"):
            owner, _, edge = feature.split(",")[0].rpartition(":")
            if edge in EDGES and owner and owner not in known:
                yield _points_nowhere(address, f"it goes to {feature!r}, and there is no {owner!r} in this piece")


def _points_nowhere(address: str, message: str) -> Finding:
    return Finding("points-nowhere", Severity.CAUTION, (address,), message, unit="", basis="the piece file's own ids")


def known_ids(assembly: Assembly) -> frozenset[str]:
    """Every id that a piece file may refer to: boards and what they are part of, cuts, joints, fittings, openings."""
    ids = {board.id for board in assembly.boards}
    ids |= {name for board in assembly.boards for name in board.cut_ids}
    ids |= {joint.id for joint in assembly.joints} | {joint.guest for joint in assembly.joints}
    ids |= {item.id for item in assembly.hardware} | {motion.id for motion in assembly.motions}
    ids |= {level.id for level in assembly.levels} | {opening.id for opening in assembly.openings}
    return frozenset(ids)
