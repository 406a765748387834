"""Materials: counted by the yard's rule, waste with its reason, sheets whole, hardware by count."""

from dataclasses import replace

import pytest

from shopdraw.lists.buying import (
    counted_board_feet,
    counted_m3,
    materials,
    materials_of,
    sheet_of,
    with_waste,
)
from shopdraw.piece.design import StockTable
from shopdraw.piece.shop_reading import parse_shop
from shopdraw.wood.board import Board, Stock
from shopdraw.wood.solid import solid
from tests.cnc.router_reader import SAMPLES, piece
from tests.wood.pieces import LYING, board, plain

CHERRY = Stock("primary", "cherry_black", "solid", 19.05, "4/4", 0.0025, 560.0)


def cherry(thickness: float, width: float, length: float, nominal: str) -> Board:
    return board("b", plain(length, width, thickness), LYING, replace(CHERRY, thickness=thickness, nominal=nominal))


def test_case_55_board_feet_are_counted_at_the_rough_thickness() -> None:
    # 0.75 × 5.5 × 30 in from 4/4: 1 × 5.5 × 30 / 144 = 1.146, not 0.859
    assert counted_board_feet([cherry(19.05, 139.7, 762.0, "4/4")]) == pytest.approx(1.1458, abs=1e-4)
    # 8/4 likewise: 2 × 5.5 × 30 / 144
    assert counted_board_feet([cherry(44.45, 139.7, 762.0, "8/4")]) == pytest.approx(2.2917, abs=1e-4)


def test_thin_stock_is_counted_as_an_inch() -> None:
    # lumber below 1 in is tallied as 1 in (goodwoodcorp.com, hardwood terminology)
    assert counted_board_feet([cherry(12.0, 152.4, 2438.4, "3/4")]) == pytest.approx(4.0)


def test_a_board_foot_is_a_twelfth_of_a_cubic_foot() -> None:
    one = cherry(20.0, 304.8, 304.8, "4/4")
    assert counted_board_feet([one]) == pytest.approx(1.0)
    assert counted_m3([one]) == pytest.approx(0.3048**3 / 12)


def test_case_56_waste_is_added_to_what_is_counted() -> None:
    assert with_waste(42.3, 15) == pytest.approx(48.6, abs=0.05)
    assert with_waste(42.3, 30) == pytest.approx(55.0, abs=0.05)


@pytest.mark.parametrize("sample", SAMPLES)
def test_case_56_each_stock_states_its_waste_and_why(sample: str) -> None:
    design, assembly = piece(sample)
    for material in materials_of(assembly, design):
        if material.kind != "hardware":
            assert material.waste_percent == 15.0
            assert "common practice" in material.reason
            assert material.quantity >= with_waste(material.net, material.waste_percent) - 1e-9


def test_waste_and_its_reason_are_the_pieces_own_where_it_says_so() -> None:
    design, assembly = piece("harbour-office-desk")
    table = design.stock["primary"].model_copy(update={"waste": 30.0, "waste_reason": "wide sapwood"})
    changed = design.model_copy(update={"stock": {**design.stock, "primary": table}})
    told = next(m for m in materials_of(assembly, changed) if m.stock == "primary")
    assert (told.waste_percent, told.reason) == (30.0, "wide sapwood")
    assert told.quantity == pytest.approx(told.net * 1.3)


@pytest.mark.parametrize("sample", SAMPLES)
def test_net_volume_equals_the_solids(sample: str) -> None:
    design, assembly = piece(sample)
    for material in materials_of(assembly, design):
        if material.kind != "hardware":
            made = [each for each in assembly.boards if each.stock.name == material.stock]
            solids = sum(solid(each.shape).volume() for each in made) / 1e9
            assert material.finished_m3 == pytest.approx(solids, rel=1e-3)
            assert material.boards == len(made)


@pytest.mark.parametrize("sample", SAMPLES)
def test_what_is_bought_is_never_less_than_what_is_made(sample: str) -> None:
    design, assembly = piece(sample)
    for material in materials_of(assembly, design):
        if material.unit == "m³":
            assert material.quantity > material.finished_m3
        elif material.unit == "board feet":
            assert material.quantity * 0.3048**3 / 12 > material.finished_m3
        elif material.unit == "sheets":
            sheet = sheet_of(next(b.stock for b in assembly.boards if b.stock.name == material.stock), design)
            area = sum(b.length * b.width for b in assembly.boards if b.stock.name == material.stock)
            assert material.quantity * sheet.length_mm * sheet.width_mm >= area
            assert material.quantity == int(material.quantity)


def test_the_shops_own_waste_holds_where_the_piece_states_none() -> None:
    """10 % and 25 % of the shop; the primary stock states 30 in the piece, and that comes first."""
    design, assembly = piece("harbour-office-desk")
    shop = parse_shop("[habit]\nwaste_solid = 10\nwaste_sheet = 25\n").shop
    table = design.stock["primary"].model_copy(update={"waste": 30.0, "waste_reason": "wide sapwood"})
    changed = design.model_copy(update={"stock": {**design.stock, "primary": table}})
    for material in materials_of(assembly, changed, shop):
        if material.kind != "hardware":
            own = material.stock == "primary"
            assert material.waste_percent == (30.0 if own else 10.0 if material.kind == "solid" else 25.0)
            assert material.reason == "wide sapwood" if own else "habit" in material.reason


def test_sheet_is_the_one_that_the_piece_names() -> None:
    design, assembly = piece("harbour-office-desk")
    back = assembly.board("back")
    # 4 × 8 ft is 1219.2 × 2438.4 mm
    assert (sheet_of(back.stock, design).width_mm, sheet_of(back.stock, design).length_mm) == (1219.2, 2438.4)
    table = StockTable(species="plywood_birch", kind="sheet", thickness=6.0, sheet="5x5")
    changed = design.model_copy(update={"stock": {**design.stock, "sheet": table}})
    assert sheet_of(back.stock, changed).length_mm == 1524.0


def test_case_61_hardware_is_counted() -> None:
    design, assembly = piece("harbour-office-desk")
    told: dict[str, float] = {}
    for m in materials_of(assembly, design):
        if m.kind == "hardware":
            told[m.buy.split(",")[0]] = told.get(m.buy.split(",")[0], 0.0) + m.quantity
    assert told["butt hinge"] == design.lid.hinges
    # four drawers with two knobs each, a knob on each lid support
    assert told["knob"] == 4 * 2 + 2
    assert sum(told.values()) == sum(fitting.quantity for fitting in assembly.hardware)


def test_table_says_how_each_line_is_counted() -> None:
    design, assembly = piece("harbour-office-desk")
    table = materials(assembly, design)
    solid_rows = [row for row in table.rows if row[1] == "solid"]
    assert all("1 in" in str(row[8]) and row[3] == "board feet" for row in solid_rows)
    assert all(isinstance(row[2], int) for row in table.rows if row[1] == "hardware")
    assert all("buying list" in str(row[8]) for row in table.rows if row[1] == "sheet")
