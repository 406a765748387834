"""Labels of boards, read back from their PDF."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path as FilePath

import pytest

from shopdraw.build import build
from shopdraw.lists.figures import Figures
from shopdraw.lists.next_joint import next_joints
from shopdraw.measure import millimetres
from shopdraw.piece.design import Design
from shopdraw.piece.reading import read_piece
from shopdraw.sheet.sticker import COLUMNS, MARGIN, ROWS, sticker_sheets
from shopdraw.wood.assembly import Assembly
from shopdraw.write.pdf import write_pdf
from tests.sheet.page_reader import Page, Word, read_pages

SAMPLES = FilePath(__file__).parents[2] / "sample_projects"
NAMES = ("harbour-office-desk", "pilot-station-desk", "harbour-master-desk", "tide-lectern")
FIGURES = Figures(millimetres("0.1"), millimetres("0.1"))


@lru_cache
def sample(name: str) -> tuple[Design, Assembly]:
    design = read_piece(SAMPLES / f"{name}.piece").design
    return design, build(design)


def pages(name: str, folder: FilePath) -> tuple[Page, ...]:
    write_pdf(sticker_sheets(*sample(name)), folder / "labels.pdf")
    return tuple(read_pages(folder / "labels.pdf"))


def cell_of(point: tuple[float, float], page: Page) -> tuple[int, int]:
    wide, tall = (page.width - 2 * MARGIN) / COLUMNS, (page.height - 2 * MARGIN) / ROWS
    return int((point[0] - MARGIN) // wide), int((page.height - MARGIN - point[1]) // tall)


def box(word: Word) -> tuple[float, float, float, float]:
    xs, ys = zip(*word.corners, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


@pytest.mark.parametrize("name", NAMES)
def test_each_board_has_one_label_with_its_name(name: str, tmp_path: FilePath) -> None:
    _, assembly = sample(name)
    cells: list[str] = []
    for page in pages(name, tmp_path):
        held: dict[tuple[int, int], list[str]] = {}
        for word in page.words:
            held.setdefault(cell_of(word.middle, page), []).append(word.words)
        cells += [" ".join(held[key]) for key in sorted(held, key=lambda key: (key[1], key[0]))]
    assert len(cells) == len(assembly.boards)
    for board, words in zip(assembly.boards, cells, strict=True):
        assert words.startswith(f"{board.label} ")
        assert board.name in words
        assert "reference edge" in words
        assert "foot" in words


@pytest.mark.parametrize("name", NAMES)
def test_words_keep_to_their_label_and_off_each_other(name: str, tmp_path: FilePath) -> None:
    for page in pages(name, tmp_path):
        boxes = [(word.words, *box(word)) for word in page.words]
        for n, (words, x0, y0, x1, y1) in enumerate(boxes):
            assert cell_of((x0, y0), page) == cell_of((x1, y1), page), words
            for other, a0, b0, a1, b1 in boxes[n + 1 :]:
                apart = x1 <= a0 + 0.1 or a1 <= x0 + 0.1 or y1 <= b0 + 0.1 or b1 <= y0 + 0.1
                assert apart, f"{words!r} and {other!r}"


def test_edge_marks_stand_at_the_reference_edge(tmp_path: FilePath) -> None:
    """The near edge below; the far one, on the right one of a pair, above: the label lies on the face as the board."""
    page = pages("harbour-office-desk", tmp_path)[0]
    tall = (page.height - 2 * MARGIN) / ROWS
    told = sorted((w for w in page.words if w.words == "reference edge"), key=lambda w: (-w.middle[1], w.middle[0]))
    first_row = [w for w in page.words if w.words == "reference edge" and cell_of(w.middle, page)[1] == 0]
    left, right, _ = sorted(first_row, key=lambda w: w.middle[0])
    assert left.middle[1] < page.height - MARGIN - 0.7 * tall
    assert right.middle[1] > page.height - MARGIN - 0.3 * tall
    assert len(told) == COLUMNS * ROWS


def test_the_next_joint_is_the_first_in_the_order_of_assembly() -> None:
    _, assembly = sample("pilot-station-desk")
    told = next_joints(assembly, FIGURES)
    assert told["drawer.1.back"].startswith("dado, into 7.1c")
    assert told["frame.1.front"].startswith("mortise and tenon, takes 6.1f")
    assert set(told) <= {board.id for board in assembly.boards}
    joined = {name for joint in assembly.joints for name in (joint.host, *joint.guest_boards)}
    assert {board.id for board in assembly.boards if board.id in joined} <= set(told)
