"""Time and temperature, poison of beans and cool ovens, typed again from what the agencies print."""

import pytest

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c, to_f
from rules.safety import lethality

FSIS, BALDWIN, EGGS = "fsis-gd-2021-14", "baldwin-sous-vide", "schuman-1997-eggs"
CHICKEN, TURKEY = "chicken_lethality_fsis-gd-2021-14", "turkey_lethality_fsis-gd-2021-14"
FT_M = 0.3048


def ask(**fields):
    return answer(Request(**{"topic": "time", "elevation_m": 7000 * FT_M, **fields}))


@pytest.mark.parametrize(
    ("source", "temp_f", "chicken_min", "turkey_min"),
    [
        (FSIS, 136, 81.4, 70.8),
        (FSIS, 138, 52.9, 48.5),
        (FSIS, 140, 35, 33.7),
        (FSIS, 142, 23.5, 23.7),
        (FSIS, 145, 13, 13.8),
        (FSIS, 150, 4.2, 4.9),
        (FSIS, 153, 1.6, 2.1),
        (FSIS, 155, 54.4 / 60, 1.3),
        (FSIS, 158, 26.9 / 60, 40.9 / 60),
        (FSIS, 160, 16.9 / 60, 26.9 / 60),
        (FSIS, 162, 10.5 / 60, 17.7 / 60),
        (FSIS, 165, 0, 0),
    ],
)
def test_poultry_with_12_percent_fat(source, temp_f, chicken_min, turkey_min):
    """Seven-log reduction of Salmonella; other birds take the longer of the two."""
    for file, minutes in ((CHICKEN, chicken_min), (TURKEY, turkey_min)):
        row = lethality.printed(file, to_c(temp_f))
        assert row.source == source
        assert row.time_min == pytest.approx(minutes, abs=1e-4)
        assert row.time_min >= minutes - 1e-9, "never rounded down"
    assert lethality.judge("poultry", to_c(temp_f)).needs_min == pytest.approx(max(chicken_min, turkey_min), abs=1e-4)


@pytest.mark.source(FSIS)
def test_no_poultry_is_printed_under_136():
    assert lethality.printed(CHICKEN, to_c(135.8)) is None
    assert lethality.judge("poultry", to_c(135), 10_000).safe is False


@pytest.mark.parametrize(
    ("source", "kind", "bath_c", "thickness_mm", "hours"),
    [
        (BALDWIN, "poultry", 58, 5, 1.75),
        (BALDWIN, "poultry", 60, 10, 55 / 60),
        (BALDWIN, "poultry", 60, 25, 1.5),
        (BALDWIN, "poultry", 63, 25, 1.25),
        (BALDWIN, "poultry", 63, 50, 2.5),
        (BALDWIN, "poultry", 65, 70, 3.75),
        (BALDWIN, "whole_cut", 55, 5, 2),
        (BALDWIN, "whole_cut", 55, 25, 2.75),
        (BALDWIN, "whole_cut", 56, 30, 2.5),
        (BALDWIN, "pork", 60, 40, 2),
        (BALDWIN, "pork", 60, 70, 4),
        (BALDWIN, "ground_meat", 63, 25, 1.25),
        (BALDWIN, "whole_cut", 66, 50, 2),
    ],
)
def test_time_in_a_bath_by_thickness(source, kind, bath_c, thickness_mm, hours):
    assert lethality.bath_source(kind) == source
    assert lethality.bath_min(kind, bath_c, thickness_mm) == pytest.approx(60 * hours)


@pytest.mark.source(EGGS)
def test_eggs_in_the_shell():
    """57 degC for 75 min."""
    assert lethality.judge("egg", 57, 75).safe
    assert not lethality.judge("egg", 57, 74).safe
    assert lethality.judge("egg", 57).source == EGGS


@pytest.mark.parametrize(
    ("source", "kind", "temp_f", "rest_min"),
    [
        ("foodsafety-chart", "game", 160, 0),
        ("usda-fsis-safe-temperatures", "whole_cut", 145, 3),
        ("usda-fsis-safe-temperatures", "ground_meat", 160, 0),
        ("usda-fsis-safe-temperatures", "poultry", 165, 0),
        ("usda-fsis-safe-temperatures", "egg_dish", 160, 0),
        ("usda-fsis-safe-temperatures", "leftover", 165, 0),
        ("cdc-mmwr-trichinella-2024", "wild_game", 165, 0),
        ("fda-food-code-2022", "stuffing", 165, 0),
    ],
)
def test_rows_of_the_chart(source, kind, temp_f, rest_min):
    found = lethality.judge(kind, to_c(temp_f), rest_min)
    assert found.safe
    assert lethality.judge(kind, to_c(temp_f)).needs_min == rest_min
    assert found.source == source


@pytest.mark.source("cdc-mmwr-trichinella-2024")
def test_freezing_does_not_help_bear_and_boar():
    told = answer(Request(topic="doneness", dish="wild boar", dish_class="collagen_cut"))
    assert any("Freezing does not" in c.text for c in told.cautions)
    assert to_f(told.figure("safe_temperature").value) == pytest.approx(165, abs=0.1)


@pytest.mark.source("usda-oven-325")
@pytest.mark.parametrize("oven_f", [200, 225, 250, 300, 320])
def test_no_bird_in_an_oven_under_325(oven_f):
    given = ask(method="roast", dish="turkey", dish_class="whole_bird", temperature_c=to_c(oven_f))
    assert given.headline.startswith("No.")
    assert to_f(given.figure("least_setting").value) == pytest.approx(325, abs=0.1)
    at_325 = ask(method="roast", dish="turkey", dish_class="whole_bird", temperature_c=to_c(325))
    assert not at_325.headline.startswith("No.")


@pytest.mark.source("usda-smoking-2012")
def test_a_smoker_stands_between_225_and_300():
    for smoker_f, refused in ((200, True), (220, True), (225, False), (300, False)):
        given = ask(method="smoke", dish="chicken", dish_class="poultry_pieces", temperature_c=to_c(smoker_f))
        assert given.headline.startswith("No.") is refused, smoker_f


@pytest.mark.source("usda-slow-cookers")
def test_a_slow_cooker_neither_cooks_on_warm_nor_thaws():
    given = ask(method="slow_cook", dish="beef stew", dish_class="mixed_stew")
    assert any("WARM" in c.text and "frozen" in c.text and "reheat" in c.text for c in given.cautions)


@pytest.mark.source("fda-bad-bug-book", "usu-ask-extension")
def test_beans_are_soaked_5_h_and_boiled_30_min_or_10_at_the_least():
    given = ask(method="slow_cook", dish="kidney beans", dish_class="dried_bean")
    boil = given.figure("first_boil")
    assert (boil.low, boil.high, boil.value) == (10, 30, 30)
    assert "5 to 12 h" in given.steps[0]
