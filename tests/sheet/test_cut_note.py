"""What is said of cuts: sizes as measured, fits shown, places from the reference corner."""

from __future__ import annotations

import math

import pytest

from shopdraw.shape.frame import WORLD
from shopdraw.shape.path import Corner, Path, circle, polygon, rectangle
from shopdraw.sheet.cut_at import CutNote
from shopdraw.sheet.cut_note import cut_notes, standing_cuts
from shopdraw.sheet.cut_size import CutSizes, cut_sizes
from shopdraw.sheet.figure import Writing, inch_writing, metric_writing
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.board import Board, Cut, Face, Shape, Stock
from shopdraw.wood.flank import open_segments

STOCK = Stock("primary", "cherry_black", "solid", 20.0, "4/4", 0.002, 580.0)
BLANK = rectangle(0, 0, 800, 400)
POINT = metric_writing(".")


def board(*cuts: Cut, far: bool = False, stock: Stock = STOCK, outline: Path = BLANK) -> Board:
    done = tuple(
        Cut(c.kind, c.face, c.start, c.depth, c.outline, c.islands, open_segments(outline, stock.thickness, c))
        for c in cuts
    )
    ids = tuple(f"{cut.kind}:board:guest.{n}" for n, cut in enumerate(cuts))
    edge = "far" if far else "near"
    return Board("board", "1", "board", "shelf", Shape(outline, stock.thickness, done), WORLD, stock, ids, (), edge)


def notes(one: Board, writing: Writing = POINT) -> tuple[CutNote, ...]:
    return cut_notes(one, CutSizes(writing))


def places(note: CutNote) -> set[tuple[str, float]]:
    return {(place.way, round(place.distance, 3)) for place in note.places}


def test_a_stopped_dado_is_told_by_width_depth_near_side_and_stop() -> None:
    (note,) = notes(board(Cut("dado", Face.FACE, 0.0, 6.0, rectangle(100, 0, 121, 380))))
    assert note.words == "dado 21 × 6"
    assert places(note) == {("along", 100.0), ("across", 380.0)}


def test_distances_count_from_the_reference_edge_even_where_it_is_the_far_one() -> None:
    (note,) = notes(board(Cut("dado", Face.FACE, 0.0, 6.0, rectangle(100, 20, 121, 400)), far=True))
    assert places(note) == {("along", 100.0), ("across", 380.0)}


def test_a_groove_along_the_grain_is_told_by_its_distance_from_the_edge() -> None:
    (note,) = notes(board(Cut("groove", Face.FACE, 0.0, 6.0, rectangle(0, 10, 800, 16.1))))
    assert note.words == "groove 6.1 × 6"
    assert places(note) == {("across", 10.0)}


def test_a_pocket_is_told_along_across_and_deep() -> None:
    (note,) = notes(board(Cut("hinge-leaf", Face.FACE, 0.0, 2.0, rectangle(67, 0, 127, 17.75))))
    assert note.words == "hinge leaf 60 × 17.8 × 2 deep"
    assert places(note) == {("along", 67.0)}


def test_a_notch_through_the_board_says_so() -> None:
    (note,) = notes(board(Cut("notch", Face.FACE, 0.0, 20.0, rectangle(0, 0, 7, 13))))
    assert note.words == "notch 7 × 13, through"
    assert note.places == ()


def test_a_bore_is_told_by_centre_diameter_and_depth() -> None:
    (note,) = notes(board(Cut("bore", Face.FACE, 0.0, 12.0, circle((50, 37), 2.5))))
    assert note.words == "bore Ø 5 × 12 deep"
    assert places(note) == {("along", 50.0), ("across", 37.0)}


def test_a_mortise_in_an_edge_says_how_far_it_lies_from_the_face() -> None:
    (note,) = notes(board(Cut("mortise", Face.NEAR, 0.0, 17.0, rectangle(15, -13, 66.5, -7))))
    assert note.view is Face.NEAR
    assert note.words == "mortise 51.5 × 6 × 17 deep, 7 from face"
    assert places(note) == {("along", 15.0)}


def test_alike_cuts_are_told_together_and_each_is_located() -> None:
    leaves = [Cut("hinge-leaf", Face.FACE, 0.0, 2.0, rectangle(u, 0, u + 60, 18)) for u in (67, 370, 673)]
    (note,) = notes(board(*leaves))
    assert note.words == "3 × hinge leaf 60 × 18 × 2 deep"
    assert places(note) == {("along", 67.0), ("along", 370.0), ("along", 673.0)}


def test_a_mitre_says_how_to_tilt_the_saw_from_square() -> None:
    # 45° over a thickness of 20: 20 are missing at the other face.
    (note,) = notes(board(Cut("mitre", Face.NEAR, 0.0, 400.0, polygon([(0, 0), (0, -20), (20, -20)]))))
    assert note.words == "mitre 45.0°"
    assert note.more == ("mitre 45.0°: tilt saw 45.0° from square, 45.0° from face; at other face 20 from end",)


