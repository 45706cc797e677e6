"""The catalogue of explanations and the modules that give them agree."""

from collections import Counter

import pytest

from rules import tables, why
from rules.foods.dishes import classes
from rules.topics.why import Row, catalogue

ROWS = {row.id: row for row in catalogue()}
METHODS = {row["id"] for row in tables.read_toml("lexicon/methods.toml")["method"]}


def test_every_row_has_a_module_and_every_module_a_row() -> None:
    assert tuple(sorted(ROWS)) == why.names()
    assert len(ROWS) == len(catalogue())


@pytest.mark.parametrize("row", catalogue(), ids=lambda row: row.id)
def test_a_row(row: Row) -> None:
    assert row.title == why.module(row.id).TITLE
    assert 5 <= len(row.heard_as) <= 12
    assert all(phrase == phrase.casefold().strip() for phrase in row.heard_as)
    assert set(row.classes) <= set(classes())
    assert set(row.methods) <= METHODS


def test_no_phrase_class_method_or_title_belongs_to_two() -> None:
    for field in ("heard_as", "classes", "methods"):
        counted = Counter(item for row in catalogue() for item in getattr(row, field))
        assert [item for item, times in counted.items() if times > 1] == []
    assert len({row.title for row in catalogue()}) == len(catalogue())
