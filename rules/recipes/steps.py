"""The method rewritten: every time and temperature that moves is replaced in place, the original in brackets."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Literal

from rules import book
from rules.baking import foam, pan
from rules.baking.batch import Batch, towards
from rules.baking.change import Change, Shift, Way, step
from rules.baking.mark import TempAt, TimeAt
from rules.baking.parts import part_of
from rules.baking.rounding import fraction, measure, number
from rules.book import Part, Rule
from rules.physics.units import round_time_min, round_to, to_c, to_f
from rules.recipe import AmountMark, Step, TempMark, TimeMark
from rules.recipes.roles import moving
from rules.said import sentences

SHORTEST_MIN = 2.0
# Up to this many minutes, and in steps of so many.
SHORT_STEPS_MIN = ((5.0, 0.25), (12.0, 0.5))
# From this many minutes on a cook keeps the time to so many.
LONG_STEPS_MIN = ((480.0, 30.0), (180.0, 15.0))
# A gas mark, and the steps of its dial.
GAS = re.compile(r"\bgas\b", re.I)
GAS_ONE_F, GAS_STEP_F = 275.0, 25.0
# Times that stay or move by more than their role: what is boiled down says why it stays, rice stirred into its broth
# cooks, and a figure that points into a time goes along with it.
TOLD_BY_STYLE = ("reduce", "other", "mix", "relative")
# Between the two ends of a range that is told with asides, and before what a bracket says once more.
OTHER_END = re.compile(r"\s*(?:\([^()]*\)\s*)?(?:(?:and\s+)?up\s+to|to|-|–|—)\s*(?:about\s+)?", re.I)
ONCE_MORE = re.compile(r"\s*\(\s*(?:or\s+)?(?:about\s+)?", re.I)
say = sentences("recipes/steps")


@dataclass(frozen=True, slots=True)
class TimeTo:
    """A time of a step [min]: as read, and as it becomes."""

    mark: TimeMark
    to_low_min: float
    to_high_min: float


@dataclass(frozen=True, slots=True)
class TempTo:
    """A temperature of a step [degC]: as read, and as it becomes. low_c, high_c: the range the sources allow."""

    mark: TempMark
    to_c: float
    to_high_c: float
    low_c: float
    high_c: float


@dataclass(frozen=True, slots=True)
class Edit:
    """A piece of text to replace: where, by what, and the mark that stands there (an index) with its new self."""

    start: int
    end: int
    text: str
    kind: Literal["time", "temperature", "words"] = "words"


@dataclass(frozen=True, slots=True, kw_only=True)
class StepTo:
    """A step with its new text. plain: the step as a recipe of its own, without the originals in brackets."""

    step: Step
    text: str
    times: tuple[TimeTo, ...]
    temperatures: tuple[TempTo, ...]
    plain: Step


def rewrite(batch: Batch, index: int, one: Step, ratios: Mapping[int, float]) -> tuple[StepTo, tuple[Change, ...]]:
    """One step, rewritten, with its changes.

    Only figures of a role that moves can change; what a figure is for safety's sake stays as written.
    ratios: what the ingredient lines were multiplied by, by their place; an amount of one in a step goes along
    """
    timed = [_time(batch, index, one, mark) for mark in one.times]
    heated = [_temp(batch, index, one, mark) for mark in one.temperatures]
    times, temps = tuple(t for t, _ in timed), tuple(t for t, _ in heated)
    changes = (change for _, change in (*timed, *heated) if change)
    edits = [_time_edit(one.text, t) for t in times if _moved_time(t)]
    edits += [_temp_edit(one.text, t) for t in temps if _moved_temp(t)]
    if not batch.canning:
        edits += [Edit(start, end, text) for start, end, text in pan.rewrite(batch, one.text)]
    if foam.softens(batch):
        edits += [Edit(*place) for cue in foam.whipped(one, "stiff_peaks") for place in foam.softened(one.text, cue)]
    poured = ((mark, ratios.get(mark.line, 1.0)) for mark in _boiling_off(batch, one))
    edits += [edit for mark, ratio in poured if (edit := amount_edit(one.text, mark, ratio))]
    edits = _apart(edits)
    new = StepTo(
        step=one,
        text=_apply(one.text, edits, with_was=True),
        times=times,
        temperatures=temps,
        plain=_plain(one, edits, times, temps),
    )
    return new, tuple(changes)


def _boiling_off(batch: Batch, one: Step) -> list[AmountMark]:
    """The amounts of a step that go along with their line: no liquid that is sealed in under pressure."""
    sealed, lines = any(t.what == "pressure" for t in one.times), batch.recipe.ingredients
    if not sealed:
        return list(one.amounts)
    return [m for m in one.amounts if part_of(lines[m.line].item, lines[m.line].role).name != "liquid"]


def _moved_time(t: TimeTo) -> bool:
    return (t.to_low_min, t.to_high_min) != (t.mark.low_min, t.mark.high_min)


def _moved_temp(t: TempTo) -> bool:
    return (t.to_c, t.to_high_c) != (t.mark.low_c, t.mark.high_c)


def amount_edit(text: str, mark: AmountMark, ratio: float) -> Edit | None:
    """The share of an ingredient that a step names, times what the whole of it was multiplied by; None where it stays.

    >>> amount_edit("Add 1/2 cup of the sugar", AmountMark(4, 11, 0.5, None, "cup", 0), 0.875).text
    '7 tbsp'
    """
    value = towards(mark.value, ratio, mark.unit)
    high = None if mark.high is None else towards(mark.high, ratio, mark.unit)
    if (value, high) == (mark.value, mark.high):
        return None
    space = " " if text[mark.start : mark.end][-1:].isspace() else ""
    return Edit(mark.start, mark.end, measure(value, mark.unit, high=high) + space)


# Times


def _time(batch: Batch, index: int, one: Step, mark: TimeMark) -> tuple[TimeTo, Change | None]:
    told = _time_told(TimeAt(batch, one, _led_by(one, mark)))
    if told is None or batch.from_m == batch.to_m:
        return TimeTo(mark, mark.low_min, mark.high_min), None
    item, part, shift = told
    low, high = (scaled_min(t, shift.span.value) for t in (mark.low_min, mark.high_min))
    return TimeTo(mark, low, high), stamped(item, _time_change(index, mark, part, shift, low, high))


def _led_by(one: Step, mark: TimeMark) -> TimeMark:
    """The time that another goes by: the first end of a range with an aside in it, or what a bracket says once more.

    >>> small, large = TimeMark(5, 15, 40, 40, "bake"), TimeMark(27, 37, 65, 65, "other")
    >>> _led_by(Step(text="Bake 40 minutes (small) to 65 minutes (large)", times=(small, large)), large) == small
    True
    """
    for before in (t for t in reversed(one.times) if t.end <= mark.start):
        gap, same = one.text[before.end : mark.start], before.high_min == mark.high_min
        if OTHER_END.fullmatch(gap) or (same and ONCE_MORE.fullmatch(gap)):
            return _led_by(one, before)
    return mark


def _time_told(at: TimeAt) -> tuple[Rule, Part, Shift] | None:
    """How a time moves; None for a role that never does, and for every time of a recipe for canning.

    What a rule for safety's sake holds back, stays whatever another would make of it.
    """
    mark = at.mark
    if mark.high_min < SHORTEST_MIN or mark.what not in (*moving("time"), *TOLD_BY_STYLE) or at.batch.canning:
        return None
    told = _first("times", at)
    return told and (_first("limits", replace(at, shift=told[2])) or told)


def _first(room: str, at: TimeAt | TempAt) -> tuple[Rule, Part, Shift] | None:
    """The first rule of a room that has something to say to a time or temperature."""
    for item, part in book.on_recipe(room, at):
        if part.shift is not None:
            return item, part, part.shift
    return None


def stamped(item: Rule, change: Change) -> Change:
    """A change with the rule it comes of, and that rule's sources where it names none of its own."""
    return replace(change, rule=item.id, sources=change.sources or item.sources)


