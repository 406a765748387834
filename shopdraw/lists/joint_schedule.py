"""The joint schedule: every joint of the piece, alike ones in one row, with what is fixed, what floats and its gaps."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shopdraw.lists.figures import Figures
from shopdraw.lists.table import Column, Table
from shopdraw.wood.assembly import Assembly, Joint
from shopdraw.wood.interference import closing
from shopdraw.wood.season import in_season
from shopdraw.wood.seasoned import seasoned_wood

TITLE = "Joint schedule"
COLUMNS = ("joint", "host", "guest", "width", "depth", "fit", "relief", "fixing", "gap", "further")


def joint_schedule(assembly: Assembly, figures: Figures) -> Table:
    """One row for joints that are cut and fixed alike.

    Hosts and their guests stand in the same order: "6.1a; 6.2a" and "6.1f, 6.1g; 6.2f, 6.2g".
    A gap is told at build and in both seasons.

    Args:
        assembly: the piece.
        figures: how the drawings write sizes.
    """
    rows: dict[tuple[str, ...], list[Joint]] = {}
    for joint in assembly.joints:
        rows.setdefault(_words(assembly, joint, figures), []).append(joint)
    made = [(words[0], *_who(assembly, joints), *words[1:]) for words, joints in rows.items()]
    return Table(TITLE, tuple(Column(head) for head in COLUMNS), tuple(made))


def _who(assembly: Assembly, joints: Sequence[Joint]) -> tuple[str, str]:
    """Labels of hosts, and of what enters each."""
    guests: dict[str, list[str]] = {}
    for joint in joints:
        held = guests.setdefault(labels(assembly, (joint.host,)), [])
        label = labels(assembly, joint.guest_boards or (joint.guest,))
        if label not in held:
            held.append(label)
    hosts: dict[str, list[str]] = {}
    for host, held in guests.items():
        hosts.setdefault(", ".join(held), []).append(host)
    return "; ".join(", ".join(alike) for alike in hosts.values()), "; ".join(hosts)


def labels(assembly: Assembly, boards: Sequence[str]) -> str:
    """Labels of boards; what isn't one is called by its id."""
    return ", ".join(assembly.board(name).label if assembly.has(name) else name for name in boards)


def _words(assembly: Assembly, joint: Joint, figures: Figures) -> tuple[str, ...]:
    width, depth, fit = _opening(joint, figures)
    relief = f"{figures.gap(joint.relief)} short of the floor" if joint.relief > 0.0 else ""
    return (
        joint.kind.replace("-", " "), width, depth, fit, relief, fixing(joint, figures),
        gap_words(assembly, joint, figures), "; ".join(_further(joint, figures)),
    )  # fmt: skip


def _opening(joint: Joint, figures: Figures) -> tuple[str, str, str]:
    """Width and depth of what is cut into the host, and its fit."""
    sizes = dict(joint.sizes)
    width, depth = sizes.get("width"), sizes.get("depth", sizes.get("mortise"))
    if width is None and "thickness" in sizes:
        width = sizes["thickness"] + joint.fit
    told = figures.size(depth) if depth is not None else ""
    if width is None:
        return "", told, ""
    if joint.fit <= 1e-9:
        return figures.size(width), told, ""
    whole, fit = figures.fitted(width - joint.fit, joint.fit)
    return whole, told, f"fit {fit}"


def fixing(joint: Joint, figures: Figures) -> str:
    """Whether a joint is glued, and over how much of it; whether it floats."""
    if joint.glued:
        for name, where in (("glue", "front"), ("glue-above", "upper")):
            glue = dict(joint.sizes).get(name)
            if glue:
                return f"glued over the {where} {figures.size(glue)}"
        return "glued"
    return "dry, floats" if joint.floats else "dry"


def gap_words(assembly: Assembly, joint: Joint, figures: Figures) -> str:
    """A joint's gap at build and in both seasons: "gap 1.3 at build, 2.1 dry, 0.4 wet"; "" where there is none."""
    if joint.gap <= 0.0:
        return ""
    told = [f"{figures.gap(size)} {when}" for when, size in gaps(assembly, joint)]
    return f"gap {', '.join(told)}"


def gaps(assembly: Assembly, joint: Joint) -> Iterator[tuple[str, float]]:
    """A joint's gap by season, mm: what it states at build, and what wood takes from it or gives to it till then."""
    yield "at build", joint.gap
    built, wood = closing(assembly, joint), seasoned_wood(assembly)
    moisture = assembly.moisture
    for when, percent in (("dry", moisture.dry), ("wet", moisture.wet)):
        season = in_season(assembly, percent)
        now = next((other for other in season.joints if other.id == joint.id), None)
        found = closing(season, now, wood) if now is not None else None
        if built is not None and built.gap is not None and found is not None and found.gap is not None:
            yield when, joint.gap + found.gap - built.gap


def _further(joint: Joint, figures: Figures) -> Iterator[str]:
    sizes = dict(joint.sizes)
    if "tails" in sizes:
        yield f"{sizes['tails']:.0f} tails {figures.size(sizes['tail'])} at shoulder, slope 1:{sizes['slope']:.0f}"
        half = figures.size(sizes["half-pin"])
        if "rear-half-pin" in sizes:
            half = f"{half} in front, {figures.size(sizes['rear-half-pin'])} at the rear"
        yield f"half pins {half}, pins {figures.size(sizes['pin'])}"
    elif "slope" in sizes:
        yield f"slope 1:{sizes['slope']:.0f}"
    if "lap" in sizes and "slope" in sizes:
        yield f"lap {figures.size(sizes['lap'])}"
    if "tenon" in sizes:
        yield f"tenon {figures.size(sizes['tenon'])} long, {figures.size(sizes['thickness'])} thick"
    if "angle" in sizes:
        yield f"mitre {figures.angle(sizes['angle'])}"
