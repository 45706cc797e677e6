"""Dishes with beans that poison until they have boiled begin with the soak and the hard boil (FDA, Bad Bug Book)."""

import pytest

from assistant.answering import reply_to


@pytest.mark.parametrize(
    "text",
    [
        "dal makhani at 1,900 m, how long",
        "cholent at 6,300 ft, how long",
        "ribollita at 2,300 m how long",
        "githeri at 6,000 ft, how long",
        "flageolet beans at 6,300 ft, how long",
        "cassoulet in the oven at 6,300 ft",
    ],
)
def test_the_boil_is_the_first_step(text):
    steps = [str(step) for step in reply_to(text).steps]
    assert "soak" in steps[0].lower()
    assert "10 min" in steps[0]


def test_in_a_pressure_cooker_no_boil_comes_first():
    assert "boil them hard" not in str(reply_to("cholent in the pressure cooker at 6,300 ft").steps[0])


def test_soaked_beans_are_not_soaked_again():
    first = str(reply_to("navy beans soaked overnight, how long to simmer at 6,300 ft").steps[0])
    assert first.startswith("Pour the soaking water away")


@pytest.mark.parametrize("text", ["lentil soup at 6,300 ft, how long", "chickpeas at 6,300 ft, how long"])
def test_other_pulses_have_none(text):
    assert not any("full boil in fresh water" in str(step) for step in reply_to(text).steps)
