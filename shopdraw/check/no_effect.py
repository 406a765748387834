"""Inputs that do nothing as the piece stands: each is told, with the choice that would make it count."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from pydantic import BaseModel

from shopdraw.build.case_plan import front_of
from shopdraw.check.subject import Subject
from shopdraw.piece.design import Design, DrawerTable
from shopdraw.wood.finding import Finding, Severity


@dataclass(frozen=True, slots=True)
class Rule:
    """When inputs count.

    Attributes:
        table: of the piece file.
        keys: in it; empty for all but those that a rule of their own names.
        counts: whether they do.
        right: what would make them count.
    """

    table: str
    keys: tuple[str, ...]
    counts: Callable[[Subject], bool]
    right: str


def _kind(*kinds: str) -> Callable[[Subject], bool]:
    return lambda subject: subject.design.piece.kind in kinds


def _has(member: str) -> Callable[[Subject], bool]:
    return lambda subject: any(board.member.startswith(member) for board in subject.assembly.boards)


def _design(holds: Callable[[Design], bool]) -> Callable[[Subject], bool]:
    return lambda subject: holds(subject.design)


def _any_drawer(holds: Callable[[Design, str], bool]) -> Callable[[Subject], bool]:
    return lambda subject: any(holds(subject.design, row.key) for row in subject.plan.rows)


def _choice(design: Design, key: str, name: str) -> object:
    own = getattr(design.drawer.each.get(key, DrawerTable()), name)
    return getattr(design.drawer, name) if own is None else own


def _hinged_below(subject: Subject) -> bool:
    return subject.slanted is not None


def _stayed(subject: Subject) -> bool:
    return subject.slanted is not None and any(one.kind.startswith("lid stay") for one in subject.assembly.hardware)


def _seat(*seats: str) -> Callable[[Subject], bool]:
    return lambda subject: (
        subject.slanted is not None and subject.design.slant is not None and subject.design.slant.seat in seats
    )


def _stops(subject: Subject) -> bool:
    """Whether any dado stops in front: a desk's dividers' do, and other cases' unless they run through."""
    plan = subject.plan
    through = subject.design.case.dado == "through" and not plan.space.uprights
    return subject.desk is not None or (plan.front == 0.0 and not through)


