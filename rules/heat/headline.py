"""The one sentence that opens a reply about a time."""

from __future__ import annotations

from rules.book import Case
from rules.foods.methods import methods
from rules.model import Figure
from rules.said import Said, Words, duration_span, sentences

# what nobody calls simmered or poached
NO_GERUND = ("popcorn", "custard", "sauce")
say = sentences("heat/headline")


def takes(case: Case, method: str, figures: tuple[Figure, Figure], called: Words = "") -> Said:
    """The headline of a time: "Roast chicken takes 70 to 110 min at 7,000 ft, as at sea level.".

    called: what to call the dish, where its name alone would not tell which of its times this is
    """
    here, base = (duration_span(f.low or f.value, f.high or f.value) for f in figures)
    return say(
        "takes",
        doing=doing(case, method, called),
        subject=case.food if named(case, method) else "",
        here=here,
        place=case.place,
        against="nothing" if not case.moved else "other" if here != base else "same",
        base=base,
        baseline=case.baseline,
    )


def named(case: Case, method: str) -> bool:
    """Whether the dish's own name says what is done to it: "roast chicken", and a custard is never simmered."""
    food = case.request.dish
    if food is None:
        return False
    return case.dish_class in NO_GERUND or any(f" {word} " in f" {food} " for word in methods()[method].heard_as)


def doing(case: Case, method: str, called: Words = "") -> Said:
    """What is done to the dish, without saying it twice: "Roasting prime rib", but "Roast chicken".

    The method's words are those of data/lexicon/methods.toml.
    """
    row = methods()[method]
    if case.request.dish is None:
        return say("doing", way="bare", gerund=row.doing, food="", after="")
    before, after = row.around_dish
    way = "dish" if named(case, method) else "around" if after else "before"
    return say("doing", way=way, gerund=before, food=called or case.food, after=after)
