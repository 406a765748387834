"""Random desks in three seasons, judged by their solids: no shared wood, free ways, joints that close, volumes.

A design counts when no rule says that it must be fixed; the rules that rest on these very judges don't decide that.
"""


import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.check.assembly_order import assembly_findings
from shopdraw.check.compartment import compartment_findings
from shopdraw.check.drawer import drawer_findings
from shopdraw.check.movement import movement_findings
from shopdraw.check.slant import slant_findings
from shopdraw.check.subject import subject_of
from shopdraw.check.support import support_findings
from shopdraw.check.swing import fouls_open_lid
from shopdraw.check.web import web_findings
from shopdraw.wood.finding import Severity
from shopdraw.wood.interference import closing, overlaps
from shopdraw.wood.season import in_season
from shopdraw.wood.seasoned import seasoned_wood
from shopdraw.wood.solid import placed_solid, solid_volume
from shopdraw.wood.sweep import swept
from shopdraw.wood.volume import volume_mm3
from tests.build.designs import random_design
from tests.wood.pieces import arcs_mm2

DESIGNS = 200
IN_ONE_TEST = 10
MADE_ANEW = 5
MOST_THROWN_AWAY = 0.05
"""More than this thrown away, and the test would say little."""
CHORD_MM = 0.002
"""Chords of a solid lie within this of their arcs."""


def _valid(seed):
    """The assembly of a seed, or None where it can't be built or a rule says that it must be fixed."""
    design = random_design(seed)
    refused = None
    try:
        assembly = build(design)
    except CannotBuild as error:
        refused = error
    if refused is not None:
        assert all(fault.address and fault.right for fault in refused.faults), f"seed {seed}: {refused}"
        return None
    subject = subject_of(design, assembly)
    rules = (
        slant_findings,
        fouls_open_lid,
        movement_findings,
        drawer_findings,
        compartment_findings,
        support_findings,
        web_findings,
    )
    bad = [one for rule in rules for one in rule(subject) if one.severity is Severity.MUST_FIX]
    return None if bad else assembly


@pytest.mark.parametrize("first", range(0, DESIGNS, IN_ONE_TEST))
def test_random_desks_go_together_and_open_in_every_season(first, record_property):
    thrown = 0
    for seed in range(first, first + IN_ONE_TEST):
        assembly = _valid(seed)
        if assembly is None:
            thrown += 1
            continue
        m = assembly.moisture
        for when, moisture in (("build", m.build), ("dry", m.dry), ("wet", m.wet)):
            now = in_season(assembly, moisture)
            # solids stretched from those at build are quicker; some seeds are judged by solids made anew
            wood = placed_solid if seed % MADE_ANEW == 0 else seasoned_wood(assembly)
            assert overlaps(now.boards, wood=wood) == (), f"seed {seed}, {when}"
            assert swept(now.boards, now.motions, wood=wood) == (), f"seed {seed}, {when}"
        for joint in assembly.joints:
            found = closing(assembly, joint)
            assert found is None or found.closes(), f"seed {seed}: {joint.id}: {found}"
        assert assembly_findings(assembly) == (), f"seed {seed}: a guest has no way in"
        for board in assembly.boards:
            allowed = 1.0 + 2 / 3 * CHORD_MM * arcs_mm2(board.shape)
            off = abs(volume_mm3(board.shape) - solid_volume(board.shape))
            assert off <= allowed, f"seed {seed}: {board.id} is off by {off:.3f} mm³"
    record_property("thrown_away", thrown)
    print(f"seeds {first} to {first + IN_ONE_TEST - 1}: {thrown} thrown away")
    assert thrown < IN_ONE_TEST


def test_few_random_desks_are_thrown_away():
    thrown = [seed for seed in range(DESIGNS) if _valid(seed) is None]
    print(f"thrown away: {len(thrown)} of {DESIGNS}: {thrown}")
    assert len(thrown) <= MOST_THROWN_AWAY * DESIGNS


def test_random_desks_cover_the_space_of_inputs():
    designs = [random_design(seed) for seed in range(DESIGNS)]
    assert {d.slant.seat for d in designs} == {"on", "rabbeted", "flush"}
    assert {d.opening["bank"].divide.rule for d in designs} == {"equal", "given", "step", "ratio"}
    assert {len(d.opening["bank"].divide.keys) for d in designs} == {1, 2, 3, 4, 5, 6}
    assert {d.case.top_joint for d in designs} == {"dovetail", "housed"}
    assert {d.case.dado for d in designs} == {"stopped", "through"}
    assert {d.drawer.front for d in designs} == {"inset", "lipped", "overlay"}
    assert {d.drawer.front_joint for d in designs} == {"tongue", "rabbet", "dovetail", "sliding"}
    assert {d.drawer.back_joint for d in designs} == {"dado", "rabbet", "dovetail"}
    assert {d.case.dovetails for d in designs} == {"through", "clean-sides", "clean-top"}
    assert {d.frame.fixing for d in designs} == {"front", "front-and-rear"}
    assert {d.slant.angle is None for d in designs} == {True, False}
    assert min(d.case.width for d in designs) < 480 < 1150 < max(d.case.width for d in designs)
    assert len({d.climate for d in designs}) == 4
    assert {d.writing.boards for d in designs} == {1, 2}
    assert {"compartments" in d.model_fields_set for d in designs} == {True, False}
    assert {d.compartments.bays for d in designs} >= {1, 2, 3, 4, 5, 6}
    assert len({d.stock["primary"].species for d in designs}) >= 7


def test_random_desks_cover_plinths_backs_and_handles():
    designs = [random_design(seed) for seed in range(DESIGNS)]
    assert {d.base.feet for d in designs} == {"plain", "hollow", "ogee", "own"}
    assert {d.base.mitre for d in designs} == {"plain", "spline", "biscuits"}
    assert len({d.base.edge for d in designs}) == 7
    assert {d.base.glue_blocks for d in designs} == {True, False}
    assert {d.back.kind for d in designs} == {"panel", "boards", "frame"}
    assert {d.drawer.handle for d in designs} == {"knob", "pull"}


def test_a_seed_stands_for_one_design():
    assert random_design(7) == random_design(7)
    assert random_design(7) != random_design(8)


def test_random_desks_cover_faces_frames_supports_and_lids():
    designs = [random_design(seed) for seed in range(DESIGNS)]
    assert {d.lid.ends for d in designs} == {"none", "square", "mitred"}
    assert {d.lid.glue for d in designs} == {"hinge", "middle"}
    assert {d.lid.lock for d in designs} == {True, False}
    assert len({d.lid.edge for d in designs}) == 7
    faces = [d.face for d in designs if d.face is not None]
    assert {face.strip in (None, 0.0) for face in faces} == {True, False}
    assert len(faces) > DESIGNS / 4
    assert {d.frame.dust_panels for d in designs} == {True, False}
    assert {d.frame.stops for d in designs} == {True, False}
    assert {d.supports.kind for d in designs} == {"bars", "stays"}
    assert {(d.supports.head, d.supports.stop) for d in designs} == {
        (a, b) for a in (True, False) for b in (True, False)
    }
