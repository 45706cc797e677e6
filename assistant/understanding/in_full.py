"""A question that leaves out the dish that is talked of, heard as if it were named: how long to rest? the turkey."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding.complaints import complains
from assistant.understanding.cue_words import cues, said
from assistant.understanding.leaning import ASKING_FORMS, CHANGES, PLACES
from assistant.understanding.request import TIMER, WHY, Hearing
from assistant.understanding.unclaimed import LEANING
from assistant.understanding.utterance import Utterance, listen
from rules import tables
from rules.baking.styles import is_baked
from rules.catalogue import marked
from rules.foods.methods import methods
from rules.model import PLACE_SLOTS, Kitchen, Request
from rules.topics.why import GENERAL

# what stands at the end of a question, behind which nothing more is put
END_MARKS = re.compile(r"[\s?!.,;:]+$")
LONGEST, LONGEST_THING, LONGEST_ASPECT, FEW = 30, 12, 5, 3
# forms in which a thing alone may be put
SUPPOSING = frozenset(("what_is", "what_if", "can_it"))
# in which a thing alone is heard
MATTERS, HELPS = "does {} make a difference{}", ("does a {} help{}", "does a {} help", "does {} help")
# what shows that an utterance is about the kitchen, though nobody can tell what it asks
KITCHEN_SIGNS = frozenset(
    ("kitchen_word", "method", "ingredient", "equipment", "temperature", "baking", "cooker", "time", "more", "changes",
     "enough", "how_long", "how_hot", "how_much", "remaining", "done", "degree")
)  # fmt: skip
# words for the dish that is talked of
PRONOUNS = frozenset(("it", "them", "they", "those", "these"))
PUT_IN = cues("turning", "put_in")
JOINING = frozenset(cues("turning", "joining"))
BAKE = "bake_adjust"


def in_full(utterance: Utterance, hearing: Hearing, last: Request | None, kitchen: Kitchen) -> Hearing:
    """What an utterance asks with the dish of the question before in its place; as it is where it leaves none out."""
    if last is None:
        return hearing
    aspect = aspect_of(utterance.doc) if last.dish else None
    if aspect:
        return said_in_full(aspect, hearing, last, kitchen) or hearing
    if last.dish and is_put_in(utterance.doc, hearing, last):
        return helped(utterance, hearing, last, kitchen) or hearing
    of_the_bake = last.topic == BAKE and hearing.subject_for(BAKE)
    if not of_the_bake and is_thing_alone(utterance.doc, hearing):
        return helped(utterance, hearing, last, kitchen) or replace(hearing, elliptical=False)
    if last.dish is None or not leaves_out(utterance.doc, hearing, last):
        return hearing
    return said_in_full(END_MARKS.sub("", utterance.text), hearing, last, kitchen) or hearing


def aspect_of(doc: Doc) -> str | None:
    """The question in full that a word or two ask of the dish: rest?"""
    words = [word for word in norms(doc) if any(sign.isalnum() for sign in word)]
    own = " ".join(word for word in words if word not in LEANING or word in ("how", "done", "more"))
    return _aspects().get(own) if len(words) <= LONGEST_ASPECT and own else None


@cache
def _aspects() -> dict[str, str]:
    rows = tables.read_toml("lexicon/aspects.toml")["aspect"]
    return {words: row["asks"] for row in rows for words in row["heard_as"]}


def said_in_full(text: str, hearing: Hearing, last: Request, kitchen: Kitchen) -> Hearing | None:
    """What a question asks of the dish that is talked of; None where it asks nothing of one."""
    heard = listen(f"{text} for {talked_of(hearing.request, last)}", kitchen).hearing
    if heard.request.topic in marked("of_nothing") or heard.request.topic in ("set_kitchen", TIMER):
        return None
    method = hearing.request.method or heard.request.method
    moved = hearing.request.elevation_m is not None and heard.request.elevation_m is None
    where = {slot: getattr(hearing.request, slot) for slot in PLACE_SLOTS} if moved else {}
    request = replace(
        replace(heard.request, **where),
        text=hearing.request.text,
        dish=last.dish,
        dish_class=last.dish_class,
        method=method,
        choices=(),
    )
    return replace(heard, request=request, elliptical=False, of_dish=True)


def is_put_in(doc: Doc, hearing: Hearing, last: Request) -> bool:
    """Whether what is named goes into the dish that is talked of: I put a can of tomatoes in at the start."""
    now, words = hearing.request, norms(doc)
    named = now.dish not in (None, last.dish) or any(f.kind == "ingredient" for f in doc._.found)
    return named and said(words, PUT_IN) and ASKING_FORMS.isdisjoint(now.forms) and not now.recipe


def is_thing_alone(doc: Doc, hearing: Hearing) -> bool:
    """Whether a thing of the kitchen is named and nothing asked of it: and a lid? a bigger flame then."""
    now = hearing.request
    counts = hearing.plain is not None and len(_thing(doc).split()) <= FEW
    told = hearing.unit_meant or any(unused.kind in ("detail", "elevation") for unused in now.unused)
    if counts or hearing.units is not None or hearing.depth is not None or told:
        return False
    nothing = now.topic in marked("of_nothing") or (now.topic == "calibrate" and now.temperature_c is None)
    if not nothing or now.dish or now.small_talk or now.recipe or len(doc) > LONGEST_THING:
        return False
    slots = (*CHANGES, *PLACES, "subject", "equipment")
    changed = any(getattr(now, slot) not in (None, ()) for slot in slots)
    return not changed and not doc._.measures and SUPPOSING.issuperset(now.forms) and bool(_thing(doc))


def _thing(doc: Doc) -> str:
    """The words of an utterance from the first that says something, as long as it tells of the kitchen at all."""
    words = [token.text for token in doc if any(sign.isalnum() for sign in token.text)]
    first = next((i for i, word in enumerate(words) if word.casefold() not in LEANING), len(words))
    return " ".join(words[first:])


def helped(utterance: Utterance, hearing: Hearing, last: Request, kitchen: Kitchen) -> Hearing | None:
    """What tells whether a thing helps with what is talked of: a change of the bake, or a reason; None without one."""
    slots = {"text": hearing.request.text, "dish": last.dish, "dish_class": last.dish_class}
    part = hearing.subject_for(BAKE) if is_baked(last.dish_class) else None
    if part:
        return replace(hearing.about(BAKE, subject=part, **slots), elliptical=False, of_dish=True)
    behind = f" for {last.dish}" if last.dish else ""
    ingredient = any(f.kind == "ingredient" for f in utterance.doc._.found)
    carriers = (MATTERS, *HELPS) if ingredient else HELPS
    without = listen(MATTERS.format("it", behind), kitchen).hearing.subject_for(WHY)
    supposed = listen(f"what if {END_MARKS.sub('', without_lead(utterance.doc))}", kitchen).hearing
    thing = hearing.request.dish if is_put_in(utterance.doc, hearing, last) and hearing.request.dish else None
    for carrier in (MATTERS, *HELPS) if thing else carriers:
        whole = listen(carrier.format(thing or _thing(utterance.doc), behind), kitchen).hearing
        told = whole.subject_for(WHY)
        if told not in (None, GENERAL, without):
            return replace(whole.about(WHY, subject=told, **slots), elliptical=False, of_dish=True)
    told = supposed.subject_for(WHY)
    if told in (None, GENERAL, without):
        return None
    return replace(supposed.about(WHY, subject=told, **slots), elliptical=False, of_dish=True)


def without_lead(doc: Doc) -> str:
    """The words behind those by which an utterance joins on: but if I turn it up."""
    at = next((token.i for token in doc if token.norm_ not in JOINING and token.text.isalpha()), 0)
    return doc[at:].text


def talked_of(now: Request, last: Request) -> str:
    """The dish of the question before, with what is done to it where the utterance names no other way.

    >>> talked_of(Request(), Request(dish="short ribs", method="braise"))
    'braising short ribs'
    """
    method = methods()[last.method] if last.method and now.method is None else None
    if method is None or not method.gerund:
        return str(last.dish)
    phrase = method.gerund if "*" in method.gerund else f"{method.gerund} *"
    return phrase.replace("*", str(last.dish))


def leaves_out(doc: Doc, hearing: Hearing, last: Request) -> bool:
    """Whether an utterance is a question of its own that wants a dish, and names none."""
    now = hearing.request
    if now.elevation_from == "boil_test" or (now.topic == WHY and now.nearest):
        return False
    if hearing.elliptical or now.dish or now.dish_class or now.recipe or now.small_talk or len(doc) > LONGEST:
        return False
    if now.topic in marked("of_nothing"):
        about_it = not KITCHEN_SIGNS.isdisjoint(doc._.signs) or not PRONOUNS.isdisjoint(norms(doc))
        return bool(now.forms) and about_it
    match now.topic:
        case "why":
            return now.subject in (None, GENERAL) and not now.terms
        case "troubleshoot":
            return now.subject is None or complains(doc)
        case "bake_adjust":
            return True
    return now.topic in (marked("of_a_dish") | marked("beside_the_main")) - {"preserve"}