LIPS = ("lip", "lip_left", "lip_right", "lip_top", "lip_bottom")
CAPPED = ("cap", "tongue", "tongue_below", "groove_room", "pegs", "peg")
BARS = ("clearance", "clearance_above", "reach", "layers", "head", "divider", "stop")
LOCKED = ("lock_width", "lock_height", "lock_depth", "keyhole", "bolt")
RULES: tuple[Rule, ...] = (
    Rule("lid", (), _kind("slant-desk", "lectern"), "a piece with a slant"),
    Rule("lid", ("rabbet", "lip", "lap", "rabbet_bevel"), _seat("rabbeted"), 'slant.seat = "rabbeted"'),
    Rule("lid", ("reveal",), _design(lambda d: d.slant is not None and d.slant.seat != "flush"), "a lid not flush"),
    Rule("lid", CAPPED, lambda s: s.slanted is not None and s.design.lid.ends != "none", 'lid.ends = "square"'),
    Rule("lid", ("glue",), _design(lambda d: d.lid.ends == "square"), 'lid.ends = "square"'),
    Rule("lid", LOCKED, lambda s: s.slanted is not None and s.design.lid.lock, "lid.lock = true"),
    Rule("lid", ("edge_size",), _design(lambda d: d.lid.edge != "square"), "lid.edge, a moulding"),
    Rule("lid", ("ledge",), _kind("lectern"), "a lectern"),
    Rule("lid", ("stay_angle", "stay_out", "stay_up"), _stayed, 'supports.kind = "stays"'),
    Rule("lid", ("bevel",), _seat("flush", "on"), 'slant.seat = "flush" or "on"; else lip and reveal give it'),
    Rule("supports", (), _kind("slant-desk"), "a slant-desk"),
    Rule("supports", BARS, _design(lambda d: d.supports.kind == "bars"), 'supports.kind = "bars"'),
    Rule("writing", (), _kind("slant-desk", "lectern"), "a slant-desk"),
    Rule(
        "writing", ("front_depth", "lap", "step", "edge", "edge_size"), _design(lambda d: d.writing.boards == 2),
        "writing.boards = 2",
    ),
    Rule("writing", ("edge_size",), _design(lambda d: d.writing.edge != "square"), "writing.edge, a moulding"),
    Rule("pins", (), lambda s: any(level.kind == "pinned-shelf" for level in s.assembly.levels), "a pinned shelf"),
    Rule("compartments", (), _has("partition"), 'an opening with fill = "pigeonhole", or any table behind a slant'),
    Rule("compartments", ("knob", "reveal"), _has("compartment.drawer"), "compartments.drawers, 1 or more"),
    Rule("compartments", ("point",), _has("pigeonhole"), "compartments.shelves"),
    Rule("compartments", ("bracket_height", "bracket_setback"), _has("bracket"), "compartments.bracket"),
    Rule(
        "compartments", ("bracket_path",), _design(lambda d: _brackets(d, "own")), 'compartments.bracket = "own"'
    ),
    Rule("compartments", ("clearance", "proud"), _hinged_below, "a lid that shuts before them"),
    Rule("frame", (), _has("frame"), "a web frame"),
    Rule(
        "frame", ("middle_over",), lambda s: any(not s.assembly.has(row.level) for row in s.plan.rows),
        "a drawer on a web frame",
    ),
    Rule("frame", ("stops",), lambda s: bool(s.plan.rows), "a drawer"),
    Rule("drawer", (), lambda s: bool(s.plan.rows), 'an opening with fill = "drawer"'),
    Rule("drawer", ("reveal",), _any_drawer(lambda d, key: front_of(d, key) == "inset"), 'drawer.front = "inset"'),
    Rule("drawer", LIPS, _any_drawer(lambda d, key: front_of(d, key) != "inset"), 'drawer.front = "lipped"'),
    Rule("drawer", ("lip_thickness",), _any_drawer(lambda d, key: front_of(d, key) == "lipped"), "a lipped front"),
    Rule(
        "drawer", ("tails", "tail_slope"),
        _any_drawer(lambda d, key: "dovetail" in (_choice(d, key, "front_joint"), _choice(d, key, "back_joint"))
                    or _choice(d, key, "front_joint") == "sliding"),
        'drawer.front_joint = "dovetail"',
    ),
    Rule(
        "drawer", ("edge_size",), _any_drawer(lambda d, key: _choice(d, key, "edge") != "square"),
        "drawer.edge, a moulding",
    ),
    Rule(
        "drawer", ("pull_centres",), _any_drawer(lambda d, key: _choice(d, key, "handle") == "pull"),
        'drawer.handle = "pull"',
    ),
    Rule(
        "drawer", ("knob_diameter", "knob_projection"), _any_drawer(lambda d, key: _choice(d, key, "handle") == "knob"),
        'drawer.handle = "knob"',
    ),
    Rule("face", ("rail", "strip", "guide", "kicker"), _kind("slant-desk"), "a slant-desk"),
    Rule("face", ("stile", "upper", "lower", "overhang", "tenon"), lambda s: s.plan.front > 0.0, "an open case"),
    Rule("case", ("top_rail",), _kind("slant-desk"), "a slant-desk"),
    Rule(
        "case", ("overhang", "top_edge", "top_edge_size"), _design(lambda d: d.case.top_joint == "overhanging"),
        'case.top_joint = "overhanging"',
    ),
    Rule("case", ("top_edge_size",), _design(lambda d: d.case.top_edge != "square"), "case.top_edge, a moulding"),
    Rule(
        "case", ("tails", "tail_slope", "tail_pitch", "dovetails", "dovetail_lap"),
        _design(lambda d: d.case.top_joint == "dovetail"), 'case.top_joint = "dovetail"',
    ),
    Rule(
        "case", ("dovetail_lap",), _design(lambda d: d.case.dovetails != "through"), 'case.dovetails = "clean-sides"'
    ),
    Rule("case", ("dado",), lambda s: s.plan.side_front == 0.0, "no strips or face frame before the sides"),
    Rule("case", ("dado_stop",), _stops, 'case.dado = "stopped", and no face frame'),
    Rule("base", ("foot", "rise"), _design(lambda d: d.base.feet != "plain"), 'base.feet = "hollow"'),
    Rule("base", ("rise",), _design(lambda d: d.base.feet != "own"), 'base.feet = "hollow"'),
    Rule("base", ("foot_path",), _design(lambda d: d.base.feet == "own"), 'base.feet = "own"'),
    Rule("base", ("edge_size",), _design(lambda d: d.base.edge != "square"), "base.edge, a moulding"),
    Rule("back", ("board", "lap", "gap"), _design(lambda d: d.back.kind == "boards"), 'back.kind = "boards"'),
    Rule("back", ("member", "panels"), _design(lambda d: d.back.kind == "frame"), 'back.kind = "frame"'),
)  # fmt: skip
"""What counts only beside another choice; the first rule that doesn't hold is told."""


def _brackets(design: Design, shape: str) -> bool:
    table = design.compartments
    return table.bracket == shape or any(bay.bracket == shape for bay in table.each.values())


def no_effect_findings(subject: Subject) -> Iterator[Finding]:
    """A caution for each input in the file that does nothing as the piece stands, in the order of the inputs."""
    for table, key in typed(subject.design):
        rule = idle(subject, table, key)
        if rule is not None:
            yield Finding(
                "no-effect",
                Severity.CAUTION,
                (f"{table}.{key}",),
                f"{table}.{key} has no effect on this piece; it would count with {rule.right}",
                basis="geometry",
                unit="",
            )
    yield from _idle_spaces(subject)


def typed(design: Design) -> Iterator[tuple[str, str]]:
    """The inputs that the file gives, by table and key."""
    for table in dict.fromkeys(rule.table for rule in RULES):
        given = getattr(design, table)
        if isinstance(given, BaseModel) and table in design.model_fields_set:
            yield from ((table, key) for key in type(given).model_fields if key in given.model_fields_set - {"each"})


def idle(subject: Subject, table: str, key: str) -> Rule | None:
    """The rule by which an input does nothing, or None for one that counts."""
    for rule in RULES:
        if rule.table == table and (not rule.keys or key in rule.keys) and not rule.counts(subject):
            return rule
    return None


def _idle_spaces(subject: Subject) -> Iterator[Finding]:
    """A desk's drawers are one bank over its bottom: other levels and openings of the file have no place in it."""
    if subject.desk is None:
        return
    spare = [f"level.{key}" for key in subject.design.level if key != "bottom"]
    spare += [f"opening.{key}" for key, table in subject.design.opening.items() if key != "bank" and not _known(table)]
    for address in spare:
        yield Finding(
            "no-effect",
            Severity.CAUTION,
            (address,),
            f"{address} has no effect on a slant-desk, whose drawers are one bank over its bottom; it would count in "
            "a free piece",
            basis="geometry",
            unit="",
        )


def _known(table: object) -> bool:
    """Whether an opening is one that compartments read."""
    return getattr(table, "fill", "") == "pigeonhole"
