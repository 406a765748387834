"""Sketches of the terms of lid, supports, plinth, back and face frame. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable

from shopdraw.drawing.mark import ArcMark, Mark, Meaning
from shopdraw.editor.sketch_case import moulding
from shopdraw.editor.sketch_lines import box, lines, measure, round_hole


def _lid_between() -> list[Mark]:
    """A lid between the sides, seen square to it."""
    return [*box(8, 8, 18, 62), *box(82, 8, 92, 62), *box(26, 12, 74, 58)]


def _lid_clearance() -> list[Mark]:
    return [*_lid_between(), *measure((18, 35), (26, 35))]


def _lid_lap() -> list[Mark]:
    side = [*box(20, 6, 40, 40), *lines((20, 40), (40, 40))]
    lid = lines((28, 60), (92, 60), (92, 34), (46, 34), (46, 46), (28, 46), closed=True)
    return [*side, *lid, *measure((28, 66), (46, 66))]


def _top_clearance() -> list[Mark]:
    top = lines((62, 50), (94, 50), (94, 34), (76, 34), closed=True)
    lid = lines((8, 10), (50, 44), (42, 54), (0, 20), closed=True)
    return [*top, *lid, *lines((50, 44), (62, 50), meaning=Meaning.SIZE)]


def _bevel() -> list[Mark]:
    top = lines((50, 12), (94, 12), (94, 40), (76, 40), (50, 20), closed=True)
    return [*top, *lines((6, 30), (44, 60), (50, 52), (12, 22), closed=True), *measure((42, 12), (42, 20))]


def _rabbet_bevel() -> list[Mark]:
    lid = lines((10, 20), (60, 20), (60, 32), (86, 36), (86, 52), (10, 52), closed=True)
    return [*lid, *lines((60, 32), (86, 32), meaning=Meaning.CENTRE)]


def _rabbet() -> list[Mark]:
    """The lid's edge, rabbeted over the side."""
    side = box(20, 6, 40, 40)
    lid = lines((28, 60), (92, 60), (92, 26), (46, 26), (46, 42), (28, 42), closed=True)
    return [*side, *lid, *measure((54, 26), (54, 42))]


def _bevel_run() -> list[Mark]:
    return [*_rabbet_bevel(), *measure((92, 32), (92, 36))]


def _peg() -> list[Mark]:
    return [*_caps(), *round_hole(14, 35, 4), *measure((26, 31), (26, 39))]


def _bolt() -> list[Mark]:
    lid = [*box(8, 8, 92, 44), *box(38, 18, 62, 44), *box(46, 44, 54, 58)]
    return [*lid, *lines((8, 46), (46, 46)), *lines((54, 46), (92, 46)), *measure((70, 46), (70, 58))]


def _caps() -> list[Mark]:
    """A panel with a breadboard cap at either end."""
    marks = [*box(8, 10, 20, 60), *box(80, 10, 92, 60), *box(20, 10, 80, 60)]
    return [*marks, *lines((14, 10), (14, 60), meaning=Meaning.HIDDEN)]


def _cap() -> list[Mark]:
    return [*_caps(), *measure((8, 65), (20, 65))]


def _pegs() -> list[Mark]:
    marks = _caps()
    for y in (20, 35, 50):
        marks += round_hole(14, y, 2)
    return marks


def _tongue() -> list[Mark]:
    panel = lines((92, 14), (50, 14), (50, 28), (34, 28), (34, 42), (50, 42), (50, 56), (92, 56))
    cap = lines((10, 14), (48, 14), (48, 27), (30, 27), (30, 43), (48, 43), (48, 56), (10, 56), closed=True)
    return [*panel, *cap]


def _tongue_length() -> list[Mark]:
    return [*_tongue(), *measure((34, 62), (50, 62))]


def _groove_room() -> list[Mark]:
    return [*_tongue(), *measure((30, 35), (34, 35))]


def _tongue_below() -> list[Mark]:
    return [*_tongue(), *measure((70, 42), (70, 56))]


