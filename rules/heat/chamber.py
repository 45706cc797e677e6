"""Raw meat and poultry in an oven, a smoker, a grill or a crock that is set too cool.

What a temperature is of follows from the method: here it is the chamber's. Only where it is right for the centre of the
food, and far too cool for the chamber, is it taken for the centre's, and the answer says so.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from rules import book, safety
from rules.book import Case, Part, Rule, celsius, rule
from rules.foods import dishes
from rules.foods.meat import raw_meat
from rules.heat.heat_settings import own_setting
from rules.model import Caution, Request
from rules.physics.units import to_c
from rules.safety import lethality
from rules.safety.holding_limits import placed
from rules.said import Said, Words, exact_duration, number, sentences, temp, together
from rules.tables import read_csv

say = sentences("heat/chamber")

LIMITS = "tables/chamber_limits_common-practice.csv"
COLDEST_C = 20.0
# how far over its safe temperature cooks take the centre [K]: intact cuts up to well done
OVER_SAFE_K = 3.5
OVER_SAFE_INTACT_K = 11.0
INTACT = ("whole_cut", "pork", "raw_ham")
TOUGH = "collagen_cut"
# and a tough cut until it is tender
TENDER_C = (to_c(188), to_c(207))
LONG = 1.5
# what a temperature is of where it is not the chamber's
OF_THE_FOOD = ("core", "hold", "fridge")


@dataclass(frozen=True, slots=True)
class Limit:
    """Under which setting [degC] raw meat is refused in a chamber, and what to set instead; None: by its own marks.

    what: the chamber, a word that the wording chooses by
    """

    least_c: float
    advised_c: float | None
    what: str
    source: str


@cache
def _limits() -> dict[tuple[str, str], Limit]:
    return {
        (row["method"], kind): Limit(
            to_c(float(row["least_f"])),
            to_c(float(row["advised_f"])) if row["advised_f"] else None,
            row["what"],
            row["source"],
        )
        for row in read_csv(LIMITS).rows
        for kind in row["kinds"].split()
    }


def limit(case: Case) -> Limit | None:
    """The limit for this food by this method; None for food that is not raw meat and for methods without a chamber.

    source: usda-oven-325, usda-smoking-2012, usda-slow-cookers
    """
    raw = raw_meat(case.traits) or case.dish_class == "battered"
    kind = lethality.kind_judged(case.request.dish, case.dish_class) if raw else None
    return _limits().get((case.request.method or "", kind or ""))


def too_cool(case: Case) -> Limit | None:
    """The limit that the cook's setting is under; None where it is not, or where the dish is usually set so cool."""
    asked_c, of = case.request.temperature_c, limit(case)
    if asked_c is None or of is None or not COLDEST_C < asked_c < of.least_c - 0.1:
        return None
    own = own_setting(case.request.dish, case.request.method or "")
    return None if own and own.low_c - 0.1 <= asked_c <= own.high_c + 0.1 else of


def for_centre(case: Case) -> bool:
    """Whether a temperature too cool for the chamber is one to which cooks take the centre of this food.

    Not where it is to stand so for much longer than the food takes: then the chamber is meant.
    """
    asked_c, of = case.request.temperature_c, limit(case)
    if asked_c is None or of is None or _lasting(case):
        return False
    if case.dish_class == TOUGH and of.advised_c is None:
        return False
    if case.dish_class == TOUGH and TENDER_C[0] <= asked_c <= TENDER_C[1]:
        return True
    kind = lethality.kind_judged(case.request.dish, case.dish_class) or ""
    least_c = safe_c = safety.row_of(lethality.kind(kind).chart).temp_c
    over_k = OVER_SAFE_K
    if kind in INTACT and of.advised_c is not None:
        least_c, over_k = lethality.judge(kind, asked_c).least_c, OVER_SAFE_INTACT_K
    return least_c - 0.1 <= asked_c <= safe_c + over_k


def _lasting(case: Case) -> bool:
    usual = dishes.sea_level_time(case.request.dish, case.dish_class, case.request.method or "")
    return case.request.time_min is not None and usual is not None and case.request.time_min > LONG * usual.high_min


def plain(case: Case) -> Case:
    """The same question without the temperature and the time that were refused."""
    return Case(replace(case.request, temperature_c=None, time_min=None, time_high_min=None))


def instead(of: Rule) -> Rule:
    """A rule that speaks of the usual setting and time, in the place of those that were refused."""
    return Rule(of.id, of.sources, lambda case: of.work(plain(case)))


