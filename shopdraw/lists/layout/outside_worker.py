"""Runs packingsolver on one problem in a process of its own: JSON on stdin, a line of JSON on stdout for each answer.

It is started by its path and imports nothing of shopdraw, so that it can be stopped at any time.
"""

from __future__ import annotations

import json
import sys
import time
from collections.abc import Iterator
from typing import Any

import packingsolver.onedimensional as boards
import packingsolver.rectangleguillotine as sheets

Answer = list[Any] | None

QUEUE = {3: 256, 0: 64}
"""Length of the search's queues by the number of stages (0: any); a tenth of its own defaults is as good, sooner."""
ROUNDS = 8


def _parameters(module: Any, seconds: float) -> Any:
    """The mode that gives the same answer every run."""
    parameters = module.OptimizeParameters()
    parameters.optimization_mode = module.OptimizationMode.NotAnytimeSequential
    parameters.time_limit = seconds
    parameters.verbosity_level = 0
    return parameters


def _objective(module: Any, costs: list[float]) -> Any:
    one = len(set(costs)) == 1
    return module.Objective.BinPacking if one else module.Objective.VariableSizedBinPacking


def lay_out_boards(asked: dict[str, Any], seconds: float) -> Answer:
    """Kinds of spaces with how many of each size are in them."""
    builder = boards.InstanceBuilder()
    builder.set_objective(_objective(boards, [space[1] for space in asked["spaces"]]))
    for capacity, cost, count in asked["spaces"]:
        builder.add_bin_type(capacity, cost=float(cost), copies=count)
    for size, count in asked["sizes"]:
        builder.add_item_type(size, copies=count)
    solution = boards.optimize(builder.build(), _parameters(boards, seconds)).solution
    if not solution.full():
        return None
    found: list[Any] = []
    for i in range(solution.number_of_different_bins()):
        space = solution.bin(i)
        fill = [0] * len(asked["sizes"])
        for item in space.items:
            fill[item.item_type_id] += 1
        found += [[space.bin_type_id, fill]] * space.copies
    return found


def lay_out_sheets(asked: dict[str, Any], stages: int, seconds: float) -> Answer:
    """Kinds of sheets with their trees of cuts, in so many stages (0: any number)."""
    builder = sheets.InstanceBuilder()
    builder.set_objective(_objective(sheets, [area[2] for area in asked["areas"]]))
    if stages:
        builder.set_number_of_stages(stages)
    else:
        builder.set_number_of_stages_unlimited()
    for x, y, cost, count in asked["areas"]:
        builder.add_bin_type(x, y, cost=float(cost), copies=count)
    for x, y, count, free in asked["wanted"]:
        builder.add_item_type(x, y, oriented=not free, copies=count)
    parameters = _parameters(sheets, seconds)
    queue = QUEUE[stages]
    parameters.not_anytime_tree_search_queue_size = queue
    parameters.not_anytime_sequential_single_knapsack_subproblem_tree_search_queue_size = queue
    parameters.sequential_value_correction_subproblem_tree_search_queue_size = queue
    parameters.not_anytime_sequential_value_correction_number_of_iterations = ROUNDS
    solution = sheets.optimize(builder.build(), parameters).solution
    if not solution.full():
        return None
    found: list[Any] = []
    for i in range(solution.number_of_different_bins()):
        cut = solution.bin(i)
        nodes = cut.nodes
        roots = [number for number, node in enumerate(nodes) if node.f < 0]
        trees = [tree for tree in (_tree(nodes, root) for root in roots) if tree is not None]
        found += [[cut.bin_type_id, trees[0]]] * cut.copies
    return found


def _tree(nodes: Any, number: int) -> Any:
    """A node as [way, nodes below], or [kind, along x, along y] where it is a part; None where nothing is in it."""
    node = nodes[number]
    if not len(node.children):
        return [node.item_type_id, node.r - node.l, node.t - node.b] if node.item_type_id >= 0 else None
    children = sorted(node.children, key=lambda child: (nodes[child].l, nodes[child].b))
    rip = len({nodes[child].b for child in children}) > 1
    below = [tree for tree in (_tree(nodes, child) for child in children) if tree is not None]
    if len(children) == 1 and below:
        return below[0]
    return ["rip" if rip else "crosscut", below] if below else None


def answers(asked: dict[str, Any]) -> Iterator[Answer]:
    """The answers, each as soon as it is there."""
    end = time.monotonic() + asked["seconds"]
    if asked["kind"] == "boards":
        yield lay_out_boards(asked, asked["seconds"])
        return
    for stages in asked["stages"]:
        left = end - time.monotonic()
        if left > 0:
            yield lay_out_sheets(asked, stages, left)


def main() -> None:
    """One problem in, its answers out."""
    for answer in answers(json.load(sys.stdin)):
        sys.stdout.write(json.dumps(answer) + "\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
