import pickle

import pytest

from rules.errors import OutOfRange, RulesError, UnknownWord, within


def test_out_of_range_is_a_value_error_with_its_fields():
    fault = OutOfRange("elevation", 9000, -430, 5500, "m", "Check the unit.")
    assert isinstance(fault, RulesError)
    assert isinstance(fault, ValueError)
    assert (fault.name, fault.value, fault.low, fault.high, fault.unit) == ("elevation", 9000, -430, 5500, "m")
    assert str(fault) == "elevation is 9000 m, but must lie between -430 and 5500 m. Check the unit."


@pytest.mark.parametrize(
    "fault", [OutOfRange("z", 0, 1, 1000, "K", "hint"), UnknownWord("shape", "cube", ("slab",))], ids=["range", "word"]
)
def test_errors_survive_pickling(fault):
    back = pickle.loads(pickle.dumps(fault))
    assert str(back) == str(fault)
    assert vars(back) == vars(fault)


def test_unknown_word_suggests_near_ones():
    fault = UnknownWord.among("dish class", "dried_beans", ["dried_bean", "pasta"])
    assert isinstance(fault, LookupError)
    assert fault.suggestions == ("dried_bean",)
    assert str(UnknownWord("shape", "cube")) == 'there is no shape "cube"'


@pytest.mark.parametrize("value", [0.9, 2.1, float("nan"), float("inf")])
def test_within_refuses(value):
    with pytest.raises(OutOfRange):
        within("figure", value, 1, 2, "")


def test_an_open_end_is_said_in_words():
    assert "must be at least 0.2" in str(OutOfRange("Fourier number", 0.1, 0.2, float("inf"), ""))
