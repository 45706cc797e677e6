from assistant.replies.worded import answer
from rules.model import Request


def ask(**fields):
    return answer(Request(topic="time", method="steam", **fields))


def test_steam_is_as_hot_as_the_boil():
    given = ask(dish="momos", dish_class="dumpling", elevation_m=3048.0)
    assert given.figure("liquid_temperature").value == given.figure("boiling_point").value


def test_the_basket_wants_more_water_up_here():
    high, low = (ask(dish_class="dumpling", elevation_m=m).steps for m in (3048.0, 0.0))
    assert any("under the basket" in step for step in high)
    assert not any("under the basket" in step for step in low)
