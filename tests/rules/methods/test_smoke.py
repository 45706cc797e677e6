from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "smoke", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


BRISKET = {"dish": "beef brisket", "dish_class": "collagen_cut"}


def test_the_stall_comes_cooler_the_higher_one_climbs():
    stalls = [ask(**BRISKET, elevation_m=m).figure("stall_temperature").value for m in (0.0, 1524.0, 3048.0)]
    assert stalls == sorted(stalls, reverse=True)
    assert stalls[0] - stalls[2] > 5


def test_203_is_not_waited_for_where_water_boils_under_it():
    given = ask(**BRISKET, topic="temperature", temperature_c=95.0)
    assert given.headline.startswith("Do not wait for 203 °F")
    assert given.figure("cooker_setting").value > 100


def test_203_is_waited_for_at_sea_level():
    given = ask(**BRISKET, topic="temperature", temperature_c=95.0, elevation_m=0.0)
    assert "within reach" in given.headline
    assert not any("Do not wait" in s for s in given.steps)


def test_cheese_is_smoked_cold():
    given = ask(dish="smoked cheese", dish_class="dairy")
    assert given.figure("cooker_setting").high < 35
    assert any("Cold smoke does not cook" in c.text for c in given.cautions)
    assert given.figure("stall_temperature") is None


def test_a_brisket_takes_no_less_time_up_here():
    times = [ask(**BRISKET, elevation_m=m).figure("cook_time").value for m in (0.0, 1524.0, 3048.0)]
    assert times == sorted(times)


CHICKEN = {"dish": "chicken", "dish_class": "poultry_pieces"}


def test_a_cool_smoker_is_refused_for_birds_only():
    assert ask(**CHICKEN, temperature_c=to_c(180)).headline.startswith("No.")
    assert not ask(**BRISKET, temperature_c=to_c(200)).headline.startswith("No.")
    assert "for the centre" in ask(**CHICKEN, temperature_c=to_c(165)).headline


def test_the_refused_smoker_is_no_figure():
    given = ask(**CHICKEN, temperature_c=to_c(200))
    assert given.figure("cooker_setting").low > to_c(220)
    assert given.cautions[0].level == "stop"


def test_jerky_is_heated_before_it_is_dried():
    for dish in ("beef jerky", "biltong"):
        given = ask(dish=dish, dish_class="cured_meat")
        assert any("before drying" in c.text for c in given.cautions)
