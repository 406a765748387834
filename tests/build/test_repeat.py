"""What is laid again after another is what it would be if it were laid anew."""

from dataclasses import fields, is_dataclass

import pytest

from shopdraw.build import CannotBuild, build, drawer, repeat, web_frame
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Body
from tests.build.designs import random_design
from tests.build.kinds import random_kind

BANK = {"keys": tuple(map(str, range(1, 13))), "rule": "equal"}
TALL = {
    "format": 1,
    "piece": {"title": "Tall desk for the archive", "kind": "slant-desk"},
    "case": {"width": 950, "height": 2050, "depth": 520},
    "slant": {"writing_height": 1650, "top_depth": 240, "seat": "rabbeted"},
    "opening": {"bank": {"divide": BANK}},
}


def _told(value):
    """All that a value says, in plain words; lengths to a hundredth of a micrometre."""
    if isinstance(value, Body):
        corners = tuple(value.frame.point((x, y, 0.0)) for x, y, _ in value.outline.corners)
        return _told((value.frame.u, value.frame.v, corners, tuple(bulge for _, _, bulge in value.outline.corners)))
    if is_dataclass(value):
        return (type(value).__name__, *(_told(getattr(value, field.name)) for field in fields(value)))
    if isinstance(value, float):
        return round(value, 5) + 0.0
    if isinstance(value, tuple):
        return tuple(map(_told, value))
    if isinstance(value, dict):
        return {key: _told(one) for key, one in value.items()}
    return value if isinstance(value, str | int | bool | None) else str(value)


def _built(design):
    try:
        return build(design)
    except CannotBuild as error:
        return error.faults


def _anew(monkeypatch, design):
    """The piece with everything laid by itself."""
    with monkeypatch.context() as patched:
        for module in (web_frame, drawer):
            patched.setattr(module, "lay_alike", lambda _bench, _pattern, _place, lay, _names: lay())
        return _built(design)


DESIGNS = {
    "tall": lambda: Design.model_validate(TALL),
    **{f"desk {seed}": lambda seed=seed: random_design(seed) for seed in range(40)},
    **{
        f"{kind} {seed}": lambda kind=kind, seed=seed: random_kind(kind, seed)
        for kind in ("chest", "bookcase", "lectern", "free")
        for seed in range(12)
    },
}


@pytest.mark.parametrize("name", DESIGNS)
def test_a_piece_laid_by_copies_is_the_one_laid_anew(monkeypatch, name):
    design = DESIGNS[name]()
    assert _told(_built(design)) == _told(_anew(monkeypatch, design))


def test_like_frames_and_drawers_are_laid_once_and_share_their_shapes(monkeypatch):
    laid = []
    again = repeat.Laid.again
    monkeypatch.setattr(repeat.Laid, "again", lambda self, *of: (laid.append(self), again(self, *of))[1])
    piece = build(Design.model_validate(TALL))
    assert len(laid) >= 2 * (len(BANK["keys"]) - 3)
    runners = [board for board in piece.boards if board.member == "frame.runner" and board.id.endswith("left")]
    assert len({id(board.shape) for board in runners}) < len(runners) / 2


def test_what_is_done_to_one_afterwards_is_not_done_to_its_like():
    """A cut of a person's own goes into one frame's rail alone."""
    hole = {"board": "frame.5.front", "along": 100.0, "across": 20.0, "diameter": 8.0, "reason": "a wire"}
    design = Design.model_validate({**TALL, "cut": {"hole": hole}})
    piece = build(design)
    cuts = {key: len(piece.board(f"frame.{key}.front").shape.cuts) for key in ("4", "5", "6")}
    assert cuts["5"] == cuts["4"] + 1 == cuts["6"] + 1


def test_a_key_that_is_the_beginning_of_a_word_is_never_renamed_within_it(monkeypatch):
    """Key "b" would be found in "drawer.back" and "drawer.bottom"."""
    keys = ("b", "ba", "f", "s", "1", "2")
    design = Design.model_validate({**TALL, "opening": {"bank": {"divide": {**BANK, "keys": keys}}}})
    found = _built(design)
    assert _told(found) == _told(_anew(monkeypatch, design))
    assert {f"drawer.{key}.back" for key in keys} <= {board.id for board in found.boards}
