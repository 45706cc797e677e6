"""Pressure canning: the time stays, the pressure goes up with the elevation."""

from __future__ import annotations

from functools import cache

from rules.book import Part, rule
from rules.case import Case
from rules.methods.pressure_cook import inside_c
from rules.model import Caution, Figure
from rules.preserving.bands import CEILING_FT, Band, bands, in_band, whole_feet
from rules.preserving.boiling_water import band_figure
from rules.preserving.times import stated_min
from rules.preserving.vessel import PRESSURE, food_of, gauge, named, vessel
from rules.say import PSI_PER_PA, number

TABLE = "canning_pressure_usda-aib-539"
USDA_DIAL_TO_FT = 8000
BOTULISM_C = 115.56
ROUNDING_PSI = 0.05
STOP_HIGHER = Caution(
    "stop",
    f"No printed canning table goes above {CEILING_FT:,} ft, where 15 psi no longer reaches 240 °F (116 °C). Freeze or "
    "dry it, or ask your extension office.",
    ("usda-aib-539", "extension-canning-8000"),
)


@cache
def _bands(gauge: str, food: str) -> tuple[Band, ...]:
    return bands(TABLE, "psi", gauge=gauge, food=food)


def canner_psi(gauge: str, food: str, elevation_m: float) -> Band | None:
    """The band of the printed table with its gauge pressure [psi], or None where the table has none so high.

    gauge: "dial" or "weighted"; food: "low_acid" (vegetables, meat, fish) or "high_acid" (fruit)
    source: usda-aib-539; the dial gauge over 8,000 ft extension-canning-8000

    >>> canner_psi("dial", "low_acid", 2133.6).value, canner_psi("weighted", "low_acid", 2133.6).value
    (14.0, 15.0)
    """
    return in_band(_bands(gauge, food), whole_feet(elevation_m))


def _food(case: Case) -> str:
    return "high_acid" if food_of(case.request).acid else "low_acid"


@rule("preserve.pressure", "usda-aib-539", "iapws-r7-97")
def pressure(case: Case) -> Part | None:
    """The gauge pressure here, dial and weighted, and the check of a pressure the cook named."""
    if vessel(case.request) != PRESSURE:
        return None
    found = {kind: canner_psi(kind, _food(case), case.here.elevation_m) for kind in ("dial", "weighted")}
    known = {kind: band for kind, band in found.items() if band}
    if not known:
        return Part(
            headline=f"I have no canner pressure for {number(whole_feet(case.here.elevation_m))} ft: no printed table "
            f"goes above {CEILING_FT:,} ft.",
            cautions=(STOP_HIGHER,),
        )
    return Part(
        headline=_headline(case, known),
        figures=(
            *(_figure(case, kind, band) for kind, band in known.items()),
            *_time(case),
            band_figure(known.get("dial") or known["weighted"]),
        ),
        steps=(
            "Process for the time in the tested recipe: it is the same at every elevation. Only the pressure changes.",
            "Let steam pour out of the vent for 10 min before you close it, and start the clock at pressure.",
            "If the pressure falls under the mark, bring it back and start the time again from nothing.",
            *_tomatoes(case),
        ),
        because=_why(case, known),
        cautions=(*_dial_beyond_usda(case, known), *_dial_check(case)),
        sources=tuple(dict.fromkeys((*(band.source for band in known.values()), "iapws-r7-97"))),
    )


def _said(case: Case, kind: str, band: Band) -> str:
    psi = case.say.gauge(band.value / PSI_PER_PA)
    return f"{psi} on a dial gauge" if kind == "dial" else f"the {psi} weight on a weighted gauge"


def _headline(case: Case, known: dict[str, Band]) -> str:
    kind = gauge(case.request)
    asked = {kind: known[kind]} if kind in known else known
    wanted = " or ".join(_said(case, of, band) for of, band in asked.items())
    if case.request.gauge_pa is None:
        none = f"No table gives a {kind} gauge pressure here. " if kind and kind not in known else ""
        what = f"pressure-can {case.request.dish}" if case.request.dish else "pressure-can"
        never = "Never in boiling water, only under pressure: " if _way_unsaid(case) else ""
        at = f"at {case.place}" if never else f"At {case.place}"
        return f"{none}{never}{at} {what} at {wanted}; the process time does not change."
    psi, said = case.request.gauge_pa * PSI_PER_PA + ROUNDING_PSI, case.say.gauge(case.request.gauge_pa)
    needed = [band.value for band in asked.values()]
    verdict = (
        "is too low" if psi < min(needed) else "is enough" if psi >= max(needed) else "is enough on a dial gauge only"
    )
    return f"{said} {verdict} at {case.place}: it takes {wanted}."


def _way_unsaid(case: Case) -> bool:
    """Whether a low-acid food is to be canned and the cook has not said under pressure."""
    return food_of(case.request).kind == "low_acid" and named(case.request) is None and not case.request.equipment


