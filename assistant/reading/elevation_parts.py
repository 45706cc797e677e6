"""The part that each mention of an elevation plays: where the cook is, where the baseline was, none, or taken back."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from assistant.reading import places
from assistant.reading.spans import Elevation, Measure, Role
from assistant.reading.units import to_si
from assistant.understanding.cue_words import cues, said
from rules.physics.units import M_PER_FT

REACH = 8
# The part an elevation plays is told by the cue nearest before it.
BEFORE: dict[Role, tuple[str, ...]] = {
    "from": cues("elevation", "from"),
    "here": cues("elevation", "here"),
    "rejected": cues("elevation", "rejected"),
    "apart": cues("elevation", "apart"),
}
AFTER: dict[Role, tuple[str, ...]] = {
    "from": cues("elevation", "after_from"),
    "here": cues("elevation", "after_here"),
}
MAYBE_FROM, PAIRED = cues("elevation", "maybe_from"), cues("elevation", "paired")
TAKES, BESIDE, BETWEEN = cues("elevation", "takes"), cues("elevation", "beside"), cues("elevation", "between")
ELSEWHERE, QUESTIONS = cues("elevation", "elsewhere"), cues("elevation", "questions")
CORRECTIONS, CORRECTIONS_AFTER = cues("elevation", "corrections"), cues("elevation", "corrections_after")
OTHERS, OTHERS_DO, OTHERS_IN = (
    cues("elevation", "others"),
    cues("elevation", "others_do"),
    cues("elevation", "others_in"),
)
FOR_THEM, OTHERS_ASK = cues("elevation", "for_them"), cues("elevation", "others_ask")
COMPARING, BESIDE_COMPARED = cues("elevation", "comparing"), cues("elevation", "beside_compared")
ASKS, COUNTED = cues("elevation", "asks"), cues("elevation", "counted")
MADE_IN = cues("elevation", "made_in")
LANDMARKS = cues("elevation", "landmarks")
# lands stand between a word that tells and the height: in the Drakensberg at 3,000
SMALL = frozenset((*BETWEEN, *cues("elevation", "lands_in_metres"), *cues("elevation", "lands_in_feet"), "on"))
DIFFERENCES = frozenset(cues("elevation", "beside_it"))
TIMES = (["time"], ["times"], ["timing"])
# words of a kitchen beside the one whose elevation is said: it takes 25 min at 5,000 ft, how long here
OTHER_KITCHEN = frozenset(cues("elevation", "other_kitchen"))
# what is printed on these is of no kitchen
PACKETS = frozenset(("box", "packet", "package", "label", "bag", "packaging", "carton"))
# and in Marseille, would it differ there: the second place is asked about beside the first
TOO = frozenset(("and", "differ", "different", "differently", "same", "also", "too", "change", "changes"))
SENTENCE_ENDS = (".", "?", "!", ";")
TIMED_REACH = 9
# figures of a count of whistles
MOST_FIGURES = 2
# figures of a bake or a pot that belong to the place beside them
OF_A_POT = ("time", "temperature", "degree")


def told(words: Sequence[str], mentions: Sequence[Elevation], measures: Sequence[Measure]) -> tuple[Elevation, ...]:
    """The mentions, each with its part."""
    timed = [m for m in measures if m.kind == "time"]
    parts = [with_role(words, mentions, i, timed) for i in range(len(mentions))]
    return tuple(settle(words, with_same_part(parts), measures))


def with_same_part(parts: Sequence[Elevation]) -> list[Elevation]:
    """The mentions; a place that was left, named once more, is where the baseline was: from Pune; in Pune it took."""
    left = {one.place for one in parts if one.place and one.role == "from" and one.sure}
    return [replace(one, role="from", sure=True) if one.place in left and not one.sure else one for one in parts]


def with_role(words: Sequence[str], mentions: Sequence[Elevation], i: int, times: Sequence[Measure]) -> Elevation:
    """The mention with the part that the words around it give it."""
    mention = mentions[i]
    if mention.sure:
        return mention
    if _is_landmark(words, mentions, i):
        return replace(mention, role="apart", sure=True)
    first = mentions[i - 1].end if i else 0
    last = mentions[i + 1].start if i + 1 < len(mentions) else len(words)
    before, after = words[max(first, mention.start - REACH) : mention.start], words[mention.end : last]
    if _is_of_others(before, after) and said(after[:4], OTHERS_ASK) and not said(words, FOR_THEM):
        return replace(mention, role="apart", sure=True)
    if _is_of_others(before, after):
        theirs = len(mentions) == 1 and "like" not in before and said(words, FOR_THEM)
        return replace(mention, role="here" if theirs else "from", sure=True)
    told = _role_before(before)
    at_sea = mention.said == 0.0 and mention.place is None
    alone = len(mentions) == 1 and told is None and OTHER_KITCHEN.isdisjoint(words) and not at_sea
    until = mention.end if alone else last
    if (told in (None, "from") or at_sea) and _is_timed(words, first, until, mention, times):
        told = "from"
    elif told is None or (told == "here" and before[-1:] != ["to"] and "into" not in before):
        told = _role_after(after) or told
    if told is None and mention.place and places.is_baseline(mention.place):
        told = "from"
    return replace(mention, role=told or "here", sure=told is not None)


def _is_landmark(words: Sequence[str], mentions: Sequence[Elevation], i: int) -> bool:
    """Whether a place only tells where a height is: a camp at 3,100 m above Zermatt."""
    if not i or not mentions[i].place or mentions[i - 1].place:
        return False
    between = words[mentions[i - 1].end : mentions[i].start]
    return any(word in LANDMARKS for word in between) and all(word in (*LANDMARKS, *BETWEEN) for word in between)


def _is_of_others(before: Sequence[str], after: Sequence[str]) -> bool:
    """Whether somebody else cooks there: like my mom in Ohio does, my sister in Ludhiana gets it right."""
    if before[-1:] and before[-1] not in OTHERS_IN:
        return False
    near = before[-4:-1]
    at = next((i for i in range(len(near) - 1, -1, -1) if near[i] in OTHERS), None)
    if at is None:
        return False
    as_they_do = any(word in ("like", "as", "than") for word in (*before[-6:-4], *near[:at]))
    return as_they_do or any(word in OTHERS_DO for word in after[:3]) or said(after[:4], OTHERS_ASK)


def _role_before(before: Sequence[str]) -> Role | None:
    """The part told by the cue that ends nearest before the mention, the longer of two; only small words between."""
    text, best = f" {' '.join(before)} ", (-1, 0)
    role: Role | None = None
    for part, leads in BEFORE.items():
        for cue in leads:
            at = text.rfind(f" {cue} ")
            end = at + len(cue) + 1
            if at >= 0 and (end, len(cue)) > best and all(word in SMALL for word in text[end:].split()):
                role, best = part, (end, len(cue))
    return role


def _role_after(after: Sequence[str]) -> Role | None:
    return next((part for part, cues in AFTER.items() if after and after[0] in cues), None)


def _is_timed(words: Sequence[str], first: int, last: int, mention: Elevation, times: Sequence[Measure]) -> bool:
    """Whether a time is given for this elevation: it takes 3 hours at 500 ft; at sea level it takes 40 minutes."""
    for time in times:
        if is_difference(words, time):
            continue
        if first <= time.start < mention.start:
            lead, between = words[max(first, time.start - 4) : time.start], words[time.end : mention.start]
            if _takes(words[first : time.start], lead) and all(word in BESIDE for word in between):
                return True
        asked = any(word in ASKS for word in _sentence_before(words, mention))
        if not asked and mention.end <= time.start < last and mention.end + 4 >= time.start:
            lead = words[mention.end : time.start]
            if _takes(lead, lead) and not _is_own(lead) and not any(word in lead for word in ELSEWHERE):
                return True
    return False


def is_difference(words: Sequence[str], time: Measure) -> bool:
    """Whether a time is only how much more it takes, and no time of a recipe: an extra hour, another 20 min."""
    return not DIFFERENCES.isdisjoint(words[max(time.start - 1, 0) : time.end])


def _is_own(lead: Sequence[str]) -> bool:
    """Whether nobody but the cook did it: 9,000 ft baked 60 min."""
    return len(lead) == 1 and lead[0].endswith("ed")


def _takes(sentence: Sequence[str], lead: Sequence[str]) -> bool:
    return (
        not PACKETS.intersection(sentence)
        and any(verb in lead for verb in TAKES)
        and not any(word in sentence for word in QUESTIONS)
    )


def settle(words: Sequence[str], mentions: list[Elevation], measures: Sequence[Measure]) -> list[Elevation]:
    """Corrections take back what was said before them; of two elevations the words or the order tell the baseline."""
    corrected = next((i for i in reversed(range(len(mentions))) if _is_correction(words, mentions, i)), None)
    if corrected is not None and mentions[corrected].role != "rejected":
        role = mentions[corrected].role
        mentions = [
            replace(m, role="rejected") if i < corrected and m.role == role else m for i, m in enumerate(mentions)
        ]
    mentions = _compared(words, [_here_whose_time_is_asked(words, m, measures) for m in mentions])
    kept = [i for i, m in enumerate(mentions) if m.role not in ("rejected", "apart")]
    here = [i for i in kept if mentions[i].role == "here"]
    if len(kept) < 2:
        return [
            _here_of_all(words, _here_of_time(words, m), measures) if i in kept else m for i, m in enumerate(mentions)
        ]
    if not here:
        mentions[kept[-1]] = _here_of_last(mentions[kept[-1]])
    elif len(here) == 2:
        mentions = _paired(words, mentions, here, measures)
    elif len(here) > 2:
        mentions = _several(words, mentions, here, measures)
    return mentions


def _several(
    words: Sequence[str], mentions: list[Elevation], here: list[int], measures: Sequence[Measure]
) -> list[Elevation]:
    """More than two elevations: of those whose part no word tells, what is no kitchen beside one that is."""
    high = [i for i in here if not _is_sea_level(mentions[i])]
    if len(high) == 1 and not any(mentions[i].compared for i in here):
        # two figures at sea level, and one kitchen
        return [replace(m, role="from") if i in here and i not in high else m for i, m in enumerate(mentions)]
    sure = [i for i in here if mentions[i].sure]
    unsure = [i for i in here if not mentions[i].sure]
    if not sure or not unsure:
        return mentions
    if any(mentions[i].compared for i in unsure):
        return [replace(m, role="rejected") if i in sure and not m.compared else m for i, m in enumerate(mentions)]
    baselines = [i for i in unsure if _is_sea_level(mentions[i]) or _has_figure(words, mentions[i], measures)]
    parts: dict[int, Role] = {i: "from" if i in baselines else "apart" for i in unsure}
    return [replace(m, role=parts.get(i, m.role)) for i, m in enumerate(mentions)]


def _here_of_time(words: Sequence[str], mention: Elevation) -> Elevation:
    """The only height is the kitchen's, though the time stands behind it: roast potatoes at 2,300 m time."""
    told_by_time = mention.role == "from" and not mention.place and words[mention.end : mention.end + 1] in TIMES
    lone = told_by_time and _role_before(words[max(0, mention.start - REACH) : mention.start]) is None
    return replace(mention, role="here") if lone else mention