def scaled_min(time_min: float, ratio: float) -> float:
    """A time times a ratio, rounded to what a cook can keep; the rounding never turns longer into shorter.

    A short time is not lengthened beyond what was computed.

    >>> scaled_min(35, 0.8), scaled_min(62, 1.02), scaled_min(60, 1), scaled_min(480, 1.64)
    (28.0, 65.0, 60, 780.0)
    >>> scaled_min(6, 1.31), scaled_min(3, 1.25), scaled_min(15, 1.25)
    (7.5, 3.75, 19.0)
    """
    if ratio == 1:
        return time_min
    new = time_min * ratio
    long = next((step for least, step in LONG_STEPS_MIN if new >= least), None)
    short = next((step for most, step in SHORT_STEPS_MIN if ratio > 1 and new < most), None)
    rounded = round_to(new, long) if long else _down_to(new, short) if short else round_time_min(new)
    return max(rounded, time_min) if ratio > 1 else min(rounded, time_min)


def _down_to(time_min: float, step: float) -> float:
    return round(math.floor(time_min / step + 1e-9) * step, 6)


def _time_change(index: int, mark: TimeMark, part: Part, shift: Shift, low: float, high: float) -> Change:
    was, now = (mark.low_min + mark.high_min) / 2, (low + high) / 2
    way: Way = "same" if now == was else "longer" if now > was else "shorter"
    because = part.because if way != "same" or shift.stays else say("too-small-to-keep")
    ends = (scaled_min(mark.low_min, shift.span.low), scaled_min(mark.high_min, shift.span.high), low, high)
    return Change(
        what=shift.what, way=way, at=step(index), from_value=was, from_unit="min", to_value=now, to_low=min(ends),
        to_high=max(ends), to_unit="min", because=because, sources=part.sources,
    )  # fmt: skip


