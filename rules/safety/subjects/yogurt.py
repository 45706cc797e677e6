"""Yogurt: milk heated well under any boil, then kept warm."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety.holding_limits import placed
from rules.safety.local_code import local_code
from rules.said import Said, sentences, temp, temp_drop, together

SCALD_C, PITCH_C = to_c(180), to_c(110)
INCUBATE_C = (to_c(105), to_c(112))
INCUBATE_MIN = (4 * 60.0, 8 * 60.0)
say = sentences("safety/subjects/yogurt")


@rule("safety.yogurt", "common-practice", "from-memory")
def yogurt(case: Case) -> Part:
    """Scald, cool, incubate: the figures, and why none moves."""
    low, high = (round(temp_c, 2) for temp_c in INCUBATE_C)
    return Part(
        headline=say("headline", scald=temp(SCALD_C), pitch=temp(PITCH_C)),
        figures=(
            celsius("scald_temperature", say("scald-label"), SCALD_C, SCALD_C),
            celsius("pitch_temperature", say("pitch-label"), PITCH_C, PITCH_C),
            Figure("incubation_temperature", say("keep-label"), round(PITCH_C, 2), "degC", low, high),
            Figure("incubation_time", say("time-label"), sum(INCUBATE_MIN) / 2, "min", *INCUBATE_MIN),
        ),
        steps=(say("start-from"),),
        because=together(say("because"), _boil(case)),
        cautions=(Caution("warn", say("not-set"), ("common-practice",)),),
    )


def _boil(case: Case) -> Said | None:
    room_k = case.here.boiling_c - SCALD_C
    if not placed(case.request) or room_k <= 0:
        return None
    return say("near-the-boil", place=case.place, boil=temp(case.here.boiling_c), room=temp_drop(room_k))


NEEDS: tuple[str, ...] = ()
RULES = (yogurt, local_code)
