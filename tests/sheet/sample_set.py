"""The sample desks' sets of sheets, each made once for all tests."""

from __future__ import annotations

import tempfile
from functools import lru_cache
from pathlib import Path

from shopdraw.build import build
from shopdraw.lists.buying import materials
from shopdraw.lists.cut_list import cut_list
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.set import Set, sheet_set
from shopdraw.wood.assembly import Assembly
from shopdraw.write.pdf import write_pdf

DESKS = ("harbour-office-desk", "chart-room-desk", "pilot-station-desk")
SAMPLES = Path(__file__).parents[2] / "sample_projects"


@lru_cache(maxsize=64)
def made(desk: str, style: str = "", paper_set: str = "wall", projection: str = "") -> tuple[Design, Assembly, Set]:
    """A sample's inputs, boards and set; style and projection "" as the piece has them."""
    design = read_piece(SAMPLES / f"{desk}.piece").design
    choices: dict[str, object] = {"set": paper_set}
    if style:
        choices["style"] = style
    if projection:
        choices["projection"] = projection
    design = design.model_copy(update={"drawing": design.drawing.model_copy(update=choices)})
    assembly = build(design)
    whole = sheet_set(design, assembly, (), cut_list(assembly, design), (materials(assembly, design),))
    return design, assembly, whole


@lru_cache(maxsize=64)
def pdf_of(desk: str, style: str = "", paper_set: str = "wall") -> Path:
    """A sample's set as a PDF file."""
    folder = Path(tempfile.mkdtemp())
    path = folder / f"{desk}-{style}-{paper_set}.pdf"
    write_pdf(made(desk, style, paper_set)[2].sheets, path)
    return path
