from assistant.replies.worded import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(topic="time", method="braise", **fields))


RIBS = {"dish": "short ribs", "dish_class": "collagen_cut", "elevation_m": SEVEN_THOUSAND_FT_M}


def test_a_braise_has_all_its_figures():
    ids = [f.id for f in ask(**RIBS).figures]
    wanted = [
        "boiling_point",
        "liquid_temperature",
        "cook_time",
        "baseline_time",
        "oven",
        "extra_liquid",
        "pressure_time",
    ]
    assert [i for i in ids if i in wanted] == wanted


def test_the_oven_does_not_move():
    oven = ask(**RIBS).figure("oven")
    assert oven.value == oven.sea_level
    assert oven.low <= oven.value <= oven.high


def test_it_says_what_to_check():
    assert any("fork" in step for step in ask(**RIBS).steps)


def test_a_time_of_the_cooks_own_is_scaled():
    given = ask(**RIBS, time_min=150.0, time_high_min=180.0)
    base = given.figure("baseline_time")
    assert (base.low, base.high) == (150, 180)
    assert given.figure("cook_time").low > 150


def test_the_pressure_cooker_is_offered_also_beside_a_time_of_the_cooks_own():
    assert ask(**RIBS, time_min=600.0).figure("pressure_time") == ask(**RIBS).figure("pressure_time")


def test_coming_down_wants_less_time_and_no_extra_liquid():
    down = ask(dish_class="collagen_cut", elevation_m=91.4, from_elevation_m=SEVEN_THOUSAND_FT_M, time_min=240.0)
    assert down.figure("cook_time").value < 200
    assert down.figure("extra_liquid") is None


def test_an_open_pot_needs_more_than_a_covered_one():
    lid, no_lid = (ask(**RIBS, covered=covered).figure("extra_liquid").value for covered in (True, False))
    assert no_lid > 5 * lid


def test_nothing_is_added_at_sea_level():
    flat = ask(dish="short ribs", dish_class="collagen_cut", elevation_m=0.0)
    assert flat.figure("cook_time").value == flat.figure("baseline_time").value
    assert flat.figure("pressure_time") is None
    assert flat.figure("extension_time") is None


def test_the_advice_that_is_quoted_is_compared():
    told = next(b.text for b in ask(**RIBS).because if b.rule == "braise.published")
    assert "one quarter more at 5,000 ft" in told
    assert "overlaps" in told


def test_a_dish_without_a_time_is_given_a_factor():
    given = ask(dish="an unheard-of bread", dish_class="yeast_bread", elevation_m=SEVEN_THOUSAND_FT_M)
    assert given.figure("cook_time") is None
    factor = given.figure("time_factor")
    assert 1 < factor.low <= factor.value <= factor.high


def test_asked_for_the_temperature_it_gives_liquid_and_oven():
    given = answer(Request(topic="temperature", method="braise", **RIBS))
    assert "194 °F" in given.headline
    assert "325 °F" in given.headline
