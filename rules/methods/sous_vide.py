"""Sous vide: a bath under the boil is as hot as it is set, so nothing changes until the boil comes down to it."""

from __future__ import annotations

from rules.book import Case, Part, Rule, celsius, rule
from rules.foods import dishes, eggs
from rules.foods.beans import bare, first_boil
from rules.heat.chamber import instead
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.dry import COLDEST_C, HOTTEST_C, check, set_to, span
from rules.heat.headline import doing, plural, takes
from rules.heat.heat_settings import Setting
from rules.heat.where_water_boils import boiling_point
from rules.methods.pressure_cook import way_out
from rules.model import Caution, Figure, Request
from rules.physics import kinetics
from rules.physics.ambient import Ambient
from rules.physics.evaporation import drying_ratio
from rules.physics.units import round_to, to_c
from rules.safety import lethality
from rules.safety.holding_limits import placed
from rules.say import duration, exact_duration, number

MARGIN_K = 2.0
DANGER_C = to_c(130)
PASTEURISED = ("tender_cut", "ground_meat", "sausage", "poultry_pieces", "whole_bird", "offal", "collagen_cut", "egg")
MUST_BE_PASTEURISED = ("poultry", "ground_meat")


def ceiling_c(air: Ambient) -> float:
    """The hottest a bath is worth setting [degC]: a little under the boil.

    >>> from rules.physics.ambient import ambient
    >>> round(ceiling_c(ambient(0)))
    98
    """
    return air.boiling_c - MARGIN_K


def bath(case: Case) -> tuple[Setting, Setting]:
    """The bath here, under the local ceiling, and as it is wanted: usually no cooler than anything printed for it."""
    wanted, stated = set_to(case, "sous_vide")
    kind = judged(case)
    if kind and not stated:
        least_c = lethality.judge(kind, wanted.low_c).least_c
        wanted = Setting(max(wanted.low_c, least_c), max(wanted.high_c, least_c), wanted.way)
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
    if not stated:
        least = least_min(case)
        low, high = max(low, least), max(high, least)
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


def least_min(case: Case) -> float:
    """The shortest time to name for poultry and minced meat, which nobody eats rare: until it is safe [min]."""
    kind = judged(case)
    minutes = lethality.bath_min(kind, bath(case)[0].low_c, thickness_mm(case)) if kind in MUST_BE_PASTEURISED else None
    return minutes or 0.0


