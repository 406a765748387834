"""What wood is left: under dados, between grooves, in pins, lips and notches; and stock that nobody measured."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from shopdraw.check.corner import corner_findings
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.shape.path import bounds
from shopdraw.wood.assembly import Joint
from shopdraw.wood.board import Board, Cut, Face
from shopdraw.wood.finding import Finding, Severity

DADO_SHARE = 1 / 3
DADO_MOST = 1 / 2
CROSSED_LEFT_SHARE = 1 / 3
"""Of a board's thickness, left where two cuts cross back to back (common practice)."""
DADO_BASIS = (
    "common practice: a third of the stock at most (trade school notes); half of it for grooves in drawer sides"
)
LEAST_WEB_MM = 6.0
"""Wood between grooves, or between a groove and an edge: at least its depth, and so much (common practice)."""
LEAST_LIP_MM = 4.0
LEAST_OVER_NOTCH_MM = 8.0
_SLIGHT = 1e-6
_HOUSED = ("dado", "groove")


def web_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about what wood is left."""
    yield from dados_deep(subject)
    yield from cuts_back_to_back(subject)
    yield from webs_thin(subject)
    yield from corner_findings(subject)
    yield from lips_thin(subject)
    yield from notches_deep(subject)
    yield from stock_unmeasured(subject)


def dados_deep(subject: Subject) -> Iterator[Finding]:
    """A dado over a third of its host's thickness is a caution, over a half must be fixed; in drawers half is usual."""
    assembly = subject.assembly
    for joint in assembly.joints:
        if joint.kind not in _HOUSED or not assembly.has(joint.host) or joint.host.startswith(("drawer.", "lid")):
            continue
        host, depth = assembly.board(joint.host), _depth(assembly.board(joint.host), joint)
        share = depth / host.thickness
        if depth <= 0 or share <= DADO_SHARE + 1e-3:
            continue
        must = share > DADO_MOST + 1e-6
        limit = host.thickness * (DADO_MOST if must else DADO_SHARE)
        guest = assembly.board(joint.guest).name if assembly.has(joint.guest) else joint.guest
        yield Finding(
            "dado-deep",
            Severity.MUST_FIX if must else Severity.CAUTION,
            (joint.id, joint.host),
            f"the {joint.kind} for {guest} goes {mm(depth)} mm into {host.name}, {share:.0%} of its "
            f"{mm(host.thickness)} mm; "
            f"right would be a third, {mm(host.thickness * DADO_SHARE)} mm, and never over "
            f"{mm(host.thickness * DADO_MOST)} mm",
            depth,
            limit,
            basis=DADO_BASIS,
            right=("case.dado_depth", f"{host.thickness * DADO_SHARE:.2f} mm") if host.member == "side" else None,
        )


def _depth(host: Board, joint: Joint) -> float:
    """Depth of a joint's cut in its host's face, mm; 0 where it is cut into an edge or an end."""
    cuts = [cut for cut, name in zip(host.shape.cuts, host.cut_ids, strict=True) if name == joint.id]
    faced = [cut.depth for cut in cuts if cut.face in (Face.FACE, Face.BACK)]
    return max(faced, default=0.0) or (
        dict(joint.sizes).get("depth", 0.0) if not cuts and joint.kind == "dado" else 0.0
    )


def cuts_back_to_back(subject: Subject) -> Iterator[Finding]:
    """Two cuts that meet back to back count together: over a third of the thickness a caution, over a half must-fix.

    Where they only cross, a small patch is thin and the board is not: a third must be left there, and never under 4 mm.
    """
    for board in subject.assembly.boards:
        named = list(zip(board.shape.cuts, board.cut_ids, strict=True))
        faced = [
            (cut, name)
            for cut, name in named
            if cut.face in (Face.FACE, Face.BACK) and cut.kind in (*_HOUSED, "rabbet")
        ]
        for (one, name), (other, second) in combinations(faced, 2):
            if one.face is other.face or not _meet(one, other):
                continue
            both, across = one.depth + other.depth, _along(one) != _along(other)
            most = board.thickness * (1 - CROSSED_LEFT_SHARE if across else DADO_SHARE)
            if both <= most + _SLIGHT:
                continue
            limit = board.thickness - LEAST_LIP_MM if across else board.thickness * DADO_MOST
            must = both > limit + _SLIGHT
            yield Finding(
                "cuts-back-to-back",
                Severity.MUST_FIX if must else Severity.CAUTION,
                (name, second, board.id),
                f"{_told(board, name)} and {_told(board, second)} {'cross' if across else 'meet'} back to back in "
                f"{board.name}: together "
                f"{mm(both)} mm of {mm(board.thickness)} mm, {mm(board.thickness - both)} mm of wood are left; "
                f"right would be at most {mm(most)} mm together, or one of them moved along",
                both,
                limit if must else most,
                basis="common practice" if across else DADO_BASIS,
            )


