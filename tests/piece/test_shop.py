"""The shop file: what it says, what it is refused for, and which one counts."""

from pathlib import Path

import pytest

from shopdraw.piece.design import CaseTable, Design, PieceTable
from shopdraw.piece.fault import PieceError
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import own_shop_path, parse_shop, read_shop, shop_for

SHOP = """\
format = 1

[shop]
name = "Boathouse"
units = "inch"
currency = "crowns"
phone = "none"

[saw]
kerf = "1/8"

[cutter.quarter]
diameter = "6.32 mm"   # as measured
cutting_length = 1

[yard.cherry]
species = "cherry_black"
quarters = "4/4"
widths = [6, "7 1/2"]
lengths = ["8'", "10'"]
price = 9.5
per = "board-foot"

[offcut.short]
thickness = "0.8"
width = 5
length = 40
defects = [[10, "12 1/2"]]

[printer.office]
feed = "199.2 mm"
across = "200.1 mm"
"""


def only_line(text: str) -> str:
    with pytest.raises(PieceError) as error:
        parse_shop(text, "shop.toml")
    assert len(error.value.lines()) == 1, error.value.lines()
    return error.value.lines()[0]


def design(shop: str = "") -> Design:
    return Design(piece=PieceTable(shop=shop), case=CaseTable(width=800, height=1000, depth=480))


def test_bare_numbers_are_in_the_shops_unit_and_typed_ones_in_their_own() -> None:
    shop = parse_shop(SHOP).shop
    assert shop.saw.kerf == 3.175
    assert shop.cutter["quarter"].diameter == 6.32
    assert shop.cutter["quarter"].cutting_length == 25.4
    assert shop.yard["cherry"].widths == pytest.approx((152.4, 190.5))
    assert shop.yard["cherry"].lengths == pytest.approx((2438.4, 3048.0))
    assert shop.offcut["short"].defects == ((254.0, 317.5),)


def test_without_a_file_the_stated_defaults_hold() -> None:
    saw = Shop().saw
    assert (saw.kerf, saw.end_trim, saw.edge_trim, saw.edge_loss) == (3.2, 25.0, 5.0, 3.0)


def test_case_33_an_unknown_key_is_a_caution_and_stays_in_the_text() -> None:
    read = parse_shop(SHOP)
    (caution,) = read.cautions
    assert (caution.address, caution.line) == ("shop.phone", 7)
    assert "no key of a shop file" in caution.message
    assert read.text == SHOP


def test_case_24_a_printers_correction_follows_from_what_a_line_measured() -> None:
    printer = parse_shop(SHOP).shop.printer["office"]
    assert printer.along_feed == pytest.approx(1.00402, abs=5e-6)
    assert printer.across_feed == pytest.approx(0.99950, abs=5e-6)


def test_case_24_more_than_two_percent_is_refused() -> None:
    line = only_line('[printer.office]\nfeed = "195 mm"\n')
    assert line.startswith("shop.toml:2: printer.office.feed: found ")
    assert "fitting to the page is on" in line


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        ("[saw]\nkerf = -1\n", 2, "0 or more"),
        ("[cutter.a]\nkind = 'strait'\ndiameter = 6\n", 2, '"straight"'),
        ("[cutter.a]\nkind = 'straight'\n", 1, "diameter"),
        ("[yard.a]\nwidths = [150]\nlengths = [2400]\n", 1, "quarters (rough) or thickness"),
        ("[sheet.a]\nwidth = 1220\nlength = 2440\nprice = -3\n", 4, "a price, 0 or more"),
        ("format = 2\n", 1, "expected format = 1"),
        ("[saw\n", 1, "expected TOML"),
        ("", 0, "expected a shop file"),
    ],
)
def test_a_fault_tells_its_line_and_what_would_be_right(text: str, line: int, words: str) -> None:
    told = only_line(text)
    assert told.startswith(f"shop.toml:{line}: " if line else "shop.toml: ")
    assert words in told


def test_the_given_file_counts_before_the_named_one_and_that_before_the_users_own(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "config"))
    monkeypatch.setattr("sys.platform", "linux")
    given, named, own = tmp_path / "given.toml", tmp_path / "named.toml", tmp_path / "config/shopdraw/shop.toml"
    own.parent.mkdir(parents=True)
    assert shop_for(tmp_path / "a.piece", design()).path is None
    for file, kerf in ((given, 1), (named, 2), (own, 3)):
        file.write_text(f"[saw]\nkerf = {kerf}\n", encoding="utf-8")
    piece = tmp_path / "a.piece"
    assert shop_for(piece, design("named.toml"), given).shop.saw.kerf == 1
    assert shop_for(piece, design("named.toml")).shop.saw.kerf == 2
    assert shop_for(piece, design()).shop.saw.kerf == 3


def test_a_named_file_that_is_missing_is_refused(tmp_path: Path) -> None:
    with pytest.raises(PieceError, match="can't be read"):
        shop_for(tmp_path / "a.piece", design("gone.toml"))
    with pytest.raises(PieceError, match="a folder"):
        read_shop(tmp_path)


def test_the_users_own_file_lies_where_the_system_keeps_settings() -> None:
    assert own_shop_path({"HOME": "/home/a"}, "linux") == Path("/home/a/.config/shopdraw/shop.toml")
    assert own_shop_path({"HOME": "/home/a", "XDG_CONFIG_HOME": "/c"}, "linux") == Path("/c/shopdraw/shop.toml")
    assert own_shop_path({"HOME": "/home/a", "XDG_CONFIG_HOME": "c"}, "linux") == Path(
        "/home/a/.config/shopdraw/shop.toml"
    )
    assert own_shop_path({}, "linux") is None
    assert own_shop_path({"APPDATA": "/r"}, "win32") == Path("/r/shopdraw/shop.toml")
