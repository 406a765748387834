"""The typed inputs of a piece: what a person decided, in mm and degrees, with a working default for each choice.

Every key of the piece file is a field here, so that errors, forms, undo and variants share one address for it
(`slant.top_depth`). How a piece is built from them is `build`'s affair. A default of None means that the value
follows from others and is worked out when the piece is built.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationInfo, field_validator, model_validator

from shopdraw.piece.quantity import Angle, Clearance, Count, Length, Number, Percent, PositiveLength, Ratio

Key = Annotated[str, Field(pattern=r"^[A-Za-z0-9][A-Za-z0-9_-]*$")]


class Table(BaseModel):
    """A table of the piece file: frozen, compared by value; keys that nobody knows are kept aside."""

    model_config = ConfigDict(frozen=True, extra="ignore", strict=True, allow_inf_nan=False, validate_default=False)


class PieceTable(Table):
    """[piece]: what it is and what its drawings say about it."""

    title: str = Field("Untitled piece", description="of the piece, as it stands on the title block")
    kind: Literal["slant-desk", "chest", "bookcase", "lectern", "free"] = Field(
        "slant-desk", description="what it is built as; each kind has members of its own"
    )
    units: Literal["mm", "inch"] = Field("mm", description="of bare numbers in this file and of the drawings")
    revision: str = Field("", description="letter or number of the drawings' state, on the title block")
    date: str = Field("", description="of issue, on the title block: 2026-03-02")
    number: str = Field("", description="identification number on the title block")
    owner: str = Field("", description="legal owner of the drawing")
    drawn_by: str = Field("", description="who drew it, on the title block")
    approved_by: str = Field("", description="who approved it, on the title block")
    shop: str = Field("", description="shop file, by a path relative to the piece file")


WIDTHS = ("width", "top_width", "foot_width")
"""What a width can be over: the case, its top, its feet."""


class CaseTable(Table):
    """[case]: over finished outsides; height from the floor to the upper face of the top.

    Exactly one width is given: over the case, over its top or over its feet.
    """

    width: PositiveLength | None = Field(description="over the sides' outer faces")
    top_width: PositiveLength | None = Field(
        None, description="over the ends of an overhanging top; given in the place of the case's width"
    )
    foot_width: PositiveLength | None = Field(
        None, description="over the plinth; given in the place of the case's width"
    )
    height: PositiveLength = Field(description="from the floor to the upper face of the top")
    depth: PositiveLength = Field(description="from the finished front plane to the sides' rear edges")
    top_joint: Literal["dovetail", "housed", "overhanging"] = Field(
        "dovetail", description="overhanging: the top lies over the sides, on a frame; not under a slant"
    )
    overhang: Length = Field(20.0, ge=0, description="of an overhanging top, in front and at both sides")
    dado: Literal["stopped", "through"] = Field(
        "stopped", description="stopped: it ends behind the front edge and isn't seen there; through: it runs out"
    )
    dado_depth: PositiveLength | None = Field(None, description="default: a third of the side's thickness")
    dado_stop: PositiveLength = Field(10.0, description="how far behind the front plane a stopped dado ends")
    fit: Length = Field(0.1, ge=0, description="how much wider than its guest a dado is")
    relief: Length = Field(0.0, ge=0, description="how far short of a dado's floor its guest ends")
    top_rail: PositiveLength | None = Field(
        None, description="from the writing surface down to the topmost drawer's opening; default from lid and front"
    )
    cutter_radius: PositiveLength | None = Field(
        None, description="of rounded ends; default 3 mm, in inch pieces 3.175"
    )
    tails: int | None = Field(
        None, ge=2, le=40, description="tails at each end of a dovetailed top; default from its depth"
    )
    tail_slope: Ratio | None = Field(None, description="8 for 1:8; default 8, in softwood 6")
    tail_pitch: PositiveLength | None = Field(
        None, description="from tail to tail of a fixed template; the half pins then take what is left"
    )
    dovetails: Literal["through", "clean-sides", "clean-top"] = Field(
        "through", description="half-blind ones show nothing on the sides, or nothing on the top"
    )
    dovetail_lap: PositiveLength | None = Field(
        None, description="wood left before half-blind dovetails; default a quarter of that board, at least 4 mm"
    )
    top_edge: Literal["square", "chamfer", "round", "ovolo", "cove", "ogee", "reverse-ogee"] = Field(
        "square", description="moulding on an overhanging top's upper edges, in front and at both ends"
    )
    top_edge_size: PositiveLength | None = Field(None, description="of that moulding; default 0.4 of the top")

    @model_validator(mode="before")
    @classmethod
    def _another_width_will_do(cls, given: object) -> object:
        if isinstance(given, Mapping) and "width" not in given and not {"top_width", "foot_width"}.isdisjoint(given):
            return {"width": None, **given}
        return given

    @field_validator("top_width", "foot_width")
    @classmethod
    def _one_width(cls, value: float | None, info: ValidationInfo) -> float | None:
        other = next((name for name in WIDTHS if info.data.get(name) is not None), None)
        if value is not None and other is not None:
            raise ValueError(f"expected one width only, and case.{other} is given: over the case, its top or its feet")
        return value

    @model_validator(mode="after")
    def _some_width(self) -> CaseTable:
        if self.width is None and self.top_width is None and self.foot_width is None:
            raise ValueError("expected one of width, top_width and foot_width")
        return self


class SlantTable(Table):
    """[slant]: exactly one of `angle` and `top_depth`; writing surface and lid."""

    writing_height: PositiveLength = Field(description="from the floor to the surface that one writes on")
    angle: Angle | None = Field(None, description="from level, degrees")
    top_depth: PositiveLength | None = Field(
        None, description="of the top's upper face, from the slant to the rear; given in the place of the angle"
    )
    start: PositiveLength | None = Field(None, description="height where the slant begins on an old piece, as measured")
    seat: Literal["on", "rabbeted", "flush"] = Field(
        "rabbeted", description="how the shut lid lies: on the sides, with a rabbet between them, or flush between them"
    )
    hinge_edge: Literal["lower", "upper"] = Field(
        "lower", description="the lid's edge that the hinges are at: lower as a desk has it, upper as a lectern has it"
    )
    joint_gap: PositiveLength = Field(0.5, description="between shelf and lid at the hinge line")
    pin_above_writing: Length = Field(0.0, description="height of the pin over the writing surface")
    pin_behind_front: Length | None = Field(
        None, description="how far the pin lies behind the front plane; default half the joint gap before it"
    )


class LidTable(Table):
    """[lid]: a panel, grain left to right, hinged on the writing shelf."""

    rabbet: PositiveLength | None = Field(
        None, description="depth of a rabbeted lid's rabbet; default 0.4 of its thickness"
    )
    lip: PositiveLength | None = Field(None, description="how far a rabbeted lid laps over the bevel; default 12 mm")
    lap: PositiveLength | None = Field(
        None, description="how far it laps over each side; default side's thickness less the reveal"
    )
    reveal: Length = Field(4.0, ge=0, description="what shows of the top's bevel beside the lid")
    clearance: PositiveLength | None = Field(
        None, description="between core or flush lid and the sides, each side; default 1 mm, or what its caps need"
    )
    top_clearance: PositiveLength | None = Field(None, description="at the upper end, from the seasons when not given")
    bevel: PositiveLength | None = Field(
        None, description="bevel kept on the top's edge; follows from lip and reveal where the lid has them"
    )
    ends: Literal["none", "square", "mitred", "mitred-both"] = Field(
        "none", description="breadboard caps at the panel's ends: square, or mitred at the free edge"
    )
    glue: Literal["hinge", "middle"] = Field(
        "hinge", description="where square caps are glued to the panel; mitred ones are at their mitre"
    )
    cap: PositiveLength = Field(60.0, description="width of a cap")
    tongue: PositiveLength | None = Field(None, description="length of the tongue in a cap; default half its width")
    tongue_below: PositiveLength | None = Field(
        None, description="from the writing face to the tongue, a third of the thickness; default in the middle"
    )
    groove_room: Length = Field(1.5, ge=0, description="how much deeper than the tongue a cap's groove is")
    pegs: int = Field(3, ge=2, le=7, description="pegs in each cap; the one at the hinge edge is fast, others slotted")
    peg: PositiveLength = Field(8.0, description="diameter of a peg")
    rabbet_bevel: Length = Field(
        0.0, ge=0, description="how far the core's three rabbeted edges lean in at the writing face"
    )
    edge: Literal["square", "chamfer", "round", "ovolo", "cove", "ogee", "reverse-ogee"] = Field(
        "square", description="moulding on the show face's three free edges"
    )
    edge_size: PositiveLength | None = Field(None, description="of that moulding; default a third of the lip or lid")
    lock: bool = Field(False, description="a lock let into the writing face, its bolt in the top's flat edge")
    lock_width: PositiveLength = Field(50.0, description="of the lock's body, along the edge")
    lock_height: PositiveLength = Field(32.0, description="of the lock's body, down from the core's edge")
    lock_depth: PositiveLength = Field(10.0, description="of the lock's body, into the writing face")
    keyhole: PositiveLength = Field(18.0, description="from the core's edge down to the middle of the keyhole")
    bolt: PositiveLength = Field(8.0, description="how far the lock's bolt goes into the top")
    ledge: PositiveLength | None = Field(
        None, description="a lectern's ledge: how far it stands over the lid's outer face; default 12 mm"
    )
    hinges: int = Field(3, ge=2, le=6, description="how many, along the lid's edge")
    stay_angle: Angle | None = Field(
        None, description="least slant, degrees from level, that the lid's stays are made for; by their maker"
    )
    stay_out: PositiveLength | None = Field(
        None, description="from the pin to a stay's fixing on the lid; default half of the lid"
    )
    stay_up: PositiveLength | None = Field(
        None, description="from the pin up to a stay's fixing on the side; default from the slant's rise"
    )
    hinge_length: PositiveLength = Field(60.0, description="of one hinge, along the edge")
    hinge_leaf: PositiveLength = Field(18.0, description="width of a leaf from the pin's centre")
    hinge_thickness: PositiveLength = Field(2.0, description="of a leaf: how deep it is let in")


class SupportsTable(Table):
    """[supports]: two sliding bars beside the topmost drawer, or metal stays in their place."""

    kind: Literal["bars", "stays"] = Field(
        "bars", description="stays: metal arms at the lid's ends; the topmost drawer is as wide as the others then"
    )
    clearance: PositiveLength | None = Field(
        None, description="each side of the bar; default 0.5 mm, beside a strip what that gains, too"
    )
    clearance_above: PositiveLength | None = Field(
        None, description="over the bar; default from its seasons, at least 1 mm"
    )
    reach: PositiveLength | None = Field(
        None, description="how far they pull out; default two thirds of the lid, a third kept inside"
    )
    layers: int = Field(1, ge=1, le=8, description="layers of its stock that a bar is glued up from, side by side")
    head: bool = Field(False, description="a solid front on each bar, of the stock of support.head")
    divider: PositiveLength | None = Field(
        None, description="depth of the dividers beside them; a guide stands behind each; default all the way back"
    )
    stop: bool = Field(False, description="a block on each bar that meets its divider's rear edge at full reach")


class BaseTable(Table):
    """[base]: a mitred plinth wrapped round the case, its lower edge straight or shaped between feet."""

    height: PositiveLength = Field(90.0, description="from the floor to the plinth's upper edge")
    foot_gap: Length = Field(1.5, ge=0, description="plinth's lower edge over the floor; the foot blocks stand on it")
    block: PositiveLength = Field(45.0, description="width of the foot blocks")
    feet: Literal["plain", "hollow", "ogee", "own"] = Field(
        "plain", description="plinth's lower edge: straight, or drawn once from a foot to the middle and mirrored"
    )
    foot: PositiveLength | None = Field(
        None, description="length of a shaped foot on the floor, from the plinth's corner; default covers its block"
    )
    rise: PositiveLength | None = Field(
        None, description="of the shaped edge between the feet; default 0.45 of the plinth"
    )
    foot_path: tuple[Length, ...] | None = Field(
        None, description="own edge, threes of across, up, radius: lines from a foot's inner end, with tangent arcs"
    )
    mitre: Literal["plain", "spline", "biscuits"] = Field(
        "plain", description="what strengthens the plinth's mitres; a spline's grain runs across the mitre"
    )
    edge: Literal["square", "chamfer", "round", "ovolo", "cove", "ogee", "reverse-ogee"] = Field(
        "square", description="moulding on the plinth's upper edge"
    )
    edge_size: PositiveLength | None = Field(None, description="of that moulding; default 0.4 of the plinth's boards")
    glue_blocks: bool = Field(False, description="short blocks glued in behind the plinth, under the case")


class BackTable(Table):
    """[back]: in the rear rabbets: plywood, shiplapped boards, or a frame with panels."""

    kind: Literal["panel", "boards", "frame"] = Field(
        "panel", description="panel: plywood; boards: shiplapped, grain up; frame: with panels floating in grooves"
    )
    board: PositiveLength = Field(90.0, description="width that a shiplapped board covers, about")
    lap: PositiveLength | None = Field(
        None, description="of shiplapped boards; default three times what one moves, at least 6 mm"
    )
    gap: PositiveLength | None = Field(
        None, description="between shiplapped boards at build; default what one gains and 0.5 mm"
    )
    member: PositiveLength = Field(60.0, description="width of a framed back's stiles, rails and muntins")
    panels: int | None = Field(None, ge=1, le=8, description="of a framed back, beside each other; default by width")
    rabbet_depth: PositiveLength | None = Field(
        None, description="forward from the rear edge; default the back's thickness + 1"
    )
    rabbet_width: PositiveLength | None = Field(None, description="into the side; default half its thickness")
    clearance: PositiveLength = Field(1.0, description="back smaller than its seat, each way")


class FrameTable(Table):
    """[frame]: the web frames that drawers run on."""

    rail: PositiveLength = Field(65.0, description="width of front and rear rails")
    rear_rail: PositiveLength | None = Field(None, description="width of rear rails; default as the front ones")
    runner: PositiveLength | None = Field(None, description="width of runners; default from what bears on them")
    fixing: Literal["front", "front-and-rear"] = Field(
        "front-and-rear",
        description="where the frames are glued to the sides; the rest is free to move with the seasons",
    )
    tenon: PositiveLength = Field(15.0, description="length of the glued front tenon")
    mortise: Literal["round", "square"] = Field(
        "round", description="round: tenons rounded to the mortises' ends; square: the mortises' corners are cleared"
    )
    dust_panels: bool = Field(False, description="plywood panels in grooves of the frames, of the stock of frame.panel")
    middle_over: PositiveLength | None = Field(
        None, description="a drawer wider than this has a runner under its middle; default none"
    )
    stops: bool = Field(False, description="a block on the front rail behind each drawer's front, so that it stops")


class DrawerTable(Table):
    """[drawer] for all, [drawer.KEY] for one of them."""

    front: Literal["inset", "lipped", "overlay"] | None = Field(
        None, description="overlay: before the case, screwed to the box's own front in slots"
    )
    lip: PositiveLength | None = Field(
        None, description="overlap of a lipped or overlay front, on each edge that has no other"
    )
    lip_left: Length | None = Field(None, ge=0, description="0: no lip on the left edge")
    lip_right: Length | None = Field(None, ge=0, description="0: no lip on the right edge")
    lip_top: Length | None = Field(None, ge=0, description="0: no lip on the upper edge")
    lip_bottom: Length | None = Field(None, ge=0, description="0: no lip on the lower edge")
    lip_thickness: PositiveLength | None = Field(None, description="of the lip, from the front's face to its shoulder")
    side_clearance: PositiveLength | None = Field(None, description="between the box and its opening, each side")
    top_clearance: PositiveLength | None = Field(
        None, description="between the box and its opening, above; default from the seasons"
    )
    reveal: PositiveLength | None = Field(
        None, description="gap beside and below an inset front; above it the seasons are added"
    )
    front_joint: Literal["tongue", "rabbet", "dovetail", "sliding"] | None = Field(
        None, description="between front and sides: dovetail is half-blind, sliding a dovetail pushed in from below"
    )
    back_joint: Literal["dado", "rabbet", "dovetail"] | None = Field(
        None, description="between back and sides: dovetail is through"
    )
    entry: PositiveLength | None = Field(None, description="how far the sides enter the front")
    tails: int | None = Field(None, ge=1, le=20, description="at each corner of the front; default from its height")
    tail_slope: Ratio | None = Field(None, description="of the drawer's dovetails, 8 for 1:8; default 8, in softwood 6")
    groove_up: PositiveLength | None = Field(None, description="bottom groove over the box's lower edge")
    drop: Length | None = Field(None, ge=0, description="back lower than the sides; 0 to 6 mm is usual")
    edge: Literal["square", "chamfer", "round", "ovolo", "cove", "ogee", "bead"] | None = Field(
        None, description="moulding round the front's face"
    )
    edge_size: PositiveLength | None = Field(None, description="of that moulding; default from the edge's thickness")
    knobs: int | None = Field(None, ge=0, le=4, description="or pulls, on each front; default one, over 450 mm two")
    handle: Literal["knob", "pull"] | None = Field(None, description="what a drawer is drawn by")
    knob_diameter: PositiveLength | None = Field(None, description="of a knob; default from its front's height")
    knob_projection: PositiveLength | None = Field(None, description="how far a knob stands out; default by its size")
    pull_centres: PositiveLength | None = Field(
        None, description="from post to post of a pull; default 64 mm, in inch pieces 2 1/2 in"
    )


class DrawersTable(DrawerTable):
    """[drawer]: choices for all drawers; tables below it, [drawer.KEY], are read into `each` by the reader."""

    front: Literal["inset", "lipped", "overlay"] = Field(
        "inset", description="overlay: before the case, screwed to the box's own front in slots"
    )
    lip: PositiveLength = Field(8.0, description="overlap of a lipped or overlay front, on each edge that has no other")
    lip_thickness: PositiveLength = Field(8.0, description="of the lip, from the front's face to its shoulder")
    reveal: PositiveLength = Field(
        1.0, description="gap beside and below an inset front; above it the seasons are added"
    )
    front_joint: Literal["tongue", "rabbet", "dovetail", "sliding"] = Field(
        "tongue", description="between front and sides: dovetail is half-blind, sliding a dovetail pushed in from below"
    )
    back_joint: Literal["dado", "rabbet", "dovetail"] = Field(
        "dado", description="between back and sides: dovetail is through"
    )
    entry: PositiveLength = Field(8.0, description="how far the sides enter the front")
    groove_up: PositiveLength = Field(10.0, description="bottom groove over the box's lower edge")
    drop: Length = Field(3.0, ge=0, description="back lower than the sides; 0 to 6 mm is usual")
    edge: Literal["square", "chamfer", "round", "ovolo", "cove", "ogee", "bead"] = Field(
        "square", description="moulding round the front's face"
    )
    handle: Literal["knob", "pull"] = Field("knob", description="what a drawer is drawn by")
    each: dict[str, DrawerTable] = Field(default_factory=dict)


class LevelTable(Table):
    """[level.ID]: a horizontal member; `top` from the floor, or none where it follows from others."""

    member: Literal["bottom", "web-frame", "shelf", "pinned-shelf"] = Field(
        description="what lies there: the bottom, a web frame under drawers, a shelf in dados, or a loose one on pins"
    )
    top: PositiveLength | None = Field(
        None, description="its upper face over the floor; without it levels share the room between their neighbours"
    )


class PinsTable(Table):
    """[pins]: what loose shelves lie on: pins in rows of holes in both sides."""

    pitch: PositiveLength = Field(32.0, description="from hole to hole; common practice")
    diameter: PositiveLength = Field(5.0, description="of a pin and its hole")
    depth: PositiveLength = Field(10.0, description="of a hole; 3 mm of the side are left at least")
    setback: PositiveLength = Field(37.0, description="from the shelf's front and rear edge to the rows of holes")
    spare: int = Field(2, ge=0, le=40, description="further holes over and under those that a shelf lies on")
    play: PositiveLength = Field(2.5, description="a loose shelf shorter than the clear width by this; 2 to 3 mm")


class FaceTable(Table):
    """[face]: a face frame before the case's front edges, or a desk's thick rails; the case's depth is over it."""

    kind: Literal["frame", "rails"] = Field(
        "frame", description="frame: stiles and rails before an open case; rails: between a desk's drawers, with strips"
    )
    rail: PositiveLength = Field(30.0, description="height of the rails between drawers, over the opening below")
    strip: Length | None = Field(
        None, ge=0, description="width of the strips down the sides' front edges; default the side's thickness, 0: none"
    )
    guide: PositiveLength = Field(25.0, description="height of the guides beside drawers and supports")
    kicker: PositiveLength = Field(40.0, description="width of the kickers over drawers")
    stile: PositiveLength = Field(45.0, description="width of the two stiles")
    upper: PositiveLength = Field(50.0, description="width of the upper rail")
    lower: PositiveLength = Field(40.0, description="width of the lower rail")
    overhang: Length = Field(0.0, ge=0, description="of the stiles beyond the sides' outer faces")
    tenon: PositiveLength = Field(25.0, description="length of the rails' tenons")


