"""Reliefs for round cutters: numbers by trigonometry, wood out of the solid, nothing cut that shows."""

import math

import pytest
from shapely.geometry import Point, Polygon

from shopdraw.build.bench import Bench, Box, finished
from shopdraw.build.build import build
from shopdraw.build.relief import (
    Corners,
    bisector_relief,
    mortise_corners,
    reach_beyond,
    relieve_end,
    rounded,
    wall_relief,
)
from shopdraw.cnc.part import router_part
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece
from shopdraw.shape.path import Path, arc_of, area, bounds, flattened, rectangle
from shopdraw.shipped import sample_path
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.board import Stock
from shopdraw.wood.interference import joint_closes, shared_volume
from shopdraw.wood.part import Part
from shopdraw.wood.volume import volume_mm3


def desk(**frame: str) -> Assembly:
    design = read_piece(sample_path("pilot-station-desk")).design
    return build(Design.model_validate({**design.model_dump(), "frame": {**design.frame.model_dump(), **frame}}))


@pytest.mark.parametrize(("radius", "off", "further"), [(3.0, 2.121, 1.243), (3.175, 2.245, 1.315)])
def test_case_15_relief_on_the_bisector_goes_through_the_corner(radius: float, off: float, further: float) -> None:
    relief = bisector_relief((100.0, 50.0), (-1, 1), radius)
    assert (100.0 - relief.centre[0], relief.centre[1] - 50.0) == pytest.approx((off, off), abs=5e-4)
    # the cutter's own round corner ends r (√2 − 1) short of the corner; with the relief it reaches it
    own_middle = (100.0 - radius, 50.0 + radius)
    assert math.dist(own_middle, relief.centre) == pytest.approx(further, abs=5e-4)
    assert math.dist(relief.centre, (100.0, 50.0)) == pytest.approx(radius)
    assert relief.radius == pytest.approx(radius + 0.05)


@pytest.mark.parametrize("radius", [3.0, 3.175])
def test_relief_on_a_wall_stands_the_radius_along_it(radius: float) -> None:
    relief = wall_relief((100.0, 50.0), 1, 1, radius)
    assert relief.centre == pytest.approx((100.0, 50.0 + radius))


@pytest.mark.parametrize(
    ("across", "lengthwise", "wanted"),
    [(1.9, 1.9, Corners.BISECTOR), (1.8, 4.0, Corners.ALONG), (1.8, 3.9, Corners.CHISEL), (9.0, 1.8, Corners.CHISEL)],
)
def test_square_mortise_gets_what_its_shoulder_covers(across: float, lengthwise: float, wanted: Corners) -> None:
    # 0.293 × 3 + 1 = 1.879; 3 + 1 = 4
    assert mortise_corners(across, lengthwise, 3.0) is wanted
    assert reach_beyond(3.0) == pytest.approx(0.8787 + 0.05, abs=1e-4)


def test_rounded_rectangle_lacks_four_corners_of_its_square() -> None:
    path = rounded(rectangle(0, 0, 40, 7), 3.0)
    assert area(path) == pytest.approx(40 * 7 - (4 - math.pi) * 9)
    narrow = rounded(rectangle(0, 0, 40, 5), 3.0)
    assert area(narrow) == pytest.approx(35 * 5 + math.pi * 2.5**2)
    assert bounds(narrow) == pytest.approx((0, 0, 40, 5))


@pytest.mark.parametrize("mortise", ["round", "square"])
def test_mortises_and_tenons_close_without_touching(mortise: str) -> None:
    piece = desk(mortise=mortise)
    joints = [joint for joint in piece.joints if joint.kind == "mortise-and-tenon"]
    assert joints
    for joint in joints:
        assert joint_closes(piece, joint), joint.id
        assert shared_volume(piece.board(joint.host), piece.board(joint.guest)) < 1.0
    in_edges = [cut for cut in piece.board(joints[0].host).shape.cuts if cut.face.value in ("near", "far")]
    assert any(cut.kind == "mortise" for cut in in_edges)
    assert any(cut.kind == "relief" for cut in in_edges) is (mortise == "square")


