"""Machine settings: every cut, same settings together, so that each machine is set once.

Straight-edge offset: from the guiding edge of a router's base to the cutter's side. Template offset: what a guide
collar keeps the cutter away from the template. Both are plain geometry; base, collar and
cutters are the shop's, or stated defaults.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import TypeVar

from shopdraw.lists.channel import END, SLOPE, Setting, settings_of
from shopdraw.lists.figures import Figures
from shopdraw.lists.shaped_cutter import shaped_table
from shopdraw.lists.table import Column, Table
from shopdraw.lists.tilt import Tilt, tilts_of
from shopdraw.measure import MM_PER_INCH
from shopdraw.piece.shop import Shop
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Board

_Item = TypeVar("_Item")
_INCH = float(MM_PER_INCH)
BASE_MM, BASE_INCH_MM = 75.0, 3.0 * _INCH
"""Half-width of a router's base where the shop file says none (common practice: a base of 150 mm or 6 in)."""
COLLAR_MM, COLLAR_INCH_MM = 17.0, 5 / 8 * _INCH
"""Outside of a guide collar where the shop file says none (common practice)."""


@dataclass(frozen=True, slots=True)
class Tools:
    """What settings are worked out for, mm.

    Attributes:
        cutters: diameters of the straight cutters, as measured.
        base: from a cutter's middle to the base's guiding edge.
        collars: outsides of guide collars.
        stated: what of these is a stated default and not the shop's.
    """

    cutters: tuple[float, ...]
    base: float
    collars: tuple[float, ...]
    stated: tuple[str, ...] = ()

    def cutter_for(self, width: float) -> float | None:
        """The largest cutter that a width takes."""
        return max((size for size in self.cutters if size <= width + 1e-6), default=None)

    def collar_for(self, cutter: float) -> float | None:
        """The smallest collar that a cutter passes with a millimetre of wall (common practice)."""
        return min((size for size in self.collars if size >= cutter + 2.0), default=None)


def tools_of(shop: Shop, cutters: Sequence[float], *, inch: bool) -> Tools:
    """The shop's tools, defaults filled in.

    Args:
        shop: the shop file.
        cutters: diameters that stand in where the shop names no straight cutter, mm.
        inch: the piece's unit.
    """
    own = tuple(sorted(c.diameter for c in shop.cutter.values() if c.kind == "straight"))
    collars = tuple(sorted(c.outside for c in shop.collar.values()))
    stated = [name for name, given in (("cutters", own), ("base", shop.router.base), ("collar", collars)) if not given]
    base = shop.router.base or (BASE_INCH_MM if inch else BASE_MM)
    collar = (COLLAR_INCH_MM if inch else COLLAR_MM,)
    return Tools(own or tuple(sorted(cutters)), base, collars or collar, tuple(stated))


def machine_settings(assembly: Assembly, figures: Figures, tools: Tools) -> tuple[Table, ...]:
    """Tables of saw tilts, channels, pockets for a template, shaped cutters, tenons, bores; those with rows only."""
    settings = [setting for board in assembly.boards for setting in settings_of(board, assembly)]
    tilts = [tilt for board in assembly.boards for tilt in tilts_of(board)]
    made = (
        _tilt_table(assembly, tilts, figures),
        _channel_table([s for s in settings if s.form == "channel"], figures, tools),
        _pocket_table([s for s in settings if s.form == "pocket"], figures, tools),
        shaped_table(assembly, figures),
        _end_table([s for s in settings if s.form == "end"], figures),
        _bore_table([s for s in settings if s.form == "bore"], figures),
        _tool_table(figures, tools),
    )
    return tuple(table for table in made if table.rows)


def _table(title: str, heads: Sequence[str], rows: Iterable[tuple[str, ...]]) -> Table:
    return Table(title, tuple(Column(head) for head in heads), tuple(rows))


def _grouped(items: Iterable[_Item], key: Callable[[_Item], tuple[str, ...]]) -> dict[tuple[str, ...], list[_Item]]:
    found: dict[tuple[str, ...], list[_Item]] = {}
    for item in items:
        found.setdefault(key(item), []).append(item)
    return found


def _places(settings: Sequence[Setting], figures: Figures) -> str:
    """Boards, and how far from where each is cut: "1L, 1R: 104.5; 355.2 from the end"."""
    by_board: dict[str, dict[str, list[str]]] = {}
    for setting in settings:
        told = figures.size(setting.distance) if setting.distance > 0.0 else ""
        places = by_board.setdefault(setting.board.label, {}).setdefault(setting.reference, [])
        if told not in places:
            places.append(told)
    boards: dict[str, list[str]] = {}
    for label, references in by_board.items():
        words = "; ".join(_told(places, reference) for reference, places in references.items())
        boards.setdefault(words, []).append(label)
    return " · ".join(f"{', '.join(labels)}: {words}" for words, labels in boards.items())


def _told(places: Sequence[str], reference: str) -> str:
    off = [place for place in places if place]
    words = [f"at the {reference}"] if len(off) < len(places) else []
    return " and ".join([*words, f"{'; '.join(off)} from the {reference}"] if off else words)


def _labels(boards: Iterable[Board]) -> str:
    return ", ".join(dict.fromkeys(board.label for board in boards))


