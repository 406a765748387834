"""A cell composed: its views with their dimensions, stood in projection under its heading. Paper mm."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.mark import Line, Mark, Meaning, Text
from shopdraw.shape.path import Point
from shopdraw.sheet.arrange import BETWEEN_VIEWS, Standing
from shopdraw.sheet.bench_pair import join_pair
from shopdraw.sheet.board_view import board_marks
from shopdraw.sheet.box import united
from shopdraw.sheet.cell import Cell, needed_views, view_titles
from shopdraw.sheet.cell_fact import cell_facts, moved_to, note_id, overall_facts, view_id
from shopdraw.sheet.cell_heading import heading_lines
from shopdraw.sheet.compose import compose_view
from shopdraw.sheet.face_mark import Wanted, edge_mark, face_marks
from shopdraw.sheet.fact import Fact, Feature, Rank, Sight, Unplaced
from shopdraw.sheet.glue_line import glue_lines
from shopdraw.sheet.look import Look
from shopdraw.sheet.near_lines import fine_where_close
from shopdraw.sheet.view import ComposedView, PlainView
from shopdraw.sheet.wrap import PITCH, wrapped
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board, Face

_UNDER_HEADING = 6.0
_LEAST_WIDTH = 135.0
_TURNS = 4


@dataclass(frozen=True, slots=True)
class ComposedCell:
    """A cell ready to stand: views and words relative to its upper left corner, y down to -height."""

    cell: Cell
    views: tuple[Standing, ...]
    marks: tuple[Mark, ...]
    width: float
    height: float


def compose_cell(
    cell: Cell,
    assembly: Assembly,
    figures: Mapping[str, str],
    scale: float,
    look: Look,
    *,
    third_angle: bool,
    keyed: bool = False,
    beside: bool = False,
) -> ComposedCell:
    """Places all that a cell tells.

    Args:
        cell: what it shows.
        assembly: the piece.
        figures: words of all facts.
        scale: 0.2 for 1:5.
        look: heights and distances.
        third_angle: which side the edge and end views stand on.
        keyed: leaders carry letters, and the heading says what each stands for: for small paper.
        beside: the heading stands left of the views instead of over them.
    """
    facts = cell_facts(cell, assembly)
    letters = _letters(facts, figures) if keyed else {}
    said = tuple(dict.fromkeys(f"{letter}: {figures[fact]}" for fact, letter in letters.items()))
    figures = {**figures, **letters}
    views = {face: _view(cell, face, facts[face], figures, scale, look) for face in needed_views(cell)}
    if cell.mirrored:
        views[Face.FACE] = _pair(cell, views[Face.FACE], figures, scale, look)
    left_out = [entry for view in views.values() for entry in view.unplaced]
    standing = _stood(views, third_angle)
    x0, y0, x1, y1 = united([s.box for s in standing])
    lines = (*heading_lines(cell, assembly, _told_in_words(cell, left_out, facts, figures)), *said)
    if beside:
        marks, width, height = _heading(lines, _LEAST_WIDTH, look)
        left = width + BETWEEN_VIEWS
        moved = tuple(Standing(s.view, (s.at[0] - x0 + left, s.at[1] - y1)) for s in standing)
        return ComposedCell(cell, moved, marks, left + x1 - x0, max(height, y1 - y0))
    marks, width, height = _heading(lines, max(x1 - x0, _LEAST_WIDTH), look)
    moved = tuple(Standing(s.view, (s.at[0] - x0, s.at[1] - y1 - height - _UNDER_HEADING)) for s in standing)
    return ComposedCell(cell, moved, marks, max(x1 - x0, width), height + _UNDER_HEADING + (y1 - y0))


def _letters(facts: Mapping[Face, Sequence[Fact]], figures: Mapping[str, str]) -> dict[str, str]:
    """A letter for each note of a cell; notes of the same words share one."""
    by_words: dict[str, str] = {}
    found: dict[str, str] = {}
    for told in facts.values():
        for fact in told:
            if fact.kind == "note":
                letter = by_words.setdefault(figures[fact.id], chr(ord("a") + len(by_words) % 26))
                found[fact.id] = letter
    return found


def _view(
    cell: Cell, face: Face, facts: Sequence[Fact], figures: Mapping[str, str], scale: float, look: Look
) -> ComposedView:
    board = cell.board
    marks = fine_where_close(board_marks(board.shape, face, board.id), scale, look) + glue_lines(board, face)
    if face is Face.FACE:
        marks += _face_words(board, marks, cell, scale, look)
    elif face is (Face.FAR if board.reference_edge == "far" else Face.NEAR):
        box = (
            (0.0, -board.thickness, board.length, 0.0)
            if face is Face.NEAR
            else (0.0, 0.0, board.length, board.thickness)
        )
        marks += edge_mark(box, scale, board.id)
    title = "" if cell.mirrored and face is Face.FACE else view_titles(cell)[face]
    return _composed(
        PlainView(view_id(cell, face), title, marks), facts, _spare_targets(cell, face), figures, scale, look
    )


def _composed(
    view: PlainView,
    facts: Sequence[Fact],
    spare: Mapping[str, tuple[Point, ...]],
    figures: Mapping[str, str],
    scale: float,
    look: Look,
) -> ComposedView:
    """The view; a note that finds no room from one point of its cut is tried from the next."""
    tries = list(facts)
    best = compose_view(view, tries, scale, look, figures)
    for turn in range(_TURNS):
        missed = {entry.fact for entry in best.unplaced}
        movable = [
            i for i, fact in enumerate(tries) if fact.id in missed and len(spare.get(fact.id, ())) > turn
        ]
        if not movable:
            break
        for i in movable:
            tries[i] = _aimed(tries[i], spare[tries[i].id][turn])
        found = compose_view(view, tries, scale, look, figures)
        if len(found.unplaced) < len(best.unplaced):
            best = found
    return best


def _spare_targets(cell: Cell, face: Face) -> Mapping[str, tuple[Point, ...]]:
    """Further points for a note's leader, by its fact, those that lie furthest apart first."""
    notes = [note for note in cell.notes if note.view is face]
    return {
        note_id(cell, face, note, number): (*note.targets[::-1], *note.targets[1:])
        for number, note in enumerate(notes)
    }


