"""The order of assembly as tables: each move, which way it goes, what is glued, what floats, what is done before it."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shopdraw.build.label import label_of
from shopdraw.check.assembly_order import PIECE, STAGES, Step, stage_of
from shopdraw.check.closed_in import Closed, steps_with_closed
from shopdraw.check.way_out import AXES
from shopdraw.lists.figures import Figures
from shopdraw.lists.joint_schedule import fixing, gap_words
from shopdraw.lists.rough_size import Yard, rough_of
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.shape.frame import Vec3, dot
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.volume import mass_kg

TITLE, BENCH_TITLE = "Order of assembly", "Made ready, and put together on the bench"
COLUMNS = (
    Column("step"), Column("moves in"), Column("which way"), Column("kg", "", 1), Column("joints"),
    Column("before it is closed"),
)  # fmt: skip
HEAVY_KG = 18.0
"""What is heavier is lifted by two (common practice)."""
LEAST_KG = 0.05
"""What is lighter has no weight worth telling: it would be printed as nothing."""
_ENTRY = ("up from below", "from behind", "from the front", "from the left", "from the right", "down from above")
"""For a move along each of the axes' ways out: what moves up comes from below."""
_NAMES = {"frame": "web frame"}
_SIDES = {"face": "face", "back": "other face"}


@dataclass(frozen=True, slots=True)
class _Row:
    """A step in words, but for its number."""

    moves: str
    way: str
    weight: float | None
    joints: str
    before: str

    def words(self) -> tuple[str, ...]:
        return self.moves, self.way, self.joints, self.before


def assembly_tables(assembly: Assembly, figures: Figures, yard: Yard | None = None) -> tuple[Table, ...]:
    """Sub-assemblies, alike ones together, then the piece; steps numbered through.

    Args:
        assembly: the piece.
        figures: how the drawings write sizes.
        yard: whose boards panels are glued up from; None for usual ones.
    """
    steps = steps_with_closed(assembly)
    groups = dict.fromkeys(step.group for step, _ in steps if step.group != PIECE)
    bench: dict[tuple[tuple[str, ...], ...], list[tuple[str, list[_Row]]]] = {}
    for group in groups:
        rows = [_row(assembly, step, closed, figures) for step, closed in steps if step.group == group]
        label = _group_label(group)
        bench.setdefault(tuple(_masked(row, label) for row in rows), []).append((label, rows))
    inner = [*_first(assembly, yard or Yard()), *(row for alike in bench.values() for row in _together(alike))]
    main = [*_piece_rows(assembly, steps, figures), *_last(assembly)]
    tables = [_table(BENCH_TITLE, inner, 1), _table(TITLE, main, 1 + len(inner))]
    return tuple(table for table in tables if table.rows)


def heaviest_kg(assembly: Assembly) -> float:
    """The heaviest thing that a step lifts, kg."""
    return max((_weight(assembly, step.boards) for step, _ in steps_with_closed(assembly)), default=0.0)


def way_words(direction: Vec3 | None) -> str:
    """How a thing moves in, in words."""
    if direction is None:
        return "lies ready"
    for axis, words in zip(AXES, _ENTRY, strict=True):
        if dot(axis, direction) > 1.0 - 1e-9:
            return words
    return "square onto the slant" if direction[2] < 0 else "square to the slant, from inside"


def _table(title: str, rows: Sequence[_Row], first: int) -> Table:
    cells: list[tuple[Cell, ...]] = [
        (n, row.moves, row.way, row.weight if (row.weight or 0.0) >= LEAST_KG else None, row.joints, row.before)
        for n, row in enumerate(rows, first)
    ]
    return Table(title, COLUMNS, tuple(cells))


def _piece_rows(assembly: Assembly, steps: Sequence[tuple[Step, Closed]], figures: Figures) -> Iterator[_Row]:
    main = [(step, closed) for step, closed in steps if step.group == PIECE]
    cased = [n for n, (step, _) in enumerate(main) if all(_stage(assembly, board) == 0 for board in step.boards)]
    glued = [n for n in cased if any(joint.glued for joint in main[n][0].joints)]
    # Shelves on pins come later, but nothing of theirs is clamped.
    clamped = (glued or cased or [-1])[-1]
    for n, (step, closed) in enumerate(main):
        row = _row(assembly, step, closed, figures)
        if n == clamped:
            row = _with(row, "clamp; both diagonals equal before the glue sets")
        if len(STAGES) > 5 and any(_stage(assembly, board) == 5 for board in step.boards):
            row = _with(row, "fitted without finish, hung, taken off again")
        yield row


def _with(row: _Row, words: str) -> _Row:
    return _Row(row.moves, row.way, row.weight, "; ".join(filter(None, (row.joints, words))), row.before)


def _stage(assembly: Assembly, board: str) -> int:
    return stage_of(assembly.board(board).member)


