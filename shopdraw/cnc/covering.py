"""The covering sheet of the router files, as tables: what each file holds, and what no file can hold."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from shopdraw.cnc.cutter import Cutter, default_cutters
from shopdraw.cnc.file_name import file_name
from shopdraw.cnc.flat import Unit
from shopdraw.cnc.lay import lay
from shopdraw.cnc.nest import Nests
from shopdraw.cnc.part import RouterPart
from shopdraw.cnc.setting import TRIM_MM, Setting
from shopdraw.cnc.side_name import reference_edge, side_name
from shopdraw.lists.cut_list import part_name
from shopdraw.lists.rough import trade_name
from shopdraw.lists.size import sizes_of
from shopdraw.lists.table import Cell, Column, Table
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.design import Design
from shopdraw.piece.shop import RouterTable
from shopdraw.shape.region import region_area
from shopdraw.trade.cautions import cautions_for
from shopdraw.wood.finding import Finding

NO_NESTS = Nests((), ())
WORDS = (
    "Before cutting: measure the stock and scale nothing; the sample sizes must come out in the shop's own program.",
    "Run the shop's simulation first. Zero, depth, feeds, passes, tabs, lead-ins and hold-down are the operator's.",
    "Keep screws, clamps and pins out of the outlines and of the run-outs past the edges.",
    "Small and narrow parts need tabs, a skin or adhesive hold-down.",
    "Solid wood moves, cups and splits: check it before it is clamped.",
    "Guards, eye and ear protection, dust extraction: wood dust and flying chips are named hazards (OSHA 3157).",
    "Offcuts may be thrown; never reach in while it turns.",
    "The machine's manual, the shop's rules and local codes come first.",
)
_INCH = float(MM_PER_INCH)


def covering_tables(
    made: Sequence[RouterPart],
    design: Design,
    check_sums: Mapping[str, str],
    must_fix: Sequence[Finding] = (),
    cutters: Sequence[Cutter] | None = None,
    nested: Nests = NO_NESTS,
    router: RouterTable | None = None,
) -> tuple[Table, ...]:
    """The covering sheet.

    Args:
        made: every part, in order.
        design: the piece's inputs.
        check_sums: SHA-256 of each file, by its name.
        must_fix: what must be fixed before anything is cut.
        cutters: the shop's; None for the stated defaults.
        nested: its sheets.
        router: what the shop asks for and holds down; None for the stated defaults.
    """
    shop = router or RouterTable()
    return (
        _files(made, design, check_sums, shop),
        _layers(made, nested),
        _faces(made),
        _second_settings(made),
        _corner_wood(made),
        _counted(made),
        _nested(nested, design, check_sums),
        _words(made, design, must_fix, cutters, shop),
    )


def files_of(made: Sequence[RouterPart]) -> tuple[tuple[str, RouterPart, Setting], ...]:
    """Every setting with its file's name."""
    return tuple(
        (file_name(part.part, setting.number, part.unit), part, setting) for part in made for setting in part.settings
    )


def hold_down(part: RouterPart, shop: RouterTable) -> str:
    """Why a part needs tabs, a skin or other hold-down; "" where it doesn't."""
    board = part.part.first
    reasons = []
    if region_area(part.outline) < shop.small**2:
        reasons.append("small")
    if min(board.width, board.length) < shop.narrow:
        reasons.append("narrow")
    if max(board.width, board.length) > shop.slender * min(board.width, board.length):
        reasons.append("slender")
    return ", ".join(reasons)


