"""Whistles that are counted, and what is no count of them."""

import pytest

from assistant.answering import reply_to, understand


@pytest.mark.parametrize(
    ("said", "whistles"),
    [
        ("moong dal gets 3 whistles at home, what about 2,900 m", 3),
        ("potatoes four seetis in Jaipur, now I am at 10,000 ft", 4),
        ("how many seeti for black chana at 2,700 m", 0),
        ("number of whistles for mutton at 9,500 ft", 0),
        ("mutton takes 5-6 whistles in the plains, we are at 3,100 m", 6),
        ("rice one whistle, is that right at 2,200 m", 1),
        ("how many more whistles for rajma at 3,300 m", 0),
        ("my kettle has a whistle and will not blow at 4,000 m", None),
        ("the train whistles all night", None),
        ("why does the weight whistle late up here", None),
    ],
)
def test_heard(said, whistles):
    assert understand(said).whistles == whistles


def test_whistles_are_of_a_pressure_cooker():
    request = understand("toor dal, 4 whistles in Nagpur. how many at 3,000 m")
    assert (request.method, request.dish) == ("pressure_cook", "toor dal")


def test_the_reply_counts_as_it_was_asked():
    answer = reply_to("chole need 5 whistles at sea level, how many at 3,500 m")
    assert answer.headline.startswith("About 7 whistles (7 to 10) for chana masala at 3,500 m (11,480 ft), or ")
    assert answer.headline.endswith("at pressure, against 5 at sea level.")


def test_one_whistle_is_said_as_one():
    assert reply_to("white rice one whistle at sea level, how many at 900 m").headline.startswith("About one whistle ")


@pytest.mark.parametrize("turn", ["it is 1.5 kg of them", "so how many whistles?", "and in La Paz?"])
def test_whistles_that_were_counted_stay_with_the_dish(turn: str) -> None:
    assert understand(turn, ["urad dal in the pressure cooker at 2,400 m, 7 whistles at home"]).whistles == 7


@pytest.mark.parametrize("turn", ["the book says 20 minutes", "and red lentils?"])
def test_minutes_or_another_dish_take_the_place_of_whistles(turn: str) -> None:
    assert not understand(turn, ["urad dal in the pressure cooker at 2,400 m, 7 whistles at home"]).whistles