def _here_of_all(words: Sequence[str], mention: Elevation, measures: Sequence[Measure]) -> Elevation:
    """The only place, in the hills, is the kitchen where no time and no other kitchen is told: rolls baked in Taos."""
    made = mention.start > 1 and words[mention.start - 2] in MADE_IN
    height = places.elevation_m(mention.place) if mention.place else _height_m(mention)
    high = height is not None and height >= places.HILLS_M
    timed = any(m.kind == "time" for m in measures)
    lone = mention.role == "from" and made and high and not timed and OTHER_KITCHEN.isdisjoint(words)
    return replace(mention, role="here") if lone else mention


def _here_whose_time_is_asked(words: Sequence[str], mention: Elevation, measures: Sequence[Measure]) -> Elevation:
    """A place whose time ends the question has none yet: 20 min in Lima, Cusco time?"""
    behind = words[mention.end : mention.end + 2]
    ends = behind[:1] in TIMES and (len(behind) == 1 or behind[1] in SENTENCE_ENDS)
    told = any(m.kind in OF_A_POT and m.end <= mention.start for m in measures)
    asked = mention.role == "from" and bool(mention.place) and ends and told
    return replace(mention, role="here") if asked else mention


def _here_of_last(mention: Elevation) -> Elevation:
    """The last of several baselines is the kitchen, but for a place that is never one."""
    never = mention.sure and not mention.place and mention.said == 0
    return mention if never or (mention.place and places.is_baseline(mention.place)) else replace(mention, role="here")


