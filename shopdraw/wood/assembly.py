"""Joints, hardware, motions and the whole piece as values; derived facts about levels, openings and the slant."""

from __future__ import annotations

from dataclasses import dataclass, field

from shopdraw.shape.frame import Frame, Vec3
from shopdraw.shape.path import Path
from shopdraw.wood.board import Board


@dataclass(frozen=True)
class Body:
    """The body of a joint: a prism in world coordinates.

    Attributes:
        frame: its plane's frame; the third axis points out of the host, the prism runs from `at` against it.
        outline: in the frame's first two axes, mm.
        depth: how far it reaches into the host, mm.
    """

    frame: Frame
    outline: Path
    depth: float


@dataclass(frozen=True)
class Joint:
    """Board to board, or a sub-assembly to a board.

    Attributes:
        id: `kind:host:guest`.
        kind: "dado", "rabbet", "mortise-and-tenon", "dovetail", "groove", "mitre", "butt", ...
        host: id of the board that is cut into.
        guest: id of the board or sub-assembly that enters.
        guest_boards: ids of the boards that share the body.
        body: the wood that stands in the host, or None for a joint without one (butt, mitre).
        fit: how much wider than the guest the host's opening is, mm.
        relief: how far short of the host's floor the guest ends, mm.
        glued: whether the surfaces are glued.
        floats: whether the guest may slide in the host as the wood moves.
        gap: the open space left for movement at build, mm.
        sizes: further sizes by name, mm.
    """

    id: str
    kind: str
    host: str
    guest: str
    guest_boards: tuple[str, ...] = ()
    body: Body | None = None
    fit: float = 0.0
    relief: float = 0.0
    glued: bool = True
    floats: bool = False
    gap: float = 0.0
    sizes: tuple[tuple[str, float], ...] = ()


@dataclass(frozen=True, slots=True)
class Hardware:
    """A fitting: hinge, knob, screw; `on` are the boards that carry it; sizes in mm by name.

    Attributes:
        through: of a screw, what it passes before it bites, from its head's seat, mm; 0 for other fittings.
        room: the wood before it, as far as it may go without coming out, mm.
    """

    id: str
    kind: str
    quantity: int
    on: tuple[str, ...]
    sizes: tuple[tuple[str, float], ...] = ()
    through: float = 0.0
    room: float = 0.0


@dataclass(frozen=True, slots=True)
class Motion:
    """What opens: `turn` about a line by degrees (right-handed), or `slide` along a direction by mm.

    `after` names the motions that come first: a small drawer behind a lid slides when the lid is open.
    """

    id: str
    boards: tuple[str, ...]
    kind: str
    point: Vec3
    direction: Vec3
    reach: float
    after: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class LevelFact:
    """A horizontal member as derived: heights from the floor, dados from the side's foot, mm."""

    id: str
    kind: str
    top: float
    thickness: float
    dado_bottom: float | None
    dado_width: float | None
    dado_depth: float | None


@dataclass(frozen=True, slots=True)
class OpeningFact:
    """A clear opening between members, mm; `use` is drawer, lid-supports, pigeonhole or none."""

    id: str
    use: str
    bottom: float
    height: float
    width: float
    depth: float
    left: float = 0.0
    front: float = 0.0


@dataclass(frozen=True, slots=True)
class Moisture:
    """Moisture content in percent: when built, and in the driest and wettest season."""

    build: float
    dry: float
    wet: float


@dataclass(frozen=True, slots=True)
class SlantFact:
    """Everything derived about the slant and its lid, mm and degrees; the fields of the `facts` contract."""

    seat: str
    hinge_edge: str
    angle_from_level_deg: float
    saw_tilt_deg: float
    run_mm: float
    rise_mm: float
    slope_length_mm: float
    slant_start_mm: float
    top_depth_mm: float
    hinge_pin_mm: tuple[float, float]
    hinge_gap_mm: float
    pin_above_writing_mm: float
    writing_height_mm: float
    lid_inset_mm: float
    lid_thickness_mm: float
    lid_length_mm: float
    lid_width_mm: float
    core_length_mm: float
    core_width_mm: float
    lip_mm: float
    top_bevel_mm: float
    top_flat_mm: float
    top_blank_depth_mm: float
    open_projection_mm: float
    support_extension_mm: float | None
    support_top_mm: float | None
    support_droop_mm: float | None


@dataclass(frozen=True)
class Assembly:
    """The whole piece, derived: boards in file order, then by id; everything closed and at rest."""

    title: str
    kind: str
    width: float
    depth: float
    height: float
    boards: tuple[Board, ...]
    joints: tuple[Joint, ...] = ()
    hardware: tuple[Hardware, ...] = ()
    motions: tuple[Motion, ...] = ()
    levels: tuple[LevelFact, ...] = ()
    openings: tuple[OpeningFact, ...] = ()
    slant: SlantFact | None = None
    moisture: Moisture = Moisture(8.0, 6.0, 12.0)
    _by_id: dict[str, Board] = field(init=False, repr=False, compare=False, hash=False, default_factory=dict)

    def __post_init__(self) -> None:
        self._by_id.update((board.id, board) for board in self.boards)

    def board(self, board_id: str) -> Board:
        """The board with this id.

        Raises:
            KeyError: there is none.
        """
        return self._by_id[board_id]

    def has(self, board_id: str) -> bool:
        """Whether there is a board with this id."""
        return board_id in self._by_id
