"""Which of two: places, methods, dishes or temperatures, each with its figure, and the one that was asked for first."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rules.book import Case, Part, rule
from rules.catalogue import marked
from rules.foods import beans
from rules.foods.dishes import dishes, usual_method
from rules.foods.methods import marked as marked_methods
from rules.forms import Asked, changes
from rules.heat.compared import SET, compared
from rules.heat.headline import doing, middle
from rules.model import Figure
from rules.physics.units import round_to
from rules.said import Measure, Words, duration, elevation, listed, number, oven, sentences, temp, together

say = sentences("forms/which")

# shares and temperatures that nobody could tell apart
ALIKE, ALIKE_K = 0.04, 0.5
OPEN_POT, OVEN, BAKING = "simmer", "bake", "bake_adjust"
SLOWER, OF_HEAT = ("longer",), ("hotter", "cooler")


@dataclass(frozen=True, slots=True)
class Rival:
    """One of the things that are held against each other: what it is called, its time, and by the recipe."""

    named: Words | Measure
    time: Figure
    base: Figure | None = None


@rule("which.place", "iapws-r7-97", "us-std-atm-1976")
def places(asked: Asked) -> Part | None:
    """Two or more places: what the dish takes in each, or where water boils there."""
    request = asked.request
    both = (request.elevation_m, request.from_elevation_m)
    heights = request.elevations_m or tuple(m for m in both if m is not None)
    # a centre that is done is no hotter in one place, and a baseline is not asked about beside it
    of_centre = request.topic in marked("of_a_centre") and not marked("by_method").intersection((request.topic,))
    if len(heights) < 2 or (of_centre and not request.elevations_m):
        return None
    topic = "time" if request.topic == "why" and request.dish_class else request.topic
    from_m = request.from_elevation_m if request.time_min is not None and request.elevations_m else None
    here = {"topic": topic, "pressure_pa": None, "from_elevation_m": from_m}
    if topic == BAKING:
        kept = {"quantity": request.quantity}
        told = [asked.otherwise(**here, **kept, elevation_m=m).answer.headline for m in heights]
        return Part(headline=together(*dict.fromkeys(told)))
    each = [asked.otherwise(**here, elevation_m=m) for m in heights]
    timed = [Rival(elevation(m), one.time[0]) for m, one in zip(heights, each, strict=True) if one.time]
    if len(timed) == len(heights) and request.topic != "boiling_point":
        return Part(headline=_places(asked, each[0], timed))
    return Part(headline=_boils(asked, [one.case for one in each]))


def _boils(asked: Asked, places: Sequence[Case]) -> Words:
    """Where water boils in each place; of two the one first that was asked for, the cooler where neither was."""
    hotter = asked.request.asked_way == "hotter"
    first, *rest = sorted(places, key=lambda place: place.here.boiling_c, reverse=hotter)
    alike = abs(rest[-1].here.boiling_c - first.here.boiling_c) < ALIKE_K
    others = [say("boils-at", boil=temp(place.here.boiling_c), place=place.place) for place in rest]
    return say(
        "boils",
        way="same" if alike else "higher" if hotter else "lower",
        boil=temp(first.here.boiling_c),
        place=first.place,
        others=listed(others, "and"),
    )


def _places(asked: Asked, one: Asked, timed: Sequence[Rival]) -> Words:
    what = _doing(one)
    if len(timed) > 2:
        each = [say("time-at", time=duration(place.time.value), place=place.named) for place in timed]
        return say("places-each", doing=what, each=listed(each, "and"))
    first, last = ranked(timed, slow_first=asked.request.asked_way != "shorter")
    return say(
        "places",
        alike="yes" if alike(first, last) else "no",
        way="longer" if first.time.value >= last.time.value else "shorter",
        doing=what,
        one=first.named,
        here=middle(first.time),
        other=last.named,
        there=duration(last.time.value),
    )


def _doing(asked: Asked) -> Words:
    return doing(asked.case, asked.request.method) if asked.request.method else asked.case.food


def ranked(rivals: Sequence[Rival], *, slow_first: bool) -> list[Rival]:
    """By their times; the one that was asked for first."""
    return sorted(rivals, key=lambda one: one.time.value, reverse=slow_first)


def alike(one: Rival, other: Rival) -> bool:
    """Whether two times are the same to a cook."""
    low, high = sorted((one.time.value, other.time.value))
    return duration(low) == duration(high) or high / low - 1 < ALIKE


@rule("which.method", "common-practice", "computed")
def methods(asked: Asked) -> Part | None:
    """Two methods for one dish, or the pressure cooker against the open pot."""
    request = asked.request
    named = [m for m in (request.method, *request.methods_too) if m]
    if request.dish_class is None or not named or request.dishes_too:
        return None
    if named == ["pressure_cook"]:
        named.append(open_pot(request.dish, request.dish_class))
    if request.asked_way in OF_HEAT:
        return _hotter(asked, named)
    each = [asked.otherwise(topic="time", method=m, time_min=None, time_high_min=None, subject=None) for m in named]
    rivals = [Rival(doing(one.case, m), *one.time) for m, one in zip(named, each, strict=True) if one.time]
    return Part(headline=against(asked, rivals)) if len(rivals) > 1 else None


@rule("which.heat_under_it", "common-practice", "computed")
def heat_under_it(asked: Asked) -> Part | None:
    """A pot that may stand in a low oven or on the hob: its liquid is as hot in both, so it takes as long."""
    request = asked.request
    named = {request.method, *request.methods_too}
    usual = usual_method(request.dish, request.dish_class) if request.dish and request.dish_class else None
    pot = next((way for way in (request.method, usual) if way in marked_methods("oven_or_hob")), None)
    if request.dishes_too or pot is None or not {OVEN, OPEN_POT} <= named <= {OVEN, OPEN_POT, pot}:
        return None
    one = asked.otherwise(topic="time", method=pot, subject=None, temperature_c=None, temperature_of=None)
    if one.time is None:
        return None
    least = one.answer.figure("liquid_temperature")
    return Part(
        headline=say(
            "either-heat",
            time=middle(one.time[0]),
            doing=doing(one.case, pot),
            place=one.case.place,
            liquid=temp(least.value if least else one.case.here.boiling_c),
        )
    )


def _hotter(asked: Asked, methods: Sequence[str]) -> Part | None:
    """Which of two methods is the hotter here, or the cooler."""
    each = [asked.otherwise(topic="temperature", method=m, time_min=None, subject=None) for m in methods]
    heats = [
        (doing(one.case, m), found) for m, one in zip(methods, each, strict=True) if (found := compared(one.answer))
    ]
    if len(heats) < 2:
        return None
    hot = asked.request.asked_way == "hotter"
    (first, heat), *rest = sorted(heats, key=lambda one: one[1].middle_c, reverse=hot)
    others = [say("heat-of", heat=found.span, doing=named) for named, found in rest]
    same = all(abs(found.middle_c - heat.middle_c) < ALIKE_K for _, found in rest)
    way = "same" if same else "hotter" if hot else "cooler"
    return Part(
        headline=say(
            "heats", way=way, first=first, heat=heat.span, others=listed(others, "and"), place=asked.case.place
        )
    )


def open_pot(dish: str | None, dish_class: str) -> str:
    """How a dish is cooked where not under pressure."""
    usual = usual_method(dish, dish_class)
    return usual if usual and usual != "pressure_cook" else OPEN_POT


@rule("which.dish", "common-practice", "computed")
def two_dishes(asked: Asked) -> Part | None:
    """Two dishes, each by the method that is said where it suits it, or by its own."""
    request = asked.request
    if not request.dish or not request.dishes_too or request.topic not in ("time", "temperature", "pressure"):
        return None
    each = [_dish(asked, dish) for dish in (request.dish, *request.dishes_too)]
    rivals = [rival for one in each if (rival := _rival(one))]
    if len(rivals) < 2:
        return None
    stops = [c for one in each for c in one.answer.cautions if c.level == "stop"]
    poison = [one.case.food for one in each if changes.out_of_reach(one) and beans.boil_spares_poison(one.case)]
    told = against(asked, rivals)
    if poison:
        told = together(say("poison", beans=listed(poison, "and"), place=asked.case.place), told)
    return Part(headline=told, cautions=tuple(dict.fromkeys(stops)))


def rival_of(asked: Asked, dish: str) -> Rival | None:
    """A dish by the method that is said where it suits it, or by its own, with its time."""
    return _rival(_dish(asked, dish))


def _rival(one: Asked) -> Rival | None:
    return Rival(doing(one.case, one.request.method or ""), *one.time) if one.time else None


def _dish(asked: Asked, dish: str) -> Asked:
    row, method = dishes()[dish], asked.request.method
    by = method if method in row.methods or method == "pressure_cook" else row.methods[0]
    return asked.otherwise(
        topic="time", dish=dish, dish_class=row.dish_class, method=by, time_min=None, time_high_min=None, subject=None
    )


def against(asked: Asked, rivals: Sequence[Rival]) -> Words:
    """The quicker first, or the slower where that was asked for, each with its time."""
    first, *rest = ranked(rivals, slow_first=asked.request.asked_way in SLOWER)
    others = [say("time-for", time=duration(one.time.value), doing=one.named) for one in rest]
    told = say(
        "against",
        alike="yes" if all(alike(first, other) for other in rest) else "no",
        way="longer" if asked.request.asked_way in SLOWER else "quicker",
        first=first.named,
        time=middle(first.time),
        others=listed(others, "and"),
        place=asked.case.place,
    )
    return together(told, beside_recipe((first, *rest)))


def beside_recipe(rivals: Sequence[Rival]) -> Words:
    """By how much each is longer than its recipe says; nothing where none is, or all are alike."""
    more = [one.time.value / one.base.value - 1 for one in rivals if one.base]
    if len(more) < len(rivals) or max(more) - min(more) < ALIKE:
        return ""
    shares = [round_to(100 * abs(share), 5) for share in more]
    ways = [
        "as-written" if share < 5 else "longer" if by > 0 else "shorter" for share, by in zip(shares, more, strict=True)
    ]
    each = [
        say("by-share", doing=one.named, way=way, share=number(share))
        for one, way, share in zip(rivals, ways, shares, strict=True)
    ]
    return say("beside-recipe", each=listed(each, "and"))


@rule("which.temperature", "common-practice", "iapws-r7-97", "usda-fsis-safe-temperatures")
def temperatures(asked: Asked) -> Part | None:
    """Two temperatures: the one that is right here."""
    request = asked.request
    if len(request.temperatures_c) < 2 or request.topic not in marked("of_degrees"):
        return None
    if request.topic == "doneness":
        return _safe(asked)
    plain = asked.otherwise(temperature_c=None, temperature_of=None)
    found = compared(plain.answer)
    if found is None or (found.thing not in SET and found.thing != "boil"):
        return None
    nearest = min(request.temperatures_c, key=lambda c: abs(c - found.middle_c))
    written: Measure = oven(nearest) if found.thing in SET else temp(nearest)
    return Part(headline=say("nearest", thing=found.thing, nearest=written, here=found.span, place=asked.case.place))


def _safe(asked: Asked) -> Part | None:
    least = asked.answer.figure("safe_temperature")
    if least is None:
        return None
    enough = [c for c in sorted(asked.request.temperatures_c) if c >= least.value - 0.6]
    if not enough:
        return None
    return Part(headline=say("safe", enough=temp(enough[0]), least=temp(least.value), food=asked.case.food))


@rule("which.way", "common-practice")
def way(asked: Asked) -> Part | None:
    """Longer or shorter, hotter or cooler."""
    return next((part for item in changes.RULES if (part := item(asked)) is not None), None)


RULES = (places, two_dishes, heat_under_it, methods, temperatures, way)
