"""Lengths, fractions and angles: reading what people type, writing what is printed, rounding chains that still add up.

Knows sizes; knows nothing of geometry, wood or files. Millimetres and degrees inside.
"""

from shopdraw.measure.angle import read_angle, write_angle, write_with_complement
from shopdraw.measure.chain import Chain, round_chain
from shopdraw.measure.comma import with_comma, with_point
from shopdraw.measure.error import AngleError, ChainError, LengthError, MeasureError
from shopdraw.measure.length import MM_PER_INCH, Length, Unit, length_of
from shopdraw.measure.reading import read_length
from shopdraw.measure.rounding import Size, exact_mm, round_to_step, steps_in
from shopdraw.measure.writing import (
    Form,
    Style,
    decimal_inches,
    dual,
    fractions,
    millimetres,
    write_chain,
    write_length,
    write_steps,
)

__all__ = [
    "MM_PER_INCH",
    "AngleError",
    "Chain",
    "ChainError",
    "Form",
    "Length",
    "LengthError",
    "MeasureError",
    "Size",
    "Style",
    "Unit",
    "decimal_inches",
    "dual",
    "exact_mm",
    "fractions",
    "length_of",
    "millimetres",
    "read_angle",
    "read_length",
    "round_chain",
    "round_to_step",
    "steps_in",
    "with_comma",
    "with_point",
    "write_angle",
    "write_chain",
    "write_length",
    "write_steps",
    "write_with_complement",
]
