"""A time that the cook has, or means to give it."""

from __future__ import annotations

from rules import safety
from rules.book import Part, rule
from rules.forms import Asked, opens
from rules.forms.changes import out_of_reach
from rules.heat.headline import about, doing
from rules.heat.verdict import opened
from rules.model import Figure
from rules.said import Words, duration, number, sentences, temp, together

say = sentences("forms/enough")

LONGER, ANY = "longer", "any"
NEARLY = 0.95
FILLED = "dumpling"
VERDICTS = {"short": "no", "early": "just", "right": "yes", "more": "yes"}


@rule("enough.time", "common-practice", "computed")
def time(asked: Asked) -> Part | None:
    """A time that the cook has, or means to give it, against the time here."""
    planned = judged_min(asked)
    if planned is None or asked.request.topic not in ("time", "temperature", "pressure"):
        return None
    if out_of_reach(asked):
        return Part(headline=opened(opens(asked, "no"), asked.answer.headline))
    if asked.time is None:
        return _by_factor(asked, planned)
    fits = fit(planned, asked.time[0])
    behind = _safe_by(asked)
    verdict = "no" if behind and fits == "early" else VERDICTS[fits]
    # to whoever asks to give it longer, or to correct it, a verdict on the time would sound as one on the question
    way = asked.request.asked_way
    how = "none" if way == LONGER or (way == ANY and verdict == "yes") else opens(asked, verdict)
    return Part(headline=together(opened(how, _time(asked, planned, fits)), behind))


def _safe_by(asked: Asked) -> Words:
    """What safety goes by, where it is asked whether a time is safe: the middle of the food, and no clock."""
    if "safe" not in asked.request.forms:
        return ""
    charted = safety.safe_temperature(asked.request.dish, asked.case.dish_class)
    filled = charted is None and asked.case.dish_class == FILLED
    charted = safety.row_of("stuffing") if filled else charted
    return say("safe-by", core=temp(charted.temp_c), of="filling" if filled else "middle") if charted else ""


def judged_min(asked: Asked) -> float | None:
    """The time to be judged [min]: the planned one, or the cook's own where it is asked whether that is enough.

    Whether to give it longer than the recipe's is a question of what changes: its yes says that it takes longer.
    """
    request = asked.request
    if request.planned_min is None and request.asked_way == LONGER and "safe" not in request.forms:
        return None
    return request.time_min if request.planned_min is None and "enough" in request.forms else request.planned_min


def fit(planned_min: float, here: Figure) -> str:
    """How a time lies to the range here: short, early, right, or more than it takes."""
    low, high = here.low or here.value, here.high or here.value
    if planned_min < low * NEARLY:
        return "short"
    if planned_min > high / NEARLY:
        return "more"
    return "early" if planned_min < here.value * NEARLY else "right"


def _time(asked: Asked, planned_min: float, fits: str) -> Words:
    return say(
        "time",
        fits=fits,
        planned=duration(planned_min),
        here=about(asked.time[0]) if asked.time else "",
        doing=doing(asked.case, asked.request.method) if asked.request.method else asked.case.food,
        place=asked.case.place,
    )


def _by_factor(asked: Asked, planned_min: float) -> Part | None:
    factor = asked.answer.figure("time_factor")
    if factor is None:
        return None
    text = say(
        "by-factor",
        way="longer" if factor.value > 1.02 else "same",
        planned=duration(planned_min),
        there=duration(planned_min / factor.value),
        factor=number(factor.value, 1),
        place=asked.case.place,
        baseline=asked.case.baseline,
    )
    return Part(headline=text)