def _time_edit(text: str, t: TimeTo) -> Edit:
    was = text[t.mark.start : t.mark.end]
    tail = re.search(r"\s+or\s+(?:more|longer)$", was, re.I)
    return Edit(
        t.mark.start, t.mark.end, in_words(t.to_low_min, t.to_high_min, was) + (tail.group() if tail else ""), "time"
    )


def in_words(low_min: float, high_min: float, like: str) -> str:
    """A time in the manner of the original: minutes or min, hours or h, "20-minute".

    >>> in_words(24, 28, "30 to 35 minutes"), in_words(150, 180, "2 to 3 hours"), in_words(7.5, 7.5, "6 min")
    ('24 to 28 minutes', '2 1/2 to 3 hours', '7 1/2 min')
    >>> in_words(24, 24, "20-minute"), in_words(80, 80, "1 h 5 min")
    ('24-minute', '1 h 20 min')
    """
    short = not re.search(r"minute|hour", like, re.I)
    join = "-" if re.search(r"\d-(?:min|hour|hr)", like, re.I) else " "
    if high_min < 60 or (low_min < 60 and high_min < 90):
        word = "min" if short else "minute" if join == "-" or high_min == 1 else "minutes"
        return _range(fraction(low_min), fraction(high_min), join, word)
    if _quarters(low_min) and _quarters(high_min) and low_min >= 60:
        word = "h" if short else "hour" if join == "-" or high_min == 60 else "hours"
        return _range(fraction(low_min / 60), fraction(high_min / 60), join, word)
    first, last = (_hours(t, short) for t in (low_min, high_min))
    return first if first == last else f"{first} to {last}"


def _quarters(time_min: float) -> bool:
    return time_min % 15 == 0


def _range(low: str, high: str, join: str, word: str) -> str:
    return f"{low}{join}{word}" if low == high else f"{low} to {high}{join}{word}"


