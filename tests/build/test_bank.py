"""Banks of drawers against arithmetic and geometric series."""

import pytest

from shopdraw.build.bank import BankDisagrees, bank_heights

INCH = 25.4


def test_equal_heights_share_what_the_rails_leave():
    assert bank_heights(600.0, 20.0, 4, "equal") == pytest.approx((135.0,) * 4)


def test_heights_that_rise_by_a_step():
    # H 30 in, 4 drawers, rails 3/4, step 1: h1 = (H - (n-1)g - d·n(n-1)/2)/n
    heights = bank_heights(30 * INCH, 0.75 * INCH, 4, "step", step=INCH)
    assert [h / INCH for h in heights] == pytest.approx([5.4375, 6.4375, 7.4375, 8.4375])


def test_heights_that_rise_by_a_factor():
    # the same, factor 1.15: h1 = (H - (n-1)g)(q-1)/(qⁿ-1)
    heights = bank_heights(30 * INCH, 0.75 * INCH, 4, "ratio", ratio=1.15)
    assert [h / INCH for h in heights] == pytest.approx([5.5574, 6.3910, 7.3496, 8.4521], abs=5e-5)


def test_case_19_three_drawers_with_rails_of_0_703():
    # space 24 in, two rails 0.703, rising by 1: exact 6.5313, 7.5313, 8.5313
    heights = bank_heights(24 * INCH, 0.703 * INCH, 3, "step", step=INCH)
    assert [h / INCH for h in heights] == pytest.approx([6.5313, 7.5313, 8.5313], abs=5e-5)
    assert sum(heights) + 2 * 0.703 * INCH == pytest.approx(24 * INCH)


@pytest.mark.parametrize("rule", ["equal", "step", "ratio"])
@pytest.mark.parametrize("count", [1, 2, 3, 4, 5, 6])
def test_every_rule_closes(rule, count):
    heights = bank_heights(600.0, 18.3, count, rule, step=10.0, ratio=1.2)
    assert len(heights) == count
    assert sum(heights) + (count - 1) * 18.3 == pytest.approx(600.0, abs=1e-9)


def test_a_ratio_of_one_is_equal():
    assert bank_heights(600.0, 20.0, 4, "ratio", ratio=1.0) == pytest.approx(bank_heights(600.0, 20.0, 4, "equal"))


def test_given_heights_leave_the_rest_to_the_lowest():
    assert bank_heights(600.0, 20.0, 3, "given", sizes=(100.0, 150.0)) == pytest.approx((100.0, 150.0, 310.0))


def test_given_heights_that_do_not_close_are_told_with_what_would():
    with pytest.raises(BankDisagrees, match=r"300\.00 mm, the clear height is 310\.00 mm.*160\.00 mm"):
        bank_heights(330.0, 10.0, 3, "given", sizes=(50.0, 100.0, 150.0))


def test_given_heights_close_to_a_hundredth():
    assert bank_heights(330.0, 10.0, 3, "given", sizes=(60.0, 100.0, 150.005)) == pytest.approx((60.0, 100.0, 150.005))


def test_a_drawer_too_low_is_refused():
    with pytest.raises(BankDisagrees, match="at least 25 mm"):
        bank_heights(200.0, 20.0, 6, "equal")


@pytest.mark.parametrize("sizes", [None, (), (100.0,), (1.0,) * 5])
def test_a_wrong_number_of_sizes_is_refused(sizes):
    with pytest.raises(BankDisagrees, match="3 drawers need 3 sizes"):
        bank_heights(600.0, 20.0, 3, "given", sizes=sizes)


def test_one_height_may_be_0_and_takes_what_is_left():
    # 600 less two rails of 20 is 560; 560 - 100 - 310
    assert bank_heights(600.0, 20.0, 3, "given", sizes=(100.0, 0.0, 310.0)) == pytest.approx((100.0, 150.0, 310.0))
    with pytest.raises(BankDisagrees, match="2 sizes are 0"):
        bank_heights(600.0, 20.0, 3, "given", sizes=(0.0, 0.0, 310.0))
