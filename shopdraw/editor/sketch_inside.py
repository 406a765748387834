"""Sketches of what stands inside a case: frames, drawers, shelves, pigeonholes, a person's own holes. Knows no Qt."""

from __future__ import annotations

from collections.abc import Callable

from shopdraw.drawing.mark import ArcMark, Mark, Meaning
from shopdraw.editor.sketch_case import moulding
from shopdraw.editor.sketch_lines import box, lines, measure, round_hole


def _frame() -> list[Mark]:
    """A web frame from above, the front below."""
    return [*box(8, 8, 92, 20), *box(8, 52, 92, 64), *box(8, 20, 22, 52), *box(78, 20, 92, 52)]


def _frame_rail() -> list[Mark]:
    return [*_frame(), *measure((50, 8), (50, 20))]


def _frame_rear() -> list[Mark]:
    return [*_frame(), *measure((50, 52), (50, 64))]


def _runner() -> list[Mark]:
    return [*_frame(), *measure((8, 36), (22, 36))]


def _middle() -> list[Mark]:
    return [*_frame(), *box(44, 20, 56, 52), *measure((8, 4), (92, 4))]


def _dust_panel() -> list[Mark]:
    return [*_frame(), *box(19, 17, 81, 55, Meaning.HIDDEN)]


def _stops() -> list[Mark]:
    """A rail from the side, the block on it that the drawer's front meets."""
    return [*box(20, 8, 80, 22), *box(44, 22, 58, 30), *box(28, 24, 42, 64)]


def _fixing() -> list[Mark]:
    marks = [*box(4, 4, 14, 66), *_frame()]
    return [*marks, *lines((8, 8), (22, 20), meaning=Meaning.SIZE), *lines((8, 20), (22, 8), meaning=Meaning.SIZE)]


def _tenon() -> list[Mark]:
    """A runner's tenon in the rail's mortise, from above."""
    marks = [*box(8, 8, 92, 28), *lines((34, 28), (34, 64)), *lines((66, 28), (66, 64))]
    marks += lines((40, 28), (40, 16), (60, 16), (60, 28), meaning=Meaning.HIDDEN)
    return [*marks, *measure((74, 16), (74, 28))]


def _mortise() -> list[Mark]:
    """A mortise with round ends, as a router leaves it."""
    marks = [*box(8, 14, 92, 56), *lines((34, 28), (66, 28)), *lines((34, 42), (66, 42))]
    ends = [ArcMark((34, 35), 7, 90, 270, Meaning.VISIBLE), ArcMark((66, 35), 7, 270, 450, Meaning.VISIBLE)]
    return [*marks, *ends]


def _corner() -> list[Mark]:
    """A drawer's front corner from above, the side's tongue in the front's groove."""
    front = lines((6, 8), (94, 8), (94, 30), (40, 30), (40, 20), (32, 20), (32, 30), (6, 30), closed=True)
    return [*front, *lines((26, 64), (26, 30), (32, 30), (32, 20), (40, 20), (40, 64))]


def _entry() -> list[Mark]:
    return [*_corner(), *measure((52, 20), (52, 30))]


def _back_corner() -> list[Mark]:
    side = lines((20, 6), (34, 6), (34, 36), (27, 36), (27, 48), (34, 48), (34, 64), (20, 64), closed=True)
    return [*side, *box(27, 36, 92, 48)]


def _drawer_tails() -> list[Mark]:
    marks = [*box(8, 8, 92, 62), *lines((32, 8), (32, 62), meaning=Meaning.HIDDEN)]
    for y in (22, 48):
        marks += lines((32, y - 6), (8 + 6, y - 10), (8 + 6, y + 10), (32, y + 6))
    return marks


def _box_section() -> list[Mark]:
    """A drawer from the side, cut: front, bottom in its groove, a lower back."""
    front, back = box(10, 10, 20, 60), box(80, 20, 88, 52)
    side = lines((20, 56), (88, 56), meaning=Meaning.HIDDEN)
    return [*front, *back, *side, *box(16, 16, 92, 20), *lines((20, 12), (92, 12), meaning=Meaning.HIDDEN)]


def _groove_up() -> list[Mark]:
    return [*_box_section(), *measure((50, 12), (50, 16))]


def _drop() -> list[Mark]:
    return [*_box_section(), *measure((84, 52), (84, 56))]


def _top_clearance() -> list[Mark]:
    return [*box(8, 6, 92, 66), *box(14, 10, 86, 54), *measure((50, 54), (50, 66))]


