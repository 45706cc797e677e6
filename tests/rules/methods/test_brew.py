import pytest

from assistant.replies.worded import answer
from rules.model import Request


def ask(**fields):
    return answer(Request(topic="time", method="brew", **fields))


@pytest.mark.parametrize(
    ("elevation_m", "says"),
    [(0.0, "as at sea level"), (1609.3, "straight off the boil, the top"), (3500.0, "under the")],
)
def test_coffee_in_its_three_bands(elevation_m, says):
    assert says in ask(dish_class="coffee", elevation_m=elevation_m).headline


def test_too_cool_a_boil_wants_finer_grind_time_and_pressure():
    given = ask(dish="pour-over coffee", dish_class="coffee", elevation_m=3500.0)
    told = " ".join(given.steps)
    assert "finer" in told
    assert "pressure" in told
    assert given.figure("cook_time").high > given.figure("baseline_time").high


@pytest.mark.parametrize("elevation_m", [0.0, 2133.6, 4000.0])
def test_green_tea_does_not_change(elevation_m):
    given = ask(dish="green tea", dish_class="tea", elevation_m=elevation_m)
    assert given.figure("brew_temperature").value == given.figure("brew_temperature").sea_level
    assert given.figure("cook_time").value == given.figure("baseline_time").value


def test_espresso_makes_its_own_pressure():
    assert "as anywhere" in ask(dish="espresso", dish_class="coffee", elevation_m=4000.0).headline


def test_the_tea_standard_is_quoted_for_boiling_water_only():
    black, green = (ask(dish=d, dish_class="tea", elevation_m=2500.0) for d in ("black tea", "green tea"))
    assert any("elevation be reported" in b.text for b in black.because)
    assert not any("elevation be reported" in b.text for b in green.because)
