"""The catalogue of faults: what a word means of each dish, and that every row can be mended."""

import re

import pytest

from assistant.replies.sentences import worded
from rules.errors import UnknownWord
from rules.foods.dishes import classes, dishes
from rules.foods.methods import methods
from rules.mending.causes import behind, causes, weights
from rules.mending.failed_dish import Bench
from rules.mending.symptoms import Failed, Symptom, all_meant, catalogue, meant, of_dish
from rules.tables import data_path, read_toml, sources
from rules.topics.troubleshoot import rescue

ROWS = list(catalogue().values())
SPECIFIC = [row for row in ROWS if not row.usual]


@pytest.mark.parametrize(
    ("word", "dish_class", "expected"),
    [
        ("hard", "dried_bean", "beans_hard"),
        ("hard", "rice", "grain_hard"),
        ("hard", "starchy_root", "roots_hard_inside"),
        ("hard", "cookie", "baked_hard"),
        ("hard", "candy", "candy_too_hard"),
        ("dry", "layer_cake", "crumb_dry"),
        ("dry", "yeast_bread", "loaf_dry"),
        ("dry", "whole_bird", "meat_dry"),
        ("dry", "collagen_cut", "meat_stringy"),
        ("fell", "choux", "puffs_collapsed"),
        ("fell", "souffle", "dropped_before_service"),
        ("not_set", "dairy", "culture_stayed_thin"),
        ("raw", "poultry_pieces", "meat_underdone"),
        ("sank_in_the_middle", "yeast_bread", "loaf_collapsed"),
        ("hard", None, "beans_hard"),
        ("hard", "water", "beans_hard"),
        ("jar_lost_seal", "layer_cake", "jar_lost_seal"),
    ],
)
def test_a_word_means_what_it_means_of_the_dish(word: str, dish_class: str | None, expected: str) -> None:
    assert meant(word, dish_class).id == expected


@pytest.mark.parametrize(
    ("word", "failed", "expected"),
    [
        ("flat", Failed(dish_class="quick_bread", dish="pancakes"), "pancakes_flat"),
        ("flat", Failed(dish_class="quick_bread", dish="muffins"), "crumb_dense"),
        ("hard", Failed(dish_class="rice", dish="white rice", equipment=("rice_cooker",)), "rice_cooker_stops_early"),
        ("raw", Failed(equipment=("rice_cooker",)), "rice_cooker_stops_early"),
        ("gummy", Failed(dish_class="yeast_bread", method="steam"), "steamed_bun_gummy"),
        ("gummy", Failed(dish_class="yeast_bread", method="bake"), "loaf_gummy"),
        ("gummy", Failed(method="steam"), "steamed_bun_gummy"),
        ("not_set", Failed(dish_class="dairy", dish="panna cotta"), "jelly_not_set"),
        ("not_set", Failed(dish_class="dairy", dish="yogurt"), "culture_stayed_thin"),
        ("curdled", Failed(dish_class="sauce", dish="hollandaise"), "egg_sauce_broke"),
        ("not_rising", Failed(dish_class="dumpling", dish="idli"), "batter_not_fermented"),
        ("cracked", Failed(dish_class="meringue", dish="macarons"), "shells_hollow"),
        ("soggy", Failed(dish_class="pie", dish="apple pie"), "crust_soggy"),
        ("soft", Failed(dish_class="pickle", dish="sauerkraut"), "kraut_soft"),
    ],
)
def test_a_word_means_what_it_means_of_this_dish(word: str, failed: Failed, expected: str) -> None:
    assert meant(word, failed).id == expected


def test_what_is_told_at_once_has_a_row_of_its_own() -> None:
    frying, baking = Failed(dish_class="fried_dough"), Failed(dish_class="layer_cake")
    assert all_meant(["burnt", "raw"], frying)[0].id == "dark_outside_raw_inside"
    assert all_meant(["raw", "burnt"], baking)[0].id == "edges_burnt_centre_raw"
    assert all_meant(["fell_apart", "hard"], Failed(dish_class="starchy_root"))[0].id == "roots_hard_inside"


