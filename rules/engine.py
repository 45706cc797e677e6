"""Request -> the rules that apply -> Answer, with the trail of rules that were used."""

from __future__ import annotations

from dataclasses import replace
from math import isfinite
from types import ModuleType

from rules import book, example, forms
from rules.book import Case, Part, Rule
from rules.catalogue import marked, topics
from rules.errors import OutOfRange, within
from rules.heat.par_cook import SHORT_MIN
from rules.model import Answer, Because, Caution, Request, Unused
from rules.physics import air
from rules.safety import danger
from rules.said import sentences, together

say = sentences("assumed")

TIME = "time"
DONENESS = "doneness"
# what may be asked of a pot as well as of a dough
POT_LIQUIDS = ("water", "liquid", "stock", "wine", "milk")
# hotter is no food with water in it [degC]
WET_AT_MOST_C = 112.0
# a baseline as long as a soak or a brine, and so many times the longest usual time, is none
MOST_TIMES_USUAL = 3.0
SOAK_MIN = (5 * 60.0, 30 * 60.0)
# forms that doubt whether anything has to be done
BOTHERING = frozenset(("worth", "changes", "is_ok", "can_it", "what_is", "what_if", "is_true"))
# colder and hotter is nothing in a kitchen
TEMPERATURES_C = (-273.15, 5000.0)
# classes that are done at a stage of boiled sugar, which goes by the boil
BOILED_SUGAR = ("candy", "syrup")
# ways of an open pot, and the shortest time from which a pressure cooker is far quicker [min]; a time of the cook's own
# is one under pressure where it is so small a part of the pot's shortest, and no more times the cooker's longest
POTS, PRESSURE_PAYS_MIN, OF_THE_POT, OF_THE_COOKER = ("simmer", "boil", "braise", "stew"), 15.0, 0.6, 1.6
ANY_DISH_HAS = ("oven", "time", "proof")
# dishes that are made by a culture or a curd, whatever the pot: the room in rules/safety that knows how
CULTURED = {"yogurt": "yogurt", "fresh cheese": "cheese_curd"}


def answer(request: Request) -> Answer:
    """Work out a request. Never raises for anything a Request can hold: what is missing or unknown is said.

    The same request gives the same answer, to the byte.
    """
    try:
        found = work_out(settle(request))
        return replace(found, cautions=(*found.cautions, *danger.beside(request)))
    except OutOfRange as fault:
        missing = ("elevation",) if fault.name in ("elevation", "air pressure", "pressure") else ()
        return Answer(request=request, missing=missing, cautions=(Caution("note", f"{str(fault).rstrip('.')}."),))


def work_out(request: Request) -> Answer:
    """The answer to a settled request.

    raises: OutOfRange for a figure that no kitchen, pot or clock can have
    """
    if request.temperature_c is not None and isfinite(request.temperature_c):
        within("temperature", request.temperature_c, *TEMPERATURES_C, "degC", "Check the figure and its unit.")
    if request.choices and not request.danger:
        return Answer(request=request, missing=("choice",))
    module = danger if request.danger else room_for(request)
    if module is None:
        missing: tuple[str, ...] = ("method",) if by_method(request) and not request.method else ()
        return Answer(request=request, missing=missing, covered=bool(missing))
    request = getattr(module, "settled", lambda asked: asked)(request)
    missing = tuple(word for word in needs(module, request) if not known(request, word))
    if missing == ("elevation",) and example.serves(request):
        return example.of_example(request, work_out(replace(request, elevation_m=example.EXAMPLE_M)))
    if missing:
        return Answer(request=request, missing=missing)
    return forms.in_form(assemble(request, rules_for(module, request)), answer)


