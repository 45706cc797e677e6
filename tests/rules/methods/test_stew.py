from assistant.replies.worded import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(topic="time", method="stew", **fields))


def test_a_stew_behaves_as_its_meat():
    given = ask(dish="goulash", dish_class="mixed_stew", elevation_m=SEVEN_THOUSAND_FT_M)
    assert given.figure("cook_time").value > given.figure("baseline_time").value
    assert given.figure("pressure_time").value < given.figure("cook_time").value


def test_extra_liquid_is_said_in_a_step():
    given = ask(dish_class="mixed_stew", elevation_m=SEVEN_THOUSAND_FT_M)
    assert any("more liquid" in step for step in given.steps)
