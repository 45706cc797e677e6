"""Component: mends slips of spelling, word by word, towards words of the lexicon. In doubt it leaves a word alone."""

from __future__ import annotations

import re
from collections import defaultdict
from functools import cache

from spacy.lang.en.stop_words import STOP_WORDS
from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.figures import ONES, PARTS, SCALES, TEENS, TENS
from assistant.understanding import concepts, faults, lexicon, safety_subjects, topics
from rules import tables

SHORTEST = 5
TWO_SLIPS_FROM = 8
# words of danger that stand in so many phrases are no slips themselves
OFTEN = 4
# spellings of one sound, in the order in which they are put alike
SOUNDS = (("ph", "f"), ("ch", "C"), ("sh", "S"), ("ck", "k"), ("qu", "kw"), ("x", "ks"), ("z", "s"), ("ce", "se"),
          ("ci", "si"), ("cy", "si"), ("c", "k"))  # fmt: skip
VOWELS, TWICE, SILENT = re.compile(r"[aeiouy]+"), re.compile(r"(.)\1"), re.compile(r"(?<=[^aeiouy])e(?=s?$)")
NUMBER_WORDS = frozenset((*ONES, *TEENS, *TENS, *SCALES, *PARTS, "dozen", "couple"))

Doc.set_extension("mended", default=(), force=True)


@Language.component(
    "kitchen_spelling", requires=["doc._.numbers", "doc._.measures"], assigns=["token.norm", "doc._.mended"]
)
def kitchen_spelling(doc: Doc) -> Doc:
    """Set the norm of misspelled words to the word that is meant, numbers and units excepted."""
    mended, claimed = [], {i for span in (*doc._.numbers, *doc._.measures) for i in range(span.start, span.end)}
    for token in doc:
        beside = tuple(doc[i].norm_ for i in (token.i - 1, token.i + 1) if 0 <= i < len(doc))
        meant = None if token.i in claimed else mend(token.norm_, beside)
        if meant:
            mended.append((token.norm_, meant))
            token.norm_ = meant
    doc._.mended = tuple(mended)
    return doc


@cache
def plain_words() -> frozenset[str]:
    """Words of everyday English that must never be taken for a slip of a kitchen word."""
    path = tables.data_path("lexicon/plain_words.txt")
    listed = path.read_text(encoding="utf-8").split() if path.is_file() else []
    return frozenset(STOP_WORDS) | NUMBER_WORDS | frozenset(listed)


@cache
def kitchen_words() -> dict[str, tuple[str, ...]]:
    """Words of dishes, methods, equipment, symptoms, ingredients and concepts, by first letter."""
    book = lexicon.phrase_book()
    words = {
        word
        for phrase, meant in book.phrases.items()
        if any(kind != "place" for kind, _ in meant)
        for word in phrase.split()
        if len(word) >= SHORTEST - 1 and word.isalpha()
    }
    words |= {word for word in faults.words() if len(word) >= SHORTEST - 1 and word.isalpha()}
    shelves = defaultdict(list)
    common = (word for word, count in concepts.counted().items() if count >= OFTEN and word.isalpha())
    meant = (*topics.concepts(), *common)
    for word in sorted(words | {word for word in meant if len(word) >= SHORTEST}):
        shelves[word[0]].append(word)
    return {letter: tuple(shelf) for letter, shelf in shelves.items()}


@cache
def known_words() -> frozenset[str]:
    """Words that are right as they stand."""
    lexicon_words = {word for phrase in lexicon.phrase_book().phrases for word in phrase.split()}
    safety_words = {word for phrase in safety_subjects.phrases() for word in phrase.split()}
    of_catalogues = faults.words() | concepts.phrases().words | topics.concepts().keys()
    return plain_words() | lexicon_words | safety_words | of_catalogues


def mend(word: str, beside: tuple[str, ...] = ()) -> str | None:
    """The kitchen word that a misspelled word means; None where it is right, or nobody can tell.

    Only words of five letters and more are mended: one slip, or two from eight letters on, the first letter right,
    and one word clearly nearest, or nearest among those that make a phrase with a word beside it. Numbers and units
    are never touched, so that no slip can make an elevation.

    >>> mend("brocoli"), mend("shrot", beside=("braise", "ribs")), mend("place")
    ('broccoli', 'short', None)
    """
    if len(word) < SHORTEST or not word.isalpha() or not word.isascii() or word in known_words():
        return None
    singular = word.removesuffix("s")
    if (singular in known_words() and singular not in STOP_WORDS) or word in lexicon.run_together():
        return None
    near = _nearest(word)
    phrases = lexicon.phrase_book().phrases
    fitting = tuple(n for n in near if any(f"{b} {n}" in phrases or f"{n} {b}" in phrases for b in beside))
    of_lexicon = tuple(n for n in near if lexicon.meanings(n))
    return _one_meaning(fitting or of_lexicon or near)


def _one_meaning(words: tuple[str, ...]) -> str | None:
    """The first of several words if they all mean the same, or else the one that is a method."""
    if len({lexicon.meanings(word) or word.removesuffix("s") for word in words}) <= 1:
        return next(iter(words), None)
    methods = {id: word for word in words for kind, id in lexicon.meanings(word) if kind == "method"}
    return next(iter(methods.values())) if len(methods) == 1 else None


@cache
def _nearest(word: str) -> tuple[str, ...]:
    """The kitchen words that are nearest to a word, all equally near, or those of them that sound alike."""
    from rapidfuzz.distance import OSA
    from rapidfuzz.process import extract

    slips = 2 if len(word) >= TWO_SLIPS_FROM else 1
    shelf = kitchen_words().get(word[0], ())
    near = extract(word, shelf, scorer=OSA.distance, score_cutoff=slips, limit=5)
    nearest = tuple(str(found) for found, distance, _ in near if distance == near[0][1])
    alike = tuple(found for found in nearest if sound(found) == sound(word))
    if nearest:
        return alike or nearest
    written = VOWELS.sub("", word)
    heard = (n for n in sounding().get(sound(word), ()) if VOWELS.sub("", n) != written)
    return tuple(n for n in heard if OSA.distance(word, n) <= 2)


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
