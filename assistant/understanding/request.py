"""The pipeline's Doc -> what this one utterance says, as a Request with nothing taken for granted."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

from spacy.tokens import Doc

from assistant.reading import days, elevation_figures, elevation_mentions, figures, instruments, places
from assistant.reading.spans import Found, Measure
from assistant.reading.tokens import norms
from assistant.understanding import (
    amounts,
    answer_preferences,
    bake_subject,
    corrected,
    cuts,
    details,
    done_jars,
    fault_questions,
    faults,
    fried_twice,
    kitchen_told,
    lexicon,
    made_of,
    paced,
    packed,
    serving,
    settled_topic,
    small_talk,
    temperatures,
    time_roles,
    timer_words,
    tins,
    unclaimed,
    wanted,
    what_is_asked,
    what_is_in_it,
    whistles,
)
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues, said
from assistant.understanding.forms import Form
from assistant.understanding.time_roles import Times
from assistant.understanding.timer_words import OfTimers
from assistant.understanding.wondering import claimant, is_of_a_dish, is_of_kitchen
from rules.catalogue import marked
from rules.foods import methods
from rules.foods.dishes import classes, dishes, usual_method
from rules.heat import done_readings
from rules.model import Kitchen, Quantity, Request, Units, Unused
from rules.physics import water
from rules.physics.units import to_c, to_f
from rules.said import number, sentences
from rules.topics.why import GENERAL, rows

say = sentences("understanding/request")

WET, SEA_M, OF_A_RECIPE = ("steam", "boil", "simmer"), 0.0, cues("elevation", "of_a_recipe")
TIMER = "timer"
BAKE = "bake_adjust"
LIQUID, DOUGH = "liquid", "yeast_bread"
WHY = "why"
FORMULA = "formula"
ISOMALT, SELF_RISING = "isomalt", "self-rising flour"
TROUBLE = "troubleshoot"
PRESERVE = "preserve"
# no thermometer reads so far off
UNLIKE_SEA_C = 96.0
# food in a bag for so long is in a bath
IN_A_BAG_MIN = 6 * 60
UNDER_PRESSURE, ON_STOVE = "pressure_cook", cues("open_cooker", "on_stove")
# two readings of one temperature, in the units of either scale [degF]
SAME_F = 1.0
# what is hotter than any water in a kitchen [degC], and bare figures that tell of fat [degF]
IN_WATER, FRY, HOTTEST_WATER_C, FAT_F = ("boil", "simmer", "poach"), "fry", 108.0, (245, 400)
# an oven that is too low for any fat to fry [degC]
LOW_OVEN_C = (80.0, 125.0)
# sweets, and how hot their syrup is boiled [degC]
SWEET, SUGAR_C = "candy", (105.0, 156.0)
# a pressure cooker with its vent open is a steamer
OPEN_COOKER, STEAM, DIPS = cues("open_cooker", "said"), "steam", cues("open_cooker", "dips")
METHODS_WITHOUT_ROLES = ("sous_vide", "hold", "chill", "proof", "preserve")
# how food gets into a bath without anybody saying sous vide, how hot that is [degF], and what comes behind it
VACUUM, BAGGED = (
    frozenset(("vacuum", "vac", "vacced")),
    frozenset(("pack", "packed", "bag", "bags", "bagged", "seal", "sealed", "pouch")),
)
BATH_F = (113.0, 203.0)
BEHIND_A_BATH = (None, "chill")
# what is filled, told by its size, and how many there are at most
MOST_VESSELS = 20
# forms in which two things are held against each other
COMPARING, FIRST, EACH = ("which", "differ", "first"), "first", "each"
METRIC_LANDS = (*cues("elevation", "metric_lands"), *cues("elevation", "lands_in_metres"))
KEEPING, KEPT, BATHS = cues("kept_hot", "verbs"), cues("kept_hot", "ends"), cues("kept_hot", "baths")
KEPT_WITHIN = 5
IN_A_BATH, PUT_UP = cues("kept_hot", "oven_baths"), cues("kept_hot", "put_up")
HELD, LEAST_HELD_MIN = cues("kept_hot", "held"), 20.0
HOT_WORDS = cues("temperature", "hot")
# what a food that another dish is made of must not lose: kidney bean curry
STAYS = ("lectin", "any_bean", "cyanogenic", "wild_foraged", "trichinella", "raw_egg", "raw_fish", "in_oil")
# bakes that get steam in the oven, and how that is said
CRUSTS = ("yeast_bread", "laminated", "flatbread", "choux")
STEAMED_OVENS = ("with steam", "no steam", "add steam", "more steam", "of steam", "steam oven", "steam in the oven")
QUESTION_WORDS = ("what", "how", "which", "where", "when")
AHEAD = cues("ahead", "words")
PRECOOKED, STUFFED = cues("menu_turns", "precooked"), cues("menu_turns", "stuffed")
FROZEN = cues("frozen", "words")
UNREAD = cues("no_thermometer", "words")
CHANGES_OF_A_BAKE = cues("leaning", "baking")
SAVING = cues("saving", "words")
RISING, RISING_IN_OVEN = frozenset(cues("rising", "words")), frozenset(cues("rising", "baking"))
RISING_CLASSES = cues("rising", "classes")
FAN_OVEN = "convection_oven"
# cold that is no refrigerator's
OUTDOORS, OUTSIDE = "outdoors", cues("temperature", "outside")
HOT_OR_LONG = {"temperature", "time"}
# what two temperatures of fat are asked of, and forms in which their time is asked
HEAT, LENGTHS = "temperature", ("how_long", "remaining")
KEPT_OVER_A_BATH = frozenset(
    ("hold", "holding", "held", "keep", "keeping", "service", "stood", "standing", "stand", "sat")
)
# classes of what goes with a dish
LIQUIDS = ("water", "stock")
IMPLIED_METHODS = {
    "oil": "fry", "fryer": "fry", "fat": "fry", "lard": "fry", "shortening": "fry", "wok": "fry", "griddle": "fry",
    "proofer": "proof", "proof": "proof", "smoker": "smoke", "steamer": "steam", "brew": "brew",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Hearing:
    """One utterance, taken apart.

    request: only what was said; elliptical: whether it leans on what was said before
    units, depth: None where nothing was said about them
    subject_for: what is asked about if the topic is that of the question before
    plain: a number with nothing to tell what it counts, as in `make it 75`
    changes_a_bake: whether it can go on with a question of baking: `and the eggs, one more?`
    dish_of_a_bake: the dish if it does, where eggs are an ingredient
    timers: what it says of timers, if it is about them
    times: its times by the part they play
    bare_elevation: the figure of the elevation, if it was said without a unit
    unit_meant: the unit of the elevation before, if that is all that is put right: I meant metres
    of_dish: whether a question of its own leaves out the dish that is talked of: how long to rest?
    """

    request: Request
    elliptical: bool
    units: Units | None
    depth: int | None
    subject_for: Callable[[str], str | None] = lambda topic: None
    plain: float | None = None
    changes_a_bake: bool = False
    dish_of_a_bake: str | None = None
    timers: OfTimers = OfTimers()
    times: Times = Times()
    bare_elevation: float | None = None
    unit_meant: str | None = None
    of_dish: bool = False

    @property
    def passing(self) -> bool:
        """Whether it says nothing for the questions after it."""
        return self.request.topic in marked("passing") and not self.elliptical

    def about(self, topic: str, **slots: Any) -> Hearing:
        """The same as said of another topic, with some slots filled."""
        timers = self.timers if topic == TIMER else OfTimers()
        times = time_slots(self.times, topic, self.request.method) if self.times.first else {}
        said = {"topic": topic, "timer_action": timers.action, "timer_name": timers.name, **times, **slots}
        return replace(self, request=replace(self.request, **said))


def hear(doc: Doc, kitchen: Kitchen) -> Hearing:
    """Build the request of one utterance; the kitchen only decides what figures without a unit mean."""
    words = norms(doc)
    topic, lacking = doc._.topic.id, corrected.lacking(words, doc._.found)
    topic = "set_kitchen" if topic in marked("of_nothing") and kitchen_told.is_only_where(doc) else topic
    topic = "time" if asks_which_first(doc, topic) else topic
    talk = small_talk.kind([token.lower_ for token in doc]) if topic in marked("of_nothing") else None
    topic = "smalltalk" if small_talk.is_said_anyhow(talk, words) else topic
    # how hot is told: of the two that are as likely the time is asked
    told_heat = not doc._.forms and set(doc._.topic.choices) == HOT_OR_LONG and temperatures.said(doc)
    topic = "time" if told_heat else topic
    wet = of_a_pot(doc, topic)
    topic = topic if wet is None else "time"
    of_a_dough = is_of_a_dough(doc, topic)
    topic = settled_topic.settled(doc, BAKE if of_a_dough else topic)
    found = [f for f in corrected.meant(words, doc._.found) if f not in lacking]
    units = answer_preferences.spoken_system(words, doc._.measures) or of_land(words, doc)
    tools = equipment(words, found)
    dish = faults.said_of(doc) if topic == TROUBLE else None
    dish = dish or amounts.made_of(doc, amounts.bird(main_dish(found, topic), doc), topic)
    dish = dish or ("white rice" if topic == "liquid" and "rice_cooker" in tools else None)
    dish = wanted.egg(dish, words)
    # whatever is made with it is cooked as it is
    topic = "doneness" if topic == "sugar_stage" and is_set_by_heat(dish) else topic
    dish = ISOMALT if topic == "sugar_stage" and any(f.id == ISOMALT for f in found) else dish
    method = spoken_method(words, found) or implied_method(words, topic) or method_of(tools)
    # the open pot comes first where both are asked for: its answer tells the cooker's time as well
    method = None if method == UNDER_PRESSURE and dish and said(words, ON_STOVE) else method
    method = wet or dips_it(in_what_is_so_hot(method, dish, doc), dish, words)
    method = "bake" if method == "steam" and steams_the_oven(words, dish) else method
    method = (
        "sous_vide"
        if cooks_in_bag(words, doc, method) or is_in_bath(words, dish, doc, method)
        else in_a_bath(method, dish, words)
    )
    whistled = whistles.heard(doc)
    method = method or (None if whistled is None else "pressure_cook") or ("hold" if is_held(words, doc) else None)
    in_cooker = method == "pressure_cook" or topic in marked("in_cooker")
    gauge = instruments.gauge_pa(doc._.measures, words, in_cooker)
    method = method or ("proof" if topic == "time" and is_rise(words, dish) else None)
    method = "pressure_cook" if gauge is not None and method is None and topic in marked("by_method") else method
    height = elevation_mentions.settle(doc._.elevations, words, units or kitchen.units)
    beside = kitchen.elevation_m if height.here_m is None and not height.unused else height.here_m
    of_town = height.known_from == "place"
    barometer = instruments.barometer(
        doc._.measures, words, beside, gauge, kitchen.barometer_offset_pa, of_town=of_town
    )
    if of_town and barometer.elevation_m is not None:
        height = replace(height, here_m=None, known_from=None, place="")
    usual = usual_method(dish, dishes()[dish].dish_class) if dish and method is None else method
    hot = usual in methods.marked("hot") or topic in marked("hot") or any(word in HOT_WORDS for word in words)
    high = elevation_mentions.plausible(doc._.elevations, units or kitchen.units)
    scale = units or of_place(height.place, doc) or kitchen.units
    asked_of = [number for number in doc._.numbers if not temperatures.is_replaced(words, number.start)]
    temps = instruments.temperatures_c(doc._.measures, asked_of, high, words, scale, hot)
    in_fat = fried_twice.temperatures_c(doc)
    if in_fat:
        temps, method = list(in_fat), "fry"
        may_be = topic in marked("by_method") | marked("hot")
        topic = HEAT if may_be and not any(form.id in LENGTHS for form in doc._.forms) else topic
    boiled_to = sugar_told(doc, dish)
    in_water = "water" in words or "test" in words or not _is_other_liquid(dish)
    # what the water of a bottle reaches is told by the way
    boiled_c = None if doc._.safety == FORMULA else instruments.boil_test_c(temps, words, in_water)
    if boiled_c is not None and boiled_c < UNLIKE_SEA_C and height.here_m == SEA_M and not height.place:
        # whose water boils so is not at sea level: that is where the recipe is from
        height = replace(height, here_m=None, known_from=None, from_m=SEA_M)
    in_celsius = boiled_c is not None and any(abs(number.value - boiled_c) < SAME_F / 100 for number in doc._.numbers)
    units = units or ("metric" if in_celsius else None)
    boiled_m = water.elevation_from_boiling_m(boiled_c) if boiled_c is not None and not height.unused else None
    # beside a reading of the boil the other figure is the syrup's
    of_syrup = [one for one in temps if one != boiled_c] or temps
    temp_c = boiled_c if boiled_c is not None and topic != "sugar_stage" else next(iter(of_syrup), None)
    temp_c = boiled_to if boiled_to is not None else temp_c
    when = serving.heard(doc) if topic == "schedule" else serving.Serving(service=serving.service(doc))
    method = "bake" if method == "preserve" and is_baked_in_a_bath(dish, words) else method
    method = None if method == "hold" and when.slack else method
    method = method or under_pressure(words, doc)
    times: Times = time_roles.without(doc, (when.slack, when.rest))
    count = amounts.count(doc, dish, topic)
    eaters = amounts.portions(doc, topic, when.service.start if when.service else None)
    cups = amounts.cups_drunk(doc, dish)
    eaters = eaters or cups
    meals = amounts.meals(doc, topic, eaters)
    yielded = amounts.own_yield(doc) if dish else None
    no_such = unclaimed.dish(doc) if dish is None else None
    unknown = [u for u in unclaimed.places(doc) if u.text or kitchen.elevation_m is None]
    unit_meant = elevation_figures.unit_meant(words)
    elliptical = unclaimed.is_elliptical(doc) or unclaimed.elsewhere(doc) or unit_meant is not None
    timers = timer_words.heard(doc)
    weighed = [m for m in dry_measures(doc, topic) if m.end != times.rated]
    # whoever says so in a place says it of that place, where no other is named
    of_there = height.here_m is None and any(form.id == "is_true" for form in doc._.forms)
    hearsay_m = height.from_m if of_there else None
    request = Request(
        text=doc.text,
        topic=topic,
        subject=what_is_asked.subject(doc, BAKE) if topic == BAKE != doc._.topic.id else doc._.subject,
        amounts=what_is_in_it.amounts(doc) if topic == TROUBLE or _is_raised_by_flour(doc, topic) else (),
        **risen(doc, topic),
        stages=what_is_asked.stages_named(doc) if topic == "sugar_stage" else (),
        struck=fault_questions.struck(doc) if topic == TROUBLE else (),
        either=fault_questions.either(doc) if topic == TROUBLE else (),
        blames_place=topic == TROUBLE and fault_questions.blamed(doc),
        tins=tins.named(doc.text) if doc._.subject in (bake_subject.SWAP, bake_subject.PAN) else (),
        saving=topic == TROUBLE and said(words, SAVING),
        symptoms_too=faults.told(doc)[1:] if topic == TROUBLE else (),
        **({"dish": dish} | rivals(doc, dish, method)),
        dish_class=dishes()[dish].dish_class if dish else "general" if no_such else DOUGH if of_a_dough else None,
        method=None if topic in marked("no_method") and not (elliptical and topic in marked("slots_alone")) else method,
        elevation_m=_first(safest_m(height, topic), hearsay_m, barometer.elevation_m, boiled_m),
        elevation_from=height.known_from or ("barometer" if barometer.elevation_m is not None else None)
        or ("boil_test" if boiled_m is not None else None),
        from_elevation_m=None if hearsay_m is not None else height.from_m if height.from_m is not None
        else SEA_M if is_of_a_recipe(doc, topic, height.here_m) else None,
        elevations_m=height.all_m,
        place=height.place,
        sets_kitchen=kitchen_told.tells(doc),
        pressure_pa=barometer.pressure_pa,
        **time_slots(times, topic, method),
        temperature_c=temp_c,
        temperature_of=temperature_of(doc, temp_c),
        quantity=(paced.amount(doc) if topic == "bake_adjust" and paced.times(doc) else None)
        or of_the_subject(doc, quantity([yielded[0]] if yielded else without_pots(doc, weighed), words, gauge)),
        quantity_of=None if yielded else amounts.quantity_of(doc, dish, count),
        own_yield=yielded[1].low / yielded[0].low if yielded else None,
        count=count,
        portions=eaters * meals if eaters else None,
        course=amounts.course(words),
        liquid_per=amounts.liquid_per(doc) if topic == "liquid" else None,
        counted_in=amounts.counted_in(doc),
        dishes=amounts.menu(doc, topic),
        gauge_pa=gauge,
        service_time=service_time((when.service,) if when.service else ()),
        service_day=days.named(doc.text),
        start_time=service_time((when.start,) if when.start else ()),
        slack_min=when.slack.low if when.slack else None,
        rest_min=when.rest.low if when.rest else None,
        ovens=when.ovens,
        whistles=whistled,
        covered=answer_preferences.covered(words),
        soaked=answer_preferences.soaked(words),
        cut=cuts.heard(words, found),
        frozen=goes_in_frozen(words, found, dish),
        precooked=topic == "time" and said(words, PRECOOKED),
        stuffed=topic == "time" and said(words, STUFFED),
        ahead=said(words, AHEAD),
        jars=packed.jars(doc),
        packing=packed.packing(doc),
        jarred=(jarred := done_jars.told(doc)),
        jarred_ago_min=done_jars.ago_min(doc) if jarred else None,
        timer_action=timers.action if topic == TIMER else None,
        timer_name=timers.name if topic == TIMER else "",
        small_talk=talk if topic == "smalltalk" else None,
        nearest=nearest(doc),
        choices=doc._.topic.choices if not (elliptical or doc._.safety) and topic == doc._.topic.id else (),
        forms=tuple(dict.fromkeys(form.id for form in doc._.forms if not is_asked_for(doc, form))),
        belief=doc._.wonder.belief if topic == WHY else None,
        denied=doc._.wonder.denied and topic == WHY,
        claimant=claimant(doc),
        terms=doc._.wonder.terms if topic == WHY else (),
        asked_way=doc._.asked_way,
        wanted_doneness=wanted.doneness(words),
        temperatures_c=tuple(dict.fromkeys(temps)) if len(set(temps)) > 1 else (),
        units=units or of_place(height.place, doc) or kitchen.units,
        equipment=tools,
        lacking=tuple(dict.fromkeys([*(f.id for f in lacking), *(["thermometer"] if said(words, UNREAD) else [])])),
        unused=(
            *(*height.unused, *barometer.unused),
            *(*((no_such,) if no_such else ()), *unknown, *choice(doc), *counted_meals(eaters, meals)),
        ),
    )  # fmt: skip
    request = replace(request, **made_of.slots(doc, request))
    # cups that are drunk are no amount of the leaf
    request = replace(request, quantity=None) if cups else request
    request = replace(request, unused=(*request.unused, *details.at_once(words, request)))
    sized = {m.start for m in doc._.measures if vessels(m, words) > 1}
    plain = next((number.value for number in plain_numbers(doc) if number.end not in sized), None)
    return Hearing(
        request,
        elliptical,
        units,
        answer_preferences.depth(words),
        partial(what_is_asked.subject, doc),
        plain,
        changes_a_bake=any(f.kind == "ingredient" for f in found) and unclaimed.is_elliptical(doc, CHANGES_OF_A_BAKE),
        timers=timers,
        times=times,
        bare_elevation=height.bare,
        unit_meant=unit_meant,
        dish_of_a_bake=main_dish(without_ingredients(found), "bake_adjust"),
    )


def safest_m(height: elevation_mentions.Heights, topic: str) -> float | None:
    """Where the kitchen is [m]; of jars the higher, where the cook is not certain: at 5 or 6 thousand feet."""
    return max(height.all_m) if topic == "preserve" and height.all_m else height.here_m


def is_set_by_heat(dish: str | None) -> bool:
    """Whether the reading of a dish is that of its own setting: a custard, whatever it is likened to."""
    of = done_readings.reading(dish, dishes()[dish].dish_class) if dish else None
    return of is not None and of.bound == "set"


def counted_meals(eaters: int | None, meals: int) -> tuple[Unused, ...]:
    """What is said of so many who eat so many times."""
    if not eaters or meals == 1:
        return ()
    told = say("meals", eaters=number(eaters, 0), meals=number(meals, 0), all=number(eaters * meals, 0))
    return (Unused("assumed", "", told),)


def goes_in_frozen(words: Sequence[str], found: Sequence[Found], dish: str | None) -> bool:
    """Whether food goes in as it came from the freezer: from frozen, frozen chicken. A frozen pizza is a dish."""
    if dish and "frozen" in dish:
        return False
    return said(words, FROZEN) or any(
        f.kind == "dish" and "frozen" in words[f.start - 1 : f.start] for f in found if f.start
    )


def under_pressure(words: Sequence[str], doc: Doc) -> str | None:
    """The pressure cooker where pressure is held against a pot: pressure vs pot."""
    against = any(form.id in COMPARING for form in doc._.forms) and "pressure" in words
    return "pressure_cook" if against and any(f.kind == "dish" for f in doc._.found) else None


def steams_the_oven(words: Sequence[str], dish: str | None) -> bool:
    """Whether steam is let into the oven for a crust, and nothing is steamed: baguettes at 240 with steam."""
    baked = dish is not None and dishes()[dish].dish_class in CRUSTS
    return baked and said(words, STEAMED_OVENS)


def is_asked_for(doc: Doc, form: Form) -> bool:
    """Whether what sounds like a verdict stands behind a question word: what do I pull it at, how far must I go."""
    words = [token.norm_ for token in doc[max(form.start - 2, 0) : form.start]]
    if form.id == "enough":
        # 300. What do I stop at: a figure, and then a question word with its verb
        return doc[max(form.end - 2, form.start)].norm_ in QUESTION_WORDS
    return form.id == "is_ok" and any(word in QUESTION_WORDS for word in words)


def of_place(place: str, doc: Doc) -> Units | None:
    """Metric in a place whose people measure in metres, where nothing was said in other units."""
    measured = any(measure.unit in answer_preferences.US_UNITS for measure in doc._.measures)
    return "metric" if place and not measured and places.height_unit(place) == "m" else None


def of_land(words: Sequence[str], doc: Doc) -> Units | None:
    """Metric where a bare elevation is told of mountains that are measured in metres, and nothing is in other units."""
    bare = any(mention.unit in ("", "m") and not mention.place for mention in doc._.elevations)
    measured = any(measure.kind != "time" for measure in doc._.measures)
    return "metric" if bare and not measured and said(words, METRIC_LANDS) else None


def time_slots(times: Times, topic: str, method: str | None) -> dict[str, Any]:
    """The times of a question, told apart by the part they play where the topic and the method have parts for them."""
    apart = topic not in marked("one_time") and method not in METHODS_WITHOUT_ROLES
    # what the recipe prints and what the cook means to give are never one another
    apart = apart or (topic == PRESERVE and None not in (times.baseline, times.planned_min))
    return times.slots(apart=apart, undone=topic == "troubleshoot")


def rivals(doc: Doc, dish: str | None, method: str | None) -> dict[str, Any]:
    """The other dishes and methods of a question that holds two things against each other."""
    asked = {form.id for form in doc._.forms}
    if asked.isdisjoint((*COMPARING, EACH)):
        return {}
    heads = tuple(_heads(doc, method))
    plain = without_head(dish) if heads and dish else None
    words = norms(doc)
    pressed = [m for m in (under_pressure(words, doc),) if m and m != method]
    # hominy for pozole: one dish, and what it is for
    held = [f for f in doc._.found if not (f.start and words[f.start - 1] == "for" and f.kind == "dish")]
    return {
        "dishes_too": () if asked.isdisjoint(COMPARING) else _others(held, "dish", dish),
        "methods_too": tuple(dict.fromkeys((*_others(doc._.found, "method", method), *heads, *pressed))),
        **({"dish": plain} if plain else {}),
    }


def without_head(dish: str) -> str | None:
    """A dish without the way it is cooked, where that is a dish too.

    >>> without_head("baked potatoes")
    'potatoes'
    """
    plain = dish.partition(" ")[2]
    return plain if plain in dishes() and dishes()[plain].dish_class == dishes()[dish].dish_class else None


def _heads(doc: Doc, method: str | None) -> Iterator[str]:
    """The methods at the head of dishes, where another was said: boiled against baked potatoes."""
    words = norms(doc)
    heads = (lexicon.method_inside(words, found) for found in doc._.found if found.kind == "dish")
    yield from (head for head in heads if head and method and head != method)


def _others(found: Sequence[Found], kind: str, main: str | None) -> tuple[str, ...]:
    return tuple(dict.fromkeys(f.id for f in found if f.kind == kind and f.id != main))


def _first(*values: float | None) -> float | None:
    return next((value for value in values if value is not None), None)


def main_dish(found: Sequence[Found], topic: str) -> str | None:
    """The dish that is asked about: the first one; water last, and in baking what is an ingredient as well.

    Where it is asked how much liquid a dish takes, stock is that liquid.
    """
    heard = [f for f in (without_ingredients(found) if weighs_a_batter(found) else found) if f.kind == "dish"]
    also = {f.start for f in found if f.kind == "ingredient"} if topic in marked("of_baking") else set()
    poured = LIQUIDS if topic == "liquid" else LIQUIDS[:1]
    best = min(heard, key=lambda f: (dishes()[f.id].dish_class in poured, f.start in also, f.start), default=None)
    if best is None:
        return None
    # risotto stock: how much of it the rice takes
    made_of = topic == "liquid" and dishes()[best.id].dish_class not in poured
    apart = [f for f in heard if not (made_of and dishes()[f.id].dish_class in poured)]
    named = headed(best, apart, found).id
    return whole_dish(named, heard) if topic == TROUBLE else narrower(named, heard)


def weighs_a_batter(found: Sequence[Found]) -> bool:
    """Whether flour and sugar stand beside what is a dish as well: the eggs are those of a cake."""
    names = " ".join(f.id for f in found if f.kind == "ingredient").split()
    return "flour" in names and "sugar" in names


def headed(best: Found, heard: Sequence[Found], found: Sequence[Found]) -> Found:
    """A dish made of another is the one named last: oxtail stew, goat cheese ravioli, whatever else stands between.

    A food that can poison stays what is asked about.
    """
    ends = {best.end}
    for between in sorted((f for f in found if f.kind == "ingredient"), key=lambda f: f.start):
        ends |= {between.end} if between.start in ends else set()
    return next((f for f in heard if f.start in ends and _is_made_of(f.id, best.id)), best)


def _is_made_of(dish: str, food: str) -> bool:
    last, first = dishes()[dish], dishes()[food]
    if classes()[first.dish_class].head or not classes()[last.dish_class].head:
        return False
    return not any(trait in STAYS and trait not in last.traits for trait in first.traits)


def without_ingredients(found: Sequence[Found]) -> list[Found]:
    """What was found without the dishes that are ingredients as well."""
    also = {f.start for f in found if f.kind == "ingredient"}
    return [f for f in found if f.start not in also]


def narrower(dish: str, heard: Sequence[Found]) -> str:
    """A dish said by the name of its class and by its own is the latter: penne pasta."""
    dish_class = dishes()[dish].dish_class
    own = [f.id for f in heard if f.id != dish and dishes()[f.id].dish_class == dish_class]
    return own[0] if dish == dish_class and own else dish


def whole_dish(dish: str, heard: Sequence[Found]) -> str:
    """Of a dish and what it is made into, the latter: the apples in an apple pie, chocolate muffins."""
    singular = dish.removesuffix("s")
    ends = {f.end for f in heard if f.id == dish}
    return next((f.id for f in heard if f.id != dish and (singular in f.id.split() or f.start in ends)), dish)


def _is_other_liquid(dish: str | None) -> bool:
    return dish is not None and dishes()[dish].dish_class in ("candy", "syrup", "jam")


def spoken_method(words: Sequence[str], found: Sequence[Found]) -> str | None:
    """The method that is said, on its own or at the head of a dish: fried chicken. A roast is more often a cut."""
    spoken = [f.id for f in found if f.kind == "method" and words[f.start] != "roast"]
    if said(words, OPEN_COOKER):
        spoken = [STEAM if m == "pressure_cook" else m for m in spoken]
    roasts = [f.id for f in found if f.kind == "method" and words[f.start] == "roast"]
    heads = [m for f in found if f.kind == "dish" and (m := lexicon.method_inside(words, f))]
    leading = [m for m in spoken if m in methods.marked("leading") and not _is_the_other(m, words, found)]
    return next(iter([*leading, *_ended_by(spoken), *roasts, *heads]), None) or (
        "hold" if _is_kept_hot(words) else None
    )


def _is_the_other(method: str, words: Sequence[str], found: Sequence[Found]) -> bool:
    """Whether a method is but asked about beside the one that was told: steam it 8 hours; or the pressure cooker?"""
    told = [f for f in found if f.kind == "method"]
    behind = next(f for f in told if f.id == method or (f.id == "pressure_cook" and method == STEAM))
    return behind is not told[0] and "or" in words[max(behind.start - 3, 0) : behind.start]


def _ended_by(spoken: Sequence[str]) -> list[str]:
    """The methods that are said, without the first where it only begins the next: fried, then water and the lid on.

    >>> _ended_by(["fry", "steam"]), _ended_by(["steam", "fry"])
    (['steam'], ['steam', 'fry'])
    """
    begins = len(spoken) > 1 and spoken[0] in methods.methods()[spoken[1]].begun_by
    return list(spoken[1:] if begins else spoken)


def dips_it(method: str | None, dish: str | None, words: Sequence[str]) -> str | None:
    """The method; a dough that is dipped before it is baked is boiled, where its water or kettle is told of.

    >>> dips_it(None, "bagels", "bagels 60 s in the water".split()), dips_it(None, "bagels", "bagels 20 min".split())
    ('boil', None)
    """
    if method is not None or dish is None or "dipped" not in dishes()[dish].traits or not said(words, DIPS):
        return method
    return "boil"


def in_what_is_so_hot(method: str | None, dish: str | None, doc: Doc) -> str | None:
    """The method; what is blanched far hotter than any water is fried, where the dish is: chips at 130 C, then 180.

    A joint that is only seared at the end of a low oven is roasted.
    """
    set_c = [m.low for m in doc._.measures if m.kind in ("temperature", "degree")]
    low = any(LOW_OVEN_C[0] <= c < LOW_OVEN_C[1] for c in set_c) and all(c < LOW_OVEN_C[1] for c in set_c)
    if method == FRY and dish and low and dishes()[dish].methods[0] == "roast":
        return "roast"
    if method not in IN_WATER or dish is None or FRY not in dishes()[dish].methods:
        return method
    told = [m.low for m in doc._.measures if m.kind in ("temperature", "degree")]
    told += [to_c(n.value) for n in plain_numbers(doc) if FAT_F[0] <= n.value <= FAT_F[1]]
    return FRY if told and min(told) > HOTTEST_WATER_C else method


def sugar_told(doc: Doc, dish: str | None) -> float | None:
    """How far a sweet that went wrong was boiled, the last figure that can be one [degC]: pulled at 250."""
    if doc._.topic.id != TROUBLE or dish is None or dishes()[dish].dish_class != SWEET:
        return None
    told = [(m.start, m.low) for m in doc._.measures if m.kind in ("temperature", "degree")]
    told += [(n.start, to_c(n.value) if n.value > SUGAR_C[1] else n.value) for n in plain_numbers(doc)]
    return next((c for _, c in sorted(told, reverse=True) if SUGAR_C[0] <= c <= SUGAR_C[1]), None)


def _is_kept_hot(words: Sequence[str]) -> bool:
    """Whether something is kept hot, whatever stands between: keep the rice for 60 warm."""
    begun = [i for i, word in enumerate(words) if word in KEEPING]
    return any(word in KEPT for i in begun for word in words[i + 1 : i + 1 + KEPT_WITHIN])


def asks_which_first(doc: Doc, topic: str) -> bool:
    """Whether it is asked which of two dishes goes on first, and nothing is to be served at a time of day."""
    dishes_named = {f.id for f in doc._.found if f.kind == "dish"}
    asked = any(form.id == FIRST for form in doc._.forms)
    return asked and topic in (marked("feeding") | marked("in_form")) and len(dishes_named) > 1 and not doc._.clock


def is_rise(words: Sequence[str], dish: str | None) -> bool:
    """Whether what is timed of a yeast dough is its rise: how long do the buns rise.

    >>> is_rise("how long do the buns rise".split(), "dinner rolls"), is_rise(["it", "rises"], "popovers")
    (True, False)
    """
    dough = dish is not None and dishes()[dish].dish_class in RISING_CLASSES
    return dough and not RISING.isdisjoint(words) and RISING_IN_OVEN.isdisjoint(words)


def is_held(words: Sequence[str], doc: Doc) -> bool:
    """Whether a dish is held until it is served, and no heat of its cooking: can I hold rice for 2 hours."""
    if any(m.kind in ("temperature", "degree") for m in doc._.measures):
        return False
    asked = any(form.id == "how_long" for form in doc._.forms)
    long = asked or any(m.kind == "time" and m.low >= LEAST_HELD_MIN for m in doc._.measures)
    held = {i for f in doc._.found if f.kind == "dish" for i in range(max(0, f.start - 3), f.start)}
    return long and any(words[i] in HELD for i in held)


def in_a_bath(method: str | None, dish: str | None, words: Sequence[str]) -> str | None:
    """The method; a custard in a bain-marie is baked in it, and not held.

    >>> in_a_bath("hold", "flan", "flan in a bain marie".split())
    'bake'
    """
    if method != "hold" or dish is None or not said(words, BATHS):
        return method
    if "water_bath" in dishes()[dish].traits:
        return "bake"
    # hollandaise is made over it
    return None if "raw_egg" in dishes()[dish].traits and KEPT_OVER_A_BATH.isdisjoint(words) else method


def of_a_pot(doc: Doc, topic: str) -> str | None:
    """The wet method of a bake that is steamed or boiled, whose time is told; None for one from the oven.

    A cooker that is only asked about as another way is not the one of the time: or a pressure cooker instead.
    """
    timed = any(m.kind == "time" for m in doc._.measures)
    named = any(f.kind == "ingredient" for f in doc._.found)
    oven = any(m.kind in ("temperature", "degree") for m in doc._.measures)
    if topic != BAKE or not timed or named or oven or doc._.subject not in (None, "time"):
        return None
    said_so = [f.id for f in doc._.found if f.kind == "method" and norms(doc)[max(f.start - 1, 0)] != "or"]
    return next((method for method in said_so if method in WET), None)


def is_of_a_recipe(doc: Doc, topic: str, here_m: float | None) -> bool:
    """Whether the rising time is that of a recipe whose place nobody knows, which is taken for the sea's."""
    timed = any(m.kind == "time" for m in doc._.measures)
    return topic == BAKE and here_m is not None and timed and said(norms(doc), OF_A_RECIPE)


