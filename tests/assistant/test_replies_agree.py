"""Headline, figures and steps of one reply agree, over questions made of the lexicon and the forms a question has."""

from __future__ import annotations

import re
from collections import defaultdict
from functools import cache
from itertools import cycle

import pytest

from assistant.answering import reply_to
from rules.foods.dishes import dishes
from rules.model import Answer

HEIGHTS = ("1,450 m", "7,300 ft", "3,850 m", "10,400 ft", "2,650 m")
FORMS = (
    "how long do {dish} take at {height}",
    "do {dish} take longer at {height}",
    "why do {dish} take longer at {height}",
    "is 40 min enough for {dish} at {height}",
    "what if I move from 300 m to {height}, how long then for {dish}",
    "how much longer for {dish} at {height}, they take 30 min at sea level",
    "compare {dish} at 200 m and at {height}",
    "my book says 45 min for {dish}, is that right at {height}",
    "how hot do I cook {dish} at {height}",
)
# every so many dishes of the lexicon
STEP = 36

TIME = r"(?:(\d+) h(?: (\d+) min)?|(\d+)?([¼½¾])? ?min)"
TIMES = re.compile(r"(\d+) h(?: (\d+) min)?|(\d+)?([¼½¾])? min")
PARTS = {"¼": 0.25, "½": 0.5, "¾": 0.75, None: 0.0, "": 0.0}
BOIL = re.compile(r"[Ww]ater boils at ([\d.]+) °([CF])[^.;,]*? at ([\d,]+) (ft|m)\b")
FULL_BOIL = re.compile(r"full boil, ([\d.]+) °([CF])")


def minutes(found: re.Match[str]) -> float:
    """A time as a reply writes it, in minutes."""
    hours, after, whole, part = found.groups()
    return 60 * int(hours) + int(after or 0) if hours else int(whole or 0) + PARTS[part]


def times(text: str) -> list[float]:
    """Every time of a text, in minutes."""
    return [minutes(found) for found in TIMES.finditer(text) if found.group(0).strip() != "min"]


def asked() -> list[str]:
    """The questions: dishes of the lexicon in turn, each in a few forms at a few heights."""
    heights = cycle(HEIGHTS)
    names = [name.replace("_", " ") for name in sorted(dishes())][::STEP]
    forms = cycle(FORMS)
    return [next(forms).format(dish=name, height=next(heights)) for name in names for _ in range(4)]


QUESTIONS = asked()


@cache
def said(question: str) -> Answer:
    """The reply to a question, once."""
    return reply_to(question)


def boils_differ(text: str) -> bool:
    """Whether water boils at two temperatures in one place."""
    at: dict[tuple[str, str], set[str]] = defaultdict(set)
    for degrees, unit, height, measure in BOIL.findall(text):
        at[height + measure, unit].add(degrees)
    return any(len(found) > 1 for found in at.values())


def is_longer_by_less(headline: str) -> bool:
    """Whether a headline says longer, and its first time is the shorter one."""
    against = re.search(r"(.*?)(?:, against | instead of )(.*)", headline)
    if not against or not headline.startswith(("Longer", "Yes: longer", "Yes: about")):
        return False
    here, there = times(against.group(1)), times(against.group(2))
    return bool(here and there) and "longer" in headline.casefold() and here[0] < there[0]


def is_out_of_range(answer: Answer) -> bool:
    """Whether the time that a headline opens with lies outside the range that it gives beside it."""
    ranged = re.search(r"[Aa]bout ([^(]*?) \(([^()]*?) to ([^()]*?)\)", answer.headline)
    if not ranged or not times(ranged.group(1)):
        return False
    middle, low, high = times(ranged.group(1))[-1], ranged.group(2), ranged.group(3)
    ends = times(low if "min" in low or " h" in low else f"{low} min"), times(high)
    return bool(ends[0] and ends[1]) and not ends[0][0] <= middle <= ends[1][0]


def boil_of_another_place(answer: Answer) -> bool:
    """Whether the steps bring water to a boil that is not the one of the reasons."""
    steps = {(value, unit) for step in answer.steps for value, unit in FULL_BOIL.findall(str(step))}
    boils = {(value, unit) for value, unit, *_ in BOIL.findall(answer.text)}
    units = {unit for _, unit in boils}
    return any(step not in boils for step in steps if step[1] in units) if boils else False


FAULTS = {
    "water boils at two temperatures in one place": lambda a: boils_differ(a.text),
    "longer by the shorter time": lambda a: is_longer_by_less(a.headline),
    "outside its own range": is_out_of_range,
    "steps boil at another heat than the reasons": boil_of_another_place,
    "hotter beside a smaller figure": lambda a: hotter_by_less(a.headline),
    "a verdict of no beside a time that is longer, asked if it is": lambda a: no_beside_longer(a),
}


def hotter_by_less(headline: str) -> bool:
    """Whether a headline says hotter, and gives a lower temperature than the one it holds it against."""
    found = re.search(
        r"(hotter|cooler)[^.]*?([\d.]+) °([CF])[^.]*?(?:against|instead of)[^.\d]*?([\d.]+) °\3", headline
    )
    if not found:
        return False
    way, one, _, other = found.groups()
    return float(one) < float(other) if way == "hotter" else float(one) > float(other)


def no_beside_longer(answer: Answer) -> bool:
    """Whether it is denied that a dish takes longer, and its time is longer by more than a tenth."""
    here, base = answer.figure("cook_time"), answer.figure("baseline_time")
    asked_it = re.match(r"do .* take longer at [\d,]+ \w+$", answer.request.text)
    return bool(asked_it and here and base and answer.headline.startswith("No") and here.value > 1.1 * base.value)


@pytest.mark.parametrize("fault", sorted(FAULTS))
def test_headline_figures_and_steps_agree(fault: str) -> None:
    wrong = [(question, said(question).headline) for question in QUESTIONS if FAULTS[fault](said(question))]
    assert not wrong, wrong


def test_the_questions_are_several_hundred() -> None:
    assert len(QUESTIONS) > 400


# the checks themselves can fail
def test_a_reply_that_contradicts_itself_is_found() -> None:
    assert is_longer_by_less("Longer at 7,300 ft: about 12 min for rice, against 20 min at sea level.")
    assert hotter_by_less("Set it hotter, 160 °C instead of 175 °C.")
    assert boils_differ("Water boils at 199 °F (93 °C) at 7,300 ft. There water boils at 212 °F (100 °C) at 7,300 ft.")
