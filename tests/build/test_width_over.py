"""Which width is meant: over the case, over its top or over its feet; one of them is given, the others follow."""

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.piece.design import Design
from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import parse_piece
from shopdraw.write.facts import facts

IN = 25.4
TEXT = """\
format = 1
[piece]
kind = "chest"
units = "inch"
[case]
{width}
height = 36
depth = 18
top_joint = "overhanging"
overhang = "19 mm"
[stock.primary]
species = "cherry_black"
thickness = "20 mm"
"""


def _chest(**case):
    sizes = {"height": 900.0, "depth": 460.0, "top_joint": "overhanging", "overhang": 19.0, **case}
    stock = {"primary": {"species": "cherry_black", "thickness": 20.0}, "base": {"thickness": 22.0}}
    return Design.model_validate(
        {"piece": {"kind": "chest"}, "case": sizes, "stock": stock, "use": {"plinth": "base"}}
    )


def test_case_47_36_inches_over_the_top_or_over_the_case():
    # 36 in = 914.4; the top overhangs 19 each side: a case of 914.4 - 38 = 876.4, or of 914.4
    case, top = build(_chest(width=36 * IN)), build(_chest(top_width=36 * IN))
    assert case.width == pytest.approx(914.4)
    assert top.width == pytest.approx(876.4)
    assert case.width - top.width == pytest.approx(38.0)
    assert top.board("top").length == pytest.approx(914.4)


def test_case_47_a_width_over_the_feet():
    # a plinth of 22 is wrapped round the case: 914.4 - 44 = 870.4
    piece = build(_chest(foot_width=36 * IN))
    assert piece.width == pytest.approx(870.4)
    assert piece.board("plinth.front").length == pytest.approx(914.4)


def test_case_47_a_top_between_the_sides_is_as_wide_as_they_are():
    assert build(_chest(top_width=36 * IN, top_joint="dovetail")).width == pytest.approx(914.4)


def test_case_47_the_facts_tell_each_width_and_which_was_given():
    design = _chest(top_width=36 * IN)
    told = facts(design, build(design), ())["piece"]
    assert told["width_mm"] == pytest.approx(876.4)
    assert told["width_over_top_mm"] == pytest.approx(914.4)
    assert told["width_over_feet_mm"] == pytest.approx(876.4 + 44.0)
    assert told["width_input"] == "case.top_width"


@pytest.mark.parametrize(
    ("width", "address", "line"),
    [
        ("width = 36\ntop_width = 37", "case.top_width", 7),
        ("foot_width = 38\nwidth = 36", "case.foot_width", 6),
        ("top_width = 37\nfoot_width = 38", "case.foot_width", 7),
    ],
)
def test_case_47_two_widths_are_refused_at_the_second_one(width, address, line):
    with pytest.raises(PieceError) as refused:
        parse_piece(TEXT.format(width=width))
    (fault,) = refused.value.faults
    assert (fault.address, fault.line) == (address, line)
    assert "one width only" in fault.right


def test_case_47_no_width_is_refused():
    with pytest.raises(PieceError) as refused:
        parse_piece(TEXT.format(width=""))
    assert [fault.address for fault in refused.value.faults] == ["case.width"]


@pytest.mark.parametrize("key", ["top_width", "foot_width"])
def test_case_47_one_width_reads_alone(key):
    assert getattr(parse_piece(TEXT.format(width=f"{key} = 36")).design.case, key) == pytest.approx(914.4)


def test_a_case_too_narrow_is_told_at_the_width_that_is_given():
    # sides of 20: at least 180 over the case, 218 over a top that overhangs 19
    with pytest.raises(CannotBuild) as refused:
        build(_chest(top_width=200.0))
    (fault,) = refused.value.faults
    assert fault.address == "case.top_width"
    assert "218 mm" in fault.right