def is_of_a_dough(doc: Doc, topic: str) -> bool:
    """Whether the liquid that is asked about is that of a dough without a name: 650 g of water to 1 kg of flour."""
    if topic != LIQUID or any(f.kind == "dish" and dishes()[f.id].dish_class not in LIQUIDS for f in doc._.found):
        return False
    words = {word for f in doc._.found if f.kind == "ingredient" for word in f.id.split()}
    return "flour" in words and any(m.kind in ("mass", "volume") for m in doc._.measures)


def is_baked_in_a_bath(dish: str | None, words: Sequence[str]) -> bool:
    """Whether the water bath is the one in the oven, and nothing is put up in jars.

    >>> is_baked_in_a_bath("cheesecake", "cheesecake in a water bath".split())
    True
    >>> is_baked_in_a_bath("cheesecake", "cheesecake in jars in a water bath".split())
    False
    """
    custard = dish is not None and "water_bath" in dishes()[dish].traits
    return custard and said(words, IN_A_BATH) and not said(words, PUT_UP)


def implied_method(words: Sequence[str], topic: str) -> str | None:
    """The method that the topic or a tool implies: how hot should the oil be."""
    if topic == "preserve":
        return "preserve"
    return next((m for word, m in IMPLIED_METHODS.items() if word in words), None) if topic == "temperature" else None


