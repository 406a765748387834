"""All rules, one after the other; worst findings first, then in the order of the rules and of the file."""

from __future__ import annotations

from collections.abc import Sequence

from shopdraw.check.assembly_order import assembly_findings
from shopdraw.check.back import back_findings
from shopdraw.check.compartment import compartment_findings
from shopdraw.check.drawer import drawer_findings
from shopdraw.check.fit import fit_findings
from shopdraw.check.movement import movement_findings
from shopdraw.check.no_effect import no_effect_findings
from shopdraw.check.own_cut import own_cut_findings
from shopdraw.check.own_figures import in_own_figures
from shopdraw.check.revision import revision_findings
from shopdraw.check.sag import sag_findings
from shopdraw.check.screw import screw_findings
from shopdraw.check.seasons import seasons
from shopdraw.check.short_grain import short_grain_findings
from shopdraw.check.silence import silenced
from shopdraw.check.slant import slant_findings
from shopdraw.check.subject import subject_of
from shopdraw.check.support import support_findings
from shopdraw.check.swing import swing_findings
from shopdraw.check.tipping import tipping_findings
from shopdraw.check.use import use_findings
from shopdraw.check.web import web_findings
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Severity

_WORST_FIRST = {severity: place for place, severity in enumerate(Severity)}


def findings(design: Design, assembly: Assembly, more: Sequence[Finding] = ()) -> tuple[Finding, ...]:
    """Everything that a person should know about a piece, worst first.

    Args:
        design: the inputs.
        assembly: what was built from them.
        more: findings of higher layers (cutters), so that a person may silence these, too.
    """
    return worded(design, assembly, (*by_rules(design, assembly), *when_open(design, assembly), *more))


def by_rules(design: Design, assembly: Assembly) -> tuple[Finding, ...]:
    """What each rule but `when_open` finds, in the order of the rules: in mm, none silenced yet."""
    subject = subject_of(design, assembly)
    times = seasons(assembly)
    return (
        *slant_findings(subject),
        *swing_findings(subject, times),
        *fit_findings(subject, times),
        *movement_findings(subject),
        *drawer_findings(subject),
        *compartment_findings(subject),
        *support_findings(subject),
        *use_findings(subject),
        *web_findings(subject),
        *back_findings(subject),
        *own_cut_findings(subject),
        *no_effect_findings(subject),
        *sag_findings(subject),
        *short_grain_findings(subject),
        *screw_findings(subject),
        *assembly_findings(assembly),
        *revision_findings(design, assembly),
    )


def when_open(design: Design, assembly: Assembly) -> tuple[Finding, ...]:
    """How the piece stands with everything open: last of the rules, and the one that weighs every board."""
    return tuple(tipping_findings(subject_of(design, assembly)))


def worded(design: Design, assembly: Assembly, found: Sequence[Finding]) -> tuple[Finding, ...]:
    """Findings as a person reads them: silenced ones marked, in the piece's own figures, worst first."""
    told = in_own_figures(design, silenced(subject_of(design, assembly), found))
    return tuple(sorted(told, key=lambda finding: _WORST_FIRST[finding.severity]))
