"""Component: mentions of elevations, stated, by place name or as a bare number, and the part each one plays."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.groups import keep, shown
from assistant.reading.spans import Elevation, Found, Measure, Number, Role
from assistant.reading.units import tells_heights
from assistant.understanding.cue_words import cues, said
from assistant.understanding.spelling import plain_words

SMALLEST_BARE = 300
REACH = 8
HIGHEST_MILES = 3

# The part an elevation plays is told by the cue nearest before it.
BEFORE: dict[Role, tuple[str, ...]] = {
    "from": cues("elevation", "from"),
    "here": cues("elevation", "here"),
    "rejected": cues("elevation", "rejected"),
}
AFTER: dict[Role, tuple[str, ...]] = {
    "from": cues("elevation", "after_from"),
    "here": cues("elevation", "after_here"),
}
MAYBE_FROM, PAIRED = cues("elevation", "maybe_from"), cues("elevation", "paired")
TAKES, BESIDE, BETWEEN = cues("elevation", "takes"), cues("elevation", "beside"), cues("elevation", "between")
ELSEWHERE, QUESTIONS = cues("elevation", "elsewhere"), cues("elevation", "questions")
CORRECTIONS, CORRECTIONS_AFTER = cues("elevation", "corrections"), cues("elevation", "corrections_after")
LEADS, LINKS, ENDS = cues("elevation", "leads"), cues("elevation", "links"), cues("elevation", "ends")
NOT_AFTER, PLACE_LEADS, SEA = cues("elevation", "not_after"), cues("elevation", "place_leads"), cues("elevation", "sea")
EXPLICIT = ("elevation", "altitude")
SIGNS = ("to", "and", "or", "not", "-", "vs", "versus", "into")
YEARS = range(1900, 2101)
SMALLEST_PLAIN, SMALLEST_AT_END = 1000, 2000

shown("elevations", "elevation")


@Language.component(
    "kitchen_elevation",
    requires=["doc._.numbers", "doc._.measures", "doc._.clock", "doc._.found"],
    assigns=["doc.spans", "doc._.elevations"],
)
def kitchen_elevation(doc: Doc) -> Doc:
    """Hear every elevation of the text."""
    words = [token.norm_ for token in doc]
    keep(doc, "elevations", hear(words, doc._.numbers, (*doc._.measures, *doc._.clock), doc._.found))
    return doc


def hear(
    words: Sequence[str], numbers: Sequence[Number], measures: Sequence[Measure], found: Sequence[Found]
) -> tuple[Elevation, ...]:
    """The elevations among lower-case words, in order, each with its part."""
    mentions = [*stated(words, measures), *named(words, found), *sea_level(words), *mile_high(words)]
    mentions += bare(words, numbers, measures, mentions)
    mentions = sorted(mentions, key=lambda mention: mention.start)
    times = [m for m in measures if m.kind == "time"]
    return tuple(settle(words, [with_role(words, mentions, i, times) for i in range(len(mentions))]))


def stated(words: Sequence[str], measures: Iterable[Measure]) -> list[Elevation]:
    """Lengths that are heights: 7,000 ft, 2.1 km, 200 feet below sea level. A mile up is one, a drive of 20 is not."""
    found = []
    for m in measures:
        tail = words[m.end : m.end + 3]
        if m.kind != "length" or not tells_heights(m.unit) or (m.unit == "mi" and m.said > HIGHEST_MILES):
            continue
        if tail in (["above", "sea", "level"], ["below", "sea", "level"]):
            found.append(Elevation(m.start, m.end + 3, -m.said if tail[0] == "below" else m.said, m.unit, "here"))
        else:
            found.append(Elevation(m.start, m.end, m.said, m.unit, "here"))
    return found


def sea_level(words: Sequence[str]) -> list[Elevation]:
    """Sea level, where it is a place and not the end of a figure; also as a recogniser may mishear it."""
    hits = [i for i, (one, two) in enumerate(pairwise(words)) if one in SEA and two.startswith("level")]
    hits += [i for i, word in enumerate(words) if word == "sealevel"]
    hits = [i for i in hits if not i or words[i - 1] not in ("above", "below")]
    return [Elevation(i, i + (1 if words[i] == "sealevel" else 2), 0.0, "m", "here") for i in hits]


def mile_high(words: Sequence[str]) -> list[Elevation]:
    """Mile high is 5,280 ft."""
    hits = [i for i, pair in enumerate(pairwise(words)) if pair == ("mile", "high")]
    counted = ("a", "one", "1", "2", "two")
    return [Elevation(i, i + 2, 5280.0, "ft", "here") for i in hits if not i or words[i - 1] not in counted]


def named(words: Sequence[str], found: Iterable[Found]) -> list[Elevation]:
    """Places by name; a name that is also an everyday word needs a word of place before it."""
    places = [f for f in found if f.kind == "place" and _is_place(words, f)]
    return [Elevation(f.start, f.end, 0.0, "", "here", f.id) for f in places]


def _is_place(words: Sequence[str], found: Found) -> bool:
    if len(found) > 1 or words[found.start] not in plain_words():
        return True
    return len(words) == 1 or (found.start > 0 and words[found.start - 1] in PLACE_LEADS)


def bare(
    words: Sequence[str], numbers: Sequence[Number], measures: Iterable[Measure], mentions: Sequence[Elevation]
) -> list[Elevation]:
    """Numbers without a unit where the sentence makes them an elevation: at 7,000; from 0 to 7,000 ft; no, 6,000."""
    spans: tuple[Measure | Elevation, ...] = (*measures, *mentions)
    taken = {i for span in spans for i in range(span.start, span.end)}
    found: list[Elevation] = []
    for number in numbers:
        if number.start in taken or _word(words, number.end) in NOT_AFTER:
            continue
        partner = _partner(words, number, mentions)
        if partner or _is_bare_elevation(words, number, bool(mentions or found)):
            unit = partner.unit if partner and partner.said else ""
            found.append(Elevation(number.start, number.end, number.value, unit, "here"))
    return found


def _word(words: Sequence[str], at: int) -> str:
    return words[at] if 0 <= at < len(words) else ""


def _partner(words: Sequence[str], number: Number, mentions: Sequence[Elevation]) -> Elevation | None:
    """The 7,000 ft of `from 0 to 7,000 ft` and of `6,000 not 7,000 ft`."""
    beside = (m for m in mentions if m.start == number.end + 1 and m.unit)
    return next(beside, None) if _word(words, number.end) in SIGNS else None


def _is_bare_elevation(words: Sequence[str], number: Number, beside_another: bool) -> bool:
    before, after = list(words[max(0, number.start - 3) : number.start]), words[number.end : number.end + 2]
    if any(word in EXPLICIT for word in (*before, *after[:1])) or after == ["above", "sea"]:
        return True
    while before and before[-1] in LINKS and before[-1] not in ("at", "of"):
        before.pop()
    lead = before[-1] if before else ""
    if number.value < SMALLEST_BARE:
        return False
    if lead in LEADS:
        return lead != "in" or number.value >= SMALLEST_PLAIN
    if number.value < SMALLEST_PLAIN or int(number.value) in YEARS or number.value % 10:
        return False
    corrected = any(" ".join(words[: number.start]).rstrip(" ,").endswith(cue) for cue in CORRECTIONS)
    at_end = number.end == len(words) or after[0] in ENDS
    linked = lead in (*SIGNS, "from", "im", "for", "than") and (beside_another or at_end)
    return corrected or linked or (at_end and number.value >= SMALLEST_AT_END)


def with_role(words: Sequence[str], mentions: Sequence[Elevation], i: int, times: Sequence[Measure]) -> Elevation:
    """The mention with the part that the words around it give it."""
    mention = mentions[i]
    first = mentions[i - 1].end if i else 0
    last = mentions[i + 1].start if i + 1 < len(mentions) else len(words)
    before, after = words[max(first, mention.start - REACH) : mention.start], words[mention.end : last]
    told = _role_before(before)
    if told in (None, "from") and _is_timed(words, first, last, mention, times):
        told = "from"
    elif told is None or (told == "here" and before[-1:] != ["to"] and "into" not in before):
        told = _role_after(after) or told
    return replace(mention, role=told or "here", sure=told is not None)


def _role_before(before: Sequence[str]) -> Role | None:
    """The part told by the cue that ends nearest before the mention, the longer of two; only small words between."""
    text, best = f" {' '.join(before)} ", (-1, 0)
    role: Role | None = None
    for part, leads in BEFORE.items():
        for cue in leads:
            at = text.rfind(f" {cue} ")
            end = at + len(cue) + 1
            if at >= 0 and (end, len(cue)) > best and all(word in BETWEEN for word in text[end:].split()):
                role, best = part, (end, len(cue))
    return role


def _role_after(after: Sequence[str]) -> Role | None:
    return next((part for part, cues in AFTER.items() if after and after[0] in cues), None)


def _is_timed(words: Sequence[str], first: int, last: int, mention: Elevation, times: Sequence[Measure]) -> bool:
    """Whether a time is given for this elevation: it takes 3 hours at 500 ft; at sea level it takes 40 minutes."""
    for time in times:
        if first <= time.start < mention.start:
            lead, between = words[max(first, time.start - 4) : time.start], words[time.end : mention.start]
            if _takes(words[first : time.start], lead) and all(word in BESIDE for word in between):
                return True
        if mention.end <= time.start < last and mention.end + 4 >= time.start:
            lead = words[mention.end : time.start]
            if _takes(lead, lead) and not any(word in lead for word in ELSEWHERE):
                return True
    return False


def _takes(sentence: Sequence[str], lead: Sequence[str]) -> bool:
    return any(verb in lead for verb in TAKES) and not any(word in sentence for word in QUESTIONS)


def settle(words: Sequence[str], mentions: list[Elevation]) -> list[Elevation]:
    """Corrections take back what was said before them; of two elevations the words or the order tell the baseline."""
    corrected = next((i for i in reversed(range(len(mentions))) if _is_correction(words, mentions, i)), None)
    if corrected is not None and mentions[corrected].role != "rejected":
        role = mentions[corrected].role
        mentions = [
            replace(m, role="rejected") if i < corrected and m.role == role else m for i, m in enumerate(mentions)
        ]
    kept = [i for i, m in enumerate(mentions) if m.role != "rejected"]
    here = [i for i in kept if mentions[i].role == "here"]
    if len(kept) < 2:
        return mentions
    if not here:
        mentions[kept[-1]] = replace(mentions[kept[-1]], role="here")
    elif len(here) == len(kept) == 2:
        mentions = _paired(words, mentions, here)
    return mentions


def _paired(words: Sequence[str], mentions: list[Elevation], pair: list[int]) -> list[Elevation]:
    """Two elevations, neither told to be the baseline."""
    first, second = (mentions[i] for i in pair)
    baseline: int | None = None
    if _is_sea_level(first) != _is_sea_level(second):
        level, other = (first, second) if _is_sea_level(first) else (second, first)
        down = (level.sure and not other.sure) or _maybe_from(words, other)
        baseline = mentions.index(other if down else level)
    elif any(_maybe_from(words, m) for m in (first, second)):
        baseline = mentions.index(first if _maybe_from(words, first) else second)
    elif any(word in words for word in PAIRED) or (second.sure and not first.sure):
        baseline = mentions.index(first)
    elif first.sure and not second.sure:
        return [replace(m, role="rejected") if m is first else m for m in mentions]
    return [replace(m, role="from") if i == baseline else m for i, m in enumerate(mentions)]


def _is_sea_level(mention: Elevation) -> bool:
    return not mention.place and mention.said == 0


def _maybe_from(words: Sequence[str], mention: Elevation) -> bool:
    before = " ".join(words[max(0, mention.start - 3) : mention.start])
    return any(before.endswith(cue) for cue in MAYBE_FROM)


def _is_correction(words: Sequence[str], mentions: Sequence[Elevation], i: int) -> bool:
    mention = mentions[i]
    begin = mentions[i - 1].end if i else 0
    end = mentions[i + 1].start if i + 1 < len(mentions) else len(words)
    corrected = i > 0 and said(words[begin : mention.start], CORRECTIONS)
    return corrected or said(words[mention.end : end], CORRECTIONS_AFTER)
