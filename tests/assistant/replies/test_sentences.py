"""Sentences of the wording: the numbers of equations, what a folder shares, and what is not there."""

import pytest

from assistant.replies.sentences import BadWording, worded
from rules.book import Case
from rules.model import Request, Units
from rules.said import Said, temp
from rules.topics.why import explained, rows


@pytest.mark.parametrize("units", ["us", "metric"])
def test_an_equation_has_si_numbers_for_every_asker(units: Units) -> None:
    told = worded(Said("why/canning_tables", "equations", (("at", "there"), ("boil", temp(92.87)))), units)
    assert told == "Boiling point there: 92.87 °C. No equation replaces the printed band."


def test_thousands_are_set_apart_where_the_equation_asks_for_it() -> None:
    maths = explained(rows()["pressure_cooker_helps"], Case(Request(elevation_m=0.0))).maths
    assert worded(maths, "us").startswith("T_sat(101,325 + 103,421 Pa) = ")


def test_what_a_folder_shares_is_said_by_each_of_its_files() -> None:
    own, other = (worded(Said(f"why/{name}", "boiling-point-label"), "us") for name in ("tea_weak", "rice_stays_firm"))
    assert own == other == "Water boils at"


@pytest.mark.parametrize(
    ("said", "fault"),
    [
        (Said("why/tea_weak", "no-such-thing"), "data/wording/en/why/tea_weak.ftl: no-such-thing"),
        (Said("why/canning_tables", "equations", (("at", "there"), ("boil", "hot"))), "equations"),
        (Said("why/canning_tables", "equations", (("at", "there"),)), "boil"),
    ],
)
def test_what_cannot_be_said_is_refused_by_name(said: Said, fault: str) -> None:
    with pytest.raises(BadWording, match=fault):
        worded(said, "us")