def settle(request: Request) -> Request:
    """Fill in what follows from the rest: elevation by the barometer, the time of what has no formula, the method."""
    if "load" in request.counted_in and request.dish and request.service_time is None:
        # what an oven takes is an amount, whatever else the words may ask
        request = replace(request, topic="order", choices=(), subject=None, forms=())
    if request.choices and forms.told_alike(request):
        request = replace(request, choices=())
    if (likelier := likelier_of(request)) is not None:
        request = replace(request, topic=likelier, choices=())
    elif (assumed := assumed_of(request)) is not None:
        taken = Unused("assumed", "", say("taken", choice=topics()[assumed].choice))
        request = replace(request, topic=assumed, choices=(), unused=(*request.unused, taken))
    if request.elevation_m is None and request.pressure_pa is not None:
        request = replace(request, elevation_m=air.elevation_m(request.pressure_pa))
    if request.ahead and (request.time_min or SHORT_MIN) < SHORT_MIN:
        request = replace(request, time_min=None, time_high_min=None)
    if request.own_yield and request.topic in (*marked("of_amounts"), *request.choices):
        request = replace(request, topic="order", choices=())
    if (
        by_method(request)
        and "worth" in request.forms
        and request.equipment
        and not (request.method or request.dish_class)
    ):
        # whether a thing pays goes by the boil where nothing is cooked
        request = replace(request, topic="boiling_point")
    if is_out_of_proportion(request):
        request = replace(request, time_min=None, time_high_min=None)
    if asks_to_bother(request):
        request = replace(request, topic="bake_adjust", subject=None)
    if request.topic == "bake_adjust" and is_liquid_of_a_pot(request):
        request = replace(request, topic="liquid")
    elif request.topic == "liquid" and is_of_a_dough(request):
        request = replace(request, topic="bake_adjust", subject=request.subject or "liquid")
    if request.topic == "bake_adjust" and not has_formula(request):
        request = replace(request, topic="temperature" if request.subject == "oven" else "time", subject=None)
    if request.topic == "preserve" and request.method in ("bake", "roast") and request.subject is None:
        request = replace(request, topic="time")
    if request.whistles is not None and request.topic in marked("whistled"):
        request = replace(request, topic="time", method=request.method or "pressure_cook")
    if request.topic == "pressure" and request.method == "hold" and request.gauge_pa is None:
        request = replace(request, topic="temperature")
    if asks_time_safe(request):
        request = replace(request, topic="time", planned_min=request.time_min, time_min=None, time_high_min=None)
    if request.method is None and request.topic == "temperature" and request.temperature_of == "fridge":
        request = replace(request, method="hold")
    if request.topic == "doneness" and request.dish_class in BOILED_SUGAR and request.elevation_m is None:
        request = replace(request, topic="sugar_stage")
    if request.topic == "temperature" and asks_reach(request):
        request = replace(request, topic="boiling_point")
    if (
        request.wanted_doneness
        and request.dish_class
        and not marked("of_a_centre").isdisjoint((request.topic, *request.choices))
    ):
        request = replace(request, topic="doneness", choices=())
    if request.method is None and request.dish_class and by_method(request):
        from rules.foods.dishes import usual_method

        method = usual_method(request.dish, request.dish_class)
        return replace(request, method="pressure_cook" if is_under_pressure(request, method) else method)
    return request


def is_under_pressure(request: Request, usual: str | None) -> bool:
    """Whether the time of the cook's own is one that only a pressure cooker keeps for the dish: steel-cut oats, 4 min.

    Where it is asked if a time will do, it may just be too short.
    """
    if request.topic != "time" or usual not in POTS or request.time_min is None or "enough" in request.forms:
        return False
    from rules.foods.dishes import sea_level_time

    in_pot, in_cooker = (sea_level_time(request.dish, request.dish_class or "", m) for m in (usual, "pressure_cook"))
    if in_pot is None or in_cooker is None or in_pot.low_min < PRESSURE_PAYS_MIN:
        return False
    longest = min(OF_THE_POT * in_pot.low_min, OF_THE_COOKER * in_cooker.high_min)
    return (request.time_high_min or request.time_min) <= longest


