"""Whether it pays to buy or to own a thing, with what it saves here."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked
from rules.forms.which import open_pot
from rules.heat.headline import doing
from rules.heat.verdict import opened
from rules.model import Figure
from rules.physics.units import FT_PER_M
from rules.said import Words, duration, sentences, temp_drop

say = sentences("forms/worth")

COOKERS = ("pressure_cooker", "stovetop_pressure_cooker", "electric_pressure_cooker")
# from here a cook who has none misses it
PAYS_FROM_FT = 5000.0
PAYS_MIN, PAYS_TIMES = 15.0, 1.6
# what stands for the dishes that gain most, where none is named: class and method of the open pot
BEANS, TOUGH_CUT = ("dried_bean", "simmer"), ("collagen_cut", "braise")
ADVICE = {
    **dict.fromkeys(("sugar_thermometer", "probe_thermometer"), "thermometer"),
    **dict.fromkeys(("gas_burner", "induction_hob", "electric_hob", "camp_stove"), "stove"),
    **dict.fromkeys(("standard_oven", "convection_oven", "toaster_oven", "deck_oven", "rack_oven"), "oven"),
    "rice_cooker": "rice-cooker", "slow_cooker": "slow-cooker", "immersion_circulator": "circulator",
    "kettle": "kettle", **dict.fromkeys(("pressure_canner", "dial_gauge_canner", "weighted_gauge_canner"), "canner"),
}  # fmt: skip


@rule("worth.pressure_cooker", "common-practice", "iapws-r7-97")
def pressure_cooker(asked: Asked) -> Part | None:
    """A pressure cooker: the minutes it saves here, for the dish or for beans and tough cuts."""
    request = asked.request
    if request.method != "pressure_cook" and not set(COOKERS) & set(request.equipment):
        return None
    if request.dish_class is None:
        return _for_any(asked)
    pair = saved(asked, request.dish_class, open_pot(request.dish, request.dish_class))
    if pair is None:
        return None
    slow, quick = pair
    pays = slow.value - quick.value >= PAYS_MIN and slow.value >= PAYS_TIMES * quick.value
    text = say(
        "for-dish",
        pays="yes" if pays else "no",
        quick=duration(quick.value),
        slow=duration(slow.value),
        doing=doing(asked.case, open_pot(request.dish, request.dish_class)),
        place=asked.case.place,
    )
    return Part(headline=opened("yes" if pays else "no", text))


def _for_any(asked: Asked) -> Part | None:
    pairs = [saved(asked, dish_class, method) for dish_class, method in (BEANS, TOUGH_CUT)]
    if None in pairs:
        return None
    (slow_beans, beans), (slow_cut, cut) = (pair for pair in pairs if pair)
    high = asked.case.here.elevation_m * FT_PER_M >= PAYS_FROM_FT - 1
    text = say(
        "for-any",
        high="yes" if high else "no",
        place=asked.case.place,
        beans=duration(beans.value),
        slow_beans=duration(slow_beans.value),
        cut=duration(cut.value),
        slow_cut=duration(slow_cut.value),
    )
    return Part(headline=opened("yes" if high else "no", text))


def saved(asked: Asked, dish_class: str, method: str) -> tuple[Figure, Figure] | None:
    """The time in the open pot and under pressure; None where one is not known."""
    dish = asked.request.dish if asked.request.dish_class == dish_class else None
    same = {"topic": "time", "subject": None, "dish": dish, "dish_class": dish_class, "time_min": None}
    slow, quick = (asked.otherwise(**same, method=m, time_high_min=None).time for m in (method, "pressure_cook"))
    return (slow[0], quick[0]) if slow and quick else None


@rule("worth.thing", "common-practice", "from-memory")
def thing(asked: Asked) -> Part | None:
    """Another thing that was named: whether it helps here, and against what."""
    about = next((ADVICE[id] for id in asked.request.equipment if id in ADVICE), None)
    about = "flour" if asked.request.topic == "bake_adjust" and asked.request.subject == "flour" else about
    if about is None:
        return None
    drop_k = asked.case.sea.boiling_c - asked.case.here.boiling_c
    return Part(headline=_thing(asked, about, drop_k))


def _thing(asked: Asked, about: str, drop_k: float) -> Words:
    return say("thing", about=about, place=asked.case.place, drop=temp_drop(drop_k))


RULES = (pressure_cooker, thing)
