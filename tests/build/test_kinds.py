"""Random chests, bookcases, lecterns and free cases, judged by their solids in three seasons as the desks are.

What can't be built says where and what would be right; what must be fixed by a rule of the trade isn't judged.
"""

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.check.assembly_order import assembly_findings
from shopdraw.check.gather import findings
from shopdraw.piece.reading import read_piece
from shopdraw.shipped import sample_path
from shopdraw.wood.finding import Severity
from shopdraw.wood.interference import joint_closes, overlaps
from shopdraw.wood.season import in_season
from shopdraw.wood.sweep import swept
from tests.build.kinds import KINDS, random_kind

DESIGNS = 80
IN_ONE_TEST = 10
MOST_THROWN_AWAY = 0.2
"""More than this thrown away, and the test would say little."""
JUDGED_BY_SOLIDS = {"boards-overlap", "joint-open", "motion-blocked", "cant-be-put-together"}
"""Findings of the judges themselves: they never excuse a design."""
OF_ITS_PLACE = {"tipping"}
"""What a bracket on the wall mends and no board: it excuses none either."""


def _judged(kind, seed):
    """Whether a seed makes a valid piece; fails where the solids find a fault."""
    design = random_kind(kind, seed)
    try:
        piece = build(design)
    except CannotBuild as error:
        # a refusal names an input and what would fit
        told = [(fault.address, fault.right) for fault in error.faults]
    else:
        told = []
    if told:
        assert all(address and right for address, right in told), f"{kind} {seed}: {told}"
        return False
    must = [one for one in findings(design, piece) if one.severity is Severity.MUST_FIX]
    if any(one.code not in JUDGED_BY_SOLIDS | OF_ITS_PLACE for one in must):
        return False
    for moisture in (piece.moisture.build, piece.moisture.dry, piece.moisture.wet):
        now = in_season(piece, moisture)
        assert overlaps(now.boards) == (), f"{kind} {seed} at {moisture} %"
        assert swept(now.boards, now.motions) == (), f"{kind} {seed} at {moisture} %"
    assert [joint.id for joint in piece.joints if not joint_closes(piece, joint)] == [], f"{kind} {seed}"
    assert assembly_findings(piece) == (), f"{kind} {seed}: a guest has no way in"
    return True


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("first", range(0, DESIGNS, IN_ONE_TEST))
def test_random_pieces_of_each_kind_fit_in_every_season(kind, first):
    valid = sum(_judged(kind, seed) for seed in range(first, first + IN_ONE_TEST))
    print(f"{kind} {first}: {IN_ONE_TEST - valid} of {IN_ONE_TEST} thrown away")
    assert valid >= IN_ONE_TEST * (1 - MOST_THROWN_AWAY)


@pytest.mark.parametrize(
    "name", ["plan-chest.piece", "logbook-shelves.piece", "tide-lectern.piece", "mail-case.piece"]
)
def test_samples_of_the_other_kinds_have_nothing_that_must_be_fixed(name):
    piece = read_piece(sample_path(name))
    assert piece.cautions == ()
    must = [one.message for one in findings(piece.design, build(piece.design)) if one.severity is Severity.MUST_FIX]
    assert must == []
