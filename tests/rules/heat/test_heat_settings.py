"""Settings: the dish's own goes before its class's, and that before the method's usual one."""

import pytest

from rules.heat.heat_settings import Setting, own_setting, setting
from rules.physics.units import to_f


def ends_f(of):
    return round(to_f(of.low_c)), round(to_f(of.high_c))


def test_doughnuts_have_their_own_and_other_dough_that_of_its_class():
    assert own_setting("prime rib", "roast") == setting("prime rib", "tender_cut", "roast")
    assert ends_f(setting("prime rib", "tender_cut", "roast")) == (250, 325)
    assert own_setting("churros", "smoke") is None
    assert ends_f(setting("churros", "fried_dough", "fry")) == (350, 375)
    assert setting(None, "fried_dough", "fry").way == "deep"


def test_a_class_without_one_takes_what_the_method_usually_runs_at():
    usual = setting(None, "general", "fry")
    assert (ends_f(usual), usual.way) == ((325, 375), "pan")
    assert setting(None, "none_such", "fry") == usual


def test_a_method_without_settings_has_none():
    with pytest.raises(KeyError):
        setting(None, "pasta", "boil")


def test_the_middle_lies_between_and_both_ends_are_written():
    of = Setting(160.0, 190.0, "still")
    assert of.middle_c == 175
    assert of.span.values == (160, 190)