def _knob() -> list[Mark]:
    """A knob from the side."""
    marks = [*box(60, 8, 72, 62), *lines((60, 31), (44, 31)), *lines((60, 39), (44, 39))]
    return [*marks, *lines((44, 27), (34, 24), (28, 35), (34, 46), (44, 43), closed=True)]


def _knob_projection() -> list[Mark]:
    return [*_knob(), *measure((28, 56), (60, 56))]


def _knob_diameter() -> list[Mark]:
    return [*_knob(), *measure((20, 24), (20, 46))]


def _knobs() -> list[Mark]:
    return [*box(8, 14, 92, 56), *round_hole(30, 35, 5), *round_hole(70, 35, 5)]


def _pull() -> list[Mark]:
    marks = [*box(8, 14, 92, 56), *round_hole(36, 38, 3), *round_hole(64, 38, 3)]
    return [*marks, *lines((36, 38), (40, 28), (60, 28), (64, 38)), *measure((36, 48), (64, 48))]


def _lips() -> list[Mark]:
    """A lipped front from before, its opening behind it."""
    return [*box(14, 12, 86, 58), *box(22, 18, 78, 52, Meaning.HIDDEN)]


def _lip_left() -> list[Mark]:
    return [*_lips(), *measure((14, 35), (22, 35))]


def _lip_right() -> list[Mark]:
    return [*_lips(), *measure((78, 35), (86, 35))]


def _lip_top() -> list[Mark]:
    return [*_lips(), *measure((50, 52), (50, 58))]


def _lip_bottom() -> list[Mark]:
    return [*_lips(), *measure((50, 12), (50, 18))]


def _level() -> list[Mark]:
    marks = [*box(26, 6, 84, 64), *box(26, 30, 84, 35)]
    return [*marks, *lines((10, 6), (26, 6), meaning=Meaning.SIZE), *measure((16, 6), (16, 35))]


def _divided() -> list[Mark]:
    """An opening in rows, one of them in columns."""
    marks = [*box(20, 6, 80, 64), *lines((20, 44), (80, 44)), *lines((20, 24), (80, 24))]
    return [*marks, *lines((50, 44), (50, 64))]


def _pins() -> list[Mark]:
    """A side from within, rows of holes for pins."""
    marks = box(20, 4, 80, 66)
    for y in (14, 24, 34, 44, 54):
        marks += [*round_hole(32, y, 2), *round_hole(68, y, 2)]
    return marks


def _pitch() -> list[Mark]:
    return [*_pins(), *measure((12, 24), (12, 34))]


def _setback() -> list[Mark]:
    return [*_pins(), *measure((20, 60), (32, 60))]


def _pin() -> list[Mark]:
    """A pin in its hole, a shelf on it."""
    side = lines((14, 6), (40, 6), (40, 28), (22, 28), (22, 36), (40, 36), (40, 64), (14, 64), closed=True)
    return [*side, *box(22, 28, 56, 36), *box(44, 36, 94, 46)]


def _pin_depth() -> list[Mark]:
    return [*_pin(), *measure((22, 20), (40, 20))]


def _pin_diameter() -> list[Mark]:
    return [*_pin(), *measure((66, 28), (66, 36))]


def _play() -> list[Mark]:
    return [*_pin(), *measure((40, 54), (44, 54))]


def _writing() -> list[Mark]:
    """A writing shelf of two boards from the side: the rear one laps over the front one."""
    return [*box(6, 20, 58, 34), *box(46, 34, 94, 48)]


def _front_depth() -> list[Mark]:
    return [*_writing(), *measure((6, 12), (58, 12))]


def _writing_lap() -> list[Mark]:
    return [*_writing(), *measure((46, 56), (58, 56))]


def _writing_step() -> list[Mark]:
    return [*_writing(), *measure((38, 34), (38, 48))]


def _bays() -> list[Mark]:
    """Pigeonholes from before."""
    marks = [*box(6, 8, 94, 62), *lines((35, 8), (35, 62)), *lines((65, 8), (65, 62))]
    return [*marks, *lines((6, 26), (35, 26)), *lines((65, 26), (94, 26))]


def _bay_width() -> list[Mark]:
    return [*_bays(), *measure((35, 40), (65, 40))]


def _small_shelves() -> list[Mark]:
    return [*_bays(), *measure((20, 8), (20, 26))]


def _small_drawers() -> list[Mark]:
    return [*_bays(), *box(8, 10, 33, 24), *round_hole(20, 17, 2)]


def _small_reveal() -> list[Mark]:
    return [*box(8, 8, 92, 62), *box(16, 14, 84, 54), *measure((8, 35), (16, 35))]