def _first(assembly: Assembly, yard: Yard) -> Iterator[_Row]:
    """What is done before anything is put together, where the piece has it."""
    glued = [board.label for board in assembly.boards if rough_of(board, yard).boards > 1]
    if glued:
        yield _Row(", ".join(glued), "", None, "glue up from boards, let rest, dress to thickness", "")
    pairs = [board.label for board in assembly.boards if board.member == "side"]
    if len(pairs) > 1:
        yield _Row(
            ", ".join(pairs),
            "",
            None,
            f"cut as a pair: dados, rabbets{', slant' if assembly.slant is not None else ''}",
            "",
        )
    tails = dict.fromkeys(
        label for joint in assembly.joints if joint.kind == "dovetail" for label in _names(assembly, joint.guest_boards)
    )
    if tails:
        yield _Row(", ".join(tails), "", None, "cut the dovetails, fit dry", "")


def _last(assembly: Assembly) -> Iterator[_Row]:
    moving = dict.fromkeys(_group_label(motion.id) for motion in assembly.motions)
    if moving:
        yield _Row(", ".join(moving), "", None, "try every movement, ease what binds", "")
    lid = ", both faces of the lid" if any(board.member == "lid" for board in assembly.boards) else ""
    yield _Row("all", "", None, f"finish all faces alike{lid}; then hardware", "sand outside")


def _row(assembly: Assembly, step: Step, closed: Closed, figures: Figures) -> _Row:
    held = [fitting.kind for fitting in step.hardware for _ in range(fitting.quantity)]
    joints = [*_joint_words(assembly, step, figures), *_counted(held)]
    before = []
    if closed.sand:
        before.append(f"sand {_faces(assembly, closed.sand)}")
    if closed.finish:
        before.append(f"finish {_faces(assembly, closed.finish)}")
    if closed.finish and any(joint.glued for joint in step.joints):
        before.append("glue surfaces masked")
    return _Row(
        _moved(assembly, step), way_words(step.direction), _weight(assembly, step.boards), "; ".join(joints),
        "; ".join(before),
    )  # fmt: skip


def _weight(assembly: Assembly, boards: Sequence[str]) -> float:
    return sum(mass_kg(assembly.board(board)) for board in boards)


def _moved(assembly: Assembly, step: Step) -> str:
    if len(step.boards) == 1:
        board = assembly.board(step.boards[0])
        return f"{board.label} {board.name}"
    if " + " in step.unit:
        return ", ".join(_names(assembly, step.boards))
    family = step.unit.split(".")[0]
    return f"{_group_label(step.unit)} {_NAMES.get(family, family)}"


def _group_label(group: str) -> str:
    return " + ".join(label_of(part) for part in group.split(" + "))


def _names(assembly: Assembly, boards: Sequence[str]) -> list[str]:
    return [assembly.board(name).label if assembly.has(name) else name for name in boards]


def _joint_words(assembly: Assembly, step: Step, figures: Figures) -> list[str]:
    """Each joint's kind, how it is fixed and its gap, alike ones counted."""
    told = []
    for joint in step.joints:
        gap = gap_words(assembly, joint, figures)
        told.append(f"{joint.kind.replace('-', ' ')} {fixing(joint, figures)}" + (f", {gap}" if gap else ""))
    return _counted(told)


def _counted(words: Sequence[str]) -> list[str]:
    counts: dict[str, int] = {}
    for one in words:
        counts[one] = counts.get(one, 0) + 1
    return [one if count == 1 else f"{count} × {one}" for one, count in counts.items()]


def _faces(assembly: Assembly, faces: Sequence[tuple[str, str]]) -> str:
    """Faces by board: "1L face, 6.1a both faces"."""
    sides: dict[str, list[str]] = {}
    for board, side in faces:
        sides.setdefault(assembly.board(board).label, []).append(_SIDES[side])
    return ", ".join(f"{label} {'both faces' if len(told) > 1 else told[0]}" for label, told in sides.items())


def _masked(row: _Row, label: str) -> tuple[str, ...]:
    """A row's words without the label of its group and its key, so that alike groups read alike."""
    moves, *rest = (_label_at(label).sub(r"#\1", words) for words in row.words())
    return (_key_at(label).sub(" #", moves), *rest)


def _label_at(label: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![\w.]){re.escape(label)}(?![.\d])([a-zA-Z]*)")


def _key_at(label: str) -> re.Pattern[str]:
    """A group's key within a board's name: the 1 of "drawer 1, back", whose label is 7.1b."""
    return re.compile(rf" {re.escape(label.rpartition('.')[2])}\b(?! ×)")


def _together(alike: Sequence[tuple[str, list[_Row]]]) -> Iterator[_Row]:
    """Rows of groups that are put together alike: each label stands for all of them, the weight for the heaviest."""
    labels = [label for label, _ in alike]
    for n, row in enumerate(alike[0][1]):
        moves, way, joints, before = (_spread(words, labels) for words in row.words())
        if len(labels) > 1:
            keys = ", ".join(label.rpartition(".")[2] for label in labels)
            moves = _key_at(labels[0]).sub(f" {keys}", moves)
        yield _Row(moves, way, max(rows[n].weight or 0.0 for _, rows in alike), joints, before)


def _spread(words: str, labels: Sequence[str]) -> str:
    return _label_at(labels[0]).sub(lambda found: ", ".join(f"{label}{found[1]}" for label in labels), words)