class DivideTable(Table):
    """opening.ID.divide: how an opening is divided; keys are given once and never used again for another."""

    by: Literal["rows", "columns"] = Field("rows", description="rows under each other, or columns beside each other")
    keys: tuple[Key, ...] = Field(("1", "2", "3", "4"), description="from the top down, or from the left")
    rule: Literal["equal", "given", "step", "ratio"] = Field(
        "step", description="equal: all alike; step and ratio: each larger than the one before; given: by its sizes"
    )
    step: Length | None = Field(
        None, description="each row higher than the one above by this; default 20 mm, in inch pieces 3/4 in"
    )
    ratio: Ratio | None = Field(None, description="each row higher than the one above by this factor")
    sizes: tuple[Clearance, ...] | None = Field(
        None, description="clear heights in the order of the keys; one may be 0 for what is left"
    )


class OpeningTable(Table):
    """[opening.ID]: a clear space above a level, what divides it and what fills it."""

    above: str = Field("bottom", description="the level that it stands on")
    divide: DivideTable = DivideTable()
    fill: Literal["drawer", "lid-supports", "pigeonhole", "none"] = Field(
        "drawer", description="what it holds: drawers, the lid's supports, pigeonholes or nothing"
    )


class WritingTable(Table):
    """[writing]: a slant-desk's writing shelf, one board, or a rear one that laps over the front one."""

    boards: Literal[1, 2] = Field(1, description="2: a rear board lapping over the front one, which carries the hinges")
    front_depth: PositiveLength | None = Field(
        None, description="of the front board, from its front edge; default so that the step lies before compartments"
    )
    lap: PositiveLength | None = Field(
        None, description="how far the rear board lies over the front one; default from the seasons, at least 12 mm"
    )
    step: PositiveLength | None = Field(
        None, description="of the rear board's upper face over the front one's; default half its thickness"
    )
    edge: Literal["square", "chamfer", "round", "ovolo", "cove", "ogee", "reverse-ogee", "bead"] = Field(
        "ovolo", description="moulding on the step's upper edge"
    )
    edge_size: PositiveLength | None = Field(None, description="of that moulding; default 0.4 of the step")


