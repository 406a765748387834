"""The joint schedule: every joint once, in the part sheets' own figures, gaps in words."""

import re

from shopdraw.build import build
from shopdraw.lists.figures import Figures
from shopdraw.lists.joint_schedule import COLUMNS, gaps, joint_schedule
from shopdraw.measure import fractions, millimetres
from shopdraw.piece.design import Design
from shopdraw.sheet.cut_note import cut_notes
from shopdraw.sheet.cut_size import cut_sizes
from shopdraw.sheet.figure import metric_writing
from tests.check.desks import design

METRIC = Figures(millimetres("0.1", ".", trailing_zeros=False), millimetres("0.1", ".", trailing_zeros=False), ".")
INCH = Figures(fractions(32), fractions(64), ".")


def rows(assembly, figures=METRIC):
    return [dict(zip(COLUMNS, row, strict=True)) for row in joint_schedule(assembly, figures).rows]


def labels(words):
    return [label for group in words.split("; ") for label in group.split(", ")]


def test_every_joint_is_told_once():
    assembly = build(design())
    pairs = set()
    for row in rows(assembly):
        hosts, guests = row["host"].split("; "), row["guest"].split("; ")
        assert len(hosts) == len(guests), row
        for host_group, guest_group in zip(hosts, guests, strict=True):
            for host in host_group.split(", "):
                for guest in guest_group.split(", "):
                    assert (row["joint"], host, guest) not in pairs, row
                    pairs.add((row["joint"], host, guest))
    told = {
        (joint.kind.replace("-", " "), assembly.board(joint.host).label, assembly.board(guest).label)
        for joint in assembly.joints
        for guest in (joint.guest_boards or (joint.guest,))
    }
    assert told == pairs


def test_a_dados_width_and_fit_are_the_part_sheets_own_strings():
    assembly = build(design())
    side = assembly.board("side.left")
    sizes = cut_sizes(side, assembly, metric_writing("."))
    notes = " ".join(note.words for note in cut_notes(side, sizes))
    fits = " ".join(sizes.fit_lines())
    for row in rows(assembly):
        if row["joint"] == "dado" and "1L" in labels(row["host"]):
            assert f"dado {row['width']} × {row['depth']}" in notes
            assert f"({row['fit']})" in fits


def test_no_gap_is_a_bare_figure():
    for figures in (METRIC, INCH):
        for row in rows(build(design()), figures):
            assert not row["gap"] or re.match(r"gap \S.* at build, \S.* dry, \S.* wet$", row["gap"]), row


def test_a_joint_that_is_glued_does_not_float():
    for row in rows(build(design())):
        assert not ("glued" in row["fixing"] and "floats" in row["fixing"])
        assert row["fixing"]


def test_gaps_change_in_proportion_to_moisture():
    # Wood moves in proportion to the change of its moisture content (Wood Handbook, FPL-GTR-282, 13-5): built at 8 %,
    # 6 % in the driest season and 12 % in the wettest, a gap changes half as much to the one side as to the other.
    assembly = build(design(climate={"build": 8.0, "dry": 6.0, "wet": 12.0}))
    floating = [joint for joint in assembly.joints if joint.gap > 0.0]
    assert floating
    for joint in floating:
        found = dict(gaps(assembly, joint))
        build_gap, dry, wet = found["at build"], found["dry"], found["wet"]
        assert abs((dry - build_gap) * 2 + (wet - build_gap)) < 0.02, joint.id
        assert min(found.values()) > 0.0


def test_a_frames_rear_shoulder_closes_when_dry_and_opens_when_wet():
    assembly = build(design(frame={"fixing": "front-and-rear"}))
    joint = next(j for j in assembly.joints if j.kind == "mortise-and-tenon" and j.floats)
    found = dict(gaps(assembly, joint))
    assert found["dry"] < found["at build"] < found["wet"]


def test_a_gap_finer_than_the_step_is_not_rounded_away():
    assert METRIC.gap(0.03) == "0.03"
    assert METRIC.gap(0.0) == "0"
    assert INCH.gap(0.1) != "0"


def test_half_blind_dovetails_tell_lap_pitch_and_both_half_pins() -> None:
    tables = {
        "piece": {"kind": "chest"},
        "case": {
            "width": 660.0, "height": 300.0, "depth": 480.0, "tail_pitch": 45.0, "dovetails": "clean-sides",
        },
        "opening": {"bank": {"divide": {"keys": ("1",)}}},
        "drawer": {"front_joint": "sliding"},
    }  # fmt: skip
    told = joint_schedule(build(Design.model_validate(tables)), METRIC).rows
    corner = next(" ".join(row) for row in told if row[0] == "dovetail")
    # lap a quarter of 20; tails 15 long: half pins 7 + 3 + 15 / 8 in front, 480 - 11.875 - (10 × 45 - 7.5) behind
    assert "lap 5" in corner
    assert "half pins 11.9 in front, 25.6 at the rear" in corner
    assert any("slope 1:6" in " ".join(row) for row in told if row[0] == "sliding dovetail")
