"""The times of a step, each with what it is the time of, told by the words of its own clause."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache
from itertools import chain, islice
from typing import Any, cast, get_args

from assistant.reading.reader import hear
from assistant.recipes.clauses import Span, Word, clause, rows, sentences, waiting, words_in
from assistant.recipes.lines import any_of
from rules.recipe import TimeMark, TimeOf
from rules.recipes.phrases import any_phrase, pattern

# What is longer is a slip of the pen or no time at all: two years.
LONGEST_MIN = 2 * 365 * 24 * 60
OVERNIGHT_MIN = (480.0, 720.0)
# What a figure is called where nothing tells.
UNTOLD: TimeOf = "other"
# How many signs before a figure stand next to it.
BESIDE = 60
# Verbs that say little: a more telling word of the same sentence wins over them.
POT = "pot"
VAGUE = ("cook", "preheat")
# Nothing cooks for more than a day: what is told so long is kept.
DAY_MIN = 24 * 60
# more than any step tells; each time is judged by those beside it
MOST_TIMES = 100
KEPT: TimeOf = "hold"
COOKED = ("boil", "simmer", "braise", "poach", "steam", "pressure", "bake", "cook")
WET = ("simmer", "boil", "braise", "poach", "steam", "reduce", "fry", "pressure", "microwave", "bake")
# Verbs whose figures belong to the apparatus that is in use; what boils stands on a stove beside it.
BY_APPARATUS = ("bake", "roast", "cook", "fry", "preheat", "reheat", UNTOLD)
WET_BY_APPARATUS = (*BY_APPARATUS, "simmer", "braise", "hold", "poach")

_FLAGS = re.IGNORECASE
_ABOUT = re.compile(r"(?:\b(?:about|around|approximately|approx\.?|roughly)\s+|~)(?:at\s+least\s+)?$", _FLAGS)
_AT_LEAST = re.compile(r"\bat\s+least\s+$", _FLAGS)
_OR_MORE = re.compile(r"\s+or\s+(?:more|longer)\b", _FLAGS)
# how many signs before a figure may say that it is about so much, or at least
LEAD = 32
HOUR_MIN = 60.0
# between the hours of a time and its minutes, and between the two ends of one
_AND_MINUTES = re.compile(r"\s*,?\s*(?:and\s+)?", _FLAGS)
_MINUTES = re.compile(r"[^a-z]*(?:to\s+[^a-z]*)?min", _FLAGS)
_TO = re.compile(r"\s*(?:to|-|–|—)\s*", _FLAGS)
_OVERNIGHT = re.compile(r"\bovernight\b", _FLAGS)
_OF = re.compile(r"\s*-?\s*(?:of\s+)?(?:(?!before\b|after\b|until\b|less\b|more\b|per\b)\w+\s+)?", _FLAGS)
# Between a figure and a verb behind it: the verb is of another deed.
_ANOTHER_DEED = re.compile(r"[,;]|\b(?:and|then)\b", _FLAGS)
_THEN = re.compile(r";|\bthen\b", _FLAGS)
_AGAIN_WORD = re.compile(r"\b(?:more|another|longer|further|additional|takes?)\b", _FLAGS)
# what a pressure cooker does now: it presses, or it fries with its lid off
_PRESSED = re.compile(r"\b(?:(?P<pressed>pressure|psi)|saut[eé](?:ing|ed)?|browning)\b", _FLAGS)
# "350 - 10 to 12 min", "375 for 25 minutes", as cards have it.
TERSE = re.compile(
    r"(?:^|(?<=[.;:]\s))\s*(?P<low>[1-5]\d\d)(?P<high>(?!))?(?=\s*(?:for|[-–—,])\s*(?:about\s+)?\d[^.;]{0,14}?(?:min|hour|hr|h\b))",
    _FLAGS,
)
# Words that name no action here: what is waited for, what is done meanwhile, and names of things.
_MASKED = re.compile(
    r"\buntil\b(?![^,.;]*\b(?:doubled?|doubles|puffy|risen|reduced)\b)[^,.;]*"
    r"|\b(?:stirring|whisking|turning|basting|skimming|swirling|tossing|flipping|rotating|mopping|spritzing|brushing)\b[^,.;]*?(?=\bfor\b|[,.;]|$)"
    r"|\breduce\s+(?:the\s+)?(?:heat|oven|temperature|speed|flame)|\bthe\s+rest\b(?!\s+time)|\bstand\s+mixer|\bwith\s+steam"
    r"|\b(?:low|medium|high|moderate|gentle|off\s+the|off|the|of|from)\s+heat\b"
    r"|\bdutch\s+oven|\bboiling\s+water|\bover\s+(?:\w+\s+){0,2}simmering\s+water|\bdouble\s+boiler|\b(?:heavy|sour|ice|whipped|whipping|double|pastry|the)\s+cream\b|\bcream\s+cheese"
    r"|\bcream\s+of\s+tartar|\b(?:brown|icing|granulated)\s+sugar|\bbrown\s+(?:butter|rice|stock)\b|\bbaking\s+(?:sheet|pan|dish|powder|soda|stone|steel|paper|tin)s?\b|\bbaked?\s+goods|\bfrying\s+pan"
    r"|\broasting\s+pan|\bthe\s+roast\b|\bcake\s+mix|\bpressure\s+cooker|\brice\s+cooker|\bcold\s+milk|\bcooking\s+(?:liquid|water|spray)"
    r"|\b(?:if|when|for|using|from|are)\s+(?:using\s+)?frozen\b|\bcooled?\s+(?:to|butter|syrup)|\bfried\b|\bmixing\s+bowl|\bcooling\s+rack|\b(?:into|onto)\s+the\s+(?:mix|batter)"
    r"|\bsmoked\b|\bgrilled\s+cheese|\bhold(?:ing)?\s+(?:\w+\s+){0,3}together",
    _FLAGS,
)


def times(text: str, apparatus: str = "") -> Iterator[TimeMark]:
    """The times of a step, in order, of each sentence up to MOST_TIMES; `other` where the words do not tell its kind.

    apparatus: what the recipe cooked in before this step, an id of the lexicon or ""
    """
    masked = _MASKED.sub(lambda m: " " * len(m[0]), text)
    carried: list[Word] = []
    for sentence in sentences(text):
        here = list(words_in("time", masked, sentence.start, sentence.end))
        if terse := TERSE.match(text, sentence.start):
            here.append(Word("bake", terse.start("low"), terse.end("low")))
        verbs = here or (carried if _carries(text[sentence.start : sentence.end]) else [])
        pressed = _is_pressed(text, sentence)
        marks: list[tuple[TimeMark, TimeOf]] = []
        for found in islice(chain(_figures(text, sentence), _nights(text, sentence)), MOST_TIMES):
            verb = _verb(verbs, found.start, found.end, masked, pressed)
            used = in_use(text, sentence, found.start, apparatus)
            what = _told(text, sentence, found, verb) or _by_apparatus(verb, used) or verb
            what = KEPT if what in COOKED and found.low_min > DAY_MIN else what
            marks.append((replace(found, what=what), verb))
        yield from (_with_its_like(mark, verb, [m for m, _ in marks]) for mark, verb in marks)
        carried = [Word(w.what, -1, -1) for w in here] or carried
        apparatus = last_named(text, sentence, apparatus)


def _is_pressed(text: str, sentence: Span) -> bool:
    """Whether what is said last of a pressure cooker, up to the end of a sentence, is that it stands under pressure."""
    said = list(_PRESSED.finditer(text, 0, sentence.end))
    return bool(said) and said[-1]["pressed"] is not None


def _with_its_like(mark: TimeMark, verb: TimeOf, beside: list[TimeMark]) -> TimeMark:
    """A time within which one food cooks, where its sentence tells of another how long that cooks: it cooks as well."""
    like = any(m is not mark and m.what == verb and m.high_min < HOUR_MIN for m in beside)
    within = mark.what == "limit" and verb in ("cook", *WET_BY_APPARATUS) and mark.high_min < HOUR_MIN
    return replace(mark, what=verb) if within and like else mark


def _figures(text: str, sentence: Span) -> Iterator[TimeMark]:
    """The times of a sentence, each as one: "1 hour and 15 to 25 minutes" is a time of 75 to 85 minutes."""
    held: TimeMark | None = None
    for found in _measured(text, sentence):
        joined = _as_one(text, held, found) if held else None
        if held and joined is None:
            yield held
        held = joined or found
    if held:
        yield held


def _as_one(text: str, first: TimeMark, second: TimeMark) -> TimeMark | None:
    """Two figures that are one time: hours with the minutes of both ends, or minutes that are told for one end only."""
    hours, odd = divmod(first.low_min, HOUR_MIN)
    if first.low_min != first.high_min or not hours or second.high_min >= HOUR_MIN:
        return None
    if not odd and _AND_MINUTES.fullmatch(text, first.end, second.start) and _MINUTES.match(text, second.start):
        low, high = first.low_min + second.low_min, first.low_min + second.high_min
    elif odd and odd < second.low_min and _TO.fullmatch(text, first.end, second.start):
        low, high = first.low_min, hours * HOUR_MIN + second.high_min
    else:
        return None
    return replace(first, end=second.end, low_min=low, high_min=high, at_least=second.at_least)


def _measured(text: str, sentence: Span) -> Iterator[TimeMark]:
    heard = hear(text[sentence.start : sentence.end])
    for time in heard.measures:
        if time.kind != "time" or not 0 < time.high <= LONGEST_MIN or heard.words[time.start].norm == "per":
            continue
        start, end = (sentence.start + at for at in heard.place(time))
        lead = text[max(sentence.start, start - LEAD) : start]
        more = _OR_MORE.match(text, end, sentence.end)
        least = bool(more or _AT_LEAST.search(lead))
        end = more.end() if more else end
        yield TimeMark(start, end, time.low, time.high, UNTOLD, bool(_ABOUT.search(lead)), least)


def _nights(text: str, sentence: Span) -> Iterator[TimeMark]:
    for night in _OVERNIGHT.finditer(text, sentence.start, sentence.end):
        yield TimeMark(night.start(), night.end(), *OVERNIGHT_MIN, UNTOLD, approx=True)


def _verb(verbs: list[Word], start: int, end: int, text: str, pressed: bool) -> TimeOf:
    """What is done for a time: "20 minutes of baking", else the nearest word before, else the nearest after."""
    direct = next((w.what for w in verbs if w.start >= end and _OF.fullmatch(text, end, w.start)), None)
    before = [w.what for w in verbs if w.end <= start]
    after = [w.what for w in verbs if w.start >= end and not _THEN.search(text, end, w.start)]
    ranked = ([direct] if direct else []) + before[::-1] + after
    chosen: str = ranked[0] if ranked else UNTOLD
    if chosen in VAGUE:
        near = [w.what for w in verbs if w.start >= end and not _ANOTHER_DEED.search(text, end, w.start)]
        telling = [w for w in (*before[::-1], *near) if w not in VAGUE]
        chosen = "pressure" if pressed else telling[0] if telling and telling[0] in WET else chosen
    return cast(TimeOf, chosen) if chosen in get_args(TimeOf) else UNTOLD


@cache
def _verb_first() -> re.Pattern[str]:
    return re.compile(rf"^\s*{any_of('steps', 'verbs')}", _FLAGS)


def _carries(sentence: str) -> bool:
    """Whether a sentence goes on with what the one before was about: "About 20 minutes.", "Then 10 minutes more"."""
    return bool(_AGAIN_WORD.search(sentence)) or not _verb_first().match(sentence)


# What stands next to a time, or what is waited for, decides it whatever the verb.


@dataclass(frozen=True, slots=True)
class _Deciding:
    """A row of times that is told by more than its verb: by what stands beside the figure, or what is waited for."""

    what: TimeOf
    not_of: tuple[str, ...]
    before: re.Pattern[str]
    after: re.Pattern[str]
    until: re.Pattern[str]
    unless_until: re.Pattern[str]
    sentence: re.Pattern[str]

    @staticmethod
    def of(row: dict[str, Any]) -> _Deciding:
        """The row with its phrases compiled."""
        before, after = (any_phrase(row[k]) if k in row else "(?!)" for k in ("before", "after"))
        return _Deciding(
            row["id"],
            tuple(row.get("not_of", ())),
            re.compile(rf"{before}\W*(?:about\s+)?$", _FLAGS),
            re.compile(rf"[\s-]*{after}", _FLAGS),
            *(pattern(tuple(row.get(k, ()))) for k in ("until", "unless_until", "sentence")),
        )


@cache
def _deciding() -> tuple[_Deciding, ...]:
    keys = {"before", "after", "until", "sentence"}
    return tuple(_Deciding.of(row) for row in rows("time") if row.keys() & keys)


def _told(text: str, sentence: Span, mark: TimeMark, verb: TimeOf) -> TimeOf | None:
    """What a time is by the words beside it, or by what the cook waits for; None where the verb tells."""
    lead = text[max(sentence.start, mark.start - BESIDE) : mark.start]
    waits = waiting(text, clause(text, sentence, mark.start, mark.end))
    waited = text[waits.start : waits.end] if waits else ""
    for row in _deciding():
        if verb in row.not_of:
            continue
        beside = row.before.search(lead) or row.after.match(text, mark.end, sentence.end)
        around = row.sentence.search(text, sentence.start, sentence.end)
        if beside or around or (row.until.search(waited) and not row.unless_until.search(waited)):
            return row.what
    return None


# The apparatus


@cache
def _apparatus() -> dict[str, dict[str, Any]]:
    return {row["id"]: row for row in rows("apparatus")}


def _by_apparatus(verb: TimeOf, used: str) -> TimeOf | None:
    row = _apparatus().get(used, {})
    verbs = WET_BY_APPARATUS if row.get("wet") else BY_APPARATUS
    return cast(TimeOf, row["time"]) if row.get("time") and verb in verbs else None


def apparatus_in(text: str, start: int, end: int) -> list[Word]:
    """The apparatus that a text names, in order; a Dutch oven is a pot, and a choice in brackets is not in use."""
    named = (w for w in words_in("apparatus", text, start, end) if not _POT.search(text, max(0, w.start - 8), w.start))
    return [w for w in named if not _CHOICE.search(text, start, w.start)]


# "(or a skillet if you use a slow cooker)", still open where the word stands
_CHOICE = re.compile(r"\((?:or|if)\b[^()]*$", _FLAGS)
_POT = re.compile(r"\bdutch\s+$", _FLAGS)
_BAKED = re.compile(r"(?<![\w-])(?:bake|bakes|baked|roast)(?!\w)", _FLAGS)


def in_use(text: str, sentence: Span, at: int, before: str) -> str:
    """What a figure's food cooks in: named before it in its sentence, else after it, else what was in use before."""
    named = apparatus_in(text, sentence.start, sentence.end)
    earlier = [w.what for w in named if w.end <= at]
    later = [w.what for w in named if w.start >= at]
    if earlier or later:
        return earlier[-1] if earlier else later[0]
    return _kept(text, sentence, before)


def _kept(text: str, sentence: Span, before: str) -> str:
    """The apparatus that stays in use: baking means an oven, unless all of a recipe is made in something else."""
    lasts = _apparatus().get(before, {}).get("lasts")
    return "oven" if not lasts and _BAKED.search(text, sentence.start, sentence.end) else before


def last_named(text: str, sentence: Span, before: str) -> str:
    """The apparatus in use when a sentence ends; a pot beside what lasts, or beside a crock, does not end that."""
    named = apparatus_in(text, sentence.start, sentence.end)
    if not named:
        return _kept(text, sentence, before)
    row = _apparatus().get(before, {})
    return before if named[-1].what == POT and (row.get("lasts") or row.get("wet")) else named[-1].what


def named_last(text: str, before: str) -> str:
    """The apparatus in use when a step ends."""
    for sentence in sentences(text):
        before = last_named(text, sentence, before)
    return before
