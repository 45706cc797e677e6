"""Sous vide: a bath under the boil is as hot as it is set, so nothing changes until the boil comes down to it."""

from __future__ import annotations

from functools import cache

from rules import dishes, eggs, kinetics
from rules.boiling import boiling_point
from rules.book import Part, rule
from rules.case import Ambient, Case, celsius
from rules.dry import check, set_to, span
from rules.evaporation import drying_ratio
from rules.headline import doing, takes
from rules.model import Caution, Figure
from rules.say import duration, number, round_to, to_c
from rules.settings import Setting
from rules.tables import read_csv
from rules.times import stated_span, time_figures

POULTRY = "tables/sous_vide_poultry_baldwin-sous-vide.csv"
MARGIN_K = 2.0
DANGER_C = to_c(130)
PASTEURISED = ("tender_cut", "ground_meat", "sausage", "poultry_pieces", "whole_bird", "offal", "collagen_cut", "egg")
AS_THICK_MM = 25


def ceiling_c(air: Ambient) -> float:
    """The hottest a bath is worth setting [degC]: a little under the boil.

    >>> from rules.case import ambient
    >>> round(ceiling_c(ambient(0)))
    98
    """
    return air.boiling_c - MARGIN_K


def bath(case: Case) -> tuple[Setting, Setting]:
    """The bath here, under the local ceiling, and as it is wanted."""
    wanted, _ = set_to(case, "sous_vide")
    top = ceiling_c(case.here)
    return Setting(min(wanted.low_c, top), min(wanted.high_c, top), wanted.way), wanted


@rule("sous_vide.bath", "iapws-r7-97", "common-practice")
def bath_temperature(case: Case) -> Part:
    """The bath: as anywhere, up to just under the local boil."""
    here, wanted = bath(case)
    reached = here.high_c >= wanted.high_c - 0.05
    low, middle, high = (round(t, 2) for t in (here.low_c, here.middle_c, here.high_c))
    told = case.say.temp_span(here.low_c, here.high_c)
    headline = ""
    if case.request.topic == "temperature":
        headline = (
            f"Set the bath for {case.food} to {told} at {case.place}, as at any elevation."
            if reached
            else f"A bath at {case.place} goes no higher than {case.say.temp(ceiling_c(case.here))}: set it there."
        )
    return Part(
        figures=(
            Figure("bath_temperature", "Bath", middle, "degC", low, high, round(wanted.middle_c, 2)),
            celsius("bath_ceiling", "Hottest bath worth setting here", ceiling_c(case.here), ceiling_c(case.sea)),
        ),
        headline=headline,
        steps=(f"Set the bath to {told} and check it with a second thermometer.",),
        because=f"A bath under the boil is as hot as it is set, and the boil is {case.say.temp(case.here.boiling_c)} "
        "here. So times and temperatures stay as tested, pasteurisation too: germs die by temperature and time, not by "
        "air pressure."
        if reached
        else f"You want {span(case, wanted)}, but the boil, {case.say.temp(case.here.boiling_c)} here, stands in the "
        "way: the bath would boil, rattle and boil dry. Stay under it and give it longer, or steam it under pressure.",
    )


@rule("sous_vide.time", "common-practice", "iapws-r7-97")
def time(case: Case) -> Part | None:
    """How long: as at the baseline, unless the bath cannot be as hot."""
    stated, row = stated_span(case), dishes.sea_level_time(case.request.dish, case.dish_class, "sous_vide")
    if stated is None and row is None:
        return None
    low, high = stated or ((row.low_min, row.high_min) if row else (0.0, 0.0))
    here, wanted = bath(case)
    soft = kinetics.softening(case.dish_class)
    ends = sorted(
        kinetics.rate_factor(here.middle_c, min(wanted.middle_c, ceiling_c(case.there)), z)
        for z in (soft.z_low_k, soft.z_k, soft.z_high_k)
    )
    figures = time_figures(case, (low, high), (low * ends[0], (low + high) / 2 * ends[1], high * ends[2]))
    return Part(
        figures=figures,
        headline=takes(case, "sous_vide", figures) if case.request.topic == "time" else "",
        because="The bath cannot be as hot as at the baseline, so the time grows as in any cooler pot."
        if ends[1] > 1.01
        else "",
    )


