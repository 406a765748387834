"""All rules, one after the other; worst findings first, then in the order of the rules and of the file."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from shopdraw.check.alike import told_together
from shopdraw.check.back import back_findings
from shopdraw.check.by_solids import Solid, by_solids
from shopdraw.check.compartment import compartment_findings
from shopdraw.check.drawer import drawer_findings
from shopdraw.check.movement import movement_findings
from shopdraw.check.no_effect import no_effect_findings
from shopdraw.check.own_cut import own_cut_findings
from shopdraw.check.own_figures import in_own_figures
from shopdraw.check.revision import revision_findings
from shopdraw.check.sag import sag_findings
from shopdraw.check.screw import screw_findings
from shopdraw.check.short_grain import short_grain_findings
from shopdraw.check.silence import silenced
from shopdraw.check.slant import slant_findings
from shopdraw.check.subject import Subject, subject_of
from shopdraw.check.support import support_findings
from shopdraw.check.swing import fouls_open_lid
from shopdraw.check.tenon import tenon_findings
from shopdraw.check.tipping import tipping_findings
from shopdraw.check.use import use_findings
from shopdraw.check.web import web_findings
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Ruled, Severity

Rule = Callable[[Subject], Iterable[Finding]]
_WORST_FIRST = {severity: place for place, severity in enumerate(Severity)}


def findings(design: Design, assembly: Assembly, more: Sequence[Finding] = ()) -> tuple[Finding, ...]:
    """Everything that a person should know about a piece, worst first.

    Args:
        design: the inputs.
        assembly: what was built from them.
        more: findings of higher layers (cutters), so that a person may silence these, too.
    """
    found = together(by_solids(assembly), by_figures(design, assembly))
    return worded(design, assembly, (*found, *when_open(design, assembly), *more))


def by_figures(design: Design, assembly: Assembly) -> Ruled:
    """What each rule finds that asks for sizes, movement and proportions and needs hardly a solid: in mm."""
    subject = subject_of(design, assembly)
    return tuple(tuple(rule(subject)) for rule in _RULES if not isinstance(rule, Solid))


def together(solids: Ruled, figures: Ruled) -> tuple[Finding, ...]:
    """All that `by_solids` and `by_figures` found, in the order of the rules."""
    others = iter(figures)
    shares = (solids[rule] if isinstance(rule, Solid) else next(others) for rule in _RULES)
    return tuple(finding for found in shares for finding in found)


def when_open(design: Design, assembly: Assembly) -> tuple[Finding, ...]:
    """How the piece stands with everything open: last of the rules, and the one that weighs every board."""
    return tuple(tipping_findings(subject_of(design, assembly)))


def worded(design: Design, assembly: Assembly, found: Sequence[Finding]) -> tuple[Finding, ...]:
    """Findings as a person reads them: silences marked, alike ones together, in the piece's figures; worst first."""
    told = told_together(assembly, in_own_figures(design, silenced(subject_of(design, assembly), found)))
    return tuple(sorted(told, key=lambda finding: _WORST_FIRST[finding.severity]))


_RULES: tuple[Rule | Solid, ...] = (
    slant_findings,
    Solid.MOTION,
    fouls_open_lid,
    Solid.FIT,
    movement_findings,
    drawer_findings,
    compartment_findings,
    support_findings,
    use_findings,
    web_findings,
    tenon_findings,
    back_findings,
    own_cut_findings,
    no_effect_findings,
    sag_findings,
    short_grain_findings,
    screw_findings,
    Solid.ORDER,
    lambda subject: revision_findings(subject.design, subject.assembly),
)