def _hinges() -> list[Mark]:
    marks = box(8, 24, 92, 62)
    for x in (24, 50, 76):
        marks += box(x - 7, 24, x + 7, 30)
    return marks


def _hinge_length() -> list[Mark]:
    return [*_hinges(), *measure((43, 16), (57, 16))]


def _hinge_leaf() -> list[Mark]:
    marks = [*box(10, 24, 48, 46), *box(52, 24, 90, 46), *round_hole(50, 46, 4)]
    return [*marks, *lines((30, 46), (30, 42), (70, 42), (70, 46)), *measure((50, 56), (70, 56))]


def _hinge_thickness() -> list[Mark]:
    marks = [*box(10, 14, 48, 46), *box(52, 14, 90, 46), *round_hole(50, 46, 4)]
    return [*marks, *lines((24, 46), (24, 38), (76, 38), (76, 46)), *measure((62, 38), (62, 46))]


def _ledge() -> list[Mark]:
    """The bar at a lid's free edge that keeps a book from sliding off, seen along it."""
    return [*box(16, 20, 92, 32), *box(16, 32, 28, 46), *measure((36, 32), (36, 46))]


def _lock() -> list[Mark]:
    return [*box(14, 8, 86, 62), *box(38, 34, 62, 62), *round_hole(50, 46, 3), *box(44, 62, 56, 66)]


def _lock_width() -> list[Mark]:
    return [*_lock(), *measure((38, 26), (62, 26))]


def _lock_height() -> list[Mark]:
    return [*_lock(), *measure((70, 34), (70, 62))]


def _lock_depth() -> list[Mark]:
    return [*lines((20, 8), (50, 8), (50, 62), (36, 62), (36, 30), (20, 30), closed=True), *measure((36, 20), (50, 20))]


def _keyhole() -> list[Mark]:
    return [*_lock(), *measure((28, 46), (28, 62))]


def _stay() -> list[Mark]:
    """A metal arm from the side to the open lid."""
    case = lines((50, 8), (92, 8), (92, 62), (80, 62), (50, 34), closed=True)
    lid, arm = box(6, 28, 50, 34, Meaning.MOVING), lines((16, 34), (70, 46))
    return [*case, *lid, *arm, *round_hole(16, 34, 2), *round_hole(70, 46, 2)]


def _stay_out() -> list[Mark]:
    return [*_stay(), *measure((16, 22), (50, 22))]


def _stay_up() -> list[Mark]:
    return [*_stay(), *measure((76, 34), (76, 46))]


def _bars() -> list[Mark]:
    """A sliding bar beside the topmost drawer, from the front."""
    return [*box(6, 10, 16, 60), *box(24, 18, 38, 52), *box(46, 10, 54, 60), *box(60, 16, 96, 54)]


def _bar_clearance() -> list[Mark]:
    return [*_bars(), *measure((16, 35), (24, 35))]


def _bar_above() -> list[Mark]:
    return [*_bars(), *lines((6, 60), (96, 60)), *measure((31, 52), (31, 60))]


def _layers() -> list[Mark]:
    return [*_bars(), *lines((31, 18), (31, 52))]


def _bar_head() -> list[Mark]:
    return [*box(10, 18, 20, 54), *box(20, 26, 90, 46), *lines((8, 18), (8, 54), meaning=Meaning.CENTRE)]


def _divider() -> list[Mark]:
    marks = [*box(10, 8, 90, 62), *box(18, 30, 54, 38), *box(54, 32, 90, 36, Meaning.HIDDEN)]
    return [*marks, *measure((18, 22), (54, 22))]


def _bar_stop() -> list[Mark]:
    return [*box(6, 44, 44, 52), *box(14, 30, 78, 40), *box(46, 40, 54, 50)]


def _foot_gap() -> list[Mark]:
    plinth = [*box(16, 16, 84, 50), *box(24, 8, 36, 44, Meaning.HIDDEN), *lines((6, 8), (94, 8))]
    return [*plinth, *measure((56, 8), (56, 16))]


