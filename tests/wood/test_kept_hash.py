"""Values that keep their hash are found again in another process, where words have other hashes."""

from __future__ import annotations

import pickle
import subprocess
import sys
from pathlib import Path

import pytest

from shopdraw.build import build
from shopdraw.piece.reading import read_piece
from shopdraw.shipped import sample_path

OTHER = """
import pickle, sys
sent = pickle.loads(sys.stdin.buffer.read())
from shopdraw.build import build
from shopdraw.piece.reading import read_piece
made = build(read_piece(sys.argv[1]).design)
for here, there in zip(sent.boards, made.boards, strict=True):
    for one, other in ((here.shape, there.shape), (here.shape.outline, there.shape.outline)):
        assert one == other and hash(one) == hash(other), here.id
        assert {one: 1}[other] == 1
    for one, other in zip(here.shape.cuts, there.shape.cuts, strict=True):
        assert one == other and hash(one) == hash(other), (here.id, one.kind)
print(len(made.boards))
"""


@pytest.mark.parametrize("seeds", [("1", "2"), ("2", "1")])
def test_a_piece_from_another_process_is_found_among_ones_own(seeds: tuple[str, str]) -> None:
    piece = sample_path("harbour-office-desk")
    send = (
        "import pickle, sys; from shopdraw.build import build; from shopdraw.piece.reading import read_piece;"
        "made = build(read_piece(sys.argv[1]).design); [hash(board.shape) for board in made.boards];"
        "sys.stdout.buffer.write(pickle.dumps(made))"
    )
    env = {"PYTHONPATH": str(Path(__file__).resolve().parents[2])}
    first = {**env, "PYTHONHASHSEED": seeds[0]}
    sent = subprocess.run([sys.executable, "-c", send, piece], env=first, check=True, capture_output=True)
    told = subprocess.run(
        [sys.executable, "-c", OTHER, piece],
        env={**env, "PYTHONHASHSEED": seeds[1]},
        input=sent.stdout,
        check=False,
        capture_output=True,
    )
    assert told.returncode == 0, told.stderr.decode()
    assert int(told.stdout) > 40


def test_no_value_of_a_piece_takes_a_hash_along() -> None:
    """Whatever kind of value comes to keep its hash: the bytes that are sent don't name it."""
    made = build(read_piece(sample_path("harbour-office-desk")).design)
    for board in made.boards:
        hash(board.shape)
    assert "_hash" in vars(made.boards[0].shape), "shapes keep their hash here"
    assert b"_hash" not in pickle.dumps(made)
