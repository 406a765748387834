"""Lists of random pieces of every kind: volumes, rough sizes, boards, strips and layouts."""

from __future__ import annotations

from collections import Counter

import pytest

from shopdraw.build import CannotBuild, build
from shopdraw.lists.buying import materials_of
from shopdraw.lists.cut_list import cut_list
from shopdraw.lists.layout.buying_list import bought
from shopdraw.lists.layout.checker import faults_of_layout
from shopdraw.lists.layout.plan import plans
from shopdraw.lists.rough_size import rough_of, yard_of
from shopdraw.piece.design import Design
from shopdraw.piece.shop import Shop
from shopdraw.piece.shop_reading import parse_shop
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.solid import solid
from tests.build.designs import random_design
from tests.build.kinds import KINDS, random_kind

DESKS, OF_A_KIND = 200, 40
YARD = parse_shop(
    '[yard.narrow]\nquarters = "8/4"\nwidths = [110, 140]\nlengths = [2000, 3000]\n'
    '[yard.usual]\nquarters = "4/4"\nwidths = [150, 200, 260]\nlengths = [2400, 3600]\n'
    "[habit]\nrough_step = 5\n"
).shop


def made(design: Design) -> Assembly | None:
    try:
        return build(design)
    except CannotBuild:
        return None


def judged(design: Design, shop: Shop, *, listed: bool) -> bool:
    """Whether it can be built; fails where a rough size is wrong, and, where it is to be listed, the cut list."""
    assembly = made(design)
    if assembly is None:
        return False
    yard = yard_of(design, shop)
    for each in assembly.boards:
        rough = rough_of(each, yard)
        assert rough.thickness >= each.thickness - 1e-9, each.id
        assert rough.width >= each.width - 1e-9, each.id
        assert rough.length > each.length, each.id
        if rough.glue_up is not None:
            assert rough.glue_up.clear >= each.width - 1e-6, each.id
    if listed:
        table = cut_list(assembly, design, shop)
        labels = Counter(label for row in table.rows for label in str(row[0]).split(", "))
        assert labels == Counter(each.label for each in assembly.boards)
    return True


@pytest.mark.parametrize("first", range(0, DESKS, 50))
def test_rough_is_never_less_than_net_on_any_line_of_a_random_desk(first: int) -> None:
    shops = (Shop(), YARD)
    seeds = range(first, first + 50)
    assert sum(judged(random_design(seed), shops[seed % 2], listed=seed % 8 == 0) for seed in seeds) > 25


@pytest.mark.parametrize("kind", KINDS)
def test_rough_is_never_less_than_net_on_any_line_of_the_other_kinds(kind: str) -> None:
    shops = (Shop(), YARD)
    seeds = range(OF_A_KIND)
    told = [judged(random_kind(kind, seed), shops[seed % 2], listed=seed % 8 == 0) for seed in seeds]
    assert sum(told) > OF_A_KIND / 2


def net_is_the_solids(design: Design) -> bool:
    assembly = made(design)
    if assembly is None:
        return False
    solids: dict[str, float] = {}
    for each in assembly.boards:
        solids[each.stock.name] = solids.get(each.stock.name, 0.0) + solid(each.shape).volume() / 1e9
    net: dict[str, float] = {}
    for material in materials_of(assembly, design):
        if material.kind != "hardware":
            net[material.stock] = net.get(material.stock, 0.0) + material.finished_m3
    assert net == pytest.approx(solids, rel=1e-3)
    return True


@pytest.mark.parametrize("first", range(0, 20, 10))
def test_net_volume_of_random_desks_is_the_solids_to_a_thousandth(first: int) -> None:
    assert sum(net_is_the_solids(random_design(seed)) for seed in range(first, first + 10)) > 4


@pytest.mark.parametrize("kind", KINDS)
def test_net_volume_of_the_other_kinds_is_the_solids_to_a_thousandth(kind: str) -> None:
    assert sum(net_is_the_solids(random_kind(kind, seed)) for seed in range(6)) > 2


@pytest.mark.parametrize("seed", range(8))
def test_layouts_of_random_pieces_can_be_sawn_and_cover_what_is_needed(seed: int) -> None:
    tried = (
        random_design(100 * seed + n) if seed < 4 else random_kind(KINDS[seed - 4], 100 * seed + n) for n in range(100)
    )
    design, assembly = next((design, built) for design in tried if (built := made(design)) is not None)
    found = plans(assembly, design, YARD)
    for plan in found:
        for layout in plan.layouts:
            assert faults_of_layout(layout) == ()
            assert layout.cost >= layout.bound - 1e-6
    for one in bought(found, assembly, design, YARD):
        assert one.plan.misfits or one.plan.stock.kind == "sheet" or one.amount >= one.needed - 1e-9
    boards = {each.id: each for each in assembly.boards}
    for plan in found:
        for layout in plan.layouts:
            rows: dict[str, list[str]] = {}
            for part in layout.job.parts:
                if part.strip:
                    rows.setdefault(part.strip, []).append(part.id)
            for row in rows.values():
                heights = [boards[part].frame.at[2] for part in row]
                assert heights == sorted(heights, reverse=True), "a bank's fronts from the top down"