class BayTable(Table):
    """[compartments.KEY]: one bay, counted from the left; what it leaves out is as for all bays."""

    width: PositiveLength | None = Field(None, description="clear; bays without a width share what is left")
    shelves: tuple[PositiveLength, ...] | None = Field(
        None, description="clear heights under each of its shelves, from the lowest up"
    )
    drawers: int | None = Field(None, ge=0, le=6, description="how many spaces, from the lowest up, have a drawer")
    bracket: Literal["none", "arch", "scallop", "own"] | None = Field(None, description="at the head of the bay")


class CompartmentsTable(BayTable):
    """[compartments]: partitions, small shelves and drawers, brackets and a back, behind a slant or in an opening."""

    bays: int | None = Field(None, ge=1, le=16, description="how many, keyed 1, 2, ...; else the opening's columns")
    shelves: tuple[PositiveLength, ...] = Field(
        (), description="clear heights under the shelves of every bay, from the lowest up"
    )
    drawers: int = Field(0, ge=0, le=6, description="how many spaces, from the lowest up, have a drawer")
    bracket: Literal["none", "arch", "scallop", "own"] = Field("arch", description="at the head of every bay")
    front: PositiveLength | None = Field(
        None, description="how far behind the front plane their plumb front stands; default clear of the closed lid"
    )
    clearance: Length = Field(6.0, ge=0, description="kept between them and the closed lid; common practice")
    proud: Length = Field(0.0, ge=0, description="what stands proud of the lid's inner face: lock, leather, cup")
    knob: Length = Field(12.0, ge=0, description="how far a small drawer's knob stands out; it clears the lid, too")
    groove: PositiveLength | None = Field(None, description="depth of the partitions' grooves; default 4 mm, 3/16 in")
    stop: PositiveLength = Field(6.0, description="how far behind the front the partitions' grooves stop")
    point: PositiveLength | None = Field(
        None, description="of the V joints' points; default half the shelf's thickness, where the partition allows"
    )
    reveal: PositiveLength = Field(0.8, description="gap beside and below small drawers; the seasons are added above")
    bracket_height: PositiveLength = Field(40.0, description="of the brackets at their ends")
    bracket_setback: Length = Field(6.0, ge=0, description="of the brackets behind the partitions' front edges")
    bracket_path: tuple[Number, ...] | None = Field(
        None,
        description="own lower edge, from the end to the middle: across (0 to 1), up (0 to 1), bulge of what follows",
    )
    back: bool | None = Field(None, description="a solid back in grooves; default behind a slant only")
    each: dict[str, BayTable] = Field(default_factory=dict)


