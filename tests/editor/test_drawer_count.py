"""One drawer more, one fewer: in banks with rows of columns, under keys that nothing had before."""

from __future__ import annotations

import pytest

from shopdraw.editor.division import drawer_key
from shopdraw.editor.drawer_count import one_drawer_fewer, one_more_drawer
from shopdraw.editor.field import form_of
from shopdraw.editor.shown_size import shown_for
from shopdraw.editor.state import Setting, State, changed_text, state_of
from shopdraw.shipped import sample_path


def sample(name: str, more: str = "") -> State:
    state = state_of(sample_path(name).read_text(encoding="utf-8") + more)
    assert state.sound, state.faults
    return state


def after(state: State, change) -> State:
    made = state_of(changed_text(state.text, change(state)))
    assert made.sound, made.faults
    return made


def drawers(state: State) -> list[str]:
    assert state.assembly is not None
    return [drawer_key(one.id) for one in state.assembly.openings if one.use == "drawer"]


def test_a_chest_with_two_small_drawers_on_top_gets_one_more_below() -> None:
    assert drawers(after(sample("plan-chest"), one_more_drawer)) == ["1.1", "1.2", "2", "3", "4"]


def test_one_fewer_takes_the_columns_of_its_row_out_of_the_file() -> None:
    chest = sample("plan-chest", '\n[opening."bank.3"]\ndivide = { by = "columns", keys = ["1", "2"] }\n')
    fewer = after(chest, one_drawer_fewer)
    assert drawers(fewer) == ["1.1", "1.2", "2"]
    assert "bank.3" not in fewer.text


def test_a_new_drawer_takes_no_key_that_the_file_speaks_of() -> None:
    desk = sample("pilot-station-desk", '\n[drawer.7]\nfront = "inset"\n')
    assert drawers(after(desk, one_more_drawer))[-1] == "8"


def test_rows_of_drawers_elsewhere_than_in_a_bank_are_counted_too() -> None:
    text = sample_path("mail-case").read_text(encoding="utf-8")
    text = text.replace('by = "columns", keys = ["1", "2"]', 'by = "rows", keys = ["1", "2"], rule = "equal"', 1)
    case = state_of(text.replace("top = 560", "top = 660").replace("height = 1100", "height = 1300"))
    assert case.sound, case.faults
    assert drawers(after(case, one_more_drawer)) == ["B.1", "B.2", "B.3"]
    assert drawers(after(after(case, one_more_drawer), one_drawer_fewer)) == ["B.1", "B.2"]


@pytest.mark.parametrize(("name", "keys"), [("plan-chest", {"1.1", "1.2", "2", "3"}), ("mail-case", {"B.1", "B.2"})])
def test_the_form_calls_each_drawer_as_the_file_does(name: str, keys: set[str]) -> None:
    state = sample(name)
    assert state.design is not None
    groups = {group.key for group in form_of(state, shown_for(state.design))}
    assert {f'drawer."{key}"' if "." in key else f"drawer.{key}" for key in keys} <= groups
    for key in keys:
        address = f'drawer."{key}".front' if "." in key else f"drawer.{key}.front"
        made = state_of(changed_text(state.text, one_setting(address)))
        assert made.sound, made.faults
        assert made.assembly is not None
        assert made.assembly.has(f"drawer.{key}.front")


def one_setting(address: str):
    return (Setting(address, "inset"),)
