"""Which explanation answers, at which depth, and what is said where nobody gave an elevation."""

import re
import subprocess
import sys
from dataclasses import replace

import pytest

from assistant.replies.quantities import Say
from assistant.replies.sentences import worded
from assistant.replies.worded import answer
from rules import book
from rules.example import ASK, EXAMPLE_M
from rules.explanations.glossary import terms
from rules.model import Request
from rules.topics.why import GENERAL, catalogue, rows, subject

HERE_M = 2133.6


@pytest.mark.parametrize(
    ("dish_class", "method", "expected"),
    [
        ("pasta", "boil", "pasta_takes_longer"),
        ("pasta", None, "pasta_takes_longer"),
        ("dried_bean", "pressure_cook", "pressure_cooker_helps"),
        ("dried_bean", "braise", "beans_stay_hard"),
        ("collagen_cut", "braise", "braise_longer"),
        ("collagen_cut", "smoke", "smoking_stalls"),
        ("poultry_pieces", "braise", "braise_longer"),
        ("poultry_pieces", "roast", "roasts_unchanged"),
        ("layer_cake", "bake", "cakes_fall"),
        ("yeast_bread", "proof", "dough_races"),
        ("fish", "poach", "poaching_same"),
        (None, "microwave", "microwave_differs"),
        (None, "bake", "hotter_oven"),
        ("water", "boil", "water_boils_cooler"),
        ("popcorn", None, "popcorn_pops"),
        ("infant_formula", None, None),
        (None, None, None),
    ],
)
def test_dish_and_method_pick_the_explanation(dish_class: str | None, method: str | None, expected: str | None) -> None:
    assert subject(Request(topic="why", dish_class=dish_class, method=method)) == expected


def test_a_named_subject_comes_before_dish_and_method() -> None:
    request = Request(topic="why", subject="lid_matters", dish_class="pasta", method="boil", elevation_m=HERE_M)
    assert [b.rule for b in answer(request).because] == ["why.lid_matters"]


def test_a_subject_of_another_catalogue_is_passed_over() -> None:
    assert subject(Request(topic="why", subject="soft_ball", dish_class="candy")) == "candy_hard"


@pytest.mark.parametrize("name", sorted(rows()))
def test_every_explanation_is_reached_through_the_engine(name: str) -> None:
    given = answer(Request(topic="why", subject=name, elevation_m=HERE_M, depth=3))
    assert given.covered
    assert [b.rule for b in given.because] == [f"why.{name}"]
    assert given.because[0].sources == rows()[name].sources


def test_three_depths() -> None:
    one, two, three = (
        answer(Request(topic="why", subject="salt_in_water", elevation_m=HERE_M, depth=depth)) for depth in (1, 2, 3)
    )
    assert one.headline == two.headline == three.headline == one.because[0].text
    assert one.headline not in two.because[0].text
    assert three.because[0].text.startswith(two.because[0].text)
    assert "0.512·2·10/58.44 = 0.175 °C" in three.because[0].text
    assert "0.512" not in two.because[0].text


@pytest.mark.parametrize("name", sorted(rows()))
def test_without_an_elevation_the_example_is_called_an_example(name: str) -> None:
    given = answer(Request(topic="why", subject=name))
    example = Say("us").elevation(EXAMPLE_M)
    assert given.missing == ()
    assert given.headline.endswith(f"No elevation was given, so {example} serves as an example.")
    assert given.figures[0].id == "example_elevation"
    assert worded(ASK.text, "us") in [caution.text for caution in given.cautions]
    assert given.request.elevation_m is None


def test_a_barometer_is_an_elevation() -> None:
    given = answer(Request(topic="why", subject="water_boils_cooler", pressure_pa=78_185))
    assert "example" not in given.headline
    boil = given.figure("boiling_point")
    assert boil is not None
    assert boil.value == pytest.approx(92.87, abs=0.01)


def test_what_is_not_explained_says_so_and_asks_for_the_dish() -> None:
    given = answer(Request(topic="why"))
    assert given.headline.startswith("I have no reason ready for that. Which dish")
    assert [of.text for of in given.because if of.text] == []
    assert given.figures == ()


def test_every_explanation_is_a_rule_of_the_book() -> None:
    module = book.room("topics", "why")
    assert module is not None
    rules = {item.id: item for item in book.rules_of(module)}
    words = {f"why.word.{name}" for name in terms()}
    assert set(rules) == {f"why.{row.id}" for row in catalogue()} | {"why.nothing_fits"} | words
    assert rules["why.lid_matters"].purpose == "Why the lid matters."


