"""A figure of the cook's own for boiled sugar: the syrup, 116; 238 on the card; 72 Brix for fruit paste."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.reading.units import to_si
from assistant.understanding import sugar_taken
from assistant.understanding.cue_words import cues, said
from assistant.understanding.request import WHY, Hearing
from assistant.understanding.sugar_taken import LOWEST_F, SPAN_C, SUGAR, TALK
from rules.catalogue import marked
from rules.foods.dishes import Dish, dishes
from rules.foods.sugar import cooked_to
from rules.model import Request
from rules.physics import water
from rules.safety import kind_of

BRIX = cues("sugar_figures", "brix")
SUGARWORK, TIME = "sugarwork", "time"
PAST, SWEET = "past", "candy"
BRIX_SPAN, LONGEST = (50.0, 88.0), 40
BAKE = "bake_adjust"


def taken(doc: Doc, hearing: Hearing, last: Request | None) -> Hearing:
    """What is said, with a figure of boiled sugar as the temperature of the recipe, and sea level as its baseline."""
    hearing = back_to_the_meat(doc, sugar_taken.judged(doc, hearing), last)
    now, words = hearing.request, norms(doc)
    if now.taken_c is not None:
        return hearing
    if is_another(words, hearing, last):
        return replace(hearing.about(TIME, choices=()), elliptical=False)
    brix_c = _brix_c(doc, words)
    if not (brix_c or is_of_sugar(words, now, last)) or now.recipe or len(words) > LONGEST or of_meat(doc):
        return hearing
    if doc._.topic.id == WHY and doc._.subject and "or" in words:
        # a reason is asked for, and known: brix or thermometer
        return hearing
    own_c = now.temperature_c if now.temperature_c and SPAN_C[0] <= now.temperature_c <= SPAN_C[1] else None
    told_c = own_c or brix_c or now.temperature_c or _bare_c(doc)
    if told_c is None or not SPAN_C[0] <= told_c <= SPAN_C[1]:
        return hearing
    request = replace(now, topic=SUGAR, temperature_c=told_c, choices=(), small_talk=None, forms=_asked(now))
    by_the_sea = now.elevation_m == 0 and now.elevation_from == "stated" and not now.place
    if by_the_sea and last and last.elevation_m is not None:
        # what stands beside the figure is where it was written
        request = replace(request, elevation_m=None, elevation_from=None, from_elevation_m=0.0, elevations_m=())
    if len(each := sugar_taken.each_c(doc)) > 1:
        request = replace(request, temperatures_c=each)
    goes_on = hearing.elliptical and last is not None and last.topic == SUGAR
    subject = request.subject if now.topic == SUGAR else hearing.subject_for(SUGAR)
    return replace(hearing, request=replace(request, subject=subject), elliptical=goes_on)


def is_another(words: Sequence[str], hearing: Hearing, last: Request | None) -> bool:
    """Whether a dish that is cooked in another way is asked about behind sugar, and no topic of its own is heard."""
    now = hearing.request
    cooked = now.dish is not None and now.method not in (None, SUGARWORK) and not said(words, TALK)
    unclear = hearing.elliptical or now.topic == SUGAR or SUGAR in now.choices
    return bool(last and last.topic == SUGAR and cooked and unclear)


def is_of_sugar(words: Sequence[str], now: Request, last: Request | None) -> bool:
    """Whether boiled sugar is talked of, in the utterance or before it."""
    if PAST in now.forms and now.subject is None and cooked_to_a_figure(now):
        # how far it went too far is asked, and no fault is told with it
        return True
    if now.recipe or not _may_be_sugar(now.topic) or now.time_min or now.method in ("bake", "roast", "fry", "deep_fry"):
        return False
    own = now.topic == SUGAR or said(words, TALK) or cooked_to(now.dish) is not None
    if now.dish and not own:
        return False
    goes_on = last is not None and last.topic == SUGAR and (last.dish is None or cooked_to(last.dish) is not None)
    return own or goes_on


def of_meat(doc: Doc) -> bool:
    """Whether a food is named whose centre must reach a temperature to be safe: a figure beside it is of that."""
    return next(meats(doc), None) is not None


def meats(doc: Doc) -> Iterator[Dish]:
    """The foods that are named whose centre must reach a temperature to be safe."""
    named = (dishes()[found.id] for found in doc._.found if found.kind == "dish" and found.id in dishes())
    return (dish for dish in named if kind_of(dish.name, dish.dish_class))


def back_to_the_meat(doc: Doc, hearing: Hearing, last: Request | None) -> Hearing:
    """What is said of a meat that is talked of, where a sweet is named beside it only to be compared with."""
    meat, now = next(meats(doc), None), hearing.request
    talked_of = last is not None and last.dish_class is not None and kind_of(last.dish, last.dish_class) is not None
    if meat is None or not talked_of or cooked_to(now.dish) is None:
        return hearing
    return replace(hearing, request=replace(now, dish=meat.name, dish_class=meat.dish_class, method=None))


def cooked_to_a_figure(now: Request) -> bool:
    """Whether it is a sweet whose own reading was told."""
    return now.dish_class == SWEET and now.temperature_c is not None and now.temperature_c >= SPAN_C[0]


def _may_be_sugar(topic: str) -> bool:
    """Whether a figure with no more than a word beside it may fall to a topic, and be one of sugar all the same."""
    return topic == SUGAR or (topic != BAKE and topic in marked("may_be_syrup") | marked("of_nothing"))


def _asked(now: Request) -> tuple[str, ...]:
    """The forms of the question; that it is asked by how much leaves the figure to be told."""
    return tuple(form for form in now.forms if form not in ("how_hot", "how_much"))


def _bare_c(doc: Doc) -> float | None:
    """A figure with no unit beside it as a temperature of sugar [degC]."""
    spoken = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)}
    bare = (number.value for number in doc._.numbers if number.start not in spoken)
    found = (to_si(value, "degF") if value >= LOWEST_F else value for value in bare)
    return next((value for value in found if SPAN_C[0] <= value <= SPAN_C[1]), None)


def _brix_c(doc: Doc, words: Sequence[str]) -> float | None:
    """Where a syrup of so much sugar boils at sea level [degC]: 72 Brix."""
    low, high = BRIX_SPAN
    percent = next(
        (
            n.value
            for n in doc._.numbers
            if low <= n.value <= high and not set(words[n.end : n.end + 2]).isdisjoint(BRIX)
        ),
        None,
    )
    return None if percent is None else water.boiling_point_c(0.0) + water.sucrose_elevation_k(percent)
