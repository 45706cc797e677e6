"""The contracts for programs: whole, closed, of the words that the rules use, and kept by what is printed.

Answers to the questions of strangers are held against theirs in tests/seen, recipes in
tests/assistant/replies/recipe/forms/test_json.py.
"""

from __future__ import annotations

import copy
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any, get_args

import pytest
from jsonschema import Draft202012Validator
from typer.testing import CliRunner

from assistant.answering import reply_to
from assistant.cli.app import create_app
from assistant.replies.contract import as_json
from assistant.schemas import NAMES, schema
from rules.baking.change import WAYS, WHATS
from rules.catalogue import topics
from rules.model import MISSING_WORDS, ElevationFrom, Level
from rules.recipe import TempOf, TimeOf
from tests.contracts import faults

MENUS = Path(__file__).parent / "planning" / "menus"
BANQUET = "short ribs 40%\npolenta, side, all\nplum dragon stew\ncoffee\nred lentil dal 20\ncornbread"


def objects(of: Any) -> Iterator[dict[str, Any]]:
    """Every object that a schema describes."""
    if isinstance(of, list):
        for one in of:
            yield from objects(one)
    elif isinstance(of, dict):
        if isinstance(of.get("properties"), dict):
            yield of
        for one in of.values():
            yield from objects(one)


def member(name: str, *path: str) -> dict[str, Any]:
    """The schema of a member; "*" for the members of a list."""
    found = schema(name)
    for step in path:
        found = found["items"] if step == "*" else found["properties"][step]
        if "$ref" in found:
            found = schema(name)["$defs"][found["$ref"].rpartition("/")[2]]
    return found


@pytest.mark.parametrize("name", NAMES)
def test_a_contract_is_whole_and_leaves_nothing_open(name: str) -> None:
    Draft202012Validator.check_schema(schema(name))
    found = list(objects(schema(name)))
    assert len(found) > 5
    for one in found:
        assert one["additionalProperties"] is False
        assert set(one["properties"]) - set(one["required"]) <= {"parts"}


@pytest.mark.parametrize(
    ("found", "words"),
    [
        (member("answer", "heard", "topic"), [topic.id for topic in topics().values()]),
        (member("answer", "heard", "elevation_from"), [*get_args(ElevationFrom), None]),
        (member("answer", "missing", "*"), MISSING_WORDS),
        (member("answer", "cautions", "*", "level"), get_args(Level)),
        (member("recipe", "changes", "*", "what"), WHATS),
        (member("recipe", "changes", "*", "way"), WAYS),
        (member("recipe", "steps", "*", "times", "*", "what"), get_args(TimeOf)),
        (member("recipe", "steps", "*", "temperatures", "*", "what"), get_args(TempOf)),
    ],
)
def test_its_words_are_those_of_the_rules(found: dict[str, Any], words: list[str | None]) -> None:
    assert set(found["enum"]) == set(words)


def without(value: Any) -> Iterator[tuple[str, Any]]:
    """A JSON without each of its members in turn, and with one too many."""
    for key in value:
        less = copy.deepcopy(value)
        del less[key]
        yield key, less
    yield "a member too many", {**value, "colour": "red"}


def test_what_breaks_a_contract_is_found() -> None:
    answer = as_json(reply_to("how long to braise short ribs at 7,000 feet"))
    assert faults("answer", answer) == []
    kept = [what for what, broken in without(answer) if not faults("answer", broken)]
    assert kept == []
    assert [what for what, heard in without(answer["heard"]) if not faults("answer", {**answer, "heard": heard})] == []
    figure = {**answer["figures"][0], "value": "four hours"}
    assert faults("answer", {**answer, "figures": [figure]}) == [
        "$.figures[0].value: 'four hours' is not of type 'number'"
    ]


def printed(*arguments: str, given: str) -> Any:
    done = CliRunner().invoke(create_app([arguments[0]]), list(arguments), input=given)
    assert done.exit_code in (0, 3), done.stderr
    return json.loads(done.stdout)


@pytest.mark.parametrize("at", ["7000ft", "0ft", "-100ft", "4000m"])
@pytest.mark.parametrize("menu", [(MENUS / "timberfold.txt").read_text(encoding="utf-8"), BANQUET])
def test_orders_and_schedules_keep_theirs(menu: str, at: str) -> None:
    order = printed("order", "-", "--at", at, "--covers", "90", "--format", "json", given=menu)
    assert faults("order", order) == []
    options = ("--covers", "90", "--serve", "2030-03-09 18:30", "--zone", "America/Denver", "--format", "json")
    plan = printed("schedule", "-", "--at", at, *options, given=menu)
    assert faults("schedule", plan) == []


@pytest.mark.parametrize("name", NAMES)
def test_a_contract_is_printed(name: str) -> None:
    done = CliRunner().invoke(create_app(["schema"]), ["schema", name])
    assert (done.exit_code, json.loads(done.stdout)) == (0, schema(name))


def test_a_contract_that_there_is_not_is_told() -> None:
    done = CliRunner().invoke(create_app(["schema"]), ["schema", "soup"])
    assert done.exit_code == 2
    assert "there are answer, recipe, order, schedule" in done.stderr