def cooks_in_bag(words: Sequence[str], doc: Doc, method: str | None) -> bool:
    """Whether food is packed by vacuum and held at the temperature of a bath, whatever is done to it after."""
    packed_so = not VACUUM.isdisjoint(words) and not BAGGED.isdisjoint(words)
    if not packed_so or method not in BEHIND_A_BATH:
        return False
    return any(BATH_F[0] <= said.temp_f <= BATH_F[1] for said in temperatures.said(doc))


def is_in_bath(words: Sequence[str], dish: str | None, doc: Doc, method: str | None) -> bool:
    """Whether a dish that may be cooked in a bath stands beside one of a temperature: egg bites, 82C bath."""
    if method is not None or dish is None or "sous_vide" not in dishes()[dish].methods:
        return False
    hours = any(m.kind == "time" and m.high >= IN_A_BAG_MIN for m in doc._.measures)
    if "bath" not in words and not (hours and not BAGGED.isdisjoint(words)):
        return False
    return any(BATH_F[0] <= one.temp_f <= BATH_F[1] for one in temperatures.said(doc))


def equipment(words: Sequence[str], found: Sequence[Found]) -> tuple[str, ...]:
    """The equipment that is named, also where its name was heard as the method it is for: electric pressure cooker."""
    named = (" ".join(words[f.start : f.end]) for f in found if f.kind in ("equipment", "method"))
    tools = [id for name in named for kind, id in lexicon.meanings(name) if kind == "equipment"]
    return tuple(dict.fromkeys([*tools, *([FAN_OVEN] if instruments.is_fan_setting(words) else [])]))


