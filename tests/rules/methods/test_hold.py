from rules.engine import answer
from rules.model import Request


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