def _hours(time_min: float, short: bool) -> str:
    hours, minutes = divmod(time_min, 60)
    hour, minute = ("h", "min") if short else ("hour" if hours == 1 else "hours", "minutes")
    parts = [f"{number(hours)} {hour}"] if hours else []
    parts += [f"{fraction(minutes)} {minute}"] if minutes else []
    return " ".join(parts)


# Temperatures


def _temp(batch: Batch, index: int, one: Step, mark: TempMark) -> tuple[TempTo, Change | None]:
    told = _temp_told(TempAt(batch, one, mark))
    if told is None or batch.from_m == batch.to_m:
        return TempTo(mark, mark.low_c, mark.high_c, mark.low_c, mark.high_c), None
    item, part, shift = told
    steps = (5.0, 2.0) if mark.what in ("oven", "fat") else (1.0, 0.5)
    size = steps[0 if mark.unit == "degF" else 1]
    low, high = (shifted_c(t, shift.span.value, mark.unit, size) for t in (mark.low_c, mark.high_c))
    ends = (
        shifted_c(mark.low_c, shift.span.low, mark.unit, size),
        shifted_c(mark.high_c, shift.span.high, mark.unit, size),
    )
    new = TempTo(mark, low, high, min(*ends, low), max(*ends, high))
    return new, stamped(item, _temp_change(index, new, part, shift))


def _temp_told(at: TempAt) -> tuple[Rule, Part, Shift] | None:
    """How a temperature moves; None for a role that never does, and in canning for all but the gel point."""
    if at.mark.what not in moving("temperature") or (at.batch.canning and at.mark.what != "sugar"):
        return None
    return _first("temperatures", at)


def shifted_c(temp_c: float, kelvin: float, unit: str, size: float) -> float:
    """A temperature [degC] moved by so many kelvin, rounded to `size` in the unit it is written in.

    The rounding never moves it the wrong way.

    >>> round(to_f(shifted_c(to_c(350), 20 / 1.8, "degF", 5)))
    370
    """
    if kelvin == 0:
        return temp_c
    there, back = (to_f, to_c) if unit == "degF" else (_same, _same)
    rounded = back(round_to(there(temp_c + kelvin), size))
    if (rounded - temp_c) * kelvin < 0 or abs(rounded - temp_c) < 1e-6:
        return temp_c
    return round(rounded, 4)


def _same(temp_c: float) -> float:
    return temp_c


def _temp_change(index: int, new: TempTo, part: Part, shift: Shift) -> Change:
    unit = new.mark.unit
    was, now, low, high = (_in(t, unit) for t in (new.mark.low_c, new.to_c, new.low_c, new.high_c))
    way: Way = "same" if now == was else "hotter" if now > was else "cooler"
    return Change(
        what=shift.what, way=way, at=step(index), from_value=was, from_unit=unit, to_value=now, to_low=low,
        to_high=high, to_unit=unit, because=part.because, sources=part.sources,
    )  # fmt: skip


def _in(temp_c: float, unit: str) -> float:
    return round(to_f(temp_c) if unit == "degF" else temp_c, 1)


def _temp_edit(text: str, t: TempTo) -> Edit:
    was = text[t.mark.start : t.mark.end].rstrip()
    end = t.mark.start + len(was)
    if GAS.search(was):
        return Edit(t.mark.start, end, gas_marked(was, t.to_c), "temperature")
    first, second = ("degF", "degC") if t.mark.unit == "degF" else ("degC", "degF")
    new = _degrees(t, first, bare=not re.search(r"[°º˚]|deg|[fc]\b", was, re.I))
    letters = set(re.findall(r"(?<![a-z])([fc])(?![a-z])|(?:fahrenheit|celsius)", was, re.I))
    both = len({letter.lower() for letter in letters if letter}) == 2
    return Edit(t.mark.start, end, f"{new} ({_degrees(t, second)})" if both else new, "temperature")