def _block() -> list[Mark]:
    """The plinth's corner from above, a foot block in it."""
    marks = [*box(8, 8, 92, 18), *box(8, 8, 18, 62), *lines((8, 8), (18, 18)), *box(18, 18, 44, 44)]
    return [*marks, *measure((18, 50), (44, 50))]


def _feet() -> list[Mark]:
    marks = lines((8, 10), (30, 10))
    marks += [ArcMark((40, 10), 10, 90, 180, Meaning.VISIBLE), *lines((40, 20), (60, 20))]
    marks += [ArcMark((60, 10), 10, 0, 90, Meaning.VISIBLE)]
    return [*marks, *lines((70, 10), (92, 10), (92, 48), (8, 48), (8, 10))]


def _foot() -> list[Mark]:
    return [*_feet(), *measure((8, 4), (30, 4))]


def _rise() -> list[Mark]:
    return [*_feet(), *measure((50, 10), (50, 20))]


def _spline() -> list[Mark]:
    """A mitre from above, a spline across it."""
    one = lines((10, 10), (60, 10), (40, 30), (10, 30), closed=True)
    other = lines((60, 10), (60, 62), (40, 62), (40, 30), closed=True)
    return [*one, *other, *lines((43, 13), (57, 27), (54, 30), (40, 16), closed=True)]


def _glue_blocks() -> list[Mark]:
    return [*box(14, 8, 24, 46), *box(24, 46, 90, 54), *box(24, 34, 36, 46), *lines((8, 46), (24, 46))]


def _back() -> list[Mark]:
    """A side's rear edge from above, the back in its rabbet."""
    side = lines((10, 8), (34, 8), (34, 44), (22, 44), (22, 60), (10, 60), closed=True)
    return [*side, *box(25, 44, 92, 54)]


def _rabbet_depth() -> list[Mark]:
    return [*_back(), *measure((16, 44), (16, 60))]


def _rabbet_width() -> list[Mark]:
    return [*_back(), *measure((22, 65), (34, 65))]


def _back_clearance() -> list[Mark]:
    return [*_back(), *measure((22, 49), (25, 49))]


def _back_boards() -> list[Mark]:
    """Shiplapped boards from above."""
    one = lines((4, 22), (48, 22), (48, 34), (38, 34), (38, 46), (4, 46), closed=True)
    other = lines((96, 46), (42, 46), (42, 35), (52, 35), (52, 22), (96, 22), closed=True)
    return [*one, *other]


def _board() -> list[Mark]:
    return [*_back_boards(), *measure((4, 14), (48, 14))]


def _lap() -> list[Mark]:
    return [*_back_boards(), *measure((38, 54), (48, 54))]


def _gap() -> list[Mark]:
    return [*_back_boards(), *measure((48, 28), (52, 28))]


def _framed() -> list[Mark]:
    return [*box(10, 6, 90, 64), *box(20, 16, 46, 54), *box(54, 16, 80, 54)]


def _member() -> list[Mark]:
    return [*_framed(), *measure((10, 35), (20, 35))]


def _face_frame() -> list[Mark]:
    """Stiles and rails before a case."""
    marks = [*box(16, 6, 28, 64), *box(72, 6, 84, 64)]
    return [*marks, *box(28, 52, 72, 64), *box(28, 6, 72, 20)]


def _stile() -> list[Mark]:
    return [*_face_frame(), *measure((16, 35), (28, 35))]


def _upper() -> list[Mark]:
    return [*_face_frame(), *measure((50, 52), (50, 64))]


def _lower() -> list[Mark]:
    return [*_face_frame(), *measure((50, 6), (50, 20))]


def _face_rail() -> list[Mark]:
    return [*box(10, 6, 20, 64), *box(80, 6, 90, 64), *box(20, 30, 80, 40), *measure((50, 30), (50, 40))]


