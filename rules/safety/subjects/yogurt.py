"""Yogurt: milk heated well under any boil, then kept warm."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety.holding_limits import placed
from rules.safety.local_code import local_code

SCALD_C, PITCH_C = to_c(180), to_c(110)
INCUBATE_C = (to_c(105), to_c(112))
INCUBATE_MIN = (4 * 60.0, 8 * 60.0)


@rule("safety.yogurt", "common-practice", "from-memory")
def yogurt(case: Case) -> Part:
    """Scald, cool, incubate: the figures, and why none moves."""
    boil = (
        f" The boil at {case.place} is {case.say.temp(case.here.boiling_c)}, only "
        f"{case.say.temp_drop(case.here.boiling_c - SCALD_C)} above the scald: watch the pan."
        if placed(case.request) and case.here.boiling_c > SCALD_C
        else ""
    )
    return Part(
        headline=f"Heat milk for yogurt to {case.say.temp(SCALD_C)}, cool it to {case.say.temp(PITCH_C)}, stir in the "
        "culture and keep it warm 4 to 8 h, the same at every elevation.",
        figures=(
            celsius("scald_temperature", "Heat the milk to", SCALD_C, SCALD_C),
            celsius("pitch_temperature", "Add the culture at", PITCH_C, PITCH_C),
            Figure(
                "incubation_temperature", "Keep it at", round(PITCH_C, 2), "degC", *(round(t, 2) for t in INCUBATE_C)
            ),
            Figure("incubation_time", "For", sum(INCUBATE_MIN) / 2, "min", *INCUBATE_MIN),
        ),
        steps=("Start from pasteurised milk and a live culture, in clean jars; chill it as soon as it has set.",),
        because="Whey protein sets and the culture grows by temperature, and both lie under the boil of any kitchen."
        + boil,
        cautions=(
            Caution(
                "warn",
                "Throw it out if it has not set and soured within 12 h, or smells wrong: without acid nothing "
                "protects it.",
                ("common-practice",),
            ),
        ),
    )


NEEDS: tuple[str, ...] = ()
RULES = (yogurt, local_code)