def _bracket() -> list[Mark]:
    """An arched bracket at the head of a bay."""
    marks = [*lines((14, 6), (14, 64), (86, 64), (86, 6)), *lines((14, 34), (18, 34)), *lines((82, 34), (86, 34))]
    return [*marks, ArcMark((50, 22), 34.2, 20.6, 159.4, Meaning.VISIBLE)]


def _bracket_height() -> list[Mark]:
    return [*_bracket(), *measure((8, 34), (8, 64))]


def _from_above() -> list[Mark]:
    """Partition and front plane from above, the front below."""
    return [*lines((6, 8), (94, 8), meaning=Meaning.CENTRE), *box(40, 22, 50, 64), *lines((10, 64), (94, 64))]


def _front() -> list[Mark]:
    return [*_from_above(), *measure((60, 8), (60, 22))]


def _bracket_setback() -> list[Mark]:
    return [*_from_above(), *box(50, 30, 92, 35), *measure((66, 22), (66, 30))]


def _behind_lid() -> list[Mark]:
    """A pigeonhole's plumb front behind the shut lid, from the side."""
    lid = lines((6, 10), (56, 60), (62, 54), (12, 4), closed=True)
    return [*lid, *box(60, 8, 94, 40), *lines((60, 40), (60, 60), meaning=Meaning.CENTRE)]


def _lid_clearance() -> list[Mark]:
    return [*_behind_lid(), *measure((48, 40), (60, 40))]


def _proud() -> list[Mark]:
    """What stands out of a board's face: a lock, seen along the face."""
    return [*box(8, 12, 92, 32), *box(36, 32, 64, 46), *measure((74, 32), (74, 46))]


def _small_knob() -> list[Mark]:
    return [*_behind_lid(), *box(52, 20, 60, 26), *measure((52, 14), (60, 14))]


def _small_groove() -> list[Mark]:
    board = lines((8, 6), (92, 6), (92, 30), (56, 30), (56, 20), (44, 20), (44, 30), (8, 30), closed=True)
    return [*board, *box(44, 20, 56, 64), *measure((66, 20), (66, 30))]


def _groove_stop() -> list[Mark]:
    return [*box(8, 8, 92, 62), *lines((44, 62), (44, 20), (56, 20), (56, 62)), *measure((66, 8), (66, 20))]


def _vee() -> list[Mark]:
    """A small shelf's V point in its partition."""
    partition = lines((14, 6), (40, 6), (40, 27), (30, 35), (40, 43), (40, 64), (14, 64), closed=True)
    return [*partition, *lines((92, 27), (40, 27), (30, 35), (40, 43), (92, 43)), *measure((30, 52), (40, 52))]


def _solid_back() -> list[Mark]:
    return [*box(8, 8, 18, 64), *box(82, 8, 92, 64), *box(14, 50, 86, 56)]


def _hole() -> list[Mark]:
    """A board, its reference end at the left, its reference edge below, a hole in it."""
    middle = [*lines((58, 24), (58, 52), meaning=Meaning.CENTRE), *lines((44, 38), (72, 38), meaning=Meaning.CENTRE)]
    return [*box(8, 8, 92, 62), *round_hole(58, 38, 10), *middle]


def _along() -> list[Mark]:
    return [*_hole(), *measure((8, 18), (58, 18))]


def _across() -> list[Mark]:
    return [*_hole(), *measure((78, 8), (78, 38))]


def _diameter() -> list[Mark]:
    return [*_hole(), *measure((48, 56), (68, 56))]


def _notch() -> list[Mark]:
    return [*box(8, 8, 92, 62), *box(38, 26, 74, 50)]


def _notch_length() -> list[Mark]:
    return [*_notch(), *measure((38, 18), (74, 18))]


def _notch_width() -> list[Mark]:
    return [*_notch(), *measure((82, 26), (82, 50))]


def _notch_radius() -> list[Mark]:
    marks = [*box(8, 8, 92, 62), *lines((48, 26), (74, 26), (74, 50), (38, 50), (38, 36))]
    return [*marks, ArcMark((48, 36), 10, 180, 270, Meaning.VISIBLE), *measure((38, 18), (48, 18))]


def _deep() -> list[Mark]:
    cut = lines((8, 10), (92, 10), (92, 50), (66, 50), (66, 26), (34, 26), (34, 50), (8, 50), closed=True)
    return [*cut, *measure((50, 26), (50, 50))]


RINGS = ((16, 38), (24, 44), (32, 34))
"""Rings of a flat sawn board: radius, and degrees to either side."""


