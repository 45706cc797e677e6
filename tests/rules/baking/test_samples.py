"""Every sample recipe, as people write them, through the reader and the formula."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.recipes.read import read
from assistant.replies.recipe.worded import in_words
from rules.baking.rounding import step_of
from rules.recipe import Recipe, Step, TempMark, TimeMark
from rules.recipes.convert import Converted, convert
from rules.recipes.roles import moving

SAMPLES = sorted((Path(__file__).parents[2] / "assistant" / "recipes" / "samples").iterdir())
KITCHEN_M = 2133.6


def sample(name: str) -> Recipe:
    path = next(p for p in SAMPLES if p.stem == name)
    return read(path.read_bytes(), name=path.name)


def up(name: str) -> Converted:
    return convert(sample(name), to_elevation_m=KITCHEN_M)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_same_place_same_recipe(path) -> None:
    recipe = read(path.read_bytes(), name=path.name)
    for place_m in (0, KITCHEN_M):
        assert convert(recipe, from_elevation_m=place_m, to_elevation_m=place_m).plain == recipe


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_up_and_down_again(path) -> None:
    recipe = read(path.read_bytes(), name=path.name)
    there = convert(recipe, to_elevation_m=KITCHEN_M)
    back = convert(there.plain, from_elevation_m=KITCHEN_M, to_elevation_m=0, style=there.style)
    for was, now in zip(recipe.ingredients, back.plain.ingredients, strict=True):
        if was.mass_g and was.amount:
            one_step = was.mass_g * step_of(was.amount, was.unit, fine=was.mass_g < 20) / was.amount
            assert now.mass_g == pytest.approx(was.mass_g, rel=0.03, abs=1 + 1.3 * one_step)
    for was, now in zip(recipe.steps, back.plain.steps, strict=True):
        for a, b in zip(was.times, now.times, strict=True):
            # what makes meat safe is not shortened on the way down
            kept = b.low_min > a.low_min and any(c.rule == "safety.never_shorter" for c in back.changes)
            assert kept or b.low_min == pytest.approx(a.low_min, abs=max(5, 0.03 * a.low_min))
        for a, b in zip(was.temperatures, now.temperatures, strict=True):
            assert b.low_c == pytest.approx(a.low_c, abs=2.8)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_the_plain_recipe_reads_as_it_says(path) -> None:
    """The text of a converted line, read again, has the amount and mass the conversion gives."""
    from assistant.recipes.lines import read_line

    recipe = read(path.read_bytes(), name=path.name)
    for line in convert(recipe, to_elevation_m=KITCHEN_M).ingredients:
        if not line.changed or line.mass_g is None:
            continue
        again = read_line(line.text, line.line.component)
        if again.mass_g is not None and line.line.unit != "percent":
            assert again.mass_g == pytest.approx(line.mass_g, rel=0.05, abs=1)


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("yellow_layer_cake", "bake 24 to 28 minutes (was 30 to 35 minutes)"),
        ("yellow_layer_cake", "no more than half (was two thirds)"),
        ("yellow_layer_cake", "370 °F (188 °C) (was 350°F / 180°C)"),
        ("angel_food", "whip to soft peaks (was stiff peaks)"),
        ("angel_food", "until cold, about 2 hours"),
        ("citrus_chiffon", "3/4 cup plus 2 tbsp (was 1 cup) of the sugar"),
        ("citrus_chiffon", "45 minutes (was 55 minutes); raise the oven to 370 °F (was 350 degrees F)"),
        ("braised_short_ribs", "braise at 325°F for 3 3/4 to 4 1/2 hours (was 2 1/2 to 3 hours)"),
        ("pinto_beans", "pressure-cook 31 minutes (was 25 minutes) at 15 psi"),
        ("pinto_beans", "simmer 3 to 4 hours (was 1 1/2 to 2 hours)"),
        ("soft_caramels", "cook to 232 °F (was 245 F)"),
        ("strawberry_jam", "207 °F (was 220°F)"),
        ("yeast_doughnuts", "oil at 345 (was 365)"),
        ("pizza_dough", "about 1 hour 20 minutes (was 1 1/2 hours)"),
        ("lean_hearth_bread", "bake with steam at 460 F for 35 to 40 minutes"),
        ("cheesecake", "bake at 350°F for 8 minutes"),
        ("cheesecake", "with the door ajar for 1 hour, then"),
        ("red_wine_sauce", "about 20 minutes"),
        ("baked_custard", "40 to 45 minutes (was 35–40 minutes), until the centres reach 78 °C"),
    ],
)
def test_the_step_says(name, text) -> None:
    assert text in "\n".join(step.text for step in up(name).steps)


def test_icing_and_filling_stay() -> None:
    cake = up("carrot_cake")
    for line in cake.ingredients:
        if "frosting" in line.line.component.lower() or "icing" in line.line.component.lower():
            assert not line.changed


def test_a_cake_with_carrots_gets_no_water_for_them() -> None:
    added = [c for c in up("carrot_cake").changes if c.what == "liquid"]
    assert all(c.to_value <= 3 for c in added if c.to_unit == "tbsp")


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
def test_higher_never_turns_round(path) -> None:
    recipe = read(path.read_bytes(), name=path.name)
    style = convert(recipe, to_elevation_m=1000).style
    climbs = [convert(recipe, to_elevation_m=m, style=style) for m in (0, 700, 1300, 1900, 2500, 3200)]
    for masses in zip(*([line.mass_g for line in c.ingredients] for c in climbs), strict=True):
        if masses[0] is not None:
            assert list(masses) in (sorted(masses), sorted(masses, reverse=True))


def test_no_egg_smaller_than_large_on_the_way_down() -> None:
    eggs = convert(sample("carrot_cake"), from_elevation_m=KITCHEN_M, to_elevation_m=0).ingredients
    assert [line.text for line in eggs if "egg" in line.line.item] == ["4 large eggs"]


def test_the_water_of_a_pot_is_not_told_by_the_spoon() -> None:
    assert "4 qt plus 1/2 cup water" in [line.text for line in up("pinto_beans").ingredients]


def figures(step: Step) -> list[tuple[str, TimeMark | TempMark]]:
    """The figures of a step as they stand in its text, each with its mark."""
    return [(step.text[m.start : m.end], m) for m in (*step.times, *step.temperatures)]


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: p.stem)
@pytest.mark.parametrize("way_m", [(0, KITCHEN_M), (KITCHEN_M, 0), (1615.4, 2743.2)])
def test_a_figure_that_keeps_is_kept_to_the_byte(path, way_m) -> None:
    recipe = read(path.read_bytes(), name=path.name)
    new = convert(recipe, from_elevation_m=way_m[0], to_elevation_m=way_m[1])
    for was, now in zip(recipe.steps, new.plain.steps, strict=True):
        for (before, mark), (after, _) in zip(figures(was), figures(now), strict=True):
            kind = "time" if isinstance(mark, TimeMark) else "temperature"
            # "the last 2 hours" goes along with the time that it points into
            if mark.what not in (*moving(kind), "relative"):
                assert before == after


@pytest.mark.parametrize(("name", "warned"), [("pinto_beans", False), ("pinto_beans_and_kidney", True)])
def test_kidney_beans_are_warned_of_where_there_are_any(name, warned) -> None:
    text = next(p for p in SAMPLES if p.stem == "pinto_beans").read_text(encoding="utf-8")
    recipe = read(text.replace("pinto", "kidney") if warned else text)
    cautions = in_words(convert(recipe, to_elevation_m=KITCHEN_M)).cautions
    assert any("Kidney beans" in c.text for c in cautions) is warned
