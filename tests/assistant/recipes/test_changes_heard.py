"""A change as a cook writes it down, and faults in a cook's words."""

import pytest

from assistant.recipes.batches import as_kept, tried
from assistant.recipes.changes_heard import UnknownSymptom, change_heard, symptom_heard
from rules.mending import suggest

CAKE = suggest(["sank_in_the_middle"], dish_class="layer_cake", elevation_m=2133.6).causes


@pytest.mark.parametrize(
    ("words", "what", "way", "before", "after"),
    [
        ("baking powder 2 tsp to 1 1/2 tsp", "leavening", "less", (2, "tsp"), (1.5, "tsp")),
        ("baking powder from 2 tsp to 1½ tsp", "leavening", "less", (2, "tsp"), (1.5, "tsp")),
        ("2 cups of brown sugar to 1 3/4 cups", "sugar", "less", (2, "cup"), (1.75, "cup")),
        ("milk 3/4 -> 1 cup", "liquid", "more", (0.75, "cup"), (1, "cup")),
        ("bread flour 500 g to 520 g", "flour", "more", (500, "g"), (520, "g")),
        ("butter 1 cup to 14 tbsp", "fat", "less", (1, "cup"), (14, "tbsp")),
        ("2 eggs to 3 eggs", "egg", "more", (2, None), (3, None)),
        ("oven 350F to 370F", "oven", "hotter", (350, "degF"), (370, "degF")),
        ("oven 190 °C to 180 °C", "oven", "cooler", (190, "degC"), (180, "degC")),
        ("oil from 375 to 355 F", "fat_temp", "cooler", (375, "degF"), (355, "degF")),
        ("caramel 245 F to 232 F", "sugar_temp", "cooler", (245, "degF"), (232, "degF")),
        ("baked 30 min to 25 min", "time", "shorter", (30, "min"), (25, "min")),
        ("first rise 1 hour to 45 min", "proof", "shorter", (60, "min"), (45, "min")),
    ],
)
def test_a_change_with_figures(
    words: str, what: str, way: str, before: tuple[float, str | None], after: tuple[float, str | None]
) -> None:
    kept = change_heard(words)
    assert (kept["what"], kept["way"]) == (what, way)
    assert (kept["from"]["value"], kept["from"]["unit"]) == before
    assert (kept["to"]["value"], kept["to"]["unit"]) == after


@pytest.mark.parametrize(
    ("words", "what", "way"),
    [
        ("less sugar", "sugar", "less"),
        ("more milk", "liquid", "more"),
        ("less yeast", "yeast", "less"),
        ("a hotter oven", "oven", "hotter"),
        ("a shorter rise", "proof", "shorter"),
        ("another pan", "method", "different"),
    ],
)
def test_a_change_in_words(words: str, what: str, way: str) -> None:
    kept = change_heard(words)
    assert (kept["what"], kept["way"]) == (what, way)
    assert "from" not in kept


def test_the_suggested_change_is_kept_as_it_was_suggested() -> None:
    kept = change_heard("suggested", CAKE)
    assert kept == as_kept(CAKE[0].change, CAKE[0].line)
    assert tried(kept).is_of(CAKE[0].cause)


def test_words_that_mean_a_suggested_change_are_kept_as_that_one() -> None:
    shut = next(row for row in CAKE if row.cause.id == "door_opened")
    kept = change_heard("left the oven door shut for the first three quarters of the time", CAKE)
    assert kept["rule"] == shut.change.rule


def test_nothing_said_and_nothing_suggested_are_said() -> None:
    with pytest.raises(ValueError, match="say what was changed"):
        change_heard("   ")
    with pytest.raises(ValueError, match="nothing has been suggested"):
        change_heard("suggested")


@pytest.mark.parametrize(
    ("words", "dish_class", "expected"),
    [
        ("sank in the middle", "layer_cake", "sank_in_the_middle"),
        ("Sunken in the Middle", None, "sank_in_the_middle"),
        ("came out dry", "yeast_bread", "loaf_dry"),
        ("still hard", "rice", "grain_hard"),
        ("sank_in_the_middle", "layer_cake", "sank_in_the_middle"),
    ],
)
def test_faults_are_heard(words: str, dish_class: str | None, expected: str) -> None:
    assert symptom_heard(words, dish_class) == expected


def test_a_fault_nobody_knows_names_the_nearest() -> None:
    with pytest.raises(UnknownSymptom, match="near to it"):
        symptom_heard("zzz qqq")
