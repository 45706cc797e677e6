"""The room for what went wrong: what it asks first, how it answers, what it warns of."""

import pytest

from assistant.replies.worded import answer
from rules.mending import catalogue
from rules.model import Answer, Request
from rules.tables import sources

HERE_M = 2133.6


def ask(subject: str | None, **slots: object) -> Answer:
    return answer(Request(topic="troubleshoot", subject=subject, **slots))  # type: ignore[arg-type]


def test_the_fault_is_asked_for_first() -> None:
    assert ask(None, dish="layer cake", dish_class="layer_cake").missing == ("symptom",)


@pytest.mark.parametrize(
    ("subject", "dish_class", "matters"),
    [
        ("sank_in_the_middle", "layer_cake", True),
        ("hard", "dried_bean", True),
        ("grainy", "candy", False),
        ("stuck_to_the_pan", "layer_cake", False),
        ("jar_lost_seal", "canned_low_acid", False),
        ("meat_underdone", "poultry_pieces", False),
        ("candy_too_hard", "candy", True),
    ],
)
def test_the_elevation_is_asked_where_it_changes_the_answer(subject: str, dish_class: str, matters: bool) -> None:
    assert ask(subject, dish_class=dish_class).missing == (("elevation",) if matters else ())


def test_the_answer_is_the_one_next_change() -> None:
    given = ask("sank_in_the_middle", dish="butter cake", dish_class="layer_cake", elevation_m=HERE_M)
    assert given.headline == (
        "Next change at 7,000 ft (2,130 m): use 1 1/2 tsp of baking powder where the recipe has 2 tsp."
    )
    powder = given.figure("leavening_to")
    assert powder is not None
    assert (powder.value, powder.unit) == (1.5, "tsp")
    assert [b.rule for b in given.because] == ["troubleshoot.next_change", "troubleshoot.air"]
    assert "1.3 times the room" in given.because[1].text
    assert "uwyo-altitude-adjusters" in given.because[0].sources
    assert given.steps[1].startswith("If that is not it, use ")
    assert any("One change a batch" in c.text for c in given.cautions)


def test_metric_cooks_are_told_in_grams() -> None:
    given = ask("sank_in_the_middle", dish_class="layer_cake", elevation_m=HERE_M, units="metric")
    assert given.headline.startswith("Next change at 2,134 m (7,000 ft): use 7.5 g of baking powder")


def test_the_time_that_was_given_is_said_back() -> None:
    given = ask("hard", dish="pinto beans", dish_class="dried_bean", elevation_m=1524, time_min=240)
    assert any("You gave it 4 h." in text for text in (given.headline, *given.steps))


def test_under_pressure_where_beans_do_not_soften() -> None:
    given = ask("hard", dish="pinto beans", dish_class="dried_bean", elevation_m=3200)
    assert "under pressure" in given.headline
    assert any("two thirds" in c.text for c in given.cautions)
    assert any(c.level == "warn" and "Kidney" in c.text for c in given.cautions)


def test_a_doubtful_jar_is_refused_before_it_is_mended() -> None:
    given = ask("jar_cloudy", dish_class="canned_low_acid")
    assert given.headline.startswith("Do not taste it")
    assert given.cautions[0].level == "stop"
    assert "tested recipe" in given.steps[0]


def test_a_jar_stays_a_jar_whatever_is_in_it() -> None:
    assert ask("jar_cloudy", dish_class="soup").headline.startswith("Do not taste it")


def test_a_word_without_a_dish_says_what_it_was_taken_for() -> None:
    given = ask("dry", elevation_m=HERE_M)
    assert any("No dish was named" in c.text for c in given.cautions)
    known = ask("dry", dish_class="yeast_bread", elevation_m=HERE_M)
    assert not any("No dish was named" in c.text for c in known.cautions)


def test_the_method_tells_the_dish_where_none_is_named() -> None:
    assert "thermometer" in ask("dry", method="roast", elevation_m=HERE_M).headline


def test_a_subject_of_another_catalogue_is_said_to_be_unknown() -> None:
    given = ask("soft_ball", elevation_m=HERE_M)
    assert given.headline == "That fault is not among those I can mend yet."


def test_below_sea_level_and_beyond_every_kitchen() -> None:
    assert ask("beans_hard", dish_class="dried_bean", elevation_m=-400).headline
    assert ask("beans_hard", dish_class="dried_bean", elevation_m=8000).missing == ("elevation",)


def test_a_barometer_is_an_elevation() -> None:
    assert "baking powder" in ask("sank_in_the_middle", dish_class="layer_cake", pressure_pa=78_185).headline


@pytest.mark.parametrize("subject", sorted(catalogue()))
def test_every_fault_is_answered_everywhere(subject: str) -> None:
    for dish_class in (None, *catalogue()[subject].classes[:2]):
        for elevation_m in (0.0, 1524.0, 2743.2):
            given = ask(subject, dish_class=dish_class, elevation_m=elevation_m)
            assert given.covered
            assert not given.missing
            assert given.headline.endswith(".")
            assert ".." not in given.headline
            assert given == ask(subject, dish_class=dish_class, elevation_m=elevation_m)
            assert {s for b in given.because for s in b.sources} <= set(sources())
