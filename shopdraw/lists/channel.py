"""Cuts as a router or a saw is set for them: channels across or along a face, pockets, bores, tongues on ends."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from shopdraw.lists.shaped_cutter import is_shaped
from shopdraw.shape.askew import askew_rectangle
from shopdraw.shape.path import bounds
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board, Cut, Face

NARROW = frozenset({"dado", "groove", "rabbet", "tongue", "slot", "chamfer"})
"""Cuts that are set by their width and depth; their length is where they run out or stop."""
SAME = 1e-3
END, OTHER_END, EDGE, OTHER_EDGE, FACE, SLOPE = "end", "other end", "edge", "other edge", "face", "sloping face"


@dataclass(frozen=True, slots=True)
class Setting:
    """One cut of one board as a machine is set for it, mm.

    Attributes:
        form: "channel", "pocket", "bore" or "end".
        kind: the trade's word.
        board: that is cut.
        width: of a channel; diameter of a bore; a pocket's size along the grain; length of a tenon or tongue.
        across: a pocket's size across the grain; else 0.
        depth: of the cut; of the cheek below the face for a tenon or tongue.
        other_depth: of the cheek below the other face, for a tenon or tongue.
        distance: of the near side (bores: the centre) from `reference`; 0 where it is cut at that end or edge.
        reference: "end", "other end", "edge", "other edge" or "face"; "sloping face" for a groove square to a mitre.
        guest: thickness of what enters it, where it carries a fit.
        fit: how much wider it is.
        open: whether the cutter can run out.
    """

    form: str
    kind: str
    board: Board
    width: float
    across: float
    depth: float
    other_depth: float
    distance: float
    reference: str
    guest: float = 0.0
    fit: float = 0.0
    open: bool = True


def settings_of(board: Board, assembly: Assembly) -> Iterator[Setting]:
    """Every cut that is set by width, depth and distance; what is sawn to a line or at a tilt is left out."""
    for index, cut in enumerate(board.shape.cuts):
        if is_shaped(cut):
            continue
        if cut.face in (Face.FOOT, Face.HEAD):
            yield from _on_end(board, cut)
        elif (_through(board, cut) and len(cut.outline.corners) != 2) or cut.islands:
            continue
        elif _round(cut):
            yield _bore(board, cut)
        elif cut.face in (Face.NEAR, Face.FAR) and (askew := askew_rectangle(cut.outline)) is not None:
            guest, fit = _fit(_joint(board, index, assembly), askew.wide)
            deep = askew.long / 2
            yield Setting("channel", cut.kind, board, askew.wide, 0.0, deep, 0.0, 0.0, SLOPE, guest, fit)
        elif cut.face is not Face.TILTED:
            yield _square(board, cut, _joint(board, index, assembly))


def _through(board: Board, cut: Cut) -> bool:
    whole = board.thickness if cut.face in (Face.FACE, Face.BACK) else board.width
    return cut.start + cut.depth >= whole - SAME


def _round(cut: Cut) -> bool:
    return len(cut.outline.corners) == 2 and all(abs(corner.bulge) == 1.0 for corner in cut.outline.corners)


def _joint(board: Board, index: int, assembly: Assembly) -> Joint | None:
    """The joint with a fit that made a cut."""
    if index >= len(board.cut_ids):
        return None
    cut_id = board.cut_ids[index]
    hosted = [joint for joint in assembly.joints if joint.host == board.id and joint.fit > 1e-9]
    exact = next((joint for joint in hosted if joint.id == cut_id), None)
    return exact or next((joint for joint in hosted if joint.id.startswith(cut_id + ".")), None)


def _bore(board: Board, cut: Cut) -> Setting:
    a0, b0, a1, b1 = bounds(cut.outline)
    distance, reference = _off_edge(board, (b0 + b1) / 2, (b0 + b1) / 2)
    if cut.face in (Face.NEAR, Face.FAR):
        distance, reference = -(b0 + b1) / 2, FACE
    return Setting(
        "bore", cut.kind, board, a1 - a0, 0.0, cut.depth, 0.0, distance, reference, open=_through(board, cut)
    )


def _square(board: Board, cut: Cut, joint: Joint | None) -> Setting:
    a0, b0, a1, b1 = bounds(cut.outline)
    u0, v0, u1, v1 = bounds(board.shape.outline)
    on_face = cut.face in (Face.FACE, Face.BACK)
    low, high = (v0, v1) if on_face else (-board.thickness, 0.0)
    ends, edges = (a0 <= u0 + SAME, a1 >= u1 - SAME), (b0 <= low + SAME, b1 >= high - SAME)
    crosswise = all(edges) or (not all(ends) and a1 - a0 < b1 - b0)
    if crosswise:
        size, (distance, reference) = a1 - a0, _off_end(board, a0, a1)
    else:
        size = b1 - b0
        distance, reference = _off_edge(board, b0, b1) if on_face else (max(0.0, -b1), FACE)
    guest, fit = _fit(joint, size)
    channel = cut.kind in NARROW or (all(edges) if crosswise else all(ends))
    if channel:
        return Setting("channel", cut.kind, board, size, 0.0, cut.depth, 0.0, distance, reference, guest, fit)
    distance, reference = _off_end(board, a0, a1)
    return Setting(
        "pocket",
        cut.kind,
        board,
        a1 - a0,
        b1 - b0,
        cut.depth,
        0.0,
        distance,
        reference,
        guest,
        fit,
        any((*ends, *edges)),
    )


def _fit(joint: Joint | None, size: float) -> tuple[float, float]:
    """Thickness of what enters, and the fit, where this size is the one that carries it."""
    if joint is None:
        return 0.0, 0.0
    sizes = dict(joint.sizes)
    opening = sizes["thickness"] + joint.fit if "thickness" in sizes else sizes.get("width", 0.0)
    return (opening - joint.fit, joint.fit) if abs(opening - size) < SAME else (0.0, 0.0)


def _off_end(board: Board, a0: float, a1: float) -> tuple[float, str]:
    u0, _, u1, _ = bounds(board.shape.outline)
    if a0 <= u0 + SAME:
        return 0.0, END
    return (0.0, OTHER_END) if a1 >= u1 - SAME else (a0 - u0, END)


def _off_edge(board: Board, b0: float, b1: float) -> tuple[float, str]:
    _, v0, _, v1 = bounds(board.shape.outline)
    far = board.reference_edge == "far"
    low, high = (v1 - b1, v1 - b0) if far else (b0 - v0, b1 - v0)
    if low <= SAME:
        return 0.0, EDGE
    return (0.0, OTHER_EDGE) if high >= v1 - v0 - SAME else (low, EDGE)


def _on_end(board: Board, cut: Cut) -> Iterator[Setting]:
    """Tenons and tongues: how long, and how deep each cheek lies."""
    if cut.kind not in ("tenon", "tongue"):
        return
    for island in cut.islands:
        _, w0, _, w1 = bounds(island)
        reference = END if cut.face is Face.FOOT else OTHER_END
        yield Setting(
            "end", cut.kind, board, cut.depth, 0.0, max(0.0, -w1), max(0.0, board.thickness + w0), 0.0, reference
        )
