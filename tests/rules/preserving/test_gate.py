"""The gate: a process figure only for a known food, in the canner that was asked, with a time read for that canner."""

import re
from dataclasses import replace
from itertools import groupby

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.answering import reply_to_request
from assistant.contributing.validate_dangers import verdict_words
from assistant.replies.worded import answer
from rules.foods.dishes import classes, dishes
from rules.model import Request, Unused
from rules.preserving import gate, printed, process_times
from rules.preserving.catalogue import PRACTICES, refusals
from rules.preserving.foods import CANNED, food, foods
from rules.preserving.vessel import called
from rules.tables import BASES, read_csv, read_toml, sources

FT_M, PA_PER_PSI = 0.3048, 6894.757
HERE_M = 7000 * FT_M
PROCESS = ("process_time", "added_time", "added_time_short", "dial_gauge", "weighted_gauge", "band", "sterilising_time")
# a time, a pressure: what no refusal may say; how long a jar may stand before it is thrown out is told in words
A_FIGURE = re.compile(verdict_words("en")["figure"])
OF_THE_STEAM_CANNER = "45 min"
# the process of the food in the canner that is right for it, after another way was refused
TESTED_WAY = re.compile(r"The tested way for [^\n]*")
BY_CLASS = {
    name: tuple(dish.name for dish in rows)
    for name, rows in groupby(sorted(dishes().values(), key=lambda d: (d.dish_class, d.name)), lambda d: d.dish_class)
}
KINDS = (*CANNED, "low_acid_fruit", "group", "dried", "untested")
CANNERS = (None, "boiling_water_canning", "steam_canning", "pressure_canning", "dial_gauge", "weighted_gauge")
REQUESTS = st.builds(
    Request,
    topic=st.just("preserve"),
    dish=st.none() | st.sampled_from(sorted(dishes())),
    subject=st.sampled_from((*CANNERS, "half_gallon_jars")),
    method=st.sampled_from((None, "preserve", "pressure_cook")),
    time_min=st.none() | st.integers(1, 200).map(float),
    elevation_m=st.none() | st.floats(-430, 4000),
    from_elevation_m=st.none() | st.floats(0, 4000),
    gauge_pa=st.none() | st.floats(5, 16).map(lambda psi: psi * PA_PER_PSI),
    equipment=st.sampled_from(((), ("dial_gauge_canner",), ("steam_canner",), ("electric_pressure_cooker",))),
)


def preserve(dish=None, **asked):
    known = dishes().get(dish or "")
    asked = {"elevation_m": HERE_M, "dish_class": known.dish_class if known else None, **asked}
    return answer(Request(topic="preserve", dish=dish, **asked))


def refused(answered):
    return answered.headline.startswith(("No. ", "No one ", "No printed ", "Discard "))


def words_of(answered):
    spoken = reply_to_request(answered.request)
    told = "\n".join((spoken.headline, spoken.text, spoken.spoken, *answered.steps)).replace(OF_THE_STEAM_CANNER, "")
    return TESTED_WAY.sub("", told)


@pytest.mark.parametrize("dish_class", BY_CLASS)
@pytest.mark.parametrize("way", CANNERS)
def test_a_dish_that_is_not_known_gives_no_process_figure(dish_class, way):
    """Every dish of the lexicon, in every canner, with a time that a cook might read."""
    for dish in BY_CLASS[dish_class]:
        row, answered = food(dish, dish_class), preserve(dish, subject=way, time_min=30.0)
        known = row.kind in CANNED and dish in foods()
        dried = row.kind == "dried" and way is None
        assert known or dried or (refused(answered) and not answered.figures), dish
        if refused(answered):
            assert len([step for step in answered.steps if not TESTED_WAY.match(step)]) == 2, dish
            assert answered.because[0].sources, dish


@pytest.mark.parametrize("dish_class", BY_CLASS)
def test_a_dish_without_a_row_is_refused_without_a_figure(dish_class):
    """Headline, figures, steps, because, cautions, text and spoken line."""
    for dish in (name for name in BY_CLASS[dish_class] if name not in foods()):
        answered = preserve(dish, time_min=25.0)
        assert refused(answered), dish
        assert called(answered.request) in answered.headline
        assert not A_FIGURE.search(words_of(answered)), dish


