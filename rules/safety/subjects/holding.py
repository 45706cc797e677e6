"""Holding food hot or cold, and how long it may stand without either."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.methods import hold
from rules.model import Caution
from rules.physics.units import to_c
from rules.safety import holding_limits
from rules.safety.holding_limits import limit_c, limit_min, placed
from rules.safety.local_code import local_code
from rules.said import duration, sentences, temp

SLOW_COOKER_HOLD_C = to_c(200)
ROOM_C = to_c(70)
say = sentences("safety/subjects/holding")


@rule("safety.cold_hold", "fda-food-code-2022")
def cold(case: Case) -> Part:
    """How cold to hold, and time as the only control."""
    cold_c = limit_c("cold_hold")
    return Part(
        figures=(celsius("cold_hold_temperature", say("label"), cold_c, cold_c),),
        steps=(
            say("taken-out", cold=temp(cold_c), room=temp(ROOM_C), time=duration(limit_min("time_control"))),
            say("at-home"),
        ),
    )


@rule("safety.hold_at_200", "csu-high-altitude-food-prep", "computed")
def hold_at_200(case: Case) -> Part | None:
    """The advice to keep a slow cooker at 200 degF, which fails where water boils under that."""
    if not placed(case.request) or case.here.boiling_c >= SLOW_COOKER_HOLD_C:
        return None
    hot, boil = temp(limit_c("hot_hold")), temp(case.here.boiling_c)
    text = say("not-met", advice=temp(SLOW_COOKER_HOLD_C), boil=boil, hot=hot)
    return Part(cautions=(Caution("note", text, ("csu-high-altitude-food-prep", "computed")),))


NEEDS: tuple[str, ...] = ()
RULES = (hold.limits, cold, holding_limits.same_everywhere, hold_at_200, hold.dry_air, hold.rice, local_code)