def gas_marked(was: str, temp_c: float) -> str:
    """A gas mark written anew: the mark that is nearest to a temperature [degC].

    source: from memory: a mark is 25 degF, and mark 1 is 275 degF

    >>> gas_marked("gas 4", 192), gas_marked("gas mark 5", 202)
    ('gas 5', 'gas mark 6')
    """
    mark = min(9, max(1, round_to((to_f(temp_c) - GAS_ONE_F) / GAS_STEP_F, 1) + 1))
    return re.sub(r"\d+(?:\s*[/½¼]\s*\d*)?", f"{mark:g}", was, count=1)


def _degrees(t: TempTo, unit: str, *, bare: bool = False) -> str:
    size = 1.0 if unit == t.mark.unit or t.mark.what == "sugar" else 5.0 if unit == "degF" else 2.0
    digits = [
        number(round_to(_in(c, unit), size if unit == "degF" else min(size, 2.0) / 2), 1) for c in (t.to_c, t.to_high_c)
    ]
    figure = digits[0] if digits[0] == digits[1] else f"{digits[0]} to {digits[1]}"
    return figure if bare else f"{figure} °{unit[-1]}"


# Putting the pieces back


def _apart(edits: list[Edit]) -> list[Edit]:
    """Edits in order of place; of two that overlap the first stands."""
    kept: list[Edit] = []
    for edit in sorted(edits, key=lambda e: (e.start, -e.end)):
        if not kept or edit.start >= kept[-1].end:
            kept.append(edit)
    return kept


def _apply(text: str, edits: list[Edit], *, with_was: bool) -> str:
    for edit in reversed(edits):
        was = text[edit.start : edit.end]
        told = edit.text if "(was " in edit.text or not with_was else f"{edit.text} (was {_flat(was)})"
        new = told if with_was else told.split(" (was ")[0]
        text = text[: edit.start] + new + text[edit.end :]
    return text


def _flat(was: str) -> str:
    return was.replace(" (", " / ").replace("(", "").replace(")", "") if "(" in was else was


def amended(one: Step, edits: list[Edit]) -> Step:
    """A step with pieces of its text replaced and its marks moved along, their values unchanged."""
    times = tuple(TimeTo(t, t.low_min, t.high_min) for t in one.times)
    temps = tuple(TempTo(t, t.low_c, t.high_c, t.low_c, t.high_c) for t in one.temperatures)
    return _plain(one, _apart(edits), times, temps)


def _plain(one: Step, edits: list[Edit], times: tuple[TimeTo, ...], temps: tuple[TempTo, ...]) -> Step:
    if not edits:
        return one  # whatever moves is an edit
    lengths = [(e.start, e.end, len(e.text.split(" (was ")[0])) for e in edits]

    def moved(position: int, *, end: bool = False) -> int:
        grown = sum(new - (b - a) for a, b, new in lengths if b < position or (b == position and (end or a < position)))
        return position + grown

    return replace(
        one,
        text=_apply(one.text, edits, with_was=False),
        times=tuple(
            replace(
                t.mark,
                start=moved(t.mark.start),
                end=moved(t.mark.end, end=True),
                low_min=t.to_low_min,
                high_min=t.to_high_min,
            )
            for t in times
        ),
        temperatures=tuple(
            replace(
                t.mark, start=moved(t.mark.start), end=moved(t.mark.end, end=True), low_c=t.to_c, high_c=t.to_high_c
            )
            for t in temps
        ),
        pressures=tuple(replace(m, start=moved(m.start), end=moved(m.end, end=True)) for m in one.pressures),
        cues=tuple(replace(m, start=moved(m.start), end=moved(m.end, end=True)) for m in one.cues),
        vessels=tuple(replace(m, start=moved(m.start), end=moved(m.end, end=True)) for m in one.vessels),
        amounts=tuple(replace(m, start=moved(m.start), end=moved(m.end, end=True)) for m in one.amounts),
    )
