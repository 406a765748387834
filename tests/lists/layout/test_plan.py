"""From a piece and a shop to layouts: every board once, yard and rack as the shop file has them, money and wood."""

from collections import Counter
from functools import cache
from pathlib import Path

import pytest

from shopdraw.build import build
from shopdraw.drawing.letters import text_width
from shopdraw.drawing.mark import Area, Text
from shopdraw.lists.layout.buying_list import buying_tables
from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.layout_table import layout_tables
from shopdraw.lists.layout.picture import layout_drawings
from shopdraw.lists.layout.plan import StockPlan, plans
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import parse_shop
from shopdraw.wood.assembly import Assembly
from tests.cnc.router_reader import SAMPLES, piece

DESK = Path(__file__).parents[3] / "sample_projects" / "harbour-office-desk.piece"
SHOP = """\
[shop]
units = "inch"
currency = "crowns"
[saw]
kerf = "1/8"
[yard.cherry]
species = "cherry_black"
quarters = "4/4"
widths = [8, 10]
lengths = ["8'", "12'"]
price = 10
per = "board-foot"
[sheet.birch]
species = "plywood_birch"
thickness = "1/4"
width = 60
length = 60
price = 42
[offcut.rack]
species = "cherry_black"
thickness = "7/8"
width = 8
length = 60
defects = [[20, 22]]
"""


@cache
def desk() -> tuple[Assembly, Design]:
    piece = read_piece(DESK)
    return build(piece.design), piece.design


@cache
def planned(shop: str = "") -> tuple[StockPlan, ...]:
    return plans(*desk(), parse_shop(shop).shop if shop else Shop())


@pytest.mark.parametrize("shop", ["", SHOP])
def test_every_layout_of_the_desk_can_be_sawn(shop: str) -> None:
    for plan in planned(shop):
        for layout in plan.layouts:
            assert not faults_of_layout(layout)
            assert layout.cost >= layout.bound - 1e-6


@pytest.mark.parametrize("shop", ["", SHOP])
def test_case_61_each_board_is_laid_out_once_or_glued_up_from_boards_that_are(shop: str) -> None:
    assembly, _ = desk()
    laid = Counter(laid.part for plan in planned(shop) for la in plan.layouts for cut in la.cut_up for laid in cut.laid)
    panels = {panel.label: panel.glue_up for plan in planned(shop) for panel in plan.panels}
    assert set(laid.values()) == {1}
    for board in assembly.boards:
        if board.label in panels:
            staves = panels[board.label].widths
            assert all(f"{board.id} board {number}" in laid for number in range(1, len(staves) + 1))
            assert sum(width.clear for width in staves) >= board.width
        else:
            assert board.id in laid


def test_a_priced_yard_is_counted_in_its_money() -> None:
    """A board of 8 in × 12 ft × 1 in is 8 board feet: 80 crowns; 10 in × 12 ft 100; and so on."""
    cherry = next(plan for plan in planned(SHOP) if plan.name.startswith("Cherry, black, 4/4"))
    prices = {(8, 8): 53.3333, (8, 12): 80.0, (10, 8): 66.6667, (10, 12): 100.0}
    bought = [cut.piece for layout in cherry.layouts for cut in layout.cut_up if not cut.piece.on_hand]
    assert bought
    for one in bought:
        width, feet = round(one.width / 25.4 + 0.24), round(one.length / 304.8)
        assert one.cost == pytest.approx(prices[width, feet], abs=1e-3)
    assert cherry.cost == pytest.approx(sum(one.cost for one in bought))


def test_tables_and_drawings_tell_the_same_boards() -> None:
    _, design = desk()
    made = planned(SHOP)
    shop = parse_shop(SHOP).shop
    tables = {table.title: table for table in layout_tables(made, design, shop)}
    cut_up = sum(len(layout.cut_up) for plan in made for layout in plan.layouts)
    listed = buying_tables(made, *desk(), shop)[0]
    assert sum(int(row[2] or 0) for row in listed.rows if row[1] in ("buy", "use")) == cut_up
    assert sum(int(row[1] or 0) for row in tables["Layouts"].rows) == cut_up
    drawings = layout_drawings(made, design, shop, 0.1)
    assert len(drawings) == cut_up
    words = [mark.words for drawing in drawings for mark in drawing.marks if isinstance(mark, Text)]
    for board in desk()[0].boards:
        assert any(word == board.label or word.startswith(f"{board.label} (") for word in words)
    assert any(isinstance(mark, Area) for drawing in drawings for mark in drawing.marks)


def test_the_order_of_cuts_lists_every_cut() -> None:
    _, design = desk()
    made = planned()
    table = next(t for t in layout_tables(made, design, Shop()) if t.title == "Order of cuts")
    assert len(table.rows) == sum(len(cut.cuts) for plan in made for la in plan.layouts for cut in la.cut_up)


def test_without_a_yard_the_usual_boards_are_named_as_such() -> None:
    assert all("shop file" in plan.supply.source for plan in planned())
    assert any("no yard stock" in plan.supply.source for plan in planned())


@pytest.mark.parametrize("sample", SAMPLES)
def test_no_words_of_a_drawn_layout_stand_on_others(sample: str) -> None:
    """Labels, sizes, cuts' numbers and titles at the scale at which they print, 1:12."""
    design, assembly = piece(sample)
    crowded = told = 0
    for drawing in layout_drawings(plans(assembly, design, Shop()), design, Shop(), 1 / 12):
        boxes = [box_of_text(mark) for mark in drawing.marks if isinstance(mark, Text)]
        told += len(boxes)
        for i, a in enumerate(boxes):
            crowded += any(a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3] for b in boxes[i + 1 :])
    assert told > 20
    assert crowded <= told // 60, "no more than blocks too small for any words"


def box_of_text(text: Text) -> tuple[float, float, float, float]:
    """The letters' own box at 1:12, a tenth less all round."""
    wide, high = text_width(text.words, text.height) * 12, text.height * 12
    left = {"left": 0.0, "middle": -wide / 2, "right": -wide}[text.anchor]
    (x, y), less = text.at, 0.1 * high
    if text.angle_deg:
        return x - high + less, y + left + less, x - less, y + left + wide - less
    return x + left + less, y + less, x + left + wide - less, y + high - less
