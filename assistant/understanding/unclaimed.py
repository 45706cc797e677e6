"""Words that no component has claimed: dishes and places nobody has heard of, and whether anything is left at all."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import spelling, topics
from assistant.understanding.answer_preferences import DEPTHS, LIDS, SOAKS, SYSTEMS
from assistant.understanding.claims import claimed
from assistant.understanding.cue_words import cues, said
from rules.catalogue import marked
from rules.model import Unused
from rules.said import sentences

say = sentences("understanding/unclaimed")

BEFORE_DISH, BEFORE_PLACE = cues("unknown", "before_dish"), cues("unknown", "before_place")
LIVING, NO_ELEVATION = cues("unknown", "living"), cues("unknown", "no_elevation")
NAMED, SETTLEMENTS, THINGS = cues("unknown", "named"), cues("unknown", "settlements"), cues("unknown", "things")
NAMED_REACH = 4
# what a name of the hills begins with: Monte Zoncolan, Refugio Frey
HEADS = frozenset(cues("unknown", "heads"))
LEANING = frozenset(cues("leaning", "words"))
# of what is said of soaking only words that say it by themselves: unsoaked
SOAKED = tuple(tuple(phrase for phrase in phrases if " " not in phrase) for phrases in SOAKS.values())
HINTS = (*DEPTHS.values(), *LIDS.values(), *SOAKED, *SYSTEMS.values())
HINT_WORDS = frozenset(word for phrases in HINTS for phrase in phrases for word in phrase.split())
LONGEST_DISH = 3
# how an utterance begins that goes on with the question before, and of how many words it is at most
OPENINGS = tuple(tuple(opening.split()) for opening in cues("leaning", "openings"))
LONGEST_ASIDE = 16


def is_elliptical(doc: Doc, besides: Collection[str] = ()) -> bool:
    """Whether nothing is said but slots and little words: `and at 9,000?`, `what about lamb shanks`, `in Celsius`.

    besides: further words that may be said
    """
    rest = [word for word in norms(doc) if any(sign.isalnum() for sign in word)]
    kept, little = claimed(doc), LEANING | HINT_WORDS | set(besides)
    loose = {w for i, w in enumerate(norms(doc)) if i not in kept and w.isalnum() and w not in little}
    loose -= {word.casefold() for name in (_towns(doc) if loose else ()) for word in name.split()}
    asks_anew = topics.cue_scores(doc).keys() - marked("leaning_cues")
    return bool(rest) and not asks_anew and not loose


def elsewhere(doc: Doc) -> bool:
    """Whether the question before is put again for somebody else's kitchen: what about my sister, she is at 6,300."""
    opens = any(all(one == word for one, word in zip(norms(doc), opening, strict=False)) for opening in OPENINGS)
    named = any(found.kind in ("dish", "method", "symptom") for found in doc._.found)
    here = any(elevation.role == "here" for elevation in doc._.elevations)
    return opens and here and not named and len(doc) <= LONGEST_ASIDE


def dish(doc: Doc) -> Unused | None:
    """A dish that the lexicon does not have, where the sentence has the place for one: braise ZORGON."""
    return named(doc) if doc._.topic.id in marked("of_a_dish") else None


def named(doc: Doc, *, at_start: bool = False) -> Unused | None:
    """The first dish nobody has heard of. at_start: whether it may open the text, as in the reply to what is cooked."""
    name = next(_names(doc, at_start), None)
    return Unused("dish", name, say("unknown-dish", name=name)) if name else None


def _names(doc: Doc, at_start: bool) -> Iterator[str]:
    """Runs of unheard-of words behind a method, a cooking verb or an article."""
    kept = claimed(doc)
    methods = {f.end for f in doc._.found if f.kind == "method"}
    strange = [i not in kept and _is_strange(word) for i, word in enumerate(norms(doc))]
    for i in range(len(doc)):
        begins = strange[i] and not (i and strange[i - 1])
        if begins and (i in methods or (norms(doc)[i - 1] in BEFORE_DISH if i else at_start)):
            end = next((j for j in range(i, len(doc)) if not strange[j]), len(doc))
            if end - i <= LONGEST_DISH:
                yield doc[i:end].text


def _is_strange(word: str) -> bool:
    if len(word) < 3 or not word.isalpha() or word in spelling.known_words() or word in LEANING:
        return False
    return word not in topics.weights().features


def is_name_alone(doc: Doc) -> bool:
    """Whether nothing is said but a name that nobody has heard of, as a place is told: Springfield?"""
    words = [token for token in doc if token.text.isalpha()]
    named = all(_is_strange(token.norm_) and token.text[0].isupper() for token in words)
    return 0 < len(words) <= LONGEST_DISH and named and not doc.text.isupper() and not doc._.numbers


def places(doc: Doc) -> list[Unused]:
    """A place that is named but not known, or an elevation that is said not to be, where none is given beside it."""
    if any(elevation.role == "here" for elevation in doc._.elevations):
        return []
    name = next(_towns(doc), None)
    if name:
        return [Unused("elevation", name, say("unknown-place", name=name))]
    words = norms(doc)
    return [Unused("elevation", "", say("unknown-elevation"))] if said(words, NO_ELEVATION) else []


def _towns(doc: Doc) -> Iterator[str]:
    """Runs of unheard-of words where a place has its place: near Zorgville, in a town called zorgville."""
    kept = claimed(doc)
    strange = [i not in kept and _is_strange(word) for i, word in enumerate(norms(doc))]
    for i in range(1, len(doc)):
        if strange[i] and not strange[i - 1] and _is_place_named(doc, i):
            end = next((j for j in range(i + 1, len(doc)) if j in kept or not doc[j].text[0].isupper()), len(doc))
            if end == len(doc) or norms(doc)[end] not in THINGS:
                yield doc[i:end].text


def _is_place_named(doc: Doc, at: int) -> bool:
    before = norms(doc)[at - 1]
    if before in NAMED:
        return any(token.norm_ in SETTLEMENTS for token in doc[max(0, at - 1 - NAMED_REACH) : at - 1])
    if before in HEADS and at > 1 and doc[at].text[0].isupper():
        return True
    if before == "the" and at > 1:
        before = norms(doc)[at - 2]
    lives = said(norms(doc)[max(0, at - 3) : at], LIVING)
    return lives or (before in BEFORE_PLACE and doc[at].text[0].isupper() and not doc.text.isupper())
