"""Views with facts made by chance from a seed: levels, openings, notes, gaps, slopes, balloons."""

from __future__ import annotations

import itertools
import math
import random

from shopdraw.drawing.mark import ArcMark, Area, Hatching, Line, Meaning
from shopdraw.shape.path import rectangle
from shopdraw.sheet import (
    Balloon,
    ComposedView,
    Fact,
    Feature,
    Look,
    PlainView,
    Rank,
    Sight,
    compose_view,
    inch_writing,
    look_for,
    metric_writing,
    write_figures,
)
from shopdraw.trade.paper import PaperSize, paper

VIEW = "view"


def box_lines(x0: float, y0: float, x1: float, y1: float, meaning: Meaning = Meaning.VISIBLE) -> list[Line]:
    """The four sides of a rectangle."""
    corners = ((x0, y0), (x1, y0), (x1, y1), (x0, y1))
    return [Line(p, q, meaning) for p, q in zip(corners, (*corners[1:], corners[0]), strict=True)]


def at(name: str, x: float, y: float, *, shown: bool = True, view: str = VIEW) -> Feature:
    """A feature that one view has."""
    return Feature(name, (Sight(view, (x, y), shown),))


class RandomView:
    """One view by chance: `plain`, `facts`, `balloons`, `scale`, `size`, `look`."""

    def __init__(self, seed: int, style: str) -> None:
        chance = self._chance = random.Random(seed)
        self.inch = chance.random() < 0.5
        self.size: PaperSize = paper(chance.choice(["A1", "A2", "ARCH D"]))
        self.look: Look = look_for(style, self.size.group, inch=self.inch)
        self.scale = chance.choice([0.25, 0.125] if self.inch else [0.2, 0.1])
        self._width, self._height = chance.uniform(300, 1200), chance.uniform(400, 1300)
        self._levels = self._made_levels()
        self._marks: list[Line | ArcMark | Area] = [*box_lines(0, 0, self._width, self._height)]
        self._marks += [Line((0, z), (self._width, z), Meaning.VISIBLE) for z in self._levels[1:-1]]
        self.facts: list[Fact] = []
        self._heights()
        self._widths()
        self._singles()
        self._slope()
        self.balloons = tuple(
            Balloon(f"{i + 1}{chance.choice('abL')}", self._somewhere(), chance.choice(["dot", "arrow"]))
            for i in range(chance.randint(0, 8))
        )
        self.plain = PlainView(VIEW, "View", tuple(self._marks))

    def composed(self) -> ComposedView:
        """The view with everything placed that found room."""
        writing = inch_writing() if self.inch else metric_writing()
        figures = write_figures(self.facts, writing)
        return compose_view(self.plain, self.facts, self.scale, self.look, figures, self.balloons)

    def _made_levels(self) -> list[float]:
        thick = self._chance.choice([6.3, 12.7, 18.0, 20.3])
        levels = [0.0]
        for z in sorted(self._chance.sample(range(30, int(self._height) - 30), self._chance.randint(1, 9))):
            if z - levels[-1] > thick + 15:
                levels += [float(z), z + thick]
        return [*levels, self._height] if self._height - levels[-1] > 10 else levels

    def _somewhere(self) -> tuple[float, float]:
        return self._chance.uniform(5, self._width - 5), self._chance.uniform(5, self._height - 5)

    def _heights(self) -> None:
        chance = self._chance
        x = chance.choice([0.0, self._width])
        side = chance.choice(["", "left", "right"])
        ends = [at(f"z{i}", x, z) for i, z in enumerate(self._levels)]
        for i, (a, b) in enumerate(itertools.pairwise(ends)):
            self._linear(f"z{i}/z{i + 1}", a, b, Rank.OPENING, 90.0, side, 1, "openings")
        self._linear("z0/top", ends[0], ends[-1], Rank.OVERALL, 90.0, side, 3, "")
        if len(ends) > 5:
            middle = ends[chance.randrange(2, len(ends) - 2)]
            self._linear("floor/level", ends[0], middle, Rank.LEVEL, 90.0, side, 2, "levels")
            self._linear("level/top", middle, ends[-1], Rank.LEVEL, 90.0, side, 2, "levels")
        if chance.random() < 0.5:
            other = [at(f"r{i}", chance.choice([0.0, self._width]), z) for i, z in enumerate(self._levels)]
            self.facts += [
                Fact(
                    f"r0/r{i}",
                    other[0],
                    b,
                    Rank.LOCATION,
                    (VIEW,),
                    90.0,
                    "running",
                    chance.choice(["", "right"]),
                    chain="running",
                )
                for i, b in enumerate(other)
                if i
            ]
        if chance.random() < 0.5:
            z = self._levels[1]
            self._marks.append(Area(rectangle(0, z, self._width, z + 30), (), Hatching("lines", 45.0, 2.0)))

    def _widths(self) -> None:
        chance = self._chance
        inner = [chance.uniform(20, self._width - 20) for _ in range(chance.randint(0, 4))]
        ends = [at(f"x{i}", x, 0.0) for i, x in enumerate(sorted({0.0, self._width, *inner}))]
        self._linear("width", ends[0], ends[-1], Rank.OVERALL, 0.0, "below", 2, "")
        if len(ends) > 2:
            for i, (a, b) in enumerate(itertools.pairwise(ends)):
                self._linear(f"x{i}/x{i + 1}", a, b, Rank.OPENING, 0.0, "below", 1, "bays")
        self._marks += [Line((x, 0.0), (x, self._levels[1]), Meaning.VISIBLE) for x in inner]

    def _singles(self) -> None:
        chance = self._chance
        words = ("dado 17.96 × 6.4", "groove 6.5 × 6, stopped 20 from the front", "slot")
        for i in range(chance.randint(0, 5)):
            end = at(f"n{i}", chance.uniform(10, self._width - 10), chance.choice(self._levels[1:]))
            self.facts.append(Fact(f"n{i}", end, end, Rank.SIZE, (VIEW,), kind="note", words=chance.choice(words)))
        for i in range(chance.randint(0, 2)):
            k, x = chance.randrange(len(self._levels) - 1), chance.uniform(20, self._width - 20)
            a, b = at(f"ga{i}", x, self._levels[k]), at(f"gb{i}", x, self._levels[k + 1])
            self.facts.append(
                Fact(f"g{i}", a, b, Rank.CLEARANCE, (VIEW,), 90.0, "clearance", rounding="fit", prefix="gap ")
            )
        for i in range(chance.randint(0, 2)):
            radius, (x, y) = chance.uniform(3, 60), self._somewhere()
            self._marks.append(ArcMark((x, y), radius, 0.0, 360.0, Meaning.VISIBLE))
            edge = at(f"re{i}", x + radius * math.cos(0.7), y + radius * math.sin(0.7))
            kind = chance.choice(["radius", "diameter"])
            self.facts.append(Fact(f"round{i}", at(f"rc{i}", x, y), edge, Rank.RADIUS, (VIEW,), kind=kind))

    def _slope(self) -> None:
        if self._chance.random() < 0.4:
            return
        (ax, ay), (bx, by) = (self._width * 0.1, self._height * 0.5), (self._width * 0.5, self._height * 0.9)
        self._marks.append(Line((ax, ay), (bx, by), Meaning.VISIBLE))
        a, b, level = at("sa", ax, ay), at("sb", bx, by), at("sl", bx, ay)
        way = math.degrees(math.atan2(by - ay, bx - ax))
        self.facts.append(Fact("slope", a, b, Rank.LEVEL, (VIEW,), way, side="slant"))
        words = self._chance.choice(["", "50.2° from level; tilt saw 39.8° from square"])
        self.facts.append(Fact("angle", level, b, Rank.SIZE, (VIEW,), kind="angular", vertex=a, words=words))

    def _linear(
        self, name: str, a: Feature, b: Feature, rank: Rank, way: float, side: str, row: int, chain: str
    ) -> None:
        self.facts.append(Fact(name, a, b, rank, (VIEW,), way, side=side, row=row, chain=chain))
