from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "grill", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


STEAK = {"dish": "steak", "dish_class": "tender_cut"}


def test_the_grate_is_as_hot_as_anywhere():
    grate = ask(**STEAK).figure("cooker_setting")
    assert grate.value == grate.sea_level


def test_the_fire_gets_less_air():
    assert any("oxygen" in b.text for b in ask(**STEAK).because)
    assert not any("oxygen" in b.text for b in ask(**STEAK, elevation_m=0.0).because)


def test_fire_is_told_of_once_to_a_cook_with_a_grill():
    given = ask(**STEAK, equipment=("grill",))
    assert sum("oxygen" in b.text for b in given.because) == 1
    assert sum("outdoors" in c.text for c in given.cautions) == 1


def test_a_whole_bird_is_grilled_beside_the_fire():
    assert any("beside the fire" in s for s in ask(dish="turkey", dish_class="whole_bird").steps)


def test_a_bird_beside_a_dying_fire_is_refused():
    given = ask(dish="chicken thighs", dish_class="poultry_pieces", temperature_c=to_c(200))
    assert given.headline.startswith("No.")
    assert not ask(**STEAK, temperature_c=to_c(200)).headline.startswith("No.")