def _strip() -> list[Mark]:
    return [*box(10, 6, 30, 64), *box(10, 6, 22, 64), *box(30, 34, 92, 42), *measure((10, 50), (22, 50))]


def _guide() -> list[Mark]:
    """A guide beside a drawer and a kicker over it, from the front."""
    case = [*box(6, 6, 16, 64), *lines((16, 14), (94, 14)), *lines((16, 62), (94, 62))]
    return [*case, *box(16, 14, 26, 24), *box(30, 16, 94, 50), *box(16, 54, 40, 62)]


def _guide_height() -> list[Mark]:
    return [*_guide(), *measure((21, 14), (21, 24))]


def _kicker() -> list[Mark]:
    return [*_guide(), *measure((16, 54), (40, 54))]


def _face_overhang() -> list[Mark]:
    """The face frame's edge from above: it stands out beyond the side."""
    return [*box(24, 24, 92, 36), *box(34, 36, 48, 64), *measure((24, 16), (34, 16))]


def face_tenon() -> list[Mark]:
    """A rail's tenon in its mortise."""
    marks = [*box(10, 8, 40, 62), *lines((92, 24), (40, 24), meaning=Meaning.VISIBLE), *lines((92, 48), (40, 48))]
    marks += lines((40, 30), (20, 30), (20, 42), (40, 42), meaning=Meaning.HIDDEN)
    return [*marks, *measure((20, 56), (40, 56))]


SKETCHES: dict[str, Callable[[], list[Mark]]] = {
    "lid.clearance": _lid_clearance,
    "lid.lap": _lid_lap,
    "lid.top_clearance": _top_clearance,
    "lid.bevel": _bevel,
    "lid.rabbet": _rabbet,
    "lid.rabbet_bevel": _bevel_run,
    "lid.edge": moulding,
    "lid.edge_size": moulding,
    "lid.ends": _caps,
    "lid.cap": _cap,
    "lid.glue": _caps,
    "lid.peg": _peg,
    "lid.pegs": _pegs,
    "lid.tongue": _tongue_length,
    "lid.tongue_below": _tongue_below,
    "lid.groove_room": _groove_room,
    "lid.hinges": _hinges,
    "lid.hinge_length": _hinge_length,
    "lid.hinge_leaf": _hinge_leaf,
    "lid.hinge_thickness": _hinge_thickness,
    "lid.ledge": _ledge,
    "lid.lock": _lock,
    "lid.lock_width": _lock_width,
    "lid.lock_height": _lock_height,
    "lid.lock_depth": _lock_depth,
    "lid.keyhole": _keyhole,
    "lid.bolt": _bolt,
    "lid.stay_angle": _stay,
    "lid.stay_out": _stay_out,
    "lid.stay_up": _stay_up,
    "supports.kind": _bars,
    "supports.clearance": _bar_clearance,
    "supports.clearance_above": _bar_above,
    "supports.layers": _layers,
    "supports.head": _bar_head,
    "supports.divider": _divider,
    "supports.stop": _bar_stop,
    "base.foot_gap": _foot_gap,
    "base.block": _block,
    "base.feet": _feet,
    "base.foot": _foot,
    "base.foot_path": _feet,
    "base.rise": _rise,
    "base.mitre": _spline,
    "base.edge": moulding,
    "base.edge_size": moulding,
    "base.glue_blocks": _glue_blocks,
    "back.kind": _back,
    "back.board": _board,
    "back.lap": _lap,
    "back.gap": _gap,
    "back.member": _member,
    "back.panels": _framed,
    "back.rabbet_depth": _rabbet_depth,
    "back.rabbet_width": _rabbet_width,
    "back.clearance": _back_clearance,
    "face.kind": _face_frame,
    "face.stile": _stile,
    "face.upper": _upper,
    "face.lower": _lower,
    "face.rail": _face_rail,
    "face.strip": _strip,
    "face.guide": _guide_height,
    "face.kicker": _kicker,
    "face.overhang": _face_overhang,
    "face.tenon": face_tenon,
}