class StockTable(Table):
    """[stock.NAME]: species or sheet, as measured."""

    species: str = Field("cherry_black", description="species or sheet, by its key in the trade tables")
    kind: Literal["solid", "sheet"] = Field("solid", description="solid wood, or a sheet such as plywood")
    thickness: PositiveLength = Field(description="as measured")
    nominal: str = Field("", description="rough thickness by the trade's name: 4/4")
    cut: Literal["flat", "quarter", "unknown"] = Field(
        "unknown", description="how the boards are sawn, which says how much they move"
    )
    coefficient: float | None = Field(None, description="change across the grain per 1 % of moisture, if measured")
    density: float | None = Field(None, gt=0, description="kg/m³ at 12 % moisture, if weighed")
    stiffness: float | None = Field(None, gt=0, description="modulus of elasticity along the grain, GPa, if stated")
    measured: bool = Field(
        True, description="whether the thickness was measured on the wood at hand; no: it is what the yard calls it"
    )
    widths: tuple[PositiveLength, ...] | None = Field(
        None, description="dressed widths of the boards at hand; a wider panel is glued up from them"
    )
    jointing: Length = Field(1.5, ge=0, description="lost on each edge of a board at hand that is jointed")
    waste: Percent | None = Field(None, description="allowance when buying, percent; default 15")
    waste_reason: str = Field("", description="why it is that much; printed with it")
    sheet: str = Field(
        "", description="size a sheet is sold in, by its key in the trade tables; default 4x8, in mm pieces 1220x2440"
    )
    turn: bool = Field(
        False, description="its parts may lie with their grain across the sheet: painted, or without grain"
    )

    @model_validator(mode="after")
    def _wood_keeps_its_grain(self) -> StockTable:
        if self.turn and self.kind == "solid":
            raise ValueError('expected turn = true for kind = "sheet" only: solid wood always keeps its grain')
        return self