def _files(
    made: Sequence[RouterPart], design: Design, check_sums: Mapping[str, str], shop: RouterTable
) -> Table:
    sizes = sizes_of(design)
    columns = (
        Column("file"),
        Column("labels"),
        Column("name"),
        Column("quantity"),
        Column("stock"),
        Column("measured thickness", "mm", 2),
        Column("width", "mm", 1),
        Column("length", "mm", 1),
        Column("must measure"),
        Column("blank"),
        Column("hold-down"),
        Column("not flat"),
        Column("SHA-256"),
    )
    rows: list[tuple[Cell, ...]] = []
    for name, part, _ in files_of(made):
        board = part.part.first
        blank = f"{sizes.words(board.width + 2 * TRIM_MM)} × {sizes.words(board.length + 2 * TRIM_MM)}"
        rows.append(
            (
                name,
                part.part.labels,
                part_name(part.part),
                part.part.quantity,
                trade_name(board.stock),
                board.thickness,
                board.width,
                board.length,
                f"{board.label} must measure {_exact(board.length, part.unit)} × {_exact(board.width, part.unit)}",
                blank,
                hold_down(part, shop),
                "see second settings" if part.second else "",
                check_sums.get(name, ""),
            )
        )
    return Table("Router files", columns, tuple(rows))


def _exact(size_mm: float, unit: Unit) -> str:
    return f"{size_mm:.2f} mm" if unit is Unit.MM else f"{size_mm / _INCH:.4f} in"


def _tolerances(shop: RouterTable, unit: Unit) -> Iterator[tuple[str, str]]:
    """What is asked for where nothing else is agreed."""

    def told(size: float) -> str:
        return f"{size:g} mm" if unit is Unit.MM else f"{size / _INCH:.3f} in"

    yield "outline", f"{told(shop.outline_tolerance)} more or less"
    yield "width of a pocket", f"{told(shop.width_tolerance)} more, nothing less"
    yield "depth of a pocket from its face", f"{told(shop.depth_tolerance)} more, nothing less"
    yield "place of a hole", f"{told(shop.hole_tolerance)} to any side"


def _layers(made: Sequence[RouterPart], nested: Nests) -> Table:
    columns = (
        Column("file"),
        Column("layer"),
        Column("verb"),
        Column("depth", "mm", 4),
        Column("depth", "in", 4),
        Column("what for"),
        Column("least cutter"),
        Column("count"),
        Column("inside corners"),
    )
    rows: list[tuple[Cell, ...]] = []
    files = [(name, setting.layers) for name, _, setting in files_of(made)]
    files += [(nest.file, nest.layers) for nest in nested.sheets]
    for name, layers in files:
        for layer in layers:
            verb = layer.name.split("_")[0].lower()
            inches = layer.depth / _INCH
            row = (name, layer.name, verb, layer.depth, inches, layer.purpose, layer.cutter, layer.count, layer.corners)
            rows.append(row)
        rows.append((name, "NOTE", "note", None, None, "words, never cut", "", None, ""))
        rows.append((name, "STOCK", "stock", None, None, "the blank or sheet, never cut", "", None, ""))
    return Table("Layers of the router files", columns, tuple(rows))


def _faces(made: Sequence[RouterPart]) -> Table:
    columns = (
        Column("file"),
        Column("face up"),
        Column("at y = 0"),
        Column("at x = 0"),
        Column("turning"),
        Column("outline"),
    )
    rows: list[tuple[Cell, ...]] = []
    for name, part, setting in files_of(made):
        board, two = part.part.first, len(part.settings) > 1
        edge, placed = reference_edge(board), lay(board, setting.face)
        turning = "one face only"
        if two:
            fence = f"the {side_name(board, edge)} to the fence both times"
            turning = f"face {setting.number} of 2; turned about its long edge, {fence}"
        rows.append(
            (
                name,
                side_name(board, setting.face),
                side_name(board, placed.side_at_low("y")),
                side_name(board, placed.side_at_low("x")),
                turning,
                "cut here" if setting.flat.cut_outline else "on the note layer; cut with face 2",
            )
        )
    return Table("Faces and turning", columns, tuple(rows))


def _second_settings(made: Sequence[RouterPart]) -> Table:
    heads = ("labels", "cut", "kind", "on", "setting", "place", "wood left on")
    columns = (*map(Column, heads), Column("wood left on", "mm³", 0))
    rows = [
        (part.part.labels, each.cut, each.kind, each.on, each.setting, each.place, each.wood_left, each.volume)
        for part in made
        for each in part.second
    ]
    return Table("Second settings", columns, tuple(rows))


