"""Details of joints: every kind of joint is shown once, as a true clip of its section, with the joint's own sizes."""

from __future__ import annotations

import math

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.drawing.mark import ArcMark, Line, Meaning, Text
from shopdraw.shape.frame import dot
from shopdraw.sheet.details import draw_detail
from shopdraw.sheet.foot_detail import foot_plane
from shopdraw.sheet.joint_details import KINDS, joint_details
from shopdraw.sheet.joint_planes import joint_planes
from shopdraw.sheet.planes import cutting_planes
from shopdraw.sheet.sections import section_marks
from shopdraw.wood.facet import facets
from tests.sheet.judge import judge, report
from tests.sheet.random_set import random_set_design
from tests.sheet.sample_set import SAMPLES, made, pdf_of

PIECES = tuple(sorted(path.stem for path in SAMPLES.glob("*.piece")))
OTHERS = ("logbook-shelves", "mail-case", "plan-chest", "tide-lectern")
BARE = ("butt",)
"""Boards that only meet, without a cut for each other."""


def joint_of(assembly, detail):
    return next((joint for joint in assembly.joints if joint.id == detail.joint), None)


ROLES = {
    "frame.front": "level", "frame.rear": "level", "frame.runner": "level", "shelf": "level", "shelf.rear": "level",
    "bottom": "level", "rail.face": "level",
}  # fmt: skip
"""What stands in the same dadoes of the sides."""
WITHIN = ("plinth.spline",)
"""What is drawn and told in another joint's detail: the spline in its mitre's."""


def ways_of(assembly, joints):
    """Ways in which boards are joined: the kind of joint, and what enters."""
    members = {board.id: board.member for board in assembly.boards}
    return {
        (joint.kind, ROLES.get(members.get(joint.guest, ""), members.get(joint.guest)))
        for joint in joints
        if joint.kind not in BARE and members.get(joint.guest) not in WITHIN
    }


def without_detail(assembly):
    own = cutting_planes(assembly)
    details = joint_details(assembly, (*own, *joint_planes(assembly, own)))
    shown = {joint for detail in details if (joint := joint_of(assembly, detail)) is not None}
    return ways_of(assembly, assembly.joints) - ways_of(assembly, shown)


@pytest.mark.parametrize("piece", PIECES)
def test_every_way_of_joining_in_a_piece_has_a_detail(piece):
    assert not without_detail(made(piece)[1])


@pytest.mark.parametrize("first", range(0, 120, 20))
def test_every_way_of_joining_in_random_pieces_has_a_detail(first):
    looked_at = 0
    for number in range(first, first + 20):
        try:
            assembly = build(random_set_design(number)[0])
        except CannotBuild:
            continue
        assert not without_detail(assembly), number
        looked_at += 1
    assert looked_at > 10


@pytest.mark.parametrize("number", [43, 139])
def test_drawers_that_are_joined_in_other_ways_than_the_topmost_one_have_their_own_details(number):
    assembly = build(random_set_design(number)[0])
    own = cutting_planes(assembly)
    planes = (*own, *joint_planes(assembly, own))
    kinds = {joint_of(assembly, detail).kind for detail in joint_details(assembly, planes) if detail.name[:2] == "d9"}
    members = {board.id: board.member for board in assembly.boards}
    corners = {j.kind for j in assembly.joints if ".side-" in j.guest and members.get(j.host) == "drawer.front"}
    assert len(corners) > 1
    assert corners <= kinds


def test_no_plane_of_a_piece_runs_inside_a_face_of_a_board_or_of_a_cut():
    looked_at = 0
    for piece in (*PIECES, *range(12)):
        try:
            assembly = made(piece)[1] if isinstance(piece, str) else build(random_set_design(piece)[0])
        except CannotBuild:
            continue
        own = cutting_planes(assembly)
        for plane in (*own, *joint_planes(assembly, own), *foot_plane(assembly)):
            toward = plane.plane.direction.toward
            level = dot(plane.plane.through, toward)
            shown = [b for b in assembly.boards if not plane.shows or b.id in plane.shows]
            if plane.letter in "ADHL":  # between boards, or aslant with the lid
                continue
            for board in shown:
                for face in flat_faces(board, toward):
                    assert abs(face - level) > 1e-3, (piece, plane.letter, board.id)
                    looked_at += 1
    assert looked_at > 1000


