"""The words of facts: one string a fact for a whole set, chains adding up to their overalls."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import combinations

from shopdraw.measure import (
    Style,
    Unit,
    decimal_inches,
    exact_mm,
    fractions,
    millimetres,
    steps_in,
    write_angle,
    write_length,
    write_steps,
)
from shopdraw.measure.writing import Form
from shopdraw.sheet.fact import BadFact, Fact
from shopdraw.sheet.nested_chain import Links, Pair, nested_steps

_FINER_MM = ("0.5", "0.1", "0.01")
_HAIR_MM = Fraction(1, 10000)
"""A size so near to a step lies on it."""
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

    Links of a chain are rounded together, so that they add up to their overall as printed, and to what longer rows
    print for a part of the chain. Where the same two features are told a second time, the later fact (by rank, then
    order) takes the first one's words in ( ).

    Raises:
        BadFact: two facts with one id, a chain with two roundings, a note without words, or a fact without a size.
    """
    ordered = tuple(facts)
    bare = _bare_words(ordered, writing)
    told: dict[tuple[Pair, str, float], str] = {}
    words: dict[str, str] = {}
    for fact in sorted(ordered, key=lambda f: (f.reference, f.rank)):
        own, again = bare[fact.id], False
        if fact.kind != "note":
            key = (_pair(fact), _family(fact), round(fact.size(), 6))
            again = key in told
            own = told.setdefault(key, own)
        words[fact.id] = f"({own})" if again or fact.reference else own
    if writing.general.unit is Unit.INCH:
        words = {fact: _ONE.get(said, said) for fact, said in words.items()}
    return words


_ONE = {"1": '1"', "(1)": '(1")'}
"""A lone 1 in a broken dimension line reads as the line itself: the sign for inches sets it off (own choice)."""


def _family(fact: Fact) -> str:
    return "linear" if fact.kind in ("linear", "running", "clearance") else fact.kind


def _pair(fact: Fact) -> Pair:
    return frozenset((fact.a.id, fact.b.id))


def _bare_words(facts: Sequence[Fact], writing: Writing) -> dict[str, str]:
    words: dict[str, str] = {}
    chains: dict[str, list[Fact]] = {}
    for fact in facts:
        if fact.id in words:
            raise BadFact(f"fact {fact.id}: there are two facts with this id; each needs its own")
        words[fact.id] = fact.words
        if fact.chain and fact.kind in ("linear", "clearance") and not fact.words:
            chains.setdefault(fact.chain, []).append(fact)
        elif not fact.words:
            words[fact.id] = _round_words(fact, _figure(fact, writing))
    # What a row tells as one of its links is the row's to round, wherever else it is told.
    links = {(_pair(link), link.rounding) for row in chains.values() for link in row}
    plain = [fact for fact in facts if fact.kind == "linear" and not fact.chain and not fact.words]
    lone = [fact for fact in plain if (_pair(fact), fact.rounding) not in links]
    printed: dict[tuple[Pair, str], str] = {}
    for fact, figure in _chain_figures(chains, lone, writing):
        words[fact.id] = _round_words(fact, figure)
        printed.setdefault((_pair(fact), fact.rounding), figure)
    for fact in plain:
        if (figure := printed.get((_pair(fact), fact.rounding), "")) != "":
            words[fact.id] = _round_words(fact, figure)
    return words


def _chain_figures(
    chains: Mapping[str, list[Fact]], lone: Sequence[Fact], writing: Writing
) -> Iterator[tuple[Fact, str]]:
    """Figures of all links: the rows with the fewest links first, so that finer rows make what they print."""
    styles = {chain: _chain_style(chain, links, writing) for chain, links in chains.items()}
    known: dict[Style, dict[Pair, int]] = {}
    for style in dict.fromkeys(part for whole in styles.values() for part in _parts(whole)):
        known[style] = {_pair(fact): steps_in(fact.size(), style.step_mm) for fact in lone if fact.rounding != "angle"}
    finer: set[Pair] = set()
    for chain in sorted(chains, key=lambda name: len(chains[name])):
        facts = chains[chain]
        links = Links(tuple(fact.size() for fact in facts), tuple((fact.a.id, fact.b.id) for fact in facts))
        figures = [""] * len(facts)
        for style in _parts(styles[chain]):
            steps, used = nested_steps(links, known[style], style.step_mm), style
            exact = _exactly(links, steps, style, writing, known[style], finer)
            if exact is not None:
                steps, used = exact
                finer.update(map(_pair, facts))
            # What lies between two coarser steps can't bind rows that are printed in these.
            known[style] |= {
                _pair(fact): steps_in(count * used.step_mm, style.step_mm)
                for fact, count in zip(facts, steps, strict=True)
                if _on(count * used.step_mm, style.step_mm)
            }
            written = [write_steps(count, used) for count in steps]
            figures = [f"{one} [{two}]" if one else two for one, two in zip(figures, written, strict=True)]
        yield from zip(facts, figures, strict=True)


def _exactly(
    links: Links,
    steps: Sequence[int],
    style: Style,
    writing: Writing,
    known: Mapping[Pair, int],
    finer: Collection[Pair],
) -> tuple[tuple[int, ...], Style] | None:
    """The links in the step of cuts, where all of them lie on it and a coarser one would print some exact size off.

    Two boards of 25/32 in and 21 7/16 between them would make 3/4 + 21 1/2 + 3/4 in sixteenths. The overall, and what
    is printed elsewhere of a stretch, must lie on the coarser step as they are, so that rows still add up.
    """
    fine = writing.cut if writing.cut.form is style.form else None
    if fine is None or fine.step_mm >= style.step_mm:
        return None
    sizes = [exact_mm(size) for size in links.sizes]
    off = any(
        _on(size, style.step_mm) and steps_in(size, style.step_mm) != n for size, n in zip(sizes, steps, strict=True)
    )
    if not off and not any(frozenset(ends) in finer for ends in links.ends):
        return None
    corners = links.corners()
    if corners is None or not all(_on(size, fine.step_mm) for size in sizes):
        return None
    for low, high in combinations(range(len(corners)), 2):
        told = known.get(frozenset((corners[low], corners[high])))
        whole = sum(sizes[low:high], Fraction(0))
        if (told is not None or high - low == len(sizes)) and not _on(whole, style.step_mm):
            return None
    return tuple(steps_in(size, fine.step_mm) for size in sizes), fine


def _on(size: Fraction, step: Fraction) -> bool:
    """Whether a size lies on a step."""
    return abs(steps_in(size, step) * step - size) <= _HAIR_MM


def _parts(style: Style) -> tuple[Style, ...]:
    """A style as its single figures: itself, and the one in brackets."""
    first = replace(style, second=None)
    return (first,) if style.second is None else (first, *_parts(style.second))


def _chain_style(chain: str, links: Sequence[Fact], writing: Writing) -> Style:
    roundings = {link.rounding for link in links}
    if len(roundings) > 1:
        raise BadFact(f"chain {chain}: its links are rounded as {sorted(roundings)}; one chain has one rounding")
    return _style_for(links[0], writing, min(link.size() for link in links))


def _round_words(fact: Fact, figure: str) -> str:
    """The figure with its words; a sign keeps a space before a fraction, which would be read with it otherwise."""
    sign = _SIGNS.get(fact.kind, "")
    before = fact.prefix or (f"{sign} " if sign and "/" in figure else sign)
    return f"{before}{figure}{fact.suffix}"


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
