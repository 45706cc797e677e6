"""Preserving without jars: blanching for the freezer, and drying."""

from __future__ import annotations

from rules.amounts.portion import grams
from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.foods.dishes import traits_of
from rules.model import Caution, Figure, Request
from rules.physics.units import FT_PER_M, round_to, to_c
from rules.preserving.gate import is_drying
from rules.said import Value, bulk, duration, duration_span, sentences, temp, yes
from rules.tables import read_csv

BLANCH_FROM_FT, BLANCH_MORE_MIN = 5000, 1.0
PER_1000_FT_MIN, COUNTED_FROM_FT = 0.5, 2000
LONGEST_BLANCH_MIN = 30.0
# forms that ask whether jerky that is there is safe
SAFE = frozenset(("safe", "verdict"))
# what is left of the weight of meat that has hung till it is dry
LEFT = (0.45, 0.55)
BLANCHING = "tables/blanching_nchfp.csv"
# in the sun, a word of data/lexicon/packing.toml; what is dried there is heated or frozen against insects [degC]
SUN, PASTEURISED_C, COLD_C = "sun", 71.1, -17.8
say = sentences("preserving/freeze_dry")
DRY_C, MEAT_FIRST_C, POULTRY_FIRST_C = to_c(140), to_c(160), to_c(165)


def blanch_more_min(elevation_m: float) -> tuple[float, float]:
    """What two printed rules add to blanching for the freezer [min], less and more.

    One adds a minute from 5,000 ft up; the other half a minute for each 1,000 ft above 2,000 ft.

    source: csu-high-altitude-food-prep; the second rule common-practice

    >>> blanch_more_min(1524), blanch_more_min(0)
    ((1.0, 1.5), (0.0, 0.0))
    """
    feet = elevation_m * FT_PER_M
    step = BLANCH_MORE_MIN if feet >= BLANCH_FROM_FT - 1e-6 else 0.0
    slope = max(0.0, round_to(PER_1000_FT_MIN * (feet - COUNTED_FROM_FT) / 1000, 0.5))
    return min(step, slope), max(step, slope)


@rule("preserve.blanching", "csu-high-altitude-food-prep", "common-practice")
def blanching(case: Case) -> Part | None:
    """How much longer to blanch for the freezer."""
    if case.request.subject != "blanching":
        return None
    low, high = blanch_more_min(case.here.elevation_m)
    base, printed = case.request.time_min, printed_min(case.request.dish or "")
    more = Figure("blanch_more", say("blanch-more-label"), high, "min", low, high)
    if base is not None:
        within("blanching time", base, 0.25, LONGEST_BLANCH_MIN, "min", "Give the time that the recipe prints.")
    span = (base, base) if base is not None else printed
    added: dict[str, Value] = {
        "food": case.request.dish or say("vegetables"),
        "way": "longer" if low else "up_to" if high else "same",
        "span": duration_span(low, high),
        "most": duration(high),
        "place": case.place,
    }
    if span is None:
        headline, figures = say("blanch", **added), [more]
    else:
        least, most = span[0] + low, span[1] + high
        time, whose = duration_span(least, most), _whose(base, span)
        headline = say("blanch-for", time=time, base=duration_span(*span), whose=whose, **added)
        figures = [Figure("blanch_time", say("blanch-label"), most, "min", least, most), more]
    return Part(
        headline=headline,
        figures=tuple(figures),
        steps=(say("blanch-in"), say("blanch-cool")),
        because=say("blanch-because", boil=temp(case.here.boiling_c)),
        sources=("csu-high-altitude-food-prep", "common-practice", *(("nchfp", "from-memory") if printed else ())),
    )


def _whose(base: float | None, span: tuple[float, float]) -> str:
    """Whether a time is the cook's own, or one of the table for pieces of one size or of several."""
    return "own" if base is not None else "printed" if span[0] == span[1] else "sizes"


def printed_min(dish: str) -> tuple[float, float] | None:
    """How long a vegetable is blanched for the freezer below 5,000 ft [min], small pieces and large ones.

    source: nchfp, from memory

    >>> printed_min("green beans"), printed_min("pasta")
    ((3.0, 3.0), None)
    """
    rows = read_csv(BLANCHING).rows
    return next(((float(row["low_min"]), float(row["high_min"])) for row in rows if row["dish"] == dish), None)


