"""Doneness: what to check, and the reading of the centre. Safe temperatures never move; readings near the boil do."""

from __future__ import annotations

from rules import safety
from rules.book import Case, Part, celsius, rule
from rules.foods import dishes, meat
from rules.heat import done_readings
from rules.heat.by_eye import seen
from rules.heat.dry import heated_through, safe_figures
from rules.model import Caution, Figure
from rules.physics.units import round_to, to_c, to_f
from rules.safety import holding_limits, lethality
from rules.safety.holding_limits import placed
from rules.said import Said, exact_duration, number, sentences, temp, temp_drop, temp_span, together

# traits of what may have a bone in it
BONED = frozenset(("poultry", "whole_cut", "game", "fish"))
say = sentences("topics/doneness")

TENDER_C = to_c(203)
TENDER_CLASSES = ("collagen_cut", "mixed_stew")
SIMMER_BELOW_K = 3.0
# what heat alone, or this heat, does not make safe
HURTS = frozenset(
    (
        "lectin",
        "any_bean",
        "cyanogenic",
        "wild_foraged",
        "in_oil",
        "egg",
        "raw_egg",
        "raw_milk",
        "raw_fish",
        "breast_milk",
    )
)
# what the cook says is not there
UNREAD = "thermometer"
SAFETY_FORMS = frozenset(("safe", "enough", "is_true"))
# hotter is no reading of meat, but of an oven
READING_AT_MOST_C = to_c(210)
AT_SEA_M = 50.0


@rule("doneness.judged", "fda-food-code-2022", "usda-fsis-safe-temperatures")
def judged(case: Case) -> Part | None:
    """Whether the reading that the cook has in the centre is safe: at once, after a time held there, or never."""
    kind, asked_c = lethality.kind_judged(case.request.dish, case.dish_class), case.request.temperature_c
    if kind is None or asked_c is None or not 0 < asked_c <= READING_AT_MOST_C:
        return None
    found = lethality.judge(kind, asked_c, case.request.time_min)
    cook_on = Caution("stop", say("cook-on", asked=temp(asked_c)), (found.source,))
    return Part(
        headline=_judged(case, kind, found),
        cautions=(cook_on,) if found.needs_min is None else (),
        because=say("judged-because"),
        sources=(found.source,),
    )


def _judged(case: Case, kind: str, found: lethality.Judgement) -> Said:
    of = lethality.kind(kind)
    charted = safety.row_of(of.chart)
    return say(
        "judged",
        verdict=_verdict(case, charted, found),
        harm=_asked_how(case.request.forms),
        asked=temp(case.request.temperature_c or 0.0),
        food=case.request.dish or of.name,
        held=exact_duration(found.needs_min or 0.0),
        core=temp(charted.temp_c),
        rests="yes" if charted.rest_min else "no",
        rest=number(charted.rest_min, 0),
    )


def _asked_how(forms: tuple[str, ...]) -> str:
    """Whether it is asked if a reading does harm, or if it changes up here; else whether it is safe."""
    if "harm" in forms:
        return "yes"
    return "stays" if "changes" in forms and SAFETY_FORMS.isdisjoint(forms) else "no"


def _verdict(case: Case, charted: safety.SafeTemperature, found: lethality.Judgement) -> str:
    """Whether the reading is safe: never, safe, too_short, after_rest, or once it was held."""
    if found.needs_min is None:
        return "never"
    if found.safe:
        return "safe"
    if case.request.time_min is not None:
        return "too_short"
    return "after_rest" if charted.rest_min == found.needs_min else "once_held"


@rule("doneness.wanted", "common-practice", "usda-fsis-safe-temperatures")
def wanted(case: Case) -> Part | None:
    """How hot the centre of a whole cut is when it is as done as was asked, beside the safe temperature."""
    row = meat.doneness().get(case.request.wanted_doneness or "")
    charted = safety.safe_temperature(case.request.dish, case.dish_class)
    if row is None or charted is None or case.request.temperature_c is not None:
        return None
    if charted.kind != "whole_cut" or "pork" in case.traits:
        return Part(headline=_not_so_rare(case, charted)) if row.low_c < charted.temp_c - 0.1 else None
    middle_c, low_c, high_c = (round(t, 2) for t in ((row.low_c + row.high_c) / 2, row.low_c, row.high_c))
    return Part(
        figures=(Figure("wanted_temperature", say("wanted-label", done=row.label), middle_c, "degC", low_c, high_c),),
        headline=say(
            "wanted",
            food=_named(case),
            done=row.label,
            core=temp_span(row.low_c, row.high_c),
            safe=temp(charted.temp_c),
            rests="yes" if charted.rest_min else "no",
            rest=number(charted.rest_min, 0),
            under="yes" if row.low_c < charted.temp_c - 0.1 else "no",
            where=_where(case),
            place=case.place,
        ),
    )


