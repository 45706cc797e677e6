"""Component: the form of a question: how long, how hot, is it safe, which of two, by Matcher patterns kept as data."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from itertools import product
from typing import Any

from spacy.language import Language
from spacy.matcher import Matcher
from spacy.strings import StringStore
from spacy.tokens import Doc
from spacy.vocab import Vocab

from assistant.reading import groups
from assistant.reading.tokens import norms
from rules import tables
from rules.kept import kept

Token = dict[str, Any]
FILE = "lexicon/forms.toml"
CLAUSE, GAP, EITHER, PERHAPS = "^", "..", "|", "?"
LONGEST_GAP = 4
# signs behind which a new clause begins
ENDS_CLAUSE = frozenset(".?!;:,-–—(")
OPENERS = frozenset(("and", "but", "so", "ok", "okay", "also", "or", "then", "hey", "hi", "chef", "now"))


@dataclass(frozen=True, slots=True)
class Form:
    """A form where it was heard: tokens, end exclusive."""

    start: int
    end: int
    id: str


groups.shown("forms", "form")


@Language.component(
    "kitchen_forms",
    requires=["doc._.numbers", "doc._.measures", "doc._.found", "doc._.elevations", "doc._.clock"],
    assigns=["doc._.forms"],
)
def kitchen_forms(doc: Doc) -> Doc:
    """Hear every form a question has."""
    groups.keep(doc, "forms", hear(doc))
    return doc


@cache
def forms() -> dict[str, str]:
    """Every form, in the order in which it counts, with what it wants to know."""
    return {row["id"]: row["says"] for row in tables.read_toml(FILE)["form"]}


def hear(doc: Doc) -> tuple[Form, ...]:
    """The forms of an utterance whose spans were heard, the one that counts first."""
    mark(doc)
    rank = {id: at for at, id in enumerate(forms())}
    found = {Form(start, end, id) for id, start, end in patterns_heard(doc, FILE, "form")}
    return tuple(sorted(found, key=lambda form: (rank[form.id], form.start, form.end)))


def patterns_heard(doc: Doc, file: str, table: str) -> Iterator[tuple[str, int, int]]:
    """Where the patterns of a table of rows stand in an utterance that is marked: the id of the row, start, end."""
    book = _patterns(file, table)
    for at in book.always.union(at for word in norms(doc) for at in book.by_word.get(word, ())):
        yield from ((_ids()[id], start, end) for id, start, end in _matcher(file, table, at)(doc))


STARTS = "clause starts"


def mark(doc: Doc) -> None:
    """Show the Matcher what was heard: the kind of its span as the tag of each token, and where clauses begin."""
    for number in doc._.numbers:
        _tag(doc, number.start, number.end, "number")
    for found in doc._.found:
        _tag(doc, found.start, found.end, found.kind)
    for measure in (*doc._.measures, *doc._.clock):
        _tag(doc, measure.start, measure.end, measure.kind)
    for elevation in doc._.elevations:
        _tag(doc, elevation.start, elevation.end, "place" if elevation.place else "elevation")
    starts, opens = set(), True
    for token, word in zip(doc, norms(doc), strict=True):
        token.is_sent_start = opens
        if opens:
            starts.add(token.i)
        opens = word in ENDS_CLAUSE or (opens and word in OPENERS)
    doc.user_data[STARTS] = frozenset(starts)


def clause_starts(doc: Doc) -> frozenset[int]:
    """Where clauses begin in an utterance that is marked; asking each token for it goes through them all."""
    return frozenset(doc.user_data[STARTS])


def _tag(doc: Doc, start: int, end: int, kind: str) -> None:
    for token in doc[start:end]:
        token.tag_ = kind


@dataclass(frozen=True, slots=True)
class Patterns:
    """Patterns that need one of the same words, group by group, so that few of them run over an utterance.

    groups: of each, the patterns by the id of their row; by_word: word -> numbers of the groups that need it
    always: numbers of those that need none
    """

    groups: tuple[dict[str, list[list[Token]]], ...]
    by_word: dict[str, tuple[int, ...]]
    always: frozenset[int]


@kept
def _patterns(file: str, table: str) -> Patterns:
    made: dict[tuple[str, ...], dict[str, list[list[Token]]]] = {}
    for row in tables.read_toml(file)[table]:
        for pattern in row.get("patterns", ()):
            for tokens in patterns_of(pattern):
                made.setdefault(_needed(tokens), {}).setdefault(row["id"], []).append(tokens)
    by_word: dict[str, tuple[int, ...]] = {}
    for at, words in enumerate(made):
        for word in words:
            by_word[word] = (*by_word.get(word, ()), at)
    return Patterns(tuple(made.values()), by_word, frozenset(at for at, words in enumerate(made) if not words))


@cache
def _vocabulary() -> Vocab:
    """The words of the patterns. Utterances have vocabularies of their own, and are matched by the hashes of words."""
    return Vocab()


def _ids() -> StringStore:
    return _vocabulary().strings


@cache
def _matcher(file: str, table: str, group: int) -> Matcher:
    """The Matcher of a group, made when one of its words is first heard."""
    matcher = Matcher(_vocabulary(), validate=False)
    for id, patterns in _patterns(file, table).groups[group].items():
        matcher.add(id, patterns)
    return matcher


def _needed(tokens: list[Token]) -> tuple[str, ...]:
    """The words of which a pattern needs one: those of its narrowest slot that cannot be missing."""
    slots = [tuple(token["NORM"]["IN"]) for token in tokens if "NORM" in token and "OP" not in token]
    return min(slots, key=len, default=())


def patterns_of(pattern: str) -> list[list[Token]]:
    """One pattern of the file as patterns of spaCy's Matcher: two where a word or a kind of span may stand.

    >>> patterns_of("how long|<time>")
    [[{'NORM': {'IN': ['how']}}, {'NORM': {'IN': ['long']}}], [{'NORM': {'IN': ['how']}}, {'TAG': {'IN': ['time']}, \
'OP': '+'}]]
    """
    slots: list[list[Token]] = []
    opens = False
    for word in pattern.split():
        if word != CLAUSE:
            slots.append([token | ({"IS_SENT_START": True} if opens else {}) for token in _choices(word)])
        opens = word == CLAUSE
    return [list(tokens) for tokens in product(*slots)]


def _choices(word: str) -> list[Token]:
    if word == GAP:
        return [{"OP": f"{{0,{LONGEST_GAP}}}"}]
    perhaps = len(word) > 1 and word.endswith(PERHAPS)
    choice = word.removesuffix(PERHAPS).split(EITHER) if len(word) > 1 else [word]
    kinds = [one[1:-1] for one in choice if one.startswith("<")]
    words = [one for one in choice if not one.startswith("<")]
    of_words: list[Token] = [{"NORM": {"IN": words}} | ({"OP": "?"} if perhaps else {})] if words else []
    of_kinds: list[Token] = [{"TAG": {"IN": kinds}, "OP": "*" if perhaps else "+"}] if kinds else []
    return of_words + of_kinds