def test_case_21_a_flank_that_no_saw_tilts_to_says_so() -> None:
    # Tilted 50° from square: over 20 of thickness it runs 20·tan 50° = 23.8.
    run = 20 * math.tan(math.radians(50))
    (note,) = notes(board(Cut("bevel", Face.FOOT, 0.0, 800.0, polygon([(0, 0), (0, -20), (run, -20)]))))
    assert note.words == "bevel 50.0°"
    assert "50.0° from square, over what a saw tilts; 40.0° from face; at other face 23.8 from edge" in note.more[0]


def test_an_odd_outline_is_told_corner_by_corner() -> None:
    outline = polygon([(100, 50), (200, 80), (150, 160)])
    (note,) = notes(board(Cut("cut", Face.FACE, 0.0, 5.0, outline)))
    assert places(note) == {
        (way, d)
        for p in ((100, 50), (200, 80), (150, 160))
        for way, d in zip(("along", "across"), map(float, p), strict=True)
    }


def test_a_cut_within_a_larger_one_needs_no_words() -> None:
    small = Cut("notch", Face.FACE, 0.0, 20.0, rectangle(0, 0, 13, 4))
    large = Cut("notch", Face.FACE, 0.0, 20.0, rectangle(0, 0, 13, 6))
    assert standing_cuts(board(small, large)) == (1,)
    assert standing_cuts(board(large, large)) == (0,), "of two alike one is told"


def test_rounded_ends_give_their_radius() -> None:
    q = math.tan(math.pi / 8)
    stopped = Path(
        (Corner(100, 0), Corner(121, 0), Corner(121, 377, q), Corner(118, 380), Corner(103, 380, q), Corner(100, 377))
    )
    (note,) = notes(board(Cut("dado", Face.FACE, 0.0, 6.0, stopped)))
    assert note.words == "dado 21 × 6, R 3"


@pytest.mark.parametrize(
    ("writing", "words", "line"),
    [
        (POINT, "dado 17.96 × 6.4", "dado for stock sheet as measured 17.86: 17.96 (fit 0.10)"),
        (inch_writing(), "dado .707 × 1/4", "dado for stock sheet as measured .703: .707 (fit .004)"),
    ],
)
def test_case_07_a_dado_is_cut_to_the_stock_as_measured_and_its_fit_is_shown(
    writing: Writing, words: str, line: str
) -> None:
    """Stock measured 0.703 in = 17.856: with a fit of 0.10 the dado is 17.96 wide."""
    sheet = Stock("sheet", "plywood_birch", "sheet", 0.703 * 25.4, "3/4", 0.0, 680.0)
    width = sheet.thickness + 0.10
    host = board(Cut("dado", Face.FACE, 0.0, 6.4, rectangle(100, 0, 100 + width, 400)))
    guest = Board("guest.0", "4", "shelf", "shelf", Shape(BLANK, sheet.thickness), WORLD, sheet)
    joint = Joint(
        "dado:board:guest.0",
        "dado",
        "board",
        "guest.0",
        ("guest.0",),
        fit=0.10,
        sizes=(("width", width), ("depth", 6.4)),
    )
    assembly = Assembly("", "slant-desk", 0.0, 0.0, 0.0, (host, guest), (joint,))
    sizes = cut_sizes(host, assembly, writing)
    (note,) = cut_notes(host, sizes)
    assert note.words == words
    assert sizes.fit_lines() == (line,)


def test_a_fit_is_never_rounded_away() -> None:
    for writing in (POINT, metric_writing(","), inch_writing()):
        sizes = CutSizes(writing)
        assert sizes.fine(20.0) != sizes.fine(20.1)


def v_groove(v: float, flat: float, *, depth: float = 400.0, back: bool = False) -> Cut:
    """A V-groove across the board, its middle at 300, v deep, with a flat floor."""
    level, sign = (-20.0, 1.0) if back else (0.0, -1.0)
    half = v + flat / 2
    points = [(300 - half, level), (300 + half, level), (300 + flat / 2, level + sign * v)]
    if flat:
        points.append((300 - flat / 2, level + sign * v))
    return Cut("v-groove", Face.NEAR, 0.0, depth, polygon(points))


def test_a_v_groove_is_told_by_its_angle_width_and_depth_and_located_from_the_end() -> None:
    # flanks of 45°: 90° between them, 8 wide for 4 deep, its near side at 300 - 4
    (note,) = notes(board(v_groove(4.0, 0.0)))
    assert note.words == "V-groove 90.0°, 8 wide × 4 deep, in the face"
    assert places(note) == {("along", 296.0)}


def test_a_blunt_v_groove_tells_its_flat_and_a_stopped_one_where_it_ends() -> None:
    (note,) = notes(board(v_groove(3.0, 2.0, depth=250.0, back=True)))
    assert note.words == "V-groove 90.0°, 8 wide × 3 deep, 2 flat, in the other face, 250 along from this edge"
