"""The dishes of a menu, each with what is said of it: three rib roasts of 12 lb, oven 250, soaked beans, plain rice."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any

from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.tokens import norms
from assistant.understanding import corrected, serving, temperatures, time_roles
from assistant.understanding.amounts import NOT_ON_A_MENU
from assistant.understanding.claims import claimed
from assistant.understanding.cue_words import cues, said
from assistant.understanding.unclaimed import HINT_WORDS, LEANING
from assistant.understanding.utterance import Utterance, listen
from rules.amounts.eaters import is_of_meat
from rules.amounts.portion import grams
from rules.foods.dishes import dishes
from rules.model import Kitchen, Request
from rules.physics.units import to_c

CUTS, ENDS = frozenset(cues("menu_turns", "cuts")), frozenset(cues("menu_turns", "ends"))
PRECOOKED, STUFFED = cues("menu_turns", "precooked"), cues("menu_turns", "stuffed")
SIZES = ((0.5, cues("menu_turns", "half")), (2.0, cues("menu_turns", "double")))
# what stands between the items of a list, how long the name of one is, and words that name none
LIST_CUTS, LONGEST_NAME = frozenset((",", "and", "&", "+", "plus", ";")), 3
EVERYDAY = LEANING | HINT_WORDS | frozenset(cues("menu_turns", "no_dish"))
KIND_NAMES, JOINT_NAMES = (frozenset(cues("menu_turns", name)) for name in ("kind_names", "joint_names"))
MEATLESS = frozenset(cues("menu_turns", "meatless"))
# temperatures that something is set to, and not those of the food
SET = ("oven", "smoker", "bath", "set")
# what is said of one dish and of no other
OF_A_DISH = (
    "method", "time_min", "time_high_min", "from_elevation_m", "quantity", "quantity_of", "count", "soaked", "frozen",
    "covered", "gauge_pa", "wanted_doneness", "ahead", "rest_min",
)  # fmt: skip
# classes of what is cooked in one pot, and of what is put raw into it
POTS, GO_INTO_POTS = (
    ("soup", "mixed_stew"),
    ("poultry_pieces", "whole_bird", "starchy_root", "root_vegetable", "collagen_cut"),
)
GO_IN = cues("menu_turns", "go_in")
STATES = ("temperature_c", "slack_min", "precooked", "stuffed", "size")


@dataclass(frozen=True, slots=True)
class Mention:
    """A dish by the words it is named with. text: what is said of it; start: where it stands"""

    id: str
    spoken: str
    text: str


def mentions(doc: Doc) -> tuple[Mention, ...]:
    """The dishes that are named, each with the words of its own part of the utterance."""
    found = _own_kinds(doc, [f for f in corrected.meant(norms(doc), doc._.found) if is_food(doc, f)])
    return tuple(
        Mention(f.id, doc[f.start : f.end].text, doc[start:end].text)
        for f, (start, end) in zip(found, _pieces(doc, found), strict=True)
    )


def _own_kinds(doc: Doc, found: Sequence[Found]) -> list[Found]:
    """What was found without the name of a kind that stands beside one of that kind: rice, where basmati is named."""
    return [f for f in found if not any(_is_kind_of(doc, f, other) for other in found)]


def _is_kind_of(doc: Doc, general: Found, other: Found) -> bool:
    """Whether a name is that of the kind another dish is one of."""
    spoken = " ".join(norms(doc)[general.start : general.end])
    if other.id == general.id or " ".join(norms(doc)[other.start : other.end]) in (KIND_NAMES | JOINT_NAMES):
        return False
    if spoken in JOINT_NAMES:
        return is_of_meat(Request(dish=other.id, dish_class=dishes()[other.id].dish_class))
    return spoken in KIND_NAMES and dishes()[other.id].dish_class == dishes()[general.id].dish_class


def is_food(doc: Doc, found: Found) -> bool:
    """Whether what was found is a dish of a menu: no water, and no guests who eat vegetables."""
    if found.kind != "dish" or found.id not in dishes() or dishes()[found.id].dish_class in NOT_ON_A_MENU:
        return False
    eaters = MEATLESS.intersection(norms(doc)[found.start : found.end])
    before = norms(doc)[max(0, found.start - 2) : found.start]
    return not (eaters and (before[-2:] == ["of", "them"] or any(word.isdigit() for word in before)))


def unheard(doc: Doc) -> Iterator[Request]:
    """What stands in the list of the dishes and nobody has heard of, under the name that it was given."""
    found = [f for f in doc._.found if is_food(doc, f)]
    if len(found) < 2:
        return
    words = norms(doc)
    stop = next((i for i in range(found[0].end, len(doc)) if words[i] in ENDS), len(doc))
    listed = [f for f in found if f.start < stop]
    claimed_by = claimed(doc)
    cuts = [i for i in range(listed[0].end, stop) if words[i] in LIST_CUTS] + [stop]
    for start, end in pairwise(cuts):
        own = [i for i in range(start + 1, end) if words[i] not in CUTS]
        plain = all(words[i].isalpha() and i not in claimed_by for i in own)
        if own and plain and len(own) <= LONGEST_NAME and EVERYDAY.isdisjoint(words[i] for i in own):
            name = doc[own[0] : own[-1] + 1].text
            yield Request(topic="schedule", text=name, timer_name=name)


def _pieces(doc: Doc, found: Sequence[Found]) -> Iterator[tuple[int, int]]:
    """Where the part of each dish begins and ends."""
    taken = {i for spans in (doc._.measures, doc._.numbers) for m in spans for i in range(m.start, m.end)}
    cuts = [0, *(_cut(doc, one.end, other.start, taken) for one, other in pairwise(found))]
    for at, one in enumerate(found):
        start = max(cuts[at], _after_end(doc, cuts[at], one.start))
        stop = cuts[at + 1] if at + 1 < len(cuts) else len(doc)
        yield start, stop


def _cut(doc: Doc, start: int, end: int, taken: set[int]) -> int:
    """Where between two dishes the part of the second begins: at the end of a sentence, else at a word that joins."""
    words = norms(doc)
    ends = [i + 1 for i in range(start, end) if words[i] in ENDS and i not in taken]
    joins = [i + 1 for i in range(start, end) if words[i] in CUTS and i not in taken]
    return ends[0] if ends else joins[-1] if joins else end


def _after_end(doc: Doc, start: int, end: int) -> int:
    """Behind the last end of a sentence before a dish."""
    return max((i + 1 for i in range(start, end) if norms(doc)[i] in ENDS), default=start)


def told(mention: Mention, kitchen: Kitchen, units: str) -> Request:
    """The question of a dish by what is said of it."""
    return of_dish(
        listen(mention.text, replace(kitchen, units="metric" if units == "metric" else kitchen.units)), mention
    )


def of_dish(utterance: Utterance, mention: Mention) -> Request:
    """The question of a dish that an utterance is about."""
    request = utterance.hearing.request
    named = request.dish if request.dish and request.dish.endswith(mention.id) else mention.id
    one = dishes()[named]
    base = Request(topic="schedule", text=mention.spoken, dish=named, dish_class=one.dish_class)
    return replace(base, **state(request, utterance.doc, base))


def state(request: Request, doc: Doc, of: Request) -> dict[str, Any]:
    """What an utterance says of a dish, and nothing else: how it is cooked, how long, how big, in what state."""
    words = norms(doc)
    held: dict[str, Any] = {slot: getattr(request, slot) for slot in OF_A_DISH}
    if held["time_min"] is None and request.planned_min is not None:
        held["time_min"] = request.planned_min
    if (
        of.dish
        and held["method"] not in (None, *dishes()[of.dish].methods)
        and (request.ahead or held["method"] == "hold")
    ):
        # it is boiled before it is roasted, or held when it is done
        held["method"] = None
    held["temperature_c"] = next((to_c(s.temp_f) for s in temperatures.said(doc) if s.role in SET), None)
    slack = serving.length(doc, serving.SLACK)
    rest = serving.length(doc, serving.REST)
    held["slack_min"], held["rest_min"] = slack.low if slack else None, rest.low if rest else None
    if held["time_min"] is not None and held["time_min"] in (held["slack_min"], held["rest_min"]):
        held["time_min"] = held["time_high_min"] = None
    per_g, food_g = time_roles.rated_by(doc), grams(request.quantity) or grams(of.quantity)
    if per_g and not grams(request.quantity):
        # so many minutes a pound, of the pounds that were said before; without them nobody knows how long
        low, high = request.time_min, request.time_high_min
        held["time_min"] = low * food_g / per_g if low and food_g else None
        held["time_high_min"] = high * food_g / per_g if high and food_g else None
    held["precooked"] = said(words, PRECOOKED)
    held["stuffed"] = said(words, STUFFED)
    held["size"] = next((size for size, phrases in SIZES if said(words, phrases)), None)
    if held["precooked"]:
        held["ahead"] = False
    return {
        slot: value
        for slot, value in held.items()
        if value not in (None, False, ()) or (slot == "soaked" and value is not None)
    }


def menu_of(doc: Doc, kitchen: Kitchen, units: str) -> tuple[Request, ...]:
    """The dishes of a menu, in order; what is said of one later on is laid over what was said of it first.

    >>> from assistant.understanding.pipeline import read
    >>> [one.dish for one in menu_of(read("For 7 pm: lamb shanks, plain rice. Shanks in the oven"), Kitchen(), "us")]
    ['lamb shanks', 'white rice']
    """
    every: list[Request] = []
    for mention in mentions(doc):
        at = known_at(mention, every)
        new = told(mention, kitchen, units)
        if at is None:
            every.append(new)
        else:
            every[at] = laid_over(every[at], new)
    return (*cooked_in_the_pot(doc, every), *unheard(doc))


def cooked_in_the_pot(doc: Doc, every: Sequence[Request]) -> Iterator[Request]:
    """The dishes of a menu; what goes into its soup or stew is simmered in that, where nothing else is said of it."""
    pot = next((one for one in every if one.dish_class in POTS), None)
    inside = pot is not None and said(norms(doc), GO_IN)
    for one in every:
        goes_in = inside and one is not pot and one.method is None and one.dish_class in GO_INTO_POTS
        yield replace(one, method="simmer") if goes_in else one


def laid_over(one: Request, new: Request) -> Request:
    """A dish with what is said of it anew; what it is stays."""
    slots = (*OF_A_DISH, *STATES)
    changed: dict[str, Any] = {
        slot: getattr(new, slot) for slot in slots if getattr(new, slot) not in (None, False, ())
    }
    return replace(one, **changed)


def known_at(mention: Mention, every: Sequence[Request]) -> int | None:
    """Which of the dishes a mention names again: the oxtail, of an oxtail stew; the potatoes, of mashed ones."""
    same = [i for i, one in enumerate(every) if one.dish == mention.id]
    spoken = stems(mention.spoken)
    close = [i for i, one in enumerate(every) if spoken <= stems(f"{one.dish or ''} {one.text}")]
    return next(iter((*same, *close)), None)


def named_at(doc: Doc, every: Sequence[Request]) -> tuple[int, ...]:
    """Which of the dishes an utterance names, by dish or by the last word of one: the roasts, the beans."""
    found = [known_at(mention, every) for mention in mentions(doc)]
    words = stems(" ".join(norms(doc)))
    by_word = [i for i, one in enumerate(every) if words & _heads(one)]
    return tuple(dict.fromkeys(i for i in (*found, *by_word) if i is not None))


def _heads(one: Request) -> set[str]:
    heads = [text.split()[-1] for text in (one.dish, one.text) if text]
    return stems(" ".join(heads))


def stems(text: str) -> set[str]:
    """The words of a text without the ending of the plural.

    >>> sorted(stems("Mashed potatoes and ribs"))
    ['and', 'mashed', 'potato', 'rib']
    """
    return {_stem(word) for word in text.lower().replace("-", " ").split()}


def _stem(word: str) -> str:
    word = word.strip(".,;:?!()")
    if word.endswith("oes"):
        return word[:-2]
    return word[:-1] if word.endswith("s") and not word.endswith("ss") and len(word) > 3 else word