def _not_so_rare(case: Case, charted: safety.SafeTemperature) -> Said:
    return say("not-so-rare", food=_named(case), safe=temp(charted.temp_c), where=_where(case), place=case.place)


@rule("doneness.by_eye", "usda-fsis-safe-temperatures", "common-practice")
def by_eye(case: Case) -> Part | None:
    """What to look for where no thermometer is there: signs that come late enough, and more time to be sure."""
    row, signs = safety.safe_temperature(case.request.dish, case.dish_class), seen(case)
    if row is None or signs is None or UNREAD not in case.request.lacking:
        return None
    return Part(
        headline=signs,
        steps=(say("by-eye-after"),),
        because=say("by-eye-because", core=temp(row.temp_c)),
    )


@rule("doneness.safe", "usda-fsis-safe-temperatures")
def safe(case: Case) -> Part | None:
    """The safe minimum temperature for this food, or the whole chart where no food is named."""
    row = safety.safe_temperature(case.request.dish, case.dish_class)
    if row is None:
        return _chart(case) if case.dish_class == "general" else _no_row(case)
    return Part(
        figures=safe_figures("safe_temperature", row),
        headline=say(
            "safe",
            food=_named(case),
            core=temp(row.temp_c),
            rests="yes" if row.rest_min else "no",
            rest=number(row.rest_min, 0),
            where=_where(case),
            place=case.place,
        ),
        steps=() if UNREAD in case.request.lacking else (say("two-places", of=_read_in(case)),),
        cautions=(safety.caution(case, row),),
    )


def _named(case: Case) -> str:
    """What the dish is called, or its class."""
    return case.request.dish or dishes.classes()[case.dish_class].label


def _read_in(case: Case) -> str:
    """What the thermometer goes into: meat that may have a bone, a sauce, or another middle."""
    if "poured" in case.traits:
        return "poured"
    return "boned" if not BONED.isdisjoint(case.traits) and "ground" not in case.traits else "other"


def _where(case: Case) -> str:
    return "here" if placed(case.request) and abs(case.here.elevation_m) > AT_SEA_M else "anywhere"


def _chart(case: Case) -> Part:
    return Part(
        figures=tuple(
            celsius(f"safe_{row.kind}_temperature", say("chart-label", food=row.food), row.temp_c, row.temp_c)
            for row in safety.chart()
        ),
        headline=say("chart", where=_where(case), place=case.place),
        steps=(say("two-places", of="other" if case.request.dish else "boned"),),
    )


def _no_row(case: Case) -> Part | None:
    if done_readings.reading(case.request.dish, case.dish_class):
        return None
    safe_asked = not SAFETY_FORMS.isdisjoint(case.request.forms) and HURTS.isdisjoint(case.traits)
    # what is held hot enough may stay there
    safe_asked = safe_asked and (case.request.time_min is None or case.request.temperature_of == "hold")
    asked_c = case.request.temperature_c or 0.0
    of_food = case.request.temperature_of in (None, "core", "hold") and "perishable" in case.traits
    return Part(
        headline=say(
            "by-its-signs",
            food=case.request.dish or dishes.classes()[case.dish_class].label,
            signs=_signs(case),
            safe="asked" if safe_asked else "unasked",
            asked=temp(asked_c),
            hot="yes" if of_food and holding_limits.limit_c("hot_hold") <= asked_c <= READING_AT_MOST_C else "no",
            hold=temp(holding_limits.limit_c("hot_hold")),
            reheat=temp(holding_limits.limit_c("reheat")),
        )
    )


def _signs(case: Case) -> Said | str:
    """What shows that such a dish is done."""
    return dishes.check_of(case.request.dish, case.dish_class, case.request.method)


@rule("doneness.check", "common-practice")
def check(case: Case) -> Part | None:
    """What shows that it is done."""
    if case.dish_class == "general" or UNREAD in case.request.lacking:
        return None
    unsaid = safety.safe_temperature(case.request.dish, case.dish_class) or done_readings.reading(
        case.request.dish, case.dish_class
    )
    # where there is no temperature to tell, the signs are the headline already
    return Part(steps=(say("check", signs=_signs(case)),)) if unsaid else None


