"""A piece judged by its solids: no shared wood and free ways at three moistures, joints that close."""

from shopdraw.build import build
from shopdraw.wood.interference import closing, overlaps
from shopdraw.wood.season import in_season
from shopdraw.wood.sweep import swept


def sound(design):
    """The piece as built, after it has stood every judge."""
    assembly = build(design)
    m = assembly.moisture
    for when, moisture in (("build", m.build), ("dry", m.dry), ("wet", m.wet)):
        now = in_season(assembly, moisture)
        assert overlaps(now.boards) == (), when
        assert swept(now.boards, now.motions) == (), when
    for joint in assembly.joints:
        found = closing(assembly, joint)
        assert found is None or found.closes(), f"{joint.id}: {found}"
    return assembly
