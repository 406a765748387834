"""The trade's tables with their sources: species, moisture, lumber, sheet goods, paper, scales, hardware, cautions.

Knows no one piece. Tables lie in `resources/trade`; each row names its publication, or says 'common practice' or 'from
memory, to be confirmed'.
"""

from shopdraw.trade.cautions import Caution, all_cautions, cautions_for
from shopdraw.trade.drafting import (
    Lettering,
    LineGroup,
    TitleField,
    lettering,
    letterings,
    line_groups,
    title_block_fields,
)
from shopdraw.trade.hardware import (
    ButtHinge,
    Knob,
    WoodScrew,
    butt_hinge,
    butt_hinges,
    knob,
    knobs,
    pilot_mm,
    thread_mm,
    wood_screw,
)
from shopdraw.trade.lumber import (
    Dressed,
    Quarter,
    board_feet,
    dressed_softwood,
    export_tally,
    hardwood_quarter,
    hardwood_quarters,
    rough_quarter_for,
    surface_measure,
    tally_board_feet,
)
from shopdraw.trade.moisture import NoSuchAir, equilibrium_moisture
from shopdraw.trade.movement import Cut, change_mm, coefficient, coefficient_from_shrinkage, slope_holds
from shopdraw.trade.paper import PaperSize, paper, papers, papers_of
from shopdraw.trade.scale import Scale, preferred_scales, scale, scales
from shopdraw.trade.sheet_goods import (
    Panel,
    PlywoodThickness,
    SheetGoodsSize,
    metric_thicknesses_mm,
    panel,
    panels,
    plywood_thickness,
    plywood_thicknesses,
    sheet_size,
    sheet_sizes,
    thickness_tolerance_mm,
)
from shopdraw.trade.species import Species, all_species, species
from shopdraw.trade.table import NotInTable, Source

__all__ = [
    "ButtHinge",
    "Caution",
    "Cut",
    "Dressed",
    "Knob",
    "Lettering",
    "LineGroup",
    "NoSuchAir",
    "NotInTable",
    "Panel",
    "PaperSize",
    "PlywoodThickness",
    "Quarter",
    "Scale",
    "SheetGoodsSize",
    "Source",
    "Species",
    "TitleField",
    "WoodScrew",
    "all_cautions",
    "all_species",
    "board_feet",
    "butt_hinge",
    "butt_hinges",
    "cautions_for",
    "change_mm",
    "coefficient",
    "coefficient_from_shrinkage",
    "dressed_softwood",
    "equilibrium_moisture",
    "export_tally",
    "hardwood_quarter",
    "hardwood_quarters",
    "knob",
    "knobs",
    "lettering",
    "letterings",
    "line_groups",
    "metric_thicknesses_mm",
    "panel",
    "panels",
    "paper",
    "papers",
    "papers_of",
    "pilot_mm",
    "plywood_thickness",
    "plywood_thicknesses",
    "preferred_scales",
    "rough_quarter_for",
    "scale",
    "scales",
    "sheet_size",
    "sheet_sizes",
    "slope_holds",
    "species",
    "surface_measure",
    "tally_board_feet",
    "thickness_tolerance_mm",
    "thread_mm",
    "title_block_fields",
    "wood_screw",
]
