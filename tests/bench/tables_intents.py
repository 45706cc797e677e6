"""Parsing a question: ours beside hassil, a recogniser of sentence templates, given templates of our lexicon."""

from __future__ import annotations

import random
from types import ModuleType
from typing import Any

from tables_shown import cpu_s, library, show
from tables_topics import unseen

from assistant.answering import understand
from assistant.understanding.pipeline import read, read_clean
from rules import tables
from rules.foods.dishes import dishes

SEED, QUESTIONS, ROUNDS = 7, 60, 2
WHERE = "[(at|up at|here at) {elevation} [feet|ft|foot|m|meters|metres]|in {place}|at {place}]"
OF_WHAT = "[the|my|a|some] {dish}"
SENTENCES = {
    "time": [
        f"how (long|many minutes|much longer) (to|do I|should I|do you|will it take to) {{method}} {OF_WHAT} {WHERE}",
        f"how (long|many minutes) (for|does|do) {OF_WHAT} [take] {WHERE}",
        f"(cooking time|time) for {OF_WHAT} {WHERE}",
        f"{{method}} {OF_WHAT} {WHERE}",
    ],
    "temperature": [
        f"(what|which) [oven] (temperature|temp) (to|do I|should I) {{method}} {OF_WHAT} [at] {WHERE}",
        f"(what|which) [oven] (temperature|temp) (for|is) {OF_WHAT} {WHERE}",
    ],
    "boiling_point": [
        f"(when|at what temperature|at what temp) does water boil {WHERE}",
        f"(boiling point|what is the boiling point) [of water] {WHERE}",
    ],
    "liquid": [f"how much (water|liquid) (for|with|do I need for) {OF_WHAT} {WHERE}"],
    "doneness": [f"(when is|how do I know when) {OF_WHAT} [is] done {WHERE}"],
    "why": [f"why does water boil (cooler|lower|at a lower temperature) {WHERE}"],
}


def templates() -> dict[str, Any]:
    """The sentences with every dish and method of the lexicon as their lists."""
    named = [(alias, dish.name) for dish in dishes().values() for alias in (dish.name, *dish.heard_as)]
    towns = [
        name
        for row in tables.read_toml("lexicon/places.toml")["place"]
        for name in (row["name"], *row.get("heard_as", ()))
    ]
    ways = [(word, row["id"]) for row in tables.read_toml("lexicon/methods.toml")["method"] for word in row["heard_as"]]
    return {
        "language": "en",
        "intents": {topic: {"data": [{"sentences": lines}]} for topic, lines in SENTENCES.items()},
        "lists": {
            "dish": {
                "values": [{"in": alias, "out": name} for alias, name in named if alias.replace(" ", "").isalpha()]
            },
            "method": {"values": [{"in": word, "out": id} for word, id in ways if word.replace(" ", "").isalpha()]},
            "place": {"values": [name for name in towns if name.replace(" ", "").isalpha()]},
            "elevation": {"range": {"from": 0, "to": 30000}},
        },
    }


def made() -> list[tuple[str, str, str]]:
    """Questions of the shape of a template: text, dish and method that are meant; the same ones every time."""
    chance = random.Random(SEED)
    cooked = [(d, m) for d in dishes().values() for m in d.methods if d.name.replace(" ", "").isalpha()]
    picked = chance.sample(sorted(cooked, key=lambda pair: (pair[0].name, pair[1])), QUESTIONS)
    return [
        (f"how long to {way.replace('_', ' ')} {dish.name} at {chance.randrange(40, 110) * 100} feet", dish.name, way)
        for dish, way in picked
    ]


def table() -> None:
    """Print the table."""
    questions, asked = made(), [text for _, text in unseen()]

    def ours(text: str) -> tuple[str | None, str | None]:
        read_clean.cache_clear()
        request = understand(text)
        return request.dish, request.method

    def alone(text: str) -> None:
        read_clean.cache_clear()
        read(text)

    def own_row() -> tuple[object, ...]:
        right = sum(ours(text) == (dish, way) for text, dish, way in questions)
        return "simmerline, whole request", f"{right} of {len(questions)}", f"all of {len(asked)}"

    own_s = cpu_s(lambda: [ours(text) for text, *_ in questions], ROUNDS) / len(questions)
    alone_s = cpu_s(lambda: [alone(text) for text, *_ in questions], ROUNDS) / len(questions)
    rows: list[tuple[object, ...]] = [
        (*own_row(), f"{own_s * 1000:.2f} ms", "1.0"),
        ("simmerline, pipeline alone", "-", "-", f"{alone_s * 1000:.2f} ms", f"{alone_s / own_s:.2f}"),
    ]
    if hassil := library("hassil", "hassil"):
        rows.append(_theirs(hassil, questions, asked, own_s))
    show(
        f"Questions parsed, {len(questions)} of the shape of a template",
        ("parser", "dish and method right", "test questions that it takes", "a question", "times our time"),
        rows,
        "What fits no template it cannot take. Ours takes any text, if only to say that it is outside: how often it\n"
        "is right stands in the table of topics. The whole request is danger, menus, recipes and memory as well.",
    )


def _theirs(
    hassil: ModuleType, questions: list[tuple[str, str, str]], asked: list[str], own_s: float
) -> tuple[object, ...]:
    intents = hassil.Intents.from_dict(templates())

    def heard(text: str) -> tuple[Any, Any] | None:
        # it takes no signs within numbers
        found = hassil.recognize(text.replace(",", ""), intents)
        return (
            tuple(found.entities[n].value if n in found.entities else None for n in ("dish", "method"))
            if found
            else None
        )

    right = sum(heard(text) == (dish, way) for text, dish, way in questions)
    taken = sum(heard(text) is not None for text in asked)
    each_s = cpu_s(lambda: [heard(text) for text, *_ in questions], ROUNDS) / len(questions)
    return (
        "hassil",
        f"{right} of {len(questions)}",
        f"{taken} of {len(asked)}",
        f"{each_s * 1000:.2f} ms",
        f"{each_s / own_s:.2f}",
    )


if __name__ == "__main__":
    table()
