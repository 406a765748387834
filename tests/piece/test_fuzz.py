"""Broken piece files: each gives a design or faults of one line each, and nothing else."""

import random
import tomllib
from pathlib import Path

import pytest

from shopdraw.piece.fault import PieceError
from shopdraw.piece.reading import Piece, parse_piece, read_piece
from tests.piece.sample import SAMPLE

FILES = 2400
LINES = SAMPLE.split("\n")
VALUES = [
    "nan", "inf", "-inf", "1e999", "1e9", "-1", "0", "true", "false", '""', '"x"', "[]", "{}", "[[1]]", "{a = 1}",
    '"1,234"', '"31 -1/2"', '"1/0"', '"=1+1"', '"\\u0000"', '"🪵"', "'" + "9" * 500 + "'", "9" * 400, "9" * 5000,
    "0x10", "1979-05-27", "1979-05-27T07:32:00Z", "07:32:00", "-0.0", '"' + "a" * 3000 + '"', "[" * 60 + "]" * 60,
]  # fmt: skip


def truncated(rng: random.Random) -> bytes:
    data = SAMPLE.encode()
    return data[: rng.randrange(len(data))]


def flipped(rng: random.Random) -> bytes:
    data = bytearray(SAMPLE.encode())
    for _ in range(rng.randint(1, 6)):
        data[rng.randrange(len(data))] = rng.randrange(256)
    return bytes(data)


def other_values(rng: random.Random) -> bytes:
    lines = list(LINES)
    for _ in range(rng.randint(1, 4)):
        at = rng.choice([i for i, line in enumerate(lines) if " = " in line])
        lines[at] = lines[at].partition(" = ")[0] + " = " + rng.choice(VALUES)
    return "\n".join(lines).encode()


def lines_moved(rng: random.Random) -> bytes:
    lines = list(LINES)
    for _ in range(rng.randint(1, 5)):
        at, to = rng.randrange(len(lines)), rng.randrange(len(lines))
        match rng.randrange(3):
            case 0:
                lines.insert(to, lines[at])
            case 1:
                lines[at], lines[to] = lines[to], lines[at]
            case _:
                del lines[at]
    return "\n".join(lines).encode()


def keys_misspelt(rng: random.Random) -> bytes:
    lines = list(LINES)
    for _ in range(rng.randint(1, 4)):
        at = rng.choice([i for i, line in enumerate(lines) if " = " in line or line.startswith("[")])
        cut = rng.randrange(max(1, len(lines[at].partition(" = ")[0])))
        lines[at] = lines[at][:cut] + rng.choice("xX._\"]'[") + lines[at][cut + 1 :]
    return "\n".join(lines).encode()


def read(path: Path) -> Piece | PieceError:
    try:
        return read_piece(path)
    except PieceError as error:
        return error


@pytest.mark.parametrize("break_it", [truncated, flipped, other_values, lines_moved, keys_misspelt])
def test_a_broken_piece_file_gives_a_design_or_faults_of_one_line(break_it, tmp_path) -> None:
    rng = random.Random(break_it.__name__)
    path = tmp_path / "desk.piece"
    refused = 0
    for _ in range(FILES // 5):
        data = break_it(rng)
        path.write_bytes(data)
        outcome = read(path)
        if isinstance(outcome, Piece):
            assert outcome.design.case.width > 0
            assert outcome.text.encode() == data.removeprefix(b"\xef\xbb\xbf")
            continue
        refused += 1
        assert outcome.faults
        for line in outcome.lines():
            assert line.startswith(str(path))
            assert line.isprintable()
            assert len(line) < 700
    assert refused > FILES // 5 // 20


def test_the_sample_itself_is_whole() -> None:
    assert parse_piece(SAMPLE).design.case.width > 0
    assert tomllib.loads(SAMPLE)["format"] == 1
