"""The typed contents of a shop file: what belongs to a shop and not to a piece, in mm, with a stated default for each.

The file bears on findings, lists, layouts and router files, never on a board's shape. Reading it is `shop_reading`'s
affair.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import AfterValidator, Field, ValidationInfo, field_validator, model_validator

from shopdraw.piece.design import Table
from shopdraw.piece.quantity import Angle, Clearance, Count, Length, Percent, PositiveLength, Ratio
from shopdraw.trade.paper import paper
from shopdraw.trade.table import NotInTable

LARGEST_CORRECTION = 0.02
"""A printer that is further off isn't out of square: it was told to fit the page."""

Per = Literal["each", "metre", "foot", "board-foot", "cubic-metre"]
Span = tuple[Length, Length]


def _money(value: float) -> float:
    if not 0.0 <= value <= 1e6:
        raise ValueError("expected a price, 0 or more")
    return value


Price = Annotated[float, AfterValidator(_money)]


class ShopTable(Table):
    """[shop]: whose it is; the unit of bare numbers in this file; the money that prices are in."""

    name: str = Field("", description="of the shop")
    units: Literal["mm", "inch"] = Field("mm", description="of bare numbers in this file")
    currency: str = Field("", description="that prices are in: EUR, $")


class SawTable(Table):
    """[saw]: what sawing costs in wood. Defaults are common practice."""

    kerf: Clearance = Field(3.2, description="what the blade takes; measured in a cut, not read off the blade")
    end_trim: Clearance = Field(25.0, description="cut off each end of a board: checks, paint, out of square")
    edge_trim: Clearance = Field(5.0, description="cut off each edge of a sheet before the first part")
    edge_loss: Clearance = Field(3.0, description="lost on each edge of a board that is jointed")


class CutterTable(Table):
    """[cutter.ID]: a router cutter or a drill."""

    kind: Literal["straight", "ball", "vee", "drill"] = Field("straight", description="what its end is like")
    diameter: PositiveLength = Field(description="as measured")
    cutting_length: PositiveLength | None = Field(None, description="how deep its edges cut")
    plunge: bool = Field(True, description="it may enter straight down")
    angle: Angle | None = Field(None, description="of a vee's point, degrees; default 90")


class RouterTable(Table):
    """[router]: a hand-held router and what its files for a machine shop should look like."""

    base: PositiveLength | None = Field(None, description="from the cutter's middle to the base's guiding edge")
    dxf: Literal["R2010", "R12"] = Field("R2010", description="version of DXF that the machine shop reads")
    allowance: Clearance = Field(0.5, description="left on an outline for the finishing pass")
    margin: Clearance = Field(15.0, description="from a sheet's edges to the first part of a nest")
    keep_out: tuple[Span, ...] = Field(
        (), description="strips across a nested sheet for clamps and screws: from and to, from one end"
    )
    marks: bool = Field(False, description="score the layout of second settings instead of only noting it")
    outline_tolerance: Clearance = Field(0.25, description="asked for on outlines, more or less")
    width_tolerance: Clearance = Field(0.1, description="asked for on widths of pockets, more only")
    depth_tolerance: Clearance = Field(0.2, description="asked for on depths of pockets, more only")
    hole_tolerance: Clearance = Field(0.1, description="asked for on places of holes, more or less")
    narrow: Clearance = Field(75.0, description="narrower parts need tabs, a skin or other hold-down")
    slender: Ratio = Field(12.0, description="so do parts longer than so many widths")
    small: Length = Field(141.4, ge=0, description="and parts smaller than a square of this side")


class CollarTable(Table):
    """[collar.ID]: a guide collar for template work."""

    outside: PositiveLength = Field(description="diameter that runs along the template")
    height: PositiveLength | None = Field(None, description="how far it stands out below the base")


class YardTable(Table):
    """[yard.ID]: boards that the yard sells, rough by quarters or dressed; each width in each length."""

    species: str = Field("", description="by its key in the trade tables; any where nothing is said")
    quarters: str = Field("", description="rough thickness as sold: 4/4")
    thickness: PositiveLength | None = Field(None, description="of a dressed board, as measured")
    nominal: str = Field("", description='the trade\'s name for a dressed board: "1x8"')
    widths: tuple[PositiveLength, ...] = Field(min_length=1, description="that it has")
    lengths: tuple[PositiveLength, ...] = Field(min_length=1, description="that it has")
    price: Price | None = Field(
        None, description="of one, in the shop's money; where it is given the cheapest layout is sought"
    )
    per: Per = Field("each", description="what the price is for")

    @model_validator(mode="after")
    def _one_thickness(self) -> YardTable:
        if bool(self.quarters) == (self.thickness is not None):
            raise ValueError("expected either quarters (rough) or thickness (dressed)")
        return self


class SheetTable(Table):
    """[sheet.ID]: sheets that the yard sells; grain runs along the length."""

    species: str = Field("", description="plywood or panel, by its key in the trade tables; any where nothing is said")
    thickness: PositiveLength | None = Field(None, description="any where nothing is said")
    width: PositiveLength = Field(description="across the grain")
    length: PositiveLength = Field(description="along the grain")
    price: Price | None = Field(None, description="of one sheet, in the shop's money")


