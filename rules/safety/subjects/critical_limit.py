"""The critical limit of a plan written where water boils at 100 degC: the food's temperature, not the boil's."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.safety import holding_limits, lethality
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.safety.local_code import local_code
from rules.said import Said, duration, exact_duration, sentences, temp

# a plain boil, as plans name it; whole cuts and fish
PLAIN_BOIL_C = 100.0
BATH = "sous_vide"
say = sentences("safety/subjects/critical_limit")


@rule("safety.bath_limit", "fda-food-code-2022", "baldwin-sous-vide")
def bath_limit(case: Case) -> Part | None:
    """What to write for food that is cooked in a bath: the bath and the time that it is held, judged by the tables."""
    kind, bath_c = lethality.kind_judged(case.request.dish, case.dish_class), case.request.temperature_c
    if not _in_a_bath(case) or kind is None or bath_c is None:
        return None
    needs_min = lethality.bath_min(kind, bath_c)
    held_min = lethality.judge(kind, bath_c).needs_min
    if needs_min is None or held_min is None:
        return None
    return Part(
        headline=_bath_headline(case, bath_c, needs_min),
        figures=(
            celsius("bath_temperature", say("bath-label"), bath_c, bath_c),
            Figure("bath_time", say("bath-time-label"), needs_min, "min"),
            *(
                (celsius("boiling_point", say("boil-label"), case.here.boiling_c, PLAIN_BOIL_C),)
                if placed(case.request)
                else ()
            ),
        ),
        steps=(
            say(
                "bath-log",
                held_at_all="yes" if held_min > 0 else "no",
                held=exact_duration(held_min),
                asked=temp(bath_c),
            ),
            say("bath-water"),
            say("cooling", first=duration(limit_min("cool_first"))),
            say("bath-reheat", reheat=temp(limit_c("reheat"))),
        ),
        because=say("bath-why"),
        cautions=(Caution("note", say("bath-approved"), ("fda-food-code-2022",)),),
        sources=("fda-food-code-2022", lethality.bath_source(kind)),
    )


def _in_a_bath(case: Case) -> bool:
    return case.request.method == BATH or case.request.temperature_of == "bath"


def _bath_headline(case: Case, bath_c: float, needs_min: float) -> Said:
    asked = case.request
    time_min = asked.time_min if asked.planned_min is None else asked.planned_min
    enough = "unsaid" if time_min is None else "yes" if time_min >= needs_min else "no"
    return say(
        "bath-headline",
        enough=enough,
        changes="asked" if "changes" in case.request.forms else "unasked",
        food=case.request.dish or say("the-food"),
        bath=temp(bath_c),
        time=exact_duration(time_min or needs_min),
        needs=exact_duration(needs_min),
        placed="yes" if placed(case.request) else "no",
        place=case.place,
    )


@rule("safety.critical_limit", "fda-food-code-2022", "iapws-r7-97")
def critical_limit(case: Case) -> Part | None:
    """What to write in the place of a boil: the temperature at the centre of the food."""
    if bath_limit(case) is not None:
        return None
    hot, reheat = limit_c("hot_hold"), limit_c("reheat")
    here = placed(case.request)
    boil = temp(case.here.boiling_c)
    return Part(
        headline=say(
            "headline",
            food=case.request.dish or say("the-food"),
            reheat=temp(reheat),
            hot=temp(hot),
            placed="yes" if here else "no",
            boil=boil,
            place=case.place,
        ),
        figures=(
            celsius("reheat_temperature", say("reheat-label"), reheat, reheat),
            celsius("hold_temperature", say("hold-label"), hot, hot),
            *((celsius("boiling_point", say("boil-label"), case.here.boiling_c, PLAIN_BOIL_C),) if here else ()),
        ),
        steps=(say("raw"), say("measure"), say("cooling", first=duration(limit_min("cool_first")))),
        because=say("why", boil=boil) if here else say("why-anywhere"),
        cautions=(Caution("note", say("approved"), ("fda-food-code-2022",)),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (bath_limit, critical_limit, holding_limits.same_everywhere, local_code)
