"""What more of a dish changes: one row a method, said where an amount is. All of it common practice."""

import pytest

from assistant.replies.worded import answer
from rules.book import names
from rules.heat.batch_size import amounts, gist
from rules.model import Quantity, Request
from rules.tables import read_toml

BRAISE = Request(topic="time", dish="short ribs", dish_class="collagen_cut", method="braise", elevation_m=2133.6)


def asked(**more):
    return answer(Request(**{**{f: getattr(BRAISE, f) for f in BRAISE.__dataclass_fields__}, **more}))


def test_every_method_has_a_row_and_every_row_a_method():
    assert sorted(amounts()) == sorted(names("methods"))
    assert {row["id"] for row in read_toml("lexicon/amounts.toml")["amount"]} == {row.id for row in amounts().values()}


@pytest.mark.parametrize(
    "more", [{"portions": 60}, {"quantity": Quantity(2, "batch")}, {"quantity": Quantity(8, "lb")}]
)
def test_the_time_at_heat_does_not_go_by_the_amount(more):
    one, many = asked(), asked(**more)
    assert many.figure("cook_time") == one.figure("cook_time")
    assert [b.rule for b in many.because if b.rule not in {b.rule for b in one.because}] == ["amount.note"]


@pytest.mark.parametrize("method", ["microwave", "reduce"])
def test_where_it_does_go_by_the_amount_that_is_said(method):
    assert "takes longer" in gist(Request(method=method, portions=60))


def test_nothing_is_said_of_an_amount_that_nobody_gave():
    assert all(gist(Request(method=method)) == "" for method in amounts())
    assert "amount.note" not in {b.rule for b in asked().because}


def test_a_pressure_cooker_is_never_overfilled():
    many = asked(method="pressure_cook", portions=60)
    assert any("two thirds full, half for beans" in step for step in many.steps)