def flat_faces(board, toward):
    """Levels of a board's faces across a direction, from its solid's own triangles."""
    held = facets(board.shape)
    for normal, triangle in zip(held.normals, held.triangles, strict=True):
        if abs(abs(dot(board.frame.direction(tuple(normal)), toward)) - 1.0) < 1e-9:
            yield dot(board.frame.point(tuple(held.points[triangle[0]])), toward)


@pytest.mark.parametrize("piece", ["harbour-office-desk", "logbook-shelves", 43, 139])
def test_a_detail_of_dovetails_shows_the_slope_of_their_flanks(piece):
    assembly = made(piece)[1] if isinstance(piece, str) else build(random_set_design(piece)[0])
    own = cutting_planes(assembly)
    looked_at = 0
    for detail in joint_details(assembly, (*own, *joint_planes(assembly, own))):
        joint = joint_of(assembly, detail)
        if "dovetail" not in joint.kind:
            continue
        slope = dict(joint.sizes)["slope"]
        lines = [m for m in draw_detail(assembly, detail, 1.0, "").seen.marks if isinstance(m, Line)]
        legs = [
            [abs(a - b) for a, b in zip(m.start, m.end, strict=True)] for m in lines if m.meaning is Meaning.CUT
        ]
        ratios = [min(sides) / max(sides) for sides in legs if max(sides) > 1.0]
        assert any(ratio == pytest.approx(1.0 / slope, abs=2e-3) for ratio in ratios), (detail.name, joint.id)
        looked_at += 1
    assert looked_at >= 1


@pytest.mark.parametrize("piece", PIECES)
def test_a_kind_of_joint_has_one_detail_and_what_a_piece_lacks_has_none(piece):
    _, assembly, whole_set = made(piece)
    names = [detail.name for detail in whole_set.drawn.views.details]
    assert len(names) == len(set(names))
    members = {board.member for board in assembly.boards}
    for kind in KINDS:
        if not (members & set(kind.hosts) and members & set(kind.guests)):
            assert kind.name not in names, kind.name


@pytest.mark.parametrize("piece", ["harbour-master-desk", "plan-chest", "logbook-shelves"])
def test_a_detail_is_a_true_clip_of_its_section(piece):
    _, assembly, whole_set = made(piece)
    for detail in whole_set.drawn.views.details:
        if detail.of_lid:
            continue
        lines = [mark for mark in section_marks(assembly, detail.plane, 1.0) if isinstance(mark, Line)]
        drawn = [mark for mark in draw_detail(assembly, detail, 1.0, "").seen.marks if isinstance(mark, Line)]
        assert drawn, detail.name
        for line in drawn:
            for point in (line.start, line.end):
                assert math.dist(point, detail.centre) <= detail.radius + 1e-6, detail.name
            middle = ((line.start[0] + line.end[0]) / 2, (line.start[1] + line.end[1]) / 2)
            assert min(off(middle, whole.start, whole.end) for whole in lines) < 1e-6, (detail.name, line)


def off(p, a, b):
    """How far a point lies from a stretch."""
    long2 = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2
    t = min(1.0, max(0.0, ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / long2))
    return math.hypot(p[0] - a[0] - t * (b[0] - a[0]), p[1] - a[1] - t * (b[1] - a[1]))


@pytest.mark.parametrize("piece", PIECES)
def test_case_64_depths_in_details_are_those_that_are_cut(piece):
    _, assembly, whole_set = made(piece)
    told = 0
    for detail in whole_set.drawn.views.details:
        joint = joint_of(assembly, detail)
        if joint is None or joint.body is None:
            continue
        sizes = dict(joint.sizes)
        cut = sizes.get("depth", sizes.get("mortise"))
        if cut is None:
            continue
        for dimension in whole_set.drawn.views.done.views[detail.view].drawing.dimensions:
            if ":depth 0/" in dimension.id:
                told += 1
                assert dimension.measured == pytest.approx(cut, abs=0.02), (detail.name, joint.id)
    assert told >= 1


