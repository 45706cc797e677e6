"""The one sentence that opens a reply about a time."""

from __future__ import annotations

from rules.book import Case
from rules.foods.beans import unsoaked_time
from rules.foods.dishes import classes, cut_times
from rules.foods.methods import methods
from rules.heat.roast_weights import listed
from rules.model import Figure
from rules.said import Measure, Said, Words, duration, duration_span, sentences, yes

# wider than this share of the middle to either side a range is told with its reason
WIDE = 1 / 3
# what nobody calls simmered or poached
NO_GERUND = ("popcorn", "custard", "sauce")
say = sentences("heat/headline")


def takes(case: Case, method: str, figures: tuple[Figure, Figure], called: Words = "") -> Said:
    """The headline of a time: "About 1 h 35 min (1 h 10 min to 1 h 50 min) for roast chicken at 7,000 ft, ...".

    called: what to call the dish, where its name alone would not tell which of its times this is
    """
    (here, base), piece = figures, narrowed_by(case, method)
    return say(
        "takes",
        doing=doing(case, method, called),
        here=about(here),
        wide=yes((is_wide(here) or piece != "") and varies(case) != ""),
        varies=varies(case),
        ask="nothing" if case.request.time_min is not None else "piece" if piece else "recipe",
        piece=piece,
        place=case.place,
        against="nothing" if not case.moved else "same" if alike(here, base) else "other",
        base=known(case, base),
        baseline=case.baseline,
    )


def is_wide(time: Figure) -> bool:
    """Whether a range is so wide beside its middle that a cook wants to know why."""
    low, high = time.low or time.value, time.high or time.value
    return max(high - time.value, time.value - low) > WIDE * time.value


def narrowed_by(case: Case, method: str) -> str:
    """What the cook may say that would narrow the time, where nobody has; empty where nothing would."""
    if case.request.time_min is not None or case.dish_class not in classes():
        return ""
    slots = classes()[case.dish_class].say
    useful = {
        "quantity": listed(case.request, method),
        "cut": cut_times(case.request.dish, method),
        "soaked": unsoaked_time(case.request.dish, case.dish_class, method),
    }
    return next((slots[s] for s in slots if useful.get(s) and getattr(case.request, s) is None), "")


def varies(case: Case) -> str:
    """What the range of a dish's times covers, in words of its class; empty where no class is known."""
    return classes()[case.dish_class].varies if case.dish_class in classes() else ""


def about(time: Figure) -> Said:
    """A time with its range, the middle first: "about 1 h (50 min to 1 h 10 min)"."""
    return say("about", time=duration(time.value), ranged=ranged(time), range=range_of(time))


def middle(time: Figure) -> Said:
    """The same without the word about."""
    return say("middle", time=duration(time.value), ranged=ranged(time), range=range_of(time))


def ranged(time: Figure) -> str:
    """Whether a time has a range that reads other than its middle: yes or no."""
    return yes(range_of(time) != duration_span(time.value, time.value))


def known(case: Case, base: Figure) -> Measure:
    """The time at the baseline: as the cook gave it, else the middle of the table's range."""
    return range_of(base) if case.request.time_min is not None else duration(base.value)


def range_of(time: Figure) -> Measure:
    """The range of a time, or the time where it has none."""
    return duration_span(time.low or time.value, time.high or time.value)


def alike(here: Figure, base: Figure) -> bool:
    """Whether a cook plans by the same time in both places."""
    return duration(here.value) == duration(base.value)


def named(case: Case, method: str) -> bool:
    """Whether the dish's own name says what is done to it: "roast chicken", and a custard is never simmered."""
    food = case.request.dish
    if food is None:
        return False
    return case.dish_class in NO_GERUND or any(f" {word} " in f" {food} " for word in methods()[method].heard_as)


def doing(case: Case, method: str, called: Words = "") -> Said:
    """What is done to the dish, without saying it twice: "roasting prime rib", but "roast chicken".

    The method's words are those of data/lexicon/methods.toml.
    """
    row = methods()[method]
    if case.request.dish is None:
        return say("doing", way="bare", gerund=row.doing, food="", after="")
    before, after = row.around_dish
    way = "dish" if named(case, method) else "around" if after else "before"
    return say("doing", way=way, gerund=before, food=called or case.food, after=after)