def test_notch_is_relieved_in_the_lug_that_the_dado_hides() -> None:
    shelf = desk().board("shelf.writing")
    ids = dict(zip(shelf.cut_ids, shelf.shape.cuts, strict=True))
    notches = [ids[f"notch:{shelf.id}:side.{hand}"] for hand in ("left", "right")]
    reliefs = [cut for cut in shelf.shape.cuts if cut.kind == "relief"]
    assert len(notches) == len(reliefs) == 2
    for notch, relief in zip(notches, reliefs, strict=True):
        n, r = bounds(notch.outline), bounds(relief.outline)
        # along the grain it keeps to the lug, between the side's face and the shelf's end; it goes back by the radius
        assert (r[0], r[2]) == pytest.approx((n[0], n[2]))
        assert max(r[3] - n[3], n[1] - r[1]) == pytest.approx(3.0)


def test_relief_wood_is_out_of_the_solid() -> None:
    shape = desk().board("frame.1.front").shape
    plain = type(shape)(shape.outline, shape.thickness, tuple(cut for cut in shape.cuts if cut.kind != "relief"))
    assert volume_mm3(plain) - volume_mm3(shape) > 100.0


def test_radius_is_the_pieces_own() -> None:
    design = read_piece(sample_path("pilot-station-desk")).design
    wide = Design.model_validate({**design.model_dump(), "case": {**design.case.model_dump(), "cutter_radius": 4.0}})
    shelf = build(wide).board("shelf.writing")
    relief = next(cut for cut in shelf.shape.cuts if cut.kind == "relief")
    notch = next(cut for cut in shelf.shape.cuts if cut.kind == "notch")
    r, n = bounds(relief.outline), bounds(notch.outline)
    assert max(r[3] - n[3], n[1] - r[1]) == pytest.approx(4.0)


def test_case_15_guest_of_a_stopped_dado_begins_the_radius_behind_its_end() -> None:
    design = read_piece(sample_path("harbour-office-desk")).design
    stopped = Design.model_validate({**design.model_dump(), "case": {**design.case.model_dump(), "dado_stop": 19.05}})
    piece = build(stopped)
    bottom, side = piece.board("bottom"), piece.board("side.left")
    cut = dict(zip(bottom.cut_ids, bottom.shape.cuts, strict=True))["notch:bottom:side.left"]
    box = bounds(cut.outline)
    # 19.05 + 3.175: the cutter leaves full width only that far behind the dado's end
    assert box[3] - box[1] == pytest.approx(22.225)
    dado = next(c for i, c in zip(side.cut_ids, side.shape.cuts, strict=True) if i == "dado:side.left:bottom")
    assert side.width - bounds(dado.outline)[3] == pytest.approx(19.05)
    radii = [arc_of((a.x, a.y), (b.x, b.y), a.bulge).radius for a, b in dado.outline.pairs() if a.bulge]
    assert radii == pytest.approx([3.175, 3.175])


@pytest.mark.parametrize(("width", "count"), [(18.3, 2), (6.1, 1)])
def test_stopped_groove_is_relieved_along_itself_and_keeps_its_width(width: float, count: int) -> None:
    bench = Bench()
    stock = Stock("s", "s", "solid", 20.0, "", 0.0, 500.0)
    host = bench.lay("b", "b", "b", stock, Box(0, 400, 0, 100, 0, 20), u="+x", w="+z")
    groove = Box(50, 300, 40, 40 + width, 14, 20)
    host.sink_box("groove", groove, "-z", id="groove:b:x", purpose="")
    relieve_end(host, groove, "-z", "+x", ("-y", "+y"), 3.0, id="relief:b:x", purpose="")
    board = finished(host)
    assert len(board.shape.cuts) == 1 + count
    (setting,) = router_part(Part("b", (board,)), read_piece(sample_path("pilot-station-desk")).design).settings
    (operation,) = setting.flat.operations
    assert isinstance(operation.shape, Path), "one polyline holds groove and relief"
    x0, y0, x1, y1 = bounds(operation.shape)
    assert (x0, x1) == pytest.approx((50.0, 303.0), abs=0.06), "the radius further, and no more"
    assert (y0, y1) == pytest.approx((40.0, 40.0 + width), abs=0.06), "its width stays"
    # a square guest's corners are free: the disc swept by another library reaches them
    free = Polygon(flattened(operation.shape, 1e-4)).buffer(-2.999).buffer(2.999)
    for corner in ((300.0, 40.0), (300.0, 40.0 + width)):
        assert free.distance(Point(corner)) < 0.01
