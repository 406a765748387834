"""Values of the piece file: what is read, what is refused and with which words."""

import pytest
from pydantic import BaseModel, ValidationError

from shopdraw.measure import Unit
from shopdraw.piece.quantity import (
    Angle,
    Clearance,
    Count,
    Length,
    Percent,
    PositiveLength,
    Ratio,
    SlantAngle,
    YesNo,
    in_unit,
)


class Values(BaseModel):
    length: Length = 0.0
    size: PositiveLength = 1.0
    gap: Clearance = 0.0
    angle: Angle = 0.0
    slant: SlantAngle = 45.0
    ratio: Ratio = 1.0
    percent: Percent = 0.0
    count: Count = 0
    yes: YesNo = False


def read(unit: Unit = Unit.MM, **values: object) -> Values:
    return Values.model_validate(values, context=in_unit(unit))


@pytest.mark.parametrize(
    ("typed", "unit", "mm"),
    [
        (31.5, Unit.INCH, 800.1),  # an inch is 25.4 mm by definition (ISO 80000-3)
        (31.5, Unit.MM, 31.5),
        (18, Unit.MM, 18.0),
        ("31 1/2", Unit.INCH, 800.1),
        ("31 1/2 in", Unit.MM, 800.1),
        ("800 mm", Unit.INCH, 800.0),
    ],
)
def test_a_length_is_read_in_the_pieces_unit(typed: object, unit: Unit, mm: float) -> None:
    assert read(unit, size=typed).size == mm


@pytest.mark.parametrize(("typed", "mm"), [("5 1/2", 139.7), ("5-1/2", 139.7), ("11/4", 69.85), ("1 1/4", 31.75)])
def test_case_36_mixed_fractions_in_the_file(typed: str, mm: float) -> None:
    assert read(Unit.INCH, size=typed).size == mm


def test_case_35_a_decimal_comma_in_the_file() -> None:
    assert read(Unit.INCH, size="18,3 mm").size == 18.3


def test_without_a_unit_a_bare_number_is_in_mm() -> None:
    assert Values(size=800).size == 800.0


@pytest.mark.parametrize("field", ["length", "size", "gap", "angle", "slant", "ratio", "percent", "count"])
@pytest.mark.parametrize(
    "typed", [True, False, float("nan"), float("inf"), -float("inf"), 10**400, 1e9, "1e9", "", "x", None, [1], {}]
)
def test_what_is_no_such_value_is_refused(field: str, typed: object) -> None:
    with pytest.raises(ValidationError, match="expected"):
        read(**{field: typed})


@pytest.mark.parametrize(
    ("field", "typed"),
    [("size", 0), ("size", -1), ("size", "-3 mm"), ("gap", -0.1), ("slant", 0), ("slant", 90), ("slant", "90°"),
     ("ratio", 0), ("percent", 101), ("percent", "-1 %"), ("count", -1), ("count", 2.0), ("yes", 1), ("yes", "true")],
)  # fmt: skip
def test_what_is_out_of_bounds_is_refused(field: str, typed: object) -> None:
    with pytest.raises(ValidationError):
        read(**{field: typed})


@pytest.mark.parametrize(
    ("field", "typed", "value"),
    [("length", "-3 mm", -3.0), ("gap", 0, 0.0), ("angle", "50,5°", 50.5), ("angle", "50° 12'", 50.2),
     ("angle", -10, -10.0), ("slant", 50, 50.0), ("percent", "8,5 %", 8.5), ("ratio", "1,2", 1.2), ("count", 3, 3),
     ("yes", True, True)],
)  # fmt: skip
def test_what_is_read(field: str, typed: object, value: float) -> None:
    assert getattr(read(**{field: typed}), field) == value


def test_a_refusal_gives_the_forms_that_would_be_right() -> None:
    with pytest.raises(ValidationError, match=r"can be read as 1\.234 or as 1234: write 1\.234 or 1234"):
        read(size="1,234")
