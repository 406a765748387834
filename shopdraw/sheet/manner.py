"""The manner of a set: paper, style, projection and how figures are written, as the piece asks for them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from shopdraw.lists.figures import Figures
from shopdraw.measure import Unit, dual, fractions, millimetres
from shopdraw.piece.design import Design
from shopdraw.sheet.figure import Writing, inch_writing, metric_writing
from shopdraw.sheet.look import Look, look_for
from shopdraw.sheet.own import NOTHING, Own, own_of
from shopdraw.sheet.title_block import TitleFields
from shopdraw.trade.paper import PaperSize, paper, papers_of
from shopdraw.trade.scale import Scale, preferred_scales

PAPER = {("iso", "wall"): "A1", ("asme", "wall"): "ARCH D", ("iso", "bench"): "A3", ("asme", "bench"): "ANSI B"}
"""Paper of a set where the piece names none (own choice)."""


@dataclass(frozen=True, slots=True)
class Manner:
    """How a set is drawn.

    Attributes:
        size: the paper.
        look: heights and distances on it.
        third_angle: else first angle.
        writing: how figures are printed.
        inch: the piece's unit.
        reduction: smallest intended print over the sheet.
        own: what a person moved or added.
    """

    size: PaperSize
    look: Look
    third_angle: bool
    writing: Writing
    inch: bool
    reduction: float
    own: Own = NOTHING

    @property
    def style(self) -> str:
        """One of "iso" and "asme"."""
        return self.look.style

    @property
    def projection(self) -> str:
        """One of "third" and "first", as a title block's field."""
        return "third" if self.third_angle else "first"

    @property
    def figures(self) -> Figures:
        """How schedules and words beside joints write sizes."""
        return Figures(self.writing.cut, self.writing.fit, self.writing.decimal_sign)

    @property
    def scales(self) -> tuple[Scale, ...]:
        """Preferred scales of the piece's unit, largest first."""
        return preferred_scales(Unit.INCH if self.inch else Unit.MM)

    def on(self, size: PaperSize) -> Manner:
        """The same on another paper."""
        return replace(self, size=size, look=_look(self.style, size, self.inch, self.reduction))


def manner_of(design: Design) -> Manner:
    """The manner that a piece asks for, its defaults filled in.

    By default inch pieces are in third angle and ASME style, mm pieces in first angle and ISO style (own choice).

    Raises:
        NotInTable: the piece names a paper that isn't known.
    """
    drawing, inch = design.drawing, design.piece.units == "inch"
    style = drawing.style or ("asme" if inch else "iso")
    size = paper(drawing.paper or PAPER[style, drawing.set])
    reduction = 1.0
    if drawing.smallest_print:
        reduction = min(1.0, paper(drawing.smallest_print).width_mm / size.width_mm)
    third = (drawing.projection or ("third" if inch else "first")) == "third"
    look = _look(style, size, inch, reduction)
    return Manner(size, look, third, _writing(design), inch, reduction, own_of(design))


def larger_papers(size: PaperSize) -> tuple[PaperSize, ...]:
    """The paper and the larger ones of its series, smallest first."""
    area = size.width_mm * size.height_mm
    return (size, *(other for other in papers_of(size.series) if other.width_mm * other.height_mm > area + 1e-6))


def title_fields(design: Design, manner: Manner) -> TitleFields:
    """What the title block of every sheet says of the piece."""
    piece = design.piece
    return TitleFields(
        owner=piece.owner,
        number=piece.number,
        title=piece.title,
        document_type="Working drawing",
        created=piece.drawn_by,
        approved=piece.approved_by,
        language=design.drawing.language,
        revision=piece.revision,
        date=piece.date,
        units="inches" if manner.inch else "mm",
        rounding=rounding_words(manner.writing),
        inch_bar=manner.inch,
    )


def rounding_words(writing: Writing) -> str:
    """Each class's step in words: "general 1/16, cuts 1/32, fits 1/64"."""
    steps = [_step(writing, name) for name in ("general", "cut", "fit")]
    return f"general {steps[0]}, cuts {steps[1]}, fits {steps[2]}"


def _step(writing: Writing, name: str) -> str:
    style = writing.style(name)
    if style.step.numerator == 1 and style.unit is Unit.INCH:
        return str(style.step)
    return f"{float(style.step):g}".replace(".", writing.decimal_sign)


def _look(style: str, size: PaperSize, inch: bool, reduction: float) -> Look:
    return look_for(style, size.group, inch=inch, reduction=reduction)


def _writing(design: Design) -> Writing:
    drawing = design.drawing
    sign = "," if drawing.decimal == "comma" else "."
    if design.piece.units != "inch":
        made = metric_writing(sign)
        second = [fractions(drawing.denominator), fractions(max(32, drawing.denominator)), fractions(64)]
    else:
        made = replace(inch_writing(drawing.denominator), decimal_sign=sign)
        second = [millimetres(step, sign, trailing_zeros=False) for step in ("0.5", "0.1", "0.1")]
    if not drawing.dual:
        return made
    return Writing(
        dual(made.general, second[0]), dual(made.cut, second[1]), dual(made.fit, second[2]), made.decimal_sign
    )
