"""Random sets over kinds, styles and papers, held to the rules of paper; prints counts and the figures to improve.

    python tests/benchmarks/random_sets.py [COUNT] [FIRST]      200 sets from number 0 where nothing is said

Pieces that can't be built are passed over. Ends with 1 where a count that must be 0 isn't.
"""

from __future__ import annotations

import sys
import tempfile
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.sheet.random_set import Measured, measured

SHOWN = 5
"""Faults of a rule that are told in full."""
SPARE = 10
"""Numbers tried for each set that is wanted, at most."""


def main(count: int = 200, first: int = 0) -> int:
    made: list[Measured] = []
    others: Counter[str] = Counter()
    with tempfile.TemporaryDirectory() as place:
        for number in range(first, first + SPARE * count):
            if len(made) == count:
                break
            try:
                one = measured(number, Path(place))
            except Exception as error:  # noqa: BLE001  # each number is told, and the next one is tried
                one = Measured("broke", f"{number}: {type(error).__name__}: {error}")
            if one.outcome == "made":
                made.append(one)
            else:
                others[one.outcome] += 1
                if one.outcome != "refused":
                    print(one.words)
    print(f"{len(made)} sets; {', '.join(f'{many} {what}' for what, many in others.items()) or 'none passed over'}")
    wrong = _counts(made)
    _figures(made)
    return 1 if wrong or others["broke"] else 0


def _counts(made: list[Measured]) -> int:
    faults: dict[str, list[str]] = {}
    for one in made:
        for rule, found in one.faults.items():
            faults.setdefault(rule, []).extend(f"{one.words}: {fault}" for fault in found)
    for rule, found in faults.items():
        print(f"{len(found):6d}  {rule}")
        for fault in found[:SHOWN]:
            print(f"            {fault}")
    return sum(len(found) for found in faults.values())


def _figures(made: list[Measured]) -> None:
    total: Counter[str] = Counter()
    for one in made:
        for name, value in one.figures.items():
            total[name] += value
    if not made:
        return
    print("figures to improve, a set:")
    for name in ("sheets", "facts", "facts without room", "labels sent to pictures", "facts sent to another view",
                 "facts sent to details", "figures stepped out", "crossings of extension lines"):  # fmt: skip
        print(f"    {total[name] / len(made):8.2f}  {name}")
    if total["leaders"]:
        print(f"    {total[LENGTH] / total['leaders']:8.2f}  mm, leaders' mean length")
    print(f"    {100 * total['white space, sum over sheets'] / total['sheets']:8.2f}  % of a sheet is white")


LENGTH = "leaders' length in all, mm"

if __name__ == "__main__":
    sys.exit(main(*(int(word) for word in sys.argv[1:3])))