@pytest.mark.parametrize("piece", PIECES)
def test_case_20_each_detail_tells_its_joint_in_words(piece):
    _, assembly, whole_set = made(piece)
    for detail in whole_set.drawn.views.details:
        joint = joint_of(assembly, detail)
        if joint is None:
            continue
        said = [m.words for m in whole_set.drawn.views.done.views[detail.view].drawing.marks if isinstance(m, Text)]
        wanted = {
            "mortise-and-tenon": "tenon",
            "v-housing": "V-housing",
            "dovetail": "dovetails",
            "butt": assembly.board(joint.guest).name,
        }.get(joint.kind, joint.kind.replace("-", " "))
        assert any(wanted in words for words in said), (detail.name, said)
        if joint.gap > 0.1:
            assert any("gap" in words for words in said), (detail.name, said)


def test_a_moulding_is_drawn_full_size_with_its_radius():
    _, _, whole_set = made("harbour-master-desk")
    view = whole_set.drawn.views.done.views["detail.d14a"]
    assert view.scale == 1.0
    # An ovolo 4 mm each way with steps of a fifth of that leaves a quarter round of 3.2 mm, to 1/32 in: 1/8.
    assert any(isinstance(m, Text) and "ovolo" in m.words and "R 1/8" in m.words for m in view.drawing.marks)
    arcs = [m for m in view.drawing.marks if isinstance(m, ArcMark) and m.meaning is Meaning.CUT]
    assert any(arc.radius == pytest.approx(4.0 - 4.0 / 5, abs=0.01) for arc in arcs)


@pytest.mark.parametrize("piece", ["harbour-office-desk", "harbour-master-desk"])
def test_view_l_tells_the_lids_length_and_width(piece):
    _, assembly, whole_set = made(piece)
    sizes = [d.measured for d in whole_set.drawn.views.done.views["section.L"].drawing.dimensions]
    # Along the slope the lid is measured from its pin, which lies half the joint gap before its wood.
    long = assembly.slant.lid_length_mm - assembly.slant.hinge_gap_mm / 2
    for wanted in (long, assembly.slant.lid_width_mm):
        assert any(size == pytest.approx(wanted, abs=0.01) for size in sizes), (wanted, sizes)


@pytest.mark.parametrize("piece", ["harbour-office-desk", "harbour-master-desk", "chart-room-desk"])
def test_view_l_shows_the_writing_face_with_its_hinge_seats_from_one_end(piece):
    _, assembly, whole_set = made(piece)
    view = whole_set.drawn.views.done.views["section.L"]
    lid = assembly.board("lid")
    ends = [lid.frame.point((u, 0.0, 0.0))[0] for u in (0.0, lid.length)]
    caps = [b for b in assembly.boards if b.member == "lid.cap"]
    for cap in caps:
        ends += [cap.frame.point(corner)[0] for corner in ((0.0, 0.0, 0.0), (0.0, cap.width, 0.0))]
    # Facts of `build`: where each hinge stands, from hardware on the lid; its leaf is as long as the hinge.
    seats = [cut for cut in lid.shape.cuts if cut.kind == "hinge-leaf"]
    lefts = [min(lid.frame.point((u, 0.0, 0.0))[0] for u, _, _ in cut.outline.corners) for cut in seats]
    near = sorted(left - min(ends) for left in lefts)
    told = sorted(d.measured for d in view.drawing.dimensions if "lid:hinge" in d.id)
    assert len(seats) >= 2
    assert told == pytest.approx(near, abs=0.01)


@pytest.mark.parametrize("style", ["iso", "asme"])
@pytest.mark.parametrize("piece", OTHERS)
def test_no_fault_of_paper_on_drawings_of_other_kinds_of_piece(piece, style):
    whole_set = made(piece, style)[2]
    faults = judge(pdf_of(piece, style), whole_set.sheets)
    drawn = {str(2 + n) for n in range(len(whole_set.drawn.pages))}
    ours = {rule: [f for f in told if number_of(f) in drawn] for rule, told in faults.items()}
    assert not any(ours.values()), report(ours)


def number_of(fault):
    return fault.split(":")[0].removeprefix("sheet ")
