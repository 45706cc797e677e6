import pytest

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c


def ask(**fields):
    return answer(Request(topic="time", method="hold", **fields))


def test_holding_needs_no_elevation():
    given = ask(dish="pot roast", dish_class="collagen_cut")
    assert given.missing == ()
    assert "135 °F" in given.headline


def test_the_limits_do_not_move():
    low, high = (ask(dish_class="soup", elevation_m=m) for m in (0.0, 3048.0))
    assert low.figures == high.figures
    assert any("covered" in step for step in high.steps)


def test_rice_is_warned_of():
    assert any("spores" in c.text for c in ask(dish_class="rice").cautions)


def test_infant_formula_is_never_kept_warm():
    given = ask(dish="infant formula", dish_class="infant_formula", elevation_m=2133.6)
    assert "do not keep it warm" in given.headline
    assert any("doctor" in c.text for c in given.cautions)


def test_breast_milk_is_not_mixed_with_hot_water():
    given = ask(dish="breast milk", dish_class="infant_formula")
    assert given.figure("mix_temperature") is None
    assert "4 h" in given.headline


def test_yogurt_is_cultured_not_held_hot():
    given = ask(dish="yogurt", dish_class="dairy", elevation_m=2133.6)
    assert given.figure("incubation_temperature").value < 45
    assert given.figure("hold_temperature") is None


def test_kefir_is_kept_at_room_temperature():
    given = ask(dish="kefir", dish_class="dairy")
    assert given.figure("hold_temperature").high <= 26


@pytest.mark.parametrize(
    ("dish", "dish_class", "temp_f", "said"),
    [
        ("soup", "soup", 125, "No."),
        ("soup", "soup", 134, "No."),
        ("soup", "soup", 135, "Yes."),
        ("soup", "soup", 70, "No."),
        ("soup", "soup", 38, "Yes."),
        ("prime rib", "tender_cut", 131, "Yes."),
        ("prime rib", "tender_cut", 128, "No."),
        ("chicken", "poultry_pieces", 131, "No."),
        ("pot roast", "collagen_cut", 131, "Yes."),
        ("bread", "yeast_bread", 90, "Hold"),
    ],
)
def test_a_temperature_that_is_held_is_judged(dish, dish_class, temp_f, said):
    """Food Code 3-501.16: 135 degF and hotter, 130 degF for roasts, or 41 degF and colder."""
    given = ask(dish=dish, dish_class=dish_class, temperature_c=to_c(temp_f))
    assert given.headline.startswith(said)
    assert any(c.level == "stop" for c in given.cautions) is (said == "No.")
    assert not any(abs(f.value - to_c(temp_f)) < 0.3 for f in given.figures if f.unit == "degC") or said == "Yes."