@settings(max_examples=400, deadline=None)
@given(asked=REQUESTS)
def test_figures_are_of_a_known_food_in_a_canner_that_has_a_process(asked):
    known = dishes().get(asked.dish or "")
    answered = answer(replace(asked, dish_class=known.dish_class if known else None))
    found = {f.id for f in answered.figures} & set(PROCESS)
    row = food(answered.request.dish, answered.request.dish_class)
    if row.named and found:
        assert asked.dish in foods()
        assert row.pressure_min if {"dial_gauge", "weighted_gauge"} & found else row.water_min
    if "process_time" in found:
        time, base = answered.figure("process_time"), asked.time_min
        assert row.named
        under_pressure = "dial_gauge" in found or "weighted_gauge" in found
        rows = [
            row
            for row in printed.rows("pressure" if under_pressure else "water")
            if row.process == foods()[asked.dish].process
        ]
        cells = {minutes for row in rows for minutes in row.minutes}
        own = base is not None and (
            time.value == base if under_pressure else time.low >= base and time.value - base in {0, 5, 10, 15, 20}
        )
        assert own or time.low in cells or time.value in cells
    if refused(answered):
        assert not answered.figures
        assert not A_FIGURE.search(words_of(answered))


@settings(max_examples=80, deadline=None)
@given(
    elevation_m=st.none() | st.floats(-430, 5500),
    dish=st.sampled_from(sorted(name for name, row in foods().items() if row.kind == "low_acid")),
    way=st.sampled_from(["boiling_water_canning", "steam_canning"]),
    time_min=st.none() | st.integers(5, 180),
)
def test_low_acid_food_in_boiling_water_is_always_a_stop(elevation_m, dish, way, time_min):
    answered = preserve(dish, subject=way, elevation_m=elevation_m, time_min=time_min)
    assert answered.headline.startswith(f"No. Do not can {called(answered.request)} in a")
    assert any(c.level == "stop" for c in answered.cautions)
    assert not answered.figures


# USDA Complete Guide (AIB 539), its contents and the extension texts named in the rows; what has no row is unknown.
@pytest.mark.parametrize(
    ("dish", "kind"),
    [
        ("peaches", "high_acid"),
        ("white peaches", "low_acid_fruit"),
        ("elderberries", "low_acid_fruit"),
        ("papaya", "low_acid_fruit"),
        ("mangoes", "low_acid_fruit"),
        ("bananas", "low_acid_fruit"),
        ("melons", "low_acid_fruit"),
        ("watermelon", "low_acid_fruit"),
        ("persimmons", "low_acid_fruit"),
        ("coconut flesh", "low_acid_fruit"),
        ("avocados", "low_acid_fruit"),
        ("figs", "acidify"),
        ("asian pears", "acidify"),
        ("tomatoes", "acidify"),
        ("canned tomatoes", "acidify"),
        ("tomatillos", "acidify"),
        ("canned salsa", "pickle"),
        ("pickled beets", "pickle"),
        ("sauerkraut", "ferment"),
        ("apple butter", "jam"),
        ("bell peppers", "low_acid"),
        ("beets", "low_acid"),
        ("pumpkin", "low_acid"),
        ("marinara", "low_acid"),
        ("sausages", "low_acid"),
        ("fruit", "group"),
        ("fish", "group"),
        ("vegetables", "group"),
        ("cured olives", "untested"),
        ("celery", "untested"),
        ("artichokes", "untested"),
        ("garlic", "untested"),
        ("rutabagas", "untested"),
        ("lettuce", "untested"),
        ("meatloaf", "untested"),
        ("pumpkin butter", "untested"),
        ("tomato soup", "untested"),
        ("cream soup", "untested"),
        ("chicken noodle soup", "untested"),
        ("squash puree", "untested"),
        ("chocolate sauce", "untested"),
        ("milk", "untested"),
        ("hard-boiled eggs", "untested"),
        ("banana bread", "untested"),
        ("octopus", "unknown"),
        ("lobster", "unknown"),
        ("cassava", "unknown"),
        ("taro", "unknown"),
        ("taro leaves", "unknown"),
        ("bratwurst", "unknown"),
        ("spaghetti squash", "untested"),
        ("shiitake mushrooms", "unknown"),
        ("minestrone", "unknown"),
        ("puttanesca", "unknown"),
    ],
)
def test_food(dish, kind):
    assert food(dish, dishes()[dish].dish_class).kind == kind


def test_a_class_alone_is_no_food():
    """Its acid and its process are those of a food, not of a family."""
    assert all(food(None, dish_class).kind in ("unknown", "untested") for dish_class in classes())


def test_the_table_is_whole():
    rows = read_csv("tables/canning_foods_usda-aib-539.csv").rows
    for row in rows:
        known = foods()[row["food"]]
        assert known.kind in KINDS, row
        assert row["basis"] in BASES, row
        assert row["source"] in sources(), row
        assert bool(known.water_min or known.pressure_min) == (known.kind in CANNED), row
        assert (known.water_min is None) == (known.kind == "low_acid") or known.kind not in CANNED, row
        assert bool(known.instead) != (known.kind in CANNED), row
        assert known.half_gallon_min is None or known.half_gallon_min >= known.water_min, row
        if row["food"].startswith("class:"):
            assert known.kind == "untested", row
            assert row["food"].removeprefix("class:") in classes(), row
        else:
            assert row["food"] in dishes(), row