def _end_grain() -> list[Mark]:
    """Boards from their ends: flat sawn, and quarter sawn."""
    marks = [*box(6, 22, 46, 48), *box(54, 22, 94, 48)]
    marks += [ArcMark((26, 10), radius, 90 - turn, 90 + turn, Meaning.HIDDEN) for radius, turn in RINGS]
    for x in (62, 70, 78, 86):
        marks += lines((x, 22), (x, 48), meaning=Meaning.HIDDEN)
    return marks


def _thickness() -> list[Mark]:
    return [*box(14, 26, 92, 44), *measure((8, 26), (8, 44))]


def _jointing() -> list[Mark]:
    return [*box(10, 14, 90, 56), *lines((10, 20), (90, 20), meaning=Meaning.HIDDEN), *measure((50, 14), (50, 20))]


def _glued_up() -> list[Mark]:
    marks = [*box(8, 10, 92, 60), *lines((8, 26), (92, 26)), *lines((8, 44), (92, 44))]
    return [*marks, *measure((50, 26), (50, 44))]


def _turned() -> list[Mark]:
    """A part with its grain along the sheet, and one turned across it."""
    marks = [*box(4, 6, 96, 64), *box(8, 36, 60, 60), *box(66, 12, 90, 60)]
    return [*marks, *lines((14, 48), (54, 48), meaning=Meaning.SIZE), *lines((72, 36), (84, 36), meaning=Meaning.SIZE)]


SKETCHES: dict[str, Callable[[], list[Mark]]] = {
    "frame.rail": _frame_rail,
    "frame.rear_rail": _frame_rear,
    "frame.runner": _runner,
    "frame.fixing": _fixing,
    "frame.tenon": _tenon,
    "frame.mortise": _mortise,
    "frame.dust_panels": _dust_panel,
    "frame.middle_over": _middle,
    "frame.stops": _stops,
    "drawer.front_joint": _corner,
    "drawer.entry": _entry,
    "drawer.back_joint": _back_corner,
    "drawer.tails": _drawer_tails,
    "drawer.tail_slope": _drawer_tails,
    "drawer.groove_up": _groove_up,
    "drawer.drop": _drop,
    "drawer.top_clearance": _top_clearance,
    "drawer.edge": moulding,
    "drawer.edge_size": moulding,
    "drawer.knobs": _knobs,
    "drawer.handle": _knob,
    "drawer.knob_diameter": _knob_diameter,
    "drawer.knob_projection": _knob_projection,
    "drawer.pull_centres": _pull,
    "drawer.lip_left": _lip_left,
    "drawer.lip_right": _lip_right,
    "drawer.lip_top": _lip_top,
    "drawer.lip_bottom": _lip_bottom,
    "level.top": _level,
    "level.member": _level,
    "opening.above": _divided,
    "opening.fill": _divided,
    "opening.by": _divided,
    "opening.keys": _divided,
    "pins.pitch": _pitch,
    "pins.diameter": _pin_diameter,
    "pins.depth": _pin_depth,
    "pins.setback": _setback,
    "pins.spare": _pins,
    "pins.play": _play,
    "writing.boards": _writing,
    "writing.front_depth": _front_depth,
    "writing.lap": _writing_lap,
    "writing.step": _writing_step,
    "writing.edge": moulding,
    "writing.edge_size": moulding,
    "compartments.bays": _bays,
    "compartments.width": _bay_width,
    "compartments.shelves": _small_shelves,
    "compartments.drawers": _small_drawers,
    "compartments.reveal": _small_reveal,
    "compartments.bracket": _bracket,
    "compartments.bracket_path": _bracket,
    "compartments.bracket_height": _bracket_height,
    "compartments.bracket_setback": _bracket_setback,
    "compartments.front": _front,
    "compartments.clearance": _lid_clearance,
    "compartments.proud": _proud,
    "compartments.knob": _small_knob,
    "compartments.groove": _small_groove,
    "compartments.stop": _groove_stop,
    "compartments.point": _vee,
    "compartments.back": _solid_back,
    "cut.face": _hole,
    "cut.shape": _hole,
    "cut.along": _along,
    "cut.across": _across,
    "cut.diameter": _diameter,
    "cut.length": _notch_length,
    "cut.width": _notch_width,
    "cut.radius": _notch_radius,
    "cut.depth": _deep,
    "stock.cut": _end_grain,
    "stock.thickness": _thickness,
    "stock.jointing": _jointing,
    "stock.widths": _glued_up,
    "stock.turn": _turned,
    "board.turn": _turned,
}
