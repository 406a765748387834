"""Entities written in runs are the bytes that the library writes for the same entities."""

from __future__ import annotations

import io

import pytest

from shopdraw.write.dxf import fixed_metadata, new_document, save
from shopdraw.write.dxf_run import add_line, add_solid, add_text

PLAIN: dict[str, object] = {"layer": "0"}
DRESSED: dict[str, object] = {"layer": "0", "linetype": "CONTINUOUS", "color": 8}
CORNERS = ((0.0, 0.0), (2.5, 0.0), (2.5, 1.25), (0.0, 1.25))


def written(version: str, *, in_runs: bool) -> bytes:
    with fixed_metadata():
        file = new_document("mm", version)
        spaces = [file.modelspace(), file.blocks.new("B")]
        if version != "R12":
            spaces.append(file.layouts.new("Sheet"))
        for space in spaces:
            for attributes in (PLAIN, DRESSED):
                if in_runs:
                    add_line(space, (1.0, 2.0), (3.5, -4.25), attributes)
                    add_text(space, "31 1/2", (5.0, 6.0), 2.5, "STANDARD", attributes)
                    add_text(
                        space, "%%%d", (5.0, 6.0), 2.5, "STANDARD", attributes, turned_deg=90.0, width=0.75, anchor=1
                    )
                    add_solid(space, CORNERS, attributes)
                else:
                    space.new_entity("LINE", {**attributes, "start": (1.0, 2.0), "end": (3.5, -4.25)})
                    words = {**attributes, "insert": (5.0, 6.0), "height": 2.5, "style": "STANDARD"}
                    space.new_entity("TEXT", {**words, "text": "31 1/2"})
                    turned = {"rotation": 90.0, "width": 0.75, "halign": 1, "align_point": (5.0, 6.0)}
                    space.new_entity("TEXT", {**words, "text": "%%%d", **turned})
                    space.add_solid(CORNERS, dict(attributes))
                space.add_circle((1.0, 1.0), 2.0, dict(PLAIN))
        to = io.BytesIO()
        save(file, to)
        return to.getvalue()


@pytest.mark.parametrize("version", ["R12", "R2010", "R2018"])
def test_a_run_is_written_as_the_library_writes_its_entities_one_by_one(version: str) -> None:
    assert written(version, in_runs=True) == written(version, in_runs=False)
