"""What is asked about a bake: which component, of what style, and between which two places."""

from __future__ import annotations

from rules.baking import components
from rules.baking.bands import Span
from rules.baking.batch import Batch
from rules.baking.parts import part_of
from rules.baking.styles import is_a, style_of
from rules.book import Case
from rules.model import Request
from rules.physics import air
from rules.recipe import Recipe
from rules.said import Words, sentences, together

say = sentences("topics/bake_adjust/asked")
COMPONENT_OF = {
    "powder": "leavening", "soda": "leavening", "sugar": "sugar", "icing_sugar": "sugar", "syrup": "sugar",
    "liquid": "liquid", "sour_liquid": "liquid", "flour": "flour", "starch": "flour", "egg": "egg",
    "white": "foam", "yolk": "egg", "fat": "fat", "salt": "salt", "yeast": "yeast", "starter": "proof",
}  # fmt: skip
SUBJECTS = (
    "leavening", "yeast", "sugar", "liquid", "flour", "egg", "fat", "salt", "oven", "time", "proof", "pan", "foam",
)  # fmt: skip
# a batter that goes from one tin into another, asked of nothing but its tins
TIN_SWAP = "tin_swap"
# which way of an amount is asked about, and the forms in which a verdict is wanted on it
WAYS, FOLLY = ("more_of", "less_of"), "folly"
WANT_A_VERDICT = frozenset(("is_ok", "changes", "can_it", FOLLY))
YEASTED = ("yeast", "proof")
# what is timed by its rise rather than by its bake, where a time is named and nothing else
RISEN = (None, "general", "yeast_bread", "pizza", "laminated", "flatbread")
# a dough rises under this, and no oven bakes so cool [degC]
COOLEST_OVEN_C = 60.0
HOW_HOT = "how_hot"
# where the published tables begin [m]
FIRST_BAND_M = 914.4
# from here on a recipe that is right there has been changed already [m]
HIGH_BASELINE_M = 600.0


def asked(case: Case) -> str | None:
    """The component that is asked about; None for all of them.

    A subject that plays no part in a formula counts as none. A temperature without a subject is the oven's, a time
    without one is a rise or a bake.
    """
    request = case.request
    if len(request.tins) > 1 and request.subject != "pan":
        return TIN_SWAP
    if request.subject in SUBJECTS:
        return request.subject
    if request.subject and (component := COMPONENT_OF.get(part_of(request.subject).name)):
        return component
    if request.temperature_c is not None and request.temperature_c >= COOLEST_OVEN_C:
        return "oven"
    if HOW_HOT in request.forms[:1] and request.method in (None, "bake") and request.time_min is None:
        return "oven"
    if request.time_min is not None:
        return "proof" if request.dish_class in RISEN else "time"
    return None


def style(case: Case) -> str:
    """The style whose share of the published change applies."""
    if case.request.dish_class in (None, "general") and asked(case) in YEASTED:
        return "yeast_bread"
    name = style_of(case.dish_class)
    if is_a(name, "baked"):
        return name
    # "an egg more in my cake" is heard as a dish of eggs
    return "layer_cake" if case.request.dish_class in (None, "egg") else "other"


def batch(case: Case) -> Batch:
    """The two places and the style, without a recipe."""
    request = case.request
    here_m = request.elevation_m
    if here_m is None:
        here_m = air.elevation_m(case.here.pressure_pa)
    return Batch.of(Recipe(), style(case), case.there.elevation_m, here_m, request.units)


def wanted(case: Case, component: str) -> bool:
    """Whether this component is asked about, or all are and the style has advice on it."""
    one = asked(case)
    return one == component if one else components.share(style(case), component) is not None


def baked(case: Case) -> Words:
    """What is baked."""
    if case.request.dish and case.request.dish_class != "egg":
        return case.request.dish
    return say("style", style=style(case))


def counted_from(case: Case, said: Words) -> Words:
    """A change, with where the recipe is right already, where that is no lowland: only the difference is made."""
    from_m = case.request.from_elevation_m
    if from_m is None or from_m < HIGH_BASELINE_M:
        return said
    return together(said, say("counted-from", baseline=case.baseline))


def percents(ratio: Span) -> tuple[float, str, float, float]:
    """A ratio as the value, unit and range of a figure: how far it is from one [percent]."""
    value, low, high = (round(100 * (x - 1), 1) + 0.0 for x in (ratio.value, ratio.low, ratio.high))
    return value, "percent", low, high


def verdict_on_way(request: Request, way: str) -> str:
    """Yes or no where it was asked whether more or less of a thing is right, or was a mistake; "" where it was not.

    way: which way it goes, more_of or less_of, or "" where it stays

    >>> verdict_on_way(Request(asked_way="more_of", forms=("folly",)), "more_of")
    'no'
    """
    if request.asked_way not in WAYS or WANT_A_VERDICT.isdisjoint(request.forms):
        return ""
    return "yes" if (request.asked_way == way) != (FOLLY in request.forms) else "no"