@rule("sous_vide.pasteurised", "baldwin-sous-vide")
def pasteurised(case: Case) -> Part | None:
    """The published time after which a piece is safe in the bath as it is set, the same at every elevation."""
    kind, here = judged(case), bath(case)[0]
    size = thickness_mm(case)
    minutes = lethality.bath_min(kind, here.low_c, size) if kind else None
    if kind is None or minutes is None:
        return None
    piece, degrees = of_thickness(case), case.say.temp(here.low_c)
    return Part(
        figures=(
            Figure("pasteurised_after", f"Pasteurised, {piece}, in a bath at {degrees}", minutes, "min",
                   sea_level=minutes),
        ),
        because=f"Published tables pasteurise {lethality.kind(kind).name} {piece} in {exact_duration(minutes)} at "
        f"{degrees}, counted from the refrigerator. That holds at every elevation; a thicker piece takes longer.",
        sources=(lethality.bath_source(kind),),
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
    if "fish" in case.traits or ("shellfish" in case.traits and here.low_c < 60):
        texts.append(
            f"Under {case.say.temp(to_c(145))} fish and seafood are not pasteurised, however long they stay: then they "
            "are served as raw, frozen first against worms, at once, and to guests who are told."
        )
    if here.low_c < DANGER_C and "dairy" not in case.traits:
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


def judged(case: Case) -> str | None:
    """The kind of food that the bath is judged by; None for food without a safe temperature."""
    return lethality.kind_judged(case.request.dish, case.dish_class)


def thickness_mm(case: Case) -> int:
    """The piece that the printed times are read for [mm]: an inch, and for a whole bird the thickest."""
    return lethality.THICKEST_MM if case.dish_class == "whole_bird" else lethality.THIN_MM


def of_thickness(case: Case) -> str:
    """That piece in words."""
    return "70 mm (2¾ in) thick" if thickness_mm(case) == lethality.THICKEST_MM else "25 mm (1 in) thick"


def needed_min(kind: str, bath_c: float, size_mm: int) -> float | None:
    """How long a bath takes to make a kind of food safe [min]; None where no table says, or none goes so low.

    Eggs are printed by the bath; food that only has a safe temperature by its centre alone.
    """
    in_bath = lethality.bath_min(kind, bath_c, size_mm)
    if in_bath is not None or not lethality.kind(kind).tables:
        return in_bath
    return lethality.judge(kind, bath_c).needs_min


def verdict(case: Case) -> bool | None:
    """Whether the bath and the time that the cook gave are safe; None where either is missing or no table tells."""
    kind, asked_c = judged(case), case.request.temperature_c
    if kind is None or asked_c is None or not COLDEST_C < asked_c <= HOTTEST_C:
        return None
    if lethality.judge(kind, asked_c).needs_min is None:
        return False
    stated, needs = stated_span(case), needed_min(kind, asked_c, thickness_mm(case))
    if stated is None or needs is None:
        return None
    # a minute or less says that the centre is safe at once, not how long it takes to get there
    return stated[0] >= needs if needs > 1 else None


@rule("sous_vide.refused", "fda-food-code-2022", "baldwin-sous-vide")
def refused(case: Case) -> Part | None:
    """A bath too cool, or a time too short: no, and what to do instead."""
    kind, asked_c = judged(case), case.request.temperature_c
    if verdict(case) is not False or kind is None or asked_c is None:
        return None
    judgement, food = lethality.judge(kind, asked_c), case.request.dish or lethality.kind(kind).name
    never = judgement.needs_min is None
    bath_c = lethality.kind(kind).bath_c if never else asked_c
    needs = needed_min(kind, bath_c, thickness_mm(case))
    return Part(
        headline=f"No. {_never(case, kind, food, asked_c) if never else _too_short(case, food, asked_c)}",
        figures=(
            *((celsius("bath_instead", "Bath instead, at the least", bath_c, bath_c),) if never else ()),
            *((Figure("pasteurised_after", f"Pasteurised, {_piece(case, kind)}, in a bath at {case.say.temp(bath_c)}",
                      needs, "min", sea_level=needs),) if needs and needs > 1 else ()),
        ),
        steps=(_instead(case, kind, bath_c, needs),),
        because="Germs die by temperature and time, not by air pressure, so the printed times hold at every elevation. "
        "Nothing is read between their rows.",
        cautions=(Caution("stop", _stop(case, kind, asked_c, never=never), (judgement.source,)),),
        sources=tuple(dict.fromkeys((judgement.source, *((s,) if (s := lethality.bath_source(kind)) else ())))),
    )  # fmt: skip


def _piece(case: Case, kind: str) -> str:
    return "in the shell" if kind == "egg" else of_thickness(case)


def _never(case: Case, kind: str, food: str, asked_c: float) -> str:
    least = case.say.temp(lethality.judge(kind, asked_c).least_c)
    stated = stated_span(case)
    after = f" after {duration(stated[0])}, nor after any other time" if stated else " after any time"
    verb = "are" if plural(food) else "is"
    return (
        f"{food[:1].upper()}{food[1:]} at {case.say.temp(asked_c)} {verb} not safe{after}: what is printed for "
        f"{lethality.kind(kind).name} starts at {least}."
    )


def _too_short(case: Case, food: str, asked_c: float) -> str:
    kind, stated = judged(case) or "", stated_span(case) or (0.0, 0.0)
    needs = needed_min(kind, asked_c, thickness_mm(case)) or 0.0
    return (
        f"{duration(stated[0])} at {case.say.temp(asked_c)} is too short for {food} {_piece(case, kind)}: "
        f"{'they take' if plural(food) else 'it takes'} {exact_duration(needs)}."
    )


def _instead(case: Case, kind: str, bath_c: float, needs: float | None) -> str:
    if needs and needs > 1:
        thicker = "" if kind == "egg" else "; a thicker piece takes longer"
        return (
            f"Set the bath to {case.say.temp(bath_c)} and leave it there {exact_duration(needs)}, {_piece(case, kind)} "
            f"and counted from the refrigerator{thicker}."
        )
    return f"Set the bath to {case.say.temp(bath_c)} or hotter and take the centre to it, by thermometer."


def _stop(case: Case, kind: str, asked_c: float, *, never: bool) -> str:
    asked = case.say.temp(asked_c)
    if not never:
        return f"Too short at {asked}: germs can be left alive. Do not serve it."
    cold = " Freezing does not make it safe." if kind == "wild_game" else ""
    return f"{asked} is under every printed row for {lethality.kind(kind).name}: no time makes it safe.{cold}"


@rule("sous_vide.safe", "baldwin-sous-vide")
def safe(case: Case) -> Part | None:
    """A bath hot enough and a time long enough: yes."""
    kind, asked_c, stated = judged(case), case.request.temperature_c, stated_span(case)
    if not verdict(case) or kind is None or asked_c is None or stated is None:
        return None
    needs = needed_min(kind, asked_c, thickness_mm(case)) or 0.0
    food = case.request.dish or lethality.kind(kind).name
    return Part(
        headline=f"Yes. {duration(stated[0])} at {case.say.temp(asked_c)} makes {food} {_piece(case, kind)} safe, at "
        f"{case.place} as anywhere; the tables ask for {exact_duration(needs)}."
    )


def from_dry(case: Case) -> bool:
    """Whether the dish is dry beans that poison until they have boiled, and not a dish with beans in it."""
    return "lectin" in case.traits and case.dish_class == "dried_bean"


@rule("sous_vide.lectin", "fda-bad-bug-book", "usu-ask-extension")
def lectin(case: Case) -> Part | None:
    """Dry beans that poison until they have boiled: never in a bath."""
    if not from_dry(case):
        return None
    return Part(
        headline=f"No. Never cook dry {bare(case)} in a bath: it does not boil, and only a hard boil destroys their "
        "poison.",
        steps=(first_boil(case), "Then cook them on in the pot or the pressure cooker until they crush."),
        because="A bath stays under the boil, and beans that are warmed without boiling can poison worse than raw "
        "ones.",
        cautions=(Caution("stop", "A few beans of this kind that have not boiled hard make people ill.",
                          ("fda-bad-bug-book",)),),
    )  # fmt: skip


NEEDS = ("elevation",)
RULES = (safe, bath_temperature, time, pasteurised, vegetables, boiling_point, water, check, safety, eggs.sauce_safety)
AFTER_A_REFUSAL = (boiling_point, water, safety)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal where bath or time are not safe; every rule for None."""
    if request is None:
        return (*RULES, refused, lectin, way_out)
    case = Case(request)
    if from_dry(case):
        return (lectin, *((boiling_point, way_out) if placed(request) else ()))
    if verdict(case) is False:
        return (refused, *(map(instead, AFTER_A_REFUSAL) if placed(request) else ()))
    return RULES


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    case = Case(request)
    return () if from_dry(case) or verdict(case) is False else NEEDS
