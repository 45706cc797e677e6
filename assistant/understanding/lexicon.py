"""Component: phrases of the lexicon: dishes, methods, equipment, places and ingredients."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import product, repeat
from typing import Any

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Found, Kind
from assistant.reading.text import fold
from assistant.reading.tokens import norms
from assistant.understanding import bare_cooker
from rules import tables
from rules.foods.dishes import dishes
from rules.kept import kept

# file, key of its rows, field that names a row; the order settles matches of equal length
FILES: tuple[tuple[Kind, str, str, str], ...] = (
    ("method", "lexicon/methods.toml", "method", "id"),
    ("equipment", "lexicon/equipment.toml", "equipment", "id"),
    ("ingredient", "lexicon/ingredients.toml", "ingredient", "name"),
    ("place", "lexicon/places.toml", "place", "name"),
)

# everyday phrases that hold a word of the kitchen and mean none: out of stock, piece of cake
# methods at the head of a dish that are no part of what it is; smoked and cured food is another food
COOKED_BY = frozenset(("roast", "bake", "boil", "fry", "grill", "braise", "steam", "stew", "simmer", "poach", "sear"))
PLAIN_PHRASES = "lexicon/plain_phrases.txt"
# what may stand between a verb and the dish it is done to: stew the rabbit
BEFORE_OBJECT = ("the", "my", "our", "some", "a", "this", "these", "that", "those", "up")
SHORTEST_TOGETHER = 7
# words before a dish that make it an ingredient and leave it the dish it is: dry penne
UNCOOKED = ("dry", "dried", "uncooked", "raw")
Meanings = tuple[tuple[Kind, str], ...]

Doc.set_extension("found", default=(), force=True)


@dataclass(frozen=True, slots=True)
class PhraseBook:
    """Every phrase with what it may mean, in lexicon order. longest: words of the longest phrase."""

    phrases: dict[str, Meanings]
    longest: int


@Language.component("kitchen_lexicon", requires=["token.norm"], assigns=["doc._.found"])
def kitchen_lexicon(doc: Doc) -> Doc:
    """Hear every phrase of the lexicon."""
    doc._.found = hear(norms(doc))
    return doc


@kept
def phrase_book() -> PhraseBook:
    """The phrases of all lexicon files; a file that is not there has none."""
    phrases: dict[str, Meanings] = {}
    for row, phrase in rows():
        key = fold(phrase)
        known = phrases.get(key, row)
        phrases[key] = known if row[0] in known else known + row
    for key, known in phrases.items():
        state, _, rest = key.partition(" ")
        if state in UNCOOKED and all(kind == "ingredient" for kind, _ in known):
            phrases[key] = tuple(meant for meant in phrases.get(rest, ()) if meant[0] == "dish") + known
    return PhraseBook(phrases, max(p.count(" ") for p in phrases) + 1)


def rows() -> Iterator[tuple[Meanings, str]]:
    """The meaning and the phrase of everything the lexicon hears, names before the words they are also heard as.

    All phrases of a row share one meaning: the fewer objects, the less a cold start costs. A method is heard only as
    its row says, since its id may be a word of many meanings: hold, smoke, reduce.
    """
    for dish in dishes().values():
        yield from zip(repeat((("dish", dish.name),)), (dish.name, *dish.heard_as))
    yield from zip(repeat((("plain", ""),)), plain_phrases())
    for kind, file, key, name in FILES:
        for row in tables.read_toml(file)[key] if tables.data_path(file).is_file() else ():
            named = () if kind == "method" else (row[name].replace("_", " "),)
            yield from zip(repeat(((kind, row[name]),)), (*named, *row.get("heard_as", ())))
            yield from _made(kind, row)


def _made(kind: Kind, row: dict[str, Any]) -> Iterator[tuple[Meanings, str]]:
    """Names of one word of each list of a row, which tell the method as well: a smart pot, an all in one cooker."""
    if "named_by" in row:
        meant: Meanings = (("method", row["used_to"]), (kind, row["id"]))
        yield from zip(repeat(meant), map(" ".join, product(*row["named_by"])))


def plain_phrases() -> list[str]:
    """Everyday phrases in which a word of the kitchen means something else."""
    path = tables.data_path(PLAIN_PHRASES)
    lines = path.read_text(encoding="utf-8").splitlines() if path.is_file() else []
    return [line for line in lines if line and not line.startswith("#")]


def hear(words: Sequence[str]) -> tuple[Found, ...]:
    """The phrases among lower-case words, overlaps settled."""
    heard = [found for found in settle(without_heads(words, matches(words))) if found.kind != "plain"]
    heard = sorted((*heard, *bare_cooker.found(words, heard)), key=lambda found: found.start)
    return tuple(as_verb(words, found, heard) for found in heard)


def as_verb(words: Sequence[str], found: Found, heard: Sequence[Found]) -> Found:
    """What names a dish and a method is the method before the dish it is done to: stew the rabbit.

    >>> [(f.kind, f.id) for f in hear("stew the rabbit".split())], [f.kind for f in hear("rabbit in a stew".split())]
    ([('method', 'stew'), ('dish', 'rabbit')], ['dish', 'dish'])
    """
    if found.kind != "dish":
        return found
    text = " ".join(words[found.start : found.end])
    method = next((id for kind, id in phrase_book().phrases.get(text, ()) if kind == "method"), None)
    if method is None:
        return found
    object_at = found.end + any(word in BEFORE_OBJECT for word in words[found.end : found.end + 1])
    done_to = any(other.start == object_at and other.kind == "dish" for other in heard)
    return replace(found, kind="method", id=method) if done_to else found


def matches(words: Sequence[str]) -> list[Found]:
    """Every phrase at every place, overlapping as they may."""
    book = phrase_book()
    found = []
    for start in range(len(words)):
        for end in range(start + 1, min(start + book.longest, len(words)) + 1):
            found += [Found(start, end, kind, id) for kind, id in meanings(" ".join(words[start:end]))]
    return found


def meanings(phrase: str) -> Meanings:
    """What a phrase may mean; plurals that are not listed mean their singular, and words run together their phrase.

    >>> meanings("shortribs")
    (('dish', 'short ribs'),)
    """
    phrases = phrase_book().phrases
    if phrase in phrases:
        return phrases[phrase]
    singular = phrase[:-1] if phrase.endswith("s") and len(phrase) > 4 else phrase
    return phrases.get(singular) or phrases.get(run_together().get(phrase, ""), ())


@kept
def run_together() -> dict[str, str]:
    """Phrases of two or three words by their letters alone."""
    phrases = phrase_book().phrases
    return {p.replace(" ", ""): p for p in phrases if 1 <= p.count(" ") <= 2 and len(p) > SHORTEST_TOGETHER}


def without_heads(words: Sequence[str], found: Sequence[Found]) -> list[Found]:
    """The matches without those that take a method and half the name of a dish: roast | pork shoulder.

    >>> words = "roast pork shoulder".split()
    >>> [f.id for f in settle(without_heads(words, matches(words)))]
    ['roast', 'pork shoulder']
    """
    dishes_named = [f for f in found if f.kind == "dish"]

    def is_cut(one: Found) -> bool:
        by_method = any(kind == "method" and id in COOKED_BY for kind, id in meanings(words[one.start]))
        longer = (o for o in dishes_named if one.start < o.start < one.end < o.end and len(o) >= len(one))
        return by_method and any(longer)

    return [f for f in found if f.kind != "dish" or len(f) < 2 or not is_cut(f)]


def settle(found: Iterable[Found]) -> tuple[Found, ...]:
    """Of overlapping matches keep the longest, then the first in lexicon order; in the order of the text.

    A dish and an ingredient of the same name stand side by side: the topic tells which is meant.

    >>> settle([Found(1, 2, "dish", "ribs"), Found(0, 2, "dish", "short ribs"), Found(0, 2, "ingredient", "ribs")])
    (Found(start=0, end=2, kind='dish', id='short ribs', sure=1.0), \
Found(start=0, end=2, kind='ingredient', id='ribs', sure=1.0))
    """
    kept: list[Found] = []
    for match in sorted(found, key=lambda match: -len(match)):
        rivals = [k for k in kept if k.start < match.end and match.start < k.end]
        if all(
            (k.start, k.end) == (match.start, match.end) and {k.kind, match.kind} == {"dish", "ingredient"}
            for k in rivals
        ):
            kept.append(match)
    return tuple(sorted(kept, key=lambda match: match.start))


def method_inside(words: Sequence[str], dish: Found) -> str | None:
    """The method that a dish phrase opens with, if the dish is cooked so: hard boiled eggs, but not pot roast."""
    known = dishes()[dish.id].methods
    openings = (" ".join(words[dish.start : end]) for end in range(dish.end - 1, dish.start, -1))
    meant = (id for opening in openings for kind, id in phrase_book().phrases.get(opening, ()) if kind == "method")
    return next((id for id in meant if id in known), None)
