"""What is wondered at: the reason that is meant, two that are near, a belief with its verdict, a word of the trade."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from spacy.tokens import Doc

from assistant.answering import reply_to, understand
from assistant.reading.text import fold
from assistant.understanding import senses, trade_words
from assistant.understanding.explanations import index, nearest
from assistant.understanding.pipeline import read
from assistant.understanding.wondering import Wonder, wonder
from rules.explanations.glossary import terms
from rules.model import Request
from rules.topics.why import GENERAL, catalogue, rows

HERE = Path(__file__).parent / "reasons"
SETS = {path.stem: tomllib.loads(path.read_text(encoding="utf-8")) for path in sorted(HERE.glob("asked*.toml"))}
# how many of a set are to be right at the first go; of the second one nothing was mended
RIGHT = {"asked": 0.97, "asked_again": 0.9}


def read_as(text: str) -> tuple[Doc, Wonder]:
    doc = read(text)
    return doc, wonder(doc)


def is_right(wanted: str, text: str) -> bool:
    row, _, belief = wanted.partition("/")
    found = read_as(text)[1]
    return found.row == row and (not belief or (found.belief == belief and not found.denied))


@pytest.mark.parametrize("name", SETS)
def test_reasons_are_found_in_words_of_their_own(name: str) -> None:
    held = SETS[name]
    asked = [(row, text) for part in ("asked", "stated") for row, texts in held[part].items() for text in texts]
    missed = [(row, text) for row, text in asked if not is_right(row, text)]
    assert len(missed) <= (1 - RIGHT[name]) * len(asked), missed


@pytest.mark.parametrize("name", SETS)
def test_what_is_told_is_hardly_ever_another_reason(name: str) -> None:
    held = SETS[name]
    asked = [(row.partition("/")[0], t) for part in ("asked", "stated") for row, ts in held[part].items() for t in ts]
    wrong = [(row, text) for row, text in asked if read_as(text)[1].row not in (None, row)]
    assert len(wrong) <= 0.02 * len(asked), wrong


def test_every_explanation_is_asked_for_three_times_and_every_belief_stated_twice() -> None:
    asked, stated = SETS["asked"]["asked"], SETS["asked"]["stated"]
    assert {row for row in rows() if len(asked.get(row, ())) < 3} == set()
    beliefs = {f"{row.id}/{belief}" for row in catalogue() for belief in row.beliefs}
    assert {belief for belief in beliefs if len(stated.get(belief, ())) < 2} == set()


@pytest.mark.parametrize("name", SETS)
def test_no_question_holds_a_phrase_of_its_row(name: str) -> None:
    phrases = {row.id: [f" {fold(p)} " for p in row.heard_as if p.count(" ") > 2] for row in catalogue()}
    held = {row: [f" {fold(text).rstrip('?')} " for text in texts] for row, texts in SETS[name]["asked"].items()}
    copied = [(row, p) for row, texts in held.items() for p in phrases[row] if any(p in text for text in texts)]
    assert copied == []


def test_questions_of_other_kinds_are_none_of_why() -> None:
    questions = tomllib.loads((HERE / "not_reasons.toml").read_text(encoding="utf-8"))["questions"]
    assert len(questions) >= 60
    assert [text for text in questions if understand(text).topic == "why"] == []


@pytest.mark.parametrize(
    ("text", "first"),
    [
        ("is it true that a hard rolling boil cooks potatoes faster at 8,000 ft", "No."),
        ("my brother says salted water boils hotter, right?", "Partly."),
        ("is it true that food tastes blander up here", "Yes."),
        ("is sugar water hotter when it boils, is it true", "Partly."),
        ("is it a myth that searing seals the juice in", "No."),
        ("so germs die at a lower temperature up here, right?", "No."),
    ],
)
def test_a_belief_gets_its_verdict_first(text: str, first: str) -> None:
    headline = reply_to(text).headline
    assert headline.startswith(first)
    assert len(headline) < 260


def test_a_belief_that_is_denied_is_right_where_the_belief_is_not_so() -> None:
    request = understand("is it true that a lid does not make the water any hotter")
    assert (request.subject, request.belief, request.denied) == ("lid_matters", "raises_boil", True)
    assert reply_to(request.text).headline.startswith("That is right.")


def test_a_why_gets_no_verdict() -> None:
    assert understand("why does a harder boil not cook faster").belief is None


@pytest.mark.parametrize(
    "text",
    [
        "why does a stew sulk at 7,000 ft",
        "why is garlic blue at altitude",
        "explain why my porridge sings up here",
    ],
)
def test_what_nothing_explains_gets_the_general_reason_which_says_so(text: str) -> None:
    given = reply_to(text)
    assert given.request.subject == GENERAL or given.request.nearest
    assert given.headline.startswith(("The general reason", "Do you mean"))


def test_what_is_not_of_the_kitchen_gets_no_reason() -> None:
    for text in ("why is the sky blue", "why did the train leave late", "is it true that cats can swim"):
        request = understand(text)
        assert request.subject is None
        assert request.nearest == ()


def test_a_dish_alone_is_told_by_its_class() -> None:
    assert understand("so why the spaghetti, chef?").subject in (None, "pasta_takes_longer")
    assert "asta takes" in reply_to("why the spaghetti, at 7,000 ft?").headline


def test_two_that_are_near_are_offered_and_one_is_taken() -> None:
    question = "why yeast dough and flour"
    asked = reply_to(question)
    assert asked.missing == ("explanation",)
    assert asked.headline.startswith("Do you mean why ")
    assert asked.headline.count("?") == 1
    first, second = asked.request.nearest
    assert understand("the first one", [question]).subject == first
    assert understand("the second", [question]).subject == second
    assert understand("the one about the dough that races", [question]).subject == "dough_races"
    assert understand("how long to boil eggs at 6,000 ft", [question]).topic == "time"


def test_one_that_may_be_meant_is_offered_and_a_yes_takes_it() -> None:
    question = "what is the matter with my Assam tea up at the hut, it never gets dark"
    asked = reply_to(question)
    assert asked.request.nearest == ("tea_weak",)
    assert understand("yes", [question]).subject == "tea_weak"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("what is headspace", ("headspace",)),
        ("what's a retard in baking", ("retard",)),
        ("what does carry-over mean", ("carry_over",)),
        ("define latent heat", ("latent_heat",)),
        ("what does gel point mean", ("gel_point",)),
        ("meaning of station pressure please", ("station_pressure",)),
        ("what is meant by blanching", ("blanch",)),
        ("what is the difference between parboiling and blanching", ("parboil", "blanch")),
        ("what's the difference between a dial gauge and a weighted gauge", ("dial_gauge", "weighted_gauge")),
        ("explain what autolyse means", ("autolyse",)),
        ("what is nappe", ("nappe",)),
        ("what does proofing mean", ("proof",)),
    ],
)
def test_words_of_the_trade_are_told(text: str, words: tuple[str, ...]) -> None:
    request = understand(text)
    assert (request.topic, request.terms) == ("why", words)


@pytest.mark.parametrize(
    "text", ["what is soft ball at 7,000 ft", "what is the boiling point here", "what's the gel point"]
)
def test_a_word_whose_figure_is_wanted_is_no_question_after_its_meaning(text: str) -> None:
    assert understand(text).terms == ()


def test_there_are_sixty_words_and_each_is_told_by_its_meaning() -> None:
    assert len(terms()) >= 60
    for term in terms().values():
        request = understand(f"what does {term.title} mean")
        assert request.terms[:1] == (term.id,), term.title


def test_words_of_reasons_are_no_slips_of_the_lexicon() -> None:
    doc = read("does food taste blander to the palate")
    assert doc._.mended == ()
    assert "blander" in senses.every_word()
    assert "poolish" in trade_words.every_word()


def test_a_rare_word_counts_for_more() -> None:
    weights = index().weights
    assert weights["popcorn"] > weights["water"] > weights["&change"]


def test_what_rules_a_reason_out_leaves_it_out() -> None:
    said = senses.slots(read("why does freezer jam set the same"))
    assert "jam_sets_cooler" not in {match.of.row for match in nearest(said, frozenset(), index().all)}


def test_the_same_words_give_the_same_reason_whatever_the_dish_is_called() -> None:
    spuds, potatoes = (understand(f"why do {food} take so long at 9,000 ft").subject for food in ("spuds", "potatoes"))
    assert spuds == potatoes == "potatoes_take_longer"


def test_any_text_is_heard() -> None:
    for text in ("", "why " * 400, "why ? ? ?", "is it true " + "x" * 3000):
        assert isinstance(understand(text), Request)


def test_both_sides_that_are_asked_about_are_told_and_not_offered() -> None:
    given = reply_to("why is frying oil as hot as ever in Puebla and yet you cook the churros in cooler oil")
    assert given.missing == ()
    assert not given.headline.startswith("Do you mean")


def test_a_dish_is_told_its_own_reason_before_the_general_one() -> None:
    assert "The general reason" not in reply_to("does the wind bother the pasta at 9,000 ft, and why").headline


def test_what_looks_like_a_fault_and_is_none_is_explained() -> None:
    request = understand("the probe in my loaf never passes 198 and the card wants 206, stuck for ages at 7,500 ft")
    assert (request.topic, request.subject) == ("why", "bread_centre")


def test_the_minutes_of_the_cook_become_those_of_the_place() -> None:
    assert (
        "Your 9 min become" in reply_to("how come a 9 minute egg is still soft in Cusco, it was fine in Lima").headline
    )


def test_how_far_a_pot_is_when_the_other_is_done() -> None:
    given = reply_to("my cousin's stew in Lima is done in 2 hours, how far along is mine in Cusco by then")
    assert given.headline.startswith("Not done")
    assert given.figure("time_left") is not None


def test_a_why_that_is_no_matter_of_the_kitchen_is_declined() -> None:
    assert understand("why do my knees hurt on double shifts").topic == "out_of_scope"
