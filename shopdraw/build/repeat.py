"""What is laid several times in one piece, alike but for its height and its names: laid once, then laid again.

A tall bank has a dozen web frames that differ in nothing else; joining each anew would take a third of a build.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple, Self

from shopdraw.build.bench import Bench, Blank, Sunk
from shopdraw.shape.frame import Vec3, add, scale
from shopdraw.wood.assembly import Body, Hardware, Joint, Motion
from shopdraw.wood.board import Face, Fixing

Names = Sequence[tuple[str, str]]
"""Parts of ids and words, and what stands in their place."""
Pattern = tuple[object, ...]
"""What decides how something is laid, but for its height and its names."""
_FIXED = {Face.FACE: (0, 1, 2), Face.BACK: (0, 1, 2), Face.NEAR: (0, 2, 1), Face.FAR: (0, 2, 1),
          Face.FOOT: (1, 2, 0), Face.HEAD: (1, 2, 0)}  # fmt: skip
"""Of each face the two axes of its plane, and the one that a cut runs along."""


@dataclass(frozen=True, eq=False)
class Before:
    """How much lay on a bench."""

    blanks: dict[str, int]
    joints: int
    hardware: int
    motions: int

    @classmethod
    def of(cls, bench: Bench) -> Self:
        """What lies there now, and how many cuts each blank has."""
        cuts = {id: len(blank.cuts) for id, blank in bench.blanks.items()}
        return cls(cuts, len(bench.joints), len(bench.hardware), len(bench.motions))


@dataclass(frozen=True, eq=False)
class Laid:
    """What was laid since then, as it was when it had been laid.

    Attributes:
        blanks: new ones.
        cuts: those sunk into blanks that lay there before, by their ids.
        joints, hardware, motions: new ones.
    """

    blanks: tuple[Blank, ...]
    cuts: dict[str, tuple[Sunk, ...]]
    joints: tuple[Joint, ...]
    hardware: tuple[Hardware, ...]
    motions: tuple[Motion, ...]

    @classmethod
    def since(cls, before: Before, bench: Bench) -> Self:
        """What has been laid since. The new blanks know from now on that there may be others like them."""
        new = [blank for id, blank in bench.blanks.items() if id not in before.blanks]
        for blank in new:
            blank.like = _kept(blank)
        cuts = {id: tuple(bench[id].cuts[count:]) for id, count in before.blanks.items()}
        return cls(
            tuple(blank.like for blank in new if blank.like is not None),
            {id: found for id, found in cuts.items() if found},
            tuple(bench.joints[before.joints :]),
            tuple(bench.hardware[before.hardware :]),
            tuple(bench.motions[before.motions :]),
        )

    def again(self, bench: Bench, by: Vec3, names: Names) -> None:
        """Lays the same in another place, under other names.

        Args:
            by: how far from where it lies, world, mm.
            names: of it.
        """
        named = _Renamed(names)
        for like in self.blanks:
            bench.put(_copied(like, named, by))
        for id, cuts in self.cuts.items():
            way = bench[id].frame.local_direction(by)
            bench[id].cuts.extend([_moved(cut, way, named) for cut in cuts])
        bench.joints.extend([_joint(joint, by, named) for joint in self.joints])
        bench.hardware.extend(
            [replace(one, id=named(one.id), on=tuple([named(id) for id in one.on])) for one in self.hardware]
        )
        bench.motions.extend([_motion(motion, by, named) for motion in self.motions])


def lay_alike(
    bench: Bench, pattern: Pattern, place: Place, lay: Callable[[], None], names: Callable[[Place, Place], Names]
) -> None:
    """Lay something; after one of the same pattern that is laid already it is laid as that one, moved up or down.

    Args:
        pattern: what decides how it is laid: of one kind of thing, on one bench.
        place: where it comes, and what it is called.
        lay: lays it anew.
        names: what of the ids and words of one place is another's.
    """
    known = bench.patterns.get(pattern)
    if isinstance(known, _First) and _has_number(place) and _has_number(known.place):
        first = known.place
        known.laid.again(bench, (0.0, 0.0, place.height - first.height), names(first, place))
        return
    before = Before.of(bench)
    lay()
    bench.patterns[pattern] = _First(place, Laid.since(before, bench))


@dataclass(frozen=True, slots=True)
class Place:
    """Where something is laid.

    Attributes:
        key: of its ids.
        height: world z, mm.
        words: what it is called.
    """

    key: str
    height: float
    words: tuple[str, ...] = ()


class _First(NamedTuple):
    """The first of a pattern: where it was laid, and what."""

    place: Place
    laid: Laid


def _has_number(place: Place) -> bool:
    """Whether a key begins with a number: no other part of an id is taken for it ("drawer.b" for "drawer.back")."""
    return place.key[:1].isdigit()


def _kept(blank: Blank) -> Blank:
    return replace(blank, low=[*blank.low], high=[*blank.high], cuts=[replace(cut) for cut in blank.cuts])


class _Renamed:
    """Puts the names of one place for those of another, each text once."""

    def __init__(self, names: Names) -> None:
        self._names = names
        self._known: dict[str, str] = {"": ""}

    def __call__(self, words: str) -> str:
        found = self._known.get(words)
        if found is None:
            found = words
            for before, after in self._names:
                found = found.replace(before, after)
            self._known[words] = found
        return found


# Thousands of values are copied in each step of a drag: they are made from their parts in order, which takes a third
# of the time of `dataclasses.replace`.


def _copied(like: Blank, named: _Renamed, by: Vec3) -> Blank:
    held = like.fixing
    return Blank(
        named(like.id),
        named(like.name),
        like.member,
        like.stock,
        like.frame.moved(by),
        [*like.low],
        [*like.high],
        like.reference_edge,
        Fixing(
            named(held.to),
            add(held.at, by),
            held.lean,
            named(held.moves_with),
            None if held.dry is None else add(held.dry, by),
        ),
        like.outline,
        [
            Sunk(c.kind, c.face, c.enter, c.floor, c.outline, c.islands, named(c.id), named(c.purpose), c.clipped)
            for c in like.cuts
        ],
        like.shoulders,
        like.layers,
        like,
    )


def _moved(cut: Sunk, by: Vec3, named: _Renamed) -> Sunk:
    """A cut moved in its blank's own frame."""
    first, second, along = _FIXED[cut.face]
    across = by[first], by[second]
    return Sunk(
        cut.kind,
        cut.face,
        cut.enter + by[along],
        cut.floor + by[along],
        cut.outline.moved(*across),
        tuple([island.moved(*across) for island in cut.islands]),
        named(cut.id),
        named(cut.purpose),
        cut.clipped,
    )


def _joint(joint: Joint, by: Vec3, named: _Renamed) -> Joint:
    return Joint(
        named(joint.id),
        joint.kind,
        named(joint.host),
        named(joint.guest),
        tuple([named(id) for id in joint.guest_boards]),
        None if joint.body is None else _shifted(joint.body, by),
        joint.fit,
        joint.relief,
        joint.glued,
        joint.floats,
        joint.gap,
        joint.sizes,
    )


def _motion(motion: Motion, by: Vec3, named: _Renamed) -> Motion:
    return replace(
        motion,
        id=named(motion.id),
        boards=tuple([named(id) for id in motion.boards]),
        point=add(motion.point, by),
        after=tuple([named(id) for id in motion.after]),
    )


def _shifted(body: Body, by: Vec3) -> Body:
    """A body moved: its outline within its plane, its plane only square to itself."""
    frame = body.frame
    first, second, out = frame.local_direction(by)
    outline = body.outline.moved(first, second) if first or second else body.outline
    return Body(frame.moved(scale(frame.w, out)) if out else frame, outline, body.depth)
