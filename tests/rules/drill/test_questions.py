"""Every kind of question, over many seeds and in both systems of units."""

import re
from dataclasses import replace
from random import Random

import pytest

from assistant.drill.wording import in_words
from rules import drill
from rules.drill.draw import Draw
from rules.drill.foods import foods
from rules.drill.question import Question
from rules.errors import UnknownWord
from rules.foods.dishes import classes
from rules.safety import chart
from rules.tables import sources

SEEDS = range(30)
KINDS = [(theme, kind) for theme in drill.THEMES for kind in drill.kinds_of(theme)]
EVERY = pytest.mark.parametrize(("theme", "kind"), KINDS, ids=[f"{theme}.{kind.name}" for theme, kind in KINDS])


def made(theme, kind):
    made = (drill.make_question(seed, theme, kind, 1, units) for seed in SEEDS for units in ("us", "metric"))
    return [in_words(question) for question in made]


def figures(text):
    return re.findall(r"\d[\d,.]*\d|\d", text)


def test_there_are_many_kinds_of_every_theme_and_level():
    assert len(KINDS) >= 30
    for theme in drill.THEMES:
        assert {kind.level for kind in drill.kinds_of(theme)} == {1, 2, 3}
        assert len({kind.name for kind in drill.kinds_of(theme)}) == len(drill.kinds_of(theme)) >= 8


@EVERY
def test_the_answer_is_right_and_what_lies_outside_is_not(theme, kind):
    for question in made(theme, kind):
        assert drill.grade(question, question.answer).right
        for wrong in wrong_replies(question):
            assert not drill.grade(question, wrong).right, (question.text, wrong)


def wrong_replies(question: Question):
    yield None
    if question.form == "yes_no":
        yield {"yes": "no", "no": "yes"}[question.answer]
        return
    if question.form != "figure":
        yield from (letter for letter in question.letters if letter != question.answer)
        yield question.answer[::-1] if len(question.answer) > 1 else ""
        return
    beside = max((question.high - question.low) * 0.01, 1e-3)
    yield from (question.low - beside, question.high + beside, -question.answer - 1, question.answer * 10 + 100)
    yield (question.low - beside, question.answer)
    yield str(question.answer)


@EVERY
def test_the_explanation_holds_the_figures_of_the_question(theme, kind):
    for question in made(theme, kind):
        assert figures(question.why), question.why
        if question.form == "figure":
            said = figures(question.shown)
            assert said
            assert all(figure in figures(question.why) for figure in said), (question.shown, question.why)
        if question.form == "yes_no":
            assert question.why.startswith(question.answer.capitalize())
        if question.form == "order":
            assert all(option.lower() in question.why.lower() for option in question.options)


@EVERY
def test_there_is_one_right_answer_and_the_question_says_how_to_give_it(theme, kind):
    for question in made(theme, kind):
        assert len(set(question.options)) == len(question.options)
        assert question.text.endswith((".", "?"))
        if question.form == "yes_no":
            assert question.text.endswith("Yes or no?")
        if question.form == "order":
            assert question.answer != question.letters, "the options stand in the right order already"
        if question.form == "figure" and question.unit not in ("percent", "factor", "min"):
            assert "Answer in " in question.text
        if question.form == "figure" and question.unit == "min":
            assert re.search(r"Answer in (hours|minutes|hours or minutes)\.$|How many minutes", question.text)
        if question.form == "figure" and question.low < question.high:
            assert question.tolerance


@EVERY
def test_the_answer_is_not_given_away(theme, kind):
    for question in made(theme, kind):
        if question.form == "figure":
            assert question.shown not in question.text


@EVERY
def test_sources_are_known(theme, kind):
    for question in made(theme, kind):
        assert question.sources
        assert set(question.sources) <= set(sources())


@EVERY
def test_both_systems_of_units_are_shown_the_askers_first(theme, kind):
    for question in made(theme, kind):
        for first, second in re.findall(
            r"[\d,.½]+ (°F|°C|ft|m|psi|kPa) \([\d,.]+ (°F|°C|ft|m|psi|kPa)\)", question.text
        ):
            us = first in ("°F", "ft", "psi")
            assert us == (question.asked_in == "us"), (question.text, second)


@EVERY
def test_the_same_seed_makes_the_same_question(theme, kind):
    assert made(theme, kind) == made(theme, kind)


@EVERY
def test_a_kind_varies_or_says_one_thing_only(theme, kind):
    texts = {question.text for question in made(theme, kind)}
    assert len(texts) >= 5 or kind.name in ("onset", "cool_first", "cool_in_all", "which_agency", "hottest_first")


def test_the_foods_are_of_known_classes_or_of_the_chart():
    every = {"boiled": "class", "tough": "class", "beans": "class", "slowed": "class", "fried": "class",
             "low_acid": "class", "high_acid": "class", "cooled": "chart", "safe": "chart"}  # fmt: skip
    known = {"class": set(classes()), "chart": {row.kind for row in chart()}}
    for asked, by in every.items():
        assert len(foods(asked)) > 2
        assert {food.of for food in foods(asked)} <= known[by], asked
    with pytest.raises(UnknownWord, match="kind of question"):
        foods("tuff")


def test_a_place_keeps_clear_of_the_edges_of_a_table():
    for seed in range(200):
        draw = Draw("x", "safety", 1, Random(f"{seed}"), "us")
        feet = draw.place(500, 9500, edges_m=(1828.8, 1219.2)).elevation_m / 0.3048
        assert abs(feet - 6000) >= 250
        assert abs(feet - 4000) >= 250
        assert 499 <= feet <= 9501


def test_a_question_that_does_not_hold_together_is_not_made():
    question = drill.make_set(1, count=1, themes=("boiling",))[0]
    figure = next(q for q in drill.make_set(1, count=40) if q.form == "figure")
    with pytest.raises(ValueError, match=re.escape(figure.id)):
        replace(figure, answer=figure.high + 1)
    with pytest.raises(ValueError, match=re.escape(question.id)):
        replace(question, form="choice", unit="", options=("same", "same"), answer="a")
