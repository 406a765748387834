"""All rules, one after the other; worst findings first, then in the order of the rules and of the file."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from enum import Enum

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
from shopdraw.check.seasons import Season, seasons
from shopdraw.check.short_grain import short_grain_findings
from shopdraw.check.silence import silenced
from shopdraw.check.slant import slant_findings
from shopdraw.check.subject import Subject, subject_of
from shopdraw.check.support import support_findings
from shopdraw.check.swing import swing_findings
from shopdraw.check.tenon import tenon_findings
from shopdraw.check.tipping import tipping_findings
from shopdraw.check.use import use_findings
from shopdraw.check.web import web_findings
from shopdraw.piece.design import Design
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.finding import Finding, Ruled, Severity

Rule = Callable[[Subject, Sequence[Season]], Iterable[Finding]]
_WORST_FIRST = {severity: place for place, severity in enumerate(Severity)}


def _plain(rule: Callable[[Subject], Iterable[Finding]]) -> Rule:
    """A rule that asks for no seasons."""
    return lambda subject, _: rule(subject)


def findings(design: Design, assembly: Assembly, more: Sequence[Finding] = ()) -> tuple[Finding, ...]:
    """Everything that a person should know about a piece, worst first.

    Args:
        design: the inputs.
        assembly: what was built from them.
        more: findings of higher layers (cutters), so that a person may silence these, too.
    """
    return worded(design, assembly, (*together(ruled(design, assembly)), *when_open(design, assembly), *more))


class Part(Enum):
    """A share of the rules, so that two processes can look at a piece at once."""

    SOLIDS = "what meets what: boards at rest, on their way, and put together"
    FIGURES = "sizes, movement and proportions, which need hardly a solid"


def ruled(design: Design, assembly: Assembly, parts: Collection[Part] = tuple(Part)) -> Ruled:
    """What each rule but `when_open` finds: in mm, none silenced yet.

    Args:
        design: the inputs.
        assembly: what was built from them.
        parts: whose rules are asked.
    """
    subject = subject_of(design, assembly)
    times = seasons(assembly) if Part.SOLIDS in parts else ()
    return tuple(tuple(rule(subject, times)) if part in parts else () for part, rule in _RULES)


def together(*shares: Ruled) -> tuple[Finding, ...]:
    """All that several shares found, in the order of the rules."""
    return tuple(finding for found in zip(*shares, strict=True) for some in found for finding in some)


def when_open(design: Design, assembly: Assembly) -> tuple[Finding, ...]:
    """How the piece stands with everything open: last of the rules, and the one that weighs every board."""
    return tuple(tipping_findings(subject_of(design, assembly)))


def worded(design: Design, assembly: Assembly, found: Sequence[Finding]) -> tuple[Finding, ...]:
    """Findings as a person reads them: silenced ones marked, in the piece's own figures, worst first."""
    told = in_own_figures(design, silenced(subject_of(design, assembly), found))
    return tuple(sorted(told, key=lambda finding: _WORST_FIRST[finding.severity]))


_RULES: tuple[tuple[Part, Rule], ...] = (
    (Part.FIGURES, _plain(slant_findings)),
    (Part.SOLIDS, swing_findings),
    (Part.SOLIDS, fit_findings),
    (Part.FIGURES, _plain(movement_findings)),
    (Part.FIGURES, _plain(drawer_findings)),
    (Part.FIGURES, _plain(compartment_findings)),
    (Part.FIGURES, _plain(support_findings)),
    (Part.FIGURES, _plain(use_findings)),
    (Part.FIGURES, _plain(web_findings)),
    (Part.FIGURES, _plain(tenon_findings)),
    (Part.FIGURES, _plain(back_findings)),
    (Part.FIGURES, _plain(own_cut_findings)),
    (Part.FIGURES, _plain(no_effect_findings)),
    (Part.FIGURES, _plain(sag_findings)),
    (Part.FIGURES, _plain(short_grain_findings)),
    (Part.FIGURES, _plain(screw_findings)),
    (Part.SOLIDS, _plain(lambda subject: assembly_findings(subject.assembly))),
    (Part.FIGURES, _plain(lambda subject: revision_findings(subject.design, subject.assembly))),
)
"""Each rule with the part that it belongs to."""