# a time for another canner, or none at all


@pytest.mark.parametrize(
    ("asked", "kept"),
    [
        ({"dish": "green chiles", "time_min": 20}, False),
        ({"dish": "green chiles", "time_min": 35}, True),
        ({"dish": "green chiles", "time_min": 35, "subject": "pressure_canning"}, True),
        ({"dish": "green chiles", "time_min": 20, "subject": "pressure_canning"}, False),
        ({"dish": "green chiles", "time_min": 35, "gauge_pa": 10 * PA_PER_PSI}, True),
        ({"dish": "green chiles", "time_min": 35, "equipment": ("dial_gauge_canner",)}, True),
        ({"dish": "green beans", "time_min": 180, "subject": "dial_gauge"}, False),
        ({"dish": "peaches", "time_min": 25, "subject": "pressure_canning"}, False),
        ({"dish": "peaches", "time_min": 10, "subject": "pressure_canning"}, True),
        ({"time_min": 25, "subject": "pressure_canning"}, False),
    ],
)
def test_a_time_is_kept_only_if_it_was_read_for_the_pressure_canner(asked, kept):
    answered = preserve(**asked)
    assert answered.figure("weighted_gauge") or answered.figure("dial_gauge")
    time = answered.figure("process_time")
    assert (time is not None and time.value == asked["time_min"]) is kept
    assert any("is left out" in c.text for c in answered.cautions) is not kept
    assert kept or f"{asked['time_min']} min" not in words_of(answered)


@pytest.mark.parametrize(
    ("dish", "minutes", "reason"),
    [
        ("peaches", 10, "time_not_printed"),
        ("tomatoes", 15, "time_not_printed"),
        ("pickled beets", 10, "time_not_printed"),
        ("jam", 240, "time_not_printed"),
        ("peaches", 25, None),
        ("jam", 5, None),
    ],
)
def test_a_time_that_is_not_printed_for_the_food_is_refused(dish, minutes, reason):
    asked = Request(topic="preserve", dish=dish, time_min=minutes, elevation_m=HERE_M)
    assert gate.refusal(asked) == reason


# the canner that was asked


@pytest.mark.parametrize(
    ("dish", "way", "reason"),
    [
        ("grapes", "pressure_canning", "no_pressure_process"),
        ("jam", "pressure_canning", "no_pressure_process"),
        ("figs", "dial_gauge", "no_pressure_process"),
        ("pears", "pressure_canning", None),
        ("chicken soup", "boiling_water_canning", "needs_pressure"),
        ("beef stock", "steam_canning", "needs_pressure"),
        ("peaches", "steam_canning", None),
        ("figs", "steam_canning", "steam_too_long"),
        ("tomatoes", "steam_canning", "steam_too_long"),
    ],
)
def test_the_canner_decides(dish, way, reason):
    assert gate.refusal(Request(topic="preserve", dish=dish, subject=way, elevation_m=HERE_M)) == reason


@pytest.mark.parametrize("asked", [{}, {"gauge_pa": 15 * PA_PER_PSI}, {"time_min": 25}])
def test_a_pressure_cooker_is_no_canner(asked):
    assert (
        gate.refusal(Request(topic="preserve", method="pressure_cook", dish="green beans", **asked)) == "small_cooker"
    )


def test_a_pressure_cooker_that_is_called_a_canner_too_is_one():
    asked = Request(topic="preserve", method="pressure_cook", dish="green beans", subject="pressure_canning")
    assert gate.refusal(asked) is None


# the jar


@pytest.mark.parametrize(
    ("dish", "asked", "reason"),
    [
        ("grape juice", {"time_min": 10}, None),
        ("grape juice", {}, None),
        ("grape juice", {"time_min": 5}, "time_not_printed"),
        ("grape juice", {"method": "pressure_cook"}, "small_cooker"),
        ("peaches", {"time_min": 30}, "half_gallon_jars"),
        ("green beans", {}, "half_gallon_jars"),
        ("canned tomato juice", {}, "half_gallon_jars"),
        (None, {}, "half_gallon_jars"),
    ],
)
def test_half_gallon_jars(dish, asked, reason):
    """Only apple and grape juice: Penn State Extension, Canning With Half Gallon Jars."""
    request = Request(topic="preserve", dish=dish, subject="half_gallon_jars", elevation_m=HERE_M, **asked)
    assert gate.refusal(request) == reason


# no food named, and a food that nobody knows


