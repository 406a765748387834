"""The words of facts: one string a fact for a whole set, chains adding up to their overalls."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from shopdraw.measure import Style, decimal_inches, fractions, millimetres, write_angle, write_chain, write_length
from shopdraw.measure.writing import Form
from shopdraw.sheet.fact import BadFact, Fact

_FINER_MM = ("0.5", "0.1", "0.05", "0.01")
_SIGNS = {"radius": "R", "diameter": "Ø"}


@dataclass(frozen=True, slots=True)
class Writing:
    """How each rounding class is printed.

    Attributes:
        general: sizes that a person reads off a rule.
        cut: cuts and joints.
        fit: fits and clearances.
        decimal_sign: of angles.
    """

    general: Style
    cut: Style
    fit: Style
    decimal_sign: str = "."

    def style(self, rounding: str) -> Style:
        """The style of a rounding class."""
        return {"general": self.general, "cut": self.cut, "fit": self.fit}[rounding]


def metric_writing(decimal_sign: str = ",", general: str = "0.5") -> Writing:
    """Millimetres: general to 0.5, cuts and fits to 0.1. Source of the comma: ISO 129-1."""
    fine = millimetres("0.1", decimal_sign, trailing_zeros=False)
    return Writing(millimetres(general, decimal_sign, trailing_zeros=False), fine, fine, decimal_sign)


def inch_writing(general: int = 16) -> Writing:
    """Inches: general to 1/16, cuts to 1/32, fits to 1/64 (common practice)."""
    return Writing(fractions(general), fractions(max(32, general)), fractions(64))


def write_figures(facts: Iterable[Fact], writing: Writing) -> dict[str, str]:
    """The words of each fact, by its id.

    Links of a chain are rounded together, so that they add up to their overall as printed. Where the same two features
    are told a second time, the later fact (by rank, then order) takes the first one's words in ( ).

    Raises:
        BadFact: two facts with one id, a chain with two roundings, or a fact without a size.
    """
    ordered = tuple(facts)
    bare = _bare_words(ordered, writing)
    told: dict[tuple[frozenset[str], str, float], str] = {}
    words: dict[str, str] = {}
    for fact in sorted(ordered, key=lambda f: (f.reference, f.rank)):
        own = bare[fact.id]
        if fact.kind != "note":
            key = (frozenset((fact.a.id, fact.b.id)), _family(fact), round(fact.size(), 6))
            again = key in told
            own = told.setdefault(key, own)
        else:
            again = False
        words[fact.id] = f"({own})" if again or fact.reference else own
    return words


def _family(fact: Fact) -> str:
    return "linear" if fact.kind in ("linear", "running", "clearance") else fact.kind


def _bare_words(facts: Sequence[Fact], writing: Writing) -> dict[str, str]:
    words: dict[str, str] = {}
    chains: dict[str, list[Fact]] = {}
    for fact in facts:
        if fact.id in words:
            raise BadFact(f"fact {fact.id}: there are two facts with this id; each needs its own")
        words[fact.id] = fact.words or ""
        if fact.chain and fact.kind in ("linear", "clearance") and not fact.words:
            chains.setdefault(fact.chain, []).append(fact)
        elif not fact.words:
            words[fact.id] = _round_words(fact, _figure(fact, writing))
    for chain, links in chains.items():
        roundings = {link.rounding for link in links}
        if len(roundings) > 1:
            raise BadFact(f"chain {chain}: its links are rounded as {sorted(roundings)}; one chain has one rounding")
        style = _style_for(links[0], writing, min(link.size() for link in links))
        printed, _ = write_chain([link.size() for link in links], style)
        for link, figure in zip(links, printed, strict=True):
            words[link.id] = _round_words(link, figure)
    return words


def _round_words(fact: Fact, figure: str) -> str:
    return f"{fact.prefix or _SIGNS.get(fact.kind, '')}{figure}{fact.suffix}"


def _figure(fact: Fact, writing: Writing) -> str:
    if fact.kind == "note":
        raise BadFact(f"fact {fact.id}: a note needs words")
    if fact.kind == "angular" or fact.rounding == "angle":
        return write_angle(fact.size(), writing.decimal_sign)
    return write_length(fact.size(), _style_for(fact, writing, fact.size()))


def _style_for(fact: Fact, writing: Writing, least: float) -> Style:
    """The style of the fact's class; a fit that the step would eat is printed finer."""
    style = writing.style("general" if fact.rounding == "angle" else fact.rounding)
    while fact.rounding == "fit" and 0.0 < least <= float(style.step_mm):
        finer = _finer(style)
        if finer is None:
            break
        style = finer
    return style


def _finer(style: Style) -> Style | None:
    if style.form is Form.MM:
        steps = [step for step in _FINER_MM if float(step) < float(style.step) - 1e-12]
        made = millimetres(steps[0], style.decimal_sign, trailing_zeros=style.trailing_zeros) if steps else None
    elif style.form is Form.FRACTION:
        made = fractions(style.step.denominator * 2) if style.step.denominator < 128 else None
    else:
        places = len(str(style.step.denominator)) - 1
        made = decimal_inches(places + 1) if places < 4 else None
    return replace(made, second=style.second) if made is not None else None
