"""Component: the part of a time: what it takes elsewhere, how long it has cooked, or what it is to be given.

The phrases are those of data/lexicon/time_roles.toml; without one a time is the baseline.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading import elevation_parts
from assistant.reading.spans import Measure
from assistant.reading.tokens import norms
from assistant.understanding import forms, stretches
from assistant.understanding.cue_words import cues
from rules.physics.units import G_PER_LB

FILE = "lexicon/time_roles.toml"
KNOWN, BASELINE, ELAPSED, PLANNED = "known", "baseline", "elapsed", "planned"
RANKED = (KNOWN, "between", "apart", BASELINE, ELAPSED, PLANNED)
# units in which nobody tells how long a dish cooks
NO_COOKING_TIME = ("wk", "week", "month", "mo", "yr", "year")
MINUTES_PER_HOUR = 60.0
# "one sec" is how somebody asks for patience: nothing but a timer that is tried out is so short [min]
INSTANT_MIN = 3 / 60
SET = frozenset(cues("time_roles", "set"))
# 20 min PER pound, for every 500 g, to the kilo
PER = ("for", "to", "the", "every", "each", "per", "a", "an", "/")
POUND, KILO = ("lb", "lbs", "pound", "pounds"), ("kg", "kilo", "kilos", "kilogram")
G_OF = {**dict.fromkeys(POUND, G_PER_LB), **dict.fromkeys(KILO, 1000.0)}
PLUS = frozenset(("plus", "+", "over", "extra", "and"))
SINCE = "since"
# baked 55 at 350 [min]
BAKED, FOR, AT, BAKED_MIN = (
    ("baked", "bake", "baking", "bakes", "cooked"),
    ("for", "it", "them", "about"),
    ("at", "@"),
    (5.0, 180.0),
)
# the box says 11, or 7 to 8 [min]
TO = ("to", "-", "or")
PACKETS = elevation_parts.PACKETS | {"pack"}
SAYS, NO_MINUTES, PRINTED_MIN = (
    ("says", "said", "say"),
    ("f", "c", "degrees", "°", "cups", "cup", "people"),
    (2.0, 90.0),
)
USUALLY, NO_LENGTH = frozenset(cues("time_roles", "usually")), cues("time_roles", "no_length")
WHISTLES = frozenset(cues("elevation", "counted"))
# 45 at home in Boston, 12 back in Miami [min]
THERE, AT_HOME_MIN = ("at", "in", "back", "down", "over"), (3.0, 180.0)
# words of a time that is of another kitchen, or printed
ELSEWHERE = frozenset(
    ("box", "says", "said", "recipe", "book", "label", "packet", "bag", "card", "sea", "home", "takes", "took")
)
# what somebody elsewhere does with a time
TELLING = frozenset(
    ("says", "say", "said", "told", "recipe", "gives", "does", "swears", "wrote", "writes", "uses", "always", "reckons")
)
SENTENCE_ENDS = (".", "?", "!", ";")
SAFE = frozenset(("safe", "unsafe", "safely"))


@dataclass(frozen=True, slots=True)
class Times:
    """The times of an utterance by the part they play [min]; first is the first of all, whatever its part.

    rated: where the words for the weight of a time per weight end, which is no amount of food
    printed: whether the baseline is a bare number of minutes that a packet says, or that somebody gives it as a rule
    """

    first: tuple[float, float] | None = None
    baseline: tuple[float, float] | None = None
    elapsed_min: float | None = None
    planned_min: float | None = None
    rated: int | None = None
    printed: bool = False

    def slots(self, *, apart: bool, undone: bool = False) -> dict[str, Any]:
        """The slots of a request.

        apart: whether the parts count, or the first time stands for all; undone: whether that may be what it has had
        """
        time = self.baseline if apart else self.first
        low, high = time or (None, None)
        return {
            "time_min": low,
            "time_high_min": high if time and time[1] > time[0] else None,
            "elapsed_min": self.elapsed_min if apart or undone else None,
            "planned_min": self.planned_min if apart else None,
        }


@dataclass(frozen=True, slots=True)
class Rate:
    """A time for each so much of weight: what it comes to [min], where the weight is known, and where its words end."""

    total: tuple[float, float] | None
    weight_ends: int


Doc.set_extension("times", default=Times(), force=True)


@Language.component("kitchen_times", requires=["doc._.measures", "doc._.clock", "doc._.forms"], assigns=["doc._.times"])
def kitchen_times(doc: Doc) -> Doc:
    """Tell the times of an utterance apart."""
    doc._.times = heard(doc)
    return doc


def heard(doc: Doc) -> Times:
    """The times of an utterance whose forms were heard."""
    times = cooking_times(doc)
    times = times or list(_baked(doc)) or list(_at_home(doc))
    rate = _rate(doc, times)
    if rate and rate.total:
        return Times(rate.total, rate.total, rated=rate.weight_ends)
    times = [m for m in times if not _is_more_of_it(doc, m)]
    said = list(forms.patterns_heard(doc, FILE, "role")) if times else []
    parts = [(time, part_of(doc, time, times, said)) for time in times]
    stood_min = stretches.hours(doc) * MINUTES_PER_HOUR if SINCE in set(norms(doc)) else 0.0
    told, printed = next((_ends(m) for m, part in parts if part in (KNOWN, BASELINE)), None), _printed(doc, times)
    return Times(
        first=_ends(times[0]) if times else None,
        baseline=told or printed,
        elapsed_min=next(
            (_middle(m) for m, part in parts if part == ELAPSED), stood_min or _bare_min(doc, times, said, ELAPSED)
        ),
        planned_min=next((_middle(m) for m, part in parts if part == PLANNED), _bare_min(doc, times, said, PLANNED)),
        rated=rate.weight_ends if rate else None,
        printed=told is None and printed is not None,
    )


def _is_more_of_it(doc: Doc, time: Measure) -> bool:
    """Whether somebody says that it takes so much more up here, which is no time of a recipe and none to be judged."""
    judged = any(form.id == "enough" for form in doc._.forms)
    return bool(doc._.elevations) and elevation_parts.is_difference(norms(doc), time) and not judged


def _printed(doc: Doc, times: Sequence[Measure]) -> tuple[float, float] | None:
    """A bare number that a packet says, or that somebody does as a rule, which is of minutes: the box says 11."""
    if times:
        return None
    taken = {i for m in (*doc._.measures, *doc._.elevations, *doc._.clock) for i in range(m.start, m.end)}
    words = norms(doc)
    for number in doc._.numbers:
        before = words[max(number.start - 3, 0) : number.start]
        said_of = {*before, *words[number.end : number.end + 3]}
        printed = not PACKETS.isdisjoint(said_of) and before[-1:] and before[-1] in SAYS
        printed = printed or (not USUALLY.isdisjoint(before) and before[-1] not in NO_LENGTH)
        bare = number.start not in taken and (number.end == len(words) or words[number.end] not in NO_MINUTES)
        if printed and bare and PRINTED_MIN[0] <= number.value <= PRINTED_MIN[1]:
            ends = (n.value for n in doc._.numbers if n.start == number.end + 1 and words[number.end] in TO)
            return number.value, max(number.value, next(ends, number.value))
    return None


def _baked(doc: Doc) -> Iterator[Measure]:
    """A bare number of minutes between the bake and its heat: baked 55 at 350."""
    taken = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)}
    for number in doc._.numbers:
        before = [token.norm_ for token in doc[max(number.start - 2, 0) : number.start] if token.norm_ not in FOR]
        baked = number.start not in taken and before[-1:] and before[-1] in BAKED
        if (
            baked
            and BAKED_MIN[0] <= number.value <= BAKED_MIN[1]
            and doc[number.end : number.end + 1].text.lower() in AT
        ):
            yield Measure(number.start, number.end, "time", number.value, number.value, number.value, "min")


def _at_home(doc: Doc) -> Iterator[Measure]:
    """A bare number of minutes told of a kitchen elsewhere, beside a dish: 45 at home in Boston."""
    if not any(f.kind == "dish" for f in doc._.found):
        return
    words, taken = norms(doc), {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)}
    there = {e.start for e in doc._.elevations if e.role == "from"}
    counted = not WHISTLES.isdisjoint(words)
    for number in doc._.numbers:
        behind = words[number.end : number.end + 3]
        near = number.end in there or (
            behind[:1] and behind[0] in THERE and there & {number.end + 1, number.end + 2, number.end + 3}
        )
        # where whistles are asked for, the number is theirs
        if not counted and number.start not in taken and near and AT_HOME_MIN[0] <= number.value <= AT_HOME_MIN[1]:
            yield Measure(number.start, number.end, "time", number.value, number.value, number.value, "min")


def cooking_times(doc: Doc) -> list[Measure]:
    """The lengths of time that something may cook: neither weeks nor a moment (one sec; a second house)."""
    times = (m for m in doc._.measures if m.kind == "time" and m.unit not in NO_COOKING_TIME)
    is_set = not SET.isdisjoint(norms(doc))
    return [m for m in times if is_set or m.high > INSTANT_MIN]


def without(doc: Doc, waits: Sequence[Measure | None]) -> Times:
    """The times of an utterance without those in which food waits: a rest, slack before service."""
    times: Times = doc._.times
    if not any(waits):
        return times
    cooking = (m for m in cooking_times(doc) if m not in waits)
    return replace(times, first=next((_ends(m) for m in cooking), None))


def part_of(doc: Doc, time: Measure, times: Sequence[Measure], said: Sequence[tuple[str, int, int]]) -> str:
    """The part of a time: that of the nearest words that tell one, else by what is asked."""
    around = [
        (part != KNOWN, end - start, RANKED.index(part), part)
        for part, start, end in said
        if start <= time.start and time.end <= end and sum(start < m.end and m.start < end for m in times) == 1
    ]
    judged = asks_safe(doc)
    planned = judged or (any(form.id == "enough" for form in doc._.forms) and not of_elsewhere(doc, time))
    unsaid = PLANNED if planned else BASELINE
    part = min(around)[-1] if around else unsaid
    elsewhere = _is_of_another_kitchen(doc, time, times) or _is_of_a_town(doc, time)
    part = BASELINE if part == ELAPSED and elsewhere else part
    told = not ELSEWHERE.isdisjoint(norms(doc))
    return PLANNED if judged and (part == KNOWN or (part == BASELINE and not told)) else part


def _is_of_another_kitchen(doc: Doc, time: Measure, times: Sequence[Measure]) -> bool:
    """Whether the one time of a sentence stands behind the place of another kitchen: smoked in Dallas 14 hours."""
    words = norms(doc)
    start = next((i + 1 for i in range(time.start - 1, -1, -1) if words[i] in SENTENCE_ENDS), 0)
    end = next((i for i in range(time.end, len(words)) if words[i] in SENTENCE_ENDS), len(words))
    alone = sum(start <= m.start < end for m in times) == 1
    inside = [e.role for e in doc._.elevations if start <= e.start < end]
    return alone and "from" in inside and "here" not in inside and "been" not in words[start:end]


def _is_of_a_town(doc: Doc, time: Measure) -> bool:
    """Whether a time is told of a town that nobody has heard of: 2 h in Zorgville, and now."""
    behind = doc[time.end : time.end + 2]
    return len(behind) > 1 and behind[0].norm_ == "in" and behind[1].text[0].isupper() and behind[1].text.isalpha()


def of_elsewhere(doc: Doc, time: Measure) -> bool:
    """Whether a time is told of another kitchen in its sentence: my aunt in Boulder says to simmer it 40 min."""
    words = norms(doc)
    start = next((i + 1 for i in range(time.start - 1, -1, -1) if words[i] in SENTENCE_ENDS), 0)
    there = any(e.role == "from" and start <= e.start < time.start for e in doc._.elevations)
    return there and not TELLING.isdisjoint(words[start : time.start])


def asks_safe(doc: Doc) -> bool:
    """Whether it is asked if a time is safe, not how long it takes to be: what the cook always gives is judged then."""
    asked = {form.id for form in doc._.forms}
    return "safe" in asked and "how_long" not in asked and not SAFE.isdisjoint(norms(doc))


def _bare_min(doc: Doc, times: Sequence[Measure], said: Sequence[tuple[str, int, int]], wanted: str) -> float | None:
    """A bare number that plays a part, in the unit of the one time beside it [min]: it says 9 min, is 13 enough."""
    if len(times) != 1 or not times[0].said:
        return None
    taken = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)}
    # baked 55 at 350: the second is the heat
    heats = (n.start for n in doc._.numbers if n.start == times[0].end + 1 and norms(doc)[n.start - 1] in AT)
    taken |= {*range(times[0].start, times[0].end), *heats}
    told = [(start, end) for part, start, end in said if part == wanted]
    bare = (n for n in doc._.numbers if n.start not in taken and any(s <= n.start and n.end <= e for s, e in told))
    return next((n.value * times[0].low / times[0].said for n in bare), None)


def _ends(m: Measure) -> tuple[float, float]:
    return m.low, m.high


def _middle(m: Measure) -> float:
    return (m.low + m.high) / 2


def _rate(doc: Doc, times: Sequence[Measure]) -> Rate | None:
    """20 min per lb for a 14 lb bird: what it comes to. None where no time is for a weight."""
    masses = [m for m in doc._.measures if m.kind == "mass"]
    for time in times:
        if of := _weight_of(doc, time, masses):
            grams, ends = of
            food = max((m.low for m in masses if m.end != ends), default=0.0)
            more = next((_middle(m) for m in times if m.start > time.end and _added(doc, time, m)), 0.0)
            low, high = (end * food / grams + more for end in _ends(time))
            return Rate((low, high) if food else None, ends)
    return None


def rated_by(doc: Doc) -> float | None:
    """The weight for which a time is told [g], where it is told for one: 10 min a pound."""
    times, masses = ([m for m in doc._.measures if m.kind == kind] for kind in ("time", "mass"))
    return next((of[0] for of in (_weight_of(doc, time, masses) for time in times) if of), None)


def _weight_of(doc: Doc, time: Measure, masses: Sequence[Measure]) -> tuple[float, int] | None:
    """The weight that a time is for [g], and where the words for it end."""
    at = time.end
    while at < len(doc) and norms(doc)[at] in PER:
        mass = next((m for m in masses if m.start == at), None)
        if mass:
            return mass.low, mass.end
        at += 1
    mass = next((m for m in masses if m.start == at and at > time.end), None)
    if mass:
        return mass.low, mass.end
    if at > time.end and at < len(doc) and norms(doc)[at] in G_OF:
        return G_OF[norms(doc)[at]], at + 1
    return None


def _added(doc: Doc, time: Measure, more: Measure) -> bool:
    between = set(norms(doc)[time.end : more.start])
    behind = set(norms(doc)[more.end : more.end + 2])
    return not PLUS.isdisjoint(between | (behind & {"over", "extra"})) and len(between) <= 6
