"""What must hold for every recipe, whatever the tables say."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from assistant.replies.recipe.worded import in_words
from rules.baking.change import WAYS, WHATS
from rules.baking.rounding import ML, G, in_unit, step_of
from rules.baking.styles import ids
from rules.errors import OutOfRange, UnknownWord
from rules.recipe import Recipe
from rules.recipes.convert import Converted
from rules.recipes.convert import convert as by_the_rules
from rules.recipes.steps import LONG_STEPS_MIN
from rules.tables import sources

FT = 0.3048
STYLES = ids()
KITCHENS_M = st.floats(-400, 5400, allow_nan=False)
CLIMB_M = [0, 600, 914.4, 1200, 1524, 1900, 2133.6, 2600, 3048, 4000, 5400]
BEANS_APART_M = 3000
ALL = ["layer_cake", "yeast_bread", "braise", "sugarwork", "beans"]


def convert(recipe: Recipe, **asked: Any) -> Converted:
    """What the rules make of a recipe, in words."""
    return in_words(by_the_rules(recipe, **asked))


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("elevation_m", [0, 1615.4, 2133.6])
def test_from_a_place_to_itself_changes_nothing(recipes, style, elevation_m) -> None:
    for recipe in recipes.values():
        same = convert(recipe, from_elevation_m=elevation_m, to_elevation_m=elevation_m, style=style)
        assert same.plain == recipe
        assert [s.text for s in same.steps] == [s.text for s in recipe.steps]
        assert [line.text for line in same.ingredients] == [line.line for line in recipe.ingredients]
        assert same.changes == ()


@pytest.mark.parametrize("style", ALL)
@settings(max_examples=25, deadline=None)
@given(low_m=KITCHENS_M, high_m=KITCHENS_M)
def test_up_then_down_returns_the_start_within_rounding(recipes, style, low_m, high_m) -> None:
    recipe = recipes[style]
    # what is soft in a quarter of an hour is taken for no dried bean on the way back
    assume(style != "beans" or abs(high_m - low_m) < BEANS_APART_M)
    there = convert(recipe, from_elevation_m=low_m, to_elevation_m=high_m, style=style).plain
    back = convert(there, from_elevation_m=high_m, to_elevation_m=low_m, style=style).plain
    for was, now in zip(recipe.ingredients, back.ingredients, strict=True):
        if was.unit in ML or was.unit in G:
            amount = in_unit(now.amount, now.unit, was.unit)
            one_step = step_of(was.amount, was.unit, fine=was.amount < 10)
            # a pot's liquid follows its minutes, which are rounded to five
            pot = 0.13 * was.amount if style in ("braise", "beans") else 0.0
            assert amount == pytest.approx(was.amount, abs=1.3 * one_step + pot)
    for was, on_the_way, now in zip(recipe.steps, there.steps, back.steps, strict=True):
        for a, mid, b in zip(was.times, on_the_way.times, now.times, strict=True):
            # half a step at either end, the first grown with the time; long times are kept to a quarter or half hour
            half_steps = [next((s / 2 for least, s in LONG_STEPS_MIN if t.low_min >= least), 2.5) for t in (a, mid)]
            rounding = half_steps[0] + max(2.5, half_steps[1]) * max(1.0, a.low_min / mid.low_min)
            assert b.low_min == pytest.approx(a.low_min, abs=rounding + 0.01)
        for a, b in zip(was.temperatures, now.temperatures, strict=True):
            assert b.low_c == pytest.approx(a.low_c, abs=2.8)


@pytest.mark.parametrize(
    ("style", "item", "sign"),
    [("layer_cake", "baking powder", -1), ("layer_cake", "granulated sugar", -1), ("layer_cake", "milk", 1),
     ("yeast_bread", "instant yeast", -1), ("yeast_bread", "water", 1), ("beans", "water", 1)],
)  # fmt: skip
def test_amounts_go_one_way_as_the_kitchen_climbs(recipes, style, item, sign) -> None:
    index = [line.item for line in recipes[style].ingredients].index(item)
    climb = [convert(recipes[style], to_elevation_m=m, style=style).ingredients[index].amount for m in CLIMB_M]
    assert climb == sorted(climb, reverse=sign < 0)
    assert climb[-1] != climb[0]


@pytest.mark.parametrize(
    ("style", "step", "sign"),
    [("layer_cake", 1, -1), ("yeast_bread", 0, -1), ("braise", 1, 1), ("beans", 1, 1), ("beans", 2, 1)],
)
def test_times_go_one_way_as_the_kitchen_climbs(recipes, style, step, sign) -> None:
    climb = [convert(recipes[style], to_elevation_m=m, style=style).steps[step].times[0].to_low_min for m in CLIMB_M]
    assert climb == sorted(climb, reverse=sign < 0)
    assert climb[-1] != climb[0]


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("to_m", [1524, 3352.8])
def test_nothing_that_was_read_disappears(recipes, style, to_m) -> None:
    for recipe in recipes.values():
        odd = replace(recipe, unread=("3 glugs of the good stuff",), notes=("Keeps three days.",))
        new = convert(odd, to_elevation_m=to_m, style=style)
        assert new.unread == odd.unread
        assert new.plain.notes == odd.notes
        assert len(new.ingredients) == len(odd.ingredients)
        assert len(new.steps) == len(odd.steps)
        for line in new.ingredients:
            assert line.line.item.split()[-1] in line.text
        for step in new.steps:
            words = [w for w in step.step.text.split() if w.isalpha()]
            assert [w for w in words if w not in step.text] == []


@pytest.mark.parametrize("style", ALL)
@pytest.mark.parametrize("to_m", [1524, 2133.6, 3048])
def test_mass_goes_with_the_measure(recipes, style, to_m) -> None:
    """What the changes say they add and take is the whole difference in mass."""
    new = convert(recipes[style], to_elevation_m=to_m, style=style)
    for line in new.ingredients:
        if line.mass_g is None or line.line.mass_g is None:
            continue
        if line.line.unit is None:
            continue
        ratio = in_unit(line.amount, line.unit, line.line.unit) / line.line.amount
        assert line.mass_g == pytest.approx(line.line.mass_g * ratio, abs=0.5 if line.mass_g >= 10 else 0.05)
    changed = {f"ingredient {i + 1}" for i, line in enumerate(new.ingredients) if line.changed}
    assert changed == {c.at for c in new.changes if c.at.startswith("ingredient") and c.way != "same"}


@pytest.mark.parametrize("style", STYLES)
def test_every_change_says_why_and_whence(recipes, style) -> None:
    for recipe in recipes.values():
        for way_m in ((0, 2133.6), (2133.6, 0), (1524, 3352.8)):
            for change in convert(recipe, from_elevation_m=way_m[0], to_elevation_m=way_m[1], style=style).changes:
                assert change.what in WHATS
                assert change.way in WAYS
                assert change.because.endswith((".", "%."))
                assert change.sources
                assert set(change.sources) <= set(sources())
                if change.to_value is not None:
                    assert change.to_low <= change.to_value <= change.to_high


@pytest.mark.parametrize("style", ALL)
def test_safety_and_waiting_stay(recipes, style) -> None:
    waiting = {"chill", "rest", "cool", "soak", "mix", "knead", "process"}
    for step in convert(recipes[style], to_elevation_m=3000, style=style).steps:
        for t in step.times:
            if t.mark.what in waiting:
                assert (t.to_low_min, t.to_high_min) == (t.mark.low_min, t.mark.high_min)
        for t in step.temperatures:
            if t.mark.what == "food":
                assert t.to_c == t.mark.low_c


def test_marks_of_the_plain_recipe_stand_where_they_say(recipes) -> None:
    for style, recipe in recipes.items():
        for step in convert(recipe, to_elevation_m=2133.6, style=style).plain.steps:
            for t in step.times:
                assert step.text[t.start : t.end][:1].isdigit()
            for t in step.temperatures:
                assert "°" in step.text[t.start : t.end]
            for cue in step.cues:
                assert step.text[cue.start : cue.end].split()[0].lower() in ("until", "bring", "soft", "stiff")


def test_the_method_is_rewritten_in_place(layer_cake) -> None:
    new = convert(layer_cake, to_elevation_m=2133.6, style="layer_cake")
    assert new.steps[1].text == (
        "Bake at 370 °F (was 350 °F) for 24 to 28 minutes (was 30 to 35 minutes), until a tester comes out clean."
    )
    assert new.steps[0].text.endswith("pans half full (was two-thirds full).")
    assert new.steps[2].text == layer_cake.steps[2].text


def test_metric_stays_metric(bread) -> None:
    new = convert(replace(bread), to_elevation_m=2133.6, style="layer_cake", units="metric")
    assert "°F" not in new.steps[2].text
    assert new.ingredients[1].unit == "g"


def test_the_same_twice_to_the_byte(recipes) -> None:
    first, second = (repr(convert(recipes["layer_cake"], to_elevation_m=1999.9, style="layer_cake")) for _ in range(2))
    assert first == second


@pytest.mark.parametrize("place_m", [-500, 6000, float("nan")])
def test_an_elevation_no_kitchen_has(layer_cake, place_m) -> None:
    with pytest.raises(OutOfRange, match="feet or metres"):
        convert(layer_cake, to_elevation_m=place_m, style="layer_cake")


def test_a_style_that_is_none(layer_cake) -> None:
    with pytest.raises(UnknownWord, match="layer_cake"):
        convert(layer_cake, to_elevation_m=2000, style="layer cake")


@pytest.mark.parametrize("style", STYLES)
def test_an_empty_recipe_is_converted_to_itself(style) -> None:
    assert convert(Recipe(), to_elevation_m=2000, style=style).plain == Recipe()


def test_high_kitchens_hear_that_the_tables_end(layer_cake) -> None:
    above = convert(layer_cake, to_elevation_m=10_500 * FT, style="layer_cake").cautions
    within = convert(layer_cake, to_elevation_m=6_900 * FT, style="layer_cake").cautions
    assert any("tables end" in c.text for c in above)
    assert not any("tables end" in c.text for c in within)


def test_one_thing_at_a_time_in_the_published_order(layer_cake) -> None:
    new = convert(layer_cake, to_elevation_m=2133.6, style="layer_cake")
    assert [c.what for c in new.changes if c.way != "same"][:3] == ["leavening", "sugar", "liquid"]
    assert any("one thing at a time" in c.text for c in new.cautions)


def test_canning_is_left_to_tested_recipes(hand) -> None:
    jam = Recipe(
        ingredients=(hand.line(4, "cup", "granulated sugar", 800),),
        steps=(
            hand.step(
                "Cook to 220 °F, then process 10 minutes in a boiling-water canner.",
                ("degF", "220 °F", 220, 220, "sugar"),
                ("time", "10 minutes", 10, 10, "process"),
            ),
        ),
    )
    new = convert(jam, to_elevation_m=2133.6, style="jam")
    assert "process 10 minutes in" in new.steps[0].text
    assert [c.level for c in new.cautions] == ["stop"]


def test_a_loaf_that_cannot_pass_the_boil(hand) -> None:
    step = hand.step(
        "Bake until it reads 205 °F inside; the chicken beside it 165 °F.",
        ("degF", "205 °F", 205, 205, "food"),
        ("degF", "165 °F", 165, 165, "food"),
    )
    loaf = Recipe(steps=(step,))
    new = convert(loaf, to_elevation_m=7000 * FT, style="yeast_bread")
    assert new.steps[0].text == step.text
    said = next(c.text for c in new.cautions if "205 °F" in c.text)
    assert "water boils at 199 °F" in said
    assert "194 °F" in said
    down = convert(loaf, from_elevation_m=7000 * FT, to_elevation_m=0, style="yeast_bread")
    assert down.steps[0].text == step.text
    assert not any("205 °F" in c.text for c in down.cautions)


def test_the_times_of_the_whole_recipe_go_along(braise) -> None:
    stated = replace(braise, cook_min=190, total_min=200)
    plain = convert(stated, to_elevation_m=7000 * FT, style="braise").plain
    longer = plain.steps[1].times[0].low_min - 150
    assert (plain.cook_min, plain.total_min) == (190 + longer, 200 + longer)


def test_self_rising_flour_gives_way_to_plain(hand) -> None:
    scones = Recipe(ingredients=(hand.line(2, "cup", "self-rising flour", 250), hand.line(1, "cup", "milk", 244)))
    new = convert(scones, to_elevation_m=7000 * FT, style="quick_bread")
    less = next(c for c in new.changes if c.what == "leavening")
    plain = next(c for c in new.changes if c.what == "flour")
    assert (less.way, less.from_value, less.to_value) == ("less", 2, 1.5)
    assert (plain.item, plain.to_value, plain.at) == ("all-purpose flour", 0.5, "recipe")
    assert new.ingredients[0].amount == 1.5


def test_glass_keeps_the_recipe_s_oven(hand) -> None:
    step = hand.step("Bake in a glass dish at 350 °F.", ("degF", "350 °F", 350, 350, "oven"))
    cautions = convert(Recipe(steps=(step,)), to_elevation_m=2000, style="brownie").cautions
    assert any("glass" in c.text for c in cautions)


def test_beans_below_their_threshold_hear_of_the_pressure_cooker(beans) -> None:
    high = convert(beans, to_elevation_m=10_000 * FT, style="beans").cautions
    assert any(c.level == "warn" and "only very slowly" in c.text for c in high)


def test_a_recipe_of_no_known_style_says_so(beans) -> None:
    assert any("no style" in c.text for c in convert(beans, to_elevation_m=2000, style="other").cautions)


def test_a_can_is_weighed(hand) -> None:
    cake = Recipe(
        ingredients=(hand.line(2, "cup", "flour", 250), hand.line(1, "can", "evaporated milk", 354, mass_from="stated"))
    )
    line = convert(cake, to_elevation_m=7000 * FT, style="layer_cake").ingredients[1]
    assert (line.amount, line.unit, line.mass_g) == (431, "g", 431)
    assert line.text == "431 g evaporated milk"


def test_a_packet_of_powder_is_no_packet_of_yeast(hand) -> None:
    cake = Recipe(ingredients=(hand.line(300, "g", "flour", 300), hand.line(1, "packet", "baking powder", 15)))
    line = convert(cake, to_elevation_m=7000 * FT, style="layer_cake").ingredients[1]
    assert line.unit == "g"
    assert line.amount == pytest.approx(11.25, abs=0.5)


def test_a_quart_of_milk(hand) -> None:
    cake = Recipe(ingredients=(hand.line(8, "cup", "flour", 1000), hand.line(1, "qt", "milk", 976)))
    line = convert(cake, to_elevation_m=7000 * FT, style="layer_cake").ingredients[1]
    assert (line.amount, line.unit) == (4.875, "cup")
    assert line.text == "4 3/4 cups plus 2 tbsp milk"


def test_a_pinch_stays_a_pinch(hand) -> None:
    cake = Recipe(ingredients=(hand.line(2, "cup", "flour", 250), hand.line(1, "pinch", "baking soda", None)))
    assert not convert(cake, to_elevation_m=7000 * FT, style="layer_cake").ingredients[1].changed


def test_the_pressure_cooker_is_offered_with_its_time(braise) -> None:
    text = next(
        c.text for c in convert(braise, to_elevation_m=7000 * FT, style="braise").cautions if "quick way" in c.text
    )
    assert "15 psi" in text
    assert "min" in text


def test_fat_is_never_sent_above_375(hand) -> None:
    step = hand.step("Fry at 370 °F.", ("degF", "370 °F", 370, 370, "fat"))
    fried = Recipe(steps=(step,))
    assert "375 °F" in convert(fried, from_elevation_m=7000 * FT, to_elevation_m=0, style="fried_dough").steps[0].text
    up = convert(fried, to_elevation_m=5000 * FT, style="fried_dough")
    assert up.steps[0].text == "Fry at 355 °F (was 370 °F)."
    back = convert(up.plain, from_elevation_m=5000 * FT, to_elevation_m=0, style="fried_dough")
    assert back.plain.steps[0].text == step.text


def test_a_cold_night_after_it_does_not_keep_a_warm_rise(hand) -> None:
    step = hand.step(
        "Bulk ferment 4 hours. Retard 14 hours at 38 °F.",
        ("time", "4 hours", 240, 240, "rise"),
        ("time", "14 hours", 840, 840, "rise"),
    )
    dough = Recipe(ingredients=(hand.line(5, "g", "instant yeast", 5),), steps=(step,))
    new = convert(dough, to_elevation_m=7000 * FT, style="yeast_bread")
    assert new.steps[0].text == "Bulk ferment 3 1/2 hours (was 4 hours). Retard 14 hours at 38 °F."


@pytest.mark.parametrize(
    ("what", "becomes"),
    [
        ("the whites", "soft peaks (was stiff peaks)"),
        ("the whites with cream of tartar", "soft peaks (was stiff peaks)"),
        ("the cream", "stiff peaks"),
    ],
)
def test_whites_are_stopped_sooner_and_cream_is_not(hand, what, becomes) -> None:
    step = hand.step(f"Beat {what} to stiff peaks.", ("stiff_peaks", "stiff peaks"))
    new = convert(Recipe(steps=(step,)), to_elevation_m=7000 * FT, style="layer_cake")
    assert new.steps[0].text == f"Beat {what} to {becomes}."


def test_what_is_boiled_down_keeps_its_time_and_says_why(hand) -> None:
    step = hand.step("Simmer 15 minutes until reduced.", ("time", "15 minutes", 15, 15, "simmer"))
    new = convert(Recipe(steps=(step,)), to_elevation_m=7000 * FT, style="reduction")
    assert new.steps[0].text == step.text
    assert [(c.what, c.way) for c in new.changes] == [("time", "same")]
    assert "burner" in new.changes[0].because


def test_peel_softens_before_the_sugar_goes_in(hand) -> None:
    step = hand.step("Simmer the peel 60 minutes until soft.", ("time", "60 minutes", 60, 60, "simmer"))
    new = convert(Recipe(steps=(step,)), to_elevation_m=7000 * FT, style="jam")
    assert new.steps[0].times[0].to_low_min > 60


def test_readings_keep_their_order_under_a_lower_boil() -> None:
    from rules.baking.inside import moved_c

    moved = [moved_c(temp_c, 100.0, 92.9) for temp_c in (74, 79, 80, 85, 88, 93, 96, 99)]
    assert moved == sorted(moved)
    assert moved[:3] == [74, 79, 80]
    assert moved[-1] < 92.9
    assert [moved_c(t, 92.9, 100.0) for t in moved[2:]] == pytest.approx([80, 85, 88, 93, 96, 99])


def test_a_weight_in_eggs_takes_its_count_along(hand) -> None:
    eggs = replace(hand.line(1, "lb", "egg", 453.6), line="1 lb eggs (9 large)", start=0, end=4)
    new = convert(Recipe(ingredients=(eggs,)), to_elevation_m=7000 * FT, style="pound_cake").ingredients[0]
    assert new.text == "1 lb 2 oz eggs (10 large)"


def test_both_published_rules_for_a_cake_are_told(layer_cake) -> None:
    # NMSU Circular 293: 1/4 to 1/2 tsp less for 2 cups of flour and 2,500 ft; for 2 1/4 cups at 5,000 ft 0.56 to 1.13
    changes = convert(layer_cake, to_elevation_m=5000 * FT, style="layer_cake").changes
    change = next(c for c in changes if c.what == "leavening")
    assert "takes 1/2 to 1 tsp plus 1/8 tsp off" in change.because
    assert {"uwyo-altitude-adjusters", "nmsu-circular-293"} <= set(change.sources)