class LoadTable(Table):
    """[load]: what the piece will carry, and whether it is held to a wall."""

    shelf: float | None = Field(None, gt=0, description="kg on each metre of a shelf; default books, 30 kg")
    contents: float | None = Field(None, ge=0, description="kg in each cubic metre of a drawer; default 136 kg")
    hung: float | None = Field(
        None, ge=0, description="kg that may hang on an open drawer or on the lid's edge; default a child of 27 kg"
    )
    anchored: bool = Field(False, description="whether the piece will be fixed to a wall")


class ClimateTable(Table):
    """[climate]: moisture of the wood when built and in the driest and wettest season; or the air that causes it."""

    build: Percent = Field(8.0, description="moisture of the wood when the piece is built, percent")
    dry: Percent = Field(6.0, description="moisture of the wood in the driest season, percent")
    wet: Percent = Field(12.0, description="moisture of the wood in the wettest season, percent")
    temperature: float = Field(20.0, ge=-1.1, le=54.0, description="of the air, °C, where humidity is given")
    humidity_build: Percent | None = Field(
        None, description="relative humidity of the shop's air; then `build` follows"
    )
    humidity_dry: Percent | None = Field(
        None, description="relative humidity of the room's air in the driest season; then `dry` follows"
    )
    humidity_wet: Percent | None = Field(
        None, description="relative humidity of the room's air in the wettest season; then `wet` follows"
    )


