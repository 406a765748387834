"""The desk as boards: lengths with their joints, mirrored pairs, chains that close, labels and ids."""

from collections import Counter

import pytest

from shopdraw.build import build
from shopdraw.shape.frame import cross, dot
from shopdraw.wood.interference import joint_closes
from tests.check.desks import design

DESK = build(design())


def _cut(board, guest):
    return next(
        cut for cut, name in zip(board.shape.cuts, board.cut_ids, strict=True) if name == f"dado:{board.id}:{guest}"
    )


def _span_u(cut):
    us = [corner.x for corner in cut.outline.corners]
    return min(us), max(us)


def test_case_06_a_shelf_is_as_long_as_between_the_sides_and_its_two_dados():
    # between 876.3, dados 6.35 deep: 889.0
    piece = design(case={"width": 876.3 + 40.0, "dado_depth": 6.35})
    assembly = build(piece)
    for name in ("shelf.writing", "bottom", "frame.1.front", "frame.1.rear"):
        board = assembly.board(name)
        assert board.length == pytest.approx(889.0)
        assert board.between_shoulders == pytest.approx(876.3)


def test_case_06_a_runner_tells_its_length_and_what_lies_between_its_shoulders():
    runner = DESK.board("frame.1.runner-left")
    assert runner.between_shoulders is not None
    tenons = [dict(j.sizes)["tenon"] for j in DESK.joints if j.kind == "mortise-and-tenon" and j.guest == runner.id]
    assert len(tenons) == 2
    assert runner.length == pytest.approx(runner.between_shoulders + sum(tenons))


def test_case_06_no_guest_is_as_short_as_it_looks():
    for joint in DESK.joints:
        if joint.kind not in ("dado", "mortise-and-tenon") or joint.guest.startswith("drawer"):
            continue
        for name in joint.guest_boards:
            guest = DESK.board(name)
            # a runner stands in its dado with an edge, not an end
            if abs(dot(guest.frame.u, joint.body.frame.w)) > 0.5:
                assert guest.between_shoulders is not None
                assert guest.length > guest.between_shoulders


def test_case_07_a_dado_is_cut_to_the_measured_stock_and_its_upper_face_stays():
    # 0.703 in = 17.856 mm and 0.1 of fit: 17.956
    shelf = {"species": "cherry_black", "thickness": 17.856, "nominal": "3/4"}
    piece = design(stock={"measured": shelf}, use={"shelf": "measured"}, case={"fit": 0.1})
    assembly = build(piece)
    side = assembly.board("side.left")
    low, high = _span_u(_cut(side, "shelf.writing"))
    assert high - low == pytest.approx(17.956)
    foot = side.frame.at[2]
    # the writing surface stays at 740: the dado's lower edge lies the stock's thickness below it
    assert foot + low == pytest.approx(740.0 - 17.856)
    level = next(level for level in assembly.levels if level.id == "writing")
    assert (level.top, level.dado_width) == pytest.approx((740.0, 17.956))
    assert level.dado_bottom == pytest.approx(low)


def test_case_09_the_overall_width_is_held_and_the_top_gives():
    # sides 17.856, let in 9.525: 660.4 - 2 × (17.856 - 9.525) = 643.74
    thin = {"species": "cherry_black", "thickness": 17.856}
    piece = design(
        case={"width": 660.4, "top_joint": "housed", "dado_depth": 9.525}, stock={"primary": thin, "secondary": thin}
    )
    assembly = build(piece)
    assert assembly.board("top").length == pytest.approx(643.74, abs=0.005)
    left, right = assembly.board("side.left"), assembly.board("side.right")
    outer = [board.frame.point((0.0, 0.0, -board.thickness))[0] for board in (left, right)]
    assert outer[1] - outer[0] == pytest.approx(660.4)


def test_the_sides_are_a_mirrored_pair_from_one_description():
    left, right = DESK.board("side.left"), DESK.board("side.right")
    assert left.shape != right.shape
    mirrored = sorted((round(c.x, 6), round(left.width - c.y, 6)) for c in left.shape.outline.corners)
    assert mirrored == sorted((round(c.x, 6), round(c.y, 6)) for c in right.shape.outline.corners)
    assert (left.reference_edge, right.reference_edge) == ("near", "far")


