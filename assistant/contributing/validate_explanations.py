"""The validator's part on explanations and words of the trade: each row has its text, the names in it are known, every
known name is used, and what a row is about can be said."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from typing import get_args

from assistant.contributing.validate_wording import Call, Messages, all_messages, languages, names_of
from assistant.understanding.senses import HEIGHT, REDUCED
from rules import explanations, tables
from rules.explanations import glossary
from rules.explanations.glossary import Term
from rules.foods.dishes import classes
from rules.model import Level
from rules.topics.why import FOLDER, Row, belief_message, catalogue, label_of

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
    yield from ((ROWS, row.id, fault) for row in catalogue() for fault in about_faults(row))
    yield from ((ROWS, *fault) for fault in (*twice(catalogue()), *unused(catalogue(), glossary.terms().values())))
    yield from ((glossary.FILE, term.id, fault) for term in glossary.terms().values() for fault in term_faults(term))


def calls() -> Iterator[Call]:
    """The sentences that the rows say; which values fill them is a matter of the whole text."""
    for row in catalogue():
        yield from (Call(file_of(row), id, None, ROWS) for id in sentences_of(row))
    for term in glossary.terms().values():
        yield Call(glossary.WORDING, glossary.message_of(term.id), frozenset(term.values), glossary.FILE)


def file_of(row: Row) -> str:
    """The file of an explanation's text."""
    return f"{FOLDER}/{row.id}"


def sentences_of(row: Row) -> tuple[str, ...]:
    """The messages that an explanation says."""
    labels, beliefs = map(label_of, row.figures), map(belief_message, row.beliefs)
    return (*TEXTS, *labels, *beliefs, *(("caution",) if row.caution else ()))


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


def about_faults(row: Row) -> Iterator[str]:
    """What a row or a belief of it is about: dish classes, methods and equipment that are not known, or nothing."""
    known = {f"<{name}>" for name in (*classes(), *ids("methods", "method"), *ids("equipment", "equipment"))} | {
        HEIGHT,
        REDUCED,
    }
    parts = [*row.about, *(part for belief in row.beliefs.values() for part in belief.about), row.not_about]
    named = {word for part in parts for word in part.split("|") if word.startswith("<")}
    yield from (f'"{word}" is no dish class, method or equipment' for word in sorted(named - known))
    empty = [id for id, of in ((row.id, row.about), *((id, b.about) for id, b in row.beliefs.items())) if not of]
    yield from (f"{id} is about nothing" for id in empty)
    yield from (f"belief {id} needs two phrases" for id, belief in row.beliefs.items() if len(belief.heard_as) < 2)


def ids(file: str, key: str) -> Iterator[str]:
    """The ids of a lexicon file."""
    return (str(row["id"]) for row in tables.read_toml(f"lexicon/{file}.toml")[key])


def term_faults(term: Term) -> Iterator[str]:
    """Sources and values of a word that are not known."""
    yield from (f'source "{id}" unknown' for id in term.sources if id not in tables.sources())
    yield from (f'value "{id}" is in no module' for id in term.values if id not in explanations.names("VALUES"))


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


def unused(rows: Iterable[Row], terms: Iterable[Term] = ()) -> Iterator[tuple[str, str]]:
    """Names of rules/explanations that no row has."""
    held = tuple(rows)
    values = (*(row.values for row in held), *(term.values for term in terms))
    for kind, used in (("VALUES", values), ("FIGURES", tuple(row.figures for row in held))):
        spare = explanations.names(kind) - {name for names in used for name in names}
        yield from ((name, f"in {kind} of rules/explanations, but no row has it") for name in sorted(spare))