def of_meat(request: Request) -> bool:
    """Whether what is dried is meat, poultry or fish, or jerky of one that was not named."""
    traits = traits_of(request.dish, request.dish_class)
    return request.subject == "jerky" or bool({"meat", "poultry", "fish", "jerky"} & set(traits))


@rule("preserve.hung", "common-practice", "usda-jerky")
def hung(case: Case) -> Part | None:
    """Meat that hangs to dry raw: done by the weight it has lost, with what that leaves alive."""
    if not tells_done(case.request):
        return None
    weight = grams(case.request.quantity)
    least, most = (bulk(round((weight or 0.0) * part, -1)) for part in LEFT)
    headline = say(
        "hung",
        food=case.food,
        weighed=yes(weight is not None),
        start=bulk(weight or 0.0),
        least=least,
        most=most,
    )
    return Part(
        headline=headline,
        steps=(say("hung-cut"), say("hung-air")),
        because=say("hung-because"),
        cautions=(Caution("warn", say("hung-raw"), ("usda-jerky",)),),
    )


def tells_done(request: Request) -> bool:
    """Whether it is asked when meat that hangs raw is dry."""
    return "hung" in traits_of(request.dish, request.dish_class) and "done" in request.forms


@rule("preserve.jerky", "usda-jerky", "from-memory")
def jerky(case: Case) -> Part | None:
    """Jerky: the meat is heated through before it is dried, and nothing of that goes by the elevation."""
    if not (is_drying(case.request) and of_meat(case.request)) or tells_done(case.request):
        return None
    bird = "poultry" in case.traits
    first_c = POULTRY_FIRST_C if bird else MEAT_FIRST_C
    figures = [
        celsius("meat_first_temperature", say("meat-label"), MEAT_FIRST_C, MEAT_FIRST_C),
        celsius("poultry_first_temperature", say("poultry-label"), POULTRY_FIRST_C, POULTRY_FIRST_C),
    ]
    return Part(
        headline=say(
            "jerky",
            judged=yes(not SAFE.isdisjoint(case.request.forms)),
            first=temp(first_c),
            bird=yes(bird),
            poultry=temp(POULTRY_FIRST_C),
        ),
        figures=(figures[bird], celsius("drying_temperature", say("dry-label"), DRY_C, DRY_C)),
        steps=(say("jerky-heat"), say("jerky-dry"), say("jerky-keep")),
        because=say("jerky-because"),
    )


@rule("preserve.sun_drying", "nchfp", "from-memory")
def sun_drying(case: Case) -> Part | None:
    """Drying in the sun, with no heat to set: what days it takes, what comes in at night, and how it is finished."""
    if not is_drying(case.request) or of_meat(case.request) or SUN not in case.request.packing:
        return None
    return Part(
        headline=say("sun", food=case.request.dish or say("fruit-and-vegetables")),
        steps=(say("sun-racks"), say("sun-nights"), say("sun-finish", finish=temp(PASTEURISED_C), cold=temp(COLD_C))),
        because=say("sun-because"),
        cautions=(Caution("note", say("sun-acid"), ("nchfp",)),),
    )


@rule("preserve.drying", "common-practice", "from-memory")
def drying(case: Case) -> Part | None:
    """Drying fruit and vegetables: the temperatures stay, the time shortens."""
    if not is_drying(case.request) or of_meat(case.request) or SUN in case.request.packing:
        return None
    named = case.request.dish is not None
    meat = say("meat-too", meat=temp(MEAT_FIRST_C), poultry=temp(POULTRY_FIRST_C))
    return Part(
        headline=say("dry", food=case.request.dish or say("fruit-and-vegetables"), temperature=temp(DRY_C)),
        figures=(celsius("drying_temperature", say("dry-label"), DRY_C, DRY_C),),
        steps=(say("dry-turn"), say("dry-keep")),
        because=say("dry-because"),
        cautions=() if named else (Caution("warn", meat, ("from-memory",)),),
    )
