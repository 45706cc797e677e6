"""Turns that lean on the question before in more than little words: no wait, we are at the mid station; the red ones.

What is said anew replaces one piece of that question, and nothing else of it changes.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from spacy.tokens import Doc

from assistant.reading.elevation_mentions import is_near
from assistant.reading.tokens import norms
from assistant.understanding import canning_turns, details, kinds, kitchen_told, topics, wanted
from assistant.understanding.complaints import TROUBLE, complains
from assistant.understanding.cue_words import cues, said
from assistant.understanding.place_roles import nowhere
from assistant.understanding.request import TIMER, Hearing, spoken_method
from assistant.understanding.unclaimed import LEANING
from rules.catalogue import marked
from rules.foods.dishes import dishes
from rules.model import Request
from rules.physics.units import M_PER_FT
from rules.topics.why import GENERAL

TURNS, WEAK_TURNS, BACK = (cues("turning", name) for name in ("turns", "weak", "back"))
RIGHTED, OTHER_ONE, FIRST_ONE = (cues("turning", name) for name in ("righted", "other_one", "first_one"))
AGAIN, SAID_AGAIN, CONVERTING = (cues("turning", name) for name in ("again", "said_again", "converting"))
WHO, WH = (frozenset(cues("turning", name)) for name in ("who", "wh"))
IFS = cues("turning", "ifs")
WHAT_OF, WHEREABOUTS = cues("turning", "what_of"), cues("turning", "whereabouts")
BAKE, LONGEST_PLACE, LONGEST_TURN = "bake_adjust", 9, 28
UNITS_OF_HEIGHT = frozenset(("feet", "ft", "metres", "meters", "m"))
WATERS = ("drinking_water",)
CHANGED, BASELINE, LOWEST = (cues("turning", name) for name in ("changed", "baseline", "lowest"))
THANKS_AHEAD = tuple(re.compile(pattern, re.IGNORECASE) for pattern in cues("turning", "thanks_ahead"))
WHY_BEHIND = re.compile(cues("turning", "why_behind")[0], re.IGNORECASE)
BOILING = "boiling_point"
CANNING, TIME, PRESSURE, WHICH = "preserve", "time", "pressure_cook", "which"
# subjects that are asked about beside how a dish is cooked
BESIDE = ("resting",)
OPEN_POT = cues("turning", "open_pot")
CLOSED, OPEN_WAYS = ("pressure_cook", "slow_cook", "sous_vide"), ("simmer", "boil", "stew", "braise", "poach")
OF_KITCHEN = cues("turning", "of_kitchen")
WHISTLES, OF_THEM = cues("turning", "whistles"), cues("turning", "of_them")
GAUGES = {"dial_gauge": cues("turning", "dial"), "weighted_gauge": cues("turning", "weighted")}
PRESSURE_ASKED = cues("turning", "pressure_asked")
LONGEST_ASIDE, LONGEST_TOLD, SHORTEST = 18, 12, 4
# slots by which an utterance changes one thing of the question before
CHANGES = (
    "dish", "method", "quantity", "count", "time_min", "temperature_c", "portions", "service_time", "gauge_pa",
    "covered", "soaked", "jars", "packing", "wanted_doneness",
)  # fmt: skip
PLACES = ("elevation_m", "pressure_pa", "from_elevation_m")
JUDGING_FORMS = frozenset(("is_ok", "enough", "safe", "harm", "done", "changes", "can_it", "how_to", "differ", "worth"))
ASKING_FORMS = frozenset(("how_long", "how_hot", "how_much", "why", "which", "wrong", "is_true", "remaining", "start"))


def taken_up(doc: Doc, hearing: Hearing, last: Request | None, earlier: Sequence[Request] = ()) -> Hearing:
    """What an utterance says where it goes on with the question before, though it says so in words of its own.

    earlier: the last question about each dish that was talked of, the latest last
    """
    if last is None or (last.topic in marked("ends_there") and last.topic != TIMER):
        return hearing
    words = norms(doc)
    of_jars = canning_turns.taken_up(words, hearing, last)
    if of_jars:
        return of_jars
    if asks_units_alone(doc, hearing, words, last):
        plain = replace(nowhere(hearing.request), equipment=(), topic=last.topic, subject=None)
        return _leaning(replace(hearing, request=plain, bare_elevation=None, unit_meant=None))
    yolk = wanted.other_yolk([word for word in words if word.isalpha()], last.dish, last.dish_class)
    if yolk and last.topic != TROUBLE and hearing.request.dish is None:
        other = replace(hearing.request, topic=last.topic, dish=yolk, dish_class=last.dish_class, subject=None)
        return _leaning(replace(hearing, request=other))
    if whistled(words, hearing.request, last):
        return _leaning(replace(hearing, request=replace(hearing.request, topic=last.topic, method=PRESSURE)))
    against = held_against(words, hearing.request, last, earlier)
    if against:
        return replace(hearing, elliptical=False, request=against)
    if (
        last.topic != TROUBLE
        and hearing.elliptical
        and hearing.unit_meant is None
        and begins_anew(doc, hearing.request, last)
    ):
        return replace(hearing, elliptical=False)
    placed = with_new_place(doc, hearing, last)
    bare = hearing.bare_elevation if placed.elevation_m == hearing.request.elevation_m else None
    if placed.dish not in (None, last.dish) and details.names(words, last, placed.dish or ""):
        # what a bird is filled with is no dish of its own
        placed = replace(placed, dish=None, dish_class=None, method=None)
    # what goes into jars is called by its whole name: beans are not the pickled ones
    same = None if last.topic == CANNING else kinds.of_the_talk(doc, placed, last, earlier)
    same = same or kinds.of_its_class(placed, last)
    if same:
        placed = replace(placed, dish=same, dish_class=dishes()[same].dish_class)
    open_pot = in_open_pot(words, placed, last)
    if open_pot:
        return _leaning(replace(hearing, request=replace(placed, method=open_pot), bare_elevation=bare))
    heard = replace(hearing, request=placed, bare_elevation=bare)
    if is_own_after_why(heard.request, last):
        return replace(heard, elliptical=False)
    if last.topic == TIMER:
        return heard
    asks_else = kitchen_told.asks(doc) and not said(words, PRESSURE_ASKED)
    gauge = None if asks_else else other_gauge(words, heard.request, last)
    if gauge:
        known = replace(heard.request, topic=last.topic, subject=gauge, temperature_c=None)
        return _leaning(replace(heard, request=known, subject_for=lambda topic: gauge))
    kind = kinds.other_kind(doc, heard.request, last)
    back = None if kind else gone_back(doc, heard.request, last, earlier)
    about = heard.request if heard.request.dish not in (None, last.dish) else last
    noted = details.heard(words, about) or details.heard(words, main_question(about, earlier))
    noted = (*noted, *kinds.taken_as(doc, kind)) if kind else noted
    request = replace(heard.request, unused=(*heard.request.unused, *noted))
    if kind:
        request = replace(request, dish=kind, dish_class=dishes()[kind].dish_class, subject=None)
    elif back:
        method = request.method or back.method
        request = replace(request, subject=None, dish=back.dish, dish_class=back.dish_class, method=method)
    if not (kind or back) and hearing.elliptical:
        return replace(heard, request=request)
    asked = not ASKING_FORMS.isdisjoint(request.forms)
    if last.subject in WATERS and noted:
        return _leaning(replace(heard, request=replace(request, temperature_c=None, subject=last.subject)))
    # why, of a thing of which nothing but a detail is told, is what is told of the detail
    asked = asked and not (noted and request.topic == "why" and request.subject in (None, GENERAL))
    if (kind or back or noted) and len(words) <= LONGEST_ASIDE and not asked:
        return _leaning(replace(heard, request=request), doc)
    if of_the_bake(heard, words, last) or is_turn(doc, words, replace(heard, request=request), last):
        return _leaning(replace(heard, request=request), doc)
    return replace(heard, request=request) if noted and asked else heard


def whistled(words: Sequence[str], now: Request, last: Request) -> bool:
    """Whether the dish that is talked of is asked about in whistles: how many whistles?"""
    return last.topic == TIME and last.dish is not None and now.dish is None and said(words, WHISTLES)


def held_against(words: Sequence[str], now: Request, last: Request, earlier: Sequence[Request]) -> Request | None:
    """The last two dishes that were talked of, held against each other: which of those is quicker?"""
    others = [question for question in earlier if question.dish != last.dish]
    asked = WHICH in now.forms and said(words, OF_THEM) and len(words) <= LONGEST_PLACE
    if not (asked and others and last.dish) or now.dish or now.methods_too or last.topic not in marked("in_form"):
        return None
    too = tuple(question.dish for question in others[-1:] if question.dish)
    held = replace(now, topic=TIME, dish=last.dish, dish_class=last.dish_class, dishes_too=too, subject=None)
    return replace(held, small_talk=None, choices=(), unused=(), method=None)


def other_gauge(words: Sequence[str], now: Request, last: Request) -> str | None:
    """The gauge that is put right behind a question of canning: no, weighted, not dial; mine has the dial."""
    if last.topic != CANNING or len(words) > LONGEST_ASIDE or now.dish not in (None, last.dish):
        return None
    denied = {i for at, word in enumerate(words) if word in ("not", "no") for i in (at + 1, at + 2)}
    named = [id for id, cue in GAUGES.items() for i, word in enumerate(words) if word in cue and i not in denied]
    return named[0] if len(set(named)) == 1 and (not now.forms or said(words, PRESSURE_ASKED)) else None


def begins_anew(doc: Doc, request: Request, last: Request) -> bool:
    """Whether little words and slots are a question of their own: my cake sank; how high is Leadville."""
    of_units = request.elevation_m is not None and not UNITS_OF_HEIGHT.isdisjoint(norms(doc))
    fault = request.topic == TROUBLE and request.subject is not None and complains(doc) and not of_units
    return (fault and kinds.other_kind(doc, request, last) is None) or kitchen_told.asks_height(doc)


def in_open_pot(words: Sequence[str], now: Request, last: Request) -> str | None:
    """The way a dish is cooked in an open pot, where that is set in the place of pressure, slow heat or a bath."""
    turns = said(words, OPEN_POT) and now.method is None and last.method in CLOSED and len(words) <= LONGEST_ASIDE
    dish = now.dish or last.dish
    if not turns or dish is None:
        return None
    own = next((way for way in dishes()[dish].methods if way in OPEN_WAYS), None)
    # a dish that no pot cooks has none; of the one talked of, the cook says that one does
    return own or (OPEN_WAYS[0] if dish == last.dish else None)


def is_own_after_why(now: Request, last: Request) -> bool:
    """Whether slots behind a why are a question of their own: and the oil for the fritters, 180?"""
    own = now.dish not in (None, last.dish) and now.method is not None
    return last.topic == "why" and own and now.topic in marked("by_method")


def main_question(last: Request, earlier: Sequence[Request]) -> Request:
    """The question of how a dish is cooked that one beside it goes back to: how hot inside? and under pressure?"""
    if last.topic not in marked("beside_the_main") and last.subject not in BESIDE:
        return last
    return next((q for q in reversed(earlier) if q.dish == last.dish and q.dish), last)


def _leaning(hearing: Hearing, doc: Doc | None = None) -> Hearing:
    request = hearing.request
    if doc is not None and request.method is None:
        request = replace(request, method=spoken_method(norms(doc), doc._.found))
    if request.topic in (TROUBLE, "why"):
        request = replace(request, subject=None, symptoms_too=())
    doubts = tuple(u for u in request.unused if u.kind != "explanation")
    request = replace(request, unused=doubts, choices=(), small_talk=None, asked_way=None)
    return replace(hearing, elliptical=True, request=request)


def with_new_place(doc: Doc, hearing: Hearing, last: Request) -> Request:
    """What is said, where a place that sounds like that of a baseline is the new one: and down in the valley, at 800?

    A time said beside it belongs to it: at home in the plains they take 10 minutes.
    """
    request = hearing.request
    here_m, there_m = request.elevation_m, request.from_elevation_m
    if here_m is not None and there_m is not None and is_near(here_m, there_m) and request.time_min is None:
        # a town and its figure are one place: and down in the valley town, it is 2,100
        return replace(request, from_elevation_m=None)
    twice = request.from_elevation_m is not None and last.elevation_m == request.elevation_m is not None
    if twice and last.from_elevation_m is None and not said(norms(doc), BASELINE):
        # of two elevations one of which was known, the other is what is put right
        return replace(request, elevation_m=request.from_elevation_m, elevation_from="stated", from_elevation_m=None)
    low = request.from_elevation_m == 0 and request.elevation_m and last.from_elevation_m is None
    if low and request.time_min is None and not said(norms(doc), LOWEST):
        # the valley hotel at 1,100 m is where the cook is, and no baseline by the sea
        return replace(request, from_elevation_m=None)
    beside = request.time_min is not None or request.elevation_m is not None
    leans = hearing.elliptical or request.topic in marked("slots_alone")
    if request.from_elevation_m is None or beside or not leans or last.from_elevation_m is not None:
        return request
    return replace(request, elevation_m=request.from_elevation_m, elevation_from="stated", from_elevation_m=None)


def gone_back(doc: Doc, now: Request, last: Request, earlier: Sequence[Request]) -> Request | None:
    """The question about a dish that is gone back to: no, back to the shanks; the other one."""
    words, others = norms(doc), [question for question in earlier if question.dish != last.dish]
    if not others or now.dish not in (None, last.dish) or now.topic == BOILING:
        return None
    if said(words, FIRST_ONE):
        return others[0]
    if said(words, OTHER_ONE):
        return others[-1]
    if now.dish or not said(words, BACK):
        return None
    ways = (f for f in doc._.found if f.kind in ("method", "equipment"))
    of_a_way = {word for f in ways for word in words[f.start : f.end]}
    named = set(words) - LEANING - of_a_way
    by_name = (q for q in reversed(others) if q.dish and named & set(q.dish.split()))
    method = now.method or spoken_method(words, doc._.found)
    by_method = (q for q in reversed(others) if method and q.method == method)
    return next(by_name, None) or next(by_method, None)


def is_turn(doc: Doc, words: Sequence[str], hearing: Hearing, last: Request) -> bool:
    """Whether one thing of the question before is changed, and nothing else asked."""
    request = hearing.request
    changes = any(getattr(request, slot) not in (None, ()) for slot in CHANGES)
    moves = any(getattr(request, slot) is not None for slot in PLACES)
    units = hearing.units is not None
    if not (changes or moves or units) or request.topic == TIMER or request.recipe or request.small_talk:
        return False
    if len(words) > LONGEST_TURN or not WHO.isdisjoint(words):
        return False
    strong, weak = said(words, TURNS), said(words[:3], WEAK_TURNS) or said(words, WHAT_OF)
    elsewhere = moves and is_elsewhere(words, request)
    if righted(doc, words, request, last):
        return True
    if (
        request.topic == TROUBLE
        and hearing.unit_meant is None
        and (complains(doc) or (request.subject and last.topic == TROUBLE))
    ):
        return False
    match request.topic:
        case "smalltalk":
            return strong or weak or changes or elsewhere
        case "out_of_scope" | "help":
            told = tells_only(doc, request) and len(words) <= LONGEST_TOLD
            of_place = moves and ASKING_FORMS.isdisjoint(request.forms)
            of_place = of_place and (len(words) <= LONGEST_TOLD or said(words[:2], (*TURNS, *WEAK_TURNS, *IFS)))
            only_units = units and not moves and not changes and len(words) <= LONGEST_PLACE
            return (
                strong or elsewhere or of_place or only_units or (changes and (weak or told or len(words) <= SHORTEST))
            )
        case "set_kitchen":
            only_units = units and not moves and not request.equipment and said(words, SAID_AGAIN)
            return only_units or moves_on(words, request, last) or (changes and strong and last.topic != "set_kitchen")
        case "convert_recipe":
            return last.topic != "convert_recipe" and not said(words, CONVERTING)
        case "why":
            again = said(words, AGAIN) and not kitchen_told.asks_outright(doc)
            unnamed = request.subject in (None, GENERAL) or again or _tells_an_amount(request)
            return "why" not in request.forms and not request.terms and unnamed
    if tells_only(doc, request) and request.topic not in marked("of_readings_told"):
        return strong or request.topic != last.topic
    again = said(words, AGAIN) and ASKING_FORMS.isdisjoint(request.forms) and request.topic != last.topic
    return again and (not kitchen_told.asks(doc) or said(words, CHANGED))


def _tells_an_amount(request: Request) -> bool:
    """Whether it is told how much there is, and asked whether that matters: only one cup of it, any difference?"""
    told = request.quantity is not None or request.count is not None or request.portions is not None
    return told and request.asked_way in ("any", "same") and request.belief is None


def tells_only(doc: Doc, request: Request) -> bool:
    """Whether slots are told and nothing asked by any form: it is beans that I have to make, soaked."""
    asked = not (ASKING_FORMS | JUDGING_FORMS).isdisjoint(request.forms) or topics.cue_scores(doc)
    return not asked and not kitchen_told.asks_outright(doc)


def moves_on(words: Sequence[str], request: Request, last: Request) -> bool:
    """Whether the cook goes elsewhere with what is talked of: tomorrow camp is at 4,200; not who tells of a kitchen."""
    moved = request.elevation_m is not None or request.pressure_pa is not None
    of_kitchen = said(words, OF_KITCHEN) or request.equipment
    return moved and not of_kitchen and last.topic not in {"set_kitchen"} | marked("of_readings_told")


def opens_on(words: Sequence[str]) -> bool:
    """Whether an utterance opens as one that goes on: what if they are for a house."""
    return said(words[:3], IFS)


def asks_units_alone(doc: Doc, hearing: Hearing, words: Sequence[str], last: Request) -> bool:
    """Whether the answer is asked for in other units, whatever is told beside: in Celsius, the probe has no other.

    The elevation that is known may be named with it: what is 1,900 in feet?
    """
    named = any(f.kind in ("dish", "method", "place", "ingredient", "symptom") for f in doc._.found)
    known = () if last.elevation_m is None else (last.elevation_m, last.elevation_m / M_PER_FT)
    others = [n for n in doc._.numbers if not any(abs(n.value - figure) < 1 for figure in known)]
    measured = any(m.kind != "length" for m in doc._.measures)
    return hearing.units is not None and not (named or others or measured) and len(words) <= LONGEST_TOLD


def is_only_units(hearing: Hearing) -> bool:
    """Whether an utterance asks for the same in other units, and no more."""
    slots = (*CHANGES, *PLACES, "subject", "equipment")
    nothing = all(getattr(hearing.request, slot) in (None, ()) for slot in slots)
    return hearing.elliptical and hearing.units is not None and nothing


def is_elsewhere(words: Sequence[str], request: Request) -> bool:
    """Whether an utterance is about another place and no more: at the lower camp, 2,300; down at the beach house."""
    asks = not WH.isdisjoint(words) and not said(words, WHAT_OF)
    told = not request.place or said(words[:2], WHEREABOUTS) or said(words, WHAT_OF)
    return (
        told
        and not asks
        and "from" not in words
        and len(words) <= LONGEST_PLACE
        and ASKING_FORMS.isdisjoint(request.forms)
    )


def of_the_bake(hearing: Hearing, words: Sequence[str], last: Request) -> bool:
    """Whether another part of the bake that is talked of is named, and no more: and the oven?"""
    short = len(words) <= SHORTEST + 1 and ASKING_FORMS.isdisjoint(hearing.request.forms)
    unheard = hearing.request.topic in marked("of_nothing") and not hearing.request.small_talk
    return last.topic == BAKE and short and unheard and hearing.subject_for(BAKE) is not None


def righted(doc: Doc, words: Sequence[str], request: Request, last: Request) -> bool:
    """Whether something is put right, and nothing asked: no mate, that was the dough; sorry, I meant the Pyrenees."""
    opens = said(words[:2], RIGHTED)
    of_units = request.elevation_m is not None and not UNITS_OF_HEIGHT.isdisjoint(words)
    fault = request.topic == TROUBLE and (request.subject or complains(doc)) and not of_units
    asks = kitchen_told.asks(doc) or not ASKING_FORMS.isdisjoint(request.forms)
    # many say is for it is: sorry not potato, is beans that I make
    other_dish = request.dish not in (None, last.dish) and set(request.forms) <= {"is_ok"} and "?" not in words
    return opens and not fault and (other_dish or not asks)


def without_thanks(text: str) -> str:
    """An utterance without the thanks at its head.

    >>> without_thanks("thanks, and dried?"), without_thanks("thanks")
    ('and dried?', 'thanks')
    """
    left = text
    for pattern in THANKS_AHEAD:
        left = pattern.sub("", left).strip() or left
    return left


def without_why(text: str) -> str:
    """An utterance without the why at its end, which the answer to the rest gives.

    >>> without_why("in Fahrenheit, and tell me why"), without_why("why")
    ('in Fahrenheit', 'why')
    """
    cut = WHY_BEHIND.sub("", text).strip()
    return cut if cut and any(sign.isalnum() for sign in cut) else text