@cache
def poultry_minutes() -> dict[tuple[int, int], float]:
    """Published pasteurisation times of poultry [min] by thickness [mm] and bath [degC]."""
    return {(int(r["thickness_mm"]), int(r["bath_c"])): float(r["time_min"]) for r in read_csv(POULTRY).rows}


@rule("sous_vide.poultry", "baldwin-sous-vide")
def poultry(case: Case) -> Part | None:
    """The published pasteurisation time of poultry at the bath's temperature, the same at every elevation."""
    here, _ = bath(case)
    minutes = poultry_minutes().get((AS_THICK_MM, int(here.low_c)))
    if case.dish_class != "poultry_pieces" or minutes is None:
        return None
    degrees = case.say.temp(int(here.low_c))
    return Part(
        figures=(Figure("pasteurised_after", f"Pasteurised, 25 mm (1 in) thick, in a bath at {degrees}", minutes, "min",
                        sea_level=minutes),),
        because=f"Published tables pasteurise poultry 25 mm (1 in) thick in {duration(minutes)} at {degrees}, counted "
        "from the refrigerator. That holds at every elevation; a thicker piece takes longer.",
    )  # fmt: skip


@rule("sous_vide.water", "computed", "common-practice")
def water(case: Case) -> Part | None:
    """What does change: the bath dries away faster, and gas in a bag takes more room."""
    if case.here.elevation_m < 600:
        return None
    more = number(round_to((drying_ratio(case.here.elevation_m) - 1) * 100, 5))
    return Part(
        steps=(
            "Cover the bath with a lid, foil or floating balls, and top it up with hot water.",
            "Press the air out of the bags and weigh them down: what gas is left swells and floats them.",
        ),
        because=f"An open bath loses water about {more} % faster in air this thin, and gas left in a bag takes about "
        f"{more} % more room.",
    )


@rule("sous_vide.safety", "fda-food-code-2022", "baldwin-sous-vide")
def safety(case: Case) -> Part | None:
    """Cool baths and raw food."""
    here, _ = bath(case)
    texts = []
    if case.dish_class in PASTEURISED:
        texts.append(
            "Under the usual safe temperature the food has to be held long enough to be pasteurised: follow a tested "
            "table for its thickness, and serve nothing less to the old, the very young, the pregnant or the ill. A "
            "restaurant needs the health department's approval."
        )
    if case.dish_class in ("fish", "shellfish") and here.low_c < 60:
        texts.append(
            "Fish at these temperatures is not pasteurised: use fish fit to eat raw, and serve it at once; the safe "
            f"temperature is {case.say.temp(to_c(145))}."
        )
    if here.low_c < DANGER_C and case.dish_class != "dairy":
        texts.append(f"Never hold food under {case.say.temp(DANGER_C)} for more than 4 h in all.")
    return Part(cautions=tuple(Caution("warn", t, ("fda-food-code-2022", "baldwin-sous-vide")) for t in texts))


@rule("sous_vide.vegetables", "common-practice", "computed")
def vegetables(case: Case) -> Part | None:
    """Vegetables and beans, whose bath is hot, against the ceiling."""
    _, wanted = bath(case)
    room_k = ceiling_c(case.here) - wanted.high_c
    if wanted.high_c < 80 or room_k > 8 or room_k < 0:
        return None
    return Part(
        because=f"{doing(case, 'sous_vide')} wants a hot bath, and here it stands only "
        f"{case.say.temp_drop(room_k + MARGIN_K)} under the boil: cover it well, or it loses water fast."
    )


NEEDS = ("elevation",)
RULES = (bath_temperature, time, poultry, vegetables, boiling_point, water, check, safety, eggs.sauce_safety)