class OffcutTable(Table):
    """[offcut.ID]: what lies in the rack; used before anything is bought."""

    species: str = Field("", description="by its key in the trade tables")
    thickness: PositiveLength = Field(description="as measured")
    kind: Literal["solid", "sheet"] = Field("solid", description="solid wood, or a sheet such as plywood")
    width: PositiveLength = Field(description="across the grain")
    length: PositiveLength = Field(description="along the grain")
    count: Count = Field(1, description="how many of that size there are")
    defects: tuple[Span, ...] = Field((), description="from and to, from one end: knots, checks, sapwood")


class PrinterTable(Table):
    """[printer.ID]: what a line of the test page measured, along the feed and across it."""

    line: PositiveLength = Field(200.0, description="as it should be")
    feed: PositiveLength | None = Field(None, description="as it measured along the feed")
    across: PositiveLength | None = Field(None, description="as it measured across")

    @field_validator("feed", "across")
    @classmethod
    def _square(cls, measured: float | None, info: ValidationInfo) -> float | None:
        line = info.data.get("line")
        if measured is None or line is None:
            return measured
        off = line / measured - 1.0
        if abs(off) > LARGEST_CORRECTION:
            raise ValueError(
                f"expected within {LARGEST_CORRECTION:.0%} of {line:g} mm, this is {abs(off):.1%} off: it looks like "
                "fitting to the page is on; print at 100 % and measure again"
            )
        return measured

    @property
    def along_feed(self) -> float:
        """What to stretch a page by along the feed."""
        return 1.0 if self.feed is None else self.line / self.feed

    @property
    def across_feed(self) -> float:
        """What to stretch a page by across the feed."""
        return 1.0 if self.across is None else self.line / self.across


class AllowanceTable(Table):
    """[allowance]: what is added to finished sizes for rough ones. Defaults are common practice."""

    board_width: Clearance = Field(6.0, description="of a single board: it is ripped and jointed once")
    board_length: Clearance = Field(25.0, description="of a single board: both ends are trimmed")
    panel_width: Clearance = Field(12.0, description="of a glued-up panel: both edges are trimmed")
    panel_length: Clearance = Field(50.0, description="of a glued-up panel's boards: their ends are uneven")
    sheet_width: Clearance = Field(6.0, description="of a sheet's part: sawn a little large, then trimmed clean")
    sheet_length: Clearance = Field(6.0, description="of a sheet's part: sawn a little large, then trimmed clean")


class HabitTable(Table):
    """[habit]: how this shop likes things."""

    separator: Literal["comma", "semicolon", "tab"] = Field("comma", description="between the fields of CSV lists")
    decimal: Literal["point", "comma"] = Field("point", description="of the numbers in CSV lists")
    waste_solid: Percent | None = Field(
        None, description="allowance for solid wood where the piece states none, percent; default 15"
    )
    waste_sheet: Percent | None = Field(
        None, description="allowance for sheets where the piece states none, percent; default 15"
    )
    rough_step: PositiveLength | None = Field(
        None, description="rough widths and lengths are rounded up to it; default 1 mm, in inch pieces 1/4 in"
    )
    paper: str = Field("", description="that layouts and covering sheets print on: A4, Letter; default by the piece")
    least_offcut_length: PositiveLength = Field(300.0, description="shorter ones aren't kept")
    least_offcut_width: PositiveLength = Field(75.0, description="narrower ones aren't kept")
    printer: str = Field("", description="the one that templates are printed on, by its id")
    roll: PositiveLength = Field(914.4, description="width of the roll that templates are printed on; 36 in")
    roll_margin: Clearance = Field(24.4, description="of its width stays blank, both edges together")


    @model_validator(mode="after")
    def _roll_left(self) -> HabitTable:
        if self.roll_margin >= self.roll:
            raise ValueError(
                f"roll_margin is {self.roll_margin:g} mm; expected less than the roll's own {self.roll:g} mm"
            )
        return self

    @field_validator("paper")
    @classmethod
    def _known_paper(cls, name: str) -> str:
        if name:
            try:
                paper(name)
            except NotInTable as error:
                raise ValueError(str(error)) from error
        return name


class Shop(Table):
    """Everything that a shop file says."""

    format: int = 1
    shop: ShopTable = ShopTable()
    saw: SawTable = SawTable()
    router: RouterTable = RouterTable()
    cutter: dict[str, CutterTable] = Field(default_factory=dict)
    collar: dict[str, CollarTable] = Field(default_factory=dict)
    yard: dict[str, YardTable] = Field(default_factory=dict)
    sheet: dict[str, SheetTable] = Field(default_factory=dict)
    offcut: dict[str, OffcutTable] = Field(default_factory=dict)
    printer: dict[str, PrinterTable] = Field(default_factory=dict)
    allowance: AllowanceTable = AllowanceTable()
    habit: HabitTable = HabitTable()

    @field_validator("habit")
    @classmethod
    def _known_printer(cls, habit: HabitTable, info: ValidationInfo) -> HabitTable:
        printers = info.data.get("printer", {})
        if habit.printer and habit.printer not in printers:
            known = ", ".join(printers) or "no [printer.ID] at all"
            raise ValueError(f'its printer "{habit.printer}" isn\'t in this file; found {known}')
        return habit
