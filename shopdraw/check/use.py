"""How a piece suits who sits at it and what holds its lid: writing height, knee room, stays and hinges."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from shopdraw.build.stay import stay_size
from shopdraw.check.figure import mm
from shopdraw.check.subject import Subject
from shopdraw.trade.loads import GRAVITY, figure
from shopdraw.wood.finding import Finding, Severity
from shopdraw.wood.interference import box_of
from shopdraw.wood.volume import mass_kg


def use_findings(subject: Subject) -> Iterator[Finding]:
    """All findings about use."""
    yield from writing_height(subject)
    yield from knee_room(subject)
    yield from stays_flat(subject)
    yield from stays_pull(subject)
    yield from hinges_apart(subject)


def writing_height(subject: Subject) -> Iterator[Finding]:
    """A note: a desk's writing surface lower or higher than the standard has it; at a lectern one stands."""
    if subject.desk is None:
        return
    height = subject.desk.writing
    lowest, highest = figure("writing", "lowest"), figure("writing", "highest")
    if lowest.value <= height <= highest.value:
        return
    limit = lowest if height < lowest.value else highest
    yield Finding(
        "writing-height",
        Severity.NOTE,
        ("shelf.writing",),
        f"the writing surface is {mm(height)} mm above the floor; the standard for fixed desks has "
        f"{mm(lowest.value)} to {mm(highest.value)} mm, and 28 to 30 in, 711 to 762 mm, are usual",
        height,
        limit.value,
        basis=limit.source.publication,
        right=("slant.writing_height", f"{limit.value:g} mm"),
    )


def knee_room(subject: Subject) -> Iterator[Finding]:
    """A note for each way in which the room under a desk's open lid is less than what knees need."""
    slant = subject.assembly.slant
    if subject.desk is None or slant is None:
        return
    bars = [motion for motion in subject.assembly.motions if motion.id.startswith("support.")]
    # they are drawn straight forward, and stand as far apart as at rest
    boxes = [[box_of(subject.assembly.board(name)) for name in motion.boards] for motion in bars]
    spans = sorted((min(box[0] for box in own), max(box[3] for box in own)) for own in boxes)
    clear = max((there[0] - here[1] for here, there in pairwise(spans)), default=slant.lid_width_mm)
    room = {
        "height": (slant.writing_height_mm - slant.lid_thickness_mm, "high under the open lid"),
        "depth": (slant.open_projection_mm, "deep from the front plane to the open lid's edge"),
        "width": (clear, "wide between the drawn supports"),
    }
    for name, (found, words) in room.items():
        need = figure("knees", name)
        if found < need.value - 1e-6:
            yield Finding(
                "knee-room",
                Severity.NOTE,
                ("lid", "shelf.writing") if name != "width" else tuple(motion.id for motion in bars),
                f"the room for knees is {mm(found)} mm {words}; to sit at it all day takes {mm(need.value)} mm "
                "or more",
                found,
                need.value,
                basis=need.source.publication,
            )


def stays_flat(subject: Subject) -> Iterator[Finding]:
    """A caution: stays on a slant so flat that they don't bring the lid level."""
    slant = subject.assembly.slant
    stays = [one for one in subject.assembly.hardware if one.kind.startswith("lid stay")]
    if slant is None or subject.slanted is None or not stays:
        return
    usual = figure("lid", "stay_angle")
    given = subject.design.lid.stay_angle
    least = usual.value if given is None else given
    if slant.angle_from_level_deg < least - 1e-9:
        basis = usual.source.publication if given is None else "the stays' maker, as the piece says"
        yield Finding(
            "stay-flat",
            Severity.CAUTION,
            (*(one.id for one in stays), "lid"),
            f"the slant is {slant.angle_from_level_deg:.1f}° from level and the lid's stays are made for {least:g}° or "
            "steeper: they may not bring the lid level. Choose them before the case is drawn, and put their least "
            "angle in lid.stay_angle; sliding supports hold at any slant",
            slant.angle_from_level_deg,
            least,
            "deg",
            basis,
        )


def stays_pull(subject: Subject) -> Iterator[Finding]:
    """A note: what each stay holds with the lid level, by its own weight and with a weight on its edge, N."""
    plan, slant = subject.slanted, subject.assembly.slant
    if plan is None or slant is None or not any(one.id.startswith("stay.") for one in subject.assembly.hardware):
        return
    size = stay_size(plan)
    # the stay's line passes the pin at this distance
    lever = size.up * size.out / size.length
    own = sum(mass_kg(board) for board in subject.assembly.boards if board.id.startswith("lid"))
    given = subject.design.load.hung
    hung = figure("load", "child").value if given is None else given
    alone = GRAVITY * own * slant.lid_length_mm / 2 / lever / 2
    loaded = alone + GRAVITY * hung * slant.lid_length_mm / lever / 2
    yield Finding(
        "stay-pull",
        Severity.NOTE,
        ("stay.left", "stay.right"),
        f"with the lid level each stay pulls {alone:.0f} N, and {loaded:.0f} N with {hung:.1f} kg on the lid's edge, "
        f"{mm(lever)} mm from the pin: choose stays and screws that are made for it; fixed higher on the side or "
        "further out on the lid they pull less",
        loaded,
        None,
        "N",
        "moments about the pin: weight by the distance of its centre of gravity",
    )


def hinges_apart(subject: Subject) -> Iterator[Finding]:
    """A caution: hinges so far apart that the lid's edge opens between them."""
    lid = subject.assembly
    if not lid.has("lid"):
        return
    board = lid.board("lid")
    named = zip(board.cut_ids, board.shape.cuts, strict=True)
    places = sorted(
        sum(c.x for c in cut.outline.corners) / len(cut.outline.corners)
        for name, cut in named
        if name.startswith("hinge:lid:")
    )
    most = figure("lid", "hinges_apart")
    widest = max((there - here for here, there in pairwise(places)), default=0.0)
    if widest > most.value + 1e-9:
        count = len(places) + 1
        while (places[-1] - places[0]) / (count - 1) > most.value:
            count += 1
        yield Finding(
            "hinges-apart",
            Severity.CAUTION,
            ("lid",),
            f"the lid's hinges stand {mm(widest)} mm apart; right would be {mm(most.value)} mm at most: {count} hinges",
            widest,
            most.value,
            basis=most.source.publication,
            right=("lid.hinges", str(count)),
        )
