"""The tables behind the gate: what a refusal consists of, and what a row of a food says."""

import pytest

from assistant.replies.worded import answer
from rules.model import Request, Unused
from rules.preserving import catalogue
from rules.preserving.catalogue import refusals
from rules.preserving.foods import ACID, CANNED, food, foods
from rules.tables import BadTable

FT_M = 0.3048


def preserve(dish=None, dish_class=None, feet=7000, **fields):
    return answer(Request(topic="preserve", dish=dish, dish_class=dish_class, elevation_m=feet * FT_M, **fields))


@pytest.mark.parametrize(
    ("dish", "kind", "water_min", "pressure_min", "half_gallon_min"),
    [
        ("peaches", "high_acid", 20, (10, 10), None),
        ("applesauce", "high_acid", 15, (8, 10), None),
        ("apple juice", "high_acid", 5, None, 10),
        ("figs", "acidify", 45, None, None),
        ("tomatoes", "acidify", 35, (10, 40), None),
        ("pickled beets", "pickle", 30, None, None),
        ("jam", "jam", 5, None, None),
        ("sauerkraut", "ferment", 10, None, None),
        ("green beans", "low_acid", None, (20, 25), None),
        ("spinach", "low_acid", None, (70, 90), None),
        ("creamed corn", "low_acid", None, (85, 85), None),
        ("melons", "low_acid_fruit", None, None, None),
    ],
)
def test_the_row_of_a_food(dish, kind, water_min, pressure_min, half_gallon_min):
    row = food(dish, None)
    assert (row.kind, row.water_min, row.pressure_min, row.half_gallon_min) == (
        kind, water_min, pressure_min, half_gallon_min,
    )  # fmt: skip
    assert row.named
    assert row.acid is (kind in ("high_acid", "acidify", "pickle", "jam", "ferment"))


@pytest.mark.parametrize(("dish", "paired"), [("tomatoes", True), ("figs", False), ("peaches", False), ("corn", False)])
def test_only_tomatoes_and_their_kin_have_pairs(dish, paired):
    assert food(dish, None).paired is paired


def test_what_was_not_read_is_from_memory():
    assert food("kale", None).sources == ("usda-aib-539", "from-memory")
    assert food("kale", None).process == "spinach"
    assert food("spinach", None).sources == ("usda-aib-539",)
    cautions = preserve("kale", "leafy_vegetable").cautions
    assert "from-memory" in {s for c in cautions if "Holds only for" in c.text for s in c.sources}


def test_low_acid_food_is_canned_and_not_acid():
    assert set(CANNED) - set(ACID) == {"low_acid"}
    assert not any(row.acid for row in foods().values() if row.kind not in ACID)


def test_a_class_only_ever_refuses():
    assert all(row.kind not in CANNED for name, row in foods().items() if name.startswith("class:"))


def test_a_food_is_called_by_what_goes_into_the_jar():
    assert "Process peaches for" in preserve("canned peaches", "fruit", time_min=25).headline
    strange = (Unused("method", "xyz", "no"), Unused("dish", "zorgon", "I do not know it."))
    assert "zorgon" in preserve(unused=strange).headline
    assert "that food" in preserve(dish_class="fruit").headline


def test_what_the_tested_process_demands_is_a_step():
    assert any("lemon juice" in step for step in preserve("figs", "fruit").steps)
    assert not any("lemon juice" in step for step in preserve("jam", "jam").steps)


@pytest.mark.parametrize(
    ("dish", "fields", "source"),
    [
        ("melons", {}, "kstate-rrc-canning"),
        ("octopus", {}, "nchfp"),
        ("figs", {"subject": "steam_canning"}, "nchfp-steam-canners"),
        ("pears", {"feet": 10_001}, "extension-canning-8000"),
    ],
)
def test_a_refusal_is_a_stop_with_its_sources(dish, fields, source):
    given = preserve(dish, **fields)
    assert [c.level for c in given.cautions] == ["stop"]
    assert source in given.cautions[0].sources
    assert source in given.because[0].sources
    assert not given.figures
    assert len([step for step in given.steps if not step.startswith("The tested way")]) == 2


def test_a_refusal_has_its_own_words_or_those_of_a_danger():
    own, shared = refusals()["untested"], refusals()["oven_canning"]
    assert (own.shared, own.stop, own.heard) == (False, "stop", False)
    assert (shared.shared, shared.stop, shared.heard) == (True, "verdict", True)
    assert len(own.sentences) == len(own.reply.pieces) + 1
    assert len(shared.sentences) == len(shared.reply.pieces)
    assert refusals()["missed_elevation"].reply.asks
    assert not own.reply.asks
    assert own.whom() != refusals()["missed_elevation"].whom()


@pytest.mark.parametrize(
    "row", [{"danger": "none_such"}, {"danger": "oven_canning", "asks": True}, {"heard": True}, {"sources": [], "x": 1}]
)
def test_a_row_that_is_no_refusal_is_a_fault(monkeypatch, row):
    monkeypatch.setattr(catalogue, "read_toml", lambda _file: {"sun_canning": row})
    refusals.cache_clear()
    try:
        with pytest.raises(BadTable, match="sun_canning"):
            refusals()
    finally:
        monkeypatch.undo()
        refusals.cache_clear()
