"""How the log goes on: back from what hurt, further with what helped, else the next in the line."""

from __future__ import annotations

from dataclasses import replace

from rules.baking import components
from rules.baking.bands import TABLES
from rules.baking.change import WAYS, WHATS, Change
from rules.baking.rounding import kitchen
from rules.mending.amounts import FINE
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.log import OPPOSITE, WORDS, Tried
from rules.mending.model import Ranked
from rules.mending.size import sized
from rules.said import Said, Words, measure, oven, sentences, yes

say = sentences("mending/next_in_log")
FURTHER_TIMES, SAME = 2, 1e-6
SCALED = ("formula", "trial", "stage", "fat")
FIGURELESS = (None, "percent", "K")


def ranked(points: float, cause: Cause, bench: Bench, *, further: bool = False) -> Ranked:
    """A cause with its change, sized."""
    done = sized(cause, bench, further=further)
    return Ranked(cause, points, replace(done.change, because=bench.told(cause.because)), done.line)


def carried_on(scored: list[tuple[float, Cause]], bench: Bench) -> tuple[Ranked | None, Words]:
    """What follows from the last batch: back from what hurt, further with what helped; and a sentence on it."""
    log, outcome = bench.log, bench.log.last_outcome
    if outcome is None:
        return None, ""
    if len(log.last_changes) > 1:
        return None, say("several")
    tried = log.last_changes[0]
    cause = next((c for _, c in scored if tried.is_of(c)), None)
    if log.has_turned:
        # who goes to and fro with one amount learns nothing more of it
        swings = log.is_way_back(tried)
        back = part_of_the_way(tried, bench) if _overshot(tried, scored) and not swings else None
        return (back, say("too-far")) if back else (None, say("keep"))
    if outcome == "hurt" and not log.is_way_back(tried) and not is_unmoved(tried):
        return way_back(tried, cause, bench), say("worse")
    if outcome == "helped" and cause and cause.by in SCALED and _may_go_further(cause, tried, bench):
        points = next(p for p, c in scored if c is cause)
        return ranked(points, cause, bench, further=True), say("further")
    if outcome == "helped":
        return None, say("keep")
    return None, say("no-difference")


def _overshot(tried: Tried, scored: list[tuple[float, Cause]]) -> bool:
    """Whether what is wrong now is mended by taking the last change back: it went too far."""
    return any(c.what == tried.what != WORDS and c.way == OPPOSITE.get(tried.way) for _, c in scored)


def part_of_the_way(tried: Tried, bench: Bench) -> Ranked | None:
    """Back to where the tables would have gone, or half the way; None for a change without figures."""
    ratio = tried.ratio
    if ratio is None or tried.from_value is None or tried.from_unit in (*FIGURELESS, "degC", "degF"):
        return None
    asked = components.ratio(bench.style, tried.what, bench.from_m, bench.here_m).value if tried.what in TABLES else 1.0
    meant = asked if min(ratio, 1.0) < asked < max(ratio, 1.0) else (1.0 + ratio) / 2
    ways = (meant, (1.0 + ratio) / 2)
    found = (kitchen(tried.from_value * by, tried.from_unit, fine=tried.what in FINE) for by in ways)
    to = next((to for to in found if to not in (tried.to_value, tried.from_value)), None)
    return None if to is None else way_back(replace(tried, from_value=to), None, bench)


def is_unmoved(tried: Tried) -> bool:
    """Whether a change left the amount as it was."""
    return tried.ratio is not None and abs(tried.ratio - 1.0) < SAME


def _may_go_further(cause: Cause, tried: Tried, bench: Bench) -> bool:
    return bench.log.times_tried(cause) <= FURTHER_TIMES and not bench.log.is_way_back(tried)


def way_back(tried: Tried, cause: Cause | None, bench: Bench) -> Ranked:
    """The last change undone."""
    what = tried.what if tried.what in WHATS else WORDS
    way = OPPOSITE.get(tried.way, "different")
    line = _undone(tried, bench.name(what))
    change = Change(
        what=what, way=way if way in WAYS else "different", at="recipe", item=tried.item,  # type: ignore[arg-type]
        from_value=tried.to_value, from_unit=tried.to_unit, to_value=tried.from_value, to_unit=tried.from_unit,
        rule="mending.way_back", because=say("worse-with-it"), sources=("common-practice",),
    )  # fmt: skip
    unnamed = Cause("way_back", change.what, change.way, "", 0, "", True, 0, "common-practice", line, change.because)
    return Ranked(cause or unnamed, 0.0, change, line)


def _undone(tried: Tried, name: str) -> Said:
    """The sentence that takes a change back. name: what to call what was changed, where the cook did not say."""
    item = tried.item
    if tried.from_value is None or tried.to_value is None or tried.from_unit in FIGURELESS:
        return say("undo", named=yes(item), item=item)
    if tried.from_unit in ("degC", "degF"):
        value = tried.from_value
        return say("oven-back", setting=oven((value - 32) / 1.8 if tried.from_unit == "degF" else value))
    before, after = measure(tried.from_value, tried.from_unit or ""), measure(tried.to_value, tried.to_unit or "")
    return say("go-back", before=before, after=after, item=item or name)