@pytest.mark.parametrize("guest", ["bottom", "frame.1", "frame.2", "frame.3", "shelf.writing"])
def test_case_04_dados_lie_at_one_distance_from_the_foot_on_both_sides(guest):
    left, right = _cut(DESK.board("side.left"), guest), _cut(DESK.board("side.right"), guest)
    assert _span_u(left) == pytest.approx(_span_u(right))
    assert left.face is right.face
    assert left.depth == pytest.approx(right.depth)


def test_case_04_the_backs_rabbet_changes_its_edge():
    def reach(board):
        cut = next(c for c, name in zip(board.shape.cuts, board.cut_ids, strict=True) if name.endswith(":back"))
        vs = [corner.y for corner in cut.outline.corners]
        return min(vs), max(vs)

    left, right = DESK.board("side.left"), DESK.board("side.right")
    assert reach(left) == pytest.approx((0.0, 7.0))
    assert reach(right) == pytest.approx((right.width - 7.0, right.width))


def test_every_place_is_a_proper_rotation():
    for board in DESK.boards:
        u, v, w = board.frame.u, board.frame.v, board.frame.w
        assert cross(u, v) == pytest.approx(w, abs=1e-12)
        assert dot(u, u) == pytest.approx(1.0)
        assert dot(u, v) == pytest.approx(0.0, abs=1e-12)


def test_case_20_openings_frames_and_shelf_add_up_from_floor_to_top():
    # from the floor: plinth and bottom, openings with a frame between two of them, rail and shelf, then rise and top
    rows = sorted((one for one in DESK.openings if one.use == "drawer"), key=lambda one: one.bottom)
    bottom = next(level for level in DESK.levels if level.id == "bottom")
    frames = [level for level in DESK.levels if level.kind == "web-frame"]
    assert rows[0].bottom == pytest.approx(bottom.top)
    for below, above, frame in zip(rows, rows[1:], frames, strict=False):
        assert below.bottom + below.height + frame.thickness == pytest.approx(above.bottom)
        assert frame.top == pytest.approx(above.bottom)
    writing = next(level for level in DESK.levels if level.id == "writing")
    rail = writing.top - (rows[-1].bottom + rows[-1].height)
    total = bottom.top + sum(r.height for r in rows) + sum(f.thickness for f in frames) + rail
    assert total == pytest.approx(740.0)
    highest = max(board.frame.point((c.x, c.y, 0.0))[2] for board in DESK.boards for c in board.shape.outline.corners)
    assert highest == pytest.approx(1040.0)
    lowest = min(board.frame.point((c.x, c.y, 0.0))[2] for board in DESK.boards for c in board.shape.outline.corners)
    assert lowest == pytest.approx(0.0)


def test_labels_and_ids_are_given_once():
    for label, count in Counter(board.label for board in DESK.boards).items():
        assert count == 1, label
    names = [board.id for board in DESK.boards] + [joint.id for joint in DESK.joints]
    assert len(names) == len(set(names))
    for board in DESK.boards:
        assert len(board.cut_ids) == len(board.shape.cuts) == len(board.cut_for)


def test_every_joint_names_boards_that_are_there():
    for joint in DESK.joints:
        assert DESK.has(joint.host)
        assert all(DESK.has(name) for name in joint.guest_boards)
    for motion in DESK.motions:
        assert all(DESK.has(name) for name in motion.boards)


def test_case_61_bars_kickers_and_blocks_are_boards_too():
    members = Counter(board.member for board in DESK.boards)
    assert members["support"] == 2
    assert members["divider"] == 2
    assert members["block"] == 4
    assert members["kicker"] >= 1
    knobs = sum(item.quantity for item in DESK.hardware if item.kind == "knob")
    # one for each support and two for each of four wide drawers
    assert knobs == 2 + 8


def test_the_same_design_makes_the_same_desk():
    again = build(design())
    assert again == DESK
    assert [board.id for board in again.boards] == [board.id for board in DESK.boards]


def test_every_joint_of_the_desk_closes():
    assert [joint.id for joint in DESK.joints if not joint_closes(DESK, joint)] == []


def test_case_04_a_left_and_a_right_hand_are_two_shapes_wherever_they_differ():
    for left, right in (("support.left", "support.right"), ("drawer.2.side-left", "drawer.2.side-right")):
        one, other = DESK.board(left), DESK.board(right)
        assert one.label != other.label
        assert one.length == pytest.approx(other.length)
    assert DESK.board("drawer.2.side-left").shape != DESK.board("drawer.2.side-right").shape
