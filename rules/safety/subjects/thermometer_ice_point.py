"""The ice point: the one check of a thermometer that needs no elevation."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.model import Caution, Figure
from rules.said import Said, sentences, temp, temp_drop

RIGHT_K, REPLACE_K = 0.5, 5.0
LOWEST_C, HIGHEST_C = -15.0, 15.0
say = sentences("safety/subjects/thermometer_ice_point")


@rule("safety.ice_point", "crc-handbook", "common-practice")
def ice_point(case: Case) -> Part:
    """What a thermometer must read in melting ice, and how far off the cook's is."""
    reading = case.request.temperature_c
    part = Part(
        headline=say("headline", zero=temp(0.0)),
        figures=(celsius("ice_point", say("label"), 0.0, 0.0),),
        steps=(say("fill"), say("tip")),
        because=say("because"),
    )
    return part if reading is None else _read(part, reading)


def _read(part: Part, reading_c: float) -> Part:
    hint = "Is the glass full of melting ice, and the unit right?"
    off = within("reading in melting ice", reading_c, LOWEST_C, HIGHEST_C, "degC", hint)
    right = abs(off) <= RIGHT_K
    return Part(
        headline=_verdict(off, right=right),
        figures=(Figure("thermometer_offset", say("offset-label"), round(off, 2), "K"), *part.figures),
        steps=part.steps if right else (_mend(off), *part.steps),
        because=part.because,
        cautions=() if right else (Caution("warn", say("do-not-judge"), ("common-practice",)),),
    )


def _verdict(off_k: float, *, right: bool) -> Said:
    if right:
        return say("right", reading=temp(off_k))
    return say("wrong", size=temp_drop(abs(off_k)), way="high" if off_k > 0 else "low", zero=temp(0.0))


def _mend(off_k: float) -> Said:
    fix = "reset" if abs(off_k) <= REPLACE_K else "replace"
    return say("mend", fix=fix, way="take" if off_k > 0 else "add", size=temp_drop(abs(off_k)))


NEEDS: tuple[str, ...] = ()
RULES = (ice_point,)
