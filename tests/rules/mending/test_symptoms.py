"""The catalogue of faults: what a word means of each dish, and that every row can be mended."""

import re

import pytest

from assistant.replies.sentences import worded
from rules.errors import UnknownWord
from rules.foods.dishes import classes
from rules.mending.causes import behind, causes, weights
from rules.mending.symptoms import Symptom, catalogue, meant
from rules.tables import data_path, read_toml, sources

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


def test_a_fault_that_is_not_known_names_near_ones() -> None:
    with pytest.raises(UnknownWord, match="sank_in_the_middle"):
        meant("sank_in_middle", None)


def test_there_are_many_faults_of_many_dishes() -> None:
    assert len(SPECIFIC) >= 48
    assert len({dish for row in SPECIFIC for dish in row.classes}) >= 50


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.id)
def test_a_row_is_complete(row: Symptom) -> None:
    heard = next(r for r in read_toml("lexicon/symptoms.toml")["symptom"] if r["id"] == row.id)["heard_as"]
    assert 5 <= len(heard) == len(set(heard))
    assert row.title
    assert set(row.classes) <= set(classes())
    assert all(catalogue()[kind].usual for kind in row.kinds)
    assert not row.usual or (not row.classes and not catalogue()[row.usual].usual)


@pytest.mark.parametrize("row", SPECIFIC, ids=lambda row: row.id)
def test_a_fault_has_two_causes_for_every_dish_it_befalls(row: Symptom) -> None:
    for dish_class in (*row.classes, None, "water"):
        found = [weight.cause for weight in behind(row, dish_class)]
        assert len(found) == len(set(found)) >= 2


def test_causes_and_weights_fit_together() -> None:
    used = {weight.cause for rows in weights().values() for weight in rows}
    assert used == set(causes())
    assert set(weights()) == {row.id for row in SPECIFIC}
    assert all(0 < w.points <= 5 and 0 <= w.per_kft <= 1 for rows in weights().values() for w in rows)


def test_a_change_has_either_a_size_or_words() -> None:
    for cause in causes().values():
        assert bool(cause.by) != bool(cause.say), cause.id
        assert worded(cause.because, "us").endswith(".")
        assert not cause.say or worded(cause.say, "us").endswith(".")
        assert cause.source in sources()
        assert cause.by not in ("formula", "trial") or cause.step > 0, cause.id


def test_no_phrase_is_a_test_question() -> None:
    text = data_path("utterances/test/troubleshoot.yml").read_text(encoding="utf-8")
    questions = {q.casefold() for q in re.findall(r'- text: "(.*)"', text)}
    assert len(questions) > 20
    phrases = {p for row in read_toml("lexicon/symptoms.toml")["symptom"] for p in row["heard_as"]}
    assert not phrases & questions
