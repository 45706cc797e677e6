"""A dish that cooks like another goes by the other's rows, unless a table knows its own name."""

import pytest

from assistant.replies.worded import answer
from rules.foods import dishes, eggs
from rules.foods.dishes import kin, sea_level_time
from rules.heat import done_readings, heat_settings
from rules.model import Request
from rules.preserving.foods import food


def test_a_dish_and_the_one_it_cooks_like():
    assert kin("churros") == ("churros", "beignets")
    assert kin("beignets") == ("beignets",)
    assert kin("no such dish") == ("no such dish",)


def test_it_shares_class_and_methods():
    for dish in dishes.dishes().values():
        if dish.like:
            like = dishes.dishes()[dish.like]
            assert (dish.dish_class, dish.methods) == (like.dish_class, like.methods)
            assert not like.like, "one step, no chains"


def test_times_of_its_own_come_first():
    feijoada = sea_level_time("feijoada", "dried_bean", "stew")
    assert sea_level_time("fabada", "dried_bean", "stew") == feijoada != sea_level_time(None, "dried_bean", "stew")
    assert sea_level_time("fonio", "whole_grain", "simmer") != sea_level_time("millet", "whole_grain", "simmer")


def test_settings_and_readings_follow():
    assert heat_settings.setting("crullers", "fried_dough", "fry") == heat_settings.setting(
        "cake doughnuts", "fried_dough", "fry"
    )
    assert done_readings.reading("pumpernickel", "yeast_bread") == done_readings.reading(None, "yeast_bread")
    assert done_readings.reading("sticky buns", "yeast_bread") == done_readings.reading("cinnamon rolls", "yeast_bread")


def test_deviled_eggs_are_boiled_hard():
    assert eggs.wanted("deviled eggs") == ("hard",)


@pytest.mark.parametrize("dish", ["cannellini beans", "red beans", "ranch beans"])
def test_kidney_beans_by_another_name_carry_their_caution(dish):
    given = answer(Request(topic="time", dish=dish, dish_class="dried_bean", method="simmer", elevation_m=2134))
    assert any("natural poison" in caution.text for caution in given.cautions)


# By the canning table, whose rows for acid and untested foods follow the Complete Guide to Home Canning.
@pytest.mark.parametrize(
    ("dish", "kind"),
    [
        ("summer squash", "untested"),
        ("pumpkin butter", "untested"),
        ("herbs in oil", "untested"),
        ("bisque", "untested"),
        ("figs", "acidify"),
        ("bananas", "low_acid_fruit"),
        ("watermelon", "low_acid_fruit"),
        ("asian pears", "acidify"),
        ("tomato bisque", "untested"),
        ("tomato tart", "unknown"),
    ],
)
def test_what_cans_like_another(dish, kind):
    """The words of a name alone would can a tomato tart as tomatoes."""
    assert food(dish, dishes.dishes()[dish].dish_class).kind == kind
