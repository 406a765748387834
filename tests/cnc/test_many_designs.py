"""Rules of router files over two hundred random desks and eighty random pieces of the other kinds.

A share of each one's parts, a pair of each, and the nested sheets of some: read by two readers that share no code.
"""

from pathlib import Path

import pytest

from shopdraw.build.build import build
from shopdraw.build.cannot import CannotBuild
from shopdraw.cnc.cutter import default_cutters
from shopdraw.cnc.nest import nests
from shopdraw.cnc.nest_check import nest_faults
from shopdraw.cnc.part import router_part
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.wood.board import Board
from shopdraw.wood.part import Part, other_hand, parts
from tests.build.designs import random_design
from tests.build.kinds import KINDS, random_kind
from tests.cnc.router_reader import SAMPLES, piece
from tests.cnc.rules import inch_is_mm, keeps_every_rule, reflected

DESIGNS = 200
OF_A_KIND = 20


def boards_of(design: Design) -> tuple[Board, ...]:
    """None where it can't be built."""
    try:
        return build(design).boards
    except CannotBuild:
        return ()


def judged(design: Design, seed: int, folder: Path) -> int:
    """Two parts, others for each seed, of each fourth design one in both units, and a pair; how many files."""
    own = parts(boards_of(design))
    if not own:
        return 0
    seen = 0
    for step in range(2):
        seen += keeps_every_rule(router_part(own[(seed * 7 + step * 11) % len(own)], design), folder)
    if seed % 4 == 0:
        inch_is_mm(own[(seed * 7) % len(own)], design, folder)
    pairs = [(part, other) for part in own for other in (other_hand(part, own),) if other is not None]
    if pairs:
        one, two = pairs[seed % len(pairs)]
        reflected(*(router_part(each, design) for each in (one, two)), folder)
    return seen


@pytest.mark.parametrize("first", range(0, DESIGNS, 25))
def test_files_of_random_desks_keep_every_rule(first: int, tmp_path: Path) -> None:
    assert sum(judged(random_design(seed), seed, tmp_path) for seed in range(first, first + 25)) > 30


@pytest.mark.parametrize("kind", KINDS)
def test_files_of_random_pieces_of_the_other_kinds_keep_every_rule(kind: str, tmp_path: Path) -> None:
    assert sum(judged(random_kind(kind, seed), seed, tmp_path) for seed in range(OF_A_KIND)) > OF_A_KIND


@pytest.mark.parametrize("sample", SAMPLES)
def test_files_of_every_part_of_a_sample_keep_every_rule(sample: str, tmp_path: Path) -> None:
    design, assembly = piece(sample)
    own = parts(assembly.boards)
    for part in own:
        keeps_every_rule(router_part(part, design), tmp_path)
        inch_is_mm(part, design, tmp_path)
        other = other_hand(part, own)
        if other is not None:
            reflected(router_part(part, design), router_part(other, design), tmp_path)


def sheet_parts(design: Design) -> tuple[Part, ...]:
    return tuple(part for part in parts(boards_of(design)) if part.first.stock.kind == "sheet")


@pytest.mark.parametrize("seed", range(0, DESIGNS, 10))
def test_nested_sheets_of_random_pieces_have_no_fault(seed: int) -> None:
    for design in (random_design(seed), random_kind(KINDS[seed // 10 % len(KINDS)], seed)):
        made = [router_part(part, design) for part in sheet_parts(design)]
        found = nests(made, design, Shop(), default_cutters(inch=design.piece.units == "inch"))
        assert [fault for sheet in found.sheets for fault in nest_faults(sheet)] == []
        laid = [one.board.id for sheet in found.sheets for one in sheet.parts]
        left_out = {label for labels, _ in found.left_out for label in labels.split(", ")}
        assert sorted(laid) == sorted(b.id for p in sheet_parts(design) for b in p.boards if b.label not in left_out)
