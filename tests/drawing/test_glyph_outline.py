"""Letters as outlines stand where the letters themselves do: judged by the font's own rasteriser."""

import math

import pytest
from PIL import Image, ImageDraw, ImageFont

from shopdraw.drawing.glyph_outline import text_outline
from shopdraw.drawing.letters import LETTERING, font_file, font_size, text_width
from shopdraw.drawing.mark import Text


def points(text, scale=1.0):
    return [point for contour in text_outline(text, scale) for command in contour for point in command]


def area(words, height):
    """Signed area of all contours by the shoelace formula; curves counted by their chords and control triangles."""
    total = 0.0
    for contour in text_outline(Text((0.0, 0.0), words, height)):
        corners = [command[-1] for command in contour]
        total += sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)) / 2
        here = corners[0]
        for command in contour[1:]:
            if len(command) == 2:
                (cx, cy), (ex, ey) = command
                # a parabola holds two thirds of the triangle of its tangents (Archimedes)
                total += ((cx - here[0]) * (ey - here[1]) - (ex - here[0]) * (cy - here[1])) / 3
            here = command[-1]
    return abs(total)


def test_capitals_are_as_high_as_they_are_told_to_be():
    ys = [y for _, y in points(Text((0.0, 0.0), "H", 3.5))]
    assert max(ys) == pytest.approx(3.5, abs=1e-6)
    assert min(ys) == pytest.approx(0.0, abs=1e-6)


def test_ink_is_what_the_fonts_own_rasteriser_puts_down():
    size = 800.0
    font = ImageFont.truetype(str(font_file(LETTERING)), size=round(font_size(LETTERING, size)))
    image = Image.new("L", (900, 1200), 0)
    ImageDraw.Draw(image).text((50, 50), "B", 255, font)
    inked = sum(level * count for level, count in enumerate(image.histogram())) / 255
    assert area("B", size) == pytest.approx(inked, rel=0.01)


def test_words_stand_at_their_anchor():
    left = points(Text((10.0, 5.0), "HH", 2.5))
    right = points(Text((10.0, 5.0), "HH", 2.5, "right"))
    shift = text_width("HH", 2.5)
    assert min(x for x, _ in left) - min(x for x, _ in right) == pytest.approx(shift)


def test_words_in_a_scaled_drawing_keep_their_paper_size():
    plain, scaled = points(Text((0.0, 0.0), "7", 2.5)), points(Text((0.0, 0.0), "7", 2.5), 0.2)
    assert max(y for _, y in scaled) == pytest.approx(5.0 * max(y for _, y in plain))


def test_turned_words_are_turned_about_their_start():
    plain, turned = points(Text((1.0, 2.0), "L", 2.5)), points(Text((1.0, 2.0), "L", 2.5, angle_deg=90.0))
    for (x, y), (tx, ty) in zip(plain, turned, strict=True):
        assert math.isclose(tx - 1.0, -(y - 2.0), abs_tol=1e-9)
        assert math.isclose(ty - 2.0, x - 1.0, abs_tol=1e-9)


def test_fractions_and_foreign_letters_have_ink():
    assert text_outline(Text((0.0, 0.0), "7 5/8", 2.5))
    assert text_outline(Text((0.0, 0.0), "Žďár ≤ ½″", 2.5))