def likelier_of(request: Request) -> str | None:
    """Of two topics that the words fit alike the one that what else was said speaks for; None where nothing does."""
    if not request.choices or request.dish_class is None or request.wanted_doneness:
        return None
    if "order" in request.choices and request.forms[:1] == ("how_much",) and request.quantity:
        return "order"
    if request.portions and not request.forms and "time" in request.choices and "order" in request.choices:
        # both are told together
        return "time"
    # a time of the cook's own, or a dish and nothing more
    timed = request.time_min is not None and "wrong" not in request.forms[:1]
    bare = (
        not request.forms
        and "troubleshoot" in request.choices
        and not marked("unlike_a_pot").intersection(request.choices)
    )
    return "time" if (timed and "time" in request.choices) or bare else None


def assumed_of(request: Request) -> str | None:
    """The likelier of two topics where the dish and the place are told, so that it is answered and not asked back.

    None where a word more is needed; what was assumed is said.
    """
    placed = request.elevation_m is not None and request.elevation_from != "kitchen"
    if not request.choices or request.dish_class is None or not placed:
        return None
    if request.wanted_doneness and DONENESS in request.choices:
        return DONENESS
    if TIME in request.choices:
        return TIME
    one, other = request.choices
    first, second = (one, other) if request.topic == one else (other, one)
    needs_more = not known_all(replace(request, topic=first))
    return second if needs_more and known_all(replace(request, topic=second)) else first


def known_all(request: Request) -> bool:
    """Whether nothing has to be asked for that a topic needs."""
    return all(known(request, word) for word in topics()[request.topic].needs if word != "method")


def asks_to_bother(request: Request) -> bool:
    """Whether it is asked if a recipe that nobody pasted has to be changed at all: the changes of its kind are told."""
    bare = request.topic == "convert_recipe" and not request.recipe and request.dish_class is not None
    return bare and not BOTHERING.isdisjoint(request.forms) and is_of_a_dough(request)


def is_out_of_proportion(request: Request) -> bool:
    """Whether a baseline is many times what the dish ever takes, so that it is of something else: a soak, a brine."""
    if request.topic != "time" or request.dish_class is None or request.method is None:
        return False
    if not SOAK_MIN[0] <= (request.time_min or 0.0) <= SOAK_MIN[1]:
        return False
    from rules.foods.dishes import sea_level_time

    usual = sea_level_time(request.dish, request.dish_class, request.method)
    return usual is not None and (request.time_min or 0.0) > MOST_TIMES_USUAL * usual.high_min


def asks_time_safe(request: Request) -> bool:
    """Whether it is asked if a time of cooking is safe, which names a method and no temperature: steam 10 min, safe?"""
    timed = request.topic == "doneness" and request.time_min is not None and request.temperature_c is None
    return timed and request.method is not None and request.dish_class is not None and "safe" in request.forms


def is_liquid_of_a_pot(request: Request) -> bool:
    """Whether it is the water of a pot that is asked about, and not that of a dough or a batter."""
    if request.subject not in POT_LIQUIDS or request.dish_class is None or is_of_a_dough(request):
        return False
    from rules.amounts.liquid import ratio

    return ratio(request) is not None


def is_of_a_dough(request: Request) -> bool:
    """Whether the dish is a dough or a batter."""
    from rules.baking.styles import is_a, style_of

    return request.dish_class is not None and is_a(style_of(request.dish_class), "baked")


def asks_reach(request: Request) -> bool:
    """Whether it is asked if something hot and wet, whatever it is, gets as hot as was said."""
    nameless = request.method is None and request.dish_class is None
    asked_c = request.temperature_c
    return nameless and asked_c is not None and asked_c <= WET_AT_MOST_C and "can_it" in request.forms


def has_formula(request: Request) -> bool:
    """Whether there is a formula to adjust: a part of one was named, or the dish is a dough, a batter or a custard.

    The oven and the clock are parts of a formula only for a dish that has one.
    """
    from rules.baking.styles import is_a, style_of

    baked = is_a(style_of(request.dish_class or "general"), "baked")
    if request.dish_class == "custard" and request.subject is None:
        from rules.foods.dishes import usual_method

        return usual_method(request.dish, "custard") == "bake"
    return baked or (request.subject is not None and not (request.dish_class and request.subject in ANY_DISH_HAS))


