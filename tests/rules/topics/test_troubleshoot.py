"""The room for what went wrong: what it asks first, how it answers, what it warns of."""

import pytest

from assistant.replies.worded import answer
from assistant.replies.wording import dress
from rules import engine
from rules.foods.dishes import dishes
from rules.mending import catalogue
from rules.model import Amount, Answer, Request
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
        ("curdled", "custard", False),
    ],
)
def test_the_elevation_is_asked_at_the_end_where_it_changes_the_answer(
    subject: str, dish_class: str, matters: bool
) -> None:
    given = ask(subject, dish_class=dish_class)
    assert not given.missing
    assert given.headline.endswith(".")
    assert any("What elevation" in c.text for c in given.cautions) == matters
    placed = ask(subject, dish_class=dish_class, elevation_m=HERE_M)
    assert not any("What elevation" in c.text for c in placed.cautions)


@pytest.mark.parametrize(
    ("subject", "dish"), [("not_set", "panna cotta"), ("curdled", "hollandaise"), ("gummy", "mashed potatoes")]
)
def test_nobody_is_asked_for_an_elevation_that_does_not_matter(subject: str, dish: str) -> None:
    given = ask(subject, dish=dish, dish_class=dishes()[dish].dish_class)
    assert not given.missing
    assert "elevation" in given.headline
    assert not any("What elevation" in c.text for c in given.cautions)


def test_in_general_no_figure_of_a_place_is_told() -> None:
    assert ask("candy_too_hard", dish_class="candy").headline.endswith("short of 212 °F (100 °C).")
    assert "8 °F (4.5 °C) over what plain water boils at" in ask("not_set", dish_class="jam").headline
    assert "for every 1,000 ft" in ask("dark_outside_raw_inside", dish_class="battered").headline
    for given in (ask("hard", dish_class="dried_bean"), ask("sank_in_the_middle", dish_class="layer_cake")):
        assert "sea level" not in given.headline
        assert "212" not in given.headline


def test_the_answer_is_the_cause_and_the_one_change() -> None:
    given = ask("sank_in_the_middle", dish="butter cake", dish_class="layer_cake", elevation_m=HERE_M)
    assert given.headline == (
        "At 7,000 ft (2,130 m) the gas takes up 1.3 times its room; it bursts the walls of the crumb before they set, "
        "and the bake coarsens and falls. Use 1 1/2 tsp of baking powder where the recipe has 2 tsp."
    )
    powder = given.figure("leavening_to")
    assert powder is not None
    assert (powder.value, powder.unit) == (1.5, "tsp")
    assert [b.rule for b in given.because] == ["troubleshoot.next_change", "troubleshoot.air"]
    assert "1.3 times the room" in given.because[1].text
    assert "uwyo-altitude-adjusters" in given.because[0].sources
    assert given.steps[0].startswith("This batch can be saved: ")
    assert given.steps[1].startswith("If that is not it, use ")
    assert given.steps[2].startswith("After that, ")
    assert any("One change a batch" in c.text for c in given.cautions)


def test_metric_cooks_are_told_in_grams() -> None:
    given = ask("sank_in_the_middle", dish_class="layer_cake", elevation_m=HERE_M, units="metric")
    assert "Use 7.5 g of baking powder where the recipe has 10 g." in given.headline


def test_amounts_that_were_said_are_what_is_changed() -> None:
    said = (Amount("granulated sugar", "sugar", 0.75, "cup"), Amount("baking soda", "leavening", 1, "tsp"))
    given = ask("flat", dish="cookies", dish_class="cookie", elevation_m=HERE_M, amounts=said)
    assert "of granulated sugar instead of 3/4 cup" in given.headline
    sank = ask("fell", dish_class="layer_cake", elevation_m=HERE_M, amounts=said)
    assert "3/4 tsp of baking soda instead of 1 tsp" in sank.headline


def test_a_reading_that_was_said_is_what_is_lowered() -> None:
    fudge = ask("hard", dish="fudge", dish_class="candy", elevation_m=HERE_M, temperature_c=114.4)
    assert "Take it off at 225 °F" in fudge.headline
    assert "of sea level" in fudge.headline
    pale = ask("not_browned", dish_class="yeast_bread", elevation_m=HERE_M, temperature_c=232.2)
    assert "instead of 450 °F" in pale.headline


def test_can_i_save_it_is_answered_first() -> None:
    jam = ask("stiff", dish="marmalade", dish_class="jam", elevation_m=HERE_M, saving=True)
    assert jam.headline.startswith("Yes: warm it with a few spoons of water")
    assert "Next time: at 7,000 ft" in jam.headline
    assert ask("curdled", dish_class="custard", saving=True).headline.startswith("In part: ")
    assert not ask("jar_cloudy", dish_class="pickle", saving=True).headline.startswith("Yes")


