"""All views of a set at one scale, dimensioned together: a fact goes to the first of them that has room for it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from shopdraw.drawing.mark import Area, Mark
from shopdraw.shape.path import Point, bounds
from shopdraw.sheet.arrangement import arranged_views
from shopdraw.sheet.arrangement_facts import arrangement_facts
from shopdraw.sheet.clearance_facts import clearance_facts
from shopdraw.sheet.detail_facts import detail_facts
from shopdraw.sheet.details import (
    Detail,
    Drawn,
    circle_of,
    draw_detail,
    lid_details,
    name_at_circle,
    name_near_circle,
)
from shopdraw.sheet.fact import Fact
from shopdraw.sheet.figure import write_figures
from shopdraw.sheet.foot_detail import foot_details, foot_facts, foot_plane
from shopdraw.sheet.ground import What, strokes_of
from shopdraw.sheet.joint_details import joint_details
from shopdraw.sheet.joint_facts import joint_facts
from shopdraw.sheet.joint_planes import joint_planes
from shopdraw.sheet.manner import Manner
from shopdraw.sheet.mark_words import ground_of
from shopdraw.sheet.moulding_details import moulding_details, moulding_facts
from shopdraw.sheet.own import Nowhere
from shopdraw.sheet.own_facts import own_facts, with_own_moves
from shopdraw.sheet.own_planes import with_own_planes
from shopdraw.sheet.places import Places
from shopdraw.sheet.plane_mark import plane_ends
from shopdraw.sheet.planes import CuttingPlane, cutting_planes
from shopdraw.sheet.section_balloons import section_balloons
from shopdraw.sheet.section_facts import section_facts
from shopdraw.sheet.sections import Cut, cut_view
from shopdraw.sheet.spread import Dimensioned, dimension_views
from shopdraw.sheet.view import Balloon, PlainView
from shopdraw.trade.scale import Scale
from shopdraw.wood.assembly import Assembly

UNKNOWN = "88-M18"
"""Stands for a sheet and a zone until views have their places; as wide as any."""


@dataclass(frozen=True, slots=True)
class SetViews:
    """Views with their facts.

    Attributes:
        planes, details: what is cut, what is enlarged.
        facts: all that is told.
        done: composed views and what found no room.
        scale: of arrangement and sections.
        detail_scales: of the details, by name.
        nowhere: tables of a person's own that do nothing.
    """

    planes: tuple[CuttingPlane, ...]
    details: tuple[Detail, ...]
    facts: tuple[Fact, ...]
    done: Dimensioned
    scale: Scale
    detail_scales: Mapping[str, Scale]
    nowhere: tuple[Nowhere, ...] = ()


def set_views(
    assembly: Assembly, manner: Manner, scale: Scale, detail_scale: Scale, given: Mapping[str, Scale] | None = None
) -> SetViews:
    """Arrangement, sections and details with their dimensions and balloons.

    A detail that has no room for all its facts is drawn at the next larger preferred scale where that tells more.

    Args:
        assembly: the piece.
        manner: paper, style and figures.
        scale: of arrangement and sections.
        detail_scale: of the details.
        given: the scales of some details, by name; they are kept.
    """
    own = cutting_planes(assembly)
    further = (*joint_planes(assembly, own), *foot_plane(assembly))
    planes, unheld = with_own_planes(assembly, (*own, *further), manner.own.planes)
    details = (
        *lid_details(assembly, planes),
        *joint_details(assembly, planes),
        *foot_details(assembly, planes),
        *moulding_details(assembly, planes),
    )
    arranged = arranged_views(assembly, planes, scale.ratio, manner.look)
    cuts = [cut_view(assembly, plane, scale.ratio) for plane in planes]
    at = {detail.name: (given or {}).get(detail.name, detail_scale) for detail in details}
    drawn = [_drawn(assembly, detail, at[detail.name]) for detail in details]
    flat = Places(assembly, (*(view.seen for view in arranged), *(cut.seen for cut in cuts)), scale.ratio)
    near = Places(assembly, tuple(detail.seen for detail in drawn), detail_scale.ratio)
    facts: tuple[Fact, ...] = (
        *arrangement_facts(flat, manner.writing, manner.look),
        *section_facts(flat, manner.writing),
        *detail_facts(near, manner.writing),
        *joint_facts(near, details, manner.figures),
        *foot_facts(near, details),
        *moulding_facts(near, details, manner.figures),
        *clearance_facts(near, details, manner.writing),
    )
    facts, unmoved = with_own_moves(facts, manner.own.moves)
    added, unadded = own_facts(facts, manner.own.dimensions, flat, near)
    facts = (*facts, *added)
    plain = [view.plain for view in arranged] + [_with_marks(cut, planes, details, scale, manner) for cut in cuts]
    ratios: Mapping[str, float] = {
        **{view.id: scale.ratio for view in plain},
        **{d.plain.id: at[d.detail.name].ratio for d in drawn},
    }
    labelled = {balloon.board for view in arranged for balloon in view.balloons}
    balloons: dict[str, Sequence[Balloon]] = {view.plain.id: view.balloons for view in arranged}
    balloons.update(section_balloons(assembly, cuts, labelled, scale.ratio))
    figures = write_figures(facts, manner.writing)
    done = dimension_views([*plain, *(d.plain for d in drawn)], facts, ratios, manner.look, figures, balloons)
    made = SetViews(planes, details, facts, done, scale, at, (*unheld, *unmoved, *unadded))
    return _enlarged(assembly, manner, made, figures, given or {})


def _drawn(assembly: Assembly, detail: Detail, scale: Scale) -> Drawn:
    return draw_detail(assembly, detail, scale.ratio, detail_title(detail, scale, UNKNOWN))


def _enlarged(
    assembly: Assembly, manner: Manner, made: SetViews, figures: Mapping[str, str], given: Mapping[str, Scale]
) -> SetViews:
    """Details whose facts found no room, at the next larger scale where fewer of them are left over."""
    done, at = made.done, dict(made.detail_scales)
    for detail in made.details:
        left = [entry for entry in done.unplaced if entry.view == detail.view]
        larger = next((s for s in reversed(manner.scales) if s.ratio > at[detail.name].ratio), None)
        if not left or larger is None or detail.name in given:
            continue
        told = {*done.views[detail.view].placed, *(entry.fact for entry in left)}
        facts = [fact for fact in made.facts if fact.id in told]
        plain = _drawn(assembly, detail, larger).plain
        tried = dimension_views([plain], facts, larger.ratio, manner.look, figures)
        if len(tried.unplaced) < len(left):
            others = tuple(entry for entry in done.unplaced if entry.view != detail.view)
            done = replace(done, views={**done.views, **tried.views}, unplaced=(*others, *tried.unplaced))
            at[detail.name] = larger
    return replace(made, done=done, detail_scales=at)


def detail_title(detail: Detail, scale: Scale, parent: str) -> str:
    """Below a detail: its name, its scale, and where its circle is."""
    return f"Detail {detail.name}, {scale.name} ({parent})"


def detail_name(detail: Detail, place: str) -> str:
    """At a detail's circle: its name and where it is drawn."""
    return f"{detail.name} / {place}"


