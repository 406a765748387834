"""Cautions: the right ones on each sheet, deferring to those who have the last word."""

from __future__ import annotations

import re

from shopdraw.trade import all_cautions, cautions_for


def test_every_hazard_has_its_caution() -> None:
    keys = {caution.key for caution in all_cautions()}
    assert {"blade-tilt", "router", "tipping", "dust", "finishing", "old-paint", "lifting"} <= keys


def test_machine_and_law_have_the_last_word() -> None:
    for caution in all_cautions():
        assert re.search(r"manual|local|licensed", caution.words.lower()), caution.key


def test_the_tip_over_rule_is_quoted_with_its_limits() -> None:
    # 16 CFR 1261, ASTM F2057-23: 27 in (686 mm), 30 lb (13.6 kg), 3.2 ft3 (90.6 dm3).
    tipping = next(caution for caution in all_cautions() if caution.key == "tipping")
    limits = [float(figure) for figure in re.findall(r"[\d.]+(?= (?:mm|kg|dm))", tipping.basis)]
    assert limits == [round(27 * 25.4), round(30 * 0.45359237, 1), round(3.2 * 304.8**3 / 1e6, 1)]


def test_a_sheet_carries_what_it_calls_for() -> None:
    assert [caution.key for caution in cautions_for({"tilt"})] == ["blade-tilt", "dust"]
    assert [caution.key for caution in cautions_for(["lift", "lid"])] == ["tipping", "lifting"]
    assert cautions_for(()) == ()
