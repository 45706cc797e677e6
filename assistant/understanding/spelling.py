"""Component: mends slips of spelling, word by word, towards words of the lexicon. In doubt it leaves a word alone."""

from __future__ import annotations

import re
from collections import defaultdict
from functools import cache, lru_cache

from spacy.lang.en.stop_words import STOP_WORDS
from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.figures import ONES, PARTS, SCALES, TEENS, TENS
from assistant.reading.tokens import norms, set_norm
from assistant.understanding import (
    concepts,
    faults,
    lexicon,
    safety_subjects,
    senses,
    topics,
    towns,
    trade_words,
)
from rules import tables
from rules.kept import kept

SHORTEST, SHORTEST_BY_SOUND = 5, 6
TWO_SLIPS_FROM = 8
# letters that lie side by side under a thumb, and that hands or ears put for one another
KEYS = ("qwertyuiop", "asdfghjkl", "zxcvbnm")
ALIKE = ("aeiouy", "ckq", "csz", "sh", "vwb", "dt", "mn", "pb", "gj", "lr", "xs")
# words of danger that stand in so many phrases are no slips themselves
OFTEN = 4
# spellings of one sound, in the order in which they are put alike
SOUNDS = (("ph", "f"), ("ch", "C"), ("sh", "S"), ("ck", "k"), ("qu", "kw"), ("x", "ks"), ("z", "s"), ("ce", "se"),
          ("ci", "si"), ("cy", "si"), ("c", "k"))  # fmt: skip
VOWELS, TWICE, SILENT = re.compile(r"[aeiouy]+"), re.compile(r"(.)\1"), re.compile(r"(?<=[^aeiouy])e(?=s?$)")
NUMBER_WORDS = frozenset((*ONES, *TEENS, *TENS, *SCALES, *PARTS, "dozen", "couple"))

SENTENCE_ENDS = frozenset(".?!:;-(\"'")

Doc.set_extension("mended", default=(), force=True)
# words that came with accents, in plain letters
Doc.set_extension("accented", default=frozenset(), force=True)


@Language.component(
    "kitchen_spelling", requires=["doc._.numbers", "doc._.measures"], assigns=["token.norm", "doc._.mended"]
)
def kitchen_spelling(doc: Doc) -> Doc:
    """Set the norm of misspelled words to the word that is meant, numbers and units excepted."""
    mended, claimed = [], {i for span in (*doc._.numbers, *doc._.measures) for i in range(span.start, span.end)}
    for token in doc:
        if token.i in claimed or token.norm_ in doc._.accented or _is_cut_place(doc, token.i):
            continue
        beside = tuple(norms(doc)[i] for i in (token.i - 1, token.i + 1) if 0 <= i < len(doc))
        meant = mend(token.norm_, beside, named=_is_name(doc, token.i))
        if meant:
            mended.append((token.norm_, meant))
            set_norm(doc, token.i, meant)
    doc._.mended = tuple(mended)
    return doc


def _is_name(doc: Doc, at: int) -> bool:
    """Whether a word is written as a name: a capital within a sentence that is not all in capitals or titles."""
    token = doc[at]
    if not token.text.istitle() or at == 0 or doc[at - 1].text in SENTENCE_ENDS:
        return False
    return any(other.text.islower() and len(other.text) >= SHORTEST - 1 for other in doc)


def _is_cut_place(doc: Doc, at: int) -> bool:
    """Whether a word is a part of the name of a place that was cut in two."""
    pairs = ((at, at + 1), (at - 1, at))
    return any(i >= 0 and j < len(doc) and towns.cut_in_two(norms(doc)[i], norms(doc)[j]) for i, j in pairs)


@cache
def plain_words() -> frozenset[str]:
    """Words of everyday English that must never be taken for a slip of a kitchen word."""
    path = tables.data_path("lexicon/plain_words.txt")
    listed = path.read_text(encoding="utf-8").split() if path.is_file() else []
    return frozenset(STOP_WORDS) | NUMBER_WORDS | frozenset(listed)


