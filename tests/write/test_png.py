"""PNG: as many dots as its paper asks for, lines where they should be, no more memory than allowed."""

from PIL import Image

from shopdraw.drawing.mark import Line, Meaning
from shopdraw.drawing.sheet import Paper, Sheet
from shopdraw.write.png import FINER, MOST_PIXELS, write_png
from tests.write.sample_sheets import sheet_set

INCH = Paper("", 25.4, 50.8, (0.0, 0.0, 25.4, 50.8), "small")


def drawn(tmp_path, *marks, paper=INCH, dpi=100):
    write_png(Sheet("a", "1", "A", paper, (), marks), "iso", tmp_path / "a.png", dpi)
    with Image.open(tmp_path / "a.png") as image:
        return image.copy()


def test_an_inch_has_as_many_dots_as_it_is_told(tmp_path):
    image = drawn(tmp_path, Line((5.0, 5.0), (20.0, 5.0), Meaning.VISIBLE))
    assert image.size == (100, 200)
    assert [round(d) for d in image.info["dpi"]] == [100, 100]


def test_a_line_is_dark_where_it_lies_and_nowhere_else(tmp_path):
    image = drawn(tmp_path, Line((2.54, 12.7), (22.86, 12.7), Meaning.VISIBLE, width=0.762))
    # half an inch from the lower edge: row 150 of 200, and one and a half dots either way
    assert image.getpixel((50, 149)) < 40
    assert image.getpixel((50, 144)) == image.getpixel((50, 155)) == 255
    assert image.getpixel((3, 149)) == 255


def test_dashes_leave_gaps(tmp_path):
    image = drawn(tmp_path, Line((0.0, 25.4), (25.4, 25.4), Meaning.HIDDEN))
    row = [min(image.getpixel((x, y)) for y in (98, 99, 100, 101)) for x in range(100)]
    assert min(row) < 128
    assert max(row[10:90]) == 255


def test_a_sheet_too_large_for_memory_gets_fewer_dots(tmp_path):
    large = Paper("", 900.0, 2000.0, (0.0, 0.0, 900.0, 2000.0), "large")
    image = drawn(tmp_path, Line((0.0, 0.0), (900.0, 2000.0), Meaning.VISIBLE), paper=large, dpi=600)
    assert image.width * image.height * FINER**2 <= MOST_PIXELS * 1.01


def test_the_same_sheet_gives_the_same_bytes(tmp_path):
    for name in ("one", "two"):
        write_png(sheet_set().sheets[0], "iso", tmp_path / f"{name}.png", 60)
    assert (tmp_path / "one.png").read_bytes() == (tmp_path / "two.png").read_bytes()