class DrawingTable(Table):
    """[drawing]: how the sheets look."""

    set: Literal["wall", "bench"] = Field(
        "wall", description="wall: large sheets to hang up; bench: small ones to have at hand"
    )
    paper: str | None = Field(None, description="A1, ARCH D, ...; default by style and set")
    style: Literal["iso", "asme"] | None = Field(
        None, description="rules that the sheets follow; default ASME for inch pieces, else ISO"
    )
    projection: Literal["first", "third"] | None = Field(
        None, description="where side and plan stand; default third angle for inch pieces, else first angle"
    )
    language: str = Field("en", description="of the sheets, for the title block")
    decimal: Literal["point", "comma"] = Field("point", description="sign in the figures of the sheets")
    denominator: int = Field(16, description="of printed fractions: 2, 4, 8, 16, 32 or 64")
    dual: bool = Field(False, description="whether sizes stand in the other unit as well")
    smallest_print: str | None = Field(
        None, description="smallest paper that the sheets may be printed on, with letters that can still be read"
    )
    template_paper: Literal["roll", "A4", "Letter", "A3", "Tabloid"] | None = Field(
        None, description="that templates are tiled on; roll: each in one piece"
    )


class CutTable(Table):
    """[cut.ID]: a person's own hole or notch in one board, with its reason."""

    board: str = Field(description="id of the board")
    face: Literal["face", "back", "near", "far", "foot", "head"] = Field(
        "face", description="entered from: reference face or its back, an edge, or the reference end or the other"
    )
    shape: Literal["round", "rectangle"] = Field("round", description="of the hole or notch")
    along: Length = Field(description="its middle: from the reference end; on an end, from the reference edge")
    across: Length = Field(description="its middle: from the reference edge; else from the reference face")
    diameter: PositiveLength = Field(60.0, description="of a round one")
    length: PositiveLength = Field(60.0, description="of a rectangle, in the way that `along` is measured")
    width: PositiveLength = Field(60.0, description="of a rectangle, in the way that `across` is measured")
    radius: Length = Field(0.0, ge=0, description="of a rectangle's corners")
    depth: PositiveLength | None = Field(None, description="from that face; default through")
    reason: str = Field(description="what it is for; printed with it")


