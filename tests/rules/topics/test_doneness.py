import pytest

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(topic="doneness", **fields))


@pytest.mark.parametrize("dish_class", ["poultry_pieces", "ground_meat", "tender_cut", "fish", "egg", "casserole"])
def test_safe_temperatures_do_not_move(dish_class):
    low, high = (ask(dish_class=dish_class, elevation_m=m).figure("safe_temperature") for m in (0.0, 3048.0))
    assert low == high
    assert high.value == high.sea_level


def test_no_elevation_is_needed():
    assert ask(dish="chicken thighs", dish_class="poultry_pieces").missing == ()


def test_the_whole_chart_where_no_food_is_named():
    assert len(ask().figures) == 10


def test_a_braise_cannot_reach_203_up_here():
    high, low = (ask(dish="short ribs", dish_class="collagen_cut", elevation_m=m) for m in (2133.6, 0.0))
    assert any("cannot reach it" in c.text for c in high.cautions)
    assert not any("cannot reach it" in c.text for c in low.cautions)


@pytest.mark.parametrize(("dish", "dish_class"), [("turkey burgers", "ground_meat"), ("chicken sausage", "sausage")])
def test_ground_poultry_counts_as_poultry(dish, dish_class):
    assert "165 °F" in ask(dish=dish, dish_class=dish_class).headline


def test_a_food_without_a_row_is_said_so():
    given = ask(dish="pasta", dish_class="pasta")
    assert "done by these signs" in given.headline
    assert any("white core" in step for step in given.steps)


def test_bread_is_done_lower_down_up_here():
    low, high = (ask(dish="sourdough", dish_class="yeast_bread", elevation_m=m) for m in (0.0, SEVEN_THOUSAND_FT_M))
    assert low.figure("core_temperature").high > high.figure("core_temperature").high
    assert "against 205–210 °F" in high.headline


def test_meat_is_not():
    low, high = (ask(dish="prime rib", dish_class="tender_cut", elevation_m=m) for m in (0.0, SEVEN_THOUSAND_FT_M))
    assert low.figure("safe_temperature") == high.figure("safe_temperature")


@pytest.mark.parametrize("dish_class", ["custard", "cheesecake"])
def test_what_sets_by_its_proteins_sets_as_anywhere(dish_class):
    reading = ask(dish_class=dish_class, elevation_m=SEVEN_THOUSAND_FT_M).figure("core_temperature")
    assert reading.value == reading.sea_level


def test_candy_falls_with_the_boil_degree_for_degree():
    reading = ask(dish="fudge", dish_class="candy", elevation_m=SEVEN_THOUSAND_FT_M).figure("core_temperature")
    assert reading.sea_level - reading.value == pytest.approx(99.97 - 92.87, abs=0.05)


def test_without_a_place_bread_is_told_for_sea_level():
    assert ask(dish="sourdough", dish_class="yeast_bread").headline.endswith("at sea level.")


@pytest.mark.parametrize(
    ("dish", "dish_class", "temp_f", "time_min", "said"),
    [
        ("chicken thighs", "poultry_pieces", 165, None, "Yes."),
        ("chicken thighs", "poultry_pieces", 150, None, "Not at once"),
        ("chicken thighs", "poultry_pieces", 150, 5.0, "Yes."),
        ("chicken thighs", "poultry_pieces", 130, 120.0, "No."),
        ("pork chops", "tender_cut", 145, None, "Yes, after a rest of 3 min"),
        ("hamburgers", "ground_meat", 125, 600.0, "No."),
        ("venison steak", "tender_cut", 145, None, "No."),
        ("wild boar", "collagen_cut", 160, None, "No."),
        ("salmon", "fish", 145, None, "Yes."),
    ],
)
def test_a_reading_is_judged(dish, dish_class, temp_f, time_min, said):
    given = ask(dish=dish, dish_class=dish_class, temperature_c=to_c(temp_f), time_min=time_min)
    assert given.headline.startswith(said)
    assert given.figure("safe_temperature")


def test_the_heat_of_an_oven_is_no_reading():
    given = ask(dish="chicken thighs", dish_class="poultry_pieces", temperature_c=to_c(375))
    assert "safe at 165 °F" in given.headline