def _aimed(fact: Fact, at: Point) -> Fact:
    """A note whose leader goes to another point."""
    feature = Feature(fact.a.id, tuple(Sight(sight.view, at) for sight in fact.a.sights))
    return replace(fact, a=feature, b=feature)


def _face_words(board: Board, marks: Sequence[Mark], cell: Cell, scale: float, look: Look) -> tuple[Mark, ...]:
    far = board.reference_edge == "far"
    wanted: list[Wanted] = []
    if cell.mirrored:
        side = board.member == "side"
        up = "inside up" if side else "reference face up"
        hand = board.name.split(", ")[-1] if ", " in board.name else board.name
        wanted.append(Wanted(((hand, look.section), (up, look.figure)), (0.62, 0.42 if far else 0.58)))
        back = 0.93 if far else 0.07
        wanted.append(Wanted((("front edge" if side else "other edge", look.figure),), (0.45, 1.0 - back)))
        wanted.append(Wanted((("back edge" if side else "reference edge", look.figure),), (0.45, back)))
    return face_marks(board.shape.outline, marks, far, wanted, scale, look, board.id)


def _pair(cell: Cell, upper: ComposedView, figures: Mapping[str, str], scale: float, look: Look) -> ComposedView:
    """The other hand below the drawn one, as the two lie on the bench."""
    board = cell.mirrored[0].first
    marks = fine_where_close(board_marks(board.shape, Face.FACE, board.id), scale, look)
    marks += glue_lines(board, Face.FACE)
    marks += _face_words(board, marks, cell, scale, look)
    view = f"part.{board.label}.{Face.FACE.value}"
    facts = tuple(moved_to(fact, view) for fact in overall_facts(cell, view, "right"))
    lower = compose_view(PlainView(view, "", marks), facts, scale, look, figures)
    return join_pair(upper, lower, board.width, look)