def method_of(tools: Sequence[str]) -> str | None:
    """The method that a tool is for, where it is for one alone: a circulator.

    >>> method_of(["immersion_circulator"]), method_of(["gas_burner"])
    ('sous_vide', None)
    """
    of = {method.id for method in methods.methods().values() if set(tools).intersection(method.equipment)}
    return of.pop() if len(of) == 1 else None


def dry_measures(doc: Doc, topic: str) -> list[Measure]:
    """The measures without those of the liquid that is asked about."""
    return [m for m in doc._.measures if topic != "liquid" or not amounts.is_liquid(doc, m)]


def without_pots(doc: Doc, measures: Sequence[Measure]) -> list[Measure]:
    """The measures without the size of a pot, where it is asked how much goes in for so many who eat."""
    words, forms = norms(doc), [form.id for form in doc._.forms]
    fed = any(m.kind == "portion" for m in doc._.measures) or "for" in words
    if not fed or "how_much" not in forms or "enough" in forms:
        return list(measures)
    return [m for m in measures if m.kind != "volume" or amounts.VESSELS.isdisjoint(words[m.end : m.end + 2])]


def quantity(measures: Sequence[Measure], words: Sequence[str], gauge: float | None) -> Quantity | None:
    """The first mass or volume; pounds that were a gauge setting are none."""
    for m in measures:
        gauged = gauge is not None and m.unit == "lb" and instruments.is_gauge(m, words)
        if m.kind in ("mass", "volume") and not gauged:
            return Quantity(round(m.said * vessels(m, words), 6), m.unit)
    return None


