"""The validator's part on explanations: each row has its text, the names in it are known, and every known name used."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import get_args

from assistant.contributing.validate_wording import Call, Messages, all_messages, languages, names_of
from rules import explanations, tables
from rules.foods.dishes import classes
from rules.model import Level
from rules.topics.why import FOLDER, Row, catalogue, label_of

ROWS = "lexicon/explanations.toml"
TEXTS = ("line", "paragraph", "equations")
PHRASES = range(5, 13)

Problem = tuple[str, str, str]


def problems() -> Iterator[Problem]:
    """File, row and what is wrong with it, for every fault."""
    texts = [all_messages(language, map(file_of, catalogue())) for language in languages()]
    for row in catalogue():
        yield from ((ROWS, row.id, fault) for fault in row_faults(row))
        yield from ((ROWS, row.id, fault) for fault in value_faults(row, texts))
    yield from ((ROWS, *fault) for fault in (*twice(catalogue()), *unused(catalogue())))


def calls() -> Iterator[Call]:
    """The sentences that the rows say; which values fill them is a matter of the whole text."""
    for row in catalogue():
        yield from (Call(file_of(row), id, None, ROWS) for id in sentences_of(row))


def file_of(row: Row) -> str:
    """The file of an explanation's text."""
    return f"{FOLDER}/{row.id}"


def sentences_of(row: Row) -> tuple[str, ...]:
    """The messages that an explanation says."""
    return (*TEXTS, *(label_of(figure) for figure in row.figures), *(("caution",) if row.caution else ()))


def row_faults(row: Row) -> Iterator[str]:
    """Sources, figures, classes, methods and a caution that are not known."""
    level, sources = row.caution or ("note", ())
    methods = {of["id"] for of in tables.read_toml("lexicon/methods.toml")["method"]}
    for kind, named, known in (
        ("source", (*row.sources, *sources), tables.sources().keys()),
        ("figure", row.figures, explanations.names("FIGURES")),
        ("dish class", row.classes, classes().keys()),
        ("method", row.methods, methods),
        ("level", (level,), get_args(Level)),
    ):
        yield from (f'{kind} "{name}" unknown' for name in named if name not in known)
    if not row.sources or not row.figures or not row.title:
        yield "needs a title, a source and a figure"
    if len(row.heard_as) not in PHRASES:
        yield f"{len(row.heard_as)} phrases; {PHRASES[0]} to {PHRASES[-1]} are wanted"


def value_faults(row: Row, texts: list[Messages]) -> Iterator[str]:
    """Values that the row and its text do not both have, or that rules/explanations has not."""
    named = {name for text in texts for id in sentences_of(row) for name in names_of(text, file_of(row), id)}
    yield from (f"its text names ${name}, which is not among its values" for name in sorted(named - set(row.values)))
    yield from (f'value "{name}" is not named in its text' for name in sorted(set(row.values) - named))
    known = explanations.names("VALUES")
    yield from (f'value "{name}" is in no module of rules/explanations' for name in row.values if name not in known)


def twice(rows: tuple[Row, ...]) -> Iterator[tuple[str, str]]:
    """Dish classes, methods and titles that two rows claim."""
    for claimed in ([row.classes for row in rows], [row.methods for row in rows], [(row.title,) for row in rows]):
        counted = Counter(item for items in claimed for item in items)
        yield from ((item, f"stands in {times} rows") for item, times in counted.items() if times > 1)


def unused(rows: tuple[Row, ...]) -> Iterator[tuple[str, str]]:
    """Names of rules/explanations that no row has."""
    for kind, used in (("VALUES", (row.values for row in rows)), ("FIGURES", (row.figures for row in rows))):
        spare = explanations.names(kind) - {name for names in used for name in names}
        yield from ((name, f"in {kind} of rules/explanations, but no row has it") for name in sorted(spare))