@cache
def shorthand() -> dict[str, str]:
    """What thumbs write for short, by what is written; no word of the lexicon is among them."""
    rows = tables.read_toml("lexicon/cues.toml")["shorthand"]
    known = {word for phrase in lexicon.phrase_book().phrases for word in phrase.split()}
    return {short: word for word, shorts in rows.items() for short in shorts if short not in known}


@cache
def everyday_words() -> frozenset[str]:
    """Frequent words and names of English that look like kitchen words, and are none: rental, screwing, Frank."""
    return frozenset(tables.data_path("lexicon/everyday_words.txt").read_text(encoding="utf-8").split())


@kept
def words_but_of_places() -> frozenset[str]:
    """The words of dishes, methods, equipment, symptoms and ingredients."""
    book = lexicon.phrase_book().phrases
    phrases = (phrase for phrase, meant in book.items() if any(kind != "place" for kind, _ in meant))
    return faults.words() | frozenset(word for phrase in phrases for word in phrase.split())


@cache
def kitchen_words() -> dict[str, tuple[str, ...]]:
    """Words of dishes, methods, equipment, symptoms, ingredients and concepts, by first letter."""
    words = {word for word in words_but_of_places() if len(word) >= SHORTEST - 1 and word.isalpha()}
    shelves = defaultdict(list)
    common = (word for word, count in concepts.counted().items() if count >= OFTEN and word.isalpha())
    meant = (*topics.concepts(), *common)
    for word in sorted(words | {word for word in meant if len(word) >= SHORTEST}):
        shelves[word[0]].append(word)
    return {letter: tuple(shelf) for letter, shelf in shelves.items()}


@kept
def known_words() -> frozenset[str]:
    """Words that are right as they stand."""
    lexicon_words = {word for phrase in lexicon.phrase_book().phrases for word in phrase.split()}
    safety_words = {word for phrase in safety_subjects.phrases() for word in phrase.split()}
    wondered = senses.every_word() | trade_words.every_word()
    known = lexicon_words | safety_words | wondered | concepts.phrases().words | topics.concepts().keys()
    return plain_words() | everyday_words() | faults.words() | known


def mend(word: str, beside: tuple[str, ...] = (), *, named: bool = False) -> str | None:
    """The kitchen word that a misspelled word means; None where it is right, or nobody can tell.

    Only words of five letters and more are mended: one slip, or two from eight letters on, the first letter right,
    and one word clearly nearest, or nearest among those that make a phrase with a word beside it. What is written as a
    name (named) has to make a phrase, or to sound alike. Numbers and units are never touched, so that no slip can make
    an elevation. Nor is a plain word with one letter too few: beter is better, and not beer.

    >>> mend("brocoli"), mend("shrot", beside=("braise", "ribs")), mend("place")
    ('broccoli', 'short', None)
    """
    if (short := shorthand().get(word)) and not named:
        return short
    if len(word) < SHORTEST or not word.isalpha() or not word.isascii() or word in known_words():
        return None
    singular = word.removesuffix("s")
    if (singular in known_words() and singular not in STOP_WORDS) or word in lexicon.run_together():
        return None
    doubled = (word[:i] + letter + word[i:] for i, letter in enumerate(word))
    if plain := next((one for one in doubled if one in plain_words()), None):
        return plain
    nearest = _nearest(word)
    near = tuple(n for n in nearest if sound(n) == sound(word)) or nearest
    if near and _is_town(word, near[0]):
        return None
    phrases = lexicon.phrase_book().phrases
    fitting = tuple(n for n in nearest if any(f"{b} {n}" in phrases or f"{n} {b}" in phrases for b in beside))
    if named:
        near = tuple(n for n in near if sound(n) == sound(word))
    of_lexicon = tuple(n for n in near if lexicon.meanings(n))
    return _one_meaning(fitting or of_lexicon or near)