def _is_raised_by_flour(doc: Doc, topic: str) -> bool:
    """Whether there is powder in the flour itself."""
    return topic == "bake_adjust" and any(f.id == SELF_RISING for f in doc._.found)


def risen(doc: Doc, topic: str) -> dict[str, Any]:
    """The two times by which a dough is told, where its yeast goes by them."""
    own = paced.times(doc) if topic == "bake_adjust" else None
    return {"rise_min": own[0], "rise_wanted_min": own[1]} if own else {}


def vessels(measure: Measure, words: Sequence[str]) -> int:
    """How many of a size there are: two 40 l boilers; one where none is counted.

    >>> size = Measure(1, 3, "volume", 40000.0, 40000.0, 40.0, "l")
    >>> vessels(size, "two 40 l boilers".split()), vessels(size, "4 40 l beans".split())
    (2, 1)
    """
    behind = words[measure.end : measure.end + 2]
    if measure.kind != "volume" or not measure.start or not any(word in amounts.VESSELS for word in behind):
        return 1
    at = measure.start - (2 if words[measure.start - 1] in ("x", "of", "big", "large") and measure.start > 1 else 1)
    counted = figures.number_from(words[: at + 1], at)
    return int(counted.value) if counted and counted.end == at + 1 and 1 < counted.value <= MOST_VESSELS else 1


