"""What a part sheet says of each cut: on which view, in which words, and which places it is found from.

A cut is told by its near side, counted from the reference end and the reference edge, and by its sizes in words.
"along" is along the grain, "across" is across it. Everything is true-size mm in the planes of `board_view.PLANES`.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from shopdraw.sheet.cut_at import SAME, At, CutNote, Frame2, box_of, circle_of, corner_by_corner, frame_of
from shopdraw.sheet.cut_on_edge import on_edge, on_end, profile
from shopdraw.sheet.cut_on_face import on_face
from shopdraw.sheet.cut_size import CutSizes
from shopdraw.wood.board import Board, Cut, Face

HOLES = frozenset({"bore", "slot"})
OWN = "own:"
"""Ids of a person's own cuts begin so; their reason stands in the note."""


def cut_notes(board: Board, sizes: CutSizes) -> tuple[CutNote, ...]:
    """Every cut of a board as it is told, alike ones together: "4 × tail ...".

    Args:
        board: whose cuts.
        sizes: how sizes are written, and what fits the cuts carry.
    """
    frame = frame_of(board)
    single = [note for i in standing_cuts(board) for note in _notes(board, frame, i, board.shape.cuts[i], sizes)]
    grouped: dict[tuple[Face, str, str], list[CutNote]] = {}
    for note in single:
        grouped.setdefault((note.view, note.kind, note.words), []).append(note)
    told: list[CutNote] = []
    for notes in grouped.values():
        if len(notes) > 1:
            targets = tuple(target for note in notes for target in note.targets)
            places = tuple(place for note in notes for place in note.places)
            cuts = tuple(dict.fromkeys(i for note in notes for i in note.cuts))
            more = tuple(dict.fromkeys(line for note in notes for line in note.more))
            words = f"{len(notes)} × {notes[0].words}"
            told.append(replace(notes[0], words=words, targets=targets, places=places, cuts=cuts, more=more))
        else:
            told += notes
    return tuple(told)


def standing_cuts(board: Board) -> tuple[int, ...]:
    """Numbers of the cuts that take wood of their own: one that lies whole within another needs no words."""
    cuts = board.shape.cuts
    return tuple(
        i
        for i, cut in enumerate(cuts)
        if not any(i != j and _within(cut, other, i > j) for j, other in enumerate(cuts))
    )


def _within(cut: Cut, other: Cut, later: bool) -> bool:
    """Whether a rectangular cut lies whole within another one from the same face; of two alike the later one does."""
    one, two = box_of(cut.outline), box_of(other.outline)
    if one is None or two is None or two[4] or cut.face is not other.face or other.islands or cut.islands:
        return False
    inside = (
        one[0] >= two[0] - SAME
        and one[1] >= two[1] - SAME
        and one[2] <= two[2] + SAME
        and one[3] <= two[3] + SAME
        and cut.start >= other.start - SAME
        and cut.start + cut.depth <= other.start + other.depth + SAME
    )
    same = all(abs(a - b) <= SAME for a, b in zip(one, two, strict=True)) and abs(cut.depth - other.depth) <= SAME
    return inside and (later or not same)


def home_of(board: Board, cut: Cut) -> Face:
    """The view that tells a cut: the face it is seen best from."""
    shape = board.shape
    if cut.face is Face.BACK:
        return Face.FACE if cut.start + cut.depth >= shape.thickness - SAME else Face.BACK
    if cut.face is Face.FAR and cut.depth >= shape.width - SAME:
        return Face.NEAR
    if cut.face in (Face.FOOT, Face.HEAD):
        if cut.islands or cut.start > SAME:
            return Face.FACE
        return Face.FOOT if cut.depth >= shape.length - SAME else cut.face
    return Face.FACE if cut.face is Face.TILTED else cut.face


def _notes(board: Board, frame: Frame2, index: int, cut: Cut, sizes: CutSizes) -> Iterator[CutNote]:
    view = home_of(board, cut)
    own = board.cut_for[index] if index < len(board.cut_ids) and board.cut_ids[index].startswith(OWN) else ""
    for note in _plain_notes(board, frame, index, view, cut, sizes):
        yield replace(note, words=f"{note.words}: {own}") if own else note


def _plain_notes(
    board: Board, frame: Frame2, index: int, view: Face, cut: Cut, sizes: CutSizes
) -> Iterator[CutNote]:
    feature = board.cut_ids[index] if index < len(board.cut_ids) else f"{cut.kind}:{board.id}:{index}"
    at = At(board, frame, index, cut, view, cut.kind.replace("-", " "), feature, sizes)
    if cut.face in (Face.FACE, Face.BACK):
        yield from on_face(at)
    elif cut.face in (Face.NEAR, Face.FAR):
        through = cut.depth >= board.width - SAME and circle_of(cut.outline) is None
        yield from profile(at) if through else on_edge(at)
    elif cut.face in (Face.FOOT, Face.HEAD):
        yield from on_end(at)
    else:
        yield from corner_by_corner(at)