def at_usual_heat(of: Rule) -> Rule:
    """A rule that speaks of the usual setting, where the cook's temperature was for the centre."""
    return Rule(of.id, of.sources, lambda case: of.work(Case(replace(case.request, temperature_c=None))))


def guarded(request: Request, rules: tuple[Rule, ...]) -> tuple[Rule, ...]:
    """The rules of a method, after a refusal where the chamber is too cool for raw meat."""
    case = Case(request)
    if request.temperature_of in OF_THE_FOOD:
        return (*map(at_usual_heat, rules), cooler_than_asked)
    if not too_cool(case):
        return (*rules, cooler_than_asked)
    if for_centre(case):
        return (centre, *map(at_usual_heat, rules))
    return (refused, *(map(instead, rules) if placed(request) else ()))


def needs(request: Request, usual: tuple[str, ...]) -> tuple[str, ...]:
    """What must be known before a method answers: nothing more, where it is refused."""
    case = Case(request)
    if request.temperature_of in OF_THE_FOOD:
        return usual
    return () if too_cool(case) and not for_centre(case) else usual


def _set_instead(of: Limit) -> Said:
    if of.advised_c is None:
        return say("marks-instead")
    return say("set-instead", what=of.what, setting=temp(of.advised_c))


def danger(of: Limit) -> Said:
    """What happens to raw meat in a chamber that is too cool."""
    return say("danger", what=of.what, least=temp(of.least_c))


def safe_finish(case: Case) -> Words:
    """The safe temperature of the centre in words, with its rest."""
    safe = safety.safe_temperature(case.request.dish, case.dish_class)
    if safe is None:
        return ""
    return say("safe-finish", core=temp(safe.temp_c), rests="yes" if safe.rest_min else "no",
               rest=number(safe.rest_min, 0))  # fmt: skip


@rule("chamber.refused", "usda-oven-325", "usda-smoking-2012", "usda-slow-cookers")
def refused(case: Case) -> Part | None:
    """Raw meat in a chamber that is too cool: no, and what to set instead."""
    of, asked_c = too_cool(case), case.request.temperature_c
    if of is None or asked_c is None:
        return None
    figures = () if of.advised_c is None else (
        celsius("least_setting", say("least-setting", what=of.what), of.advised_c, of.advised_c),
    )  # fmt: skip
    return Part(
        headline=say(
            "refused",
            food=case.request.dish or say("raw-meat"),
            what=of.what,
            asked=temp(asked_c),
            instead=_set_instead(of),
            finish=safe_finish(case),
        ),
        figures=figures,
        because=say("refused-because"),
        cautions=(Caution("stop", danger(of), (of.source,)),),
        sources=(of.source,),
    )


@rule("chamber.centre", "usda-oven-325", "usda-fsis-safe-temperatures")
def centre(case: Case) -> Part | None:
    """A temperature for the centre, which is none for the chamber."""
    of, asked_c = too_cool(case), case.request.temperature_c
    if of is None or asked_c is None:
        return None
    kind = lethality.kind_judged(case.request.dish, case.dish_class) or ""
    found = lethality.judge(kind, asked_c)
    never = say(
        "for-the-centre",
        asked=temp(asked_c),
        holds="yes" if found.needs_min else "no",
        held=exact_duration(found.needs_min or 0),
        what=of.what,
    )
    return Part(
        headline=together(_takes(case), never),
        steps=() if of.advised_c else (say("marks"),),
        cautions=(Caution("warn", danger(of), (of.source,)),),
        sources=tuple(dict.fromkeys((of.source, found.source))),
    )


def _takes(case: Case) -> Words:
    """The headline of the time at the usual heat, where the time is asked."""
    module = book.room("methods", case.request.method or "")
    if case.request.topic != "time" or module is None:
        return ""
    part: Part | None = at_usual_heat(module.time).work(case)
    return part.headline if part else ""


@rule("chamber.cooler_than_asked", "usda-oven-325")
def cooler_than_asked(case: Case) -> Part | None:
    """Whole cuts in an oven that is cooler than the agency asks for."""
    asked_c, of = case.request.temperature_c, limit(case)
    if asked_c is None or of is None or of.advised_c is None or not of.least_c <= asked_c < of.advised_c - 0.1:
        return None
    return Part(cautions=(Caution("note", say("cooler-than-asked", setting=temp(of.advised_c)), (of.source,)),))


RULES = (refused, centre, cooler_than_asked)
