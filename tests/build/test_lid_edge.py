"""Mouldings, leaning cores and the lock of a lid, in panel and caps alike; each number done by hand."""

import math

import pytest

from shopdraw.build import CannotBuild
from shopdraw.wood.season import in_season
from shopdraw.wood.volume import volume_mm3
from tests.build.judging import sound
from tests.check.desks import design

STOCK = {"primary": {"species": "cherry_black", "thickness": 20.0, "cut": "flat"}}


def _lid(seat="rabbeted", **lid):
    piece = sound(design(stock=STOCK, slant={"seat": seat}, lid={"clearance": 1.2, **lid}))
    return piece, sum(volume_mm3(b.shape) for b in piece.boards if b.id == "lid" or b.id.startswith("lid.cap"))


@pytest.mark.parametrize("ends", ["none", "square"])
def test_a_chamfer_runs_along_three_edges_and_mitres_at_the_corners(ends):
    piece, plain = _lid("flush", ends=ends)
    _, moulded = _lid("flush", ends=ends, edge="chamfer", edge_size=4.0)
    wide, high = piece.slant.lid_width_mm, piece.board("lid").width
    caps = [b for b in piece.boards if b.id.startswith("lid.cap")]
    up = sum(cap.length for cap in caps) if caps else 2 * high
    # each corner would be counted twice by the edges' lengths: two chamfers share a pyramid of 4³/3 there
    taken = (wide + up) * 4.0**2 / 2 - 2 * 4.0**3 / 3
    assert plain - moulded == pytest.approx(taken, rel=1e-6)


def test_a_leaning_core_loses_a_triangle_along_three_edges():
    piece, plain = _lid()
    _, leaning = _lid(rabbet_bevel=2.0)
    s = piece.slant
    core = s.core_length_mm - s.hinge_gap_mm / 2
    inset = s.lid_inset_mm
    # where ends and upper edge meet, the ends' triangles run on, but only to the core's upper edge
    taken = 2.0 * inset / 2 * (s.core_width_mm + 2 * core) - 2 * inset * 2.0**2 / 3
    assert plain - leaning == pytest.approx(taken, rel=1e-6)


def test_a_moulding_leaves_two_millimetres_of_the_lip():
    with pytest.raises(CannotBuild, match=r"lid\.edge_size"):
        _lid(edge="round", edge_size=11.0)


@pytest.mark.parametrize("seat", ["rabbeted", "flush"])
def test_the_bolt_goes_straight_up_the_slope_into_its_keeper(seat):
    piece, _ = _lid(seat, lock=True, bolt=8.0)
    assert {h.kind for h in piece.hardware} >= {"lid lock", "lock keeper", "escutcheon"}
    s, top = piece.slant, piece.board("top")
    alpha = math.radians(s.angle_from_level_deg)
    mortise = next(c for c, n in zip(top.shape.cuts, top.cut_ids, strict=True) if n == "mortise:top:lock")
    world = [top.frame.point((0.0, c.x, c.y)) for c in mortise.outline.corners]
    # square to the slope it lies in the middle of the core's edge, which is the inset thick
    pin = s.hinge_pin_mm
    inside = [s.lid_inset_mm + (y - pin[0]) * math.sin(alpha) - (z - pin[1]) * math.cos(alpha) for _, y, z in world]
    assert (min(inside) + max(inside)) / 2 == pytest.approx(min(s.lid_inset_mm, 16.0) / 2)
    # its floor lies the bolt, the clearance and a millimetre beyond the flat
    along = [(y - pin[0]) * math.cos(alpha) + (z - pin[1]) * math.sin(alpha) for _, y, z in world]
    gap = s.lid_length_mm + (4.0 if seat == "rabbeted" else 0.0)
    flat = gap - s.top_bevel_mm if seat == "rabbeted" else s.core_length_mm + _gap(s)
    assert max(along) == pytest.approx(flat + 8.0 + _gap(s) + 1.0, abs=1e-6)


def _gap(s):
    """From the core's end up to the top's flat: s1 less the bevel less the core, with s1 from the slant's triangle."""
    run, rise = s.run_mm - s.hinge_pin_mm[0], s.slant_start_mm + s.rise_mm - s.hinge_pin_mm[1]
    s1 = math.sqrt(run**2 + rise**2 - s.lid_inset_mm**2)
    return s1 - s.top_bevel_mm - s.core_length_mm


def test_the_escutcheon_lies_level_round_the_keyhole():
    piece, _ = _lid(lock=True)
    lid = piece.board("lid")
    named = {n: c for c, n in zip(lid.shape.cuts, lid.cut_ids, strict=True)}
    hole, plate = named["keyhole:lid"], named["escutcheon:lid"]
    assert (plate.face.value, plate.depth) == ("back", 1.5)
    assert sum(c.x for c in hole.outline.corners) / len(hole.outline.corners) == pytest.approx(lid.length / 2)
    body = named["lock:lid:body"]
    assert body.depth == 10.0


def test_a_lid_on_the_slant_takes_no_such_lock():
    with pytest.raises(CannotBuild, match=r"lid\.lock"):
        _lid("on", lock=True)


def test_the_lock_stays_true_in_every_season():
    piece, _ = _lid(lock=True)
    m = piece.moisture
    for moisture in (m.dry, m.wet):
        assert len(in_season(piece, moisture).boards) == len(piece.boards)
