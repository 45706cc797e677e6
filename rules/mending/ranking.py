"""Which causes come first for a dish, a formula, an elevation and a log."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from rules.baking import styles
from rules.errors import within
from rules.foods import sugar
from rules.foods.dishes import dishes
from rules.mending.causes import Cause, behind, causes
from rules.mending.failed_dish import CLASSES, PRESSURE, Base, Bench
from rules.mending.log import Log, Trial
from rules.mending.model import Mending
from rules.mending.next_in_log import carried_on, ranked
from rules.mending.symptoms import Failed, Symptom, all_meant
from rules.model import Units
from rules.physics.air import HIGHEST_M, LOWEST_M
from rules.physics.kinetics import softening
from rules.recipe import Recipe

ORDER = ("leavening", "yeast", "sugar", "liquid", "oven", "time")
OUT_OF_REACH = 0.1
# a crumb whose middle is judged by a thermometer, the cause that it is waited for in vain, and its points
CRUMBS = ("yeast_bread", "quick_bread", "layer_cake", "pound_cake", "laminated")
# nearer to the boil than this a rich loaf is baked through [K]
RICH_CORE, BAKED_UNDER_K = "rich_core", 4.0
# a sweet whose own reading shows that it went past its stage [K], and how much likelier that makes it
PAST, PAST_BY_K, SHOWN = "cooked_past_stage", 1.5, 8.0
OUT_OF_REACH_CORE, FIRST_OF_ALL = "core_out_of_reach", 20.0
# how much the causes of a further fault count
BESIDE = 0.5


def suggest(
    symptoms: Sequence[str],
    *,
    recipe: Recipe | None = None,
    dish_class: str | None = None,
    dish: str | None = None,
    method: str | None = None,
    equipment: tuple[str, ...] = (),
    elevation_m: float | None = 0.0,
    from_elevation_m: float = 0.0,
    time_min: float | None = None,
    written_min: float | None = None,
    units: Units = "us",
    amounts: Mapping[str, Base] | None = None,
    said_c: float | None = None,
    wanted_c: float | None = None,
    struck: Sequence[str] = (),
    log: Sequence[Trial] = (),
) -> Mending:
    """Rank what may lie behind a failure and size the changes; one change comes next.

    symptoms: ids of data/lexicon/symptoms.toml; none gives a Mending without causes
    recipe: its ratios make some causes likelier and size the change; dish_class: where there is no recipe
    equipment: ids of what it was cooked in
    elevation_m: where it is cooked, None where nobody has said; from_elevation_m: where the recipe is right [m]
    time_min: how long it was cooked; written_min: how long the recipe or the packet says
    amounts: what the cook says is in it, by component; said_c: a temperature [degC]
    wanted_c: the reading of the middle that a book asks for [degC]
    struck: causes that are ruled out
    log: earlier batches of it, oldest first, the last of them being the one that shows these symptoms
    raises: UnknownWord for a symptom that is not in the catalogue; OutOfRange for an elevation no kitchen has
    source: the causes' own, uwyo-altitude-adjusters (one thing at a time, in order)

    >>> change = suggest(["sank_in_the_middle"], dish_class="layer_cake", elevation_m=2133.6).next.change
    >>> change.item, change.from_value, change.to_value, change.to_unit
    ('baking powder', 2.0, 1.5, 'tsp')
    """
    hint = "It is the height of the kitchen above sea level."
    here_m = elevation_m or 0.0
    within("elevation", here_m, LOWEST_M, HIGHEST_M, "m", hint)
    within("elevation it was written for", from_elevation_m, LOWEST_M, HIGHEST_M, "m", hint)
    name = style_of(recipe, dish_class)
    if dish_class is None and recipe is not None:
        dish_class = CLASSES.get(name, name)
    found = all_meant(symptoms, Failed.of(dish_class, dish, method, equipment))
    bench = Bench(
        dish_class=_class_of(found, dish_class), here_m=here_m, recipe=recipe, style=name, dish=dish,
        method=method, from_m=from_elevation_m, units=units, time_min=time_min, written_min=written_min,
        log=Log(tuple(log)),
        placed=elevation_m is not None, amounts=amounts or {}, said_c=said_c,
        wanted_c=wanted_c,
    )  # fmt: skip
    if dish_class is None and recipe is None:
        bench = replace(bench, style=styles.style_of(bench.dish_class))
    scored = _scored(found, bench)
    scored = [row for row in scored if row[1].id not in struck and not belied(row[1], bench)] or scored
    return _in_turn(found, scored, bench) if scored else Mending(found, (), bench)


def style_of(recipe: Recipe | None, dish_class: str | None) -> str:
    """The style whose tables size the change: that of the recipe, else of the class."""
    if dish_class is not None or recipe is None:
        return styles.style_of(dish_class or "general")
    from rules.baking.style import recognise

    return recognise(recipe).id


def _class_of(found: Sequence[Symptom], dish_class: str | None) -> str:
    """The class that was named, else the usual one of the first symptom."""
    if dish_class is not None:
        return dish_class
    of_dishes = (dishes()[name].dish_class for row in found for name in sorted(row.dishes))
    return next((row.classes[0] for row in found if row.classes), next(of_dishes, "general"))


def _scored(found: Sequence[Symptom], bench: Bench) -> list[tuple[float, Cause]]:
    """Every cause with its points, most first; of equal ones that of the published order first."""
    points: dict[str, float] = {}
    for place, symptom in enumerate(found):
        share = BESIDE if place else 1.0
        for weight in behind(symptom, bench.dish_class):
            points[weight.cause] = points.get(weight.cause, 0.0) + share * weight.at(bench.ranked_m)
    if _waits_in_vain(bench):
        points[OUT_OF_REACH_CORE] = FIRST_OF_ALL
    scored = [(round(p * _fits(causes()[id], bench), 2), causes()[id]) for id, p in points.items()]
    kept = [row for row in scored if not bench.cannot(row[1])]
    return sorted(kept if len(kept) > 1 else scored, key=lambda row: (-row[0], _place(row[1]), row[1].id))


def belied(cause: Cause, bench: Bench) -> bool:
    """Whether the reading that a sweet was cooked to rules out that it left the heat too soon, or too late."""
    if cause.id == RICH_CORE:
        return bench.placed and bench.wanted_c is not None and bench.wanted_c >= bench.boil_c - BAKED_UNDER_K
    stage = sugar.cooked_to(bench.dish)
    if cause.by != "stage" or stage is None or bench.said_c is None or not bench.placed or not stage.shifts:
        return False
    low_c = stage.low_c - (bench.sea_boil_c - bench.boil_c)
    return bench.said_c > low_c if cause.way == "hotter" else bench.said_c < low_c


def _waits_in_vain(bench: Bench) -> bool:
    """Whether a moist crumb is to read more than water boils at here: it never does, and dries out meanwhile."""
    return (
        bench.wanted_c is not None and bench.placed and bench.dish_class in CRUMBS and bench.wanted_c > bench.boil_c - 1
    )


def _fits(cause: Cause, bench: Bench) -> float:
    """How much likelier this formula makes a cause.

    What the tables still ask for is no less likely for an ordinary ratio; more time is no help where the food does not
    soften at all.
    """
    threshold_c = softening(bench.dish_class).threshold_c
    if cause.by == "boil" and (bench.method == PRESSURE or (threshold_c is not None and bench.boil_c < threshold_c)):
        return OUT_OF_REACH
    if cause.id == PAST and _is_past(bench):
        return SHOWN
    likelihood = cause.likelihood(bench.features)
    return max(likelihood, 1.0) if bench.asks(cause) else likelihood


def _is_past(bench: Bench) -> bool:
    """Whether the reading that a sweet was cooked to is past its stage here."""
    stage = sugar.cooked_to(bench.dish)
    if stage is None or bench.said_c is None or not bench.placed or not stage.shifts:
        return False
    return bench.said_c > stage.high_c - (bench.sea_boil_c - bench.boil_c) + PAST_BY_K


def _place(cause: Cause) -> int:
    return ORDER.index(cause.what) if cause.what in ORDER else len(ORDER)


def _in_turn(found: tuple[Symptom, ...], scored: list[tuple[float, Cause]], bench: Bench) -> Mending:
    """The causes in the order in which to try them, by what the log says of the last batch."""
    log = bench.log
    fresh = [row for row in scored if log.last_try(row[1]) is None]
    stale = sorted((row for row in scored if row not in fresh), key=lambda row: log.last_try(row[1]) or 0)
    in_order = tuple(ranked(points, cause, bench) for points, cause in (*fresh, *stale))
    first, note = carried_on(scored, bench)
    if first is None:
        return Mending(found, in_order, bench, note)
    others = tuple(r for r in in_order if r.cause.id != first.cause.id)
    return Mending(found, (first, *others), bench, note)