@pytest.mark.parametrize("way", [None, "boiling_water_canning", "steam_canning"])
def test_without_a_food_only_the_printed_addition_is_told(way):
    answered = preserve(subject=way)
    assert answered.headline.startswith("Only if you have a tested recipe for an acid food: at 7,000 ft")
    assert answered.figure("added_time").value == 15
    assert answered.figure("added_time_short").value == 10
    assert answered.figure("process_time") is None
    assert any(c.level == "stop" and "acid food only" in c.text for c in answered.cautions)


def test_without_a_food_a_time_only_chooses_the_addition():
    answered = preserve(time_min=15)
    assert answered.headline.startswith("Only if")
    assert answered.figure("added_time").value == 10
    assert answered.figure("process_time") is None


def test_without_a_food_a_pressure_waits_for_a_tested_recipe():
    assert preserve(subject="pressure_canning").headline.startswith("Only if you have a tested recipe")
    assert "by a tested recipe" in preserve(gauge_pa=15 * PA_PER_PSI).headline


@pytest.mark.parametrize("way", CANNERS)
@pytest.mark.parametrize(
    "named",
    [{"dish_class": "general"}, {"dish_class": "fruit"}, {"unused": (Unused("dish", "zorgon", "I do not know it."),)}],
)
def test_a_food_that_is_named_and_not_known_gets_no_addition(way, named):
    answered = preserve(subject=way, **named)
    assert answered.headline.startswith("No. I know no tested process for")
    assert not answered.figures


# how it is said


@pytest.mark.parametrize("id", sorted(PRACTICES))
def test_a_refusal_needs_no_elevation(id):
    answered = preserve(subject=id, elevation_m=None, dish="peaches", time_min=25)
    assert refused(answered)
    assert not answered.missing
    assert not answered.figures
    assert not A_FIGURE.search(words_of(answered))
    assert any(c.level == "stop" for c in answered.cautions)


@pytest.mark.parametrize("id", sorted(PRACTICES))
def test_a_practice_is_refused_in_the_words_of_the_hazard_that_it_is(id):
    """However it is heard, the same practice is answered alike; only the citation and the rule behind it may differ."""
    refusal, answered = refusals()[id], preserve(subject=id)
    if refusal.shared:
        told = answer(Request(topic="preserve", danger=refusal.reply.id, elevation_m=HERE_M))
        assert (answered.headline, answered.steps) == (told.headline, told.steps)
    assert len(answered.steps) >= 2
    assert answered.because[0].text


def test_every_refusal_is_reached():
    """By a subject that is heard, or by the gate."""
    heard = {row["id"] for row in read_toml("lexicon/safety_subjects.toml")["subject"]}
    assert heard >= PRACTICES
    by_gate = {
        "unknown", "untested", "low_acid_fruit", "group", "needs_pressure", "no_pressure_process", "time_not_printed",
        "steam_too_long", "jar_too_big", "too_high", "jars_of_low_acid",
    }  # fmt: skip
    assert set(refusals()) - PRACTICES == by_gate


@pytest.mark.parametrize(("id", "first"), [("botulism", "Discard it, unopened"), ("missed_elevation", "Discard")])
def test_what_may_be_spoiled_is_discarded(id, first):
    assert preserve(subject=id).headline.startswith(first)


def test_a_jar_that_did_not_seal_is_processed_again_only_after_a_right_process():
    """Nebraska and Iowa State Extension: 24 hours after a right process, 2 hours after a wrong one."""
    told = " ".join(preserve(subject="unsealed_jar").steps)
    assert "within 24 hours, but only if the whole tested process was right" in told
    assert "2 hours" in told


@pytest.mark.parametrize("feet", [10_001, 14_000])
def test_above_every_table_nothing_is_told(feet):
    for way in CANNERS:
        answered = preserve("pears", subject=way, elevation_m=feet * FT_M, time_min=25)
        assert answered.headline.startswith("No printed canning table")
        assert not answered.figures


def test_jars_are_boiled_empty_and_only_for_acid_food():
    assert preserve("green beans", subject="jar_sterilising").figures == ()
    assert preserve("jam", subject="jar_sterilising").figure("sterilising_time")


def test_no_time_is_longer_than_a_steam_canner_runs():
    for dish, row in foods().items():
        if row.water_min:
            time = preserve(dish, subject="steam_canning", time_min=row.water_min).figure("process_time")
            assert time is None or time.value <= gate.STEAM_LIMIT_MIN, dish


def test_the_shortest_time_that_is_printed_is_itself_let_through():
    for dish, row in foods().items():
        if row.water_min:
            asked = Request(topic="preserve", dish=dish, time_min=row.water_min, elevation_m=HERE_M)
            assert process_times.process(asked).base_min == row.water_min, dish
