"""The places that dimensions go to: floor, levels, edges of boards and openings, each as every view has it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from shopdraw.shape.path import Point
from shopdraw.sheet.extent import Extent, extent, whole
from shopdraw.sheet.fact import Feature, Sight
from shopdraw.sheet.sighting import Seen, Sightings
from shopdraw.wood.assembly import Assembly

LEAST_LINK = 2.5
"""Two places nearer than this on paper aren't dimensioned from one another."""
LEFT, RIGHT, BELOW, ABOVE = (-1.0, 0.0), (1.0, 0.0), (0.0, -1.0), (0.0, 1.0)
_NAMES = {
    ("x", False): "left",
    ("x", True): "right",
    ("y", False): "front",
    ("y", True): "rear",
    ("z", False): "lower",
    ("z", True): "upper",
}


class Places:
    """Features of one piece, found in a set of views."""

    def __init__(self, assembly: Assembly, views: tuple[Seen, ...], scale: float) -> None:
        self.assembly = assembly
        self.views = views
        self.scale = scale
        self.sightings = Sightings(views)
        self.whole = whole(assembly)
        self._extents: dict[str, Extent] = {}

    def extent(self, board: str) -> Extent:
        """How far a board reaches."""
        if board not in self._extents:
            self._extents[board] = extent([self.assembly.board(board)])
        return self._extents[board]

    def across(self, name: str, axis: str, at: float, toward: Point, within: Extent | None = None) -> Feature:
        """Whatever edge lies at a coordinate across an axis, anywhere in the piece or within a box."""
        low, high = (within or self.whole).flat(axis, at)
        return self.sightings.place(name, low, high, toward)

    def edge(self, board: str, axis: str, high: bool, toward: Point, name: str = "") -> Feature:
        """A board's last edge along an axis: its left or right, front or rear, lower or upper one."""
        box = self.extent(board)
        at = box["xyz".index(axis) + (3 if high else 0)]
        return self.across(name or f"{board}:{_NAMES[axis, high]}", axis, at, toward, box)

    def floor(self, toward: Point) -> Feature:
        """The floor, where the piece stands on it."""
        return self.across("floor", "z", 0.0, toward)

    def top(self, toward: Point) -> Feature:
        """The upper face of the top, and the ends of the sides where they reach as high."""
        return self.across("top:upper", "z", self.assembly.height, toward)

    def level(self, level: str, toward: Point) -> Feature:
        """A level's upper face."""
        top = next(fact.top for fact in self.assembly.levels if fact.id == level)
        return self.across(f"level.{level}:top", "z", top, toward)

    def case(self, axis: str, high: bool, toward: Point) -> Feature:
        """The case over its finished outsides: left or right, front plane or rear."""
        size = {"x": self.assembly.width, "y": self.assembly.depth}[axis]
        return self.across(f"case:{_NAMES[axis, high]}", axis, size if high else 0.0, toward, self._case_box())

    @staticmethod
    def point(name: str, at: Mapping[str, Point]) -> Feature:
        """A place that views show by a line of their own (a moved position, a centre), true-size mm by view id."""
        return Feature(name, tuple(Sight(view, point) for view, point in at.items()))

    def at(self, name: str, view: str, point: Point) -> Feature:
        """A place that one view has, true-size mm; shown where an edge in sight passes there."""
        return Feature(name, (Sight(view, point, self.sightings.passes(view, point)),))

    def shown(self, place: Feature, view: str) -> bool:
        """Whether a view shows a place."""
        return self.sightings.shows(place, view)

    def spaced(self, places: Iterable[Feature], view: str, axis: int, keep: Iterable[Feature] = ()) -> list[Feature]:
        """Those places that a view shows, in order, none nearer to another than can be dimensioned there.

        Args:
            places: in the order of how much they matter, least last.
            view: whose.
            axis: 0 across the paper, 1 up it.
            keep: that are there already and aren't given back.
        """
        least = LEAST_LINK / self.scale
        taken = [sight.point[axis] for place in keep if (sight := place.sight(view)) is not None]
        found: list[tuple[float, Feature]] = []
        for place in places:
            sight = place.sight(view)
            if sight is None or not sight.shown:
                continue
            if all(abs(sight.point[axis] - other) > least for other in taken):
                taken.append(sight.point[axis])
                found.append((sight.point[axis], place))
        return [place for _, place in sorted(found, key=lambda item: item[0])]

    def _case_box(self) -> Extent:
        sides = [b for b in self.assembly.boards if b.member == "side"]
        return extent(sides) if sides else self.whole