def _figure(case: Case, kind: str, band: Band) -> Figure:
    sea = canner_psi(kind, _food(case), 0.0)
    label = "Dial gauge" if kind == "dial" else "Weighted gauge"
    return Figure(f"{kind}_gauge", label, band.value, "psi", sea_level=sea.value if sea else None)


def _time(case: Case) -> tuple[Figure, ...]:
    time = stated_min(case.request)
    return (Figure("process_time", "Process time, unchanged", time, "min", sea_level=time),) if time else ()


def _why(case: Case, known: dict[str, Band]) -> str:
    printed = "; ".join(f"{kind} gauge {number(band.value)} psi for {band.words}" for kind, band in known.items())
    text = f"As printed: {printed}."
    if _food(case) == "high_acid":
        return f"{text} Acid food in a pressure canner needs less pressure than vegetables and meat."
    psi = max(known.values(), key=lambda band: band.value).value
    here_c = inside_c(case.here, psi / PSI_PER_PA)
    return (
        f"{text} Botulism spores in low-acid food die at {case.say.temp(BOTULISM_C)}, which takes pressure: a gauge "
        f"reads what is added to the thinner air outside, and {case.say.gauge(psi / PSI_PER_PA)} gives "
        f"{case.say.temp(here_c)} here."
    )


def _tomatoes(case: Case) -> tuple[str, ...]:
    if "tomato" not in (case.request.dish or ""):
        return ()
    return (
        "Tomato tables print pairs of time and pressure; take one pair whole. Whole tomatoes in water, weighted "
        "gauge: 15 min at 5 psi up to 1,000 ft, at 10 psi above; 10 min at 10 psi up to 1,000 ft, at 15 psi above.",
    )


def _dial_beyond_usda(case: Case, known: dict[str, Band]) -> tuple[Caution, ...]:
    if whole_feet(case.here.elevation_m) <= USDA_DIAL_TO_FT:
        return ()
    goes_on = (
        "extension texts go on to 10,000 ft with 15 psi, which is given here. Confirm it with your extension office"
        if "dial" in known
        else "there is no tested dial pressure for this food here. Use a weighted gauge or boiling water, by a tested "
        "recipe"
    )
    text = f"The USDA dial-gauge table ends at 8,000 ft; {goes_on}."
    return (Caution("warn", text, ("usda-aib-539", "extension-canning-8000")),)


def _dial_check(case: Case) -> tuple[Caution, ...]:
    text = "Have a dial gauge checked every year; extension offices do it. Follow the canner's own instructions."
    return () if gauge(case.request) == "weighted" else (Caution("warn", text, ("usda-aib-539", "nchfp")),)


@rule("preserve.low_acid", "usda-aib-539")
def low_acid(case: Case) -> Part | None:
    """Low-acid food in boiling water or open steam: stop, and the right way."""
    food, way = food_of(case.request), vessel(case.request)
    if food.kind != "low_acid":
        return None
    what = case.request.dish or "vegetables, meat, fish and beans"
    boil = case.say.temp(case.here.boiling_c)
    at_all = f"{case.say.temp(case.sea.boiling_c)} at sea level"
    if case.request.elevation_m is not None and case.here.boiling_c < case.sea.boiling_c - 0.1:
        at_all = f"{boil} at {case.place}, and {at_all.replace(' at', ' even at')}"
    heat = case.say.temp(BOTULISM_C)
    text = (
        f"Never can {what} in boiling water or open steam, at any elevation and for any length of time: it is low in "
        "acid, and botulism spores live through the boil."
    )
    if way == PRESSURE:
        return Part(cautions=(Caution("stop", text, ("usda-aib-539",)),))
    return Part(
        headline=f"No. Do not can {what} in a {'boiling-water' if way != 'steam' else 'steam'} canner. It is low in "
        "acid and needs a pressure canner.",
        because=f"Spores of botulism die at {heat}. Boiling water gives {at_all}; only pressure goes higher.",
        steps=(
            f"Use a pressure canner with a tested recipe for this food and jar{_right_way(case)}; or freeze it; or "
            "pickle it by a tested recipe.",
        ),
        cautions=(Caution("stop", text, ("usda-aib-539",)),),
    )


def _right_way(case: Case) -> str:
    """The pressures of the right way, where the elevation is known and a table reaches it."""
    if case.request.elevation_m is None:
        return ""
    found = {kind: canner_psi(kind, "low_acid", case.here.elevation_m) for kind in ("dial", "weighted")}
    wanted = " or ".join(_said(case, kind, band) for kind, band in found.items() if band)
    return f", here {wanted}" if wanted else ", if one reaches so high"


@rule("preserve.soup", "usda-aib-539")
def soup(case: Case) -> Part | None:
    """Soups and stews: what may not be in the jar."""
    if case.dish_class not in ("soup", "mixed_stew") and "soup" not in (case.request.dish or ""):
        return None
    text = (
        "No noodles, pasta, rice, flour, cream or milk in the jar, and dried beans and peas fully rehydrated first: "
        "they keep the heat out. Thicken it when you serve it."
    )
    return Part(cautions=(Caution("warn", text, ("usda-aib-539",)),))
