"""An ingredient and the dish it is for: flour for 40 loaves, 50 lb of cornmeal makes how many trays of cornbread."""

from __future__ import annotations

from typing import Any

from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.tokens import norms
from assistant.understanding.amounts import MOST_PIECES
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import CUES, cues
from rules import tables
from rules.amounts import packs
from rules.amounts.makings import share_of
from rules.amounts.portion import EACH
from rules.foods.dishes import dishes
from rules.model import Request
from rules.recipes.phrases import stems

LINKS, PANS = cues("made_of", "links"), cues("made_of", "pans")
MAKING = frozenset(cues("made_of", "making"))
ORDER, PAN, CAN, CANNED, HOW_MANY = "order", "pan", "can", "canned", "many"
# fewer of them at an elevation are a recipe that is adjusted, and no order
FEWEST = 3
# words between a number and the dish that it counts: 10 full trays of
NEAR = 4
# forms in which a change of the recipe is asked, and nothing is bought
OF_A_CHANGE = frozenset(("more", "changes", "wrong", "why", "how_to"))


def slots(doc: Doc, request: Request) -> dict[str, Any]:
    """The slots of a question about an ingredient of a dish; empty where it is none."""
    tinned = canned(request.dish) if CAN in request.counted_in else ""
    alone = {"dish": tinned, "dish_class": dishes()[tinned].dish_class} if tinned in dishes() else {}
    found = pair(doc) or pair_before(doc)
    if found is None or not OF_A_CHANGE.isdisjoint(request.forms):
        return alone
    item, dish, start = found
    count, in_pans = counted(doc, start, item.end)
    dish_class = dishes()[dish].dish_class
    mass = next((m for m in doc._.measures if m.kind in ("mass", "volume")), None)
    asks_what_it_makes = HOW_MANY in norms(doc)[max(0, start - NEAR) : start] or not MAKING.isdisjoint(norms(doc))
    own = asks_what_it_makes and mass is not None and item.start - NEAR < mass.end <= item.start
    count = None if count and count < FEWEST and doc._.elevations else count
    if count is None and not own and not request.portions:
        return alone
    by_piece = in_pans or packs.piece(dish, dish_class) is not None
    vessels = (PAN,) if in_pans or (own and any(word in PANS for word in norms(doc))) else ()
    return {
        "topic": ORDER,
        "subject": None,
        "dish": dish,
        "dish_class": dish_class,
        "ingredient": item.id,
        "count": count if count and by_piece else None,
        "portions": (None if by_piece or own else count) if count else request.portions,
        "quantity_of": None if own or mass is None else EACH,
        "counted_in": tuple(dict.fromkeys((*request.counted_in, *vessels))),
        "dishes": (),
        "choices": (),
        "unused": tuple(u for u in request.unused if u.kind != "dish"),
    }


def pair(doc: Doc) -> tuple[Found, str, int] | None:
    """An ingredient, the dish it goes into, and where that stands; None where they are not told so."""
    words = norms(doc)
    things = [f for f in doc._.found if f.kind in ("ingredient", "dish")]
    if not things:
        return None
    item = things[0]
    pieces = tables.read_toml(CUES)["made_of"]["dish_of_pieces"]
    named = [(f.start, f.id) for f in things[1:] if f.kind == "dish" and f.start >= item.end]
    named += [(at, pieces[word]) for at, word in enumerate(words) if word in pieces and at >= item.end]
    for start, dish in sorted(named):
        whole = dish_with(item.id, dish)
        if whole and any(word in LINKS for word in words[item.end : start]):
            return item, whole, start
    return None


def pair_before(doc: Doc) -> tuple[Found, str, int] | None:
    """A dish and behind it an amount of what goes into it: how many biscuits from 25 lb of flour."""
    things = [f for f in doc._.found if f.kind in ("ingredient", "dish")]
    if len(things) < 2 or things[0].kind != "dish" or HOW_MANY not in norms(doc)[: things[0].start]:
        return None
    dish, item = things[0], things[1]
    weighed = any(m.kind in ("mass", "volume") and dish.end <= m.start < item.start for m in doc._.measures)
    whole = dish_with(item.id, dish.id) if weighed else None
    return (item, whole, dish.start) if whole else None


def canned(dish: str | None) -> str:
    """What a dish is called where it comes in cans."""
    return f"{CANNED} {dish}"


def dish_with(item: str, dish: str) -> str | None:
    """The dish that has the ingredient: itself, or the one that is named by both: tomatoes for soup are tomato soup."""
    both = " ".join((*(stems(item)[-1:]), dish))
    names = (dish, both) if both in dishes() else (dish,)
    return next((name for name in names if share_of(item, name, dishes()[name].dish_class) is not None), None)


def counted(doc: Doc, start: int, after: int) -> tuple[int | None, bool]:
    """How many of the dish, and whether that is pans: the last plain number before it."""
    taken = {i for m in doc._.measures if m.kind != "portion" for i in range(m.start, m.end)}
    numbers = [n for n in plain_numbers(doc) if after <= n.start < start and n.start not in taken]
    words = norms(doc)
    if not numbers:
        return None, False
    last = numbers[-1]
    whole = last.value == int(last.value) and 1 <= last.value <= MOST_PIECES
    if not whole or start - last.end > NEAR:
        return None, False
    return int(last.value), any(word in PANS for word in words[last.end : start])