def _compared(words: Sequence[str], mentions: list[Elevation]) -> list[Elevation]:
    """Places that are asked about together: La Paz or Lhasa, Aspen against the coast, 2400, 2800 and 4700 m."""
    together: set[int] = set()
    several = sum(m.role == "here" for m in mentions) > 2
    for i in range(1, len(mentions)):
        one, two = mentions[i - 1], mentions[i]
        between = list(words[one.end : two.start])
        signs = [word for word in between if word in COMPARING]
        small = all(word in BESIDE_COMPARED for word in between if word not in signs)
        if small and (set(signs) - {","} or (signs and several)) and {one.role, two.role} <= {"here", "from"}:
            together |= {i - 1, i}
    return [replace(m, compared=True) if i in together else m for i, m in enumerate(mentions)]


def _paired(
    words: Sequence[str], mentions: list[Elevation], pair: list[int], measures: Sequence[Measure]
) -> list[Elevation]:
    """Two elevations, neither told to be the baseline."""
    first, second = (mentions[i] for i in pair)
    both = first.compared and second.compared and pair[1] == pair[0] + 1
    baseline: int | None = None
    if _is_sea_level(first) != _is_sea_level(second):
        level, other = (first, second) if _is_sea_level(first) else (second, first)
        down = (level.sure and not other.sure) or _maybe_from(words, other)
        baseline = mentions.index(other if down else level)
    elif both and not _is_moved(words) and not _only_timed(words, (first, second), measures):
        return mentions
    elif any(_maybe_from(words, m) for m in (first, second)):
        baseline = mentions.index(first if _maybe_from(words, first) else second)
    elif (of := _by_clause(words, (first, second), measures)) is not None and not (first.sure and second.sure):
        asked_too = first.place and second.place and not TOO.isdisjoint(_sentence_before(words, second))
        if of is first and asked_too and not _is_told_a_time(words, measures):
            # nothing is told of the first that the second could be held against: both are asked about
            return [replace(m, compared=True) if m in (first, second) else m for m in mentions]
        baseline = mentions.index(of)
    elif _is_moved(words) or (second.sure and not first.sure):
        baseline = mentions.index(first)
    elif first.sure and not second.sure:
        told = _is_asked(words, second) and any(m.kind == "time" and m.end <= second.start for m in measures)
        return [replace(m, role="from" if told else "rejected") if m is first else m for m in mentions]
    elif (low := _lower_of(first, second)) is not None:
        baseline = mentions.index(low)
    return [replace(m, role="from") if i == baseline else m for i, m in enumerate(mentions)]