def test_the_dish_is_asked_for_where_the_words_fit_any() -> None:
    assert ask("dry").missing == ("dish",)
    assert ask("hard", elevation_m=HERE_M).missing == ("dish",)
    assert not ask("dry", method="roast").missing
    assert not ask("hard", equipment=("rice_cooker",)).missing
    assert not ask("sank_in_the_middle").missing


def test_a_fault_that_the_dish_cannot_have_is_asked_back() -> None:
    given = ask("not_rising", dish="lentils", dish_class="lentil", elevation_m=HERE_M)
    assert given.headline.startswith("What is wrong with the lentils? It stays hard; ")


def test_the_question_what_went_wrong_names_what_usually_does() -> None:
    asked = dress(engine.answer(Request(topic="troubleshoot", dish="brownies", dish_class="brownie")))
    assert asked.missing == ("symptom",)
    assert asked.headline.startswith("What is wrong with the brownies? It ")
    nothing = dress(engine.answer(Request(topic="troubleshoot")))
    assert nothing.headline == "Which dish, and what is wrong with it?"


@pytest.mark.parametrize(("elevation_m", "spoons"), [(1800.0, "4 tbsp"), (2850.0, "6 tbsp")])
def test_a_rice_cooker_that_stops_early_gets_the_water_that_rice_wants_here(elevation_m: float, spoons: str) -> None:
    given = ask("hard", dish="white rice", dish_class="rice", equipment=("rice_cooker",), elevation_m=elevation_m)
    assert given.headline.startswith("A rice cooker switches off when its pan runs dry, and at ")
    assert f"Soak the rice 20 to 30 min, give each cup {spoons} more water, and run the cycle a second time." in (
        given.headline
    )


def test_what_sets_in_a_bath_or_in_steam_wants_longer() -> None:
    flan = ask("not_set", dish="flan", dish_class="custard", elevation_m=1850, time_min=45)
    assert flan.headline.endswith("Give it 55 min instead of 45 min, and test it then.")
    buns = ask("gummy", dish="bao buns", dish_class="yeast_bread", method="steam", elevation_m=3500, time_min=15)
    assert buns.headline == (
        "Steam at 11,480 ft (3,500 m) is only 191 °F (88.5 °C), so the middle sets later. Give it 24 min instead of "
        "15 min, and test it then."
    )


def test_under_pressure_more_time_at_the_boil_is_no_help() -> None:
    given = ask("hard", dish="rajma", dish_class="dried_bean", method="pressure_cook", elevation_m=2100)
    assert given.headline.startswith("The gauge counts from the thinner air")
    assert not any("open pot" in text for text in (given.headline, *given.steps))


def test_two_faults_at_once_are_weighed_together() -> None:
    muffins = ask(
        "ran_over_the_pan", symptoms_too=("fell",), dish="muffins", dish_class="quick_bread", elevation_m=2800
    )  # fmt: skip
    assert "baking powder" in muffins.headline


def test_the_time_that_was_given_is_said_back() -> None:
    long = ask("hard", dish="pinto beans", dish_class="dried_bean", elevation_m=1524, time_min=240)
    assert any("You gave it 4 h." in text for text in (long.headline, *long.steps))


@pytest.mark.parametrize("slot", ["time_min", "elapsed_min"])
def test_what_it_has_had_is_taken_off_what_it_wants(slot: str) -> None:
    given = ask("tough", dish="lamb shanks", dish_class="collagen_cut", elevation_m=2800, **{slot: 180})
    assert "Go on for 16 min to 1 h 55 min more after your 3 h: 3 h 15 min to 4 h 55 min in all" in given.headline


def test_a_moment_is_no_time_of_cooking() -> None:
    given = ask("fell", dish="eclairs", dish_class="choux", elevation_m=2100, time_min=1)
    assert "20 % more time" in given.headline


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


def test_a_dish_that_nobody_knows_says_what_it_was_taken_for() -> None:
    given = ask("dry", dish_class="general", elevation_m=HERE_M)
    assert any("No such dish is known to me" in c.text for c in given.cautions)
    known = ask("dry", dish_class="yeast_bread", elevation_m=HERE_M)
    assert not any("No such dish" in c.text for c in known.cautions)


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
    for dish_class in ("general", *catalogue()[subject].classes[:2]):
        for elevation_m in (0.0, 1524.0, 2743.2):
            given = ask(subject, dish_class=dish_class, elevation_m=elevation_m)
            assert given.covered
            assert not given.missing
            assert given.headline.endswith(".")
            assert ".." not in given.headline
            assert given == ask(subject, dish_class=dish_class, elevation_m=elevation_m)
            assert {s for b in given.because for s in b.sources} <= set(sources())
