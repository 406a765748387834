"""Species: figures against the handbook, and the handbook against itself."""

from __future__ import annotations

import pytest

from shopdraw.trade import NotInTable, all_species, coefficient_from_shrinkage, species

# Wood Handbook FPL-GTR-190 (2010), Table 13-5: change coefficients radial, tangential.
TABLE_13_5 = {
    "alder_red": (0.00151, 0.00256),
    "ash_white": (0.00169, 0.00274),
    "beech_american": (0.00190, 0.00431),
    "birch_yellow": (0.00256, 0.00338),
    "cherry_black": (0.00126, 0.00248),
    "maple_sugar": (0.00165, 0.00353),
    "oak_red": (0.00158, 0.00369),
    "oak_white": (0.00180, 0.00365),
    "sweetgum": (0.00183, 0.00365),
    "walnut_black": (0.00190, 0.00274),
}

# Wood Handbook FPL-GTR-190 (2010), Table 4-3: shrinkage green to ovendry, %, radial, tangential.
TABLE_4_3 = {
    "alder_red": (4.4, 7.3),
    "ash_white": (4.9, 7.8),
    "basswood_american": (6.6, 9.3),
    "beech_american": (5.5, 11.9),
    "birch_paper": (6.3, 8.6),
    "birch_yellow": (7.3, 9.5),
    "butternut": (3.4, 6.4),
    "cherry_black": (3.7, 7.1),
    "chestnut_american": (3.4, 6.7),
    "cottonwood_eastern": (3.9, 9.2),
    "elm_american": (4.2, 9.5),
    "hickory_pecan": (4.9, 8.9),
    "sassafras": (4.0, 6.2),
    "sweetgum": (5.3, 10.2),
    "walnut_black": (5.5, 7.8),
}

# Differential shrinkage, % for 1 % of moisture, radial, tangential: German timber trade's guide to wood, table 4-5.
DIFFERENTIAL = {
    "beech_european": (0.20, 0.41),
    "oak_european": (0.16, 0.36),
    "ash_european": (0.21, 0.38),
    "walnut_european": (0.18, 0.29),
    "spruce_norway": (0.19, 0.39),
    "pine_scots": (0.19, 0.36),
}

# Wood Handbook FPL-GTR-282 (2021), Table 5-3b: specific gravity green and at 12 %, stiffness at 12 %, 10^6 psi.
TABLE_5_3B = {
    "ash_white": (0.55, 0.60, 1.74),
    "cherry_black": (0.47, 0.50, 1.49),
    "maple_sugar": (0.56, 0.63, 1.83),
    "oak_white": (0.60, 0.68, 1.78),
    "walnut_black": (0.51, 0.55, 1.68),
    "yellow_poplar": (0.40, 0.42, 1.58),
    "cedar_western_red": (0.31, 0.32, 1.11),
}


@pytest.mark.parametrize(("key", "figures"), TABLE_13_5.items())
def test_change_coefficients_are_the_handbooks(key: str, figures: tuple[float, float]) -> None:
    one = species(key)
    assert (one.radial, one.tangential) == figures
    assert (
        one.radial_source.publication
        == one.tangential_source.publication
        == "Wood Handbook FPL-GTR-190 (2010), Table 13-5"
    )


@pytest.mark.parametrize(("key", "figures"), TABLE_4_3.items())
def test_coefficients_follow_from_the_handbooks_shrinkage(key: str, figures: tuple[float, float]) -> None:
    one = species(key)
    assert (one.shrinkage_radial, one.shrinkage_tangential) == figures
    assert [round(coefficient_from_shrinkage(s), 5) for s in figures] == [one.radial, one.tangential]


def test_western_redcedar_shrinks_from_22_percent() -> None:
    # Wood Handbook FPL-GTR-190, Table 4-3: 2.4 and 5.0 %.
    cedar = species("cedar_western_red")
    computed = [round(coefficient_from_shrinkage(s, cedar.shrinks_from), 5) for s in (2.4, 5.0)]
    assert computed == [cedar.radial, cedar.tangential] == [0.00111, 0.00234]


@pytest.mark.parametrize(("key", "percent"), DIFFERENTIAL.items())
def test_european_species_move_as_the_trade_prints_it(key: str, percent: tuple[float, float]) -> None:
    one = species(key)
    assert (one.radial * 100, one.tangential * 100) == pytest.approx(percent)


@pytest.mark.parametrize(("key", "figures"), TABLE_5_3B.items())
def test_weight_and_stiffness_are_the_handbooks(key: str, figures: tuple[float, float, float]) -> None:
    one = species(key)
    green, at_12, million_psi = figures
    assert (one.sg_green, one.sg_12) == (green, at_12)
    # 1 psi = 6894.757 Pa, NIST SP 811.
    assert one.stiffness_mpa == pytest.approx(million_psi * 6894.757)


def test_cherry_weighs_what_a_merchant_prints() -> None:
    # A timber merchant prints 561 kg/m3 at 12 % for black cherry; 0.50 x 1.12 x 1000 = 560.
    assert species("cherry_black").density_kg_m3(12) == pytest.approx(560)
    assert species("cherry_black").density_kg_m3() == pytest.approx(561, abs=2)


def test_drying_loses_water_and_volume() -> None:
    # By hand for cherry at 6 %: 0.50 * 1000 * 1.06 / ((1 - 6 * 0.00126) * (1 - 6 * 0.00248)) = 542.1.
    assert species("cherry_black").density_kg_m3(6) == pytest.approx(542.1, abs=0.05)


def test_every_species_is_whole_and_plausible() -> None:
    assert len({one.key for one in all_species()}) == len(all_species())
    for one in all_species():
        assert 0 < one.radial < one.tangential < 0.006
        assert 0.25 < one.sg_12 < 0.9
        assert one.sg_green is None or one.sg_green < one.sg_12
        assert 5000 < one.stiffness_mpa < 16000


@pytest.mark.parametrize("name", ["cherry_black", "Cherry, black", " CHERRY_BLACK "])
def test_found_by_key_or_name(name: str) -> None:
    assert species(name).key == "cherry_black"


def test_an_unknown_species_names_the_nearest() -> None:
    with pytest.raises(NotInTable, match=r'no species "chery_black".*cherry_black'):
        species("chery_black")
