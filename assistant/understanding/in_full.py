"""A question that leaves out the dish that is talked of, heard as if it had been named: how long to rest? the turkey."""

from __future__ import annotations

import re
from dataclasses import replace

from spacy.tokens import Doc

from assistant.understanding.complaints import complains
from assistant.understanding.request import TIMER, TROUBLE, WHY, Hearing
from assistant.understanding.utterance import Utterance, listen
from rules.catalogue import marked
from rules.foods.methods import methods
from rules.model import Kitchen, Request
from rules.topics.why import GENERAL

# what stands at the end of a question, behind which nothing more is put
END_MARKS = re.compile(r"[\s?!.,;:]+$")
LONGEST = 30
# what shows that an utterance is about the kitchen, though nobody can tell what it asks
KITCHEN_SIGNS = frozenset(
    ("kitchen_word", "method", "ingredient", "equipment", "temperature", "baking", "cooker", "time", "more", "changes",
     "enough", "how_long", "how_hot", "how_much", "remaining", "done", "degree")
)  # fmt: skip
BAKE = "bake_adjust"


def in_full(utterance: Utterance, hearing: Hearing, last: Request | None, kitchen: Kitchen) -> Hearing:
    """What an utterance asks with the dish of the question before in its place; as it is where it leaves none out."""
    if last is None or last.dish is None or not leaves_out(utterance.doc, hearing, last):
        return hearing
    heard = listen(f"{END_MARKS.sub('', utterance.text)} for {talked_of(hearing.request, last)}", kitchen).hearing
    if heard.request.topic in marked("of_nothing") or heard.request.topic in ("set_kitchen", TIMER):
        return hearing
    method = hearing.request.method or heard.request.method
    request = replace(
        heard.request, text=hearing.request.text, dish=last.dish, dish_class=last.dish_class, method=method
    )
    return replace(heard, request=request, elliptical=False, of_dish=True)


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
        return bool(now.forms) and not KITCHEN_SIGNS.isdisjoint(doc._.signs)
    match now.topic:
        case "why":
            return now.subject in (None, GENERAL) and not now.terms
        case "troubleshoot":
            return now.subject is None or complains(doc)
        case "bake_adjust":
            return True
    return now.topic in marked("of_a_dish") - {"preserve"} or now.topic in ("doneness", "pressure")
