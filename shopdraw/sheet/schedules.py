"""The schedules of a set: joints, machine settings, hardware, and the order of assembly with its exploded picture."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping
from dataclasses import dataclass

from shopdraw.cnc.cutter import default_cutters, straight
from shopdraw.lists.assembly_table import HEAVY_KG, assembly_tables
from shopdraw.lists.caution_table import caution_table
from shopdraw.lists.figures import Figures
from shopdraw.lists.hardware import hardware_table
from shopdraw.lists.joint_schedule import joint_schedule
from shopdraw.lists.machine_settings import machine_settings, tools_of
from shopdraw.lists.rough_size import Yard
from shopdraw.lists.table import Table
from shopdraw.piece.shop import Shop
from shopdraw.sheet.cover import GIVEN
from shopdraw.sheet.exploded_picture import exploded_leaf
from shopdraw.sheet.label_picture import label_leaves, labelled_in, labels_beside
from shopdraw.sheet.leaf import Leaf, table_leaves
from shopdraw.sheet.manner import Manner
from shopdraw.sheet.set_pages import TILT
from shopdraw.wood.assembly import Assembly
from shopdraw.wood.volume import mass_kg

MACHINES = ("tilt", "cutter")


def figures_of(manner: Manner) -> Figures:
    """Figures as the set's drawings have them."""
    writing = manner.writing
    return Figures(writing.cut, writing.fit, writing.decimal_sign)


def machine_leaves(assembly: Assembly, manner: Manner, shop: Shop) -> tuple[Leaf, ...]:
    """Joint schedule, machine settings and the table of cautions.

    Args:
        assembly: the piece.
        manner: paper and figures.
        shop: its cutters, router base and guide collars; stated defaults where it has none.
    """
    figures = figures_of(manner)
    cutters = [cutter.diameter for cutter in straight(default_cutters(inch=manner.inch))]
    tables = machine_settings(assembly, figures, tools_of(shop, cutters, inch=manner.inch))
    every = (joint_schedule(assembly, figures), *tables, caution_table(given_by_sheet(assembly)))
    return table_leaves("settings", "Joint schedule, machine settings", every, manner, MACHINES)


@dataclass(frozen=True, slots=True)
class OrderPages:
    """What tells the order of assembly, whatever stands on the views.

    Attributes:
        manner: paper and figures that it was made for.
        picture: the exploded picture.
        steps: the table of steps.
    """

    manner: Manner
    picture: tuple[Leaf, ...]
    steps: tuple[Leaf, ...]


def order_pages(assembly: Assembly, manner: Manner, yard: Yard) -> OrderPages:
    """The exploded picture and the steps.

    Args:
        assembly: the piece.
        manner: paper and figures.
        yard: whose boards decide which panels are glued up.
    """
    steps = assembly_tables(assembly, figures_of(manner), yard)
    given = assembly_given(assembly)
    table = table_leaves("assembly", "Order of assembly", steps, manner, given)
    return OrderPages(manner, exploded_leaf(assembly, manner), tuple(table))


def assembly_leaves(assembly: Assembly, pages: OrderPages, labelled: Collection[str]) -> tuple[Leaf, ...]:
    """The exploded picture, pictures of the boards that have no balloon yet, then the steps.

    Args:
        assembly: the piece.
        pages: picture and steps.
        labelled: ids of the boards whose balloons stand on views and sections.
    """
    picture, manner = pages.picture, pages.manner
    shown = labelled_in(standing.view.drawing for leaf in picture for standing in leaf.standing)
    told = {*labelled, *shown}
    shared = labels_beside(picture[0], assembly, manner, told) if len(picture) == 1 else None
    drawn = (shared,) if shared is not None else (*picture, *label_leaves(assembly, manner, told))
    return (*drawn, *pages.steps)


def hardware(assembly: Assembly, manner: Manner) -> tuple[Table, ...]:
    """The hardware, where there is any."""
    made = hardware_table(assembly, figures_of(manner))
    return (made,) if made.rows else ()


def assembly_given(assembly: Assembly) -> tuple[str, ...]:
    """What the order of assembly gives that calls for a caution; a piece that is turned over is lifted whole."""
    heavy = math.fsum(mass_kg(board) for board in assembly.boards) > HEAVY_KG
    return ("sanding", "finish", "lift") if heavy else ("sanding", "finish")


def given_by_sheet(assembly: Assembly) -> Mapping[str, Collection[str]]:
    """What each kind of sheet gives, in the set's order."""
    return {
        "cover": GIVEN,
        "arrangement, sections, details": TILT,
        "parts": MACHINES,
        "machine settings": MACHINES,
        "order of assembly": assembly_given(assembly),
    }