class FittingTable(Table):
    """[fitting.ID]: one fitting as it is at hand, by its id in the hardware list."""

    length: PositiveLength | None = Field(None, description="of a screw; default the shortest that bites well")


class NoteTable(Table):
    """[note.ID]: words on anything."""

    on: str = Field(description="what it is about: id of a board, a joint or an opening")
    text: str = Field(description="the words, as they are printed")


class SilenceTable(Table):
    """[silence.ID]: a finding that a person has looked at, with the reason."""

    code: str = Field(description="of the finding, as the list of findings has it")
    where: str = Field("", description="the board or place that is meant; all where nothing is said")
    reason: str = Field(description="why it is all right here; printed with it")


OwnSide = Literal["left", "right", "above", "below"]


class MoveTable(Table):
    """[move.ID]: where a person wants a dimension to stand, whatever the sizes become."""

    of: str = Field(description='the dimension: "feature/feature@view"')
    side: OwnSide | None = Field(None, description="of the view; default where it costs least")
    row: Count | None = Field(None, description="1 for the row nearest to the view")
    offset: Clearance = Field(0.0, description="how much further out its row stands, on paper")


class DimensionTable(Table):
    """[dimension.ID]: a dimension that a person wants besides those that are there."""

    of: str = Field(description='the two features: "feature/feature"')
    view: str = Field(description='"front", "side", "plan", "section.A", "detail.d1"')
    side: OwnSide | None = Field(None, description="of the view; default where it costs least")
    row: Count | None = Field(None, description="1 for the row nearest to the view")
    offset: Clearance = Field(0.0, description="how much further out its row stands, on paper")


