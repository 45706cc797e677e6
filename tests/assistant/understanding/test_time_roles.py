"""The part that a time plays: baseline, elapsed, planned; a time per weight; times that are no cooking."""

import pytest

from assistant.understanding import time_roles
from assistant.understanding.pipeline import read


def heard(text):
    return time_roles.heard(read(text))


@pytest.mark.parametrize(
    ("text", "baseline"),
    [
        ("it takes 3 hours at sea level", 180),
        ("my stew takes 2 h", 120),
        ("recipe says 70 min for the potatoes", 70),
        ("the box says 9 minutes for fusilli", 9),
        ("the label calls for 12 min", 12),
        ("normally 3 min for my egg", 3),
        ("usually we give it 40 minutes", 40),
        ("at home 25 minutes does it", 25),
        ("25 min at home for the dal", 25),
        ("my aunt always did it 90 minutes", 90),
        ("back in the valley it was 45 min", 45),
        ("it used to be 20 minutes", 20),
        ("the book wants 50 minutes", 50),
        ("down on the coast 15 min did it", 15),
        ("polenta, 40 minutes", 40),
    ],
)
def test_a_time_that_is_right_elsewhere_is_the_baseline(text, baseline):
    times = heard(text)
    assert times.baseline == (baseline, baseline)
    assert (times.elapsed_min, times.planned_min) == (None, None)


@pytest.mark.parametrize(
    ("text", "elapsed"),
    [
        ("the beans have been on 50 min, how much longer", 50),
        ("it's been in for 2 hours", 120),
        ("after 45 min they are still hard", 45),
        ("gone 90 mins and no softer", 90),
        ("sat at 158 F for four hours", 240),
        ("stalled at 160 for 3 h now", 180),
        ("3hrs still tough", 180),
        ("on since 10 this morning, its three now, how much longer", 300),
        ("put it on an hour ago", 60),
        ("simmering for 30 minutes already", 30),
        ("boiled 40 mins not soft yet", 40),
        ("it has had 15 minutes", 15),
        ("the stew has simmered 2 hours at 8,500 ft", 120),
        ("in the smoker for 6 hours, how much longer", 360),
        ("we are 40 min in and it is still raw", 40),
        ("they were in for 2 h", 120),
        ("20 minutes so far", 20),
        ("my rice had 20 min already", 20),
    ],
)
def test_a_time_that_is_over_is_no_baseline(text, elapsed):
    times = heard(text)
    assert times.elapsed_min == elapsed
    assert times.baseline is None


@pytest.mark.parametrize(
    ("text", "planned"),
    [
        ("is 10 minutes enough for farro", 10),
        ("I have 40 min, is that enough", 40),
        ("will it be done in an hour", 60),
        ("doors in 2 h, will they be ready", 120),
        ("can I cook it for 12 min", 12),
        ("is it ok to boil them for 6 minutes", 6),
        ("if I give it 25 min", 25),
        ("we eat in 90 minutes", 90),
        ("are 8 minutes right for that", 8),
        ("only got half an hour for the lentils", 30),
        ("planning to braise it 4 hours", 240),
        ("would 15 min do", 15),
        ("the packet says 9 min for penne, is 13 enough", 13),
        ("the book says an hour, will 1.5 do", 90),
    ],
)
def test_a_time_to_be_judged_is_planned(text, planned):
    assert heard(text).planned_min == planned


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("20 min per lb, a 14 lb turkey", 280),
        ("14 lb bird, 20 min per lb", 280),
        ("45 min per kilo for a 2 kg joint", 90),
        ("4 lb of beef at 20 minutes to the pound", 80),
        ("20 min a pound plus 20 for 5 lb of pork", 100),
        ("20 min a pound and 20 minutes over for 5 lb of pork", 120),
        ("30 minutes for every 500 g, it weighs 2 kg", 120),
        ("half an hour a kilo for a 3 kg leg", 90),
    ],
)
def test_a_time_per_weight_is_that_of_the_weight(text, minutes):
    times = heard(text)
    assert times.baseline is not None
    assert times.baseline[0] == pytest.approx(minutes)


def test_the_weight_of_a_time_per_weight_is_no_amount():
    from assistant.answering import understand

    request = understand("turkey at 20 min per lb for a 14 lb bird at 7,000 ft, how long")
    assert request.quantity is not None
    assert (request.quantity.value, request.quantity.unit) == (14.0, "lb")
    assert request.time_min == pytest.approx(280)


@pytest.mark.parametrize(
    "text",
    ["stir it every 20 min", "baste each 15 minutes", "soaked 8 hours", "rested for 30 min", "marinated in the fridge"],
)
def test_what_is_done_between_or_apart_is_no_cooking_time(text):
    times = heard(text)
    assert (times.baseline, times.elapsed_min, times.planned_min) == (None, None, None)


def test_two_times_play_two_parts():
    times = heard("recipe says 3 hours and it has been in for 2 hours, how much longer")
    assert times.baseline == (180, 180)
    assert times.elapsed_min == 120


@pytest.mark.parametrize(
    ("text", "time_min"),
    [
        ("steak sous vide at 55 C for 2 hours, is that ok", 120),
        ("set a timer for 20 minutes", 20),
        ("chicken held at 150 F inside for 5 min, is it safe", 5),
    ],
)
def test_where_a_time_is_one_thing_only_it_stays(text, time_min):
    from assistant.answering import understand

    request = understand(text)
    assert request.time_min == time_min
    assert (request.elapsed_min, request.planned_min) == (None, None)


@pytest.mark.parametrize("text", ["hang on one sec, my brioche dough in Quito", "gimme 1 sec. noodles at 6,600 ft"])
def test_a_moment_of_patience_times_nothing(text: str) -> None:
    assert heard(text).first is None