def _stood(views: Mapping[Face, ComposedView], third_angle: bool) -> tuple[Standing, ...]:
    """Views in projection round the face: edges above and below it, ends beside it, the other face below all."""
    ends = ((Face.FOOT, -1.0 if third_angle else 1.0), (Face.HEAD, 1.0 if third_angle else -1.0))
    face = views[Face.FACE]
    standing = [Standing(face, (0.0, 0.0))]
    for end, side in ends:
        if end in views:
            taken = united([s.box for s in standing])
            room = views[end].room
            x = taken[2] + BETWEEN_VIEWS - room[0] if side > 0 else taken[0] - BETWEEN_VIEWS - room[2]
            standing.append(Standing(views[end], (x, 0.0)))
    above, below = (Face.FAR, Face.NEAR) if third_angle else (Face.NEAR, Face.FAR)
    if above in views:
        top = max(s.box[3] for s in standing)
        standing.append(Standing(views[above], (0.0, top + BETWEEN_VIEWS - views[above].room[1])))
    for name in (below, Face.BACK):
        if name in views:
            foot = min(s.box[1] for s in standing)
            standing.append(Standing(views[name], (0.0, foot - BETWEEN_VIEWS - views[name].room[3])))
    return tuple(standing)


def _told_in_words(
    cell: Cell, left_out: Sequence[Unplaced], facts: Mapping[Face, Sequence[Fact]], figures: Mapping[str, str]
) -> tuple[str, ...]:
    """What found no room on its view, said in words, so that nothing is lost."""
    by_id = {fact.id: fact for every in facts.values() for fact in every}
    kinds = {place.feature.replace("/", "-"): note.kind.strip() for note in cell.notes for place in note.places}
    told = []
    for entry in left_out:
        fact = by_id.get(entry.fact)
        if fact is None:
            continue
        if fact.rank is Rank.OVERALL:
            told.append(f"{fact.a.id.split(':')[1]} {figures[fact.id]}")
            continue
        if fact.kind in ("radius", "diameter"):
            told.append(f"arc {figures[fact.id]}")
            continue
        what = next((kind for feature, kind in kinds.items() if fact.b.id.endswith(feature)), "outline")
        start = " from the reference end" if fact.direction_deg == 0.0 else " from the reference edge"
        told.append(figures[fact.id] if fact.kind == "note" else f"{what} {figures[fact.id]}{start}")
    return tuple(dict.fromkeys(told))


def _heading(lines: Sequence[str], width: float, look: Look) -> tuple[tuple[Mark, ...], float, float]:
    """The heading's words, its width and height; the first line is larger, a line is ruled under the last."""
    made: list[Mark] = []
    y, widest = 0.0, 0.0
    for n, line in enumerate(lines):
        height = look.balloon if n == 0 else look.figure
        for part in wrapped(line, height, width):
            y -= height * (1.0 if not made else PITCH)
            made.append(Text((0.0, y), part, height))
    y -= 2.0
    widest = width
    made.append(Line((0.0, y), (widest, y), Meaning.FRAME, "", look.narrow))
    return tuple(made), widest, -y


def shifted(mark: Mark, by: Point) -> Mark:
    """A heading's mark moved on paper."""
    if isinstance(mark, Text):
        return replace(mark, at=(mark.at[0] + by[0], mark.at[1] + by[1]))
    if isinstance(mark, Line):
        return replace(
            mark, start=(mark.start[0] + by[0], mark.start[1] + by[1]), end=(mark.end[0] + by[0], mark.end[1] + by[1])
        )
    raise TypeError(f"a heading holds words and lines, found {type(mark).__name__}")
