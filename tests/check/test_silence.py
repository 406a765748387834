"""Silenced findings keep their reason; what points nowhere is a caution."""

from tests.check.desks import checked, design, of_code

WIDE = design()


def test_a_silenced_finding_keeps_its_reason():
    found = of_code(
        checked(design(silence={"a": {"code": "drawer-wide", "reason": "runs on a centre guide"}})), "drawer-wide"
    )
    assert found
    assert {finding.silenced for finding in found} == {"runs on a centre guide"}


def test_a_silence_at_one_place_leaves_the_others_open():
    table = {"a": {"code": "drawer-wide", "where": "drawer.2.side-left", "reason": "seen"}}
    found = of_code(checked(design(silence=table)), "drawer-wide")
    assert [finding.where[0] for finding in found if finding.silenced] == ["drawer.2.side-left"]
    assert len(found) > 1


def test_a_silence_that_finds_nothing_is_a_caution():
    found = of_code(checked(design(silence={"old": {"code": "boards-overlap", "reason": "was so"}})), "points-nowhere")
    assert [finding.where for finding in found] == [("silence.old",)]
    assert "there is no finding boards-overlap to silence" in found[0].message


def test_a_note_on_nothing_and_a_board_that_is_not_there_are_cautions():
    piece = design(
        note={"a": {"on": "side.left", "text": "figured"}, "b": {"on": "side.middle", "text": "?"}},
        board={"drawer.9.front": {"note": "from the offcut"}},
    )
    found = of_code(checked(piece), "points-nowhere")
    assert [finding.where[0] for finding in found] == ["note.b", "board.drawer.9.front"]


def test_findings_come_worst_first():
    ranks = {"must-fix": 0, "caution": 1, "note": 2}
    order = [ranks[finding.severity.value] for finding in checked(design(case={"dado_depth": 12.0}))]
    assert order == sorted(order)
    assert set(order) == {0, 1, 2}


def test_each_finding_says_what_it_rests_on():
    found = checked(design(drawer={"front": "lipped", "lip": 10.0}, supports={"reach": 120.0}))
    assert all(finding.basis and finding.message and finding.where for finding in found)


def test_a_move_and_a_dimension_whose_board_is_gone_are_cautions():
    piece = design(
        move={"a": {"of": "floor/top:upper@front"}, "b": {"of": "floor/drawer.9.front:upper@front"}},
        dimension={
            "c": {"of": "side.left:right/side.right:left", "view": "section.B"},
            "d": {"of": "side.left:right/gallery:left", "view": "front"},
        },
    )
    found = of_code(checked(piece), "points-nowhere")
    assert [finding.where[0] for finding in found] == ["move.b", "dimension.d"]
    assert "drawer.9.front" in found[0].message
