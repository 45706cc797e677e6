"""Worked examples: what the rules answer, their reasons with the equations, and sums that a trainee can do again."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from typing import Any

from assistant.printing.lesson.asking import answer_at, equation
from assistant.printing.lesson.blocks import Block, Care, Lead, Sum, Text
from assistant.printing.lesson.themes import Example
from assistant.replies.quantities import Say, duration
from assistant.replies.sentences import worded
from rules import explanations
from rules.baking.rounding import measure, number
from rules.book import Case
from rules.model import Answer, Request, Units
from rules.said import Said, Words, sentences

WORDING = "printing/lesson"
OVEN_C = 176.667
# Below this a sum is told to a tenth [min].
FINE_MIN = 60.0
CAKE_OVEN = "oven"
GRAVE = ("stop", "warn")
FACTOR = re.compile(r"×(\d+(?:\.\d+)?)")
say = sentences("printing/lesson")


def worked(examples: Iterable[Example], elevation_m: float, units: Units) -> Iterator[Block]:
    """Examples at an elevation [m]; a reason or a caution that one before has given is not given again."""
    given: set[str] = set()
    for at, example in enumerate(examples, start=1):
        full, short = (answer_at(example.ask, elevation_m, units, depth) for depth in (3, 2))
        yield Lead(worded(_question(example, elevation_m), units), worded(say("worked-number", number=str(at)), units))
        for plain, whole in zip(short.because, full.because, strict=True):
            if whole.rule not in example.sums or whole.rule in given:
                continue
            given.add(whole.rule)
            if example.told:
                yield Text(str(plain.text))
            if sums := equation(plain, whole):
                yield Sum(sums)
        for row in example.reckoned:
            if (line := RECKONED[row["form"]](row, full, units)) is not None:
                yield Sum(worded(line, units))
        yield Text(str(full.headline), worded(say("answer"), units), strong=True)
        cautions = tuple(str(c.text) for c in full.cautions if c.level in GRAVE and str(c.text) not in given)
        given.update(cautions)
        if cautions:
            yield Care(worded(say("care"), units), cautions)


def _question(example: Example, elevation_m: float) -> Said:
    """What is asked, with those of the values that the question names."""
    case = Case(Request(elevation_m=elevation_m))
    values: dict[str, Any] = {"at": explanations.value("at")(case)}
    if any(row.get("id") == CAKE_OVEN for row in example.reckoned):
        from rules.said import oven

        values["oven"] = oven(OVEN_C)
    return Said(WORDING, f"example-{example.id}", tuple(values.items()))


def _times(row: dict[str, Any], answer: Answer, units: Units) -> Words | None:
    """The middle of the time at sea level by the factor that the equation of the time ends with."""
    sea, here = answer.figure("baseline_time"), answer.figure("cook_time")
    printed = [text for b in answer.because if b.rule == row["rule"] for text in FACTOR.findall(str(b.text))]
    if sea is None or here is None or not printed:
        return None
    middle_min, factor = ((sea.low or sea.value) + (sea.high or sea.value)) / 2, float(printed[-1])
    here_min = number(middle_min * factor, 1 if middle_min < FINE_MIN else 0)
    about = duration(here.value)
    return say("sum-times", sea=number(middle_min, 1), factor=number(factor), here=here_min, about=about)


def _share(row: dict[str, Any], answer: Answer, units: Units) -> Words | None:
    """An amount of the recipe by a change in per cent."""
    change = answer.figure(row["figure"])
    percent = 0.0 if change is None else round(change.value, 1)
    used = row["amount"] * (1 + percent / 100)
    return say(
        "sum-share", what=Said(WORDING, f"share-{row['id']}"),
        sign="more" if percent > 0 else "less" if percent < 0 else "same", percent=number(abs(percent), 1),
        amount=_amount(row["amount"], row["unit"]), used=_amount(used, row["unit"]),
    )  # fmt: skip


def _amount(amount: float, unit: str) -> str:
    return f"{number(amount, 0)} min" if unit == "min" else measure(amount, unit)


def _added(row: dict[str, Any], answer: Answer, units: Units) -> Words | None:
    """An oven set hotter."""
    change, write = answer.figure(row["figure"]), Say(units)
    if change is None:
        return None
    return say(
        "sum-added", what=Said(WORDING, f"share-{row['id']}"), shift=write.temp_drop(change.value),
        to=write.oven(row["temp_c"] + change.value), **{"from": write.oven(row["temp_c"])},
    )  # fmt: skip


def _fall(row: dict[str, Any], answer: Answer, units: Units) -> Words | None:
    """A temperature at sea level and here, in tenths, so that the sum comes out."""
    figure = answer.figure(row["figure"])
    if figure is None or figure.sea_level is None:
        return None
    sea, here = round(figure.sea_level, 1), round(figure.value, 1)
    fall = round(sea - here, 1)
    if fall > 0:
        return say("sum-fall", what=str(figure.label), sea=f"{sea:.1f}", fall=f"{fall:.1f}", here=f"{here:.1f}")
    if fall < 0:
        return say("sum-rise", what=str(figure.label), sea=f"{sea:.1f}", fall=f"{-fall:.1f}", here=f"{here:.1f}")
    return say("sum-level", what=str(figure.label), here=f"{here:.1f}")


def _times_faster(row: dict[str, Any], answer: Answer, units: Units) -> Words | None:
    """A time at a faster pace."""
    figure = answer.figure(row["figure"])
    if figure is None:
        return None
    time_min = row["time_min"]
    return say(
        "sum-times-faster", time=number(time_min), factor=number(figure.value), here=number(time_min / figure.value, 0)
    )


Reckoned = Callable[[dict[str, Any], Answer, Units], Words | None]
RECKONED: dict[str, Reckoned] = {
    "times": _times,
    "share": _share,
    "added": _added,
    "fall": _fall,
    "times_faster": _times_faster,
}
