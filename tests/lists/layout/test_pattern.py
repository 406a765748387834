"""All fillings of a space, against every choice tried by itself."""

import itertools
import random

from shopdraw.lists.layout.lengths import Lengths, Space
from shopdraw.lists.layout.pattern import all_fills


def test_every_full_filling_is_listed_once() -> None:
    chance = random.Random(1)
    for _ in range(60):
        sizes = tuple(sorted(chance.sample(range(3, 20), chance.randint(1, 4)), reverse=True))
        demand = tuple(chance.randint(1, 3) for _ in sizes)
        capacity = chance.randint(3, 40)
        full = set()
        for fill in itertools.product(*(range(most + 1) for most in demand)):
            left = capacity - sum(size * count for size, count in zip(sizes, fill, strict=True))
            more = any(size <= left and count < most for size, count, most in zip(sizes, fill, demand, strict=True))
            if left >= 0 and any(fill) and not more:
                full.add((0, fill))
        found = all_fills(Lengths(sizes, demand, (Space(capacity, 1.0),)), 1000)
        assert found is not None
        assert len(found) == len(full)
        assert set(found) == full


def test_too_many_fillings_are_given_up() -> None:
    assert all_fills(Lengths(tuple(range(90, 30, -1)), (2,) * 60, (Space(1000, 1.0),)), 1000) is None