@rule("doneness.core", "common-practice", "iapws-r7-97")
def core_reading(case: Case) -> Part | None:
    """The reading of the centre of breads, cakes, potatoes, custards and sugar, and what elevation does to it."""
    of = done_readings.reading(case.request.dish, case.dish_class)
    if of is None:
        return None
    low, high = of.here(case.here, case.sea)
    ends = (round((low + high) / 2, 2), "degC", round(low, 2), round(high, 2), round((of.low_c + of.high_c) / 2, 2))
    safe_one = safety.safe_temperature(case.request.dish, case.dish_class)
    return Part(
        figures=(Figure("core_temperature", say("reading"), *ends),),
        headline="" if safe_one else _reading_headline(case, of, low, high),
        because=_bound_why(case, of),
    )


def _reading_headline(case: Case, of: done_readings.Reading, low_c: float, high_c: float) -> Said:
    return say(
        "done",
        food=_named(case),
        done=temp_span(low_c, high_c),
        of="centre" if of.bound in ("boil", "set") else "all",
        where=_where(case),
        place=case.place,
        against=_against(case, of, low_c, high_c),
        sea=temp_span(of.low_c, of.high_c),
    )


def _against(case: Case, of: done_readings.Reading, low_c: float, high_c: float) -> str:
    """How the reading here lies to sea level's: it is sea level's, it differs, or it is the same here or anywhere."""
    if of.bound in ("boil", "above") and not placed(case.request):
        return "is_sea"
    if _as_read(low_c, high_c) != _as_read(of.low_c, of.high_c):
        return "differs"
    return "same" if placed(case.request) else "anywhere"


def _as_read(*temps_c: float) -> tuple[float, ...]:
    """Temperatures [degC] as a cook reads them in both units."""
    return tuple(read for t in temps_c for read in (round_to(to_f(t), 1), round_to(t, 0.5)))


def _bound_why(case: Case, of: done_readings.Reading) -> Said:
    boil_c = case.here.boiling_c
    if of.bound == "dry":
        return say("bound-dry")
    if of.bound == "set":
        return say("bound-set")
    if not placed(case.request):
        return say("bound-unplaced")
    if of.bound == "above":
        return say("bound-above", drop=temp_drop(abs(case.sea.boiling_c - boil_c)))
    if boil_c < of.high_c + done_readings.UNDER_BOIL_K:
        return say("bound-boil", boil=temp(boil_c))
    return say("bound-within-reach", boil=temp(boil_c))


@rule("doneness.same_everywhere", "fda-food-code-2022", "iapws-r7-97")
def same_everywhere(case: Case) -> Part | None:
    """Why safe temperatures do not move with elevation; only where one was given."""
    if safety.safe_temperature(case.request.dish, case.dish_class) is None and case.dish_class != "general":
        return None
    return holding_limits.same_everywhere(case)


@rule("doneness.whole_meat", "usda-fsis-safe-temperatures", "common-practice")
def whole_meat(case: Case) -> Part | None:
    """Meat and fish by any dry heat or in a pot: the reading is the same, the way there is slower."""
    if not heated_through(case.dish_class) or not ("meat" in case.traits or case.dish_class == "fish"):
        return None
    return Part(because=say("own-proteins", where=_where(case)))


@rule("doneness.tender", "common-practice", "iapws-r7-97")
def tender(case: Case) -> Part | None:
    """The tender temperature of a tough cut against the boil: above some elevation the pot cannot reach it."""
    if case.dish_class not in TENDER_CLASSES:
        return None
    pot_c = case.here.boiling_c - SIMMER_BELOW_K
    out_of_reach = placed(case.request) and pot_c < TENDER_C
    smoker = placed(case.request) and case.here.boiling_c < TENDER_C
    never = Caution("note", say("do-not-wait", tender=temp(TENDER_C)), ("common-practice",))
    return Part(
        figures=(celsius("tender_temperature", say("tender-label"), TENDER_C, TENDER_C),),
        because=together(
            say("tender", tender=temp(TENDER_C)),
            say("out-of-reach", place=case.place, pot=temp(pot_c)) if out_of_reach else say("within-reach"),
            say("in-a-smoker", tender=temp(TENDER_C), boil=temp(case.here.boiling_c)) if smoker else "",
        ),
        cautions=(never,) if out_of_reach else (),
    )


RULES = (judged, wanted, by_eye, safe, core_reading, check, same_everywhere, tender, whole_meat)
