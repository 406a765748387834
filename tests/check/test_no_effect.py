"""Every input changes the piece, is refused, or is told to have no effect: tried one by one on several pieces."""

import typing

import pytest
from pydantic import ValidationError

from shopdraw.build import CannotBuild, build
from shopdraw.check.no_effect import RULES, idle, no_effect_findings
from shopdraw.check.subject import subject_of
from shopdraw.check.use import use_findings
from shopdraw.piece.alternatives import contradicted
from shopdraw.piece.design import Design

PIECES = {
    "desk": {
        "piece": {"kind": "slant-desk"}, "case": {"width": 900.0, "height": 1040.0, "depth": 480.0},
        "slant": {"writing_height": 740.0, "top_depth": 230.0}, "compartments": {"bays": 4},
    },
    "full desk": {
        "piece": {"kind": "slant-desk"},
        "case": {"width": 900.0, "height": 1040.0, "depth": 480.0, "dovetails": "clean-sides"},
        "slant": {"writing_height": 740.0, "top_depth": 230.0}, "face": {"kind": "rails"},
        "lid": {"ends": "square", "lock": True, "edge": "ovolo"}, "writing": {"boards": 2},
        "compartments": {"bays": 3, "shelves": (60.0,), "drawers": 1}, "stock": {"lid": {"thickness": 25.0}},
        "use": {"lid": "lid"}, "supports": {"divider": 200.0, "stop": True, "head": True},
        "drawer": {"front": "lipped", "front_joint": "dovetail", "edge": "ovolo", "handle": "pull"},
        "base": {"feet": "ogee", "edge": "ovolo", "mitre": "spline"}, "frame": {"stops": True},
    },
    "chest": {
        "piece": {"kind": "chest"},
        "case": {"width": 900.0, "height": 1000.0, "depth": 480.0, "top_joint": "overhanging", "top_edge": "ogee"},
        "base": {"feet": "own", "foot_path": (0.0, 30.0, 10.0, 40.0, 30.0, 0.0)}, "back": {"kind": "boards"},
        "frame": {"stops": True, "middle_over": 600.0},
    },
    "bookcase": {
        "piece": {"kind": "bookcase"}, "case": {"width": 900.0, "height": 1500.0, "depth": 330.0}, "face": {},
        "level": {"1": {"member": "shelf"}, "2": {"member": "pinned-shelf"}}, "back": {"kind": "frame"},
    },
    "lectern": {
        "piece": {"kind": "lectern"}, "case": {"width": 560.0, "height": 1150.0, "depth": 430.0},
        "slant": {"writing_height": 960.0, "top_depth": 200.0, "seat": "flush"},
    },
    "free": {
        "piece": {"kind": "free"},
        "case": {"width": 900.0, "height": 1000.0, "depth": 480.0, "top_joint": "housed", "dado": "through"},
        "level": {"1": {"member": "web-frame"}, "2": {"member": "shelf"}}, "compartments": {"bays": 3},
        "opening": {"a": {"above": "bottom", "fill": "drawer"}, "b": {"above": "2", "fill": "pigeonhole"}},
    },
}  # fmt: skip
TABLES = tuple(dict.fromkeys(rule.table for rule in RULES))


def other_values(annotation, now):
    """Values of an input's kind that differ from its own, whichever that is."""
    if typing.get_origin(annotation) is typing.Literal:
        return [value for value in typing.get_args(annotation) if value != now]
    if annotation is bool:
        return [value for value in (True, False) if value is not now]
    if annotation is int:
        return [now + 1, now + 2]
    if annotation is float or typing.get_origin(annotation) is typing.Annotated:
        size = now if isinstance(now, float) else 10.0
        return [size * 1.1 + 0.5, size * 0.9, size + 7.0, 2.0, 60.0, 300.0, 2000.0]
    found = []
    for one in typing.get_args(annotation):
        if one is not type(None):
            found += other_values(one, now if now is not None else 3)
    return found


def _judged(design):
    """The piece, and what is said of its use: some inputs bear on that alone."""
    assembly = build(design, rough=True)
    return assembly, tuple(use_findings(subject_of(design, assembly)))


def changes(tables, table, key, now):
    """Whether another value of an input changes the piece, or is refused by a fault."""
    before = _judged(Design.model_validate(tables))
    annotation = type(getattr(Design.model_validate(tables), table)).model_fields[key].annotation
    instead = {one.partition(".")[2] for one in contradicted(f"{table}.{key}")}
    kept = {name: value for name, value in tables.get(table, {}).items() if name not in instead}
    for value in other_values(annotation, now):
        try:
            other = Design.model_validate({**tables, table: {**kept, key: value}})
        except ValidationError:
            continue
        try:
            if _judged(other) != before:
                return True
        except CannotBuild:
            return True
    return False


@pytest.mark.parametrize("name", PIECES)
@pytest.mark.parametrize("table", TABLES)
def test_an_input_that_does_nothing_is_told_and_no_other(name, table):
    tables = PIECES[name]
    design = Design.model_validate(tables)
    subject = subject_of(design, build(design, rough=True))
    given = getattr(design, table)
    if given is None:
        return
    wrong = []
    for key, field in type(given).model_fields.items():
        if key == "each" or "tuple" in str(field.annotation):
            continue
        told = idle(subject, table, key) is not None
        if told == changes(tables, table, key, getattr(given, key)):
            wrong.append((key, "told, and changes the piece" if told else "changes nothing, and isn't told"))
    assert not wrong, f"{name}: {table}: {wrong}"


def test_what_does_nothing_is_a_caution_with_what_would_make_it_count():
    tables = {**PIECES["free"], "base": {"rise": 30.0}, "drawer": {"lip": 6.0}}
    design = Design.model_validate(tables)
    told = {one.where[0]: one.message for one in no_effect_findings(subject_of(design, build(design)))}
    assert told == {
        "drawer.lip": 'drawer.lip has no effect on this piece; it would count with drawer.front = "lipped"',
        "base.rise": 'base.rise has no effect on this piece; it would count with base.feet = "hollow"',
    }


def test_levels_and_openings_that_a_desk_has_no_place_for_are_told():
    tables = {**PIECES["desk"], "level": {"7": {"member": "shelf"}}, "opening": {"bank": {}, "bank.1": {}}}
    design = Design.model_validate(tables)
    told = [one.where[0] for one in no_effect_findings(subject_of(design, build(design)))]
    assert told == ["level.7", "opening.bank.1"]