def _with_marks(
    cut: Cut, planes: Sequence[CuttingPlane], details: Sequence[Detail], scale: Scale, manner: Manner
) -> PlainView:
    """A section with the planes that are drawn on it and the circles of its details."""
    ground = ground_of(cut.plain.marks, scale.ratio)
    circled = [detail for detail in details if detail.plane is cut.plane]
    marks = [*cut.plain.marks, *(circle_of(detail, scale.ratio, ground) for detail in circled)]
    lines, letters = plane_ends([plane for plane in planes if plane.on == cut.plain.id], scale.ratio, manner.look)
    for stroke in strokes_of(lines, What.VIEW, "", scale.ratio):
        ground.add_stroke(stroke)
    marks += lines
    middle = _middle(cut.plain.marks)
    names = list(letters)
    for detail in circled:
        words = detail_name(detail, UNKNOWN)
        if not detail.of_lid:
            names.append(name_near_circle(detail, words, scale.ratio, manner.look, middle))
        else:
            marks.append(name_at_circle(detail, words, scale.ratio, manner.look, ground))
    return replace(cut.plain, marks=tuple(marks), names=tuple(names))


def _middle(marks: Sequence[Mark]) -> Point:
    """The middle of a section's cut wood; of a view that cuts none, any point."""
    boxes = [bounds(mark.outline) for mark in marks if isinstance(mark, Area)] or [(0.0, 0.0, 0.0, 0.0)]
    low = min(b[0] for b in boxes), min(b[1] for b in boxes)
    high = max(b[2] for b in boxes), max(b[3] for b in boxes)
    return (low[0] + high[0]) / 2, (low[1] + high[1]) / 2