def _lower_of(first: Elevation, second: Elevation) -> Elevation | None:
    """The lowland of two places of which no word tells where the kitchen is: who asks cooks in the hills."""
    heights = [(places.elevation_m(m.place) if m.place else _height_m(m), m) for m in (first, second)]
    known = sorted(((height, i) for i, (height, _) in enumerate(heights) if height is not None))
    if len(known) < 2 or known[0][0] >= places.HILLS_M or known[1][0] < places.HILLS_M:
        return None
    return heights[known[0][1]][1]


def _height_m(mention: Elevation) -> float:
    """A figure as a height [m]; a bare one as it would be in feet."""
    return mention.said * M_PER_FT if mention.unit in ("", "ft") else to_si(mention.said, mention.unit)


def _is_told_a_time(words: Sequence[str], measures: Sequence[Measure]) -> bool:
    return any(m.kind == "time" for m in measures) or any(word in COUNTED for word in words)


def _by_clause(
    words: Sequence[str], pair: tuple[Elevation, Elevation], measures: Sequence[Measure]
) -> Elevation | None:
    """The baseline of two: 40 min in Boston, what is it in Leadville. One with its own figure, or not asked about."""
    first, second = pair
    timed = _only_timed(words, pair, measures)
    asked = [m for m in pair if _is_asked(words, m)]
    if timed and not timed.sure:
        return timed
    if len(asked) == 1 and not (first.sure or second.sure):
        return first if asked[0] is second else second
    return None


