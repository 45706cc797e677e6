from assistant.replies.worded import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "fry", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


DOUGHNUTS = {"dish": "doughnuts", "dish_class": "fried_dough"}


def test_deep_fat_has_its_figures_and_its_caution():
    given = ask(**DOUGHNUTS)
    assert given.figure("fat_temperature").value < given.figure("fat_temperature").sea_level
    assert any("half" in c.text and c.level == "warn" for c in given.cautions)


def test_above_the_advice_the_fat_stays_where_it_is():
    top, higher = (ask(**DOUGHNUTS, elevation_m=m).figure("fat_temperature").value for m in (3048.0, 4500.0))
    assert top == higher


def test_a_temperature_of_the_cooks_own_is_that_of_the_baseline():
    given = ask(**DOUGHNUTS, topic="temperature", temperature_c=180.0, from_elevation_m=SEVEN_THOUSAND_FT_M)
    assert abs(given.figure("fat_temperature").value - 180) < 0.01


def test_a_pan_needs_no_change():
    steak = ask(dish="steak", dish_class="tender_cut").figure("fat_temperature")
    assert steak.value == steak.sea_level


def test_eggs_keep_their_time():
    given = ask(dish="fried eggs", dish_class="egg")
    assert given.figure("cook_time").value == given.figure("baseline_time").value


def test_a_whole_turkey_is_fried_outdoors():
    given = ask(dish="turkey", dish_class="whole_bird")
    assert any("outdoors" in c.text for c in given.cautions)
    assert not any("batches" in step for step in given.steps)


def test_popcorn_goes_by_its_kernels():
    given = ask(dish="popcorn", dish_class="popcorn")
    assert given.figure("pop_temperature").value == 180
    assert not any("pat the food dry" in step for step in given.steps)
