"""Component: mentions of elevations, stated, by place name or as a bare number, and the part each one plays."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from assistant.language.heard import Elevation, Found, Measure, Number, Role
from assistant.language.spelling import plain_words

ELEVATION_UNITS = ("ft", "m", "km", "mi")
SMALLEST_BARE = 300
REACH = 8

# Words that tell the part an elevation plays; the cue nearest before it counts.
BEFORE: dict[Role, tuple[str, ...]] = {
    "from": (
        "from", "written for", "written at", "developed at", "developed for", "tested at", "tested for", "tested in",
        "works at", "works in", "worked at", "worked in", "works fine at", "works great at", "works perfectly at",
        "perfect at", "perfect in", "used to live in", "used to live at", "used to cook at", "used to cook in",
        "used to bake at", "used to bake in", "used to be at", "used to be in", "used to make it at", "lived in",
        "lived at", "was at", "was in", "at home at", "at home in", "home at", "home in", "back in", "back at",
        "back home in", "back home at", "than at", "than in", "than", "compared to", "compared with", "compare to", "compares to", "compare with", "compared to at", "versus",
        "vs", "usually at", "normally at", "originally at", "originally in", "down at", "down in", "last year at",
        "last year in", "assumes", "timed at", "relative to", "baked in", "baked at", "cooked at", "cooked in",
        "did it at", "made it at", "made it in", "it was", "grew up in",
    ),
    "here": (
        "to", "into", "im at", "i am at", "im in", "i am in", "were at", "we are at", "were in", "we are in", "now at",
        "now in", "now im at", "here at", "here in", "live at", "live in", "living at", "living in", "cook at",
        "cook in", "cooking at", "cooking in", "bake at", "bake in", "kitchen is at", "kitchen at", "kitchen in",
        "kitchen is in", "up at", "up in", "up here at", "up here in", "elevation is", "elevation of", "altitude is",
        "altitude of", "what about at", "how about at", "work here at", "work at", "lodge is at", "need it at", "need it for",
        "want it at", "make it at", "making it at", "use at", "do at",
    ),
    "rejected": ("not", "not at", "instead of", "rather than", "not the", "and not", "isnt", "never"),
}  # fmt: skip
# cues of a baseline only where another elevation stands beside it: convert my recipe FOR 7,000 ft is no baseline
MAYBE_FROM = ("recipe for", "meant for", "made for", "designed for", "intended for", "is for", "its for", "calls for", "based on", "against", "good at", "fine at", "right at")
AFTER: dict[Role, tuple[str, ...]] = {
    "from": ("recipe", "version", "recipes", "formula", "time", "times", "timing", "instructions", "directions", "baseline", "cake", "sponge", "bread", "cookbook"),
    "here": ("kitchen", "now", "here"),
}  # fmt: skip
TAKES = ("takes", "take", "took", "needs", "needed", "cooks", "cooked", "bakes", "baked", "its", "was", "says", "braises", "simmers", "boils")
BESIDE = ("at", "in", "down", "up", "back", "home", "here", "there", "the", "my", "when", "i", "was", "lived", "about")
ELSEWHERE = (".", "?", "!", ";", "if", "normally", "usually", "but")
BETWEEN = (
    "at", "in", "the", "my", "our", "a", "an", "about", "around", "roughly", "up", "down", "here", "home", "only", "of", "elevation", "altitude",
    "just", "high", "near", "like", "is", "kitchen", "place", "cabin", "over", "under", "almost", "nearly", "exactly", "say", "maybe", "use", "it", "now",
)  # fmt: skip
QUESTIONS = ("how", "does", "do", "what", "will", "should", "would", "is", "can")
CORRECTIONS = ("no", "sorry", "i mean", "i meant", "actually", "make that", "oops", "scratch that", "wait", "correction")
CORRECTIONS_AFTER = ("i meant", "i mean", "actually", "rather", "i should say", "sorry")
PAIRED = (
    "between", "difference", "versus", "vs", "compare", "convert", "converting", "adjust", "adapt", "change", "translate", "recipe", "formula",
    "move", "moved", "moving", "go", "going", "took", "takes", "rework", "bring", "scale",
)  # fmt: skip

# What makes a bare number an elevation: the words right before it
LEADS = ("at", "elevation", "altitude", "in", "above", "height", "around", "about", "roughly", "approximately", "near")
LINKS = ("is", "of", "=", ":", "at", "about", "around", "roughly", "approximately", "like", "only", "over", "almost", "nearly", "just")
NOT_AFTER = (
    "am", "pm", "oclock", "psi", "degrees", "calories", "watts", "people", "rpm", "calorie", "f", "c", "dollars", "%", ":", "bucks",
)  # fmt: skip
YEARS = range(1900, 2101)
SEA = ("sea", "see", "seal", "c")
PLACE_LEADS = (
    "in", "at", "from", "to", "near", "around", "outside", "of", "for", "im", "my", "a", "the", "is", "here", "not", "than", "and", "moved",
)  # fmt: skip

Doc.set_extension("elevations", default=(), force=True)


@Language.component(
    "kitchen_elevation",
    requires=["doc._.numbers", "doc._.measures", "doc._.clock", "doc._.found"],
    assigns=["doc._.elevations"],
)
def kitchen_elevation(doc: Doc) -> Doc:
    """Hear every elevation of the text."""
    words = [token.norm_ for token in doc]
    doc._.elevations = hear(words, doc._.numbers, (*doc._.measures, *doc._.clock), doc._.found)
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
    """Lengths that are heights: 7,000 ft, 2.1 km, 200 feet below sea level."""
    found = []
    for m in measures:
        if m.kind != "length" or m.unit not in ELEVATION_UNITS:
            continue
        tail = words[m.end : m.end + 3]
        end = m.end + next((n for n, t in ((3, ["above", "sea", "level"]), (3, ["below", "sea", "level"])) if tail == t), 0)
        below = -1 if tail[:2] == ["below", "sea"] else 1
        if m.unit == "mi" and tail[:1] not in (["high"], ["up"], ["above"]) and m.said > 3:
            continue
        found.append(Elevation(m.start, end, below * m.said, m.unit, "here"))
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
    return [Elevation(i, i + 2, 5280.0, "ft", "here") for i in hits if not i or words[i - 1] not in ("a", "one", "1", "2", "two")]


def named(words: Sequence[str], found: Iterable[Found]) -> list[Elevation]:
    """Places by name; a name that is also an everyday word needs a word of place before it."""
    return [Elevation(f.start, f.end, 0.0, "", "here", f.id) for f in found if f.kind == "place" and _is_place(words, f)]


def _is_place(words: Sequence[str], found: Found) -> bool:
    if len(found) > 1 or words[found.start] not in plain_words():
        return True
    return len(words) == 1 or (found.start > 0 and words[found.start - 1] in PLACE_LEADS)


def bare(
    words: Sequence[str], numbers: Sequence[Number], measures: Iterable[Measure], mentions: Sequence[Elevation]
) -> list[Elevation]:
    """Numbers without a unit where the sentence makes them an elevation: at 7,000; from 0 to 7,000 ft; no, 6,000."""
    taken = {i for m in (*measures, *mentions) for i in range(m.start, m.end)}
    found: list[Elevation] = []
    for number in numbers:
        if number.start in taken or _next(words, number.end) in NOT_AFTER:
            continue
        if _is_range_start(words, number, mentions) or _is_bare_elevation(words, number, bool(mentions or found)):
            unit = _range_unit(number, mentions) if _is_range_start(words, number, mentions) else ""
            found.append(Elevation(number.start, number.end, number.value, unit, "here"))
    return found


def _next(words: Sequence[str], at: int) -> str:
    return words[at] if at < len(words) else ""


def _is_range_start(words: Sequence[str], number: Number, mentions: Sequence[Elevation]) -> bool:
    """The 0 in `from 0 to 7,000 ft`, the 6,000 in `6,000 not 7,000 ft`."""
    signs = ("to", "and", "or", "not", "-", "vs", "versus", "into")
    return _next(words, number.end) in signs and any(m.start == number.end + 1 and not m.place and m.unit for m in mentions)


def _range_unit(number: Number, mentions: Sequence[Elevation]) -> str:
    return next(m.unit if m.said else "" for m in mentions if m.start == number.end + 1)


def _is_bare_elevation(words: Sequence[str], number: Number, beside_another: bool) -> bool:
    before = list(words[max(0, number.start - 3) : number.start])
    explicit = any(word in ("elevation", "altitude") for word in (*before, _next(words, number.end)))
    explicit = explicit or list(words[number.end : number.end + 2]) == ["above", "sea"]
    if number.value < SMALLEST_BARE and not explicit:
        return False
    while before and before[-1] in LINKS and before[-1] not in ("at", "of"):
        before.pop()
    if explicit or (before and before[-1] in LEADS):
        return explicit or before[-1] != "in" or number.value >= 1000
    if number.value < 1000 or int(number.value) in YEARS or number.value % 10:
        return False
    led = " ".join(words[: number.start])
    linked = before and before[-1] in ("to", "from", "and", "not", "im", "for", "vs", "versus", "than")
    corrected = any(f" {led} ".endswith(f" {c} ") or f" {led} ".endswith(f" {c} , ") for c in CORRECTIONS)
    at_end = number.end == len(words) or _next(words, number.end) in ("?", ".", ",", "!", "not", "sorry", "i", "instead", "now", "here", "up")
    return bool(corrected or (linked and (beside_another or at_end)) or (at_end and number.value >= 2000))


def with_role(
    words: Sequence[str], mentions: Sequence[Elevation], i: int, times: Sequence[Measure]
) -> Elevation:
    """The mention with the part that the words around it give it."""
    mention = mentions[i]
    first = mentions[i - 1].end if i else 0
    last = mentions[i + 1].start if i + 1 < len(mentions) else len(words)
    before, after = words[max(first, mention.start - REACH) : mention.start], words[mention.end : min(last, mention.end + 3)]
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
    for part, cues in BEFORE.items():
        for cue in cues:
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
        baseline = mentions.index(level if not level.sure or other.sure else other)
    elif any(_maybe_from(words, m) for m in (first, second)):
        baseline = mentions.index(first if _maybe_from(words, first) else second)
    elif any(word in words for word in PAIRED):
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
    before, after = f" {' '.join(words[begin : mention.start])} ", f" {' '.join(words[mention.end : end])} "
    return any(f" {c} " in before for c in CORRECTIONS if i) or any(f" {c} " in after for c in CORRECTIONS_AFTER)
