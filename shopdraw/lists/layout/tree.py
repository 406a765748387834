"""Cuts within cuts: how a piece is split edge to edge, and what places, cuts and offcuts follow from that."""

from __future__ import annotations

from dataclasses import dataclass, field

from shopdraw.lists.layout.answer import Laid, Offcut, SawCut, Way

_NEAR = 1e-6
Region = tuple[float, float, float, float]
"""x0, y0, x1, y1, mm."""


@dataclass(frozen=True, slots=True)
class Leaf:
    """A part as it lies: extents along and across the piece, mm; trimmed to these from what it is split off in."""

    part: str
    length: float
    width: float
    turned: bool = False


@dataclass(frozen=True, slots=True)
class Split:
    """Parallel cuts: a rip gives strips above each other, a crosscut pieces beside each other, as large as need be."""

    way: Way
    pieces: tuple[Node, ...]


Node = Leaf | Split


def extents(node: Node, kerf: float) -> tuple[float, float]:
    """How much a node takes along and across the piece, kerfs between its pieces included, mm."""
    if isinstance(node, Leaf):
        return node.length, node.width
    sizes = [extents(piece, kerf) for piece in node.pieces]
    lengths, widths = zip(*sizes, strict=True)
    kerfs = kerf * (len(sizes) - 1)
    if node.way == "crosscut":
        return sum(lengths) + kerfs, max(widths)
    return max(lengths), sum(widths) + kerfs


@dataclass(slots=True)
class Cutting:
    """What follows from cutting a piece: filled as the tree is walked, each level's cuts before the next one's."""

    kerf: float
    laid: list[Laid] = field(default_factory=list)
    cuts: list[SawCut] = field(default_factory=list)
    offcuts: list[Offcut] = field(default_factory=list)

    def trim(self, whole: Region, clear: Region) -> None:
        """The cuts that clean the edges: ends first, then sides; the kerf lies within what is cut off."""
        x0, y0, x1, y1 = clear
        if x0 > whole[0]:
            self.cuts.append(SawCut("crosscut", x0 - self.kerf, whole[1], whole[3]))
        if x1 < whole[2]:
            self.cuts.append(SawCut("crosscut", x1, whole[1], whole[3]))
        if y0 > whole[1]:
            self.cuts.append(SawCut("rip", y0 - self.kerf, x0, x1))
        if y1 < whole[3]:
            self.cuts.append(SawCut("rip", y1, x0, x1))

    def walk(self, node: Node, region: Region) -> None:
        """Cuts a region as its node says."""
        if isinstance(node, Leaf):
            self._part(node, region)
        else:
            self._split(node, region)

    def _split(self, node: Split, region: Region) -> None:
        x0, y0, x1, y1 = region
        rip = node.way == "rip"
        at, end = (y0, y1) if rip else (x0, x1)
        pieces: list[tuple[Node, Region]] = []
        for child in node.pieces:
            size = extents(child, self.kerf)[1 if rip else 0]
            pieces.append((child, (x0, at, x1, at + size) if rip else (at, y0, at + size, y1)))
            if at + size < end - _NEAR:
                self.cuts.append(SawCut(node.way, at + size, *((x0, x1) if rip else (y0, y1))))
            else:
                pieces[-1] = (child, (x0, at, x1, end) if rip else (at, y0, end, y1))
            at += size + self.kerf
        self.left((x0, at, x1, y1) if rip else (at, y0, x1, y1))
        for child, piece in pieces:
            self.walk(child, piece)

    def _part(self, leaf: Leaf, region: Region) -> None:
        x0, y0, x1, y1 = region
        if x0 + leaf.length < x1 - _NEAR:
            self.cuts.append(SawCut("crosscut", x0 + leaf.length, y0, y1))
            self.left((x0 + leaf.length + self.kerf, y0, x1, y1))
            x1 = x0 + leaf.length
        if y0 + leaf.width < y1 - _NEAR:
            self.cuts.append(SawCut("rip", y0 + leaf.width, x0, x1))
            self.left((x0, y0 + leaf.width + self.kerf, x1, y1))
        self.laid.append(Laid(leaf.part, x0, y0, leaf.length, leaf.width, leaf.turned))

    def left(self, region: Region) -> None:
        """Notes what is left over."""
        x0, y0, x1, y1 = region
        if x1 - x0 > _NEAR and y1 - y0 > _NEAR:
            self.offcuts.append(Offcut(x0, y0, x1 - x0, y1 - y0))
