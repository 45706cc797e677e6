"""The ice point: the one check of a thermometer that needs no elevation."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.model import Caution, Figure

RIGHT_K, REPLACE_K = 0.5, 5.0
LOWEST_C, HIGHEST_C = -15.0, 15.0


@rule("safety.ice_point", "crc-handbook", "common-practice")
def ice_point(case: Case) -> Part:
    """What a thermometer must read in melting ice, and how far off the cook's is."""
    reading = case.request.temperature_c
    zero = case.say.temp(0.0)
    part = Part(
        headline=f"In melting ice a thermometer reads {zero} at every elevation.",
        figures=(celsius("ice_point", "Melting ice", 0.0, 0.0),),
        steps=(
            "Fill a glass with crushed ice, add cold water to just under the top, stir, wait a minute.",
            "Tip in the middle, clear of glass and ice, until the reading stands. Do it weekly, and after every fall.",
        ),
        because="Ice melts at the same heat whatever the air weighs: the change over any mountain is two thousandths "
        "of a degree. The boil moves with elevation and weather, so use ice to find the error and the boil to check "
        "the top of the range.",
    )
    return part if reading is None else _read(case, part, reading)


def _read(case: Case, part: Part, reading_c: float) -> Part:
    hint = "Is the glass full of melting ice, and the unit right?"
    off = within("reading in melting ice", reading_c, LOWEST_C, HIGHEST_C, "degC", hint)
    size = case.say.temp_drop(abs(off))
    right = abs(off) <= RIGHT_K
    head = (
        f"Your thermometer is right: {case.say.temp(off)} in melting ice, at any elevation."
        if right
        else f"Your thermometer reads {size} too {'high' if off > 0 else 'low'}: melting ice is {case.say.temp(0.0)} "
        "everywhere."
    )
    fix = "Turn the nut under the dial or reset it" if abs(off) <= REPLACE_K else "Replace it"
    return Part(
        headline=head,
        figures=(Figure("thermometer_offset", "Thermometer off by", round(off, 2), "K"), *part.figures),
        steps=part.steps if right else (f"{fix}; until then {'take' if off > 0 else 'add'} {size}.", *part.steps),
        because=part.because,
        cautions=()
        if right
        else (
            Caution(
                "warn", "Do not judge meat, poultry or chilled food by it until it reads true.", ("common-practice",)
            ),
        ),
    )


NEEDS: tuple[str, ...] = ()
RULES = (ice_point,)