def of_the_subject(doc: Doc, first: Quantity | None) -> Quantity | None:
    """The amount of the ingredient that is asked about; none of another: how much yeast for 10 kg of flour."""
    if doc._.topic.id not in marked("of_baking") or first is None or doc._.subject not in what_is_in_it.roles():
        return first
    told, own = what_is_in_it.asked_of(doc, doc._.subject)
    return Quantity(own.value, own.unit) if own else None if told else first


def service_time(clock: Sequence[Measure]) -> str | None:
    """The time of day, ISO 8601."""
    return f"{int(clock[0].low) // 60:02d}:{int(clock[0].low) % 60:02d}" if clock else None


def temperature_of(doc: Doc, temp_c: float | None) -> str | None:
    """What a temperature is of, where the words tell: core, oven, bath and so on."""
    if temp_c is None:
        return None
    role = next((said.role for said in temperatures.said(doc) if abs(said.temp_f - to_f(temp_c)) < SAME_F), None)
    return OUTDOORS if role == "fridge" and said(norms(doc), OUTSIDE) else role


def nearest(doc: Doc) -> tuple[str, ...]:
    """The explanations that a why that names none may mean; the general reason where nothing tells."""
    found = doc._.wonder
    if doc._.topic.id != WHY or found.terms:
        return ()
    if found.also:
        return tuple(name for name in (found.row, found.also) if name)
    if doc._.subject:
        return ()
    named = is_of_a_dish(doc) or (found.idle and is_of_kitchen(doc))
    return found.rivals or ((GENERAL,) if named else ())


def choice(doc: Doc) -> tuple[Unused, ...]:
    """The question that offers the explanations that may be meant."""
    rivals = doc._.wonder.rivals if doc._.topic.id == WHY else ()
    titles = [rows()[name].title for name in rivals]
    match titles:
        case [one]:
            return (Unused("explanation", one, say("one-reason", title=one)),)
        case [one, other]:
            return (Unused("explanation", one, say("either-reason", title=one, other=other)),)
    return ()