def _told(board: Board, name: str) -> str:
    """A cut by what it is for: "the dado for writing shelf"."""
    place = board.cut_ids.index(name)
    kind, purpose = board.shape.cuts[place].kind, board.cut_for[place] if place < len(board.cut_for) else ""
    return f"the {kind} for {purpose}" if purpose else f"the {kind}"


def _meet(one: Cut, other: Cut) -> bool:
    a, b = bounds(one.outline), bounds(other.outline)
    return min(a[2], b[2]) - max(a[0], b[0]) > 0.1 and min(a[3], b[3]) - max(a[1], b[1]) > 0.1


def _along(cut: Cut) -> int:
    """Which way a cut runs: 0 along the grain, 1 across it."""
    x0, y0, x1, y1 = bounds(cut.outline)
    return 0 if x1 - x0 >= y1 - y0 else 1


def webs_thin(subject: Subject) -> Iterator[Finding]:
    """Wood between two dados of a face, or between a dado and the board's end, thinner than the dado is deep."""
    for board in subject.assembly.boards:
        if board.id.startswith("drawer."):
            continue
        cuts = [
            (cut, name)
            for cut, name in zip(board.shape.cuts, board.cut_ids, strict=True)
            if cut.face is Face.FACE and cut.kind in _HOUSED and cut.depth < board.thickness - _SLIGHT
        ]
        for (one, name), (other, second) in combinations(cuts, 2):
            gap = _web(one, other)
            if gap is not None and gap < max(one.depth, other.depth, LEAST_WEB_MM):
                place = f"between {_told(board, name)} and {_told(board, second)}"
                yield _thin(board, (name, second), place, gap, max(one.depth, other.depth))
        if board.member == "side":
            for cut, name in cuts:
                gap = bounds(cut.outline)[0]
                if gap < max(cut.depth, LEAST_WEB_MM):
                    yield _thin(board, (name,), f"between {_told(board, name)} and the side's foot", gap, cut.depth)
                yield from _under_slant(board, cut, name)


def _web(one: Cut, other: Cut) -> float | None:
    """Wood between two cuts that run beside each other, mm; None where they don't."""
    a, b = bounds(one.outline), bounds(other.outline)
    gaps = [max(a[i], b[i]) - min(a[i + 2], b[i + 2]) for i in (0, 1)]
    if gaps[0] > _SLIGHT and gaps[1] < -_SLIGHT:
        return gaps[0]
    if gaps[1] > _SLIGHT and gaps[0] < -_SLIGHT:
        return gaps[1]
    return None


def _under_slant(side: Board, cut: Cut, name: str) -> Iterator[Finding]:
    """Wood between a dado's front and the slanted edge above it."""
    corners = [(c.x, c.y) for c in side.shape.outline.corners]
    for (u0, v0), (u1, v1) in zip(corners, corners[1:] + corners[:1], strict=True):
        if abs(u1 - u0) < 1.0 or abs(v1 - v0) < 1.0:
            continue
        size = ((u1 - u0) ** 2 + (v1 - v0) ** 2) ** 0.5
        inside = [((u1 - u0) * (c.y - v0) - (v1 - v0) * (c.x - u0)) / size for c in cut.outline.corners]
        gap = min(inside)
        if gap < max(LEAST_WEB_MM, 0.0):
            yield _thin(side, (name,), f"between {_told(side, name)} and the slanted edge", gap, LEAST_WEB_MM)