def room_for(request: Request) -> ModuleType | None:
    """The room that answers: a subject of safety whatever the topic; else the topic's, or the method's."""
    if request.subject and (room := book.room("safety", request.subject)):
        return room
    if by_method(request) and (room := book.room("safety", CULTURED.get(request.dish or "", ""))):
        return room
    if by_method(request):
        return book.room("methods", request.method) if request.method else None
    return book.room("topics", request.topic)


def rules_for(module: ModuleType, request: Request) -> tuple[Rule, ...]:
    """The rules of the room, and after them what the amount and the cook's equipment change."""
    rules = book.rules_of(module, request)
    if request.danger:
        return _about_jars(request, (*_tested_ways(request), *rules))
    if by_method(request) and (request.portions or request.quantity):
        from rules.heat.batch_size import note as amount

        rules = (*rules, amount)
    if request.equipment and request.topic not in marked("knows_equipment"):
        from rules.heat.equipment import note as equipment

        rules = (*rules, equipment)
    return rules


def _tested_ways(request: Request) -> tuple[Rule, ...]:
    """What may be told after a danger: the tested process of a food that was to be canned another way."""
    if not (request.dish and request.elevation_m is not None):
        return ()
    from rules.preserving.tested_way import after_danger

    return (after_danger,)


def _about_jars(request: Request, usual: tuple[Rule, ...]) -> tuple[Rule, ...]:
    """What the room of preserving says nearer of jars that a danger was heard of."""
    if not request.dish:
        return usual
    from rules.preserving.underdone import rules_after

    return rules_after(request, usual)


def by_method(request: Request) -> bool:
    """Whether the room of the method answers."""
    return request.topic in marked("by_method")


def needs(module: ModuleType, request: Request) -> tuple[str, ...]:
    """What must be known: as the catalogue says of the topic, unless the room decides by the request or by itself."""
    decide = getattr(module, "needs", None)
    if decide:
        return decide(request)
    usual = topics()[request.topic].needs if request.topic in topics() else ()
    return getattr(module, "NEEDS", usual)


def known(request: Request, word: str) -> bool:
    """Whether a word of model.MISSING_WORDS is known in this request."""
    held = {
        "elevation": request.elevation_m is not None or request.pressure_pa is not None,
        "dish": dish_known(request),
        "method": request.method is not None,
        "time": request.time_min is not None,
        "temperature": request.temperature_c is not None,
        "portions": request.portions is not None,
        "service_time": request.service_time is not None,
        "symptom": request.subject is not None,
        "recipe": bool(request.recipe),
        "explanation": bool(request.subject or request.terms),
        "reading": request.temperature_c is not None or request.pressure_pa is not None,
    }
    return held.get(word, False)


def dish_known(request: Request) -> bool:
    """Whether it is clear what is cooked; a temperature, or a time of the cook's own, does without."""
    named = request.dish is not None or request.dish_class is not None or any(u.kind == "dish" for u in request.unused)
    timed = request.topic == "time" and request.time_min is not None
    return named or timed or request.topic == "temperature"


def assemble(request: Request, rules: tuple[Rule, ...]) -> Answer:
    """Let each rule speak in turn and gather the parts; the first figure, step or caution of a kind stands."""
    case = Case(request)
    spoken = list(book.spoken(rules, case))
    parts = [part for _, part in spoken]
    return Answer(
        request=request,
        headline=next((part.headline for part in parts if part.headline), ""),
        figures=tuple({f.id: f for part in reversed(parts) for f in reversed(part.figures)}.values())[::-1],
        steps=tuple(dict.fromkeys(step for part in parts for step in part.steps)),
        because=tuple(because(item, part, request.depth) for item, part in spoken if part.because),
        cautions=tuple(dict.fromkeys(c for part in parts for c in part.cautions)),
    )


def because(item: Rule, part: Part, depth: int) -> Because:
    """The rule's sentence, with the equation and its numbers where the asker wants them."""
    text = together(part.because, part.maths) if depth >= 3 else part.because
    return Because(item.id, text, part.sources or item.sources)