def _only_timed(
    words: Sequence[str], pair: tuple[Elevation, Elevation], measures: Sequence[Measure]
) -> Elevation | None:
    """The one of two that has a figure of its own, where the other has none."""
    timed = [m for m in pair if _has_figure(words, m, measures)]
    return timed[0] if len(timed) == 1 else None


def _has_figure(words: Sequence[str], mention: Elevation, measures: Sequence[Measure]) -> bool:
    """Whether a time, a temperature or whistles stand right before it, in the same breath."""
    ends = [m.end for m in measures if m.kind in OF_A_POT] + [i + 1 for i, word in enumerate(words) if word in COUNTED]
    if any(word in COUNTED for word in words):
        # whistles are asked for, and their number stands by itself: I give 5 in Delhi
        ends += [i + 1 for i, word in enumerate(words) if word.isdigit() and len(word) <= MOST_FIGURES]
    near = [end for end in ends if 0 <= mention.start - end <= TIMED_REACH]
    return any(
        not any(w in SENTENCE_ENDS or w in ASKS or w == "," for w in words[end : mention.start]) for end in near
    ) and not _asks(_clause_before(words, mention))


def _clause_before(words: Sequence[str], mention: Elevation) -> Sequence[str]:
    """What stands before it in its sentence; where whistles are counted, behind the last comma only."""
    sentence = _sentence_before(words, mention)
    if not any(word in COUNTED for word in words) or "," not in sentence:
        return sentence
    return sentence[len(sentence) - list(reversed(sentence)).index(",") :]


def _is_asked(words: Sequence[str], mention: Elevation) -> bool:
    """Whether a question word stands before it in its sentence, or the sentence ends with a mark of question."""
    if _asks(_sentence_before(words, mention)):
        return True
    behind = next((word for word in words[mention.end :] if word in SENTENCE_ENDS), "")
    return behind == "?" and not _asks(_up_to_end(words, mention.end))


def _asks(words: Sequence[str]) -> bool:
    """Whether a question word is among them; before a figure it tells: she does 6 in Chennai."""
    figures = [i + 1 < len(words) and words[i + 1][0].isdigit() for i in range(len(words))]
    return any(word in ASKS and not figure for word, figure in zip(words, figures, strict=True))


def _sentence_before(words: Sequence[str], mention: Elevation) -> Sequence[str]:
    start = next((i + 1 for i in range(mention.start - 1, -1, -1) if words[i] in SENTENCE_ENDS), 0)
    return words[start : mention.start]


def _up_to_end(words: Sequence[str], at: int) -> Sequence[str]:
    return words[at : next((i for i in range(at, len(words)) if words[i] in SENTENCE_ENDS), len(words))]


def _is_moved(words: Sequence[str]) -> bool:
    return any(word in words for word in PAIRED)


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
