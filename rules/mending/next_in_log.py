"""How the log goes on: back from what hurt, further with what helped, else the next in the line."""

from __future__ import annotations

from rules.baking.change import WAYS, WHATS, Change
from rules.baking.rounding import measure
from rules.mending.causes import Cause
from rules.mending.failed_dish import Bench
from rules.mending.log import OPPOSITE, WORDS, Tried
from rules.mending.model import Ranked
from rules.mending.size import sized

FURTHER_TIMES = 2
SCALED = ("formula", "trial", "stage", "fat")
FIGURELESS = (None, "percent", "K")


def ranked(points: float, cause: Cause, bench: Bench, *, further: bool = False) -> Ranked:
    """A cause with its change, sized."""
    done = sized(cause, bench, further=further)
    return Ranked(cause, points, done.change, done.line)


def carried_on(scored: list[tuple[float, Cause]], bench: Bench) -> tuple[Ranked | None, str]:
    """What follows from the last batch: back from what hurt, further with what helped; and a sentence on it."""
    log, outcome = bench.log, bench.log.last_outcome
    if outcome is None:
        return None, ""
    if len(log.last_changes) > 1:
        return None, (
            "The last batch changed more than one thing, so it cannot tell which of them made the difference. Change "
            "one at a time from here."
        )
    tried = log.last_changes[0]
    cause = next((c for _, c in scored if tried.is_of(c)), None)
    if outcome == "hurt" and not log.is_way_back(tried):
        return way_back(tried, cause, bench), "The last change made it worse, so it goes back first."
    if outcome == "helped" and cause and cause.by in SCALED and _may_go_further(cause, tried, bench):
        points = next(p for p, c in scored if c is cause)
        return ranked(points, cause, bench, further=True), "The last change helped, so go half a step further with it."
    if outcome == "helped":
        return None, "The last change helped: keep it, and add this one."
    return None, "The last change made no difference: leave it as it is and try the next."


def _may_go_further(cause: Cause, tried: Tried, bench: Bench) -> bool:
    return bench.log.times_tried(cause) <= FURTHER_TIMES and not bench.log.is_way_back(tried)


def way_back(tried: Tried, cause: Cause | None, bench: Bench) -> Ranked:
    """The last change undone."""
    what = tried.what if tried.what in WHATS else WORDS
    way = OPPOSITE.get(tried.way, "different")
    known = tried.from_value is not None and tried.to_value is not None and tried.from_unit not in FIGURELESS
    if known and tried.from_unit in ("degC", "degF"):
        line = f"Set the oven back to {_degrees(tried, bench)}, and change nothing else."
    elif known:
        name = tried.item or bench.name(what)
        line = (
            f"Go back to {measure(tried.from_value or 0, tried.from_unit)} of {name} from "
            f"{measure(tried.to_value or 0, tried.to_unit)}, and change nothing else."
        )
    else:
        line = f"Undo the last change{_named(tried)}, and change nothing else."
    change = Change(
        what=what, way=way if way in WAYS else "different", at="recipe", item=tried.item,  # type: ignore[arg-type]
        from_value=tried.to_value, from_unit=tried.to_unit, to_value=tried.from_value, to_unit=tried.from_unit,
        rule="mending.way_back", because="The batch came out worse with it.", sources=("common-practice",),
    )  # fmt: skip
    unnamed = Cause("way_back", change.what, change.way, "", 0, "", True, 0, "common-practice", line, change.because)
    return Ranked(cause or unnamed, 0.0, change, line)


def _degrees(tried: Tried, bench: Bench) -> str:
    value = tried.from_value or 0.0
    return bench.say.oven((value - 32) / 1.8 if tried.from_unit == "degF" else value)


def _named(tried: Tried) -> str:
    return f" ({tried.item})" if tried.item else ""
