"""Reads the measures off the shipped fonts: run by hand after a font has changed; a test compares them.

Run: python tests/font_measures.py
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

from fontTools.ttLib import TTFont

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from shopdraw.drawing.letters import FONTS, font_file

FILE = ROOT / "resources" / "fonts" / "measures.json"


def measures() -> dict[str, dict[str, object]]:
    """By font its em and, by character, advance, least and greatest height of the ink, in the font's own units."""
    found: dict[str, dict[str, object]] = {}
    for name in FONTS:
        with TTFont(font_file(name)) as font:
            glyf, advances = font["glyf"], font["hmtx"].metrics
            glyphs = {}
            for code, glyph in sorted(font.getBestCmap().items()):
                outline = glyf[glyph]
                drawn = outline.numberOfContours != 0
                glyphs[chr(code)] = [advances[glyph][0], *((outline.yMin, outline.yMax) if drawn else (0, 0))]
            found[name] = {"em": font["head"].unitsPerEm, "glyphs": glyphs}
    return found


if __name__ == "__main__":
    FILE.write_text(json.dumps(measures(), ensure_ascii=False, separators=(",", ":")) + "\n", encoding="utf-8")
    print(FILE.relative_to(ROOT))
