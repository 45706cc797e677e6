"""The critical limit of a plan written where water boils at 100 degC: the food's temperature, not the boil's."""

from __future__ import annotations

from rules.book import Case, Part, Rule, celsius, rule
from rules.heat.cook_times import stated_span
from rules.methods import sous_vide
from rules.model import Caution, Request
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.safety.local_code import local_code
from rules.said import duration, sentences, temp

# a plain boil, as plans name it; whole cuts and fish
PLAIN_BOIL_C = 100.0
say = sentences("safety/subjects/critical_limit")


@rule("safety.critical_limit", "fda-food-code-2022", "iapws-r7-97")
def critical_limit(case: Case) -> Part:
    """What to write in the place of a boil: the temperature at the centre of the food."""
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


@rule("safety.bath_limit", "fda-food-code-2022", "baldwin-sous-vide", "iapws-r7-97")
def bath_limit(case: Case) -> Part | None:
    """A bath under the boil: the limit is its temperature and time, the same at every elevation."""
    request, stated = case.request, stated_span(case)
    if request.method != "sous_vide" or request.temperature_c is None or stated is None or not placed(request):
        return None
    safe = sous_vide.verdict(case) or (sous_vide.judged(case) is None and "poultry" not in case.traits)
    if not safe or request.temperature_c > sous_vide.ceiling_c(case.here):
        return None
    bath = temp(request.temperature_c)
    return Part(
        headline=say(
            "bath",
            food=request.dish or say("the-food"),
            bath=bath,
            time=duration(stated[0]),
            place=case.place,
            boil=temp(case.here.boiling_c),
        ),
        figures=(
            celsius("bath_temperature", say("bath-label"), request.temperature_c, request.temperature_c),
            celsius("boiling_point", say("boil-label"), case.here.boiling_c, PLAIN_BOIL_C),
        ),
        steps=(say("bath-measure"), say("bath-water"), say("cooling", first=duration(limit_min("cool_first")))),
        cautions=(Caution("warn", say("bath-plan"), ("fda-food-code-2022",)),),
    )


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules: of a bath its own limit; of one that is not safe the refusal; every rule for None."""
    if request is None:
        return (bath_limit, *RULES)
    case = Case(request)
    if request.method == "sous_vide" and sous_vide.verdict(case) is False:
        return sous_vide.rules_for(request)
    return (bath_limit, local_code) if bath_limit(case) else RULES


NEEDS: tuple[str, ...] = ()
RULES = (critical_limit, holding_limits.same_everywhere, local_code)
