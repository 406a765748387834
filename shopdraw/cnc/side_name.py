"""What a person at the bench calls a board's faces, edges and ends: by where they stand in the piece."""

from __future__ import annotations

from shopdraw.shape.frame import Vec3, scale
from shopdraw.wood.board import Board, Face

_WORDS = (("left", "right"), ("front", "back"), ("lower", "upper"))


def direction_word(direction: Vec3) -> str:
    """The way that a direction points in the piece: left, right, front, back, lower, upper."""
    axis = max(range(3), key=lambda i: round(abs(direction[i]), 6))
    return _WORDS[axis][1 if direction[axis] > 0 else 0]


def side_word(board: Board, face: Face) -> str:
    """Where one of a board's six sides stands in the piece.

    Raises:
        ValueError: a tilted plane is none of the six.
    """
    frame = board.frame
    out = {
        Face.FACE: frame.w,
        Face.BACK: scale(frame.w, -1.0),
        Face.NEAR: scale(frame.v, -1.0),
        Face.FAR: frame.v,
        Face.FOOT: scale(frame.u, -1.0),
        Face.HEAD: frame.u,
    }
    if face not in out:
        raise ValueError("a tilted plane has no name among a board's six sides")
    return direction_word(out[face])


def side_name(board: Board, face: Face) -> str:
    """A side in words: "front edge", "lower end", "reference face", "second face"."""
    if face is Face.FACE:
        return "reference face"
    if face is Face.BACK:
        return "second face"
    if face is Face.TILTED:
        return "tilted face"
    return f"{side_word(board, face)} {'edge' if face in (Face.NEAR, Face.FAR) else 'end'}"


def reference_edge(board: Board) -> Face:
    """The edge that everything across the board is measured from."""
    return Face.NEAR if board.reference_edge == "near" else Face.FAR
