"""The hardware schedule counts each fitting once and names every board that carries one."""

from shopdraw.build import build
from shopdraw.lists.hardware import hardware_table
from tests.check.desks import design
from tests.lists.test_joint_schedule import METRIC


def test_fittings_add_up_and_stand_with_their_boards():
    assembly = build(design())
    table = hardware_table(assembly, METRIC)
    assert sum(row[1] for row in table.rows) == sum(fitting.quantity for fitting in assembly.hardware)
    words = {label for row in table.rows for pair in str(row[3]).split(", ") for label in pair.split(" + ")}
    assert words == {assembly.board(board).label for fitting in assembly.hardware for board in fitting.on}