def test_what_cannot_befall_a_dish_is_left_out_where_something_can() -> None:
    assert [row.id for row in all_meant(["unpopped", "hard"], Failed(dish_class="dried_bean"))] == ["beans_hard"]
    assert all_meant(["fruit_floats"], Failed(dish_class="dried_bean"))[0].id == "fruit_floats"


def test_what_usually_goes_wrong_begins_with_the_dish_itself() -> None:
    usual = of_dish(Failed(dish_class="choux", dish="popovers"))
    assert usual[0].id == "popovers_flat"
    assert all(row.classes or row.dishes for row in usual)
    assert of_dish(Failed()) == ()


def test_a_fault_that_is_not_known_names_near_ones() -> None:
    with pytest.raises(UnknownWord, match="sank_in_the_middle"):
        meant("sank_in_middle", None)


def test_there_are_many_faults_of_many_dishes() -> None:
    assert len(SPECIFIC) >= 48
    assert len({dish for row in SPECIFIC for dish in row.classes}) >= 50


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.id)
def test_a_row_is_complete(row: Symptom) -> None:
    heard = next(r for r in read_toml("lexicon/symptoms.toml")["symptom"] if r["id"] == row.id)["heard_as"]
    assert 2 <= len(heard) == len(set(heard))
    assert row.title
    assert set(row.classes) <= set(classes())
    assert row.dishes <= set(dishes())
    assert row.methods <= set(methods())
    assert row.equipment <= {r["id"] for r in read_toml("lexicon/equipment.toml")["equipment"]}
    assert set(row.kinds) <= set(catalogue())
    assert not row.usual or (not row.classes and not catalogue()[row.usual].usual)
    assert all(group <= set(catalogue()) for group in row.together)
    assert row.rescue in ("", "yes", "yet", "partly", "no")


@pytest.mark.parametrize("row", [row for row in ROWS if row.rescue], ids=lambda row: row.id)
def test_how_what_failed_is_saved_is_a_sentence(row: Symptom) -> None:
    told = worded(rescue(row), "us")
    assert told.endswith(".")
    assert told[0].isupper() or told[0].isdigit()


@pytest.mark.parametrize("row", SPECIFIC, ids=lambda row: row.id)
def test_a_fault_has_two_causes_for_every_dish_it_befalls(row: Symptom) -> None:
    for dish_class in (*row.classes, *(dishes()[name].dish_class for name in row.dishes), None, "water"):
        found = [weight.cause for weight in behind(row, dish_class)]
        assert len(found) == len(set(found)) >= 2


def test_causes_and_weights_fit_together() -> None:
    used = {weight.cause for rows in weights().values() for weight in rows}
    assert used == set(causes())
    assert set(weights()) == {row.id for row in SPECIFIC}
    assert all(0 < w.points <= 5 and 0 <= w.per_kft <= 1 for rows in weights().values() for w in rows)


@pytest.mark.parametrize("elevation_m", [0.0, 2800.0, None])
def test_a_change_has_either_a_size_or_words(elevation_m: float | None) -> None:
    bench = Bench("dried_bean", elevation_m or 0.0, placed=elevation_m is not None)
    for cause in causes().values():
        assert bool(cause.by) != bool(cause.say), cause.id
        assert worded(bench.told(cause.because), "us").endswith(".")
        assert not cause.say or worded(bench.told(cause.say), "us").endswith(".")
        assert cause.source in sources()
        assert cause.by not in ("formula", "trial") or cause.step > 0, cause.id


def test_no_phrase_is_a_test_question() -> None:
    text = data_path("utterances/test/troubleshoot.yml").read_text(encoding="utf-8")
    questions = {q.casefold() for q in re.findall(r'- text: "(.*)"', text)}
    assert len(questions) > 20
    phrases = {p for row in read_toml("lexicon/symptoms.toml")["symptom"] for p in row["heard_as"]}
    assert not phrases & questions