def test_one_answer_reads_one_explanation_and_imports_what_it_speaks_of() -> None:
    code = (
        "import sys; opened = [];"
        "sys.addaudithook(lambda event, args: opened.append(str(args[0])) if event == 'open' else None);"
        "from assistant.replies.worded import answer; from rules.model import Request;"
        "answer(Request(topic='why', subject='lid_matters', elevation_m=2000.0, depth=3));"
        "print(sorted(name.rpartition('/')[2] for name in set(opened) if 'wording/en/why/' in name));"
        "print('rules.explanations.pressure' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split("\n")[:2] == ["['lid_matters.ftl', 'shared.ftl']", "False"]


def beliefs() -> list[tuple[str, str]]:
    return [(row.id, belief) for row in catalogue() for belief in row.beliefs]


@pytest.mark.parametrize(
    ("way", "forms", "verdict"),
    [
        ("any", ("changes", "is_ok"), "No. "),
        ("longer", ("is_ok",), "No. "),
        ("same", ("is_ok",), "Yes. "),
        ("either", ("is_ok",), ""),
        ("any", ("changes", "what_is"), ""),
        ("any", ("why", "is_ok"), ""),
    ],
)
def test_whether_a_thing_changes_gets_yes_or_no(way: str, forms: tuple[str, ...], verdict: str) -> None:
    asked = Request(topic="why", subject="thawing_same", asked_way=way, forms=forms, elevation_m=HERE_M)
    assert answer(asked).headline.startswith(verdict + "Ice melts")


@pytest.mark.parametrize(("name", "belief"), beliefs())
def test_a_belief_gets_its_verdict_and_one_sentence(name: str, belief: str) -> None:
    for elevation_m in (0.0, HERE_M, -400.0, 5400.0):
        stated = Request(topic="why", subject=name, belief=belief, elevation_m=elevation_m)
        given = answer(stated)
        verdict = {"yes": "Yes. ", "no": "No. ", "partly": "Partly. ", "open": ""}[rows()[name].beliefs[belief].verdict]
        assert given.headline.startswith(verdict)
        fact, contrary = given.headline.removeprefix(verdict), answer(replace(stated, denied=True)).headline
        held = rows()[name].beliefs[belief]
        right = "That is right. " if held.tested and held.verdict == "no" else ""
        turned = {"Yes. ": "No. ", "No. ": "Yes. "}.get(verdict, verdict) if held.claims else right
        assert contrary == turned + fact
        assert fact.endswith(".")
        assert len(fact) < 260
        assert len(re.findall(r"[.?](?:\s|$)", fact)) == 1
        assert [b.rule for b in given.because] == [f"why.{name}"]


@pytest.mark.parametrize("name", sorted(terms()))
def test_a_word_of_the_trade_is_told_in_a_short_paragraph(name: str) -> None:
    for units in ("us", "metric"):
        given = answer(Request(topic="why", terms=(name,), elevation_m=HERE_M, units=units))
        assert 30 < len(given.headline) < 420
        assert 1 <= len(re.findall(r"[.?](?:\s|$)", given.headline)) <= 3
        assert not re.search(r"[!{}]|  | \.|None", given.headline)
        assert [b.rule for b in given.because] == [f"why.word.{name}"]


def test_two_words_are_told_one_after_the_other() -> None:
    both, one, other = (
        answer(Request(topic="why", terms=of)).headline for of in (("docking", "nappe"), ("docking",), ("nappe",))
    )
    assert both == f"{one} {other}"


def test_a_word_with_a_figure_of_the_place_says_where_it_holds() -> None:
    assert "at 7,000 ft" in answer(Request(topic="why", terms=("gel_point",), elevation_m=HERE_M)).headline
    assert "serves as an example" in answer(Request(topic="why", terms=("gel_point",))).headline


def test_of_two_that_may_be_meant_neither_is_told() -> None:
    asked = Request(topic="why", nearest=("lid_matters", "harder_boil"), dish_class="pasta", elevation_m=HERE_M)
    assert answer(asked).missing == ("explanation",)
    assert answer(replace(asked, subject="lid_matters")).missing == ()


def test_the_general_reason_stands_in_where_nothing_tells() -> None:
    assert subject(Request(topic="why", nearest=(GENERAL,))) == GENERAL
    assert subject(Request(topic="why", nearest=(GENERAL,), dish_class="pasta")) == "pasta_takes_longer"
    assert answer(Request(topic="why", subject=GENERAL, elevation_m=HERE_M)).headline.startswith("The general reason")