def _thin(board: Board, names: tuple[str, ...], place: str, gap: float, depth: float) -> Finding:
    limit = max(depth, LEAST_WEB_MM)
    return Finding(
        "web-thin",
        Severity.CAUTION,
        (*names, board.id),
        f"{mm(gap)} mm of wood are left {place} in {board.name}; right would be {mm(limit)} mm or more",
        gap,
        limit,
        basis="common practice",
    )


def lips_thin(subject: Subject) -> Iterator[Finding]:
    """A rabbeted lid's lip, what it is thick."""
    slant = subject.assembly.slant
    if slant is None or slant.seat != "rabbeted":
        return
    left = slant.lid_thickness_mm - slant.lid_inset_mm
    if left < LEAST_LIP_MM:
        yield Finding(
            "lip-thin",
            Severity.MUST_FIX,
            ("lid",),
            f"a rabbet {mm(slant.lid_inset_mm)} mm deep leaves a lip of {mm(left)} mm of a lid "
            f"{mm(slant.lid_thickness_mm)} mm thick; "
            f"right would be a rabbet of at most {mm(slant.lid_thickness_mm - LEAST_LIP_MM)} mm",
            left,
            LEAST_LIP_MM,
            basis="common practice",
            right=("lid.rabbet", f"{0.4 * slant.lid_thickness_mm:.1f} mm"),
        )


def notches_deep(subject: Subject) -> Iterator[Finding]:
    """Wood of the writing shelf over the notches for the lid supports."""
    desk = subject.desk
    if desk is None:
        return
    board = subject.assembly.board("shelf.writing")
    for cut, name in zip(board.shape.cuts, board.cut_ids, strict=True):
        left = board.thickness - cut.depth
        if cut.kind == "notch" and cut.face is Face.BACK and left < LEAST_OVER_NOTCH_MM:
            yield Finding(
                "notch-deep",
                Severity.MUST_FIX if left < LEAST_OVER_NOTCH_MM / 2 else Severity.CAUTION,
                (name, board.id),
                f"the lid is only {mm(desk.writing - desk.support_top)} mm thick, so {board.name} is "
                f"notched {mm(cut.depth)} mm "
                f"over a support and keeps {mm(left)} mm; right would be {mm(LEAST_OVER_NOTCH_MM)} mm or more: a "
                "thinner shelf or a thicker lid",
                left,
                LEAST_OVER_NOTCH_MM,
                basis="common practice",
            )


def stock_unmeasured(subject: Subject) -> Iterator[Finding]:
    """A stock whose thickness is still the one it is called by: joints cut to a name are loose or tight."""
    seen: set[str] = set()
    for board in subject.assembly.boards:
        stock = board.stock
        if stock.name in seen:
            continue
        seen.add(stock.name)
        given = subject.design.stock.get(stock.name)
        told = given is not None and given.measured and "measured" in given.model_fields_set
        rough = stock.kind == "sheet" or stock.nominal.endswith("/4")
        if stock.measured and (told or not rough or not _carries_name(stock.nominal, stock.thickness)):
            continue
        yield Finding(
            "stock-unmeasured",
            Severity.CAUTION,
            (board.id,),
            f"stock {stock.name} still carries its nominal size, {stock.nominal or mm(stock.thickness) + ' mm'}: "
            "measure it and put the thickness in "
            f"stock.{stock.name}.thickness; a dado is cut to that plus {mm(subject.design.case.fit)} mm, the upper "
            "face stays where it was asked",
            stock.thickness,
            None,
            basis="common practice",
        )


_INCH_MM = 25.4


def _carries_name(nominal: str, thickness: float) -> bool:
    """Whether a thickness is just the trade name's: "3/4" at 19.05 mm, "6 mm" at 6 mm."""
    words = nominal.replace("mm", "").replace("in", "").replace('"', "").strip()
    try:
        parts = [part.split("/") for part in words.split()]
        size = sum(float(part[0]) / float(part[1]) if len(part) == 2 else float(part[0]) for part in parts)
    except (ValueError, ZeroDivisionError):
        return False
    return bool(parts) and min(abs(size - thickness), abs(size * _INCH_MM - thickness)) < 1e-6
