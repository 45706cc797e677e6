"""The shelf of forms: who may speak, and what stays of the room's own answer."""

import pytest

from assistant.replies.sentences import worded
from rules import book, engine
from rules.model import Request
from rules.physics.units import to_c
from rules.tables import read_toml

BRAISE = {"dish": "short ribs", "dish_class": "collagen_cut", "method": "braise", "elevation_m": 2133.6}


def ask(**fields):
    return engine.answer(Request(**{"topic": "time", **fields}))


def said(**fields):
    answer = ask(**fields)
    return worded(answer.headline, answer.request.units)


def test_every_room_is_named_as_a_form():
    assert set(book.names("forms")) <= {row["id"] for row in read_toml("lexicon/forms.toml")["form"]}


def test_every_way_is_a_row_of_the_catalogue():
    ways = {row["id"] for row in read_toml("lexicon/asked_ways.toml")["way"]}
    assert ways == {
        "either",
        "longer",
        "shorter",
        "hotter",
        "cooler",
        "same",
        "any",
        "more_of",
        "less_of",
        "yes_or_no",
        "same_change",
    }


def test_without_a_form_the_rooms_headline_stands():
    plain = said(**BRAISE)
    assert plain.startswith("About 4 h (3 h 35 min to 4 h 40 min) for braising short ribs")
    for form in ("what_is", "how_to", "how_long", "no_such_form"):
        assert said(**BRAISE, forms=(form,)) == plain


def test_a_form_whose_way_was_not_asked_says_nothing():
    assert said(**BRAISE, forms=("changes", "is_ok")) == said(**BRAISE)


def test_the_form_that_counts_first_speaks():
    assert said(**BRAISE, forms=("enough", "changes"), planned_min=60.0, asked_way="any").startswith("No: 1 h is short")
    assert said(**BRAISE, forms=("changes", "enough"), planned_min=60.0, asked_way="any").startswith("Yes: ")


def test_a_plain_form_before_it_is_answered_plainly():
    assert said(**BRAISE, forms=("how_long", "changes"), asked_way=None) == said(**BRAISE)


def test_two_ways_held_against_each_other_come_before_the_time_of_one():
    asked = {**BRAISE, "methods_too": ("pressure_cook",)}
    for forms in (("which",), ("how_long", "which"), ("how_long", "each")):
        assert said(**asked, forms=forms).startswith("Quicker at ")
    assert said(**asked, forms=("how_long",)) == said(**BRAISE)


def test_behind_a_plain_form_only_yes_and_no_are_heard():
    assert said(**BRAISE, forms=("how_long", "which", "can_it")) == said(**BRAISE)
    assert said(**BRAISE, forms=("how_long", "changes"), asked_way="longer").startswith("Yes: ")


def test_elapsed_time_is_what_is_left():
    assert said(**BRAISE, elapsed_min=60.0).startswith("About 3 h more")


def test_figures_and_steps_of_the_room_stay():
    plain, judged = ask(**BRAISE), ask(**BRAISE, forms=("changes",), asked_way="longer")
    assert judged.figures == plain.figures
    assert judged.steps == plain.steps
    assert judged.cautions == plain.cautions


def test_a_figure_of_the_form_stands_first():
    assert ask(**BRAISE, elapsed_min=60.0).figures[0].id == "time_left"


@pytest.mark.parametrize("forms", [("changes",), ("enough",), ("is_ok",), ("can_it",), ("which",)])
def test_a_refusal_is_left_alone(forms):
    cool = {"dish": "turkey", "dish_class": "whole_bird", "method": "roast", "temperature_c": to_c(250)}
    refused = said(**cool, elevation_m=2133.6)
    assert refused.startswith("No.")
    assert said(**cool, elevation_m=2133.6, forms=forms, asked_way="any", planned_min=600.0) == refused


def test_a_danger_is_left_alone():
    told = said(**BRAISE, danger="raw_poultry", forms=("changes",), asked_way="any")
    assert told == said(**BRAISE, danger="raw_poultry")


def test_what_is_missing_is_asked_for():
    answer = ask(**{**BRAISE, "elevation_m": None}, forms=("how_long",))
    assert answer.missing == ("elevation",)


def test_what_elevation_changes_is_told_by_an_example_where_no_place_was_named():
    answer = ask(**{**BRAISE, "elevation_m": None}, forms=("changes",), asked_way="longer")
    assert answer.missing == ()
    assert answer.request.elevation_m is None
    assert answer.figure("example_elevation").value == 1524.0
    at_5000_ft = ask(**{**BRAISE, "elevation_m": 1524.0}, forms=("changes",), asked_way="longer")
    assert answer.figure("cook_time") == at_5000_ft.figure("cook_time")


def test_what_a_room_says_behind_a_time_stays_behind_it():
    chili = {"dish": "chili", "dish_class": "mixed_stew", "method": "slow_cook", "elevation_m": 2438.4}
    assert said(**chili, forms=("changes",), asked_way="longer").endswith("Any dry beans in it boil hard 30 min first.")


@pytest.mark.parametrize("form", book.names("forms"))
@pytest.mark.parametrize("topic", ["time", "temperature", "boiling_point", "doneness", "pressure", "sugar_stage"])
@pytest.mark.parametrize("method", ["boil", "fry", "roast", "sous_vide", "hold", "microwave", "brew", "grill", None])
def test_every_form_is_answered_whatever_is_known(form, topic, method):
    for dish_class in (None, "dried_bean", "tender_cut", "yeast_bread", "candy"):
        for asked in ({}, {"temperature_c": 80.0}, {"planned_min": 20.0}, {"asked_way": "any"}, {"elapsed_min": 30.0}):
            answer = ask(topic=topic, method=method, dish_class=dish_class, elevation_m=2133.6, forms=(form,), **asked)
            assert (
                worded(answer.headline, "metric")
                or answer.figures
                or answer.missing
                or not answer.covered
                or (answer.steps or answer.cautions)
            )


def test_a_complaint_is_told_by_its_cause_until_all_its_time_is_over():
    tough = {"dish": "short ribs", "dish_class": "collagen_cut", "elevation_m": 2133.6, "topic": "troubleshoot",
             "subject": "tough"}  # fmt: skip
    assert not said(**tough, elapsed_min=180.0).startswith(("About", "It should be done"))
    assert said(**tough, elapsed_min=180.0, forms=("more", "remaining")).startswith("About 1 h more")
    assert said(**tough, elapsed_min=480.0).startswith("It should be done: ")
    assert not said(**{**tough, "subject": "mushy"}, elapsed_min=480.0).startswith("It should be done: ")