def _corner_wood(made: Sequence[RouterPart]) -> Table:
    columns = (*map(Column, ("labels", "cuts", "what to do", "cutter")), Column("places"), Column("wood", "mm³", 1))
    rows = [
        (part.part.labels, ", ".join(each.cuts) or "outer edge", each.what, each.cutter, each.places, each.volume)
        for part in made
        for each in part.corners
    ]
    return Table("Corner wood", columns, tuple(rows))


def cut_counts(part: RouterPart) -> tuple[int, int, int]:
    """How many cuts a part has, how many of them its files make, and how many are left to second settings."""
    in_files = {index for setting in part.settings for index in setting.cuts}
    return len(part.part.first.shape.cuts), len(in_files), len(part.second)


def _counted(made: Sequence[RouterPart]) -> Table:
    columns = tuple(map(Column, ("labels", "cuts", "in the files", "in the table of second settings")))
    rows: list[tuple[Cell, ...]] = [(part.part.labels, *cut_counts(part)) for part in made]
    rows.append(("all, each part once", *(sum(cut_counts(part)[i] for part in made) for i in range(3))))
    return Table("Cuts counted", columns, tuple(rows))


def _nested(nested: Nests, design: Design, check_sums: Mapping[str, str]) -> Table:
    sizes = sizes_of(design)
    columns = (
        Column("file"),
        Column("stock"),
        Column("measured thickness", "mm", 2),
        Column("sheet"),
        Column("parts"),
        Column("laid"),
        Column("gap at least", "mm", 2),
        Column("for a cutter of", "mm", 2),
        Column("edge margin", "mm", 1),
        Column("keep-out strips"),
        Column("SHA-256"),
    )
    rows: list[tuple[Cell, ...]] = []
    for nest in nested.sheets:
        strips = ", ".join(f"{low:g} to {high:g} mm" for low, high in nest.nesting.keep_out)
        size = f"{sizes.words(nest.size[1])} × {sizes.words(nest.size[0])}"
        labels = " ".join(one.board.label for one in nest.parts)
        rows.append(
            (
                nest.file, trade_name(nest.stock), nest.stock.thickness, size, labels, nest.way, nest.gap, nest.cutter,
                nest.nesting.margin, strips or "none", check_sums.get(nest.file, ""),
            )
        )  # fmt: skip
    for label, reason in nested.left_out:
        rows.append(("not nested", "", None, "", label, "", None, None, None, reason, ""))
    return Table("Nested sheets", columns, tuple(rows))


def _words(
    made: Sequence[RouterPart], design: Design, must_fix: Sequence[Finding], cutters: Sequence[Cutter] | None,
    shop: RouterTable,
) -> Table:
    rows: list[tuple[Cell, ...]] = [("must be fixed first", finding.message) for finding in must_fix]
    unit = made[0].unit if made else Unit.MM
    rows.append(("piece", f"{design.piece.title}, revision {design.piece.revision or 'not stated'}"))
    rows.append(("unit of the files", "millimetres" if unit is Unit.MM else "inches"))
    if made:
        board = made[0].part.first
        rows.append(
            ("measure first", f"{board.label} must measure {_exact(board.length, unit)} × {_exact(board.width, unit)}")
        )
    rows.extend(("caution", words) for words in WORDS)
    rows.extend(("caution", caution.words) for caution in cautions_for(("router-file", "cutter")))
    rows.extend(("tolerance asked for", f"{what}: {how}") for what, how in _tolerances(shop, unit))
    job = default_cutters(inch=design.piece.units == "inch") if cutters is None else cutters
    source = "stated defaults, the shop names none" if cutters is None else "as the shop file has them"
    rows.append(("cutters", f"{', '.join(cutter.id for cutter in job)}, and any drill asked for: {source}"))
    rows.append(("waste", "the part needs the cutter and twice its allowance of waste all round"))
    for part in made:
        rows.extend((finding.severity.value, finding.message) for finding in part.findings)
    return Table("Read this before cutting", (Column("what"), Column("words")), tuple(rows))
