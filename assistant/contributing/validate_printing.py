"""The validator's part on what is printed: the sentences of its rows, and figures that the rules really give."""

from __future__ import annotations

from collections.abc import Iterator

from assistant.contributing.validate_wording import Call, all_messages, languages, names_of
from assistant.printing import batch_report, card
from assistant.printing.lesson import table, themes, worked
from assistant.printing.lesson.experiment import message
from assistant.printing.plots import time
from rules import engine, tables
from rules.drill import kind_named
from rules.errors import UnknownWord
from rules.model import Request
from rules.topics import why

Problem = tuple[str, str, str]
PLOTS, LESSON = "printing/plots", "printing/lesson"
# What an experiment says once; its steps and cautions are numbered.
ONCE = ("", "aim", "record", "finding")
# Where every row of a card has a figure [m].
HIGH_M = 2133.6


def calls() -> Iterator[Call]:
    """What the rows of the card and the lines of the plots are called, as if the code called for it."""
    for section in tables.read_toml(card.ROWS)["section"]:
        yield Call("printing/card", f"section-{section['id']}", frozenset(), card.ROWS)
        yield from (Call("printing/card", f"row-{row['id']}", frozenset(), card.ROWS) for row in section["rows"])
    for name in time.classes():
        yield Call(PLOTS, f"class-{name.replace('_', '-')}", frozenset(), f"{PLOTS}.toml")
    for name in batch_report.COLUMNS:
        yield Call(batch_report.WORDING, f"column-{name}", frozenset(), "batch_report.py")
    for theme in themes.catalogue().values():
        yield from (Call(LESSON, id, names, themes.ROWS) for id, names in lesson_sentences(theme))
    yield from (Call(LESSON, f"row-{row.id}", frozenset(), themes.ROWS) for row in themes.always())


def lesson_sentences(theme: themes.Theme) -> Iterator[tuple[str, frozenset[str] | None]]:
    """What the rows of a theme are called, and what its experiment says, with the names they are filled with."""
    yield f"title-{theme.id}", frozenset()
    yield from ((f"row-{row.id}", frozenset()) for row in theme.rows)
    for example in theme.examples:
        yield f"example-{example.id}", None
        yield from ((f"share-{row['id']}", frozenset()) for row in example.reckoned if "id" in row)
    trial = theme.experiment
    yield from ((f"need-{thing}", frozenset({"count"})) for thing, _ in trial.needs)
    yield from ((message(trial, part), None) for part in parts_of(trial))


def parts_of(trial: themes.Trial) -> tuple[str, ...]:
    """The parts of an experiment, "" for its title."""
    steps = (f"step-{n}" for n in range(1, trial.steps + 1))
    return (*ONCE, *steps, *(f"caution-{n}" for n in range(1, trial.cautions + 1)))


def problems() -> Iterator[Problem]:
    """Rows of the card and of the lessons whose question has no such figure or rule, or that are shown in no way."""
    yield from card_problems()
    for theme in themes.catalogue().values():
        yield from ((themes.ROWS, theme.id, fault) for fault in lesson_problems(theme))


def lesson_problems(theme: themes.Theme) -> Iterator[str]:
    """What is wrong with a theme."""
    yield from (f'there is no explanation "{name}"' for name in theme.why if name not in why.rows())
    yield from (f'there is no kind of question "{name}"' for name in theme.drill if not is_kind(name))
    for row in (*themes.always(), *theme.rows):
        if row.shows not in table.SHOWN:
            yield f'{row.id}: shows "{row.shows}" is none of {", ".join(table.SHOWN)}'
        if engine.answer(Request(**row.ask, elevation_m=HIGH_M)).figure(row.figure) is None:
            yield f'{row.id}: its question has no figure "{row.figure}"'
    for example in theme.examples:
        answer = engine.answer(Request(**example.ask, elevation_m=HIGH_M, depth=3))
        rules = {because.rule for because in answer.because}
        yield from (f'{example.id}: no rule "{rule}" answers it' for rule in example.sums if rule not in rules)
        for sums in example.reckoned:
            if sums["form"] not in worked.RECKONED:
                yield f'{example.id}: there is no sum of the form "{sums["form"]}"'
            if sums.get("rule", next(iter(rules))) not in rules or not answer.figure(sums.get("figure", "cook_time")):
                yield f"{example.id}: its question has not what {sums} needs"
    yield from experiment_problems(theme.experiment)


def experiment_problems(trial: themes.Trial) -> Iterator[str]:
    """Values that an experiment lists and does not name, or the contrary."""
    for language in languages():
        said = all_messages(language, (LESSON,))
        named = frozenset[str]().union(*(names_of(said, LESSON, message(trial, part)) for part in parts_of(trial)))
        if apart := named ^ set(trial.values):
            yield f"{trial.id}: its values are not those that its sentences name: {', '.join(sorted(apart))}"


def is_kind(name: str) -> bool:
    """Whether there is such a kind of question."""
    try:
        kind_named(name)
    except UnknownWord:
        return False
    return True


def card_problems() -> Iterator[Problem]:
    """Rows of the card whose question has no such figure, or that are shown in a way that is none."""
    for section in tables.read_toml(card.ROWS)["section"]:
        for row in section["rows"]:
            if row["shows"] not in card.SHOWN:
                yield card.ROWS, row["id"], f'shows "{row["shows"]}" is none of {", ".join(card.SHOWN)}'
            if engine.answer(Request(**row["ask"], elevation_m=HIGH_M)).figure(row["figure"]) is None:
                yield card.ROWS, row["id"], f'its question has no figure "{row["figure"]}"'