def _tilt_table(assembly: Assembly, tilts: Sequence[Tilt], figures: Figures) -> Table:
    def key(tilt: Tilt) -> tuple[str, ...]:
        square, level = figures.angle(tilt.from_square), figures.angle(90.0 - tilt.from_square)
        if tilt.within_saw:
            return tilt.kind, square, level, "blade tilted, board flat"
        return tilt.kind, square, level, f"over what a saw tilts: board on edge against a tall fence, tilt {level}"

    rows: list[tuple[str, ...]] = []
    slant = assembly.slant
    if slant is not None:
        sides = _labels(board for board in assembly.boards if board.member == "side")
        level, tilt = figures.angle(slant.angle_from_level_deg), figures.angle(slant.saw_tilt_deg)
        rows.append(("slant", figures.angle(0.0), level, f"blade square; sawn to the line, {tilt} from plumb", sides))
    for words, alike in _grouped(tilts, key).items():
        rows.append((*words, _met(alike, figures)))
    return _table(
        "Saw tilts", ("cut", "saw tilt from square", "angle from level", "setting", "meets which face, where"), rows
    )


def _met(tilts: Sequence[Tilt], figures: Figures) -> str:
    """Boards, and which face their flanks meet where: "10L, 10R: other face, 21 from the end"."""
    by_board: dict[str, dict[str, list[str]]] = {}
    for tilt in tilts:
        at = f"{figures.size(tilt.distance)} from the {tilt.reference}"
        places = by_board.setdefault(tilt.board.label, {}).setdefault(at, [])
        if tilt.face not in places:
            places.append(tilt.face)
    boards: dict[str, list[str]] = {}
    for label, told in by_board.items():
        words = "; ".join(f"{' and '.join(faces)}, {at}" for at, faces in told.items())
        boards.setdefault(words, []).append(label)
    return " · ".join(f"{', '.join(labels)}: {words}" for words, labels in boards.items())


def _channel_table(settings: Sequence[Setting], figures: Figures, tools: Tools) -> Table:
    def key(setting: Setting) -> tuple[str, ...]:
        cutter = tools.cutter_for(setting.width)
        written = _width(setting, figures)
        if cutter is None:
            return setting.kind, written, figures.size(setting.depth), "none fits", "", ""
        if setting.reference == SLOPE:
            # A fence rides on the slope itself; no straight edge is laid on the face.
            return setting.kind, written, figures.size(setting.depth), figures.size(cutter), "", ""
        edge = figures.size(tools.base - cutter / 2)
        rest = setting.width - cutter
        shift = "" if rest <= 1e-6 else figures.fine_size(rest) if setting.fit > 0.0 else figures.gap(rest)
        return setting.kind, written, figures.size(setting.depth), figures.size(cutter), edge, shift

    rows = [(*words, _places(alike, figures)) for words, alike in _grouped(settings, key).items()]
    heads = (
        "cut",
        "width",
        "depth",
        "cutter",
        "straight edge off the near side",
        "moved for the far side",
        "near side",
    )
    return _table("Dados, grooves, rabbets", heads, rows)


def _width(setting: Setting, figures: Figures) -> str:
    return figures.fitted(setting.guest, setting.fit)[0] if setting.fit > 0.0 else figures.size(setting.width)


def _pocket_table(settings: Sequence[Setting], figures: Figures, tools: Tools) -> Table:
    def key(setting: Setting) -> tuple[str, ...]:
        across = figures.fitted(setting.guest, setting.fit)[0] if setting.fit > 0.0 else figures.size(setting.across)
        sizes = f"{figures.size(setting.width)} × {across}"
        cutter = tools.cutter_for(min(setting.width, setting.across))
        collar = tools.collar_for(cutter) if cutter is not None else None
        if cutter is None or collar is None:
            return setting.kind, sizes, figures.size(setting.depth), "none fits", "", ""
        offset = (collar - cutter) / 2
        return (
            setting.kind, sizes, figures.size(setting.depth), figures.size(cutter), figures.size(collar),
            figures.size(offset),
        )  # fmt: skip

    rows = [(*words, _places(alike, figures)) for words, alike in _grouped(settings, key).items()]
    heads = ("cut", "along × across", "depth", "cutter", "guide collar", "template offset", "near side")
    return _table("Pockets with a guide collar", heads, rows)


def _end_table(settings: Sequence[Setting], figures: Figures) -> Table:
    def key(setting: Setting) -> tuple[str, ...]:
        return (
            setting.kind, figures.size(setting.width), figures.size(setting.depth), figures.size(setting.other_depth)
        )  # fmt: skip

    rows = []
    for words, alike in _grouped(settings, key).items():
        ends: dict[str, list[str]] = {}
        for setting in alike:
            ends.setdefault(setting.board.label, []).append("end" if setting.reference == END else "other end")
        both = [label for label, told in ends.items() if len(set(told)) > 1]
        one = [f"{label} ({told[0]})" for label, told in ends.items() if label not in both]
        boards = ", ".join([*both, *one])
        rows.append((*words, f"{boards}" + (": both ends" if both and not one else "")))
    heads = ("cut", "length", "cheek below the face", "cheek below the other face", "boards")
    return _table("Tenons and tongues on ends", heads, rows)


def _bore_table(settings: Sequence[Setting], figures: Figures) -> Table:
    def key(setting: Setting) -> tuple[str, ...]:
        depth = "through" if setting.open else figures.size(setting.depth)
        return setting.kind, f"Ø {figures.size(setting.width)}", depth

    rows = [(*words, _labels(s.board for s in alike)) for words, alike in _grouped(settings, key).items()]
    return _table("Bores", ("cut", "drill", "depth", "boards"), rows)


def _tool_table(figures: Figures, tools: Tools) -> Table:
    def source(name: str) -> str:
        return "stated default; measure your own" if name in tools.stated else "shop file"

    rows = [
        ("straight cutters", ", ".join(figures.size(size) for size in tools.cutters), source("cutters")),
        ("router base, middle to guiding edge", figures.size(tools.base), source("base")),
        ("guide collar, outside", ", ".join(figures.size(size) for size in tools.collars), source("collar")),
    ]
    return _table("Worked out for", ("tool", "size", "from"), rows)
