"""Mending a dish that failed: what most likely lay behind it, and the one change to make next.

Published advice is to change one thing at a time, leavening first, then sugar, then liquid; the log of earlier batches
tells what has been tried, and the next change goes on from there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from rules.air import HIGHEST_M, LOWEST_M
from rules.baking.change import Change
from rules.errors import within
from rules.mending.bench import CLASSES, STYLES, Bench
from rules.mending.causes import Cause, behind, causes
from rules.mending.log import OPPOSITE, WORDS, Log, Trial, Tried
from rules.mending.size import sized
from rules.mending.symptoms import Symptom, catalogue, meant
from rules.model import Units
from rules.recipe import Recipe

__all__ = ["Mending", "Ranked", "Trial", "Tried", "catalogue", "meant", "suggest"]

ORDER = ("leavening", "yeast", "sugar", "liquid", "oven", "time")
FURTHER_TIMES = 2
SCALED = ("formula", "trial", "stage", "fat")
OUT_OF_REACH = 0.1


@dataclass(frozen=True, slots=True)
class Ranked:
    """A cause with its score [points], the change that mends it, and the sentence that says the change."""

    cause: Cause
    points: float
    change: Change
    line: str


@dataclass(frozen=True, slots=True)
class Mending:
    """What to do about a dish that failed.

    symptoms: as they are meant of this dish; causes: the next change first, then the runners-up
    bench: what the sizes were worked out for; note: what the log has to do with it, "" where there is no log
    """

    symptoms: tuple[Symptom, ...]
    causes: tuple[Ranked, ...]
    bench: Bench
    note: str = ""

    @property
    def next(self) -> Ranked | None:
        """The one change to make next; None where nothing is wrong."""
        return self.causes[0] if self.causes else None


def suggest(
    symptoms: Sequence[str],
    *,
    recipe: Recipe | None = None,
    dish_class: str | None = None,
    dish: str | None = None,
    method: str | None = None,
    elevation_m: float = 0.0,
    from_elevation_m: float = 0.0,
    time_min: float | None = None,
    units: Units = "us",
    log: Sequence[Trial] = (),
) -> Mending:
    """Rank what may lie behind a failure and size the changes; one change comes next.

    symptoms: ids of data/lexicon/symptoms.toml; none gives a Mending without causes
    recipe: its ratios make some causes likelier and size the change; dish_class: where there is no recipe
    elevation_m: where it is cooked, from_elevation_m: where the recipe is right [m]; time_min: how long it was cooked
    log: earlier batches of it, oldest first, the last of them being the one that shows these symptoms
    raises: UnknownWord for a symptom that is not in the catalogue; OutOfRange for an elevation no kitchen has
    source: the causes' own, uwyo-altitude-adjusters (one thing at a time, in order)

    >>> suggest(["sank_in_the_middle"], dish_class="layer_cake", elevation_m=2133.6).next.line
    'Use 1 1/2 tsp of baking powder where the recipe has 2 tsp.'
    """
    hint = "It is the height of the kitchen above sea level."
    for name, value_m in (("elevation", elevation_m), ("elevation it was written for", from_elevation_m)):
        within(name, value_m, LOWEST_M, HIGHEST_M, "m", hint)
    name = style_of(recipe, dish_class)
    if dish_class is None and recipe is not None:
        dish_class = CLASSES.get(name, name)
    found = tuple(dict.fromkeys(meant(id, dish_class) for id in symptoms))
    bench = Bench(
        dish_class=_class_of(found, dish_class), here_m=elevation_m, recipe=recipe, style=name, dish=dish,
        method=method, from_m=from_elevation_m, units=units, time_min=time_min, log=Log(tuple(log)),
    )  # fmt: skip
    if dish_class is None and recipe is None:
        bench = replace(bench, style=STYLES.get(bench.dish_class, bench.dish_class))
    scored = _scored(found, bench)
    return _in_turn(found, scored, bench) if scored else Mending(found, (), bench)


def style_of(recipe: Recipe | None, dish_class: str | None) -> str:
    """The style whose tables size the change: that of the recipe, else of the class."""
    if dish_class is not None or recipe is None:
        return STYLES.get(dish_class or "general", dish_class or "layer_cake")
    from rules.baking.style import recognise

    return recognise(recipe).id


def _class_of(found: Sequence[Symptom], dish_class: str | None) -> str:
    """The class that was named, else the usual one of the first symptom."""
    if dish_class is not None:
        return dish_class
    return next((row.classes[0] for row in found if row.classes), "general")


def _scored(found: Sequence[Symptom], bench: Bench) -> list[tuple[float, Cause]]:
    """Every cause with its points, most first; of equal ones that of the published order first."""
    points: dict[str, float] = {}
    for symptom in found:
        for weight in behind(symptom, bench.dish_class):
            points[weight.cause] = points.get(weight.cause, 0.0) + weight.at(bench.here_m)
    scored = [(round(p * _fits(causes()[id], bench), 2), causes()[id]) for id, p in points.items()]
    kept = [row for row in scored if not bench.lacks(row[1].what)]
    return sorted(kept if len(kept) > 1 else scored, key=lambda row: (-row[0], _place(row[1]), row[1].id))


def _fits(cause: Cause, bench: Bench) -> float:
    """How much likelier this formula makes a cause; more time is no help where the food does not soften at all."""
    from rules.kinetics import softening

    threshold_c = softening(bench.dish_class).threshold_c
    if cause.by == "boil" and threshold_c is not None and bench.boil_c < threshold_c:
        return OUT_OF_REACH
    return cause.likelihood(bench.features)


def _place(cause: Cause) -> int:
    return ORDER.index(cause.what) if cause.what in ORDER else len(ORDER)


def _in_turn(found: tuple[Symptom, ...], scored: list[tuple[float, Cause]], bench: Bench) -> Mending:
    """The causes in the order in which to try them, by what the log says of the last batch."""
    log = bench.log
    fresh = [row for row in scored if log.last_try(row[1]) is None]
    stale = sorted((row for row in scored if log.last_try(row[1]) is not None), key=lambda row: log.last_try(row[1]) or 0)
    ranked = tuple(_ranked(points, cause, bench) for points, cause in (*fresh, *stale))
    first, note = _carried_on(scored, bench)
    if first is None:
        return Mending(found, ranked, bench, note)
    others = tuple(r for r in ranked if r.cause.id != first.cause.id)
    return Mending(found, (first, *others), bench, note)


def _ranked(points: float, cause: Cause, bench: Bench, *, further: bool = False) -> Ranked:
    done = sized(cause, bench, further=further)
    return Ranked(cause, points, done.change, done.line)


def _carried_on(scored: list[tuple[float, Cause]], bench: Bench) -> tuple[Ranked | None, str]:
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
        return _ranked(points, cause, bench, further=True), "The last change helped, so go half a step further with it."
    if outcome == "helped":
        return None, "The last change helped: keep it, and add this one."
    return None, "The last change made no difference: leave it as it is and try the next."


def _may_go_further(cause: Cause, tried: Tried, bench: Bench) -> bool:
    return bench.log.times_tried(cause) <= FURTHER_TIMES and not bench.log.is_way_back(tried)


def way_back(tried: Tried, cause: Cause | None, bench: Bench) -> Ranked:
    """The last change undone."""
    from rules.baking.change import WAYS, WHATS
    from rules.baking.rounding import measure

    what = tried.what if tried.what in WHATS else WORDS
    way = OPPOSITE.get(tried.way, "different")
    known = tried.from_value is not None and tried.to_value is not None and tried.from_unit not in (None, "percent", "K")
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
    own = cause or Cause("way_back", change.what, change.way, "", 0.0, "", True, 0.0, "common-practice", line, change.because)
    return Ranked(own, 0.0, change, line)


def _degrees(tried: Tried, bench: Bench) -> str:
    value = tried.from_value or 0.0
    return bench.say.oven((value - 32) / 1.8 if tried.from_unit == "degF" else value)


def _named(tried: Tried) -> str:
    return f" ({tried.item})" if tried.item else ""
