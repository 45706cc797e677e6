"""Component: the form of a question: how long, how hot, is it safe, which of two, by Matcher patterns kept as data."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from itertools import product
from typing import Any

from spacy.language import Language
from spacy.matcher import Matcher
from spacy.tokens import Doc
from spacy.vocab import Vocab

from assistant.reading import groups
from rules import tables

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
    found = {Form(start, end, doc.vocab.strings[id]) for id, start, end in matcher(doc.vocab, FILE, "form")(doc)}
    return tuple(sorted(found, key=lambda form: (rank[form.id], form.start, form.end)))


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
    opens = True
    for token in doc:
        token.is_sent_start = opens
        opens = token.norm_ in ENDS_CLAUSE or (opens and token.norm_ in OPENERS)


def _tag(doc: Doc, start: int, end: int, kind: str) -> None:
    for token in doc[start:end]:
        token.tag_ = kind


@cache
def matcher(vocab: Vocab, file: str, table: str) -> Matcher:
    """The patterns of every row of a table, each under the id of its row."""
    found = Matcher(vocab, validate=False)
    for row in tables.read_toml(file)[table]:
        found.add(row["id"], [tokens for pattern in row["patterns"] for tokens in patterns_of(pattern)])
    return found


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