def _is_town(word: str, meant: str) -> bool:
    """Whether the name of a place is as near to a misspelt word as the kitchen word is."""
    town = towns.nearest(word)
    if town is None:
        return False
    from rapidfuzz.distance import OSA

    return town[0] <= OSA.distance(word, meant)


def _one_meaning(words: tuple[str, ...]) -> str | None:
    """The first of several words if they all mean the same, or else the one that is a method."""
    if len({lexicon.meanings(word) or word.removesuffix("s") for word in words}) <= 1:
        return next(iter(words), None)
    methods = {id: word for word in words for kind, id in lexicon.meanings(word) if kind == "method"}
    return next(iter(methods.values())) if len(methods) == 1 else None


# slips that people make again; people never run out of new words
@lru_cache(maxsize=1024)
def _nearest(word: str) -> tuple[str, ...]:
    """The kitchen words that are nearest to a word, all equally near."""
    from rapidfuzz.distance import OSA
    from rapidfuzz.process import extract

    slips = 2 if len(word) >= TWO_SLIPS_FROM else 1
    shelf = kitchen_words().get(word[0], ())
    close = extract(word, shelf, scorer=OSA.distance, score_cutoff=slips, limit=12)
    near = [hit for hit in close if is_slip(word, str(hit[0]))]
    nearest = tuple(str(found) for found, distance, _ in near if distance == near[0][1])
    if nearest or (nearest := _first_letter(word)):
        return nearest
    if len(word) < SHORTEST_BY_SOUND:
        return ()
    written = VOWELS.sub("", word)
    heard = (n for n in sounding().get(sound(word), ()) if VOWELS.sub("", n) != written)
    return tuple(n for n in heard if OSA.distance(word, n) <= 2)


def _first_letter(word: str) -> tuple[str, ...]:
    """The kitchen words that a word is but for its first letter, which a thumb missed or put second: vraise, rbaise."""
    if len(word) < SHORTEST + 1:
        return ()
    firsts = {near + word[1:] for near in neighbours()[word[0]]} | {word[1] + word[0] + word[2:]}
    return tuple(sorted(first for first in firsts if first in kitchen_words().get(first[0], ())))


def is_slip(word: str, meant: str) -> bool:
    """Whether a thumb or an ear would write one word for another: each letter put for one that lies or sounds near.

    >>> is_slip("brsise", "braise"), is_slip("shrot", "short"), is_slip("sally", "salty")
    (True, True, False)
    """
    from rapidfuzz.distance import Levenshtein

    if sound(word) == sound(meant) or sorted(word) == sorted(meant):
        return True
    steps = Levenshtein.editops(word, meant)
    return all(meant[step.dest_pos] in neighbours()[word[step.src_pos]] for step in steps if step.tag == "replace")


@cache
def neighbours() -> dict[str, frozenset[str]]:
    """Letters that are put for each letter: those of the keys around it, and those that sound like it."""
    at = {letter: (row, column) for row, keys in enumerate(KEYS) for column, letter in enumerate(keys)}
    heard = {letter: "".join(group for group in ALIKE if letter in group) for letter in at}
    return {
        one: frozenset(heard[one]).union(
            other for other in at if max(abs(at[one][0] - at[other][0]), abs(at[one][1] - at[other][1])) <= 1
        )
        for one in at
    }


def sound(word: str) -> str:
    """A word roughly as it sounds: spellings of one sound alike, no doubled letters, no last e, vowels all one.

    >>> sound("steem") == sound("steam"), sound("kwinoa") == sound("quinoa"), sound("steep") == sound("steam")
    (True, True, False)
    """
    for spelled, heard in SOUNDS:
        word = word.replace(spelled, heard)
    return TWICE.sub(r"\1", VOWELS.sub("a", SILENT.sub("", word)))


@cache
def sounding() -> dict[str, tuple[str, ...]]:
    """Kitchen words by their sound."""
    shelves = defaultdict(list)
    for shelf in kitchen_words().values():
        for word in shelf:
            if len(word) >= SHORTEST:
                shelves[sound(word)].append(word)
    return {heard: tuple(words) for heard, words in shelves.items()}