class PlaneTable(Table):
    """[plane.LETTER]: a cutting plane moved, or one more."""

    at: Length = Field(description="from the case's left side, the front plane or the floor")
    cuts: Literal["front-to-back", "side-to-side", "level"] | None = Field(
        None, description="which way it runs; needed for a letter that isn't there yet"
    )


class RevisionTable(Table):
    """[revision.ID]: what a revision froze, and what had been cut by then."""

    date: str = Field("", description="on which it was frozen")
    note: str = Field("", description="what has changed, for the revision table")
    boards: tuple[str, ...] = Field((), description="a line a board: id, label, sizes, fingerprint; freezing writes it")
    cut: tuple[str, ...] = Field((), description="boards already cut, by id or label")


class BoardTable(Table):
    """[board.ID]: one board's own stock, grain words, note."""

    stock: str | None = Field(None, description="another stock than its member's, by its name")
    note: str | None = Field(None, description="printed beside the board on its part sheet")
    name: str | None = Field(None, description="what the board is called on the sheets")
    turn: bool | None = Field(
        None, description="it may lie with its grain across the sheet; default as its stock says"
    )


class PhotoTable(Table):
    """[photo.ID]: a photo of an old piece behind a view, to trace its proportions."""

    file: str = Field(description="the photo, by a path relative to the piece file")
    view: Literal["front", "side", "plan"] = Field("front", description="the view that it lies behind")
    points: tuple[Number, ...] | None = Field(
        None, description="x and y, pixels, of four points: lower left, lower right, upper right, upper left"
    )
    width: PositiveLength = Field(1000.0, description="from the left points to the right ones, on the piece")
    height: PositiveLength = Field(1000.0, description="from the lower points to the upper ones, on the piece")
    left: Length = Field(0.0, description="where the lower left point lies in the view, from the case's left or front")
    up: Length = Field(0.0, description="and from the floor")
    fade: Percent = Field(50.0, description="how much of the photo is faded out")


class Design(Table):
    """Everything that a person decided about a piece."""

    format: int = 1
    piece: PieceTable = PieceTable()
    case: CaseTable
    slant: SlantTable | None = None
    stock: dict[str, StockTable] = Field(default_factory=dict)
    use: dict[str, str] = Field(default_factory=dict, description="member to stock; the most exact name wins")
    level: dict[str, LevelTable] = Field(default_factory=dict)
    opening: dict[str, OpeningTable] = Field(default_factory=dict)
    drawer: DrawersTable = DrawersTable()
    lid: LidTable = LidTable()
    supports: SupportsTable = SupportsTable()
    base: BaseTable = BaseTable()
    back: BackTable = BackTable()
    frame: FrameTable = FrameTable()
    pins: PinsTable = PinsTable()
    face: FaceTable | None = None
    writing: WritingTable = WritingTable()
    compartments: CompartmentsTable = CompartmentsTable()
    climate: ClimateTable = ClimateTable()
    load: LoadTable = LoadTable()
    drawing: DrawingTable = DrawingTable()
    board: dict[str, BoardTable] = Field(default_factory=dict)
    cut: dict[str, CutTable] = Field(default_factory=dict)
    fitting: dict[str, FittingTable] = Field(default_factory=dict)
    photo: dict[str, PhotoTable] = Field(default_factory=dict)
    note: dict[str, NoteTable] = Field(default_factory=dict)
    silence: dict[str, SilenceTable] = Field(default_factory=dict)
    move: dict[str, MoveTable] = Field(default_factory=dict)
    dimension: dict[str, DimensionTable] = Field(default_factory=dict)
    plane: dict[str, PlaneTable] = Field(default_factory=dict)
    revision: dict[str, RevisionTable] = Field(default_factory=dict, description="frozen ones, the last one last")
